"""A technician in a house whose truth is known: one member of the prior, asked bundle by bundle.

The exact one tells what is true. The honest one misreads, takes the place of a tape along in his
figures, and doesn't know one thing in five; the same of a house whatever the order he is asked in.
Scatter and biases are common practice without a published source.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, Final

import numpy as np

from engine.assessment import Assessment, assess, assess_house
from engine.job.belief import Belief, How, Known
from engine.job.job import BlowerSetting, Job
from engine.job.lengths import lengths_of
from engine.job.loading import job_from_mapping
from engine.job.modes import Mode
from engine.job.openings import filters_of, openings_of
from engine.job.sample import draw
from engine.job.sections import Duct, ducts_of, usual_return_trunk
from engine.job.system import usual_branches
from engine.job.unseen import STEP_DOWN, unseen_of
from engine.physics.blower_table import BlowerTable, MotorKind
from engine.physics.operating import GENERIC_CURVES
from engine.trade.exponents import PressurePart
from engine.worth import Bundle
from engine.worth.reliefs import load_ratio

__all__ = ["BASES", "TrueHouse", "bases_assessed", "bases_shifted"]

DONT_KNOW: Final = 0.20
BASES: Final[tuple[dict[str, Any], ...]] = (
    {
        "equipment.kind": "furnace", "equipment.cooling_tons": 3, "equipment.stages": "single",
        "equipment.heating_input_btuh": 60000, "equipment.heating_efficiency_fraction": 0.95,
        "equipment.rise_low_degf": 30, "equipment.rise_high_degf": 60,
    },
    {"equipment.kind": "heat_pump", "equipment.cooling_tons": 2.5, "equipment.stages": "two"},
    {
        "equipment.kind": "furnace", "equipment.cooling_tons": 2, "equipment.stages": "single",
        "equipment.heating_input_btuh": 60000, "equipment.heating_efficiency_fraction": 0.80,
        "equipment.rise_low_degf": 35, "equipment.rise_high_degf": 65,
    },
    {"equipment.kind": "air_handler", "equipment.cooling_tons": 4, "equipment.stages": "single"},
)  # fmt: skip
"""What is said at the door: invented changeouts."""


@dataclass(frozen=True, slots=True)
class _Told:
    beliefs: dict[str, Belief]
    lengths: tuple[tuple[str, int], ...] = ()
    blower: tuple[BlowerSetting, ...] = ()

    def into(self, job: Job) -> Job:
        for name, entries in self.lengths:
            job = job.with_length(name, entries)
        job = job.with_facts(self.beliefs)
        return replace(job, blower=self.blower) if self.blower else job


def bases_assessed(samples: int, seed: int) -> tuple[Assessment, ...]:
    """The prior houses of every base."""
    return tuple(assess(job_from_mapping(base), samples=samples, seed=seed) for base in BASES)


SLACK_SHIFT: Final = 1.8
LENGTH_SHIFT: Final = 1.25
"""How much slacker flex is, and how much longer effective lengths are, in the shifted stock."""


def bases_shifted(samples: int, seed: int) -> tuple[Assessment, ...]:
    """The same bases where real stock differs from the prior: slacker flex, longer ways."""
    found = []
    for base in BASES:
        house = draw(job_from_mapping(base), samples, seed)
        usual_branches(house)
        house.number("path.total_effective_length_ft")
        for key, times, most in (
            ("supply.branches slack", SLACK_SHIFT, 0.45),
            ("path.total_effective_length_ft", LENGTH_SHIFT, 1500.0),
        ):
            drawn = house.drawn[key]
            house.drawn[key] = replace(drawn, values=np.minimum(drawn.values * times, most))
        found.append(assess_house(house))
    return tuple(found)


class TrueHouse:
    """One member of a prior house, and somebody in it."""

    def __init__(self, prior: Assessment, member: int, seed: int, *, exact: bool) -> None:
        self.prior, self.at, self.seed, self.exact = prior, member, seed, exact
        self.ref = prior.system.reference_cfm

    def answer(self, job: Job, bundle: Bundle) -> Job | None:
        """The job with what this person says to a bundle; None for "don't know"."""
        self.rng = np.random.default_rng([self.seed, self.at, *bundle.key.encode()])
        if not self.exact and self.rng.random() < DONT_KNOW:
            return None
        self.job = job
        told = self._told(bundle)
        return None if told is None else told.into(job)

    def _told(self, bundle: Bundle) -> _Told | None:
        if bundle.mode is not None:
            it = self.prior.modes.get(bundle.mode)
            airflow = None if it is None else float(it.target.airflow_cfm[self.at])
            return airflow and _Told(_known({f"target.{bundle.mode}_cfm": airflow}, How.DOCUMENT))
        made = getattr(self, f"_{bundle.key}", None)
        return made() if made else self._drawn(bundle)

    def _drawn(self, bundle: Bundle) -> _Told | None:
        beliefs: dict[str, Belief] = {}
        for fact in bundle.facts:
            drawn = self.prior.house.drawn.get(fact)
            if drawn is None:
                continue
            value: float | str = float(drawn.values[self.at])
            if drawn.words:
                value = drawn.words[int(drawn.values[self.at])]
            elif bundle.key == "lengths":
                value = float(np.clip(self._scattered(value, 0.10 * value), 4.0, 95.0))
            how = How.MEASURED if bundle.key == "lengths" else How.DOCUMENT
            beliefs[fact] = Known(value, how)
        return _Told(beliefs) if beliefs else None

    def _scattered(self, value: float, sigma: float) -> float:
        return value if self.exact else value + sigma * float(self.rng.standard_normal())

    def _duct(self, duct: Duct, names: list[str], most: tuple[float, float]) -> _Told:
        """Sides of a rectangular duct, with where the tape was held as far as it is told."""
        assert duct.width_in is not None
        assert duct.height_in is not None
        sides = (float(duct.width_in[self.at]), float(duct.height_in[self.at]))
        where, excess, liner = "inside", 0.0, 0.0
        if not self.exact:
            kinds = ("bare_metal", "over_wrap", "outside_of_liner")
            where = str(self.rng.choice(kinds, p=(0.75, 0.15, 0.10)))
            excess = float(self.rng.uniform(2.0, 4.0)) if where == "over_wrap" else 0.0
            liner = 1.0 if where == "outside_of_liner" else 0.0
        place_told = self.exact or self.rng.random() < 0.80
        read = [
            min(max(self._scattered(side + excess + 2.0 * liner, 0.25), 4.5), limit)
            for side, limit in zip(sides, most, strict=True)
        ]
        read = read if self.exact else [round(2.0 * side) / 2.0 for side in read]
        beliefs: dict[str, Belief] = {}
        for name in names:
            beliefs |= _known(
                {f"{name}.width_in": read[0], f"{name}.height_in": read[1]}, How.MEASURED
            )
            if place_told:
                beliefs |= _known({f"{name}.measured_where": where}, How.MEASURED)
            if place_told and liner:
                beliefs |= _known({f"{name}.liner_in": liner}, How.MEASURED)
        return _Told(beliefs)

    def _trunks(self) -> _Told:
        duct = ducts_of(self.prior.house, "supply.trunks")[0]
        two = float(duct.share[self.at]) < 0.75
        return self._duct(duct, [f"supply.trunks.{i}" for i in range(1 + two)], (48.0, 36.0))

    def _drop(self) -> _Told:
        duct = ducts_of(self.prior.house, "return.drops")[0]
        return self._duct(duct, ["return.drops.0"], (48.0, 36.0))

    def _return_trunk(self) -> _Told:
        house = self.prior.house
        there = house.drawn["return trunk"]
        if there.words[int(there.values[self.at])] == "no":
            return _Told({}, (("return.trunks", 0),))
        duct = usual_return_trunk(house)
        two = float(duct.share[self.at]) < 0.75
        return self._duct(duct, [f"return.trunks.{i}" for i in range(1 + two)], (48.0, 36.0))

    def _step_down(self) -> _Told:
        """Whether the trunk gets smaller; if so, the smaller part as a section of its own."""
        house = self.prior.house
        there = house.drawn[STEP_DOWN]
        if there.words[int(there.values[self.at])] == "no":
            return _Told(_known({STEP_DOWN: "no"}, How.MEASURED))
        trunks = self.job.length("supply.trunks")
        if not trunks:  # nobody told what it is the smaller part of
            return _Told(_known({STEP_DOWN: "yes"}, How.MEASURED))
        small = next(one.duct for one in unseen_of(house) if one.duct.list_name == "supply.trunks")
        assert small.width_in is not None
        assert small.height_in is not None
        key = f"supply.trunks.{trunks}"
        width = self._scattered(float(small.width_in[self.at]), 0.25)
        facts: dict[str, float | str] = {
            STEP_DOWN: "yes",
            f"{key}.width_in": min(max(width, 2.5), 48.0),
            f"{key}.height_in": min(float(small.height_in[self.at]), 36.0),
            f"{key}.share_fraction": float(small.share[self.at]),
            f"{key}.measured_where": "inside",
            f"{key}.from": "supply.trunks.0",
        }
        return _Told(_known(facts, How.MEASURED))

    def _openings(self) -> _Told:
        openings = openings_of(self.prior.house)
        assert openings is not None
        area_in2 = max(float(openings.area_ft2[self.at]) * 144.0, 40.0)
        count = int(np.ceil(area_in2 / 700.0))
        side = float(np.sqrt(area_in2 / count))
        frame = not self.exact and self.rng.random() < 0.25
        side = min(max(self._scattered(side + 1.75 * frame, 0.25), 4.0), 48.0)
        key = "return.grilles.0"
        facts: dict[str, float | str] = {f"{key}.width_in": side, f"{key}.height_in": side,
                                         f"{key}.count": float(count)}  # fmt: skip
        if self.exact or self.rng.random() < 0.70:
            facts[f"{key}.measured_where"] = "frame" if frame else "hole"
        return _Told(_known(facts, How.MEASURED))

    def _filter(self) -> _Told:
        banks = filters_of(self.prior.house)
        bank = next((bank for bank in banks if bank.present[self.at]), banks[0])
        area_in2 = max(float(bank.area_ft2[self.at]) * 144.0, 60.0)
        count = int(np.ceil(area_in2 / 900.0))
        width = float(np.sqrt(area_in2 / count))
        key = "filters.0"
        facts = {f"{key}.width_in": width, f"{key}.height_in": width, f"{key}.count": float(count),
                 f"{key}.depth_in": float(bank.depth_in[self.at]),
                 f"{key}.place": bank.place}  # fmt: skip
        return _Told(_known(facts, How.MEASURED))

    def _branches(self) -> _Told:
        drawn = self.prior.house.drawn
        key = "supply.branches.0"
        tons = float(drawn["equipment.cooling_tons"].values[self.at])
        flex = drawn["supply.branches flex"]
        is_flex = flex.words[int(flex.values[self.at])] == "yes"
        count = max(3.0, round(tons * float(drawn["supply.branches per ton"].values[self.at])))
        across = float(np.clip(drawn["supply.branches diameter"].values[self.at], 4.0, 9.0))
        facts = {f"{key}.diameter_in": self._scattered(across, 0.10), f"{key}.count": count,
                 f"{key}.material": "flex" if is_flex else "galvanized",
                 f"{key}.measured_where": "flex_core" if is_flex else "bare_metal"}  # fmt: skip
        return _Told(_known(facts, How.MEASURED))

    def _flex_slack(self) -> _Told:
        slack = float(self.prior.house.drawn["supply.branches slack"].values[self.at])
        slack = float(np.clip(self._scattered(slack, 0.08), 0.0, 0.45))
        return _Told(_known({"supply.branches.0.slack_fraction": slack}, How.MEASURED))

    def _fittings(self) -> _Told:
        total = float(lengths_of(self.prior.house).total_effective_ft[self.at])
        total = float(np.clip(self._scattered(total, 0.15 * total), 60.0, 1500.0))
        return _Told(_known({"path.total_effective_length_ft": total}, How.MEASURED))

    def _coil_drop(self) -> _Told:
        drop = float(self.prior.house.drawn["new.coil_drop_inwc"].values[self.at])
        it = next(iter(self.prior.modes.values()))
        airflow = float(it.target.airflow_cfm[self.at])
        facts = {"new.coil_drop_inwc": drop, "new.coil_drop_at_cfm": airflow}
        return _Told(_known(facts, How.DOCUMENT))

    def _filter_drop(self) -> _Told:
        drop = float(self.prior.system.parts[PressurePart.FILTER].drop_inwc[self.at])
        facts = {"new.filter_drop_inwc": float(np.clip(drop, 0.02, 0.6)),
                 "new.filter_drop_at_cfm": self.ref}  # fmt: skip
        return _Told(_known(facts, How.DOCUMENT))

    def _filter_rating(self) -> _Told:
        inside = bool(self.prior.system.parts[PressurePart.FILTER].inside[self.at])
        word = "no" if inside else "yes"
        return _Told(_known({"equipment.filter_outside_rating": word}, How.DOCUMENT))

    def _loads(self) -> _Told:
        tons = float(self.prior.house.drawn["equipment.cooling_tons"].values[self.at])
        gain = float(load_ratio(self.prior)[self.at - 1]) * tons * 9000.0
        gain = float(np.clip(self._scattered(gain, 0.12 * gain), 2000.0, 120000.0))
        return _Told(_known({"loads.sensible_gain_btuh": gain}, How.DOCUMENT))

    def _blower_table(self) -> _Told:
        """The table that stands behind the believed blower: one setting for each mode."""
        drawn = self.prior.house.drawn
        kinds = drawn["equipment.blower_kind"]
        kind = MotorKind(kinds.words[int(kinds.values[self.at])])
        reach = float(np.clip(drawn["blower reach"].values[self.at], 0.0, 1.0))
        over = float(drawn["blower size over target"].values[self.at])
        rated = float(drawn["equipment.rated_static_inwc"].values[self.at])
        curve = GENERIC_CURVES[kind]
        settings = []
        for mode, it in self.prior.modes.items():
            ratio = np.asarray(curve.static_ratio)
            toward = (np.where(ratio < 1.0, 1.0 - reach, reach) - 0.5) / 0.4
            low, likely, high = (
                np.asarray(one) for one in (curve.low_share, curve.likely_share, curve.high_share)
            )
            share = likely + toward * np.where(toward < 0.0, likely - low, high - likely)
            share = np.minimum.accumulate(np.maximum(share, 0.05))
            at_rated = float(it.target.airflow_cfm[self.at])
            at_rated *= 1.0 if kind is MotorKind.ECM_VARIABLE else over
            rows = [(float(r), float(c)) for r, c in
                    zip(rated * ratio, at_rated * share, strict=True)]  # fmt: skip
            settings.append(BlowerSetting(BlowerTable.from_rows(str(mode), rows), (mode,)))
        return _Told(_known({"equipment.blower_kind": kind.value}, How.DOCUMENT), (),
                     tuple(settings))  # fmt: skip

    def _pressures(self) -> _Told:
        return _Told(self._read(("after_filter", "before_coil")))

    def _pressure_parts(self) -> _Told:
        return _Told(self._read(("before_filter", "after_filter", "before_coil", "after_coil")))

    def _read(self, taps: tuple[str, ...]) -> dict[str, Belief]:
        drawn, parts = self.prior.house.drawn, self.prior.system.parts
        normal = np.random.default_rng([self.seed, self.at, 7]).standard_normal(2)
        tons = float(drawn["equipment.cooling_tons"].values[self.at])
        airflow = tons * float(np.clip(337.0 + 95.0 * normal[0], 200.0, 520.0))

        def at(part: PressurePart) -> float:
            found = parts[part]
            grown = (airflow / self.ref) ** float(found.exponent[self.at])
            return float(found.drop_inwc[self.at]) * grown

        back, push = at(PressurePart.RETURN_DUCT), at(PressurePart.SUPPLY_DUCT)
        coil = 0.20 * float(np.exp(0.3 * normal[1]))
        true = {"before_filter": back, "after_filter": back + at(PressurePart.FILTER),
                "before_coil": push + coil, "after_coil": push}  # fmt: skip
        found: dict[str, float | str] = {}
        for tap in taps:
            read = self._scattered(true[tap], max(0.03, 0.10 * true[tap]))
            found[f"readings.0.{tap}_inwc"] = round(float(np.clip(read, 0.01, 1.9)), 3)
        told = airflow if self.exact else airflow * float(np.exp(0.10 * self.rng.standard_normal()))
        found |= {"readings.0.airflow_cfm": float(np.clip(told, 160.0, 2900.0)),
                  "readings.0.airflow_source": "blower_table", "readings.0.filter_state": "clean",
                  "readings.0.mode": Mode.COOLING_HIGH.value}  # fmt: skip
        return _known(found, How.MEASURED)


def _known(facts: dict[str, float | str], how: How) -> dict[str, Belief]:
    return {key: Known(value, how) for key, value in facts.items()}
