"""A line that takes back in its second words what its first ones said: "bare, no, lined".

Each rule gives the line as its last word means it, where both halves answer the open question;
one that only goes on ("bare, no liner", "return .3, no .4 supply") stays as it was typed.
"""

import re
from typing import Final

from engine.job.job import Job
from intake.interview.listening import listen
from intake.interview.question import Question
from intake.reading.clean import normalise
from intake.reading.result import Accepted

__all__ = ["as_put_right"]

_FIRM: Final = (
    r"(?:no,? wait|wait,? no|wait|hold on|hang on|correction|scratch that|strike that|make that"
    r"|i mean|i meant|sorry|my mistake|oops)"
)
_MARK: Final = (
    rf"(?:(?:{_FIRM}\b|no(?=[,.: ]+{_FIRM}\b))[,.: ]*|no(?:[,.:]+ *| (?=(?:it|that|they|the)\b)))+"
    r"(?:(?:it'?s|that'?s|it is|they'?re|the)\b ?)*"
)
"""A bare "no" takes nothing back: of "lined, no wrap" the lining stays."""
_TWO_HALVES: Final = re.compile(
    rf"(?P<first>.+?)(?:[,.;:]+ *|[, ]+(?={_FIRM})){_MARK}(?P<second>\S.*)"
)
_CHOSEN: Final = frozenset(("choice", "skin", "measured_where", "coil_state"))

_SKIN: Final = r"(?:bare|lined|wrapped|insulated|duct ?board|flex)"
_SKIN_TWICE: Final = re.compile(
    rf"(?P<size>.*\d.*?)[, ]+(?:all )?{_SKIN}(?: (?:metal|tin|steel|sheet metal))?[,.;]? +"
    rf"(?:no,? (?:(?:it|that|they)(?:'s|s|'re| is| are) |{_FIRM}[, ]+)|no, "
    rf"|{_FIRM}[,. ]+(?:no,? )?)(?:(?:it|that|they)(?:'s|s|'re| is| are) )?"
    rf"(?P<skin>{_SKIN}(?: (?:metal|tin|steel))?)[.! ]*"
)
_YES_NO_TURNED: Final = re.compile(
    r"(?:yes|yeah|yep|no|nope)[,. ]+(?:(?:hmm+|wait|hold on|hang on|actually|oh|sorry"
    r"|scratch that)[,. ]+)+(?=(?:yes|yeah|yep|no|nope)\b)"
)
_PRESSURE: Final = r"-?\d?\.\d+"
_PRESSURE_TWICE: Final = re.compile(
    rf"(?<![\w.]){_PRESSURE}[,;]? +(?:no|{_FIRM})(?:[, ]+(?:it'?s )?|(?<=no) )"
    rf"(?P<new>{_PRESSURE})(?![\w.]*x)(?! ?(?:ret|sup|before|after|on|across|past|total)\w*)"
)
_TOOL_GONE: Final = re.compile(
    r"[,.; ]+(?:and |but |oh |no |wait )*(?:scratch|forget|strike|drop|minus|skip|not)"
    r" (?:the |that |my )(?P<tool>gau?ge|manometer|tape|probes?|thermometers?|plate"
    r"|hood)(?: too)?[.! ]*$"
)
_FITTING_TWICE: Final = re.compile(
    r"(?P<list>.+?)[,;.]? +(?:no,? )?(?:make (?:it|that|them)|i mean|sorry|wait)[,: ]+"
    r"(?:it'?s |there'?s )?(?P<count>\d+|one|two|three|four|five|six) (?P<kind>[a-z][a-z ]+?)[.! ]*"
)


def as_put_right(question: Question, text: str, job: Job) -> str:
    """The line as its last word means it; as it was typed where it takes nothing back.

    Args:
        question: The open question.
        text: What was typed.
        job: What is known.
    """
    line = normalise(text)
    if question.field == "yes_no":
        turned = _YES_NO_TURNED.match(line)
        return line[turned.end() :] if turned else text
    if question.field == "static_pressure":
        return _PRESSURE_TWICE.sub(r"\g<new>", line) if _PRESSURE_TWICE.search(line) else text
    if question.field == "tools":
        return _without_a_tool(line, text)
    if question.field == "duct" and (twice := _SKIN_TWICE.fullmatch(line)):
        return f"{twice['size']} {twice['skin']}"
    if question.key == "fittings" and (twice := _FITTING_TWICE.fullmatch(line)):
        kind = re.escape(twice["kind"].rstrip("s"))
        told = re.compile(rf"\b(?:\d+|an?|one|two|three|four|five|six) (?={kind}s?\b)")
        if len(told.findall(twice["list"])) == 1:
            return told.sub(f"{twice['count']} ", twice["list"])
        return text
    if question.field in _CHOSEN and (halves := _TWO_HALVES.fullmatch(line)):
        first, second = (_choice(question, halves[part], job) for part in ("first", "second"))
        if first and second and first != second:
            return halves["second"]
    return text


def _without_a_tool(line: str, text: str) -> str:
    gone = _TOOL_GONE.search(line)
    if gone is None:
        return text
    tool, told = gone["tool"], line[: gone.start()]
    left = re.sub(rf"(?:,? ?and |, ?)?\b(?:an? |the |my )?{tool}\b", "", told).strip(" ,")
    return f"{left}, no {tool}" if left else f"no {tool}"


def _choice(question: Question, words: str, job: Job) -> str:
    """What words alone choose; empty if they aren't an answer."""
    found = listen(question, words.strip(" ,.!"), job)
    if not isinstance(found, Accepted):
        return ""
    chosen = found.values.get("choice") or found.values.get("material") or found.place
    return str(chosen or "")
