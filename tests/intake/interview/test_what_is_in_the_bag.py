"""Tools told by what broke, what was left behind, and all of them but one."""

import pytest
from support.dialogue import opened

TOOLS = ("tape", "gauge", "probes", "flow_plate")


def held(line: str) -> dict[str, str | None]:
    job = opened("tools").play(line).talk.job
    return {tool: job.word(f"site.has_{tool}") for tool in TOOLS}


def only(*tools: str) -> dict[str, str | None]:
    return {tool: "yes" if tool in tools else "no" for tool in TOOLS}


@pytest.mark.parametrize(
    "line",
    [
        "nothing but a tape",
        "no tools but a tape",
        "forgot everything but the tape",
        "no gauge no probes just a tape",
        "tape. manometer batteries are shot",
        "tape. manometer's broke",
        "tape is all i got",
        "neither gauge nor probes, tape yes",
        "manifold gauges and a tape",
    ],
)
def test_one_tool_that_is_left_over_is_the_only_one(line):
    assert held(line) == only("tape")


@pytest.mark.parametrize(
    ("line", "tools"),
    [
        ("got it all cept the flow plate", ("tape", "gauge", "probes")),
        ("all but the hood", ("tape", "gauge", "probes")),
        ("i don't have a flow hood, everything else yes", ("tape", "gauge", "probes")),
        ("everything except the hood and the probes", ("tape", "gauge")),
        ("everything", TOOLS),
        ("yes all of it", TOOLS),
    ],
)
def test_what_is_excepted_is_the_only_thing_missing(line, tools):
    assert held(line) == only(*tools)


@pytest.mark.parametrize(
    ("line", "tools"),
    [
        ("tape and a manometer, no probes, hood's at the shop", ("tape", "gauge")),
        ("got a gauge and tape. probes are busted", ("tape", "gauge")),
        ("got the tape, the manometer's batteries are dead, probes ok", ("tape", "probes")),
        ("tape and gauge are at the shop, probes here", ("probes",)),
        ("gauge needs batteries, got tape and probes", ("tape", "probes")),
        ("left my gauge in the other truck but i have a tape and thermometer", ("tape", "probes")),
        ("tape in hand, gauge is in the van", ("tape", "gauge")),
        ("no manometer just tape and probes", ("tape", "probes")),
        ("tape yes, gauge no, probes yes", ("tape", "probes")),
    ],
)
def test_what_broke_or_stayed_away_is_not_there(line, tools):
    assert held(line) == only(*tools)


def test_what_is_said_last_of_a_tool_stands():
    assert held("tape, no wait i left the tape, gauge only, oh found the tape") == only(
        "tape", "gauge"
    )


@pytest.mark.parametrize("line", ["tpae and manomter", "slack tube manometer and a tape"])
def test_misspelt_and_plain_names_are_known(line):
    assert held(line) == only("tape", "gauge")


@pytest.mark.parametrize("line", ["no tape even, left everything at the shop", "nothing today"])
def test_an_empty_bag_holds_nothing(line):
    assert held(line) == only()


def test_a_denied_tool_alone_says_nothing_of_the_others():
    assert held("manometer but it's dead") == dict.fromkeys(TOOLS, None) | {"gauge": "no"}


def test_a_flow_hood_left_behind_raises_no_alarm():
    told = opened("tools").play("tape, manometer, hood's back at the shop")
    assert not told.state.stopped
    assert told.talk.job.word("site.has_flow_plate") == "no"


@pytest.mark.parametrize(
    "line",
    [
        "yes, 60 degrees at the thermostat",
        "it ran when i pulled up, thermostat says 70",
        "yes, measured .7 total on it",
    ],
)
def test_a_thermostat_or_a_reading_is_no_tool(line):
    told = opened("old_runs").play(line)
    assert told.talk.job.word("old.works") == "yes"
    assert told.talk.job.word("site.has_tape") is None
    assert told.key == "tools"


@pytest.mark.parametrize("line", ["tape, gauge. oh and its not zoned", "gauge but it's dead"])
def test_what_is_said_of_something_else_says_nothing_of_the_weather(line):
    told = opened("tools").play(line)
    assert told.talk.job.word("site.weather_allows_cooling") is None


@pytest.mark.parametrize(
    ("line", "tools"),
    [
        ("everything, hood's in the truck", TOOLS),
        ("forgot my gauge, got the rest", ("tape", "probes", "flow_plate")),
        ("no hood. rest is here", ("tape", "gauge", "probes")),
        ("tape and gauge are all good", ("tape", "gauge")),
    ],
)
def test_the_rest_is_what_was_not_named(line, tools):
    assert held(line) == only(*tools)
