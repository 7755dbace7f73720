"""The bench of orders of asking runs, counts every order, and goes on where it stopped."""

from pathlib import Path

import pytest

from scripts.bench_interview import main


def test_the_bench_tells_every_order_for_every_technician_and_goes_on_where_it_stopped(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    kept = tmp_path / "kept.jsonl"
    asked = ["--houses", "1", "--samples", "128", "--seed", "2", "--workers", "1",
             "--keep", str(kept), "--without-steps"]  # fmt: skip
    assert main(asked) == 0
    told = capsys.readouterr().out
    for order in ("worth of asking", "random order"):
        assert told.count(f"\n{order}  ") >= 4
    for order in ("the bank's order", "expert's dozen"):
        assert told.count(f"\n{order}  ") == 3
    for words in ("exact technician", "honest technician", "stock shifted", "dispatcher"):
        assert words in told
    lines = kept.read_text()
    assert main(asked) == 0
    assert kept.read_text() == lines
    again = capsys.readouterr().out
    assert again.rsplit("\n", 2)[0].split("\n")[:-1] == told.rsplit("\n", 2)[0].split("\n")[:-1]


def test_a_step_is_told_beside_one_judge() -> None:
    from scripts.simulated_steps import step_rows

    rows = step_rows(samples=64, rounds=1)
    assert len(rows) == 5
    assert all("at most 2.5" in row for row in rows[2:])
