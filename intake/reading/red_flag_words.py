"""The words of danger and the ordinary words that resemble them, for `red_flags`.

Tables only. `SAME` turns many ways of saying a thing into one form; it is applied in order to a
lower-case line without apostrophes. `PRESENT` and `UNCLEAR` are looked for in one clause after
that. A word added here needs a phrase in the test.
"""

# ruff: noqa: E501 - one pattern a line reads better than one wrapped over three
from __future__ import annotations

from typing import Final

__all__ = ["CLOSE", "FALSE_FRIENDS", "KEYS", "PRESENT", "SAME", "UNCLEAR"]

SAME: Final[tuple[tuple[str, str], ...]] = (
    # Words that are something else entirely: one token, so that no pattern sees their parts.
    (r"\b(?:duct|dock|duck|fiber|fibre|base|glass) ?boards?\b", "ductboard"),
    (r"\b(?:hot|domestic|well|city|chilled) water\b(?! (?:is )?(?:leak|spray|all over|on the))", "plumbing"),
    (r"\bwater (?:heaters?|tanks?|columns?|collum|gauge|gage|source|softener|meter|pressure|main|lines?|pipes?|coils?|calm)\b", "plumbing"),
    (r"(?<!in )(?<!about )\b(?:[\d.]+|half an|an|point \w+(?: \w+)?|\w+ tenths(?: of an)?) (?:inches|inch|in) (?:of )?water\b(?! (?:in|on|around|round|by|near|under|inside|at|over|all|up|below|beside|next))", "inwc"),
    (r"\b(?:refrigerant|tracer) gas\b", "refrigerant"),
    (r"\b(?:flue|exhaust|combustion|stack) gas(?:es)?\b", "exhaust"),
    (r"\b(?:bath|bathroom|kitchen|range|hood|dryer|cooker|whole house|attic) (?:exhaust )?(?:fans?|pipes?|hoods?|vents?|vent pipe|duct)\b|\bexhaust (?:fans?|hoods?)\b|\bvent (?:fans?|hoods?)\b", "fan"),
    (r"\b(?:flues?|vents?|exhaust|chimneys?|smoke|smokestack|b[ -]?vent|draft|combustion) ?(?:vent )?(?:pipes?|connectors?|piping|liner|stacks?|pvc|cap|elbows?|tee|termination|run)\b|\bsmokestack\b|\bsingle wall(?: \w+)? pipe\b|\bstack pipe\b|\bb[ -]?vents?\b", "fluepipe"),
    (r"\b(?:supply|return|air|leaving|duct|floor|ceiling|wall) outlets?\b|\boutlet (?:air|temp\w*|side|duct|static|pressure|plenum)\b", "register"),
    (r"\bbz+t+\b", "arcing"),
    (r"\b(?:looks?|looking|turned|turning|gone|went|getting) (?:a )?(?:little |bit |kinda |all )*(?:brown|black|dark)(?:ish|ened)?\b(?= *(?:$|[,.;!|?]))", "discoloured"),
    (r"\bhot(?:ter)? (?:than|as) blazes\b|\bhot as (?:hell|an oven|a furnace)\b", "very warm"),
    (r"\bfire (?:me|him|her|us|them|off|over|away)\b(?! (?:when|if|with|from|and))", "firing"),
    (r"\bsmoke[ -]?test(?:ed|ing)?\b|\bfog pen\b", "tool"),
    (r"\b(?:both|all|still|just|now|are|is) going(?= *(?:$|[,.;!|]))", "sounding"),
    (r"\b(?:roast|dinner|supper|bacon|coffee|toast|cookies|popcorn|soup|onions|curry|bread|pizza|candle\w*|incense|laundry|soap)\b(?= (?:in|on|from|at|cooking)|$)", "food"),
    (r"\b(?:stomach|tummy) (?:bug|flu)\b|\bfood poisoning\b|\bhung ?over\b|\b(?:bug|virus|covid|flu|cold) (?:is )?going (?:a?round)\b|\bmorning sickness\b|\ballerg\w+\b", "bug going around"),
    (r"\bcant decide\b|\bhard to (?:tell|say)\b|\bcant (?:really )?tell(?: (?:if|how|what|whether|which))?\b", "perhaps"),
    (r"\bsmou?lder(?:ing|s|ed)?\b|\bembers?\b(?! (?:is|in) (?:the )?(?:fireplace|stove|fire pit))", "smoke smoking"),
    (r"\barc[ -]?faults?(?: breakers?| circuits?)?\b|\bafci\b", "breaker"),
    (r"\bit ?s? (?:is )?(?:just |like )?burning up (?=(?:in|up|out)\b)", "its hot "),
    (r"\bsmoking (?:deal|fast|good|price)\b|\bsmokin deal\b", "good"),
    (r"\bsmell\w* of (?:cigarettes?|tobacco|weed)\b|\b(?:guy|tech|man|he|she|owner|tenant) (?:smell\w*|reek\w*|stank) of smoke\b", "tobacco"),
    (r"\bstatic (?:shocks?|electricity|zaps?|cling)\b", "carpet"),
    (r"\bsoot[ -]free\b|\bfree of soot\b", "no soot"),
    (r"\bburn(?:ed|s|ing)? (?:\w+ )?(?:cords?|loads?|stacks?|lots) of wood\b", "tobacco"),
    (r"\bfires? (?:was |is |were |are )?(?:lit |going |burning )?in the (?:fireplace|wood ?stove|fire ?pit|hearth)\b", "firing"),
    (r"\bdizzying\b", "many"),
    (r"\bsick (?:just |from |of )?(?:looking|hearing|thinking)\b", "fedup"),
    (r"\bhot (?:wires?|leg|side|deck|roof|spot|spots|feed|lead|terminal|surface \w+)\b", "livepart"),
    (r"\b(?:flood|work|head) ?lights?\b|\bflood ?lamps?\b", "lamp"),
    (r"\bwater (?:stain\w*|damage|marks?)\b", "waterstain"),
    (r"\bsmoke (?:pencils?|tests?|sticks?|bombs?|puffers?|machine|candles?)\b", "tool"),
    (r"\b(?:cigarettes?|cigars?|tobacco|weed|pot|wood|fireplace|campfire|barbecue|bbq|grill)(?: stove)?s? smoke\b", "tobacco"),
    (r"\b(?:used|using|use|theatrical|tracer) smoke\b|\bsmoke (?:seals?|sealed|shows|pulls|pulled)\b", "tool"),
    (r"\bsmoke came out (?:of )?my ears\b|\bsmoke from (?:the )?(?:fireplace|wood stove|neighbou?rs?|bbq|grill)\b", "tobacco"),
    (r"\b(?:non|no)[ -]?smoking\b", "nonsmoking"),
    (r"\bback ?-?draft dampers?\b", "damper"),
    (r"\bspark (?:igniters?|ignitors?|ignition|plugs?)\b", "igniter"),
    (r"\b(?:float|float switch|condensate|filter|security|burglar|car|clock|fridge|freezer|thermostat|overflow|door) alarms?\b", "buzzer"),
    (r"\balarm (?:clocks?|company|panel|system|code|codes|keypad)\b", "buzzer"),
    (r"\bsick (?:of|inch|inches)\b|\bsick in\b(?= (?:round|flex|pipe|duct|dia|metal)|$)", "six inch"),
    (r"\b(?:is|was|been|be|its|such|whats) (?:a|an|one|the) (?:big |real |huge )?(?:headaches?|pain)\b", "nuisance"),
    (r"\b(?:(?:form|job|questions?|paperwork|app|program|layout|ductwork|ducts|math|owner|customer|boss|permit|inspector|quote|screen|survey|thing|install|return|trunk|crawl\w*|thermostat)(?: \w+){0,4}? headaches?|(?:what )?a headache (?:of|to|job)|headaches? (?:of|trying|getting|with the (?:permit|customer|owner)))\b", "nuisance"),
    (r"\b(?:sick|tired) (?:and tired )?of\b|\b(?:out|call\w*|home|off|day|days|leave) sick\b|\bsick (?:day|leave|today)\b", "fedup"),
    (r"\bblow(?:er|ing)? (?:on )?fire\b|\b(?:high|hi|low|lo|main|full|first) fire\b|\bfire[ -]?(?:rated|rating|damper|dampers|wall|place|code|caulk|stop|side|rate|chief\w*|station|house|pit|wood|hydrant|marshal|inspector|extinguishers?|tape|barrier|break|proof|resist\w*|blocking|sprinklers?)\b", "firing"),
    (r"\b(?:fires?|fired|firing) (?:it up|up|right up|off|on|fine|ok|right)\b|\b(?:to|wont|doesnt|didnt|will|would|not|never|cant|can|must|dont|should|and) fire\b(?! (?:is|com\w+|in|out|shoot\w*|lick\w*|flash\w*|under|at the))|\bfire(?:s|d)? (?:the|this|that|at)\b", "firing"),
    (r"\bfire ?(?:place|wall|stop(?:s|ping)?|box)\b", "firing"),
    (r"\b(?:cut|cutting|drill\w*|saw\w*|punch\w*) (?:a |an |the |new |bigger )*(?:holes?|openings?|slots?|notch) for\b", "opening"),
    (r"\b(?:isnt|not|aint|wasnt|never|no longer|arent) (?:\w+ )?(?:connected|attached|hooked (?:up|to|on)|hooked|joined)\b", "disconnected"),
    (r"\b(?:knock(?:ed|s)|threw|throws|put) (?:me|him|her|you|us) (?:on|off|down|back|across|flat)\b|\b(?:is|its) live\b(?= (?:when|if|to)|$)", "zapped"),
    (r"\b(?:going to|gonna|about to|might|nearly|almost) (?:faint|pass out|black out|collapse|throw up|puke|vomit)\b", "illness dizzy"),
    (r"\b(?:dogs?|cats?|pets?|birds?|parrots?) (?:is |are |was )?(?:acting |been )*(?:drunk|limp|dead|died|keeled|staggering|wobbly|lethargic|collapsed|sick|throwing up)\b", "illness"),
    (r"\b(?:baby|infant|kid|child|son|daughter|he|she|wife|husband|mom|dad)(?: is|s)? (?:limp|blue|not moving|wont move|floppy|turning blue)\b", "passed out"),
    (r"\b(?:keel(?:ed|s|ing)? over|(?<!its )(?<!it )(?<!it is )(?<!furnace )(?<!furnace is )(?<!heat )(?<!heat is )(?<!unit )(?<!unit is )(?<!system )(?<!system is )(?<!ac )(?<!ac is )out cold|went (?:down|limp)|gone limp|on the (?:floor|ground) (?:and )?not|laid out)\b", "passed out"),
    (r"\b(?:better|fine|ok|okay|good|goes away|clears?(?: up)?) (?:\w+ ){0,4}?(?:outside|outdoors|step out|stepped out|go out|going out|leave|left|get out|fresh air|away from (?:the )?(?:house|furnace|it))\b", "illness"),
    (r"\b(?:backed|drove|crashed|bumped|plowed|slid|rammed|knocked|fell)(?: \w+){0,3}? (?:into|over|on)\b|\bran (?:into|over)\b", "rammed"),
    (r"\bballs? of (?:fire|flames?)\b", "fireball"),
    (r"\bdrip ?legs?\b", "leg"),
    (r"\b(?:snow|ice) ?melt(?:ing)?(?: is)?\b|\bmelting (?:snow|ice)\b|\bmeltwater\b", "water"),
    (r"\b(\w*bab\w+|kids?|he|she|hes|shes|im|we are|mom|dad|son|daughter|grand\w+)( is| are)? burning up\b", r"\1 heatstroke"),
    (r"\bheat ?stroke\b|\bnot sweating\b|\bhot dry skin\b|\bskin is (?:hot|red) and dry\b", "heatstroke"),
    (r"\beyes?(?: \w+)? (?:burn\w*|sting\w*|water(?:ing|s)?)\b", "illness"),
    # Idioms in which a "no" denies nothing.
    (r"\bno (?:doubt|question|kidding|joke|wonder|mistake|lie|bs|matter)\b|\b(?:without|not|beyond) (?:a|any) (?:shadow of a )?doubt\b", "surely"),
    # Spelt letters and words run together.
    (r"\bg[ .-]a[ .-]s\b", "gas"),
    (r"\bgass?e?y\b", "gas smell"),
    (r"\b(gas|gass|gaz|propane|water|natural) (?:leeks?|leaking|leeking|leakin)\b", r"\1 leak"),
    # People who are ill.
    (r"\b(?:cant|cannot|can not|couldnt|could not|hardly|barely|trouble|hard|harder|tough|difficult\w*|struggl\w+|problems?|hurts?|labored|short\w*) (?:even |hardly |really |seem to |to |with |of |time |for (?:me|him|her|us|them) )*(?:breath\w*|(?:get|take|draw) (?:a |my |any )?(?:good |full |deep |decent |proper )*breath|catch(?:ing)? (?:my|her|his|our|their|a|any|your) breaths?|get (?:my|a|any|enough|our) (?:breath|air|oxygen))\b|\bgasping\b|\bwheezing\b|\bsuffocat\w+|\bchoking\b|\bcant quit coughing\b|\bcoughing\b", "illness"),
    (r"\b(?:cant|cannot|couldnt|wont|not|hard to|isnt|arent|unable to|trouble|having trouble|can barely|can hardly|barely) (?:\w+ ){0,2}?(?:wake|waking|wakes|be woken|stay awake|staying awake|get (?:him|her|them|mom|dad|up)(?: up)?|responding|rouse|think straight|stand up straight|keep (?:my|her|his|our|their) eyes open)\b|\b(?:unresponsive|unconscious|passing out|blacked out|blacking out|nodding off|in and out of it|out of it)\b", "passed out"),
    (r"\b(?:heads?|temples|skull)(?: (?:is|are|all|really|just|now|been|keeps?|starts?|started|feels?|feeling)){0,3} (?:hurts?|hurting|pound\w*|split\w*|throb\w*|aches?|aching|spin\w*|swim\w*|killing|bang\w*|light|foggy|fuzzy|heavy)\b|\b(?:splitting|pounding|bad|terrible) head\b|\bmigraines?\b|\bhead ?aches?\b", "headache"),
    (r"\bflu[ -]?(?:like|ish)\b|\b(?:like|got|have|has|having) (?:\w+ ){0,3}?(?:the |a )?flu\b|\bflu symptoms\b|\bhung ?over\b|\bchest (?:pains?|hurts|hurting|is tight|tight\w*|feels tight)\b|\bblue lips\b|\blips (?:are |turning )*blue\b|\b(?:slurr?ing|slurred|confused and|disoriented|delirious|lethargic|groggy|drugged|stoned|drowsy|sleepy|queasy|queezy|loopy|woozie|woozy|puk\w+|barf\w*|unwell|wobbly)\b|\b(?:not|isnt|arent|aint) making (?:any |much )?sense\b|\b(?:i|we|he|she|they|im|were|hes|shes|everyone|everybody|kids?|wife|husband|mom|dad|family|me|all|us|people|tenants?|customer|homeowner)(?: \w+){0,3}? (?:feel|feels|feeling|felt|get|gets|getting|got|look|looks|acting) (?:\w+ )?(?:faint|off|weak|foggy|drunk|sick|ill|bad|rotten|crummy|nasty|horrible|tipsy|floaty|wiped|like (?:crap|garbage|death|hell|junk)|half dead|not right|not good|funny|lousy|terrible|awful|weird|strange|sleepy|rough|crappy|pale|worse|tired)\b", "illness"),
    (r"\b(?:blue|bright|white|big|electric\w*) flash(?:es|ed)?\b|\bflash of (?:light|blue|white)\b", "arcing"),
    (r"\b(?:nobody|no one|noone|none of (?:us|them)|nobody here)(?: \w+){0,3}? can (?:\w+ )?(?:stay awake|keep awake|wake|breathe?|think)\w*", "passed out"),
    (r"\b(?:get|gets|got|gonna get|you) lit(?: up)?\b|\b(?:get|gets|got) (?:fried|popped|nailed) (?:by|off|touching|grabbing|when)\b", "zapped"),
    (r"\bflar(?:e|es|ed|ing)[ -]?ups?\b", "flareup"),
    (r"\b(?:get|gets|got|gonna get|you) bit(?:ten)?\b(?! (?:of|more|hot|cold|by))|\bbites? (?:me|you|ya|us|back)\b|\bbit me\b|\blights? (?:me|you|ya) up\b|\blit me up\b", "zapped"),
    # Words run together.
    (r"\b\w{0,3}smel+(?:s|ing|ed)?(?:like|of)?gas\b|\bgas{1,3}mel+\w*", "smell gas"),
    (r"\b[i1]smel+(?:s|ing|ed)?\b", "smell"),
    (r"\b(smells?|smelling|smel|mell)( like| of)? (?:gsa|gaas|gus|gash|gaps|gast|agas)\b", "smell gas"),
    (r"\balarm(?=going|went|sounding|beeping)", "alarm "),
    (r"\b(?:no|dont have a|havent a|not a) (?:idea|clue)\b|\b(?:dont|do not) (?:know|no|understand|get) (?:why|what|whats|where|wheres|how|who)\b", "puzzled"),
    (r"\b(?:not|aint) (?:just|only|kidding|joking|good|normal|right)\b", "surely"),
    (r"\b(?:wont|will not|doesnt|does not|didnt|did not|not|never|hasnt|isnt) (?:(?:go|gone|going|clear|clearing|let|letting) (?:away|up|down)|(?:shut|turn|switch) (?:it )?(?:up|off)|quit|stop|stopped|stopping|quitting|dissipat\w+|fade|fading|leave)\b", "persists"),
    (r"\b(?:cant|cannot|can not|couldnt) (?:believe|stand|take|ignore|get rid of|get away from|find|figure|tell where|tell why|stop|shut off|turn off|make it stop|get it to stop|silence)\b", "troubled by"),
    (r"\b(?:not|knot|never) (?:too |real |really |very |a hundred percent |100% )?(?:sure|certain|positive)\b|\b(?:dont|do not) (?:know|no) if\b|\b(?:cant|cannot|couldnt) (?:tell|say) (?:if|whether)\b|\bunsure\b", "perhaps"),
    # Carbon monoxide, in the ways it's said, heard and misspelt.
    (r"\bcarbon(?= (?:alarms?|alrm|detectors?|sensor|monitor)\b)", "co"),
    (r"\bcarb[aoe]n di ?oxide(?= (?:alarm|alram|alrm|detect))|\bc[o0]2(?= (?:alarm|alrm|alram|detect|sensor|monitor|thing))", "co"),
    (r"\bcarb[aoe]n di ?oxide\b|\bc[o0]2\b|\bdioxide\b", "codioxide"),
    (r"\bcarb[aoe]n (?:m[oa]n[aoi]\w*|mon ox\w*)\b", "co"),
    (r"\b(?:see|sea|c|cee|si)[ .-]{0,2}(?:oh|o|0|owe)(?: ?2| two| too)?\.?(?= |$)(?! (?:ring|rings|2|boy)\b)", "co"),
    (r"\bseeoh\b|\bc\.?o\.?(?= |$)|\bc[o0]\b|\bmonoxides?\b", "co"),
    # Gas, smells, alarms.
    (r"\b(?:refrigerant|coolant|halogen|heated diode) (?:leak )?(?:detectors?|sniffers?|alarms?|sensors?)\b", "tool refrigerant"),
    (r"\b(?:(?:combustible|natural) )?(?:(?:gas|propane|lp) )?(?:leak detectors?|leak seeker|sniffers?)\b|\b(?:(?:combustible|natural) )?(?:gas|propane|methane|lp) (?:leak )?(?:detectors?|alarms?|sensors?|monitors?|testers?)\b|\bcombustible (?:\w+ )?(?:detector|meter|sensor|alarm)\b|\btif\b|\bcgi\b|\bsnifer\b|\bsniffing (?:tool|wand)\b|\bgas wand\b", "sniffer"),
    (r"\bnat(?:ural)? ?gas\b|\bpropane\b|\blp gas\b|\bgass+\b|\bgaz\b|\bmethane\b", "gas"),
    (r"(?<!smell )(?<!smells )(?<!smelled )(?<!smelling )(?<!mell )(?<!like )(?<!of )\bgas (?:furnaces?|heaters?|heat|heating|packs?|package|water|units?|stoves?|ranges?|ovens?|dryers?|logs?|burners?|bills?|boilers?|fireplaces?|plumbing|fired|appliances?|pressure|valves?|input|grill|tech)\b", "gasunit"),
    (r"\bgas (?:company|man|guy|utility|people)\b", "gasman"),
    (r"\blike (?:\w+ ){0,3}?eggs?\b|\beggs? (?:gone|went|that|left|smell\w*) (?:off|bad|rotten|out)\b", "rottenegg"),
    (r"\b(?:rott?[aeio]n|rotten|roten|rotting|rott?ed|bad|spoiled|rot in|stinky) ?-?(?:egg|eggs|eg|egs|aig|aigs|agg|eggz)\b|\b(?:sul(?:f|ph)[ue]r\w*|mercaptan\w*|sulfer)\b", "rottenegg"),
    (r"\b(?:s?mel+s?|smel|smels|smeel|semll|smll|smells|smellin|smelling|smeling|smelly|smellz|odor|odors|oder|odour|odours|stinks?|stinking|stinky|stench|reeks?|reeking|whiffs?|scent|aroma|snell|smeell)\b", "smell"),
    (r"\b(?:fumes?|fuming)\b", "fumes smell"),
    (r"\b(?:smelled|smelt|smeled|stank|reeked)\b", "smelled"),
    (r"\b(?:detectors?|(?<=co )(?:monitor|sensor|thing|thingy|box|machine|unit)|detecters?|ditector|dectector|alarms|alram|alarams?|alrm|alrms|allarm|larm|monitors|sensor alarm|a larm)\b", "alarm"),
    (r"\b(?:smoke|fire) ?(?:and|&|/|\+) ?co alarm\b|\bco ?(?:and|&|/|\+) ?(?:smoke|fire) alarm\b|\bsmoke co alarm\b", "co alarm"),
    (r"\bco alarm\b|\balarm for (?:the )?co\b", "coalarm"),
    (r"\b(?:smoke|fire) alarm\b", "smokealarm"),
    (r"\b(?:going|goin|goes|gone|go|gong|blowing) (?:of|off|crazy|nuts|wild|again)\b|\b(?:sounding|sounds? loud|blaring|beeping|beepin|beeps|bleeping|ringing|rings|screaming|screeching|wailing|shrieking|buzzing|squealing|triggered|tripping|activated|chiming|alarming|set off|(?<!plug )in alarm|alerting|screams|blares|holler\w*|yelling|yells|singing|shouting|honking|crying|squawking|making (?:a |an? awful )?(?:racket|noise)|raising hell|(?:just |has |now )*start(?:ed|ing)(?: up)?(?= *$)|wont quit|wont shut up)\b", "sounding"),
    (r"\b(?:four|4) (?:chirps?|beeps?|bleeps?|tones?)(?: \w+){0,3} (?:pause|over and over|again and again|repeat\w*|nonstop|constantly)\b|\bmove to fresh air\b|\bevacuate\b(?= *$)", "coalarm sounding"),
    (r"\b(?:went|wnet) (?:of|off|crazy)\b|\bsounded\b|\bbeeped\b", "wentoff"),
    (r"\bonce (?:a|per|every|each) (?:minute|min|second|sec|hour|30|45|60|few|couple)\b", "every minute"),
    (r"\bchirp\w*\b|\bcheep\w*\b|\b(?:sounding|beep) (?:about )?(?:one time|1 time|every|1x)(?: (?:a|per|each))? ?(?:30|45|60|40|couple|few)? ?(?:of )?(?:minutes?|min|seconds?|secs?)\b|\bone (?:beep|chirp) (?:a|per|every) min\w*\b|\blow battery\b|\bbattery (?:is )?(?:low|dying)\b", "chirp"),
    # The rest.
    (r"\bair handl\w*\b|\bairhandl\w*\b|\bahu\b", "airhandler"),
    (r"\ba ?/ ?c\b|\ba\.c\.?(?= |$)|\bair ?con(?:d\w*)?\b|\bair conditione?[rd]\w*\b|\bair conditioning\b", "ac"),
    (r"\b(?:fuse|breaker|disconnect|junction|electric\w*|j|service) (?:box|boxes|panel)\b", "breaker"),
    (r"\b(?:flues?|chimneys?|hoods?|water heater|plumbing|fluepipe|furnace|stack)(?: \w+){0,3}? (?:no|not|isnt|wont|zero|never|hardly any|barely any) draft(?:ing)?\b|\b(?:no|zero|not any|hardly any) draft (?:at|up|in|on) (?:the )?(?:flue|chimney|hood|stack|fluepipe|draft hood)\b", "backdraft hood spilling"),
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
    "floods", "floored", "flooring", "braker", "brakes", "broken", "exhausts", "soldering", "starting", "started", "stalling", "packing", "parking",
    "leading", "leaping", "leasing", "sell", "sells", "sharing", "spacing", "spring", "springs",
    "standing", "waver", "wavers", "wares", "wipes", "wives", "wines", "wifes", "sparring", "spraying", "soaking", "speaking", "barking",
    "rounding", "burnings", "burner", "burners", "burned",
))  # fmt: skip
"""Real words that are one slip from a word of danger and mean something ordinary."""

