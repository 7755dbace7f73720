"""What the store refuses, in one sentence for a person."""

from pathlib import Path

__all__ = ["NoSuchJobError", "StaleJobError", "StoreError"]


class StoreError(Exception):
    """The store can't do what was asked; nothing of it was kept.

    Attributes:
        path: The store's file.
        problem: What is wrong and what to do, the rest of a sentence that begins with the path.
    """

    def __init__(self, path: Path, problem: str) -> None:
        """Keep the file and the problem apart; together they are one sentence."""
        self.path, self.problem = path, problem
        super().__init__(f"The store {path} {problem}")


class NoSuchJobError(StoreError):
    """The store holds no job of this id."""

    def __init__(self, path: Path, job_id: str) -> None:
        """Keep the id that was asked for."""
        self.job_id = job_id
        super().__init__(
            path, f"holds no job {job_id!r}; `trunktalk jobs` lists those that it holds."
        )


class StaleJobError(StoreError):
    """The job went on elsewhere since it was read.

    Attributes:
        job_id: The job.
        seen: How many events the writer knew of.
        held: How many events the store holds.
    """

    def __init__(self, path: Path, job_id: str, seen: int, held: int) -> None:
        """Keep what was known and what there is."""
        self.job_id, self.seen, self.held = job_id, seen, held
        super().__init__(
            path,
            f"already holds more of job {job_id}: it went on in another window. The last answer "
            f"here was not kept; open the job again with `trunktalk talk --job {job_id}`.",
        )
