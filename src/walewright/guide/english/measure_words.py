"""A measure of a piece in English, for tables of pages and of the terminal."""

from __future__ import annotations

from walewright.counted.model import MeasureKey


def measure_words(key: MeasureKey) -> str:
    """ "width at hem", "depth of neck", "height of underarm, 4 times"; names stand as their author wrote them."""
    times = "" if key.times is None else f", {key.times} times" if key.times else ", all together"
    return f"{_one(key)}{times}"


def _one(key: MeasureKey) -> str:
    match key.extent, key.at:
        case "width", "start":
            return "width at start"
        case "width", "level":
            return f"width at {key.name}{' across' if key.across else ''}"
        case "height", "wedge":
            return f"height of {key.name} inside"
        case _, "stretch":
            return f"{key.name} to {key.to}"
    return f"{key.extent} of {key.name}"
