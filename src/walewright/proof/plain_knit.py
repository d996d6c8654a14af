"""Relations of relaxed plain knitting: between the density of a fabric and the length of its loops.

Loops per square cm S = ks / l^2, and a row takes kw times its width of yarn (Doyle and Munden, as quoted in lecture slides,
fr.scribd.com/presentation/143644499). The constants are for relaxed wool plain knit; cotton, ribs, tuck and stranded fabrics
differ.
"""

from __future__ import annotations

import math

KS_WET, KW_WET = 21.6, 4.1
"""Munden 1959, Journal of the Textile Institute, wet relaxed, as quoted in the same slides (21.6 as printed there, for
kc kw = 5.3 x 4.1)."""


def loop_length_cm(stitches_per_cm: float, rows_per_cm: float, ks: float = KS_WET) -> float:
    """Loop length in cm of relaxed plain knit with this density (stitches and rows per cm)."""
    return math.sqrt(ks / (stitches_per_cm * rows_per_cm))
