"""Joins whose stitch patterns go on across them: row by row up the seam, and by whole repeats across it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from walewright.counted.edges import held_rows, knitted_rows, split_part
from walewright.counted.model import SizedPiece
from walewright.design.model import Design, EdgeJoin, EdgeName, EdgeRun, Fabric
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Said, only, said
from walewright.solve.algebra.programme import Draft, Lines, asks
from walewright.solve.edges.gauge import level_number
from walewright.solve.edges.lengths import Garment
from walewright.solve.edges.multiples import FabricStretch, whole_width
from walewright.solve.joins.joining import easing_mm, labelled, spoken
from walewright.trade.fabrics import STITCH_KINDS
from walewright.trade.joins import JOINS
from walewright.trade.sides import SIDES, EdgeSide


def cannot_match(design: Design) -> Iterator[Diagnostic]:
    """A message for each matching join whose edges or fabrics are such that nothing could go on across it."""
    for join in design.joins:
        fault = _fault(design, join) if join.matching else None
        if fault is not None:
            yield _told(design, join, fault)


def _fault(design: Design, join: EdgeJoin) -> Said | None:
    """What is in the way, if anything is: the case of the message, with its facts."""
    one, other = ([_along(design, edge) for edge in side] for side in (join.one, join.other))
    if JOINS[join.way].by_loops or any(not runs for runs in (*one, *other)):
        return said("not-along-rows")
    if join.longer is not None or any(easing_mm(at, join) for at in design.each_size):
        return said("eased")
    fabrics = [tuple(_patterned(design, side)) for side in (join.one, join.other)]
    if not fabrics[0] and not fabrics[1]:
        return said("no-pattern")
    if fabrics[0] != fabrics[1]:
        here, there = (tuple(said("quoted", name=f.name) for f in found) or (said("no-pattern"),) for found in fabrics)
        return said("other-fabrics", here=here, there=there)
    for fabric in fabrics[0]:
        fault = _not_whole(design, fabric)
        if fault is not None:
            return fault
    return _apart(design, join)


def _apart(design: Design, join: EdgeJoin) -> Said | None:
    """Whether a pattern begins with the one edge, or below it, and further up along the other: no rows could make that equal."""
    if len(join.one) != 1 or len(join.other) != 1:
        return None
    sides = [list(_beginnings(design, edge)) for edge in (*join.one, *join.other)]
    for (fabric, here, one), (_, there, other) in zip(*sides, strict=False):
        if (one > 0) - (one < 0) != (other > 0) - (other < 0):
            pieces = {"piece": join.one[0].piece, "other_piece": join.other[0].piece}
            return said("begins-elsewhere", fabric=fabric.name, here=here, there=there, **pieces)
    return None


def _beginnings(design: Design, edge: EdgeName) -> Iterator[tuple[Fabric, str, int]]:
    """Each patterned stretch along an edge: its fabric, its first level, and how many levels this is above the edge's own."""
    levels, piece = _levels_of(design, edge), design.piece(edge.piece)
    if levels is not None:
        for stretch in _touching(design, edge):
            yield stretch.fabric, stretch.from_level, level_number(piece, stretch.from_level) - level_number(piece, levels[0])


def _not_whole(design: Design, fabric: Fabric) -> Said | None:
    """Whether a repeat would be broken at the seam."""
    if fabric.stitch != "chart":
        return None
    chart = design.chart(fabric.chart)
    if not chart.repeat:
        return said("no-repeat", fabric=fabric.name)
    if fabric.fit != "whole":
        return said("repeat-cut", fabric=fabric.name, fit=fabric.fit)
    if chart.before or chart.after:
        return said("borders", fabric=fabric.name)
    return None


def _told(design: Design, join: EdgeJoin, fault: Said, by_size: Mapping[str, Said] | None = None) -> Diagnostic:
    notes = by_size or {}
    return diagnosed(
        f"cannot-match/{fault.key}",
        (join.origin.span, "joined-here"),
        *labelled(design, join),
        notes=tuple(said("in-size", size=size, note=note) for size, note in notes.items()),
        helps=("mend",),
        sizes=only(design.sizes, notes),
        facts={"one": spoken(join.one), "other": spoken(join.other), **dict(fault.facts)},
    )


# ----------------------------------------------------------------- what lies along an edge


def _along(design: Design, edge: EdgeName) -> tuple[EdgeSide, EdgeRun, EdgeRun] | None:
    """(side, first run, last run) of an outer edge called by that name; of one called on both sides the left one. None: it is no
    such edge."""
    head, part = split_part(edge.edge)
    if design.band(edge.piece) is not None:
        return None
    piece = design.piece(edge.piece)
    for side in (part,) if part in SIDES else SIDES:
        runs = [run for run in (piece.left if side == "left" else piece.right) if run.name and run.name == head]
        if runs:
            return side, runs[0], runs[-1]
    return None


