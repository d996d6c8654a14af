"""Edges whose author says where moves fall and how large steps are, drawn at random as sources and knitted: the bed made the moves
there, each as large, and the printed words say the same."""

from __future__ import annotations

import random
from itertools import pairwise

import pytest

from tests.whole.garment import SHIPPED
from tests.whole.test_rates import SOURCE, fabrics, steps
from walewright.counted.model import SizedPiece
from walewright.design import Changes
from walewright.pipeline import Outcome, compile
from walewright.report.english import in_english

WAYS = (
    # (path, by tools: they move in any row)
    ("slope by -{far} stitches at top, fashioned 2 in", True),
    ("slope by -{far} stitches at top", True),
    ("slope by {far} stitches at top, fashioned 2 in", True),
    ("slope by {far} stitches at top", False),
    ("steps -{each} stitches {times} times to top", False),
    ("steps {each} stitches {times} times to top", False),
    ("in 1 stitch every {every} rows to top", True),
    ("out 1 stitch every {every} rows to top, fashioned 2 in", True),
    ("in 2 stitches every {even} rows to top", False),
    ("out 1 stitch every {even} rows to top", False),
)
MOVES = (", beginning with a move", ", ending with a move", ", beginning with a move, ending with a move")


def compiled(edges: str, tail: str = "") -> Outcome:
    text = SOURCE.format(edges="\n".join(f"    {line}" for line in edges.split("\n"))) + tail
    outcome = compile(text, "exact.wale", SHIPPED, Changes())
    assert outcome.proven, (text, [(d.code, in_english(d).message, in_english(d).notes) for d in outcome.diagnostics])
    return outcome


def pieces(outcome: Outcome, name: str) -> list[SizedPiece]:
    assert outcome.counts is not None
    return [garment.piece(name) for garment in outcome.counts.sizes]


@pytest.mark.parametrize("number", range(40))
def test_moves_fall_on_the_first_and_the_last_row_where_hands_can_make_them(number: int) -> None:
    dice = random.Random(f"ends {number}")
    path, tools = dice.choice(WAYS)
    rate = "every" in path
    moves = dice.choice(MOVES[:2] if rate else MOVES)
    line = path.format(
        far=dice.randint(2, 24),
        each=dice.randint(2, 5),
        times=dice.randint(2, 6),
        every=dice.randint(5, 13),
        even=2 * dice.randint(3, 6),
    )
    which = dice.choice(("edges", "left edge", "right edge"))
    other = "" if which == "edges" else f"\n{'right' if which == 'left edge' else 'left'} edge straight to top"
    outcome = compiled(f"edges straight to low\n{which} {line}{moves}{other}")
    sides = ("left", "right") if which == "edges" else (which.split()[0],)
    # Both ends come to the carriage in two rows, and a row is knitted after the second.
    near = 1 if tools else 3 if which == "edges" else 2
    for name in ("one", "other"):
        for sized, fabric in zip(pieces(outcome, name), fabrics(outcome, name), strict=True):
            low = sized.row("low")
            for side in sides if name == "one" else [{"left": "right", "right": "left"}[side] for side in sides]:
                made = steps(fabric, side, low)
                first, last = made[0][0] - low, sized.rows - made[-1][0]
                if "beginning" in moves and (len(made) > 1 or "ending" not in moves):
                    assert 0 < first <= near
                if "ending" in moves:
                    assert 0 < last <= near
                if rate and len(made) > 1:
                    (gap,) = {b - a for (a, _), (b, _) in pairwise(made)}
                    # There is no room for one move more at the other end.
                    assert (last if "beginning" in moves else first) <= gap + 3


def test_only_what_asks_for_it_moves_in_the_last_row() -> None:
    """The same edge, left alone, has half a gap at both ends."""
    outcome = compiled("edges straight to low\nedges slope by -10 stitches at top, fashioned 2 in")
    for sized, fabric in zip(pieces(outcome, "one"), fabrics(outcome, "one"), strict=True):
        assert sized.rows - steps(fabric, "left", sized.row("low"))[-1][0] > 2


