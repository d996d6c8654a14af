"""Dimension lines that keep out of each other's way.

Everything lettered or ruled so far is remembered as boxes; a new line tries the places where it may stand, the best one first,
and beside the piece the next lane outwards, until its text lies on nothing and nothing lies on its text.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from walewright.counted.outline import Point
from walewright.figures.model import LetteringKind
from walewright.figures.pens import LETTER_MM, Paper, path
from walewright.record import record

TICK = 1.1
"""Half a dimension line's end tick, mm."""

LANE = 6.5
"""From the outline to the first dimension line, mm."""

LINE = 3.6
"""From one line of lettering to the next, mm."""

RISE, DROP = 2.4, 0.7
"""Of lettering above and below its baseline, mm."""

NARROW = 4.2
"""mm. A level line that is shorter than that would be read as a letter H: arrows from outside point at its ends instead."""

ARROW, HEAD = 2.6, 0.9
"""mm: how long those are, and their heads, which are as wide."""

AIR = 0.5
"""Kept free round lettering, mm."""

LANES = 16
"""Lanes tried beside a piece. A piece has fewer measures than this on any side."""

Box = tuple[float, float, float, float]
"""(left, top, right, bottom), mm; y downwards."""


def overlap(a: Box, b: Box) -> bool:
    """Whether two boxes share more than an edge."""
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


def through(box: Box, edge: tuple[Point, Point]) -> bool:
    """Whether a stretch has a part within a box: what the four sides leave of it (Liang and Barsky's way, 1984)."""
    (x, y), (dx, dy) = edge[0], (edge[1][0] - edge[0][0], edge[1][1] - edge[0][1])
    begin, end = 0.0, 1.0
    for by, room in ((-dx, x - box[0]), (dx, box[2] - x), (-dy, y - box[1]), (dy, box[3] - y)):
        if by == 0:
            if room <= 0:
                return False
        elif by < 0:
            begin = max(begin, room / by)
        else:
            end = min(end, room / by)
    return begin < end


