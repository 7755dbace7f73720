"""The house of the code: one direction, a pure engine, mouths without rules, a quick help."""

import ast
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
PACKAGES = ("engine", "intake")
WITHOUT_TERMINAL_OR_STORE = ("reading", "interview", "telling")
OUTSIDE_OF_THE_ENGINE = {
    "asyncio", "click", "datetime", "io", "jinja2", "logging", "os", "pathlib", "pint",
    "platformdirs", "pydantic", "random", "rapidfuzz", "secrets", "shutil", "socket", "sqlite3",
    "sqlite_utils", "subprocess", "sys", "tempfile", "textual", "threading", "time", "urllib",
    "uuid",
}  # fmt: skip
SPOKEN = frozenset({"intake.interview.turns"})
HEAVY = ("textual", "numpy", "pint", "sqlite_utils", "pydantic", "jinja2", "rapidfuzz")


@cache
def modules() -> dict[str, Path]:
    found = {}
    for package in PACKAGES:
        for path in sorted((ROOT / package).rglob("*.py")):
            parts = path.relative_to(ROOT).with_suffix("").parts
            found[".".join(parts[:-1] if parts[-1] == "__init__" else parts)] = path
    return found


@cache
def tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def imported(path: Path, module: str) -> Iterator[tuple[str, bool]]:
    """Every module an import statement names, wherever it stands, and whether only for types."""
    for_types = {
        id(inner)
        for node in ast.walk(tree(path))
        if isinstance(node, ast.If) and "TYPE_CHECKING" in ast.unparse(node.test)
        for inner in ast.walk(node)
    }
    for node in ast.walk(tree(path)):
        if isinstance(node, ast.Import):
            for name in node.names:
                yield name.name, id(node) in for_types
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{module} imports relatively; ours are written in full"
            assert node.module is not None
            for name in node.names:
                inner = f"{node.module}.{name.name}"
                yield (inner if inner in modules() else node.module), id(node) in for_types


def imports_of(prefix: str) -> Iterator[tuple[str, str]]:
    """(module, imported module) for every module at or below a dotted name."""
    for module, path in modules().items():
        if module == prefix or module.startswith(prefix + "."):
            for name, _ in imported(path, module):
                yield module, name


def below(name: str, *tops: str) -> bool:
    return any(name == top or name.startswith(top + ".") for top in tops)


def in_fresh_interpreter(code: str, *options: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, *options, "-c", code],
        capture_output=True,
        text=True,
        encoding="utf-8",
        cwd=ROOT,
        check=True,
    )


def loaded_after(code: str) -> set[str]:
    done = in_fresh_interpreter(f"import sys\n{code}\nprint('\\n'.join(sys.modules))")
    return {name.split(".")[0] for name in done.stdout.split()} | set(done.stdout.split())


def test_there_is_something_to_look_at() -> None:
    assert len(modules()) > 40
    assert len(list(imports_of("engine"))) > 100


def test_the_engine_imports_nothing_from_intake() -> None:
    assert not [pair for pair in imports_of("engine") if below(pair[1], "intake")]


def test_the_engine_imports_no_clock_no_file_and_no_screen() -> None:
    assert not [
        pair for pair in imports_of("engine") if pair[1].split(".")[0] in OUTSIDE_OF_THE_ENGINE
    ]


def test_the_engine_neither_prints_nor_opens_nor_asks() -> None:
    found = [
        (module, node.func.id)
        for module, path in modules().items()
        if below(module, "engine")
        for node in ast.walk(tree(path))
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Name)
        and node.func.id in {"print", "open", "input", "eval", "exec"}
    ]
    assert not found


def test_the_engine_draws_only_from_seeded_streams() -> None:
    unseeded = []
    for module, path in modules().items():
        if not below(module, "engine"):
            continue
        for node in ast.walk(tree(path)):
            if not isinstance(node, ast.Call):
                continue
            name = ast.unparse(node.func)
            if "random." in name and not (
                name.rsplit(".", 1)[-1] in {"default_rng", "SeedSequence", "PCG64", "Generator"}
                and (node.args or node.keywords)
            ):
                unseeded.append((module, node.lineno, name))
    assert not unseeded


def test_at_run_time_the_engine_loads_nothing_of_intake_nor_what_it_needs() -> None:
    names = [name for name in modules() if below(name, "engine")]
    loaded = loaded_after("\n".join(f"import {name}" for name in names))
    assert "engine" in loaded
    assert not loaded & {"intake", "textual", "click", "pydantic", "sqlite3", "pint", "jinja2"}


@pytest.mark.parametrize("part", WITHOUT_TERMINAL_OR_STORE)
def test_this_part_knows_no_terminal_and_no_store(part: str) -> None:
    strangers = ("intake.screen", "intake.keeping", "intake.cli", "intake.commands",
                 "intake.mouth", "intake.plain", "intake.jsonl",
                 "textual", "sqlite3", "sqlite_utils", "click")  # fmt: skip
    pairs = list(imports_of(f"intake.{part}"))
    assert pairs
    assert not [pair for pair in pairs if below(pair[1], *strangers)]