def _levels_of(design: Design, edge: EdgeName) -> tuple[str, str] | None:
    """The levels between which an outer edge lies."""
    found, piece = _along(design, edge), design.piece(edge.piece)
    if found is None:
        return None
    side, first, last = found
    runs = piece.left if side == "left" else piece.right
    number = runs.index(first)
    return (runs[number - 1].to_level if number else piece.levels[0].name), last.to_level


def _touching(design: Design, edge: EdgeName) -> Iterator[FabricStretch]:
    """The patterned stretches of a piece that lie along one of its edges, from the start up."""
    levels, piece = _levels_of(design, edge), design.piece(edge.piece)
    if levels is None:
        return
    low, high = (level_number(piece, name) for name in levels)
    for stretch in whole_width(design, piece):
        begin, end = level_number(piece, stretch.from_level), level_number(piece, stretch.to_level)
        if STITCH_KINDS[stretch.fabric.stitch].counts_rows and begin < high and end > low:
            yield stretch


def _patterned(design: Design, side: Sequence[EdgeName]) -> Iterator[Fabric]:
    """The patterned fabrics along a side, one after the other; whether one begins again in the right row is seen afterwards."""
    last: Fabric | None = None
    for fabric in (stretch.fabric for edge in side for stretch in _touching(design, edge)):
        if fabric != last:
            yield fabric
        last = fabric


# ----------------------------------------------------------------- in the programme


def matching_rules(draft: Draft, design: Design, garment: Garment) -> None:
    """Writes into the draft that the patterns along two matching edges begin in the same row of both, counted from where the
    edges begin."""
    for join in design.joins:
        if not join.matching or len(join.one) != 1 or len(join.other) != 1:
            continue
        (one,), (other,) = join.one, join.other
        levels = _levels_of(design, one), _levels_of(design, other)
        if levels[0] is None or levels[1] is None:
            continue
        lines: Lines = []
        for here, there in zip(_touching(design, one), _touching(design, other), strict=False):
            for size in range(len(design.sizes)):
                rows = [garment[edge.piece][size].rows for edge in (one, other)]
                begin = rows[0][here.from_level] - rows[0][levels[0][0]]
                end = rows[1][there.from_level] - rows[1][levels[1][0]]
                lines.append((size, begin.equals(end)))
        if lines:
            clause = said("patterns-begin", one=spoken(join.one), other=spoken(join.other))
            asks(draft, clause, (join.origin,), lines, len(design.sizes))


# ----------------------------------------------------------------- afterwards

PatternRow = tuple[str, int]
"""(fabric, row of its pattern from 0); of a plain fabric ("", 0)."""


def unmatched(design: Design, garments: Sequence[Sequence[SizedPiece]]) -> Iterator[Diagnostic]:
    """A message for each matching join in which a row of one side meets another row of the pattern; `garments[i]` are the pieces of
    size i."""
    for join in design.joins:
        if not join.matching:
            continue
        notes: dict[str, Said] = {}
        for size, pieces in enumerate(garments):
            one, other = ([course for edge in side for course in _courses(design, edge, pieces)] for side in (join.one, join.other))
            at = next((n for n, (a, b) in enumerate(zip(one, other, strict=False), 1) if a != b), None)
            if at is not None:
                here, there = _spoken(one[at - 1]), _spoken(other[at - 1])
                notes[design.sizes[size]] = said("row-meets", row=at, here=here, there=there)
        if notes:
            yield _told(design, join, said("rows-apart"), notes)


def _spoken(course: PatternRow) -> Said:
    return said("row-of-pattern", row=course[1] + 1, fabric=course[0]) if course[0] else said("plain-row")


def _courses(design: Design, edge: EdgeName, pieces: Sequence[SizedPiece]) -> Iterator[PatternRow]:
    """What lies along an edge, row by row, as it is knitted."""
    levels, along = _levels_of(design, edge), _along(design, edge)
    if levels is None or along is None:
        return
    piece = design.piece(edge.piece)
    sized = next(p for p in pieces if p.name == edge.piece)
    held = held_rows(sized, along[0])
    stretches = [(s.fabric, sized.row(s.from_level), sized.row(s.to_level)) for s in whole_width(design, piece)]
    counter = sized.counter(sized.row(levels[0]))
    for row in knitted_rows(sized, sized.row(levels[0]), sized.row(levels[1])):
        counter += 1
        if row in held:
            continue
        fabric, begin = next((f, b) for f, b, e in stretches if b < row <= e)
        yield _course(design, fabric, counter - 1 - sized.counter(begin))


def _course(design: Design, fabric: Fabric, done: int) -> PatternRow:
    """Which row of its pattern comes when so many are done."""
    if fabric.stitch == "chart":
        return fabric.name, done % len(design.chart(fabric.chart).rows)
    if fabric.stitch == "stripes":
        return fabric.name, done % sum(rows for _, rows in fabric.stripes)
    return "", 0
