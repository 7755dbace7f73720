"""Words around a clause of another question: what leads it in, whose it is, what trails it."""

import re
from typing import Final

from intake.interview.question import Question
from intake.reading.small_counts import COUNT

__all__ = [
    "LEADS",
    "bare_clause",
    "name_alone",
    "of_no_question",
    "predicate",
    "same_size",
    "whose",
]

LEADS: Final = (
    r"(?:and|also|oh|but|plus|btw|by the way|actually|sorry|wait|well|so|my bad|hold on"
    r"|scratch that|correction|no)"
)
"""Words that lead a clause in."""
_LEADS: Final = re.compile(
    r"^(?:(?:and|also|oh|but|plus|btw|by the way|actually|sorry|wait|well|so|the|my|that"
    r"|nope|no|yes"
    r"|(?:they|he|she|the owner|owner) (?:told me|says?|said)(?: that)?|i forgot(?: to say)?"
    r"|forgot to say|turns out|remember)[, ]+)+"
)
_NO: Final = re.compile(r"^(?:(?:and|also|oh|but|nope|nah)[, ]+)*(?=no |not |there)")
_ORDERED: Final = re.compile(
    r"^(?:change|make|set|put|take|correct|fix|call) (?:the |my )?(?P<what>[a-z ]+?)"
    r" (?:(?:down|up|back) )?(?:to|at|as) (?P<value>.+)$"
)
_TRAILS: Final = re.compile(
    r"(?:,? (?:by the way|btw|either|too|as well|though|also|not \d[\d.x]*|instead))+[.! ]*$"
)
_GAVE: Final = re.compile(r"^(?P<what>[a-z ]+?) (?:i|we) (?:gave|told|said)(?: you| before)? ")


def bare_clause(piece: str) -> str:
    """A normalised clause without the words that lead it in or trail it.

    >>> bare_clause("sorry the drop is 20x10 not 22"), bare_clause("change tons to 3.5")
    ('drop is 20x10', 'tons 3.5')
    """
    lead = _NO.match(piece)
    text = piece[lead.end() :] if lead else _LEADS.sub("", piece)
    text = _TRAILS.sub("", text).strip()
    ordered = _ORDERED.match(text)
    if ordered is not None:
        return f"{ordered['what']} {ordered['value']}"
    return _GAVE.sub(r"\g<what> ", text)


_PREDICATE: Final = re.compile(
    r"^(?:[a-z]+ ){1,3}(?:is|are|was|were|'s|'re)\b|^[a-z]+(?:'s|'re) |^[a-z]+ (?:over"
    r"|lined|wrapped)"
)


def predicate(clause: str) -> bool:
    """Whether a clause says something of its first words: "the drop is lined"."""
    return _PREDICATE.match(clause) is not None


_ALONE: Final = re.compile(
    r"(?:(?:and|also|oh|the|my|for|as for|on) )*(?:supply |return |main )?"
    r"(?:trunks?|drop|filter|branches|returns?|openings?)(?: one| 1)?:?"
)


def name_alone(piece: str) -> bool:
    """Whether a clause is nothing but the name of what the next one tells."""
    return _ALONE.fullmatch(piece) is not None


_SAME: Final = re.compile(r".*\b(?:the )?same(?: size| thing)?[.! ]*")


def same_size(clause: str) -> bool:
    """Whether a clause says that its thing is as large as what was told before it."""
    return _SAME.fullmatch(clause) is not None


