"""What people say for blower motors and for the look of a coil; a nickname is one line."""

from typing import Final

__all__ = ["BLOWER_WORDS", "COIL_WORDS"]

BLOWER_WORDS: Final[dict[str, str]] = {
    "psc": (
        "psc|p s c|permanent split capacitor|permanent split|perm split|split capacitor"
        "|capacitor|run capacitor|run cap|capacitor motor|with a cap|standard motor"
        "|regular motor|plain motor|ordinary motor|standard|old style|old school|conventional"
        "|single speed|one speed|1 speed|two speed|2 speed|three speed|3 speed|four speed"
        "|4 speed|single speed motor|induction|induction motor|pee ess see|ac motor"
        "|colored speed wires|coloured speed wires|colored wires|color wires|non ecm|nonecm"
        "|not an ecm|not ecm|no ecm|isn't ecm|pcs motor|basic motor|dumb motor|speed wires"
        "|black blue red wires|psc motor|perm split cap|old fashioned|3 speed tap|4 speed tap"
        "|three speed tap|four speed tap"
    ),
    "ecm_constant_torque": (
        "constant torque|constant talk|constant torc|constant torch|constant tork|five tap"
        "|5 tap|five taps|5 taps|five speed tap|5 speed tap|five tap ecm|non variable ecm"
        "|non variable|multi tap ecm|multi speed ecm|multispeed ecm|torque motor|torque"
        "|const torque|fixed torque|constant tourque|constant tourqe|5 wire plug"
        "|five speed ecm|5 speed ecm|not variable|isn't variable|24 volt taps|24v taps"
        "|five tap plug|ct ecm|ecm ct|ct motor|tap ecm|ecm with taps|ecm taps|multitap ecm"
        "|torque ecm|fixed speed ecm"
    ),
    "ecm_variable": (
        "variable speed|variable|vs|v s|var speed|vari speed|varispeed|varible speed"
        "|variabel speed|variable sped|true ecm|full ecm|real ecm|constant airflow"
        "|constant air flow|constant cfm|constant volume|constant air volume|constant flow"
        "|very able speed|very able|infinitely variable|modulating|modulates|dip switches"
        "|data plug|communicating|ramps up|ramping|variable spd|vspeed|fully variable"
        "|variable airflow|var spd|air flow control|airflow control|16 pin|sixteen pin"
        "|adjusts itself|adjusts its own speed|holds cfm|holds airflow|programmed cfm"
        "|variables speed|varaible speed|veriable speed|veriable|varable speed|variable seed"
        "|infinite speed|inverter|inverter driven|variable frequency"
    ),
    "other": (
        "belt|belt drive|belt driven|belt and pulley|pulley|shaded pole|gravity|no blower"
        "|split phase|three phase|3 phase|other|something else|none of those|none of these"
        "|neither|hydronic|gravity furnace|no fan|belted|v belt|octopus"
    ),
    "ecm": (
        "ecm|e c m|easy m|ecm motor|electronically commutated|electronically commutated motor"
        "|electronic commutated|electronically communicated|brushless|dc motor|bldc|dc"
        "|electronic motor|high efficiency motor|brushless dc|electronic|emc|ecms|e cm"
        "|ec motor|ec m|ec|electrically commutated|commutated|hi efficiency motor"
        "|high efficiency|efficient motor|smart motor|ecm type|computerized"
        "|electronically controlled|has a module|control module|module on the motor|module"
    ),
    "direct": (
        "direct drive|direct|multi speed|multispeed|multi tap|multitap|speed taps|taps"
        "|squirrel cage|wheel|fan|multiple speeds|several speeds|speeds"
    ),
}
"""Blower motors: what is said for each; "ecm" and "direct" need asking."""