_A: Final = r"(?:coalarm|smokealarm|alarm)"
_ELECTRIC: Final = r"(?:wires?|wiring|panel|panels|breakers?|electrical?|outlets?|board|boards|controls?|plug|plugs|socket|disconnect|junction|transformer|electronics|fuses?|power cord|cord|fixtures?|receptacles?|power strip)"
_UNIT: Final = r"(?:furnace|units?|airhandler|equipment|heater|system|blower|cabinet|boiler|burners?|gasunit|heat pump|ac|motor)"
_WATER: Final = r"(?:water|flood|flooded|flooding|puddles?|puddling|soaked|soaking|submerged|underwater|drenched)"
_BURN: Final = r"(?:burning|burnt|burned|burn|electrical?|plastic|rubber|smoke|smoky|smokey|singed|scorched|wires?|wiring|ozone|acrid|fishy|fire|melting|melted|charred)"

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
    ("carbon_monoxide", r"\b(?:says?|saying|said|yell\w*|announc\w*|telling|warning)(?: \w+){0,3}? co\b(?! \d| (?:is|was|at|detect\w*) )"),
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
    ("flame", r"\b(?:exhaust|flue|diesel|car|tailpipe|chimney)(?: \w+){0,3}? smell\b|\bsmell(?:ed)?(?: \w+){0,5}? (?:exhaust|flue|diesel|tailpipe|car running|chimney|(?:school )?bus|truck|lawn ?mower|generator|engine|garage with)\b"),
    ("carbon_monoxide", r"\balarm(?: \w+){0,5}? chirp\w* (?:nonstop|constant\w*|all the time)\b|\bcoalarm(?: \w+){0,5}? chirp\w* (?:nonstop|constant\w*|all the time)\b"),
    ("flame", r"\bexhaust(?: \w+){0,3}? (?:in here|in the (?:house|room|basement|home)|inside|leaking|coming)\b"),
    ("flame", r"\bscorch(?:ed|ing|es)?\b|\bspilling (?:out|flue|exhaust|co|at|from|back|into)\b|\b(?:exhaust|flue|hood|vent|heater|plumbing)(?: \w+){0,3}? (?:is |are )?(?:spilling|backdraft|spills)\b|\b(?:is|its|keeps|starts) backdraft\b"),
)  # fmt: skip
"""Kind and pattern of one clause in which a danger is told."""

