"""The outline of a piece while it is understood: where its edges and its gaps stand at every height.

A position is the distance of an edge from the middle of its start, in cm per size. Where
widths are free, a position is the farthest that the edge may come: what does not fit then never does.
"""

from __future__ import annotations

from itertools import pairwise

from walewright.design.findings import Findings
from walewright.design.model import EdgeRun, Level, Opening, PerSize
from walewright.design.model.per_size import plus
from walewright.record import record
from walewright.report.model import Span
from walewright.report.said import Said, said
from walewright.source import syntax
from walewright.trade.sides import SIDES, EdgeSide

NOTHING = 1e-6
"""cm that count as nothing: far below a stitch, above the noise of binary fractions."""

OutlineCorner = tuple[int, PerSize]
"""(level index, position)."""


@record
class OutlineSide:
    """One edge as far as it is known: `level` is the index of the level reached, `least` and `most` where the edge may stand
    there, `corners` its farthest position at the start and the end of every run."""

    level: int
    least: PerSize
    most: PerSize
    runs: tuple[EdgeRun, ...] = ()
    corners: tuple[OutlineCorner, ...] = ()

    def at(self, heights: PerSize, levels: tuple[Level, ...], above: bool = False) -> PerSize:
        """Position at these heights (cm per size), runs taken as straight between their ends. At a level where the width is
        changed all across, the position below it, or the one `above`."""
        return tuple(
            _between([(levels[i].height[size], p[size]) for i, p in self.corners], height, above)
            for size, height in enumerate(heights)
        )


def _between(points: list[tuple[float, float]], height: float, above: bool) -> float:
    pairs = list(pairwise(points))
    if above:
        low, high = next((p for p in reversed(pairs) if height >= p[0][0] - NOTHING), pairs[0])
    else:
        low, high = next((p for p in pairs if height <= p[1][0] + NOTHING), pairs[-1])
    if high[0] - low[0] < NOTHING:
        return high[1] if above else low[1]
    share = min(max((height - low[0]) / (high[0] - low[0]), 0.0), 1.0)
    return low[1] + (high[1] - low[1]) * share


@record
class OpeningGap:
    """An opening as far as room is concerned: from `low` to `high` (cm up), its reach left and right of `Opening.centre`."""

    opening: Opening
    low: PerSize
    high: PerSize
    left: tuple[tuple[PerSize, PerSize], ...]
    """(heights, reach) from the parting up."""
    right: tuple[tuple[PerSize, PerSize], ...]

    def reach(self, side: EdgeSide, size: int, height: float) -> float:
        """Distance of that edge of the gap from the middle of its start, in cm."""
        corners = self.left if side == "left" else self.right
        return _between([(h[size], r[size]) for h, r in corners], height, above=False)


@record
class PieceOutline:
    """A piece's levels, outer edges and gaps."""

    piece: str
    levels: tuple[Level, ...]
    left: OutlineSide
    right: OutlineSide
    gaps: tuple[OpeningGap, ...] = ()
    centre: PerSize = ()
    """How far right of the middle of its start the centre line lies."""

    def side(self, which: EdgeSide) -> OutlineSide:
        """The edge at that side."""
        return self.left if which == "left" else self.right

    def position(self, which: EdgeSide, heights: PerSize, above: bool = False) -> PerSize:
        """Distance of an outer edge from the middle of the start at these heights."""
        return self.side(which).at(heights, self.levels, above)

    def width(self, heights: PerSize, above: bool = False) -> PerSize:
        """From outer edge to outer edge."""
        left, right = (self.position(s, heights, above) for s in SIDES)
        return plus(left, right)

    def parted(self, size: int, low: float, high: float, side: EdgeSide = "left") -> OpeningGap | None:
        """The gap that is open somewhere between the two heights of a size (their ends left out); of several the one nearest to the
        outer edge at that side."""
        found = [gap for gap in self.gaps if gap.low[size] < high - NOTHING and gap.high[size] > low + NOTHING]
        if not found:
            return None
        return (min if side == "left" else max)(found, key=lambda gap: gap.opening.centre[size])

    def room(self, which: EdgeSide, low: PerSize, high: PerSize) -> PerSize:
        """The least width of fabric in from an outer edge between two heights: up to the gap open there, else up to the other
        edge."""
        found: list[float] = []
        for size in range(len(low)):
            heights = {low[size], high[size]}
            heights |= {x.height[size] for x in self.levels if low[size] < x.height[size] < high[size]}
            widths: list[float] = []
            for height in heights:
                at = tuple(height for _ in low)
                gap = self.parted(size, min(height, high[size] - 2 * NOTHING), max(height, low[size] + 2 * NOTHING), which)
                edge = self.position(which, at, above=height == low[size])[size]
                if gap is None:
                    widths.append(self.width(at, above=height == low[size])[size])
                else:
                    middle = gap.opening.centre[size] * (1 if which == "left" else -1)
                    widths.append(edge + middle - gap.reach(which, size, height))
            found.append(min(widths))
        return tuple(found)


def level_index(name: str, span: Span, piece: str, levels: tuple[Level, ...], findings: Findings) -> int | None:
    """Number of a level from the start up; told when there is none of that name."""
    names = [level.name for level in levels]
    if name in names:
        return names.index(name)
    findings.unknown(said("level-of", piece=piece), name, span, names)
    return None


_Stretched = (
    syntax.OpeningLine | syntax.ButtonholesLine | syntax.WedgeLine | syntax.ZoneLine | syntax.NeedlesLine | syntax.RepeatLine
)


def stretch(node: _Stretched, what: Said, outline: PieceOutline, findings: Findings) -> tuple[int, int] | None:
    """The indices of the two levels of a statement, the second above the first; told when they are not so."""
    low, high = (level_index(name, node.span, outline.piece, outline.levels, findings) for name in (node.from_level, node.to_level))
    if low is None or high is None:
        return None
    if high <= low:
        findings.report(
            "stretch-falls",
            (node.span, "from-to"),
            notes=("levels",),
            helps=("higher",),
            what=what,
            from_level=node.from_level,
            to_level=node.to_level,
            piece=outline.piece,
            levels=tuple(level.name for level in outline.levels),
        )
        return None
    return low, high
