"""Stitches and rows to centimetres: one tension for a plain piece, others in the zones of a piece that has them.

A width is laid out at the tension of the rows just below it (at the start: of the first rows), so that an edge steps where
one fabric meets another of a different tension. The stitches of a panel are as wide as its own swatch says.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from walewright.design.model import Design, Fabric, Piece
from walewright.solve.model import SizedPiece

Point = tuple[float, float]
"""(x, y): x to the right, y upwards."""


@dataclass(frozen=True, slots=True)
class Band:
    """Rows `low` to `high` in `fabric`."""

    low: int
    high: int
    fabric: Fabric


@dataclass(frozen=True, slots=True)
class Panel:
    """Rows `low` to `high` of slots `first` to `last` in `fabric`."""

    low: int
    high: int
    first: int
    last: int
    fabric: Fabric


@dataclass(frozen=True, slots=True)
class Grid:
    """`bands` lie upon each other without a gap, from row 0 to the top. `middle` is the middle of the start in stitches from the
    bed's centre mark: 0, of an odd count 1/2, of a piece that begins off the centre more or less."""

    bands: tuple[Band, ...]
    middle: float = 0.0
    panels: tuple[Panel, ...] = ()

    def height(self, row: float) -> float:
        """cm from the start to `row`."""
        done = 0.0
        for band in self.bands:
            if row <= band.low:
                break
            done += (min(row, band.high) - band.low) / band.fabric.rows_per_cm
        return done

    def across(self, row: float, above: bool = False) -> float:
        """cm of one stitch at `row`, in the fabric just below it, or just above."""
        return 1 / self._band(row, above).fabric.stitches_per_cm

    def wide(self, stitches: int, row: float) -> float:
        """cm of a row of so many stitches with all its panels."""
        base = self.across(row)
        return stitches * base + sum(
            (p.last - p.first + 1) * (1 / p.fabric.stitches_per_cm - base) for p in self.panels if self._in(p, row, False)
        )

    def at(self, point: Point, above: bool = False) -> Point:
        """(stitches from the centre mark, row) in cm."""
        x, row = point
        base = self.across(row, above)
        wide = (x - self.middle) * base
        for panel in self.panels:
            if self._in(panel, row, above):
                more = 1 / panel.fabric.stitches_per_cm - base
                wide += (self._within(panel, x) - self._within(panel, self.middle)) * more
        return wide, self.height(row)

    def _in(self, panel: Panel, row: float, above: bool) -> bool:
        at = max(row, 1e-6) if not above else row + 1e-6
        return panel.low < at <= panel.high

    def _within(self, panel: Panel, x: float) -> float:
        """Stitches of a panel left of x."""
        return min(max(x, panel.first), panel.last + 1) - panel.first

    def line(self, points: Iterable[Point]) -> tuple[Point, ...]:
        """A line of (stitches, row) in cm, without points that lie straight between their neighbours."""
        found = list(points)
        if len(self.bands) == 1 and not self.panels:
            return _straightened([self.at(p) for p in found])
        made: list[Point] = []
        for a, b in itertools.pairwise(found):
            made.extend(self._piecewise(a, b))
        return _straightened(made or [self.at(p) for p in found])

    def _band(self, row: float, above: bool) -> Band:
        inside: Callable[[Band], bool] = (lambda b: b.low <= row < b.high) if above else (lambda b: b.low < row <= b.high)
        return next((b for b in self.bands if inside(b)), self.bands[0] if row <= 0 else self.bands[-1])

    def _piecewise(self, a: Point, b: Point) -> list[Point]:
        if a[1] == b[1]:
            return [self.at(a), self.at(b)]
        up = b[1] > a[1]
        ends = {float(band.low) for band in self.bands} | {float(r) for p in self.panels for r in (p.low, p.high)}
        cuts = sorted(row for row in ends if min(a[1], b[1]) < row < max(a[1], b[1]))
        rows = [a[1], *(cuts if up else reversed(cuts)), b[1]]
        made: list[Point] = []
        for low, high in itertools.pairwise(rows):
            for row, leaving in ((low, True), (high, False)):
                x = a[0] + (b[0] - a[0]) * (row - a[1]) / (b[1] - a[1])
                made.append(self.at((x, row), above=leaving == up))
        return made


def middle_of(sized: SizedPiece) -> float:
    """The middle of the start in stitches right of the bed's centre mark."""
    return sized.start / 2 - sized.start_left


def grid(design: Design, piece: Piece, sized: SizedPiece) -> Grid:
    """The grid of a piece of the design in one size."""
    own = design.fabric(piece.fabric)
    whole = [z for z in sized.zones if z.first > z.last]
    cuts = sorted({0, sized.rows, *(min(max(r, 0), sized.rows) for z in whole for r in (z.from_row, z.to_row))})
    bands: list[Band] = []
    for low, high in itertools.pairwise(cuts):
        # A later statement of the source lies over an earlier one.
        names = [z.fabric for z in whole if z.from_row <= low and high <= z.to_row]
        fabric = design.fabric(names[-1]) if names else own
        if bands and bands[-1].fabric == fabric:
            bands[-1] = Band(bands[-1].low, high, fabric)
        else:
            bands.append(Band(low, high, fabric))
    panels = tuple(Panel(z.from_row, z.to_row, z.first, z.last, design.fabric(z.fabric)) for z in sized.zones if z.first <= z.last)
    return Grid(tuple(bands) or (Band(0, 0, own),), middle_of(sized), panels)


def plain(fabric: Fabric, sized: SizedPiece) -> Grid:
    """The grid of a piece of one fabric throughout."""
    return Grid((Band(0, sized.rows, fabric),), middle_of(sized))


def _straightened(points: list[Point]) -> tuple[Point, ...]:
    kept: list[Point] = []
    for point in points:
        if kept and kept[-1] == point:
            continue
        while len(kept) >= 2 and _on_line(kept[-2], kept[-1], point):
            kept.pop()
        kept.append(point)
    return tuple(kept)


def _on_line(a: Point, b: Point, c: Point) -> bool:
    cross = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
    onward = (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1])
    return abs(cross) < 1e-9 and onward >= 0
