"""How often a piece is knitted, by a name."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, design, only, piece, told
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.report.english import in_english

RING = "join front side to front side, each to the next all round"
LINES = ("edges straight to top called side",)


def test_a_name_is_the_number_that_it_stands_for() -> None:
    made = design(piece(*LINES, more=", knit gores", end="cast off"), "let gores = 2 * 3", RING)
    assert made.piece("front").copies == 6
    image = piece(*LINES, more=", knit gores") + "piece other in plain, mirror of front, knit gores\n"
    assert design(image, "let gores = 3").piece("other").copies == 3


def test_a_row_that_is_the_same_in_all_sizes_will_do() -> None:
    head = HEAD.replace("    length 40 42 cm\n", "    length 40 42 cm\n    gores 8 8\n")
    assert told(piece(*LINES, more=", knit gores", end="cast off"), RING, head=head) == []


def test_numbers_that_differ_are_told_once_with_the_sizes_that_go_together() -> None:
    head = HEAD.replace("sizes S M\n    length 40 42 cm\n", "sizes S M L\n    length 40 42 44 cm\n    gores 6 8 8\n")
    found = only(piece(*LINES, more=", knit gores", end="cast off"), RING, head=head)
    assert found.code == "copies-by-size"
    words = in_english(found)
    assert words.notes == ("S: 6", "M and L: 8")
    assert words.helps[0].endswith("`--size S` or `--size M --size L`")


@pytest.mark.parametrize(
    ("value", "code"), [("0", "not-positive"), ("101", "absurd-count"), ("3 cm", "wrong-unit"), ("5 / 2", "count-not-whole")]
)
def test_what_cannot_be_so_often(value: str, code: str) -> None:
    assert only(piece(*LINES, more=", knit gores"), f"let gores = {value}").code == code


def test_a_name_that_is_not_known_is_told_and_nothing_else_of_the_copies() -> None:
    assert told(piece(*LINES, more=", knit gores", end="cast off"), RING) == ["unknown-name"]


@pytest.mark.parametrize(("sizes", "copies"), [(("S",), 6), (("M", "L"), 8)])
def test_sizes_with_as_many_are_made_together_from_one_source(sizes: tuple[str, ...], copies: int) -> None:
    head = HEAD.replace("sizes S M\n    length 40 42 cm\n", "sizes S M L\n    length 40 42 44 cm\n    gores 6 8 8\n")
    body = piece(*LINES, more=", knit gores", start="length / gores + 2 stitches wide with e-wrap", end="cast off")
    made = pipeline.compile(head + body + RING + "\n", "gores.wale", shipped(), Changes(sizes=sizes))
    assert made.proven, [(d.code, in_english(d).message) for d in made.diagnostics]
    assert made.design is not None
    assert made.design.piece("front").copies == copies
