"""Bands on the edges of a piece that lies flat: along armholes, ends and sides, each from the edge outwards."""

from __future__ import annotations

from collections.abc import Container, Iterator
from itertools import pairwise

from walewright.counted.edge_lines import edge_line
from walewright.counted.edges import split_part
from walewright.counted.outline import Point
from walewright.design.model import Band
from walewright.figures.drawn import DrawnGarment
from walewright.figures.measures import LaidPiece
from walewright.figures.pens import Paper
from walewright.figures.rims import Placing, beside, draw_rim
from walewright.figures.shapes import inside
from walewright.figures.trims import Trim, trim_of
from walewright.record import record
from walewright.trade.edge_names import is_top
from walewright.trade.edgings import EDGINGS

INWARDS = 0.05
"""cm from an edge to a point that tells on which side of it the piece lies."""


@record
class Rim:
    """A band along an edge: the line that it hangs on and its last edge, in cm on the piece."""

    line: tuple[Point, ...]
    outer: tuple[Point, ...]
    trim: Trim


def seen_bands(garment: DrawnGarment) -> Iterator[tuple[Band, float, Trim]]:
    """The bands that are not turned in, with their depths in cm."""
    design = garment.design
    for band in design.bands:
        if not EDGINGS[design.edging(band.edging).kind].turned_in:
            yield band, garment.band_cm(band.name), trim_of(design, band.edging)


def round_opening(garment: DrawnGarment, piece: str, opening: str) -> tuple[float, Trim]:
    """Depth and look of the band round an opening, whether it is in one or in parts that hang on both its sides; 0 of one that has
    none."""
    found: dict[str, tuple[float, Trim]] = {}
    for band, depth, trim in seen_bands(garment):
        for edge in band.along:
            head, part = split_part(edge.edge)
            if (edge.piece, head) == (piece, opening):
                found[part] = depth, trim
    whole = found.get("")
    return whole or (found["left"] if {"left", "right"} <= found.keys() else (0.0, Trim()))


def laps_at_point(garment: DrawnGarment, piece: str, opening: str) -> bool:
    """Whether the band round an opening is in two, one up each side, whose ends no join names: at its point one lies over the
    other."""
    design = garment.design
    sides = {
        split_part(edge.edge)[1]: band.name
        for band, _, _ in seen_bands(garment)
        for edge in band.along
        if (edge.piece, split_part(edge.edge)[0]) == (piece, opening)
    }
    two = {sides.get("left", ""), sides.get("right", "")}
    joined = any(two <= {e.piece for e in (*join.one, *join.other)} for join in design.joins)
    return "" not in two and len(two) == 2 and not joined


def rims(garment: DrawnGarment, piece: LaidPiece, without: Container[str] = ()) -> tuple[Rim, ...]:
    """The bands along the edges of a piece, without those round the openings and along the edges named."""
    return tuple(_rims(garment, piece, without))


def _rims(garment: DrawnGarment, piece: LaidPiece, without: Container[str]) -> Iterator[Rim]:
    of, shape = piece.of, piece.shape
    for band, depth, trim in seen_bands(garment):
        for edge in band.along:
            if edge.piece != piece.name or edge.edge in without or split_part(edge.edge)[0] in without:
                continue
            if any(slot.name == edge.edge for slot in piece.sized.slots):
                # It lies on the piece, not beside it.
                continue
            if is_top(edge.edge) and len(band.along) > 1:
                # On open loops it goes round a neck with others, and is drawn with that.
                continue
            line = edge_line(of, shape, edge.edge)
            if len(line) > 1:
                yield Rim(line, tuple(_outwards(line, depth, shape.polygon)), trim)


def _outwards(line: tuple[Point, ...], depth: float, polygon: tuple[Point, ...]) -> list[Point]:
    near = beside(line, INWARDS)
    within = sum(inside(((ax + bx) / 2, (ay + by) / 2), polygon) for (ax, ay), (bx, by) in pairwise(near))
    return beside(line, -depth if within * 2 > len(near) - 1 else depth)


def draw_rims(paper: Paper, found: tuple[Rim, ...], place: Placing) -> None:
    """The bands of a piece that lies where `place` puts it."""
    for rim in found:
        draw_rim(paper, rim.trim, rim.line, rim.outer, place)
