"""The store: nothing said is lost, nothing kept is changed, and every refusal is a sentence."""

import os
import sqlite3
import stat
import subprocess
import sys
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import pytest

from engine.job.belief import How, Known
from intake.interview.events import Answered, Event, Finished, FlagRaised, Started, Undone, Unsaid
from intake.interview.turns import Voice
from intake.keeping.errors import NoSuchJobError, StaleJobError, StoreError
from intake.keeping.store import Sitting, Store
from intake.keeping.summary import JobState

NOON = datetime(2031, 5, 6, 12, 0, tzinfo=UTC)
ANSWER = Answered(
    question="trunk",
    text='20 x 8 [/] "inside" ½ \u2033',
    beliefs={"supply.trunks.0.width_in": Known(20.0, How.MEASURED)},
    lengths={"supply.trunks": 1},
)


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store(tmp_path / "jobs.db", clock=lambda: NOON) as opened:
        yield opened


def raw(path: Path, sql: str) -> list[tuple[object, ...]]:
    connection = sqlite3.connect(path)
    try:
        with connection:
            return connection.execute(sql).fetchall()
    finally:
        connection.close()


def test_what_was_appended_comes_back_equal_and_in_order(store: Store) -> None:
    kept: list[Event] = [Started(voice=Voice.TECHNICIAN), ANSWER, Undone(), Finished()]
    job_id = store.new_job()
    for event in kept:
        store.append(job_id, event)
    assert list(store.events(job_id)) == kept


def test_what_was_appended_is_there_for_another_connection_at_once(store: Store) -> None:
    job_id = store.new_job()
    store.append(job_id, ANSWER)
    with Store(store.path) as other:
        assert other.events(job_id) == (ANSWER,)


def test_job_ids_are_short_and_count_up(store: Store) -> None:
    assert [store.new_job() for _ in range(11)] == [str(n) for n in range(1, 12)]


def test_each_event_has_the_time_that_was_handed_in_as_utc(tmp_path: Path) -> None:
    west = timezone(timedelta(hours=-7))
    with Store(tmp_path / "jobs.db", clock=lambda: NOON.astimezone(west)) as store:
        store.append(store.new_job(), ANSWER)
    assert raw(tmp_path / "jobs.db", "select time from events") == [("2031-05-06T12:00:00+00:00",)]


def test_a_job_that_is_not_there_is_told(store: Store) -> None:
    with pytest.raises(NoSuchJobError, match=r"holds no job '77'; `trunktalk jobs`"):
        store.events("77")
    with pytest.raises(NoSuchJobError):
        store.append("77", ANSWER)


@pytest.mark.parametrize("sql", ["update events set json = '{}'", "delete from events"])
def test_a_kept_event_can_neither_be_changed_nor_removed(store: Store, sql: str) -> None:
    job_id = store.new_job()
    store.append(job_id, ANSWER)
    with pytest.raises(sqlite3.IntegrityError, match="never changed"):
        raw(store.path, sql)
    assert store.events(job_id) == (ANSWER,)


def test_an_event_without_a_job_is_refused_by_the_file_itself(store: Store) -> None:
    with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
        store._db.execute("insert into events values ('9', 1, '2031', '{}')")


@pytest.mark.skipif(os.name != "posix", reason="file modes are a Unix matter")
def test_only_its_owner_can_read_the_file(store: Store) -> None:
    store.append(store.new_job(), ANSWER)
    modes = {path.name: stat.S_IMODE(path.stat().st_mode) for path in store.path.parent.iterdir()}
    assert modes["jobs.db"] == 0o600
    assert set(modes.values()) == {0o600}, modes


def test_a_missing_folder_is_made(tmp_path: Path) -> None:
    with Store(tmp_path / "new" / "folder" / "jobs.db") as store:
        assert store.jobs() == ()


def test_a_stale_writer_is_told_and_nothing_of_it_is_kept(store: Store) -> None:
    job_id = store.new_job()
    here, there = Sitting(store, job_id), Sitting(store, job_id)
    there.record(ANSWER)
    with pytest.raises(StaleJobError, match="went on in another window") as refusal:
        here.record(Finished())
    assert (refusal.value.seen, refusal.value.held) == (0, 1)
    assert f"trunktalk talk --job {job_id}" in str(refusal.value)
    assert store.events(job_id) == (ANSWER,)
    there.record(Finished())
    assert store.events(job_id) == (ANSWER, Finished())


def test_a_job_is_made_with_its_first_event_and_not_before(store: Store) -> None:
    sitting = Sitting(store, title="the house with the red door")
    assert store.jobs() == ()
    sitting.record(ANSWER)
    sitting.record(Finished())
    (job,) = store.jobs()
    assert job.id == sitting.job_id
    assert job.title == "the house with the red door"
    assert store.events(job.id) == (ANSWER, Finished())


def test_a_summary_tells_voice_answers_and_state(store: Store) -> None:
    job_id = store.new_job()
    unclear = FlagRaised(kind="gas", state="unclear", text="smelled gas once")
    present = FlagRaised(kind="gas", state="present", text="smells of gas")
    seen = []
    for event in (Started(voice=Voice.DISPATCHER), ANSWER, ANSWER, Undone(), Finished(), ANSWER,
                  unclear, present):  # fmt: skip
        store.append(job_id, event)
        (job,) = store.jobs()
        seen.append((job.voice, job.answers, job.state))
    assert seen == [
        ("dispatcher", 0, JobState.OPEN),
        ("dispatcher", 1, JobState.OPEN),
        ("dispatcher", 2, JobState.OPEN),
        ("dispatcher", 1, JobState.OPEN),
        ("dispatcher", 1, JobState.FINISHED),
        ("dispatcher", 2, JobState.OPEN),
        ("dispatcher", 2, JobState.OPEN),
        ("dispatcher", 2, JobState.STOPPED),
    ]


