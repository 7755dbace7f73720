"""The report in its three formats: what it holds, and that typed text stays text."""

import json
import re
from dataclasses import replace
from html.parser import HTMLParser

import numpy as np
import pytest
from pydantic import BaseModel, ConfigDict, ValidationError
from support.dialogue import opened
from support.verdicts import a_finding, a_job, a_mode, a_verdict, same

from engine.job.belief import How, Known
from engine.job.job import Job
from engine.job.modes import Mode
from engine.judge import judge
from engine.trade.limits import LIMITS, turned
from engine.verdict import FindingStatus, ModeStatus, Verdict
from intake.report.answers import TypedAnswer, stated_facts, typed_answers
from intake.report.content import content_of
from intake.report.html import report_html
from intake.report.json import report_json, verdict_mapping
from intake.report.markdown import escaped, report_markdown

NASTY = (
    '<script>alert("x")</script>',
    "<img src=x onerror=alert(1)>",
    "[link](https://x.invalid) ![p](http://x.invalid/p.png)",
    "| cell | cell |",
    "# heading\n- item\n1. one",
    "2*3*4 _under_ `code` ~~gone~~ **b**",
    "{{ 7 * 7 }} {% raw %}",
    "www.x.invalid a@x.invalid &lt;b&gt;",
    "' onmouseover='x",
)
VOID = {"meta", "br", "img", "link", "hr", "input"}


def a_content(said="", **changed):
    answers = (TypedAnswer("supply trunk", "bout 20x8"),)
    return content_of(a_job(), a_verdict(), said=said, **{"answers": answers, **changed})


class Page(HTMLParser):
    """Collects tags, attributes and text, and that every tag is closed in order."""

    def __init__(self):
        super().__init__()
        self.open, self.tags, self.attributes, self.text = [], [], [], []

    def handle_starttag(self, tag, attrs):
        self.tags.append(tag)
        self.attributes += attrs
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag

    def handle_data(self, data):
        if not self.open or self.open[-1] != "style":
            self.text.append(data)


def page_of(html):
    page = Page()
    page.feed(html)
    page.close()
    assert page.open == []
    return page


def words(text):
    return " ".join(text.split())


SECTIONS = (
    "What was asked",
    "The verdict, airflow by airflow",
    "Why",
    "The most these ducts carry quietly",
    "What to change",
    "What was assumed, most influential first",
    "What to collect next",
    "Not answered",
    "Cautions",
    "Whose limits were used",
    "What was answered",
)


@pytest.mark.parametrize("section", SECTIONS)
def test_every_section_is_in_markdown_and_in_html(section):
    content = a_content()
    assert f"\n## {section}\n" in report_markdown(content)
    assert section in page_of(report_html(content)).text


@pytest.mark.parametrize(
    "told",
    [
        "1,200 CFM x 144 / (20 in x 8 in) = 1,080 fpm",
        "It stays so while the return opening is at most 21.25 in. wide.",
        "Fit a 20 x 20 filter grille in the hall",
        "brings the filter grille to 324 fpm",
        "Put turning vanes in the return elbow",
        "0.25 in. w.c. (0.15 to 0.38)",
        "bout 20x8",
        "about 8 in.",
        "told by phone",
        "none in this house",
        "actual CFM at the return side of the blower",
        "local code",
    ],
)
def test_both_formats_tell_it(told):
    content = a_content()
    assert told in words(" ".join(page_of(report_html(content)).text))
    plain = report_markdown(content).replace("\\", "")
    assert told in words(plain)


@pytest.mark.parametrize("typed", NASTY)
def test_typed_text_stays_text_in_html(typed):
    plain = set(page_of(report_html(a_content())).tags)
    content = a_content(answers=(TypedAnswer(typed, typed),), title=typed)
    html = report_html(content)
    page = page_of(html)
    assert set(page.tags) == plain
    assert not any(name.startswith("on") for name, _ in page.attributes)
    assert words(typed) in words(" ".join(page.text))


@pytest.mark.parametrize("typed", NASTY)
def test_a_piece_with_a_nasty_name_stays_text_in_both_formats(typed):
    job = a_job().with_fact("supply.trunks.0.name", Known(typed, How.MEASURED))
    content = content_of(job, a_verdict())
    page = page_of(report_html(content))
    assert "script" not in page.tags
    assert "img" not in page.tags
    assert words(typed) in words(" ".join(page.text))
    assert "<script" not in report_markdown(content)
    assert "<img" not in report_markdown(content)


