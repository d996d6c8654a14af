"""Lengths of yarn that hands need beside the one in the carriage: tails to sew, graft or gather with, lengths to cast on with."""

from __future__ import annotations

from math import ceil

from walewright.design.model import Fabric

SEWN = 3
"""Widths of the edge in the tail that casts it off by back-stitch. Common practice."""
GRAFTED = 4
"""Widths of the edge in the tail that grafts it. Common practice: 3 to 4."""
GATHERED = 2
"""Widths of the edge in the tail that gathers it: once through the loops as they lie, and again through the drawn-up ones. Common
practice: 1.5 to 2."""
SEAM = 1.5
"""Lengths of a seam in the tail that it begins with. Common practice."""
WRAPPED = 4
"""Widths of the stitches in a length that casts them on by e-wrap. Common practice."""
TO_HOLD = 10
"""Centimetres of an end to hold and to thread. Common practice."""
SEWN_IN = 20
"""Centimetres of a tail that has only to be sewn in, and of one that gathers beyond what it gathers. Common practice: 15 to 20."""
STEP = 5
"""Lengths are told in steps of so many cm."""


def tail_cm(fabric: Fabric, stitches: int) -> int:
    """A tail to sew off so many stitches with by back-stitch."""
    return max(SEWN_IN, _steps(SEWN * stitches / fabric.stitches_per_cm))


def grafting_cm(fabric: Fabric, stitches: int, seam_cm: float = 0.0) -> int:
    """A tail to graft so many stitches with, and to go on along a seam of so many cm."""
    return max(SEWN_IN, _steps(GRAFTED * stitches / fabric.stitches_per_cm + SEAM * seam_cm))


def gathering_cm(fabric: Fabric, stitches: int) -> int:
    """A tail to gather so many stitches with."""
    return _steps(GATHERED * stitches / fabric.stitches_per_cm + SEWN_IN)


def seam_tail_cm(cm: float) -> int:
    """A tail that begins a seam of so many cm; of none, one to sew in."""
    return max(SEWN_IN, _steps(SEAM * cm))


def length_cm(fabric: Fabric, stitches: int) -> int:
    """A separate length to cast on so many stitches by e-wrap with, both its ends included."""
    return _steps(WRAPPED * stitches / fabric.stitches_per_cm + 2 * TO_HOLD)


def _steps(cm: float) -> int:
    # Rounded before it is raised to a step: 60 cm must not become 65 by the last bit of a float.
    return STEP * ceil(round(cm / STEP, 6))
