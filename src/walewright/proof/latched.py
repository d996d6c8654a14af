"""Latched ribs: every stitch of their columns re-formed, no other, and no column dropped deeper than hangs free."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import chain

from walewright.bed import Course, Fabric
from walewright.counted.model import SizedPiece
from walewright.counted.needles import widest_of
from walewright.counted.ribs import rib_begin
from walewright.design.model import Design, Piece

Told = Iterator[tuple[str, int, int]]
"""(where, counted, knitted)."""

LatchedRib = tuple[str, int, int, int, int, int]
"""(fabric, every how many needles, first and last row as counted, first and last slot; first > last: the whole width)."""


def deepest(design: Design, fabric: Fabric) -> Told:
    """The most rows of a column that were dropped at once, in whatever pattern."""
    most = design.machine.stage[1]
    found = max((rows for *_, rows in fabric.latched), default=0)
    if found:
        yield "rows of a column latched up at once", min(found, most), found


def latched(design: Design, piece: Piece, sized: SizedPiece, fabric: Fabric) -> Told:
    """Of each rib in the piece, row by row."""
    for name, every, begin, end, first, last in _ribs(design, piece, sized):
        rows = range(sized.counter(begin) + 1, sized.counter(end) + 1)
        panel = (first, last) if first <= last else None
        begins = rib_begin(every, *widest_of(sized, begin, end), panel)
        where = f"rows {rows[0]} to {rows[-1]}, stitches latched up for the {name}"
        yield where, *columns(fabric, rows, every, -1 if begins is None else begins, panel)


def columns(fabric: Fabric, rows: range, every: int, begin: int, panel: tuple[int, int] | None = None) -> tuple[int, int]:
    """Stitches of these rows that a rib's columns have, and how many of them were latched up, less any others that were."""
    wanted = found = 0
    for slot, face, was_end in _stitches(fabric, chain.from_iterable(fabric.passes(row) for row in rows)):
        if panel is not None and not panel[0] <= slot <= panel[1]:
            continue
        outwards = slot if slot >= 0 else -1 - slot
        if outwards % every != begin:
            found -= face
        elif not was_end:
            # A needle that was at an end is left out while it is, and may or may not be taken in later.
            wanted += 1
            found += face
    return wanted, found


def _stitches(fabric: Fabric, passes: Iterable[Course]) -> Iterator[tuple[int, int, bool]]:
    """(slot, face, whether its needle has been at an end by then) of the loops of the passes."""
    ends: set[int] = set()
    for course in passes:
        ends |= {course.first, course.last}
        loops = slice(course.first_loop, course.first_loop + course.count)
        for slot, face in zip(fabric.slots[loops], fabric.faces[loops], strict=True):
            yield slot, face, slot in ends


def _ribs(design: Design, piece: Piece, sized: SizedPiece) -> Iterator[LatchedRib]:
    at = 0
    for zone in sorted(sized.zones, key=lambda z: z.from_row):
        every = design.fabric(zone.fabric).rib_every
        if every:
            yield zone.fabric, every, zone.from_row, zone.to_row, zone.first, zone.last
    base = design.fabric(piece.fabric).rib_every
    whole = sorted((z.from_row, z.to_row) for z in sized.zones if z.first > z.last)
    for begin, end in [*whole, (sized.rows, sized.rows)] if base else []:
        if begin > at:
            yield piece.fabric, base, at, begin, 0, -1
        at = max(at, end)
