"""The technician's questions about the house, and about loads if the verdict would use them."""

from typing import Final

from engine.job.facts import Place
from intake.interview.question import Context, Question

__all__ = ["THE_HOUSE", "THE_LOADS"]

_DESK = Place.DESK


def _wants_loads(context: Context) -> bool:
    return any(key.startswith("loads.") for key in context.wanted())


def _wants_filter_drop(context: Context) -> bool:
    return "new.filter_drop_inwc" in context.wanted()


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
        fills=(("inwc", "new.filter_drop_inwc"), ("cfm", "new.filter_drop_at_cfm")),
        facts=("new.filter_drop_inwc",),
        unit="in. w.c.",
        when=_wants_filter_drop,
        topics=("filter drop",),
        label="Filter drop, clean",
        bundle="filter_drop",
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
        bundle="loads",
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
        bundle="loads",
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
        bundle="loads",
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
        bundle="elevation",
    ),
    Question(
        "zoned",
        "yes_no",
        "Is it zoned: dampers in the ducts, worked by more than one thermostat?",
        "With one zone calling, all the air goes through that zone's few ducts.",
        "Count thermostats; look for motors on the ducts near the plenum.",
        "Two systems with a thermostat each are not zones.",
        "No, in nine of ten houses.",
        Place.LIVING_SPACE,
        0.2,
        fills=(("yes", "house.zoned"),),
        facts=("house.zoned",),
        choices=("yes", "no"),
        topics=("zones", "zoned", "zoning"),
        label="Zoned",
        bundle="zones",
        closing=True,
    ),
    Question(
        "zone_registers",
        "count",
        "How many supply registers has the smallest zone?",
        "The smallest zone alone must take the air of the lowest stage, without a bypass.",
        "Run that zone alone and feel where air comes out, or follow its ducts.",
        "Count the registers that blow when only it calls.",
        "3 to 6.",
        Place.LIVING_SPACE,
        1.0,
        fills=(("count", "zones.smallest_registers_count"),),
        facts=("zones.smallest_registers_count",),
        when=lambda c: c.is_yes("house.zoned"),
        topics=("smallest zone",),
        label="Registers of the smallest zone",
        bundle="zones",
        closing=True,
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
        bundle="year",
        closing=True,
    ),
)
"""Asked last."""
