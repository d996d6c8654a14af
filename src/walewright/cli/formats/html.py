"""Pages for a browser."""

from __future__ import annotations

from walewright.cli.formats.format import Format, Made, Pattern


def _make(pattern: Pattern) -> Made:
    return Made(pattern.browser_page.encode())


FORMAT = Format(".html", _make)
