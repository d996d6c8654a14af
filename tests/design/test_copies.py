"""How often a piece is knitted, by a name."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, design, only, piece, told

RING = "join front side to front side, each to the next all round"
LINES = ("edges straight to top called side",)


def test_a_name_is_the_number_that_it_stands_for() -> None:
    made = design(piece(*LINES, more=", knit gores", end="cast off"), "let gores = 2 * 3", RING)
    assert made.piece("front").copies == (6, 6)
    image = piece(*LINES, more=", knit gores") + "piece other in plain, mirror of front, knit gores\n"
    assert design(image, "let gores = 3").piece("other").copies == (3, 3)


def test_a_row_that_is_the_same_in_all_sizes_will_do() -> None:
    head = HEAD.replace("    length 40 42 cm\n", "    length 40 42 cm\n    gores 8 8\n")
    assert told(piece(*LINES, more=", knit gores", end="cast off"), RING, head=head) == []


def test_numbers_may_differ_by_size() -> None:
    head = HEAD.replace("sizes S M\n    length 40 42 cm\n", "sizes S M L\n    length 40 42 44 cm\n    gores 6 8 8\n")
    image = piece(*LINES, more=", knit gores", end="cast off") + "piece other in plain, mirror of front, knit 2\n"
    made = design(image, RING, head=head)
    assert made.piece("front").copies == (6, 8, 8)
    assert made.piece("other").copies == (2, 2, 2)


def test_what_is_wrong_in_one_size_names_it() -> None:
    head = HEAD.replace("    length 40 42 cm\n", "    length 40 42 cm\n    gores 8 0\n")
    found = only(piece(*LINES, more=", knit gores", end="cast off"), RING, head=head)
    assert (found.code, found.sizes) == ("not-positive", ("M",))


@pytest.mark.parametrize(
    ("value", "code"), [("0", "not-positive"), ("101", "absurd-count"), ("3 cm", "wrong-unit"), ("5 / 2", "count-not-whole")]
)
def test_what_cannot_be_so_often(value: str, code: str) -> None:
    assert only(piece(*LINES, more=", knit gores"), f"let gores = {value}").code == code


def test_a_name_that_is_not_known_is_told_and_nothing_else_of_the_copies() -> None:
    assert told(piece(*LINES, more=", knit gores", end="cast off"), RING) == ["unknown-name"]
