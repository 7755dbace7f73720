"""Every command and option that the README names is in the help of the command line."""

import re
from pathlib import Path

import click
import pytest

from intake.cli import main

ROOT = Path(__file__).parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")
FIRST = (
    "When heating and cooling equipment in an existing house is replaced, somebody must find out, "
    "before it is quoted, whether the ducts that are already there can carry the air the new "
    "equipment needs"
)


def calls() -> list[str]:
    """What is written behind `trunktalk` or `./scripts/run`, in code spans and blocks."""
    blocks = re.findall(r"```\n(.*?)```", README, flags=re.DOTALL)
    spans = re.findall(r"`([^`\n]+)`", re.sub(r"```.*?```", "", README, flags=re.DOTALL))
    lines = [line for block in blocks for line in block.splitlines()] + spans
    found = []
    for line in lines:
        match = re.match(r"(?:trunktalk|\./scripts/run)\b ?(.*)", line.split(" #")[0].strip())
        if match:
            found.append(match[1].strip())
    return found


def test_the_first_paragraph_says_what_the_job_is():
    assert README.split("\n\n")[1].startswith(FIRST)


@pytest.mark.parametrize("call", sorted(set(calls())))
def test_a_command_of_the_readme_exists_with_its_options(call):
    words = call.split()
    name = words[0] if words and not words[0].startswith("-") else "talk"
    command = main.commands.get(name)
    assert command is not None, f"README names {name!r}, which is no command"
    known = {flag for option in command.params if isinstance(option, click.Option)
             for flag in option.opts}  # fmt: skip
    assert {word for word in words if word.startswith("--")} <= known


def test_every_command_is_in_the_readme():
    assert {call.split()[0] for call in calls() if call} >= set(main.commands)


@pytest.mark.parametrize("option", sorted(set(re.findall(r"`(--[a-z-]+)", README))))
def test_an_option_that_the_readme_names_alone_belongs_to_some_command(option):
    flags = {flag for command in main.commands.values() for param in command.params
             if isinstance(param, click.Option) for flag in param.opts}  # fmt: skip
    assert option in flags


@pytest.mark.parametrize("script", sorted(set(re.findall(r"\./scripts/(\w+)", README))))
def test_a_script_that_the_readme_names_is_there(script):
    assert (ROOT / "scripts" / script).exists()


@pytest.mark.parametrize("name", ["README.md", "DEVELOPERS.md", "CHANGELOG.md", "LICENSE"])
def test_every_file_that_a_reader_is_sent_to_is_there(name):
    assert (ROOT / name).exists()


@pytest.mark.parametrize("path", sorted(set(re.findall(
    r"`((?:engine|intake|tests|scripts)/[\w./]+)`",
    (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8"),
))))  # fmt: skip
def test_every_path_that_contributors_are_sent_to_is_there(path):
    assert (ROOT / path).exists()
