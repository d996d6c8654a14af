"""A page of paper in fewer boxes: the same words and the same looks, with less for the renderer to lay out.

Each element within a line is a box that is styled, laid out and painted by itself. A figure that no line may part needs none where
no-break spaces keep it together; nor does the one paragraph of a table's cell, nor the one box to tick.
"""

from __future__ import annotations

import re
from xml.etree.ElementTree import Element

_KEPT_BY_SPACES = re.compile(r"[\w\s.,:;()½¼¾]*")
"""A figure in which a line could end at its spaces alone: "54 (56: 58)", "L 26 (30: 33)"."""


def with_fewer_boxes(page: Element) -> None:
    """Take such elements out of the page's tree."""
    for parent in page.iter():
        if parent.tag == "td":
            _cell(parent)
        for at, child in reversed(list(enumerate(parent))):
            if child.tag == "span" and child.get("class") == "whole" and _kept(child):
                _unwrapped(parent, at, child)


def _kept(figure: Element) -> bool:
    """Whether its spaces have kept a figure together, as they do now."""
    text = figure.text or ""
    if len(figure) or not _KEPT_BY_SPACES.fullmatch(text):
        return False
    figure.text = text.replace(" ", "\N{NO-BREAK SPACE}")
    return True


def _cell(cell: Element) -> None:
    """What lies alone in a cell, taken out of the box of its own."""
    if len(cell) != 1 or (cell.text or "").strip() or (cell[0].tail or "").strip():
        return
    only, kind = cell[0], cell.get("class", "")
    # A box that is drawn, not written, is one of its own.
    if kind == "tick" and only.get("class") == "box" and only.text:
        cell.set("class", f"{kind} {only.get('class')}")
    elif kind != "what" or only.tag != "p" or only.get("class"):
        return
    cell.text, cell[:] = only.text, list(only)


def _unwrapped(parent: Element, at: int, child: Element) -> None:
    """Its words, joined to those before it and behind it."""
    words = (child.text or "") + (child.tail or "")
    if at:
        parent[at - 1].tail = (parent[at - 1].tail or "") + words
    else:
        parent.text = (parent.text or "") + words
    del parent[at]
