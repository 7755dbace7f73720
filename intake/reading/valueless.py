"""Corrections that give no value: "that number's wrong", "change my answer on the filter"."""

from __future__ import annotations

import re
from typing import Final

from intake.reading.contrasts import Contrast
from intake.reading.named_facts import fact_named

__all__ = ["nothing_new"]

_LONGEST: Final = 160
_THING: Final = (
    r"(?:that|it|this|the|my|one|some|something|those|these|them|what|all|a|an|two|both|couple"
    r"|of|last|previous|earlier|prior|first|other|old|answer|answers|number|numbers|figure"
    r"|figures|size|sizes|reading|readings|measurement|measurements|value|values|entry|entries"
    r"|thing|things|info|i|we|gave|put|told|said|typed|entered|wrote|you|in|down|before|back"
    r"|way|there|on|for|about|ago|while|minute|just|now|few|questions|question|filter|duct"
    r"|trunk|airflow|static|length|coil|blower|motor|grille|elevation|temp|temperature|tonnage"
    r"|capacity|efficiency|material|return|supply|drop|plenum|furnace|ac|unit|dimensions"
    r"|pressure|run|branch|from|had|up|out|i've|given|at|the start|start|beginning|ones)"
)
_OPENS: Final = (
    r"(?:(?:oh|no|wait|hold on|hang on|sorry|oops|whoops|ok|okay|um|uh|crap|shoot|dang|hey"
    r"|actually|so|well|man|dude|and|but|yeah|nope|nah|ah|hm|hmm|i think|pretty sure|i believe"
    r"|i realize|looks like|just realized|now that i think about it|my bad|damn|darn|shit),? )*"
)
_CLOSES: Final = (
    r"(?:,? (?:sorry|my bad|my mistake|please|pls|i think|actually|though|oops|man|dude|for you"
    r"|thanks|now|again|real quick|if i can|if that's ok|somehow|too))*[.!?]*$"
)
_NO_VALUE: Final = tuple(
    re.compile(f"{_OPENS}{pattern}{_CLOSES}")
    for pattern in (
        r"(?:(?:please|can|could|may|let|lemme|i|we|you|need|want|wanna|gotta|have|got|to|me|us"
        r"|i'd like|like|should|would|i'll|go|back|and|better|might|mind if) )*(?:change|fix"
        r"|correct|edit|revise|amend|adjust"
        rf"|update|modify|redo|re-?enter|alter|retype|switch)(?: {_THING})+",
        rf"{_THING}(?: {_THING})*(?:'s|'re| is| are| was| were| isn'?t| wasn'?t| aren'?t|"
        rf" weren'?t| ain'?t|s|'s"
        r" not)(?: (?:all|a bit|a little|kinda|totally|way|not|probably|definitely|still|just"
        r"|bit|also|now|by a bit))* (?:wrong|off|incorrect|not right|right|backwards?|mixed up"
        r"|a mistake|not it|it|correct|bad|bogus|messed up|screwed up|accurate|true|a typo|a"
        r" lie|a guess|flipped|switched|swapped|reversed)(?: by (?:a bit|a little|a lot|some))?",
        r"(?:i|we)(?: (?:think|may have|might have|must have|probably|just|totally|kinda|really"
        r"|might|have|also))* (?:messed|screwed|goofed|botched|flubbed|mixed|swapped|switched"
        r"|flipped|got|gave|put|typed|entered"
        rf"|wrote|told)(?: (?:up|{_THING}))*"
        r"(?: (?:wrong|incorrect|bad|mixed|up|messed|goofed|backwards?|off|mixed up|backward"
        r"|switched|swapped"
        rf"|flipped))(?: {_THING})*|(?:i|we) (?:messed|screwed|goofed|botched|flubbed|mixed)(?:"
        rf" (?:up|{_THING}))+",
        r"wrong (?:number|size|value|answer|figure|reading|one|unit|house|town|tag|sticker"
        r"|thing)(?: (?:there|on that|on that one|for that|for that one))?",
        r"(?:that'?s|thats|it'?s|its|this is) (?:not (?:it|right|what i (?:meant|said|put))|a"
        r" mistake|wrong)(?:,? what i (?:put|said|typed|gave you))?",
        r"(?:(?:let'?s|lets|please|can we|can you|we should) )?(?:change|fix|correct|edit"
        r"|update|redo|revise) (?:it|that|this)",
        r"(?:(?:i|we) )?(?:got|had|have|mixed|switched|flipped)(?: (?:it|them|those|these|the"
        r"|two|both|my|numbers?|digits?|sides?|ones|em|up|that))* (?:backwards?|reversed"
        r"|swapped|flipped|switched|mixed up|wrong|upside down)",
        r"(?:i|we) (?:counted|measured|read|typed|wrote|copied|heard|taped|did|had|put"
        r"|entered)(?: (?:it|that|those|them|the last one))? (?:it )?(?:wrong|incorrectly"
        r"|backwards?|upside down)",
        rf"(?:something'?s?|some of it)(?: is|'s)? (?:wrong|off|not right)(?: (?:with|about|in"
        rf"|{_THING}))+",
        rf"(?:that|it|this)(?:'s| is| was| wasn'?t| isn'?t)(?: not)? (?:the|my)(?: {_THING})+",
        rf"(?:that'?s|thats|it'?s) not(?: {_THING})+",
    )
)
_FLAW: Final = re.compile(
    r"chang|fix|correct|edit|revis|amend|adjust|updat|modif|redo|re-?enter|alter|retype|wrong"
    r"|off\b|right|backward|mixed|mistake|\bit\b|bad\b|bogus|messed|screwed|goof|botch|flub"
    r"|typo|not\b|n'?t\b|switch|swap|flip|revers|accurate|true|lie|guess"
)


def nothing_new(line: str, told: str | None) -> Contrast | None:
    """A correction that gives no value ("that number's wrong"), or None.

    Args:
        line: Normalised.
        told: The normalised text of the last answer, or None.

    >>> nothing_new("change my answer on the filter", None).fact
    'filter'
    >>> nothing_new("the filter is dirty", None) is None
    True
    """
    if len(line) > _LONGEST or _FLAW.search(line) is None:
        return None
    denied = _DENIED_ALONE.match(line)
    if denied is not None and line[denied.end() :].strip(" .!") == told:
        return Contrast(())
    if any(pattern.fullmatch(line) for pattern in _NO_VALUE):
        named = fact_named(line)
        return Contrast((), named["fact"] if named is not None else None)
    return None


_DENIED_ALONE: Final = re.compile(
    r"^(?:no,? |wait,? |oh,? |sorry,? |actually,? )*(?:it'?s |its |that'?s |it is |it was "
    r"|definitely )?(?:not|isn'?t|wasn'?t|it isn'?t|it wasn'?t|ain'?t|it ain'?t)(?: an?| the)? "
)
