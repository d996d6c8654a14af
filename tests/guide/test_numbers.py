"""Figures as they are printed."""

from __future__ import annotations

import pytest

from walewright.guide.numbers import cm, graded, inches, listed, ordinal, sentence


@pytest.mark.parametrize(("value", "text"), [(47.1, "47"), (47.3, "47.5"), (0.1, "0"), (-0.1, "0"), (100, "100")])
def test_centimetres_go_to_the_half(value: float, text: str) -> None:
    assert cm(value) == text


def test_centimetres_to_a_tenth() -> None:
    assert cm(30.84, 0.1) == "30.8"


@pytest.mark.parametrize(("value", "text"), [(2.54, "1"), (47, "18½"), (1.3, "½"), (0, "0"), (30.5, "12"), (1.9, "¾")])
def test_inches_go_to_the_quarter(value: float, text: str) -> None:
    assert inches(value) == text


def test_graded() -> None:
    assert graded(["78", "84", "90"]) == "78 (84: 90)"
    assert graded(["78", "78"]) == "78"
    assert graded(["78"]) == "78"


def test_words() -> None:
    assert [ordinal(n) for n in (1, 2, 3, 4, 11, 12, 13, 21)] == ["1st", "2nd", "3rd", "4th", "11th", "12th", "13th", "21st"]
    assert listed(["a", "b", "c"]) == "a, b and c"
    assert sentence("upper_arm") == "Upper arm"