@dataclass(slots=True)
class Ruler:
    """Rules dimension lines on `paper`. `kind` is their lettering's: "letter" | "figure". `texts` are the boxes of lettering,
    `lines` those of ruled lines and of whatever else lettering has to keep off. `blank`: paper is left white
    behind lettering, since there is hatching."""

    paper: Paper
    kind: LetteringKind
    blank: bool = False
    texts: list[Box] = field(default_factory=list)
    lines: list[Box] = field(default_factory=list)
    edges: list[tuple[Point, Point]] = field(default_factory=list)
    """Of what is drawn: no lettering lies across them."""
    borders: list[tuple[Point, Point]] = field(default_factory=list)
    """Of panels, which figures may lie across, for want of room, but no name."""
    _guides: list[tuple[Point, Point]] = field(default_factory=list)

    # ------------------------------------------------------------- lettering

    def box(self, x: float, y: float, lines: tuple[str, ...], anchor: str, turn: int = 0) -> Box:
        """The box of lettering whose first baseline's anchor is at (x, y)."""
        width = max((len(line) for line in lines), default=0) * LETTER_MM
        if turn:
            return x - RISE - AIR, y - width / 2 - AIR, x + DROP + (len(lines) - 1) * LINE + AIR, y + width / 2 + AIR
        left = {"start": x, "middle": x - width / 2, "end": x - width}[anchor]
        return left - AIR, y - RISE - AIR, left + width + AIR, y + (len(lines) - 1) * LINE + DROP + AIR

    def free(self, box: Box, of_lines: bool = True) -> bool:
        """Whether nothing lettered, or ruled, lies in the box."""
        return not any(overlap(box, b) for b in self.texts) and not (of_lines and any(overlap(box, b) for b in self.lines))

    def clear(self, box: Box) -> bool:
        """Whether lettering may stand in the box: it is free, and no edge of what is drawn goes through it."""
        return self.free(box) and not any(through(box, edge) for edge in self.edges)

    def write(
        self, x: float, y: float, lines: tuple[str, ...], anchor: str = "middle", turn: int = 0, kind: LetteringKind | None = None
    ) -> None:
        """Letter lines of text and remember their box."""
        box = self.box(x, y, lines, anchor, turn)
        self.texts.append(box)
        if self.blank and lines:
            x0, y0, x1, y1 = box
            self.paper.draw("blank", path([(x0, y0), (x1, y0), (x1, y1), (x0, y1)], closed=True))
        for number, line in enumerate(lines):
            if turn:
                self.paper.letter(x + number * LINE, y, line, anchor, turn, kind or self.kind)
            else:
                self.paper.letter(x, y + number * LINE, line, anchor, 0, kind or self.kind)

    def write_free(
        self, places: Iterable[tuple[float, float, str]], lines: tuple[str, ...], kind: LetteringKind, clear: bool = False
    ) -> bool:
        """Letter at the first of (x, y, anchor) that is free, or `clear`; False, and nothing, where none is."""
        for x, y, anchor in places:
            box = self.box(x, y, lines, anchor)
            if self.clear(box) if clear else self.free(box):
                self.write(x, y, lines, anchor, kind=kind)
                return True
        return False

    # ------------------------------------------------------------- hairlines

    def guide(self, a: Point, b: Point) -> None:
        """A hairline, level or upright, from the piece to a dimension line: drawn when everything is lettered."""
        self._guides.append((a, b))

    def draw_guides(self) -> None:
        """Draw the hairlines, broken where lettering stands."""
        for a, b in self._guides:
            level = a[1] == b[1]
            low, high = sorted((a[0], b[0]) if level else (a[1], b[1]))
            at = a[1] if level else a[0]
            along = [
                (t[0], t[2]) if level else (t[1], t[3]) for t in self.texts if (t[1] < at < t[3] if level else t[0] < at < t[2])
            ]
            for start, end in sorted(along):
                if low < end and start < high:
                    self._hairline(level, at, low, start)
                    low = max(low, end)
            self._hairline(level, at, low, high)

    def _hairline(self, level: bool, at: float, low: float, high: float) -> None:
        if high - low > 0.5:
            self.paper.draw("guide", path([(low, at), (high, at)] if level else [(at, low), (at, high)]))

    # ------------------------------------------------------------- level lines

    def across(
        self, x0: float, x1: float, ys: Iterable[float], text: tuple[str, ...], guides: tuple[float, float] | None = None
    ) -> None:
        """A line from x0 to x1 at the first of `ys` where there is room; `guides` are the heights its ends are measured at."""
        words = (" · ".join(text),)
        tried: list[float] = []
        for y in ys:
            tried.append(y)
            for x, at, anchor, gap in self._level_places(x0, x1, y, words):
                if self._fits_across(x0, x1, y, words, (x, at, anchor, gap)):
                    self._rule_across(x0, x1, y, words, (x, at, anchor, gap), guides)
                    return
        # Nothing was free: the last place is the farthest out, where least lies.
        self._rule_across(x0, x1, tried[-1], words, next(self._level_places(x0, x1, tried[-1], words)), guides)

    def has_room(self, x0: float, x1: float, text: tuple[str, ...]) -> bool:
        """Whether the text goes into a gap of a level line."""
        return x1 - x0 > len(" · ".join(text)) * LETTER_MM + 5

    def _level_places(self, x0: float, x1: float, y: float, words: tuple[str, ...]) -> Iterator[tuple[float, float, str, bool]]:
        room = len(words[0]) * LETTER_MM + 2
        if self.has_room(x0, x1, words):
            span = x1 - x0 - room
            for t in (0.5, 0.3, 0.7, 0.12, 0.88):
                yield x0 + room / 2 + span * t, y + 1, "middle", True
        middle = (x0 + x1) / 2
        yield middle, y - TICK - DROP - 0.2, "middle", False
        yield middle, y + TICK + RISE + 0.2, "middle", False
        out = _outside(x0, x1)
        yield x1 + out + TICK + 0.8, y + 1, "start", False
        yield x0 - out - TICK - 0.8, y + 1, "end", False

    def _fits_across(self, x0: float, x1: float, y: float, words: tuple[str, ...], place: tuple[float, float, str, bool]) -> bool:
        x, at, anchor, gap = place
        out = _outside(x0, x1) + 0.2
        line = (x0 - out, y - TICK, x1 + out, y + TICK)
        text = self.box(x, at, words, anchor)
        return self.clear(text) and self.free(line, of_lines=not gap) and (gap or not any(overlap(line, b) for b in self.lines))

    def _rule_across(
        self,
        x0: float,
        x1: float,
        y: float,
        words: tuple[str, ...],
        place: tuple[float, float, str, bool],
        guides: tuple[float, float] | None,
    ) -> None:
        x, at, anchor, gap = place
        for end, height in zip((x0, x1), guides or (), strict=False):
            if abs(height - y) > 2:
                way = 1 if height < y else -1
                self.guide((end, height + 0.8 * way), (end, y + 1.6 * way))
        ticks = [path([(end, y - TICK), (end, y + TICK)]) for end in (x0, x1)]
        half = len(words[0]) * LETTER_MM / 2 + 1
        parts = [(x0, x - half), (x + half, x1)] if gap else [(x0, x1)]
        out = 0.0 if gap else _outside(x0, x1)
        if out:
            parts = [(x0 - out, x0), (x1, x1 + out)]
            heads = ((end, way, up) for end, way in ((x0, -1), (x1, 1)) for up in (-1, 1))
            self.paper.draw("measure", *(path([(e + HEAD * way, y + HEAD / 2 * up), (e, y)]) for e, way, up in heads))
        self.paper.draw("measure", *ticks, *(path([(a, y), (b, y)]) for a, b in parts))
        self.lines += [(a, y - TICK, b, y + TICK) for a, b in parts]
        self.write(x, at, words, anchor)

    # ------------------------------------------------------------- upright lines

    def up(self, xs: Iterable[float], y0: float, y1: float, text: tuple[str, ...], outwards: int) -> float:
        """A line from y0 to y1 at the first of `xs` where there is room; gives that x. A letter stands in a gap of the line,
        figures are turned along it at the left (`outwards` = -1) and beside it at the right (1), as everything is for which the
        line is too short."""
        y0, y1 = min(y0, y1), max(y0, y1)
        tried: list[float] = []
        for x in xs:
            tried.append(x)
            for place in self._upright_places(x, y0, y1, text, outwards):
                if self._fits_up(x, y0, y1, place):
                    self._rule_up(x, y0, y1, place)
                    return x
        self._rule_up(tried[-1], y0, y1, next(self._upright_places(tried[-1], y0, y1, text, outwards)))
        return tried[-1]

    def _upright_places(self, x: float, y0: float, y1: float, text: tuple[str, ...], outwards: int) -> Iterator[_Beside]:
        middle = (y0 + y1) / 2
        joined = (" · ".join(text),)
        length = len(joined[0]) * LETTER_MM + 2
        if self.kind == "letter" and y1 - y0 > 6.2:
            yield _Beside(x, middle + 1, text, "middle", 0, 4.2)
        if self.kind == "figure" and outwards < 0 and y1 - y0 > length + 2:
            yield _Beside(x + 1, middle, joined, "middle", -90, length)
        anchor = "start" if outwards > 0 else "end"
        raised = (len(text) - 1) * LINE / 2
        for shift in (0.0, 1.8, -1.8, 3.6, -3.6):
            if abs(shift) <= max((y1 - y0) / 2, 1.8):
                yield _Beside(x + outwards * 1.8, middle + 1 - raised + shift, text, anchor, 0, 0)

    def _fits_up(self, x: float, y0: float, y1: float, place: _Beside) -> bool:
        line = (x - TICK, y0 + 0.1, x + TICK, y1 - 0.1)
        text = self.box(place.x, place.y, place.text, place.anchor, place.turn)
        return self.clear(text) and self.free(line)

    def _rule_up(self, x: float, y0: float, y1: float, place: _Beside) -> None:
        ticks = [path([(x - TICK, y), (x + TICK, y)]) for y in (y0, y1)]
        middle = (y0 + y1) / 2
        parts = ((y0, middle - place.gap / 2), (middle + place.gap / 2, y1)) if place.gap else ((y0, y1),)
        self.paper.draw("measure", *ticks, *(path([(x, a), (x, b)]) for a, b in parts))
        self.lines += [(x - TICK, a + 0.1, x + TICK, b - 0.1) for a, b in parts]
        self.write(place.x, place.y, place.text, place.anchor, place.turn)


@record
class _Beside:
    """Lettering of an upright line: in a `gap` of so many mm, or beside it (0)."""

    x: float
    y: float
    text: tuple[str, ...]
    anchor: str
    turn: int
    gap: float


def _outside(x0: float, x1: float) -> float:
    """How far a level line goes beyond its ends: as arrows that point at them from outside, if it is short."""
    return ARROW if x1 - x0 < NARROW else 0.0


def lanes(first: float, step: float) -> Iterator[float]:
    """Places for a line, from `first` on outwards."""
    return (first + step * lane for lane in range(LANES))


def box_round(points: Iterable[Point], air: float = 0.0) -> Box:
    """The box round points of the paper."""
    found = list(points)
    xs, ys = [p[0] for p in found], [p[1] for p in found]
    return min(xs) - air, min(ys) - air, max(xs) + air, max(ys) + air
