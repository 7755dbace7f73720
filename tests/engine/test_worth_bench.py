"""The bench of orders of asking runs and counts every order."""

import pytest

from scripts.bench_interview import main


def test_the_bench_tells_every_order_for_both_technicians(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert main(["--houses", "1", "--samples", "128", "--seed", "2"]) == 0
    told = capsys.readouterr().out
    for order in ("worth of asking", "the bank's order", "expert's dozen", "random order"):
        assert told.count(f"\n{order}") == 2
    assert "exact answers" in told
    assert "honest answers" in told
