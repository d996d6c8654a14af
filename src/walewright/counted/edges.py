"""Lengths of a counted piece's edges, as they are worn.

A slope of single stitches lies straight between the places where its rate changes: where a phrase of its schedule ends. The bed
measures the fabric that it made, and knows no phrases; the two have to agree.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Mapping, Sequence
from itertools import pairwise
from math import hypot

from walewright.counted.model import SizedOpening, SizedPiece, SizedRun, SizedWedge
from walewright.counted.needles import moved, moves, top_width, tops
from walewright.counted.piece import CountedPiece, Layer
from walewright.counted.stretches import NOTHING as NOTHING
from walewright.counted.stretches import EdgeLength as EdgeLength
from walewright.counted.stretches import EdgeStretch as EdgeStretch
from walewright.design.model import Piece
from walewright.trade.edge_names import StripAt, is_top, number_of_top
from walewright.trade.sides import GAP_PARTS, SIDES, EdgePart, EdgeSide

UPPER = " upper"
"""What stands behind the name of a gap or slot to mean the stitches cast on above it."""


def edge_length(of: CountedPiece, edge: str, round_it: bool = False) -> EdgeLength:
    """Length of a named edge. An edge called on both sides counts once, or, when a join goes round the whole outline of the
    piece (`round_it`), twice; of openings and shoulders all parts count."""
    return sum((stretch.length for stretch in stretches(of, edge, round_it)), NOTHING)


def stretches(of: CountedPiece, edge: str, round_it: bool = False) -> tuple[EdgeStretch, ...]:
    """The parts of a named edge, from left to right; `edge` may name one of them ("neck centre")."""
    head, part = split_part(edge)
    if head not in of.measured:
        of.measured[head] = _named(of, head)
    found = of.measured[head]
    if part:
        return tuple(s for s in found if s.part == part)
    if not round_it and (head in called_on_both(of.piece) or of.piece.strip_at(head) is not None):
        return found[:1]
    return found


def stretch_between(of: CountedPiece, edge: str, low: int, high: int) -> EdgeStretch:
    """Some of one edge ("side left", "neck centre"): of rows those after the `low`th up to the `high`th above its bottom, of
    stitches those after the `low`th from the left."""
    (whole,) = stretches(of, edge)
    if whole.length.stitches:
        share = (high - low) / whole.length.stitches
        return EdgeStretch(whole.part, EdgeLength(0, high - low, whole.length.cm * share), high - low)
    side, runs, (bottom, _) = edge_rows(of, edge)
    held = held_rows(of.sized, side) if runs in (of.sized.left, of.sized.right) else frozenset()
    return _polyline(of, whole.part, (bottom + low, bottom + high), runs, held)


def edge_rows(of: CountedPiece, edge: str) -> tuple[EdgeSide, tuple[SizedRun, ...], tuple[int, int]]:
    """Of one row edge: its side (of a gap, that of the part beside it), all runs of that side, and the rows where it begins and
    ends."""
    head, part = split_part(edge)
    gap = next((o for o in of.sized.openings if o.name == head), None)
    for side in SIDES:
        runs = gap.edge(side) if gap is not None else of.sized.left if side == "left" else of.sized.right
        own = [run for run in runs if run.name == head]
        if gap is not None and part == side:
            return side, runs, (gap.row, gap.to_row)
        if gap is None and own and part in ("", side):
            return side, runs, (own[0].from_row, own[-1].to_row)
    raise ValueError(f"{of.sized.name} has no edge {edge} along rows")


def chained_along(of: CountedPiece, edge: str) -> tuple[int, int]:
    """Stitches that an edge along rows casts off, and casts on, several at once."""
    _, runs, (bottom, top) = edge_rows(of, edge)
    moved = [by for run in runs if not run.across for row, by in run.changes() if _at_once(run, by) and bottom <= row < top]
    wider, narrower = sum(by for by in moved if by > 0), -sum(by for by in moved if by < 0)
    # What makes a gap wider is cast off beside it.
    return (narrower, wider) if runs in (of.sized.left, of.sized.right) else (wider, narrower)


def split_part(edge: str) -> tuple[str, str]:
    """ "neck centre" is the part "centre" of "neck"; of any other name the part is empty."""
    head, _, tail = edge.rpartition(" ")
    return (head, tail) if head and tail in GAP_PARTS else (edge, "")


def called_on_both(piece: Piece) -> frozenset[str]:
    """Names of row edges that both sides of the piece have."""
    return frozenset(run.name for run in piece.left if run.name) & frozenset(run.name for run in piece.right)


def above(edge: str) -> str | None:
    """The opening or slot whose upper edge this is."""
    return edge.removesuffix(UPPER) if edge.endswith(UPPER) else None


def _named(of: CountedPiece, head: str) -> tuple[EdgeStretch, ...]:
    sized = of.sized
    strip = of.piece.strip_at(head)
    if strip is not None:
        return tuple(_end_of_edging(of, strip, side) for side in SIDES)
    if head == "start":
        return (_loops(of, "whole", 1, -sized.start_left, sized.start),)
    if is_top(head):
        return _top(of, number_of_top(head))
    for opening in sized.openings:
        if opening.name == head:
            return _gap(of, opening)
        if opening.rejoins and above(head) == opening.name:
            first = opening.first + moved(opening.edge("left"))
            return (_loops(of, "whole", opening.to_row + 1, first, opening.width),)
    for slot in sized.slots:
        if slot.taken != "eyelet" and (slot.name == head or above(head) == slot.name):
            return (_loops(of, "whole", slot.row + (slot.name != head), slot.first, slot.stitches),)
    return tuple(
        _row_edge(of, side, runs, head)
        for side, runs in zip(SIDES, (sized.left, sized.right), strict=True)
        if any(run.name == head for run in runs)
    )


def _top(of: CountedPiece, number: int) -> tuple[EdgeStretch, ...]:
    """The last row, in its parts from left to right, or the `number`th of these."""
    sized = of.sized
    if of.end_edging is not None:
        width = top_width(sized)
        return (EdgeStretch("whole", EdgeLength(0, width, of.end_width_cm), width),)
    parts = tops(sized)
    outer: dict[int, EdgePart] = {1: "left", len(parts): "right"} if len(parts) > 1 else {}
    found = tuple(_loops(of, outer.get(n, "whole"), sized.rows, *at) for n, at in enumerate(parts, 1))
    return found[number - 1 : number] if number else found


def _end_of_edging(of: CountedPiece, at: StripAt, side: EdgeSide) -> EdgeStretch:
    """One end of an edging: its rows that are seen, a place to pick up at each; of a folded one through both layers."""
    rows, cm = (of.sized.edging_rows, of.edging_cm) if at == "start" else (of.sized.end_rows, of.end_cm)
    return EdgeStretch(side, EdgeLength(rows, 0, cm), rows)


def _loops(of: CountedPiece, part: EdgePart, row: int, first: int, count: int) -> EdgeStretch:
    """`count` stitches from slot `first` on, as they lie in a row. A charted panel has a gauge of its own; the wales of a latched
    one are counted as the fabric that they were knitted in. Where a needle is out of work there is no stitch, but its width."""
    base = of.stitch_cm(row)
    cm = count / of.fabric(row).stitches_per_cm
    for panel in of.panels:
        inside = panel.inside(first, first + count)
        if panel.fabric.stitch == "chart" and panel.low < row <= panel.high and inside > 0:
            cm += inside * (1 / panel.fabric.stitches_per_cm - base)
    loops = count - sum(first <= slot < first + count for slot in of.sized.out(max(row, 1) - 1))
    return EdgeStretch(part, EdgeLength(0, loops, cm), loops)


# ----------------------------------------------------------------- rows


def knitted_rows(sized: SizedPiece, from_row: int, to_row: int) -> tuple[int, ...]:
    """The rows after `from_row` up to `to_row` as they are knitted one after the other: those of a repeat come again."""
    rows = list(range(1, sized.rows + 1))
    for repeat in sorted(sized.repeats, key=lambda r: -r.from_row):
        rows[repeat.from_row : repeat.to_row] = rows[repeat.from_row : repeat.to_row] * repeat.times
    return tuple(rows[sized.counter(from_row) : sized.counter(to_row)])


def held_rows(sized: SizedPiece, side: EdgeSide) -> frozenset[int]:
    """Rows that do not reach the outer edge because its stitches are held."""
    found: set[int] = set()
    for wedge in sized.wedges:
        if wedge.edge in ("both", side):
            found |= _held(sized, wedge, side)
    return frozenset(found)


def _held(sized: SizedPiece, wedge: SizedWedge, side: EdgeSide) -> set[int]:
    """A hold is made where the carriage is not: it is at the right, or, of a part beside an opening, at the part's outer edge.
    So a left edge that is first held below a parting comes back a row later above it."""
    count = len(wedge.groups)
    first = wedge.from_row + _lead(sized, wedge.from_row, side)
    rows = 4 * count - 2 if wedge.kind == "both" else 2 * (count - 1)
    last = wedge.from_row + _lead(sized, wedge.from_row + rows + 1, side) + rows
    return set(range(first + 1, last + 1)) if rows else set()


def _lead(sized: SizedPiece, row: int, side: EdgeSide) -> int:
    """Rows that are knitted after an even row before stitches of that edge can be held."""
    return 1 if sized.parted(row) or side == "right" else 0


def _row_edge(of: CountedPiece, side: EdgeSide, runs: Sequence[SizedRun], name: str) -> EdgeStretch:
    own = [run for run in runs if run.name == name]
    return _polyline(of, side, (own[0].from_row, own[-1].to_row), runs, held_rows(of.sized, side))


def _gap(of: CountedPiece, opening: SizedOpening) -> tuple[EdgeStretch, ...]:
    rows = opening.row, opening.to_row
    left, right = (_polyline(of, p, rows, opening.edge(p), frozenset()) for p in SIDES)
    centre = _loops(of, "centre", opening.row, opening.first, opening.flat)
    return (left, centre, right) if opening.flat else (left, right)


def _polyline(
    of: CountedPiece, part: EdgePart, between: tuple[int, int], runs: Sequence[SizedRun], held: frozenset[int]
) -> EdgeStretch:
    """Straight from turn to turn, through the middle of the stitch that is moved there; stitches cast off or on at once are crossed
    within the row above them. Loops hung back across the work are drawn together or apart: that moves no edge.

    Points are the end of every row, and the stitches cast off or on on the way."""
    own = [run for run in runs if not run.across]
    by_row = moves(own)
    turns, steps = _turns(own), {row: abs(by) for run in own for row, by in run.changes() if _at_once(run, by)}
    backs = _turned_back(own, by_row, steps)
    line, count, sideways, before, turned = [(0.0, 0.0)], 0, 0, between[0], ""
    across = up = high = rows_per_cm = 0.0
    layer: Layer | None = None
    for row in knitted_rows(of.sized, *between):
        # Back at the beginning of a repeat nothing is moved: the moves there led into it.
        if row == before + 1 and row > 1 and before in by_row:
            sideways += by_row[before]
            turned = "step" if before in steps else turned or ("turn" if before in turns else "")
        here = before in backs or row != before + 1
        before = row
        if row in held:
            continue
        if layer is None or not layer.low < row <= layer.high:
            layer = of.layer(row)
            high, here = 1 / layer.fabric.rows_per_cm, here or rows_per_cm not in (0.0, layer.fabric.rows_per_cm)
            rows_per_cm = layer.fabric.rows_per_cm
        if sideways:
            wide = sideways / layer.fabric.stitches_per_cm
            if turned == "step":
                line += [(across, up), (across + wide, up + high)]
            elif turned:
                line.append((across + wide / 2, up))
            across += wide
        elif here:
            line.append((across, up))
        up, sideways, turned = up + high, 0, ""
        count += 1
    line.append((across, up))
    cm = sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(line))
    chains = sum(stitches for row, stitches in steps.items() if between[0] <= row < between[1])
    return EdgeStretch(part, EdgeLength(count, 0, cm), count + chains)


def _at_once(run: SizedRun, by: int) -> bool:
    """Whether a move is a step: cast off or on. Two decreased at once are laid on their neighbours, and slope like single ones;
    nothing of them is left to pick up."""
    return abs(by) > 1 and not run.way.anywhere(by)


def _turned_back(runs: Iterable[SizedRun], moved: Mapping[int, int], steps: Container[int]) -> frozenset[int]:
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
