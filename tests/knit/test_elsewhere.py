"""Blocks moved on a bed with missing needles, by as little as can be; copies told in turn; lines within a piece, stitch by
stitch."""

from __future__ import annotations

from dataclasses import dataclass, fields
from itertools import pairwise
from types import SimpleNamespace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.made_of import FEW, made
from walewright.knit import inside_steps, placing
from walewright.knit import operations as op
from walewright.knit import steps as steps_of
from walewright.knit.copies import EACH, NEXT, NONE, Copy, in_turn, of_several
from walewright.knit.inside import decrease_inside, increase_inside, lines_of
from walewright.knit.step import Step, numbers, shape

# -------------------------------------------------------------------------------------------------------------- moved blocks


@given(st.integers(4, 12), st.sets(st.integers(-12, 11), max_size=6), st.integers(-12, 11), st.integers(0, 9))
def test_a_block_is_moved_as_little_as_can_be(half: int, missing: set[int], first: int, width: int) -> None:
    """Against every place that the bed has; to the right, where it is as near."""
    missing = {slot for slot in missing if -half <= slot < half}
    first = max(-half, min(first, half - 1))
    last = min(first + width, half - 1)
    block: Any = SimpleNamespace(operations=(op.IntoWork(first, last),))
    free = [
        by
        for by in range(-2 * half, 2 * half + 1)
        if first + by >= -half and last + by < half and not missing & set(range(first + by, last + by + 1))
    ]
    assert placing._nearest(block, half, sorted(missing)) == min(free, key=lambda by: (abs(by), -by), default=None)
    rooms = placing._rooms(half, missing)
    assert {slot for low, high in rooms for slot in range(low, high + 1)} == set(range(-half, half)) - missing
    assert all(b[0] - a[1] > 1 for a, b in pairwise(rooms))


def test_a_block_that_names_no_needle_stays() -> None:
    block: Any = SimpleNamespace(operations=(op.SetCounter(0),))
    assert placing._nearest(block, 10, (0,)) == 0
    assert placing._reach(block) == (0, -1)


@pytest.mark.parametrize("name", ["barnacle", "hawser", "mooring", "shoal", "dunlin"])
@pytest.mark.parametrize("by", [3, -2])
def test_moved_work_names_other_needles_and_nothing_else(name: str, by: int) -> None:
    (work, *_) = made(name).works
    moved = placing.work_moved(work, {block.name: by for block in work.blocks[:1]})
    for block, there in zip(work.blocks, moved.blocks, strict=True):
        away = by if block is work.blocks[0] else 0
        for one, other in zip(block.operations, there.operations, strict=True):
            assert placing._spans(other) == tuple((a + away, z + away) for a, z in placing._spans(one))
            alike = {f.name for f in fields(one) if getattr(one, f.name) != getattr(other, f.name)}
            assert alike <= {"first", "last", "slot", "needles", "onto", "blocks", "target", "source", "to_first"}
    assert placing.work_moved(moved, {block.name: -by for block in work.blocks[:1]}) == work


@pytest.mark.parametrize(("missing", "moved"), [("R90", False), ("L1", True), ("R9", True)])
def test_a_garment_lies_beside_its_missing_needles(missing: str, moved: bool) -> None:
    """What would need them is moved: no work names them, and what is knitted there is what was knitted in the middle."""
    outcome = made("limpet", sizes=("baby",), bed=f"missing={missing}")
    (slot,) = lacking(missing)
    (placed,) = outcome.placed
    assert placed.left_over == ()
    assert bool(placed.moved) == moved
    for block in placed.work.blocks:
        assert not any(a <= slot <= z for o in block.operations for a, z in placing._spans(o))
    whole = made("limpet", sizes=("baby",))
    back = placing.work_moved(placed.work, {name: -by for name, by in placed.moved.items()})
    assert back == whole.works[0]


