"""Whether shapes lie on each other, and where their middles are."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from walewright.counted.outline import Point
from walewright.figures.dimensions import Box, box_round, overlap

HAIR = 1e-9
"""So wide is the box of a line that runs straight along an axis."""


def middle(shape: Sequence[Point]) -> Point:
    """Of its corners."""
    return sum(x for x, _ in shape) / len(shape), sum(y for _, y in shape) / len(shape)


def meet(one: Sequence[Point], other: Sequence[Point], air: float = 0.0) -> bool:
    """Whether two shapes lie on each other, or, about, nearer than `air`."""
    wide = _widened(one, air) if air else one
    about = box_round(wide)
    if not overlap(about, box_round(other)):
        return False
    if any(inside(p, other) for p in wide) or any(inside(p, wide) for p in other if _lies_in(p, about)):
        return True
    near = [side for side in pairwise([*other, other[0]]) if overlap(about, box_round(side, HAIR))]
    return any(_cross(a, b, c, d) for a, b in pairwise([*wide, wide[0]]) for c, d in near)


def _lies_in(point: Point, box: Box) -> bool:
    return box[0] <= point[0] <= box[2] and box[1] <= point[1] <= box[3]


def _widened(shape: Sequence[Point], by: float) -> list[Point]:
    x, y = middle(shape)
    made = []
    for px, py in shape:
        far = math.hypot(px - x, py - y) or 1.0
        made.append((px + (px - x) / far * by, py + (py - y) / far * by))
    return made


def inside(point: Point, shape: Sequence[Point]) -> bool:
    """Whether a point lies within a shape: a ray from it to the right crosses the outline an odd number of times."""
    x, y = point
    crossed = False
    x0, y0 = shape[-1]
    for x1, y1 in shape:
        if (y0 > y) != (y1 > y) and x < x0 + (y - y0) / (y1 - y0) * (x1 - x0):
            crossed = not crossed
        x0, y0 = x1, y1
    return crossed


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    return _side(a, b, c) * _side(a, b, d) < 0 and _side(c, d, a) * _side(c, d, b) < 0


def _side(p: Point, q: Point, r: Point) -> float:
    """On which side of the line from `p` to `q` the point `r` lies, by its sign."""
    return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
