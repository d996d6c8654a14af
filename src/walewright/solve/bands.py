"""Bands: how many stitches are picked up along each part of an edge.

A band walks its edges in the order they are named. A neck is walked as the piece hung on the bed, from left to right: down the
left half's edge, across the centre, up the right half's. The back hung with its right side away from the knitter, so its right
end meets the left end of the front, and the walk goes on once round.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import floor

from walewright.design.model import Band, Design, EdgeName, Fabric
from walewright.report.model import Diagnostic, Label
from walewright.solve.geometry import edge_length, half_neck
from walewright.solve.model import PickUp, SizedBand, SizedOpening, SizedPiece

STITCH_FOR_STITCH = 0.15
"""Loops are taken one for one while the band is at most so much finer or coarser than they are (from memory; common practice
is stitch for stitch along cast-off and live edges)."""

SUITS_RIB = 0.03
"""Share by which a band's stitches may be changed so that its rib comes out whole."""


@dataclass(frozen=True, slots=True)
class _Part:
    """A stretch of the walk: `points` places to pick up at, `wanted` stitches; a `firm` number is not adjusted. The two halves
    of a neck are parts that are not firm, each the other's mirror image."""

    edge: EdgeName
    part: str
    points: int
    cm: float
    wanted: float
    firm: bool


def one_edge(design: Design, band: Band) -> Diagnostic | None:
    """A band is worked along one line, and a called edge runs up both sides of its piece."""
    for edge in band.along:
        if edge.edge not in ("start", "end", "neck", "shoulder"):
            return Diagnostic(
                "band-up-both-sides",
                f"band `{band.name}` is to run along `{edge.piece} {edge.edge}`, which runs up both sides of the {edge.piece}",
                (Label(band.origin.span, "picked up here"), Label(design.piece(edge.piece).origin.span, f"the {edge.piece}")),
                helps=("a band can run along `neck`, `start`, `end` and `shoulder`",),
            )
    return None


def sized_band(design: Design, band: Band, size: int, pieces: Sequence[SizedPiece]) -> SizedBand:
    """A band in one size."""
    edging = design.edging(band.edging)
    fabric = design.fabric(edging.fabric)
    parts: list[_Part] = []
    for edge in band.along:
        parts += _parts(design, edge, next(p for p in pieces if p.name == edge.piece), fabric)
    counts = shared_out(parts, 2 * fabric.rib_every)
    pick_ups = tuple(
        PickUp(part.edge, part.part, count, part.points, part.cm) for part, count in zip(parts, counts, strict=True) if count
    )
    rows = even(edging.depth[size] * fabric.rows_per_cm)
    return SizedBand(band.name, sum(counts), rows, pick_ups, band.origin)


def even(wanted: float) -> int:
    """The nearest even number of rows or stitches, 2 at least."""
    return max(2, 2 * floor(wanted / 2 + 0.5))


def _parts(design: Design, edge: EdgeName, sized: SizedPiece, band: Fabric) -> list[_Part]:
    piece = design.piece(edge.piece)
    own = design.fabric(piece.fabric)
    if edge.edge == "neck":
        found: list[_Part] = []
        for opening in sized.openings:
            side = half_neck(opening, own)
            points = _points(opening)
            rows = [_Part(edge, p, points, side.cm, side.cm * band.stitches_per_cm, False) for p in ("left", "right")]
            found += [rows[0], *_loops(edge, "centre", opening.flat, own, band), rows[1]]
        return found
    count = edge_length(piece, sized, own, edge.edge).stitches
    if edge.edge == "shoulder":
        return [*_loops(edge, "left", count // 2, own, band), *_loops(edge, "right", count - count // 2, own, band)]
    return _loops(edge, "whole", count, own, band)


def _points(opening: SizedOpening) -> int:
    """Places along a half's neck edge: its beginning, the end of every row, and the chains cast off."""
    return 1 + opening.run.to_row - opening.run.from_row + sum(-by for _, by in opening.run.changes() if by < -1)


def _loops(edge: EdgeName, part: str, count: int, own: Fabric, band: Fabric) -> list[_Part]:
    """Stitches along a row: one for one, or by length where the band's tension is far from theirs."""
    if count == 0:
        return []
    ratio = band.stitches_per_cm / own.stitches_per_cm
    wanted = count if ratio >= 1 - STITCH_FOR_STITCH else even(count * ratio)
    return [_Part(edge, part, count, count / own.stitches_per_cm, float(wanted), True)]


def shared_out(parts: Sequence[_Part], repeat: int) -> tuple[int, ...]:
    """Stitches of each part: even in all where the loops allow it, a multiple of `repeat` (0: no rib) where that changes
    little. Parts that are not firm come in pairs, the two halves of a neck, and both of a pair get the same."""
    firm = sum(round(p.wanted) for p in parts if p.firm)
    soft = [i for i, p in enumerate(parts) if not p.firm]
    pairs = list(zip(soft[::2], soft[1::2], strict=True))
    counts = [round(p.wanted) for p in parts]
    if not pairs:
        return tuple(counts)
    wanted = firm + sum(parts[i].wanted for i in soft)
    least, most = firm + len(soft), firm + sum(parts[i].points for i in soft)
    each = (_total(wanted, repeat, least, most) - firm) // 2
    ideal = [parts[i].wanted * 2 * each / (wanted - firm) for i, _ in pairs]
    shares = [min(max(1, floor(share)), parts[i].points) for share, (i, _) in zip(ideal, pairs, strict=True)]
    while sum(shares) != each:
        step = 1 if sum(shares) < each else -1
        open_to = [k for k, (i, _) in enumerate(pairs) if 1 <= shares[k] + step <= parts[i].points]
        most_off = max(open_to, key=lambda k: (round(step * (ideal[k] - shares[k]), 9), -k))
        shares[most_off] += step
    for share, pair in zip(shares, pairs, strict=True):
        for i in pair:
            counts[i] = share
    return tuple(counts)


def _total(wanted: float, repeat: int, least: int, most: int) -> int:
    if repeat:
        whole = repeat * floor(wanted / repeat + 0.5)
        if least <= whole <= most and abs(whole - wanted) <= SUITS_RIB * wanted:
            return whole
    goal = 2 * floor(wanted / 2 + 0.5)
    return min(max(goal, least + least % 2), most - most % 2)
