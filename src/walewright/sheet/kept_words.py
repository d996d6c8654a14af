"""Figures of a page of paper stay with what they count: no line ends between "50 (60: 70)" and "cm", between "L" and "1".

A rule of setting, whatever the language: a figure takes a word of few letters behind it along, such words are units and
abbreviations; a capital by itself, and two, takes the figure behind it along; and the last figure of a phrase stays with the word
before it, "at tension 8".
"""

from __future__ import annotations

import re
from xml.etree.ElementTree import Element

from walewright.record import record

_WITHIN_A_LINE = frozenset({"a", "b", "em", "i", "small", "span", "strong", "sub", "sup"})
_NO_WORDS = frozenset({"style", "script", "svg", "title", "{http://www.w3.org/2000/svg}svg"})

_KEPT = re.compile(
    r"(?<=[\d)½¼¾]) (?=[^\W\d_]{1,3}\b|%)"  # 50 (60: 70) cm, 2 sts, 4 M, 5 %
    r"|(?<=\b[A-Z]) (?=\d)|(?<=\b[A-Z]{2}) (?=\d)"  # L 1, RC 20
    r"|(?<=[^\W\d_]) (?=\d{1,3}(?:[.,;:)]|$))"  # at tension 8.
)


def keep_figures(page: Element) -> None:
    """Put no-break spaces into the words of the page's tree."""
    for line in _lines(page):
        kept = _KEPT.sub("\N{NO-BREAK SPACE}", "".join(word.text for word in line))
        for word in line:
            word.put(kept[: len(word.text)])
            kept = kept[len(word.text) :]


@record
class _Words:
    """Words in an element, or behind it."""

    element: Element
    behind: bool

    @property
    def text(self) -> str:
        return (self.element.tail if self.behind else self.element.text) or ""

    def put(self, text: str) -> None:
        if self.behind:
            self.element.tail = text
        else:
            self.element.text = text


def _lines(page: Element) -> list[list[_Words]]:
    """The words of the page, those of one line of text together, through all that is marked within it."""
    lines: list[list[_Words]] = [[]]

    def walk(element: Element) -> None:
        if not isinstance(element.tag, str) or element.tag in _NO_WORDS:
            lines.append([])
            return
        within = element.tag in _WITHIN_A_LINE
        if not within:
            lines.append([])
        if element.text:
            lines[-1].append(_Words(element, behind=False))
        for child in element:
            walk(child)
            if child.tail:
                lines[-1].append(_Words(child, behind=True))
        if not within:
            lines.append([])

    walk(page)
    return lines
