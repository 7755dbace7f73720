"""Makes the project's own environment and runs things in it; knows nothing of what they do.

Standard library only. Everything here must parse on Python 3.6, so that an old interpreter
gets a sentence instead of a syntax error.
"""

import contextlib
import hashlib
import os
import re
import sqlite3
import subprocess
import sys
from pathlib import Path

NEEDED = (3, 11)
THIS = tuple(sys.version_info[:2])

if THIS < NEEDED:
    sys.exit(
        "Trunk Talk needs Python 3.11 or newer and this is Python {}.{}: install a newer one and "
        "name it, as in `python3.11 {}`.".format(*THIS, sys.argv[0])
    )

PROJECT = Path(__file__).resolve().parent.parent
SCRIPTS = PROJECT / "scripts"
VENV = PROJECT / ".venv"
BIN = VENV / ("Scripts" if os.name == "nt" else "bin")
SUFFIX = ".exe" if os.name == "nt" else ""
PYTHON = BIN / ("python" + SUFFIX)
LOG = VENV / "setup.log"
UNFINISHED = VENV / "setup-unfinished"
LOCK = PROJECT / ".venv.lock"

WAIT_FOR_ANOTHER_SETUP_S = 1800.0
NETWORK_WORDS = (
    "Failed to establish a new connection",
    "NameResolutionError",
    "name resolution",
    "getaddrinfo failed",
    "Max retries exceeded",
    "ConnectionError",
    "ConnectTimeout",
    "Connection refused",
    "Network is unreachable",
    "Read timed out",
    "ProxyError",
    "(from versions: none)",  # what pip says last if no index answered
)
REASON = re.compile(r"^[ │]*\w*error: +(?!Exception:)(\S.*)$", re.IGNORECASE | re.MULTILINE)
"""A line of pip's, or of what it called, that says what went wrong."""


class SetupError(Exception):
    """The environment can't be made; the text is one sentence for a person."""


def environment(extra: str) -> None:
    """Make sure that the environment stands and holds the project with an extra ("" or "test").

    Raises:
        SetupError: It can't be made.
    """
    if is_ready(extra):
        return
    try:
        with _alone():
            if not is_ready(extra):  # another start may have made it meanwhile
                _make(extra)
    except OSError as error:
        raise SetupError(
            f"Trunk Talk can't set itself up in {VENV}: {error.strerror or error}; it needs a "
            "folder that you may write to."
        ) from error


def is_ready(extra: str) -> bool:
    """Whether a finished set-up for this pyproject.toml, Python and folder is in place."""
    if UNFINISHED.exists() or not PYTHON.exists():
        return False
    try:
        return stamp_file(extra).read_text(encoding="utf-8") == stamp()
    except (OSError, UnicodeDecodeError):
        return False


def stamp_file(extra: str) -> Path:
    """Where the stamp of a finished set-up with this extra is kept."""
    return VENV / ("ready-{}.stamp".format(extra or "run"))


def stamp() -> str:
    """What a finished set-up depends on: pyproject.toml, the Python version, the folder."""
    digest = hashlib.sha256((PROJECT / "pyproject.toml").read_bytes()).hexdigest()
    return f"{digest}\n{_version()}\n{PROJECT}\n"


def run(extra: str, command: list, *arguments: str) -> int:
    """Set up, then become `command` (a program of the environment and its first arguments).

    Returns:
        The exit status, where the system can't replace a running program; else never.
    """
    try:
        environment(extra)
    except SetupError as error:
        return _told(error)
    return _become([str(BIN / (command[0] + SUFFIX)), *command[1:], *arguments])


def check(steps: list) -> int:
    """Set up with the test extra, run every step, tell how each ended.

    Args:
        steps: Pairs of a name and the arguments of `python -m`.

    Returns:
        0 if every step ended with 0, else 1.
    """
    try:
        environment("test")
    except SetupError as error:
        return _told(error)
    ended = []
    for name, arguments in steps:
        print(f"--- {name}", flush=True)
        status = subprocess.call([str(PYTHON), "-m", *arguments], cwd=str(PROJECT), env=_clean())
        ended.append((name, status))
    print("---")
    for name, status in ended:
        print("{:<7} {}".format("ok" if status == 0 else "FAILED", name))
    sys.stdout.flush()
    return 0 if all(status == 0 for _, status in ended) else 1


