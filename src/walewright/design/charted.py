"""Charts in a piece: whether their repeats fit its width, and whether its edges leave them alone."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.areas import Area, Ground, areas
from walewright.design.beginnings import begins
from walewright.design.clashes import apart
from walewright.design.model import Chart, EdgeRun, Fabric, Opening, PerSize, Piece, Way
from walewright.design.outline import NOTHING
from walewright.report.model import Span
from walewright.report.said import said

HAND_WORKED = ("tuck", "slip", "long", "ladder", "hole")
"""Cells that leave a needle without a stitch for a row or longer: the end needle of a row has to knit."""


def charted(piece: Piece, ground: Ground) -> bool:
    """Whether the patterns of a piece can be worked in it; told where they cannot."""
    found = areas(piece, ground)
    sound = [_fits(piece, area, area.chart, area.fabric, ground) for area in found if area.chart and area.fabric]
    edged = [_edges(piece, area, ground) for area in found if area.chart and area.reach is None]
    return apart(piece, found, ground) and begins(piece, found, ground) and all(sound) and all(edged)


# ----------------------------------------------------------------- width


def _fits(piece: Piece, area: Area, chart: Chart, fabric: Fabric, ground: Ground) -> bool:
    return _one_repeat(piece, area, chart, fabric, ground) and _parity(piece, area, chart, fabric, ground)


def _one_repeat(piece: Piece, area: Area, chart: Chart, fabric: Fabric, ground: Ground) -> bool:
    """Whether the width holds one repeat with its borders and edge stitches."""
    need = chart.before + chart.repeat + chart.after
    if area.reach is None:
        need += 2 * fabric.edge
        width = ground.outline.width(area.low, above=True)
    else:
        width = tuple(b - a for a, b in zip(*area.reach, strict=True))
    narrow = tuple(s for s, w in zip(ground.sizes, width, strict=True) if w * fabric.stitches_per_cm < need - 0.5)
    if not narrow:
        return True
    place = ground.cloth.place
    stitches = tuple(float(round(w * fabric.stitches_per_cm)) for w in width)
    parts = [f"repeat of {chart.repeat} stitches"]
    parts += [f"{chart.before + chart.after} beside it"] if chart.before + chart.after else []
    parts += [f"{fabric.edge} edge stitches at each end"] if area.reach is None and fabric.edge else []
    place.findings.report(
        "repeat-wider-than-piece",
        (area.span, "wide"),
        (chart.origin.span, "join"),
        helps=("make-wide-least",),
        sizes=place.scope.only(narrow),
        name=chart.name,
        need=need,
        what=area.what,
        name_2=piece.name,
        stitches=place.per_size(stitches, "stitches"),
        join=", ".join(parts),
        width=place.per_size(tuple(need / fabric.stitches_per_cm for _ in width)),
    )
    return False


def _parity(piece: Piece, area: Area, chart: Chart, fabric: Fabric, ground: Ground) -> bool:
    """Whether whole repeats can come to the piece's even (or, with a centre stitch, odd) number of stitches."""
    beside = chart.before + chart.after
    if area.reach is not None or fabric.fit != "whole" or chart.repeat % 2 or beside % 2 == int(piece.odd):
        return True
    is_odd = "an odd" if piece.odd else "an even"
    ground.cloth.place.findings.report(
        "repeat-parity",
        (area.span, "number-stitches"),
        (chart.origin.span, "repeat-stitches-beside"),
        helps=(said("leave-out-piece") if piece.odd else said("let-piece"), "draw-column-more"),
        name=piece.name,
        is_odd=is_odd,
        name_2=chart.name,
        repeat=chart.repeat,
        beside=beside,
    )
    return False


# ----------------------------------------------------------------- edges


def _edges(piece: Piece, area: Area, ground: Ground) -> bool:
    """Whether there are stitches enough outside the chart at the ends of its rows. A fabric is told of once."""
    fabric, chart = area.fabric, area.chart
    if fabric is None or chart is None:
        return True
    reasons = [*_shaped(piece, area, ground)]
    worked = next((k for k in chart.key if k.cell.kind in HAND_WORKED), None)
    floated = next((k for k in chart.key if k.cell.yarn and not chart.picture), None)
    if worked is not None:
        reasons.append((1, worked.origin.span, f"`{worked.symbol}` is {worked.cell.kind}", "the end needle of a row has to knit"))
    elif floated is not None:
        why = "the yarn of the fabric has to come to the end of a row, or it would float past the edge"
        reasons.append((1, floated.origin.span, f"`{floated.symbol}` is knit in {floated.cell.yarn}", why))
    need, span, label, why = max(reasons, key=lambda r: r[0], default=(0, area.span, "", ""))
    if fabric.edge >= need:
        return True
    if (fabric.name, "edge") not in ground.told:
        ground.told.add((fabric.name, "edge"))
        ground.cloth.place.findings.report(
            "edge-stitches-too-few",
            (fabric.origin.span, "edge"),
            (span, "label"),
            notes=("why",),
            helps=("write-behind-tension",),
            name=fabric.name,
            name_2=piece.name,
            need=need,
            if_need=need == 1,
            edge=fabric.edge or "none",
            edge_2=fabric.edge or "no",
            if_edge=fabric.edge == 1,
            label=label,
            why=why,
        )
    return False


def _shaped(piece: Piece, area: Area, ground: Ground) -> Iterator[tuple[int, Span, str, str]]:
    """By what is shaped in the rows of a chart: edge stitches needed, place, what it is, and why."""
    for way, low, high, span in (*_outer(piece, ground), *_inner(piece, ground)):
        if area.shares_rows(low, high, ground.sizes):
            fashioned = way.kind == "fashioned"
            need = (way.inset if fashioned else 1) + way.at_once
            label = f"fashioned {way.inset} in" if fashioned else "shaped at its last stitch"
            yield need, span, label, "the stitches that shaping moves, and the one they are laid on, lie outside the chart"


def _outer(piece: Piece, ground: Ground) -> Iterator[tuple[Way, PerSize, PerSize, Span]]:
    for runs in (piece.left, piece.right):
        low = piece.levels[0].height
        for run in runs:
            high = ground.height(run.to_level)
            if run.path != "across" and _moves(run):
                yield run.way, low, high, run.origin.span
            low = high


def _inner(piece: Piece, ground: Ground) -> Iterator[tuple[Way, PerSize, PerSize, Span]]:
    for gap in ground.outline.gaps:
        opening = gap.opening
        if opening in piece.openings and _widens(opening):
            ways = [r.way for r in (*opening.left, *opening.right) if _moves(r)] or [opening.way]
            for way in ways:
                yield way, gap.low, gap.high, opening.origin.span


def _widens(opening: Opening) -> bool:
    if opening.shape == "edges":
        return any(_moves(r) for r in (*opening.left, *opening.right))
    return any(w - f > NOTHING for w, f in zip(opening.width, opening.flat, strict=True))


def _moves(run: EdgeRun) -> bool:
    return any(abs(c) > NOTHING for c in (*run.change, *(run.most or ())))
