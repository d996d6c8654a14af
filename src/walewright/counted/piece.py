"""A counted piece with the fabric of each of its rows: what is knitted where, and how many centimetres that is.

A width is measured in the fabric of the row just below it (at the start: of the first row), so that an edge steps where one fabric
meets another of a different gauge. The stitches of a panel are as wide as its own swatch says.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field
from itertools import pairwise

from walewright.counted.model import SizedPiece, SizedZone
from walewright.counted.needles import top_width
from walewright.counted.stretches import EdgeStretch
from walewright.design.model import Design, Fabric, Piece
from walewright.record import record


@record
class Layer:
    """The rows after row `low` up to row `high`, over the whole width in `fabric`. `zone` says so; None: it is the piece's own."""

    low: int
    high: int
    fabric: Fabric
    zone: SizedZone | None = None


@record
class Panel:
    """The rows after row `low` up to row `high` of slots `first` to `last` in `fabric`."""

    low: int
    high: int
    first: int
    last: int
    fabric: Fabric

    def inside(self, first: float, end: float) -> float:
        """How many of its stitches lie from `first` on and before `end`."""
        return max(0.0, min(end, self.last + 1) - max(first, self.first))


@record
class CountedPiece:
    """`piece` of the design as it is counted in one size. `layers` lie upon each other without a gap, from row 0 to the top."""

    design: Design
    piece: Piece
    sized: SizedPiece
    layers: tuple[Layer, ...]
    panels: tuple[Panel, ...]
    measured: dict[str, tuple[EdgeStretch, ...]] = field(default_factory=dict, compare=False, repr=False)
    """The stretches of edges that have been asked for, by the edge's name: each is measured once."""

    # ------------------------------------------------------------- fabric and yarn

    def layer(self, row: float, above: bool = False) -> Layer:
        """Where row `row` (1 ...) lies; row 0, the start, in the first; `above`: the row above it."""
        for layer in self.layers:
            if row < layer.high or (row == layer.high and not above):
                return layer
        return self.layers[-1]

    def fabric(self, row: float, above: bool = False) -> Fabric:
        """What row `row` (1 ...) is knitted in over the whole width, beside its panels; row 0 as the first; `above`: the row above
        it."""
        return self.layer(row, above).fabric

    def yarn(self, row: int) -> str:
        """The yarn of row `row` (1 ...); of stripes, which begin with their layer, the one of that row."""
        layer = self.layer(row)
        stripes = layer.fabric.stripes
        if not stripes:
            return layer.fabric.yarn
        order = [yarn for yarn, rows in stripes for _ in range(rows)]
        return order[(row - 1 - layer.low) % len(order)]

    def yarns(self, row: int) -> tuple[str, ...]:
        """The yarns that row `row` (1 ...) may be knitted with: in picture knitting all of the picture's."""
        drawn = (self.design.chart(c.chart) for c in self.sized.charts if c.from_row < row <= c.to_row)
        return (self.yarn(row), *(yarn for chart in drawn if chart.picture for yarn in chart.yarns))

    # ------------------------------------------------------------- centimetres

    def stitch_cm(self, row: float, above: bool = False) -> float:
        """One stitch of row `row`, beside its panels."""
        return 1 / self.fabric(row, above).stitches_per_cm

    def row_cm(self, row: int) -> float:
        """The height of row `row` (1 ...)."""
        return 1 / self.fabric(row).rows_per_cm

    def width_cm(self, stitches: float, row: float) -> float:
        """The width of a whole row of so many stitches, all its panels among them."""
        return stitches * self.stitch_cm(row) + self.panels_cm(row)

    def panels_cm(self, row: float) -> float:
        """By how much the panels of row `row` are wider than as many stitches of the fabric beside them."""
        base = self.stitch_cm(row)
        return sum((p.last - p.first + 1) * (1 / p.fabric.stitches_per_cm - base) for p in self._panels(row))

    def height_cm(self, row: float) -> float:
        """From the start to `row`, what is knitted several times once."""
        done = 0.0
        for layer in self.layers:
            if row <= layer.low:
                break
            done += (min(row, layer.high) - layer.low) / layer.fabric.rows_per_cm
        return done

    @property
    def edging(self) -> Fabric | None:
        """What the edging along the start is knitted in."""
        name = self.piece.start_edging
        return None if name is None else self.design.edged_in(name)

    @property
    def edging_cm(self) -> float:
        """How deep that edging is as it is seen; 0 without an edging."""
        return 0.0 if self.edging is None else self.sized.edging_rows / self.edging.rows_per_cm

    @property
    def end_edging(self) -> Fabric | None:
        """What the edging at the end is knitted in."""
        name = self.piece.end_edging
        return None if name is None else self.design.edged_in(name)

    @property
    def end_cm(self) -> float:
        """How deep that edging is as it is seen; 0 without one."""
        return 0.0 if self.end_edging is None else self.sized.end_rows / self.end_edging.rows_per_cm

    @property
    def end_width_cm(self) -> float:
        """Its own width; 0 without one."""
        return 0.0 if self.end_edging is None else top_width(self.sized) / self.end_edging.stitches_per_cm

    @property
    def edging_width_cm(self) -> float:
        """Its own width at its outer edge, narrower or wider than the start as its fabric is; 0 without an edging."""
        return 0.0 if self.edging is None else self.sized.start / self.edging.stitches_per_cm

    @property
    def middle(self) -> float:
        """The middle of the start in stitches right of the bed's centre mark: 0, of an odd number 1/2, of a piece that begins off
        the centre more or less."""
        return self.sized.start / 2 - self.sized.start_left

    def point(self, x: float, row: float, above: bool = False) -> tuple[float, float]:
        """(`x` stitches right of the centre mark, `row`) in cm right of the middle of the start and above it."""
        base = self.stitch_cm(row, above)
        wide = (x - self.middle) * base
        for panel in self._panels(row, above):
            inside = panel.inside(self.middle, x) - panel.inside(x, self.middle)
            wide += inside * (1 / panel.fabric.stitches_per_cm - base)
        return wide, self.height_cm(row)

    def _panels(self, row: float, above: bool = False) -> list[Panel]:
        return [p for p in self.panels if (p.low <= row < p.high if above else p.low < max(row, 1e-6) <= p.high)]


def counted_piece(design: Design, sized: SizedPiece) -> CountedPiece:
    """A piece of the design as it is counted in one size."""
    piece = design.piece(sized.name)
    panels = tuple(Panel(z.from_row, z.to_row, *z.panel, design.fabric(z.fabric)) for z in sized.zones if z.panel is not None)
    return CountedPiece(design, piece, sized, tuple(_layers(design, piece, sized)), panels)


def _layers(design: Design, piece: Piece, sized: SizedPiece) -> Sequence[Layer]:
    whole = [z for z in sized.zones if z.panel is None and z.from_row < z.to_row]
    own = design.fabric(piece.fabric)
    rows = sorted({0, sized.rows, *(row for zone in whole for row in (zone.from_row, zone.to_row))})
    made: list[Layer] = []
    for low, high in pairwise(rows):
        zone = next((z for z in whole if z.from_row <= low < z.to_row), None)
        made.append(Layer(low, high, own if zone is None else design.fabric(zone.fabric), zone))
    return made or [Layer(0, 0, own)]
