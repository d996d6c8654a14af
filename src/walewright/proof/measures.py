"""What was wanted beside what the bed knitted, piece by piece, in centimetres."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from walewright.bed import KnitFabric
from walewright.counted import CountedPiece
from walewright.counted.model import Deviation, MeasureKey, SizedOpening, SizedPiece, SizedWedge
from walewright.design.model import DesignInSize, Opening, Piece, Wedge
from walewright.knit.operations import Side
from walewright.proof.counted import cast_on_again, gap_at
from walewright.proof.model import Measure
from walewright.record import record, replace
from walewright.trade.edge_names import TOPS, number_of_top, part_of_edge


@record
class _Made:
    """One piece in one size: as designed and counted, and as knitted. `wanted` has what is wanted in cm, by what is
    measured: where the design leaves a range, what was chosen."""

    of: CountedPiece
    fabric: KnitFabric
    at: DesignInSize
    wanted: Mapping[MeasureKey, float]

    @property
    def piece(self) -> Piece:
        return self.of.piece

    @property
    def sized(self) -> SizedPiece:
        return self.of.sized

    def width(self, key: MeasureKey, wanted_cm: float, stitches: int, row: int, whole: bool = False) -> Measure:
        """Of stitches just below `row`, or at the start; with the panels of the `whole` width, if it is that."""
        per_cm = self.of.fabric(row).stitches_per_cm
        cm = stitches / per_cm + (self.of.panels_cm(row) if whole else 0.0)
        return Measure(key, wanted_cm, cm, round((cm - wanted_cm) * per_cm, 3), "st")

    def height(self, key: MeasureKey, wanted_cm: float, after: int, to: int) -> Measure:
        """Of the counts' rows after+1 .. to that were knitted, a repeat once, each at its gauge."""
        knitted = [row for row in range(after + 1, to + 1) if self.fabric.passes(self.sized.counter(row))]
        cm, last = sum(self.of.row_cm(row) for row in knitted), self.of.fabric(to)
        # Where there are several fabrics, off by so many rows of the last one.
        one_fabric = len({at.fabric.rows_per_cm for at in self.of.layers if at.low < to and after < at.high}) == 1
        off = len(knitted) - wanted_cm * last.rows_per_cm if one_fabric else (cm - wanted_cm) * last.rows_per_cm
        return Measure(key, wanted_cm, len(knitted) / last.rows_per_cm if one_fabric else cm, round(off, 3), "rows")

    def between(self, after: int, to: int) -> float | None:
        """Wanted height between two rows that are fixed levels; None where one of them is free or no level."""
        heights = {self.sized.row(level.name): self.at.of(level.height) for level in self.piece.levels if level.most is None}
        return heights[to] - heights[after] if after in heights and to in heights else None


def measures(at: DesignInSize, of: CountedPiece, fabric: KnitFabric, deviations: Iterable[Deviation]) -> tuple[Measure, ...]:
    """Widths and heights at every level, then openings, slots and wedges, of one piece. `deviations` say what is wanted,
    and where a width is asked for at all."""
    piece, sized = of.piece, of.sized
    made = _Made(of, fabric, at, {d.key: d.wanted_cm for d in deviations if d.piece == piece.name})
    found = [*_widths(made), *_heights(made)]
    for opening in piece.openings:
        found += [m for counted in sized.openings if counted.name == opening.name for m in _opening(made, opening, counted)]
    for slot in piece.slots:
        for cut in sized.slots:
            if cut.name == slot.name:
                stitches = cast_on_again(sized, cut, fabric)
                key = MeasureKey("width", "slot", slot.name)
                found.append(made.width(key, at.of(slot.width), stitches, cut.row))
    found += _together(made, found)
    for wedge in piece.wedges:
        if wedge.width is not None:
            found += [m for held in sized.wedges if held.name == wedge.name for m in _wedge(made, wedge, held)]
    return tuple(found)


# ----------------------------------------------------------------- widths and heights


_START = MeasureKey("width", "start")


def _widths(made: _Made) -> Iterator[Measure]:
    sized, fabric = made.sized, made.fabric
    yield made.width(_START, made.wanted[_START], _at_start(fabric), 0, whole=True)
    for key, wanted in made.wanted.items():
        if (key.extent, key.at) != ("width", "level") or not _changes(made.piece, key):
            continue
        row = sized.row(key.name)
        stitches = _stitches(fabric, sized.counter(row), key.across)
        if stitches is not None:
            # Loops hung back on other needles are measured in what is knitted with them.
            at = min(row + 1, sized.rows) if key.across else row
            yield made.width(key, wanted, stitches, at, whole=True)


