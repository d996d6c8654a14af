"""Wholes: what the author wants all round a garment, or all across, at a level, as a wish of the programme. What each piece is off
adds up over all of them, and of numbers that suit a piece as well as each other the one is taken that suits the whole.

Pieces are followed over their seams from level to level. Where a seam comes to a piece beside a level, at an opening or at an edge
that a band is hung on, nothing is wished for: `fit` measures it all the same.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import pairwise

from walewright.design.model import Design, Finished, Measured, PerSize, Piece
from walewright.design.model.per_size import minus
from walewright.glue.model import Chain, EndAt, Glued, GluedSizes, Place
from walewright.record import record
from walewright.solve.algebra.programme import Draft, Wish
from walewright.solve.algebra.quantities import OFF_COST
from walewright.solve.algebra.sums import NOTHING, Terms
from walewright.solve.edges.edges import ACROSS_RUN, come_to, runs_of
from walewright.solve.edges.gauge import fabric_above, level_number
from walewright.solve.edges.lengths import FINE, Garment
from walewright.solve.edges.widths import across
from walewright.trade.joins import JOINS
from walewright.trade.sides import OTHER_SIDE, SIDES, EdgeSide

CLOSE = 1e-3
"""cm. A seam comes to a level where it comes so near to it in every size."""

MOST_CROSSED = 200


def whole_wishes(draft: Draft, design: Design, garment: Garment, glued: GluedSizes) -> None:
    """Writes a wish for each whole that the author wants and that can be followed from level to level."""
    for group, sizes in zip(glued.groups, glued.sizes, strict=True):
        seams = _seams(design, group)
        for finished in design.finished:
            if finished.wanted and finished.measured is not None:
                crossed = _followed(design, seams, finished.measured)
                if crossed is not None:
                    _wish(draft, design, garment, finished, crossed, sizes)


def _wish(draft: Draft, design: Design, garment: Garment, finished: Finished, crossed: _Crossed, sizes: Sequence[int]) -> None:
    for size, wanted in ((size, finished.wanted[size]) for size in sizes):
        terms, cm, per_cm = NOTHING, wanted, 0.0
        for name, level in crossed.pieces:
            piece = design.piece(name)
            by = across(design.at(size), piece, level)
            width = _width(piece, garment, level, size)
            if width is None:
                return
            terms, cm, per_cm = terms + round(FINE / by.per_cm) * width, cm + by.spare / by.per_cm, max(per_cm, by.per_cm)
        # A sewn seam takes a stitch of each side.
        cm += sum(
            1 / fabric_above(design, piece, piece.levels[0].name).stitches_per_cm for piece in map(design.piece, crossed.taken)
        )
        draft.wishes.append(Wish(terms, FINE * cm, OFF_COST * per_cm / FINE))


def _width(piece: Piece, garment: Garment, level: str, size: int) -> Terms | None:
    """Stitches from edge to edge at a level; None where an edge is on its way there."""
    terms = garment[piece.name][size]
    if level == piece.levels[0].name:
        return terms.left.start + terms.right.start
    runs = [come_to(piece, side, level) for side in SIDES]
    if None in runs:
        return None
    return terms.left.after[runs[0] or 0] + terms.right.after[runs[1] or 0]


# ----------------------------------------------------------------- from piece to piece


@record
class _Crossed:
    """(piece, level) of each piece that is crossed, as often as it is; and the pieces that a sewn seam takes a stitch of."""

    pieces: tuple[tuple[str, str], ...]
    taken: tuple[str, ...]


@record
class _Side:
    """One edge in a seam: number `at` of its own chain, and the chain across, both walked in the same direction."""

    own: Chain
    begins: Sequence[EndAt]
    at: int
    across: Chain
    across_begins: Sequence[EndAt]
    sewn: bool


_Key = tuple[str, str, int]


def _key(place: Place) -> _Key:
    return place.owner, place.edge, place.copy


def _seams(design: Design, glued: Glued) -> dict[_Key, _Side | None]:
    """What every edge is sewn to; None where a band or a piece is hung on it."""
    found: dict[_Key, _Side | None] = {_key(place): None for line in glued.lines for place in line.along}
    for seam in glued.seams:
        sewn = JOINS[design.joins[seam.join].way].by_needle
        sides = ((seam.one, seam.one_begins), (seam.other, seam.other_begins))
        for (own, begins), (over, over_begins) in (sides, sides[::-1]):
            for at, place in enumerate(own):
                found[_key(place)] = _Side(own, begins, at, over, over_begins, sewn)
    return found


def _followed(design: Design, seams: Mapping[_Key, _Side | None], what: Measured) -> _Crossed | None:
    """All that is crossed from the piece that is named, on both sides; None where it cannot be followed, or goes round and should
    not."""
    if what.kind not in ("round level", "across level"):
        return None
    first = (what.owner, 1, what.at)
    right = _walk(design, seams, first, "right")
    if right is None:
        return None
    closed, pieces, taken = right
    if closed != (what.kind == "round level"):
        return None
    if not closed:
        left = _walk(design, seams, first, "left")
        if left is None:
            return None
        pieces, taken = (*pieces, *left[1]), (*taken, *left[2])
    return _Crossed(((what.owner, what.at), *pieces), taken)


def _walk(
    design: Design, seams: Mapping[_Key, _Side | None], first: tuple[str, int, str], leaving: EdgeSide
) -> tuple[bool, tuple[tuple[str, str], ...], tuple[str, ...]] | None:
    """Over seams until the first piece is come to again (True) or an edge that is free; with what is crossed on the way."""
    pieces: list[tuple[str, str]] = []
    taken: list[str] = []
    owner, copy, level = first
    for _ in range(MOST_CROSSED):
        piece = design.piece(owner)
        edge = _edge_at(piece, leaving, level)
        if edge is None or _apart(piece, level):
            return None
        if (owner, edge.name, copy) not in seams:
            return False, tuple(pieces), tuple(taken)
        side = seams[owner, edge.name, copy]
        entered = None if side is None else _over(design, side, edge, level)
        if side is None or entered is None:
            return None
        place, entering, to = entered
        if side.sewn:
            taken += [owner, place.owner]
        owner, copy, level, leaving = place.owner, place.copy, to, OTHER_SIDE[entering]
        if (owner, copy) == first[:2]:
            return (True, tuple(pieces), tuple(taken)) if level == first[2] else None
        pieces.append((owner, level))
    return None


def _apart(piece: Piece, level: str) -> bool:
    """Whether the piece is parted, or worn folded, in the row below a level."""
    at = level_number(piece, level)
    height = piece.levels[at].height
    for opening in piece.openings:
        end = piece.levels[level_number(piece, opening.to_level) if opening.to_level else len(piece.levels) - 1].height
        parting = minus(end, opening.depth)
        if any(p < h - CLOSE and h < e + CLOSE for p, h, e in zip(parting, height, end, strict=True)):
            return True
    return any(
        out.worn is not None and level_number(piece, out.from_level) <= max(at - 1, 0) < level_number(piece, out.to_level)
        for out in piece.needles_out
    )


# ----------------------------------------------------------------- over a seam


@record
class _RowsEdge:
    """An edge along rows, named as in `Place`, from one level to another, by number; or the end of an edging or a band, which comes
    to no level (`deep`)."""

    name: str
    side: EdgeSide
    low: int
    high: int
    deep: PerSize = ()

    def length(self, piece: Piece) -> PerSize:
        """How high it is."""
        if self.deep:
            return self.deep
        return minus(piece.levels[self.high].height, piece.levels[self.low].height)


def _edges(piece: Piece) -> list[_RowsEdge]:
    both = {run.name for run in piece.left if run.name} & {run.name for run in piece.right}
    found: list[_RowsEdge] = []
    for side in SIDES:
        low = 0
        for run in runs_of(piece, side):
            high = level_number(piece, run.to_level)
            name = f"{run.name} {side}" if run.name in both else run.name
            if run.path == ACROSS_RUN or high == low:
                continue
            if found and (found[-1].name, found[-1].side, found[-1].high) == (name, side, low):
                found[-1] = _RowsEdge(name, side, found[-1].low, high)
            else:
                found.append(_RowsEdge(name, side, low, high))
            low = high
    return found


def _edge_at(piece: Piece, side: EdgeSide, level: str) -> _RowsEdge | None:
    """The edge at that side in the row below a level; at the start in the first one."""
    at = max(level_number(piece, level), 1)
    return next((e for e in _edges(piece) if e.side == side and e.low < at <= e.high), None)


def _over(design: Design, side: _Side, edge: _RowsEdge, level: str) -> tuple[Place, EdgeSide, str] | None:
    """(place, its side, level) that a level's row comes to across a seam."""
    own, other = _chained(design, side.own), _chained(design, side.across)
    if own is None or other is None:
        return None
    piece = design.piece(side.own[side.at].owner)
    heights = zip(piece.levels[level_number(piece, level)].height, piece.levels[edge.low].height, strict=True)
    up = tuple(high - low for high, low in heights)
    lengths = [e.length(p) for p, e in own]
    inside = up if side.begins[side.at] == "bottom" else minus(lengths[side.at], up)
    before = [sum(of_size) for of_size in zip(*(lengths[: side.at] or [(0.0,) * len(up)]), strict=True)]
    share = [(b + i) / sum(each[n] for each in lengths) for n, (b, i) in enumerate(zip(before, inside, strict=True))]
    return _come_out(side, other, share)


