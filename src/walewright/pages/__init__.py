"""pages: what the sheet looks like. Knows nothing of knitting; everything printed comes worded from the stages before.

sheet = pages.compose(design, counts, instructions, proof, pages.PageOptions(paper="a4", units="cm"))
page = pages.html(sheet)
data, warnings = pages.pdf(page, sheet)
"""

from __future__ import annotations

from walewright.pages.compose import compose
from walewright.pages.model import PageOptions, Sheet
from walewright.pages.render import html, pdf

__all__ = ["PageOptions", "Sheet", "compose", "html", "pdf"]
