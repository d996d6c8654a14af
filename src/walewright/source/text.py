"""Texts in double quotes: how they are written in a source, and what they say."""

from __future__ import annotations

import re

ESCAPES = {'"': '"', "\\": "\\", "n": "\n"}
"""Letter after a backslash to what it stands for."""

_ESCAPE = re.compile(r"\\(.)", re.DOTALL)


def unescaped(written: str) -> str:
    """What a text with its quotes says. A backslash before any other letter stays as it is; `layout` reports it."""
    return _ESCAPE.sub(lambda found: ESCAPES.get(found[1], found[0]), written[1:-1])


def escaped(text: str) -> str:
    """The text as it is written in a source, with quotes."""
    inside = text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")
    return f'"{inside}"'
