"""Lengths of a counted piece's edges, as they are worn.

A slope of single stitches lies straight between the places where its rate changes: where a phrase of its schedule ends. The bed
measures the fabric that it made, and knows no phrases; the two have to agree.
"""

from __future__ import annotations

from collections.abc import Callable, Container, Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from walewright.counted.model import SizedOpening, SizedPiece, SizedRun, SizedSlot, SizedWedge
from walewright.design.model import Design, Fabric, Piece

PARTS = ("left", "centre", "right")
"""Of an opening's edge, or of an edge on both sides, from left to right as the piece hung on the bed."""

UPPER = " upper"
"""What stands behind the name of a gap or slot to mean the stitches cast on above it."""


@dataclass(frozen=True, slots=True)
class EdgeLength:
    """What lies along an edge: rows, stitches and centimetres."""

    rows: int
    stitches: int
    cm: float

    def plus(self, other: EdgeLength) -> EdgeLength:
        """Both, one after the other."""
        return EdgeLength(self.rows + other.rows, self.stitches + other.stitches, self.cm + other.cm)


NOTHING = EdgeLength(0, 0, 0.0)


@dataclass(frozen=True, slots=True)
class Stretch:
    """One part of an edge. `part` is "whole", "left", "centre" or "right"; `points` are the places along it where a needle can
    take something up, from below or from the left."""

    part: str
    length: EdgeLength
    points: int


def edge_length(design: Design, piece: Piece, sized: SizedPiece, edge: str, round_it: bool = False) -> EdgeLength:
    """Length of a named edge. An edge called on both sides counts once, or, when a join goes round the whole outline of the
    piece (`round_it`), twice; of openings and shoulders all parts count."""
    found = NOTHING
    for stretch in stretches(design, piece, sized, edge, round_it):
        found = found.plus(stretch.length)
    return found


def stretches(design: Design, piece: Piece, sized: SizedPiece, edge: str, round_it: bool = False) -> tuple[Stretch, ...]:
    """The parts of a named edge, from left to right; `edge` may name one of them ("neck centre")."""
    head, part = split_part(edge)
    found = _named(design, piece, sized, head)
    if part:
        return tuple(s for s in found if s.part == part)
    if head in called_on_both(piece) and not round_it:
        return found[:1]
    return found


def split_part(edge: str) -> tuple[str, str]:
    """ "neck centre" is the part "centre" of "neck"; of any other name the part is empty."""
    head, _, tail = edge.rpartition(" ")
    return (head, tail) if head and tail in PARTS else (edge, "")


def called_on_both(piece: Piece) -> frozenset[str]:
    """Names of row edges that both sides of the piece have."""
    return frozenset(run.name for run in piece.left if run.name) & frozenset(run.name for run in piece.right)


def above(edge: str) -> str | None:
    """The opening or slot whose upper edge this is."""
    return edge.removesuffix(UPPER) if edge.endswith(UPPER) else None


def _named(design: Design, piece: Piece, sized: SizedPiece, head: str) -> tuple[Stretch, ...]:
    row = _Row(design, piece, sized)
    if head == "start":
        return (row.loops("whole", 1, -sized.start_left, sized.start),)
    if head in ("end", "shoulder"):
        first, width = -sized.start_left - moved(sized.left), top_width(sized)
        parted = next((o for o in sized.openings if to_the_top(sized, o)), None)
        if parted is None:
            return (row.loops("whole", sized.rows, first, width),)
        left, right = shoulders(sized, parted)
        return (
            row.loops("left", sized.rows, first, left),
            row.loops("right", sized.rows, first + width - right, right),
        )
    for opening in sized.openings:
        if opening.name == head:
            return _gap(design, piece, sized, opening)
        if opening.rejoins and above(head) == opening.name:
            first = opening.first + moved(gap_runs(opening, "left"))
            return (row.loops("whole", ends_at(sized, opening) + 1, first, opening.width),)
    for slot in sized.slots:
        if slot.taken != "eyelet" and (slot.name == head or above(head) == slot.name):
            return (row.loops("whole", slot.row + (slot.name != head), slot.first, slot_width(slot)),)
    return tuple(
        _row_edge(design, piece, sized, side, runs, head)
        for side, runs in (("left", sized.left), ("right", sized.right))
        if any(run.name == head for run in runs)
    )


# ----------------------------------------------------------------- stitches


