"""Sizes with another number of copies: glued group by group, and what is said of each."""

from __future__ import annotations

import pytest

from tests.glue.sewn import HEAD, panel
from walewright.cli.sources import shipped
from walewright.design import Changes, understand
from walewright.glue import GluedSizes, glue
from walewright.report.model import Diagnostic, Severity
from walewright.source import read

ROW, RING = "each to the next", "each to the next all round"
GUSSET = panel("gusset")


def together(text: str, gores: str) -> tuple[GluedSizes | None, tuple[Diagnostic, ...]]:
    """Panels as many as `gores` says in each of four sizes."""
    head = HEAD_OF_FOUR.replace("gores", f"gores {gores}", 1)
    tree, unread = read("sewn.wale", head + panel("panel").replace("in plain", "in plain, knit gores", 1) + text)
    assert unread == ()
    design, told = understand(tree, shipped(), Changes())
    assert design is not None, told
    return glue(design)


HEAD_OF_FOUR = HEAD.replace("sizes one\n    length 50 cm\n", "sizes S M L XL\n    length 50 50 52 52 cm\n    gores\n")


@pytest.mark.parametrize(
    ("gores", "sizes"),
    [("6 6 6 6", ((0, 1, 2, 3),)), ("6 6 8 8", ((0, 1), (2, 3))), ("6 8 6 4", ((0, 2), (1,), (3,)))],
)
def test_sizes_with_the_same_copies_are_a_group(gores: str, sizes: tuple[tuple[int, ...], ...]) -> None:
    made, told = together(f"join panel side to panel side, {RING}\n", gores)
    assert made is not None
    assert told == ()
    assert made.sizes == sizes
    for size, copies in enumerate(map(int, gores.split())):
        own = made.in_size(size)
        assert [(s.one[0].copy, s.other[0].copy) for s in own.seams] == [(n, n % copies + 1) for n in range(1, copies + 1)]
        assert len(own.openings) == 2


def test_a_row_has_one_seam_less_than_copies() -> None:
    made, _ = together(f"join panel side_right to panel side_left, {ROW}\n", "2 3 4 5")
    assert made is not None
    assert [len(made.in_size(size).seams) for size in range(4)] == [1, 2, 3, 4]


def test_what_is_wrong_is_said_once_where_it_is_the_same() -> None:
    """A message that names the number of copies is another one in each group."""
    twice = f"{GUSSET}join gusset side to gusset side\n" + "join gusset side to gusset side\n"
    (one,) = together(f"join panel side to panel side, {RING}\n{twice}", "2 3 3 4")[1]
    assert (one.code, one.sizes) == ("edge-used-twice", ())
    made, told = together(f"join panel side to panel side, {RING}\n" * 2, "2 3 3 4")
    assert made is None
    assert [(one.code, one.sizes) for one in told] == [
        ("edge-used-twice", ("S",)),
        ("edge-used-twice", ("M", "L")),
        ("edge-used-twice", ("XL",)),
    ]


def test_copies_in_a_row_are_joined_to_another_piece_over_each_other() -> None:
    row = f"{GUSSET}join panel side_right to panel side_left, {ROW}\n"
    made, told = together(f"{row}join panel side_left to gusset side_right\njoin panel side_right to gusset side_left\n", "2 3 4 5")
    assert told == ()
    assert made is not None
    assert [len(made.in_size(size).seams) for size in range(4)] == [3, 4, 5, 6]
    loose = f"{GUSSET}join panel side_left to gusset side_right\njoin panel side_right to gusset side_left\n"
    nothing, left = together(loose, "2 3 2 2")
    assert nothing is None
    assert [(one.code, one.sizes) for one in left if one.severity is Severity.ERROR] == [("copies-left-over", ("M",))]
