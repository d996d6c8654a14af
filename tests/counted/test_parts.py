"""The parts that openings make of a counted piece, and what lies above and below each."""

from __future__ import annotations

from dataclasses import replace

from tests.counted.test_needles import GAP, NECK
from tests.counted.test_piece import asked
from tests.solve.workshop import origin
from walewright.counted.model import SizedOpening
from walewright.counted.parts import SizedPart, above, below, open_at, parts_at, parts_of


def slit(name: str, row: int, to_row: int, first: int, rejoins: bool = True) -> SizedOpening:
    run = replace(GAP, from_row=row, to_row=to_row, phrases=())
    return SizedOpening(name, row, 0, 0, run, origin(name), to_row, first, rejoins=rejoins, left=(run,), right=(run,))


A, B = slit("a", 10, 30, -8), slit("b", 20, 40, 8)


def told(part: SizedPart) -> tuple[str, str, int, int]:
    """The openings at its left and right, and its rows."""
    left, right = ("" if gap is None else gap.name for gap in (part.left, part.right))
    return left, right, part.from_row, part.to_row


def test_beside_one_opening_are_two_parts() -> None:
    parts = parts_of(asked(openings=(NECK,)).sized)
    assert [told(part) for part in parts] == [("", "", 0, 40), ("", "neck", 40, 60), ("neck", "", 40, 60)]
    assert [(part.rank, part.among, part.home, part.sides) for part in parts] == [
        (1, 1, "right", ("left", "right")),
        (1, 2, "left", ("left",)),
        (2, 2, "right", ("right",)),
    ]


def test_one_opening_begins_and_another_ends_while_a_third_part_goes_on() -> None:
    sized = asked(openings=(A, B)).sized
    parts = parts_of(sized)
    assert [told(part) for part in parts] == [
        ("", "", 0, 10),
        ("", "a", 10, 30),
        ("a", "", 10, 20),
        ("a", "b", 20, 30),
        ("b", "", 20, 40),
        ("", "b", 30, 40),
        ("", "", 40, 60),
    ]
    whole, left, upper, middle, right, joined, top = parts
    assert above(whole, parts) == (left, upper)
    assert above(upper, parts) == (middle, right)
    assert above(left, parts) == above(middle, parts) == (joined,)
    assert below(joined, parts) == (left, middle)
    assert below(top, parts) == (joined, right)
    assert above(top, parts) == ()
    assert [part.home for part in (left, upper, middle, right, joined)] == ["left", "right", "right", "right", "left"]
    assert (middle.rank, middle.among, middle.sides) == (2, 3, ())


def test_openings_that_begin_and_end_together_part_and_rejoin_at_once() -> None:
    parts = parts_of(asked(openings=(A, slit("b", 10, 30, 8))).sized)
    assert [told(part) for part in parts] == [
        ("", "", 0, 10),
        ("", "a", 10, 30),
        ("a", "b", 10, 30),
        ("b", "", 10, 30),
        ("", "", 30, 60),
    ]
    assert above(parts[0], parts) == parts[1:4] == below(parts[4], parts)


def test_the_needles_of_each_part() -> None:
    sized = asked(openings=(A, B)).sized
    assert [[part.at(row) for part in parts_at(sized, row)] for row in (5, 10, 25, 35)] == [
        [(-20, 19)],
        [(-20, -9), (-8, 19)],
        [(-20, -9), (-8, 7), (8, 19)],
        [(-20, 7), (8, 19)],
    ]
    assert [[gap.name for gap in open_at(sized, row)] for row in (9, 10, 29, 30, 40)] == [[], ["a"], ["a", "b"], ["b"], []]
    middle = parts_of(sized)[3]
    assert [middle.touches(*at) for at in ((-12, -9), (-9, -8), (0, 1), (7, 12), (8, 9))] == [False, True, True, True, False]
