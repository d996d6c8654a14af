"""Graded numbers as printed."""

from __future__ import annotations

import pytest

from walewright.write.english import LANGUAGE, ordinal
from walewright.write.filling import line
from walewright.write.grading import Graded
from walewright.write.sections import only

ALL = (0, 1, 2)


@pytest.mark.parametrize(
    ("values", "group", "text"),
    [
        ((78, 84, 90), ALL, "78 (84: 90)"),
        ((6, 6, 6), ALL, "6"),
        ((6, None, 6), ALL, "6 (–: 6)"),
        ((None, 6, None), ALL, "– (6: –)"),
        # Under a head for some sizes only those have to agree, but every size keeps its place in the brackets.
        ((None, 6, 6), (1, 2), "6"),
        ((None, 6, 8), (1, 2), "– (6: 8)"),
        ((7,), (0,), "7"),
    ],
)
def test_numbers(values: tuple[int | None, ...], group: tuple[int, ...], text: str) -> None:
    assert Graded(values, group).text(LANGUAGE) == text


def test_needles_and_counters() -> None:
    assert Graded((-45, 3, None), ALL).needle(LANGUAGE).text == "L 45 (R 4: –)"
    assert Graded((-45, -48, -51), ALL).needle(LANGUAGE).text == "L 45 (48: 51)"
    assert Graded((-2, None, -3), ALL).needle(LANGUAGE).text == "L 2 (–: 3)"
    assert Graded((1, -1, -2), ALL).needle(LANGUAGE).text == "R 2 (L 1: 2)"
    assert Graded((None, 1, 2), ALL).needle(LANGUAGE).text == "– (R 2: R 3)"
    assert Graded((0, 84, 110), ALL).counter(LANGUAGE).text == "000 (084: 110)"
    assert Graded((2, 3, 4), ALL).ordinal(LANGUAGE).text == "2nd (3rd: 4th)"


def test_one_is_singular_only_where_it_is_one_for_all() -> None:
    assert line("knit_rows", LANGUAGE, rows=Graded((1, None, 1), ALL)) == "knit 1 (–: 1) row"
    assert line("knit_rows", LANGUAGE, rows=Graded((1, 2, 1), ALL)) == "knit 1 (2: 1) rows"


@pytest.mark.parametrize(
    ("number", "word"), [(1, "1st"), (2, "2nd"), (3, "3rd"), (4, "4th"), (11, "11th"), (13, "13th"), (22, "22nd"), (112, "112th")]
)
def test_ordinals(number: int, word: str) -> None:
    assert ordinal(number) == word


@pytest.mark.parametrize(
    ("sizes", "head"),
    [((0,), "S only"), ((0, 1), "S, M only"), ((0, 1, 3), "S, M, 2X only"), ((0, 1, 2, 3), "")],
)
def test_heads_for_some_sizes(sizes: tuple[int, ...], head: str) -> None:
    assert only(sizes, 4, LANGUAGE.for_sizes(("S", "M", "L", "2X"))) == head
