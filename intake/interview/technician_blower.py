"""The technician's questions about the new blower and coil, from the maker's book."""

from typing import Final

from engine.job.facts import Place
from intake.interview.question import Context, Question

__all__ = ["BLOWER_AND_COIL"]

_DESK = Place.DESK
YES_NO: Final = ("yes", "no")


def _has_table(context: Context) -> bool:
    return bool(context.job.blower)


def _coil_may_be_inside(context: Context) -> bool:
    return _has_table(context) and context.cooling and context.word("equipment.kind") != "furnace"


def _no_table(context: Context) -> bool:
    return not context.job.blower


def _holds_airflow(context: Context) -> bool:
    return not context.job.blower and context.word("equipment.blower_kind") == "ecm_variable"


def _coil_outside(context: Context) -> bool:
    return context.cooling and context.word("equipment.kind") not in ("heat_pump", "air_handler")


def _coil_drop_given(context: Context) -> bool:
    return context.job.is_known("new.coil_drop_inwc")


BLOWER_AND_COIL: Final[tuple[Question, ...]] = (
    Question(
        "blower_table",
        "blower_table",
        "Paste the new blower's table for the setting you'd use (static and CFM), or skip.",
        "It tells what the blower still moves at the pressure this house makes.",
        "In the maker's book, blower performance.",
        'One line is fine: "high: 0.1 1300, 0.3 1240, 0.5 1180, 0.7 1100".',
        "Rows from 0.1 to 0.8 or 1.0 in. w.c.",
        _DESK,
        2.0,
        section="blower",
        topics=("blower table",),
        label="Blower table",
        bundle="blower_table",
    ),
    Question(
        "coil_in_table",
        "yes_no",
        "Was that table taken with its cooling coil in place?",
        "An air handler's table has its coil in it, a furnace's has not: 0.2 to 0.3 in. w.c.",
        "In the notes under the table.",
        "Look for wet coil, dry coil or without coil.",
        "Yes for air handlers.",
        _DESK,
        0.2,
        section="equipment.coil_outside_rating",
        facts=("equipment.coil_outside_rating",),
        choices=YES_NO,
        when=_coil_may_be_inside,
        topics=("coil in the table",),
        label="The coil and the table",
        bundle="blower_table",
    ),
    Question(
        "filter_in_table",
        "yes_no",
        "Was that table taken with a filter in place?",
        "What the table already has in it must not be counted twice.",
        "In the notes under the table.",
        "Look for with filter or without filter.",
        "No, in most tables.",
        _DESK,
        0.2,
        section="equipment.filter_outside_rating",
        facts=("equipment.filter_outside_rating",),
        choices=YES_NO,
        when=_has_table,
        topics=("filter in the table",),
        label="The filter and the table",
        bundle="blower_table",
    ),
    Question(
        "blower_kind",
        "blower_type",
        "Then what motor has the new blower: standard (PSC), constant torque, or constant airflow?",
        "Without a table, the motor tells how far the airflow falls as pressure grows.",
        "On the maker's page.",
        "Constant airflow is often called variable speed; constant torque has five taps.",
        "Constant torque, then constant airflow; standard motors are rare in new equipment.",
        _DESK,
        0.3,
        fills=(("choice", "equipment.blower_kind"),),
        facts=("equipment.blower_kind",),
        choices=("psc", "ecm_constant_torque", "ecm_variable", "other"),
        when=_no_table,
        topics=("motor", "blower motor"),
        label="Blower motor",
        bundle="blower_table",
    ),
    Question(
        "blower_limit",
        "static_pressure",
        "Up to what static pressure does it hold its airflow, by the book?",
        "A constant-airflow blower is fine up to there and falls off beyond.",
        "In the maker's book, beside the blower data.",
        "Look for maximum external static, not the rated 0.50.",
        "0.8 to 1.0 in. w.c.",
        _DESK,
        0.3,
        fills=(("inwc", "equipment.max_static_inwc"),),
        facts=("equipment.max_static_inwc",),
        unit="in. w.c.",
        when=_holds_airflow,
        topics=("maximum static", "max static"),
        label="Holds its airflow up to",
        bundle="blower_table",
    ),
    Question(
        "coil_drop",
        "static_pressure",
        'What is the new coil\'s wet pressure drop, and at what CFM? Like ".25 at 1200".',
        "After the filter, the coil is the largest single thing the blower must push through.",
        "In the coil's book: the wet column.",
        "Take the row nearest the airflow you need. Dry is 10 to 30 percent lower.",
        "0.15 to 0.38 in. w.c.",
        _DESK,
        1.0,
        fills=(("inwc", "new.coil_drop_inwc"), ("cfm", "new.coil_drop_at_cfm")),
        facts=("new.coil_drop_inwc",),
        unit="in. w.c.",
        when=_coil_outside,
        topics=("coil drop", "new coil"),
        label="New coil, wet",
        bundle="coil_drop",
    ),
    Question(
        "coil_drop_at",
        "airflow",
        "At what CFM is that drop listed?",
        "Drop grows with nearly the square of the airflow.",
        "The same row of the coil's book.",
        "Read the CFM beside the drop.",
        "Near the airflow you need.",
        _DESK,
        0.3,
        fills=(("cfm", "new.coil_drop_at_cfm"),),
        facts=("new.coil_drop_at_cfm",),
        unit="CFM",
        when=_coil_drop_given,
        topics=("coil drop airflow",),
        label="Coil drop listed",
        bundle="coil_drop",
    ),
)
"""What the blower can do, and what the coil costs it."""
