"""Yes or no, read against the words of the question.

"Rusty" is no to "Is the plenum metal sound?" and yes to "Is the plenum rusty?". So an answer
without a plain yes or no is placed on an axis (condition, access, noise ...) with its pole, the
question likewise, and the answer is yes where the poles agree. Whatever the two disagree about,
or the table doesn't hold, is asked.
"""

from __future__ import annotations

import re
from functools import cache
from typing import Final

from intake.reading.manner import cant_say
from intake.reading.result import Accepted, AskBack, AskKind, Reading, Unknown

__all__ = ["AXES", "read_yes_no"]

AXES: Final[dict[str, tuple[str, str]]] = {
    "direction": (
        "one direction|one way|single direction|same direction|one side|one direction only",
        "both ways|two ways|both directions|two directions|both sides|two sides|opposite|each way|either side|left and right|splits|splits off|every which way|different directions|several directions|three ways|four ways|both ends",
    ),
    "condition": (
        "sound|solid|good|fine|intact|decent|ok|okay|great|perfect|excellent|healthy|sturdy|good shape|like new|holding up"
        "|undamaged|strong|brand new|in one piece|nice|mint|safe|well|straight|alright|all right|unharmed|good condition|great shape|serviceable|usable",
        "rusty|rusted|rust|rusting|rotten|rotted|rot|rotting|corroded|corrosion|hole|holes|crushed|dented|bent|broken|cracked|crack|cracks|damaged|damage"
        "|falling apart|shot|bad|beat up|torn|ripped|collapsed|crumbling|eaten|swiss cheese|rusted through|rough|poor|terrible|awful|flaking|pitted"
        "|disintegrating|deteriorated|deteriorating|toast|junk|trashed|coming apart|patched|weak|smashed|kinked|crumpled|pinholes|unsafe|brittle|worn|worn out|sagging|collapsing|crispy|bowed|bowing|buckled|perforated",
    ),
    "access": (
        "reachable|accessible|reach|access|open|wide open|easy|easily|get to|get at|get in|get into|get up|walk up|walk in|pull down|pulldown|within reach|no problem|climb|crawl into|clear",
        "locked|blocked|sealed|painted shut|screwed shut|nailed shut|inaccessible|unreachable|no hatch|no access|drywalled|boarded|buried|finished over|stuck shut|no way up|no way in|walled off"
        "|sealed off|sealed shut|no opening|no door|caulked shut|blocked off|shut tight|no ladder|behind drywall|closed off|padlocked|bolted|hidden|covered|jammed|too tight|too small|impossible|out of reach|plastered over",
    ),
    "clean": (
        "clean|spotless|pristine|new|like new|clear|immaculate|shiny|washed|fresh",
        "dirty|filthy|dusty|caked|plugged|clogged|grimy|nasty|moldy|mouldy|mold|matted|packed|gunky|gross|dirt|dust|lint|black|furry|fuzzy|greasy|grubby|soiled|hairy|disgusting|loaded|blocked|choked",
    ),
    "noise": (
        "quiet|silent|whisper|quietly|peaceful|barely hear|can't hear|cant hear|soft",
        "loud|noisy|noise|roar|roars|roaring|whistle|whistles|whistling|rattle|rattles|rattling|hum|hums|humming|screams|screaming|howls|howling|deafening|jet engine|bangs|banging|booms|shout|loudly|freight train|squeals|squealing|buzzing",
    ),
    "tight": (
        "sealed|tight|airtight|mastic|masticked|taped|tightly|snug|secure|connected|attached|well sealed",
        "leak|leaks|leaky|leaking|leaked|gap|gaps|loose|unsealed|disconnected|apart|fell off|fallen off|separated|unhooked|hanging|blowing out|detached|came off|come off|popped off|open joints",
    ),
    "dry": (
        "dry|bone dry",
        "wet|damp|water|flooded|soaked|moist|puddle|puddles|standing water|soggy|dripping|drips|humid|sweating|sweats|swampy|muddy|underwater",
    ),
    "running": (
        "running|runs|run|works|working|work|operational|operates|functional|functioning|turns on|kicks on|fires up|fired up|starts|working fine|humming along|going|up and running|heats|cools|comes on|blows|blowing",
        "dead|broken|broke|won't start|wont start|won't run|wont run|kaput|failed|quit|died|burned out|burnt out|seized|doesn't run|doesnt run|doesn't work|doesnt work|not working|conked out|fried|locked up|busted|shot|out of order|stopped|tripped|won't turn on|burnt up|burned up|froze up|doesn't start|won't fire|on the fritz|bit the dust|condemned|red tagged",
    ),
    "lined": (
        "lined|liner|lining|insulated inside|insulation inside|fiberglass inside|fuzzy inside|inside insulation|internally insulated|black stuff inside|insulated on the inside|insulation on the inside",
        "bare|unlined|bare metal|wrapped|wrap|insulated outside|insulation outside|outside insulation|insulated on the outside|insulation on the outside|insulation is on the outside|smooth inside|naked|plain metal|just metal|shiny inside",
    ),
    "insulated": (
        "insulated|insulation|wrapped|lined|wrap|jacketed",
        "bare|uninsulated|unwrapped|exposed metal|naked|bare metal",
    ),
    "open": ("open|opened|wide open", "closed|shut|closed off|shut off"),
    "present": (
        "there|present|exists|exist|have|has|got|found|visible|installed|one|two|three|four|several|plenty|lots|a few|some|couple|few|many|exactly|equipped|included|existing",
        "missing|gone|none|absent|without|removed|nonexistent|zero|nothing|lacking|nowhere|neither",
    ),
    "ice": (
        "thawed|no ice|ice free",
        "ice|iced|icy|frozen|freezes|freezing|froze|frost|frosted|frosty|freeze",
    ),
    "straight": (
        "straight|stretched|taut|pulled tight|tight",
        "kinked|crushed|sagging|saggy|sags|droopy|drooping|squashed|pinched|flattened|squished|bunched|coiled|twisted|loose|slack|snaked|snakes around",
    ),
    "size": (
        "big|large|huge|roomy|plenty|spacious|enough|ample|generous",
        "small|tiny|undersized|cramped|narrow|skinny|little",
    ),
    "comfort": (
        "comfortable|even|balanced|same",
        "uneven|hot|cold|stuffy|drafty|different|unbalanced|freezes|roasting|boiling|stifling|never right|off",
    ),
    "age": (
        "new|newer|recent|replaced|recently|modern|brand new|updated",
        "old|original|ancient|older|older than dirt|vintage|never replaced|antique|prehistoric",
    ),
    "shape": ("level|plumb|square", "crooked|tilted|leaning|sloped"),
    "smell": ("odorless|no smell", "smell|smells|stinks|smelly|musty|odor|stink|stench|reeks"),
}
"""Each axis: its good pole and its bad pole. Adding a word is one edit."""