@pytest.mark.parametrize("typed", NASTY)
def test_typed_text_makes_no_markup_in_markdown(typed):
    line = escaped(typed)
    assert "\n" not in line
    assert "<" not in line
    assert "://" not in line
    bare = re.sub(r"\\[\\`*_\[\]|~#+=-]", "", line)
    assert not re.search(r"[`*_\[\]|~]", bare)
    assert not re.match(r"#|[-+=] |\d+[.)] ", line)


def test_a_typed_table_cell_adds_no_column():
    job = a_job().with_fact("supply.trunks.0.name", Known("a | b | c", How.MEASURED))
    table = [line for line in report_markdown(content_of(job, a_verdict())).splitlines()
             if line.startswith("|") and "a \\|" in line]  # fmt: skip
    assert table
    assert all(len(re.findall(r"(?<!\\)\|", line)) in (4, 5) for line in table)


def test_the_page_asks_nothing_of_any_other_address():
    html = report_html(a_content())
    page = page_of(html)
    assert not {"script", "link", "iframe", "object", "embed", "img", "form"} & set(page.tags)
    assert not any(name in ("src", "href", "action", "srcset") for name, _ in page.attributes)
    assert "url(" not in html
    assert "@import" not in html
    assert "http" not in html.replace("http-equiv", "")


def test_the_page_fits_a_phone_a_dark_screen_and_paper():
    html = report_html(a_content())
    assert 'content="width=device-width, initial-scale=1"' in html
    assert "prefers-color-scheme:dark" in html
    assert "@media print" in html


def test_every_bar_has_its_figures_as_text():
    content = a_content()
    html = report_html(content)
    bars = [
        reason.bar for mode in content.modes for reason in mode.reasons + mode.notes if reason.bar
    ]
    assert len(bars) == html.count('class="bar"')
    text = words(" ".join(page_of(html).text))
    for bar in bars:
        assert f"{bar.figure} recommended {bar.recommended} limit {bar.maximum}" in text
        assert 0.0 < bar.recommended_pct < bar.maximum_pct < bar.figure_pct <= 100.0


def test_what_only_explains_is_told_as_a_note():
    long_run = a_finding(
        check="effective_length", figure=560.0, unit="ft", recommended=500.0, maximum=None,
        status=FindingStatus.TIGHT, votes=False, formula="85 ft + 475 ft = 560 ft",
    )  # fmt: skip
    verdict = Verdict(modes={Mode.COOLING_HIGH: a_mode(findings=(a_finding(), long_run))})
    content = content_of(a_job(), verdict)
    (note,) = content.modes[0].notes
    assert note.status == "note"
    for text in (report_markdown(content), words(" ".join(page_of(report_html(content)).text))):
        assert "560 ft" in text
        assert "85 ft + 475 ft = 560 ft" in text


def test_reasons_that_an_earlier_airflow_has_too_are_told_once():
    modes = {one: a_mode(mode=one) for one in (Mode.COOLING_HIGH, Mode.HEAT_PUMP_HEATING)}
    content = content_of(a_job(), Verdict(modes=modes))
    for text in (report_markdown(content), words(" ".join(page_of(report_html(content)).text))):
        assert text.count("Loud: the rush is heard in the rooms") == 1
        assert text.count("For the same reasons as full cooling.") == 1


def test_a_bar_keeps_the_proportions_of_its_figures():
    # 1,080 and 900 fpm on one scale: the longer is 1,080 / 900 = 1.2 times the shorter.
    bar = a_content().modes[0].reasons[0].bar
    assert bar.figure_pct / bar.maximum_pct == pytest.approx(1.2, rel=1e-12)


def test_limits_turned_by_the_office_are_told_as_turned():
    office = turned(LIMITS, "supply_trunk_rigid.maximum_fpm", 1000.0, "our office, 2nd list")
    content = content_of(a_job(), a_verdict(), limits=office)
    told = "700 fpm recommended and 1,000 fpm the most instead of 700 fpm recommended and 900 fpm"
    for text in (report_markdown(content), words(" ".join(page_of(report_html(content)).text))):
        assert told in text
        assert "our office, 2nd list" in text
    assert told in json.loads(report_json(content))["limits_turned"][0]


class Schema(BaseModel):
    model_config = ConfigDict(strict=True, extra="allow", allow_inf_nan=False)


class TurnsAt(Schema):
    key: str
    value: float
    holds_while: str


class Finding(Schema):
    check: str
    part: str
    where: str
    figure: float
    unit: str
    recommended: float | None
    maximum: float | None
    ratio: float | None
    status: FindingStatus
    harm: str
    probability_over: float
    turns_at: TurnsAt | None
    rests_on: list[str]
    formula: str
    source: str


