"""`walewright choices`: what a knitter can give in place of the source's own, with the source's figures."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from walewright.cli import console, options, sources
from walewright.cli.command_line import CommandLine
from walewright.cli.each import each
from walewright.cli.parameters import CHOOSE, FILES, HELP, LANGUAGE, MESSAGES, SIZES, command
from walewright.report.columns import named

if TYPE_CHECKING:
    from rich.table import Table

    from walewright.design.model import Design
    from walewright.guide.model import Guide


def _choices(line: CommandLine, /, files: Sequence[str], **asked: Any) -> int:
    """List what a knitter can give in place of the source's own: alternatives, sizes, measurements, tensions, yarns and bed. Writes
    nothing."""
    files = sources.meant(files)
    # A garment need not be proven for that, only understood.
    wanted = options.wanted(line, options.Asked(**asked))
    faults = (*wanted.faults, *sources.unfit_names(line, files))
    if faults:
        line.report(faults)
        return 2

    def one(file: str) -> int:
        outcome = sources.understand_file(file, wanted)
        edits = sources.edits(outcome, wanted)
        line.report(line.placed(outcome.diagnostics), {**outcome.shared, file: outcome.text}, edits)
        if outcome.design is None:
            return sources.not_made(line, outcome)
        console.say(listing(wanted.guide, file, outcome.design, sorted(sources.shipped().machines)))
        return 0

    return each(line, files, one, "listing")


def listing(guide: Guide, file: str, design: Design, beds: Sequence[str]) -> str:
    """A table of measurements, one of everything else, and how they are given."""
    from walewright.cli.tables import plain
    from walewright.sheet.regrading import optional, such_as

    head = guide.say("choices/head", file=named(file), title=design.title)
    tables = [_measures(guide, design), _others(guide, tuple(optional(guide, design)))]
    shipped = guide.say("choices/beds", beds=tuple(beds))
    return "\n\n".join((head, *(plain(t) for t in tables if t.row_count), shipped, such_as(guide, design, file)))


def _measures(guide: Guide, design: Design) -> Table:
    from rich.table import Table

    from walewright.sheet.regrading import source_of

    table = Table(title=guide.say("choices/measures"), title_justify="left", title_style="", box=None, pad_edge=False)
    table.add_column("")
    for size in design.sizes:
        table.add_column(size, justify="right")
    table.add_column("")
    for row in source_of(design).measurements:
        about = guide.say("choices/about", about=row.about, to_fit=row.to_fit).strip()
        table.add_row(row.name, *(guide.cm(v) for v in row.values), about)
    return table


def _others(guide: Guide, rows: Sequence[Sequence[str]]) -> Table:
    from rich.table import Table

    table = Table(title=guide.say("choices/others"), title_justify="left", title_style="", box=None, pad_edge=False)
    for heading in ("", "", ""):
        table.add_column(heading)
    for what, option, value in rows:
        table.add_row(what, option, value)
    return table


COMMAND = command("choices", _choices, [FILES, SIZES, CHOOSE, LANGUAGE, MESSAGES, HELP])
