"""The names along a band's first row: over their loops, or beneath them with a line up to them, none on another.

A piece whose edge hangs in parts is named once, over a bracket, and its parts by their sides alone. Each name beneath keeps off the
lines of all others; the fewest levels that do are taken.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from walewright.figures.dimensions import DROP, LINE, RISE, Box, overlap
from walewright.figures.pens import Paper, path
from walewright.record import record

WORD_MM = 1.4
"""Width of a character of a name, mm: few names have wider ones on average."""

APART = 1.2
"""Between names, and between a name and a line, mm."""

OVER = -2.4
"""Of the lowest baseline over the loops."""

LEVELS = 8
"""Beneath the loops. Names that need more are not put there."""

TRIES = 20_000
"""Places that are looked at before names are given up."""


@record
class OnNeedles:
    """An edge on the needles from `x0` to `x1`: `name` says all of it; `whole` and `short` say the edge that it is a part of, and
    which part, or "". `arrow`: one lies beneath it."""

    name: str
    whole: str
    short: str
    x0: float
    x1: float
    arrow: bool = False

    @property
    def middle(self) -> float:
        return (self.x0 + self.x1) / 2

    def holds(self, text: str) -> bool:
        """Whether so many letters stand over it, clear of the lines at its ends."""
        return len(text) * WORD_MM + APART <= self.x1 - self.x0


@record
class _Beneath:
    """A name beneath, and the line up to its loops."""

    text: str
    x: float
    y: float
    foot_of: float
    middle: float

    @property
    def box(self) -> Box:
        half = len(self.text) * WORD_MM / 2
        return self.x - half, self.y - RISE, self.x + half, self.y + DROP

    @property
    def line(self) -> Box:
        return self.middle, self.foot_of, self.middle, self.y - RISE

    def keeps_off(self, other: _Beneath) -> bool:
        pairs = ((self.box, other.box), (self.line, other.box), (other.line, self.box))
        return not any(overlap(_wider(one), two) for one, two in pairs)


def _wider(box: Box) -> Box:
    return box[0] - APART, box[1], box[2] + APART, box[3]


def lettered(paper: Paper, edges: Sequence[OnNeedles], wide: float, arrow: float) -> tuple[float, float] | None:
    """The names of edges on paper `wide` mm wide, whose arrows lie at `arrow`; how high and how low they reach. None, and nothing
    drawn, where not all find a place."""
    over, rest = _over(edges)
    beneath = _beneath(rest, wide, arrow)
    if beneath is None:
        return None
    top = max((_draw_over(paper, of) for of in over), default=RISE)
    foot = arrow + 0.7
    for of in beneath:
        paper.draw("guide", path([(of.middle, of.foot_of), (of.middle, of.y - RISE - 0.2)]))
        paper.letter(of.x, of.y, of.text, kind="word")
        foot = max(foot, of.y + DROP)
    return top, foot


def all_over(edges: Sequence[OnNeedles]) -> bool:
    """Whether each name stands over its loops."""
    return not _over(edges)[1]


# ----------------------------------------------------------------- over the loops


@record
class _Over:
    """Lines of lettering over a stretch; `bracket`: it is of several edges, and stands over their own names."""

    lines: tuple[str, ...]
    x0: float
    x1: float
    bracket: bool = False


def _over(edges: Sequence[OnNeedles]) -> tuple[list[_Over], list[OnNeedles]]:
    """What stands over the loops, and the edges whose names have no room there."""
    over: list[_Over] = []
    rest: list[OnNeedles] = []
    for whole, run in groupby(edges, key=lambda edge: edge.whole if edge.short else None):
        parts = list(run)
        across = OnNeedles(whole or "", "", "", parts[0].x0, parts[-1].x1)
        if whole is not None and len(parts) > 1 and across.holds(whole) and any(of.holds(of.short) for of in parts):
            over.append(_Over((whole,), across.x0, across.x1, bracket=True))
            over += [_Over((of.short,), of.x0, of.x1) for of in parts if of.holds(of.short)]
            rest += [of for of in parts if not of.holds(of.short)]
            continue
        for of in parts:
            lines = wrapped(of.name, of.x1 - of.x0 - APART)
            if lines:
                over.append(_Over(lines, of.x0, of.x1))
            else:
                rest.append(of)
    return over, rest


def _draw_over(paper: Paper, of: _Over) -> float:
    """How high it reaches over the needles."""
    middle, low = (of.x0 + of.x1) / 2, OVER
    if of.bracket:
        line = OVER - RISE - 0.7
        x0, x1 = of.x0 + 0.6, of.x1 - 0.6
        paper.draw("guide", path([(x0, line + 1), (x0, line), (x1, line), (x1, line + 1)]))
        low = line - DROP - 0.3
    for number, line_of in enumerate(reversed(of.lines)):
        paper.letter(middle, low - number * LINE, line_of, kind="word")
    return RISE - low + (len(of.lines) - 1) * LINE


def wrapped(text: str, wide: float) -> tuple[str, ...]:
    """The words in at most so many lines as are read at a glance, each no wider than `wide` mm; none if they do not fit."""
    lines: list[str] = []
    for word in text.split(" "):
        if lines and len(lines[-1]) + len(word) + 1 <= wide / WORD_MM:
            lines[-1] += f" {word}"
        else:
            lines.append(word)
    return tuple(lines) if len(lines) <= 3 and max(map(len, lines)) <= wide / WORD_MM else ()


# ----------------------------------------------------------------- beneath them


def _beneath(edges: Sequence[OnNeedles], wide: float, arrow: float) -> list[_Beneath] | None:
    """The names beneath, on the fewest levels on which each keeps off all others and their lines; None where none are."""
    tries = iter(range(TRIES))
    for levels in range(1, LEVELS + 1):
        placed = _placed([list(_places(of, wide, arrow, levels)) for of in edges], [], tries)
        if placed is not None:
            return placed
    return None


def _places(of: OnNeedles, wide: float, arrow: float, levels: int) -> Iterator[_Beneath]:
    """Where a name may stand: under its loops, or to a side of the line up to them."""
    half = len(of.name) * WORD_MM / 2
    begins = arrow + 0.9 if of.arrow else 0.6
    for level in range(levels):
        y = arrow + RISE + 1.2 + level * LINE
        for x in dict.fromkeys((of.middle, of.middle + half - 1, of.middle - half + 1, half + 0.5, wide - half - 0.5)):
            if half + 0.5 <= x <= wide - half - 0.5 and abs(x - of.middle) <= half:
                yield _Beneath(of.name, x, y, begins, of.middle)


def _placed(choices: Sequence[Sequence[_Beneath]], placed: list[_Beneath], tries: Iterator[int]) -> list[_Beneath] | None:
    """One of each choice, all of which keep off each other; tried in order, and taken back where the next finds none."""
    if len(placed) == len(choices):
        return placed
    for place in choices[len(placed)]:
        if next(tries, None) is None:
            return None
        if all(place.keeps_off(other) for other in placed):
            found = _placed(choices, [*placed, place], tries)
            if found is not None:
                return found
    return None
