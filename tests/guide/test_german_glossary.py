"""The German words of the trade: each is printed somewhere, and none that means something else."""

from __future__ import annotations

import pytest

from tests.whole.test_printed_languages import texts_of
from walewright.guide.german.glossary import AVOIDED, WORDS, TradeWord
from walewright.languages import printed

TEXTS = "\n".join((*texts_of(printed("german").writing), *texts_of(printed("german").guide)))
TOLD = "\n".join(texts_of(printed("german").telling))


@pytest.mark.parametrize("word", WORDS, ids=lambda word: word.english)
def test_a_word_is_printed(word: TradeWord) -> None:
    assert word.german.lower() in TEXTS.lower()


def test_a_word_is_listed_once() -> None:
    assert len({word.english for word in WORDS}) == len({word.german for word in WORDS}) == len(WORDS)


@pytest.mark.parametrize("word", AVOIDED)
def test_what_means_something_else_is_not_printed(word: str) -> None:
    assert word.lower() not in f"{TEXTS}\n{TOLD}".lower()
