"""Yarns on paper: a colour and a hatch for each, so that they are told apart in black and white as well."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.model import Chart, Design, Yarn
from walewright.record import record

PALETTE = ("#f0eadc", "#2f4b6e", "#dba63f", "#8c3b3f", "#7fae9f", "#57427c", "#c6cfa3", "#3a3f40")
"""For yarns whose colour the source does not say; neighbours differ in lightness."""

HATCHES = (
    (((0.0, 0.5), (0.5, 0.0)), ((0.0, 1.0), (1.0, 0.0)), ((0.5, 1.0), (1.0, 0.5))),
    (((0.0, 0.2), (1.0, 0.2)), ((0.0, 0.5), (1.0, 0.5)), ((0.0, 0.8), (1.0, 0.8))),
    (((0.0, 0.5), (0.5, 0.0)), ((0.5, 0.0), (1.0, 0.5)), ((1.0, 0.5), (0.5, 1.0)), ((0.5, 1.0), (0.0, 0.5))),
    (((0.2, 0.0), (0.2, 1.0)), ((0.5, 0.0), (0.5, 1.0)), ((0.8, 0.0), (0.8, 1.0))),
    (((0.5, 0.0), (1.0, 0.5)), ((0.0, 0.0), (1.0, 1.0)), ((0.0, 0.5), (0.5, 1.0))),
    (((0.5, 0.22), (0.5, 0.78)), ((0.22, 0.5), (0.78, 0.5))),
    (((0.24, 0.3), (0.3, 0.3)), ((0.72, 0.3), (0.78, 0.3)), ((0.24, 0.72), (0.3, 0.72)), ((0.72, 0.72), (0.78, 0.72))),
    (((0.25, 0.75), (0.5, 0.25)), ((0.5, 0.25), (0.75, 0.75)), ((0.75, 0.75), (0.25, 0.75))),
)
"""Strokes within a cell of 1 by 1: slanting, level, net, upright, slanting the other way, plus, dots, triangle."""

DARK = 0.45
"""Lightness below which a hatch is drawn white."""


@record
class CellLook:
    """How a chart shows the cells of a yarn: its colour, "#rrggbb", and the number of its hatch, None of bare cells."""

    colour: str
    hatch: int | None


def in_chart(design: Design, chart: Chart, ground: str) -> Mapping[str, CellLook]:
    """By the yarns of a chart, the lightest first, so that light yarn has light cells: that one is bare, those darker are hatched.
    `ground`: the yarn of the cells that name none; "" where that is not one and the same. They are white then, and all others
    hatched."""
    named = dict.fromkeys((*((ground,) if ground else ()), *chart.yarns))
    shades = sorted(((name, colour(design, name)) for name in named), key=lambda one: -lightness(one[1]))
    bare = 1 if ground else 0
    return {name: CellLook(shade, place - bare if place >= bare else None) for place, (name, shade) in enumerate(shades)}


def colour(design: Design, name: str) -> str:
    """ "#rrggbb" of a yarn: its own, or one of the palette by its place in the source."""
    for place, yarn in enumerate(design.yarns):
        if yarn.name == name:
            return yarn.colour or PALETTE[place % len(PALETTE)]
    return PALETTE[0]


def yarn_named(design: Design, name: str) -> Yarn:
    """A yarn of the design. Raises StopIteration for one that it has not."""
    return next(y for y in design.yarns if y.name == name)


def lightness(colour_: str) -> float:
    """0 black … 1 white, as a copier sees "#rrggbb" (Rec. 709 weights)."""
    red, green, blue = (int(colour_[i : i + 2], 16) / 255 for i in (1, 3, 5))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def darker(colour_: str, share: float = 0.5) -> str:
    """The same colour so much nearer to black: the outline of a strand."""
    return "#" + "".join(f"{round(int(colour_[i : i + 2], 16) * (1 - share)):02x}" for i in (1, 3, 5))


def lighter(colour_: str, share: float = 0.78) -> str:
    """The same colour so much nearer to white: yarn in a strong light."""
    return "#" + "".join(f"{round(255 - (255 - int(colour_[i : i + 2], 16)) * (1 - share)):02x}" for i in (1, 3, 5))


def hatch(index: int, x: float, y: float, w: float, h: float) -> str:
    """The hatch of a chart's hatched yarn number `index` (from 0) over one cell. From the ninth on a hatch is joined to another."""
    whole, place = divmod(index, len(HATCHES))
    strokes = HATCHES[place] + (HATCHES[(place + whole) % len(HATCHES)] if whole else ())
    return "".join(f"M{x + a * w:.2f} {y + b * h:.2f}L{x + c * w:.2f} {y + d * h:.2f}" for (a, b), (c, d) in strokes)


def hatch_ink(colour_: str) -> tuple[str, float]:
    """Colour, by its name in a theme, and width in mm of a hatch's lines on a yarn of this colour: those of `hatch_pen`."""
    return ("paper", 0.26) if hatch_pen(colour_) == "light" else ("ink", 0.3)


def hatch_pen(colour_: str) -> str:
    """The pen that shows a hatch on this colour: "light" on a dark one, else "mark"."""
    return "light" if lightness(colour_) < DARK else "mark"
