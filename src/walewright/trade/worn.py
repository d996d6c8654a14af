"""A garment as it is worn."""

from __future__ import annotations

from typing import Literal

BodyPart = Literal["head", "hand", "foot", "hips", "calf"]
"""What has to pass an opening."""

BODY_PARTS: tuple[BodyPart, ...] = ("head", "hand", "foot", "hips", "calf")

ReachWay = Literal["over the shoulder", "from the neck", "half the span"]
"""How the way from the middle of the back neck to the end of a sleeve is measured. over the shoulder: half the shoulders, then the
whole sleeve | from the neck: half the back neck, then the whole sleeve (raglan, saddle) | half the span: sleeves in one with
the body."""
