"""Whether everything fits on the bed, told before anything is solved: no programme is needed to see it."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil, floor
from typing import Literal

from walewright.design.model import Design, DesignInSize, MachineProfile, Piece
from walewright.record import record, replace
from walewright.report.model import Change, Diagnostic, Span, diagnosed
from walewright.report.said import Amount, Said, only, said, tenths
from walewright.solve.edges.edges import ACROSS_RUN
from walewright.solve.edges.gauge import fabric_above, fabric_below
from walewright.solve.edges.lean import may_lean
from walewright.solve.edges.multiples import multiples, slack, station
from walewright.solve.edges.widths import across
from walewright.trade.sides import SIDES, EdgeSide

_A_STITCH = 1.0
"""A piece may be narrowed by a stitch to fit."""

_MOST_PANELS = 12
"""Panels that are proposed to be sewn together."""

_SEAM = 1
"""Stitches at an edge that go into its seam."""


@record
class Station:
    """Where a piece is widest: `needles` that it would need there, its width, in stitches of which tension, and who says so."""

    needles: float
    cm: float
    per_cm: float
    where: Said
    span: Span
    at: str
    """The level."""
    fabric: str
    by_side: EdgeSide | Literal[""] = ""
    """Where one side alone decides it: that side."""


def too_wide(design: Design) -> Iterator[Diagnostic]:
    """A message for each piece that is wider than the bed in some size."""
    needles = design.machine.needles
    for piece in design.pieces:
        if piece.mirror_of is not None:
            continue
        stations = [widest(at, piece) for at in design.each_size]
        over = [i for i, station in enumerate(stations) if station.needles > needles + _narrower(design, piece) + 1e-9]
        if not over:
            continue
        most = max((stations[i] for i in over), key=lambda s: s.needles)
        per_cm = most.per_cm
        told = diagnosed(
            "wider-than-bed/piece",
            (most.span, said("widest", where=most.where, by_side=most.by_side)),
            bed(design.machine),
            notes=(*(_takes(design.sizes[i], stations[i]) for i in over), "needles-make"),
            helps=_panels(_even(most.needles), needles),
            sizes=only(design.sizes, over),
            piece=piece.name,
            takes=_even(most.needles),
            needles=needles,
            tension=per_cm * 10,
            room=Amount(floor(needles / per_cm * 10) / 10),
        )
        changes = (
            (Change("widest", piece.name, most.at, _in(design, over, floor(needles / per_cm * 10) / 10), exact=True),),
            (Change("stitches", most.fabric, "", _in(design, over, floor(needles / most.cm * 100) / 10), exact=True),),
            (Change("needles", "", "", _in(design, over, _even(most.needles)), exact=True),),
        )
        yield replace(told, changes=changes, other_ways=True)


def _takes(size: str, at: Station) -> Said:
    return said("takes", size=size, cm=tenths(at.cm), where=at.where, by_side=at.by_side, takes=_even(at.needles))


def _narrower(design: Design, piece: Piece) -> float:
    """Stitches by which a piece may be narrowed to fit: by half a repeat, where it goes by whole repeats."""
    found = [_A_STITCH]
    for multiple in multiples(design, piece):
        for side in SIDES:
            at = station(piece, side, multiple.level)
            found += [] if at is None else [slack(design, piece, side, at)]
    return max(found)


def _panels(stitches: int, needles: int) -> tuple[Said, ...]:
    """The way round a narrow bed: panels of equal width. A seam takes a stitch of each edge that it joins (common practice).
    None for a bed so narrow that nobody would sew so many together."""
    count = max(2, ceil(stitches / max(needles - 2 * _SEAM, 1)))
    if count > _MOST_PANELS:
        return ()
    each = 2 * ceil((stitches / count + 2 * _SEAM) / 2)
    return (said("panels", panels=count, each=each, seams=count - 1),)


def bed(machine: MachineProfile) -> tuple[Span, Said]:
    """Where the bed is named, for a message about what it has no room for."""
    return machine.origin.span, said("bed", needles=machine.needles)


def _in(design: Design, over: list[int], value: float) -> tuple[tuple[str, float], ...]:
    return tuple((design.sizes[i], value) for i in over)


def _even(stitches: float) -> int:
    """Needles for so many stitches, as many on each side of the centre."""
    return max(2 * floor(stitches / 2 + 0.5), 2 * ceil((stitches - _A_STITCH) / 2 - 1e-9))


def widest(at: DesignInSize, piece: Piece) -> Station:
    """Where the piece needs most needles, of a mirror image its model. What is free may be as narrow as it can."""
    while piece.mirror_of is not None:
        piece = at.design.piece(piece.mirror_of)
    start = min(at.of(piece.start_width), at.of(piece.start_most or piece.start_width))
    first = piece.levels[0].name
    by = across(at, piece, first)
    at_start = Station(
        needles=by.stitches(start) / 2,
        cm=start / 2,
        per_cm=by.per_cm,
        where=said("at-start"),
        span=piece.origin.span,
        at=first,
        fabric=fabric_above(at.design, piece, first).name,
    )
    left, right = (_furthest(at, piece, side, at_start) for side in ("left", "right"))
    further = max(left, right, key=lambda s: s.needles)
    if may_lean(piece):
        # It is started wherever it finds room: both sides together decide.
        return replace(further, needles=left.needles + right.needles, cm=left.cm + right.cm)
    # The centre mark stays in the middle of the start, so the longer side decides.
    by_side: EdgeSide | Literal[""] = "" if further is at_start or piece.symmetric else "left" if further is left else "right"
    return replace(further, needles=2 * further.needles, cm=2 * further.cm, by_side=by_side)


def _furthest(at: DesignInSize, piece: Piece, side: EdgeSide, found: Station) -> Station:
    """Where an edge is furthest from the middle of the start, and how far."""
    place = found.cm
    for run in piece.left if side == "left" else piece.right:
        place += min(at.of(run.change), at.of(run.most or run.change))
        by = across(at, piece, run.to_level, side, run.path == ACROSS_RUN)
        if by.stitches(place) > found.needles + 1e-9:
            knit = (fabric_above if run.path == ACROSS_RUN else fabric_below)(at.design, piece, run.to_level)
            where = said("at-level", level=run.to_level)
            found = Station(
                needles=by.stitches(place),
                cm=place,
                per_cm=by.per_cm,
                where=where,
                span=run.origin.span,
                at=run.to_level,
                fabric=knit.name,
            )
    return found