_YES: Final = (
    r"(?:yes+|yessir|yes sir|yessum|yep+|yup+|yeah+|yea+h?|yas+|ya|yah|ye|y|yus|yeh|yeppers|yessiree|uh ?huh|uhuh|mhm+|mm ?h+m+|mmhm|affirmative|affirm|correct|right|true|truth|absolutely|definitely|definately|definitly|certainly|indeed|totally"
    r"|of course|you bet|u bet|you betcha|you know it|for sure|sure|surely|sure thing|sure is|sure does|sure do|sure are|sure can|sure has|certainly is|it sure is|oh yeah|hell yes|hell yeah|heck yeah|heck yes|10 ?4|ten four|ten-four|roger(?: that)?|aye|si|oui|ja|da|positive|always|bingo|exactly|agreed|most definitely"
    r"|no doubt|no question|without (?:a )?doubt|no doubt about it|without question|fo sho|very much so|very much|i (?:do|did|have|can|could|will|am|would)|we (?:do|did|have|can|could|are)|they (?:do|did|have|can|are|were|sure do|sure are)|(?:it|that|he|she|this) (?:is|does|did|has|can|was|will|would|sure does|sure is|really is|really does)"
    r"|it'?s (?:there|true)|there (?:is|are|was|were|sure is)|(?:it|they) always (?:do|does|has|have|is|are)|(?:it|that)'?s right|that'?s correct|that'?s true|(?:it|they|that) (?:should|oughta|ought to)(?: be)?"
    r"|i (?:believe|think|guess|suppose|imagine|reckon|assume|hope|would say|expect|presume|wanna say)(?: so| yes| it is| it does| they do| they are| it has| there is| there are| that's right| yeah| they have)|i'd say (?:so|yes|yeah)|id say (?:so|yes|yeah)|pretty sure(?: it is| it does| they do| they are| so| yes| there is)?|fairly sure(?: it is| it does)?|fairly certain"
    r"|probably|prob|probly|prolly|most likely|likely|very likely|more than likely|should be|should|ought to be|seems so|seems to be|seems like it|seems to|appears so|appears to|appears to be|looks like it|looks like it is|looks like|looks that way|sounds like it|sounds right|could be yes|far as i (?:know|can tell)|as far as i (?:know|can tell)(?: yes)?|afaik|to my knowledge|presumably|assume so|assuming so|guess so|think so|believe so|suppose so|reckon so|hope so|sounds about right|feels like it|i'm pretty sure"
    r"|why not|sure why not|ok|okay|okey dokey|k|yes'm|thumbs up|every time|all the time|constantly|all of them|every one|both|both of them|everywhere|oh yes|confirmed|confirm|done|checked|correctomundo|yuppers|damn right|darn right|you got it|obviously|naturally|clearly|yes indeed|yes i do|all good there|duh|quite|very|frequently|often|regularly|plenty|lots|tons|several|a few|a couple|two of them|does indeed|is indeed|a lot|so i'?m told|so they say|both are|they all are|they all do|all are|all do|every single one|yes it does|yes it is|yes there is)"
)
_NO: Final = (
    r"(?:no+|nope+|nah+|naw|na+h|nay|n|noo+|nup|negative|negatory|never|none|nada|nothing|zip|zilch|nein|nyet|non|not at all|not really|not even close|no way|not a chance|no chance|no sir|no siree|nosir|no ma'?am|not one|not any|not a one|not any more|not anymore|no longer"
    r"|(?:it|that|this|he|she) (?:isn'?t|doesn'?t|hasn'?t|can'?t|ain'?t|wasn'?t|won'?t|didn'?t|is not|does not|has not|cannot|was not|never (?:is|does|did|has|was)|doesnt|isnt)|(?:they|we|i|you) (?:don'?t|didn'?t|haven'?t|can'?t|aren'?t|couldn'?t|do not|are not|ain'?t|won'?t|never (?:do|did|have)|cannot|dont|arent|wouldn'?t)|there (?:isn'?t|aren'?t|ain'?t|is not|are not|is none|are none|wasn'?t|weren'?t|isnt|is no|are no|'?s no|'?s none|'?s not)|there'?s (?:no|none|not)"
    r"|isn'?t|doesn'?t|can'?t|ain'?t|don'?t|aren'?t|hasn'?t|haven'?t|won'?t|isnt|doesnt|cant|aint|hasnt"
    r"|i (?:don'?t|dont|do not) (?:think|believe|reckon|suppose|guess|imagine)(?: so| it is| it does| they do| they are| it has| there is| there are| they have| that| he did)?|(?:don'?t|dont) (?:think|believe|reckon) so|i wouldn'?t (?:say so|think so)|i doubt (?:it|that)|doubt it|doubtful|highly doubtful|very doubtful|i highly doubt it|unlikely|not likely|very unlikely|highly unlikely|probably not|prob not|probly not|prolly not|most likely not|likely not|maybe not|perhaps not|i (?:think|guess|believe|suppose|hope|'?d say) not|guess not|think not|hope not|suppose not|don't suppose so|pretty sure (?:not|no|it (?:isn'?t|doesn'?t|is not)|there (?:isn'?t|aren'?t)|they (?:don'?t|aren'?t))|shouldn'?t be|should not be|seems not|apparently not|evidently not|obviously not|definitely not|absolutely not|certainly not|of course not|course not|hell no|heck no|i'd say (?:no|not)"
    r"|not that (?:i|we|they|he|she|anyone|anybody)(?:'?ve| have|'?m| am| can| could| do| did|'d)? ?(?:know|aware|see|seen|saw|tell|find|found|noticed|notice|hear|heard|remember|recall|be aware|think|smell)?(?: of)?|not to my knowledge|not as far as i (?:know|can tell)|not that i'?m aware(?: of)?|none that (?:i|we)(?:'?ve| have| can| could)? ?(?:know|see|seen|saw|find|found|noticed|notice|remember|tell)?(?: of)?|not yet|not now|not today|false|incorrect|wrong|hardly|hardly ever|barely|barely ever|seldom|rarely|uh ?uh|nuh ?uh|nuh-uh|unh ?uh|thumbs down|never has|never have|never did|never does|never seen (?:it|any|one)|never noticed|never heard (?:it|any|one)|neither|neither one|nowhere|zero|not so far|not in the least|not in a million years|far from it|i wish|no it'?s not|not the case|not since|nobody|not so much|not particularly|not very|i've never|ive never|fraid not|afraid not|i'm afraid not|denied|can not|it'?s not|its not|they'?re not|theyre not|that'?s not|we'?ve never|wouldn'?t|couldn'?t)"
)
_MIXED: Final = re.compile(
    r"\b(?:yes and no|yes or no|sometimes|some times|sort of|sorta|kind of|kinda|somewhat|partly|partially|partial|depends|depending|half|halfway|in places|in spots|some of (?:it|them)|part of (?:it|them)|used to|maybe|mabye|mayb|perhaps|possibly|might|could go either way|either|now and then|once in a while|on and off|off and on|occasionally|every so often"
    r"|only (?:when|if|in|on|at|with|the|some|one|part)|mostly|more or less|not all|not always|not every|not entirely|not completely|not fully|not quite|almost|nearly|one is|one of them|to a degree|to some extent|in a way|ish|hit or miss|hit and miss|50 ?/ ?50|fifty fifty|so so|so-so|could be|may be|upstairs only|downstairs only|last (?:year|summer|winter|week|month)|it did|did once|in the past|before|so[- ]?and[- ]?so|barely|varies|a bit of both|both ways|up to a point|except|unless|intermittent\w*|one side|other side|not the|most|all but|just the|just one|a little|a bit|slightly|once|twice|a few times|couple of times|couple times|every (?:summer|winter|year|month|time|so often)|(?:two|three|one|some|most|few|half) of (?:the |them|those)?(?:two|three|four|five|six)?)\b"
)
_UNSURE: Final = re.compile(
    r"\b(?:think|thinking|believe|guess|guessing|probably|prob|probly|prolly|maybe|should|suppose|pretty sure|fairly sure|fairly certain|likely|unlikely|seems?|appears?|assum\w+|far as|as i know|afaik|that i know|that i'?m aware|my knowledge|doubt\w*|i'd say|id say|might|reckon|imagine|hope|presum\w+|perhaps|not certain|not positive|not sure|not 100|"
    r"looks like|looks that way|sounds like it|sounds right|i can tell|i remember|i recall|apparently|supposedly|supposed to|ought|expect|wanna say|not that (?:i|we)|none that (?:i|we)|ish|i'?m told|they say|evidently|feels like|from memory|can'?t be (?:sure|certain)|unsure|as best i|last i (?:knew|checked|looked)|so i hear|highly doubt|allegedly)\b"
)
_TURN: Final = re.compile(
    r"\b(?:no wait|wait|scratch that|actually|i mean|correction|sorry|oops|make that|strike that)\b,?"
)
_CLAUSES: Final = re.compile(
    r"[,;.!?:()]+|\s-+\s|\b(?:but|although|though|except|because|cause|since|however|and then)\b"
)
_FILLER: Final = re.compile(
    r"^(?:(?:well|um+|uh+(?! ?u?h)|hmm+|oh|so|ah|er|like|honestly|i mean|you know|hey|man|boy|sure thing|to be honest|tbh|ok so|okay so|and|also|then|i'm gonna say|im gonna say|gonna say|i'm going to say|i would say|the answer is|answer is|it'?s a|that'?s a|that would be a?|big|put|put down|say|we'?ll say|hard|definite|solid|firm|just|let'?s say|let'?s go with|i'll say|i'd go with|going with|go with)\s+)+"
)
_NEGATIONS: Final = frozenset(
    "no not isn't isnt aint ain't without never don't dont doesn't doesnt zero any hasn't haven't wasn't weren't nor aren't arent non hardly free can't cant couldn't cannot won't nothing none".split()
)
_WORD: Final = re.compile(r"[a-z]+(?:'[a-z]+)?|\d+")
_YES_START: Final = re.compile(_YES + r"\b(?!')")
_NO_START: Final = re.compile(_NO + r"\b(?!')")


