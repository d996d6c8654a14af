"""Seams of several statements that are alike in every size, told together; and the steps that come before them."""

from __future__ import annotations

import pytest

from tests.whole.shipped_once import compiled
from tests.write.garments import joined, joining
from walewright.knit import steps as st
from walewright.knit.alike_seams import told_together
from walewright.knit.steps import SizePlan


def seam(piece: str, rows: int, **more: object) -> st.JoinEdges:
    return joined(f"{piece} side left", f"{piece} side right", 0, rows=rows, **more)  # type: ignore[arg-type]


def together(*sizes: tuple[st.Step, ...]) -> list[list[st.Step]]:
    plans = told_together(tuple(SizePlan(f"size {n}", (joining(*steps),)) for n, steps in enumerate(sizes)))
    return [[step for block in plan.blocks for _, steps in block.paragraphs for step in steps] for plan in plans]


def test_what_is_equal_in_every_size_is_one_sentence() -> None:
    made = together((seam("one", 10), seam("other", 10)), (seam("one", 12), seam("other", 12)))
    assert [[len(step.seams) for step in steps] for steps in made] == [[2], [2]]  # type: ignore[attr-defined]


@pytest.mark.parametrize(
    "second",
    [
        (seam("one", 12), seam("other", 14)),
        (seam("one", 12), seam("other", 12, thread="tail")),
        (seam("one", 12), st.Say("Turn it.", "by hand"), seam("other", 12)),
        (seam("one", 12), seam("other", 12, strips=(("other", "welt"),), strip_rows=(8,))),
    ],
)
def test_what_differs_in_one_size_is_told_apart_in_all(second: tuple[st.Step, ...]) -> None:
    first = (seam("one", 10), seam("other", 10))
    assert together(first, second) == [list(first), list(second)]


def test_no_more_than_two() -> None:
    (steps,) = together((seam("one", 10), seam("other", 10), seam("third", 10)))
    assert [len(step.seams) for step in steps] == [2, 1]  # type: ignore[attr-defined]


def over(name: str, *strips: tuple[str, str]) -> st.JoinEdges:
    return joined(f"{name} side left", f"{name} side right", 0, rows=10, strips=strips, strip_rows=(8,) * len(strips), origin=name)


HEM, WELT, BAND = ("front", "hem"), ("back", "welt"), ("right_armband", "")


def test_each_keeps_its_statement_and_all_pass_the_same_strips() -> None:
    ((both,),) = together((over("one", HEM, WELT), over("other", WELT, HEM)))
    assert isinstance(both, st.JoinEdges)
    assert [s.origin for s in both.seams] == ["one", "other"]
    assert (both.strips, both.strip_rows) == ((HEM, WELT), (8, 8))


@pytest.mark.parametrize("strips", [(HEM, BAND), (HEM,), ()])
def test_seams_over_unlike_strips_are_told_each_by_itself(strips: tuple[st.Strip, ...]) -> None:
    """Of as many rows, too: it would not be clear which seam passes which."""
    steps = (over("one", HEM, WELT), over("other", *strips))
    assert together(steps) == [list(steps)]


@pytest.mark.parametrize(
    ("name", "words"),
    [
        (
            "mooring",
            "Join the left side of the right thumb to its right side and the left side of the left thumb to its right side,",
        ),
        (
            "marram",
            "Join the left head, then the last row, then the right head of each sleeve: of the 1st to the armhole of the right",
        ),
        (
            "greylag",
            "Join the right side of the back to the left side of the front, row for row, 300 (304: 312: 312: 320) rows, and on"
            " along the ends of 8 rows of left armband and 12 rows of front hem and 12 rows of back hem,",
        ),
        ("bollard", "Join the left side of the hat to its right side, row for row,"),
        ("breakwater", "Join the left side of each panel to the right side of the next one, and so on, 3 seams,"),
        ("curlew", "Pleat the last row of each skirt from its left end to the last row of each waistband from its right end,"),
    ],
)
def test_shipped_seams_read_as_a_person_says_them(name: str, words: str) -> None:
    text = " ".join((compiled(name).plain_text or "").split())
    assert words in text
    assert name != "curlew" or "Gather" not in text


@pytest.mark.parametrize("name", ["anemone", "lapwing", "teasel"])
def test_steps_before_all_joins_have_a_heading_of_their_own(name: str) -> None:
    """They are of all pieces; the link or the band that comes next has its own steps alone."""
    outcome = compiled(name)
    blocks = outcome.plans[0].blocks
    first = next(at for at, block in enumerate(blocks) if block.joining or block.linked)
    assert [block.opening for block in blocks].index(True) == first
    assert {type(step) for _, steps in blocks[first].paragraphs for step in steps} == {st.Say}
    after = blocks[first + 1].paragraphs[0][1]
    assert not isinstance(after[0], st.Say) or after[0].manner != "by hand"
    text = outcome.plain_text or ""
    assert text.count("\nBefore joining\n") == 1
    assert "\nBefore joining\n==============\n\n( ) 1. Pin the pieces" in text


def test_steps_before_the_making_up_begin_it() -> None:
    assert not any(block.opening for block in compiled("mooring").plans[0].blocks)
