"""The commands and their options, as the option parser sees them."""

from __future__ import annotations

import signal
from collections.abc import Callable
from typing import Any, TypeVar

import click

from walewright import __version__
from walewright.cli import console, stops
from walewright.cli.command_line import FILE, CommandLine, TooMany
from walewright.languages import ENGLISH
from walewright.report.said import said

Command = TypeVar("Command", bound=Callable[..., object])


def run(arguments: tuple[str, ...]) -> int:
    """Parse and run one command line; returns the exit code, whatever happens."""
    console.prepare()
    try:
        code = _answer(arguments)
        console.finish()
    except console.OutputLost as fault:
        from walewright.cli import mishaps

        return mishaps.lost(fault, CommandLine(arguments).form)
    return code


def _answer(arguments: tuple[str, ...]) -> int:
    line = CommandLine(arguments)
    try:
        with stops.stoppable(), app.make_context("walewright", list(arguments), obj=line) as context:
            result = app.invoke(context)
    except click.ClickException as fault:
        console.report((line.usage_fault(fault),), {FILE: line.text}, line.form)
        return 2
    except (KeyboardInterrupt, click.Abort):
        return stops.STOPPED + signal.SIGINT
    except stops.Stopped as stopped:
        return stopped.exit_code
    except click.exceptions.Exit as leaving:
        return leaving.exit_code
    except BrokenPipeError:
        console.abandon_output()
        return 1
    except console.OutputLost:
        raise
    except Exception as fault:  # the last resort: a message instead of a traceback
        from walewright.cli import mishaps

        return mishaps.told(fault, said("starting"), line.form)
    return result if isinstance(result, int) else 0


# ----------------------------------------------------------------- parameters


class _Program(click.Group):
    def list_commands(self, ctx: click.Context) -> list[str]:
        """In the order in which they are written here, the most used first."""
        return list(self.commands)


