"""The parts of a piece: the whole width up to a parting, the parts beside an opening one after the other, and, where they
rejoin, the whole width again. Each is a row of stretches: those worked once and those worked several times."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace

from walewright.counted import counted_piece
from walewright.counted.model import SizedOpening, SizedPiece, SizedRun
from walewright.counted.needles import InWork
from walewright.design.model import Design, Piece
from walewright.knit.figures import beside, figures, whole_width
from walewright.knit.holding import HeldEnd, is_uneven, wedge_groups
from walewright.knit.manners import ONE_END
from walewright.knit.needles_out import out_groups
from walewright.knit.operations import Side
from walewright.knit.order import Group, RowStretch
from walewright.knit.slots import slot_groups
from walewright.knit.spread import spread_groups
from walewright.knit.tracks import BOTH, ShapedEnds, alike, mark_groups, marks, run_groups
from walewright.knit.zones import Fabrics
from walewright.trade.edge_names import part_of_edge
from walewright.trade.sides import OTHER_SIDE, SIDES

_LEAD: dict[Side, int] = {"left": 0, "right": 1}
"""Over the full width the carriage is at the right at even rows: the left end can be held at once, the right a row later."""


@dataclass(frozen=True, slots=True)
class PiecePattern:
    """A piece with what is the same of it in all sizes. `twins` are the numbers of the runs whose two edges are shaped alike,
    though they have statements of their own; `met` the names of the runs of each side that are joined or picked up."""

    design: Design
    piece: Piece
    twins: frozenset[int]
    met: Mapping[Side, frozenset[str]]
    uneven: frozenset[int] = frozenset()
    """Numbers of the wedges in a stretch worked several times that are held in unequal groups in some size."""


@dataclass(frozen=True, slots=True)
class PiecePart:
    """Rows of one part: the whole width (`side` None), or the part at `side` of `opening`. A whole width with an `opening` goes
    up to its parting."""

    side: Side | None
    opening: SizedOpening | None
    stretches: tuple[RowStretch, ...]

    @property
    def last_row(self) -> int:
        return self.stretches[-1].last_row


def pattern(design: Design, piece: Piece, sizes: Iterable[SizedPiece]) -> PiecePattern:
    """`sizes` are the piece's counts in every size."""
    all_sizes = list(sizes)
    twins: frozenset[int] = frozenset()
    if not piece.symmetric:
        count = min(len(runs) for s in all_sizes for runs in (s.left, s.right))
        twins = frozenset(i for i in range(count) if all(alike(s.left[i], s.right[i]) for s in all_sizes))
    joined = (edge for join in design.joins for edge in (*join.one, *join.other))
    picked = (edge for band in design.bands for edge in band.along)
    hung = (edge for other in design.pieces for edge in other.start_along)
    names = frozenset(edge.edge for edge in (*joined, *picked, *hung) if edge.piece == piece.name)
    # Of an edge called on both sides a join may name one.
    met = {side: names | {of.name for of in map(part_of_edge, names) if of.part == side} for side in SIDES}
    return PiecePattern(design, piece, twins, met, frozenset(n for s in all_sizes for n in _uneven(s)))


def _uneven(sized: SizedPiece) -> Iterator[int]:
    for number, wedge in enumerate(sized.wedges):
        if is_uneven(wedge) and any(r.from_row <= wedge.from_row and wedge.to_row <= r.to_row for r in sized.repeats):
            yield number


def parts(pattern: PiecePattern, sized: SizedPiece) -> tuple[PiecePart, ...]:
    """The parts in the order worked."""
    found: list[PiecePart] = []
    at = 0
    for opening in sorted(sized.openings, key=lambda o: o.row):
        found.append(_part(pattern, sized, None, opening, at, opening.row))
        # What rejoins ends at the right, so that knitting goes on with the carriage there.
        order: tuple[Side, Side] = ("left", "right") if opening.rejoins else ("right", "left")
        found += [_part(pattern, sized, side, opening, opening.row, opening.to_row) for side in order]
        at = opening.to_row
        if not opening.rejoins:
            return tuple(found)
    found.append(_part(pattern, sized, None, None, at, sized.rows))
    return tuple(found)


