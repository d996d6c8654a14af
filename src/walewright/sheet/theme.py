"""A theme: the house's style sheet, and a publisher's own laid over it. It sets how a sheet looks and reaches for nothing.

Its colours are custom properties of `:root`. In drawings they are put in here, as attributes, since the renderer applies no style
sheet of the page within a drawing.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from functools import lru_cache
from typing import Any

import tinycss2
from markupsafe import Markup

from walewright.figures.model import Lettering, Stroke
from walewright.report.model import Diagnostic, Span, diagnosed

REACHING = frozenset({"url", "src", "image", "image-set", "-webkit-image-set"})
"""Functions that name something to fetch."""

AT_RULES = frozenset({"import", "font-face"})
"""Rules that do."""


def unfit(file: str, css: str) -> tuple[Diagnostic, ...]:
    """Everything in a publisher's theme that would fetch something, or end the style sheet that it stands in."""
    found = [_refused(file, css, node, what) for node, what in _reaching(tinycss2.parse_component_value_list(css))]
    found += (_told(file, end.start(), end.end(), "end-of-sheet", end.group()) for end in re.finditer("</|<!--", css))
    return tuple(found)


def _reaching(nodes: list[Any]) -> Iterator[tuple[Any, str]]:
    for node in nodes:
        if node.type == "at-keyword" and node.lower_value in AT_RULES:
            yield node, f"@{node.lower_value}"
        elif node.type == "url" or (node.type == "error" and node.kind == "bad-url"):
            yield node, "url()"
        elif node.type == "function":
            if node.lower_name in REACHING:
                yield node, f"{node.lower_name}()"
            yield from _reaching(node.arguments)
        elif node.type in ("{} block", "() block", "[] block"):
            yield from _reaching(node.content)


def _start(css: str, node: Any) -> int:
    """Where a node of a style sheet begins in its text."""
    return sum(len(line) + 1 for line in css.split("\n")[: node.source_line - 1]) + int(node.source_column) - 1


def _refused(file: str, css: str, node: Any, what: str) -> Diagnostic:
    start = _start(css, node)
    return _told(file, start, start + len(what.removesuffix("()")), "fetches", what)


def _told(file: str, start: int, end: int, case: str, what: str) -> Diagnostic:
    return diagnosed(f"theme-reaches-out/{case}", (Span(file, start, end), ""), helps=("leave-it-out",), facts={"what": what})


# ----------------------------------------------------------------- colours


@lru_cache(maxsize=8)
def colours(css: str) -> Mapping[str, str]:
    """The custom properties of `:root`, the last of a name: "accent" -> "#1f5a61"; what stands for another is put in."""
    found = {one.name.removeprefix("--"): tinycss2.serialize(one.value).strip() for one in _properties(css)}
    return {name: _resolved(value, found) for name, value in found.items()}


def places(file: str, css: str) -> Mapping[str, Span]:
    """Where the last of a name of those custom properties is declared in the text of `file`."""
    found: dict[str, Span] = {}
    for one in _properties(css):
        start = _start(css, one)
        end = next((at for at in range(start, len(css)) if css[at] in ";}\n"), len(css))
        found[one.name.removeprefix("--")] = Span(file, start, start + len(css[start:end].rstrip()))
    return found


def _properties(css: str) -> Iterator[Any]:
    """The declarations of custom properties of `:root`."""
    for rule in tinycss2.parse_stylesheet(css, skip_comments=True, skip_whitespace=True):
        if rule.type != "qualified-rule" or tinycss2.serialize(rule.prelude).strip() != ":root":
            continue
        for declaration in tinycss2.parse_blocks_contents(rule.content, skip_comments=True, skip_whitespace=True):
            if declaration.type == "declaration" and declaration.name.startswith("--"):
                yield declaration


def _resolved(value: str, known: Mapping[str, str], depth: int = 8) -> str:
    of = re.fullmatch(r"var\(\s*--([\w-]+)\s*\)", value)
    return value if of is None or not depth else _resolved(known.get(of.group(1), ""), known, depth - 1)


_ROUND = 'stroke-linecap="round" stroke-linejoin="round"'
_BENT = 'stroke-linejoin="round" stroke-linecap="round"'