class _Command(click.Command):
    allow_extra_args = True

    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        """As the library does; raises TooMany, with what nothing takes, where the library has a sentence."""
        more = super().parse_args(ctx, args)
        if more:
            raise TooMany(more, ctx)
        return more

    def format_arguments(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """The arguments, each with whether it has to be there, as for options."""
        found = [record for param in self.params if isinstance(param, click.Argument) if (record := param.get_help_record(ctx))]
        if found:
            with formatter.section("Arguments"):
                formatter.write_dl([(name, f"{about}  [required]") for name, about in found])


def _help(context: click.Context, _: click.Parameter, wanted: bool) -> None:
    if wanted:
        console.say(context.get_help())
        raise click.exceptions.Exit(0)


def _version(_: click.Context, __: click.Parameter, wanted: bool) -> None:
    if wanted:
        console.say(f"walewright {__version__}")
        raise click.exceptions.Exit(0)


def _together(*options: Callable[[Command], Command]) -> Callable[[Command], Command]:
    """Several decorators as one, in the order in which the help lists them."""

    def decorate(command: Command) -> Command:
        for option in reversed(options):
            command = option(command)
        return command

    return decorate


def _leaving(
    name: str, callback: Callable[[click.Context, click.Parameter, bool], None], about: str
) -> Callable[[Command], Command]:
    """An option that answers by itself, whatever else is typed."""
    return click.option(name, is_flag=True, is_eager=True, expose_value=False, callback=callback, help=about)


HELP = _leaving("--help", _help, "Show this message and exit.")
FILES = click.argument("files", nargs=-1, required=True, metavar="FILE...", help="Sources, ending in .wale.")
SIZES = click.option("--size", "sizes", multiple=True, metavar="SIZE", help="Only this size (repeat, or list with commas).")
MESSAGES = click.option(
    "--messages",
    default="text",
    show_default=True,
    metavar="FORM",
    help="text, or json: for programs, an object of JSON a line (docs/files.md).",
)
LANGUAGE = click.option(
    "--language",
    default=ENGLISH,
    show_default=True,
    metavar="NAME",
    help="The language that is printed and told in.",
)
GIVEN = _together(
    click.option(
        "--tension",
        "tensions",
        multiple=True,
        metavar="FABRIC=TENSION",
        help='Your own tension over 10 cm, as "plain=17 st 24 rows".',
    ),
    click.option(
        "--swatch",
        "swatches",
        multiple=True,
        metavar="FABRIC=SWATCH",
        help='Your own swatch as you measured and weighed it, as "plain=40 st 60 rows 23.5 cm 21 cm 28 g".',
    ),
    click.option("--measure", "measures", multiple=True, metavar="NAME=LENGTH", help='Your own measurement, as "length=60 cm".'),
    click.option(
        "--yarn",
        "yarns",
        multiple=True,
        metavar="YARN=LABEL, BALL",
        help='Your own yarn and its ball, as "wool=my wool, 50 g = 120 m".',
    ),
    click.option("--dial", "dials", multiple=True, metavar="FABRIC=NUMBER", help='The number of your tension dial, as "plain=6".'),
    click.option(
        "--bed",
        default="",
        metavar="BED",
        help='Your own bed: a shipped one, as "standard", facts, as "needles=180, pitch=4.5 mm", or a file with a `machine` block.',
    ),
)
"""What a knitter gives. What is typed goes to the fields of `options.Asked` by the names of the parameters."""


# ----------------------------------------------------------------- commands


@click.group(
    cls=_Program,
    invoke_without_command=True,
    subcommand_metavar="COMMAND [ARGS]...",
    add_help_option=False,
    help="Compile garments for the hand-operated knitting machine from sources to proven, printed instructions.",
    epilog="Exit codes: 0 done; 1 a source has errors or cannot be made as asked, or a file cannot be read or written; "
    "2 the command line is wrong, such as a value that is not what its option takes; 70 a fault of the compiler.",
)
@_together(_leaving("--version", _version, "Print the version and leave."), HELP)
@click.pass_context
def app(context: click.Context) -> None:
    """The program; without a command it shows its help."""
    if context.invoked_subcommand is None:
        console.say(context.get_help())


def _command(name: str) -> Callable[[Callable[..., int]], click.Command]:
    return app.command(name, cls=_Command, add_help_option=False)


@_command("check")
@_together(FILES, SIZES, GIVEN, LANGUAGE, MESSAGES, HELP)
@click.pass_obj
def check(line: CommandLine, /, files: tuple[str, ...], **asked: Any) -> int:
    """Work out and prove every size, and print the counts. Writes nothing."""
    from walewright.cli.check import check as run_check
    from walewright.cli.options import Asked

    return run_check(line, files, Asked(**asked))


@_command("build")
@_together(
    FILES,
    click.option("--out", default="out", show_default=True, metavar="DIR", help="Folder for what is built; made if missing."),
    SIZES,
    GIVEN,
    LANGUAGE,
    click.option("--paper", default="a4", show_default=True, metavar="PAPER", help="a4 or letter."),
    click.option("--units", default="cm", show_default=True, metavar="UNITS", help="cm, in or both."),
    click.option(
        "--as", "formats", multiple=True, metavar="FORMATS", help="Of pdf, html, text, plan (repeat, or list with commas)."
    ),
    MESSAGES,
    HELP,
)
@click.pass_obj
def build(
    line: CommandLine, /, files: tuple[str, ...], out: str, paper: str, units: str, formats: tuple[str, ...], **asked: Any
) -> int:
    """Print proven patterns: NAME.pdf, NAME.html, NAME.txt and NAME.plan.json."""
    from walewright.cli.build import build as run_build
    from walewright.cli.options import Asked, printing

    wanted, faults = printing(line, paper, units, formats)
    if wanted is None:
        console.report(faults, {FILE: line.text}, line.form)
        return 2
    return run_build(line, files, out, wanted, Asked(**asked))


@_command("choices")
@_together(FILES, SIZES, MESSAGES, HELP)
@click.pass_obj
def choices(line: CommandLine, /, files: tuple[str, ...], **asked: Any) -> int:
    """List what a knitter can give in place of the source's own: sizes, measurements, tensions, yarns and bed. Writes nothing."""
    from walewright.cli.choices import choices as run_choices
    from walewright.cli.options import Asked

    return run_choices(line, files, Asked(**asked))


@_command("show")
@_together(
    click.argument("stage", metavar="STAGE", help="A stage of the compiler, such as solve or knit."),
    click.argument("file", metavar="FILE", help="A source, ending in .wale."),
    SIZES,
    GIVEN,
    LANGUAGE,
    MESSAGES,
    HELP,
)
@click.pass_obj
def show(line: CommandLine, /, stage: str, file: str, **asked: Any) -> int:
    """Print what a stage of the compiler made of a source, as JSON. Writes nothing."""
    from walewright.cli.options import Asked
    from walewright.cli.show import show as run_show

    return run_show(line, stage, file, Asked(**asked))


@_command("format")
@_together(
    FILES,
    click.option("--check", "check_only", is_flag=True, help="Only say which files would change; exit 1 if any would."),
    MESSAGES,
    HELP,
)
@click.pass_obj
def format_(line: CommandLine, /, files: tuple[str, ...], check_only: bool, messages: str) -> int:
    """Write sources anew with even spacing and indents. Their meaning and comments stay."""
    from walewright.cli.format import format_sources

    return format_sources(line, files, check_only, messages)