def _part(
    pattern: PiecePattern, sized: SizedPiece, side: Side | None, opening: SizedOpening | None, first_row: int, last_row: int
) -> PiecePart:
    fabrics = Fabrics(counted_piece(pattern.design, sized))
    groups = [*fabrics.groups(first_row, last_row), *_wedges(pattern, sized, side, first_row, last_row)]
    found = figures(fabrics)
    work = InWork(sized, side, opening)
    if side is None or opening is None:
        groups += whole_width(found, first_row, last_row, sized.rows)
        groups += [*spread_groups(sized), *out_groups(sized), *_outer_edges(pattern, sized, first_row, work)]
        slots = sized.slots
    else:
        groups += beside(found, side, opening, last_row)
        groups += _outer_edge(pattern, sized, side, work)
        inner = opening.left if side == "left" else opening.right
        groups += _runs(f"gap {side} {opening.name}", inner, ShapedEnds(ONE_END[OTHER_SIDE[side]], first_row, work.fewest))
        slots = tuple(s for s in sized.slots if (s.first < opening.first) == (side == "left"))
    groups += slot_groups([s for s in slots if first_row <= s.row < last_row], fabrics.at)
    groups += _marks(pattern, sized, side)
    return PiecePart(side, opening, tuple(_stretches(fabrics, sized, groups, first_row, last_row)))


def _stretches(fabrics: Fabrics, sized: SizedPiece, groups: list[Group], first_row: int, last_row: int) -> Iterator[RowStretch]:
    """Cut where a stretch that is worked several times begins and ends."""
    at, whole = first_row, RowStretch(first_row, last_row, tuple(groups))

    def cut(begin: int, end: int, times: int) -> RowStretch:
        rows = replace(whole, first_row=begin, last_row=end, times=times, opens=begin == first_row)
        if end == begin or fabrics.goes_on(begin):
            return rows.only_its_own()
        changes = fabrics.use(begin) != fabrics.use(end - 1)
        return replace(rows.only_its_own(), yarn=fabrics.use(begin), yarn_each_time=changes)

    for again in sorted(sized.repeats, key=lambda r: r.from_row):
        if first_row <= again.from_row < again.to_row <= last_row:
            if again.from_row > at:
                yield cut(at, again.from_row, 1)
            yield cut(again.from_row, again.to_row, again.times)
            at = again.to_row
    if last_row > at or at == first_row:
        yield cut(at, last_row, 1)


# ----------------------------------------------------------------- tracks of a part


def _outer_edges(pattern: PiecePattern, sized: SizedPiece, from_row: int, work: InWork) -> Iterator[Group]:
    """Both edges of the whole width, said once where they are alike."""
    both = ShapedEnds(BOTH, from_row, work.fewest, _prongs(pattern), sized.right)
    if pattern.piece.symmetric:
        yield from _runs("outer", sized.left, both)
        return
    for number, run in enumerate(sized.left):
        if number in pattern.twins:
            yield from run_groups("outer", run, number, both, run.origin.path)
    for side, runs in zip(SIDES, (sized.left, sized.right), strict=True):
        for number, run in enumerate(runs):
            if number not in pattern.twins:
                end = ShapedEnds(ONE_END[side], from_row, work.fewest, _prongs(pattern))
                yield from run_groups(f"outer {side}", run, number, end, run.origin.path)


def _outer_edge(pattern: PiecePattern, sized: SizedPiece, side: Side, work: InWork) -> Iterator[Group]:
    runs = sized.left if side == "left" else sized.right
    for number, run in enumerate(runs):
        track = "outer" if pattern.piece.symmetric or number in pattern.twins else f"outer {side}"
        yield from run_groups(track, run, number, ShapedEnds(ONE_END[side], 0, work.fewest, _prongs(pattern)), run.origin.path)


def _prongs(pattern: PiecePattern) -> int:
    """Of the widest tool at hand."""
    return max(pattern.design.machine.prongs, default=1)


def _runs(track: str, runs: tuple[SizedRun, ...], ends: ShapedEnds) -> Iterator[Group]:
    for number, run in enumerate(runs):
        yield from run_groups(track, run, number, ends, run.origin.path)


def _wedges(pattern: PiecePattern, sized: SizedPiece, part: Side | None, first_row: int, last_row: int) -> Iterator[Group]:
    for number, wedge in enumerate(sized.wedges):
        for side in SIDES:
            if wedge.edge in ("both", side) and part in (None, side):
                # A part has the carriage at its outer edge at even rows.
                end = HeldEnd(side, _LEAD[side] if part is None else 1, first_row, last_row)
                yield from wedge_groups(f"wedge {number} {side}", wedge, end, wedge.origin.path, number in pattern.uneven)


def _marks(pattern: PiecePattern, sized: SizedPiece, part: Side | None) -> Iterator[Group]:
    origin = pattern.piece.origin.path
    held = {side: frozenset(w.from_row for w in sized.wedges if w.edge in ("both", side)) for side in SIDES}
    left, right = (marks(runs, pattern.met[s], held[s]) for s, runs in zip(SIDES, (sized.left, sized.right), strict=True))
    if part is None:
        yield from mark_groups(tuple(m for m in left if m in right), BOTH, origin)
        left, right = tuple(m for m in left if m not in right), tuple(m for m in right if m not in left)
    for side, found in zip(SIDES, (left, right), strict=True):
        if part in (None, side):
            yield from mark_groups(found, ONE_END[side], origin)
