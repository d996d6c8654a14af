"""Pages for paper."""

from __future__ import annotations

from walewright.cli.formats.format import Format, Made, Pattern


def _make(pattern: Pattern) -> Made:
    from walewright.sheet import pdf

    return pdf(pattern.page, pattern.sheet)


FORMAT = Format(".pdf", _make)
