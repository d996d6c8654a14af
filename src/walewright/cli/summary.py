"""What `walewright check` prints of a proven garment: tables of what came out, and what is left over."""

from __future__ import annotations

from typing import TYPE_CHECKING

from walewright.cli.left_over import MARK, is_off, left_over
from walewright.cli.tables import plain
from walewright.cli.worn_tables import worn_tables
from walewright.report.columns import named

if TYPE_CHECKING:
    from rich.table import Table

    from walewright.pipeline import Outcome


def summary(outcome: Outcome) -> str:
    """Yarn and what goes round a body first; then a table a piece: per size the stitches and rows counted, and the centimetres
    wanted and knitted, marked where they are further apart than a stitch or a row; last what is unused, unsewn and marked."""
    design, _, _, proof = outcome.result()
    sizes = proof.sizes
    head = f"{named(outcome.file)}: {design.title}, {len(sizes)} {'size' if len(sizes) == 1 else 'sizes'} proven"
    tables = [_yarn_table(outcome)] if sizes else []
    if outcome.fit is not None:
        tables += worn_tables(outcome.fit, design.sizes)
    tables += [_piece_table(outcome, index) for index in range(len(sizes[0].pieces))] if sizes else []
    if sizes and sizes[0].joins:
        tables.append(_join_table(outcome))
    return "\n\n".join((head, *(plain(table) for table in tables if table.row_count), left_over(outcome)))


def _yarn_table(outcome: Outcome) -> Table:
    """Grams and whole balls of every yarn of the garment, swatches and reserve included."""
    from rich.table import Table

    sizes = outcome.result()[3].sizes
    table = Table(title="yarn", title_justify="left", title_style="", box=None, pad_edge=False)
    for heading in ("", "", *(size.size for size in sizes)):
        table.add_column(heading, justify="right" if heading else "left")
    for at, yarn in enumerate(sizes[0].yarn):
        if yarn.kind == "yarn":
            uses = [size.yarn[at] for size in sizes]
            table.add_row(yarn.label, "g/balls", *(f"{use.grams:.0f}/{use.balls}" for use in uses))
    return table


def _piece_table(outcome: Outcome, index: int) -> Table:
    from rich.table import Table

    from walewright.guide.english.measure_words import measure_words

    _, counts, _, proof = outcome.result()
    sizes = proof.sizes
    pieces = [size.pieces[index] for size in sizes]
    solved = [{(d.piece, d.key): d.solved for d in garment.deviations} for garment in counts.sizes]
    table = Table(title=pieces[0].name, title_justify="left", title_style="", box=None, pad_edge=False)
    for heading in ("", ""):
        table.add_column(heading)
    for size in sizes:
        table.add_column(size.size, justify="right")
    for at, measure in enumerate(pieces[0].measures):
        counted = [found.get((piece.name, measure.key)) for found, piece in zip(solved, pieces, strict=True)]
        table.add_row(measure_words(measure.key), measure.unit, *("" if count is None else str(count) for count in counted))
        both = (piece.measures[at] for piece in pieces)
        table.add_row("", "cm wanted/knitted", *(f"{m.wanted_cm:.1f}/{m.knitted_cm:.1f}{MARK if is_off(m) else ''}" for m in both))
    table.add_row("rows", "", *(str(p.rows) for p in pieces))
    table.add_row("needles", "", *(f"{p.first_needle}-{p.last_needle}".replace(" ", "") for p in pieces))
    return table


def _join_table(outcome: Outcome) -> Table:
    """Both sides of every join: rows where both have them, else centimetres, and what was asked for."""
    from rich.table import Table

    from walewright.guide.english import LANGUAGE
    from walewright.sheet.checked import join_words

    sizes = outcome.result()[3].sizes
    table = Table(title="joins", title_justify="left", title_style="", box=None, pad_edge=False)
    for heading in ("", ""):
        table.add_column(heading)
    for size in sizes:
        table.add_column(size.size, justify="right")
    for at, join in enumerate(sizes[0].joins):
        found = [size.joins[at] for size in sizes]
        text = join_words(LANGUAGE, join)
        if all(j.one_rows is not None and j.other_rows is not None for j in found):
            table.add_row(text, "rows", *(f"{j.one_rows}/{j.other_rows}" for j in found))
        else:
            table.add_row(text, "cm", *(f"{j.one_cm:.1f}/{j.other_cm:.1f}" for j in found))
        if any(j.longer_cm for j in found):
            table.add_row("", "cm longer wanted/knitted", *(f"{j.longer_cm:.1f}/{j.one_cm - j.other_cm:.1f}" for j in found))
    return table
