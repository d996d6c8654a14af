"""How a chart is cut into sheets of paper: cells large enough to read, and some rows and columns on both of two neighbours."""

from __future__ import annotations

import itertools

from walewright.record import record, replace

LEAST, MOST = 3.2, 6.0
"""A cell's shorter side is never less, its width never more, mm."""

RATIO = (0.72, 1.25)
"""Height to width of a cell: that of a stitch, within these limits."""

OVERLAP = 4
"""Rows and columns that a sheet shows again of the sheet below it and of the one at its left."""

ROOM = (152.0, 198.0)
"""mm of paper for the cells of one sheet, on A4 and on letter."""


LARGE = 7.0
"""A cell's shorter side in large print, mm."""

_DRAWN = 3.0
"""As it is drawn for that: the drawing is printed larger, and its figures with it."""

LARGER = LARGE / _DRAWN
"""By how much."""

_LARGE_ROOM = (138.0 / LARGER, 182.0 / LARGER)


@record
class Window:
    """One sheet: its own cells are columns `left` to `right` and rows `low` to `high` (from 0, the end not counted). It shows
    besides them `again_left` columns at its left and `again_low` rows below, which other sheets own."""

    letter: str
    across: int
    up: int
    left: int
    right: int
    low: int
    high: int
    again_left: int
    again_low: int

    @property
    def first(self) -> int:
        """The first column that is shown."""
        return self.left - self.again_left

    @property
    def lowest(self) -> int:
        """The lowest row that is shown."""
        return self.low - self.again_low

    @property
    def columns(self) -> range:
        return range(self.first, self.right)

    @property
    def rows(self) -> range:
        return range(self.lowest, self.high)


@record
class Cut:
    """A chart's sheets, lettered from the lowest left one, and the size of a cell in mm."""

    width: float
    height: float
    sheets: tuple[Window, ...]
    scale: float = 1.0
    """By how much it is printed larger than that."""

    def at(self, across: int, up: int) -> Window | None:
        return next((s for s in self.sheets if (s.across, s.up) == (across, up)), None)


def large(columns: int, rows: int, ratio: float) -> Cut:
    """As `cut`, for large print: to be printed `LARGER`."""
    side = _DRAWN / min(1.0, _within(ratio))
    return replace(cut(columns, rows, ratio, _LARGE_ROOM, _DRAWN, side), scale=LARGER)


AT_BENCH = 4.0
"""A cell's shorter side in a bench copy is never less, mm: a chart that goes on one sheet so is not cut for larger cells."""

_BENCH_ROOM = (145.0 / LARGER, 182.0 / LARGER)
"""Besides the numbers at both sides, on the narrowest paper."""


def at_bench(columns: int, rows: int, ratio: float) -> Cut:
    """As `large`, but on one sheet if its cells are large enough then."""
    made, ratio = large(columns, rows, ratio), _within(ratio)
    width = min(_BENCH_ROOM[0] / columns, _BENCH_ROOM[1] / (rows * ratio))
    if len(made.sheets) == 1 or width * min(1.0, ratio) < AT_BENCH / LARGER:
        return made
    return replace(cut(columns, rows, ratio, _BENCH_ROOM, AT_BENCH / LARGER, width), scale=LARGER)


def _within(ratio: float) -> float:
    return min(max(ratio, RATIO[0]), RATIO[1])


def cut(columns: int, rows: int, ratio: float, room: tuple[float, float] = ROOM, shorter: float = LEAST, most: float = MOST) -> Cut:
    """Sheets for a chart of so many columns and rows whose stitches are `ratio` times as high as wide. The `shorter` side of a cell
    is never less, its width never more than `most`."""
    ratio = _within(ratio)
    least = shorter / min(1.0, ratio)
    whole = min(most, room[0] / columns, room[1] / (rows * ratio))
    if whole >= least:
        return Cut(whole, whole * ratio, (Window("A", 0, 0, left=0, right=columns, low=0, high=rows, again_left=0, again_low=0),))
    across = _shares(columns, int(room[0] / least))
    up = _shares(rows, int(room[1] / (least * ratio)))
    sheets = tuple(
        Window(letter(len(across) * j + i), i, j, *a, *u, again_left=OVERLAP if i else 0, again_low=OVERLAP if j else 0)
        for j, u in enumerate(up)
        for i, a in enumerate(across)
    )
    # What is left of the paper goes to the cells.
    widest, highest = max(len(s.columns) for s in sheets), max(len(s.rows) for s in sheets)
    width = min(most, room[0] / widest, room[1] / (highest * ratio))
    return Cut(width, width * ratio, sheets)


def _shares(count: int, room: int) -> tuple[tuple[int, int], ...]:
    """(first, end) of even shares of `count`, each with its overlap no more than `room`."""
    number = 1 if count <= room else -(-(count - OVERLAP) // (room - OVERLAP))
    ends = [count * i // number for i in range(number + 1)]
    while number > 1 and max(b - a + OVERLAP * (i > 0) for i, (a, b) in enumerate(itertools.pairwise(ends))) > room:
        number += 1
        ends = [count * i // number for i in range(number + 1)]
    return tuple(itertools.pairwise(ends))


def letter(index: int) -> str:
    """A … Z, then AA, AB …"""
    return chr(ord("A") + index) if index < 26 else letter(index // 26 - 1) + letter(index % 26)