def _come_out(side: _Side, other: Sequence[tuple[Piece, _RowsEdge]], share: Sequence[float]) -> tuple[Place, EdgeSide, str] | None:
    """The level across at which so large a share of the seam is come to."""
    lengths = [edge.length(piece) for piece, edge in other]
    ends = [tuple(sum(each[n] for each in lengths[:number]) for n in range(len(share))) for number in range(len(lengths) + 1)]
    whole = ends[-1]
    for number, (piece, edge) in enumerate(other):
        low, high = next(pair for at, pair in enumerate(pairwise(ends)) if at == number)
        for at in range(edge.low, edge.high + 1) if not edge.deep else ():
            up = minus(piece.levels[at].height, piece.levels[edge.low].height)
            bottom = side.across_begins[number] == "bottom"
            way = tuple(lo + u if bottom else hi - u for lo, hi, u in zip(low, high, up, strict=True))
            if all(abs(w - s * all_of) < CLOSE for w, s, all_of in zip(way, share, whole, strict=True)):
                return side.across[number], edge.side, piece.levels[at].name
    return None


def _chained(design: Design, chain: Chain) -> list[tuple[Piece, _RowsEdge]] | None:
    """The edges of a chain, where all are edges along rows, or ends of edgings and bands."""
    pieces = {piece.name: piece for piece in design.pieces}
    found: list[tuple[Piece, _RowsEdge]] = []
    for place in chain:
        edging = design.strip(place.owner, place.edge)
        piece = pieces.get(place.owner, design.pieces[0])
        edge = next((e for e in _edges(piece) if e.name == place.edge), None)
        if edging is not None:
            edge = _RowsEdge(place.edge, "left", 0, 0, edging.depth)
        if edge is None:
            return None
        found.append((piece, edge))
    return found
