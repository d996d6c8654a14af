"""A chart drawn: one sheet of it, the map of its sheets, and single symbols for the key."""

from __future__ import annotations

import itertools
import math
import re
from collections.abc import Callable, Iterable, Iterator

from walewright.design.model import Cell, Chart, Design
from walewright.figures import symbols, yarns
from walewright.figures.chart_sheets import Cut, Window
from walewright.figures.model import Drawing, Tile
from walewright.figures.pens import Paper, path
from walewright.guide.model import Guide
from walewright.knit.operations import needle
from walewright.record import record

SIDE, ENDS = 7.5, 4.4
"""mm beside the cells for the rows' numbers, and above and below them for the columns'."""

NOTE = 4.2
"""mm above and below for the centre mark and for words about other sheets."""

DIGIT = 1.39
"""Width of a figure of the small lettering, mm."""

FIGURE = 2.0
"""Height of a line of it, mm: in lower rows every second one has its number."""


@record
class Centre:
    """A line between two columns, before column `at` (from 0), that lies on the centre mark; `text` says of what, if not of all."""

    at: float
    text: str


@record
class ChartLook:
    """What a chart shows besides its marks. `needles`: the slot below the first column, where that and those to the right of it are
    all that knit the chart, and the columns are headed by them; they are numbered otherwise. `ground`: the yarn of the cells that
    name none, where it is one and the same; they are white otherwise."""

    needles: int | None = None
    ground: str = ""


PLAIN = ChartLook()


@record
class _Sheet:
    guide: Guide
    design: Design
    chart: Chart
    cut: Cut
    window: Window
    paper: Paper
    look: ChartLook

    def x(self, column: float) -> float:
        return (column - self.window.first) * self.cut.width

    def y(self, row: float) -> float:
        """The lower side of a row."""
        return (self.window.high - row) * self.cut.height

    @property
    def wide(self) -> float:
        return len(self.window.columns) * self.cut.width

    @property
    def high(self) -> float:
        return len(self.window.rows) * self.cut.height

    def cells(self) -> Iterator[tuple[int, int, Cell]]:
        """(row, column, cell) of what is shown, row for row upwards."""
        kinds = {k.symbol: k.cell for k in self.chart.key}
        for row in self.window.rows:
            for column in self.window.columns:
                yield row, column, kinds[self.chart.rows[row][column]]


def sheet(
    guide: Guide,
    design: Design,
    chart: Chart,
    cut: Cut,
    window: Window,
    centres: tuple[Centre, ...],
    look: ChartLook = PLAIN,
) -> Drawing:
    """One sheet of a chart, the purl side facing, row 1 at the bottom."""
    paper = Paper()
    on = _Sheet(guide, design, chart, cut, window, paper, look=look)
    _colours(on)
    paper.draw("grid", *_lines(on, lambda n: n % 5 != 0))
    paper.draw("fifth", *_lines(on, lambda n: n % 5 == 0))
    paper.draw("symbol", *symbol_strokes(chart, cut, window))
    _again(on)
    paper.draw("fifth", path([(0, 0), (on.wide, 0), (on.wide, on.high), (0, on.high)], closed=True))
    _repeat(on)
    _numbers(on)
    _centres(on, centres)
    _neighbours(on)
    title = guide.say(
        "drawing/chart",
        chart=chart.name.replace("_", " "),
        sheet=window.letter if len(cut.sheets) > 1 else "",
        left=window.left + 1,
        right=window.right,
        low=window.low + 1,
        high=window.high,
    )
    rise = ENDS + NOTE
    return paper.finished(title, on.wide + 2 * SIDE, on.high + 2 * rise, -SIDE, -rise)


