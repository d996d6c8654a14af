"""Alignment: equal phrases line up, and every size keeps its own order."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as hs

from tests.write.garments import joined
from walewright.knit import steps as st
from walewright.write.align import align, closeness, likeness


def _same(x: str) -> str:
    return x


@given(hs.lists(hs.text("abc", max_size=8), min_size=1, max_size=5))
def test_columns_hold_every_list_in_its_order(lists: list[str]) -> None:
    columns = align(lists, _same)
    for i, items in enumerate(lists):
        assert "".join(c[i] or "" for c in columns) == items
    for column in columns:
        assert len(column) == len(lists)
        assert len({x for x in column if x is not None}) == 1


@given(hs.text("ab", max_size=8), hs.integers(1, 4))
def test_equal_lists_line_up_whole(items: str, sizes: int) -> None:
    assert align([items] * sizes, _same) == [(x,) * sizes for x in items]


@pytest.mark.parametrize(
    ("lists", "columns"),
    [
        (["abc", "ac"], ["aa", "b-", "cc"]),
        (["ac", "abc"], ["aa", "-b", "cc"]),
        (["ab", "ba"], ["a-", "bb", "-a"]),
        (["", "a"], ["-a"]),
        (["abd", "acd", "abcd"], ["aaa", "b-b", "-cc", "ddd"]),
        ([""], []),
    ],
)
def test_the_longest_common_order_lines_up(lists: list[str], columns: list[str]) -> None:
    assert ["".join(x or "-" for x in c) for c in align(lists, _same)] == columns


def test_of_equally_long_alignments_the_one_with_equal_numbers_is_taken() -> None:
    one = (st.KnitRows(2), st.KnitRows(30))
    other = (st.KnitRows(30),)
    assert align([one, other], likeness, closeness) == [(st.KnitRows(2), None), (st.KnitRows(30), st.KnitRows(30))]


def stripes(rows: int, *carried: str) -> st.StartStripes:
    return st.StartStripes("bands", (("wool", rows), ("navy", 2)), "4", carried)


@pytest.mark.parametrize(
    ("one", "other", "alike"),
    [
        (st.KnitRows(2), st.KnitRows(9), True),
        (st.KnitRows(2), st.KnitTo(2), False),
        (st.Decrease("left end", 1, 2), st.Decrease("left end", 1, 3), True),
        (st.Decrease("left end", 1, 2), st.Decrease("right end", 1, 2), False),
        # Fashioned and simple decreases have different words.
        (st.Decrease("left end", 1, 2), st.Decrease("left end", 1, 0), False),
        (st.Repeat((st.Decrease("left end", 1, 2),), 3), st.Repeat((st.Decrease("left end", 1, 0),), 3), False),
        (st.Repeat((st.KnitRows(1),), 3), st.Repeat((st.KnitRows(2),), 1), True),
        # A repeat that begins with something done has no rows to say before it.
        (st.Repeat((st.KnitRows(0), st.BreakOff()), 1), st.Repeat((st.KnitRows(2), st.BreakOff()), 1), False),
        # So have a side that is eased in and one that is stretched.
        (joined("a b", "c d", 5, 0), joined("a b", "c d", 5, 9), True),
        (joined("a b", "c d", 5, -9), joined("a b", "c d", 5, 9), False),
        (st.Say("a"), st.Say("b"), False),
        (stripes(2, "wool"), stripes(2, "wool"), True),
        (stripes(2, "wool"), stripes(4, "wool"), False),
        (stripes(2, "wool"), stripes(2), False),
    ],
)
def test_likeness(one: st.Step, other: st.Step, alike: bool) -> None:
    assert (likeness(one) == likeness(other)) is alike
