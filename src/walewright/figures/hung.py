"""The first row of what is begun along edges, a band or a piece: which of them hangs on which needles, from the left to the right.

Open loops are drawn as they hang, and what is picked up along an edge as the loops that are drawn through it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import accumulate

from walewright.counted.model import PickUp
from walewright.figures.dimensions import LINE, RISE, box_round
from walewright.figures.hung_names import WORD_MM, OnNeedles, all_over, lettered, wrapped
from walewright.figures.marks import Bench
from walewright.figures.measures import name_of
from walewright.figures.model import Drawing
from walewright.figures.pens import LETTER_MM, Paper, loops, path
from walewright.guide.model import Guide
from walewright.knit.operations import needle

THROUGH = 1.6
"""Between loops that are drawn through an edge, mm."""

DIVIDED = 3.2
"""Height of the line between two edges, mm."""

BENEATH = (5.0, 9.2, 13.4, 17.6, 21.8)
"""mm under the start of a piece at which the name of an edge may stand."""


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
    """The name of each edge over its loops, or beneath them, where several hang side by side and there is room."""
    found = [(pick, x0, x1) for pick, x0, x1 in _edges(bench) if pick is not None]
    if bench.piece.piece.start_way != "along" or len(found) < 2:
        return
    several = len({pick.edge.piece for pick, _, _ in found}) > 1
    for pick, x0, x1 in found:
        edge = bench.guide.hung(pick.edge.edge)
        name, middle = f"{name_of(pick.edge.piece)} {edge}" if several else edge, (x0 + x1) / 2
        # As a ruler reckons letters it keeps them off the sides.
        lines = wrapped(name, (x1 - x0 - 2) * WORD_MM / LETTER_MM)
        low = -2.4 - (len(lines) - 1) * LINE
        if not lines or not bench.ruler.write_free([(middle, low - up, "middle") for up in (0.0, 2.2)], lines, "word", clear=True):
            _named_beneath(bench, name, middle)


def _named_beneath(bench: Bench, name: str, middle: float) -> None:
    """The name of an edge under the piece, with a hairline up to its loops."""
    for down in BENEATH:
        if bench.ruler.write_free([(middle, bench.foot + down, "middle")], (name,), "word", clear=True):
            bench.ruler.guide((middle, bench.foot + down - RISE - 0.4), (middle, bench.foot + 2.0))
            return


BAND, BAND_ACROSS, BAND_IN_A_COLUMN = 83.0, 212.0, 102.0
"""mm that the drawing of a band's first row is wide: beside the band's facts, across the page where its edges are many, and across
a column. It is printed at eight tenths of that, as schematics are."""

FEW = 3
"""Edges whose drawing stands beside the facts however their names lie."""

BESIDE = 4.5
"""mm for the letter of the needles, at either end."""

ARROW = 2.6
"""mm beneath the needles at which an arrow lies."""


def band_hung(guide: Guide, band: str, picked: Sequence[PickUp], widest: float = BAND_ACROSS) -> Drawing | None:
    """The first row of a band that lies along several edges, each with its name, and an arrow up the rows of those that have some;
    `widest` mm wide where it needs that. None of one that can be hung in one way only, or whose names find no room."""
    edges = [pick for pick in picked if pick.stitches]
    if len(edges) < 2:
        return None
    wide = min(BAND, widest)
    if len(edges) > FEW and not all_over(_on_needles(guide, edges, wide)):
        wide = widest
    named = _on_needles(guide, edges, wide)
    paper = Paper()
    for number, (pick, of) in enumerate(zip(edges, named, strict=True)):
        paper.draw("mark", *(loops(of.x0, of.x1, 0.0) if pick.live else _drawn_through(of.x0, of.x1)))
        if number:
            paper.draw("slit", path([(of.x0, ARROW), (of.x0, -DIVIDED)]))
        if of.arrow:
            _arrow(paper, *((of.x0, of.x1) if pick.left_end == "bottom" else (of.x1, of.x0)))
    reach = lettered(paper, named, wide, ARROW)
    if reach is None:
        return None
    top, foot = reach
    for x, side in ((BESIDE / 2, -1), (wide - BESIDE / 2, 0)):
        paper.letter(x, 0.8, needle(side)[0], kind="word")
    title = guide.say("drawing/hung", band=name_of(band), edges=tuple(of.name for of in named))
    return paper.finished(title, wide, top + foot + 1.5, 0.0, -top - 0.5)


def _on_needles(guide: Guide, edges: Sequence[PickUp], wide: float) -> list[OnNeedles]:
    """The edges along a row of that width, from the left to the right, with their names."""
    all_stitches, room = sum(pick.stitches for pick in edges), wide - 2 * BESIDE
    ends = [BESIDE + room * count / all_stitches for count in accumulate((pick.stitches for pick in edges), initial=0)]
    several = len({pick.edge.piece for pick in edges}) > 1
    return [_named(guide, pick, several, x0, x1) for pick, x0, x1 in zip(edges, ends, ends[1:], strict=False)]


def _named(guide: Guide, pick: PickUp, several: bool, x0: float, x1: float) -> OnNeedles:
    owner = f"{name_of(pick.edge.piece)} " if several else ""
    whole = f"{owner}{guide.hung(pick.edge.edge)}"
    arrow = pick.left_end in ("bottom", "top")
    if pick.part == "whole":
        return OnNeedles(whole, whole, "", x0, x1, arrow)
    name = f"{owner}{guide.hung(f'{pick.edge.edge} {pick.part}')}"
    return OnNeedles(name, whole, guide.say(f"hung-part/{pick.part}"), x0, x1, arrow)


def _arrow(paper: Paper, begin: float, end: float) -> None:
    """Beneath an edge, from the foot of its rows to their top; its head alone where there is room for no more."""
    way = 1 if end > begin else -1
    room = abs(end - begin)
    tip = end - way * min(0.8, max(room - 1.6, 0) / 2)
    if room > 4:
        paper.draw("guide", path([(begin + way * 0.8, ARROW), (tip - way * 1.4, ARROW)]))
    paper.draw("arrow", path([(tip, ARROW), (tip - way * 1.6, ARROW - 0.7), (tip - way * 1.6, ARROW + 0.7)], closed=True))


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
