"""Latched ribs: every stitch of their columns re-formed, no other, and no column dropped deeper than hangs free."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import chain

from walewright.bed import Course, KnitFabric
from walewright.counted import CountedPiece
from walewright.counted.ribs import LatchedRib, ribs
from walewright.design.model import Design
from walewright.proof.told import Told
from walewright.report.said import said


def deepest(design: Design, fabric: KnitFabric) -> Told:
    """The most rows of a column that were dropped at once, in whatever pattern."""
    most = design.machine.stage[1]
    found = max((rows for *_, rows in fabric.latched), default=0)
    if found:
        yield said("at/latched-at-once"), min(found, most), found


def latched(of: CountedPiece, fabric: KnitFabric) -> Told:
    """Of each rib in the piece, row by row."""
    for rib in ribs(of):
        rows = range(of.sized.counter(rib.low) + 1, of.sized.counter(rib.high) + 1)
        where = said("at/latched-rows", first=rows[0], last=rows[-1], fabric=rib.fabric.name)
        yield where, *columns(fabric, rows, rib)


def columns(fabric: KnitFabric, rows: range, rib: LatchedRib) -> tuple[int, int]:
    """Stitches of these rows that a rib's columns have, and how many of them were latched up, less any others that were."""
    wanted = found = 0
    has = {slot: rib.has(slot) for slot in set(fabric.slots) if rib.over(slot)}
    for slot, face, was_end in _stitches(fabric, chain.from_iterable(fabric.passes(row) for row in rows)):
        if slot not in has:
            continue
        if not has[slot]:
            found -= face
        elif not was_end:
            # A needle that was at an end is left out while it is, and may or may not be taken in later.
            wanted += 1
            found += face
    return wanted, found


def _stitches(fabric: KnitFabric, passes: Iterable[Course]) -> Iterator[tuple[int, int, bool]]:
    """(slot, face, whether its needle has been at an end by then) of the loops of the passes."""
    ends: set[int] = set()
    for course in passes:
        ends |= {course.first, course.last}
        loops = slice(course.first_loop, course.first_loop + course.count)
        for slot, face in zip(fabric.slots[loops], fabric.faces[loops], strict=True):
            yield slot, face, slot in ends
