"""Calls the command line, inside this process and as a program of its own."""

import json
import subprocess
import sys
from typing import Any

from click.testing import CliRunner, Result

from intake.cli import main

FACTS = {
    "equipment.kind": "heat_pump",
    "equipment.cooling_tons": 3,
    "target.cooling_high_cfm": 1200,
    "supply.trunks": [{"shape": "rect", "width_in": 20, "height_in": 8, "material": "galvanized"}],
    "return.drops": [],
}
"""An invented house."""


def call(*arguments: str, typed: str | bytes = "") -> Result:
    return CliRunner().invoke(main, [str(one) for one in arguments], input=typed)


def refused(done: Result, status: int = 2) -> str:
    """The one sentence of a refusal."""
    assert done.exit_code == status, done.output
    assert done.stdout == ""
    assert len(done.stderr.strip().splitlines()) == 1, done.stderr
    assert "Traceback" not in done.stderr
    return done.stderr.strip()


def program(*arguments: str, **options: Any) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-m", "intake", *arguments],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        encoding="utf-8",
        **options,
    )


def judged(facts: object, *arguments: str) -> Result:
    typed = facts if isinstance(facts, str | bytes) else json.dumps(facts)
    return call("judge", "-", *arguments, typed=typed)
