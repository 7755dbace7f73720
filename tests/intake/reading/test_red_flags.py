"""Signs of danger in typed text: none missed, denials understood, trade talk left alone."""

from __future__ import annotations

import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intake.reading.red_flags import RedFlagKind, RedFlagState, look

GAS = RedFlagKind.GAS
CO = RedFlagKind.CARBON_MONOXIDE
BURNING = RedFlagKind.BURNING
WATER = RedFlagKind.WATER_ELECTRIC
FLAME = RedFlagKind.FLAME
READING = RedFlagKind.CO_READING
COLD = RedFlagKind.NO_HEAT_VULNERABLE
HOT = RedFlagKind.NO_COOLING_VULNERABLE
ODD = RedFlagKind.ODD_SMELL
CHIRP = RedFlagKind.LOW_BATTERY_CHIRP

PRESENT = [
    (GAS, "smells like gas in here"),
    (GAS, "i smell gas"),
    (GAS, "It smells like rotten eggs by the furnace"),
    (GAS, "rotton egg smell in the basement"),
    (GAS, "gas mell"),
    (GAS, "strong gas smell when i opened the door"),
    (GAS, "theres a gas leak"),
    (GAS, "the gas line is leaking"),
    (GAS, "smell of propane down there"),
    (GAS, "sulphur smell near the meter"),
    (GAS, "20x8 galv, also i smell gas"),
    (GAS, "smelling gas rn"),
    (GAS, "whole house stinks like gas"),
    (GAS, "reeks of gas"),
    (GAS, "gas oder in the crawl"),
    (GAS, "yes a little gas smell"),
    (GAS, "faint smell of natural gas"),
    (GAS, "hissing by the gas meter"),
    (GAS, "yeah, bad eggs kind of smell"),
    (GAS, "no heat and i smell gas"),
    (GAS, "no it smells like gas"),
    (GAS, "no doubt its a gas smell"),
    (GAS, "no idea what size but the place smells like gas"),
    (GAS, "the gas smell wont go away"),
    (GAS, "cant believe how strong the gas smell is"),
    (GAS, "i smell gas furnace is off though"),
    (GAS, "smeling gas by the water heater"),
    (GAS, "had a gas smell last week and its still there"),
    (GAS, "we hit the gas line with the saw"),
    (GAS, "don't know the size. gas smell is real strong"),
    (CO, "co alarm going off"),
    (CO, "see oh alarm going off"),
    (CO, "carbon monoxide detector is beeping"),
    (CO, "carbon monoxyde alarm is blaring"),
    (CO, "the alarm keeps going off"),
    (CO, "c.o. detector sounding"),
    (CO, "CO2 alarm is going off"),
    (CO, "co alram wont stop beeping"),
    (CO, "the detector in the hall is screaming"),
    (CO, "everyone has headaches when the furnace runs"),
    (CO, "we all feel sick in the house and better outside"),
    (CO, "headache and nausea every time the heat is on"),
    (CO, "my wife passed out"),
    (CO, "co in the house"),
    (CO, "80 ppm in the living room"),
    (CO, "no gas smell but the co alarm is going off"),
    (BURNING, "burning smell"),
    (BURNING, "smells like burning plastic"),
    (BURNING, "electrical smell from the unit"),
    (BURNING, "something is burning"),
    (BURNING, "smoke coming out of the vents"),
    (BURNING, "theres smoke in the basement"),
    (BURNING, "the furnace is smoking"),
    (BURNING, "sparks at the disconnect"),
    (BURNING, "its arcing in there"),
    (BURNING, "the blower is on fire"),
    (BURNING, "melted wires at the board"),
    (BURNING, "smoke alarm is going off"),
    (BURNING, "birning smell from the panel"),
    (WATER, "water dripping on the control board"),
    (WATER, "standing water around the furnace"),
    (WATER, "water in the electrical panel"),
    (WATER, "the furnace is under water. water everywhere by the outlets"),
    (WATER, "puddle under the air handler"),
    (WATER, "wires are wet"),
    (WATER, "wter all over the floor by the unit"),
    (FLAME, "soot all over the front of it"),
    (FLAME, "the flame is yellow and lazy"),
    (FLAME, "flames rolling out of the burner door"),
    (FLAME, "flame rollout"),
    (FLAME, "smells like exhaust in the house"),
    (FLAME, "strong exhaust smell"),
    (FLAME, "scorch marks on the cabinet"),
    (FLAME, "draft hood is spilling"),
    (READING, "meter says 40 ppm in the hallway"),
    (READING, "CO 45"),
    (COLD, "no heat and theres a newborn"),
    (COLD, "furnace is dead and my mother is 82"),
    (COLD, "its 48 in the house"),
    (COLD, "heat went out, husband is on oxygen"),
    (HOT, "ac is out, two elderly people here"),
    (HOT, "no cooling and a baby in the house"),
    (GAS, "customer says it smells like gas"),
    (GAS, "i smellgas"),
    (GAS, "smells like gsa"),
    (GAS, "without a doubt gas smell"),
    (GAS, "nothing but gas smell"),
    (GAS, "no gauge smell gas"),
    (GAS, "the gas line got hit"),
    (GAS, "smells eggy by the furnace"),
    (GAS, "when the heat kicks on i smell gas"),
    (GAS, "why does it smell like gas"),
    (GAS, "no filter in it and theres a gas smell"),
    (CO, "the CO thing is going off"),
    (CO, "alarm wont shut off"),
    (CO, "the monoxide alarm is chiming"),
    (BURNING, "there's an arc at the contactor"),
    (BURNING, "the wire insulation is melting"),
    (COLD, "no heat since last night and we have a newborn"),
    (CO, "the co alarm just went off"),
    (BURNING, "eletrical burning smell"),
    (BURNING, "smoke everwhere"),
    (WATER, "furnace sitting in water"),
    (WATER, "the furnace is standing in 2 inches of water"),
    (FLAME, "yellow tipped flames rolling out"),
    (FLAME, "furnace exhaust leaking in the basement"),
    (CO, "monitor shows 120ppm in the hall"),
    (COLD, "no heat, baby in the house"),
    (COLD, "my dad's 88 and the heat's out"),
    (HOT, "ac's broke, kids and a 91 year old here"),
    (CHIRP, "co detector chirps once a minute"),
    (CHIRP, "smoke alarm chirping every minute"),
]

