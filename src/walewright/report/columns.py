"""How many columns letters take in a terminal, and how a line of a source is shown there without harm."""

from __future__ import annotations

import unicodedata

TAB = 4
"""Columns of a tab: the text shown has blanks in its place, so that marks stand under what they mark."""

WIDEST = 110
"""Columns of a source line that are shown; of a longer one, what is around the mark."""

_CONTROL_PICTURES = 0x2400
_TURNS_DIRECTION = frozenset("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")


def shown(letter: str) -> str:
    """The letter as it may be sent to a terminal: control characters as their pictures, so that none takes effect."""
    if letter.isprintable():
        return letter
    code = ord(letter)
    if letter == "\t":
        return " " * TAB
    if code < 0x20:
        return chr(_CONTROL_PICTURES + code)
    if unicodedata.category(letter) in ("Cc", "Cs", "Zl", "Zp") or letter in _TURNS_DIRECTION:
        return "\N{REPLACEMENT CHARACTER}"
    return letter


def harmless(text: str) -> str:
    """A text in which no letter takes effect in a terminal but line breaks."""
    return text if text.isprintable() else "".join(c if c == "\n" else shown(c) for c in text)


def named(name: str) -> str:
    """A file's name as it may be sent to a terminal. It has no lines of its own, so line breaks are shown like all other control
    characters."""
    return name if name.isprintable() else "".join(shown(c) for c in name)


def width(text: str) -> int:
    """Columns of a text that has been through `shown`: two for wide letters, none for marks above others (Unicode TR 11)."""
    if text.isascii():
        return len(text)
    return sum(_width(c) for c in text)


def _width(letter: str) -> int:
    if unicodedata.category(letter) in ("Mn", "Me", "Cf"):
        return 0
    return 2 if unicodedata.east_asian_width(letter) in ("W", "F") else 1
