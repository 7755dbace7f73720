"""Dangers told in any words: families of words, and which of them together mean danger.

Tables only, for `red_flag_match`. A family lists one form of each word; endings (-s, -ing, -ed)
are taken off before it is looked up. An idea names the families that must stand near each other
in one clause, in any order. A word added here needs a phrase in the test.
"""

# ruff: noqa: E501 - one family or idea a line reads better than one wrapped over three
from __future__ import annotations

from dataclasses import dataclass
from typing import Final

__all__ = ["FAMILIES", "IDEAS", "Idea"]

FAMILIES: Final[dict[str, str]] = {
    # Gas.
    "gas": "gas",
    "gas pipe": "line pipe piping hose tube tubing connector flex meter main union fitting joint valve cock tank regulator manifold csst shutoff drip service packing stop elbow nipple coupling tee cylinder bottle",
    "escapes": "vent venting leak leek hiss escape spew gush seep ooze whistle pour rush spray blow fizz waft drift fill whoosh bleed trickle weep drip sputter",
    "damages": "hit cut break broke broken rupture nick puncture damage burst bust crack split snap drill drilled saw sever tear tore torn rip crush pierce backhoe shear clip gouge chop slice nail screw dug dig excavator kink pinch bent bend ram struck strike hole busted snapped smash chew bite bitten gnaw",
    "comes off": "loose disconnect disconnected detach fell fall fallen undone unscrewed unhooked uncapped dangling hanging unplugged",
    "heard": "hear heard come coming still comes",
    "purpose": "for",
    "sniffer": "sniffer",
    "reacts": "sounding wentoff peg tick click hit positive light lit pick alert crazy nuts max scream read show react respond trip sing squeal find found shriek bananas haywire berserk solid fast redline bounce jump detect climb chirp alarm",
    "bubbles": "bubble bubbling bubbled foaming foamed foams foamy froth suds",
    "soaped": "union fitting joint valve connector pipe line soap soapy soaped meter regulator gas suds nipple coupling",
    "explosive limit": "%lel lel methane",
    "coolant": "refrigerant 410 410a r22 r410 evaporator evap coil lineset flare schrader condenser suction charge brazed braze sight glass compressor linesets",
    "no gas bubbles": "sight glass condensate drain trap level wrap foil humidifier mastic tape paint",
    "smells": "smell smelled taste sniff nose",
    "skunk": "skunk cabbage garlic onion",
    "gas place": "meter tank furnace line valve heater stove plumbing gas gasunit burner boiler regulator",
    "hisses": "hiss hisses hissing",
    "gas meter": "meter tank regulator union stove",
    "live wire": "livepart",
    "discoloured": "browned blackened darkened discolored discoloured crispy toasty yellowed",
    "marked": "mark streak spot stain burnmark",
    "cabinet": "cabinet panel furnace door casing jacket cover box",
    "damp": "damp wet moist soggy",
    "beneath": "under underneath beneath below by beside around",
    "pilot": "pilot",
    "is out": "out blew blown died",
    "wall": "wall floor ceiling",
    "flashed": "flash flashed",
    "coded": "code codes times green led red light board",
    "lamp": "lamp light lights lamps it",
    "flickers": "flicker flickers flickering dim dims",
    "spins": "spin spinning racing",
    "meter": "meter dial",
    # Carbon monoxide.
    "co": "co coalarm",
    "is high": "high elevated detect detected climb rising spike peg dangerous positive leak poison emission warn warning spill elevate excessive unsafe everywhere present seep pour danger",
    "dioxide": "codioxide",
    "says": "say says read reads show shows flash flashing warn display displayed picked pick pull see",
    "shower": "tester sniffer thing box screen display alarm meter monitor panel readout stat thermostat light voice analyzer combustion tester sniffer coalarm",
    "served": "replace end expired err error battery 0 1 2 3 4 5 6 7 8 zero none test fine ok okay normal good nothing clear quiet",
    "found nothing": "zero none 0 nothing clear fine ok okay normal test quiet",
    "four": "four 4 4x",
    "beeps": "sounding beep wentoff",
    "beeper": "thermostat furnace board fault code flash meter manometer microwave dishwasher fridge",
    # Electric things.
    "electric": "wire wiring panel breaker electrical electric outlet board control controls plug socket disconnect junction transformer electronics fuse cord terminal cable circuit receptacle livepart conduit whip lug busbar prong fixture chandelier",
    "component": "capacitor relay contactor sequencer transformer thermostat",
    "is alight": "smolder smoulder glow glowing sizzle sizzling melt melting melted smoke smoking spark sparking arc arcing flame aflame sputter crackling",
    "voltage": "volt voltage current electricity amps",
    "bare metal": "duct ductwork cabinet case casing jacket plenum sheet",
    "singes": "singe singed eyebrow eyelash flareup",
    "water body": "lake pond swamp river creek waterfall swimming",
    "joints": "union fitting joint connector coupling",
    "machine": "furnace unit airhandler equipment heater system blower cabinet boiler gasunit motor fan inducer compressor condenser plenum metal duct ductwork jacket handler case casing",
    "is cooking": "smolder smoulder glow glowing sizzle sizzling crackle crackling melt melting melted smoke smoking spark sparking arc arcing burn burnt burned scorch scorched fry frying fried char charred flame aflame ablaze cook cooked cooking roast toast toasted singe singed ignite ignited torched blacken blackened browned",
    "hot": "hot overheat overheating overheated scalding warm blistering cherry",
    "very": "touch too so really very super getting gets hum humming buzz buzzing burning stinks smell real crazy extremely enough awful",
    "hums": "hum humming buzz buzzing sounding fizz pop popping zap",
    "smoke": "smoke",
    "crackles": "crackle crackling sizzle sizzling glow glowing sputtering",
    "igniter": "igniter ignitor ignition pilot led thermocouple",
    "buzz": "buzz buzzes tickle current electricity voltage live",
    "touch": "touch touching touched grab grabbed brush",
    "alarm": "alarm",
    "wet source": "water snow melt rain humidifier condensate roof ceiling ice slush sprinkler hose",
    "runs in": "run running runs ran dribble dribbling come coming came getting got get landing falling blowing dropping",
    "shock": "shock shocked shocking zap zapped tingle tingling tingly electrocuted electrocute jolt jolted energized buzzed electrified bit",
    "shock for sure": "shock shocked zap zapped tingle tingling tingly electrocuted jolt jolted",
    "touched": "touch touching touched me him her us my when metal cabinet furnace unit airhandler duct heater grab grabbed hand finger arm door case ductwork i boiler it register grille faucet off from",
    "shock idiom": "sticker price absorber surely reset culture bill cost quote estimate mount mounts pad",
    "static": "static carpet",
    "melts": "melt melting melted gooey drippy",
    "paint": "paint cabinet jacket metal",
    "bubbled": "bubble bubbling bubbled blister blistering peel",
    "ice": "ice iced snow frost frozen freeze defrost frosted icing",
    "plastic": "plastic rubber insulation jacket casing cover tape coating wrap housing sheathing vinyl pvc grommet knob",
    # Flame and exhaust.
    "fire": "fire flame fireball flames blaze",
    "gets out": "out outside shoot shot lick leap jump escape lap belch poke spit roll blew back rolling rollout shooting licking flare flaring burst bursting front door under underneath up past beyond through around puff flash face blow blowing spill",
    "fireball": "fireball blaze inferno",
    "bang": "boom bang kaboom whoosh woosh whump explode exploded explosion puffback thump blast pop backfire",
    "lights": "light lit ignite ignition burner fire firing flame start kick",
    "fire or gas": "fire flame gas burner burners",
    "duct": "duct ductwork trunk register plenum sheet metal run",
    "wavers": "lift lifting waver wavering dance dancing flicker flickering flutter fluttering jump float floating bend blowing sway yellow yellowish orange lazy sooty reddish unsteady roll move pull suck leap",
    "flame": "flame flames burner burners",
    "flue": "flue chimney fluepipe stack exhaust",
    "parts": "fell fall fallen apart disconnect disconnected loose separated separate part parted detach detached open broke broken hole holes crack cracked split gap pulled slip slipped unhooked hanging dangling collapsed crushed undone popped blocked plugged clogged nest bird squirrel leak leaking missing separating came off sag sagging knocked unsealed unconnected cap gone kicked falling",
    "vent": "vent",
    "room air": "register grille grill cover floor ceiling bedroom supply return duct damper flex boot",
    "rots": "rust rusted rusty corroded corrosion rotted crumbling holes dented bent",
    "out of use": "old abandoned capped unused removed relocate gasketed remove demo new seal sealed",
    "back in": "back into in inside return backward backwards reverse reversed spill spilling leak leaking roll rolling dump dumping pour pouring fill filling downdraft",
    "exhaust": "exhaust fluegas combustion",
    "vents": "vent venting vented dump dumping spill spilling exhaust exhausting blow blowing",
    "into": "into inside in",
    "room": "basement attic garage crawl crawlspace house room closet living hallway kitchen home building bedroom indoors space shop",
    "burner": "furnace gasunit boiler heater plumbing flue fluepipe exhaust chimney draft hood combustion burner",
    "fan": "fan dryer bath bathroom kitchen range cooker microwave",
    "hood": "hood draft diverter",
    "spills": "spill spilling spillage blow blowing back backdraft backwards roll rolling smoke fog fogs fogging foggy hot reverse reversed downdraft pushing",
    "fumes": "fumes",
    "exchanger": "exchanger hx",
    "cracks": "crack cracked cracks split hole holes breach breached rusted broken perforated pinhole gap burnt opened failed",
    "is": "is has have see seen theres found got can saw show shows with",
    # Water.
    "pours": "pour drip overflow spray gush splash rain soak flood trickle drench shower dump stream squirt rained poured sprayed soaked dripping dripped overflowing wet sopping drowned swimming submerged underwater pooling pool",
    "leaks": "leak leaking leaked",
    "sprays": "spray sprayed gush soak soaked drench drenched pour poured overflow splash flood flooded",
    "onto": "on onto over into down through above all in",
    "no water": "air duct return supply seam joint plenum gas oil refrigerant cfm sealed percent pct leakage test tested trunk damper filter ductwork mastic bypass exhaust smoke coil flue fluepipe",
    "piped water": "plumbing washer dishwasher bathtub tub toilet sink sump",
    "breaks": "burst broke break bust busted split leak leaking flood overflow overflowed spray gush rupture ruptured backed failed",
    "water trace": "waterstain leak leaked",
    "wet thing": "furnace unit airhandler blower boiler gasunit electric board panel breaker disconnect outlet motor handler",
    # Anything that people call for help for.
    "help": "911 ambulance emergency evacuated firefighters paramedics emt poisoning asphyxiated",
}
"""The members of each family of words, in their plainest form."""


