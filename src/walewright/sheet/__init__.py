"""sheet: what is printed, put together: figures and words into one document, its templates and theme, HTML and PDF.

made = sheet.compose(guide, sheet.ProvenPattern(design, counts, instructions, proof), sheet.PageOptions(paper="a4", units="cm"))
page = sheet.html(made)
data, warnings = sheet.pdf(page, made)
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from walewright.sheet.bench import compose_bench, with_heads
    from walewright.sheet.browser import picked_sizes
    from walewright.sheet.composing import compose
    from walewright.sheet.model import PageOptions, Sheet
    from walewright.sheet.proven import ProvenPattern
    from walewright.sheet.render import anchors_of_pages, bench_html, browser_html, html, on_paper, pdf, picture

__all__ = [
    "PageOptions",
    "ProvenPattern",
    "Sheet",
    "anchors_of_pages",
    "bench_html",
    "browser_html",
    "compose",
    "compose_bench",
    "html",
    "on_paper",
    "pdf",
    "picked_sizes",
    "picture",
    "with_heads",
]

_WHERE = {
    **dict.fromkeys(("PageOptions", "Sheet"), "model"),
    **dict.fromkeys(("compose_bench", "with_heads"), "bench"),
    **dict.fromkeys(("bench_html", "browser_html", "html", "on_paper", "anchors_of_pages", "pdf", "picture"), "render"),
    "compose": "composing",
    "picked_sizes": "browser",
    "ProvenPattern": "proven",
}


def __getattr__(name: str) -> Any:
    """What is asked for, loaded then: tables on a terminal need a few words of this package, and no page."""
    if name not in _WHERE:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(f"{__name__}.{_WHERE[name]}"), name)
