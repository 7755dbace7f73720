"""The words of danger and the ordinary words that resemble them, for `red_flags`.

Tables only. `SAME` turns many ways of saying a thing into one form; it is applied in order to a
lower-case line without apostrophes. `PRESENT` and `UNCLEAR` are looked for in one clause after
that. A word added here needs a phrase in the test.
"""

# ruff: noqa: E501 - one pattern a line reads better than one wrapped over three
from __future__ import annotations

from typing import Final

__all__ = ["CLOSE", "FALSE_FRIENDS", "PRESENT", "SAME", "UNCLEAR"]

SAME: Final[tuple[tuple[str, str], ...]] = (
    # Words that are something else entirely: one token, so that no pattern sees their parts.
    (r"\b(?:duct|dock|duck|fiber|fibre|base|glass) ?boards?\b", "ductboard"),
    (r"\b(?:hot|domestic|well|city|chilled) water\b(?! (?:is )?(?:leak|spray|all over|on the))", "plumbing"),
    (r"\bwater (?:heaters?|tanks?|columns?|collum|gauge|gage|source|softener|meter|pressure|main|lines?|pipes?|stains?|damage|coils?|calm)\b", "plumbing"),
    (r"(?<!in )(?<!about )\b(?:[\d.]+|half an|an|point \w+(?: \w+)?|\w+ tenths(?: of an)?) (?:inches|inch|in) (?:of )?water\b(?! (?:in|on|around|by|near|under|inside))", "inwc"),
    (r"\b(?:refrigerant|freon|tracer) gas\b", "freon"),
    (r"\b(?:flue|exhaust|combustion|stack) gas(?:es)?\b", "exhaust"),
    (r"\b(?:exhaust|bath|bathroom|kitchen|range|hood) (?:fans?|pipes?|hoods?|vents?|vent pipe|duct)\b", "fan"),
    (r"\bsmoke (?:pencils?|tests?|sticks?|bombs?|puffers?|machine|candles?)\b", "tool"),
    (r"\b(?:cigarettes?|cigars?|tobacco|weed|pot|wood|fireplace|campfire|barbecue|bbq|grill)(?: stove)?s? smoke\b", "tobacco"),
    (r"\b(?:used|using|use|theatrical|tracer) smoke\b|\bsmoke (?:seals?|sealed|shows|pulls|pulled)\b", "tool"),
    (r"\bsmoke from (?:the )?(?:fireplace|wood stove|neighbou?rs?|bbq|grill)\b", "tobacco"),
    (r"\b(?:non|no)[ -]?smoking\b", "nonsmoking"),
    (r"\bback ?-?draft dampers?\b", "damper"),
    (r"\bspark (?:igniters?|ignitors?|ignition|plugs?)\b", "igniter"),
    (r"\b(?:float|float switch|condensate|filter|security|burglar|car|clock|fridge|freezer|thermostat|overflow|door) alarms?\b", "buzzer"),
    (r"\balarm (?:clocks?|company|panel|system)\b", "buzzer"),
    (r"\bsick (?:of|inch|inches)\b|\bsick in\b(?= (?:round|flex|pipe|duct|dia|metal)|$)", "six inch"),
    (r"\b(?:is|was|been|be|its|such|whats) (?:a|an|one|the) (?:big |real |huge )?(?:headaches?|pain)\b", "nuisance"),
    (r"\bblow(?:er|ing)? (?:on )?fire\b|\b(?:high|hi|low|lo|main|full|first) fire\b|\bfire (?:rated|rating|damper|dampers|wall|place|code|caulk|department|stop|side|rate)\b", "firing"),
    (r"\b(?:fires?|fired|firing) (?:up|right up|off|on|fine|ok|right)\b", "firing"),
    (r"\bfire ?(?:place|wall|stop|box)\b", "firing"),
    # Idioms in which a "no" denies nothing.
    (r"\bno (?:doubt|question|kidding|joke|wonder|mistake|lie|bs|matter)\b|\b(?:without|not|beyond) (?:a|any) (?:shadow of a )?doubt\b", "surely"),
    # Words run together.
    (r"\b\w{0,3}smel+(?:s|ing|ed)?(?:like|of)?gas\b|\bgas{1,3}mel+\w*", "smell gas"),
    (r"\b[i1]smel+(?:s|ing|ed)?\b", "smell"),
    (r"\b(smells?|smelling|smel|mell)( like| of)? (?:gsa|gaas|gus|gash|gaps|gast|agas)\b", "smell gas"),
    (r"\balarm(?=going|went|sounding|beeping)", "alarm "),
    (r"\b(?:no|dont have a|havent a|not a) (?:idea|clue)\b|\b(?:dont|do not) (?:know|no|understand|get) (?:why|what|whats|where|wheres|how|who)\b", "puzzled"),
    (r"\b(?:not|aint) (?:just|only|kidding|joking|good|normal|right)\b", "surely"),
    (r"\b(?:wont|will not|doesnt|does not|didnt|did not|not|never|hasnt|isnt) (?:(?:go|gone|going|clear|clearing|let|letting) (?:away|up|down)|(?:shut|turn|switch) (?:it )?(?:up|off)|quit|stop|stopped|stopping|quitting|dissipat\w+|fade|fading|leave)\b", "persists"),
    (r"\b(?:cant|cannot|can not|couldnt) (?:believe|stand|take|ignore|get rid of|get away from|find|figure|tell where|tell why|breathe|stop|shut off|turn off|make it stop|get it to stop|silence)\b", "troubled by"),
    (r"\b(?:not|knot|never) (?:too |real |really |very |a hundred percent |100% )?(?:sure|certain|positive)\b|\b(?:dont|do not) (?:know|no) if\b|\b(?:cant|cannot|couldnt) (?:tell|say) (?:if|whether)\b|\bunsure\b", "perhaps"),
    # Carbon monoxide, in the ways it's said, heard and misspelt.
    (r"\bcarb[aoe]n (?:m[oa]n[aoi]\w*|mon ox\w*|di ?oxide)\b", "co"),
    (r"\b(?:see|sea|c|cee|si)[ .-]{0,2}(?:oh|o|0|owe)(?: ?2| two| too)?\.?(?= |$)(?! (?:ring|rings|2|boy)\b)", "co"),
    (r"\bseeoh\b|\bc[o0]2?\b|\bmonoxides?\b", "co"),
    # Gas, smells, alarms.
    (r"\bnat(?:ural)? ?gas\b|\bpropane\b|\blp gas\b|\bgass+\b|\bgaz\b|\bmethane\b", "gas"),
    (r"(?<!smell )(?<!smells )(?<!smelled )(?<!smelling )(?<!mell )(?<!like )(?<!of )\bgas (?:furnaces?|heaters?|heat|heating|packs?|package|water|units?|stoves?|ranges?|ovens?|dryers?|logs?|burners?|bills?|boilers?|fireplaces?|plumbing|fired|appliances?|service|pressure|valves?|input|grill|tech)\b", "gasunit"),
    (r"\bgas (?:company|man|guy|utility|people)\b", "gasman"),
    (r"\b(?:rott?[aeio]n|rotten|roten|rotting|rott?ed|bad|spoiled|rot in|stinky) ?-?(?:egg|eggs|eg|egs|aig|aigs|agg|eggz)\b|\b(?:sul(?:f|ph)[ue]r\w*|mercaptan\w*|sulfer)\b", "rottenegg"),
    (r"\b(?:s?mel+s?|smel|smels|smeel|semll|smll|smells|smellin|smelling|smeling|smelly|smellz|odor|odors|oder|odour|odours|stinks?|stinking|stinky|stench|reeks?|reeking|whiffs?|fumes?|scent|aroma|snell|smeell)\b", "smell"),
    (r"\b(?:smelled|smelt|smeled|stank|reeked)\b", "smelled"),
    (r"\b(?:detectors?|(?<=co )(?:monitor|sensor|thing|thingy|box|machine)|detecters?|ditector|dectector|alarms|alram|alarams?|allarm|larm|monitors|sensor alarm|a larm)\b", "alarm"),
    (r"\b(?:smoke|fire) ?(?:and|&|/|\+) ?co alarm\b|\bco ?(?:and|&|/|\+) ?(?:smoke|fire) alarm\b|\bsmoke co alarm\b", "co alarm"),
    (r"\bco alarm\b", "coalarm"),
    (r"\b(?:smoke|fire) alarm\b", "smokealarm"),
    (r"\b(?:going|goin|goes|gone|go|gong|blowing) (?:of|off|crazy|nuts|wild|again)\b|\b(?:sounding|sounds? loud|blaring|beeping|beepin|beeps|bleeping|ringing|rings|screaming|screeching|wailing|shrieking|buzzing|squealing|triggered|tripping|activated|chiming|alarming|set off|in alarm|alerting|screams|blares)\b", "sounding"),
    (r"\b(?:went|wnet) (?:of|off|crazy)\b|\bsounded\b|\bbeeped\b", "wentoff"),
    (r"\bonce (?:a|per|every|each) (?:minute|min|second|sec|hour|30|45|60|few|couple)\b", "every minute"),
    (r"\bchirp\w*\b|\bcheep\w*\b|\b(?:sounding|beep) (?:about )?(?:one time|1 time|every|1x)(?: (?:a|per|each))? ?(?:30|45|60|40|couple|few)? ?(?:of )?(?:minutes?|min|seconds?|secs?)\b|\bone (?:beep|chirp) (?:a|per|every) min\w*\b|\blow battery\b|\bbattery (?:is )?(?:low|dying)\b", "chirp"),
    # The rest.
    (r"\bair handl\w*\b|\bairhandl\w*\b|\bahu\b", "airhandler"),
    (r"\ba ?/ ?c\b|\ba\.c\.?(?= |$)|\bair ?con(?:d\w*)?\b|\bair conditione?[rd]\w*\b|\bair conditioning\b", "ac"),
    (r"\broll(?:s|ing|ed)? ?-?out\b", "rollout"),
    (r"\bback ?-?draft(?:ing|s|ed)?\b|\bbackdraught\w*\b", "backdraft"),
)  # fmt: skip
"""Pattern and the one form that stands for it, applied from first to last."""

