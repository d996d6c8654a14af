"""Edges in the programme: their rows, stitches and lengths as sums of numbers that are still to be found."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from math import hypot

from walewright.counted.edges import above, called_on_both, split_part
from walewright.counted.edgings import edging_rows
from walewright.design.model import DesignInSize, EdgeRun, Edging, Fabric, Opening, Piece, Rate
from walewright.record import record, replace
from walewright.solve.algebra.sums import NOTHING, Terms
from walewright.solve.algebra.terms import EdgeTerms, PieceTerms
from walewright.solve.edges.apart import from_the_left
from walewright.solve.edges.curves import quarter_ellipse
from walewright.solve.edges.edges import ACROSS_RUN, runs_of
from walewright.solve.edges.gaps import end_level, gap_runs, rejoins
from walewright.solve.edges.gauge import fabric_above, fabric_below, level_number
from walewright.solve.edges.held import end_of
from walewright.solve.edges.multiples import leeway
from walewright.solve.edges.widths import across
from walewright.trade.edge_names import is_top, number_of_top, part_of_edge
from walewright.trade.sides import SIDES, EdgeSide

FINE = 10_000
"""Lengths in a rule are whole ten-thousandths of a centimetre."""

ROUNDING = 300
"""What a length may lose to rounding and to moves a stitch wider than wanted, over all its terms: 0.3 mm."""

_SLOPE = 0.01
"""Share by which a slope may come out longer than the straight line between its ends: rows are whole."""

_CAST_OFF = 1.5
"""Stitches to two rows of a curve from which on they come to two and more, which are cast off."""

Garment = Mapping[str, Sequence[PieceTerms]]
"""Piece name to its terms per size; a mirror image has its model's."""


@record
class LengthTerms:
    """Rows, stitches, and length in 1/FINE cm. `rough`: the length
    is that of a curve as it is wanted, which the rows that come out will only be near; `loose`: by how much it may be off
    because of slopes."""

    rows: Terms = NOTHING
    stitches: Terms = NOTHING
    length: Terms = NOTHING
    rough: bool = False
    loose: int = 0

    def __add__(self, other: LengthTerms) -> LengthTerms:
        """Both, one after the other."""
        return LengthTerms(
            rows=self.rows + other.rows,
            stitches=self.stitches + other.stitches,
            length=self.length + other.length,
            rough=self.rough or other.rough,
            loose=self.loose + other.loose,
        )


def edge_terms(at: DesignInSize, piece: Piece, terms: PieceTerms, name: str, round_it: bool = False) -> LengthTerms:
    """One named edge in one size, as `geometry` measures it afterwards."""
    head, part = split_part(name)
    edging = at.design.strip(piece.name, head)
    if edging is not None:
        times = 2 if round_it and not part else 1
        return sum((strip_terms(at, edging) for _ in range(times)), LengthTerms())
    if head == "start":
        first = piece.levels[0].name
        loops = _loops(terms.left.start + terms.right.start, fabric_above(at.design, piece, first))
        return loops + _in_panels(at, piece, first)
    if is_top(head):
        parted = any(not rejoins(piece, o) for o in piece.openings)
        loops = _loops(_top(piece, terms, name), fabric_below(at.design, piece, ""))
        return loops + _in_panels(at, piece, "", parted)
    for opening, own in zip(piece.openings, terms.openings, strict=True):
        end = end_level(piece, opening)
        if opening.name == head:
            sides = tuple(side for side in SIDES if part in ("", side))
            found = LengthTerms()
            for side in sides:
                found += _gap_side(at, piece, terms, opening, side)
            # The rows above the parting are as near to those below it as the programme needs.
            return found if part in SIDES else found + _loops(own.taken, fabric_below(at.design, piece, end))
        if above(head) == opening.name:
            return _loops(own.width, fabric_above(at.design, piece, end))
    for slot, stitches in zip(piece.slots, terms.slots, strict=True):
        if head == slot.name:
            return _loops(stitches, fabric_below(at.design, piece, slot.level))
        if above(head) == slot.name:
            return _loops(stitches, fabric_above(at.design, piece, slot.level))
    outer: EdgeSide = part if part in SIDES else "left" if any(run.name == head for run in piece.left) else "right"
    found = _outer(at, piece, terms, outer, head)
    return found + found if round_it and not part and head in called_on_both(piece) else found


def strip_terms(at: DesignInSize, edging: Edging) -> LengthTerms:
    """The end of an edging or a band: how deep it is follows from its depth alone."""
    rows = edging_rows(at, edging)
    length = round(FINE / at.design.fabric(edging.fabric).rows_per_cm) * rows
    return LengthTerms(rows=NOTHING + rows, length=NOTHING + length)


def _loops(stitches: Terms, fabric: Fabric) -> LengthTerms:
    return LengthTerms(stitches=stitches, length=round(FINE / fabric.stitches_per_cm) * stitches)