@dataclass(frozen=True, slots=True)
class _Row:
    """What the stitches of a row measure. A charted panel has a gauge of its own; the wales of a latched one are counted as the
    fabric that they were knitted in."""

    design: Design
    piece: Piece
    sized: SizedPiece

    def loops(self, part: str, row: int, first: int, count: int) -> Stretch:
        """`count` stitches from slot `first` on, as they lie in a row."""
        per_cm = fabric_at(self.design, self.piece, self.sized, row).stitches_per_cm
        cm = count / per_cm
        for chart in self.sized.charts:
            inside = min(first + count - 1, chart.last) - max(first, chart.first) + 1
            if chart.area == "panel" and chart.fabric and chart.from_row < row <= chart.to_row and inside > 0:
                cm += inside * (1 / self.design.fabric(chart.fabric).stitches_per_cm - 1 / per_cm)
        return Stretch(part, EdgeLength(0, count, cm), count)


def moved(runs: Iterable[SizedRun]) -> int:
    """Stitches that runs move outwards in all."""
    return sum(by for run in runs for _, by in run.changes())


def top_width(sized: SizedPiece) -> int:
    """Stitches of the last row, an opening's included."""
    return sized.start + moved((*sized.left, *sized.right))


def slot_width(slot: SizedSlot) -> int:
    """Stitches taken for a slot, and cast on again above it."""
    return slot.last - slot.first + 1


def to_the_top(sized: SizedPiece, opening: SizedOpening) -> bool:
    """Whether the parts never come together again."""
    return not opening.rejoins and ends_at(sized, opening) == sized.rows


def ends_at(sized: SizedPiece, opening: SizedOpening) -> int:
    """The last row of an opening."""
    return opening.to_row or sized.rows


def gap_runs(opening: SizedOpening, part: str) -> tuple[SizedRun, ...]:
    """The inner edge of the part at that side of the gap."""
    return (opening.left if part == "left" else opening.right) or (opening.run,)


def shoulders(sized: SizedPiece, opening: SizedOpening) -> tuple[int, int]:
    """Stitches of the last row left and right of an opening."""
    both = top_width(sized) - opening.width
    if not opening.left:
        return both // 2, both - both // 2
    left = sized.start_left + moved(sized.left) + opening.first + moved(opening.left)
    return left, both - left


# ----------------------------------------------------------------- rows


def fabric_at(design: Design, piece: Piece, sized: SizedPiece, row: int) -> Fabric:
    """The fabric over the whole width that row `row` (1 ...) is knitted in."""
    zones = (z for z in sized.zones if z.first > z.last and z.from_row < row <= z.to_row)
    zone = next(zones, None)
    return design.fabric(piece.fabric if zone is None else zone.fabric)


def _fabrics(design: Design, piece: Piece, sized: SizedPiece) -> Callable[[int], Fabric]:
    """As `fabric_at`, for one row after the other: the fabrics are looked up once."""
    base = design.fabric(piece.fabric)
    zones = [(z.from_row, z.to_row, design.fabric(z.fabric)) for z in sized.zones if z.first > z.last]
    return lambda row: next((fabric for after, to, fabric in zones if after < row <= to), base)


def knitted_rows(sized: SizedPiece, from_row: int, to_row: int) -> tuple[int, ...]:
    """The rows after `from_row` up to `to_row` as they are knitted one after the other: those of a repeat come again."""
    rows = list(range(1, sized.rows + 1))
    for repeat in sorted(sized.repeats, key=lambda r: -r.from_row):
        rows[repeat.from_row : repeat.to_row] = rows[repeat.from_row : repeat.to_row] * repeat.times
    return tuple(rows[sized.counter(from_row) : sized.counter(to_row)])


def held_rows(sized: SizedPiece, side: str) -> frozenset[int]:
    """Rows that do not reach the outer edge because its stitches are held."""
    found: set[int] = set()
    for wedge in sized.wedges:
        if wedge.edge in ("both", side):
            found |= _held(sized, wedge, side)
    return frozenset(found)


def _held(sized: SizedPiece, wedge: SizedWedge, side: str) -> set[int]:
    """A hold is made where the carriage is not: it is at the right, or, of a part beside an opening, at the part's outer edge.
    So a left edge that is first held below a parting comes back a row later above it."""
    count = len(wedge.groups)
    first = wedge.from_row + _lead(sized, wedge.from_row, side)
    rows = 4 * count - 2 if wedge.kind == "both" else 2 * (count - 1)
    last = wedge.from_row + _lead(sized, wedge.from_row + rows + 1, side) + rows
    return set(range(first + 1, last + 1)) if rows else set()


def _lead(sized: SizedPiece, row: int, side: str) -> int:
    """Rows that are knitted after an even row before stitches of that edge can be held."""
    parted = any(o.row <= row < ends_at(sized, o) for o in sized.openings)
    return 1 if parted or side == "right" else 0


