"""The command line. Imports nothing but click; each command imports what it runs, so that the
help is there at once and the chat doesn't wait for what it doesn't need.
"""

import sys
from pathlib import Path
from typing import Any

import click

__all__ = ["main"]

_STORE = click.option(
    "--store",
    type=click.Path(dir_okay=False, path_type=Path),
    metavar="FILE",
    help="Where the jobs are kept; your own data folder if not given.",
)


class _TalkIfNotNamed(click.Group):
    """Takes the options of `talk` without its name: `trunktalk --plain`."""

    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        """Put the name in where an option stands first that isn't the program's own."""
        if args and args[0].startswith("-") and args[0] not in ("-h", "--help", "--version"):
            args = ["talk", *args]
        return super().parse_args(ctx, args)


@click.group(
    cls=_TalkIfNotNamed,
    invoke_without_command=True,
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 100},
)
@click.version_option(package_name="trunk-talk", message="Trunk Talk %(version)s")
@click.pass_context
def main(context: click.Context) -> None:
    """Can these ducts carry the air that the new equipment needs?

    Trunk Talk asks for the facts in a conversation, with a technician in the house or a
    dispatcher on the phone, and says what it found, in words, with the arithmetic. Without a
    command it begins to talk. With a screen reader or over a slow line use --plain.
    """
    _speak_utf8()
    if context.invoked_subcommand is None:
        context.invoke(talk)


@main.command()
@click.option("--plain", is_flag=True, help="Line by line; fit for screen readers and pipes.")
@click.option("--jsonl", is_flag=True, help="One JSON object a line, for programs.")
@click.option(
    "--voice",
    type=click.Choice(["technician", "dispatcher"]),
    help="Who talks; asked if not given.",
)
@click.option("--job", metavar="ID", help="Go on with a kept job.")
@click.option("--title", default="", help="Name of a new job, for the list of jobs.")
@_STORE
def talk(
    plain: bool, jsonl: bool, voice: str | None, job: str | None, title: str, store: Path | None
) -> None:
    """Talk about a house; also without a command.

    --plain is chosen by itself where no screen can be drawn.
    """
    from intake.commands.talking import hold_talk, mouth_for
    from intake.commands.told import told

    if plain and jsonl:
        raise click.UsageError("--plain and --jsonl are two different ways to talk; choose one.")
    with told():
        status = hold_talk(mouth_for(plain=plain, jsonl=jsonl), voice, job, store, title)
    sys.exit(status)


@main.command()
@click.option("--format", "form", type=click.Choice(["text", "json"]), default="text")
@_STORE
def jobs(form: str, store: Path | None) -> None:
    """List the kept jobs, the latest first."""
    from intake.commands.jobs import jobs_json, jobs_text
    from intake.commands.told import told, write_text

    with told():
        write_text(jobs_json(store) if form == "json" else jobs_text(store), None)


@main.command()
@click.argument("job_id", metavar="ID")
@click.option(
    "--format",
    "form",
    type=click.Choice(["markdown", "html", "json"]),
    help="By the ending of --out if not given; else Markdown.",
)
@click.option("--out", type=click.Path(dir_okay=False, path_type=Path), metavar="FILE")
@_STORE
def report(job_id: str, form: str | None, out: Path | None, store: Path | None) -> None:
    """Write the report of a kept job."""
    from intake.commands.reporting import form_of, report_of
    from intake.commands.told import told, write_text

    with told():
        write_text(report_of(job_id, form or form_of(out), store), out)


@main.command()
@click.argument("facts_json", metavar="FACTS.json", type=click.Path(allow_dash=True))
@click.option("--format", "form", type=click.Choice(["markdown", "json"]), default="markdown")
@click.option("--nothing-more", is_flag=True, help="No further fact can be had: decide.")
@click.option(
    "--limit",
    "limits",
    multiple=True,
    metavar="NAME=VALUE",
    help="Use your office's figure for a limit; `trunktalk limits` lists them.",
)
def judge(facts_json: str, form: str, nothing_more: bool, limits: tuple[str, ...]) -> None:
    """Judge the facts of a file, without a talk.

    "-" reads the input. `trunktalk facts` lists the names that a file may hold.
    """
    from intake.commands.judging import judge_file
    from intake.commands.told import told, write_text

    with told():
        write_text(judge_file(facts_json, form, nothing_more=nothing_more, limits=limits), None)


