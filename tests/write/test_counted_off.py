"""What is counted off within a sentence: wales of a panel named one by one where they are few, rows of a chart told by how often
they come, a spread told round by round; each against counting through."""

from __future__ import annotations

from collections.abc import Sequence

import pytest
from hypothesis import given
from hypothesis import strategies as st_

from walewright.knit import steps as st
from walewright.languages import printed
from walewright.write.language import PrintedLanguage
from walewright.write.listed import KnitToListed, Way
from walewright.write.on_the_way import FEW, _firsts, _regular, and_on_the_way
from walewright.write.rounds import MOST_NEEDLES, few_wales, readings, rounds, wales
from walewright.write.said import StepSaid

ENGLISH, GERMAN = printed("english").writing, printed("german").writing


def latched(first: int, last: int, begin: int, every: int) -> list[int]:
    """Counted from the centre mark outwards in both halves: needle number begin + 1, and every so manieth from there."""
    numbers = set(range(begin, 100, every))
    return [slot for slot in range(first, last + 1) if (slot if slot >= 0 else -slot - 1) in numbers]


def name(slot: int) -> str:
    return f"L {-slot}" if slot < 0 else f"R {slot + 1}"


def text(parts: Sequence[object]) -> str:
    return "".join(part if isinstance(part, str) else part.text for part in parts)  # type: ignore[attr-defined]


@given(st_.integers(-20, 20), st_.integers(0, 25), st_.integers(0, 3), st_.integers(2, 4))
def test_few_wales_are_named_from_left_to_right(first: int, wide: int, begin: int, every: int) -> None:
    panel = StepSaid((st.LatchPanel(every, begin, 20, first, first + wide),), (0,))
    wanted = latched(first, first + wide, begin, every)
    assert few_wales(panel) == (0 < len(wanted) <= MOST_NEEDLES)
    if wanted:
        said = text(wales(panel, ENGLISH))
        assert said.replace(" and ", ", ").split(", ") == [name(slot) for slot in wanted]


@pytest.mark.parametrize(("last", "few"), [(16, True), (17, True), (18, False)])
def test_six_are_few(last: int, few: bool) -> None:
    """R 1, R 4, R 7 …: the sixth is R 16, the seventh R 19."""
    one = st.LatchPanel(3, 0, 20, 0, last)
    assert few_wales(StepSaid((one,), (0,))) is few
    assert few_wales(StepSaid((st.LatchPanel(3, 0, 20, 0, 3), one, None), (0, 1, 2))) is few
    assert not few_wales(StepSaid((st.LatchPanel(3, 0, 20, 1, 2), one), (0, 1)))


def test_a_size_with_fewer_wales_has_dashes_at_the_end() -> None:
    both = StepSaid((st.LatchPanel(3, 0, 20, 0, 7), st.LatchPanel(3, 0, 20, 0, 4)), (0, 1))
    assert text(wales(both, ENGLISH)) == "R 1, R 4 and R 7 (–)"


# ------------------------------------------------------------------------------------------------------------ rows of a chart

ROWS = st_.lists(st_.integers(0, 60), unique=True, min_size=1, max_size=12).map(sorted)


@given(ROWS, st_.integers(1, 12))
def test_rows_are_told_apart_by_where_they_lie_in_the_repeat(rows: list[int], every: int) -> None:
    """The first one of each row of the repeat that asks."""
    firsts = _firsts(tuple(rows), every)
    assert list(firsts) == sorted(firsts)
    assert {row % every for row in firsts} == {row % every for row in rows}
    assert all(min(r for r in rows if r % every == row % every) == row for row in firsts)
    assert len({row % every for row in firsts}) == len(firsts)


def to(row: int, moved: Sequence[int], *heights: int) -> KnitToListed:
    return KnitToListed(row, way=Way(moved=tuple(moved), heights=heights))


