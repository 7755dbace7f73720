"""The technician's questions about ducts, filter and openings, and about the house."""

from typing import Final

from engine.job.facts import Place
from engine.job.job import Job
from intake.interview.question import Context, Question

__all__ = ["ALONG_THE_DUCTS", "AT_THE_EQUIPMENT", "THE_HOUSE", "THE_LOADS"]

_LIVING, _EQUIPMENT, _TRUNKS = Place.LIVING_SPACE, Place.EQUIPMENT, Place.TRUNKS
_REGISTERS, _DESK = Place.REGISTERS, Place.DESK
SKINS: Final = ("bare_metal", "wrapped", "lined", "duct_board", "flex", "panned")
"""What a duct looks like to the person with the tape."""
YES_NO: Final = ("yes", "no")

_HOW_SIZE: Final = "Tape across and down, width by height; round: the diameter."
_TAPE: Final = ("site.has_tape",)


def _sized(job: Job, section: str) -> bool:
    known = job.is_known
    return known(f"{section}.width_in") or known(f"{section}.diameter_in")


def _wants_skin(section: str, context: Context) -> bool:
    job = context.job
    return _sized(job, section) and not job.is_known(f"{section}.material")


def _wants_where(section: str, context: Context) -> bool:
    job = context.job
    if not _sized(job, section) or job.is_known(f"{section}.measured_where"):
        return False
    return job.word(f"{section}.material") not in (None, "panned_joist", "stud_bay", "flex")


def _wants_core(section: str, context: Context) -> bool:
    """A flex size that may be its jacket: 9 in. and up."""
    job = context.job
    size = job.number(f"{section}.diameter_in")
    known = job.is_known(f"{section}.measured_where")
    return (
        job.word(f"{section}.material") == "flex" and size is not None and size >= 9 and not known
    )


def _wants_liner(section: str, context: Context) -> bool:
    job = context.job
    lined = job.word(f"{section}.material") in ("lined_metal", "duct_board")
    outside = job.word(f"{section}.measured_where") in ("outside_of_liner", "over_wrap", None)
    return _sized(job, section) and lined and outside


def _tall_looks_odd(context: Context) -> bool:
    wide = context.job.number("supply.trunks.0.width_in")
    tall = context.job.number("supply.trunks.0.height_in")
    return wide is not None and tall is not None and tall > wide


def _filter_known(context: Context) -> bool:
    return context.job.is_known("filters.0.width_in")


def _openings_known(context: Context) -> bool:
    return context.job.is_known("return.grilles.0.width_in")


def _branches_flex(context: Context) -> bool:
    return context.job.word("supply.branches.0.material") == "flex"


def _branches_unknown(context: Context) -> bool:
    return "branches" in context.unsaid


def _has_drop(context: Context) -> bool:
    return context.job.length("return.drops") != 0


def _wants_loads(context: Context) -> bool:
    return any(key.startswith("loads.") for key in context.wanted())


def _wants_filter_drop(context: Context) -> bool:
    return "new.filter_drop_inwc" in context.wanted()


