"""Where in a piece its patterns lie: charts over the whole width, panels, motifs, ribs and stripes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Literal

from walewright.design.charts.motifs import tall
from walewright.design.model import Chart, Edging, Fabric, PerSize, Piece
from walewright.design.model.per_size import plus
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.outline import NOTHING, PieceOutline
from walewright.record import record
from walewright.report.model import Span
from walewright.report.said import Said, said
from walewright.trade.fabrics import StitchKind


@record
class Ground:
    """What the patterns of a piece lie in. `told`: (fabric or chart, fault) that another piece has shown already. `first_rows`:
    where the cells of the charts' first rows stand in the source."""

    outline: PieceOutline
    cloth: PieceCloth
    fabrics: Mapping[str, Fabric | None]
    charts: Mapping[str, Chart | None]
    told: set[tuple[str, str]]
    edgings: Mapping[str, Edging | None]
    first_rows: Mapping[str, tuple[Span, ...]]

    @property
    def sizes(self) -> tuple[str, ...]:
        return self.cloth.place.scope.sizes

    def height(self, level: str) -> PerSize:
        return next(x.height for x in self.outline.levels if x.name == level)


AreaKind = Literal["chart", "rib", "stripes"]


@record
class Area:
    """A pattern from `low` to `high` cm up, over the whole width or (`reach`) from so far left to so far right of the centre
    line, right positive. kind: "chart" | "rib" | "stripes". A motif has no `fabric` of its own."""

    what: Said
    kind: AreaKind
    span: Span
    low: PerSize
    high: PerSize
    reach: tuple[PerSize, PerSize] | None = None
    fabric: Fabric | None = None
    chart: Chart | None = None

    def shares_rows(self, low: PerSize, high: PerSize, sizes: tuple[str, ...]) -> tuple[str, ...]:
        """The sizes in which it has rows in common with a stretch, or goes over a single height."""
        return tuple(
            s
            for s, a, b, c, d in zip(sizes, self.low, self.high, low, high, strict=True)
            if a + NOTHING < d and c < b - NOTHING and (c < d - NOTHING or a + NOTHING < c)
        )

    def meets(self, reach: tuple[PerSize, PerSize] | None) -> tuple[bool, ...]:
        """By size, whether it has needles in common with something of such a reach."""
        if self.reach is None or reach is None:
            return tuple(True for _ in self.low)
        (left, right), (other_left, other_right) = self.reach, reach
        return tuple(a < d - NOTHING and c < b - NOTHING for a, b, c, d in zip(left, right, other_left, other_right, strict=True))


PATTERNS: Mapping[StitchKind, AreaKind | None] = {
    "stocking stitch": None,
    "chart": "chart",
    "latched rib": "rib",
    "stripes": "stripes",
}


def areas(piece: Piece, ground: Ground) -> tuple[Area, ...]:
    """Every pattern of a piece; plain knitting is none."""
    return (*_own(piece, ground), *_zones(piece, ground), *_motifs(piece, ground))


def _own(piece: Piece, ground: Ground) -> Iterator[Area]:
    """The piece's own fabric, between zones over the whole width."""
    fabric = ground.fabrics.get(piece.fabric)
    kind = PATTERNS[fabric.stitch] if fabric is not None else None
    if fabric is None or kind is None:
        return
    numbers = {level.name: n for n, level in enumerate(piece.levels)}
    zones = [(numbers[z.from_level], numbers[z.to_level]) for z in piece.zones if z.width is None]
    free = [n for n in range(1, len(piece.levels)) if not any(low < n <= high for low, high in zones)]
    for first in (n for n in free if n - 1 not in free):
        last = first
        while last + 1 in free:
            last += 1
        low, high = piece.levels[first - 1].height, piece.levels[last].height
        yield _whole(fabric, kind, said("fabric", fabric=fabric.name), span=piece.origin.span, low=low, high=high, ground=ground)


def _whole(fabric: Fabric, kind: AreaKind, what: Said, span: Span, low: PerSize, high: PerSize, ground: Ground) -> Area:
    return Area(what, kind=kind, span=span, low=low, high=high, reach=None, fabric=fabric, chart=ground.charts.get(fabric.chart))


def _zones(piece: Piece, ground: Ground) -> Iterator[Area]:
    for zone in piece.zones:
        fabric = ground.fabrics.get(zone.fabric)
        kind = PATTERNS[fabric.stitch] if fabric is not None else None
        if fabric is None or kind is None:
            continue
        low, high = ground.height(zone.from_level), ground.height(zone.to_level)
        if zone.width is None:
            yield _whole(fabric, kind, said("fabric", fabric=fabric.name), span=zone.origin.span, low=low, high=high, ground=ground)
            continue
        reach = _reach(zone.centre, zone.width)
        chart = ground.charts.get(fabric.chart)
        what = said("panel", fabric=fabric.name)
        yield Area(what=what, kind=kind, span=zone.origin.span, low=low, high=high, reach=reach, fabric=fabric, chart=chart)


def _motifs(piece: Piece, ground: Ground) -> Iterator[Area]:
    numbers = {level.name: n for n, level in enumerate(piece.levels)}
    for motif in piece.motifs:
        chart, at = ground.charts.get(motif.chart), numbers[motif.level]
        around = ground.cloth.below(at + 1)
        if chart is None or around is None:
            continue
        low = piece.levels[at].height
        high = plus(low, tall(chart, at, ground.cloth))
        reach = _reach(motif.centre, tuple(chart.width / around.stitches_per_cm for _ in low))
        yield Area(
            said("motif", chart=motif.chart), "chart", motif.origin.span, low=low, high=high, reach=reach, fabric=None, chart=chart
        )


def _reach(centre: PerSize, width: PerSize) -> tuple[PerSize, PerSize]:
    pairs = tuple(zip(centre, width, strict=True))
    return tuple(c - w / 2 for c, w in pairs), tuple(c + w / 2 for c, w in pairs)