UNCLEAR: Final[tuple[tuple[str, str], ...]] = (
    ("gas", r"\bthere (?:was|were|is|might be|may be) (?:some |a little |a bit of )?gas\b(?! (?:furnace|line|meter|service|heat|stove|pipe))"),
    ("gas", r"\b(?:hiss|hisses|hissing)\b(?!(?: \w+){0,6} (?:registers?|vents?|grilles?|grills?|filter|return|supply|duct|air))"),
    ("gas", r"\beggs?\b(?! (?:crate|carton|shell))"),
    ("gas", r"\b(?:could|might|may|must|has to) be (?:a )?gas\b(?! or oil)|\bstove (?:was |is |been )?(?:left )?on\b"),
    ("gas", r"\bgasman(?: \w+){0,5}? (?:leaks?|shut|tag|tagged|turned|found)\b|\b(?:called|calling) (?:\w+ )?gasman\b"),
    ("carbon_monoxide", r"\bits? (?:is )?out cold\b"),
    ("carbon_monoxide", r"\bcoalarm\b|\balarm\b|\bpossible co\b|\bco (?:problem|issue|scare|trouble|meter sounding)\b"),
    ("carbon_monoxide", r"\b(?:headaches?|dizzy|nause\w*|lightheaded|light headed|vomit\w*|throwing up|woozy)\b|\b(?:feel|feels|feeling|getting|got|gets) sick\b"),
    ("burning", r"\bburn(?:ed|t)? (?:marks?|spots?|stains?|patch\w*)\b|\bsmokealarm\b|\bsmoke\b|\bsmoki?n\b|\bsmoking\b|\bfires?\b|\bhaz(?:e|y)\b|\b(?:exploded?|explosion|blew up|blown up)\b"),
    ("burning", r"\b(?:wires?|wiring|outlet|breaker|panel|plug|board)(?: \w+){0,2}? (?:burnt|burned|hot|toasted)\b|\bburnt (?:wires?|board|plug|terminal)\b"),
    ("water_electric", r"\b(?:mechanical|utility|furnace|equipment|boiler|laundry) room(?: \w+){0,6}? (?:water|wet|soaked)\b|\b(?:inch|inches|foot|feet) of water\b"),
    ("water_electric", r"\b(?:wet|damp|soggy|moist) (?:\w+ )?(?:spots?|patch\w*|ring|ceiling|drywall|carpet|walls?)\b|\b(?:spots?|patch|ceiling|drywall|carpet|walls?) (?:\w+ ){0,2}?(?:is|are|feels|looks|got|getting) (?:\w+ )?(?:wet|damp|soggy|moist)\b|\b(?:ceiling|drywall|walls?|roof)(?: \w+){0,4}? (?:dripp?\w*|leak\w*)\b"),
    ("water_electric", r"\b(?:flood|flooded|flooding|standing water|underwater|submerged)\b|\b(?:water|leaking water)(?: \w+){0,4}? (?:floor|everywhere|ceiling|basement|all over)\b|\bwater (?:leak|leaking|pouring|dripping|coming)\b|\bleaking water\b|\b(?:basement|crawl\w*|garage|closet|utility room)(?: \w+){0,3}? water\b"),
    ("flame", r"\bspill(?:ing|s|age)\b(?!(?: \w+){0,2} (?:test|check|passed|ok|tested))|\bbackdraft\b(?!(?: \w+){0,2} (?:test|check|passed|ok|tested))|\brollout\b|\b(?:cracked|crack in|cracks in|hole in|bad|split) (?:the )?(?:heat exchanger|exchanger|hx|chest)\b|\b(?:heat exchanger|exchanger|hx)(?: \w+){0,3}? (?:crack|cracked|cracks|split)\b|\bburning eyes\b|\beyes(?: \w+){0,2}? (?:burn|burning|watering|sting|stinging)\b|\bred ?tag\w*\b|\bcondemned\b|\bunsafe\b"),
    ("unnamed", r"\b(?:fire|police) (?:department|dept|truck|trucks|engine|crew)\b|\b(?:evacuated?|evacuating)\b(?! (?:the |a |and |it |to |for )*(?:line\w*|system|unit|refrigerant|coil|vacuum|micron\w*|\d+|charge\w*))|\b(?:dangerous|hazardous|unsafe)\b"),
    ("odd_smell", r"\bsmell(?:ed)?\b"),
)  # fmt: skip
"""Kind and pattern of one clause in which a danger may be meant."""

