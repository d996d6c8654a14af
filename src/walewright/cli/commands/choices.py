"""`walewright choices`: what a knitter can give in place of the source's own, with the source's figures."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from walewright.cli import console, options, sources
from walewright.cli.command_line import FILE, CommandLine
from walewright.cli.each import each
from walewright.cli.parameters import CHOOSE, FILES, HELP, MESSAGES, SIZES, command
from walewright.report.columns import named

if TYPE_CHECKING:
    from rich.table import Table

    from walewright.design.model import Design


def _choices(line: CommandLine, /, files: Sequence[str], **asked: Any) -> int:
    """List what a knitter can give in place of the source's own: alternatives, sizes, measurements, tensions, yarns and bed. Writes
    nothing."""
    # A garment need not be proven for that, only understood.
    wanted = options.wanted(line, options.Asked(**asked))
    faults = (*wanted.faults, *sources.unfit_names(line, files))
    if faults:
        console.report(faults, {FILE: line.text}, line.form)
        return 2

    def one(file: str) -> int:
        outcome = sources.understand_file(file, wanted)
        edits = sources.edits(outcome, wanted)
        console.report(line.placed(outcome.diagnostics), {**outcome.shared, file: outcome.text, FILE: line.text}, line.form, edits)
        if outcome.design is None:
            return sources.not_made(outcome)
        console.say(listing(file, outcome.design, sorted(sources.shipped().machines)))
        return 0

    return each(line, files, one, "listing")


def listing(file: str, design: Design, beds: Sequence[str]) -> str:
    """A table of measurements, one of everything else, and how they are given."""
    from walewright.cli.tables import plain
    from walewright.guide.english import LANGUAGE
    from walewright.sheet.regrading import to_regrade

    found = to_regrade(LANGUAGE, design, "cm")
    head = f"{named(file)}: {design.title}, what can be given in place of the source's own"
    tables = [_measures(design), _others(found.others.rows)]
    example = found.lines[-1].replace(f"build {file.rpartition('/')[2]}", f"build {file}")
    shipped = f"shipped beds: {', '.join(beds)}"
    return "\n\n".join((head, *(plain(t) for t in tables if t.row_count), shipped, example))


def _measures(design: Design) -> Table:
    from rich.table import Table

    from walewright.guide.numbers import cm
    from walewright.sheet.regrading import source_of

    table = Table(title="--measure, in cm", title_justify="left", title_style="", box=None, pad_edge=False)
    table.add_column("")
    for size in design.sizes:
        table.add_column(size, justify="right")
    table.add_column("")
    for row in source_of(design).measurements:
        about = row.about + (" (to fit)" if row.to_fit else "")
        table.add_row(row.name, *(cm(v) for v in row.values), about.strip())
    return table


def _others(rows: Sequence[Sequence[str]]) -> Table:
    from rich.table import Table

    table = Table(title="everything else", title_justify="left", title_style="", box=None, pad_edge=False)
    for heading in ("", "", ""):
        table.add_column(heading)
    for what, option, value in rows:
        table.add_row(what, option, value)
    return table


COMMAND = command("choices", _choices, FILES, SIZES, CHOOSE, MESSAGES, HELP)
