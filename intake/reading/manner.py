"""How something is said: how sure the person is, and whether they say that they can't say."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.plain_talk import is_plain_without, words_in
from intake.reading.result import Sure
from intake.reading.words import words

__all__ = ["cant_say", "excuse", "hedged", "sureness"]

_HEDGED: Final = re.compile(
    r"""\b(?:about|bout|abt|abut|around|aprox|approx\w*|rough\w*|ruff\w*|maybe|mabye|mayb|perhaps|possibly
    |probabl[ye]|prob|probly|prolly|i\ think|i\ thnk|i\ believe|i'd\ say|i\ would\ say
    |id\ say|i\ reckon|reckon|figure    |ish|or\ so|ball\ ?park|give\ or\ take|circa|ca
    |more\ or\ less|nearly|almost|close\ to|call\ it|something\ like|like\ about    |looks
    |look|looked|seems|appears|eyeball\w*|kind\ of|kinda|sort\ of|sorta|should\ be|somewhere
    |or\ thereabouts    |just\ (?:over|under|shy)|(?:a\ )?(?:hair|bit|tad|little|touch|smidge)
    \ (?:over|under
    |more|less|above|below|bigger|smaller|shy)|supposed(?:ly)?|pretty\ sure
    |not\ (?:100|sure|certain|positive|exactly|quite)
    |(?:he|she|they|guy|owner|landlord|customer|salesman|inspector|tenant|wife|husband|neighbou?r)
    \ (?:said|says|told\ me|wrote|claims|thinks|swears)|i\ was\ told|been\ told|i'm\ told|quoted
    |someone\ (?:wrote|said)|somebody\ (?:wrote|said)
    |if\ i\ remember|from\ memory|as\ far\ as|afaik|i\ assume|assuming    |don'?t\ quote
    |in\ the\ neighborhood|estimat\w*|vicinity|pushing|mostly|likely|presumably|i\ suppose
    |suppose)\b|(?<=\d)ish\b|\?\s*$""",
    re.VERBOSE,
)
_GUESSED: Final = re.compile(
    r"\b(?:guess\w*|if i had to|wild|shot in the dark|stab|swag|wag|out of thin air|thumb)\b"
)
_PLATE: Final = re.compile(
    r"\b(?:sticker|label|labels|labelled|labeled|nameplate|name plate|data plate|dataplate"
    r"|rating plate|plate says|plate|tag says|tag|printed|stamped|on the edge says"
    r"|spec sheet|submittal|manual says)\b"
)
_MEASURED: Final = re.compile(
    r"\b(?:measured|measure[sd]?|measuring|tape|taped|gauge (?:says|reads?|shows?)"
    r"|on the gauge|gage says|meter (?:says|reads?|shows?)|manometer|mano|reads"
    r"|reading|probe|hood (?:says|reads?)|hooded|flow ?plate|clocked|laser|ruler|calipers?"
    r"|got out the|i read|test(?:ed)? at)\b"
)
_PLAIN_DOUBT: Final = words("about around roughly approx ish maybe think kind kinda somewhere")
"""The plain words that are in a saying of how sure one is."""
_NO_INSTRUMENT_HEDGE: Final = re.compile(r"\bno (?:tape|gauge|manometer|meter|probe)\b")


def sureness(text: str) -> Sure:
    """How the person says that they know it; the weakest thing said wins.

    >>> sureness("the sticker says 80,000, i think").value
    'hedged'
    """
    if is_plain_without(text, _PLAIN_DOUBT):
        return Sure.PLAIN
    if _GUESSED.search(text):
        return Sure.GUESSED
    if _HEDGED.search(text):
        return Sure.HEDGED
    if _MEASURED.search(text) and not _NO_INSTRUMENT_HEDGE.search(text):
        return Sure.MEASURED
    if _PLATE.search(text):
        return Sure.PLATE
    return Sure.PLAIN


def hedged(text: str) -> bool:
    """Whether doubt is said."""
    return sureness(text) in (Sure.HEDGED, Sure.GUESSED)


_NEG: Final = (
    r"(?:can'?t|cannot|can not|cant|couldn'?t|could not|couldnt|can'?t even|didn'?t|didnt"
    r"|did not|don'?t|dont|do not|dosent|doesn'?t|doesnt|haven'?t|havent|have not|hasn'?t"
    r"|won'?t|wont|wouldn'?t|unable to|impossible to|never|wasn'?t able to|not able to"
    r"|no way to|no way of|not possible to|nobody can|ain'?t|aint|hard to|tough to"
    r"|difficult to|isn'?t|isnt|not|knot)"
)
_UNKNOWN: Final = re.compile(
    r"(?:"
    + _NEG
    + (
        r"(?: (?:really|even|actually|quite|ever|yet|possibly|physically|just|quite|wanna|be"
        r"|want to|be able to|have a way to|got a way to|at all|me|honestly|currently|that"
        r"|the|any))* (?:know|kno|tell|say|saying|see|find|reach|reachable|get (?:to|at|up"
        r"|in|into|under|behind|a|over|back|there|near|close|out|the|that|it|my)|measure"
        r"|measured|measuring|read|readable|check|checked|look|looked|remember|recall"
        r"|access|follow|trace|track|zero|calibrate|accessible|determine|seeing|knowing"
        r"|telling|visible|sure|certain|have (?:it|that|one|a|any|my|the|access|numbers?)"
        r"|see|seen|open|opened|make it out|make out|understand the label|gotten|got"
        r"|record|recorded|write|written|wrote|legible|available|listed|marked|printed"
        r"|labeled|labelled|show|shown|familiar|given|provided|on me|with me|identify"
        r"|guess|figure|pulled|fit|crawl|climb|move|take|took|on site|there yet|home|been"
        r"|exposed|running|working|on right now|turn on|start|come on))|\b(?:no|zero|not a"
        r"|not the) (?:idea|clue|clew|earthly|way|access|gauge|gage|meter|tape|manometer"
        r"|mano|ladder|light|flashlight|probe|probes|thermometer|hood|flow ?hood"
        r"|instrument\w*|label|sticker|plate|tag|nameplate|data plate|info\w*|record"
        r"|records|numbers?|documentation|paperwork|reading|tools?|tester|visibility"
        r"|battery|batteries|one knows|telling|markings?|answer|data|foggiest|luck|power"
        r"|hatch|entry|view|sight)\b|\b(?:dunno|dunnoh|idk|i d k|beats me|hanged if|who knows"
        r"|god knows|lord knows|heaven knows|search me|unsure|unknown|unkown|n/a|n a|na"
        r"|tbd|clueless|not applicable|undetermined|couldn't say|dk|donno|duno|unclear"
        r"|nothing (?:on|about|listed|printed|marked|legible|written)|wore off|rubbed away|worn"
        r" away"
        r"|off[- ]limits|above my pay ?grade|(?:just|only) the (?:homeowner|renter|tenant)"
        r"|not my (?:department|trade|job)|too short|tips? (?:are|is) (?:plugged|clogged|missing"
        r"|broken)"
        r"|under (?:a|an|[0-9]+|several|two) ?(?:foot|feet|inch|inches) of"
        r"|no comment|nobody knows|anybody's guess|anyone's guess|good question"
        r"|wish i knew|(?:your|ur) guess|hell if i|damned if i|haven'?t a clue"
        r"|(?:he|she|they|husband|wife|dad|landlord|owner|boss|installer|office|someone|somebody)"
        r"(?:'d| would| might| may) know"
        r"|making (?:it|one|something|that) up|didn'?t (?:put|get|run) (?:a|the|my) tape"
        r"|haven'?t the|not a clue|you tell me|ask (?:him|her|them|the|my|me later"
        r"|someone)|have to (?:ask|check|look|go|get|measure|find|call|crawl|climb|cut"
        r"|pull|open)|need to (?:ask|check|look|go|get|measure|find|call)|would have to"
        r"|i'd have to|gotta (?:check|look|ask|go)|got to check|let me (?:check|look|ask"
        r"|go)|will (?:check|look|measure|get back)|i'll (?:check|look|measure|get|have)"
        r"|get back to you|waiting on|still (?:waiting|looking)|have not|haven'?t yet"
        r"|not yet|later maybe)\b|\b(?:buried|hidden|concealed|inaccessible|unreachable"
        r"|unreadable|illegible|drywalled|sheetrocked|boxed in|walled|enclosed"
        r"|covered (?:up|in|by|with|over)|painted over|sealed (?:up|in|behind|off|shut"
        r"|off)|behind (?:the |a |some |finished )?(?:drywall|sheetrock|wall|walls|plaster"
        r"|panel|panels|paneling|insulation|ceiling|finished|stuff|boxes|junk|cabinet\w*"
        r"|water heater|furnace|tile|a wall|shelves|shelving)|above (?:the "
        r"|a )?(?:finished |drywall |plaster |hard )?ceiling|under (?:the |a )?(?:slab"
        r"|concrete|insulation|blown)|inside (?:the |a )?(?:wall|walls|ceiling|soffit"
        r"|chase)|in (?:the |a )(?:slab|concrete)|faded|worn (?:off|away|out)"
        r"|rubbed (?:off|out)|scratched (?:off|out)|torn off|ripped off|peeled off"
        r"|fell off|rusted (?:off|over|out)|too (?:dark|hot|tight|high|dirty|dangerous"
        r"|small to|far|faded|narrow|rusty|dusty|cramped|blurry|greasy|steep|risky)"
        r"|blocked (?:off|by)|locked|no one home|nobody home|not home|missing|illegible"
        r"|blurry|smudged|bleached|washed out|burned off|sun ?bleached"
        r"|crawl ?space is (?:flooded|full|wet)|flooded|snakes|wasps|bees)\b|\b(?:hood"
        r"|gauge|gage|manometer|mano|meter|tape|probe|probes|thermometer|ladder"
        r"|flash ?light|instrument|flow ?plate|tester|anemometer|tool|tools"
        r"|batter(?:y|ies)|camera|phone|hose|hoses|tubing|tips|static tips|kit)(?:'s| is"
        r"| are| was|s)? (?:(?:not|is|are|was|currently|still|all|completely|totally|just"
        r"|been|in|at|on|got|already|out|also) )*(?:out|dead|broke|broken|busted|gone|shot"
        r"|lost|borrowed|stolen|missing|home|van|truck|shop|died|the|my|on loan|loaned"
        r"|being|acting|frozen|flat|kaput|calibration|for|away|charging|reading junk|not"
        r"|cracked|fried|quit|toast|down|dying|low)\b|\b(?:forgot|left|lost|broke|dropped"
        r"|loaned|lent|misplaced|borrowed|need|without|missing|don'?t have|dont have|no"
        r"|didn'?t bring) (?:my|the|a|our|his|that|any|out) (?:hood|gauge|gage|manometer"
        r"|mano|meter|tape|probe|probes|thermometer|ladder|flash ?light|instruments?"
        r"|flow ?plate|tester|tools?|kit|hose|tubing)\b|\b(?:power|unit|system|furnace"
        r"|blower|fan|equipment|house|gas|it|heat|ac|a/c|electricity)(?:'s| is"
        r"| was) (?:off|down|dead|out|broken|not running|disconnected|shut off|shut down"
        r"|locked out|empty)\b|\bwon'?t (?:run|start|come on|turn on|kick on)\b|\b(?:not"
        r"|isn't|wasn't) (?:visible|accessible|reachable|readable|legible|available"
        r"|measured|labeled|labelled|marked|listed|on the plate|exposed|there yet|recorded"
        r"|known)\b|\b(?:customer|homeowner|owner|tenant|renter|they|he|she|landlord"
        r"|caller|the lady|nobody|no one)(?:'s)? (?:(?:also|just|really) )?(?:doesn'?t"
        r"|doesnt|didn'?t|won'?t|wouldn'?t|does not|did not|isn'?t|not|never|can'?t"
        r"|couldn'?t|has no|had no|refused|knows|remembers|seems to know)\b|\b(?:it|they"
        r"|that) (?:doesn'?t|does not|don'?t) say\b|^\s*\?+\s*$|^\s*(?:na|n\.a\.?|n/a"
        r"|none given|unk|x+|-+|\?)\s*$"
    )
)


def cant_say(text: str) -> bool:
    """Whether the text says, in whatever words, that the person can't give the answer.

    >>> cant_say("hood's out for calibration")
    True
    >>> cant_say("20x8 galvanized")
    False
    """
    if is_plain_without(text, _PLAIN_EXCUSES) and words_in(text):
        return False
    return _UNKNOWN.search(text) is not None


_PLAIN_EXCUSES: Final = words("x it's hood meter meters")
"""The plain words that are in a saying of why one can't say ("it's down", "xx")."""


