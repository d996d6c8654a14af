"""What several texts begin with is printed once."""

from __future__ import annotations

import pytest

from walewright.design.model.credit import Credit
from walewright.guide.english import LANGUAGE
from walewright.sheet.finished import credit_words
from walewright.sheet.shared import shared


@pytest.mark.parametrize(
    ("texts", "first", "rest"),
    [
        (("fine wool, blue", "fine wool, sand"), "fine wool", ("blue", "sand")),
        (("fine wool, blue", "fine cotton, blue"), "", ("fine wool, blue", "fine cotton, blue")),
        # Half a word is no part, and nothing is said of a yarn that has no more than the first part.
        (("fine wool", "fine wood"), "", ("fine wool", "fine wood")),
        (("fine wool", "fine wool, sand"), "", ("fine wool", "fine wool, sand")),
        (("fine wool, blue",), "", ("fine wool, blue",)),
        ((), "", ()),
    ],
)
def test_shared(texts: tuple[str, ...], first: str, rest: tuple[str, ...]) -> None:
    assert shared(texts, ", ") == (first, rest)


def test_a_source_is_named_once_with_its_sizes() -> None:
    many = Credit(tuple(f"A table; shown in inches; shoe {size}" for size in ("1-3", "4-6", "7-9")))
    assert credit_words(LANGUAGE, many) == "Source: A table; shown in inches; shoe 1-3, 4-6, 7-9"
    apart = Credit(("A table", "another one"))
    assert credit_words(LANGUAGE, apart) == "Source: A table; another one"