NEGATED = [
    "no gas smell",
    "never smelled gas",
    "no, no gas smell",
    "no gas or rotten egg smell",
    "dont smell any gas",
    "doesn't smell like gas",
    "i don't smell gas or anything",
    "havent noticed any gas smell",
    "not smelling gas",
    "gas smell: no",
    "gas smell? nope",
    "no rotten egg smell, no alarms",
    "without any gas odor",
    "no sign of a gas leak",
    "there's no gas leak",
    "no burning smell",
    "no burning or electrical smell",
    "nothing smells",
    "no smells at all",
    "no smell no alarm no water",
    "co alarm isnt going off",
    "no co alarm going off",
    "alarm is not sounding",
    "the detector never went off",
    "no smoke",
    "no sparks",
    "no soot",
    "no water near the wires",
    "not any water on the panel",
    "no yellow flame",
    "no scorch marks",
    "no exhaust smell",
    "nobody has headaches",
    "no headaches or dizziness",
    "cant smell anything",
    "no gas smell and no burning smell",
    "no co alarm sounding, no gas smell",
    "no flame rollout",
]

UNCLEAR = [
    "smelled gas last week",
    "had a CO alarm once",
    "kinda smells weird",
    "there was a gas smell yesterday",
    "used to smell like rotten eggs",
    "maybe a gas smell",
    "might be gas i smell",
    "i think i smelled gas",
    "the alarm went off last night",
    "co alarm went off a month ago",
    "co detector went off once",
    "smells funny",
    "there is a smell",
    "not sure if its gas smell",
    "i dont know if i smell gas",
    "gas leak two years ago",
    "smelled like something burning earlier",
    "saw smoke once",
    "burning smell the other day",
    "there was water on the board last spring",
    "possibly a burning smell",
    "soot years ago",
    "if it smells like gas what do i do",
    "hear a hissing",
    "co alarm",
    "i get headaches",
    "kind of dizzy",
    "basement flooded",
    "rollout switch",
    "cracked heat exchanger",
    "burning dust smell on first heat",
    "gas smell?",
    "not any more gas smell",
    "smells off in that room",
    "the furnace quit",
    "ac died yesterday",
    "no heat",
    "co is 15 ppm",
    "had 50 ppm co last winter",
    "sometimes smells like gas",
    "gas smell is gone now",
    "someone said they smelled gas",
    "lots of smoke from it before",
    "i smell gas?",
    "it never smelled like gas until now",
    "gas company fixed a leak last month",
    "red light on the co alarm?",
    "basement has water",
    "rollout",
    "flue co is 180 ppm",
    "co2 is 900 ppm",
]

ORDINARY = [
    "gas furnace",
    "80% gas",
    "80k gas furnace, 80%",
    "natural gas",
    "its gas not propane",
    "gas line is 3/4",
    "gas valve at 3.5",
    "gas water heater next to it",
    "burner",
    "three burners, inshot",
    "CO tested 0",
    "co 0 ppm in flue",
    "water heater",
    "condensate drain",
    "condensate pump by the furnace",
    "smoke pencil",
    "did a smoke test on the return",
    "new CO alarm installed",
    "co alarm in the hallway",
    "they have a smoke detector in every bedroom",
    "hot water coil",
    "hydronic, hot water",
    "0.5 inches of water",
    ".3 in water column",
    "fire rated door",
    "fire damper in the wall",
    "high fire 80,000 low fire 52,000",
    "fires up fine",
    "fireplace in the den",
    "dusty smell first heat",
    "musty smell at start",
    "smells like wet dog",
    "no heat strips",
    "no heat pump, straight cool",
    "no heat loss calc",
    "no ac, heat only",
    "exhaust fan in the bath",
    "flame sensor cleaned",
    "blue flame",
    "spark ignition",
    "wood stove in the basement",
    "duct board is 1 inch",
    "20x8 galvanized",
    "register hisses a bit",
    "air hissing at the filter grille",
    "water source heat pump",
    "backdraft damper",
    "six inch flex 25 feet",
    "sick inch round",
    "panel is 200 amp",
    "water softener next to it",
    "this job is a headache",
    "no return in the baby's room",
    "kids room is always cold",
    "old furnace 20 years old",
    "65 year old house",
    "wiring is fine",
    "refrigerant gas charge ok",
    "leaky ducts",
    "small gas unit",
    "1200 cfm",
    "dont know",
    "smaller one is 14x8",
    "blower motor was replaced in 2019",
    "burned a capacitor",
    "filter alarm on the thermostat",
    "co",
    "no, none of them do",
    "used smoke to find leaks",
    "sparky did the wiring",
    "point five inches of water",
    "the blower goes off early",
    "not heating the back bedroom well",
    "baby's room has no return",
    "flue co is 40 ppm",
    "co2",
]


