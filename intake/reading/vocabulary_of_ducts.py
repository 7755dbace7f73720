"""Words for the shapes and materials of ducts; part of the one table of `vocabulary`."""

from __future__ import annotations

from typing import Final

__all__ = ["OF_DUCTS"]

OF_DUCTS: Final[dict[str, str]] = {
    # --- shapes ---
    "shape.round": (
        "round pipe|round duct|round|rnd|rd|diameter|dia|diam|dia.|circular"
        "|circle|in diameter|across the circle|diameters|rounds|rnds|dai|diamter"
        "|inch round|roundish"
    ),
    "shape.oval": "egg shaped|egg shape"
    "|oval|flat oval|ovals|ovaled|ovl|flattened round|ellipse|elliptical|obround",
    "shape.rect": "rectangular|rectangle|rect|recto|rectangel",
    "shape.square": "square|sq|squares",
    "shape.roundish": (
        "rigid pipe|rigid aluminum|rigid aluminium"
        "|metal pipe|steel pipe|tin pipe|galvanized pipe|galv pipe|pvc pipe|plastic pipe"
        "|in across|inches across|inch across|across|pipe|pipes|pip|hose|hoses|tube|tubes"
        "|tubing|spiral|snap lock|snaplock|snap|round pipe|hard pipe|spiro|spiral pipe|runout"
        "|hard pipes|metal pipes|steel pipes|tin pipes|galvanized pipes|galv pipes"
        "|round pipes|runouts|run out|dryer duct|stovepipe|stove pipe|snap-lock"
    ),
    # --- materials ---
    "material.galvanized": (
        "metals|galvanized|galvanised"
        "|galv|glv|gav|gavl|galve|galvy|metal|sheet metal|sheetmetal|tin|steel"
        "|sheet mettle|sheet metle|sheet medal|metle|metel|mettle|hard pipe|hardpipe|snap lock"
        "|snaplock"
        "|spiral|spiro|spiral pipe|gi|galvanized steel|galvanized metal|galvanized iron"
        "|sheet steel|sm|bare metal|plain metal|sheet iron|tin metal|steel pipe|metal pipe"
        "|tin pipe|tin knocker|hard metal|galvi|galvinized|galvinised|galvenized|glavanized"
        "|galvanize|spiral lee|zinc|shiny metal|stovepipe|stove pipe|tinwork|tin work|rings"
        "|it rings|rings when tapped|sounds like metal|sounds hollow|metal box|metal duct"
        "|sheetmtl|shtmtl|shtmetal|sht metal|sht mtl|sheet mtl|s m|mtl|tin duct"
        "|rigid metal|rigid pipe"
        "|ductwork metal|snap-lock|tin can|hard pipes|metal pipes|steel pipes|tin pipes|rigid pipes"
        "|galvanized pipes|galv pipes|hard round|hard ducts|metal ducts|tin ducts"
    ),
    "material.flex": (
        "flex|flexes|fex|flec|flex core|flex jacket|flexi|flexy|flexible|flex duct|flexible duct"
        "|flex hose"
        "|insulated flex|accordion|accordion tube|accordion hose|accordion duct|accordian"
        "|slinky|slinky hose|flecks|fleks|fleck|flax|phlex|flexduct|wireflex|wire flex|flx"
        "|hose|hoses|bendy|bendy tube|bendy hose|dryer hose|silver hose|shiny hose|foil hose"
        "|flexible hose|squishy|squishy tube|crinkly|crinkly tube|crinkle|silver worm|snake"
        "|silver snake|caterpillar|big silver tube|floppy|floppy tube|plastic hose"
        "|insulated hose|flex line|flex pipe|flexible pipe|flex run|soft duct|soft pipe"
        "|shiny bendy|vacuum hose|spring hose|ribbed tube|ribbed hose|corrugated tube"
        "|corrugated hose|flexible tubing|flex tubing|flexable|flexbile|flext|flix|flez|flwx"
        "|fle x|aluminum flex|aluminium flex|flexible aluminum|flexible aluminium|metal flex"
        "|flex metal|foil flex|silver flex|shiny flex|black flex|gray flex|grey flex"
        "|wire coil hose|worm|tube with wire|plastic and wire|insulated tube|wiry hose"
        "|slinkies|springy|springy tube|springy hose|wrinkly|wrinkled tube|wrinkly tube"
        "|floppy hose|flexi duct|flexiduct|wire spiral hose|spiral wire hose|flexible metal"
        "|squishy hose|stretchy|stretchy tube|bendable|bendable tube|bendable hose|silver tube"
        "|silver tubes|flexible tube|flexible tubes|flex ducts|bendy pipe|bendy tubes"
        "|silver accordion"
    ),
    "material.duct_board": (
        "cuts with a knife|fibrous panels|fibrous panel|fibrous board|fiber panels|fibrous sheets"
        "|foil skin|foil skinned|duct board|ductboard|duct bored|duck bored|dock bored|dukt board"
        "|duct-bored|duct bord|dct brd|dctbrd|duct brd"
        "|ductbord|duck board|duckboard|dock board|dockboard|fiber board|fiberboard"
        "|fibre board|fibreboard|fiberglass board|fibreglass board|glass board"
        "|cardboard with foil|cardboard like with foil|like cardboard with foil"
        "|cardboard looking with foil|cardboard and foil|fiberglass duct board"
        "|fiberglass bord|fibreglass bord|fiber bord|glass bord|fiberglass borad"
        "|fibreglass duct board|fiber glass board|fiberglass duct|fibreglass duct|fiber bored"
        "|duct-board|foil board|foil faced board|foil-faced board|board|yellow board"
        "|rigid board|rigid fiberglass|rigid fibreglass|fiber duct|fiberduct|glass fiber board"
        "|glass fibre board|db|pressed fiberglass|foil backed board|foil covered board"
        "|silver board|foam board|duct boards|board duct|fiberglass boards|fiberglass panels"
        "|fiberglass box|fiberglas box|fiberglas board|fiberglas duct|d/b"
        "|rigid insulation board|insulation board|foil faced fiberglass"
        "|foil-faced fiberglass|compressed fiberglass|fiberglass with foil|dukboard"
        "|stiff fiberglass|fiberglass sheets|fiberglass ductboard|ductboards|rigid foil board"
        "|foil fiberglass|yellow fiberglass with foil|hard fiberglass"
    ),
    "material.lined_metal": (
        "fuzzy inside lining|lined|liner|lining|with insulation inside|with insulation on the"
        " inside"
        "|with the insulation inside|with insulation in it|insulation in it"
        "|insulation inside it|insulation inside of it|insulated on inside"
        "|with fiberglass inside|with lining inside|lined metal|lined sheet metal"
        "|metal lined|internally lined|internal insulation|internal liner"
        "|internally insulated|insulated inside|insulation inside|insulated on the inside"
        "|insulation on the inside|insulated internally|inside insulation|acoustic liner"
        "|acoustically lined|acoustic lining|duct liner|lyner|lined duck|line her|linner"
        "|sound liner|soundlined|sound lined|black liner|black fuzzy inside|fuzzy inside"
        "|fuzzy stuff inside|fuzz inside|fiberglass inside|fibreglass inside"
        "|fiberglass liner|fibreglass liner|fiberglass lining|fiberglass lined"
        "|fibreglass lined|soft inside|black stuff inside|insulation is inside"
        "|insulation is on the inside|insulated from inside|insulated from the inside"
        "|foam lined|lind|lined with fiberglass|lined with fibreglass"
        "|lined with insulation|inside is insulated|interior liner|interior insulation"
        "|black mat inside|black insulation inside|insul inside|padded inside"
        "|blanket inside|soft stuff inside|lined inside|inside lined|inside liner"
        "|felt inside|carpet inside|fuzzy black inside|insulation glued inside"
        "|insulation glued to the inside|mat inside|fiberglass on the inside"
        "|fibreglass on the inside|lining inside|lined on the inside|fuzzy lining"
        "|black coating inside|fluff inside|fluffy inside|fluffy stuff inside"
        "|fuzzy on the inside"
    ),
    "material.panned_joist": (
        "cavity|cavities|bay|bays|panned|panning|panned joist|panned joists|pan joist"
        "|pan joists|panned return|panned bay|joist bay|joist bays|joist space"
        "|joist spaces|joist cavity|joist cavities|floor joist return|floor joists"
        "|paned joist|planned joist|joyst|between joists|between the joists"
        "|between the floor joists|joist panning|paned|panned joist bay"
        "|panned floor joists|joist panned|joist pan|joist return|under the joists"
        "|under joists|across the joists|across joists|over the joists|to the joists"
        "|nailed to the joists|joists|bottom of the joists|bottoms of the joists"
        "|floor joist|floor joist bay|panned floor joist|joist with tin|joist|joice"
        "|joyce bay|pan joist bay|panjoist|joistbay|panned off"
    ),
    "material.stud_bay": (
        "cavity|cavities|bay|bays|inside of the wall|inside of a wall|just the wall"
        "|the wall itself|inside the wall|open wall|stud bay|stud bays|studbay|stud cavity"
        "|stud cavities|stud space|stud spaces|wall cavity|wall cavities|between studs"
        "|between the studs|between wall studs|between the wall studs|stud bae|stood bay"
        "|stud wall|in the studs|wall stud cavity|wall stud bay|stud|studs"
        "|inside the wall studs|framed wall cavity|wall space|stud chase|hollow wall"
        "|inside the wall cavity|framing cavity|open stud bay|wall stud|stud return"
        "|wall bay|studs in the wall|drywall cavity|cavity in the wall|space in the wall"
        "|hole in the wall framing|space between two studs|between 2 studs"
        "|between two studs"
    ),
    "material.aluminum": (
        "aluminum|aluminium|alum|alu|alumn|alumnum|aluminun|aluminm|aluminum duct"
        "|aluminum pipe|alumium|allumin"
    ),
    "material.pvc": (
        "pvc|plastic|plastic pipe|sch 40|schedule 40|sch40|sched 40|pvc pipe|white plastic"
        "|white pvc|white plastic pipe|poly pipe|abs|drain pipe|sewer pipe|plumbing pipe|p v c"
        "|pvs pipe|cpvc|p.v.c|hdpe|plastic duct|polyvinyl|polyvinyl chloride|vinyl pipe"
    ),
    "material.unlined": (
        "unlined|no liner|no lining|bare|not lined|isn't lined|isnt lined|non lined|non-lined"
        "|nothing soft inside|nothing fuzzy inside|no fuzz inside|liner torn out|liner got torn out"
        "|liner was torn out|liner removed|liner is gone|liner's gone|liner gone|liner ripped out"
        "|without liner|without lining|uninsulated|no insulation|not insulated|un lined"
        "|un-lined|no insulation inside|nothing inside|no liner inside|no internal liner"
        "|without any liner|without insulation|no inside liner"
    ),
    "material.wrapped": (
        "wrapped|duct wrap|wrap|outside insulation|insulated outside|insulation outside"
        "|insulated on the outside|insulation on the outside|externally insulated"
        "|external insulation|rap|rapped|duct rap|insulated externally|exterior insulation"
        "|insulation is outside|insulation wrapped|insulation wrapped around|blanket around"
        "|blanket outside|foil wrap|foil wrapped|bubble wrap|wrapping|insulation around"
        "|insulation around it|insulation over it|insulation over|insulation is on the outside"
        "|jacketed|insulation wrap|wrapped in insulation|wrapped in fiberglass"
        "|wrapped with fiberglass|wraped|wrapped with insulation|insulated wrap"
        "|outer insulation|fiberglass wrap|fiberglass wrapped|foil bubble|insulation on it"
        "|insulation all around|covered in insulation|covered with insulation|overwrap"
        "|fiberglass around it|fiberglass on the outside|fiberglass outside"
        "|insulation wrapped around it|pink insulation around it|outside is insulated"
        "|outside insulated|blanket wrapped|blanket wrapped around|blanket wrap|blanket over it"
        "|batts wrapped around|batt wrapped around|blanket wrapped around the outside"
        "|blanket wrapped around it|insulation wrapped around the outside|blanket around it"
        "|blanket around the outside|blanket on the outside"
    ),
    "material.insulated": "insulated|insulation|insul|insulated duct|insualted|insulted",
    "material.fiberglass": (
        "fiberglass|fibreglass|fiber glass|fibre glass|fibrous glass|glass fiber|fiberglas"
    ),
    "material.foreign": (
        "wood|wooden|plywood|drywall|concrete|transite|clay|clay tile|tile|terracotta"
        "|terra cotta|cardboard|copper|brick|asbestos|cement|cement board|plaster|sonotube"
        "|paper|fabric|cloth|osb|stainless|stainless steel|carbon fiber|styrofoam|rubber|glass"
        "|block|cinder block|sheetrock"
    ),
    "material.mixed": (
        "mixed|mix|combo|combination|mixture|mostly|partly|part|half and half|some of each|both"
    ),
    "material.shiny": (
        "shiny|silver|silvery|foil|shiny silver|reflective|gray|grey|silver colored|tinfoil"
    ),
    # --- thickness that is not a side ---
    "thick.gauge": "gauge|gage|guage|ga",
}
