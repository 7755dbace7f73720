"""`trunktalk jobs`: what is kept."""

import json
from pathlib import Path

from intake.commands.told import started_as
from intake.keeping.place import default_store
from intake.keeping.store import Store
from intake.keeping.summary import JobSummary

__all__ = ["jobs_json", "jobs_text"]


def jobs_text(store: Path | None) -> str:
    """One line a job, the one last spoken in first.

    Raises:
        StoreError: The store can't be read.
    """
    path = store or default_store()
    jobs = _jobs(path)
    if not jobs:
        return f"No job is kept in {path} yet; `{started_as()} talk` begins one.\n"
    widest = max(len(job.id) for job in jobs)
    return "".join(_row(job, widest) for job in jobs)


def jobs_json(store: Path | None) -> str:
    """The same as a JSON list of objects.

    Raises:
        StoreError: The store can't be read.
    """
    rows = [
        {
            "id": job.id,
            "title": job.title,
            "when": job.when.isoformat(),
            "voice": job.voice,
            "answers": job.answers,
            "state": job.state.value,
        }
        for job in _jobs(store or default_store())
    ]
    return json.dumps(rows, indent=2) + "\n"


def _jobs(path: Path) -> tuple[JobSummary, ...]:
    if not path.exists():
        return ()  # looking makes no file
    with Store(path) as store:
        return store.jobs()


def _row(job: JobSummary, widest: int) -> str:
    when = job.when.astimezone().strftime("%Y-%m-%d %H:%M")
    answers = "1 answer" if job.answers == 1 else f"{job.answers} answers"
    voice = job.voice or "nobody yet"
    return (
        f"{job.id:>{widest}}  {when}  {voice}, {answers}, {job.state.value}  {job.title}".rstrip()
        + "\n"
    )