@cache
def _poles() -> dict[tuple[str, ...], tuple[tuple[str, int], ...]]:
    table: dict[tuple[str, ...], tuple[tuple[str, int], ...]] = {}
    for axis, (good, bad) in AXES.items():
        for pole, words in ((1, good), (-1, bad)):
            for phrase in words.split("|"):
                key = tuple(phrase.split())
                table[key] = (*table.get(key, ()), (axis, pole))
    return table


def _poles_in(words: list[str]) -> list[tuple[str, int]]:
    """Axes and poles of what the words say, negation applied."""
    found: list[tuple[str, int]] = []
    table = _poles()
    i = 0
    while i < len(words):
        for n in (5, 4, 3, 2, 1):
            senses = table.get(tuple(words[i : i + n])) if i + n <= len(words) else None
            if senses:
                free = words[i + n : i + n + 1] == ["free"]
                flip = -1 if _negated(words, i) != free else 1
                found.extend((axis, pole * flip) for axis, pole in senses)
                i += n - 1
                break
        i += 1
    return found


def _negated(words: list[str], i: int) -> bool:
    before = [word for word in words[max(0, i - 4) : i]]
    return sum(word in _NEGATIONS and word != "any" for word in before) % 2 == 1


def _by_question(words: list[str], question: str) -> set[bool]:
    """What the words answer to the question: {True}, {False}, both, or nothing."""
    asked_words = [w for w in _WORD.findall(question.lower()) if w not in ("any", "ever")]
    asked = _poles_in(asked_words)
    said = _poles_in(words)
    answers: set[bool] = set()
    for axis, pole in said:
        for other, asked_pole in asked:
            if axis == other and axis != "present":
                answers.add(pole == asked_pole)
    if answers:
        return answers
    stems = {w[:5] for w in asked_words if len(w) > 3 and w not in _ASKING}
    for i, word in enumerate(words):
        if len(word) > 3 and word[:5] in stems and word not in _ASKING:
            answers.add(not _negated(words, i))
    if answers:
        return answers
    asked_poles = {pole for axis, pole in asked if axis != "present"}
    said_poles = {
        pole
        for axis, pole in said
        if axis in ("condition", "clean", "running") and axis != "present"
    }
    if len(asked_poles) == 1 and len(said_poles) == 1:
        axes = {axis for axis, _ in asked}
        if axes & {"condition", "clean", "running", "tight", "dry"}:
            return {said_poles == asked_poles}
    return set()


