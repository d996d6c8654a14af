"""Latched ribs: every stitch of their columns re-formed, no other, and no column dropped deeper than hangs free."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import chain

from walewright.bed import Course, Fabric
from walewright.design.model import Design, Piece
from walewright.solve.model import SizedPiece

Told = Iterator[tuple[str, int, int]]
"""(where, counted, knitted)."""

Rib = tuple[str, int, int, int, int, int]
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
        passes = chain.from_iterable(fabric.passes(row) for row in rows)
        wanted = found = 0
        for slot, face, was_end in _stitches(fabric, passes):
            if first <= last and not first <= slot <= last:
                continue
            outwards = slot if slot >= 0 else -1 - slot
            if outwards % every != every // 2:
                found -= face
            elif not was_end:
                # A needle that was at an end is left out while it is, and may or may not be taken in later.
                wanted += 1
                found += face
        yield f"rows {rows[0]} to {rows[-1]}, stitches latched up for the {name}", wanted, found


def _stitches(fabric: Fabric, passes: Iterable[Course]) -> Iterator[tuple[int, int, bool]]:
    """(slot, face, whether its needle has been at an end by then) of the loops of the passes."""
    ends: set[int] = set()
    for course in passes:
        ends |= {course.first, course.last}
        loops = slice(course.first_loop, course.first_loop + course.count)
        for slot, face in zip(fabric.slots[loops], fabric.faces[loops], strict=True):
            yield slot, face, slot in ends


def _ribs(design: Design, piece: Piece, sized: SizedPiece) -> Iterator[Rib]:
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