_EXCUSE: Final = re.compile(
    # what can't be, isn't or wasn't done
    r"\b(?:can'?t|cannot|couldn'?t|could not|can not|cant|couldnt|didn'?t|did not|didnt"
    r"|don'?t|do not|dont|doesn'?t|doesnt|does not|haven'?t|havent|have not|hasn'?t|hasnt"
    r"|won'?t|wont|wouldn'?t|wouldnt|isn'?t|isnt|wasn'?t|wasnt|aren'?t|ain'?t|aint|never"
    r"|unable|impossible|nobody|no one|noone|nothing to|not|not yet|without|cant|knot)\b"
    r"|\bno (?!problem|doubt|question|wait|way to go)[a-z]+|\b(?:buried|hidden|concealed"
    r"|covered|covers|enclosed|boxed|furred|framed in|walled|sealed|foamed|drywall(?:ed)?"
    r"|sheetrock(?:ed)?|plaster(?:ed)?|finished (?:ceiling|wall|basement|over|off)"
    r"|hard lid|lid|in the way|blocked|obstructed|obscured|screwed|nailed|glued|caulked"
    r"|(?:painted|stuck|rusted|bolted|taped) shut|locked|inaccessible|out of reach"
    r"|unreachable|too (?:tight|dark|hot|high|low|small|narrow|steep|dangerous|far|dirty"
    r"|dusty|cramped|close|faded|risky|deep)|flooded|slab|encased|embedded|in concrete"
    r"|behind|underneath|beneath|under the|above the|insulation (?:is|covers|everywhere)"
    r"|tucked|stuffed|wasps|bees|snakes?|rats)\b|\b(?:gone|missing|lost|forgot|forgotten"
    r"|left (?:it|my|the|mine)|broke|broken|busted|dead|died|out for|on loan|loaned|lent"
    r"|borrowed|stolen|cracked|split open|hose split|fried|shot|toast|kaput|worn|faded"
    r"|smudged|smeared|bleached|scratched|torn|ripped|peeled|fell off|rubbed|rusted off"
    r"|unreadable|illegible|blurry|fuzzy photo|washed out|plugged ports?|ports? (?:is"
    r"|are) plugged|needs? (?:batteries|charging|calibrat\w+|a battery)|calibration"
    r"|recharging|charging|sent back|being repaired|at the shop|in the shop"
    r"|in the (?:other )?(?:truck|van|car)|back at the (?:shop|office|truck|van)|at home"
    r"|on order|disconnected|powered down|shut (?:off|down)|turned off|is off|are off"
    r"|not on|(?:thermostat|power|gas|system|unit|blower|heat|ac|furnace|hood|meter|gauge"
    r"|manometer|probe|fan)(?:'s| is| are|s)? (?:out|off|down|acting up|on the fritz"
    r"|not working))\b|\b(?:just moved in|moved in|new owners?|previous owners?"
    r"|before (?:my|our) time|inherited|only (?:have|had|got) (?:the|a) (?:photo|picture"
    r"|pic)|ask (?:the|my|him|her|them|someone)|you'?d have to|have to (?:ask|check|look"
    r"|see|find)|need to (?:ask|check|look|see|find|measure|get)|waiting (?:on|for)"
    r"|wait for|check back|get back to|call you back|later|tomorrow|next (?:visit|trip"
    r"|week|time)|when i get (?:there|back|home)|on my way|driving|not there|still looking"
    r"|still waiting|looking for it|god (?:only )?knows|lord knows|heaven knows|who knows"
    r"|only knows|anyone'?s guess|anybody'?s guess|your guess|wish i knew|beats|stumped"
    r"|pass on|jumps? (?:all )?(?:over|around)|all over the place|bouncing|pegged|unstable"
    r"|unsteady|erratic|fluctuat\w+|refus\w+|skipped it|nowhere|stuck|still|trying|tried"
    r"|wouldn'?t budge|in front of|piled|stacked up|furniture|couch|blocking|unsure"
    r"|uncertain|clueless|mystery|unclear)\b"
)


def excuse(text: str) -> bool:
    """Whether a text that holds no value says, one way or another, why there is none.

    Wider than `cant_say`, and meant only for texts in which nothing else was found.

    >>> excuse("plate is gone"), excuse("the brown house on the corner")
    (True, False)
    """
    return _EXCUSE.search(text) is not None
