"""How well the colours of a theme can be read: the contrast of text on paper.

Web Content Accessibility Guidelines (WCAG) 2.2, success criterion 1.4.3: text has a contrast of at least 4.5 : 1; the ratio and
the relative luminance are defined in its glossary.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from tinycss2.color3 import parse_color

from walewright.report.model import Diagnostic, Severity, Span, diagnosed
from walewright.sheet.theme import colours

LEAST = 4.5
READ = ("ink", "accent")
"""Colours that words are printed in, on `paper`."""

Channels = tuple[float, float, float]
"""Red, green and blue, each from 0 to 1."""


def channels(colour: str) -> Channels | None:
    """A colour as a style sheet writes it; None for anything else, and for a colour that lets through what is behind it."""
    found = parse_color(colour)
    return (found.red, found.green, found.blue) if hasattr(found, "red") and found.alpha == 1 else None


def hexadecimal(of: Channels) -> str:
    """As "#1f5a61"."""
    return "#" + "".join(f"{round(max(0.0, min(1.0, part)) * 255):02x}" for part in of)


def luminance(of: Channels) -> float:
    """Relative luminance: 0 of black, 1 of white."""
    red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in of)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: Channels, other: Channels) -> float:
    """The ratio of two colours: 1 of the same, 21 of black and white."""
    darker, lighter = sorted((luminance(one), luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


def hard_to_read(house: str, css: str, places: Mapping[str, Span]) -> Iterator[Diagnostic]:
    """Warnings of colours that a theme's `css` makes hard to read over the style sheet `house`. `places`: where the theme sets
    colours, by their names; what it leaves alone is the house's."""
    known = colours(f"{house}\n{css}")
    paper = channels(known["paper"])
    for name in READ:
        own = channels(known[name])
        place = places.get(name, places.get("paper"))
        if place is None or own is None or paper is None:
            continue
        ratio = contrast(own, paper)
        if ratio < LEAST:
            yield diagnosed(
                "theme-low-contrast",
                (place, "has"),
                notes=("wanted",),
                helps=("further-apart",),
                severity=Severity.WARNING,
                name=name,
                colour=hexadecimal(own),
                paper=hexadecimal(paper),
                ratio=math.floor(ratio * 100) / 100,
                least=LEAST,
            )
