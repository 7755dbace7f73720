"""The axes on which an answer that says neither yes nor no lies: condition, access, noise ..."""

from typing import Final

__all__ = ["AXES"]

AXES: Final[dict[str, tuple[str, str]]] = {
    "direction": (
        "one direction|one way|single direction|same direction|one side|one direction only",
        (
            "both ways|two ways|both directions|two directions|both sides|two sides|opposite"
            "|each way|either side|left and right|splits|splits off|every which way"
            "|different directions|several directions|three ways|four ways|both ends"
        ),
    ),
    "in place": (
        "in place|installed|in there|still there|in it|still in|in its slot|hung|attached",
        (
            "missing|gone|not there|removed|absent|fell out|fell off|took it out|taken out"
            "|pulled out|lost"
        ),
    ),
    "condition": (
        "sound|solid|good|fine|intact|decent|ok|okay|great|perfect|excellent|healthy"
        "|sturdy|good shape|like new|holding up|undamaged|strong|brand new|in one piece"
        "|nice|mint|safe|well|straight|alright|all right|unharmed|good condition"
        "|great shape|serviceable|usable",
        (
            "rusty|rusted|rust|rusting|rotten|rotted|rot|rotting|corroded|corrosion|hole"
            "|holes|crushed|dented|bent|broken|cracked|crack|cracks|damaged|damage"
            "|falling apart|shot|bad|beat up|sheared off|sheared|snapped off|snapped"
            "|broke off|busted|bent up|wrecked|split|buckled in|hosed|torn|ripped"
            "|collapsed|crumbling|eaten|swiss cheese|rusted through|rough|poor|terrible"
            "|awful|flaking|pitted|disintegrating|deteriorated|deteriorating|toast|junk"
            "|trashed|coming apart|patched|weak|smashed|kinked|crumpled|pinholes|unsafe"
            "|brittle|worn|worn out|sagging|collapsing|crispy|bowed|bowing|buckled"
            "|perforated|needs replacing|needs replaced|needs work|needs to be replaced"
            "|past its prime|had it|trash|ruined|rotted out|rusting out|chewed up|mangled"
        ),
    ),
    "access": (
        "reachable|accessible|reach|access|open|wide open|easy|easily|get to|get at|get in"
        "|get into|get up|walk up|walk in|pull down|pulldown|within reach|no problem|climb"
        "|crawl into|clear",
        (
            "locked|blocked|sealed|painted shut|screwed shut|nailed shut|inaccessible"
            "|unreachable|no hatch|no access|drywalled|boarded|buried|finished over|stuck shut"
            "|no way up|no way in|walled off|sealed off|sealed shut|no opening|no door"
            "|caulked shut|blocked off|shut tight|no ladder|behind drywall|closed off"
            "|padlocked|bolted|hidden|covered|jammed|too tight|too small|impossible"
            "|out of reach|plastered over"
        ),
    ),
    "clean": (
        "just changed|just replaced|changed it|clean|spotless|pristine|new|like new|clear"
        "|immaculate|shiny|washed|fresh",
        (
            "needs changing|needs changed|needs replacing|overdue|due|gray|grey|never change it"
            "|never changed|been a year|dirty|filthy|dusty|caked|plugged|clogged|grimy|nasty|moldy"
            "|mouldy|mold|matted"
            "|packed|gunky|gross|dirt|dust|lint|black|furry|fuzzy|greasy|grubby|soiled|hairy"
            "|disgusting|loaded|blocked|choked|backed up|backs up|overflowing|overflows|overflowed"
            "|slimed up|slimy|full of slime|full of gunk|full of algae"
        ),
    ),
    "noise": (
        "quiet|silent|whisper|quietly|peaceful|barely hear|can't hear|cant hear|soft"
        "|sounds normal|sounds fine|sounds ok|sounds okay|sounds good|hear a pin drop",
        (
            "like a jet|jet plane|like a freight train|like a train|a mile away|have to yell"
            "|have to shout|need to shout|hear it outside|hear it upstairs|wakes us up|wakes me up"
            "|loud|noisy|noise|roar|roars|roaring|whistle|whistles|whistling|rattle|rattles"
            "|rattling|hum|hums|humming|screams|screaming|howls|howling|deafening"
            "|jet engine|bangs|banging|booms|shout|loudly|freight train|squeals|squealing"
            "|buzzing|hissing|droning|vibrating|thumping|clanking|grinding|slams|slam|slamming"
            "|slammed|sucks shut|sucked shut|pulls shut|swings shut|moans|moaning|groans|shrieks"
        ),
    ),
    "tight": (
        "sealed|tight|airtight|mastic|masticked|taped|tightly|snug|secure|connected"
        "|attached|well sealed",
        (
            "leak|leaks|leaky|leaking|leaked|gap|gaps|loose|unsealed|disconnected|apart"
            "|fell off|fallen off|separated|unhooked|hanging|blowing out|detached|came off"
            "|come off|popped off|open joints|falling off|hanging off|came apart"
            "|fallen apart|coming off|pulled apart|undone|wide gaps|open seams"
        ),
    ),
    "dry": (
        "dry|bone dry",
        (
            "wet|damp|water|flooded|soaked|moist|puddle|puddles|standing water|soggy|dripping"
            "|drips|humid|sweating|sweats|swampy|muddy|underwater"
        ),
    ),
    "running": (
        "heat or cool|heat and cool|heat and cooling|ran|like a champ|like a top|won't shut off"
        "|never shuts off|never stops|running|runs|run"
        "|works|working|work|operational|operates|functional|functioning"
        "|turns on|kicks on|fires up|fired up|starts|working fine|humming along|going"
        "|up and running|purrs|purring|hums along|spins|spinning|firing|runs good"
        "|runs great|alive|kicking|heats|cools|comes on|blows|blowing",
        (
            "dead|broken|broke|won't start|wont start|won't run|wont run|kaput|failed|quit"
            "|died|burned out|burnt out|seized|doesn't run|doesnt run|doesn't work"
            "|doesnt work|not working|conked out|fried|locked up|busted|shot|out of order"
            "|stopped|tripped|won't turn on|burnt up|burned up|unplugged|disconnected"
            "|not turning|won't spin|locked rotor|no power|off|froze up|doesn't start"
            "|won't fire|on the fritz|bit the dust|condemned|red tagged"
        ),
    ),
    "lined": (
        "lined|liner|lining|insulated inside|insulation inside|fiberglass inside"
        "|fuzzy inside|inside insulation|internally insulated|black stuff inside"
        "|insulated on the inside|insulation on the inside",
        (
            "bare|unlined|bare metal|wrapped|wrap|insulated outside|insulation outside"
            "|outside insulation|insulated on the outside|insulation on the outside"
            "|insulation is on the outside|smooth inside|naked|plain metal|just metal"
            "|shiny inside"
        ),
    ),
    "insulated": (
        "insulated|insulation|wrapped|lined|wrap|jacketed",
        "bare|uninsulated|unwrapped|exposed metal|naked|bare metal",
    ),
    "open": ("open|opened|wide open", "closed|shut|closed off|shut off"),
    "present": (
        "there|present|exists|exist|have|has|got|found|visible|installed|one|two|three"
        "|four|several|plenty|lots|a few|some|couple|few|many|exactly|equipped|included"
        "|existing",
        "missing|gone|none|absent|without|removed|nonexistent|zero|nothing|lacking|nowhere|neither",
    ),
    "ice": (
        "thawed|no ice|ice free",
        "ice|iced|icy|frozen|freezes|freezing|froze|frost|frosted|frosty|freeze",
    ),
    "straight": (
        "straight|stretched|taut|pulled tight|tight",
        (
            "kinked|crushed|sagging|saggy|sags|droopy|drooping|squashed|pinched|flattened"
            "|squished|bunched|coiled|twisted|loose|slack|snaked|snakes around|hammock|hammocks"
            "|hangs down|hang down|hanging down|droops|droop|belly|bellies|dips|hangs low|hang low"
            "|swags|spaghetti|draped|low spots|like a snake|sag|swoops"
        ),
    ),
    "size": (
        "too big|oversized|big|large|huge|roomy|plenty|spacious|enough|ample|generous",
        "too small|way too small|small|tiny|undersized|cramped|narrow|skinny|little",
    ),
    "comfort": (
        "comfortable|even|balanced|same",
        (
            "uneven|hot|cold|stuffy|drafty|different|unbalanced|freezes|roasting|boiling"
            "|stifling|never right|off"
        ),
    ),
    "age": (
        "new|newer|recent|replaced|recently|modern|brand new|updated",
        "old|original|ancient|older|older than dirt|vintage|never replaced|antique|prehistoric",
    ),
    "shape": ("level|plumb|square", "crooked|tilted|leaning|sloped"),
    "cycling": (
        (
            "nonstop|non stop|runs nonstop|runs non stop|steady|steadily|runs steady|never stops"
            "|never shuts off|won't shut off|wont shut off|doesn't shut off|doesn't stop|stays on"
            "|runs all the time|runs continuously|runs constantly|keeps running|normal cycles"
            "|long cycles|stays running|runs and runs|runs straight through|cycles normally"
            "|runs for a long time|runs long|runs forever|never quits"
        ),
        (
            "short cycles|short cycling|short cycle|cycles|cycling|cycles a lot|on and off"
            "|off and on|stop and start|stop start|stops and starts|starts and stops"
            "|start and stop|run a few minutes|kicks on and off|turns on and off"
            "|shuts off after a minute|stops after a minute|every few minutes|every five minutes"
            "|times an hour|runs a few minutes|runs a minute|quits after a minute"
        ),
    ),
    "frail": (
        "all adults|all grown|grown ups|in good health|perfectly healthy",
        (
            "very young|newborn|new born|baby|babies|infant|infants|toddler|toddlers|months old"
            "|weeks old|elderly|ill|sick|on oxygen|frail|pregnant|bedridden|on dialysis|on hospice"
            "|little ones|little kids|a preemie"
        ),
    ),
    "smell": ("odorless|no smell", "smell|smells|stinks|smelly|musty|odor|stink|stench|reeks"),
}
"""Each axis: its good pole and its bad pole. Adding a word is one edit."""
