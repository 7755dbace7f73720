"""Whether a danger that a clause speaks of is there, denied, past or doubtful."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.red_flag_kinds import RedFlagState

__all__ = ["JUST_NO", "NOW", "OLD_NEWS", "STILL", "state_of"]

OLD_NEWS: Final = re.compile(
    r"(?<!since )\blast (?:\w+ )?(?:week|weekend|night|month|year|summer|winter|spring|fall"
    r"|autumn|time"
    r"|season|heat\w*|monday|tuesday|wednesday|thursday|friday|saturday|sunday|owner|january"
    r"|february|march|april|may|june|july|august|september|october|november|december)\b"
    r"|(?<!since )\byesterday\b|(?<!minute )(?<!minutes )(?<!moment )(?<!moments )(?<!seconds"
    r" )(?<!second )"
    r"(?<!sec )(?<!secs )(?<!min )(?<!mins )\bago\b|\bused to\b|\bonce\b|\bone time\b|\ba while"
    r" back\b"
    r"|\bback in\b"
    r"|\bbefore\b|\bearlier\b|\bpreviously\b|\b(?:in the|this) past\b|\bpast (?:week|month|year"
    r"|few|couple|winter|summer)\b|\bhistory\b|\bhad\b|\bwas\b"
    r"|\bwere\b|\bdid\b|\bsmelled\b|\bwentoff\b|(?<!since )\bthis morning\b|\bthe other (?:day"
    r"|night|week)\b"
    r"|\bother day\b|\bprevious\w*\b|\bwhen we moved in\b|\byears? back\b|\bused\b|\bcame out\b"
    r"|\bgone now\b|\bfixed\b|\brepaired\b|\btook care of\b|\bcleared\b|\bwent away\b|\bis gone\b"
    r"|\bstopped\b|\b(?:19|20)\d\d\b|\bin (?:january|february|march|april|may|june|july|august"
    r"|september|october|november|december)\b|\bleaked\b|\barced\b|\bsparked\b|\bsmoked\b"
    r"|\bhasbeen\b"
)
_HEDGES: Final = re.compile(
    r"\b(?:maybe|might|may|possibly|possible|perhaps|think|thought|thinks|kinda|kind of(?! smell)"
    r"|sorta|sort of|could|or something|wonder|wondering|guess|supposedly|said|sometimes"
    r"|occasionally|now and then|every so often|on and off|off and on|once in a while|if|should"
    r"|would|will|puzzled|sense of|used|ever|looks like it|dunno|not certain|suspect|claims"
    r"|mentioned|heard|is that (?:bad|normal|ok|okay|safe|dangerous))\b|\?|^(?:does|would|should) "
)
NOW: Final = re.compile(
    r"\bright now\b|\bnow\b(?! and then)|\bcurrently\b|\bstill\b|\bas we speak\b|\bat the moment\b"
    r"|\bas im (?:typing|standing)\b|\bkeeps?\b|\bpersists\b|\bjust (?:now|wentoff|started"
    r"|began)\b|\btroubled by\b|\ball day\b"
)
STILL: Final = re.compile(
    r"\bstill (?:there|here|is|does|do|going|goes|happening|on|doing|smell\w*|beeping|sounding"
    r"|leak\w*|burning|smoking|dripping|strong|bad|can|get|getting|hear|see)\b|\b(?:is|it) still\b"
)
"""What began before is going on; true of the whole line."""

_AFTER_ALL: Final = re.compile(
    r"\bno longer\b|\bnot any ?more\b|\bnot now\b|\bgone\b|\bits? (?:fine|ok) now\b"
    r"|\bnot right now\b|\bnow (?:its |it is |theyre )?(?:fine|ok|gone|fixed|good|off|quiet|silent"
    r"|clear)\b"
)


_DENIALS: Final = frozenset((
    "no", "not", "none", "never", "nope", "without", "zero", "nothing", "neither", "nor", "dont",
    "doesnt", "didnt", "cant", "cannot", "couldnt", "havent", "hasnt", "hadnt", "isnt", "arent",
    "wasnt", "werent", "aint", "wont", "nobody", "noone", "negative", "free", "nil",
))  # fmt: skip
_AFTER_A_DENIAL: Final = frozenset((
    "had", "ever",
    "a", "an", "any", "the", "of", "or", "nor", "and/or", "real", "really", "strong", "strongly",
    "weird", "odd", "bad", "funny", "strange", "sign", "signs", "hint", "trace", "sort", "kind",
    "current", "currently", "active", "obvious", "noticeable", "noticeably", "at", "all", "smell",
    "smelled", "smells", "gas", "rottenegg", "sulfur", "burning", "burnt", "burn", "electrical",
    "electric", "smoke", "smoky", "plastic", "exhaust", "co", "coalarm", "alarm", "smokealarm",
    "alarms", "sounding", "wentoff", "water", "flame", "flames", "soot", "sooty", "scorch",
    "scorching", "scorched", "rollout", "yellow", "orange", "lazy", "fire", "spark", "sparks",
    "sparking", "arcing", "leak", "leaks", "leaking", "like", "detect", "detected", "detecting",
    "notice", "noticed", "noticing", "have", "has", "had", "having", "see", "seen", "seeing",
    "hear", "heard", "hearing", "been", "being", "i", "im", "we", "you", "it", "its", "there",
    "theres", "is", "are", "be", "ever", "even", "get", "getting", "got", "one", "single",
    "visible", "hot", "wires", "wire", "wiring", "melted", "melting", "anything", "anyone",
    "anybody", "to", "around", "here", "in", "near", "on", "by", "issue", "issues", "problem",
    "problems", "trouble", "troubles", "worries", "concerns", "with", "symptoms", "symptom",
    "headaches", "headache", "dizzy", "nausea",
    "nauseous", "feel", "feeling", "sick", "ill", "experienced", "reported", "reporting", "noted",
    "present", "whatsoever", "from", "standing", "flooding", "flooded", "wet", "spilling",
    "backdraft", "detectable", "such", "that", "found", "find", "hissing", "hiss", "panel",
    "board", "unit", "furnace", "outlet", "puddle", "puddles", "dripping", "inside", "outside",
))  # fmt: skip
"""Words that may stand between a denial and what it denies; any other breaks the tie."""

_NO_AND_THEN: Final = re.compile(
    r"\b(?:no|nope|nah|negative) (?=(?:it|its|i|im|we|the|there|theres|this|my|our|just|yes|wait"
    r"|he|she|they|heat|ac|cooling|power|hot|air|gasunit|filter|furnace|return|damper|gauge"
    r"|manometer|thermostat|airflow)\b)"
)
"""A "no" that answers the question, or denies something harmless."""


_NEAR: Final = 300
"""Characters on each side of a danger within which a word bears on it."""


def state_of(clause: str, span: tuple[int, int], *, denied_next: bool, still: bool) -> RedFlagState:
    """Present, negated or unclear, for the words of a clause between two places."""
    start, end = span
    first = max(0, start - _NEAR)
    clause, start, end = clause[first : end + _NEAR], start - first, end - first
    clear = _NO_AND_THEN.sub(lambda found: "~" * (len(found[0]) - 1) + " ", clause)
    before, inside, after = clear[:start].split(), clear[start:end].split(), clear[end:].split()
    denials = _denials(before, inside, after)
    if (still or NOW.search(clause)) and not denials and not _AFTER_ALL.search(clause):
        return RedFlagState.PRESENT
    if denials == 1:
        asked_or_past = _HEDGED_DENIAL.search(clause)
        return RedFlagState.UNCLEAR if asked_or_past else RedFlagState.NEGATED
    if denials > 1:
        return RedFlagState.UNCLEAR
    if denied_next:
        return RedFlagState.NEGATED
    loose = any(word in _DENIALS for word in (*before[-8:], *after[:5]))
    vague = OLD_NEWS.search(clause) or _HEDGES.search(clause) or _AFTER_ALL.search(clause)
    return RedFlagState.UNCLEAR if loose or vague else RedFlagState.PRESENT


_HEDGED_DENIAL: Final = re.compile(
    r"\b(?:perhaps|any ?more|no longer|not now|not right now|since|today|anymore|lately|maybe|think"
    r"|sometimes|except|always|yet|until|till|before|much|as (?:bad|strong)|so (?:bad|strong))\b"
)


def _denials(before: list[str], inside: list[str], after: list[str]) -> int:
    """How many times the words in the middle are denied."""
    count = sum(word in _DENIALS for word in inside)
    for word in reversed(before):
        if word in _DENIALS:
            count += 1
        elif word not in _AFTER_A_DENIAL or (count and word not in _DETERMINERS):
            break
    if not count and after:
        is_not = after[0] in (
            "no",
            "none",
            "nope",
            "negative",
            "not",
            "isnt",
            "wasnt",
            "absent",
            "never",
        )
        only = all(word in _TAIL for word in after[1:])
        count += is_not and only
        count += after[0] in ("is", "are", "was") and after[1:2] == ["not"]
    return count


_TAIL: Final = frozenset((
    "no", "none", "not", "sounding", "wentoff", "there", "here", "present", "at", "all", "now",
    "detected", "found", "noticed", "that", "i", "know", "of", "smell", "any", "sir", "maam",
    "active", "on",
))  # fmt: skip


_DETERMINERS: Final = frozenset(("a", "an", "any", "the", "at", "all", "really", "even", "of"))
"""What may stand between two denials of one thing; in "no smell no smoke" each has its own."""

JUST_NO: Final = re.compile(
    r"(?:no|nope|nah)(?: its| thats| it is)? (?:just|only) \w+(?: \w+)?|"
    r"(?:no|none|nope|nah|negative|never|not|nothing|neither|no maam|no sir|absent|n)"
    r"(?: (?:not|to (?:all|both|any|either)|now|at all|of (?:that|those|these|them|it)|here"
    r"|that i know of))*\??"
)
"""A clause that is nothing but a denial, of what was said before it."""