_ASKING: Final = frozenset(
    "does this that there have been with from your were they what when which where will would could should into over about unit duct ducts furnace house main the plenum metal attic blower filter coil system return supply trunk grille right like just still here only very more".split()
)


def _plain_answer(clause: str) -> bool | None:
    """The plain yes or no that a clause begins with."""
    bare = _FILLER.sub("", clause.strip())
    no = _NO_START.match(bare)
    yes = _YES_START.match(bare)
    if no and yes:
        return len(yes.group()) > len(no.group())
    if no:
        return False
    if yes:
        return True
    if _DOES.match(bare):
        return not _DOES_NOT.search(bare)
    return None


_DOES: Final = re.compile(
    r"(?:the|that|this|one|two|three|a|only|just|some|they|it|we|i|my|our)\b[a-z ']{0,40}\b(?:does|do|is|are|has|did|can|have|was|were|will|doesn't|don't|isn't|aren't|hasn't|didn't|can't|won't)$"
)
_DOES_NOT: Final = re.compile(r"(?:n't|not|never)\b|n't$|\bonly\b")


def _rest_of(clause: str) -> list[str]:
    bare = _FILLER.sub("", clause.strip())
    return _WORD.findall(bare)


def read_yes_no(text: str, question: str) -> Reading | None:
    """Read a yes or no from normalised text; None if it holds neither."""
    text = _respelt(text)
    asked = question.lower()
    both = _BOTH.search(text) is not None
    turned = _TURN.split(text)
    if not both and len(turned) > 1 and _verdict(turned[-1], question) is not None:
        text = turned[-1].strip()
    verdict = "both" if both else _verdict(text, question)
    if _IN_HAND.match(asked) and not _doesnt_know(text) and _NOT_IN_HAND.search(text):
        return Accepted({"yes": False}) if verdict in (None, False) else _which(question)
    axes = {axis for axis, _ in _poles_in(_WORD.findall(asked))}
    if cant_say(text):
        by_access = bool(axes & {"access", "running"}) and not _doesnt_know(text)
        if by_access and verdict in (None, False):
            return Accepted({"yes": False})
        if verdict is None or verdict == "both" or not (_said_too(text) or by_access):
            return Unknown("You can't say.")
    doubtless = _UNSURE.sub(" ", text).strip()
    lead = _YES_START.match(doubtless)
    mixed = _MIXED.search(doubtless[lead.end() :] if lead else doubtless) is not None
    if mixed and verdict != "both":
        verdict = _of_a_part(verdict, asked, text)
    if verdict is None:
        telling = _poles_in(_WORD.findall(text))
        return _which(question) if mixed or telling or _MIXED.search(text) else None
    if verdict == "both":
        return _which(question)
    if _NEGATED_QUESTION.search(asked) and _is_bare(text):
        return _which(question)
    values: dict[str, bool] = {"yes": bool(verdict)}
    if _UNSURE.search(_NO_DOUBT.sub(" ", text)):
        values["sure"] = False
    return Accepted(dict(values))


