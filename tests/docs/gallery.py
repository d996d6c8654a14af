"""The gallery of the shipped garments: a page of docs and a picture of each, made of the sources.

    python -m tests.docs.gallery

writes them anew.
"""

from __future__ import annotations

import sys
from pathlib import Path

from tests.whole.shipped_once import GARMENTS, compiled
from walewright import sheet
from walewright.guide.english import LANGUAGE
from walewright.guide.numbers import sentence
from walewright.pipeline import Outcome

DOCS = Path(__file__).resolve().parents[2] / "docs"
PAGE, PICTURES = DOCS / "gallery.md", DOCS / "gallery"

HEAD = (
    "# Gallery\n\nEvery garment that is shipped, as its cover shows it. Each is one source in [patterns/](../patterns/), which "
    "`walewright check` and `walewright build` take by name: `walewright build {first}.wale`. This page and its pictures are made "
    "by `python -m tests.docs.gallery`.\n"
)


def picture(outcome: Outcome) -> str:
    """The drawing of a garment's cover as an SVG."""
    made = sheet.compose(LANGUAGE, sheet.ProvenPattern(*outcome.result(), outcome.fit, glued=outcome.glued), sheet.PageOptions())
    return sheet.picture(made.cover) + "\n"


def entry(name: str, outcome: Outcome) -> str:
    """A garment: its picture and what it is."""
    design = outcome.design
    assert design is not None
    summary = next(text for kind, text in design.texts if kind == "summary")
    sizes = " · ".join(size.replace("_", " ") for size in design.sizes)
    yarns = ", ".join(yarn.label for yarn in design.yarns)
    return (
        f"\n## {design.title}\n\n![{design.title}: {summary}](gallery/{name}.svg)\n\n{summary}\n\n"
        f"Sizes {sizes}. {sentence(yarns)}; {design.machine.called}. Source: [{name}.wale](../patterns/{name}.wale).\n"
    )


def page() -> str:
    return HEAD.format(first=GARMENTS[0]) + "".join(entry(name, compiled(name)) for name in GARMENTS)


def main() -> None:
    PICTURES.mkdir(exist_ok=True)
    for old in PICTURES.glob("*.svg"):
        if old.stem not in GARMENTS:
            old.unlink()
    for name in GARMENTS:
        (PICTURES / f"{name}.svg").write_text(picture(compiled(name)), encoding="utf-8")
    PAGE.write_text(page(), encoding="utf-8")
    sys.stdout.write(f"{len(GARMENTS)} garments\n")


if __name__ == "__main__":
    main()