AT_THE_EQUIPMENT: Final[tuple[Question, ...]] = (
    Question(
        "trunk_count",
        "count",
        "At the plenum: how many supply trunks leave it?",
        "One trunk carries all the air, two carry half each: the biggest trap of all.",
        "Stand at the plenum and look both ways.",
        "Count big ducts only. Ask yourself: does all the air leave in one direction?",
        "One in six of ten houses, two in three of ten.",
        _EQUIPMENT,
        0.5,
        section="supply.trunks",
        topics=("number of trunks", "how many trunks"),
        label="Supply trunks leaving the plenum",
    ),
    Question(
        "trunk_size",
        "duct",
        'What size is the trunk where it leaves the plenum, and of what? Like "20x8 bare metal".',
        "It is the first and busiest duct; its speed is the airflow over its area.",
        "Within the first two feet of the plenum.",
        _HOW_SIZE,
        "14x8 to 24x10; 20x8 is common.",
        _TRUNKS,
        2.0,
        section="supply.trunks",
        facts=("supply.trunks.0.shape",),
        unit="in",
        needs=_TAPE,
        confirm=True,
        topics=("supply trunk", "main trunk", "trunk", "main", "supply main"),
        label="Supply trunk",
    ),
    Question(
        "trunk_tall",
        "yes_no",
        "Is it really taller than it is wide?",
        "Which way is tall decides whether a wider trunk would fit under the joists.",
        "At the same place.",
        "Tall is up and down.",
        "Trunks are nearly always wider than tall.",
        _TRUNKS,
        0.1,
        section="supply.trunks.tall",
        choices=YES_NO,
        when=_tall_looks_odd,
        label="Taller than wide",
    ),
    Question(
        "trunk_skin",
        "skin",
        "What is the trunk: bare metal, wrapped outside, lined inside, duct board, or flex?",
        "Liner and wrap make a duct smaller than the tape says.",
        "At the same place; look into a takeoff or an end cap if you can.",
        "Soft stuff inside, outside, or none? Tap it: does it ring?",
        "Bare metal in six of ten.",
        _TRUNKS,
        0.5,
        section="supply.trunks",
        facts=("supply.trunks.0.material",),
        choices=SKINS,
        when=lambda c: _wants_skin("supply.trunks.0", c),
        topics=("trunk material",),
        label="Supply trunk",
    ),
    Question(
        "trunk_where",
        "measured_where",
        "Where was the tape: outside on the metal or board, over wrap, or clear inside?",
        "A 20x8 with an inch of liner is 18x6 inside; over wrap it reads inches too big.",
        "At the same place.",
        "Say where both ends of the tape touched.",
        "Outside, on the metal.",
        _TRUNKS,
        0.2,
        section="supply.trunks",
        facts=("supply.trunks.0.measured_where",),
        choices=("outside", "over_wrap", "inside"),
        when=lambda c: _wants_where("supply.trunks.0", c),
        topics=("tape on the trunk",),
        label="Tape held",
    ),
    Question(
        "trunk_core",
        "measured_where",
        "Is that the flex's inner core, or over its outer jacket?",
        "A 6 in. core wears a jacket of 8.5 to 11 in.; air only knows the core.",
        "At the collar, or the print on the core's end.",
        "Read the print, or tape the metal collar it is strapped to.",
        "Odd sizes and sizes over 9 in. are often the jacket.",
        _TRUNKS,
        0.2,
        section="supply.trunks",
        facts=("supply.trunks.0.measured_where",),
        choices=("core", "jacket"),
        when=lambda c: _wants_core("supply.trunks.0", c),
        label="Flex measured",
    ),
    Question(
        "trunk_liner",
        "thickness",
        "How thick is the liner or board, in inches?",
        "Twice its thickness comes off each side.",
        "At a takeoff, an end, or a test hole that is already there.",
        "Push a probe through to the metal, or look at a cut edge.",
        "Half an inch or an inch of liner; board is 1 to 1-1/2.",
        _TRUNKS,
        0.3,
        section="liner",
        facts=("supply.trunks.0.liner_in",),
        unit="in",
        when=lambda c: _wants_liner("supply.trunks.0", c),
        topics=("liner",),
        label="Liner",
    ),
    Question(
        "drop_size",
        "duct",
        'Return drop, at its narrowest beside the unit: what size? "none" if there is none.',
        "All the air comes back through it; it is usually the narrowest place.",
        "The duct that comes down to the blower cabinet, down to its elbow or boot.",
        "Tape the narrow part, not the roomy part overhead.",
        "14x8 to 24x14; 20x10 is common.",
        _EQUIPMENT,
        1.0,
        section="return.drops",
        facts=("return.drops",),
        unit="in",
        needs=_TAPE,
        confirm=True,
        topics=("return drop", "drop"),
        none="zero",
        label="Return drop",
    ),
    Question(
        "drop_skin",
        "skin",
        "And the drop: bare metal, wrapped, lined, duct board, flex, or a panned bay?",
        "Liner and wrap make it smaller than the tape says.",
        "At the same place.",
        "Tap it: bare metal rings.",
        "Bare metal.",
        _EQUIPMENT,
        0.3,
        section="return.drops",
        facts=("return.drops.0.material",),
        choices=SKINS,
        when=lambda c: _has_drop(c) and _wants_skin("return.drops.0", c),
        topics=("drop material",),
        label="Return drop",
    ),
    Question(
        "drop_liner",
        "thickness",
        "How thick is the drop's liner or board, in inches?",
        "Twice its thickness comes off each side.",
        "At its edge by the cabinet.",
        "Look at a cut edge.",
        "Half an inch or an inch.",
        _EQUIPMENT,
        0.2,
        section="liner",
        facts=("return.drops.0.liner_in",),
        unit="in",
        when=lambda c: _wants_liner("return.drops.0", c),
        topics=("drop liner",),
        label="Drop liner",
    ),
    Question(
        "filter",
        "filter",
        "The filter it will run with: printed size and thickness?",
        "All the air passes it; too little face and it costs more than the ducts.",
        "On the cardboard edge, in its slot or behind the return grille.",
        "Read all three numbers, and how many there are.",
        "16x25x1 or 20x25x1; 4 or 5 inch deep in a cabinet.",
        _EQUIPMENT,
        0.5,
        section="filters",
        facts=("filters.0.width_in",),
        unit="in",
        confirm=True,
        topics=("filter", "filters"),
        label="Filter",
        caution="Blower off while the filter door is open; keep fingers from the wheel.",
    ),
    Question(
        "filter_depth",
        "thickness",
        "How thick is the filter?",
        "Depth folds more paper into the same face.",
        "The last number on its edge.",
        "1, 2, 4 or 5 inches.",
        "1 inch.",
        _EQUIPMENT,
        0.2,
        section="filters.depth",
        facts=("filters.0.depth_in",),
        unit="in",
        when=_filter_known,
        topics=("filter thickness", "filter depth"),
        label="Filter thickness",
    ),
    Question(
        "filter_place",
        "choice",
        "Does it sit in a cabinet or slot at the unit, or behind a return grille?",
        "Behind a grille, filter and grille share one face and one speed limit.",
        "At the unit, then at the big return.",
        "Look for a slot beside the blower; if there is none, open the return grille.",
        "In a slot at the unit.",
        _EQUIPMENT,
        0.2,
        fills=(("choice", "filters.0.place"),),
        facts=("filters.0.place",),
        choices=(
            "cabinet=slot|rack|at the unit|at the furnace|at the air handler|by the blower|in the unit"
            "|media cabinet|furnace|box|in the return drop",
            "grille=behind the grille|return grille|in the grille|ceiling|wall|hall|hallway|at the return",
        ),
        when=_filter_known,
        topics=("filter place",),
        label="Filter sits",
    ),
    Question(
        "openings",
        "grille",
        'Every return opening in the house: sizes, width by height, like "20x20 and two 14x8"?',
        "All the air goes in here; too few square inches roar.",
        "Living space: walls and ceilings of halls, stair landings, bedrooms.",
        "A tissue sticks to a return. Measure the slotted part, not the frame.",
        "120 to 300 square inches per ton.",
        _LIVING,
        3.0,
        section="return.grilles",
        facts=("return.grilles.0.width_in",),
        unit="in",
        needs=_TAPE,
        confirm=True,
        topics=("return openings", "openings", "return grilles", "return grille", "grilles"),
        label="Return openings",
    ),
    Question(
        "openings_where",
        "measured_where",
        "Was that the slotted part or hole, or out to the frame's edge?",
        "A 16x20 frame is probably a 14x18 hole.",
        "At the openings.",
        "Say what the ends of the tape touched.",
        "Half the people measure the frame.",
        _LIVING,
        0.2,
        section="return.grilles",
        facts=("return.grilles.0.measured_where",),
        choices=("hole", "frame"),
        when=_openings_known,
        topics=("frame",),
        label="Openings measured",
    ),
)
"""At the equipment: trunk, drop, filter, openings."""