_BOTH: Final = re.compile(
    r"\b(?:yes (?:and|or|&|/) no|yes ?/ ?no|y ?/ ?n|yeah,? no|no,? yeah|yes,? no|nope?,? yes|no and yes|both yes and no|yes nor no|y and n)\b"
)
_NO_DOUBT: Final = re.compile(
    r"\b(?:no|without(?: a)?|beyond(?: a)?) doubt\b|\bmake sure\b|\bi'?m sure\b"
)
_IN_HAND: Final = re.compile(
    r"^(?:have you (?:got|a|any)|do you have|have you|did you bring|you got|got|do you carry|is there an? .* (?:with you|on you|in your))"
)
_NOT_IN_HAND: Final = re.compile(
    r"\b(?:left (?:it|mine|them|that|the|my)|forgot|haven'?t got|havent got|don'?t have|dont have|don'?t own|dont own|broke|broken|busted|lost|at home|in the (?:other )?(?:van|truck|shop|office)|back at|out for|loaned|lent|borrowed|need to get|wish i|never had|dead|stolen|on order|not with me|not on me|didn'?t bring|didnt bring|no such|ain'?t got|aint got)\b"
)
_NEGATED_QUESTION: Final = re.compile(
    r"\b(?:no|not|isn'?t|aren'?t|doesn'?t|don'?t|never|without|hasn'?t|haven'?t)\b(?! longer)"
)
_ANY: Final = re.compile(r"\b(?:any|ever|anywhere|anything|at all|some)\b")
_ALL: Final = re.compile(
    r"\b(?:all|every|each|everywhere|always|both|entire|whole|fully|completely)\b"
)


