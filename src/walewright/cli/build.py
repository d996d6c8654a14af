"""`walewright build`: proven patterns onto paper. All of a pattern's files are made before the first is written."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import PurePath
from typing import TYPE_CHECKING

from walewright import __version__, world
from walewright.cli import console, options, sources
from walewright.cli.command_line import FILE, CommandLine
from walewright.cli.each import each
from walewright.report.model import Diagnostic, Label, Severity, Span

if TYPE_CHECKING:
    from walewright.pipeline import Outcome

SUFFIXES = {"pdf": ".pdf", "html": ".html", "text": ".txt", "plan": ".plan.json"}


def build(line: CommandLine, files: Sequence[str], out: str, printing: options.Printing, asked: options.Asked) -> int:
    """Compile each file and write its pages into the folder `out`. Returns the exit code."""
    wanted = options.wanted(line, asked)
    faults = (*wanted.faults, *_clashes(line, files))
    if wanted.changes is None or faults:
        console.report(faults, {FILE: line.text, **wanted.texts})
        return 2
    changes = wanted.changes
    shipped = sources.shipped()

    with console.progress(len(files) * (1 + len(printing.formats))) as bar:

        def one(file: str) -> int:
            name = PurePath(file).stem
            bar.step(f"proving {name}")
            outcome = sources.compile_file(file, shipped, changes)
            console.report(line.placed(outcome.diagnostics), {file: outcome.text, FILE: line.text, **wanted.texts})
            if not outcome.proven:
                return 1
            made = _render(outcome, printing, lambda form: bar.step(f"printing {name} as {form}"))
            paths = {str(PurePath(out, name + SUFFIXES[form])): data for form, data in made.items()}
            unwritable = world.write_together(paths)
            if unwritable is not None:
                console.report((unwritable,), {})
                return 1
            for path in paths:
                console.say(f"wrote {path}")
            return 0

        return each(files, one, "building")


def _render(outcome: Outcome, printing: options.Printing, starting: Callable[[str], None]) -> dict[str, bytes]:
    """format -> bytes of every format asked for; `starting` is told each before it is made."""
    made: dict[str, bytes] = {}
    if {"pdf", "html"} & set(printing.formats):
        from walewright import pages
        from walewright.pages import PageOptions

        design, counts, instructions, proof = outcome.result()
        today = world.today().isoformat()
        look = PageOptions(paper=printing.paper, units=printing.units, version=__version__, date=today)
        sheet = pages.compose(design, counts, instructions, proof, look, outcome.fit)
        page = pages.html(sheet)
    for form in printing.formats:
        starting(form)
        if form == "pdf":
            made[form], warnings = pages.pdf(page, sheet)
            console.report((_doubt(outcome.file, warning) for warning in warnings), {})
        elif form == "html":
            made[form] = page.encode()
        elif form == "text":
            from walewright.cli.text_copy import text_copy

            made[form] = text_copy(outcome, printing.units).encode()
        else:
            from walewright.plan import plan_bytes

            made[form] = plan_bytes(outcome)
    return made


def _clashes(line: CommandLine, files: Sequence[str]) -> tuple[Diagnostic, ...]:
    first: dict[str, str] = {}
    found = []
    for file in files:
        stem = PurePath(file).stem
        if stem in first:
            found.append(
                line.fault(
                    "output-clash",
                    f"{first[stem]} and {file} would be written under one name, {stem}",
                    at=(file,),
                    helps=("build them into different folders",),
                )
            )
        first.setdefault(stem, file)
    return tuple(found)


def _doubt(file: str, warning: str) -> Diagnostic:
    return Diagnostic(
        "page-printer",
        f"the page printer warns: {warning}",
        (Label(Span(file, 0, 0)),),
        helps=("look at the PDF before you give it away",),
        severity=Severity.WARNING,
    )
