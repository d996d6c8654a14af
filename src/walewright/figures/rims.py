"""The rims of garments on paper: bands along necks, fronts and ends, with their ribs."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Sequence

from walewright.counted.outline import Point
from walewright.figures.pens import Paper, path
from walewright.figures.trims import Trim, finish, lay

RIB = 1.25
"""Between rib lines, mm."""

UP_THE_NECK = (0.5, 0.35)
"""Of its depth, how far a neckband's rim lies inwards and upwards at the shoulder."""

SPREADS = 3.5
"""Of what lies between them: so long at most are the two sides of a V or a slit together, where their bands meet."""

LAPS = 4.0
"""Of a mitre, how far a band is looked for beyond it at most."""

Placing = Callable[[Point], Point]


def draw_rim(paper: Paper, trim: Trim, inner: Sequence[Point], outer: Sequence[Point], place: Placing) -> None:
    """A band between the line that it hangs on and its last edge."""
    lay(paper, trim.shade, path([place(p) for p in (*inner, *reversed(outer))], closed=True))
    finish(paper, trim, [place(p) for p in inner], [place(p) for p in outer], rungs(inner, outer, place))


def beside(line: Sequence[Point], depth: float) -> list[Point]:
    """The line moved square to itself, to its left as it is walked."""
    made = []
    for at, (x, y) in enumerate(line):
        (ax, ay), (bx, by) = line[max(at - 1, 0)], line[min(at + 1, len(line) - 1)]
        far = max(math.hypot(bx - ax, by - ay), 1e-6)
        made.append((x - (by - ay) / far * depth, y + (bx - ax) / far * depth))
    return made


def inner_rim(line: Sequence[Point], depth: float) -> list[Point]:
    """The rim of a band of that depth along a neck line: square to the line, and at its ends up the neck, since the band goes round
    it."""
    made: list[Point] = []
    square: list[int] = []
    whole = sum(math.hypot(b[0] - a[0], b[1] - a[1]) for a, b in itertools.pairwise(line))
    done = 0.0
    for at, (x, y) in enumerate(line):
        (ax, ay), (bx, by) = line[max(at - 1, 0)], line[min(at + 1, len(line) - 1)]
        done += math.hypot(x - ax, y - ay)
        far = max(math.hypot(bx - ax, by - ay), 1e-6)
        # Near an end the rim comes down from the neck.
        near = max(0.0, 1 - min(done, whole - done) / max(depth * 1.5, 1e-6))
        way = 1 if done < whole / 2 else -1
        across = -(by - ay) / far * (1 - near) + way * UP_THE_NECK[0] * near
        up = (bx - ax) / far * (1 - near) + UP_THE_NECK[1] * near
        made.append((x + across * depth, y + up * depth))
        square += [at] if near == 0 else []
    return _mitred(line, made, square)


def lapped_rim(line: Sequence[Point], rim: Sequence[Point]) -> tuple[list[Point], list[Point]] | None:
    """Of a mitred rim (`inner_rim`) the band up the last side of a V, as it lies over the other: its line from the point up, and
    its rim, which goes on to the line of the other side. None where nothing is mitred."""
    met = next((at for at, (a, b) in enumerate(itertools.pairwise(rim)) if a == b), None)
    if met is None:
        return None
    last = next(at for at in range(met, len(rim)) if at + 1 == len(rim) or rim[at + 1] != rim[met])
    if last + 1 == len(rim):
        return None
    point = min(range(met, last + 1), key=lambda at: (line[at][1], -at))
    (ax, ay), (bx, by) = rim[last + 1], rim[met]
    far = LAPS * math.dist(rim[met], line[point]) / max(math.dist(rim[met], rim[last + 1]), 1e-6)
    beyond = (bx, by), (bx + (bx - ax) * far, by + (by - ay) * far)
    ends = (_meeting(beyond, side) for side in itertools.pairwise(line[: point + 1]))
    end = next((one for one in ends if one is not None), None)
    return None if end is None else ([line[point], *line[last + 1 :]], [end, *rim[last + 1 :]])


def up_the_neck(line: Sequence[Point], rim: Sequence[Point], depth: float, way: int) -> list[Point]:
    """The rim of a band that goes on behind the neck from the last end of its line: up the neck there, as `inner_rim` has it; `way`
    1 where the band lies to the right of the line, -1 to its left."""
    made: list[Point] = []
    for at, (x, y) in enumerate(rim):
        left = sum(math.dist(a, b) for a, b in itertools.pairwise(line[at:]))
        near = max(0.0, 1 - left / max(depth * 1.5, 1e-6))
        end = line[at][0] + way * UP_THE_NECK[0] * depth, line[at][1] + UP_THE_NECK[1] * depth
        made.append((x + (end[0] - x) * near, y + (end[1] - y) * near))
    return made


def _mitred(line: Sequence[Point], rim: list[Point], square: Sequence[int]) -> list[Point]:
    """The rim without the loop that it makes at the point of a V or in a slit: there both sides end where they meet. `square`: its
    points that lie square to the line."""
    for i, j in itertools.combinations(square[:-1], 2):
        met = _meeting((rim[i], rim[i + 1]), (rim[j], rim[j + 1])) if j > i + 1 else None
        legs = line[i : j + 2]
        long = sum(math.dist(a, b) for a, b in itertools.pairwise(legs))
        if met is not None and long < SPREADS * math.dist(legs[0], legs[-1]):
            return [*rim[: i + 1], *[met] * (j - i), *rim[j + 1 :]]
    return rim


def _meeting(one: tuple[Point, Point], other: tuple[Point, Point]) -> Point | None:
    """Where two stretches cross."""
    ((ax, ay), (bx, by)), ((cx, cy), (dx, dy)) = one, other
    slant = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx)
    if abs(slant) < 1e-9:
        return None
    t = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / slant
    u = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / slant
    return (ax + (bx - ax) * t, ay + (by - ay) * t) if 0 <= t <= 1 and 0 <= u <= 1 else None


def rungs(outer: Sequence[Point], inner: Sequence[Point], place: Placing) -> list[str]:
    """Rib lines across a curved band."""
    made = []
    for (a, b), (c, d) in zip(itertools.pairwise(outer), itertools.pairwise(inner), strict=True):
        pa, pb, pc, pd = place(a), place(b), place(c), place(d)
        length = ((pb[0] - pa[0]) ** 2 + (pb[1] - pa[1]) ** 2) ** 0.5
        count = max(1, round(length / RIB))
        for i in range(count):
            t = i / count
            start = (pa[0] + (pb[0] - pa[0]) * t, pa[1] + (pb[1] - pa[1]) * t)
            end = (pc[0] + (pd[0] - pc[0]) * t, pc[1] + (pd[1] - pc[1]) * t)
            made.append(path([start, end]))
    return made
