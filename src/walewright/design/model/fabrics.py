"""Yarns and fabrics as part of the design: what is knitted with, and what comes of it, by its swatch."""

from __future__ import annotations

from typing import Literal

from walewright.design.model.origin import Origin
from walewright.record import record
from walewright.trade.fabrics import ChartFit, FabricSide, StitchKind
from walewright.trade.fibres import FibreKind

SwatchBasis = Literal["source", "given", "given, not weighed", "reckoned"]
"""Whose swatch it is: the author's; the knitter's, its weight reckoned from the author's or not; or reckoned from the knitter's in
another fabric."""


@record
class Yarn:
    name: str
    label: str
    ball_grams: float
    ball_metres: float
    origin: Origin
    colour: str = ""
    """As the page shows it, "#rrggbb"; empty: the page chooses."""
    strands: tuple[str, ...] = ()
    """Of yarns that are held together: their names, one for each strand. Such a yarn is not bought; its ball stands for what 1000 m
    of all strands weigh."""
    fibres: tuple[FibreKind, ...] = ()
    """What it is spun of; empty where nobody says."""

    @property
    def tex(self) -> float:
        """Grams per 1000 m (ISO 1144)."""
        return self.ball_grams / self.ball_metres * 1000

    @property
    def words(self) -> str:
        """ "my wool, 50 g = 120 m", as the option takes it."""
        ball = f"{figure(self.ball_grams)} g = {figure(self.ball_metres)} m"
        return f"{self.label}, {ball}" if self.label else ball


@record
class Fabric:
    """A stitch pattern in a yarn at a tension, with its own swatch.

    `stitches_per_cm`, `rows_per_cm` from the swatch; `grams_per_stitch` is 0 where no weight was given."""

    name: str
    stitch: StitchKind
    rib_every: int
    yarn: str
    tension: str
    swatch_stitches: float
    swatch_rows: float
    swatch_width_cm: float
    swatch_height_cm: float
    swatch_grams: float
    origin: Origin
    loop_cm: float = 0.0
    """Yarn to a stitch, in cm, where it was measured; else 0."""
    chart: str = ""
    """Of stitch "chart": its name."""
    edge: int = 0
    """Of stitch "chart": stitches at each end of the width that are not in the chart."""
    fit: ChartFit = "whole"
    """Of stitch "chart": "whole" (only whole repeats across), "centred" (the middle of a repeat at the centre mark, what is left
    cut alike on both sides) or "balanced" (the border of two repeats there)."""
    stripes: tuple[tuple[str, int], ...] = ()
    """Of stitch "stripes": (yarn, rows), from the first knitted on; `yarn` is the first one's."""
    right_side: FabricSide = "knit"
    """"knit" (the side that faces away from the knitter) or "purl"."""
    basis: SwatchBasis = "source"
    """Whose swatch it is: "source" (the author's), "given" (the knitter's; "given, not weighed" where its weight is reckoned from
    the author's) or "reckoned" (from the knitter's in fabric `reckoned_from`)."""
    reckoned_from: str = ""
    swatch_of: str = ""
    """The fabric whose swatch it is, in another yarn; empty where it has one of its own."""
    own_dial: bool = False
    """Whether `tension` is the knitter's own."""
    start_dial: bool = False
    """Whether `tension` is the source's, for another tension or yarn than this: the dial is where to begin, no more."""
    as_written: Fabric | None = None
    """Of a fabric at a knitter's own tension: as its author swatched it. Whatever the tension, the swatch is a piece of fabric of
    that size."""

    @property
    def stitches_per_cm(self) -> float:
        return self.swatch_stitches / self.swatch_width_cm

    @property
    def gauge(self) -> tuple[float, float]:
        """Stitches and rows to the centimetre."""
        return self.stitches_per_cm, self.rows_per_cm

    @property
    def rows_per_cm(self) -> float:
        return self.swatch_rows / self.swatch_height_cm

    @property
    def tension_words(self) -> str:
        """ "17 st 24 rows" to 10 cm, as the option takes it; what was measured on a block is told to a tenth."""
        digits = 2 if self.basis.startswith("given") else 1
        return f"{figure(self.stitches_per_cm * 10, digits)} st {figure(self.rows_per_cm * 10, digits)} rows"

    @property
    def swatch_words(self) -> str:
        """ "40 st 60 rows 23.5 cm 21 cm 28 g", as the option takes it."""
        block = f"{figure(self.swatch_stitches)} st {figure(self.swatch_rows)} rows"
        weight = f" {figure(self.swatch_grams)} g" if self.swatch_grams and self.basis != "given, not weighed" else ""
        return f"{block} {figure(self.swatch_width_cm)} cm {figure(self.swatch_height_cm)} cm{weight}"


def figure(value: float, digits: int = 2) -> str:
    """A number as it is written: at most so many decimals, no trailing noughts."""
    return f"{value:.{digits}f}".rstrip("0").rstrip(".")
