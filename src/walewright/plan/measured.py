"""How the plan document names a measure: `what` of `deviations` and `measures`.

It is part of the format of docs/plan.md and stays as it is where the pages come to say it otherwise or in another language.
"""

from __future__ import annotations

from walewright.counted.model import MeasureKey


def measured(key: MeasureKey) -> str:
    """ "width at LEVEL" or "width at start", else "WHAT of NAME"; with a word behind what lies across or inside, and the times."""
    if key.at == "stretch":
        named = f"{key.name} to {key.to}"
    elif key.extent == "width" and key.at in ("start", "level"):
        named = f"width at {key.name or 'start'}"
    else:
        named = f"{key.extent} of {key.name}"
    across = " across" if key.across else ""
    inside = " inside" if key.at == "wedge" and key.extent == "height" else ""
    times = "" if key.times is None else f", {key.times} times" if key.times else ", all together"
    return f"{named}{across}{inside}{times}"
