"""The commands and their options, as the option parser sees them."""

from __future__ import annotations

import signal
from typing import Annotated

import typer
from typer.exceptions import TyperException

from walewright import __version__
from walewright.cli import console, mishaps, stops
from walewright.cli.command_line import FILE, CommandLine
from walewright.languages import ENGLISH
from walewright.report.said import said

Files = Annotated[list[str], typer.Argument(metavar="FILE...", help="Sources, ending in .wale.")]
SizeOption = Annotated[list[str], typer.Option("--size", metavar="SIZE", help="Only this size (repeat, or list with commas).")]
TensionOption = Annotated[
    list[str], typer.Option("--tension", metavar="FABRIC=TENSION", help='Your own tension over 10 cm, as "plain=17 st 24 rows".')
]
SwatchOption = Annotated[
    list[str],
    typer.Option(
        "--swatch",
        metavar="FABRIC=SWATCH",
        help='Your own swatch as you measured and weighed it, as "plain=40 st 60 rows 23.5 cm 21 cm 28 g".',
    ),
]
MeasureOption = Annotated[
    list[str],
    typer.Option("--measure", metavar="NAME=LENGTH", help='Your own measurement, as "length=60 cm".'),
]
YarnOption = Annotated[
    list[str],
    typer.Option("--yarn", metavar="YARN=LABEL, BALL", help='Your own yarn and its ball, as "wool=my wool, 50 g = 120 m".'),
]
DialOption = Annotated[
    list[str],
    typer.Option("--dial", metavar="FABRIC=NUMBER", help='The number of your tension dial, as "plain=6".'),
]
BedOption = Annotated[
    str,
    typer.Option(
        "--bed",
        metavar="BED",
        help='Your own bed: a shipped one, as "standard", facts, as "needles=180, pitch=4.5 mm", or a file with a `machine` block.',
    ),
]
MessagesOption = Annotated[
    str, typer.Option("--messages", metavar="FORM", help="text, or json: for programs, an object of JSON a line (docs/files.md).")
]
LanguageOption = Annotated[
    str, typer.Option("--language", metavar="NAME", help="The language that is printed and told in, such as english.")
]

app = typer.Typer(
    name="walewright",
    add_completion=False,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
    help="Compile garments for the hand-operated knitting machine from sources to proven, printed instructions.",
    epilog="Exit codes: 0 done; 1 a source has errors or cannot be made as asked, or a file cannot be read or written; "
    "2 the command line is wrong, such as a value that is not what its option takes; 70 a fault of the compiler.",
)


def run(arguments: tuple[str, ...]) -> int:
    """Parse and run one command line; returns the exit code, whatever happens."""
    console.prepare()
    try:
        code = _answer(arguments)
        console.finish()
    except console.OutputLost as fault:
        return mishaps.lost(fault, CommandLine(arguments).form)
    return code


def _answer(arguments: tuple[str, ...]) -> int:
    line = CommandLine(arguments)
    try:
        with stops.stoppable():
            result = app(args=list(arguments), prog_name="walewright", standalone_mode=False, obj=line)
    except TyperException as fault:
        console.report((line.usage_fault(fault),), {FILE: line.text}, line.form)
        return 2
    except (KeyboardInterrupt, typer.Abort):
        return mishaps.STOPPED + signal.SIGINT
    except stops.Stopped as stopped:
        return stopped.exit_code
    except typer.Exit as leaving:
        return leaving.exit_code
    except BrokenPipeError:
        console.abandon_output()
        return 1
    except console.OutputLost:
        raise
    except Exception as fault:  # the last resort: a message instead of a traceback
        if isinstance(fault, OSError) and "--help" in arguments:
            # Help is the one thing that the option parser itself prints.
            raise console.lost_by(fault) from fault
        return mishaps.told(fault, said("starting"), line.form)
    return result if isinstance(result, int) else 0


@app.callback(invoke_without_command=True)
def start(
    context: typer.Context,
    version: Annotated[bool, typer.Option("--version", help="Print the version and leave.")] = False,
) -> None:
    """Compile garments for the hand-operated knitting machine from sources to proven, printed instructions."""
    if version:
        console.say(f"walewright {__version__}")
        raise typer.Exit(0)
    if context.invoked_subcommand is None:
        console.say(context.get_help())
        raise typer.Exit(0)


