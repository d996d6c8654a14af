"""What the author lists beside the yarn, in words: "5 (5: 6: 7) buttons, 15 mm", "elastic, 2 cm wide: 62 (66: 70) cm"."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Design
from walewright.fit.model import Fit
from walewright.guide.model import Guide
from walewright.guide.numbers import graded, sentence
from walewright.sheet.fitting import told


def needs(guide: Guide, design: Design, fit: Fit | None, units: str) -> Iterator[str]:
    """A line each. What is measured on the garment has its amount only where it was put on (`fit`)."""
    for at, one in enumerate(design.needed):
        amounts = fit.needed[at] if fit is not None else one.values
        if not amounts:
            yield sentence(one.what)
        elif one.unit == "count":
            counts = [f"{n:.0f}" if n else "\N{EN DASH}" for n in amounts]
            yield guide.say("needed/count", count=graded(counts), what=one.what)
        else:
            yield guide.say("needed/length", what=sentence(one.what), length=told(guide, amounts, units))
