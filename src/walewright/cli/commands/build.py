"""`walewright build`: proven patterns onto paper. A pattern's files are written together or not at all, see `world.sets`."""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import PurePath
from typing import Any

import click

from walewright import __version__, world
from walewright.cli import console, options, sources
from walewright.cli.command_line import CommandLine
from walewright.cli.each import each
from walewright.cli.formats import NAMES, format_named
from walewright.cli.formats.format import Pattern
from walewright.cli.outputs import product_names, unfit_outputs
from walewright.cli.parameters import FILES, FROM, GIVEN, HELP, LANGUAGE, MESSAGES, SIZES, command
from walewright.cli.sources import meant, unfit_names
from walewright.record import record, replace
from walewright.report.columns import named
from walewright.report.model import Diagnostic
from walewright.report.said import Said, said
from walewright.report.wording import phrased


def _build(
    line: CommandLine,
    /,
    files: Sequence[str],
    out: str,
    paper: str,
    units: str,
    formats: Sequence[str],
    theme: str,
    jobs: str,
    large_print: bool,
    **asked: Any,
) -> int:
    """Print proven patterns: NAME.pdf, NAME.html, NAME.txt and NAME.plan.json; on request NAME.bench.pdf."""
    files = meant(files)
    printing, faults, texts = options.printing(line, paper, units, formats, theme, large_print)
    most = options.jobs(line, jobs)
    if printing is None or isinstance(most, Diagnostic):
        line.report((*faults, *((most,) if isinstance(most, Diagnostic) else ())), texts)
        return 2
    line.report(faults, texts)
    return _printed(line, files, out, printing, options.wanted(line, options.Asked(**asked)), most)


def _printed(
    line: CommandLine, files: Sequence[str], out: str, printing: options.Printing, wanted: options.Wanted, jobs: int
) -> int:
    """Compile each file and write its pages into the folder `out`, in at most so many processes. Returns the exit code."""
    out = out or os.curdir
    today, undated = world.today()
    faults = (*wanted.faults, *(unfit_names(line, files) or unfit_outputs(line, files, out, printing.formats)))
    if today is None or faults:
        line.report((*faults, *((undated,) if undated else ())), wanted.texts)
        return 2
    unsettled = world.settle(out)
    if unsettled is not None:
        line.report((unsettled,))
        return 1
    building = _Building(line, out, printing, wanted, today.isoformat())
    if jobs == 1 or len(files) == 1:
        with console.progress(len(files) * (1 + len(printing.formats))) as bar:
            stepping = replace(building, step=lambda doing: bar.step(lambda: phrased(doing, line.words)))
            return each(line, files, stepping, "building")
    from walewright.cli.workers import at_once

    with console.progress(len(files)) as bar:

        def finished(file: str) -> None:
            bar.step(lambda: phrased(said("built", name=PurePath(file).stem), line.words))

        return at_once(line, files, partial(_one_of_many, building), jobs, finished)


def _unseen(_: Said) -> None:
    """Steps that nobody is shown."""


def _one_of_many(building: _Building, file: str) -> int:
    """A file in a process of its own."""
    return each(building.line, (file,), building, "building")


@record
class _Building:
    """How each file is built; `today` is an ISO date, and `step` is told what is done next."""

    line: CommandLine
    out: str
    printing: options.Printing
    wanted: options.Wanted
    today: str
    step: Callable[[Said], None] = _unseen

    def __call__(self, file: str) -> int:
        """Build one file; returns its exit code."""
        line, printing, wanted = self.line, self.printing, self.wanted
        name = PurePath(file).stem
        self.step(said("proving", name=name))
        outcome = sources.compile_file(file, wanted)
        line.report(
            line.placed(outcome.diagnostics),
            {**outcome.shared, file: outcome.text, **wanted.texts},
            sources.edits(outcome, wanted),
        )
        if not outcome.proven:
            return sources.not_made(line, outcome)
        paper, units = printing.paper, printing.units
        pattern = Pattern(
            outcome, wanted.guide, paper, units, __version__, self.today, theme=printing.theme, large_print=printing.large_print
        )
        refused = tuple(fault for form in printing.formats for fault in format_named(form).refused(pattern))
        if refused:
            line.report(line.placed(refused), {file: outcome.text})
            return options.exit_code(refused)
        made, doubts = _render(pattern, printing.formats, lambda form: self.step(said("printing", name=name, form=form)))
        line.report(line.placed(doubts), {file: outcome.text})
        names = product_names(file, printing.formats)
        unwritable = world.write_set(self.out, {names[form]: data for form, data in made.items()})
        if unwritable is not None:
            line.report((unwritable,))
            return 1
        written = (said("wrote", file=named(str(PurePath(self.out, names[form])))) for form in made)
        console.say("\n".join(phrased(one, line.words) for one in written), done=True)
        return 0


def _render(
    pattern: Pattern, formats: Sequence[str], starting: Callable[[str], None]
) -> tuple[dict[str, bytes], tuple[Diagnostic, ...]]:
    """format -> bytes of every format asked for, and what their readers have to know; `starting` is told each before it is made."""
    made: dict[str, bytes] = {}
    doubts: list[Diagnostic] = []
    for form in formats:
        starting(form)
        product = format_named(form).make(pattern)
        made[form] = product.data
        doubts += product.doubts
    return made, tuple(doubts)


COMMAND = command(
    "build",
    _build,
    [
        FILES,
        click.option("--out", default="out", show_default=True, metavar="DIR", help="Folder for what is built; made if missing."),
        SIZES,
        GIVEN,
        FROM,
        LANGUAGE,
        click.option("--paper", default="a4", show_default=True, metavar="PAPER", help=f"Of {', '.join(options.PAPERS)}."),
        click.option("--units", default="cm", show_default=True, metavar="UNITS", help="cm, in or both."),
        click.option(
            "--as", "formats", multiple=True, metavar="FORMATS", help=f"Of {', '.join(NAMES)} (repeat, or list with commas)."
        ),
        click.option("--theme", default="", metavar="FILE", help="Your own style sheet (.css) or theme folder, over the house's."),
        click.option("--large-print", is_flag=True, help="All type 14 points at least, charts 7 mm a cell."),
        click.option(
            "--jobs", default="", metavar="NUMBER", help="How many processes work at most; as many as there are cores if not given."
        ),
        MESSAGES,
        HELP,
    ],
)