@pytest.mark.parametrize("where", ["top", "high"])
@pytest.mark.parametrize("way", ["", ", fashioned 2 in"])
def test_a_v_narrows_in_the_row_below_its_shoulder(where: str, way: str) -> None:
    neck = f"neck 40 stitches wide, 12 cm deep, v{way}, ending with a move"
    if where == "high":
        neck = f"opening neck 0 cm wide from slit to top\n    edges slope to 40 stitches wide at top{way}, ending with a move"
    outcome = compiled(f"edges straight to top\n{neck}")
    for sized in pieces(outcome, "one"):
        (opening,) = sized.openings
        for runs in (opening.left, opening.right):
            *_, (row, by) = [change for run in runs for change in run.changes()]
            assert (row, by) == (sized.rows - 1, -1)


@pytest.mark.parametrize("number", range(24))
def test_steps_of_several_sizes_are_knitted_one_after_the_other(number: int) -> None:
    dice = random.Random(f"steps {number}")
    sign = dice.choice(("-", "", "-"))
    groups = [(dice.randint(1, 5), dice.randint(1, 2)) for _ in range(dice.randint(2, 4))]
    written = " then ".join(f"{sign}{n} stitches{'' if times == 1 else f' {times} times'}" for n, times in groups)
    which = dice.choice(("edges", "left edge", "right edge"))
    other = "" if which == "edges" else f"\n{'right' if which == 'left edge' else 'left'} edge straight to top"
    outcome = compiled(f"edges straight to high\n{which} steps {written} to top{other}")
    wanted = [n if not sign else -n for n, times in groups for _ in range(times)]
    for name in ("one", "other"):
        for sized, fabric in zip(pieces(outcome, name), fabrics(outcome, name), strict=True):
            sides = ("left", "right") if which == "edges" else (which.split()[0],)
            for side in sides if name == "one" else [{"left": "right", "right": "left"}[side] for side in sides]:
                assert [by for _, by in steps(fabric, side, sized.row("high"))] == wanted


@pytest.mark.parametrize("number", range(20))
def test_steps_that_may_differ_are_equal_but_for_a_stitch_and_come_to_the_width(number: int) -> None:
    dice = random.Random(f"larger {number}")
    times, cm = dice.randint(2, 7), dice.randint(60, 160) / 100
    first = dice.choice((True, False))
    order = "first" if first else "last"
    outcome = compiled(f"edges straight to high\nedges steps -{cm:.2f} cm {times} times to top, larger steps {order}")
    for sized, fabric in zip(pieces(outcome, "one"), fabrics(outcome, "one"), strict=True):
        made = [-by for _, by in steps(fabric, "left", sized.row("high"))]
        assert len(made) == times
        assert max(made) - min(made) <= 1
        assert made == sorted(made, reverse=first)
        # 40 stitches are 14.3 cm.
        assert abs(2 * sum(made) - 2 * times * cm * 40 / 14.3) <= 1


def test_each_size_has_its_own_steps() -> None:
    """Lengths and how often differ by size; a size may have fewer of one kind than another."""
    text = SOURCE.replace(
        "    length 40 44 cm\n", "    length 40 44 cm\n    deep 3 4 stitches\n    often 1 3\n    deeper 2 1 stitches\n"
    )
    edges = "    edges straight to high\n    edges steps -deep then -2 stitches, often times then -deeper to top"
    outcome = compile(text.format(edges=edges), "exact.wale", SHIPPED, Changes())
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]
    for sized, fabric, wanted in zip(pieces(outcome, "one"), fabrics(outcome, "one"), ([3, 2, 2], [4, 2, 2, 2, 1]), strict=True):
        assert [-by for _, by in steps(fabric, "right", sized.row("high"))] == wanted
