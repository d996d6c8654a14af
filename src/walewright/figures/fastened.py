"""What lies on a piece as it is worn: the edgings of its pockets, and buttons, one on each buttonhole."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from walewright.counted.edge_lines import DrawnEdge, edge_line
from walewright.counted.outline import Point
from walewright.design.model import Band, EdgeName
from walewright.figures.banded import Rim, seen_bands
from walewright.figures.drawn import DrawnGarment
from walewright.figures.measures import LaidPiece
from walewright.figures.pens import Paper, path
from walewright.figures.rims import Placing, draw_rim

BUTTON = 0.95
"""mm: half across a button."""

ROUND = 0.5523
"""Of its radius: the handles of the curves that make a circle."""


def draw_pockets(paper: Paper, garment: DrawnGarment, piece: LaidPiece, place: Placing) -> None:
    """The slots of a piece that lies where `place` puts it: an edging that hangs on one goes up over its mouth."""
    edged = {(e.piece, e.edge): (depth, trim) for band, depth, trim in seen_bands(garment) for e in band.along}
    for slot in piece.sized.slots:
        line = edge_line(piece.of, piece.shape, slot.name) if slot.taken != "eyelet" else ()
        if len(line) < 2:
            continue
        depth, trim = edged.get((piece.name, slot.name), (0.0, None))
        if trim is None:
            paper.draw("seam", path([place(p) for p in line]))
        else:
            draw_rim(paper, trim, line, [(x, y + depth) for x, y in line], place)


def draw_buttons(paper: Paper, spots: Iterable[Point]) -> None:
    """Buttons at spots of the paper."""
    drawn = [(_circle(spot, BUTTON), _circle((spot[0], spot[1]), 0.2)) for spot in spots]
    for rim, hole in drawn:
        paper.draw("cloth", rim)
        paper.draw("outline", rim, hole)


def _circle(at: Point, r: float) -> str:
    (x, y), k = at, ROUND * r
    arcs = ((r, k, k, r, 0, r), (-k, r, -r, k, -r, 0), (-r, -k, -k, -r, 0, -r), (k, -r, r, -k, r, 0))
    curves = "".join(f"C{x + a:.2f} {y + b:.2f} {x + c:.2f} {y + d:.2f} {x + e:.2f} {y + f:.2f}" for a, b, c, d, e, f in arcs)
    return f"M{x + r:.2f} {y:.2f}{curves}Z"


def own_buttons(piece: LaidPiece) -> tuple[Point, ...]:
    """Where the buttonholes of a piece itself lie, cm on it."""
    slots = (slot for slot in piece.sized.slots if slot.taken == "eyelet")
    return tuple(piece.of.point(slot.first + 0.5, slot.row) for slot in slots)


def on_bands(garment: DrawnGarment, piece: LaidPiece, rims: Sequence[Rim]) -> tuple[Point, ...]:
    """Where the buttonholes of bands and strips along a piece's edges lie, cm on it: in the middle of the bands, as `rims` are
    drawn."""
    found = [_beside(spot, rims) for spot in _on_edges(garment, piece)]
    return tuple(spot for spot in found if spot is not None)


def _beside(spot: Point, rims: Sequence[Rim]) -> Point | None:
    """The middle of the nearest band beside a spot of an edge."""
    best: tuple[float, Point] | None = None
    for rim in rims:
        for (a, b), (c, d) in zip(pairwise(rim.line), pairwise(rim.outer), strict=True):
            long = math.dist(a, b)
            if long < 1e-9:
                continue
            share = ((spot[0] - a[0]) * (b[0] - a[0]) + (spot[1] - a[1]) * (b[1] - a[1])) / long**2
            share = min(max(share, 0.0), 1.0)
            inner, outer = _between(a, b, share), _between(c, d, share)
            far = math.dist(spot, inner)
            if best is None or far < best[0]:
                best = far, _between(inner, outer, 0.5)
    return best[1] if best is not None and best[0] < 1.0 else None


def _on_edges(garment: DrawnGarment, piece: LaidPiece) -> Iterator[Point]:
    """The places of the buttonholes on the edges of the piece itself."""
    for band in garment.design.bands:
        for share in _shares(garment, band):
            yield from _at(piece, band.along, share)
    for strip in garment.pieces:
        holes = [slot.row / strip.sized.rows for slot in strip.sized.slots if slot.taken == "eyelet"]
        for join in garment.design.joins if holes else ():
            for own, other in ((join.one, join.other), (join.other, join.one)):
                if {e.piece for e in own} == {strip.name} and {e.piece for e in other} == {piece.name}:
                    yield from (spot for share in holes for spot in _at(piece, other, share))


def _shares(garment: DrawnGarment, band: Band) -> Iterator[float]:
    """How far along its edges each buttonhole of a band lies, as a share of their length."""
    sized = garment.counts.band(band.name)
    begins, ends = sized.holed
    for hole in sized.holes:
        yield (begins + (ends - begins) / 2 + (hole.first + hole.last + 1) / 2) / max(sized.stitches, 1)


def _at(piece: LaidPiece, along: Sequence[EdgeName], share: float) -> Iterator[Point]:
    """The spot so far along several edges, if it is on this piece."""
    found = [edge_line(piece.of, piece.shape, e.edge) if e.piece == piece.name else () for e in along]
    # The line of a side goes on down the edging below it, which may be named besides.
    lines = _walked([line for line in found if not any(set(line) < set(other) for other in found)])
    points = [p for line in lines for p in line]
    left = share * sum(math.dist(a, b) for a, b in pairwise(points))
    for a, b in pairwise(points):
        long = math.dist(a, b)
        if left <= long:
            yield _between(a, b, left / max(long, 1e-9))
            return
        left -= long


def _walked(lines: list[DrawnEdge]) -> list[DrawnEdge]:
    """Each line the way that goes on from the one before it; the first one, the way that leads to the second."""
    made: list[DrawnEdge] = []
    for at, line in enumerate(lines):
        after = lines[at + 1] if at + 1 < len(lines) else ()
        back = line[::-1]
        if made and made[-1] and line:
            line = min(line, back, key=lambda way: math.dist(made[-1][-1], way[0]))
        elif line and after:
            line = min(line, back, key=lambda way: min(math.dist(way[-1], end) for end in (after[0], after[-1])))
        made.append(line)
    return made


def _between(a: Point, b: Point, share: float) -> Point:
    return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share
