"""The drawing of the garment on the cover, by itself, as SVG in the house's colours."""

from __future__ import annotations

from walewright.cli.formats.format import Format, Made, Pattern


def _make(pattern: Pattern) -> Made:
    from walewright.sheet import picture

    return Made(f"{picture(pattern.sheet.cover)}\n".encode())


FORMAT = Format(".cover.svg", _make, varies_with=frozenset())
