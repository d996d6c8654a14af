"""Bobbins of picture knitting: each end of yarn that begins in a picture, and how long it has to be."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from walewright.bed import Course, KnitFabric
from walewright.bed.density import fabric_at
from walewright.bed.loops import YARNLESS_COURSES
from walewright.counted.model import SizedChart, SizedGarment, SizedPiece
from walewright.design.model import Design
from walewright.knit.operations import needle
from walewright.proof.model import BobbinUse
from walewright.proof.spent import knit_of
from walewright.proof.yarn import loop_cm

TAIL_CM = 15
"""At each end of a bobbin's yarn, to be darned in (common practice)."""

SPARE = 0.10
"""On top, so that no bobbin runs out in mid-row (common practice)."""


def bobbins(design: Design, garment: SizedGarment, fabrics: dict[str, KnitFabric]) -> tuple[BobbinUse, ...]:
    """Of every piece of one size, of one copy. A yarn that is in use before the picture begins, or knits on after it, needs none:
    its end comes from the ball."""
    return tuple(use for sized in garment.pieces if sized.name in fabrics for use in _of_piece(design, sized, fabrics[sized.name]))


def _of_piece(design: Design, sized: SizedPiece, fabric: KnitFabric) -> Iterator[BobbinUse]:
    pictures = [c for c in sized.charts if design.chart(c.chart).picture]
    if not pictures or not fabric.passes():
        return
    # An edging knitted first has readings of the counter of its own.
    main = fabric.passes()[0].section
    began: dict[int, Course] = {}
    within: dict[int, tuple[SizedChart, float]] = {}
    laid: dict[int, list[Course]] = {}
    balls: set[int] = set()
    for course in fabric.courses:
        began.setdefault(course.run, course)
        chart = next((c for c in pictures if sized.within(c.from_row, c.to_row, course.counter)), None)
        if chart is not None and course.section >= main and course.kind not in YARNLESS_COURSES:
            knit = knit_of(design, fabric_at(course, course.first), course.yarn, course.tension)
            known = within.get(course.run, (chart, 0.0))
            within[course.run] = known[0], known[1] + course.count * loop_cm(design, knit)
            laid.setdefault(course.run, []).append(course)
        elif course.kind not in YARNLESS_COURSES:
            balls.add(course.run)
    number = 0
    for run, (chart, cm) in within.items():
        first = began[run]
        if run in balls or not sized.within(chart.from_row, chart.to_row, first.counter):
            continue
        number += 1
        metres = (cm + 2 * TAIL_CM) * (1 + SPARE) / 100
        rows = sorted({course.counter for course in laid[run]})
        rests = tuple((a + 1, z - 1) for a, z in pairwise(rows) if z > a + 1)
        block = (needle(first.first), first.counter, metres, needle(first.last), rows[-1], rests)
        yield BobbinUse(sized.name, chart.chart, first.yarn, number, *block)
