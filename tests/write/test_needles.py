"""Needles in a list: told in few words, and read as the same needles."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as hs

from tests.in_english import WRITING, said
from walewright.knit import operations as op
from walewright.readback.hands import Hands
from walewright.readback.sentences import ReadPhrase, Unreadable
from walewright.write.needles import LikeRuns, in_runs, listed
from walewright.write.said import worded


def told(slots: tuple[int, ...]) -> str:
    return "".join(run.text for run in worded(*listed(slots, WRITING)))


@pytest.mark.parametrize(
    ("slots", "words"),
    [
        ((4,), "R 5"),
        ((-8, -1), "L 8, L 1"),
        ((-3, -2, -1, 0), "L 3 to R 1"),
        ((-9, -5, -1, 3), "every 4th needle from L 9 to R 4"),
        ((-9, -8, -3, -2, 3, 4, 7), "2 in every 6 needles from L 9 to R 5, R 8"),
        ((0, 2), "R 1, R 3"),
    ],
)
def test_a_list_in_words(slots: tuple[int, ...], words: str) -> None:
    assert told(slots) == words


def spread(runs: tuple[LikeRuns, ...]) -> list[int]:
    return sorted(r.first + r.every * n + i for r in runs for n in range(r.times) for i in range(r.count))


@given(hs.sets(hs.integers(-40, 39), min_size=1))
def test_runs_are_the_needles_each_once(slots: set[int]) -> None:
    assert spread(in_runs(sorted(slots))) == sorted(slots)


@given(hs.sets(hs.integers(-40, 39), min_size=1))
def test_a_list_is_read_as_the_same_needles(slots: set[int]) -> None:
    line = f"RC 0, COR: Drop 2 rows on {told(tuple(sorted(slots)))}. 0 in work, 0 held, 0 waiting."
    phrases = said(line)
    assert not isinstance(phrases, Unreadable), line
    (row,) = phrases
    assert isinstance(row, ReadPhrase)
    arguments: tuple[object, ...] = row.arguments
    drop = next(one for one in arguments if isinstance(one, ReadPhrase) and one.kind == "drop_rows")
    hands = Hands()
    hands.drop_rows(2, *(one for one in drop.arguments[1:] if isinstance(one, ReadPhrase)))  # type: ignore[misc]
    assert hands.made == [op.Drop(slot, 2) for slot in sorted(slots)]
