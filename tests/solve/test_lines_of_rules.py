"""What a rule asks of a tiny garment, line by line as the programme has it, each worked out by hand: a line that is missing, one
too many, or one stitch or row off shows here even where no count would come out otherwise."""

from __future__ import annotations

import re

import pytest

from tests.solve.tiny import HEAD
from walewright.design import Changes, Shipped
from walewright.pipeline import _put_together, understood
from walewright.solve.algebra.programme import Programme
from walewright.solve.solver import programme_of


def programme(body: str, across: float = 1.0, up: float = 1.0, needles: int = 60) -> Programme:
    text = HEAD.format(sizes="sizes M", needles=needles, across=100 / across, up=100 / up) + body
    made = _put_together(understood(text, "tiny.wale", Shipped({}, {}), Changes()))
    assert made.design is not None, made.diagnostics
    assert made.glued is not None, made.diagnostics
    return programme_of(made.design, (), made.glued)[0]


def asked(body: str, rule: str) -> set[str]:
    """The lines of the rules that are called so: "1 <= start - neck width", rows in pairs, stitches from the centre mark."""
    found = programme(body)
    names = [re.sub(r"^\w+: |rows to ", "", v.name).strip() for v in found.variables]

    def told(terms: tuple[tuple[int, int], ...]) -> str:
        by_name = sorted((by < 0, names[number], abs(by)) for number, by in terms)
        parts = [f"{'-' if less else '+'} {'' if by == 1 else f'{by} '}{name}" for less, name, by in by_name]
        return " ".join(parts).removeprefix("+ ")

    lines = [line for r in found.rules if r.name.key == rule for _, line in r.constraints]
    assert lines, sorted({r.name.key for r in found.rules})
    return {
        ("" if line.low is None or line.low == line.high else f"{line.low} <= ")
        + told(line.terms.of)
        + ("" if line.high is None else f" {'=' if line.low == line.high else '<='} {line.high}")
        for line in lines
    }


# ----------------------------------------------------------------- openings side by side

SLIT_AND_NECK = """\
piece back in plain
    levels hem 0 cm, low 6 cm, high 20 cm, top 30 cm
    start 22 cm wide with e-wrap
    opening slit 2 cm wide from low to high, 6 cm {side} of centre, cast off
        edges straight to high
    neck 6 cm wide, {depth} cm deep, square, cast off
    end cast off
"""

AFTER_LOW, BEFORE_LOW, AT_LOW = "1 <= top - low - neck depth", "1 <= low + neck depth - top", "top - low - neck depth = 0"
BEFORE_HIGH = "1 <= high + neck depth - top"


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(
    ("depth", "lines"),
    [
        ("13", {AFTER_LOW, BEFORE_HIGH}),
        ("23.9", {AFTER_LOW, BEFORE_HIGH}),
        ("24", {AT_LOW, BEFORE_HIGH}),
        ("24.1", {BEFORE_LOW, BEFORE_HIGH}),
    ],
)
def test_a_neck_begins_before_after_or_with_a_slit_as_it_does_in_centimetres(side: str, depth: str, lines: set[str]) -> None:
    assert asked(SLIT_AND_NECK.format(side=side, depth=depth), "openings-in-turn") == lines


TWO_GAPS = """\
piece back in plain
    levels hem 0 cm, one 6 cm, two 14 cm, three 20 cm, four 26 cm, top 30 cm
    start 30 cm wide with e-wrap
    opening west 2 cm wide from {west}, 6 cm left of centre, cast off
        left edge straight to {west_end}
{west_edge}
    opening east 2 cm wide from {east}, 6 cm right of centre, cast off
{east_edge}
        right edge straight to {east_end}
    end cast off
"""
# The right edge of the one and the left edge of the other as they begin; from the centre mark, so that the first is below none.
WEST, EAST = "west place", "east place at the left"


