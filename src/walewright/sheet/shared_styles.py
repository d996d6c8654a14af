"""A page of paper whose parts share their styles, and whose style sheet is read once for many pages.

The renderer works out the style of an element once for all that are matched by the same rules below the same parent. An element
with an anchor has a style of its own, and so has whatever lies in it, and so has each drawing for its size. On a heading an anchor
parts nothing from others, and drawings of one size share a rule.
"""

from __future__ import annotations

import re
from functools import lru_cache
from xml.etree.ElementTree import Element

import weasyprint

_NAMED = re.compile(r"#([A-Za-z][\w-]*)")
"""An element in a selector, by its anchor; colours are found by it too, which does no harm."""

_HEADINGS = {"h1", "h2", "h3", "h4"}
_HOLDERS = {"section", "div"}

_DRAWING = "{http://www.w3.org/2000/svg}svg"
_SIZED = "of-size-"

_SHEETS_KEPT = 4


def with_anchors_on_headings(page: Element) -> None:
    """Move the anchor of a part to the heading that it begins with, but for those that a style sheet of the page names."""
    named = {name for sheet in page.iter("style") for name in _NAMED.findall(sheet.text or "")}
    for holder in page.iter():
        anchor = holder.get("id")
        if anchor is None or holder.tag not in _HOLDERS or anchor in named:
            continue
        heading = _heading(holder)
        if heading is not None and heading.get("id") is None:
            heading.set("id", anchor)
            del holder.attrib["id"]


def _heading(holder: Element) -> Element | None:
    """The heading that stands first in it, before any other word."""
    for element in holder.iter():
        if element.tag in _HEADINGS:
            return element
        if (element.text or "").strip():
            return None
    return None


def own_sheets(page: Element) -> list[weasyprint.CSS]:
    """The style sheets of the page's head, taken out of its tree and read, after the sizes of its drawings; none where one has
    faces, which belong to one page. To the renderer all of them are a reader's sheets and not the page's own: they hold as before
    only while the page itself says nothing of looks."""
    head = page.find("head")
    own = [] if head is None else head.findall("style")
    texts = [sheet.text or "" for sheet in own]
    if head is None or any("@font-face" in text for text in texts):
        return []
    for sheet in own:
        head.remove(sheet)
    return [weasyprint.CSS(string=_sizes_of_drawings(page)), *map(_read, texts)]


def _sizes_of_drawings(page: Element) -> str:
    """The sizes that drawings are given in their own words, as rules that weigh no more than those do."""
    sizes: dict[tuple[str, str], str] = {}
    for drawing in page.iter(_DRAWING):
        if "viewBox" not in drawing.attrib:
            # Ruled lines, which get their size when pages are laid out.
            continue
        size = drawing.attrib.pop("width", ""), drawing.attrib.pop("height", "")
        drawing.set("class", f"{drawing.get('class', '')} {sizes.setdefault(size, f'{_SIZED}{len(sizes)}')}")
    rules = (f"svg:where(.{name}) {{ width: {wide or 'auto'}; height: {high or 'auto'} }}" for (wide, high), name in sizes.items())
    return "\n".join(rules)


@lru_cache(_SHEETS_KEPT)
def _read(text: str) -> weasyprint.CSS:
    return weasyprint.CSS(string=text)