@app.command()
def check(
    context: typer.Context,
    files: Files,
    size: SizeOption = [],  # noqa: B006 - the option parser copies it
    tension: TensionOption = [],  # noqa: B006
    swatch: SwatchOption = [],  # noqa: B006
    measure: MeasureOption = [],  # noqa: B006
    yarn: YarnOption = [],  # noqa: B006
    dial: DialOption = [],  # noqa: B006
    bed: BedOption = "",
    messages: MessagesOption = "text",
    language: LanguageOption = ENGLISH,
) -> int:
    """Work out and prove every size, and print the counts. Writes nothing."""
    from walewright.cli.check import check as run_check
    from walewright.cli.options import Asked

    return run_check(context.obj, files, Asked(size, tension, swatch, measure, yarn, dial, bed, messages, language))


@app.command()
def build(
    context: typer.Context,
    files: Files,
    out: Annotated[str, typer.Option("--out", metavar="DIR", help="Folder for what is built; made if missing.")] = "out",
    size: SizeOption = [],  # noqa: B006
    tension: TensionOption = [],  # noqa: B006
    swatch: SwatchOption = [],  # noqa: B006
    measure: MeasureOption = [],  # noqa: B006
    yarn: YarnOption = [],  # noqa: B006
    dial: DialOption = [],  # noqa: B006
    bed: BedOption = "",
    paper: Annotated[str, typer.Option("--paper", metavar="PAPER", help="a4 or letter.")] = "a4",
    units: Annotated[str, typer.Option("--units", metavar="UNITS", help="cm, in or both.")] = "cm",
    formats: Annotated[
        list[str], typer.Option("--as", metavar="FORMATS", help="Of pdf, html, text, plan (repeat, or list with commas).")
    ] = [],  # noqa: B006
    messages: MessagesOption = "text",
    language: LanguageOption = ENGLISH,
) -> int:
    """Print proven patterns: NAME.pdf, NAME.html, NAME.txt and NAME.plan.json."""
    from walewright.cli.build import build as run_build
    from walewright.cli.options import Asked, printing

    line: CommandLine = context.obj
    wanted, faults = printing(line, paper, units, formats)
    if wanted is None:
        console.report(faults, {FILE: line.text}, line.form)
        return 2
    return run_build(line, files, out, wanted, Asked(size, tension, swatch, measure, yarn, dial, bed, messages, language))


@app.command()
def choices(
    context: typer.Context,
    files: Files,
    size: SizeOption = [],  # noqa: B006
    messages: MessagesOption = "text",
    language: LanguageOption = ENGLISH,
) -> int:
    """List what a knitter can give in place of the source's own: sizes, measurements, tensions, yarns and bed. Writes nothing."""
    from walewright.cli.choices import choices as run_choices
    from walewright.cli.options import Asked

    return run_choices(context.obj, files, Asked(size, messages=messages, language=language))


@app.command()
def show(
    context: typer.Context,
    stage: Annotated[str, typer.Argument(metavar="STAGE", help="A stage of the compiler, such as solve or knit.")],
    file: Annotated[str, typer.Argument(metavar="FILE", help="A source, ending in .wale.")],
    size: SizeOption = [],  # noqa: B006
    tension: TensionOption = [],  # noqa: B006
    swatch: SwatchOption = [],  # noqa: B006
    measure: MeasureOption = [],  # noqa: B006
    yarn: YarnOption = [],  # noqa: B006
    dial: DialOption = [],  # noqa: B006
    bed: BedOption = "",
    messages: MessagesOption = "text",
    language: LanguageOption = ENGLISH,
) -> int:
    """Print what a stage of the compiler made of a source, as JSON. Writes nothing."""
    from walewright.cli.options import Asked
    from walewright.cli.show import show as run_show

    return run_show(context.obj, stage, file, Asked(size, tension, swatch, measure, yarn, dial, bed, messages, language))


@app.command("format")
def format_(
    context: typer.Context,
    files: Files,
    check_only: Annotated[bool, typer.Option("--check", help="Only say which files would change; exit 1 if any would.")] = False,
    messages: MessagesOption = "text",
) -> int:
    """Write sources anew with even spacing and indents. Their meaning and comments stay."""
    from walewright.cli.format import format_sources

    return format_sources(context.obj, files, check_only, messages)