ALONG_THE_DUCTS: Final[tuple[Question, ...]] = (
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
        topics=("reduction", "smaller trunk"),
        none="no_step_down",
        label="Trunk steps down to",
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
        when=lambda c: _wants_core("supply.branches.0", c),
        label="Flex measured",
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
            "a_little_slack=slack|some slack|little slack|some sag|sags a little|normal|average|so so",
            "bunched=bunched up|accordion|folds|very slack|loose|lots of slack|sagging|compressed|messy",
        ),
        when=_branches_flex,
        topics=("flex", "slack"),
        label="Flex hung",
        caution="Attic or crawl only if it is safe today: cool enough, lit, on framing, not alone.",
    ),
)
"""Longest run, step-downs, branches."""


THE_LOADS: Final[tuple[Question, ...]] = (
    Question(
        "filter_drop",
        "static_pressure",
        "The filter's clean pressure drop, from its table?",
        "The filter is the cheapest thing to change, so its figure is worth having.",
        "In the filter's table or on its box.",
        "Take the row of your airflow, clean.",
        "0.06 to 0.30 in. w.c.",
        _DESK,
        0.5,
        fills=(("inwc", "new.filter_drop_inwc"),),
        facts=("new.filter_drop_inwc",),
        unit="in. w.c.",
        when=_wants_filter_drop,
        topics=("filter drop",),
        label="Filter drop, clean",
    ),
    Question(
        "sensible_gain",
        "capacity",
        "Design sensible heat gain of the house, in BTU/h?",
        "Only a load tells whether less air or smaller equipment would still do.",
        "On the load calculation.",
        "The whole-house sensible figure; not a rule of thumb.",
        "9 to 22 BTU/h per square foot.",
        _DESK,
        1.0,
        fills=(("btuh", "loads.sensible_gain_btuh"),),
        facts=("loads.sensible_gain_btuh",),
        unit="BTU/h",
        when=lambda c: c.cooling and _wants_loads(c),
        topics=("sensible", "heat gain"),
        label="Sensible gain",
    ),
    Question(
        "latent_gain",
        "capacity",
        "And its latent gain, in BTU/h?",
        "Drying is judged on it.",
        "On the same page.",
        "The whole-house latent figure.",
        "A fifth of the total where it is humid.",
        _DESK,
        0.5,
        fills=(("btuh", "loads.latent_gain_btuh"),),
        facts=("loads.latent_gain_btuh",),
        unit="BTU/h",
        when=lambda c: c.job.is_known("loads.sensible_gain_btuh"),
        topics=("latent",),
        label="Latent gain",
    ),
    Question(
        "heat_loss",
        "capacity",
        "Design heat loss of the house, in BTU/h?",
        "It tells whether a smaller furnace or less heating air would do.",
        "On the load calculation.",
        "The whole-house figure. If it equals the furnace's input, somebody copied the plate.",
        "12 to 40 BTU/h per square foot.",
        _DESK,
        0.5,
        fills=(("btuh", "loads.heat_loss_btuh"),),
        facts=("loads.heat_loss_btuh",),
        unit="BTU/h",
        when=_wants_loads,
        topics=("heat loss",),
        label="Heat loss",
    ),
)
"""Asked only when the verdict would use them."""


THE_HOUSE: Final[tuple[Question, ...]] = (
    Question(
        "elevation",
        "elevation",
        "How high above sea level is the house, in feet?",
        "Thin air carries less heat per CFM, so the same heat needs more air.",
        "Any map; the town's figure will do.",
        "Look it up by town or ZIP.",
        "Under 2,500 feet in most places.",
        _DESK,
        0.5,
        fills=(("ft", "site.elevation_ft"),),
        facts=("site.elevation_ft",),
        unit="ft",
        topics=("elevation", "altitude"),
        label="Elevation",
    ),
    Question(
        "year_built",
        "year",
        "What year was the house built?",
        "Ducts of before about 1981 may wear asbestos: don't cut or scrape before you know.",
        "Ask the owner, or the records.",
        "First built, not remodelled.",
        "Half are older than 1980.",
        _DESK,
        0.3,
        fills=(("year", "house.year_built"),),
        facts=("house.year_built",),
        topics=("year", "built"),
        label="Built",
    ),
)
"""Asked last."""
