"""Whole journeys in a real browser, from the pictures to the file that is taken away."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from pypdf import PdfReader

from tests.serve.served import KnittersHand
from tests.serve.test_journey import JOURNEYS

if TYPE_CHECKING:
    from playwright.sync_api import Browser

MOST_INTERACTIONS = 12


def _filled(hand: KnittersHand, name: str, text: str) -> None:
    if name == "size" or name.startswith("choose:"):
        hand.choose(name, text)
    else:
        hand.fill(name, text)


@pytest.mark.parametrize("name", JOURNEYS)
def test_a_garment_from_its_picture_to_the_page(name: str, hand: KnittersHand, address: str, tmp_path: Path) -> None:
    hand.page.goto(address)
    hand.click(f"text={name.capitalize()}")
    hand.settled("proven")
    for field, text in JOURNEYS[name].items():
        _filled(hand, field, text)
    hand.follows()
    assert "Yarn to buy" in hand.settled("proven")
    assert hand.page.locator(".drawings svg").count() >= 1
    hand.take("text=Pattern for a browser").save_as(tmp_path / "page.html")
    assert (tmp_path / "page.html").read_text(encoding="utf-8").startswith("<!")
    assert hand.take("text=Keep my figures").suggested_filename == f"{name}.figures.json"
    for field, text in JOURNEYS[name].items():
        assert hand.value(field) == text
    assert hand.complaints == []


def test_a_cardigan_from_an_own_swatch_takes_few_steps(hand: KnittersHand, address: str, tmp_path: Path) -> None:
    hand.page.goto(address)
    hand.done += 1
    hand.click("text=Marram")
    hand.choose("size", "M")
    for field, text in (("st", "41"), ("wide", "14,3"), ("rows", "62"), ("high", "15,4")):
        hand.fill(f"swatch-{field}:plain", text)
    hand.follows()
    hand.settled("proven")
    taken = hand.take("text=Pattern to print")
    assert hand.done <= MOST_INTERACTIONS, hand.done
    taken.save_as(tmp_path / "marram.pdf")
    text = " ".join(page.extract_text() for page in PdfReader(tmp_path / "marram.pdf").pages)
    assert "28.7" in text, "the tension of the swatch is printed: 41 stitches on 14.3 cm"


ABSURD = {
    "measure:bust": ("300", "0", "-40", "broad", "1e99", '"><script>alert(1)</script>', "٣٠٠", "104 cm\u2028piece"),
    "swatch-st:plain": ("40",),
    "bed-needles": ("0",),
}


def test_ten_absurd_figures_are_told_in_words_and_stay_in_the_form(hand: KnittersHand, address: str) -> None:
    hand.page.goto(f"{address}garment/tidewrack")
    hand.settled("proven")
    _filled(hand, "measure:length", "61.5")
    for field, texts in ABSURD.items():
        for text in texts:
            _filled(hand, field, text)
            hand.follows()
            told = hand.settled("refused")
            assert "Not possible:" in told
            assert "Traceback" not in told
            assert hand.page.evaluate("document.querySelector('#found script')") is None
            assert (hand.value(field), hand.value("measure:length")) == (text, "61.5")
        hand.fill(field, "")
    hand.follows()
    hand.settled("proven")
    assert hand.complaints == []


OWN = (
    'pattern "Own scarf"\n    summary "A straight piece."\n\nsizes      one\n    length 140 cm\n\nmachine bulky\n\n'
    'yarn wool "chunky wool", 100 g = 120 m\n\nfabric plain\n    stocking stitch in wool at tension 4\n'
    "    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g\n\npiece scarf in plain\n    levels bottom 0 cm, top length\n"
    "    start 24 cm wide with e-wrap\n    edges straight to top\n    end cast off\n"
)


@pytest.mark.parametrize("scripts", [True, False])
def test_an_own_source_is_dropped_in(scripts: bool, browser: Browser, address: str) -> None:
    hand = KnittersHand(browser, scripts=scripts)
    hand.page.goto(address)
    file = {"name": "own.wale", "mimeType": "text/plain", "buffer": OWN.encode()}
    hand.page.set_input_files("#source-file", [file])  # type: ignore[list-item]
    hand.click("text=Open it")
    hand.settled("proven")
    assert hand.page.inner_text("h1") == "Own scarf"
    hand.fill("measure:length", "120")
    hand.click("text=Work it out")
    hand.settled("proven")
    assert hand.value("measure:length") == "120"
    assert hand.take("text=Plain text").suggested_filename == "yours.txt"
    hand.close()


def test_an_own_source_with_a_mistake_is_told_with_its_line(hand: KnittersHand, address: str) -> None:
    hand.page.goto(address)
    hand.page.fill("#source", OWN.replace("with e-wrap", "with nothing"))
    hand.click("text=Open it")
    assert "In line 17 of the source." in hand.settled("refused")
