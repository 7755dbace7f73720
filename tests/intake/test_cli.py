"""The command line: what each command says, and one sentence with a status where it can't."""

import io
import json
import os
import signal
from collections.abc import Sequence
from pathlib import Path

import pytest
from click.testing import Result
from support.commands import call, program, refused

from intake.cli import main
from intake.commands import talking
from intake.keeping.store import Store


@pytest.fixture
def store(tmp_path: Path) -> Path:
    return tmp_path / "jobs.db"


def talk(store: Path, lines: Sequence[str], *arguments: str) -> Result:
    done = call("talk", "--plain", "--store", str(store), *arguments, typed="\n".join(lines) + "\n")
    assert done.exit_code == 0, done.output
    return done


def test_the_help_names_every_command_and_each_has_its_own_help() -> None:
    told = call("--help").stdout
    for name, command in main.commands.items():
        assert f"\n  {name} " in told
        own = call(name, "--help")
        assert own.exit_code == 0
        assert (command.help or "").split(".")[0].split()[0] in own.stdout


def test_without_a_command_it_begins_to_talk(store: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("intake.keeping.place.default_store", lambda: store)
    done = call(typed="")
    assert done.exit_code == 0
    assert "Question: " in done.stdout
    assert done.stdout.rstrip().endswith("nothing is kept.")


def test_the_options_of_a_talk_need_no_command(store: Path) -> None:
    done = call("--voice", "technician", "--store", store, "--jsonl", typed="")
    assert done.exit_code == 0, done.output
    assert json.loads(done.stdout.splitlines()[0])["ask"]
    assert "No such option '--wrong'" in call("--wrong").stderr


def test_a_talk_is_kept_listed_resumed_and_reported(store: Path) -> None:
    first = talk(store, ["house", "no, all clear", "3 ton heat pump"], "--title", "Red door")
    assert "Kept as job 1. Go on with: trunktalk talk --job 1 --store" in first.stdout
    (listed,) = json.loads(call("jobs", "--store", store, "--format", "json").stdout)
    assert listed["id"] == "1"
    assert listed["title"] == "Red door"
    assert listed["voice"] == "technician"
    assert listed["answers"] == 2
    assert "technician, 2 answers, open  Red door" in call("jobs", "--store", store).stdout
    resumed = talk(store, ["single stage"], "--job", "#1")
    assert "heat pump" in resumed.stdout.splitlines()[0]
    with Store(store) as opened:
        assert len(opened.events("1")) > 3
    for form in ("markdown", "html", "json"):
        report = call("report", "1", "--store", store, "--format", form)
        assert report.exit_code == 0, report.output
        assert "Red door" in report.stdout


def test_the_way_to_go_on_is_told_as_the_program_was_started(
    store: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("TRUNK_TALK_STARTED_AS", "./scripts/run")
    done = talk(store, ["no, all clear"], "--voice", "technician")
    assert "Go on with: ./scripts/run talk --job 1" in done.stdout


def test_a_report_goes_into_the_file_that_is_named(store: Path, tmp_path: Path) -> None:
    talk(store, ["house", "no, all clear", "3 ton heat pump"])
    out = tmp_path / "report.md"
    done = call("report", "1", "--store", store, "--out", out)
    assert (done.exit_code, done.stdout) == (0, "")
    assert out.read_text(encoding="utf-8").startswith("#")
    told = refused(call("report", "1", "--store", store, "--out", tmp_path / "no" / "x.md"), 1)
    assert "can't be written" in told


def test_a_save_in_a_talk_writes_the_report_where_one_stands(
    store: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    done = talk(store, ["house", "no, all clear", "3 ton heat pump", "save"])
    assert str(tmp_path / "trunk-talk-1.html") in done.stdout
    assert "<html" in (tmp_path / "trunk-talk-1.html").read_text(encoding="utf-8")


def test_a_job_that_is_not_there_is_told(store: Path) -> None:
    assert "No job is kept" in refused(call("report", "4", "--store", store))
    Store(store).close()
    assert "holds no job '4'" in refused(call("report", "4", "--store", store))
    assert "holds no job '4'" in refused(call("talk", "--plain", "--job", "4", "--store", store))


def test_listing_jobs_makes_no_file(store: Path) -> None:
    assert "No job is kept" in call("jobs", "--store", store).stdout
    assert not store.exists()


def test_a_store_that_is_none_is_told_with_status_one(tmp_path: Path) -> None:
    path = tmp_path / "notes.txt"
    path.write_text("twenty by eight\n" * 99)
    for command in (["jobs"], ["talk", "--plain"], ["report", "1"]):
        told = refused(call(*command, "--store", str(path)), 1)
        assert "is no Trunk Talk store" in told


def test_two_ways_to_talk_at_once_are_refused() -> None:
    done = call("talk", "--plain", "--jsonl")
    assert done.exit_code == 2
    assert "choose one" in done.stderr


def test_a_voice_that_is_given_is_not_asked_for(store: Path) -> None:
    done = talk(store, [], "--voice", "dispatcher")
    assert "on the phone" not in done.stdout
    (listed,) = json.loads(call("jobs", "--store", store, "--format", "json").stdout)
    assert listed["voice"] == "dispatcher"


def test_json_lines_carry_question_and_verdict(store: Path) -> None:
    typed = '{"answer": "house"}\nno, all clear\n{"answer": "3 ton heat pump"}\n{"answer": 3}\n'
    done = call("talk", "--jsonl", "--store", store, typed=typed)
    assert done.exit_code == 0
    said = [json.loads(line) for line in done.stdout.splitlines()]
    assert [set(one) >= {"say", "ask", "verdict"} for one in said] == [True] * 4 + [False] * 2
    assert "error" in said[4]
    assert said[0]["ask"]["choices"] == ["technician", "dispatcher"]
    modes = said[3]["verdict"]["modes"]
    assert modes
    assert {"status", "confidence", "findings"} <= set(next(iter(modes.values())))
    assert "Kept as job 1" in said[5]["kept"]


def test_json_lines_of_a_dispatcher_carry_the_booking(store: Path) -> None:
    done = call("talk", "--jsonl", "--voice", "dispatcher", "--store", store, typed="no gas\n")
    last_turn = json.loads(done.stdout.splitlines()[-2])
    assert last_turn["verdict"] is None
    assert last_turn["booking"]["outcome"]


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="a kill that can't be caught")
def test_a_talk_that_is_killed_loses_no_answer(store: Path) -> None:
    running = program("talk", "--plain", "--voice", "technician", "--store", str(store))
    assert running.stdin is not None
    assert running.stdout is not None
    answers = ["no, all clear", "3 ton heat pump", "single stage"]
    asked = 0
    for answer in answers:
        for line in running.stdout:
            if line.startswith("Question: "):
                asked += 1
                break
        running.stdin.write(answer + "\n")
        running.stdin.flush()
    for line in running.stdout:
        if line.startswith("Question: "):
            asked += 1
            break
    assert asked == 4
    running.kill()
    running.communicate(timeout=30)
    assert running.returncode == -signal.SIGKILL
    with Store(store) as opened:
        kept = [getattr(event, "text", "") for event in opened.events("1")]
    assert [text for text in kept if text] == answers


def test_two_windows_on_one_job_lose_nothing_and_the_second_is_told(store: Path) -> None:
    talk(store, ["no, all clear"], "--voice", "technician")
    windows = [program("talk", "--plain", "--job", "1", "--store", str(store)) for _ in range(2)]
    try:
        for window in windows:
            assert window.stdout is not None
            while not window.stdout.readline().startswith("Question: "):
                pass
        first, _ = windows[0].communicate("3 ton heat pump\n", timeout=60)
        _, told = windows[1].communicate("4 ton furnace\n", timeout=60)
    finally:
        for window in windows:
            window.kill()
    assert "Kept as job 1" in first
    assert windows[1].returncode == 1
    assert "went on in another window" in told
    assert "Traceback" not in told
    with Store(store) as opened:
        kept = [getattr(event, "text", "") for event in opened.events("1")]
    assert "3 ton heat pump" in kept
    assert "4 ton furnace" not in kept


def test_the_mouth_is_plain_by_itself_where_nothing_can_be_drawn(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    class Stream(io.StringIO):
        def __init__(self, terminal: bool) -> None:
            super().__init__()
            self.terminal = terminal

        def isatty(self) -> bool:
            return self.terminal

    def mouth(into: bool, out: bool, term: str, *, plain: bool = False, jsonl: bool = False) -> str:
        monkeypatch.setattr("sys.stdin", Stream(into))
        monkeypatch.setattr("sys.stdout", Stream(out))
        monkeypatch.setenv("TERM", term)
        return talking.mouth_for(plain=plain, jsonl=jsonl)

    assert mouth(True, True, "xterm") == "screen"
    assert mouth(False, True, "xterm") == "plain"
    assert mouth(True, False, "xterm") == "plain"
    assert mouth(True, True, "dumb") == "plain"
    assert mouth(True, True, "xterm", plain=True) == "plain"
    assert mouth(True, True, "xterm", jsonl=True) == "jsonl"


def test_the_demo_plays_to_its_end(tmp_path: Path) -> None:
    done = call("demo")
    assert done.exit_code == 0, done.output
    out = tmp_path / "demo.html"
    assert call("demo", "--out", str(out)).exit_code == 0
    assert "<html" in out.read_text(encoding="utf-8")


def test_a_reader_that_stops_reading_is_no_error() -> None:
    running = program("facts")
    assert running.stdout is not None
    running.stdout.readline()
    running.stdout.close()
    assert running.stderr is not None
    assert "Traceback" not in running.stderr.read()
    running.stderr.close()
    assert running.stdin is not None
    running.stdin.close()
    assert running.wait(timeout=30) in (0, 1)


def test_pipes_are_utf8_whatever_the_locale_says(store: Path) -> None:
    surroundings = {**os.environ, "PYTHONUTF8": "0", "PYTHONIOENCODING": "ascii", "LC_ALL": "C"}
    running = program("talk", "--plain", "--store", str(store), env=surroundings)
    out, told = running.communicate("house ½ 20″\n\udc80".encode("utf-8", "replace").decode())
    assert running.returncode == 0, told
    assert "You: house ½ 20″" in out


def test_an_interrupt_ends_a_plain_talk_with_the_way_to_go_on(store: Path) -> None:
    running = program("talk", "--plain", "--voice", "technician", "--store", str(store))
    assert running.stdout is not None
    for line in running.stdout:
        if line.startswith("Question: "):
            break
    running.send_signal(signal.SIGINT)
    out, told = running.communicate(timeout=30)
    assert running.returncode == 130
    assert "Kept as job 1" in out
    assert "Traceback" not in told