def test_what_finds_no_room_is_told_with_the_widest_that_there_is() -> None:
    """Every tenth needle is missing."""
    every = " ".join(f"{side}{n}" for side in "LR" for n in range(10, 75, 10))
    (placed,) = made("mooring", sizes=("toddler",), bed=f"missing={every}").placed
    # Between L 10 and R 10 there are eighteen needles, elsewhere nine.
    wide = [one for one in placed.left_over if one.last - one.first + 1 > 18]
    assert wide
    for one in wide:
        assert one.room == 18
        assert one.missing == tuple(s for s in sorted(lacking(every)) if one.first <= s <= one.last)
    assert all(one.room is None for one in placed.left_over if one not in wide)


def lacking(told: str) -> set[int]:
    """The slots of needles: L 1 is -1, R 1 is 0."""
    return {-int(n[1:]) if n[0] == "L" else int(n[1:]) - 1 for n in told.split()}


# --------------------------------------------------------------------------------------------------------------------- copies


def test_a_copy_is_named_where_there_are_several() -> None:
    assert [of_several(2, copies) for copies in (1, 2, 3)] == [NONE, Copy(2), Copy(2)]
    assert [bool(copy) for copy in (NONE, EACH, NEXT, Copy(1))] == [False, True, True, True]


@pytest.mark.parametrize("times", range(1, 6))
@pytest.mark.parametrize(("turn", "more"), [("own", 0), ("round", 0), ("next", 1)])
def test_copies_in_turn_are_counted_off(times: int, turn: str, more: int) -> None:
    """Seams at one copy after the other: each with its own, or with the next, the last with the first where they go round. Of
    one copy none is named."""
    copies = times + more
    for number in range(1, times + 1):
        each, following = (in_turn(copy, turn, number, times) for copy in (EACH, NEXT))  # type: ignore[arg-type]
        assert each == (number if copies > 1 else 0)
        assert following == ((1 if number == copies else number + 1) if copies > 1 else 0)
        assert in_turn(NONE, turn, number, times) == 0  # type: ignore[arg-type]
    assert in_turn(Copy(3), "", 1, 1) == 3


# ---------------------------------------------------------------------------------------------------------------------- steps


def test_figures_of_a_step_are_its_numbers_in_order() -> None:
    assert numbers(steps_of.Repeat((steps_of.KnitRows(2), steps_of.EyeletAt(3, "right")), 5)) == (2, 3, 5)
    assert numbers(steps_of.Now(40, 12, "left")) == (40, 12)
    assert numbers(steps_of.UseYarnStep("wool", "4")) == ()


@pytest.mark.parametrize("name", FEW)
def test_two_steps_of_one_shape_differ_in_figures_alone(name: str) -> None:
    """Of each step of a garment, with every figure another, the shape is the same; with a word another it is not."""
    seen: set[type[Step]] = set()
    for plan in made(name).plans:
        for step in (s for block in plan.blocks for _, some in block.paragraphs for s in some):
            if type(step) in seen:
                continue
            seen.add(type(step))
            figures = {f.name: getattr(step, f.name) for f in fields(step)}
            plain = {k: v for k, v in figures.items() if isinstance(v, int) and not isinstance(v, bool)}
            words = {k: v for k, v in figures.items() if isinstance(v, str) and k != "origin" and v}
            other = type(step)(**{**figures, **{k: v + 7 for k, v in plain.items()}, "origin": "elsewhere"})
            assert shape(other) == shape(step)
            assert (numbers(other) == numbers(step)) == (not plain)
            for key in words:
                assert shape(type(step)(**{**figures, key: "another"})) != shape(step)


# ------------------------------------------------------------------------------------------------------- lines within a piece


@dataclass(frozen=True)
class Ends:
    """Where a piece's stitches lie."""

    first: int
    last: int


