"""Charts beside what the bed knitted: whole repeats where they were asked for, and patterns that go on across joins."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.bed import KnitFabric
from walewright.counted.model import SizedChart, SizedGarment, SizedJoin, SizedPiece
from walewright.counted.needles import moved_in
from walewright.design.model import Chart, Design, EdgeName
from walewright.proof.told import Told
from walewright.report.said import Fact, said
from walewright.trade.sides import EdgeSide


def charts(design: Design, sized: SizedPiece, fabric: KnitFabric) -> Told:
    """Of each chart of a piece: the stitches of its first row, and where it lies among them."""
    for placed in sized.charts:
        chart = design.chart(placed.chart)
        row = sized.counter(placed.from_row) + 1
        where: dict[str, Fact] = {"row": row, "chart": placed.chart}
        extent = fabric.extent_at(row)
        if extent is None:
            yield said("at/chart-rows", **where), 1, 0
            continue
        columns = _columns(chart, placed)
        if placed.area == "whole":
            least, most = _with_moves(placed.first, _inwards(sized, "left", placed.from_row))
            found = extent[0] + placed.edge
            yield said("at/chart-first", **where), min(max(least, found), most), found
            least, most = _with_moves(placed.last, -_inwards(sized, "right", placed.from_row))
            found = extent[1] - placed.edge
            yield said("at/chart-last", **where), min(max(least, found), most), found
            if design.fabric(placed.fabric).fit == "whole":
                yield said("at/chart-stitches", **where), 2 * placed.edge + columns, extent[1] - extent[0] + 1
        else:
            yield said("at/chart-needles", **where), columns, placed.stitches
            inside = max(0, min(placed.last, extent[1]) - max(placed.first, extent[0]) + 1)
            yield said("at/chart-in-work", **where), columns, inside


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
    where: dict[str, Fact] = {"one": one.piece, "one_edge": one.edge, "other": other.piece, "other_edge": other.edge}
    yield said("at/seam-charts", **where), len(here), len(there)
    for a, b in zip(here, there, strict=False):
        rows = (*(sized[e.piece].counter(c.from_row) + 1 for e, c in ((one, a), (other, b))),)
        yield said("at/seam-first-row", **where, chart=a.chart), rows[0], rows[1] if a.chart == b.chart else -1
        repeat = design.chart(a.chart).repeat
        ends = _phases(fabrics[one.piece], a, rows[0], repeat), _phases(fabrics[other.piece], b, rows[1], repeat)
        if ends[0] is None or ends[1] is None:
            yield said("at/seam-rows", **where, chart=a.chart), 1, 0
            continue
        # Round the body the right edge of one piece meets the left edge of the other, and the other way about.
        yield said("at/seam-column", **where, chart=a.chart, piece=other.piece), (ends[0][1] + 1) % repeat, ends[1][0]
        yield said("at/seam-column", **where, chart=a.chart, piece=one.piece), (ends[1][1] + 1) % repeat, ends[0][0]


def _wholes(sized: SizedPiece) -> tuple[SizedChart, ...]:
    return tuple(c for c in sized.charts if c.area == "whole" and c.fabric)


def _phases(fabric: KnitFabric, placed: SizedChart, row: int, repeat: int) -> tuple[int, int] | None:
    """Columns of the repeat on the outermost charted needles at that row."""
    extent = fabric.extent_at(row)
    if extent is None or not repeat:
        return None
    return (extent[0] + placed.edge - placed.start) % repeat, (extent[1] - placed.edge - placed.start) % repeat
