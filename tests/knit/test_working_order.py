"""In which order parts are worked, which wait meanwhile and for how many rows, and where the yarn goes on."""

from __future__ import annotations

from tests.counted.test_parts import A, B, slit
from tests.counted.test_piece import asked
from walewright.counted.model import SizedOpening
from walewright.knit.working_order import WorkedPart, working_order


def order(*openings: SizedOpening) -> tuple[WorkedPart, ...]:
    return working_order(asked(openings=openings).sized)


def place(turn: WorkedPart) -> str:
    """ "a-b 20": between a and b, from row 20."""
    left, right = ("" if gap is None else gap.name for gap in (turn.part.left, turn.part.right))
    return f"{left}-{right} {turn.part.from_row}"


def told(turns: tuple[WorkedPart, ...]) -> list[tuple[str, bool, str, list[int], bool]]:
    return [(place(t), t.turned, t.then, [p.rows for p in t.put_by], t.goes_on) for t in turns]


def test_of_parts_that_rejoin_the_right_one_is_worked_last() -> None:
    assert told(order(A)) == [
        ("- 0", False, "parts", [20], False),
        ("-a 10", False, "waits", [20], True),
        ("a- 10", True, "rejoins", [], True),
        ("- 30", False, "ends", [], True),
    ]


def test_to_the_top_the_right_part_is_worked_first_with_the_same_yarn() -> None:
    assert told(order(slit("neck", 40, 60, 0, rejoins=False))) == [
        ("- 0", False, "parts", [20], True),
        ("neck- 40", False, "ends", [], True),
        ("-neck 40", True, "ends", [], True),
    ]


def test_three_parts_wait_for_each_other() -> None:
    turns = order(A, slit("b", 10, 30, 8))
    assert told(turns) == [
        ("- 0", False, "parts", [40, 20], False),
        ("-a 10", False, "waits", [40], True),
        ("a-b 10", True, "waits", [20], True),
        ("b- 10", True, "rejoins", [], True),
        ("- 30", False, "ends", [], True),
    ]
    # Put by from the outer end inwards.
    assert [place_of.part.rank for place_of in turns[0].put_by] == [3, 2]
    assert [gap.name for gap in turns[3].openings] == ["a", "b"]


def test_parts_are_joined_as_soon_as_both_are_there() -> None:
    assert told(order(A, B)) == [
        ("- 0", False, "parts", [20], False),
        ("-a 10", False, "waits", [20], True),
        ("a- 10", True, "parts", [20], False),
        # With the carriage at its right end, in the middle of what it is joined to.
        ("a-b 20", False, "rejoins", [], False),
        ("-b 30", False, "waits", [20], True),
        ("b- 20", True, "rejoins", [], True),
        ("- 40", False, "ends", [], True),
    ]


def test_a_neck_in_the_middle_of_three_parts_goes_on_with_the_yarn_that_is_there() -> None:
    neck = slit("neck", 40, 60, 0, rejoins=False)
    turns = order(slit("a", 10, 50, -8), slit("b", 10, 50, 8), neck)
    assert [(place(t), t.then) for t in turns] == [
        ("- 0", "parts"),
        ("-a 10", "waits"),
        ("a-b 10", "parts"),
        ("neck-b 40", "waits"),
        ("a-neck 40", "rejoins"),
        ("-neck 50", "ends"),
        ("b- 10", "rejoins"),
        ("neck- 50", "ends"),
    ]
    assert [t.goes_on for t in turns if t.then in ("parts", "rejoins")] == [False, True, False, True]


def test_every_part_is_worked_once_above_all_that_it_comes_of() -> None:
    many = (slit("a", 10, 50, -12), slit("b", 20, 30, -4), slit("c", 24, 44, 4), slit("d", 34, 40, -4), slit("e", 16, 22, 12))
    turns = order(*many)
    done: set[str] = set()
    for number, turn in enumerate(turns):
        below = [t for t in turns if t.part.to_row == turn.part.from_row and t.part.meets(turn.part)]
        assert {place(t) for t in below} <= done, turn
        assert place(turn) not in done
        done.add(place(turn))
        # What waits is taken up later, after so many rows.
        for put_by in turn.put_by:
            rows = 0
            for later in turns[number + 1 :]:
                if later.part == put_by.part or (later.part.from_row == put_by.part.to_row and later.part.meets(put_by.part)):
                    break
                rows += later.part.to_row - later.part.from_row
            assert put_by.rows == rows
