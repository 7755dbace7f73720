"""The built wheel, in an environment that has nothing else of ours."""

import os
import subprocess
import sys
import sysconfig
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
BUILD = "import sys; from hatchling.build import build_wheel; print(build_wheel(sys.argv[1]))"


def call(*command: str, cwd: Path = ROOT) -> str:
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    done = subprocess.run(
        command, capture_output=True, text=True, encoding="utf-8", cwd=cwd, env=kept, timeout=120
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("wheel")
    return folder / call(sys.executable, "-c", BUILD, str(folder)).splitlines()[-1]


@pytest.fixture(scope="module")
def clean(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of programs of an environment with the wheel and the libraries it needs."""
    folder = tmp_path_factory.mktemp("clean")
    call(sys.executable, "-m", "venv", "--without-pip", str(folder))
    programs = folder / ("Scripts" if os.name == "nt" else "bin")
    python = programs / ("python.exe" if os.name == "nt" else "python")
    site = Path(call(str(python), "-c", "import site; print(site.getsitepackages()[-1])").strip())
    # the libraries of the environment that runs the tests; a .pth there is not followed, so the
    # editable project in it stays out of sight
    libraries = {sysconfig.get_path("purelib"), sysconfig.get_path("platlib")}
    (site / "libraries.pth").write_text("\n".join(sorted(libraries)) + "\n", encoding="utf-8")
    call(
        sys.executable, "-m", "pip", "--python", str(python), "install", "--quiet", "--no-deps",
        "--no-index", "--ignore-installed", "--disable-pip-version-check", str(wheel),
    )  # fmt: skip
    return programs


def test_every_file_of_the_packages_is_in_the_wheel_and_nothing_else(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as opened:
        inside = {name for name in opened.namelist() if ".dist-info/" not in name}
    ours = {
        path.relative_to(ROOT).as_posix()
        for package in ("engine", "intake")
        for path in (ROOT / package).rglob("*")
        if path.is_file() and "__pycache__" not in path.parts
    }
    assert inside == ours
    endings = {Path(name).suffix for name in inside}
    assert {".py", ".typed", ".tcss", ".html"} <= endings


def test_the_wheel_says_what_it_needs_and_under_which_licence(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as opened:
        (metadata,) = [n for n in opened.namelist() if n.endswith(".dist-info/METADATA")]
        text = opened.read(metadata).decode("utf-8")
        assert [n for n in opened.namelist() if n.endswith("licenses/LICENSE")]
    assert "Requires-Python: >=3.11" in text
    assert "Requires-Dist: textual==8.2.8" in text
    assert "License-Expression: MIT" in text


def test_the_installed_program_runs_from_the_wheel_alone(clean: Path, tmp_path: Path) -> None:
    where = "import engine, intake; print(engine.__file__); print(intake.__file__)"
    for place in call(str(clean / "python"), "-c", where, cwd=tmp_path).splitlines():
        assert Path(place).is_relative_to(clean.parent)
    told = call(str(clean / "trunktalk"), "--help", cwd=tmp_path)
    assert told.startswith("Usage: trunktalk")
    facts = call(str(clean / "trunktalk"), "facts", "elevation", cwd=tmp_path)
    assert "site.elevation_ft" in facts


def test_the_installed_packages_bring_their_data_and_their_types(
    clean: Path, tmp_path: Path
) -> None:
    look = (
        "from importlib.resources import files\n"
        "print(files('intake.screen').joinpath('chat.tcss').read_text('utf-8').count('#answer'))\n"
        "print(files('intake.report').joinpath('report.html').is_file())\n"
        "print(files('engine').joinpath('py.typed').is_file())\n"
        "print(files('intake').joinpath('py.typed').is_file())\n"
    )
    told = call(str(clean / "python"), "-c", look, cwd=tmp_path).split()
    assert int(told[0]) >= 1
    assert told[1:] == ["True", "True", "True"]
