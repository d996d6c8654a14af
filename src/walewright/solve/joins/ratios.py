"""How many stitches of a band there are for every so many rows, where simple numbers tell it."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.counted.model import PickUp, SizedBand
from walewright.record import replace

MOST_ROWS = 10
"""Ratios of more rows are no help at the bench: "3 for every 4" is (common practice)."""


def with_ratios(sizes: Sequence[tuple[SizedBand, ...]]) -> list[tuple[SizedBand, ...]]:
    """The bands of each size, with the ratios that hold in all of them."""
    return [tuple(_told(band, [own[n] for own in sizes]) for n, band in enumerate(bands)) for bands in sizes]


def _told(band: SizedBand, everywhere: Sequence[SizedBand]) -> SizedBand:
    if len({tuple((p.edge, p.part, p.copy) for p in own.pick_ups) for own in everywhere}) > 1:
        return band
    picks = (replace(p, ratio=_ratio([own.pick_ups[n] for own in everywhere])) for n, p in enumerate(band.pick_ups))
    return replace(band, pick_ups=tuple(picks))


def _ratio(sizes: Sequence[PickUp]) -> tuple[int, int]:
    """The simplest ratio that comes to the stitches of every size, half a stitch off at the most and one more in a hundred rows."""
    # Along what is cast off on the way, chains lie between the rows.
    if any(p.rows != p.points for p in sizes):
        return 0, 0
    for every in range(2, MOST_ROWS + 1):
        for per in range(1, every):
            if all(abs(p.stitches * every - p.points * per) * 100 <= every * (50 + p.points) for p in sizes):
                return per, every
    return 0, 0
