"""Stitches that are taken up twice, edges joined to themselves, and loops that cannot be gathered."""

from __future__ import annotations

import pytest
from shaped import only, piece, told

BACK, FRONT = piece(name="back"), piece()
NECK = piece("neck 10 cm wide, 4 cm deep, round", name="back")


@pytest.mark.parametrize(
    "statements",
    [
        ("join back end to front end, linked", "join back end to front end, linked"),
        ("join back end to front end, grafted", "join front end to back start, linked"),
        ("band one with collar along back end", "band two with collar along back end"),
        ("band one with collar along back end + back end",),
        ("band one with collar along back end", "join back end to front end, grafted"),
    ],
)
def test_loops_are_taken_up_once(statements: tuple[str, ...]) -> None:
    assert told(BACK, FRONT, *statements) == ["taken-twice"]


@pytest.mark.parametrize(
    "statements",
    [
        ("join back end to front end, linked", "join back start to front start, linked"),
        ("band one with collar along back end", "band two with collar along front end"),
        # Sewing takes no loops.
        ("join back end to front end", "join back start to front end"),
    ],
)
def test_other_loops_are_free(statements: tuple[str, ...]) -> None:
    assert told(BACK, FRONT, *statements) == []


def test_a_part_shares_the_loops_of_its_edge() -> None:
    band = "band one with collar along back neck"
    assert told(NECK, band, "band two with collar along back neck_left") == ["taken-twice"]
    assert told(NECK, "band one with collar along back neck_left", "band two with collar along back neck_right") == []


def test_copies_have_loops_of_their_own() -> None:
    pair = piece(name="back", more=", knit 2")
    assert told(pair, "band one with collar along back end", "band two with collar along back end") == []
    twice = ("join back end to back start, linked",) * 2
    assert told(pair, *twice) == ["taken-twice"]


def test_an_edge_is_not_joined_to_itself() -> None:
    said = only(BACK, "join back start to back start, linked")
    assert (said.code, said.message) == ("joined-to-itself", "back start is put together with itself")
    assert told(piece(name="back", more=", knit 2"), "join back start to back start, linked") == []
    sides = piece("edges straight to top called side", name="back")
    assert told(sides, "join back side to back side") == []
    one = piece("left edge straight to top called side", name="back")
    assert told(one, "join back side to back side") == ["joined-to-itself"]


def test_loops_of_parts_are_not_gathered() -> None:
    assert told(piece("neck 10 cm wide, 4 cm deep, round", end="gathered")) == ["gathered-in-parts"]
    assert told(piece("opening a 2 cm wide from low to top", end="gathered")) == ["gathered-in-parts"]
    assert told(piece("opening a 2 cm wide from low to high", end="gathered")) == []


def test_a_cord_lies_in_something() -> None:
    cord = "cord front 90 cm long"
    assert told(FRONT, cord) == ["cord-through-nothing"]
    assert told(piece("slot a 2 cm wide at low, cast off"), cord) == []
    folded = "edging channel in plain, 3 cm deep, folded, knitted first"
    assert told(folded, piece(start="40 cm wide on waste yarn, with channel"), cord) == []


def test_a_cast_off_needs_rows_below() -> None:
    said = only(piece("edges cast off 4 cm then slope to 20 cm wide at top"))
    assert said.code == "cast-off-at-start"
    assert said.helps[0] == "start the piece that much narrower"
    assert told(piece("edges straight to low", "edges cast off 4 cm then slope to 20 cm wide at top")) == []
