"""`walewright build`: proven patterns onto paper. A pattern's files are written together or not at all, see `world.sets`."""

from __future__ import annotations

import datetime
import os
from collections.abc import Callable, Sequence
from pathlib import PurePath
from typing import TYPE_CHECKING

from walewright import __version__, world
from walewright.cli import console, options, sources
from walewright.cli.command_line import FILE, CommandLine
from walewright.cli.each import each
from walewright.cli.outputs import product_names, unfit_outputs
from walewright.cli.sources import unfit_names
from walewright.report.columns import named
from walewright.report.model import Diagnostic, Severity, Span, diagnosed

if TYPE_CHECKING:
    from walewright.pipeline import Outcome


def build(line: CommandLine, files: Sequence[str], out: str, printing: options.Printing, asked: options.Asked) -> int:
    """Compile each file and write its pages into the folder `out`. Returns the exit code."""
    wanted = options.wanted(line, asked)
    out = out or os.curdir
    today, undated = world.today()
    faults = (*wanted.faults, *(unfit_names(line, files) or unfit_outputs(line, files, out, printing.formats)))
    if today is None or faults:
        console.report((*faults, *((undated,) if undated else ())), {FILE: line.text, **wanted.texts}, line.form)
        return 2
    unsettled = world.settle(out)
    if unsettled is not None:
        console.report((unsettled,), {}, line.form)
        return 1

    with console.progress(len(files) * (1 + len(printing.formats))) as bar:

        def one(file: str) -> int:
            name = PurePath(file).stem
            bar.step(f"proving {name}")
            outcome = sources.compile_file(file, wanted)
            edits, texts = sources.edits(outcome, wanted), {FILE: line.text, **wanted.texts}
            console.report(line.placed(outcome.diagnostics), {file: outcome.text, **texts}, line.form, edits, wanted.printed)
            if not outcome.proven:
                return options.exit_code(outcome.diagnostics)
            made, doubts = _render(outcome, printing, today, lambda form: bar.step(f"printing {name} as {form}"))
            console.report(doubts, {}, line.form, language=wanted.printed)
            names = product_names(file, printing.formats)
            unwritable = world.write_set(out, {names[form]: data for form, data in made.items()})
            if unwritable is not None:
                console.report((unwritable,), {}, line.form)
                return 1
            console.say("\n".join(f"wrote {named(str(PurePath(out, names[form])))}" for form in made), done=True)
            return 0

        return each(line, files, one, "building")


def _render(
    outcome: Outcome, printing: options.Printing, today: datetime.date, starting: Callable[[str], None]
) -> tuple[dict[str, bytes], tuple[Diagnostic, ...]]:
    """format -> bytes of every format asked for, and what the page printer warns of; `starting` is told each before it is made."""
    made: dict[str, bytes] = {}
    warnings: tuple[str, ...] = ()
    if {"pdf", "html"} & set(printing.formats):
        from walewright import sheet
        from walewright.sheet import PageOptions

        design, counts, instructions, proof = outcome.result()
        look = PageOptions(paper=printing.paper, units=printing.units, version=__version__, date=today.isoformat())
        booklet = sheet.compose(design, counts, instructions, proof, look, outcome.fit)
        page = sheet.html(booklet)
    for form in printing.formats:
        starting(form)
        if form == "pdf":
            made[form], warnings = sheet.pdf(page, booklet)
        elif form == "html":
            made[form] = page.encode()
        elif form == "text":
            from walewright.cli.text_copy import text_copy

            made[form] = text_copy(outcome, printing.units).encode()
        else:
            from walewright.plan import plan_bytes

            made[form] = plan_bytes(outcome)
    return made, tuple(_doubt(outcome.file, warning) for warning in warnings)


def _doubt(file: str, warning: str) -> Diagnostic:
    return diagnosed("page-printer", (Span(file, 0, 0), ""), helps=("look-at-it",), severity=Severity.WARNING, warning=warning)