def _of_a_part(verdict: bool | str | None, asked: str, text: str) -> bool | str | None:
    """What holds for a part answers "any ... ?" with yes and "all ... ?" with no."""
    if "ever" in asked.split() and verdict is not False and _HAPPENED.search(text):
        return True
    part = re.search(
        r"\b(?:only|one of them|one is|some of|part of|not all|not every|one side|last|it did|did once|except|in places|in spots|sometimes|most|mostly|half|occasionally|once|now and then|just the|just one|all but|two of|three of|one of)\b",
        text,
    )
    if verdict is None and not part:
        return "both"
    if (
        _ANY.search(asked)
        and not _ALL.search(asked)
        and verdict is not False
        and verdict is not None
    ):
        return True
    if _ALL.search(asked) and not _ANY.search(asked) and part and verdict is not True:
        return (
            False
            if re.search(
                r"\b(?:only|not all|not every|except|one side|just the|just one|all but|two of|three of|one of|some of)\b",
                text,
            )
            else "both"
        )
    return "both"


_HAPPENED: Final = re.compile(
    r"\b(?:once|twice|times|every|last|did|in (?:january|february|march|april|may|june|july|august|september|october|november|december|summer|winter|spring|fall|(?:19|20)[0-9][0-9])|ago|years? back)\b"
)


def _is_bare(text: str) -> bool:
    """Whether the text is a yes or no and nothing that says of what."""
    return len(_WORD.findall(text)) <= 2


