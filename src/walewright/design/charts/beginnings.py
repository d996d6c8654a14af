"""The first row of a piece that begins in a chart: what can be done with the loops that are on the needles before it."""

from __future__ import annotations

from collections.abc import Callable

from walewright.design.charts.areas import Area, Ground
from walewright.design.charts.drawn import meaning
from walewright.design.model import Cell, Chart, Piece
from walewright.report.model import Span
from walewright.trade.cells import CELLS
from walewright.trade.ends import STARTS


def begins(piece: Piece, found: tuple[Area, ...], ground: Ground) -> bool:
    """Whether the charts among the areas `found` that begin with the piece can be worked from its first row on; told where not."""
    edging = ground.edgings.get(piece.start_edging) if piece.start_edging is not None else None
    if not STARTS[piece.start_way].open or (piece.start_edging is not None and edging is None):
        return True
    if edging is not None and edging.when == "first":
        # A row of the hem's own knits the fold together before.
        return True
    lowest = [area for area in found if area.chart is not None and area.low == piece.levels[0].height]
    sound = [_on_waste(piece, area, ground) for area in lowest]
    return all(sound)


def _on_waste(piece: Piece, area: Area, ground: Ground) -> bool:
    at = _first(area.chart, lambda cell: bool(cell.yarn) or not CELLS[cell.kind].on_waste)
    return at is None or _tell(at, piece, area, ground)


def _first(chart: Chart | None, hinders: Callable[[Cell], bool]) -> int | None:
    """The column, from 0, of the first such cell in a chart's first row. Blocks of yarn leave the loops below them alone."""
    if chart is None or chart.picture:
        return None
    return next((column for column in range(chart.width) if hinders(chart.cell(0, column))), None)


def _tell(column: int, piece: Piece, area: Area, ground: Ground) -> bool:
    """Reports it at the cell, once for each chart."""
    chart = area.chart
    assert chart is not None
    if (chart.name, "begins") not in ground.told:
        ground.told.add((chart.name, "begins"))
        cell = chart.cell(0, column)
        ground.cloth.place.findings.report(
            "chart-begins-open",
            (_place(chart, column, ground), meaning(cell)),
            (area.span, "begins"),
            notes=("plain",),
            helps=("draw-knit",),
            column=column + 1,
            chart=chart.name,
            piece=piece.name,
        )
    return False


def _place(chart: Chart, column: int, ground: Ground) -> Span:
    places = ground.first_rows.get(chart.name, ())
    return places[column] if column < len(places) else chart.origin.span
