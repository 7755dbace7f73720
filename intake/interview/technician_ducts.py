"""The technician's questions along the ducts: longest run, step-downs, branches."""

from typing import Final

from engine.job.facts import Place
from intake.interview.duct_conditions import wants_core
from intake.interview.question import Context, Question

__all__ = ["ALONG_THE_DUCTS"]

_TRUNKS, _REGISTERS = Place.TRUNKS, Place.REGISTERS
_TAPE: Final = ("site.has_tape",)


def _branches_flex(context: Context) -> bool:
    job = context.job
    return any(job.word(f"{e}.material") == "flex" for e in job.entries("supply.branches"))


def _may_be_jackets(context: Context) -> bool:
    return any(wants_core(entry, context) for entry in context.job.entries("supply.branches"))


def _branches_unknown(context: Context) -> bool:
    return "branches" in context.unsaid


ALONG_THE_DUCTS: Final[tuple[Question, ...]] = (
    Question(
        "return_trunk",
        "duct",
        'Does a return trunk lead to the drop? Its size where it meets the drop; "none" if none.',
        "Where one long duct gathers the returns, all the air comes through it too.",
        "Follow the return from the drop away from the unit.",
        "Tape across and down, width by height. Panned joists: say so.",
        "14x8 to 24x10, or joists closed with sheet metal.",
        _TRUNKS,
        2.0,
        section="return.trunks",
        facts=("return.trunks",),
        unit="in",
        needs=_TAPE,
        topics=("return trunk", "return duct"),
        none="zero",
        label="Return trunk",
        bundle="return_trunk",
    ),
    Question(
        "run_supply",
        "length",
        "How many feet from the plenum to the farthest supply register?",
        "Length and bends of the longest run decide how little is left for friction.",
        "Along the trunk, then along its branch.",
        "Pace it or count joists, 16 in. each.",
        "25 to 75 feet.",
        _TRUNKS,
        2.0,
        fills=(("ft", "path.supply_length_ft"),),
        facts=("path.supply_length_ft",),
        unit="ft",
        topics=("supply length", "longest run", "supply run"),
        label="Longest supply run",
        bundle="lengths",
    ),
    Question(
        "run_return",
        "length",
        "And how many feet from the farthest return back to the unit?",
        "The blower pulls through this as it pushes through the supply.",
        "From the farthest return opening to the drop.",
        "Pace it or count joists.",
        "4 to 45 feet.",
        _TRUNKS,
        1.0,
        fills=(("ft", "path.return_length_ft"),),
        facts=("path.return_length_ft",),
        unit="ft",
        topics=("return length", "return run"),
        label="Longest return run",
        bundle="lengths",
    ),
    Question(
        "fittings",
        "fittings",
        'Fittings on those two runs: which, how many? Like "2 square elbows, takeoff, boot".',
        "An elbow can cost more than twenty feet of duct.",
        "Walk the same two runs with your eyes.",
        "Name them by shape: square elbow, curved elbow, takeoff, boot, offset.",
        "5 to 13 in all.",
        _TRUNKS,
        2.0,
        section="path.fittings",
        facts=("path.fittings",),
        topics=("fittings", "elbows"),
        none="zero",
        label="Fittings",
        bundle="fittings",
    ),
    Question(
        "step_down",
        "duct",
        'Does the trunk get smaller along the way? The smaller size, or "no".',
        "The same air in a smaller duct runs faster; each size is judged.",
        "Follow the trunk away from the plenum.",
        "Tape it where the size changes.",
        "Once, after about 24 feet; often never.",
        _TRUNKS,
        1.0,
        section="supply.trunks.step",
        unit="in",
        needs=_TAPE,
        topics=(
            "reduction",
            "smaller trunk",
            "steps down",
            "trunk steps down",
            "trunk reduces",
            "trunk goes down",
            "trunk gets smaller",
        ),
        none="house.trunk_steps_down=no",
        label="Trunk steps down to",
        bundle="step_down",
    ),
    Question(
        "step_share",
        "percent",
        "What share of the trunk's air still runs in the smaller part, in percent?",
        "Takeoffs before the change have already taken their share.",
        "Count branches before and after the change.",
        "Branches after it divided by all branches of that trunk.",
        "40 to 60 percent.",
        _TRUNKS,
        0.5,
        section="supply.trunks.step_share",
        unit="%",
        when=lambda c: (
            c.settled("step_down")
            and c.job.is_known("supply.trunks.0.shape")
            and "step_down_found" in c.answered
        ),
        topics=("share",),
        label="Air left in the smaller part",
        bundle="step_down",
    ),
    Question(
        "branches",
        "duct",
        'Branches to the rooms: how many and what size? Like "12 six inch round metal".',
        "Too few or too small branches starve rooms and whistle.",
        "At the takeoffs along the trunk, or at the boots.",
        "Count takeoffs; read a diameter on the collar or the flex's inner core.",
        "6 to 16 branches of 5 to 7 in.",
        _REGISTERS,
        2.0,
        section="supply.branches",
        facts=("supply.branches.0.shape",),
        unit="in",
        topics=("branches", "branch", "runs", "runouts"),
        label="Branches",
        bundle="branches",
    ),
    Question(
        "branch_count",
        "count",
        "How many branches are there?",
        "The airflow divides among them.",
        "Along the trunk.",
        "Count takeoffs, or supply registers.",
        "6 to 16.",
        _REGISTERS,
        1.0,
        fills=(("count", "supply.branches.0.count"),),
        facts=("supply.branches.0.count",),
        when=lambda c: c.job.is_known("supply.branches.0.shape"),
        topics=("number of branches",),
        label="Number of branches",
        bundle="branches",
    ),
    Question(
        "branch_core",
        "measured_where",
        "Is that the flex's inner core, or over its outer jacket?",
        "A 6 in. core wears a jacket of 8.5 to 11 in.; air only knows the core.",
        "At the collar, or the print on the core's end.",
        "Read the print, or tape the metal collar it is strapped to.",
        "Odd sizes and sizes over 9 in. are often the jacket.",
        _REGISTERS,
        0.2,
        section="supply.branches",
        facts=("supply.branches.0.measured_where",),
        choices=("core", "jacket"),
        when=_may_be_jackets,
        label="Flex measured",
        bundle="branches",
    ),
    Question(
        "registers",
        "count",
        "Then how many supply registers are there in the rooms?",
        "Their number tells the air each branch must carry.",
        "Walk the rooms; air blows out of them.",
        "Count each that a tissue is blown off of.",
        "7 to 17.",
        _REGISTERS,
        2.0,
        fills=(("count", "house.supply_registers_count"),),
        facts=("house.supply_registers_count",),
        when=_branches_unknown,
        topics=("registers", "vents"),
        label="Supply registers",
        bundle="registers",
    ),
    Question(
        "flex_slack",
        "choice",
        "How is the flex hung: pulled tight, a little slack, or bunched up?",
        "Slack flex can cost four times what tight flex does.",
        "Attic or crawl: look along one typical run.",
        "Folds like an accordion: bunched. Smooth: tight.",
        "A little slack.",
        Place.ATTIC_CRAWL,
        1.0,
        section="supply.branches.slack",
        facts=("supply.branches.0.slack_fraction",),
        choices=(
            "tight=pulled tight|straight|stretched|smooth|taut",
            "a_little_slack=slack|some slack|little slack|some sag|sags a little|normal"
            "|average|so so",
            "bunched=bunched up|accordion|folds|very slack|loose|lots of slack|sagging"
            "|compressed|messy",
        ),
        when=_branches_flex,
        topics=("flex", "slack"),
        label="Flex hung",
        caution="Attic or crawl only if it is safe today: cool enough, lit, on framing, not alone.",
        bundle="flex_slack",
    ),
)
"""Longest run, step-downs, branches."""