KEYS: Final[dict[str, tuple[str, ...]]] = {
    "gas": ("gas", "egg", "hiss", "stove"),
    "carbon_monoxide": (
        "alarm", "co", "poison", "ache", "dizzy", "naus", "light", "vomit",
        "throwing", "sick", "ill", "woozy", "passed", "unconscious", "faint", "collapsed", "wake",
        "unresponsive", "feel", "got", "gets", "getting",
    ),
    "burning": (
        "smell", "smok", "spark", "arc", "fire", "melt", "char", "burn", "scorch", "haz", "explo",
        "blew", "blown", "wire", "wiring", "outlet", "breaker", "panel", "plug", "board",
    ),
    "water_electric": (
        "water", "flood", "puddl", "soak", "submerged", "drench", "drip", "leak", "wet", "rain",
        "damp", "sogg", "moist", "inch", "foot", "feet",
    ),
    "flame": (
        "soot", "flame", "fire", "burner", "rollout", "smell", "exhaust", "scorch", "spill",
        "backdraft", "exchanger", "hx", "chest", "eyes", "tag", "condemned", "unsafe",
    ),
    "unnamed": ("fire", "police", "evacuat", "dangerous", "hazardous", "unsafe"),
    "odd_smell": ("smell",),
}  # fmt: skip
"""Pieces of words of which a clause has one if any pattern of the kind can match it."""
