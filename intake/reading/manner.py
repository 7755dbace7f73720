"""How something is said: how sure the person is, and whether they say that they can't say."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.result import Sure

__all__ = ["cant_say", "hedged", "sureness"]

_HEDGED: Final = re.compile(
    r"""\b(?:about|abt|around|aprox|approx\w*|rough\w*|ruff\w*|maybe|mabye|mayb|perhaps|possibly|probabl[ye]
    |prob|probly|prolly|i\ think|i\ thnk|i\ believe|i'd\ say|i\ would\ say|id\ say|i\ reckon|reckon|figure
    |ish|or\ so|ball\ ?park|give\ or\ take|circa|ca|more\ or\ less|nearly|almost|close\ to|call\ it|something\ like|like\ about
    |looks|look|looked|seems|appears|eyeball\w*|kind\ of|kinda|sort\ of|sorta|should\ be|somewhere|or\ thereabouts
    |just\ (?:over|under|shy)|a\ (?:hair|bit|tad|little)\ (?:over|under|more|less)|supposed(?:ly)?|pretty\ sure
    |not\ (?:100|sure|certain|positive|exactly)|if\ i\ remember|from\ memory|as\ far\ as|afaik|i\ assume|assuming
    |don'?t\ quote|in\ the\ neighborhood|estimat\w*|vicinity|pushing|mostly|likely|presumably|i\ suppose|suppose)\b
    |(?<=\d)ish\b|\?\s*$""",
    re.VERBOSE,
)
_GUESSED: Final = re.compile(
    r"\b(?:guess\w*|if i had to|wild|shot in the dark|stab|swag|wag|out of thin air|thumb)\b"
)
_PLATE: Final = re.compile(
    r"\b(?:sticker|label|labels|labelled|labeled|nameplate|name plate|data plate|dataplate|rating plate"
    r"|plate says|plate|tag says|tag|printed|stamped|on the edge says|spec sheet|submittal|manual says)\b"
)
_MEASURED: Final = re.compile(
    r"\b(?:measured|measure[sd]?|measuring|tape|taped|gauge (?:says|reads?|shows?)|on the gauge|gage says"
    r"|meter (?:says|reads?|shows?)|manometer|mano|magnehelic|reads|reading|probe|hood (?:says|reads?)|hooded"
    r"|flow ?plate|clocked|laser|ruler|calipers?|got out the|i read|test(?:ed)? at)\b"
)
_NO_INSTRUMENT_HEDGE: Final = re.compile(r"\bno (?:tape|gauge|manometer|meter|probe)\b")


def sureness(text: str) -> Sure:
    """How the person says that they know it; the weakest thing said wins.

    >>> sureness("the sticker says 80,000, i think").value
    'hedged'
    """
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
    r"(?:can'?t|cannot|can not|cant|couldn'?t|could not|couldnt|can'?t even|didn'?t|didnt|did not|don'?t|dont|do not|dosent"
    r"|doesn'?t|doesnt|haven'?t|havent|have not|hasn'?t|won'?t|wont|wouldn'?t|unable to|impossible to|never|wasn'?t able to|not able to"
    r"|no way to|no way of|not possible to|nobody can|ain'?t|aint|hard to|tough to|difficult to|isn'?t|isnt|not|knot)"
)
_UNKNOWN: Final = re.compile(
    r"(?:"
    + _NEG
    + r"(?: (?:really|even|actually|quite|ever|yet|possibly|physically|just|quite|wanna|want to|be able to|have a way to|got a way to|at all|me|honestly|currently|that|the|any))*"
    r" (?:know|kno|tell|say|saying|see|find|reach|reachable|get (?:to|at|up|in|into|under|behind|a|over|back|there|near|close|out|the|that|it|my)|measure|measured|measuring|read|readable|check|checked|look|looked|remember|recall"
    r"|access|accessible|determine|seeing|knowing|telling|visible|sure|certain|have (?:it|that|one|a|any|my|the|access|numbers?)|see|seen|open|opened|make it out|make out|understand the label|gotten|got|"
    r"record|recorded|write|written|wrote|legible|available|listed|marked|printed|labeled|labelled|show|shown|familiar|given|provided|on me|with me|identify|guess|figure|pulled|fit|crawl|climb|move|take|took|on site|there yet|home|been|exposed|"
    r"running|working|on right now|turn on|start|come on))"
    r"|\b(?:no|zero|not a|not the) (?:idea|clue|clew|earthly|way|access|gauge|gage|meter|tape|manometer|mano|ladder|light|flashlight|probe|probes|thermometer|hood|flow ?hood|instrument\w*"
    r"|label|sticker|plate|tag|nameplate|data plate|info\w*|record|records|numbers?|documentation|paperwork|reading|tools?|tester|visibility|battery|batteries|one knows|telling|markings?|answer|data|foggiest|luck|power|hatch|entry|view|sight)\b"
    r"|\b(?:dunno|dunnoh|idk|i d k|beats me|who knows|god knows|lord knows|heaven knows|search me|unsure|unknown|unkown|n/a|n a|na|tbd|clueless|not applicable|undetermined|couldn't say|dk|donno|duno|unclear|no comment"
    r"|nobody knows|anybody's guess|anyone's guess|good question|wish i knew|(?:your|ur) guess|hell if i|damned if i|haven'?t a clue|haven'?t the|not a clue|you tell me|ask (?:him|her|them|the|my|me later|someone)"
    r"|have to (?:ask|check|look|go|get|measure|find|call|crawl|climb|cut|pull|open)|need to (?:ask|check|look|go|get|measure|find|call)|would have to|i'd have to|gotta (?:check|look|ask|go)|got to check|let me (?:check|look|ask|go)"
    r"|will (?:check|look|measure|get back)|i'll (?:check|look|measure|get|have)|get back to you|waiting on|still (?:waiting|looking)|have not|haven'?t yet|not yet|later maybe)\b"
    r"|\b(?:buried|hidden|concealed|inaccessible|unreachable|unreadable|illegible|drywalled|sheetrocked|boxed in|walled|enclosed|covered (?:up|in|by|with|over)|painted over|sealed (?:up|in|behind|off|shut|off)|"
    r"behind (?:the |a |some |finished )?(?:drywall|sheetrock|wall|walls|plaster|panel|panels|paneling|insulation|ceiling|finished|stuff|boxes|junk|cabinet\w*|water heater|furnace|tile|a wall|shelves|shelving)|above (?:the |a )?(?:finished |drywall |plaster |hard )?ceiling"
    r"|under (?:the |a )?(?:slab|concrete|insulation|blown)|inside (?:the |a )?(?:wall|walls|ceiling|soffit|chase)|in (?:the |a )(?:slab|concrete)|faded|worn (?:off|away|out)|rubbed (?:off|out)|scratched (?:off|out)|torn off|ripped off|peeled off|fell off|rusted (?:off|over|out)|"
    r"too (?:dark|hot|tight|high|dirty|dangerous|small to|far|faded|narrow|rusty|dusty|cramped|blurry|greasy|steep|risky)|blocked (?:off|by)|locked|no one home|nobody home|not home|missing|illegible|blurry|smudged|bleached|washed out|burned off|sun ?bleached|crawl ?space is (?:flooded|full|wet)|flooded|snakes|wasps|bees)\b"
    r"|\b(?:hood|gauge|gage|manometer|mano|meter|tape|probe|probes|thermometer|ladder|flash ?light|instrument|flow ?plate|tester|magnehelic|anemometer|tool|tools|batter(?:y|ies)|camera|phone|hose|hoses|tubing|tips|static tips|kit)(?:'s| is| are| was|s)? "
    r"(?:(?:not|is|are|was|currently|still|all|completely|totally|just|been|in|at|on|got|already|out|also) )*(?:out|dead|broke|broken|busted|gone|shot|lost|borrowed|stolen|missing|home|van|truck|shop|died|the|my|on loan|loaned|being|acting|frozen|flat|kaput|calibration|for|away|charging|reading junk|not|cracked|fried|quit|toast|down|dying|low)\b"
    r"|\b(?:forgot|left|lost|broke|dropped|loaned|lent|misplaced|borrowed|need|without|missing|don'?t have|dont have|no|didn'?t bring) (?:my|the|a|our|his|that|any|out) (?:hood|gauge|gage|manometer|mano|meter|tape|probe|probes|thermometer|ladder|flash ?light|instruments?|flow ?plate|tester|tools?|kit|hose|tubing)\b"
    r"|\b(?:power|unit|system|furnace|blower|fan|equipment|house|gas|it|heat|ac|a/c|electricity)(?:'s| is| was) (?:off|down|dead|out|broken|not running|disconnected|shut off|shut down|locked out|empty)\b|\bwon'?t (?:run|start|come on|turn on|kick on)\b"
    r"|\b(?:not|isn't|wasn't) (?:visible|accessible|reachable|readable|legible|available|measured|labeled|labelled|marked|listed|on the plate|exposed|there yet|recorded|known)\b"
    r"|\b(?:customer|homeowner|owner|tenant|renter|they|he|she|landlord|caller|the lady|nobody|no one)(?:'s)? (?:(?:also|just|really) )?(?:doesn'?t|doesnt|didn'?t|won'?t|wouldn'?t|does not|did not|isn'?t|not|never|can'?t|couldn'?t|has no|had no|refused|knows|remembers|seems to know)\b"
    r"|\b(?:it|they|that) (?:doesn'?t|does not|don'?t) say\b|^\s*\?+\s*$|^\s*(?:na|n\.a\.?|n/a|none given|unk|x+|-+|\?)\s*$"
)


def cant_say(text: str) -> bool:
    """Whether the text says, in whatever words, that the person can't give the answer.

    >>> cant_say("hood's out for calibration")
    True
    >>> cant_say("20x8 galvanized")
    False
    """
    return _UNKNOWN.search(text) is not None