def _row_edge(design: Design, piece: Piece, sized: SizedPiece, side: str, runs: Sequence[SizedRun], name: str) -> Stretch:
    own = [run for run in runs if run.name == name]
    return _polyline(design, piece, sized, side, (own[0].from_row, own[-1].to_row), runs, held_rows(sized, side))


def _gap(design: Design, piece: Piece, sized: SizedPiece, opening: SizedOpening) -> tuple[Stretch, ...]:
    rows = opening.row, ends_at(sized, opening)
    left, right = (_polyline(design, piece, sized, p, rows, gap_runs(opening, p), frozenset()) for p in ("left", "right"))
    centre = _Row(design, piece, sized).loops("centre", opening.row, opening.first, opening.flat)
    return (left, centre, right) if opening.flat else (left, right)


def _polyline(
    design: Design,
    piece: Piece,
    sized: SizedPiece,
    part: str,
    between: tuple[int, int],
    runs: Sequence[SizedRun],
    held: frozenset[int],
) -> Stretch:
    """Straight from turn to turn, through the middle of the stitch that is moved there; stitches cast off or on at once are crossed
    within the row above them. Loops hung back across the work are drawn together or apart: that moves no edge.

    Points are the end of every row, and the stitches cast off or on on the way."""
    moves = [run for run in runs if not run.across]
    by_row = _moved_at(moves)
    turns, steps = _turns(moves), {row: abs(by) for run in moves for row, by in run.changes() if _at_once(run, by)}
    backs = _turned_back(moves, by_row, steps)
    line, count, sideways, before, turned = [(0.0, 0.0)], 0, 0, between[0], ""
    across = up = 0.0
    rows_per_cm = 0.0
    fabric_of = _fabrics(design, piece, sized)
    for row in knitted_rows(sized, *between):
        # Back at the beginning of a repeat nothing is moved: the moves there led into it.
        if row == before + 1 and row > 1 and before in by_row:
            sideways += by_row[before]
            turned = "step" if before in steps else turned or ("turn" if before in turns else "")
        here = before in backs or row != before + 1
        before = row
        if row in held:
            continue
        fabric = fabric_of(row)
        wide, high = sideways / fabric.stitches_per_cm, 1 / fabric.rows_per_cm
        if sideways and turned == "step":
            line += [(across, up), (across + wide, up + high)]
        elif sideways and turned:
            line.append((across + wide / 2, up))
        elif not sideways and (here or rows_per_cm not in (0.0, fabric.rows_per_cm)):
            line.append((across, up))
        across, up, rows_per_cm = across + wide, up + high, fabric.rows_per_cm
        sideways, turned = 0, ""
        count += 1
    line.append((across, up))
    cm = sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(line))
    chains = sum(stitches for row, stitches in steps.items() if between[0] <= row < between[1])
    return Stretch(part, EdgeLength(count, 0, cm), count + chains)


def _moved_at(runs: Iterable[SizedRun]) -> dict[int, int]:
    """Row to the stitches that the edge moves there."""
    found: dict[int, int] = {}
    for run in runs:
        for row, by in run.changes():
            found[row] = found.get(row, 0) + by
    return found


def _at_once(run: SizedRun, by: int) -> bool:
    """Whether a move is a step: cast off or on. Two decreased at once are laid on their neighbours, and slope like single ones;
    nothing of them is left to pick up."""
    return abs(by) > 1 and by != -run.way.at_once


def _turned_back(runs: Iterable[SizedRun], moved: dict[int, int], steps: Container[int]) -> frozenset[int]:
    """Rows between two runs where an edge that sloped one way begins to slope the other way. Elsewhere it lies straight from the
    last move below such a row to the first one above it."""

    def way(rows: Iterable[int]) -> int:
        nearest = next((row for row in rows if moved[row]), None)
        return moved[nearest] if nearest is not None and nearest not in steps else 0

    between = {row for run in runs for row in (run.from_row, run.to_row)} - moved.keys()
    rows = sorted(moved)
    return frozenset(row for row in between if way(reversed([r for r in rows if r < row])) * way(r for r in rows if r > row) < 0)


def _turns(runs: Iterable[SizedRun]) -> frozenset[int]:
    """Rows where the rate of the moves may change: where a run begins and ends, its first move, and the last one of each phrase."""
    found: set[int] = set()
    for run in runs:
        at = run.from_row
        found |= {at, run.to_row}
        for phrase in (p for p in run.phrases if p.times):
            if at == run.from_row:
                found.add(at + phrase.gaps[0])
            at += phrase.rows
            found.add(at)
    return frozenset(found)