def hand(needles: dict[int, list[int]], moves: tuple[op.Operation, ...]) -> dict[int, list[int]]:
    """The loops of each needle in work after some moves, each by the number of the needle where it was; a filled one by that of
    the needle that it is filled from, and a thousand."""
    there = {slot: list(loops) for slot, loops in needles.items()}
    for move in moves:
        match move:
            case op.Transfer(first=first, last=last, by=by):
                taken = {slot: there[slot] for slot in range(first, last + 1)}
                there |= {slot: [] for slot in taken}
                for slot, loops in taken.items():
                    there[slot + by] = there[slot + by] + loops
            case op.OutOfWork(first=first, last=last):
                for slot in range(first, last + 1):
                    assert there.pop(slot) == []
            case op.IntoWork(first=first, last=last):
                assert not there.keys() & set(range(first, last + 1))
                there |= {slot: [] for slot in range(first, last + 1)}
            case op.FillFromBelow(target=target, source=source):
                assert (there[target], abs(target - source)) == ([], 1)
                assert there[source]
                there[target] = [1000 + source]
            case _:
                raise AssertionError(move)
    return there


@given(
    st.integers(-20, 0),
    st.integers(8, 20),
    st.integers(1, 3),
    st.integers(1, 3),
    st.sampled_from(["left end", "right end", "both ends"]),
)
def test_a_stitch_less_along_a_line_leaves_none_empty(first: int, wide: int, out: int, prongs: int, ends: Any) -> None:
    """The one beside the line lies upon the line's, whatever the tool; the others keep their order; the outermost needle goes."""
    last = first + wide - 1
    piece: Any = Ends(first, last)
    for step in (
        inside_steps.DecreaseOuter(ends, out, prongs),
        inside_steps.DecreaseOn(ends, first + out, last - out, prongs),
    ):
        moves, after = decrease_inside(piece, step)  # type: ignore[arg-type]
        there = hand({slot: [slot] for slot in range(first, last + 1)}, moves)
        left, right = ends in ("left end", "both ends"), ends in ("right end", "both ends")
        assert (after.first, after.last) == (first + left, last - right)
        assert set(there) == set(range(after.first, after.last + 1))
        assert all(there.values())
        assert [loop for slot in sorted(there) for loop in sorted(there[slot])] == list(range(first, last + 1))
        doubled = {slot for slot, loops in there.items() if len(loops) == 2}
        assert doubled == ({first + out} if left else set()) | ({last - out} if right else set())
        assert max(m.last - m.first + 1 for m in moves if isinstance(m, op.Transfer)) == min(prongs, out)


@given(
    st.integers(-20, 0),
    st.integers(8, 20),
    st.integers(1, 3),
    st.integers(1, 3),
    st.sampled_from(["left end", "right end", "both ends"]),
)
def test_a_stitch_more_along_a_line_is_filled_from_the_one_inside(first: int, wide: int, out: int, prongs: int, ends: Any) -> None:
    last = first + wide - 1
    piece: Any = Ends(first, last)
    for step in (
        inside_steps.IncreaseOuter(ends, out, prongs),
        inside_steps.IncreaseBeside(ends, first + out, last - out, prongs),
    ):
        moves, after = increase_inside(piece, step)  # type: ignore[arg-type]
        there = hand({slot: [slot] for slot in range(first, last + 1)}, moves)
        left, right = ends in ("left end", "both ends"), ends in ("right end", "both ends")
        assert (after.first, after.last) == (first - left, last + right)
        assert {slot: len(loops) for slot, loops in there.items()} == dict.fromkeys(range(after.first, after.last + 1), 1)
        kept = [loop for slot in sorted(there) for loop in there[slot] if loop < 500]
        assert kept == list(range(first, last + 1))
        filled = {slot: loops[0] - 1000 for slot, loops in there.items() if loops[0] >= 500}
        assert filled == ({first + out - 1: first + out} if left else {}) | ({last - out + 1: last - out} if right else {})


def test_a_line_of_another_step_is_none() -> None:
    piece: Any = Ends(-5, 5)
    assert lines_of(piece, steps_of.KnitRows(2)) == ()
