"""What every test may rely on: no setting of its terminal, and the same examples in every run.

`HYPOTHESIS_PROFILE=searching` looks for new examples instead; what it finds becomes a test.
"""

import os

import pytest
from hypothesis import settings

settings.register_profile("steady", derandomize=True)
settings.register_profile("searching", max_examples=400)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "steady"))


@pytest.fixture(autouse=True)
def _no_terminal_settings(monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("NO_COLOR", "TEXTUAL_THEME", "TEXTUAL_ANIMATIONS", "TEXTUAL_COLOR_SYSTEM"):
        monkeypatch.delenv(name, raising=False)