@pytest.mark.parametrize(
    ("moved", "heights", "every", "firsts"),
    [
        # Four are named one by one; of five it is told how often they come.
        ((0, 4, 8, 12), (4,), None, ()),
        ((0, 4, 8, 12, 16), (4,), 4, (0,)),
        # By twos in a repeat of four.
        ((0, 2, 4, 6, 8), (4,), 2, (0,)),
        # Two rows of a repeat of six.
        ((0, 2, 6, 8, 12, 14), (6,), 6, (0, 2)),
        # Hardly twice: one by one is as short.
        ((0, 2, 3, 6, 8), (6,), None, ()),
        # One comes only once, one misses a time; charts of two heights.
        ((0, 2, 6, 12, 18), (6,), None, ()),
        ((0, 6, 12, 24, 30), (6,), None, ()),
        ((0, 2, 6, 8, 12, 14), (6, 4), None, ()),
        ((0, 2, 6, 8, 12, 14), (), None, ()),
    ],
)
def test_how_often_rows_come(moved: tuple[int, ...], heights: tuple[int, ...], every: int | None, firsts: tuple[int, ...]) -> None:
    assert _regular([moved], {heights}) == (None if every is None else (every, [firsts]))
    assert FEW == 4


def test_a_size_that_has_none_or_few_is_told_with_those_that_have_many() -> None:
    many = tuple(range(0, 40, 6)) + tuple(range(2, 40, 6))
    lists = [tuple(sorted(many)), (), None, (2, 6)]
    assert _regular(lists, {(6,)}) == (6, [(0, 2), (), (), (2, 6)])


def test_rows_are_told_in_words_and_graded() -> None:
    def moved(*steps: KnitToListed | None, language: PrintedLanguage = ENGLISH) -> str:
        return text(and_on_the_way(StepSaid(steps, tuple(range(len(steps)))), language))

    few, many = to(20, (2, 5), 4), to(20, (0, 4, 8, 12, 16), 4)
    assert "2 and 5" in moved(few)
    assert "2 und 5" in moved(few, language=GERMAN)
    told = moved(many)
    assert all(figure in told for figure in ("4", "0", "16"))
    assert "8" not in told
    assert moved(to(20, (), 4), None) == ""
    assert "16 (20)" in moved(many, to(24, (0, 4, 8, 12, 16, 20), 4))


@given(st_.lists(st_.one_of(st_.none(), st_.lists(st_.integers(1, 99), min_size=1, max_size=5).map(tuple)), min_size=1, max_size=4))
def test_lists_of_one_length_are_graded_and_others_told_size_by_size(lists: list[tuple[int, ...] | None]) -> None:
    sizes = tuple("ABCD"[: len(lists)])
    if not any(lists):
        return
    told = text(readings(lists, tuple(range(len(lists))), ENGLISH.for_sizes(sizes)))
    if len({len(rows) for rows in lists if rows}) == 1:
        assert told.count(" and ") <= 1
        assert ";" not in told
        return
    assert "–" not in told
    own = {name: rows for part in told.split("; ") for names, _, rows in [part[1:].partition(") ")] for name in names.split(", ")}
    listed = {size: ", ".join(map(str, rows)) for size, rows in zip(sizes, lists, strict=True) if rows}
    assert {size: rows.replace(" and ", ", ") for size, rows in own.items()} == listed


# -------------------------------------------------------------------------------------------------------------- rounds


@pytest.mark.parametrize(
    ("step", "told"),
    [
        (st.SpreadEvenly(0, 19, 20, "two together", 3, 5, 0, 0), ["3", "5 times"]),
        (st.SpreadEvenly(0, 21, 22, "two together", 3, 4, 1, 3), ["3", "4 times", "1", "3 times"]),
        (st.SpreadEvenly(0, 21, 22, "an empty needle", 3, 5, 0, 0), ["3", "5 times", "2"]),
        (st.SpreadEvenly(0, 21, 22, "two together", 3, 4, 0, 0, 1, 1), ["1", "3", "4 times", "4"]),
    ],
)
def test_a_spread_is_told_round_by_round(step: st.SpreadEvenly, told: list[str]) -> None:
    """Its half gap first, then the rounds, those of another length, and what is left."""
    assert step.left == 22 - 16 - 2 if step.first_runs else step.left >= 0
    said = text(rounds(StepSaid((step,), (0,)), ENGLISH))
    at = 0
    for figure in told:
        at = said.index(figure, at) + len(figure)
    assert said.count("times") == sum("times" in figure for figure in told)