_SLIPS: Final = {
    "yse": "yes",
    "eys": "yes",
    "yez": "yes",
    "yesd": "yes",
    "yess": "yes",
    "yws": "yes",
    "ues": "yes",
    "ofc": "of course",
    "noep": "nope",
    "npoe": "nope",
    "nop": "nope",
    "noo": "no",
    "yp": "yep",
    "ywp": "yep",
    "yaeh": "yeah",
    "yeha": "yeah",
    "yhea": "yeah",
    "yeh": "yeah",
    "ys": "yes",
    "ya'll": "yes",
    "on": "on",
    "dnt": "don't",
    "noope": "nope",
    "nawp": "nope",
    "yuo": "you",
    "froze": "frozen",
    "def": "definitely",
    "deff": "definitely",
    "abs": "absolutely",
    "obv": "obviously",
    "obvs": "obviously",
    "nuthin": "nothing",
    "nuttin": "nothing",
    "yessum": "yes",
    "ye": "yes",
    "knot": "not",
    "its": "it's",
    "yeees": "yes",
    "yasss": "yes",
    "definately": "definitely",
    "absolutley": "absolutely",
    "absolutly": "absolutely",
    "deffinitely": "definitely",
    "defiantly": "definitely",
    "correctly": "correct",
    "affirmitive": "affirmative",
    "affirmativ": "affirmative",
}


def _respelt(text: str) -> str:
    return _WORD_IN.sub(lambda m: _SLIPS.get(m[0], m[0]), text)


_WORD_IN: Final = re.compile(r"[a-z]+(?:'[a-z]+)?")


def _doesnt_know(text: str) -> bool:
    return (
        re.search(
            r"\b(?:know|sure|dunno|idk|clue|idea|tell|check|checked|look|looked|guess|say|remember|ask|find out|knows|unknown|certain|n/a|na|tbd|applicable|idea)\b",
            text,
        )
        is not None
    )


def _said_too(text: str) -> bool:
    """Whether a plain answer stands beside the "don't know"."""
    for clause in _CLAUSES.split(text):
        if clause.strip() and not cant_say(clause) and _plain_answer(clause) is not None:
            return True
    return bool(
        re.match(
            r"(?:not|can'?t be) (?:100|sure|certain|positive).*\b(?:think so|believe so|think not)",
            text,
        )
    ) or _not_that(text)


def _not_that(text: str) -> bool:
    return (
        re.match(
            r"(?:no|not|none|nope|nah|yes|yeah|yep)\W* ?(?:that|to my|as far|far as|not that|none that)",
            text,
        )
        is not None
    )


def _which(question: str, likely: bool | None = None) -> AskBack:
    asked = question.strip() or "the question"
    readings = (
        ({"yes": True}, {"yes": False})
        if likely is None
        else ({"yes": likely}, {"yes": not likely})
    )
    return AskBack(
        f"I can't tell if that is a yes or a no to: {asked}", readings, AskKind.TWO_READINGS
    )


def _verdict(text: str, question: str) -> bool | str | None:
    """True, False, "both", or None."""
    answers: set[bool] = set()
    plain: list[bool] = []
    for clause in _CLAUSES.split(text):
        clause = clause.strip()
        if not clause:
            continue
        words = _rest_of(clause)
        content = _by_question(words, question)
        direct = _plain_answer(clause)
        if direct is False and content and not _stands_alone(words):
            answers |= content
            continue
        if direct is True and content and _SOFT.match(clause):
            answers |= content
            continue
        if direct is not None:
            plain.append(direct)
            answers.add(direct)
            rest = _by_question(_after_plain(clause), question)
            answers |= rest
        else:
            answers |= content
    if len(answers) == 2:
        return "both"
    if answers:
        return answers.pop()
    return None


_SOFT: Final = re.compile(
    r"(?:both|ok|okay|lots|plenty|right|a few|several|two|always|everywhere|all|every|positive|clearly|true|quite|very|looks|seems|appears|sounds|far)\b"
)


_ALONE: Final = frozenset("nope nah naw negative nay nup noo".split())
_CLAUSE_STARTS: Final = frozenset(
    "it it's its they they're that that's there there's the this i we".split()
)


def _stands_alone(words: list[str]) -> bool:
    """Whether the "no" a clause begins with answers by itself ("nope rusty", "no it's solid")."""
    if words[:1] and words[0] in _ALONE:
        return True
    return words[0] == "no" and (len(words) == 1 or words[1] in _CLAUSE_STARTS)


def _after_plain(clause: str) -> list[str]:
    bare = _FILLER.sub("", clause.strip())
    match = max(
        (m for m in (_NO_START.match(bare), _YES_START.match(bare)) if m),
        key=lambda m: m.end(),
        default=None,
    )
    return _WORD.findall(bare[match.end() :]) if match else _WORD.findall(bare)
