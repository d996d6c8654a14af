"""The numbers of a drawing of making up, each in a ring at its own edge.

A ring lies wholly on its piece or wholly on white paper, nearer to its own edge than to any other; where none of the places about
the edge is such, it stands at the best that is free, with a line to its edge.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from walewright.counted.edge_lines import along
from walewright.counted.outline import Point
from walewright.figures.dimensions import Box, box_round, overlap, through
from walewright.figures.pens import Paper, path
from walewright.figures.shapes import inside, meet
from walewright.record import record

ROUND = 2.1
"""Half the height of a number's ring, mm."""

INWARDS = 3.0
"""From an edge to the middle of its ring, mm."""

RINGS, AROUND = 60, 24
"""Rings of places about an edge, each half a ring further off, and the places on each."""

SHARES = (0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9)
"""Of an edge's length: where a ring may stand along it, the best first."""

FURTHER = (1.0, 1.35, 1.8, 2.4, 3.0)
"""Times `INWARDS`: how far off it may stand."""

NEAR = 1.7
"""Times `INWARDS`: a ring further off than this has a line to its edge."""

ON_A_LINE, CROSSED, AT_ANOTHER, OUTSIDE, FAR, ASIDE = 100.0, 60.0, 30.0, 4.0, 6.0, 1.0
"""What speaks against a place: it lies across an outline; its line to the edge crosses words; another edge is as near; it is not
on the piece; it is further off; it is not at the middle."""

AS_NEAR = 0.4
"""mm. Another edge that is no further off by more is as near."""

Spot = tuple[Point, Point, float]
"""Where a ring may stand, the point of the edge that it stands at, and what speaks against it already by how far off it is."""


@record
class Labelled:
    """A line that has a number, on the piece whose outline is `shape`; those of one `joint` come together."""

    joint: int
    label: str
    line: Sequence[Point]
    shape: Sequence[Point]


@dataclass(slots=True)
class Badges:
    """Puts numbers on `paper`. `shapes` are the outlines of all that is laid out, `lines` all that have numbers, `taken` what
    nothing may lie on."""

    paper: Paper
    shapes: Sequence[Sequence[Point]]
    lines: Sequence[Labelled]
    taken: list[Box] = field(default_factory=list)
    _about: Sequence[Box] = field(init=False)
    """The box that each line lies in."""
    _about_shapes: Sequence[Box] = field(init=False)

    def __post_init__(self) -> None:
        self._about = [box_round(of.line) for of in self.lines]
        self._about_shapes = [box_round(shape) for shape in self.shapes]

    def put(self) -> None:
        """Each number, those of short lines first: they have the fewest places."""
        for of in sorted(self.lines, key=lambda of: _long(of.line)):
            self._put(of)

    def _put(self, of: Labelled) -> None:
        half = max(ROUND, (len(of.label) * 1.9 + 1.2) / 2)
        against, ((x, y), edge, _) = self._best(of, half) or (ON_A_LINE, self._further(of, half))
        self.taken.append(_box((x, y), half))
        if math.dist((x, y), edge) > NEAR * INWARDS or against >= AT_ANOTHER:
            self.paper.draw("guide", path([edge, _rim((x, y), edge)]))
        flat, turn = half - ROUND, f"a{ROUND} {ROUND} 0 0 1 0"
        ring = f"M{x - flat:.2f} {y - ROUND:.2f}h{2 * flat:.2f}{turn} {2 * ROUND}h{-2 * flat:.2f}{turn} {-2 * ROUND}Z"
        self.paper.draw("badge", ring)
        self.paper.letter(x, y + 1.0, of.label)

    def _best(self, of: Labelled, half: float) -> tuple[float, Spot] | None:
        """The place that the least speaks against, the first of equals; None where none is free.

        Those of which little is said already are looked at first: most of the others then need no look, and a look is long."""
        best: tuple[float, int, Spot] | None = None
        for number, place in sorted(enumerate(_places(of, half)), key=lambda one: one[1][2]):
            if best is not None and place[2] > best[0]:
                break
            if self._free(place[0], half):
                rated = (self._against(of, half, *place), number, place)
                best = rated if best is None or rated[:2] < best[:2] else best
        return best and (best[0], best[2])

    def _free(self, at: Point, half: float) -> bool:
        box = _box(at, half)
        return not any(overlap(box, other) for other in self.taken)

    def _against(self, of: Labelled, half: float, at: Point, edge: Point, aside: float) -> float:
        """What speaks against a place, of which `aside` says already how far it is from the best one along the edge."""
        about = _box(at, half)
        ring = _corners(about)
        within = all(inside(corner, of.shape) for corner in ring)
        on_a_line = any(
            overlap(about, box) and meet(ring, other)
            for other, box in zip(self.shapes, self._about_shapes, strict=True)
            if other is not of.shape or not within
        )
        nearer = _distance(at, of.line) + AS_NEAR
        at_another = any(
            _reaches(box, at, nearer) and _distance(at, other.line) < nearer
            for other, box in zip(self.lines, self._about, strict=True)
            if other.joint != of.joint or other.shape is not of.shape
        )
        crossed = math.dist(at, edge) > NEAR * INWARDS and any(through(box, (at, edge)) for box in self.taken)
        return aside + CROSSED * crossed + ON_A_LINE * on_a_line + AT_ANOTHER * at_another + (0 if within else OUTSIDE)

    def _further(self, of: Labelled, half: float) -> Spot:
        """The nearest place all round the middle of an edge that is free: among so many there is always one."""
        (x, y), _ = along(of.line, 0.5)
        angles = [2 * math.pi * step / AROUND for step in range(AROUND)]
        rings = (ring * ROUND for ring in range(3, RINGS))
        places = ((x + far * math.cos(angle), y + far * math.sin(angle)) for far in rings for angle in angles)
        return next(place for place in places if self._free(place, half)), (x, y), 0.0


