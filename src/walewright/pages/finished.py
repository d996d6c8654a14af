"""The table of sizes: the bodies they are to fit, and the finished measurements as counted."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Design, EdgeName
from walewright.pages.figures import length, listed, sentence, unit
from walewright.pages.measures import MeasuredPiece
from walewright.pages.model import Cell, Row, RowGroup, SizeTable

Finished = tuple[str, str, tuple[float, ...]]
"""(piece, what, cm in each size)"""


def size_table(design: Design, pieces: tuple[MeasuredPiece, ...], units: str) -> SizeTable:
    """To fit, from the source's size rows so marked; finished, from the counts."""
    to_fit = tuple(Row(sentence(m.name), _cells(m.values, units)) for m in design.measurements if m.to_fit)
    finished = tuple(Row(label, _cells(values, units)) for label, values in _finished(design, pieces))
    groups = [RowGroup(title, rows) for title, rows in (("To fit", to_fit), ("Finished", finished)) if rows]
    return SizeTable(f"Sizes in {unit(units)}", design.sizes, tuple(groups))


def size_notes(design: Design) -> tuple[str, ...]:
    """Where the bodies' measurements come from."""
    sources: dict[str, list[str]] = {}
    for m in design.measurements:
        if m.source:
            sources.setdefault(m.source, []).append(m.name.replace("_", " "))
    return tuple(f"{sentence(listed(names))}: {source.removeprefix('Source: ').rstrip('.')}." for source, names in sources.items())


def _cells(values: tuple[float, ...], units: str) -> tuple[Cell, ...]:
    return tuple(Cell(*length(v, units)) for v in values)


def _finished(design: Design, pieces: tuple[MeasuredPiece, ...]) -> Iterator[tuple[str, tuple[float, ...]]]:
    by_name = {p.piece.name: p for p in pieces}
    round_body: set[str] = set()
    for join in design.joins:
        if len(join.one) == len(join.other) == 1 and join.one[0].piece != join.other[0].piece:
            sides = _width_at_seam(by_name, join.one[0]), _width_at_seam(by_name, join.other[0])
            if sides[0] is not None and sides[1] is not None and join.one[0].piece not in round_body:
                round_body |= {join.one[0].piece, join.other[0].piece}
                level, one = sides[0]
                yield f"All round, at {level}", tuple(a + b for a, b in zip(one, sides[1][1], strict=True))
    yield from _merged([f for p in pieces for f in _of_piece(p, with_widths=p.piece.name not in round_body)])


def _width_at_seam(by_name: dict[str, MeasuredPiece], edge: EdgeName) -> tuple[str, tuple[float, ...]] | None:
    """(level, widths) of a piece where the seam `edge`, which both its sides have, comes to its end."""
    whole = by_name[edge.piece]
    run = next((r for r in whole.piece.right if r.name == edge.edge), None)
    if run is None or all(r.name != edge.edge for r in whole.piece.left):
        return None
    widths = []
    for size, shape in enumerate(whole.outlines):
        height = whole.height(size, run.to_level)
        widths.append(shape.half_width(height, "left") + shape.half_width(height, "right"))
    return run.to_level.replace("_", " "), tuple(widths)


def _of_piece(piece: MeasuredPiece, with_widths: bool) -> Iterator[Finished]:
    has_whole = any(m.place == "whole" for m in piece.measures)
    for m in piece.measures:
        wanted = m.place == "whole" or (m.place == "rise" and not has_whole)
        if wanted or m.place == "neck width" or (with_widths and m.place in ("start", "across")):
            yield piece.piece.name, m.label.lower().removeprefix("whole "), m.values


def _merged(rows: list[Finished]) -> Iterator[tuple[str, tuple[float, ...]]]:
    """Pieces that measure alike share a row."""
    names: dict[tuple[str, tuple[float, ...]], list[str]] = {}
    for piece, what, values in rows:
        names.setdefault((what, tuple(round(v, 3) for v in values)), []).append(piece)
    for (what, values), pieces in names.items():
        yield f"{sentence(listed(pieces))}: {what}", values
