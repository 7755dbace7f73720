"""Things that people mention in passing, with the question that they answer.

A clause of a line may say something of another question without beginning with its name: "and it's
zoned", "so the trunk is 18x8", "by the way the blower's dead".
"""

import re
from typing import Final

from intake.interview.planner import bank_of, question_of
from intake.interview.question import Question
from intake.interview.talk import Talk

__all__ = ["in_passing"]

_SIZE: Final = r"\d+(?:\.\d+)? ?(?:x|by|×) ?\d+"
_ROWS: Final = tuple(
    (key, re.compile(pattern))
    for key, pattern in (
        (
            "return_trunk",
            rf"\bthere(?:'?s| is) a return (?:trunk|main)\b|\breturn (?:trunk"
            rf"|main)\b.*{_SIZE}|{_SIZE}.*\breturn (?:trunk|main)\b",
        ),
        ("drop_size", rf"\b(?:return )?drop\b.*{_SIZE}|{_SIZE}\D{{0,12}}\bdrop\b"),
        (
            "filter",
            rf"{_SIZE} ?(?:x|by|×) ?[1-6]\b.*\bfilter"
            rf"|\bfilter\b(?! (?:slot|rack|box|grille|grill|door|cabinet|opening)).*{_SIZE}",
        ),
        (
            "trunk_size",
            rf"\b(?:supply )?(?:trunks?|main|ducts are)\b.*{_SIZE}|{_SIZE}\D{{0,12}}\btrunks?\b"
            r"|\b(?:one|two|three|four|[1-4]) (?:supply )?trunks?\b",
        ),
        (
            "static_total",
            r"\bret(?:urn)?\b\D*\.\d.*\bsup(?:ply)?\b\D*\.\d|\.\d+\D{0,12}\b(?:total|static|tesp)\b"
            r"|\b(?:total|static|tesp)\b\D{0,12}\.\d",
        ),
        ("zoned", r"^(?!.*\b(?:what|which)\b).*\b(?:zoned|zoning)\b"),
        (
            "year_built",
            r"\b(?:built|house is|house'?s|home is|from|dates?)\b.*\b(?:18|19|20)\d\d\b",
        ),
        (
            "old_runs",
            r"\b(?:old )?blower(?:'s| is| motor is| was)? ?(?:motor )?(?:still )?(?:dead|seized"
            r"|shot"
            r"|fried|locked up|runs?\b|running|works?\b|working|won'?t|doesn'?t|does run|burnt)",
        ),
        (
            "blower_kind",
            r"\b(?:psc|ecm|constant[- ](?:torque|air\w*|cfm))\b"
            r"|\bmotor(?:'s| is) (?:an? |the )?(?:psc|ecm|x-?13|constant|variable|standard"
            r"|torque)\b",
        ),
        (
            "tools",
            r"\b(?:no|without|don'?t have (?:an? |the |my )?|forgot (?:the |my )?|left (?:the "
            r"|my )?)"
            r" ?(?:gau?ge|manometer|probes?|thermometers?|tape)\b(?! (?:reading|on))"
            r"|^(?:i |i'?ve |we )*(?:got|have|brought) (?:an? |my |the )?tape\b"
            r"|\b(?:got|have|found) (?:an? |my |the )?(?:gau?ge|manometer|probes?|flow plate|hood)"
            r" after all\b",
        ),
        (
            "strip_cfm",
            r"\b(?:no|not getting|without) (?:\w+ )?(?:strips?|strip heat|heat kit)\b"
            r"|\b\d{1,2} ?kw (?:of )?(?:heat )?strips?\b.*\bafter all\b",
        ),
        (
            "conditions",
            r"\b(?:coil|wheel)(?:'s| is| was|) (?:\w+ )?(?:clean|dirty|plugged|filthy|some dirt)\b",
        ),
        (
            "new_equipment",
            r"\b[1-5](?:\.5)?[- ]?tons?\b.*\b(?:heat ?pump|furnace|a/?c|air ?handler|condenser)\b"
            r"|\b(?:heat ?pump|furnace|air ?handler)\b.*\b[1-5](?:\.5)?[- ]?tons?\b",
        ),
        (
            "weather",
            r"^(?=.*\b(?:out(?:side)?|weather|cold|cool|warm|hot)\b).*\b\d{2,3} ?(?:f\b|deg|out)",
        ),
    )
)


def in_passing(talk: Talk, question: Question, piece: str) -> Question | None:
    """The other question that a clause speaks of in passing, or None.

    Args:
        talk: The conversation.
        question: The open question.
        piece: One clause.
    """
    line = piece.lower()
    keys = {one.key for one in bank_of(talk.state.voice)}
    for key, pattern in _ROWS:
        if key == "static_total" and question.field == "static_pressure":
            continue
        if key in keys and key != question.key and pattern.search(line):
            return question_of(key)
    return None