_SIZE: Final = r"\d+(?:\.\d+)? ?(?:x|by) ?\d"
_TO_THE_DROP: Final = re.compile(
    r"(?:return )?trunk (?:to|into|feeding|leading (?:to|into)|above|over|on top of)"
    r" (?:it|the drop|that|drop)\b"
)
_OF_RETURN: Final = re.compile(
    r"(?:the )?return(?:'s| is| was| run)?(?: about| around)? ?\d{1,3} ?(?:ft|feet|foot|')?[. ]*"
)
_TRUNKS_COUNTED: Final = re.compile(
    rf"(?:it'?s |its |there'?s |there are |there is |we have )?{COUNT} (?:supply )?trunks?"
    rf"(?:,? not {COUNT})?(?: (?:leave|leaving|come|coming|off|out|go)\b[a-z ]*)?"
)
_TRUNKS_AFTER_ALL: Final = re.compile(
    r"(?:(?:there'?s |it'?s )?(?:one|a) trunk (?:goes |runs )?(?:to |on |at )?(?:each|either)"
    r" (?:way|side|end|direction))|"
    rf"(?:i|we) (?:said|told you|put|typed) {COUNT} (?:supply )?trunks?"
    rf"|(?:it'?s |its |there'?s |there is )?(?:really |actually )?(?:just|only) (?:the )?{COUNT}"
    r" (?:supply )?trunks?(?: after all)?"
    r"|(?:the )?(?:supply )?trunks? (?:runs?|leaves?|goes|go|comes? out)(?: out| off| to| at)?"
    r" (?:both|each|either)(?: of the)? (?:ways?|ends?|sides?|directions?)"
)
_BRANCHES: Final = re.compile(
    rf"(?:there'?s |there are |it'?s |we have )*{COUNT}"
    r" (?:branch(?:es)?|run ?outs?|branch runs)\b.*"
)
_COUNTED_ELSEWHERE: Final = ("trunk_count", "branches", "branch_count", "registers")
_OF_UNIT: Final = (
    r"(?:(?:it'?s|its|it is|that'?s|(?:and |the )*(?:(?:new )?(?:unit|equipment|system|heat ?pump)"
    r"(?:'s| is)?)|really|actually|an?|by the way) )*"
)
_NEW_UNIT: Final = (
    (
        "new_tons",
        re.compile(
            rf"{_OF_UNIT}(?:[1-5](?:\.5)?|(?:one|two|three|four|five)(?: and a half)?)[ -]?tons?"
            r"(?:,? (?:not|instead of) [\d.a-z]+(?: tons?)?)?(?:,? (?:my (?:mistake|bad)"
            r"|actually|really))?"
        ),
    ),
    (
        "new_stages",
        re.compile(
            rf"{_OF_UNIT}(?:two|single|one|2|1)[- ]stage(?: heat ?pump| unit| cooling)?"
            r"(?:,? (?:not|i (?:told you|said)) [a-z- ]+)?"
        ),
    ),
    (
        "strip_cfm",
        re.compile(
            r"(?:there'?s |it has |with )?(?:an? )?\d{1,2} ?kw (?:of )?(?:heat )?(?:strips?|kit)"
            r"(?: after all)?.*"
        ),
    ),
)
"""What is put right of the new equipment beside another answer: "it's actually 3.5 tons"."""
_ONE_PRESSURE: Final = re.compile(
    r"(?:the )?(?:return|supply)(?: static| side| pressure)? (?:was|is|reads?|should (?:be|read))"
    r" (?:actually |really )?0?\.\d+(?:,? (?:not|instead of) 0?\.\d+)?"
)
_DEAD_MOTOR: Final = re.compile(
    r"(?:old )?(?:blower |fan )?motor(?:'s| is| was| got) (?:\w+ )?(?:burn|dead|shot|fried|seiz|bad"
    r"|gone|out|toast|locked|stuck|smoked)"
)
_BARE_FLOW: Final = re.compile(r"(?:at |about |around )?\d{3,4} ?cfm[.! ]*")
_PRESSURES: Final = ("static_total", "static_split")
_BRANCHES_COUNTED: Final = re.compile(
    rf"(?:it'?s |its |there'?s |there are |we have )?(?:{COUNT}"
    rf"|\d{{1,2}}) (?:[a-z]+ )?(?:branch(?:es)?"
    r"|run ?outs?|take ?offs?)\b.*\b(?:inch|in|round|\d)\b"
)
_TRUNK_OR_DROP: Final = ("supply.trunks", "return.drops", "return.trunks")
_FITTINGS: Final = re.compile(
    rf"(?:there'?s |there are |it has |has |with )?(?:{COUNT}|an?|some) (?:[a-z]+ )?"
    r"(?:elbows?|90s|nineties|turns|boots?|takeoffs?)\b.*"
)
_YEAR: Final = re.compile(
    r"(?:year(?:'s| is| was)?|(?:house|place|home)(?:'s| is| was) (?:from |built (?:in )?)?"
    r"|(?:it was )?built (?:in )?)(?:about |around )?(?:18|19|20)\d\d"
)
_ONE_ZONE: Final = re.compile(r"(?:just |only )?one (?:thermostat|zone|stat)\b.*|no zones?\b.*")
_ELEVATION: Final = re.compile(
    r"(?:(?:the )?(?:house|place|site|job)(?:'s| is) |we'?re |it'?s )?(?:up )?(?:at )?[\d,]{2,6} ?"
    r"(?:ft|feet|foot) (?:of )?(?:elevation|above sea level|up|altitude)"
    r"|(?:the )?(?:house|place|site)(?:'s| is) (?:up )?at [\d,]{2,6} ?(?:ft|feet|foot)"
    r"|(?:elevation|altitude)(?:'s| is)? [\d,]{1,6} ?(?:ft|feet|foot)?"
)
_FARTHEST: Final = re.compile(
    r"(?:the )?(?:longest|farthest|furthest) (?:(?:supply|return)(?: run)?|run)(?:'s| is| was)?"
    r"(?: about| around)? \d{1,3} ?(?:ft|feet|foot|')?(?:,? not \d{1,3})?"
)
_HEATS_ALIKE: Final = re.compile(
    r"heat(?:ing)?(?:'s| is| needs| wants)? (?:the )?same (?:as|like) (?:in )?(?:full |high )*"
    r"cool\w*"
)
_OF_AIR: Final = ("cool_cfm", "low_cfm", "heat_pump_cfm", "strip_cfm", "blower_kind")
_EQUIPMENT: Final = (
    r"(?:(?:the )?(?:unit|system|equipment|heat ?pump|a/?c|furnace|condenser)(?:'s| is)|it'?s|its"
    r"|it is|make (?:it|that))"
)
_SORRY: Final = (
    r"(?:actually|really|sorry|my mistake|my bad|after all|i mean|(?:i|we) (?:told you|said) .*"
    r"|not .*)"
)
_TONS: Final = re.compile(
    rf"(?P<lead>(?:{_EQUIPMENT}|actually|really|sorry|an?)[, ]+)*"
    r"(?:[1-5](?:\.[05])?|(?:one|two|three|four|five)(?: and a half)?)[ -]?tons?"
    rf"(?P<end>[, ]+{_SORRY})*[.! ]*"
)
_STAGES: Final = re.compile(
    rf"(?P<lead>(?:{_EQUIPMENT}|actually|really|sorry|an?)[, ]+)*"
    r"(?:two|2|single|one|variable)[- ](?:stages?|speed)"
    rf"(?P<end>[, ]+{_SORRY})*[.! ]*"
)


