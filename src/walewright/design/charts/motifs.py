"""Motifs: a chart worked once, somewhere in a piece."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.model import Chart, Motif, Origin, PerSize
from walewright.design.model.per_size import plus
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.fitting import CutOut, leaves
from walewright.design.pieces.openings import offset
from walewright.design.pieces.outline import NOTHING, PieceOutline, level_index
from walewright.report.said import Amount, Said, said
from walewright.source import syntax
from walewright.trade.sides import SIDES


def motif(node: syntax.MotifLine, outline: PieceOutline, cloth: PieceCloth, charts: Mapping[str, Chart | None]) -> Motif | None:
    """A motif, checked: its chart is worked once, its rows and its width are there."""
    findings = cloth.place.findings
    what = said("motif-of", chart=node.chart, piece=outline.piece)
    chart = findings.look_up("chart", node.chart, node.span, charts)
    at = level_index(node.level, node.span, outline.piece, outline.levels, findings)
    if at is None:
        return None
    place = cloth.at(at + 1)
    centre = offset(node.offset, said("middle-of", of=what), outline, place)
    if chart is None or centre is None or place.fabric is None:
        return None
    if chart.repeat:
        findings.report(
            "motif-with-repeat",
            (node.span, "motif"),
            (chart.origin.span, "repeat"),
            helps=("leave-out",),
            what=what,
            repeat=chart.repeat,
        )
        return None
    main = next((k for k in chart.key if k.cell.yarn == place.fabric.yarn), None)
    if main is not None and not chart.picture:
        findings.report(
            "chart-in-own-yarn/motif",
            (node.span, "in"),
            (main.origin.span, "symbol"),
            helps=("knit",),
            symbol=main.symbol,
            chart=chart.name,
            yarn=place.fabric.yarn,
        )
        return None
    made = Motif(node.chart, node.level, centre, Origin(f"piece {outline.piece} / motif {node.chart} at {node.level}", node.span))
    return made if _has_rows(made, chart, at, what, outline, cloth) and _has_width(made, chart, at, what, outline, cloth) else None


def _has_rows(made: Motif, chart: Chart, at: int, what: Said, outline: PieceOutline, cloth: PieceCloth) -> bool:
    rows = cloth.rows(at, len(outline.levels) - 1, free=True)
    if rows is None:
        return True
    sizes = cloth.place.scope.sizes
    short = tuple(s for s, r in zip(sizes, rows, strict=True) if r < len(chart.rows) - 0.5)
    if short:
        cloth.place.findings.report(
            "motif-past-top",
            (made.origin.span, "above"),
            (chart.origin.span, "rows"),
            helps=("lower",),
            sizes=cloth.place.scope.only(short),
            what=what,
            chart_rows=len(chart.rows),
            level=made.level,
            rows=cloth.place.per_size(tuple(float(round(r)) for r in rows), "rows"),
        )
    return not short


def tall(chart: Chart, at: int, cloth: PieceCloth) -> PerSize:
    """Height in cm of a motif that begins at a level, by the fabrics it lies in."""
    found: list[float] = []
    for size in range(len(cloth.place.scope.sizes)):
        rows, height = float(len(chart.rows)), 0.0
        for level in range(at + 1, len(cloth.levels)):
            fabric = cloth.below(level)
            if fabric is None:
                break
            here = cloth.levels[level].height[size] - cloth.levels[level - 1].height[size]
            part = min(rows / fabric.rows_per_cm, here)
            height, rows = height + part, rows - part * fabric.rows_per_cm
        found.append(height)
    return tuple(found)


def _has_width(made: Motif, chart: Chart, at: int, what: Said, outline: PieceOutline, cloth: PieceCloth) -> bool:
    place = cloth.at(at + 1)
    if place.fabric is None:
        return True
    wide = chart.width / place.fabric.stitches_per_cm
    reach = {s: tuple(wide / 2 for _ in made.centre) for s in SIDES}
    low = outline.levels[at].height
    high = plus(low, tall(chart, at, cloth))
    passed = [x.height for x in outline.levels[at + 1 :] if all(h < t - NOTHING for h, t in zip(x.height, high, strict=True))]
    for words, heights in ((said("at-its-bottom"), low), *((said("on-the-way"), h) for h in passed), (said("at-its-top"), high)):
        told = said("so-wide", what=what, stitches=chart.width, width=Amount(wide))
        if not leaves(CutOut(told, made.origin.span, reach, made.centre), heights, words, outline, place):
            return False
    return True
