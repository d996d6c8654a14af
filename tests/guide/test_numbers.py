"""Figures as they are printed."""

from __future__ import annotations

import math
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from walewright.guide.english import LANGUAGE
from walewright.guide.numbers import cm, graded, inches, length, metres, sentence, whole_grams


@pytest.mark.parametrize(("value", "text"), [(47.1, "47"), (47.3, "47.5"), (0.1, "0"), (-0.1, "0"), (100, "100")])
def test_centimetres_go_to_the_half(value: float, text: str) -> None:
    assert cm(value) == text


def test_centimetres_to_a_tenth() -> None:
    assert cm(30.84, 0.1) == "30.8"


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (2.54, "1"),
        (47, "18½"),
        (1.3, "½"),
        (0, "0"),
        (30.5, "12"),
        (1.9, "¾"),
        (0.7, "¼"),
        (-1.9, "-¾"),
        (-47, "-18½"),
        (100, "39¼"),
    ],
)
def test_inches_go_to_the_quarter(value: float, text: str) -> None:
    assert inches(value) == text


@given(st.floats(-200, 200))
def test_what_is_printed_is_near(value: float) -> None:
    """Within half of the step; and the nearest half is never minus nothing."""
    assert abs(float(cm(value)) - value) <= 0.25 + 1e-6
    assert cm(value) != "-0"
    assert abs(float(cm(value, 0.1)) - value) <= 0.05 + 1e-6
    whole, quarters = re.fullmatch(r"-?(\d*)([¼½¾]?)", inches(value)).groups()  # type: ignore[union-attr]
    printed = int(whole or 0) + {"": 0, "¼": 0.25, "½": 0.5, "¾": 0.75}[quarters]
    assert abs(printed * 2.54 - abs(value)) <= 2.54 / 8 + 1e-6
    assert inches(value).startswith("-") == (value < -2.54 / 8)


def test_halves_go_up() -> None:
    """Always, not to the nearest even number; and what is a half but for the last binary places too."""
    assert [cm(n / 100) for n in (25, 75, 125, 4475)] == ["0.5", "1", "1.5", "45"]
    assert [cm(value, 0.1) for value in (0.15, 0.25, 0.35)] == ["0.2", "0.3", "0.4"]
    assert cm(0.75 - 1e-12) == "1"


def test_a_length_in_units() -> None:
    assert length(47, "cm") == ("47", "")
    assert length(47, "in") == ("18½", "")
    assert length(47, "both") == ("47", "18½")


@given(st.lists(st.floats(0, 900), min_size=1, max_size=4))
def test_grams_add_up(parts: list[float]) -> None:
    """Each part within a gram, all of it rounded up, and no part goes up before one that has more to lose."""
    *found, whole = whole_grams(*parts)
    assert sum(found) == whole
    assert -1e-6 <= whole - sum(parts) < 1
    assert all(abs(gram - part) < 1 for gram, part in zip(found, parts, strict=True))
    lost = [part - math.floor(part + 1e-9) for part in parts]
    up = [gram > part + 1e-9 for gram, part in zip(found, parts, strict=True)]
    if any(up) and not all(up):
        assert min(of for of, rises in zip(lost, up, strict=True) if rises) >= max(
            (of for of, rises in zip(lost, up, strict=True) if not rises), default=0
        )


def test_grams_of_a_garment() -> None:
    assert whole_grams(310.5, 20.25, 33.25) == (311, 20, 33, 364)
    assert whole_grams(2.0, 3.0) == (2, 3, 5)
    assert whole_grams(0.1 + 0.2, 0.7) == (0, 1, 1)


@pytest.mark.parametrize(("value", "text"), [(0, "0"), (0.1, "10"), (10, "10"), (10.1, "20"), (995, "1000")])
def test_metres_go_up_to_ten(value: float, text: str) -> None:
    assert metres(value) == text


def test_graded() -> None:
    assert graded(["78", "84", "90"]) == "78 (84: 90)"
    assert graded(["78", "78"]) == "78"
    assert graded(["78"]) == "78"
    assert graded(["78", "84"]) == "78 (84)"
    assert graded(["78", "84", "78"]) == "78 (84: 78)"


def test_words() -> None:
    assert [LANGUAGE.ordinal(n) for n in (1, 2, 3, 4, 10, 11, 12, 13, 14, 21, 22, 23, 100, 111, 112, 113, 114, 121)] == [
        "1st",
        "2nd",
        "3rd",
        "4th",
        "10th",
        "11th",
        "12th",
        "13th",
        "14th",
        "21st",
        "22nd",
        "23rd",
        "100th",
        "111th",
        "112th",
        "113th",
        "114th",
        "121st",
    ]
    assert LANGUAGE.listed(["a", "b", "c"]) == "a, b and c"
    assert sentence("upper_arm") == "Upper arm"
    assert sentence(" RC_of hem ") == "RC of hem"
    assert sentence("") == ""
