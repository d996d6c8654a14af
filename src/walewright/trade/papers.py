"""Sizes of paper that pages are printed on.

A3 and A4 are those of ISO 216:2007: 297 by 420 mm and 210 by 297 mm. Letter is size A of ANSI/ASME Y14.1, 8.5 by 11 in; legal is
8.5 by 14 in (common practice). Style sheets know all of them by name: CSS Paged Media Module Level 3, section 7.1.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal, get_args

PaperSize = Literal["a4", "letter", "a3", "legal"]
PAPERS: tuple[PaperSize, ...] = get_args(PaperSize)

IN_STYLE_SHEETS: Mapping[PaperSize, str] = {"a4": "A4", "letter": "letter", "a3": "A3", "legal": "legal"}
"""What a style sheet calls each."""
