"""The technician's bank: every question, what is asked by rule first."""

from typing import Final

from intake.interview.question import Question
from intake.interview.technician_blower import BLOWER_AND_COIL
from intake.interview.technician_desk import AT_THE_DESK
from intake.interview.technician_ducts import ALONG_THE_DUCTS
from intake.interview.technician_equipment import AT_THE_EQUIPMENT
from intake.interview.technician_gates import THE_GATES
from intake.interview.technician_house import THE_HOUSE, THE_LOADS
from intake.interview.technician_readings import THE_READINGS

__all__ = ["TECHNICIAN"]

TECHNICIAN: Final[tuple[Question, ...]] = (
    *AT_THE_DESK,
    *THE_GATES,
    *BLOWER_AND_COIL,
    *AT_THE_EQUIPMENT,
    *THE_READINGS,
    *ALONG_THE_DUCTS,
    *THE_HOUSE,
    *THE_LOADS,
)
"""Safety, what goes in and the gates are asked by rule; the rest by what it is worth, and in this
order where nobody weighs it."""
