"""A measure of a piece in English, for whoever prints in no other language."""

from __future__ import annotations

from walewright.counted.model import MeasureKey
from walewright.guide.english import LANGUAGE


def measure_words(key: MeasureKey) -> str:
    """ "width at hem", "depth of neck", "height of underarm, 4 times"; names stand as their author wrote them."""
    return LANGUAGE.measure(key)
