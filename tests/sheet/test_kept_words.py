"""No line of a page of paper ends between a figure and its unit."""

from __future__ import annotations

from xml.etree import ElementTree

import pytest

from walewright.sheet.kept_words import keep_figures

KEPT = "\N{NO-BREAK SPACE}"


def kept(words: str) -> str:
    page = ElementTree.fromstring(f"<div>{words}</div>")
    keep_figures(page)
    return ElementTree.tostring(page, encoding="unicode")[5:-6].replace(KEPT, "~")


@pytest.mark.parametrize(
    ("words", "as_set"),
    [
        ("a tail of 45 (50: 55) cm.", "a tail of 45 (50: 55)~cm."),
        ("decrease 1 st, 2 sts in", "decrease 1~st, 2~sts in"),
        ("outwards: L 1, L 2 and R 12", "outwards: L~1, L~2~and R~12"),
        ("accurate to about 5 %", "accurate to about 5~%"),
        ("to RC 24, COR", "to RC~24, COR"),
        ("2 M, RZ 20, 3½ in", "2~M, RZ~20, 3½~in"),
        # Across a tag within the line, not from one cell to the next.
        ("<b>45 (50: 55)</b> cm", "<b>45 (50: 55)</b>~cm"),
        ("RC<b> <span>132 (136: 140)</span></b>", "RC<b>~<span>132 (136: 140)</span></b>"),
        ("<p>row 4</p> cm", "<p>row~4</p> cm"),
        # What ends a phrase stays with the word before it; a row of figures may be broken.
        ("carriage at tension 8", "carriage at tension~8"),
        ("columns 1 to 4 and 5 to 8 across", "columns 1~to 4~and 5~to 8 across"),
        # A long word behind a figure goes to the next line.
        ("12 needles", "12 needles"),
        ("<style>a { 1 cm }</style>", "<style>a { 1 cm }</style>"),
    ],
)
def test_figures_stay_with_their_units(words: str, as_set: str) -> None:
    assert kept(words) == as_set
