"""Fabrics: what they are knitted as, how a chart lies on the needles, and how yarns of a row are laid."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.record import record

StitchKind = Literal["stocking stitch", "latched rib", "chart", "stripes"]

ChartFit = Literal["whole", "centred", "balanced"]
"""whole: only whole repeats across | centred: the middle of a repeat at the centre mark, what is left cut alike on both sides |
balanced: the border of two repeats there."""

ChartArea = Literal["whole", "panel"]
"""whole: as far as the part in work reaches | panel: on needles of its own alone."""

FabricSide = Literal["knit", "purl"]
"""knit: the side that faces away from the knitter | purl."""

ColourWay = Literal["floats", "blocks"]
"""floats: a second yarn floats behind | blocks: yarns are laid block by block and crossed."""


@record
class StitchFacts:
    """What is asked of a stitch pattern."""

    plain: bool = False
    """Every stitch is knitted by the carriage, all alike."""
    counts_rows: bool = False
    """It goes by the row counter: rows worked again would bring it out of step."""


STITCH_KINDS: Mapping[StitchKind, StitchFacts] = {
    "stocking stitch": StitchFacts(plain=True),
    "latched rib": StitchFacts(),
    "chart": StitchFacts(counts_rows=True),
    "stripes": StitchFacts(plain=True, counts_rows=True),
}

FITS: tuple[ChartFit, ...] = ("whole", "centred", "balanced")

FABRIC_SIDES: tuple[FabricSide, ...] = ("knit", "purl")

COLOUR_WAYS: tuple[ColourWay, ...] = ("floats", "blocks")
