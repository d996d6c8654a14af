"""Headings and heads that stand on every page, and the cover."""

from __future__ import annotations

PAGE = {
    # Between the number of a page and that of all, and before that of another page.
    "page/of": " of ",
    "page/page": "p.",
    "page/hand-operated": "Pattern for the hand-operated knitting machine",
    "page/sizes": "Sizes and measurements",
    "page/yours": "This copy was regraded for you from the source's own edition, which stays as it is.",
    "page/materials": "Materials, tension and machine",
    "page/needed": "Also needed",
    "page/work-by-hand": "Work by hand",
    "page/notes": "Notes",
    "page/abbreviations": "Abbreviations",
    "page/key": "Key",
    "page/symbol": "Symbol",
    "page/in-text": "In text",
    "page/what-it-is": "What it is",
    "page/what-is-done": "What is done",
    "page/measure": "Measure",
    "page/done": "Done",
    "page/step": "Step",
    "page/rc": "RC",
    "page/carriage": "Carriage",
    "page/left": "left",
    "page/right": "right",
    "page/at-this-row": "At this row",
    "page/stitches": "Stitches",
    "page/explained-elsewhere": "Explained elsewhere",
    "page/trouble": "When things go wrong",
    "page/regrade": "To regrade",
    "page/checked": "How the pattern was checked",
    "page/colophon": "{title}. Set from one source by {made}{date:?, {date}}. Cautions after the health and safety page for "
    "machine knitters at kcguild.org.uk.",
    "contents/reading": "Reading the pattern",
    "cover/size": "Size",
    "cover/choice": "{taken}; there is also {others:and}",
    "cover/sizes": "Sizes",
    "cover/yarn": "Yarn",
    "cover/machine": "{machine}, {needles} needles",
    "cover/difficulty": "Difficulty",
}
