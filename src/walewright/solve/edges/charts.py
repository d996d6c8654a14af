"""Charts on their needles: where the repeats of a charted fabric, a panel or a motif lie on the bed, and in which rows."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from walewright.counted.model import SizedChart, SizedOpening, SizedPiece
from walewright.counted.needles import come, ends, moved_in
from walewright.counted.parts import open_at
from walewright.design.model import Design, DesignInSize, Fabric, Motif, Piece
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Fact, Said, only, said
from walewright.solve.edges.gauge import fabric_above
from walewright.solve.edges.multiples import FabricStretch, whole_width
from walewright.solve.edges.widths import placed_right
from walewright.trade.sides import SIDES

OF_THE_EDGE = 1
"""Stitches at an end of the width that a panel or a motif keeps away from at the least: the edge stitch goes into the seam."""


def sized_charts(at: DesignInSize, piece: Piece, sized: SizedPiece) -> tuple[SizedChart, ...]:
    """The charts of a piece by rising rows: of those that begin together the whole width before panels, these before motifs, as
    they lie over each other."""
    found = [chart for stretch in whole_width(at.design, piece) for chart in _over_all(at.design, sized, stretch)]
    for zone, made in zip(piece.zones, sized.zones, strict=True):
        fabric = at.design.fabric(zone.fabric)
        if zone.width is None or fabric.stitch != "chart":
            continue
        chart = at.design.chart(fabric.chart)
        repeats = (made.last - made.first + 1 - chart.before - chart.after) // chart.repeat if chart.repeat else 0
        found.append(
            SizedChart(
                chart=chart.name,
                fabric=fabric.name,
                area="panel",
                from_row=made.from_row,
                to_row=made.to_row,
                first=made.first,
                last=made.last,
                edge=_kept_clear(sized, made.from_row, made.to_row),
                start=made.first + (chart.before if chart.repeat else 0),
                repeats=repeats,
                origin=zone.origin,
            )
        )
    found += [_motif(at, piece, sized, motif) for motif in piece.motifs]
    return tuple(sorted(found, key=lambda c: c.from_row))


def _kept_clear(sized: SizedPiece, from_row: int, to_row: int) -> int:
    """Stitches at an end of a part that a panel or a motif leaves plain: those that a tool moves in its rows, and those they are
    laid on or filled from, for no column runs through them."""
    inner = (run for opening in sized.openings for side in SIDES for run in opening.edge(side))
    ways = (
        run.way
        for run in (*sized.left, *sized.right, *inner)
        if run.way.kind == "fashioned" and any(from_row <= row < to_row for row, _ in run.changes())
    )
    return max((way.inset + way.at_once for way in ways), default=OF_THE_EDGE)


# ----------------------------------------------------------------- over the whole width


def _over_all(design: Design, sized: SizedPiece, stretch: FabricStretch) -> Iterator[SizedChart]:
    fabric = stretch.fabric
    if fabric.stitch != "chart":
        return
    row = sized.row(stretch.from_level)
    left, right = ends(sized, row)
    first, last = left + fabric.edge, right - fabric.edge
    if first > last:
        return
    start = _start(design, fabric, first, last, sized.lean)
    chart = design.chart(fabric.chart)
    # The borders are not repeats.
    inside = (start, last - chart.after) if fabric.fit == "whole" else (start, last)
    repeats = max(0, inside[1] - inside[0] + 1) // chart.repeat if chart.repeat else 0
    yield SizedChart(
        chart=chart.name,
        fabric=fabric.name,
        area="whole",
        from_row=row,
        to_row=sized.row(stretch.to_level),
        first=first,
        last=last,
        edge=fabric.edge,
        start=start,
        repeats=repeats,
        origin=stretch.origin,
    )


def _start(design: Design, fabric: Fabric, first: int, last: int, lean: int) -> int:
    """Slot of a repeat's first column: of whole repeats the first one, else the first that lies in the width whole."""
    chart = design.chart(fabric.chart)
    if not chart.repeat:
        return -(chart.width // 2) - lean
    if fabric.fit == "whole":
        return first + chart.before
    # The middle of a repeat lies on the centre mark, of an odd one the middle column right of it; or a repeat begins there.
    mark = (-(chart.repeat // 2) if fabric.fit == "centred" else 0) - lean
    start = first + (mark - first) % chart.repeat
    return start if start + chart.repeat - 1 <= last else mark


def repeats_cut(design: Design, garments: Sequence[Sequence[SizedPiece]]) -> Iterator[Diagnostic]:
    """A message for each fabric in whole repeats that begins at a level where stitches are taken off, added or held at once, its
    first row being knitted between the two ends' moves, or where the piece is parted. `garments[i]` are the pieces of size i."""
    for number, piece in enumerate(design.pieces):
        for stretch in whole_width(design, piece):
            fabric = stretch.fabric
            if fabric.stitch != "chart" or fabric.fit != "whole":
                continue
            beginning = {size: pieces[number] for size, pieces in zip(design.sizes, garments, strict=True)}
            by_size = {size: note for size, one in beginning.items() if (note := _at_once(one, one.row(stretch.from_level)))}
            if not by_size:
                continue
            level = piece.level(stretch.from_level)
            yield diagnosed(
                "repeats-on-a-slope/no-one-width",
                (stretch.origin.span, "begins-here"),
                (level.origin.span, "level"),
                notes=_notes(by_size),
                helps=("another-level", "or-centred"),
                sizes=only(design.sizes, by_size),
                fabric=fabric.name,
                level=level.name,
                piece=piece.name,
            )


def _at_once(sized: SizedPiece, row: int) -> Said | None:
    """What happens to the width in the very row; nothing if no stitch is moved or held there and the piece is not parted."""
    parted = sized.parted(row)
    if parted is not None:
        return said("parted-there", piece=sized.name, opening=parted.name)
    by, held = moved_in(sized, row)
    off, on = -sum(b for b in by if b < 0), sum(b for b in by if b > 0)
    counts = ((off, "stitches-taken-off"), (on, "stitches-added"), (held, "stitches-held"))
    moved = tuple(said(what, stitches=count) for count, what in counts if count)
    return said("moved-at-both-ends", moved=moved) if moved else None


# ----------------------------------------------------------------- motifs


def _motif(at: DesignInSize, piece: Piece, sized: SizedPiece, motif: Motif) -> SizedChart:
    """A motif; where it does not lie half a needle to either side of the place asked for, it lies half a needle to the right."""
    chart = at.design.chart(motif.chart)
    row = sized.row(motif.level)
    per_cm = fabric_above(at.design, piece, motif.level).stitches_per_cm
    centre = at.of(motif.centre) if motif.centre else 0.0
    first = placed_right(at, piece, chart.width, centre * per_cm) - sized.lean
    last = first + chart.width - 1
    to_row = row + len(chart.rows)
    edge = _kept_clear(sized, row, to_row)
    return SizedChart(
        chart=chart.name,
        fabric="",
        area="panel",
        from_row=row,
        to_row=to_row,
        first=first,
        last=last,
        edge=edge,
        start=first,
        repeats=0,
        origin=motif.origin,
    )


def motifs_outside(design: Design, garments: Sequence[Sequence[SizedPiece]]) -> Iterator[Diagnostic]:
    """A message for each motif that the piece is too narrow for where it begins, or that goes on where its fabric ends;
    `garments[i]` are the pieces of size i."""
    for number, piece in enumerate(design.pieces):
        for motif in piece.motifs:
            made = {at.size: (own, _motif(at, piece, own, motif)) for at in design.each_size for own in (at.of(garments)[number],)}
            beside = {size: note for size, (s, c) in made.items() if (note := _beyond(s, c))}
            cut = {size: note for size, (s, c) in made.items() if not _beyond(s, c) and (note := _cut(s, c))}
            above = {size: note for size, (s, c) in made.items() if (note := _too_high(design, piece, s, c))}
            chart = design.chart(motif.chart)
            facts: dict[str, Fact] = {"motif": motif.chart, "piece": piece.name, "stitches": chart.width, "rows": len(chart.rows)}
            for kind, help_, found in (
                ("motif-outside/edge", "towards-the-middle", beside),
                ("motif-outside/opening", "away-from-the-opening", cut),
                ("motif-too-high", "lower", above),
            ):
                if found:
                    yield diagnosed(
                        kind,
                        (motif.origin.span, "begun-here"),
                        (chart.origin.span, "as-large"),
                        notes=_notes(found),
                        helps=(help_,),
                        sizes=only(design.sizes, found),
                        facts=facts,
                    )


def _notes(by_size: Mapping[str, Said]) -> tuple[Said, ...]:
    return tuple(said("in-size", size=size, note=note) for size, note in by_size.items())


def _beyond(sized: SizedPiece, chart: SizedChart) -> Said | None:
    """In its first row the whole motif lies on needles in work, none of them at an end."""
    row = chart.from_row
    left, right = ends(sized, row)
    gaps = [(first, last) for _, first, last in _gaps(sized, row)]
    parts = list(zip((left, *(last + 1 for _, last in gaps)), (*(first - 1 for first, _ in gaps), right), strict=True))
    if any(a + OF_THE_EDGE <= chart.first and chart.last <= b - OF_THE_EDGE for a, b in parts):
        return None
    widths = tuple(said("stitches", stitches=b - a + 1) for a, b in parts)
    outside = max(parts[0][0] + OF_THE_EDGE - chart.first, chart.last - parts[-1][1] + OF_THE_EDGE)
    return said("too-few-there", widths=widths, lacks=outside) if outside > 0 else said("opening-between", widths=widths)


def _cut(sized: SizedPiece, chart: SizedChart) -> Said | None:
    """Where an opening that is not there yet in its first row takes needles of a motif, or the stitch beside it."""
    for row in range(chart.from_row, chart.to_row):
        for opening, first, last in _gaps(sized, row):
            if chart.last + chart.edge >= first and chart.first - chart.edge <= last:
                return said("opening-in-its-way", opening=opening.name, row=row - chart.from_row + 1)
    return None


def _gaps(sized: SizedPiece, row: int) -> Iterator[tuple[SizedOpening, int, int]]:
    """The openings that part an even row, from left to right, with first and last slot of each gap; a slit's last is before."""
    for opening in open_at(sized, row):
        left = opening.first + come(opening.edge("left"), row)
        yield opening, left, opening.first + opening.flat - 1 - come(opening.edge("right"), row)


def _too_high(design: Design, piece: Piece, sized: SizedPiece, chart: SizedChart) -> Said | None:
    """A motif ends where the fabric that it lies in does, or below."""
    stretch = next(s for s in whole_width(design, piece) if sized.row(s.from_level) <= chart.from_row < sized.row(s.to_level))
    left = sized.counter(sized.row(stretch.to_level)) - sized.counter(chart.from_row)
    high = chart.to_row - chart.from_row
    return said("rows-left", rows=left, level=stretch.to_level) if high > left else None
