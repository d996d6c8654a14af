"""Charts beside what the bed knitted: whole repeats where they were asked for, and patterns that go on across joins."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.bed import KnitFabric
from walewright.counted.model import SizedChart, SizedGarment, SizedJoin, SizedPiece
from walewright.counted.needles import moved_in
from walewright.design.model import Chart, Design, EdgeName
from walewright.proof.told import Told
from walewright.trade.sides import EdgeSide


def charts(design: Design, sized: SizedPiece, fabric: KnitFabric) -> Told:
    """Of each chart of a piece: the stitches of its first row, and where it lies among them."""
    for placed in sized.charts:
        chart = design.chart(placed.chart)
        row = sized.counter(placed.from_row) + 1
        where = f"row {row}, under the chart {placed.chart}"
        extent = fabric.extent_at(row)
        if extent is None:
            yield f"{where}: rows", 1, 0
            continue
        columns = _columns(chart, placed)
        if placed.area == "whole":
            least, most = _with_moves(placed.first, _inwards(sized, "left", placed.from_row))
            yield f"{where}: its first needle by number", min(max(least, extent[0] + placed.edge), most), extent[0] + placed.edge
            least, most = _with_moves(placed.last, -_inwards(sized, "right", placed.from_row))
            yield f"{where}: its last needle by number", min(max(least, extent[1] - placed.edge), most), extent[1] - placed.edge
            if design.fabric(placed.fabric).fit == "whole":
                yield f"{where}: stitches", 2 * placed.edge + columns, extent[1] - extent[0] + 1
        else:
            yield f"{where}: needles", columns, placed.stitches
            inside = max(0, min(placed.last, extent[1]) - max(placed.first, extent[0]) + 1)
            yield f"{where}: needles in work", columns, inside


def _with_moves(slot: int, by: int) -> tuple[int, int]:
    """Between which slots an end lies that may have been moved already: at the carriage's side it has to be, at the other it is
    moved a row later."""
    return min(slot, slot + by), max(slot, slot + by)


def _inwards(sized: SizedPiece, side: EdgeSide, row: int) -> int:
    """Stitches by which an end moves inwards in the very row `row`: those taken off and those held from there on."""
    by, held = moved_in(sized, row, side)
    return held - sum(by)


def _columns(chart: Chart, placed: SizedChart) -> int:
    """As many columns as whole repeats and borders make."""
    return chart.before + placed.repeats * chart.repeat + chart.after if chart.repeat else chart.width


# ----------------------------------------------------------------- across joins


def matches(design: Design, garment: SizedGarment, join: SizedJoin, fabrics: Mapping[str, KnitFabric]) -> Told:
    """Of a join whose patterns go on across it: the repeat's column beside the seam and the row, at both edges of both pieces."""
    if not join.matching:
        return
    for one in join.one:
        for other in join.other:
            yield from _match(design, garment, one, other, fabrics)


def _match(design: Design, garment: SizedGarment, one: EdgeName, other: EdgeName, fabrics: Mapping[str, KnitFabric]) -> Told:
    sized = {p.name: p for p in garment.pieces}
    if one.piece not in sized or other.piece not in sized:
        return
    here, there = (_wholes(sized[e.piece]) for e in (one, other))
    where = f"the seam of {one.piece} {one.edge} and {other.piece} {other.edge}"
    yield f"{where}: charts along it", len(here), len(there)
    for a, b in zip(here, there, strict=False):
        rows = (*(sized[e.piece].counter(c.from_row) + 1 for e, c in ((one, a), (other, b))),)
        yield f"{where}: first row of {a.chart}", rows[0], rows[1] if a.chart == b.chart else -1
        repeat = design.chart(a.chart).repeat
        ends = _phases(fabrics[one.piece], a, rows[0], repeat), _phases(fabrics[other.piece], b, rows[1], repeat)
        if ends[0] is None or ends[1] is None:
            yield f"{where}: rows of {a.chart}", 1, 0
            continue
        # Round the body the right edge of one piece meets the left edge of the other, and the other way about.
        yield f"{where}: column of {a.chart} left of {other.piece}", (ends[0][1] + 1) % repeat, ends[1][0]
        yield f"{where}: column of {a.chart} left of {one.piece}", (ends[1][1] + 1) % repeat, ends[0][0]


def _wholes(sized: SizedPiece) -> tuple[SizedChart, ...]:
    return tuple(c for c in sized.charts if c.area == "whole" and c.fabric)


def _phases(fabric: KnitFabric, placed: SizedChart, row: int, repeat: int) -> tuple[int, int] | None:
    """Columns of the repeat on the outermost charted needles at that row."""
    extent = fabric.extent_at(row)
    if extent is None or not repeat:
        return None
    return (extent[0] + placed.edge - placed.start) % repeat, (extent[1] - placed.edge - placed.start) % repeat
