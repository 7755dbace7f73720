"""Each caution is switched on by what it is about, and by nothing else."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

import pytest

from engine.job.facts import fact_for
from intake.telling.cautions import CAUTIONS, Caution, CautionRow, Gravity, cautions_for


@dataclass(frozen=True)
class House:
    """A situation made of plain mappings."""

    facts: dict[str, float | str] = field(default_factory=dict)
    figures: dict[str, float] = field(default_factory=dict)
    remedies: frozenset[str] = frozenset()
    said: str = ""

    def value(self, key: str) -> float | str | None:
        if self.facts.get(key) is not None:
            fact_for(key)  # a key that no job can hold is a slip of the test
        return self.facts.get(key)

    def known(self, key: str) -> bool:
        return key in self.facts

    def finding(self, check: str) -> str | None:
        return None

    def predicted(self, name: str) -> float | None:
        return self.figures.get(name)


def house(said: str = "", remedies: tuple[str, ...] = (), **facts: float | str) -> House:
    """`house__year_built=1960` is the fact; a name without a dot is a predicted figure."""
    plain = {key.replace("__", "."): value for key, value in facts.items() if "__" in key}
    figures = {key: float(value) for key, value in facts.items() if "__" not in key}
    return House(plain, figures, frozenset(remedies), said)


def slugs(situation: House) -> set[str]:
    return {caution.slug for caution in cautions_for(situation)}


METAL = {"supply__trunks__0__material": "galvanized"}
BOARD = {"supply__trunks__0__material": "duct_board"}
READ = {"readings__0__mode": "heating_high", "readings__0__return_degf": 68.0}
COOL = {"readings__0__mode": "cooling_high", "readings__0__return_degf": 76.0}

ON = [
    ("danger_now", house(symptoms__gas_smell="yes")),
    ("danger_now", house(symptoms__co_alarm="yes")),
    ("carbon_monoxide_why", house(symptoms__co_ppm=9)),
    ("carbon_monoxide_shut_down", house(symptoms__co_ppm=35)),
    ("carbon_monoxide_leave", house(symptoms__co_ppm=70)),
    ("stop_and_call", house("there is soot on the cabinet")),
    ("stop_and_call", house("the heat exchanger is cracked")),
    ("stop_and_call", house(readings__0__total_external_inwc=1.9)),
    ("backdraft", house(house__vent_type="draft_hood")),
    ("backdraft", house("old wood stove next to it")),
    ("backdraft", house(remedies=("larger_return_grille",), old__kind="furnace")),
    ("backdraft", house(remedies=("seal_ducts",), equipment__kind="furnace")),
    ("shared_flue", house(house__water_heater_shares_flue="yes", equipment__kind="heat_pump")),
    ("shared_flue", house(house__water_heater_shares_flue="yes",
                          equipment__heating_efficiency_fraction=0.96)),
    ("lock_out", house(condition__coil="some_dirt")),
    ("lock_out", house("i moved the dip switches")),
    ("two_feeds", house(equipment__strip_kw=10)),
    ("ladder", house(house__duct_location="attic")),
    ("ladder", house("the return is a ceiling grille")),
    ("attic_crawl", house(house__duct_location="crawlspace")),
    ("attic_crawl", house("went up in the attic")),
    ("asbestos", house("white tape on the joints")),
    ("asbestos", house(house__old_duct_wrap="yes")),
    ("asbestos", house(house__year_built=1958, **METAL)),
    ("test_ports_in_doubt", house(site__has_gauge="yes", **BOARD)),
    ("test_ports_in_doubt", house("white cloth tape on it", site__has_gauge="yes")),
    ("test_ports", house(site__has_gauge="yes")),
    ("test_ports", house(readings__0__mode="cooling_high")),
    ("sharp_metal", house(return__drops__0__width_in=20)),
    ("sharp_metal", house(remedies=("add_branch",))),
    ("mould_and_droppings", house("mold all over the inside")),
    ("people", house(symptoms__vulnerable_people="yes")),
    ("people", house("grandpa is on oxygen")),
    ("refrigerant", house(equipment__cooling_tons=3)),
    ("refrigerant", house(remedies=("lower_drop_coil",))),
    ("mildly_flammable_refrigerant", house(equipment__refrigerant="a2l")),
    ("power_and_wires", house(old__kind="furnace", equipment__kind="heat_pump")),
    ("power_and_wires", house(phone__change="furnace_to_heat_pump")),
    ("structure", house(remedies=("second_return",), return__branches__0__material="panned_joist")),
    ("structure", house("we would have to cut two joists")),
    ("rise_too_high", house(rise_degf=72, equipment__rise_high_degf=65)),
    ("rise_too_high", house(symptoms__limit_trips="yes")),
    ("rise_too_high", house(readings__0__supply_degf=150.0, old__rise_high_degf=70, **READ)),
    ("rise_too_low", house(rise_degf=28, equipment__rise_low_degf=35)),
    ("rise_too_low", house(readings__0__supply_degf=90.0, old__rise_low_degf=30, **READ)),
    ("coil_freezing", house(cfm_per_ton=240)),
    ("coil_cold", house(cfm_per_ton=290)),
    ("coil_cold", house(symptoms__ice="yes")),
    ("coil_cold", house(readings__0__supply_degf=50.0, **COOL)),
    ("water_off_coil", house(cfm_per_ton=470, house__humid="yes")),
    ("water_off_coil", house(coil_face_fpm=560)),
    ("altitude", house(site__elevation_ft=5200)),
    ("brittle", house("the drain pan is rusted out")),
    ("brittle", house(**BOARD)),
    ("humidity", house(house__humid="yes")),
    ("humidity", house(loads__sensible_gain_btuh=20000, loads__latent_gain_btuh=8000)),
    ("permit", house()),
]  # fmt: skip

OFF = [
    ("danger_now", house(symptoms__gas_smell="no", symptoms__co_alarm="no")),
    ("carbon_monoxide_why", house(symptoms__co_ppm=8)),
    ("carbon_monoxide_why", house(symptoms__co_ppm=35)),
    ("carbon_monoxide_shut_down", house(symptoms__co_ppm=34)),
    ("carbon_monoxide_leave", house(symptoms__co_ppm=69)),
    ("stop_and_call", house("no soot, looks clean", readings__0__total_external_inwc=0.9)),
    ("backdraft", house(house__vent_type="sealed", equipment__kind="furnace",
                        remedies=("larger_return_grille",))),
    ("backdraft", house(remedies=("add_branch",), old__kind="furnace")),
    ("backdraft", house(remedies=("larger_return_grille",), equipment__kind="air_handler")),
    ("shared_flue", house(house__water_heater_shares_flue="yes",
                          equipment__heating_efficiency_fraction=0.80)),
    ("shared_flue", house(house__water_heater_shares_flue="no", equipment__kind="heat_pump")),
    ("lock_out", house("20x8 trunk, galvanized")),
    ("two_feeds", house(equipment__strip_kw=0)),
    ("ladder", house(house__duct_location="basement")),
    ("attic_crawl", house(house__duct_location="basement")),
    ("attic_crawl", house("there is no attic")),
    ("asbestos", house(house__year_built=1981, **METAL)),
    ("asbestos", house(house__year_built=1958, supply__trunks__0__material="flex")),
    ("asbestos", house("foil tape on every joint")),
    ("test_ports_in_doubt", house(site__has_gauge="yes", **METAL)),
    ("test_ports_in_doubt", house(site__has_gauge="no", **BOARD)),
    ("test_ports", house(site__has_gauge="no")),
    ("sharp_metal", house(equipment__cooling_tons=3)),
    ("mould_and_droppings", house("the ducts are clean")),
    ("people", house(symptoms__vulnerable_people="no")),
    ("refrigerant", house(equipment__heating_input_btuh=80000)),
    ("mildly_flammable_refrigerant", house(equipment__refrigerant="r410a")),
    ("power_and_wires", house(old__kind="furnace", equipment__kind="furnace")),
    ("structure", house(remedies=("second_return",), return__branches__0__material="galvanized")),
    ("structure", house(return__branches__0__material="panned_joist")),
    ("rise_too_high", house(rise_degf=65, equipment__rise_high_degf=65)),
    ("rise_too_high", house(rise_degf=80)),
    ("rise_too_low", house(rise_degf=35, equipment__rise_low_degf=35)),
    ("coil_freezing", house(cfm_per_ton=250)),
    ("coil_cold", house(cfm_per_ton=240)),
    ("coil_cold", house(cfm_per_ton=300)),
    ("coil_cold", house(readings__0__supply_degf=54.0, **COOL)),
    ("water_off_coil", house(cfm_per_ton=470)),
    ("water_off_coil", house(cfm_per_ton=430, house__humid="yes")),
    ("altitude", house(site__elevation_ft=2000)),
    ("brittle", house("trust me, it is fine", **METAL)),
    ("humidity", house(loads__sensible_gain_btuh=24000, loads__latent_gain_btuh=3000)),
]  # fmt: skip


@pytest.mark.parametrize(("slug", "situation"), ON)
def test_a_caution_is_on_where_it_belongs(slug: str, situation: House) -> None:
    assert slug in slugs(situation)


@pytest.mark.parametrize(("slug", "situation"), OFF)
def test_a_caution_is_off_where_it_does_not_belong(slug: str, situation: House) -> None:
    assert slug not in slugs(situation)


def test_every_caution_has_a_house_that_switches_it_on_and_one_that_does_not() -> None:
    table = {row.slug for row in CAUTIONS}
    assert len(table) == len(CAUTIONS)
    assert {slug for slug, _ in ON} == table
    assert {slug for slug, _ in OFF} == table - {"permit"}


def test_every_fact_that_a_trigger_asks_for_is_one_a_job_can_hold() -> None:
    asked: set[str] = set()

    class Asked(House):
        def value(self, key: str) -> float | str | None:
            asked.add(key)
            return None

        def known(self, key: str) -> bool:
            asked.add(key)
            return False

    assert {caution.slug for caution in cautions_for(Asked())} == {"permit"}
    assert len(asked) > 100
    for key in asked:
        fact_for(key)


def test_the_permit_caution_is_always_there_and_an_empty_house_has_no_other() -> None:
    assert slugs(house()) == {"permit"}
    for _, situation in ON + OFF:
        assert "permit" in slugs(situation)


def test_the_gravest_caution_is_told_first() -> None:
    everything = house(
        "white tape, crawl space, soot, mold, rusted pan", symptoms__gas_smell="yes",
        symptoms__co_ppm=40, house__humid="yes", house__vent_type="draft_hood", cfm_per_ton=240,
        site__has_gauge="yes", site__elevation_ft=6000,
    )  # fmt: skip
    told = cautions_for(everything)
    graves = [caution.gravity for caution in told]
    assert graves == sorted(graves)
    assert told[0].slug == "danger_now"
    assert told[-1].gravity is Gravity.COMFORT


def test_every_caution_that_is_on_says_why_in_a_clause_except_those_that_always_are() -> None:
    told: list[Caution] = [c for _, situation in ON for c in cautions_for(situation)]
    for caution in told:
        assert (caution.because == "") == (caution.slug == "permit")
        assert not caution.because.endswith(".")
        assert "{" not in caution.because


@pytest.mark.parametrize("row", CAUTIONS, ids=lambda row: row.slug)
def test_a_caution_is_a_full_sentence_or_more_for_a_newer_technician(
    row: CautionRow,
) -> None:
    assert row.words[0].isupper()
    assert row.words.endswith(".")
    assert 40 <= len(row.words) <= 620
    assert re.fullmatch(r"[a-z_]+", row.slug)


# Figures a caution must carry. Sources: IRC M1602 (10 ft), 29 CFR 1926.1053 (one out for four up,
# 3 ft above), ANSI/BPI-1200 (35 and 70 ppm) (how: memory); 3/8 in. is common practice, no source.
@pytest.mark.parametrize(
    ("slug", "figures"),
    [
        ("backdraft", ("10 ft", "garage", "before and after")),
        ("ladder", ("one foot out for every four up", "3 ft")),
        ("test_ports", ("3/8 in.", "6 to 12 in.", "blower off", "seal", "drain pan", "heat exch")),
        ("carbon_monoxide_shut_down", ("35 ppm",)),
        ("carbon_monoxide_leave", ("70 ppm", "911")),
        ("asbestos", ("cut", "drill", "licensed")),
        ("stop_and_call", ("gas smell", "exchanger", "spilling", "35 ppm", "licence", "framing")),
    ],
)
def test_a_caution_carries_its_figures(slug: str, figures: tuple[str, ...]) -> None:
    (words,) = [row.words for row in CAUTIONS if row.slug == slug]
    assert [figure for figure in figures if figure not in words] == []