def _colours(on: _Sheet) -> None:
    """The yarns' cells: neighbours in a row are one box, filled and then hatched by a tile, so that a large chart in colours
    stays a few bytes a cell."""
    looks = yarns.in_chart(on.design, on.chart, on.look.ground)
    found: dict[str, list[tuple[int, int]]] = {}
    for row, column, cell in on.cells():
        if yarn := cell.yarn or on.look.ground:
            found.setdefault(yarn, []).append((row, column))
    w, h = on.cut.width, on.cut.height
    boxes = {name: "".join(_box(on, *run) for run in _runs(cells)) for name, cells in found.items()}
    for name, data in boxes.items():
        on.paper.draw("fill", data, colour=looks[name].colour)
    for name, data in boxes.items():
        index = looks[name].hatch
        if index is None:
            continue
        ink, pen = yarns.hatch_ink(looks[name].colour)
        mark = re.sub(r"[^A-Za-z0-9]+", "-", f"hatch-{on.chart.name}-{on.window.letter}-{index + 1}")
        on.paper.tiled(Tile(mark, round(w, 4), round(h, 4), yarns.hatch(index, 0, 0, w, h), ink, pen), data)


def _box(on: _Sheet, row: int, first: int, end: int) -> str:
    x0, x1, y0, y1 = (round(v, 2) for v in (on.x(first), on.x(end), on.y(row + 1), on.y(row)))
    return f"M{x0:g} {y0:g}H{x1:g}V{y1:g}H{x0:g}z"


def _runs(cells: Iterable[tuple[int, int]]) -> Iterator[tuple[int, int, int]]:
    """(row, first column, end) of neighbours in a row."""
    for _, run in itertools.groupby(enumerate(cells), key=lambda item: (item[1][0], item[1][1] - item[0])):
        found = [cell for _, cell in run]
        yield found[0][0], found[0][1], found[-1][1] + 1


def symbol_strokes(chart: Chart, cut: Cut, window: Window) -> list[str]:
    """Path data of every symbol that a sheet shows, each cell, run of tucks or cross once; the upper left cell's corner is
    (0, 0)."""
    made = []
    w, h = cut.width, cut.height
    kinds = {k.symbol: k.cell for k in chart.key}
    for row in window.rows:
        for column in window.columns:
            cell = kinds[chart.rows[row][column]]
            x, y = (column - window.first) * w, (window.high - 1 - row) * h
            if cell.kind == "tuck":
                made.append(_tucks(chart, kinds, cut, window, row, column))
            elif cell.kind != "cross":
                made.append(symbols.symbol(cell.kind, x, y, w, h))
        made.extend(_crosses(chart, kinds, cut, window, row))
    return [data for data in made if data]


def _tucks(chart: Chart, kinds: dict[str, Cell], cut: Cut, window: Window, row: int, column: int) -> str:
    """The U of a whole run, drawn from its lowest row on this sheet."""

    def held(at: int) -> bool:
        return 0 <= at < len(chart.rows) and kinds[chart.rows[at][column]].kind == "tuck"

    if held(row - 1) and row - 1 in window.rows:
        return ""
    top = row
    while held(top + 1) and top + 1 in window.rows:
        top += 1
    rise = (top - row + 1) * cut.height
    x, foot = (column - window.first) * cut.width, (window.high - row) * cut.height
    return symbols.tuck(x, foot - rise, cut.width, rise, not held(row - 1), not held(top + 1))


def _crosses(chart: Chart, kinds: dict[str, Cell], cut: Cut, window: Window, row: int) -> Iterator[str]:
    """Crosses of a row: runs of one symbol, cut from the left. One that the sheet's side cuts through is drawn as far as its cells
    go; its stitches are told apart by the same rule on every sheet, because the run is read in the whole row."""
    line, column = chart.rows[row], 0
    while column < len(line):
        cell = kinds[line[column]]
        if cell.kind != "cross":
            column += 1
            continue
        end = column + 2 * cell.cross
        if end > window.first and column < window.right:
            x, y = (column - window.first) * cut.width, (window.high - 1 - row) * cut.height
            yield symbols.cross(x, y, cut.width, cut.height, cell, (0.0, len(window.columns) * cut.width))
        column = end


def _lines(on: _Sheet, wanted: Callable[[int], bool]) -> list[str]:
    upright = (c for c in range(on.window.first, on.window.right + 1) if wanted(c))
    level = (r for r in range(on.window.lowest, on.window.high + 1) if wanted(r))
    return [path([(on.x(c), 0), (on.x(c), on.high)]) for c in upright] + [path([(0, on.y(r)), (on.wide, on.y(r))]) for r in level]


