"""What is for the page alone, as JSON: what is needed beside the yarn, and the photograph."""

from __future__ import annotations

from typing import TYPE_CHECKING

from walewright.plan.shapes import Json, cm

if TYPE_CHECKING:
    from walewright.design.model import Design
    from walewright.fit.model import Fit


def for_the_page(design: Design, fit: Fit | None) -> Json:
    """What the source says of it; a source that says nothing has no such keys."""
    found: Json = {}
    if design.needed:
        found["needed"] = [_needed(design, fit, at) for at in range(len(design.needed))]
    if design.photograph is not None:
        found["photograph"] = {"file": design.photograph.file, "showing": design.photograph.showing}
    return found


def _needed(design: Design, fit: Fit | None, at: int) -> Json:
    """One thing, and how much of it in each size: a count, or cm; none of both where nothing is said."""
    one = design.needed[at]
    amounts = fit.needed[at] if fit is not None else one.values
    found: Json = {"what": one.what}
    if one.unit == "count":
        found["count"] = {size: round(n) for size, n in zip(design.sizes, amounts, strict=True)}
    elif one.unit == "length":
        found["cm"] = {size: cm(n) for size, n in zip(design.sizes, amounts, strict=True)}
    return found
