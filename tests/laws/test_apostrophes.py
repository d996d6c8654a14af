"""Printed words have one kind of apostrophe, whoever wrote them."""

from __future__ import annotations

import re

import pytest

from walewright.languages import known, printed
from walewright.report.typography import typographic

STRAIGHT = re.compile(r"(?<=\w)'(?=\w)|(?<=s)'(?=\s)")


@pytest.mark.parametrize("name", known())
def test_no_printed_words_have_a_typewriters_apostrophe(name: str) -> None:
    tongue = printed(name)
    writing, guide = tongue.writing, tongue.guide
    told = {
        **writing.sentences,
        **writing.prose.phrases,
        **guide.words.phrases,
        **{key: how.text for key, how in guide.how_to.items()},
    }
    advised = {f"{key} {n}": line for key, advice in guide.advice.items() for n, line in enumerate(advice.lines)}
    assert [key for key, text in {**told, **advised}.items() if STRAIGHT.search(str(text))] == []


def test_an_authors_apostrophes_are_printed_as_such() -> None:
    assert typographic("the wearer's left, the sleeves' ends") == "the wearer’s left, the sleeves’ ends"
    assert typographic("a gauge of 5' 6, 'so called'") == "a gauge of 5' 6, 'so called'"
