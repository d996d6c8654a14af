"""Every sentence of the guide with facts in its places, to be read; and what holds of the texts that have none."""

from __future__ import annotations

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.guide.samples import every_sentence
from walewright.figures.hands import TECHNIQUES
from walewright.guide.english import LANGUAGE
from walewright.guide.model import HowToText


def test_what_is_said(snapshot: SnapshotAssertion) -> None:
    assert "\n".join(every_sentence()) == snapshot


def test_terms(snapshot: SnapshotAssertion) -> None:
    assert "\n".join(f"{key}: {one}, {many}" for key, (one, many) in LANGUAGE.words.terms.items()) == snapshot


def test_the_language_has_a_name_that_a_page_knows() -> None:
    assert LANGUAGE.code == "en"


HOW_TO = [pytest.param(text, id=key) for key, text in LANGUAGE.how_to.items()]


@pytest.mark.parametrize("text", HOW_TO)
def test_a_how_to_has_a_heading_sentences_and_what_its_drawing_shows(text: HowToText) -> None:
    """A heading is a few words, without a stop; the text is sentences; what is shown follows a heading and a colon."""
    assert text.title[0].isupper()
    assert len(text.title) < 50
    assert not text.title.endswith(".")
    assert text.text[0].isupper()
    assert text.text.endswith((".", "”", ")"))
    assert len(text.text) > len(text.title) + 20
    assert not text.shown[0].isupper()
    assert not text.shown.endswith(".")
    assert len(text.shown) < len(text.text)


def test_every_technique_is_told_and_no_other() -> None:
    assert [technique.key for technique in TECHNIQUES] == list(LANGUAGE.how_to)
    assert len({text.title for text in LANGUAGE.how_to.values()}) == len(TECHNIQUES)


def test_advice_has_a_heading_and_sentences() -> None:
    for advice in LANGUAGE.advice.values():
        assert isinstance(advice.title, str)
        assert not advice.title.endswith(".")
        assert isinstance(advice.lines, tuple)
        assert [line for line in advice.lines if not line.endswith(".")] == []


def test_what_is_done_in_order_is_numbered() -> None:
    """A jam, a dropped stitch and a swatch are worked through step by step; what holds at all times has no order."""
    assert {key for key, advice in LANGUAGE.advice.items() if advice.ordered} == {"jam", "dropped", "swatch"}
    assert set(LANGUAGE.advice) == {"jam", "dropped", "row-count", "length", "safety", "hood", "swatch"}
