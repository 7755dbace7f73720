"""A request among other clauses ("one more time, the compressor was running").

People say why they ask: before it ("phone cut out, what'd you ask"), after it ("skip that,
i'll text the homeowner"), with or without a comma. One clause has to be a request by itself; the
others may hold no figure, and the reader of the open question has to find no answer in them.
"""

from __future__ import annotations

import re
from typing import Final

from intake.reading.commands import as_command
from intake.reading.figures import figures_in
from intake.reading.result import Command, CommandName
from intake.reading.words import words

__all__ = ["led"]


def led(line: str, field: str, *, late: bool = False) -> tuple[Command, str] | None:
    """The request among the clauses of a normalised text, and the others; None without both.

    Args:
        line: Normalised.
        field: The kind of the open question.
        late: The field found nothing in the text, so that questions and bare words count too.

    >>> led("one more time, compressor was running", "length")[0].name.value
    'repeat'
    >>> led("phone cut out what'd you ask", "length")[0].name.value
    'repeat'
    >>> led("next, the trunk", "duct") is None
    True
    """
    if len(line) > _LONGEST or _HINT.search(line) is None or _FIGURE.search(line):
        return None
    found = _among([part.strip() for part in _CUT.split(line)], field, late)
    return found or _without_comma(line, field, late)


def _among(clauses: list[str], field: str, late: bool) -> tuple[Command, str] | None:
    clauses = [clause for clause in clauses if clause]
    if len(clauses) < 2:
        return None
    asked: list[Command] = []
    rest: list[str] = []
    for clause in clauses:
        command = _request(clause, field, late)
        if command is None:
            rest.append(clause)
        else:
            asked.append(command)
    names = {command.name for command in asked}
    if len(names) > 1:
        asked = [command for command in asked if command.name not in _QUESTIONS]
        if len({command.name for command in asked}) != 1:
            return None
    if not asked or (not rest and len(names) == 1 and not late):
        return (asked[0], "") if asked else None
    others = ", ".join(rest)
    return None if figures_in(others) else (asked[0], others)


def _request(clause: str, field: str, late: bool) -> Command | None:
    bare = late or field == "command"
    if len(clause.split()) < 2 and clause not in _LEADING and not (bare and clause in _BARE):
        return None
    plain = " " not in clause
    command = as_command(clause, field, strong=not plain and field != "command")
    if command is None or not (late or command.name in _WITH_EXCUSE):
        return None
    return command


def _without_comma(line: str, field: str, late: bool) -> tuple[Command, str] | None:
    """A request and its reason in one breath ("say that again i was on the phone")."""
    for cut in _NEW_CLAUSE.finditer(line):
        head, tail = line[: cut.start()].strip(" ,"), line[cut.end() :].strip(" ,")
        if len(head.split()) < 2 or len(tail.split()) < 2 or _TAKES_CLAUSE.search(head):
            continue
        command = _request(head, field, late)
        if command is not None and command.name in _WITH_EXCUSE:
            return None if figures_in(tail) else (command, tail)
    for cut in _ASKING.finditer(line):
        head, tail = line[: cut.start()].strip(" ,"), line[cut.end() :].strip(" ,")
        if len(head.split()) < 2 or len(tail.split()) < 2 or _GOVERNS.search(head):
            continue
        command = _request(tail, field, late)
        if command is not None and command.name in _WITH_EXCUSE:
            return None if figures_in(head) else (command, head)
    return None


_LONGEST: Final = 160
_FIGURE: Final = re.compile(r"[0-9]")
_CUT: Final = re.compile(r"[,;:!?]+(?=\s|$)|\.+(?=\s|$)|\s-+\s")
_NEW_CLAUSE: Final = re.compile(
    r"(?<=[a-z] please)\s|(?<=[a-z] plz)\s|(?<=[a-z] pls)\s|\s(?=(?:i|i'm|im|i'll|ill|i've|ive"
    r"|i'd|we|we're|we'll|he|he's|she|she's|they|they're|my|the|there's|theres|it's|customer"
    r"|customer's|homeowner|homeowner's|cuz|cause|because|since|got to|gotta|(?!what|that|it"
    r"|where|how|who|there|let|when)[a-z]+'s|phone|wife|dog|somebody|someone|no idea|sorry"
    r"|don'?t|can'?t|couldn'?t|didn'?t) )"
)
"""Where a reason may begin that no comma parts from the request."""
_TAKES_CLAUSE: Final = re.compile(
    r"\b(?:one|ones|all|thing|things|part|last|next|everything|done|more|stuff|way|place|what"
    r"|which|who|where|why|how|that's|to|of|for|with|and|or|but|if|do|does|did|is|was|are|can"
    r"|could|would|should|the|my|a|than|as|by|from|at|on|before|after|until|till|when|while"
    r"|undo|skip|pass|leave|repeat|delete|cancel|quit|exit|close|end|stop|need|have|erase"
    r"|remove|clear)$"
)
"""An end of a request to which what follows belongs ("the last one i measured")."""
_ASKING: Final = re.compile(
    r"\s(?=(?:what'd|what did|whatd|what was|what's the question|whats the question|say (?:that"
    r"|it)|can (?:you|u|we)|could (?:you|u|we)|please|let'?s|lets|skip|undo|scratch|delete"
    r"|ignore|forget|go back|take me back|back up|repeat|ask (?:me|it|that)|read (?:it|that)"
    r"|gotta|next question|i'?m done|im done|come again|run (?:it|that)) )"
)
"""Where a request may begin after its reason."""
_GOVERNS: Final = re.compile(
    r"\b(?:to|not|n't|can'?t|don'?t|didn'?t|won'?t|never|i|we|they|he|she|you|it|and|or|if|when"
    r"|who|that|would|could|should|must|gonna|know|sure|idea|tell|forgot|forget|remember|guess"
    r"|wonder|see|about|of|for|with|the|a|than|unless|just|me|us|him|her|them)$"
)
_HINT: Final = re.compile(
    r"skip|pass|next|mov|later|back|undo|scratch|never ?mind|nvm|forget|disregard|ignore|delet"
    r"|eras|remov|strik|cancel|repeat|again|say|ask|what|question|once more|more time|read|quit"
    r"|exit|bye|stop|done|gotta|wrap|finish|close|end|why|how|where|help|explain|leave|save"
    r"|wait|take|wipe|scrap|toss|drop|without|rewind|previous|last|clear|didn'?t|missed|pardon"
    r"|log|sign|call|keep|come|on|which|is|do|mean|blank|out"
)
_LEADING: Final = words("skip repeat quit undo help")
_BARE: Final = words(
    "back next pass again why huh what pardon previous exit stop done how where hint"
)
"""Single words that ask for something where the field found no answer."""
_WITH_EXCUSE: Final = frozenset(
    (
        CommandName.SKIP,
        CommandName.REPEAT,
        CommandName.BACK,
        CommandName.QUIT,
        CommandName.UNDO,
    )
)
_QUESTIONS: Final = frozenset(
    (
        CommandName.WHY,
        CommandName.HELP,
        CommandName.HOW,
        CommandName.WHERE,
        CommandName.TYPICAL,
        CommandName.SHOW,
    )
)