PENS = {
    "outline": 'fill="none" stroke="{ink}" stroke-width="0.5" stroke-linejoin="round"',
    "cloth": 'fill="{paper}" stroke="{ink}" stroke-width="0.5" stroke-linejoin="round"',
    "inside": 'fill="{inside}" stroke="{ink}" stroke-width="0.35" stroke-linejoin="round"',
    "seam": 'fill="none" stroke="{ink}" stroke-width="0.35"',
    "hatch": 'fill="none" stroke="{hatch}" stroke-width="0.18"',
    "texture": f'fill="none" stroke="{{accent}}" stroke-width="0.28" {_ROUND}',
    "wale": 'fill="none" stroke="{hairline}" stroke-width="0.14"',
    "joint": 'fill="none" stroke="{ink}" stroke-width="0.75"',
    "joint-broken": 'fill="none" stroke="{ink}" stroke-width="0.75" stroke-dasharray="2.2 1.1"',
    "joint-dotted": 'fill="none" stroke="{ink}" stroke-width="0.85" stroke-dasharray="0.01 1.4" stroke-linecap="round"',
    "joint-mixed": 'fill="none" stroke="{ink}" stroke-width="0.75" stroke-dasharray="3 0.9 0.7 0.9"',
    "badge": 'fill="{paper}" stroke="{ink}" stroke-width="0.25"',
    "measure": 'fill="none" stroke="{accent}" stroke-width="0.22"',
    "tint": 'fill="{tint}" stroke="none"',
    "blank": 'fill="{paper}" stroke="none"',
    "dart": 'fill="none" stroke="{ink}" stroke-width="0.35" stroke-dasharray="1.5 0.9"',
    "slit": 'fill="none" stroke="{ink}" stroke-width="0.6"',
    "mark": 'fill="none" stroke="{ink}" stroke-width="0.3" stroke-linejoin="round"',
    "fill": 'fill="{colour}" stroke="none"',
    "tiled": 'fill="url(#{colour})" stroke="none"',
    "grid": 'fill="none" stroke="{grid}" stroke-width="0.1"',
    "fifth": 'fill="none" stroke="{quiet}" stroke-width="0.24"',
    "symbol": f'fill="none" stroke="{{symbol}}" stroke-width="0.34" {_ROUND}',
    "light": f'fill="none" stroke="{{paper}}" stroke-width="0.26" {_ROUND}',
    "box": 'fill="none" stroke="{ink}" stroke-width="0.75" stroke-linejoin="miter"',
    "veil": 'fill="{veil}" fill-opacity="0.66" stroke="none"',
    "centre": 'fill="{accent}" stroke="none"',
    "strand": 'fill="none" stroke="{colour}" stroke-width="{width}" stroke-linejoin="round"',
    "dashes": 'fill="none" stroke="{colour}" stroke-width="{width}" stroke-dasharray="0.9 0.7"',
    "steel": f'fill="{{steel}}" stroke="{{quiet}}" stroke-width="0.22" {_BENT}',
    "tool": f'fill="none" stroke="{{quiet}}" stroke-width="0.5" {_BENT}',
    "thread": f'fill="none" stroke="{{ink}}" stroke-width="0.42" {_BENT}',
    "arrow": f'fill="{{accent}}" stroke="{{accent}}" stroke-width="0.3" {_BENT}',
    "guide": 'fill="none" stroke="{grid}" stroke-width="0.14" stroke-dasharray="0.8 0.7"',
}
"""How each pen of `figures.model.Stroke` draws."""

LETTERINGS = {
    "letter": 'font-family="Sheet Sans, sans-serif" font-size="3.1" font-weight="700" fill="{accent}"',
    "count": 'font-family="Sheet Sans, sans-serif" font-size="2.3" fill="{ink}"',
    "word": 'font-family="Sheet Serif, serif" font-size="2.9" font-style="italic" fill="{quiet}"',
    "figure": 'font-family="Sheet Sans, sans-serif" font-size="2.9" font-weight="600" fill="{ink}"',
}
"""How each kind of `figures.model.Lettering` is set."""


def pen(stroke: Stroke, known: Mapping[str, str]) -> Markup:
    """The attributes of a path."""
    colour = known.get(stroke.colour) or stroke.colour
    return Markup(PENS[stroke.kind]).format_map({**known, "colour": colour, "width": stroke.width})


def lettering(of: Lettering, known: Mapping[str, str]) -> Markup:
    """The attributes of a text."""
    return Markup(LETTERINGS[of.kind]).format_map(known)