@dataclass(frozen=True, slots=True)
class Idea:
    """Families of words that mean a danger when they stand together.

    Attributes:
        kind: What the danger is.
        families: Every one must be there, within `within` words of the first of them.
        sure: Whether the danger is told; else it is asked about.
        unless: A family whose presence in the clause makes the sentence ordinary.
        doubt: A family whose presence makes it a question.
        within: How many words the families may stand apart.
    """

    kind: str
    families: tuple[str, ...]
    sure: bool = True
    unless: tuple[str, ...] = ()
    doubt: tuple[str, ...] = ()
    within: int = 7


_AIR: Final = ("no water",)

IDEAS: Final[tuple[Idea, ...]] = (
    Idea("gas", ("gas", "escapes"), doubt=("coolant",)),
    Idea("gas", ("gas", "gas pipe", "damages"), doubt=("purpose",)),
    Idea("gas", ("gas", "gas pipe", "comes off"), sure=False),
    Idea("gas", ("gas", "heard"), sure=False, unless=("served",), within=5),
    Idea("gas", ("gas pipe", "leaks"), sure=False, unless=("no water", "coolant", "electric")),
    Idea("gas", ("sniffer", "reacts"), doubt=("coolant",)),
    Idea("gas", ("alarm", "says", "gas"), unless=("served",)),
    Idea("gas", ("shower", "says", "gas"), sure=False, unless=("served",)),
    Idea("gas", ("explosive limit", "says"), unless=("found nothing",)),
    Idea("gas", ("explosive limit",), sure=False, unless=("found nothing",)),
    Idea("gas", ("bubbles", "soaped"), unless=("no gas bubbles", "coolant")),
    Idea("gas", ("smells", "skunk", "gas place")),
    Idea("gas", ("smells", "skunk"), sure=False),
    Idea("gas", ("hisses", "gas meter"), doubt=("coolant",)),
    Idea("burning", ("electric", "hums", "hot")),
    Idea("burning", ("smells", "live wire")),
    Idea("burning", ("electric", "discoloured"), sure=False, within=4),
    Idea("burning", ("marked", "cabinet"), sure=False, within=6),
    Idea("water_electric", ("damp", "electric"), sure=False, within=6),
    Idea("water_electric", ("wall", "damp", "machine"), sure=False, within=6),
    Idea("water_electric", ("damp", "beneath", "machine"), sure=False, within=6),
    Idea("gas", ("pilot", "is out", "smells"), within=9),
    Idea("burning", ("flashed",), sure=False, unless=("igniter", "shower", "coded")),
    Idea("burning", ("lamp", "flickers"), sure=False),
    Idea("gas", ("gas", "meter", "spins"), sure=False),
    Idea("carbon_monoxide", ("co", "is high"), within=6),
    Idea("carbon_monoxide", ("dioxide", "is high"), sure=False),
    Idea("carbon_monoxide", ("dioxide", "room"), sure=False),
    Idea("carbon_monoxide", ("shower", "says", "co"), unless=("served",)),
    Idea("carbon_monoxide", ("four", "beeps"), unless=("beeper",), within=3),
    Idea("burning", ("electric", "is cooking"), within=8),
    Idea("burning", ("plastic", "bubbles"), sure=False),
    Idea("burning", ("electric", "bubbles"), sure=False),
    Idea("burning", ("paint", "bubbled"), sure=False),
    Idea("burning", ("crackles",), sure=False, unless=("igniter", "duct")),
    Idea("burning", ("component", "is alight"), within=5),
    Idea("burning", ("electric", "hot", "very")),
    Idea("burning", ("electric", "hot"), sure=False, within=4),
    Idea("burning", ("electric", "hums"), sure=False, within=4),
    Idea("burning", ("electric", "bang"), sure=False, within=5),
    Idea("burning", ("smoke", "escapes"), doubt=("soaped",)),
    Idea("burning", ("smoke", "back in")),
    Idea("burning", ("melts", "plastic"), unless=("ice",)),
    Idea("burning", ("melts",), sure=False, unless=("ice",)),
    Idea("shock", ("shock for sure", "touched"), unless=("shock idiom",), doubt=("static",)),
    Idea("shock", ("buzz", "touch", "machine"), doubt=("shock idiom",)),
    Idea("shock", ("voltage", "bare metal"), sure=False, unless=("shock idiom",)),
    Idea("shock", ("shock", "machine"), sure=False, unless=("shock idiom",)),
    Idea("shock", ("shock for sure",), sure=False, unless=("shock idiom",)),
    Idea("flame", ("fire", "gets out"), within=5),
    Idea("flame", ("fireball",)),
    Idea("flame", ("singes",), sure=False),
    Idea("gas", ("fire", "joints"), sure=False),
    Idea("flame", ("exchanger", "parts"), sure=False),
    Idea("flame", ("bang", "fire or gas"), sure=False, unless=("duct",)),
    Idea("flame", ("bang", "lights"), sure=False, unless=("duct",), within=5),
    Idea("flame", ("flame", "wavers"), within=5),
    Idea("flame", ("flue", "parts"), doubt=("out of use", "fan"), within=6),
    Idea("flame", ("vent", "comes off"), sure=False, unless=("room air", "fan"), within=5),
    Idea("flame", ("flue", "rots"), sure=False, within=6),
    Idea("flame", ("exhaust", "back in"), doubt=("fan",), within=6),
    Idea("flame", ("flue", "back in", "room"), doubt=("fan",)),
    Idea("flame", ("burner", "vents", "into", "room"), unless=("fan",)),
    Idea("flame", ("hood", "spills"), doubt=("fan",), within=6),
    Idea("flame", ("fumes", "burner"), unless=("fan",)),
    Idea("flame", ("fumes", "vents"), unless=("fan",)),
    Idea("flame", ("exchanger", "cracks", "is"), within=8),
    Idea("flame", ("exchanger", "cracks"), sure=False),
    Idea("water_electric", ("pours", "electric"), unless=("gas", "flame"), within=10),
    Idea("water_electric", ("pours", "onto", "wet thing"), unless=("gas", "flame", "no water")),
    Idea("water_electric", ("sprays", "wet thing"), unless=("gas", "flame", "smoke", "no water")),
    Idea("water_electric", ("leaks", "onto", "wet thing"), unless=_AIR),
    Idea("water_electric", ("leaks", "electric"), unless=_AIR),
    Idea("water_electric", ("wet source", "runs in", "onto", "electric"), within=9),
    Idea("water_electric", ("wet source", "runs in", "onto", "wet thing"), sure=False, within=9),
    Idea("water_electric", ("water body", "wet thing"), sure=False, unless=("fire",)),
    Idea("water_electric", ("piped water", "breaks"), sure=False),
    Idea("water_electric", ("piped water", "breaks", "wet thing")),
    Idea("water_electric", ("water trace", "wet thing"), sure=False, unless=_AIR),
    Idea("unnamed", ("help",), sure=False),
)
"""What is danger when it is said together."""