def test_reading_knows_neither_conversation_nor_engine_judgement() -> None:
    strangers = ("intake.interview", "intake.telling", "intake.report", "engine.judge",
                 "engine.remedies", "engine.worth", "engine.checks", "engine.verdict")  # fmt: skip
    assert not [pair for pair in imports_of("intake.reading") if below(pair[1], *strangers)]


def test_the_screen_holds_no_rule() -> None:
    ours = {pair for pair in imports_of("intake.screen") if below(pair[1], *PACKAGES)}
    allowed = ("intake.screen", "intake.mouth", "intake.interview.turns", "intake.keeping.errors")
    assert not [pair for pair in ours if not below(pair[1], *allowed)]


@pytest.mark.parametrize("mouth", ["intake.plain", "intake.jsonl", "intake.mouth"])
def test_the_other_mouths_hold_no_rule_either(mouth: str) -> None:
    ours = {pair for pair in imports_of(mouth) if below(pair[1], *PACKAGES)}
    allowed = ("intake.mouth", "intake.interview.turns", "intake.keeping.errors")
    assert not [pair for pair in ours if not below(pair[1], *allowed)]


def test_keeping_knows_events_and_nothing_of_what_they_mean() -> None:
    ours = {pair for pair in imports_of("intake.keeping") if below(pair[1], *PACKAGES)}
    allowed = ("intake.keeping", "intake.interview.events")
    assert not [pair for pair in ours if not below(pair[1], *allowed)]


def part_of(module: str) -> str:
    """The package a module belongs to; data that everybody speaks in stands for itself."""
    return module if module in SPOKEN else ".".join(module.split(".")[:2])


def test_the_packages_import_each_other_in_one_direction() -> None:
    packages = {part_of(name) for name, path in modules().items() if path.name == "__init__.py"}
    graph: dict[str, set[str]] = {package: set() for package in packages | SPOKEN}
    for module, path in modules().items():
        for name, only_for_types in imported(path, module):
            if part_of(module) in graph and part_of(name) in graph and not only_for_types:
                graph[part_of(module)].add(part_of(name))
    assert not circle({part: targets - {part} for part, targets in graph.items()})


@pytest.mark.parametrize("module", sorted(SPOKEN))
def test_what_everybody_speaks_in_imports_nothing_of_ours(module: str) -> None:
    assert not [name for name, _ in imported(modules()[module], module) if below(name, *PACKAGES)]


def test_no_module_waits_for_itself() -> None:
    graph = {
        module: {
            name
            for node in tree(path).body
            if isinstance(node, ast.Import | ast.ImportFrom)
            for name in _named(node)
            if name != module
        }
        for module, path in modules().items()
    }
    assert not circle(graph)


def _named(node: ast.Import | ast.ImportFrom) -> Iterator[str]:
    for name in node.names:
        inner = f"{node.module}.{name.name}" if isinstance(node, ast.ImportFrom) else name.name
        outer = node.module if isinstance(node, ast.ImportFrom) else name.name
        found = inner if inner in modules() else outer
        if found in modules():
            yield str(found)


def circle(graph: dict[str, set[str]]) -> list[str]:
    """A way from a node back to itself; empty if there is none."""
    left = {node: set(targets) & set(graph) for node, targets in graph.items()}
    while True:
        free = [node for node, targets in left.items() if not targets]
        if not free:
            break
        for node in free:
            del left[node]
        for targets in left.values():
            targets.difference_update(free)
    if not left:
        return []
    way = [min(left)]
    while way.count(way[-1]) < 2:
        way.append(min(left[way[-1]]))
    return way[way.index(way[-1]) :]


def test_a_circle_is_found_where_there_is_one() -> None:
    assert circle({"a": {"b"}, "b": {"c"}, "c": {"b"}}) == ["b", "c", "b"]
    assert circle({"a": {"b"}, "b": {"c"}, "c": set()}) == []


def test_the_command_line_imports_only_click_until_a_command_runs() -> None:
    loaded = loaded_after("import intake.cli")
    assert "click" in loaded
    assert not loaded & set(HEAVY)
    assert not {name for name in loaded if below(name, "engine")}


@pytest.mark.parametrize("arguments", [["--help"], ["talk", "--help"], ["judge", "--help"]])
def test_help_waits_for_nothing_heavy(arguments: list[str]) -> None:
    code = f"from intake.cli import main; main({arguments!r}, prog_name='trunktalk')"
    done = in_fresh_interpreter(code, "-X", "importtime")
    assert "Usage: trunktalk" in done.stdout
    imported_then = {
        line.rsplit("|", 1)[1].strip().split(".")[0]
        for line in done.stderr.splitlines()
        if line.startswith("import time:")
    }
    assert "click" in imported_then
    assert not imported_then & set(HEAVY)


def test_the_plain_talk_never_loads_the_screen() -> None:
    assert "textual" not in loaded_after(
        "import intake.plain, intake.jsonl, intake.commands.talking"
    )


def test_facts_need_no_store_and_no_screen() -> None:
    loaded = loaded_after(
        "import os; from intake.cli import main\n"
        "sys.stdout, out = open(os.devnull, 'w'), sys.stdout\n"
        "main(['facts'], standalone_mode=False); sys.stdout = out"
    )
    assert "engine.job.facts" in loaded
    assert not loaded & {"textual", "sqlite_utils", "pint", "jinja2"}