def _again(on: _Sheet) -> None:
    """A veil over what another sheet shows first."""
    left, low = on.x(on.window.left), on.y(on.window.low)
    if on.window.again_left:
        on.paper.draw("veil", path([(0, 0), (left, 0), (left, on.high), (0, on.high)], closed=True))
    if on.window.again_low:
        on.paper.draw("veil", path([(left, low), (on.wide, low), (on.wide, on.high), (left, on.high)], closed=True))


def _repeat(on: _Sheet) -> None:
    """A heavy line round the repeat; where it goes on on another sheet that side is open."""
    if not on.chart.repeat:
        return
    window, first = on.window, on.chart.before
    end = first + on.chart.repeat
    a, b = max(first, window.first), min(end, window.right)
    if a >= b:
        return
    x0, x1 = on.x(a), on.x(b)
    sides = []
    if window.lowest == 0:
        sides.append(path([(x0, on.high), (x1, on.high)]))
    if window.high == len(on.chart.rows):
        sides.append(path([(x0, 0), (x1, 0)]))
    if first == a:
        sides.append(path([(x0, 0), (x0, on.high)]))
    if end == b:
        sides.append(path([(x1, 0), (x1, on.high)]))
    on.paper.draw("box", *sides)


def _numbers(on: _Sheet) -> None:
    every = 1 if on.cut.height > FIGURE else 2
    for row in (row for row in on.window.rows if (row + 1) % every == 0):
        y = on.y(row + 0.5) + 0.75
        on.paper.letter(-1.1, y, str(row + 1), "end", kind="count")
        on.paper.letter(on.wide + 1.1, y, str(row + 1), "start", kind="count")
    for column, text in _headings(on):
        x = on.x(column + 0.5)
        on.paper.letter(x, -1.2, text, kind="count")
        on.paper.letter(x, on.high + 2.6, text, kind="count")


def _headings(on: _Sheet) -> Iterator[tuple[int, str]]:
    """As many of the columns as have room for their figures."""
    if on.look.needles is not None:
        yield from _needles(on, on.look.needles)
        return
    step = _step(on, on.window.right)
    for column in on.window.columns:
        if (column + 1) % step == 0 or (column == on.window.first and step == 1):
            yield column, str(column + 1)


def _needles(on: _Sheet, slot: int) -> Iterator[tuple[int, str]]:
    """Of needles those at the ends have their letter, which takes the room of neighbours; of the others the centre mark shows the
    side."""
    columns, numbers = on.window.columns, {column: _number(slot + column) for column in on.window.columns}
    most = max(numbers.values())
    step, reach = _step(on, most), math.ceil((len(str(most)) + 1) * DIGIT / on.cut.width) - 1
    for column, number in numbers.items():
        if column in (columns[0], columns[-1]):
            yield column, needle(slot + column)
        elif number % step == 0 and columns[0] + reach < column < columns[-1] - reach:
            yield column, str(number)


def _step(on: _Sheet, most: int) -> int:
    """Every how many numbers there is room for one as long as `most`."""
    digits = len(str(most))
    return next(s for s in (1, 2, 5, 10) if s == 10 or s * on.cut.width > digits * DIGIT + 0.4)


def _number(slot: int) -> int:
    """Of a needle, without its letter."""
    return slot + 1 if slot >= 0 else -slot


def _centres(on: _Sheet, centres: tuple[Centre, ...]) -> None:
    """A wedge above and one below, pointing at the line."""
    for centre in centres:
        if not on.window.first <= centre.at <= on.window.right:
            continue
        x, far = on.x(centre.at), ENDS - 0.7
        for y, out in ((-far, -1), (on.high + far, 1)):
            on.paper.draw("centre", path([(x, y), (x - 1.1, y + out * 1.9), (x + 1.1, y + out * 1.9)], closed=True))
        if centre.text:
            near_right = x > on.wide - 24
            anchor, shift = ("end", -1.7) if near_right else ("start", 1.7)
            on.paper.letter(x + shift, -far - 0.5, centre.text, anchor, kind="word")


