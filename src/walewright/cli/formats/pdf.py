"""Pages for paper."""

from __future__ import annotations

from walewright.cli.formats.format import Format, Made, Pattern, on_pages


def _make(pattern: Pattern) -> Made:
    from walewright.sheet import on_paper

    laid = on_paper(pattern.page, pattern.sheet)
    return on_pages(pattern, laid.data, laid.warnings, laid.pages)


FORMAT = Format(".pdf", _make)
