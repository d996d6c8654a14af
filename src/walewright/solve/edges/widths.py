"""Widths: how stitches become centimetres across a piece, with the panels in it, and on which needles these lie.

A panel in a gauge of its own takes as many stitches in every size before anything is solved. So a width of n stitches with p of
them in a panel is (n - p) / gauge + p / (the panel's gauge) wide: the same line as without it, moved by a constant.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import floor
from typing import Literal

from walewright.design.model import Chart, DesignInSize, Piece, Zone
from walewright.record import record
from walewright.solve.edges.gauge import fabric_above, fabric_below, level_number
from walewright.trade.sides import WhichEdges

BOTH: Literal["both"] = "both"


def first_slot(stitches: int, centre: float, odd: bool) -> int:
    """Slot of the first of `stitches` needles whose middle is `centre` stitches right of the piece's centre line; of two places
    equally near the one towards the left."""
    # The centre line of an odd number goes through the needle right of the mark.
    return -floor(-(centre + (0.5 if odd else 0.0) - stitches / 2) + 0.5 + 1e-9)


def placed(at: DesignInSize, piece: Piece, stitches: int, centre: float) -> int:
    """The same for a piece; what lies in a mirror image lies as in its model, left and right exchanged."""
    if piece.mirror_of is None:
        return first_slot(stitches, centre, piece.odd(at.number))
    last = first_slot(stitches, -centre, piece.odd(at.number)) + stitches - 1
    return (0 if piece.odd(at.number) else -1) - last


def placed_right(at: DesignInSize, piece: Piece, stitches: int, centre: float) -> int:
    """The same for what has a form of its own: of two places equally near the one towards the right, in a mirror image too."""
    half = 0.5 if piece.odd(at.number) else 0.0
    return floor(centre + half - stitches / 2 + 0.5 + 1e-9)


# ----------------------------------------------------------------- panels


def panel_slots(at: DesignInSize, piece: Piece, zone: Zone) -> tuple[int, int]:
    """First and last slot of a panel in a piece started in the middle."""
    assert zone.width is not None, "a panel has a width"
    fabric = at.design.fabric(zone.fabric)
    centre = at.of(zone.centre) if zone.centre else 0.0
    wanted = at.of(zone.width) * fabric.stitches_per_cm
    parity = int(piece.odd(at.number)) if not any(zone.centre) else None
    # Where the panel lies is measured in what is knitted beside it.
    beside = fabric_below(at.design, piece, zone.to_level).stitches_per_cm
    if fabric.stitch == "chart":
        chart = at.design.chart(fabric.chart)
        stitches = chart_width(chart, at.of(zone.repeats) if zone.repeats else panel_repeats(chart, wanted, parity))
        first = placed_right(at, piece, stitches, centre * beside)
    else:
        stitches = _panel(wanted, parity)
        first = placed(at, piece, stitches, centre * beside)
    return first, first + stitches - 1


def _panel(wanted: float, parity: int | None) -> int:
    """Stitches of a panel: the nearest number, in the middle of a piece even or odd as the piece has it."""
    if parity is None:
        return max(1, floor(wanted + 0.5))
    return max(2 - parity, 2 * floor((wanted - parity) / 2 + 0.5) + parity)


def chart_width(chart: Chart, repeats: int) -> int:
    """Stitches of so many repeats and the borders; of a chart without a repeat, its own."""
    return chart.before + repeats * chart.repeat + chart.after if chart.repeat else chart.width


def panel_repeats(chart: Chart, wanted: float, parity: int | None) -> int:
    """Repeats of a panel, so that it is nearest to `wanted` stitches; in the middle of a piece, where that can be, so that it is
    even or odd as the piece is (`parity` 0 or 1)."""
    if not chart.repeat:
        return 0
    nearest = max(1, floor((wanted - chart.before - chart.after) / chart.repeat + 0.5))
    if parity is None:
        return nearest
    suit = [k for k in range(max(1, nearest - 1), nearest + 2) if chart_width(chart, k) % 2 == parity]
    return min(suit, key=lambda k: (abs(chart_width(chart, k) - wanted), k), default=nearest)


# ----------------------------------------------------------------- centimetres


@record
class WidthAcross:
    """How a width is reckoned: by `per_cm` stitches to the cm, and `spare` stitches more for the panels in it."""

    per_cm: float
    spare: float

    def stitches(self, cm: float) -> float:
        """Stitches of so many centimetres."""
        return cm * self.per_cm + self.spare


def across(
    at: DesignInSize, piece: Piece, level: str, side: WhichEdges = BOTH, above: bool = False, charted: bool = False
) -> WidthAcross:
    """How a width is reckoned at a level, by what is knitted just below it (at the start by the first rows) or just `above`;
    `side` "left" or "right": from the centre line to that side; `charted`: by charted panels alone."""
    per_cm = (fabric_above if above else fabric_below)(at.design, piece, level).stitches_per_cm
    spare = 0.0
    for zone in _panels_at(piece, level_number(piece, level), above):
        fabric = at.design.fabric(zone.fabric)
        if charted and fabric.stitch != "chart":
            continue
        first, last = panel_slots(at, piece, zone)
        stitches = _beside(first, last, side, 0.5 if piece.odd(at.number) else 0.0)
        spare += stitches * (1 - per_cm / fabric.stitches_per_cm)
    return WidthAcross(per_cm, spare)


def _panels_at(piece: Piece, number: int, above: bool) -> Iterator[Zone]:
    for zone in piece.zones:
        low, high = level_number(piece, zone.from_level), level_number(piece, zone.to_level)
        row = min(number, len(piece.levels) - 2) if above else max(number - 1, 0)
        if zone.width is not None and low <= row < high:
            yield zone


def _beside(first: int, last: int, side: WhichEdges, centre: float) -> float:
    """How many of the slots `first`..`last` lie at a side of the centre line, or at both."""
    left = min(max(centre - first, 0.0), last + 1.0 - first)
    return {"left": left, "right": last + 1 - first - left}.get(side, float(last + 1 - first))
