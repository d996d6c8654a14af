"""Drawings as data: strokes, letterings and tiles, in millimetres of paper."""

from __future__ import annotations

from typing import Literal

from walewright.record import record


@record
class Stroke:
    """One path: `data` is SVG path data in mm; `kind` names its pen: outline, seam, hatch, wale, texture, measure, guide,
    dart (broken lines of held rows), slit, mark, tint (a zone's ground), blank (white paper again), cloth (a filled shape that
    hides what lies behind it), inside. Of making up: joint, joint-broken, joint-dotted and joint-mixed (edges that are joined),
    badge (round a number).

    A `colour` is "#rrggbb" or the name that a theme has for one: ink, accent, paper.

    Of charts: fill (in `colour`), grid, fifth (every fifth line), symbol, light (a symbol on a dark yarn), box (round the
    repeat), veil (over what is also on another sheet), centre. Of fabric and handwork: strand and dashes (both in `colour`,
    `width` mm wide), steel (needles), tool, thread, arrow (filled). tiled: filled with the tile that `colour` names."""

    data: str
    kind: str
    colour: str = ""
    width: float = 0.0


LetteringKind = Literal["letter", "figure", "word", "count"]
"""letter: of a legend | figure | word | count: small, of rows and columns."""


@record
class Lettering:
    """Text in a drawing, at (x, y) mm, the baseline's `anchor` start | middle | end, turned by `turn` degrees about (x, y)."""

    x: float
    y: float
    text: str
    anchor: str = "middle"
    turn: int = 0
    kind: LetteringKind = "figure"


@record
class Tile:
    """A cell of `width` by `height` mm that is laid again and again from (0, 0): `data` drawn in `colour`, `pen` mm wide. `name`
    occurs once in a sheet."""

    name: str
    width: float
    height: float
    data: str
    colour: str
    pen: float


@record
class Drawing:
    """`title` says in words what is to be seen, for those who cannot see it. Size in mm; (`left`, `top`) is its upper left
    corner. `tiles` are those that strokes of the kind "tiled" are filled with."""

    title: str
    width: float
    height: float
    strokes: tuple[Stroke, ...]
    letterings: tuple[Lettering, ...]
    left: float = 0.0
    top: float = 0.0
    tiles: tuple[Tile, ...] = ()
    scale: float = 1.0
    """By how much it is printed larger than drawn."""
