"""Typography: texts as they are printed, whoever typed them."""

from __future__ import annotations

import re

_APOSTROPHE = re.compile(r"(?<=\w)'(?=\w)|(?<=s)'(?=\s)")
"""Within a word or behind a plural; not a pair of them, nor the mark of feet."""


def typographic(text: str) -> str:
    """A text with the apostrophes of print: a keyboard has one mark for all."""
    return _APOSTROPHE.sub("\N{RIGHT SINGLE QUOTATION MARK}", text)