def _places(of: Labelled, half: float) -> Iterator[Spot]:
    """Where a ring may stand."""
    for number, share in enumerate(SHARES):
        (x, y), (dx, dy) = along(of.line, share)
        # Square to the edge, to the side where the piece is.
        inner = 1 if inside((x - dy * 0.05, y + dx * 0.05), of.shape) else -1
        for way in (1, -1):
            for far in FURTHER:
                off = (far * INWARDS + (half - ROUND) * abs(dy)) * inner * way
                yield (x - dy * off, y + dx * off), (x, y), ASIDE * number + FAR * (far - 1)


def _rim(at: Point, edge: Point) -> Point:
    """Where a line from the edge meets the ring, about."""
    far = math.dist(at, edge) or 1.0
    return at[0] + (edge[0] - at[0]) * ROUND / far, at[1] + (edge[1] - at[1]) * ROUND / far


def _box(at: Point, half: float) -> Box:
    return at[0] - half - 0.3, at[1] - ROUND - 0.3, at[0] + half + 0.3, at[1] + ROUND + 0.3


def _corners(box: Box) -> list[Point]:
    x0, y0, x1, y1 = box
    return [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]


def _long(line: Sequence[Point]) -> float:
    return sum(math.dist(a, b) for a, b in pairwise(line))


def _reaches(box: Box, at: Point, far: float) -> bool:
    """Whether a point lies in a box that is so much wider each way: what is in the box is further off otherwise."""
    x0, y0, x1, y1 = box
    return x0 - far < at[0] < x1 + far and y0 - far < at[1] < y1 + far


def _distance(at: Point, line: Sequence[Point]) -> float:
    """From a point to the nearest of a line."""
    if len(line) == 1:
        return math.dist(at, line[0])
    return math.sqrt(min(_square(at, a, b) for a, b in pairwise(line)))


def _square(at: Point, a: Point, b: Point) -> float:
    """Of the distance from a point to the nearest of a straight line."""
    (x, y), (ax, ay) = at, a
    dx, dy = b[0] - ax, b[1] - ay
    square = dx * dx + dy * dy
    share = min(max(((x - ax) * dx + (y - ay) * dy) / square, 0.0), 1.0) if square else 0.0
    x -= ax + share * dx
    y -= ay + share * dy
    return x * x + y * y
