"""Cloth and edgings on drawings: in which colour they lie, and what is seen of an edging: ribs, a fold, picots, a roll.

A garment in one colour stays white, so that its lines are seen best; one in several has every part in the colour of its yarn.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise
from types import MappingProxyType
from typing import Literal

from walewright.counted.outline import Point
from walewright.design.model import Design, Fabric
from walewright.figures import yarns
from walewright.figures.pens import Paper, path
from walewright.record import record, replace
from walewright.trade.edgings import EDGINGS

Finish = Literal["rib", "plain", "fold", "picot", "rolled"]

LINES = {"hatch": 0.18, "wale": 0.14}
"""Widths of the fine lines on coloured cloth, mm."""

LIGHTER, DARKER = {"hatch": 0.5, "wale": 0.25}, {"hatch": 0.4, "wale": 0.2}
"""How much lighter than dark cloth its lines are, and how much darker than light cloth."""

FOLD = 0.8
"""mm from the fold to the line beside it."""

ROLLS = (0.55, 0.85)
"""Shares of a roll's depth at which a line shows that it is round."""

PICOT = 2.2
"""mm from one picot to the next."""


@record
class Trim:
    """How an edging looks; `shade` is the colour that it lies in, "#rrggbb", or empty for white."""

    finish: Finish = "plain"
    shade: str = ""


RIBBED = Trim("rib")

NO_TRIMS: Mapping[str, Trim] = MappingProxyType({})


def worked_yarns(design: Design) -> frozenset[str]:
    """The yarns of all fabrics that pieces and edgings are knitted in."""
    used = {p.fabric for p in design.pieces} | {z.fabric for p in design.pieces for z in p.zones}
    fabrics = [*(f for f in design.fabrics if f.name in used), *(design.edged_in(e.name) for e in design.edgings)]
    motifs = [design.chart(m.chart) for p in design.pieces for m in p.motifs]
    charts = [*(design.chart(f.chart) for f in fabrics if f.chart), *motifs]
    return frozenset({yarn for f in fabrics for yarn in _yarns_of(f)} | {yarn for chart in charts for yarn in chart.yarns})


def _yarns_of(fabric: Fabric) -> Iterable[str]:
    return (fabric.yarn, *(yarn for yarn, _ in fabric.stripes))


def shade_of(design: Design, fabric: Fabric) -> str:
    """The colour that cloth in a fabric is drawn in; empty where the whole garment has but one."""
    if len({yarns.colour(design, yarn) for yarn in worked_yarns(design)}) < 2:
        return ""
    return yarns.colour(design, fabric.yarn)


def trim_of(design: Design, edging: str | None) -> Trim:
    """What an edging looks like."""
    if edging is None:
        return Trim()
    of, fabric = design.edging(edging), design.edged_in(edging)
    shade = shade_of(design, fabric)
    if fabric.rib_every or EDGINGS[of.kind].idle_needles:
        return Trim("rib", shade)
    if EDGINGS[of.kind].eyelets:
        return Trim("picot", shade)
    if of.kind == "rolled":
        return Trim("rolled", shade)
    return Trim("fold" if EDGINGS[of.kind].folded else "plain", shade)


def finishes(design: Design) -> dict[str, Trim]:
    """What is seen of each edging on white paper, by its name."""
    return {edging.name: replace(trim_of(design, edging.name), shade="") for edging in design.edgings}


def lay(paper: Paper, shade: str, *data: str) -> None:
    """Closed shapes as cloth."""
    paper.draw("cloth", *data)
    if shade:
        paper.draw("fill", *data, colour=shade)
        paper.draw("outline", *data)


def rule(paper: Paper, pen: Literal["hatch", "wale"], shade: str, *data: str) -> None:
    """Fine lines on cloth, lighter than dark cloth and darker than light cloth."""
    if not shade:
        paper.draw(pen, *data)
        return
    dark = yarns.lightness(shade) < yarns.DARK
    line = yarns.lighter(shade, LIGHTER[pen]) if dark else yarns.darker(shade, DARKER[pen])
    paper.draw("strand", *data, colour=line, width=LINES[pen])


def finish(paper: Paper, trim: Trim, inner: Sequence[Point], outer: Sequence[Point], ribs: Iterable[str]) -> None:
    """What is seen of an edging that is laid already, between the line that it hangs on and its last edge (mm of paper, the same
    number of points): `ribs` of one that has any."""
    if trim.finish == "rib":
        rule(paper, "hatch", trim.shade, *ribs)
    elif trim.finish == "rolled":
        rule(paper, "hatch", trim.shade, *(path(_part_way(inner, outer, share)) for share in ROLLS))
    elif trim.finish == "fold":
        rule(paper, "hatch", trim.shade, path(_part_way(inner, outer, _fold_at(inner, outer))))
    elif trim.finish == "picot":
        lay(paper, trim.shade, *_picots(inner, outer))


def _part_way(inner: Sequence[Point], outer: Sequence[Point], share: float) -> list[Point]:
    return [(a + (c - a) * share, b + (d - b) * share) for (a, b), (c, d) in zip(inner, outer, strict=True)]


def _fold_at(inner: Sequence[Point], outer: Sequence[Point]) -> float:
    deep = max(math.dist(a, b) for a, b in zip(inner, outer, strict=True))
    return max(0.5, 1 - FOLD / max(deep, 1e-6))


def _picots(inner: Sequence[Point], outer: Sequence[Point]) -> list[str]:
    """Small teeth along the last edge, away from the line that it hangs on."""
    made = []
    for ((ax, ay), (bx, by)), ((ix, iy), _) in zip(pairwise(outer), pairwise(inner), strict=True):
        long = math.dist((ax, ay), (bx, by))
        count = round(long / PICOT)
        if not count:
            continue
        nx, ny = -(by - ay) / long, (bx - ax) / long
        way = 1 if nx * (ax - ix) + ny * (ay - iy) >= 0 else -1
        for n in range(count):
            x0, y0, x1, y1 = (p + (q - p) * t for t in (n / count, (n + 1) / count) for p, q in ((ax, bx), (ay, by)))
            tip = ((x0 + x1) / 2 + nx * way * PICOT * 0.4, (y0 + y1) / 2 + ny * way * PICOT * 0.4)
            made.append(path([(x0, y0), tip, (x1, y1)]))
    return made