CLOSE: Final[tuple[str, ...]] = (
    "smell", "rotten", "burning", "electrical", "alarm", "smoke", "smoking", "sparks", "sparking",
    "arcing", "hissing", "puddle", "flooded", "water", "flames", "exhaust", "headache", "headaches",
    "dizzy", "nauseous", "monoxide", "beeping", "sounding", "propane", "leaking", "plastic",
    "everywhere", "carbon", "elderly", "infant", "oxygen", "wires", "wiring", "breaker", "furnace",
)  # fmt: skip
"""Words that a misspelt one is taken for: one slip up to seven letters, two from eight."""

FALSE_FRIENDS: Final[frozenset[str]] = frozenset((
    "small", "smalls", "spell", "spells", "shell", "shells", "swell", "swells", "still", "stall",
    "frames", "flared", "flamed", "flange", "flanges", "waste", "wafer", "waiter", "waters",
    "watts", "wider", "rotted", "carton", "carbons", "smoked", "smokes", "smoker", "smokers",
    "smoothing", "spark", "sparkles", "sparky", "spoke", "stroke", "heating", "leaning",
    "leaving", "learning", "lacking", "placing", "hissed", "bearing", "being", "keeping",
    "sealing", "beading", "plastics", "puddles", "electrician", "electricity", "elder", "instant",
    "infants", "wired", "wire", "wiry", "writing", "winding", "wining", "airing", "alarms",
    "floods", "floored", "flooring", "braker", "brakes", "broken", "exhausts", "soldering",
    "rounding", "burnings", "burner", "burners", "burned",
))  # fmt: skip
"""Real words that are one slip from a word of danger and mean something ordinary."""

