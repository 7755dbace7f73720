"""The words people use, and what each means to a reader. One table: a nickname is one line.

A meaning is "kind.value". Phrases are written as they come out of `clean.normalise`, words
separated by one space; the longest phrase wins. Misspellings within one or two letters need no
entry (see `phrases`); speech-to-text slips that are real words do.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Final

__all__ = ["MEANINGS", "meanings", "vocabulary_words"]

MEANINGS: Final[dict[str, str]] = {
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
    # --- roles ---
    "role.return": (
        "comin in|goin in|return|returning|rtn|ret|retn|returns|return air|r/a|ra|return side"
        "|return duct"
        "|re-turn|retern|ritern|suction|pull|intake|negative side|going back|coming back"
        "|goes back|back to the furnace|return static|cold air return|cold air"
        "|return grille|on the return|vacuum side|suction side|retrun|reutrn|rturn"
        "|return plenum|return drop|in the return|entering|going in|goes in|air in|inlet"
        "|rat|going into|incoming|going in the return|at the return|return temp"
        "|return temperature|rtrn|upstream|comes in|coming in|coming back in|enters"
        "|sucking|into the unit|going into the unit|going into the furnace|into it"
        "|before coil|before the coil|entering air|inlet side|to the unit"
        "|going in to the unit|back in|pulling|r"
    ),
    "role.supply": (
        "comin out|goin out|comin off|supply|sply|sup|supp|splly|supplies|supply side|supply air"
        "|s/a|sa|supply duct|suply"
        "|supply static|push|positive side|pressure side|coming out|comes out|goes out|leaving"
        "|discharge|outlet|blowing|going out|supply plenum|on the supply|supply temp"
        "|supply temperature|sat|air out|out of the register|at the register|out of the vent"
        "|at the vents|at the vent|register|registers|out the vents|supplly|supplu|supplied"
        "|spply|downstream|at the supply|out of the supply|in the supply|out of the vents"
        "|leaving air|blows out|blowing out|after coil|after the coil|outlet side"
        "|out of the unit|out the register|out of the registers|sup air|pushing|coming off"
        "|off the coil|comes off the coil|plenum|at the plenum|leaving the coil"
        "|leaves|leaves at|coming off the coil|coming out of the register"
        "|coming out of the vent|exits|exiting"
        "|s"
    ),
    "role.total": (
        "total|tot|tesp|total external|total static|external static|external|esp|t e s p"
        "|total external static|total external static pressure|all together|combined|together"
        "|sum|overall|altogether|exterior static|in all|total esp|adds up to|add up to"
        "|comes to|totals|totaling|total ext|all in|all in all"
    ),
    "role.filter": (
        "filter drop|across the filter|filter|pressure drop filter|over the filter"
        "|thru the filter|through the filter"
    ),
    "role.coil": "coil drop|across the coil|across coil|coil|over the coil|through the coil",
    "role.rise": (
        "rise|temp rise|temperature rise|riser|raise|rice|heat rise|delta|split|temp drop"
        "|temperature drop|drop|delta t|dt|difference|diff|td|cooling split|temp split"
        "|temperature split|dropping|drops|rising|rises|spit|splits|delta tea|delta-t"
        "|temp difference|temperature difference|deltat|d t|degree split|degree drop"
        "|degree rise|gain|gains|dropped|rose|delat t|spread|deltas|tr|degrees of split|warmer"
        "|cooler|colder|hotter|apart|change|lower|loses|losing|picks up|picking up|of rise"
        "|of drop|of split"
    ),
    # --- capacity words ---
    "heat.input": (
        "going in|goes in"
        "|input|in put|inp|inpt|btu in|btuh in|k in|gas input|burner input|rated input|inputs"
        "|imput|firing rate|in"
    ),
    "heat.output": (
        "coming out|comes out|going out|goes out"
        "|output|out put|outp|outpt|btu out|btuh out|k out|heating output|heat output"
        "|rated output|outputs|bonnet|oput|out"
    ),
    "heat.efficient": (
        "efficient|efficiency|eff|effic|efficent|effeciency|efficiancy|effeciancy"
        "|percent efficient|afue|annual fuel"
    ),
    "heat.stage": (
        "high fire|low fire|hi fire|lo fire|high stage|low stage|hi stage|lo stage|first stage"
        "|second stage|1st stage|2nd stage|stage 1|stage 2|stage one|stage two|on high|on low"
    ),
    # --- count nouns ---
    "noun.count": (
        "runs|ducts|pipes|branches|of them|of those|pcs|pieces|trunks|leads|lines|of these"
        "|identical|each|ea|ones|filters|grilles|grills|returns|registers|vents|side by side"
        "|in parallel|total|parallel|takeoffs|hoses|tubes|mains|the same|same size|like that"
        "|like it|units|drops|returns like that|legs|feeds|qty|quantity|grates|openings"
        "|altogether|of em|of 'em"
    ),
    "count.multi": (
        "pair|pair of|a pair of|twin|dual|double|both|couple|a couple of|couple of|a couple"
        "|twins|set of two|two of them|two of those|each side|both sides|one each side"
        "|one on each side|one each way"
    ),
    "word.none": (
        "double wall|double walled|dual wall|double-wall|one piece|single wall|one line"
        "|one of the|two by four|two by fours|two by six|two by sixes"
    ),
    "count.single": "single|just the one|only one|just one",
    # --- sides ---
    "side.width": "wide|width|w|widths|wid|in width|wide side|wd",
    "side.height": (
        "high|tall|height|h|hi|heigth|hight|in height|heighth|deep|depth|ht|up and down|up n down"
        "|hieght"
    ),
    "side.depth": "thick|thickness|deep|depth|thk|thik|d",
    # --- sizes joined ---
    "join.by": "x|by|bite|buy|times|bye|*|bi|X|byt|buy a",
    # --- two values, or a change along the way ---
    "alt.or": "or|either|vs|versus|or maybe|or else|or possibly",
    "alt.change": (
        "reduces|reducing|reduces to|reducing to|reduced|reduced to|reduction|reducer"
        "|steps down|steps down to|step down|stepping down|then|tapers|tapering|tapers to"
        "|becomes|turns into|goes to|going to|down to|drops to|drops down to|necks|necks down"
        "|necks down to|transitions|transitions to|transition|splits|splits into|ends|starts"
        "|widens|opens up|later|after that|changes to|goes down to|shrinks|shrinks to"
        "|narrowing|narrows|narrows to|at the end|by the end|ending|starting|opens up to"
        "|expands to"
    ),
    # --- round by a wrong measure ---
    "measure.around": (
        "circumference|all the way around|around the outside|tape around|perimeter|girth"
        "|around it|wrapped around|all around"
    ),
    "measure.radius": "radius|rad",
    # --- vague amounts ---
    "vague.size": (
        "medium|big|small|large|standard|normal|regular|average|huge|tiny|little|typical"
        "|decent|whatever|same|usual|something|some|several|default|biggest|smallest|max"
        "|maximum|min|minimum|bigger|smaller|massive|giant|generic|common|ordinary|monster"
        "|skinny|fat|narrow|thin|full|size|sized|shoebox|mid|middle|factory|stock|original|oem"
        "|builder grade|residential|as big as|many|a lot|nothing special|kind|type|ones"
        "|way too big|midsize|mid size|medium sized|good sized|full size|double|single"
        "|ginormous|humongous|so so|never changed|sizes|types|style|model|brand|pretty big"
        "|oversized|undersized|jumbo"
    ),
    "vague.amount": (
        "bit|few|several|lots|plenty|bunch|long|short|roll|rolls|half|part|way|not much|heaps"
        "|loads|far|halfway|across the house|length of the house|length of the basement"
        "|the whole house|whole house|enough|couple|full length|all the way"
        "|across the basement|not far|not long|quite a ways|a ways|ways|forever|whole length"
        "|some|little|most of it|across|to the end|end to end|long way|short run|long run"
        "|room to room|tons|a lot|many|much|more|less|farther|further|longer|shorter"
    ),
    "vague.state": (
        "good|bad|fine|ok|okay|low|high|strong|weak|normal|enough|plenty|full|wide open"
        "|not much|poor|great|decent|average|so so|elevated|terrible|awful|excellent|typical"
        "|usual|medium|higher|lower|way up|way down|through the roof|sky high|healthy"
        "|acceptable|in range|within range|within spec|in spec|on spec|out of range"
    ),
    "vague.heat": (
        "hot|cold|warm|cool|freezing|chilly|boiling|comfortable|toasty|lukewarm|cooler|hotter"
        "|warmer|colder|icy|mild|nice|tepid|burning|frigid|roasting|room temp|room temperature"
        "|ambient|below freezing|above freezing|body temperature|normal|high|low|okay|ok|good"
    ),
    "vague.type": (
        "charcoal|washable|electrostatic|pleated|paper|media|carbon|hepa|cheap|reusable"
        "|disposable|allergen|allergy|metal mesh|permanent|foam|blue|fiberglass|mesh|the cheap"
        "|deep|thick|basic|good ones|expensive|cardboard|poly|polyester|aluminum|cloth"
        "|hog hair|odor|activated|ultra|high end|kind|type"
    ),
    # --- where measured ---
    "place.inside": (
        "inside|inside dimension|inside dimensions|i d|id|inside dia|inside diameter"
        "|inside measure|inside measurement|inside measurements|clear|clear inside"
        "|clear opening|inside to inside|inside dim|inside dims|inner|interior"
    ),
    "place.outside": (
        "outside|outside dimension|outside dimensions|o d|od|outside dia|outside diameter"
        "|outside measure|outside measurement|outside measurements|outside to outside"
        "|on the outside|exterior|outside dim|outside dims|outer"
    ),
    "place.over wrap": (
        "over wrap|over the wrap|over insulation|over the insulation|including wrap"
        "|including the wrap|with the wrap|with wrap|including insulation"
        "|including the insulation|with insulation|outside the wrap|over rap|over the rap"
        "|outside of the wrap|with the insulation|outside the insulation"
        "|outside of the insulation|over top of the insulation|over top of the wrap"
        "|on top of the insulation|counting the insulation|insulation and all|wrap and all"
        "|around the insulation"
    ),
    "place.liner": (
        "inside the liner|inside liner to liner|liner to liner|inside of the liner"
        "|clear of the liner|face of liner to face of liner"
    ),
    "place.frame": (
        "frame|face|faceplate|face plate|outer frame|edge of frame|outside the frame|flange"
        "|trim|over the frame|frame size|plate"
    ),
    "place.slots": (
        "slots|slotted|slotted part|just the slots|hole|the hole|opening|throat|duct opening"
        "|rough opening|neck|cutout|cut out"
    ),
    "place.jacket": (
        "jacket|over the jacket|outer jacket|outside jacket|over jacket|outside of the jacket"
        "|outside the jacket|jacket to jacket|jacket and all|including the jacket"
        "|with the jacket"
    ),
    "place.core": (
        "core|inner core|flex core|core size|inside core|inner liner|collar|coor|inner diameter"
    ),
    "place.bare": "bare metal|bare|on bare metal|bare duct|on the bare metal|to the bare metal",
}


@cache
def meanings() -> dict[tuple[str, ...], tuple[str, ...]]:
    """The words of each phrase, and everything it may mean."""
    table: dict[tuple[str, ...], tuple[str, ...]] = {}
    for meaning, phrases in MEANINGS.items():
        for phrase in phrases.split("|"):
            words = tuple(phrase.replace("-", " ").replace(".", " ").replace("/", " / ").split())
            had = table.get(words, ())
            if meaning not in had:
                table[words] = (*had, meaning)
    for words, senses in table.items():
        if len(words) > 1:
            table[words] = (*senses, *_inherited(words, senses, table))
    return table


_ROUND_WORDS: Final = {
    **dict.fromkeys(
        ("pipe", "pipes", "hose", "hoses", "tube", "tubes", "tubing", "spiral"), "shape.roundish"
    ),
    **dict.fromkeys(("round", "dia", "diameter"), "shape.round"),
}


def _inherited(
    words: tuple[str, ...],
    senses: tuple[str, ...],
    table: Mapping[tuple[str, ...], tuple[str, ...]],
) -> list[str]:
    """What the words of a longer phrase still mean: a "plastic pipe" is round, a liner lines."""
    found = {_ROUND_WORDS[word] for word in words if word in _ROUND_WORDS}
    if all(sense.startswith("shape.") for sense in senses):
        parts = [sense for word in words for sense in table.get((word,), ())]
        found.update(sense for sense in parts if sense.startswith("material."))
    if "place.liner" in senses:
        found.add("material.lined_metal")
    if "place.over wrap" in senses:
        found.add("material.wrapped")
    if "place.bare" in senses and "metal" in words:
        found.add("material.galvanized")
    return sorted(found - set(senses))


@cache
def vocabulary_words() -> frozenset[str]:
    """Every single word of the table; none is ever taken for a misspelling."""
    return frozenset(word for phrase in meanings() for word in phrase)