def _neighbours(on: _Sheet) -> None:
    """Which sheets show the same cells, and where the chart goes on."""
    window, cut = on.window, on.cut
    left, below = cut.at(window.across - 1, window.up), cut.at(window.across, window.up - 1)
    right, above = cut.at(window.across + 1, window.up), cut.at(window.across, window.up + 1)
    foot = on.high + ENDS + 2.9
    if left is not None:
        middle = on.y((window.low + window.high) / 2)
        on.paper.letter(-SIDE + 1.9, middle, on.guide.say("chart/also-on", sheet=left.letter), turn=-90, kind="word")
    if below is not None:
        on.paper.letter(0.0, foot, on.guide.say("chart/also-on-rows", sheet=below.letter), "start", kind="word")
    if right is not None:
        middle = on.y((window.low + window.high) / 2)
        on.paper.letter(on.wide + SIDE - 0.6, middle, on.guide.say("chart/goes-on", sheet=right.letter), turn=-90, kind="word")
    if above is not None:
        on.paper.letter(on.wide, -ENDS - 1.6, on.guide.say("chart/goes-on", sheet=above.letter), "end", kind="word")


# ----------------------------------------------------------------- map and key


def sheet_map(guide: Guide, chart: Chart, cut: Cut) -> Drawing:
    """How the sheets lie, lettered, to scale."""
    paper = Paper()
    columns, rows = chart.width, len(chart.rows)
    wide = min(44.0, 34.0 * columns * cut.width / (rows * cut.height))
    scale = wide / columns
    rise = scale * cut.height / cut.width
    for window in cut.sheets:
        x0, x1, y0, y1 = window.left * scale, window.right * scale, (rows - window.high) * rise, (rows - window.low) * rise
        paper.draw("mark", path([(x0, y0), (x1, y0), (x1, y1), (x0, y1)], closed=True))
        paper.letter((x0 + x1) / 2, (y0 + y1) / 2 + 1.1, window.letter, kind="letter")
    if chart.repeat:
        x0, x1 = chart.before * scale, (chart.before + chart.repeat) * scale
        paper.draw("box", path([(x0, 0), (x1, 0), (x1, rows * rise), (x0, rows * rise)], closed=True))
    named, first = chart.name.replace("_", " "), cut.sheets[0].letter
    title = guide.say("drawing/chart-map", sheets=len(cut.sheets), chart=named, first=first)
    return paper.finished(title, wide + 1.2, rows * rise + 1.2, -0.6, -0.6)


KEY_CELL, KEY_WIDEST = 4.6, 22.0
"""mm, of a symbol in the key, and of all the cells of one."""


def key_drawing(guide: Guide, design: Design, chart: Chart, cell: Cell, *, ground: str = "") -> Drawing:
    """One symbol in its cell: a cross over all its cells, a tuck over two rows; `ground` as of a sheet."""
    paper, w = Paper(), min(KEY_CELL, KEY_WIDEST / (2 * cell.cross or 1))
    wide = w * (2 * cell.cross if cell.kind == "cross" else 1)
    high = w * (2 if cell.kind == "tuck" else 1)
    box = path([(0, 0), (wide, 0), (wide, high), (0, high)], closed=True)
    look = yarns.in_chart(design, chart, ground).get(cell.yarn or ground)
    if look is not None:
        paper.draw("fill", box, colour=look.colour)
        if look.hatch is not None:
            paper.draw(yarns.hatch_pen(look.colour), yarns.hatch(look.hatch, 0, 0, w, w))
    lines = [path([(w * i, 0), (w * i, high)]) for i in range(1, round(wide / w))]
    lines += [path([(0, w * i), (wide, w * i)]) for i in range(1, round(high / w))]
    paper.draw("grid", *lines)
    if cell.kind == "cross":
        paper.draw("symbol", symbols.cross(0, 0, w, w, cell))
    elif cell.kind == "tuck":
        paper.draw("symbol", symbols.tuck(0, 0, w, high))
    elif data := symbols.symbol(cell.kind, 0, 0, w, w):
        paper.draw("symbol", data)
    paper.draw("fifth", box)
    yarn = yarns.yarn_named(design, cell.yarn or ground).label if cell.yarn or ground else ""
    named = guide.say("drawing/cell-of", yarn=yarn) if yarn else symbols.name(guide, cell)
    return paper.finished(guide.say("drawing/symbol", name=named), wide + 0.6, high + 0.6, -0.3, -0.3)
