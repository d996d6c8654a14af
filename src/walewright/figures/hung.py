"""The first row of what is begun along edges, a band or a piece: which of them hangs on which needles, from the left to the right.

Open loops are drawn as they hang, and what is picked up along an edge as the loops that are drawn through it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import accumulate

from walewright.counted.model import PickUp
from walewright.figures.dimensions import DROP, LINE, RISE, box_round
from walewright.figures.marks import Bench
from walewright.figures.measures import name_of
from walewright.figures.model import Drawing
from walewright.figures.pens import Paper, loops, path
from walewright.guide.model import Guide
from walewright.knit.operations import needle

THROUGH = 1.6
"""Between loops that are drawn through an edge, mm."""

WORD_MM = 1.25
"""Width of an average character of a name."""

DIVIDED = 3.2
"""Height of the line between two edges, mm."""


def first_row(bench: Bench) -> None:
    """The loops along the start, and lines where another edge begins."""
    if bench.piece.piece.start_way != "along":
        return
    for number, (pick, x0, x1) in enumerate(_edges(bench)):
        bench.paper.draw("mark", *(loops(x0, x1, 0.0) if pick is None or pick.live else _drawn_through(x0, x1)))
        if number:
            line = [(x0, 0.6), (x0, -DIVIDED)]
            bench.paper.draw("slit", path(line))
            bench.ruler.lines.append(box_round(line))


def edges_named(bench: Bench) -> None:
    """The name of each edge over its loops, where several hang side by side and there is room."""
    found = [(pick, x0, x1) for pick, x0, x1 in _edges(bench) if pick is not None]
    if bench.piece.piece.start_way != "along" or len(found) < 2:
        return
    several = len({pick.edge.piece for pick, _, _ in found}) > 1
    for pick, x0, x1 in found:
        edge = bench.guide.hung(pick.edge.edge)
        lines = _wrapped(f"{name_of(pick.edge.piece)} {edge}" if several else edge, x1 - x0 - 1)
        if lines:
            low = -2.4 - (len(lines) - 1) * LINE
            bench.ruler.write_free((((x0 + x1) / 2, y, "middle") for y in (low, low - 2.2)), lines, "word")


BAND = 83.0
"""mm that the drawing of a band's first row is wide. It is printed at eight tenths of that, as schematics are."""

BESIDE = 4.5
"""mm for the letter of the needles, at either end."""

ARROW = 2.6
"""mm beneath the needles at which an arrow lies."""


def band_hung(guide: Guide, band: str, picked: Sequence[PickUp]) -> Drawing | None:
    """The first row of a band that lies along several edges, each with its name, and an arrow up the rows of those that have some;
    None of one that can be hung in one way only."""
    edges = [pick for pick in picked if pick.stitches]
    if len(edges) < 2:
        return None
    paper = Paper()
    whole, room = sum(pick.stitches for pick in edges), BAND - 2 * BESIDE
    ends = [BESIDE + room * count / whole for count in accumulate((pick.stitches for pick in edges), initial=0)]
    several = len({pick.edge.piece for pick in edges}) > 1
    named = tuple(_edge_name(guide, pick, several) for pick in edges)
    for number, (pick, x0, x1) in enumerate(zip(edges, ends, ends[1:], strict=False)):
        paper.draw("mark", *(loops(x0, x1, 0.0) if pick.live else _drawn_through(x0, x1)))
        if number:
            paper.draw("slit", path([(x0, ARROW), (x0, -DIVIDED)]))
        if pick.left_end in ("bottom", "top"):
            _arrow(paper, *((x0, x1) if pick.left_end == "bottom" else (x1, x0)))
    top, foot = _lettered(paper, list(zip(named, ends, ends[1:], strict=False)))
    for x, side in ((BESIDE / 2, -1), (BAND - BESIDE / 2, 0)):
        paper.letter(x, 0.8, needle(side)[0], kind="word")
    title = guide.say("drawing/hung", band=name_of(band), edges=named)
    return paper.finished(title, BAND, top + foot + 1.5, 0.0, -top - 0.5)


def _edge_name(guide: Guide, pick: PickUp, several: bool) -> str:
    edge = guide.hung(pick.edge.edge if pick.part == "whole" else f"{pick.edge.edge} {pick.part}")
    return f"{name_of(pick.edge.piece)} {edge}" if several else edge


def _lettered(paper: Paper, named: Sequence[tuple[str, float, float]]) -> tuple[float, float]:
    """Each name over its loops, or beneath them where it is wider than they are; how high and how low they reach."""
    top, foot = RISE, ARROW + 0.7
    lanes: list[float] = []
    for name, x0, x1 in named:
        middle, half = (x0 + x1) / 2, len(name) * WORD_MM / 2
        lines = _wrapped(name, x1 - x0 - 0.4)
        for number, line in enumerate(reversed(lines)):
            paper.letter(middle, -2.4 - number * LINE, line, kind="word")
        if lines:
            top = max(top, 2.4 + (len(lines) - 1) * LINE + RISE)
            continue
        x = min(max(middle, half + 0.5), BAND - half - 0.5)
        lane = next((at for at, taken in enumerate(lanes) if taken < x - half), len(lanes))
        lanes[lane:] = [x + half + 1, *lanes[lane + 1 :]]
        y = ARROW + RISE + 1.2 + lane * LINE
        paper.draw("guide", path([(middle, 0.6), (middle, y - RISE - 0.2)]))
        paper.letter(x, y, name, kind="word")
        foot = max(foot, y + DROP)
    return top, foot


def _arrow(paper: Paper, begin: float, end: float) -> None:
    """Beneath an edge, from the foot of its rows to their top."""
    way = 1 if end > begin else -1
    tip = end - way * 0.8
    paper.draw("guide", path([(begin + way * 0.8, ARROW), (tip - way * 1.4, ARROW)]))
    paper.draw("arrow", path([(tip, ARROW), (tip - way * 1.6, ARROW - 0.7), (tip - way * 1.6, ARROW + 0.7)], closed=True))


def _wrapped(text: str, wide: float) -> tuple[str, ...]:
    """The words in at most so many lines as are read at a glance, each no wider than `wide` mm; none if they do not fit."""
    lines: list[str] = []
    for word in text.split(" "):
        if lines and len(lines[-1]) + len(word) + 1 <= wide / WORD_MM:
            lines[-1] += f" {word}"
        else:
            lines.append(word)
    return tuple(lines) if len(lines) <= 3 and max(map(len, lines)) <= wide / WORD_MM else ()


def _edges(bench: Bench) -> Iterator[tuple[PickUp | None, float, float]]:
    """Each edge with its ends on the paper; the whole start where it is not known how many stitches come from which."""
    shape, sized = bench.piece.shape, bench.piece.sized
    x0, x1 = bench.at(shape.left[0])[0], bench.at(shape.right[0])[0]
    picked = [pick for pick in sized.start_pick_ups if pick.stitches]
    if len(picked) < 2:
        yield (picked[0] if picked else None), x0, x1
        return
    whole = sum(pick.stitches for pick in picked)
    ends = [x0 + (x1 - x0) * count / whole for count in accumulate((pick.stitches for pick in picked), initial=0)]
    yield from zip(picked, ends, ends[1:], strict=False)


def _drawn_through(x0: float, x1: float) -> list[str]:
    count = max(2, round((x1 - x0) / THROUGH))
    step = (x1 - x0) / count
    return [
        path([(x0 + step * (n + 0.25), -0.2), (x0 + step * (n + 0.5), 1.4), (x0 + step * (n + 0.75), -0.2)]) for n in range(count)
    ]
