"""What several questions about ducts look at."""

from engine.job.job import Job
from intake.interview.question import Context

__all__ = [
    "SKINS",
    "has_drop",
    "has_trunk",
    "sized",
    "wants_core",
    "wants_liner",
    "wants_skin",
    "wants_where",
]

SKINS = ("bare_metal", "wrapped", "lined", "duct_board", "flex", "panned")
"""What a duct looks like to the person with the tape."""


def sized(job: Job, section: str) -> bool:
    """Whether a size of this section was stated."""
    known = job.is_known
    return known(f"{section}.width_in") or known(f"{section}.diameter_in")


def wants_skin(section: str, context: Context) -> bool:
    """Whether its material is still to be asked."""
    job = context.job
    return sized(job, section) and not job.is_known(f"{section}.material")


def wants_where(section: str, context: Context) -> bool:
    """Whether it is still to be asked where the tape was held."""
    job = context.job
    if not sized(job, section) or job.is_known(f"{section}.measured_where"):
        return False
    return job.word(f"{section}.material") not in (None, "panned_joist", "stud_bay", "flex")


def wants_core(section: str, context: Context) -> bool:
    """A flex size that may be its jacket: 9 in. and up."""
    job = context.job
    size = job.number(f"{section}.diameter_in")
    known = job.is_known(f"{section}.measured_where")
    return (
        job.word(f"{section}.material") == "flex" and size is not None and size >= 9 and not known
    )


def wants_liner(section: str, context: Context) -> bool:
    """Whether the thickness of liner or board is still to be asked."""
    job = context.job
    lined = job.word(f"{section}.material") in ("lined_metal", "duct_board")
    outside = job.word(f"{section}.measured_where") in ("outside_of_liner", "over_wrap", None)
    return sized(job, section) and lined and outside


def has_trunk(context: Context) -> bool:
    """Whether there is a trunk, as far as anybody said."""
    return context.job.length("supply.trunks") != 0


def has_drop(context: Context) -> bool:
    """Whether there is a drop, as far as anybody said."""
    return context.job.length("return.drops") != 0
