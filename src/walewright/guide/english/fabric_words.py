"""What is said of a fabric in a copy that was regraded: whose tension it is, and what its dial number is worth."""

from __future__ import annotations

from walewright.design.model import Fabric


def basis_words(fabric: Fabric, regraded_copy: bool) -> str:
    """Whose tension it is, in a sentence; empty in the source's own edition."""
    if fabric.basis.startswith("given"):
        weight = "; its weight is reckoned from that of the source's swatch" if fabric.basis == "given, not weighed" else ""
        return f"As you measured it{weight}."
    if fabric.basis == "reckoned":
        return f"Reckoned from your {fabric.reckoned_from.replace('_', ' ')}: knit a swatch of it too."
    return "As measured for the source." if regraded_copy else ""


def dial_words(fabric: Fabric) -> str:
    """ "tension 4", or where the number is not known to give this tension: "tension 4 to start with"."""
    return f"tension {fabric.tension}" + (" to start with" if fabric.start_dial else "")
