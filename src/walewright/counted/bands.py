"""Bands: how deep and how long they are, in the fabric that they are knitted in."""

from __future__ import annotations

from walewright.counted.model import SizedBand
from walewright.design.model import Design, Fabric


def band_fabric(design: Design, name: str) -> Fabric:
    """What the band of that name is knitted in."""
    return design.edged_in(next(band.edging for band in design.bands if band.name == name))


def depth_cm(design: Design, band: SizedBand) -> float:
    """From the line that it hangs on to its last edge; of a folded one as it is seen."""
    return band.rows / band_fabric(design, band.name).rows_per_cm


def rim_cm(design: Design, band: SizedBand) -> float:
    """Along its last edge."""
    return band.stitches / band_fabric(design, band.name).stitches_per_cm