@pytest.mark.parametrize(("kind", "text"), PRESENT)
def test_a_danger_that_is_there_is_never_missed(kind: RedFlagKind, text: str) -> None:
    flag = look(text)
    assert flag is not None
    assert (flag.kind, flag.state) == (kind, RedFlagState.PRESENT)


@pytest.mark.parametrize("text", NEGATED)
def test_a_danger_that_is_plainly_denied_lets_the_questions_go_on(text: str) -> None:
    flag = look(text)
    assert flag is not None
    assert flag.state is RedFlagState.NEGATED


@pytest.mark.parametrize("text", UNCLEAR)
def test_a_danger_past_or_unclear_is_asked_about(text: str) -> None:
    flag = look(text)
    assert flag is not None
    assert flag.state is RedFlagState.UNCLEAR


@pytest.mark.parametrize("text", ORDINARY)
def test_ordinary_trade_talk_raises_nothing(text: str) -> None:
    assert look(text) is None


def test_there_are_enough_phrases_of_each_sort() -> None:
    assert len(PRESENT) >= 60
    assert len(NEGATED) >= 30
    assert len(UNCLEAR) >= 30
    assert len(ORDINARY) >= 40


def test_only_a_danger_that_is_there_stops_the_questions() -> None:
    stops = {text: look(text) for _, text in PRESENT}
    assert all(flag and flag.stops for text, flag in stops.items() if "chirp" not in text)
    assert not any(flag.stops for text in NEGATED + UNCLEAR if (flag := look(text)))
    chirp = look("co detector chirps once a minute")
    assert chirp is not None
    assert not chirp.stops


@pytest.mark.parametrize(("kind", "text"), [row for row in PRESENT if row[0] is GAS])
def test_capitals_spaces_and_other_answers_around_it_hide_nothing(
    kind: RedFlagKind, text: str
) -> None:
    for dressed in (text.upper(), f"  {text}  !!", f"20x8 galv. {text}", f"{text}. trunk is 18x8"):
        flag = look(dressed)
        assert flag is not None, dressed
        assert (flag.kind, flag.state) == (kind, RedFlagState.PRESENT), dressed


def test_the_gravest_of_several_dangers_is_told() -> None:
    flag = look("no burning smell, soot on the door, and i smell gas")
    assert flag is not None
    assert (flag.kind, flag.state) == (GAS, RedFlagState.PRESENT)


# Action levels in room air (9, 35 and 70 ppm): ANSI/BPI-1200 (how: memory).
@pytest.mark.parametrize(
    ("ppm", "kind", "state"),
    [
        (8, None, None),
        (9, READING, RedFlagState.UNCLEAR),
        (34, READING, RedFlagState.UNCLEAR),
        (35, READING, RedFlagState.PRESENT),
        (69, READING, RedFlagState.PRESENT),
        (70, CO, RedFlagState.PRESENT),
    ],
)
def test_carbon_monoxide_figures_follow_the_action_levels(
    ppm: int, kind: RedFlagKind | None, state: RedFlagState | None
) -> None:
    for text in (f"{ppm} ppm", f"co is {ppm}", f"ambient co reads {ppm} ppm in the kitchen"):
        flag = look(text)
        assert (flag and flag.kind, flag and flag.state) == (kind, state), text


@given(st.text(max_size=80))
def test_any_text_at_all_is_looked_at_without_an_error(text: str) -> None:
    flag = look(text)
    assert flag is None or flag.words


@given(st.text(alphabet="0123456789x .,/\"'", max_size=40))
def test_sizes_and_figures_alone_are_never_a_danger(text: str) -> None:
    assert look(text) is None


@pytest.mark.parametrize(
    "part", ["smell no gas not alarm water furnace ", "a", "no ", "1 ", "- ", "no heat is been "]
)
def test_the_time_grows_no_faster_than_the_text(part: str) -> None:
    def seconds(length: int) -> float:
        text = (part * length)[:length]
        best = 9.0
        for _ in range(3):
            start = time.perf_counter()
            look(text)
            best = min(best, time.perf_counter() - start)
        return best

    look("warm the patterns up")
    assert seconds(16_000) < 4 * 3 * seconds(4_000) + 0.05
