"""Yes or no, read against the words of the question.

"Rusty" is no to "Is the plenum metal sound?" and yes to "Is the plenum rusty?". So an answer
without a plain yes or no is placed on an axis (condition, access, noise ...) with its pole, the
question likewise, and the answer is yes where the poles agree. Whatever the two disagree about,
or the table doesn't hold, is asked.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.idioms import contradicts_itself, plainly
from intake.reading.manner import cant_say
from intake.reading.result import Accepted, Reading, Unknown
from intake.reading.yes_no_alternatives import by_alternative
from intake.reading.yes_no_clauses import concluded, insisted, standing_clause
from intake.reading.yes_no_named import with_not_a_one
from intake.reading.yes_no_poles import by_question, poles_in
from intake.reading.yes_no_sayings import in_plain_answer, is_between
from intake.reading.yes_no_subject import of_the_trade
from intake.reading.yes_no_turns import (
    ANOTHERS,
    ASKS_THE_PAST,
    ASKS_WHETHER_THERE,
    IRONY,
    NEVER_DOES,
    NEVER_LOOKED,
    NO_WAY_THERE,
    NOT_THERE,
    ONE_SAYS,
    PUT_BACK,
    SMELL_ASKED,
    SMELLS_OF,
    TAKEN_OUT,
    THINKS_AGAIN,
    UNTROUBLED,
    WAS,
    WITH_OR_WITHOUT,
)
from intake.reading.yes_no_untried import denies_a_deed, not_found_out
from intake.reading.yes_no_whole import by_whole, which
from intake.reading.yes_no_words import (
    ALL,
    ALONE,
    ANY,
    ASKING,
    BOTH,
    CLAUSE_STARTS,
    CLAUSES,
    DOES,
    DOES_NOT,
    FILLER,
    HAPPENED,
    IN_HAND,
    MIXED,
    NEGATED_QUESTION,
    NO_DOUBT,
    NO_START,
    NOT_IN_HAND,
    SLIPS,
    SOFT,
    TURN,
    UNSURE,
    WORD,
    YES_START,
)

__all__ = ["read_yes_no"]


def _plain_answer(clause: str) -> bool | None:
    """The plain yes or no that a clause begins with."""
    bare = FILLER.sub("", clause.strip())
    no = NO_START.match(bare)
    yes = YES_START.match(bare)
    if no and yes:
        return len(yes.group()) > len(no.group())
    if no:
        return False
    if yes:
        return True
    if DOES.match(bare):
        return not DOES_NOT.search(bare)
    return None


def _rest_of(clause: str) -> list[str]:
    bare = FILLER.sub("", clause.strip())
    return WORD.findall(bare)


def read_yes_no(text: str, question: str) -> Reading | None:
    """Read a yes or no from normalised text; None if it holds neither."""
    text = re.sub(r"(?<=[a-z])-(?=[a-z])", " ", text)
    text = _MAYBE_YES.sub(r"probably \1", with_not_a_one(_respelt(text)))
    text = plainly(in_plain_answer(_SURE_OF.sub("pretty sure ", text), question))
    lead = _HEDGE_LEAD.match(text)
    if lead is not None:
        likely = read_yes_no(text[lead.end() :], question)
        if isinstance(likely, Accepted):
            return Accepted({**likely.values, "sure": False})
        return likely or which(question)
    if not_found_out(text, question):
        return Unknown("You can't say.")
    if denies_a_deed(text, question):
        return Unknown("You can't say.") if cant_say(text) else which(question)
    early = which(question) if is_between(text, question) else by_whole(text, question)
    if early is not None:
        return early
    text = insisted(text) or concluded(text) or standing_clause(text, question) or text
    asked = question.lower()
    both = BOTH.search(text) is not None or contradicts_itself(text) or ONE_SAYS.search(text)
    if IRONY.fullmatch(text):
        return which(question)
    if NEVER_LOOKED.search(text) and not YES_START.match(text):
        return Unknown("You can't say.")
    taken = WITH_OR_WITHOUT.fullmatch(text)
    if taken is not None and " with " in asked:
        return Accepted({"yes": taken["how"] == "with"})
    if NEVER_DOES.search(text):
        return Accepted({"yes": False})
    untroubled = UNTROUBLED.fullmatch(text)
    if untroubled is not None:
        poles = {
            pole for axis, pole in poles_in(WORD.findall(question.lower())) if axis != "present"
        }
        if poles == {1} and not re.search(r"\b(?:any|ever)\b", question.lower()):
            return Accepted({"yes": True})
        if poles == {1} or not poles:
            return which(question)
    turned = TURN.split(text)
    again = None if both else THINKS_AGAIN.match(text)
    if again is not None:
        rest = text[again.end() :].strip(" ,.;!-")
        answers = YES_START.match(rest) or NO_START.match(rest) or (again["no"] and not rest)
        if not answers or any(letter.isdigit() for letter in rest):
            return which(question)
        text = rest or "no"
    elif not both and len(turned) > 1 and _verdict(turned[-1], question) is not None:
        text = turned[-1].strip()
    verdict = "both" if both else _verdict(text, question)
    plainly_said = NO_START.match(text) or YES_START.match(text)
    if not both and not plainly_said and (named := by_alternative(text, question)) is not None:
        verdict = named
    if IN_HAND.match(asked) and not _doesnt_know(text) and NOT_IN_HAND.search(text):
        return Accepted({"yes": False}) if verdict in (None, False) else which(question)
    axes = {axis for axis, _ in poles_in(WORD.findall(asked))}
    if verdict is None and ASKS_WHETHER_THERE.search(asked) and NOT_THERE.match(text):
        return Accepted({"yes": False})
    if ASKS_WHETHER_THERE.search(asked) and TAKEN_OUT.search(text) and not PUT_BACK.search(text):
        return Accepted({"yes": False})
    if cant_say(text) and not (isinstance(verdict, bool) and not _doesnt_know(text)):
        by_access = (
            bool(axes & {"access", "running"})
            and not _doesnt_know(text)
            and NO_WAY_THERE.search(text) is not None
        )
        if by_access and verdict in (None, False):
            return Accepted({"yes": False})
        if verdict == "both" and not _doesnt_know(text):
            return which(question)
        if verdict is None or verdict == "both" or not (_said_too(text) or by_access):
            return Unknown("You can't say.")
    if verdict is not None and _is_of_another(text, asked, axes):
        return which(question)
    doubtless = UNSURE.sub(" ", text).strip()
    lead = YES_START.match(doubtless)
    mixed = MIXED.search(doubtless[lead.end() :] if lead else doubtless) is not None
    if mixed and verdict != "both":
        verdict = _of_a_part(verdict, asked, text)
    if verdict is None:
        telling = poles_in(WORD.findall(text))
        told = mixed or telling or MIXED.search(text) or of_the_trade(text, question)
        return which(question) if told else None
    if verdict == "both":
        return which(question)
    if NEGATED_QUESTION.search(asked) and _is_bare(text):
        return which(question)
    values: dict[str, bool] = {"yes": bool(verdict)}
    if UNSURE.search(NO_DOUBT.sub(" ", text)):
        values["sure"] = False
    return Accepted(dict(values))


_HEDGE_LEAD: Final = re.compile(
    r"^(?:i (?:think|believe|guess|suppose|reckon)|probably|most likely|i'd say"
    r"|pretty sure)"
    r"(?: that)? "
    r"(?=(?:it's|they're|that's) (?!there\b|so\b|true\b|right\b|not\b)[a-z]{3,})"
)
"""A doubt before a whole statement, which answers by what it states."""
_SURE_OF: Final = re.compile(
    r"\b(?:[6-9][05-9]|[6-9]\d) ?(?:%|pct|percent|per cent) (?:sure|certain|positive)(?: that)?,? "
)


_OF_CONDITION: Final = frozenset(
    ("condition", "clean", "lined", "noise", "tight", "insulated", "open", "straight")
)


def _is_of_another(text: str, asked: str, axes: set[str]) -> bool:
    """Whether what is said is of another thing, another time, or of nothing that is there."""
    if ANOTHERS.search(text) and not re.search(r"\b(?:old|previous|last|other)\b", asked):
        return True
    if WAS.search(text) and not ASKS_THE_PAST.search(asked):
        return True
    if "smell" in asked and SMELLS_OF.search(text) and not SMELL_ASKED.search(text):
        return True
    missing = re.search(r"\b(?:no|isn'?t (?:a|any)|without a) ([a-z]{4,})\b", text)
    absent = (
        missing is not None
        and missing[1] in WORD.findall(asked)
        and not any(axis in axes for axis, _ in poles_in([missing[1]]))
        and not set(WORD.findall(text[missing.end() :])) & set(WORD.findall(asked)) - ASKING
    )
    return absent and bool(axes & _OF_CONDITION) and "access" not in axes


_MAYBE_YES: Final = re.compile(
    r"^(?:maybe|perhaps|possibly|i guess|guess|kinda|sorta)[, ]+(yes|yeah|yep|no|nope|nah|not|so)\b"
)


def _of_a_part(verdict: bool | str | None, asked: str, text: str) -> bool | str | None:
    """What holds for a part answers "any ... ?" with yes and "all ... ?" with no."""
    denied = re.search(r"\b(?:not|never|no)\b", text) is not None
    if "ever" in asked.split() and verdict is not False and not denied and HAPPENED.search(text):
        return True
    part = re.search(
        r"\b(?:only|one of them|one is|some of|part of|not all|not every|one side|last"
        r"|it did|did once|except|in places|in spots|sometimes|most|mostly|half"
        r"|occasionally|once|now and then|just the|just one|all but|two of|three of"
        r"|one of)\b",
        text,
    )
    if verdict is None and not part:
        return "both"
    if ANY.search(asked) and not ALL.search(asked) and verdict is not False and verdict is not None:
        return True
    if ALL.search(asked) and not ANY.search(asked) and (verdict is False or _of_half(text, asked)):
        return False
    if ALL.search(asked) and not ANY.search(asked) and part and verdict is not True:
        return (
            False
            if re.search(
                r"\b(?:only|not all|not every|except|one side|just the|just one|all but"
                r"|two of|three of|one of|some of)\b",
                text,
            )
            else "both"
        )
    return "both"


_HALF: Final = re.compile(r"\bhalf(?: of)? (?:them|em|'em|the (?P<those>[a-z]+))\b")


def _of_half(text: str, asked: str) -> bool:
    """Whether half of what is asked about is spoken of."""
    half = _HALF.search(text)
    return half is not None and (half["those"] is None or half["those"] in asked)


def _is_bare(text: str) -> bool:
    """Whether the text is a yes or no and nothing that says of what."""
    return len(WORD.findall(text)) <= 2


def _respelt(text: str) -> str:
    return _WORD_IN.sub(lambda m: SLIPS.get(m[0], m[0]), text)


_WORD_IN: Final = re.compile(r"[a-z]+(?:'[a-z]+)?")


def _doesnt_know(text: str) -> bool:
    return (
        re.search(
            r"\b(?:telling|knowing|hard to|no way to|knows|know|sure|dunno|idk|clue|idea"
            r"|tell|check|checked|look|looked|guess|say|remember|ask|find out|knows"
            r"|unknown|certain|n/a|na|tbd|applicable|idea)\b",
            text,
        )
        is not None
    )


def _said_too(text: str) -> bool:
    """Whether a plain answer stands beside the "don't know"."""
    for clause in CLAUSES.split(text):
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
            r"(?:no|not|none|nope|nah|yes|yeah|yep)\W* ?(?:that|to my|as far|far as"
            r"|not that|none that)",
            text,
        )
        is not None
    )


def _verdict(text: str, question: str) -> bool | str | None:
    """True, False, "both", or None."""
    answers: set[bool] = set()
    plain: list[bool] = []
    for clause in CLAUSES.split(text):
        clause = clause.strip()
        if not clause:
            continue
        words = _rest_of(clause)
        content = by_question(words, question)
        direct = _plain_answer(clause)
        if direct is False and content and not _stands_alone(words):
            answers |= content
            continue
        if direct is True and content and SOFT.match(clause):
            answers |= content
            continue
        if direct is not None:
            plain.append(direct)
            answers.add(direct)
            rest = by_question(_after_plain(clause), question)
            answers |= rest
        else:
            answers |= content
    if len(answers) == 2:
        return "both"
    if answers:
        return answers.pop()
    return None


def _stands_alone(words: list[str]) -> bool:
    """Whether the "no" a clause begins with answers by itself ("nope rusty", "no it's solid")."""
    if words[:1] and words[0] in ALONE:
        return True
    return words[0] == "no" and (len(words) == 1 or words[1] in CLAUSE_STARTS)


def _after_plain(clause: str) -> list[str]:
    bare = FILLER.sub("", clause.strip())
    match = max(
        (m for m in (NO_START.match(bare), YES_START.match(bare)) if m),
        key=lambda m: m.end(),
        default=None,
    )
    return WORD.findall(bare[match.end() :]) if match else WORD.findall(bare)
