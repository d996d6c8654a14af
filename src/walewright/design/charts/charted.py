"""Charts in a piece: whether their repeats fit its width, and whether its edges leave them alone."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.charts.areas import Area, Ground, areas
from walewright.design.charts.beginnings import begins
from walewright.design.charts.clashes import apart
from walewright.design.model import Chart, EdgeRun, Fabric, Opening, PerSize, Piece, ShapingWay
from walewright.design.pieces.outline import NOTHING
from walewright.report.model import Span
from walewright.report.said import Said, said
from walewright.trade.cells import CELLS

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
    beside = chart.before + chart.after
    parts = [said("repeat-of", repeat=chart.repeat)]
    parts += [said("beside-it", beside=beside)] if beside else []
    parts += [said("edge-at-each-end", edge=fabric.edge)] if area.reach is None and fabric.edge else []
    place.findings.report(
        "repeat-wider-than-piece",
        (area.span, "wide"),
        (chart.origin.span, "takes"),
        helps=("widen",),
        sizes=place.scope.only(narrow),
        chart=chart.name,
        needed=need,
        what=area.what,
        piece=piece.name,
        stitches=place.per_size(stitches, "stitches"),
        takes=tuple(parts),
        width=place.per_size(tuple(need / fabric.stitches_per_cm for _ in width)),
    )
    return False


def _parity(piece: Piece, area: Area, chart: Chart, fabric: Fabric, ground: Ground) -> bool:
    """Whether whole repeats can come to the piece's even (or, with a centre stitch, odd) number of stitches."""
    beside = chart.before + chart.after
    if (
        piece.parity == "either"
        or area.reach is not None
        or fabric.fit != "whole"
        or chart.repeat % 2
        or beside % 2 == int(piece.parity == "odd")
    ):
        return True
    ground.cloth.place.findings.report(
        "repeat-parity",
        (area.span, "number"),
        (chart.origin.span, "repeat"),
        helps=("no-centre-stitch" if piece.parity == "odd" else "centre-stitch", "draw-column"),
        piece=piece.name,
        odd=piece.parity == "odd",
        chart=chart.name,
        repeat=chart.repeat,
        beside=beside,
    )
    return False


# ----------------------------------------------------------------- edges


def _edges(piece: Piece, area: Area, ground: Ground) -> bool:
    """Whether there are stitches enough outside the chart at the ends of its rows. A fabric is reported once."""
    fabric, chart = area.fabric, area.chart
    if fabric is None or chart is None:
        return True
    reasons = [*_shaped(piece, area, ground)]
    worked = next((k for k in chart.key if CELLS[k.cell.kind].needs_edge), None)
    floated = next((k for k in chart.key if k.cell.yarn and not chart.picture), None)
    if worked is not None:
        what = said("symbol-is", symbol=worked.symbol, kind=worked.cell.kind)
        reasons.append((1, worked.origin.span, what, "end-needle"))
    elif floated is not None:
        what = said("symbol-knit-in", symbol=floated.symbol, yarn=floated.cell.yarn)
        reasons.append((1, floated.origin.span, what, "own-yarn"))
    need, span, label, why = max(reasons, key=lambda r: r[0], default=(0, area.span, said("shown", shown=""), ""))
    if fabric.edge >= need:
        return True
    if (fabric.name, "edge") not in ground.told:
        ground.told.add((fabric.name, "edge"))
        ground.cloth.place.findings.report(
            "edge-stitches-too-few/some" if fabric.edge else "edge-stitches-too-few/none",
            (fabric.origin.span, "edge" if fabric.edge else "no-edge"),
            (span, label),
            notes=(why,),
            helps=("write",),
            fabric=fabric.name,
            piece=piece.name,
            needed=need,
            edge=fabric.edge,
        )
    return False


def _shaped(piece: Piece, area: Area, ground: Ground) -> Iterator[tuple[int, Span, Said, str]]:
    """By what is shaped in the rows of a chart: edge stitches needed, place, what it is, and the key of the note that says why."""
    for way, low, high, span in (*_outer(piece, ground), *_inner(piece, ground)):
        if area.shares_rows(low, high, ground.sizes):
            fashioned = way.kind == "fashioned"
            need = (way.inset if fashioned else 1) + way.at_once
            label = said("fashioned", inset=way.inset) if fashioned else said("at-last-stitch")
            yield need, span, label, "moved-stitches"


def _outer(piece: Piece, ground: Ground) -> Iterator[tuple[ShapingWay, PerSize, PerSize, Span]]:
    for runs in (piece.left, piece.right):
        low = piece.levels[0].height
        for run in runs:
            high = ground.height(run.to_level)
            if run.path != "across" and _moves(run):
                yield run.way, low, high, run.origin.span
            low = high


def _inner(piece: Piece, ground: Ground) -> Iterator[tuple[ShapingWay, PerSize, PerSize, Span]]:
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