_A: Final = r"(?:coalarm|smokealarm|alarm)"
_ELECTRIC: Final = r"(?:wires?|wiring|panel|panels|breakers?|electrical?|outlets?|board|boards|controls?|plug|plugs|socket|disconnect|junction|transformer|electronics|fuses?|power cord|cord)"
_UNIT: Final = r"(?:furnace|units?|airhandler|equipment|heater|system|blower|cabinet|boiler|gasunit|heat pump|ac|motor)"
_WATER: Final = r"(?:water|flood|flooded|flooding|puddles?|puddling|soaked|soaking|submerged|underwater|drenched)"
_BURN: Final = r"(?:burning|burnt|burned|burn|electrical?|plastic|rubber|smoke|smoky|smokey|singed|scorched|wires?|wiring|ozone|fire|melting|melted|charred)"

PRESENT: Final[tuple[tuple[str, str], ...]] = (
    ("gas", r"\bsmell(?:ed)?(?: \w+){0,6}? gas\b"),
    ("gas", r"\bgas(?: \w+){0,3}? smell(?:ed)?\b"),
    ("gas", r"\brottenegg\b|\bsmell(?:ed)?(?: \w+){0,4}? egg?[sy]*\b|\begg?[sy]*(?: \w+){0,2}? smell(?:ed)?\b|\bgassy\b"),
    ("gas", r"\bgas(?: \w+){0,5}? leak(?:s|ing|ed|age)?\b(?! (?:test|check|search|detector|checked|tested))"),
    ("gas", r"\bleak(?:s|ing|ed)?(?: \w+){0,3}? gas\b(?! leak (?:test|check))|\bleaky gas\b"),
    ("gas", r"\bgas(?:unit)?(?: \w+){0,5}? (?:hiss|hisses|hissing|escaping|blowing)\b|\b(?:hiss|hisses|hissing)(?: \w+){0,5}? gas(?:unit)?\b|\bescaping gas\b"),
    ("gas", r"\bgas (?:coming|pouring|blowing|is coming|is pouring) (?:out|in|from|up)\b|\bgas (?:in here|in the (?:house|air|basement|room|home|kitchen)|everywhere|filling)\b|\bfull of gas\b|\b(?:hit|cut|broke|ruptured|nicked|damaged) (?:the |a )?gas (?:line|pipe|meter)\b|\bgas (?:line|pipe|meter)(?: \w+){0,3}? (?:hit|cut|broke|broken|ruptured|nicked|damaged|burst)\b"),
    ("carbon_monoxide", r"\b(?:coalarm|alarm)(?: \w+){0,7}? sounding\b|\bsounding(?: \w+){0,4}? (?:coalarm|alarm)\b|\bco sounding\b|\balarm(?: \w+){0,3}? co\b(?: \w+){0,3}? sounding\b"),
    ("carbon_monoxide", r"\b(?:coalarm|alarm)(?: \w+){0,5}? (?:wentoff|full alarm|red light|evacuate)\b|\bset(?:ting)?(?: \w+){0,2}? (?:coalarm|alarm) off\b|\b(?:coalarm|alarm)(?: \w+){0,4}? persists\b|\bco wentoff\b"),
    ("carbon_monoxide", r"\bco (?:leak|leaking|poison\w*|exposure|in the (?:house|home|air|room|basement|living)|in here|is high|high|levels? (?:is |are )?high)\b|\bhigh co\b|\bpoisoned\b"),
    ("carbon_monoxide", r"\b(?:headaches?|dizzy|nause\w*|lightheaded|light headed|vomit\w*|throwing up|feel(?:s|ing)? (?:sick|ill|funny|woozy))\b(?: \w+){0,8}? \b(?:furnace|heat|heater|gasunit|inside|house|outside|everyone|everybody|all of us|whole family|co)\b"),
    ("carbon_monoxide", r"\b(?:everyone|everybody|all of us|we all|whole family|kids|we|furnace|heat|inside|house)\b(?: \w+){0,8}? \b(?:headaches?|dizzy|nause\w*|lightheaded|vomit\w*|throwing up|(?:feel(?:s|ing)?|getting|gets|got) (?:sick|ill|woozy))\b"),
    ("carbon_monoxide", r"\b(?:passed out|unconscious|fainted|collapsed|wont wake|unresponsive)\b"),
    ("burning", rf"\b{_BURN}(?: \w+){{0,3}}? smell(?:ed)?\b|\bsmell(?:ed)?(?: \w+){{0,5}}? {_BURN}\b"),
    ("burning", r"\bsmokealarm(?: \w+){0,7}? (?:sounding|wentoff|persists)\b|\bsounding(?: \w+){0,4}? smokealarm\b"),
    ("burning", r"\bsmoke(?: \w+){0,3}? (?:coming|comes|pouring|billowing|filling|out|rolling|rising|everywhere|in here|in the (?:house|room|air|basement))\b|\b(?:see|seeing|sees|full of|lots of|filling with|there is|theres|is|white|black|gray|grey|some) smoke\b|\bsmoke from\b|\b(?:is|its|started|starts|furnace|unit|motor|blower|board|wires?|panel|breaker) (?:now |still )?smoking\b|\bpuff(?:s|ed)? of smoke\b"),
    ("burning", r"\bspark(?:s|ing|ed)?\b(?! (?:fly|clean))|\barc(?:ing|ed|s)\b|\barc flash\b|\b(?:an|electrical|electric) arc\b"),
    ("burning", r"\b(?:on|caught|catching|is a|theres a|there is a|small|big|see a) fire\b|\bfire (?:in the|coming|out of|inside)\b"),
    ("burning", r"\b(?:melted|melting|charred|burning|scorched|burnt) (?:\w+ )?(?:wires?|wiring|plug|outlet|breaker|insulation on the wires?|connector|board|plastic)\b|\b(?:wires?|wiring|outlet|breaker|panel|plug|connector|board)(?: \w+){0,3}? (?:melted|melting|charred|burning|scorched)\b"),
    ("burning", r"\b(?:something|somethings|its|is|motor|thing|unit|furnace|blower) burning\b(?! (?:up in here|gas|oil|wood|fuel|blue|propane|clean|hot|fine|my|too|more|less))"),
    ("water_electric", rf"\b(?:{_WATER}|dripping|drips|leaking|leaks|wet|rain|raining)(?: \w+){{0,8}}? {_ELECTRIC}\b|\b{_ELECTRIC}(?: \w+){{0,6}}? (?:{_WATER}|dripping|wet)\b"),
    ("water_electric", rf"\b{_WATER}(?: \w+){{0,7}}? {_UNIT}\b|\b{_UNIT}(?: \w+){{0,6}}? {_WATER}\b"),
    ("flame", r"\bsoot(?:y|ed|ing)?\b|\bsoot (?:marks|all)\b"),
    ("flame", r"\b(?:yellow|orange|lazy|red|big|tall|wavy|yellowish)(?: \w+){0,2}? (?:flames?|fire|burner flame)\b|\bflames?(?: \w+){0,5}? (?:yellow|yellowish|orange|lazy|rollout|out|outside|shooting|lifting|dancing|licking|escaping|blowing back)\b|\b(?:shooting|see|seeing|rolling|visible) flames?\b|\bflame rollout\b|\b(?:fire|burners?)(?: \w+){0,3}? (?:rollout|yellow|orange)\b"),
    ("flame", r"\b(?:flames?|fire|burners?|its|is|heat)(?: \w+){0,4}? rollout\b(?! (?:switch|limit))|\brollout(?: \w+){0,3}? (?:flames?|fire|front|burners?)\b|\brollout (?:switch|limit|switches)(?: \w+){0,3}? (?:tripped|trips|tripping|keeps)\b"),
    ("flame", r"\b(?:exhaust|flue|diesel|car|tailpipe|chimney)(?: \w+){0,3}? smell\b|\bsmell(?:ed)?(?: \w+){0,5}? (?:exhaust|flue|diesel|tailpipe|car running|chimney)\b"),
    ("flame", r"\bexhaust(?: \w+){0,3}? (?:in here|in the (?:house|room|basement|home)|inside|leaking|coming)\b"),
    ("flame", r"\bscorch(?:ed|ing|es)?\b|\bspilling (?:out|flue|exhaust|co|at|from|back|into)\b|\b(?:exhaust|flue|hood|vent|heater|plumbing)(?: \w+){0,3}? (?:is |are )?(?:spilling|backdraft|spills)\b|\b(?:is|keeps) backdraft\b"),
)  # fmt: skip
"""Kind and pattern of one clause in which a danger is told."""