COIL_WORDS: Final[dict[str, str]] = {
    "clean": (
        "clean|like new|spotless|brand new|new|shiny|pristine|immaculate|good as new|no dirt"
        "|not dirty|perfect|mint|sparkling|sparkly|spic and span|just cleaned|see through it"
        "|see light through|can see light|squeaky|fresh|unused|clean as a whistle|no dust"
        "|zero dirt|zero dust"
        "|no buildup|nothing on it|mint condition|factory fresh|cleaned it"
        "|cleaned last week|cleaned last month"
        "|see daylight|can see right through|no lint|not a speck|clear|see right through"
        "|isn't dirty|looks new|not dirty at all|bright|washed|looks great|washed it|hosed off"
        "|looks brand new|looks perfect|just installed|installed last month|installed last week"
        "|eat off it|eat off of it|looks good|looks real good"
        "|looks pretty good|looks really good|cleaned today|washed today"
    ),
    "some_dirt": (
        "some dirt|sum dirt|little dirty|a little dirty|bit dirty|a bit dirty|little dusty"
        "|light dust|some dust|durt|dusty|slightly dirty|slightly dusty|some lint|a little lint"
        "|little lint|bit of lint|lint|some fuzz|fuzz|fuzzy|light film|thin film|film|moderate"
        "|moderately dirty|moderately|so so|fair|a few spots|light coating|thin layer"
        "|thin coat|layer of dust|kinda dirty|kind of dirty|sort of dirty|somewhat dirty"
        "|sorta dirty|lightly soiled|light dirt|little bit of dirt|bit of dirt|bit of dust"
        "|little dust|a bit dusty|bit dusty|light|mild|mildly dirty|could be cleaner"
        "|could use a cleaning|could use cleaning|medium|in between|normal dirt|some buildup"
        "|light buildup|some grime|average|a tad dirty|tad dirty|bit grimy|little grimy"
        "|dust on it|minor|a touch dirty|not bad some|some hair|a little hair|some pet hair"
        "|bit of fuzz|little fuzz|partly dirty|partially dirty|little film|bit of a film|some"
        "|a little|a bit|slight|slightly|lightly|light lint|middling|halfway|has dirt"
        "|some stuff|hazy|sooty film|dust bunnies|spotty|grimy in spots|little cruddy"
        "|surface dust|kinda dusty|dirt on it|a little fuzzy|not spotless|light debris"
        "|moderate dirt|smudge|lite dust|lite|lite film|lite coating|grubby|little grubby"
        "|bit grubby"
        "|a little grubby|in the middle|somewhere in the middle|middle of the road|middle|air gets"
        " through|air still gets through|air goes through|still passes air|still breathes"
    ),
    "plugged": (
        "no air getting through"
        "|plugged|clogged|packed|matted|caked|blocked|solid|impacted|choked|plugged up"
        "|plugged solid|clogged up|clogged solid|caked solid|packed solid|carpet|mat"
        "|like a mat|blanket|can't see light through|can't see light|can't see any light"
        "|cant see light|cant see light through|can't see through it|can't see the fins"
        "|cant see the fins|can't see fins|no light through|no air gets through"
        "|nothing gets through|no light|stuffed|packed full|full of lint|full of hair"
        "|full of dirt|covered in hair|covered in lint|covered in dirt|solid with|furry"
        "|sweater|fur coat|wall of|jammed|totally blocked|completely blocked|impassable"
        "|stopped up|pluged|cloged|clogd|plugd|socked in|mud|cemented|felt|like felt|wooly"
        "|woolly|dog hair solid|packed with|caked with|caked on|completely covered"
        "|totally covered|choked off|choked up|encrusted|thick mat|mat of|no airflow through"
        "|obstructed|plastered|layered thick|thick with|gummed up|sealed with dirt|like carpet"
        "|impacted with|bunged|bunged up|chock full|totally plugged|stuffed up|no air through"
        "|won't pass air|fuzzed over|fins are buried|can't see through|cant see through"
        "|can't see daylight|not much air gets through|hardly any air gets through"
        "|barely any air gets through|little air gets through|no air goes through"
    ),
    "dirty": (
        "dirty|pretty dirty|very dirty|really dirty|quite dirty|bad|pretty bad|really bad"
        "|gross|nasty|filthy|disgusting|terrible|needs cleaning|needs a cleaning"
        "|needs to be cleaned|grimy|grungy|moldy|mold|soiled|rough|ugly|not clean|isn't clean"
        "|not great|horrible|awful|crud|cruddy|skanky|dirt|very dusty|really dusty|yucky"
        "|covered|heavy|heavily|half|partly blocked|partially blocked|partially plugged"
        "|partly plugged|partially clogged|half plugged|half clogged|half blocked|badly"
        "|lint trap|like a lint trap|dog hair|pet hair|cat hair|hair|greasy|black|scummy"
        "|hasn't been cleaned"
        "|never been cleaned|never cleaned|a mess|mess"
    ),
    "ok": (
        "ok|not too bad|fairly clean|mostly clean|pretty clean|could be better|seen worse"
        "|not terrible|okay|fine|good|alright|all right|decent|not bad|normal|acceptable"
        "|cleaned every spring|cleaned every year|cleaned regularly|maintained|not too shabby"
        "|not shabby|cleanish|clean ish|good shape|nice|workable|usual|typical"
        "|standard"
    ),
    "ice": (
        "ice|iced|iced up|frozen|frost|frosted|freezing|wet|rusty|rusted|bent|bent fins"
        "|leaking|corroded|oily"
    ),
    "none": (
        "no coil|there isn't one|heat only|doesn't have one|none|not there|no ac"
        "|there is no coil|there's no coil"
    ),
}
"""Coils: what is said for each; "dirty", "ok", "ice" and "none" need asking."""