def _at_start(fabric: KnitFabric) -> int:
    """Needles from edge to edge at the start, those left out of work included."""
    slots = [fabric.slots[point[0]] for edge in fabric.edge("start") for point in edge.points]
    return max(slots) - min(slots) + 1 if slots else fabric.stitches_at(0)


def _stitches(fabric: KnitFabric, counter: int, spread: bool) -> int | None:
    """Needles from edge to edge at that row, held ones and gaps included; after loops were hung back there, if they were."""
    hung = fabric.hung_back(counter) if spread else None
    if hung is not None:
        return hung.new[1] - hung.new[0] + 1
    left, right = fabric.outer_end(counter, "left"), fabric.outer_end(counter, "right")
    return None if left is None or right is None else right - left + 1


def _changes(piece: Piece, key: MeasureKey) -> bool:
    """Whether the width becomes another there in some size. Where nothing changes there is nothing further to measure: every width
    is compared with the counts all the same."""
    runs = (r for r in (*piece.left, *piece.right) if r.to_level == key.name and (r.path == "across") is key.across)
    return any(any(run.change) or run.most is not None for run in runs)


def _heights(made: _Made) -> Iterator[Measure]:
    for key, wanted in made.wanted.items():
        if (key.extent, key.at) == ("height", "level"):
            yield made.height(key, wanted, 0, made.sized.row(key.name))


SEVERAL = 3
"""Copies from which on what each of them is off is added up: two lie one on the other, or one at each side."""


def _together(made: _Made, found: list[Measure]) -> Iterator[Measure]:
    """What is knitted several times, added up: little that each is off is much of the whole."""
    piece = made.piece
    for repeat in piece.repeats:
        after, to = made.sized.row(repeat.from_level), made.sized.row(repeat.to_level)
        heights = {level.name: made.at.of(level.height) for level in piece.levels}
        wanted, times = heights[repeat.to_level] - heights[repeat.from_level], made.at.of(repeat.times) * made.sized.copies
        if all(level.most is None for level in piece.levels):
            key = MeasureKey("height", "stretch", repeat.from_level, to=repeat.to_level)
            alike = len(set(repeat.times)) == len(set(piece.copies)) == 1
            yield _times(made.height(key, wanted, after, to), times, times if alike else 0)
    if max(piece.copies) >= SEVERAL:
        copies = made.sized.copies
        added = tuple(_added(made))
        for one in found:
            if one.key in added:
                yield _times(one, copies, copies if len(set(piece.copies)) == 1 else 0)


def _added(made: _Made) -> Iterator[MeasureKey]:
    """What of each copy goes on in the next: its width where it is joined at its sides, its height where it is at its first or last
    row."""
    edges = {edge.edge for join in made.at.design.joins for edge in (*join.one, *join.other) if edge.piece == made.piece.name}
    at_rows = {part_of_edge(edge).name in _ROW_EDGES or bool(number_of_top(edge)) for edge in edges}
    if False in at_rows:
        yield _START
    if True in at_rows:
        yield MeasureKey("height", "level", made.piece.levels[-1].name)


_ROW_EDGES = ("start", *TOPS)


def _times(one: Measure, times: int, named: int) -> Measure:
    return Measure(
        replace(one.key, times=named), times * one.wanted_cm, times * one.knitted_cm, round(times * one.off, 3), one.unit
    )


# ----------------------------------------------------------------- within the outline


def _opening(made: _Made, opening: Opening, counted: SizedOpening) -> Iterator[Measure]:
    to = counted.to_row
    gap = gap_at(made.sized, counted, to, made.fabric)
    if gap is not None:
        key = MeasureKey("width", "opening", opening.name)
        yield made.width(key, made.wanted[key], gap, to)
    depth = made.at.of(opening.depth) if opening.from_level is None else made.between(counted.row, to)
    if depth is not None:
        yield made.height(MeasureKey("depth", "opening", opening.name), depth, counted.row, to)


def _wedge(made: _Made, wedge: Wedge, held: SizedWedge) -> Iterator[Measure]:
    """The height beside the held stitches, which the edge does not have."""
    wanted = made.between(held.from_row, held.to_row)
    side: Side = "right" if held.edge == "right" else "left"
    counter = made.sized.counter(held.from_row)
    edge = made.fabric.outer_end(counter + 1, side)
    if wanted is None or edge is None:
        return
    inwards = held.rest + sum(held.groups)
    beside = [edge + at if side == "left" else edge - at for at in (inwards, inwards - 1)]
    rows = max(made.fabric.rows_in_wale(at, counter, counter + held.to_row - held.from_row) for at in beside)
    up = made.of.fabric(held.to_row).rows_per_cm
    yield Measure(
        MeasureKey("height", "wedge", wedge.name, called=wedge.printed), wanted, rows / up, round(rows - wanted * up, 3), "rows"
    )
