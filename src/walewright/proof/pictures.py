"""Pictures of fabrics: a window of the loop graph of each charted or striped fabric and of each motif, to draw it from."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from walewright.bed import Course, KnitFabric
from walewright.bed.loops import NOTHING, YARNLESS_COURSES, LoopKind
from walewright.counted.model import SizedGarment, SizedPiece
from walewright.design.model import Design
from walewright.design.model import Fabric as Knit
from walewright.proof.model import FabricPicture, PictureLoop
from walewright.proof.spent import looped
from walewright.record import record

MOST = 40
"""Columns or rows of a window, at most."""

REPEATS = 2
MARGIN = 2
"""Needles and rows of plain knitting round a motif."""

STRIPED_COLUMNS = 12


@record
class PictureWindow:
    """Needles from slot `left` on and rows from reading `low` of the counter on."""

    left: int
    columns: int
    low: int
    rows: int

    def at(self, slot: int, counter: int) -> tuple[int, int]:
        """(column, row) of a needle and a reading, inside or outside."""
        return slot - self.left, counter - self.low

    def holds(self, column: int, row: int) -> bool:
        """Whether that is inside."""
        return 0 <= column < self.columns and 0 <= row < self.rows


Find = Callable[[SizedPiece, KnitFabric], PictureWindow | None]


def pictures(
    design: Design, garments: Sequence[SizedGarment], knitted: Sequence[dict[str, KnitFabric]]
) -> tuple[FabricPicture, ...]:
    """One of each, from the first size that has it: fabrics in the order of the design, then motifs by their charts' names.

    `knitted` are the pieces of each size by name."""

    def found() -> Iterator[FabricPicture]:
        for knit in design.fabrics:
            if knit.chart or knit.stripes:
                yield from _first(knit.name, garments, knitted, _of_fabric(design, knit))
        for name in dict.fromkeys(m.chart for p in design.pieces for m in p.motifs):
            yield from _first(name, garments, knitted, _of_motif(design, name))

    return tuple(found())


def _first(
    name: str, garments: Sequence[SizedGarment], knitted: Sequence[dict[str, KnitFabric]], find: Find
) -> Iterator[FabricPicture]:
    for garment, fabrics in zip(garments, knitted, strict=True):
        for sized in garment.pieces:
            window = find(sized, fabrics[sized.name]) if sized.name in fabrics else None
            if window is not None:
                yield picture(name, fabrics[sized.name], window)
                return


# ----------------------------------------------------------------- where to look


def _of_fabric(design: Design, knit: Knit) -> Find:
    def find(sized: SizedPiece, fabric: KnitFabric) -> PictureWindow | None:
        return _striped(design, knit, sized, fabric) if knit.stripes else _charted(design, knit, sized)

    return find


def _charted(design: Design, knit: Knit, sized: SizedPiece) -> PictureWindow | None:
    """Two repeats each way, the ones nearest the middle of what the chart lies on, from its first row on."""
    placed = next((c for c in sized.charts if c.fabric == knit.name), None)
    if placed is None:
        return None
    chart = design.chart(placed.chart)
    row = sized.counter(placed.from_row) + 1
    width = placed.stitches
    columns = min(MOST, width, REPEATS * chart.repeat if chart.repeat else chart.width)
    # As near the middle as a whole number of repeats allows.
    left = placed.first
    if chart.repeat:
        spare = (placed.start - placed.first) % chart.repeat
        left += spare + (width - columns - spare) // 2 // chart.repeat * chart.repeat
    rows = min(MOST, placed.to_row - placed.from_row, REPEATS * len(chart.rows) if chart.repeat else len(chart.rows))
    return PictureWindow(left, columns, row, rows)


def _striped(design: Design, knit: Knit, sized: SizedPiece, fabric: KnitFabric) -> PictureWindow | None:
    """The stripes twice, a dozen stitches wide, in the middle of the first row."""
    whole = design.piece(sized.name)
    zone = next((z for z in sized.zones if z.fabric == knit.name and z.panel is None), None)
    if zone is None and whole.fabric != knit.name:
        return None
    row = 1 if zone is None else sized.counter(zone.from_row) + 1
    extent = fabric.extent_at(row)
    if extent is None:
        return None
    most = (sized.rows if zone is None else zone.to_row) - (0 if zone is None else zone.from_row)
    columns = min(STRIPED_COLUMNS, extent[1] - extent[0] + 1)
    left = (extent[0] + extent[1] + 1 - columns) // 2
    return PictureWindow(left, columns, row, min(MOST, most, REPEATS * sum(rows for _, rows in knit.stripes)))


def _of_motif(design: Design, name: str) -> Find:
    def find(sized: SizedPiece, fabric: KnitFabric) -> PictureWindow | None:
        placed = next((c for c in sized.charts if c.chart == name and not c.fabric), None)
        if placed is None:
            return None
        chart = design.chart(name)
        row = sized.counter(placed.from_row) + 1
        low = max(row - MARGIN, 1)
        columns = min(MOST, placed.stitches + 2 * MARGIN)
        return PictureWindow(placed.first - MARGIN, columns, low, min(MOST, row - low + len(chart.rows) + MARGIN))

    return find


# ----------------------------------------------------------------- what is there


def picture(name: str, fabric: KnitFabric, window: PictureWindow) -> FabricPicture:
    """The loops of a window by row and column, and the floats that cross it."""
    loops = [told for course in _courses(fabric, window) for told in _loops(fabric, course, window)]
    loops.sort(key=lambda told: (told.row, told.column))
    floats = []
    for run in fabric.floats:
        first, row = window.at(run.first, run.counter)
        last, _ = window.at(run.last, run.counter)
        if 0 <= row < window.rows and first < window.columns and last >= 0:
            floats.append((row, max(first, 0), min(last, window.columns - 1), run.yarn))
    return FabricPicture(name, window.columns, window.rows, tuple(loops), tuple(sorted(set(floats))))


def _courses(fabric: KnitFabric, window: PictureWindow) -> Iterator[Course]:
    """Of the piece itself, not of an edging before it; of the parts of a parted piece only the one worked first."""
    main = fabric.passes()[0].section if fabric.passes() else 0
    sections: dict[int, int] = {}
    for course in fabric.courses:
        if course.section < main or course.kind in YARNLESS_COURSES or not window.low <= course.counter < window.low + window.rows:
            continue
        if sections.setdefault(course.counter, course.section) == course.section:
            yield course


def _loops(fabric: KnitFabric, course: Course, window: PictureWindow) -> Iterator[PictureLoop]:
    there = set(looped(fabric, course))
    for loop in range(course.first_loop, course.first_loop + course.count):
        slot = fabric.slots[loop]
        column, row = window.at(slot, course.counter)
        if slot in there and window.holds(column, row):
            parents = [p for p in fabric.parents_of(loop) if p > NOTHING]
            through = tuple(window.at(fabric.slots[p], fabric.course_of(p).counter) for p in parents)
            kind = LoopKind(fabric.kinds[loop]).name.lower().replace("_", " ")
            over = _lies_over(fabric, course, slot, parents)
            yield PictureLoop(column, row=row, kind=kind, yarn=course.yarn, face=fabric.faces[loop], through=through, over=over)


def _lies_over(fabric: KnitFabric, course: Course, slot: int, parents: Sequence[int]) -> bool:
    """Of a crossed loop: whether it lies in front for the knitter, so behind on the right side, which faces away."""
    for crossed in fabric.crosses:
        here = crossed.counter == course.counter - 1 and crossed.before <= course.first_loop
        if here and crossed.first <= slot <= crossed.last and parents:
            return ("left" if fabric.slots[parents[0]] < slot else "right") != crossed.front
    return False
