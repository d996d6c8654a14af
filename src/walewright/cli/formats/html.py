"""Pages for a browser."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.cli.formats.format import Format, Made, Pattern
from walewright.record import replace
from walewright.report.model import Diagnostic, Severity, Span, diagnosed


def _make(pattern: Pattern) -> Made:
    return Made(pattern.browser_page.encode(), tuple(_not_picked(pattern)))


def _not_picked(pattern: Pattern) -> Iterator[Diagnostic]:
    """The sizes that cannot be picked in it, for their lines do not read back, each with what is wrong there. The graded pattern is
    proven all the same."""
    place = (Span(pattern.outcome.file, 0, 0), "")
    for size, (copy, faults) in zip(pattern.outcome.result()[0].sizes, pattern.bench_copies, strict=True):
        if copy is None:
            yield diagnosed("size-not-picked", place, severity=Severity.WARNING, size=size)
            yield from (replace(fault, severity=Severity.WARNING) for fault in faults)


FORMAT = Format(".html", _make)
