"""Darts on a piece: lines along which stitches are taken or given within it, and held rows, as they are seen when it is worn."""

from __future__ import annotations

import itertools
from collections.abc import Iterator

from walewright.counted.inside import moves
from walewright.counted.model import SizedPiece
from walewright.counted.outline import Dart, Point
from walewright.figures.measures import LaidPiece


def inside_lines(sized: SizedPiece) -> Iterator[list[tuple[int, int]]]:
    """Each line within the piece along which an edge is shaped, over the rows of its run: (slot whose left side it is, row)."""
    every = sorted(moves(sized), key=lambda m: (m.side, m.run.from_row, m.line))
    for (side, begin, _), some in itertools.groupby(every, key=lambda m: (m.side, m.run.from_row, m.line)):
        of_line = list(some)
        # On the side of the needle that is towards the edge.
        off = 0 if side == "left" else 1
        ends = ((begin, of_line[0].slot), *((m.row, m.slot) for m in of_line), (of_line[-1].run.to_row, of_line[-1].slot))
        yield [(slot + off, row) for row, slot in ends]


def worn_darts(piece: LaidPiece) -> Iterator[tuple[Point, ...]]:
    """The darts of a piece in cm on it, each as the straight line that is seen of it."""
    for dart in piece.shape.darts:
        yield _closed(dart)
    for line in inside_lines(piece.sized):
        yield tuple(piece.of.point(*end) for end in (line[0], line[-1]))


def _closed(dart: Dart) -> tuple[Point, ...]:
    """Held rows draw the cloth below and above them together: from the edge, in the middle of its corners, to their inner end."""
    (x, low), (_, high) = dart.lines[0], dart.lines[-1]
    return (x, (low + high) / 2), max(dart.lines, key=lambda p: abs(p[0] - x))
