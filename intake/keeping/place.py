"""Where the jobs are kept if nobody names a file."""

from pathlib import Path

__all__ = ["default_store"]


def default_store() -> Path:
    """The store in this person's data folder; nothing is created."""
    from platformdirs import user_data_path  # only needed without --store

    return user_data_path("trunk-talk", appauthor=False) / "jobs.db"