@main.command("try")
@click.argument("job", metavar="JOB", type=click.Path(allow_dash=True))
@click.option(
    "--with",
    "withs",
    multiple=True,
    metavar="EQUIPMENT",
    help='Other equipment, as you\'d say it: "2.5 tons"; up to three, side by side.',
)
@click.option("--format", "form", type=click.Choice(["text", "json"]), default="text")
@_STORE
def try_equipment(job: str, withs: tuple[str, ...], form: str, store: Path | None) -> None:
    """Try other equipment on a job's ducts, side by side.

    JOB is a kept job's ID or a file of facts. --with takes tons, CFM, a coil, a filter, a
    furnace: trunktalk try 12 --with "2.5 tons" --with "3 tons, 1100 cfm". Nothing of it is kept.
    """
    from intake.commands.told import told, write_text
    from intake.commands.trying import try_json, try_text

    with told():
        write_text((try_json if form == "json" else try_text)(job, withs, store), None)


@main.command()
@click.argument("words", nargs=-1)
@click.option("--format", "form", type=click.Choice(["text", "json"]), default="text")
def facts(words: tuple[str, ...], form: str) -> None:
    """List the facts that a job may hold.

    With WORDS only those that have all of them in their name or meaning.
    """
    from intake.commands.facts import facts_json, facts_text
    from intake.commands.told import write_text

    write_text(facts_json(words) if form == "json" else facts_text(words), None)


@main.command("limits")
@click.option("--format", "form", type=click.Choice(["text", "json"]), default="text")
def list_limits(form: str) -> None:
    """List the limits, each with its source."""
    from intake.commands.limits import limits_json, limits_text
    from intake.commands.told import write_text

    write_text(limits_json() if form == "json" else limits_text(), None)


@main.command(context_settings={"ignore_unknown_options": True})  # "-.37" is an answer
@click.argument("field", required=False)
@click.argument("text", nargs=-1)
@click.option("--format", "form", type=click.Choice(["text", "json"]), default="text")
@click.option("--question", default="", help="The words asked, where they matter.")
@click.option("--choice", "choices", multiple=True, help="A word that is allowed; repeat it.")
@click.option("--jsonl", is_flag=True, help="JSON objects with field and text from the input.")
def read(
    field: str | None,
    text: tuple[str, ...],
    form: str,
    question: str,
    choices: tuple[str, ...],
    jsonl: bool,
) -> None:
    """Show what is read in a TEXT, an answer to a FIELD.

    The text may be typed as loosely as in a talk: trunktalk read duct "20x8 metal, 12 ft".
    """
    from intake.commands.reading import read_lines, read_one
    from intake.commands.told import BAD_INPUT, write_text

    if jsonl:
        if field is not None:
            raise click.UsageError("--jsonl reads the input; give no FIELD and no TEXT with it.")
        sys.exit(BAD_INPUT if read_lines(sys.stdin, sys.stdout) else 0)
    if field is None or not text:
        raise click.UsageError('Give a FIELD and a TEXT, as in: trunktalk read duct "20x8 metal"')
    write_text(read_one(field, " ".join(text), question, choices, form), None)


@main.command()
@click.option("--out", type=click.Path(dir_okay=False, path_type=Path), metavar="FILE")
def demo(out: Path | None) -> None:
    """Show one invented house, start to end."""
    from intake.commands.told import told
    from intake.demo import run_demo

    with told():
        run_demo(out, click.echo)


def _speak_utf8() -> None:
    """Files and pipes are UTF-8 everywhere; what a terminal can't show becomes "?"."""
    streams: tuple[Any, ...] = (sys.stdin, sys.stdout, sys.stderr)
    for stream in streams:
        if hasattr(stream, "reconfigure"):
            if stream.isatty():
                stream.reconfigure(errors="replace")
            else:
                stream.reconfigure(encoding="utf-8", errors="replace")


if __name__ == "__main__":
    main(prog_name="trunktalk")
