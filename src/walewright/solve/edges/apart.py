"""Openings side by side in the programme: which of two begins or ends first, and what is left of the piece between them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise, product

from walewright.design.model import EdgeRun, Opening, Piece
from walewright.report.said import said
from walewright.solve.algebra.programme import Draft, Lines, asks
from walewright.solve.algebra.sums import Terms
from walewright.solve.algebra.terms import EdgeTerms, PieceTerms
from walewright.solve.edges.gaps import end_level, gap_runs
from walewright.solve.edges.gauge import level_number

EdgeCorner = tuple[float, Terms, bool]
"""Where an edge is at a height: the height in cm, the place, and whether the edge moves on the way to it."""

SAME_CM = 1e-6


def height(piece: Piece, level: str, size: int) -> float:
    """Of a level, in cm."""
    return piece.levels[level_number(piece, level)].height[size]


def low_cm(piece: Piece, opening: Opening, size: int) -> float:
    """Where the piece parts for an opening."""
    if opening.from_level is not None:
        return height(piece, opening.from_level, size)
    return height(piece, end_level(piece, opening), size) - opening.depth[size]


def high_cm(piece: Piece, opening: Opening, size: int) -> float:
    """Where its parts end or rejoin."""
    return height(piece, end_level(piece, opening), size)


def share_rows(piece: Piece, one: Opening, other: Opening) -> bool:
    """Whether two openings are open in the same rows: in every size, if in any."""
    return _within(piece, one, other, 0) > SAME_CM


def _within(piece: Piece, one: Opening, other: Opening, size: int) -> float:
    high = min(high_cm(piece, o, size) for o in (one, other))
    return high - max(low_cm(piece, o, size) for o in (one, other))


def from_the_left(openings: Sequence[Opening], numbers: Sequence[int]) -> list[int]:
    """Of openings that share rows, their numbers from left to right."""
    return sorted(numbers, key=lambda n: openings[n].centre[:1])


def side_by_side(draft: Draft, piece: Piece, one: int, other: int, terms: Sequence[PieceTerms]) -> None:
    """The rules of two openings that share rows."""
    left, right = from_the_left(piece.openings, (one, other))
    _in_turn(draft, piece, left, right, terms)
    _between(draft, piece, left, right, terms)


def _in_turn(draft: Draft, piece: Piece, left: int, right: int, terms: Sequence[PieceTerms]) -> None:
    """A neck has no level of its own: it begins before or after what it does in centimetres, or in the very row."""
    one, other = piece.openings[left], piece.openings[right]
    lines: Lines = []
    for i, t in enumerate(terms):
        for first, second in ((left, right), (right, left)):
            opening, beside = piece.openings[first], piece.openings[second]
            if opening.from_level is not None:
                continue
            begins, at = t.openings[first].from_rows, low_cm(piece, opening, i)
            ends = (
                (t.openings[second].from_rows, low_cm(piece, beside, i)),
                (t.openings[second].to_rows, high_cm(piece, beside, i)),
            )
            for rows, cm in ends:
                way = begins - rows
                lines.append((i, way.equals(0) if abs(at - cm) < SAME_CM else way >= 1 if at > cm else -way >= 1))
    clause = said("openings-in-turn", one=one.name, other=other.name, piece=piece.name)
    asks(draft, clause, (one.origin, other.origin), lines, len(terms))


def _between(draft: Draft, piece: Piece, left: int, right: int, terms: Sequence[PieceTerms]) -> None:
    """Stitches are left of the piece between two gaps, wherever the edges beside them come to a place. Where one is on its way
    there, it is taken to be where it is nearer to the other."""
    one, other = piece.openings[left], piece.openings[right]
    least = max(map(stitches_kept, (one, other)))
    lines: Lines = []
    for i, t in enumerate(terms):
        edges = [
            list(_corners(piece, one, gap_runs(one, "right"), t.openings[left].right, i)),
            list(_corners(piece, other, gap_runs(other, "left"), t.openings[right].left, i)),
        ]
        # At a height where one of them is not open its edge has no place, so that nothing is asked.
        for at in sorted({h for edge in edges for h, _, _ in edge}):
            places = (tuple(_at(edge, at)) for edge in edges)
            lines += [(i, -(a + b) >= least) for a, b in product(*places)]
    clause = said("stitches-between", one=one.name, other=other.name, piece=piece.name, stitches=least)
    asks(draft, clause, (one.origin, other.origin), list(dict.fromkeys(lines)), len(terms))


def stitches_kept(opening: Opening) -> int:
    """Stitches that a part keeps beside an opening: as many as a transfer tool there takes."""
    return max(1, opening.way.inset, *(run.way.inset for run in (*opening.left, *opening.right)))


def _corners(piece: Piece, opening: Opening, runs: Sequence[EdgeRun], edge: EdgeTerms, size: int) -> Iterator[EdgeCorner]:
    yield low_cm(piece, opening, size), edge.start, False
    for number, run in enumerate(runs):
        yield height(piece, run.to_level, size), edge.after[number], any(run.change) or any(run.most or ())


def _at(edge: Sequence[EdgeCorner], height: float) -> Iterator[Terms]:
    """The places where it may be at that height."""
    exact = [place for h, place, _ in edge if abs(h - height) < SAME_CM]
    if exact:
        yield from exact
        return
    for (low, before, _), (high, after, moves) in pairwise(edge):
        if low < height < high:
            yield from (before, after) if moves else (after,)