class ModeOut(Schema):
    status: ModeStatus
    confidence: float
    borderline: bool
    setting: str
    target_cfm: float
    delivered_cfm: float | None
    quiet_capacity_cfm: float | None
    changes: dict | None
    findings: list[Finding]


class Report(Schema):
    modes: dict[Mode, ModeOut]
    assumed: list[dict]
    collect_next: list[dict]
    remedies: list[dict]
    changes: dict | None
    doubts: list[dict]
    cautions: list[dict]
    booking: dict | None


def test_json_has_the_names_that_outside_programs_see():
    report = Report.model_validate_json(report_json(a_content()))
    cooling = report.modes[Mode.COOLING_HIGH]
    assert cooling.status is ModeStatus.WONT_CARRY
    assert cooling.target_cfm == 1200.0
    assert cooling.delivered_cfm == 1100.0
    assert cooling.findings[0].figure == 1080.0
    assert report.modes[Mode.HEAT_PUMP_HEATING].findings[0].turns_at.value == 21.3


def test_json_writes_numpy_floats_as_plain_floats_and_missing_limits_as_null():
    finding = a_finding(
        figure=np.float64(1080.0), spread=same(np.float64(1080.0)), ratio=None,
        recommended=np.float64("inf"), maximum=np.float64("inf"),
    )  # fmt: skip
    mode = a_mode(findings=(finding,), target_cfm=same(np.float64(1200.0)))
    verdict = Verdict(modes={Mode.COOLING_HIGH: mode})
    told = verdict_mapping(verdict, a_job())["modes"]["cooling_high"]
    assert json.loads(json.dumps(told, allow_nan=False)) == told
    assert type(told["target_cfm"]) is float
    assert told["findings"][0]["maximum"] is None


@pytest.mark.parametrize("job", [Job(), a_job()], ids=["nothing known", "some known"])
def test_a_judged_house_fits_the_same_schema_and_is_told_in_every_format(job):
    content = content_of(job, judge(job, samples=64))
    report = Report.model_validate_json(report_json(content))
    assert report.modes
    assert not re.search(r"\b(?:nan|inf|None)\b", report_markdown(content))
    page_of(report_html(content))


def test_json_refuses_a_figure_that_is_not_a_number():
    mode = a_mode(target_cfm=same(float("nan")), findings=())
    with pytest.raises((ValidationError, ValueError)):
        report_json(content_of(Job(), Verdict(modes={Mode.COOLING_HIGH: mode})))


def test_a_report_of_an_empty_job_says_that_nothing_can_be_judged():
    content = content_of(Job(), Verdict(modes={}))
    for text in (report_markdown(content), report_html(content)):
        assert "No airflow can be judged yet" in text
    assert json.loads(report_json(content))["modes"] == {}


def test_a_report_with_every_list_empty_has_no_empty_section():
    content = content_of(Job(), Verdict(modes={}))
    assert not re.search(r"## [^\n]+\n\n(?:##|---)", report_markdown(content))
    assert "<ul>\n</ul>" not in report_html(content)


def test_a_figure_at_a_start_is_no_numbered_item_and_stays_as_it_is():
    assert escaped("16.5 to 33.5 hours") == "16.5 to 33.5 hours"
    assert escaped("1. one") == "1\\. one"


def test_words_and_counts_are_not_said_to_be_measured():
    job = Job().with_facts(
        {
            "supply.trunks.0.material": Known("galvanized", How.MEASURED),
            "supply.trunks.0.count": Known(2.0, How.MEASURED),
            "supply.trunks.0.width_in": Known(20.0, How.MEASURED),
        }
    )
    hows = {one.key.rsplit(".", 1)[-1]: one.how for one in stated_facts(job)}
    assert hows == {"material": "seen on site", "count": "counted", "width_in": "measured"}


def test_a_typed_line_stands_under_what_was_asked_for():
    events = opened("old_runs").events
    told = {one.question: one.text for one in typed_answers(events)}
    assert told["New equipment"].startswith("3 ton single stage heat pump")
    assert not any("_" in question for question in told)


def test_a_change_that_ends_in_inches_keeps_its_full_stop():
    verdict = a_verdict()
    wider = replace(verdict.remedies[0], words="Fit a grille of 20 x 20 in.")
    changed = replace(verdict, remedies=(wider, *verdict.remedies[1:]))
    assert "20 x 20 in.:" in report_markdown(content_of(a_job(), changed))
