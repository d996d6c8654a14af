"""Near names: what is proposed for a slip, and what is too far."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from walewright.report.near import distance, near

NAMES = ("piece", "pattern", "sizes", "levels", "neck", "neckband", "left", "right", "cm", "m")


@pytest.mark.parametrize(
    ("name", "meant"),
    [
        ("peice", "piece"),
        ("PIECE", "piece"),
        ("piec", "piece"),
        ("levles", "levels"),
        ("nekband", "neckband"),
        ("nekc", "neck"),
        ("cn", "cm"),
        ("x", None),
        ("armhole", None),
        ("", None),
    ],
)
def test_near(name: str, meant: str | None) -> None:
    assert near(name, NAMES) == meant


def test_of_equally_near_names_the_first() -> None:
    assert near("slope", ["slopf", "slopa"]) == "slopa"


words = st.text("abc", max_size=6)


@given(words, words)
def test_a_distance_is_the_same_both_ways_and_nothing_only_for_the_same(one: str, other: str) -> None:
    assert distance(one, other) == distance(other, one)
    assert (distance(one, other) == 0) == (one == other)
    assert abs(len(one) - len(other)) <= distance(one, other) <= max(len(one), len(other))


@pytest.mark.parametrize(("one", "other", "slips"), [("ab", "ba", 1), ("abc", "ac", 1), ("abc", "xbcd", 2), ("", "abc", 3)])
def test_slips(one: str, other: str, slips: int) -> None:
    assert distance(one, other) == slips