def _in_panels(at: DesignInSize, piece: Piece, level: str, parted: bool = False) -> LengthTerms:
    """What charted panels add to the length of all stitches at a level. Of `parted` ones it is not known before they are counted
    how many stitches of a panel are on which side."""
    by = across(at, piece, level, charted=True)
    if not by.spare:
        return LengthTerms()
    return LengthTerms(rough=True) if parted else LengthTerms(length=NOTHING - round(FINE * by.spare / by.per_cm))


def _top(piece: Piece, terms: PieceTerms, edge: str) -> Terms:
    """Stitches of the last row, or of its part that is called so."""
    numbers = from_the_left(piece.openings, [n for n, opening in enumerate(piece.openings) if not rejoins(piece, opening)])
    gaps = [terms.openings[n] for n in numbers]
    # How far each part reaches to the left and to the right of the centre line.
    left = [terms.left.after[-1], *(-gap.right.after[-1] for gap in gaps)]
    right = [*(-gap.left.after[-1] for gap in gaps), terms.right.after[-1]]
    widths = [a + b for a, b in zip(left, right, strict=True)]
    part, number = part_of_edge(edge).part, number_of_top(edge)
    if number:
        return widths[number - 1]
    return widths[0] if part == "left" else widths[-1] if part == "right" else sum(widths, NOTHING)


# ----------------------------------------------------------------- rows


def _stretches(
    at: DesignInSize, piece: Piece, terms: PieceTerms, low: int, high: int, side: EdgeSide | None
) -> Iterator[tuple[int, Terms]]:
    """(number of the level below, rows that reach the edge at that side) from each level to the next."""
    for number in range(low, high):
        below, over = piece.levels[number].name, piece.levels[number + 1].name
        times = 1
        for repeat in piece.repeats:
            if level_number(piece, repeat.from_level) <= number < level_number(piece, repeat.to_level):
                times *= at.of(repeat.times)
        rows = 2 * times * (terms.rows[over] - terms.rows[below])
        for wedge in piece.wedges:
            begin, end = level_number(piece, wedge.from_level), level_number(piece, end_of(piece, wedge))
            if wedge.edge in ("both", side) and begin <= number < end:
                # Of all the rows of a wedge, two reach the edge that is held.
                rows = NOTHING + (2 * times if number == begin else 0)
        yield number, rows


def _upright(at: DesignInSize, piece: Piece, terms: PieceTerms, low: int, high: int, side: EdgeSide | None) -> LengthTerms:
    """The rows between two levels, one above another."""
    found = LengthTerms()
    for number, rows in _stretches(at, piece, terms, low, high, side):
        row = FINE / fabric_above(at.design, piece, piece.levels[number].name).rows_per_cm
        found += LengthTerms(rows, length=round(row) * Terms(rows.of) + round(row * rows.more))
    return found


def _outer(at: DesignInSize, piece: Piece, terms: PieceTerms, side: EdgeSide, name: str) -> LengthTerms:
    found = LengthTerms()
    low = piece.levels[0].name
    for number, run in enumerate(runs_of(piece, side)):
        if run.name == name:
            begin, end = level_number(piece, low), level_number(piece, run.to_level)
            found += _upright(at, piece, terms, begin, end, side)
            high = at.of(piece.levels[end].height) - at.of(piece.levels[begin].height)
            found += _sideways(at, piece, side=side, run=run, edge=terms.edge(side), number=number, height=high)
        low = run.to_level
    return found


def _gap_side(at: DesignInSize, piece: Piece, terms: PieceTerms, opening: Opening, side: EdgeSide) -> LengthTerms:
    """The inner edge of the part at one side of an opening."""
    own = terms.openings[piece.openings.index(opening)]
    end = end_level(piece, opening)
    to = level_number(piece, end)
    if opening.from_level is None:
        rows = 2 * own.depth
        found = LengthTerms(rows, length=round(FINE / fabric_below(at.design, piece, end).rows_per_cm) * rows)
        low = at.of(piece.levels[to].height) - at.of(opening.depth)
    else:
        begin = level_number(piece, opening.from_level)
        found = _upright(at, piece, terms, begin, to, None)
        low = at.of(piece.levels[begin].height)
    for number, run in enumerate(gap_runs(opening, side)):
        high = at.of(piece.levels[level_number(piece, run.to_level)].height)
        found += _sideways(at, piece, side=None, run=run, edge=own.edge(side), number=number, height=high - low)
        low = high
    return found


# ----------------------------------------------------------------- moves