def _told(error: SetupError) -> int:
    print(error, file=sys.stderr)
    return 1


@contextlib.contextmanager
def _alone():
    """Hold the set-up lock; the system lets go of it however this process ends."""
    lock = sqlite3.connect(str(LOCK), timeout=WAIT_FOR_ANOTHER_SETUP_S, isolation_level=None)
    try:
        lock.execute("begin exclusive")
        yield
    except sqlite3.Error as error:
        raise SetupError(
            f"Trunk Talk can't set itself up: {LOCK} can't be locked ({error}); wait for the other "
            "start to end, or delete that file if there is none."
        ) from error
    finally:
        lock.close()


def _make(extra: str) -> None:
    print(
        "Setting up Trunk Talk in .venv: once, a minute or two, needs the network ...",
        file=sys.stderr,
        flush=True,
    )
    if not _is_sound():
        _create()
    UNFINISHED.write_text("An install began and has not ended.\n", encoding="utf-8")
    for done in ("", "test"):
        with contextlib.suppress(FileNotFoundError):
            stamp_file(done).unlink()
    what = str(PROJECT) + (f"[{extra}]" if extra else "")
    arguments = ["install", "--disable-pip-version-check", "--no-input", "--editable", what]
    if _logged([str(PYTHON), "-m", "pip", *arguments]) != 0:
        raise SetupError(_why_not_installed())
    for done in {"", extra}:
        stamp_file(done).write_text(stamp(), encoding="utf-8")
    UNFINISHED.unlink()
    print("Ready.", file=sys.stderr, flush=True)


def _is_sound() -> bool:
    """Whether the environment can be installed into as it is: finished, same Python, pip works."""
    if UNFINISHED.exists() or not PYTHON.exists():
        return False
    probe = "import pip, sys; print('{}.{}'.format(*sys.version_info[:2]))"
    try:
        found = subprocess.run(
            [str(PYTHON), "-c", probe],
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            env=_clean(),
        )
    except OSError:
        return False
    return found.returncode == 0 and found.stdout.decode("ascii", "replace").strip() == _version()


def _create() -> None:
    outside = getattr(sys, "_base_executable", None) or sys.executable
    made = subprocess.run(
        [outside, "-m", "venv", "--clear", str(VENV)],
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        env=_clean(),
    )
    if made.returncode != 0:
        lines = made.stdout.decode("utf-8", "replace").strip().splitlines() or ["no reason given"]
        raise SetupError(
            f"Trunk Talk can't make its environment with {outside}: {lines[-1].strip()} (on Debian "
            "and Ubuntu the package python3-venv is needed)."
        )


def _logged(command: list) -> int:
    with LOG.open("wb") as log:
        return subprocess.call(
            command,
            cwd=str(PROJECT),
            env=_clean(),
            stdin=subprocess.DEVNULL,
            stdout=log,
            stderr=subprocess.STDOUT,
        )


def _why_not_installed() -> str:
    said = LOG.read_text(encoding="utf-8", errors="replace")
    if any(words in said for words in NETWORK_WORDS):
        return (
            "Trunk Talk can't fetch the packages it needs: connect to the network and start it "
            f"again (only the first start needs it; details in {LOG})."
        )
    told = REASON.findall(said)
    reason = told[-1].strip().rstrip(".") if told else "pip gave no reason"
    return f"Trunk Talk's packages can't be installed: {reason} (details in {LOG})."


def _become(command: list) -> int:
    """Replace this program by another; where that can't be done, run it and pass its status on."""
    if os.name == "posix":
        sys.stdout.flush()
        os.execve(command[0], command, _clean())
    started = subprocess.Popen(command, env=_clean())
    while True:
        try:
            return started.wait()
        except KeyboardInterrupt:  # it got the same key press and ends in its own way
            continue


def _clean() -> dict:
    """This environment without what would lead Python or pip out of ours."""
    stray = {"PYTHONHOME", "PYTHONPATH", "PIP_TARGET", "PIP_PREFIX", "__PYVENV_LAUNCHER__"}
    kept = {name: value for name, value in os.environ.items() if name not in stray}
    kept["PIP_USER"] = "0"
    return kept


def _version() -> str:
    return "{}.{}".format(*THIS)
