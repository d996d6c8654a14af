"""Crossed stitches of a picture: which loops belong to a cable, how far each is drawn aside, and which group lies in front.

On the bed a crossing is between two rows, but the slack of the rows around it is drawn into it, so that the groups are seen to
travel over several rows. How many: as many as a group has stitches, below and above (common practice in drawings of cables).
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from walewright.proof.model import FabricPicture, PictureLoop
from walewright.record import record

At = tuple[int, int]
"""(column, row)."""


NEXT = 0.3
"""Share of the way that the loops next to the crossing have gone."""


@record
class Cable:
    """One crossing: the loops of its two groups that are drawn aside, as the beholder sees them."""

    front: frozenset[At]
    behind: frozenset[At]


@record
class _Crossing:
    row: int
    first: int
    left: int
    """So many went from the left to the right, as seen on the bed."""
    right: int
    left_over: bool
    """Whether they lie over the others on the knitter's side."""

    @property
    def end(self) -> int:
        return self.first + self.left + self.right


def cables(shown: FabricPicture, mirrored: bool) -> tuple[tuple[Cable, ...], dict[At, float]]:
    """The crossings of a picture from below, and how many columns to the right each of their loops is drawn; `mirrored`: seen
    from the side that faces away from the knitter."""
    crossings = tuple(_crossings(shown))
    made: list[Cable] = []
    aside: dict[At, float] = {}
    for crossing in crossings:
        reach = max(crossing.left, crossing.right)
        for other in crossings:
            if other.row != crossing.row and other.first < crossing.end and crossing.first < other.end:
                reach = max(1, min(reach, abs(other.row - crossing.row) // 2))
        left, right = _group(crossing, reach, True), _group(crossing, reach, False)
        aside |= left | right
        front, behind = (left, right) if crossing.left_over != mirrored else (right, left)
        made.append(Cable(frozenset(front), frozenset(behind)))
    return tuple(made), aside


def _crossings(shown: FabricPicture) -> Iterator[_Crossing]:
    """Where loops side by side are drawn through loops so many columns to the left of them, and the next ones, as many as that,
    through loops so many to the right as the first ones are."""
    moved: dict[int, dict[int, tuple[int, PictureLoop]]] = {}
    for loop in shown.loops:
        if len(loop.through) == 1 and loop.through[0][1] == loop.row - 1 and loop.through[0][0] != loop.column:
            moved.setdefault(loop.row, {})[loop.column] = (loop.through[0][0] - loop.column, loop)
    for row, found in sorted(moved.items()):
        column, last = min(found), max(found)
        while column <= last:
            right = found[column][0] if column in found else 0
            left = -found[column + right][0] if right > 0 and column + right in found else 0
            group = [found.get(c, (0, None))[0] for c in range(column, column + right + left)]
            if left > 0 and group == [right] * right + [-left] * left:
                # What went to the right now has the higher columns.
                yield _Crossing(row - 1, column, left, right, found[column + right][1].over)
                column += right + left
            else:
                column += 1


def _group(crossing: _Crossing, reach: int, left: bool) -> dict[At, float]:
    """The loops of one group, each with the columns that it is drawn to the right."""
    count, way = (crossing.left, crossing.right) if left else (crossing.right, -crossing.left)
    below = crossing.first if left else crossing.first + crossing.left
    made: dict[At, float] = {}
    for step in range(2 * reach):
        lower = step < reach
        share = _share((step + 1) / reach) if lower else 1 - _share((2 * reach - step) / reach)
        shift = way * share if lower else way * (share - 1)
        start = below if lower else below + way
        made |= {(c, crossing.row + 1 - reach + step): shift for c in range(start, start + count)}
    return made


def _share(nearness: float) -> float:
    """How much of its way a loop has gone below the crossing, by its nearness to it from 0 to 1. The rest is gone within the row
    of the crossing: with half the way a cable's waist would be drawn as narrow as one group, which no knitting is."""
    return NEXT * nearness * math.sqrt(nearness)
