"""Pages for paper."""

from __future__ import annotations

from walewright.cli.formats.format import Format, Made, Pattern


def _make(pattern: Pattern) -> Made:
    from walewright.sheet import on_paper

    laid = on_paper(pattern.page, pattern.sheet)
    return Made(laid.data, laid.warnings, laid.pages)


FORMAT = Format(".pdf", _make)