UNCLEAR: Final[tuple[tuple[str, str], ...]] = (
    ("gas", r"\b(?:hiss|hisses|hissing)\b(?!(?: \w+){0,6} (?:registers?|vents?|grilles?|grills?|filter|return|supply|duct|air))"),
    ("gas", r"\bgasman(?: \w+){0,5}? (?:leaks?|shut|tag|tagged|turned|found)\b|\b(?:called|calling) (?:\w+ )?gasman\b"),
    ("carbon_monoxide", r"\bcoalarm\b|\balarm\b|\bpossible co\b|\bco (?:problem|issue|scare|trouble|meter sounding)\b"),
    ("carbon_monoxide", r"\b(?:headaches?|dizzy|nause\w*|lightheaded|light headed|vomit\w*|throwing up|woozy)\b|\b(?:feel|feels|feeling|getting|got|gets) sick\b"),
    ("burning", r"\bsmokealarm\b|\bsmoke\b|\bsmoking\b|^(?:theres )?fire$|\bcalled the fire\b"),
    ("burning", r"\b(?:wires?|wiring|outlet|breaker|panel|plug|board)(?: \w+){0,2}? (?:burnt|burned|hot|toasted)\b|\bburnt (?:wires?|board|plug|terminal)\b"),
    ("water_electric", r"\b(?:flood|flooded|flooding|standing water|underwater|submerged)\b|\b(?:water|leaking water)(?: \w+){0,4}? (?:floor|everywhere|ceiling|basement|all over)\b|\bwater (?:leak|leaking|pouring|dripping|coming)\b|\bleaking water\b|\b(?:basement|crawl\w*|garage|closet|utility room)(?: \w+){0,3}? water\b"),
    ("flame", r"\bspill(?:ing|s|age)\b(?!(?: \w+){0,2} (?:test|check|passed|ok|tested))|\bbackdraft\b(?!(?: \w+){0,2} (?:test|check|passed|ok|tested))|\brollout\b|\b(?:cracked|crack in|cracks in|hole in|bad|split) (?:the )?(?:heat exchanger|exchanger|hx|chest)\b|\b(?:heat exchanger|exchanger|hx)(?: \w+){0,3}? (?:crack|cracked|cracks|split)\b|\bburning eyes\b|\beyes(?: \w+){0,2}? (?:burn|burning|watering)\b"),
    ("odd_smell", r"\bsmell(?:ed)?\b"),
)  # fmt: skip
"""Kind and pattern of one clause in which a danger may be meant."""
