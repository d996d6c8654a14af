"""A format, and the pattern that it is made of."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Literal

from walewright.record import record

if TYPE_CHECKING:
    from walewright.bench_copies import BenchCopy
    from walewright.guide.model import Guide
    from walewright.pipeline import Outcome
    from walewright.report.model import Diagnostic
    from walewright.sheet import PageOptions, ProvenPattern, Sheet
    from walewright.sheet.themed import Theme
    from walewright.trade.papers import PaperSize


@dataclass(frozen=True)
class Pattern:
    """A proven outcome, to be printed in the language of `guide`. `date` is ISO; `theme` a publisher's own,
    if there is one. The sheet and its HTML are made once, when the first format asks for them."""

    outcome: Outcome
    guide: Guide
    paper: PaperSize
    units: Literal["cm", "in", "both"]
    version: str
    date: str
    theme: Theme | None = None
    large_print: bool = False

    @cached_property
    def options(self) -> PageOptions:
        """How its pages are wanted."""
        from walewright.sheet import PageOptions

        return PageOptions(self.paper, self.units, self.version, self.date, self.large_print)

    @cached_property
    def proven(self) -> ProvenPattern:
        from walewright.sheet import ProvenPattern

        outcome = self.outcome
        return ProvenPattern(*outcome.result(), fit=outcome.fit, picture=outcome.picture, glued=outcome.glued)

    @cached_property
    def sheet(self) -> Sheet:
        from walewright.sheet import compose

        return compose(self.guide, self.proven, self.options)

    @cached_property
    def page(self) -> str:
        from walewright.sheet import html
        from walewright.sheet.themed import PLAIN

        return html(self.sheet, self.theme or PLAIN, self.large_print)

    @cached_property
    def browser_page(self) -> str:
        """The page for a browser: with the bench copy of each size whose words were read back."""
        from walewright.sheet import browser_html, picked_sizes
        from walewright.sheet.themed import PLAIN

        copies = {size: copy.instructions for size, (copy, _) in enumerate(self.bench_copies) if copy is not None}
        picked = picked_sizes(self.guide, self.proven, copies, self.sheet, self.units)
        return browser_html(self.sheet, picked, self.theme or PLAIN, self.large_print)

    @cached_property
    def bench_copies(self) -> tuple[tuple[BenchCopy | None, tuple[Diagnostic, ...]], ...]:
        """The bench copies of all sizes, each read back; or why one cannot be made."""
        from walewright import bench_copies

        return tuple(bench_copies.bench_copy(self.outcome, size) for size in range(len(self.outcome.plans)))

    @property
    def bench_copy(self) -> tuple[BenchCopy | None, tuple[Diagnostic, ...]]:
        """That of its one size."""
        (copy,) = self.bench_copies
        return copy


PAGES = frozenset({"paper", "units", "theme", "print"})
"""How pages are wanted: what of it a format may depend on."""


@record
class Made:
    """The bytes of a file, what its reader has to know of it, and on how many pages it lies; 0 for what is not on paper."""

    data: bytes
    doubts: tuple[Diagnostic, ...] = ()
    pages: int = 0


def on_pages(pattern: Pattern, data: bytes, warnings: tuple[str, ...], pages: int) -> Made:
    """What was set on paper, with all that the page printer warned of."""
    from walewright.report.model import Severity, Span, diagnosed

    place = (Span(pattern.outcome.file, 0, 0), "")
    told = (diagnosed("page-printer", place, helps=("look-at-it",), severity=Severity.WARNING, warning=w) for w in warnings)
    return Made(data, tuple(told), pages)


@record
class Format:
    """`suffix`: what the name of its files ends in, with the stop. `varies_with`: what of the wanted pages its bytes depend on."""

    suffix: str
    make: Callable[[Pattern], Made]
    refused: Callable[[Pattern], tuple[Diagnostic, ...]] = lambda _: ()
    """Why it cannot be made of that pattern."""
    varies_with: frozenset[str] = PAGES