def _sideways(
    at: DesignInSize, piece: Piece, side: EdgeSide | None, run: EdgeRun, edge: EdgeTerms, number: int, height: float
) -> LengthTerms:
    """What the moves of a run add to the length of its rows: each makes one row slant."""
    if run.path == ACROSS_RUN or not (any(run.change) or any(run.most or ())):
        return LengthTerms()
    fabric = fabric_below(at.design, piece, run.to_level)
    moved = (1 if at.of(run.change) >= 0 else -1) * edge.moved(number)
    cast = edge.cast_off[number]
    found = LengthTerms()
    if cast:
        found += _bent(cast, at.of(run.cast_off) * fabric.stitches_per_cm, 1, fabric)
        moved -= cast
    wide = abs(at.of(run.change)) - at.of(run.cast_off)
    if run.path == "steps":
        return found + _stepped(at, run, edge, number=number, stitches=wide * fabric.stitches_per_cm, moved=moved, fabric=fabric)
    if run.rates:
        return found + _paced(run, at.of(run.rates), edge.step[number], fabric)
    turns = side is not None and len(edge.ways[number]) > 1 and bool(leeway(at.design, piece, side, number))
    if run.path in ("curve", "arch") or run.most is not None or turns:
        by_twos = run.way.at_once > 1
        return found + LengthTerms(length=NOTHING + round(FINE * _curve_more(wide, height, fabric, by_twos)), rough=True)
    return found + _slant(moved, 2 * edge.pairs(number), wide, height, fabric)


def _stepped(
    at: DesignInSize, run: EdgeRun, edge: EdgeTerms, number: int, stitches: float, moved: Terms, fabric: Fabric
) -> LengthTerms:
    """What a run's steps add, of so many wanted stitches in all."""
    if run.in_turn:
        found = LengthTerms()
        for alike, terms in zip(run.in_turn, edge.in_turn[number], strict=True):
            found += _bent(terms, abs(at.of(alike.cm)) * fabric.stitches_per_cm, at.of(alike.times), fabric)
        return found
    times = at.of(run.steps)
    # Of steps that are equal but for a stitch, what a stitch adds is the same in each.
    return (
        _bent(moved, stitches / times, times, fabric, whole=True)
        if run.larger
        else _bent(edge.step[number], stitches / times, times, fabric)
    )


def _paced(run: EdgeRun, rate: Rate, moves: Terms, fabric: Fabric) -> LengthTerms:
    """What moves at a rate add: steps where they are cast off or on, else a straight slope of a known angle."""
    if rate.stitches > 1 and rate.stitches != run.way.at_once:
        return LengthTerms(length=round(FINE * _step(rate.stitches, fabric)) * moves)
    wide, high = rate.stitches / fabric.stitches_per_cm, rate.rows / fabric.rows_per_cm
    rows = max(run.most or run.change, key=abs)
    made = _slant(rate.stitches * moves, rate.rows * moves, wide, high, fabric)
    return replace(made, loose=round(FINE * _SLOPE * abs(rows) * hypot(wide, high) / wide))


def _slant(moved: Terms, rows: Terms, wide: float, height: float, fabric: Fabric) -> LengthTerms:
    """What a straight slope adds to the length of its rows. By its wanted width and height its angle is known: near them its
    length is its width times the sine and its height times the cosine of that."""
    straight = hypot(wide, height)
    if straight <= 0:
        return LengthTerms()
    across = round(FINE * wide / straight / fabric.stitches_per_cm) * moved
    up = round(FINE * (height / straight - 1) / fabric.rows_per_cm) * rows
    return LengthTerms(length=across + up, loose=round(FINE * _SLOPE * straight))


def _step(stitches: float, fabric: Fabric) -> float:
    """By how much a row is longer across which so many stitches are cast off or on, in cm."""
    up = 1 / fabric.rows_per_cm
    return hypot(stitches / fabric.stitches_per_cm, up) - up


def _bent(terms: Terms, wanted: float, times: int, fabric: Fabric, whole: bool = False) -> LengthTerms:
    """`times` moves of as many stitches as the terms come to, or come to in all (`whole`), each near what is wanted; the line from
    there on is straight enough."""
    near = max(1, int(wanted) if whole else round(wanted))
    slope = _step(near + 1, fabric) - _step(near, fabric)
    level = _step(near, fabric) - slope * near
    return LengthTerms(length=round(FINE * (1 if whole else times) * slope) * terms + round(FINE * times * level))


def _curve_more(wide: float, height: float, fabric: Fabric, by_twos: bool) -> float:
    """By how much a quarter of an ellipse is longer than its rows; either way round it is the same. Where two rows ask for more
    than a stitch they are cast off, unless they are moved two at once; the rest lies as smooth as it is drawn."""
    stitches, rows = round(wide * fabric.stitches_per_cm), max(2, 2 * round(height * fabric.rows_per_cm / 2))
    if stitches <= 0:
        return 0.0
    places = [quarter_ellipse(stitches, rows)(row) for row in range(0, rows + 1, 2)]
    more, up = 0.0, 2 / fabric.rows_per_cm
    for before, after in pairwise(places):
        smooth = by_twos or after - before < _CAST_OFF
        more += hypot((after - before) / fabric.stitches_per_cm, up) - up if smooth else _step(after - before, fabric)
    return more
