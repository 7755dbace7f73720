"""What is asked in one breath: the facts a bundle fills, what it costs, who can give it.

A bundle is one sentence and one cost. Adding one is a row here; what it shows of each sample is
`engine.worth.signals`'s. Minutes are common practice without a published source.
"""

from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from typing import Final

from engine.job.facts import Giver, Place
from engine.job.modes import Mode

__all__ = ["BUNDLES", "Bundle", "Shows", "covers"]

_TAPE: Final = (Giver.TAPE, Giver.HOMEOWNER)
_MAKER: Final = (Giver.MAKER,)
_GAUGE: Final = (Giver.GAUGE,)
_DESK, _EQUIPMENT, _LIVING = Place.DESK, Place.EQUIPMENT, Place.LIVING_SPACE
_TRUNKS, _REGISTERS = Place.TRUNKS, Place.REGISTERS


class Shows(StrEnum):
    """What learning a bundle would show of a house."""

    DRAWN = "drawn"  # the quantities that were drawn for its facts
    DUCTS = "ducts"  # area and number of the ducts of a list
    OPENINGS = "openings"  # area of the return openings
    FILTERS = "filters"  # face, depth and place of the filters
    TARGET = "target"  # airflow that a mode needs
    PRESSURES = "pressures"  # push and pull on both sides of the blower
    PRESSURE_PARTS = "pressure parts"  # each of the four parts by itself
    LOADS = "loads"  # whether less air would do
    AIRFLOW_READ = "airflow read"  # the airflow that pressures were read at
    DIRT = "dirt"  # how much of what was read is dirt
    WAYS = "ways"  # whether one trunk or two leave the plenum


@dataclass(frozen=True, slots=True)
class Bundle:
    """Facts asked for together.

    Attributes:
        key: Own short name.
        facts: Catalogue keys, lists and tables that it fills; a list stands for all below it.
        shows: What learning it shows.
        minutes: What answering costs, without the way there.
        place: Where the person must stand.
        givers: Who can give it, any of them.
        also: Further facts that are known with it, though it doesn't ask for them.
        chance: Share of the giver's chance that is left, where this one is harder than most.
        mode: The mode whose airflow it is, for targets.
        airflow_known: Whether a reading comes with the airflow it was taken at.
    """

    key: str
    facts: tuple[str, ...]
    shows: Shows
    minutes: float
    place: Place
    givers: tuple[Giver, ...]
    also: tuple[str, ...] = ()
    chance: float = 1.0
    mode: Mode | None = None
    airflow_known: bool = True


def _ducts(
    name: str, key: str, minutes: float, place: Place, givers: tuple[Giver, ...] = _TAPE
) -> Bundle:
    return Bundle(key, (name,), Shows.DUCTS, minutes, place, givers)


def _where(name: str, key: str, place: Place) -> Bundle:
    facts = (f"{name}[].measured_where",)
    return Bundle(key, facts, Shows.DRAWN, 0.2, place, _TAPE)


def _target(mode: Mode) -> Bundle:
    return Bundle(
        f"target_{mode}", (f"target.{mode}_cfm",), Shows.TARGET, 1.0, _DESK, _MAKER, mode=mode
    )


_READING: Final = (
    "readings[].mode", "readings[].setting", "readings[].filter_state", "readings[].airflow_cfm",
    "readings[].airflow_source",
)  # fmt: skip

