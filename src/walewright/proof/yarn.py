"""Yarn for one size: from the loops that the bed knitted.

Three ways, the best available is taken and named:

1. by weight: the swatch was weighed, so a stitch of that fabric weighs swatch grams / (stitches x rows);
2. by loop length: no weight was given, so the length of a loop is estimated from the stitch density by the plain-knit
   relation S = ks / l^2 (Doyle and Munden; constants for relaxed wool plain knit, Munden 1959: ks 19.0 dry, 21.6 wet).
   It is meant for relaxed plain knit; other fabrics differ.

Bands, seams and tails: the bands' loops are knitted and counted; for seams, ends and the swatch, see `SPARE`.
"""

from __future__ import annotations

import math
from collections.abc import Mapping

from walewright.design.model import Design, Fabric
from walewright.proof.model import YarnUse

KS_DRY, KS_WET = 19.0, 21.6
"""Munden 1959, Journal of the Textile Institute, as quoted in lecture slides on fabric geometry."""

SPARE = 0.10
"""Share added for seams, ends and the error of the swatch. Common practice: 5 to 10 %."""

SWATCH_STITCHES, SWATCH_ROWS = 10, 34
"""Knitted round the block that is measured: 5 stitches at each side, 15 rows and 2 marker rows at each end
(common practice; the same as the page tells the knitter)."""

LoopCounts = Mapping[tuple[str, str], int]
"""(yarn, tension) -> loops of all copies."""


def loop_length_cm(stitches_per_cm: float, rows_per_cm: float, ks: float = KS_WET) -> float:
    """Loop length in cm of relaxed plain knit with this density (stitches and rows per cm)."""
    return math.sqrt(ks / (stitches_per_cm * rows_per_cm))


def yarn_uses(design: Design, loops: LoopCounts) -> tuple[YarnUse, ...]:
    """What one size takes of each yarn, the swatches of its fabrics included, whole balls rounded up."""
    uses: list[YarnUse] = []
    for yarn in design.yarns:
        grams = 0.0
        weighed = True
        heaviest: dict[str, float] = {}
        for fabric in design.fabrics:
            if fabric.yarn == yarn.name:
                each = _grams_per_loop(design, fabric)
                grams += (fabric.swatch_stitches + SWATCH_STITCHES) * (fabric.swatch_rows + SWATCH_ROWS) * each
                # Loops are known by yarn and tension. Of two fabrics that share both, the heavier is taken for all of them.
                heaviest[fabric.tension] = max(each, heaviest.get(fabric.tension, 0.0))
                weighed = weighed and fabric.swatch_grams > 0
        grams += sum(loops.get((yarn.name, tension), 0) * each for tension, each in heaviest.items())
        grams *= 1 + SPARE
        metres = grams / yarn.ball_grams * yarn.ball_metres
        balls = math.ceil(grams / yarn.ball_grams - 1e-9)
        uses.append(YarnUse(yarn.name, yarn.label, metres, grams, balls, _WEIGHED if weighed else _ESTIMATED))
    return tuple(uses)


_WEIGHED = (
    f"from the weight of the swatches, which are included, with {SPARE:.0%} for seams, ends and the error of the swatch, "
    "about 5 % if it was weighed to the gram"
)
_ESTIMATED = (
    f"estimated from the stitch density of plain knitting, with {SPARE:.0%} for seams and ends; right to about 15 %: weigh a swatch"
)


def _grams_per_loop(design: Design, fabric: Fabric) -> float:
    if fabric.swatch_grams > 0:
        return fabric.swatch_grams / (fabric.swatch_stitches * fabric.swatch_rows)
    yarn = next(y for y in design.yarns if y.name == fabric.yarn)
    metres = loop_length_cm(fabric.stitches_per_cm, fabric.rows_per_cm) / 100
    return metres * yarn.ball_grams / yarn.ball_metres