@pytest.mark.parametrize(
    ("west", "west_edge", "east", "east_edge", "lines"),
    [
        # Neither moves: one line, in whichever rows both are open.
        ("one to three", ["straight to three"], "two to four", ["straight to four"], {f"1 <= {EAST} + {WEST}"}),
        # One moves while the other is open: before and after.
        (
            "one to three",
            ["straight to three"],
            "one to three",
            ["slope by 3 cm at three"],
            {f"1 <= {EAST} + {WEST}", f"1 <= {EAST} + {WEST} - east left to three"},
        ),
        # It goes on when the other is shut: at that height it is on its way, and taken to be where it is nearer, and at its start.
        (
            "one to two",
            ["straight to two"],
            "one to three",
            ["slope by 3 cm at three"],
            {f"1 <= {EAST} + {WEST}", f"1 <= {EAST} + {WEST} - east left to three"},
        ),
        # It moves before the other is open: it has come to where it stays.
        (
            "two to three",
            ["straight to three"],
            "one to three",
            ["slope by 3 cm at two", "straight to three"],
            {f"1 <= {EAST} + {WEST} - east left to two"},
        ),
        # It moves after the other is shut: not at all beside it.
        (
            "one to two",
            ["straight to two"],
            "one to three",
            ["straight to two", "slope by 3 cm at three"],
            {f"1 <= {EAST} + {WEST}"},
        ),
        # Both move, one after the other; a fashioned edge keeps as many stitches as its tool takes.
        (
            "one to three",
            ["slope by 2 cm at two", "straight to three"],
            "one to three",
            ["straight to two", "slope by 3 cm at three, fashioned 2 in"],
            {
                f"2 <= {EAST} + {WEST}",
                f"2 <= {EAST} + {WEST} - west right to two",
                f"2 <= {EAST} + {WEST} - east left to three - west right to two",
            },
        ),
        # Both on their way at once.
        (
            "one to three",
            ["slope by 2 cm at three"],
            "two to four",
            ["slope by 3 cm at four"],
            {
                f"1 <= {EAST} + {WEST}",
                f"1 <= {EAST} + {WEST} - west right to three",
                f"1 <= {EAST} + {WEST} - east left to four - west right to three",
            },
        ),
    ],
)
def test_stitches_are_left_between_two_gaps_wherever_an_edge_comes_to_a_place(
    west: str, west_edge: list[str], east: str, east_edge: list[str], lines: set[str]
) -> None:
    body = TWO_GAPS.format(
        west=west,
        west_end=west.split()[-1],
        west_edge="\n".join(f"        right edge {line}" for line in west_edge),
        east=east,
        east_end=east.split()[-1],
        east_edge="\n".join(f"        left edge {line}" for line in east_edge),
    )
    assert asked(body, "stitches-between") == lines


# ----------------------------------------------------------------- steps

STEPPED = """\
piece back in plain
    levels hem 0 cm, low 6 cm, high 20 cm, top 30 cm
    start 30 cm wide with e-wrap
    left edge straight to top
    right edge straight to low
    right edge {steps} to high{larger}
    right edge straight to top
    end cast off
"""


@pytest.mark.parametrize(
    ("steps", "larger", "lines"),
    [
        ("steps -2 cm 3 times", "", {"1 <= steps to high"}),
        ("steps 2 cm 3 times", "", {"1 <= steps to high"}),
        ("steps -2 cm 3 times", ", larger steps first", {"3 <= start + 60 zero - right at high"}),
        ("steps 2 cm 3 times", ", larger steps last", {"3 <= right at high - start - 60 zero"}),
        (
            "cast off 2 cm then steps -2 cm then -1 cm 2 times",
            "",
            {
                "1 <= right step 1 to high",
                "1 <= right step 2 to high",
                "start + 60 zero - cast off before high - right at high - right step 1 to high - 2 right step 2 to high = 0",
            },
        ),
        (
            "steps 2 cm 2 times then 1 cm 3 times",
            "",
            {
                "1 <= right step 1 to high",
                "1 <= right step 2 to high",
                "right at high - 2 right step 1 to high - 3 right step 2 to high - start - 60 zero = 0",
            },
        ),
    ],
)
def test_each_step_has_a_stitch_and_all_come_to_the_move(steps: str, larger: str, lines: set[str]) -> None:
    assert asked(STEPPED.format(steps=steps, larger=larger), "steps-have-stitches") == lines
