"""Whether shapes lie on each other, and where their middles are."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from walewright.counted.outline import Point


def middle(shape: Sequence[Point]) -> Point:
    """Of its corners."""
    return sum(x for x, _ in shape) / len(shape), sum(y for _, y in shape) / len(shape)


def meet(one: Sequence[Point], other: Sequence[Point], air: float = 0.0) -> bool:
    """Whether two shapes lie on each other, or, about, nearer than `air`."""
    wide = _widened(one, air)
    if not _boxes_meet(wide, other):
        return False
    if any(inside(p, other) for p in wide) or any(inside(p, wide) for p in other):
        return True
    sides = list(pairwise([*other, other[0]]))
    return any(_cross(a, b, c, d) for a, b in pairwise([*wide, wide[0]]) for c, d in sides)


def _widened(shape: Sequence[Point], by: float) -> list[Point]:
    x, y = middle(shape)
    made = []
    for px, py in shape:
        far = math.hypot(px - x, py - y) or 1.0
        made.append((px + (px - x) / far * by, py + (py - y) / far * by))
    return made


def _boxes_meet(one: Sequence[Point], other: Sequence[Point]) -> bool:
    return all(
        min(p[axis] for p in one) < max(p[axis] for p in other) and min(p[axis] for p in other) < max(p[axis] for p in one)
        for axis in (0, 1)
    )


def inside(point: Point, shape: Sequence[Point]) -> bool:
    """Whether a point lies within a shape: a ray from it to the right crosses the outline an odd number of times."""
    x, y = point
    crossed = False
    for (x0, y0), (x1, y1) in pairwise([*shape, shape[0]]):
        if (y0 > y) != (y1 > y) and x < x0 + (y - y0) / (y1 - y0) * (x1 - x0):
            crossed = not crossed
    return crossed


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    def side(p: Point, q: Point, r: Point) -> float:
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    return side(a, b, c) * side(a, b, d) < 0 and side(c, d, a) * side(c, d, b) < 0
