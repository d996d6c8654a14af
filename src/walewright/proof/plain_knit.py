"""Relations of relaxed plain knitting: between the density of a fabric, the length of its loops and its weight.

Courses per cm c = kc / l, wales per cm w = kw / l, so loops per square cm S = ks / l^2 with ks = kc kw, and a row takes kw times
its width of yarn (Doyle and Munden, as quoted in lecture slides, fr.scribd.com/presentation/143644499). The constants are for
relaxed wool plain knit; cotton, ribs, tuck and stranded fabrics differ.
"""

from __future__ import annotations

import math

KC_DRY, KW_DRY, KS_DRY = 5.0, 3.8, 19.0
KC_WET, KW_WET, KS_WET = 5.3, 4.1, 21.6
"""Munden 1959, Journal of the Textile Institute, dry and wet relaxed, as quoted in the same slides (21.6 as printed there, for
5.3 x 4.1)."""


def loop_length_cm(stitches_per_cm: float, rows_per_cm: float, ks: float = KS_WET) -> float:
    """Loop length in cm of relaxed plain knit with this density (stitches and rows per cm)."""
    return math.sqrt(ks / (stitches_per_cm * rows_per_cm))


def loop_width_cm(loop_cm: float, kw: float = KW_WET) -> float:
    """Width in cm that a loop of this length takes in relaxed plain knit."""
    return loop_cm / kw


def grams_per_square_metre(loops_per_square_cm: float, loop_cm: float, tex: float) -> float:
    """Weight of a fabric from its loops: S x l x tex / 100 with l in mm. Textile handbook, 2023, fliphtml5.com/iczwi/zyvh, page
    150."""
    return loops_per_square_cm * loop_cm * tex / 10