BUNDLES: Final[tuple[Bundle, ...]] = (
    Bundle("equipment", ("equipment.kind", "equipment.cooling_tons", "equipment.stages"),
           Shows.DRAWN, 1.0, _DESK, (Giver.MAKER, Giver.PLATE, Giver.RECORDS)),
    *(_target(mode) for mode in Mode),
    Bundle("burner", ("equipment.heating_input_btuh", "equipment.heating_efficiency_fraction",
                      "equipment.rise_low_degf", "equipment.rise_high_degf"),
           Shows.DRAWN, 1.5, _DESK, (Giver.MAKER, Giver.PLATE)),
    Bundle("blower_table", ("equipment.blower_tables",), Shows.DRAWN, 2.0, _DESK, _MAKER,
           also=("equipment.blower_kind", "equipment.rated_static_inwc",
                 "equipment.filter_outside_rating", "equipment.coil_outside_rating")),
    Bundle("blower_kind", ("equipment.blower_kind",), Shows.DRAWN, 0.3, _DESK,
           (Giver.MAKER, Giver.PLATE)),
    Bundle("blower_rating", ("equipment.rated_static_inwc",), Shows.DRAWN, 0.3, _DESK,
           (Giver.MAKER, Giver.PLATE)),
    Bundle("filter_rating", ("equipment.filter_outside_rating",), Shows.DRAWN, 0.2, _DESK, _MAKER),
    Bundle("coil_drop", ("new.coil_drop_inwc", "new.coil_drop_at_cfm"), Shows.DRAWN, 1.3, _DESK,
           _MAKER),
    Bundle("filter_drop", ("new.filter_drop_inwc", "new.filter_drop_at_cfm"), Shows.DRAWN, 0.5,
           _DESK, _MAKER, chance=0.8),
    Bundle("elevation", ("site.elevation_ft",), Shows.DRAWN, 0.5, _DESK,
           (Giver.RECORDS, Giver.HOMEOWNER, Giver.PLATE)),
    Bundle("loads", ("loads.sensible_gain_btuh", "loads.latent_gain_btuh", "loads.heat_loss_btuh",
                     "equipment.cooling_rows"),
           Shows.LOADS, 4.0, _DESK, (Giver.RECORDS,)),
    _ducts("supply.trunks", "trunks", 3.0, _TRUNKS),
    _where("supply.trunks", "trunk_place", _TRUNKS),
    _ducts("return.drops", "drop", 1.5, _EQUIPMENT, (Giver.TAPE,)),
    _where("return.drops", "drop_place", _EQUIPMENT),
    Bundle("filter", ("filters",), Shows.FILTERS, 0.9, _EQUIPMENT, _TAPE),
    Bundle("openings", ("return.grilles",), Shows.OPENINGS, 3.2, _LIVING, _TAPE),
    Bundle("openings_place", ("return.grilles[].measured_where",), Shows.DRAWN, 0.2, _LIVING,
           _TAPE),
    Bundle("pressures", (*_READING, "readings[].after_filter_inwc", "readings[].before_coil_inwc"),
           Shows.PRESSURES, 11.6, _EQUIPMENT, _GAUGE, also=("equipment.blower_tables",)),
    Bundle("pressure_parts",
           (*_READING, "readings[].before_filter_inwc", "readings[].after_filter_inwc",
            "readings[].before_coil_inwc", "readings[].after_coil_inwc"),
           Shows.PRESSURE_PARTS, 15.6, _EQUIPMENT, _GAUGE, also=("equipment.blower_tables",)),
    Bundle("old_rise",
           ("readings[].mode", "readings[].return_degf", "readings[].supply_degf",
            "old.heating_input_btuh", "old.heating_efficiency_fraction"),
           Shows.AIRFLOW_READ, 8.0, _EQUIPMENT, (Giver.THERMOMETER,)),
    Bundle("coil_dirt", ("condition.coil",), Shows.DIRT, 3.0, _EQUIPMENT, (Giver.TAPE,)),
    Bundle("wheel_dirt", ("condition.blower_wheel",), Shows.DIRT, 3.0, _EQUIPMENT, (Giver.TAPE,)),
    Bundle("filter_dirt", ("condition.filter", "readings[].filter_state"), Shows.DIRT, 0.5,
           _EQUIPMENT, _TAPE),
    Bundle("zones", ("house.zoned",), Shows.DRAWN, 0.5, _LIVING, _TAPE),
    Bundle("smallest_zone",
           ("zones.count", "zones.smallest_ducts", "zones.smallest_registers_count"),
           Shows.DRAWN, 2.0, _TRUNKS, (Giver.TAPE,)),
    Bundle("return_trunk", ("return.trunks",), Shows.DUCTS, 2.5, _TRUNKS, (Giver.TAPE,)),
    Bundle("step_down", ("house.trunk_steps_down",), Shows.DRAWN, 1.5, _TRUNKS, (Giver.TAPE,)),
    Bundle("trunk_ways", ("phone.trunk_directions",), Shows.WAYS, 0.5, _EQUIPMENT,
           (Giver.HOMEOWNER,)),
    Bundle("old_size", ("old.cooling_tons",), Shows.DRAWN, 1.0, _DESK,
           (Giver.PLATE, Giver.HOMEOWNER), also=("equipment.cooling_tons",)),
    Bundle("lengths", ("path.supply_length_ft", "path.return_length_ft"), Shows.DRAWN, 3.0,
           _TRUNKS, _TAPE),
    Bundle("fittings", ("path.fittings", "path.total_effective_length_ft"), Shows.DRAWN, 2.5,
           _TRUNKS, (Giver.TAPE,)),
    Bundle("branches", ("supply.branches",), Shows.DUCTS, 3.0, _REGISTERS, (Giver.TAPE,)),
    Bundle("registers", ("house.supply_registers_count",), Shows.DRAWN, 2.0, _REGISTERS, _TAPE),
    Bundle("flex_slack", ("supply.branches[].slack_fraction", "supply.trunks[].slack_fraction"),
           Shows.DRAWN, 1.0, Place.ATTIC_CRAWL, (Giver.TAPE,)),
    Bundle("leakage", ("house.leakage_supply_fraction", "house.leakage_return_fraction"),
           Shows.DRAWN, 5.0, Place.ATTIC_CRAWL, (Giver.TAPE,), chance=0.5),
    Bundle("year", ("house.year_built",), Shows.DRAWN, 0.3, _DESK,
           (Giver.RECORDS, Giver.HOMEOWNER)),
)  # fmt: skip
"""Every bundle that the engine can weigh."""


@lru_cache(maxsize=16384)
def covers(facts: tuple[str, ...], key: str) -> bool:
    """Whether a key, in its catalogue form, is one of these facts or stands below one of them.

    >>> covers(("supply.trunks",), "supply.trunks[].width_in")
    True
    """
    return any(key == fact or key.startswith((f"{fact}.", f"{fact}[]")) for fact in facts)