def corrected_equipment(clause: str) -> str:
    """The key of the question of tons or stages that a clause puts right; else empty.

    >>> corrected_equipment("it's actually 3.5 tons"), corrected_equipment("3 tons")
    ('new_tons', '')
    """
    for key, pattern in (("new_tons", _TONS), ("new_stages", _STAGES)):
        said = pattern.fullmatch(clause)
        if said is not None and (said["lead"] or said["end"]):
            return key
    return ""


_RUNS: Final = ("run_supply", "fittings")
_THE_SUPPLY: Final = re.compile(
    r"(?:the )?supply(?: side| one)?(?:'s| is| are) (?:an? |about )?[0-9]+ ?(?:x|by|in|inch|round)"
)
"""The supply's size beside a return duct's."""


def whose(question: Question, clause: str) -> str:
    """The key of the question that a clause is of, where the open one decides it; else empty.

    Args:
        question: The open question.
        clause: As `bare_clause` leaves it.
    """
    if question.section.startswith("return.") and _TO_THE_DROP.match(clause):
        return "return_trunk"
    if question.key == "return_trunk" and re.match(r"trunk\b", clause):
        return question.key
    if question.section.startswith("return.") and _THE_SUPPLY.match(clause):
        return "trunk_size"
    if question.key in _RUNS and _OF_RETURN.fullmatch(clause):
        return "run_return"
    if not question.key.startswith(("old_", "new_")):
        for key, pattern in _NEW_UNIT:
            if key != question.key and pattern.fullmatch(clause):
                return key
    if question.key == "old_runs" and _DEAD_MOTOR.match(clause):
        return question.key
    if question.key == "reading_mode" and _BARE_FLOW.fullmatch(clause):
        return "reading_airflow"
    if question.key not in _PRESSURES and _ONE_PRESSURE.fullmatch(clause):
        return "static_total"
    if question.section in _TRUNK_OR_DROP and _BRANCHES_COUNTED.match(clause):
        return "branches"
    if question.key != "trunk_count" and _TRUNKS_COUNTED.fullmatch(clause):
        return "trunk_count"
    if question.key != "trunk_count" and _TRUNKS_AFTER_ALL.fullmatch(clause):
        return "trunk_count"
    if question.key not in _COUNTED_ELSEWHERE and _BRANCHES.fullmatch(clause):
        return "branches"
    if question.field != "elevation" and _ELEVATION.fullmatch(clause):
        return "elevation"
    if question.section != "path" and _FARTHEST.fullmatch(clause):
        return "run_return" if "return" in clause else "run_supply"
    if question.key in _OF_AIR and _HEATS_ALIKE.fullmatch(clause):
        return "heat_pump_cfm" if question.key != "heat_pump_cfm" else ""
    if question.key in _OF_AIR and (own := corrected_equipment(clause)):
        return own
    if question.key in ("run_supply", "run_return") and _FITTINGS.fullmatch(clause):
        return "fittings"
    if _YEAR.fullmatch(clause):
        return "year_built"
    if question.key != "zoned" and _ONE_ZONE.fullmatch(clause):
        return "zoned"
    return ""


_RETURN_SIZED: Final = re.compile(rf"return(?:'s| is| was)? {_SIZE}.*")


def of_no_question(question: Question, clause: str) -> bool:
    """Whether a clause is plainly of another thing, but not told of which one."""
    if question.section in ("return.drops", "return.grilles", "return.trunks"):
        return False
    return _RETURN_SIZED.fullmatch(clause) is not None
