"""Set-up: made once, repaired if it was cut short, one sentence where it can't be done.

Each test sets up a small project of its own, built by a backend inside it, so that neither the
network nor a package index is needed.
"""

import ast
import os
import subprocess
import sys
from pathlib import Path
from textwrap import dedent

import pytest

SCRIPTS = Path(__file__).parents[1] / "scripts"
PROGRAMS = ("_setup.py", "run", "test", "bench")

BACKEND = """
import zipfile

def get_requires_for_build_editable(config_settings=None):
    return []

def build_editable(wheel_directory, config_settings=None, metadata_directory=None):
    name = "small-1.0-py3-none-any.whl"
    info = "small-1.0.dist-info/"
    files = {
        "small_entry.py": "import sys\\ndef main():\\n  print('ran', sys.argv[1:])\\n  return 3\\n",
        info + "METADATA": "Metadata-Version: 2.1\\nName: small\\nVersion: 1.0\\n",
        info + "WHEEL": "Wheel-Version: 1.0\\nRoot-Is-Purelib: true\\nTag: py3-none-any\\n",
        info + "entry_points.txt": "[console_scripts]\\ntrunktalk = small_entry:main\\n",
    }
    record = "".join(f"{path},,\\n" for path in [*files, info + "RECORD"])
    with zipfile.ZipFile(f"{wheel_directory}/{name}", "w") as wheel:
        for path, text in {**files, info + "RECORD": record}.items():
            wheel.writestr(path, text)
    return name
"""

PYPROJECT = """
[build-system]
requires = []
build-backend = "backend"
backend-path = ["."]

[project]
name = "small"
version = "1.0"
"""


@pytest.fixture
def project(tmp_path: Path) -> Path:
    folder = tmp_path / "a house with a space"
    (folder / "scripts").mkdir(parents=True)
    for name in PROGRAMS:
        program = folder / "scripts" / name
        program.write_bytes((SCRIPTS / name).read_bytes())
        program.chmod(0o755)
    (folder / "backend.py").write_text(BACKEND, encoding="utf-8")
    (folder / "pyproject.toml").write_text(PYPROJECT, encoding="utf-8")
    return folder


def start(
    project: Path, *arguments: str, program: str = "run", **variables: str
) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, str(project / "scripts" / program), *arguments],
        capture_output=True,
        text=True,
        encoding="utf-8",
        cwd=project.parent,
        env={**os.environ, **variables},
        timeout=120,
    )


def run_checks(project: Path) -> subprocess.CompletedProcess[str]:
    """Three steps with what the set-up made, the second of which fails."""
    made = project / ".venv" / "ready-run.stamp"
    (project / ".venv" / "ready-test.stamp").write_bytes(made.read_bytes())
    program = dedent("""
        import sys
        sys.path.insert(0, "scripts")
        import _setup
        sys.exit(_setup.check([("a", ["this"]), ("b", ["no_such_module"]), ("c", ["this"])]))
    """)
    return subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, cwd=project, timeout=60
    )


def test_the_first_start_sets_up_the_second_starts_at_once_and_what_broke_is_repaired(
    project: Path,
) -> None:
    half_made = project / ".venv"
    half_made.mkdir()
    (half_made / "pyvenv.cfg").write_text("home = /nowhere\n", encoding="utf-8")

    first = start(project, "talk", "two words", PYTHONPATH="/nowhere", PIP_USER="1")
    assert first.stdout == "ran ['talk', 'two words']\n"
    assert first.returncode == 3
    assert "Setting up Trunk Talk" in first.stderr
    assert (project / ".venv").is_dir()

    second = start(project)
    assert (second.returncode, second.stdout, second.stderr) == (3, "ran []\n", "")

    (project / "pyproject.toml").write_text(PYPROJECT + "# changed\n", encoding="utf-8")
    changed = start(project)
    assert changed.stdout == "ran []\n"
    assert "Setting up" in changed.stderr
    assert start(project).stderr == ""

    # an install that was killed: its mark is there, the program is half gone
    (project / ".venv" / "setup-unfinished").touch()
    for half in (project / ".venv").rglob("small_entry.py"):
        half.unlink()
    repaired = start(project)
    assert repaired.stdout == "ran []\n"
    assert "Setting up" in repaired.stderr
    assert start(project).stderr == ""

    checked = run_checks(project)
    assert checked.stdout.splitlines()[-4:] == ["---", "ok      a", "FAILED  b", "ok      c"]
    assert checked.returncode == 1


def test_without_a_network_one_sentence_says_what_to_do(project: Path) -> None:
    needy = PYPROJECT.replace("requires = []", 'requires = ["a-builder-that-is-nowhere"]')
    (project / "pyproject.toml").write_text(needy, encoding="utf-8")
    failed = start(
        project,
        PIP_INDEX_URL="http://127.0.0.1:9/simple",
        PIP_CONFIG_FILE=os.devnull,
        PIP_FIND_LINKS="",
        PIP_RETRIES="0",
    )
    assert failed.returncode == 1
    told = failed.stderr.splitlines()
    assert len(told) == 2, failed.stderr
    assert "connect to the network and start it again" in told[1]
    assert failed.stdout == ""
    assert not list((project / ".venv").glob("*.stamp"))


def test_an_install_that_fails_says_why_and_where_the_details_are(project: Path) -> None:
    (project / "backend.py").write_text("raise ImportError('no such builder')", encoding="utf-8")
    failed = start(project)
    assert failed.returncode == 1
    told = failed.stderr.splitlines()
    assert len(told) == 2, failed.stderr
    assert "can't be installed: no such builder (details in" in told[1]
    assert "no such builder" in (project / ".venv" / "setup.log").read_text(encoding="utf-8")


@pytest.mark.parametrize("name", PROGRAMS)
def test_every_program_parses_on_an_old_python(name: str) -> None:
    ast.parse((SCRIPTS / name).read_text(encoding="utf-8"), feature_version=(3, 6))


def test_an_old_python_gets_one_sentence() -> None:
    # The version is read through `sys` before anything else happens; here it is made to look old.
    old = dedent(f"""
        import sys
        sys.version_info = (3, 9, 1, "final", 0)
        sys.argv = ["scripts/run"]
        sys.path.insert(0, {str(SCRIPTS)!r})
        import _setup
    """)
    done = subprocess.run(
        [sys.executable, "-c", old], capture_output=True, text=True, encoding="utf-8"
    )
    assert done.returncode == 1
    assert done.stderr == (
        "Trunk Talk needs Python 3.11 or newer and this is Python 3.9: install a newer one and "
        "name it, as in `python3.11 scripts/run`.\n"
    )


@pytest.mark.parametrize("name", ["run", "test", "bench"])
@pytest.mark.skipif(os.name != "posix", reason="file modes are a Unix matter")
def test_the_programs_can_be_started(name: str) -> None:
    program = SCRIPTS / name
    assert os.access(program, os.X_OK)
    assert program.read_text(encoding="utf-8").startswith("#!/usr/bin/env python3\n")


def test_a_benchmark_that_is_not_there_is_told_with_those_that_are(project: Path) -> None:
    (project / "scripts" / "bench_engine.py").write_text("def main(): pass\n", encoding="utf-8")
    done = start(project, "speed", program="bench")
    assert done.returncode == 2
    assert done.stderr == "Name a benchmark: engine.\n"
