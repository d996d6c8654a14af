"""Needles by their names, and which side is the other."""

from __future__ import annotations

import pytest

from walewright.knit.needle import needle, other, slot


@pytest.mark.parametrize(("place", "name"), [(0, "R 1"), (1, "R 2"), (99, "R 100"), (-1, "L 1"), (-2, "L 2"), (-100, "L 100")])
def test_needles_are_numbered_from_the_centre(place: int, name: str) -> None:
    assert needle(place) == name
    side, number = name.split()
    assert slot("right" if side == "R" else "left", int(number)) == place


def test_there_are_two_sides() -> None:
    assert (other("left"), other("right")) == ("right", "left")
