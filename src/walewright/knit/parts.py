"""The parts of a piece in the order worked: the whole width up to a parting, the parts between openings one after the other, and,
where they rejoin, what they come to. Each is a row of stretches: those worked once and those worked several times."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from walewright.counted import counted_piece
from walewright.counted.model import SizedOpening, SizedPiece, SizedRun
from walewright.counted.parts import SizedPart
from walewright.design.model import Design, Piece
from walewright.knit.figures import Figure, FiguresOfPart, figures, figures_of_parts
from walewright.knit.holding import HeldEnd, is_uneven, wedge_groups
from walewright.knit.manners import ONE_END
from walewright.knit.needles_out import out_groups
from walewright.knit.operations import Side
from walewright.knit.order import Group, RowStretch
from walewright.knit.slots import slot_groups
from walewright.knit.spread import spread_groups
from walewright.knit.tracks import BOTH, ShapedEnds, alike, mark_groups, marks, run_groups
from walewright.knit.working_order import WorkedPart, working_order
from walewright.knit.zones import Fabrics
from walewright.record import record, replace
from walewright.trade.edge_names import part_of_edge
from walewright.trade.sides import OTHER_SIDE, SIDES

_LEAD: dict[Side, int] = {"left": 0, "right": 1}
"""Over the full width the carriage is at the right at even rows: the left end can be held at once, the right a row later."""


@record
class PiecePattern:
    """A piece with what is the same of it in all sizes. `twins` are the numbers of the runs whose two edges are shaped alike,
    though they have statements of their own; `met` the names of the runs of each side that are joined or picked up."""

    design: Design
    piece: Piece
    twins: frozenset[int]
    met: Mapping[Side, frozenset[str]]
    uneven: frozenset[int] = frozenset()
    """Numbers of the wedges in a stretch worked several times that are held in unequal groups in some size."""


@record
class PiecePart:
    """A part in its turn, its rows, and the charts and stripes that have to be taken up where they stood as it is turned to."""

    turn: WorkedPart
    stretches: tuple[RowStretch, ...]
    taken_up: tuple[Figure, ...] = ()


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
    fabrics = Fabrics(counted_piece(pattern.design, sized))
    turns = working_order(sized)
    drawn = figures_of_parts(figures(fabrics), turns, sized.rows, pattern.piece.end_edging is not None)
    return tuple(_part(pattern, fabrics, turn, of_part) for turn, of_part in zip(turns, drawn, strict=True))


def _part(pattern: PiecePattern, fabrics: Fabrics, turn: WorkedPart, drawn: FiguresOfPart) -> PiecePart:
    sized, part = fabrics.of.sized, turn.part
    first_row, last_row = part.from_row, part.to_row
    groups = [*fabrics.groups(part), *_wedges(pattern, sized, part), *drawn.groups]
    if part.whole:
        groups += [*spread_groups(sized), *out_groups(sized), *_outer_edges(pattern, sized, part)]
    for side in () if part.whole else part.sides:
        groups += _outer_edge(pattern, sized, side, part)
    for side, opening in (("right", part.left), ("left", part.right)):
        if opening is not None:
            groups += _inner_edge(sized, "left" if side == "left" else "right", opening, part)
    work = part.needles(sized)
    slots = [s for s in sized.slots if first_row <= s.row < last_row and work.at(s.row)[0] <= s.first <= work.at(s.row)[1]]
    groups += slot_groups(slots, fabrics.at)
    groups += _marks(pattern, sized, part)
    return PiecePart(turn, tuple(_stretches(fabrics, sized, groups, first_row, last_row)), drawn.taken_up)


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


def _outer_edges(pattern: PiecePattern, sized: SizedPiece, part: SizedPart) -> Iterator[Group]:
    """Both edges of the whole width, said once where they are alike."""
    fewest = part.needles(sized).fewest
    both = ShapedEnds(BOTH, part.from_row, fewest, _prongs(pattern), sized.right)
    if pattern.piece.symmetric:
        yield from _runs("outer", sized.left, both)
        return
    for number, run in enumerate(sized.left):
        if number in pattern.twins:
            yield from run_groups("outer", run, number, both, run.origin.path)
    for side, runs in zip(SIDES, (sized.left, sized.right), strict=True):
        for number, run in enumerate(runs):
            if number not in pattern.twins:
                end = ShapedEnds(ONE_END[side], part.from_row, fewest, _prongs(pattern))
                yield from run_groups(f"outer {side}", run, number, end, run.origin.path)


def _outer_edge(pattern: PiecePattern, sized: SizedPiece, side: Side, part: SizedPart) -> Iterator[Group]:
    runs = sized.left if side == "left" else sized.right
    fewest = part.needles(sized).fewest
    for number, run in enumerate(runs):
        track = "outer" if pattern.piece.symmetric or number in pattern.twins else f"outer {side}"
        yield from run_groups(track, run, number, ShapedEnds(ONE_END[side], 0, fewest, _prongs(pattern)), run.origin.path)


def _inner_edge(sized: SizedPiece, side: Side, opening: SizedOpening, part: SizedPart) -> Iterator[Group]:
    """The edge of the part at that side of an opening. It is scheduled for a part that has the carriage at its other end
    at even rows."""
    inner = opening.left if side == "left" else opening.right
    end = OTHER_SIDE[side]
    ends = ShapedEnds(ONE_END[end], part.from_row, part.needles(sized).fewest, early=1 if part.home == end else 0)
    yield from _runs(f"gap {side} {opening.name}", inner, ends)


def _prongs(pattern: PiecePattern) -> int:
    """Of the widest tool at hand."""
    return max(pattern.design.machine.prongs, default=1)


def _runs(track: str, runs: tuple[SizedRun, ...], ends: ShapedEnds) -> Iterator[Group]:
    for number, run in enumerate(runs):
        yield from run_groups(track, run, number, ends, run.origin.path)


def _wedges(pattern: PiecePattern, sized: SizedPiece, part: SizedPart) -> Iterator[Group]:
    for number, wedge in enumerate(sized.wedges):
        for side in SIDES:
            if wedge.edge in ("both", side) and side in part.sides:
                # A part has the carriage at its outer edge at even rows.
                end = HeldEnd(side, _LEAD[side] if part.whole else 1, part.from_row, part.to_row)
                yield from wedge_groups(f"wedge {number} {side}", wedge, end, wedge.origin.path, number in pattern.uneven)


def _marks(pattern: PiecePattern, sized: SizedPiece, part: SizedPart) -> Iterator[Group]:
    origin = pattern.piece.origin.path
    held = {side: frozenset(w.from_row for w in sized.wedges if w.edge in ("both", side)) for side in SIDES}
    left, right = (marks(runs, pattern.met[s], held[s]) for s, runs in zip(SIDES, (sized.left, sized.right), strict=True))
    if part.whole:
        yield from mark_groups(tuple(m for m in left if m in right), BOTH, origin)
        left, right = tuple(m for m in left if m not in right), tuple(m for m in right if m not in left)
    for side, found in zip(SIDES, (left, right), strict=True):
        if side in part.sides:
            yield from mark_groups(found, ONE_END[side], origin)
