"""What every test may rely on: no setting of the terminal it happens to run in."""

import pytest


@pytest.fixture(autouse=True)
def _no_terminal_settings(monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("NO_COLOR", "TEXTUAL_THEME", "TEXTUAL_ANIMATIONS", "TEXTUAL_COLOR_SYSTEM"):
        monkeypatch.delenv(name, raising=False)
