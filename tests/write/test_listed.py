"""Rows at which stitches are moved, told in the line that knits on to a row far above; and how they are read."""

from __future__ import annotations

import pytest

from tests.in_english import read_back_all
from tests.in_english import said as read
from tests.whole.shipped_once import compiled
from walewright.readback.phrases import ReadEvents, ReadPhrase
from walewright.report.english import in_english
from walewright.write.english import LANGUAGE
from walewright.write.listed import KnitToListed, movings
from walewright.write.said import StepSaid, worded


def told(*sizes: tuple[int, ...]) -> str:
    steps = tuple(KnitToListed(200, moved=rows, heights=(8,)) for rows in sizes)
    return "".join(run.text for run in worded(*movings(StepSaid(steps, tuple(range(len(sizes)))), LANGUAGE)))


def test_needles_that_are_held_for_a_row_are_listed() -> None:
    """Tuck, long and slipped stitches; a row that asks for none of them may not be named, and none that does left out."""
    text = compiled("barnacle").plain_text
    told = "Knit to RC 24, holding needles at RC 1, 8, 13 and 20."
    assert told in text
    for wrong in ("Knit to RC 24, holding needles at RC 1, 8 and 13.", "Knit to RC 24, holding needles at RC 1, 8, 13, 14 and 20."):
        _, faults = read_back_all(text.replace(told, wrong))
        assert "the charts ask for something else than is told" in in_english(faults[0]).message


def rows(every: int, last: int, *firsts: int) -> tuple[int, ...]:
    return tuple(sorted(row for first in firsts for row in range(first, last + 1, every)))


@pytest.mark.parametrize(
    ("sizes", "words"),
    [
        ((rows(8, 60, 4),), ", moving sts every 8 rows from RC 4 to RC 60"),
        ((rows(8, 61, 2, 4, 6),), ", moving sts every 8 rows from RC 2, 4 and 6 to RC 60"),
        ((rows(8, 61, 2, 4), rows(8, 50, 4, 6)), ", moving sts every 8 rows from RC 2 (4) and 4 (6) to RC 60 (46)"),
        (((2, 4, 10, 12, 20, 28),), ", moving sts every 8 rows from RC 2 to RC 10 and every 8 rows from RC 4 to RC 28"),
        (((2, 5, 9),), ", moving sts at RC 2, 5 and 9"),
    ],
)
def test_rows_are_told_as_short_as_they_can_be(sizes: tuple[tuple[int, ...], ...], words: str) -> None:
    assert told(*sizes) == words
    (phrase,) = read(f"Knit to RC 200{words}.")
    assert isinstance(phrase, ReadPhrase)
    (events,) = (one for one in phrase.arguments if isinstance(one, ReadEvents))
    assert [events.of(size) for size in range(len(sizes))] == [("move", one) for one in sizes]