def test_a_job_without_a_name_is_called_by_what_goes_in(store: Store) -> None:
    job_id = store.new_job()
    titles = []
    for event in (
        Answered(question="safety", text="all clear"),
        Answered(
            question="new_equipment",
            text="a three ton heat pump, and a good deal more than fits in a line",
            beliefs={"equipment.cooling_tons": Known(3.0, How.PLATE)},
        ),
        Undone(),
    ):
        store.append(job_id, event)
        titles.append(store.jobs()[0].title)
    assert titles == ["all clear", "a three ton heat pump, and a good dea...", "all clear"]


def test_the_job_last_spoken_in_is_listed_first(tmp_path: Path) -> None:
    hours = iter(range(20))
    with Store(tmp_path / "jobs.db", clock=lambda: NOON + timedelta(hours=next(hours))) as store:
        old, new = store.new_job(), store.new_job()
        store.append(new, ANSWER)
        store.append(old, ANSWER)
        assert [job.id for job in store.jobs()] == [old, new]


def test_a_file_that_is_no_database_is_told_and_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "notes.txt"
    path.write_text("20x8 metal, about twelve feet of it\n" * 40)
    before = path.read_bytes()
    with pytest.raises(StoreError, match="is no Trunk Talk store"):
        Store(path)
    assert path.read_bytes() == before


def test_a_database_of_another_program_is_told_and_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "other.db"
    raw(path, "create table recipes (name text)")
    before = path.read_bytes()
    with pytest.raises(StoreError, match="another program"):
        Store(path)
    assert path.read_bytes() == before


def test_a_store_of_a_newer_version_is_told(tmp_path: Path) -> None:
    path = tmp_path / "jobs.db"
    Store(path).close()
    raw(
        path,
        "insert into _sqlite_migrations (migration_set, name, applied_at) "
        "values ('jobs', 'photos', '2040')",
    )
    with pytest.raises(StoreError, match="newer Trunk Talk"):
        Store(path)


def test_an_event_of_a_newer_version_is_told_by_job_and_number(store: Store) -> None:
    job_id = store.new_job()
    store.append(job_id, ANSWER)
    raw(
        store.path, f"""insert into events values ('{job_id}', 2, '2040-01-01', '{{"type":"x"}}')"""
    )
    with pytest.raises(StoreError, match=f"job {job_id}, number 2"):
        store.events(job_id)


def test_a_path_through_a_file_is_told(tmp_path: Path) -> None:
    (tmp_path / "file").touch()
    with pytest.raises(StoreError, match=r"can't be opened.*--store"):
        Store(tmp_path / "file" / "jobs.db")


def test_a_folder_in_place_of_a_file_is_told(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="--store"):
        Store(tmp_path)


def test_a_full_disk_is_told_and_the_log_stays_whole(store: Store) -> None:
    job_id = store.new_job()
    store.append(job_id, ANSWER)
    (pages,) = store._db.execute("pragma page_count").fetchone()
    store._db.execute(f"pragma max_page_count = {pages}")
    long = Unsaid(question="trunk", text="x" * 100_000)
    with pytest.raises(StoreError, match="the disk is full"):
        store.append(job_id, long)
    assert store.events(job_id) == (ANSWER,)
    store._db.execute("pragma max_page_count = 1000000")
    store.append(job_id, long)
    assert store.events(job_id) == (ANSWER, long)


WRITER = """
import sys
from pathlib import Path
from intake.interview.events import Unsaid
from intake.keeping.store import Store
with Store(Path(sys.argv[1])) as store:
    for n in range(int(sys.argv[3])):
        store.append(sys.argv[2], Unsaid(question="q", text=str(n)))
"""


def test_processes_that_write_into_one_job_lose_nothing(tmp_path: Path) -> None:
    path = tmp_path / "jobs.db"
    with Store(path) as store:
        job_id = store.new_job()
    writers = [
        subprocess.Popen([sys.executable, "-c", WRITER, str(path), job_id, "60"]) for _ in range(3)
    ]
    assert [writer.wait(timeout=60) for writer in writers] == [0, 0, 0]
    with Store(path) as store:
        texts = [event.text for event in store.events(job_id) if isinstance(event, Unsaid)]
    assert sorted(texts) == sorted([str(n) for n in range(60)] * 3)


def test_processes_that_open_a_new_file_at_once_all_succeed(tmp_path: Path) -> None:
    path = tmp_path / "jobs.db"
    openers = [
        subprocess.Popen([sys.executable, "-c", WRITER, str(path), "1", "0"]) for _ in range(4)
    ]
    assert [opener.wait(timeout=60) for opener in openers] == [0, 0, 0, 0]


def test_every_commit_waits_for_the_disk(store: Store) -> None:
    # SQLite documentation, "PRAGMA synchronous": 2 is FULL, which in WAL mode syncs the log
    # after each commit (how: read).
    assert store._db.execute("pragma synchronous").fetchone() == (2,)
    assert store._db.journal_mode == "wal"
