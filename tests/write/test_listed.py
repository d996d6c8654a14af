"""Rows at which stitches are moved, told in the line that knits on to a row far above; and how they are read."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st_

from tests.in_english import read_back_all
from tests.in_english import said as read
from tests.whole.shipped_once import compiled
from walewright.knit import steps as st
from walewright.languages import known, printed
from walewright.readback import sentences
from walewright.readback.phrases import ReadEvents, ReadPhrase
from walewright.readback.sizes import of_sizes, strangers
from walewright.report.english import in_english
from walewright.write.english import LANGUAGE
from walewright.write.listed import MOST_STAGES, KnitToListed, Way, told_briefly, way_of
from walewright.write.on_the_way import and_on_the_way
from walewright.write.said import StepSaid, worded
from walewright.write.words import phrase

SIZES = ("XS", "S", "M", "L", "XL")


def told(*sizes: tuple[int, ...]) -> str:
    steps = tuple(KnitToListed(200, way=Way(moved=rows, heights=(8,))) for rows in sizes)
    language = LANGUAGE.for_sizes(SIZES[: len(sizes)])
    return "".join(run.text for run in worded(*and_on_the_way(StepSaid(steps, tuple(range(len(sizes)))), language)))


def test_needles_that_are_held_for_a_row_are_listed() -> None:
    """Tuck, long and slipped stitches; a row that asks for none of them may not be named, and none that does left out."""
    text = compiled("barnacle").plain_text
    told = "holding\n        needles at RC 1, 8, 13 and 20,"
    assert told in text
    for wrong in ("holding needles at RC 1, 8 and 13,", "holding needles at RC 1, 8, 13, 14 and 20,"):
        _, faults = read_back_all(text.replace(told, wrong))
        assert "the charts, stripes or ribs ask for something else than is told" in in_english(faults[0]).message


def rows(every: int, last: int, *firsts: int) -> tuple[int, ...]:
    return tuple(sorted(row for first in firsts for row in range(first, last + 1, every)))


@pytest.mark.parametrize(
    ("sizes", "words"),
    [
        ((rows(8, 60, 4),), ", moving sts every 8 rows from RC 4 to RC 60"),
        ((rows(8, 61, 2, 4, 6),), ", moving sts every 8 rows from RC 2, 4 and 6 to RC 60"),
        ((rows(8, 61, 2, 4), rows(8, 50, 4, 6)), ", moving sts every 8 rows from RC 2 (4) and 4 (6) to RC 60 (46)"),
        (((2, 4, 10, 12, 20, 28),), ", moving sts at RC 2, 4, 10, 12, 20 and 28"),
        (((2, 5, 9),), ", moving sts at RC 2, 5 and 9"),
        (((2, 5), (4, 9)), ", moving sts at RC 2 (4) and 5 (9)"),
        (((2, 5), (9,), (2, 5)), ", moving sts at RC (XS, M) 2 and 5; (S) 9"),
    ],
)
def test_rows_are_told_as_short_as_they_can_be(sizes: tuple[tuple[int, ...], ...], words: str) -> None:
    assert told(*sizes) == words
    assert readings(words, len(sizes)) == list(sizes)


def readings(words: str, sizes: int) -> list[tuple[int, ...] | None]:
    """At which readings of the counter stitches are moved, as the words are read; None where they go by what was said before."""
    told = read(f"Knit to RC 200{words}.")
    assert isinstance(told, tuple)
    assert not strangers(told, SIZES[:sizes])
    _, phrase = of_sizes(told, SIZES[:sizes])
    assert isinstance(phrase, ReadPhrase)
    (events,) = phrase.arguments
    assert isinstance(events, ReadEvents)
    at = [events.of(size) for size in range(sizes)]
    assert {what for what, _ in at} == {"move"}
    return [rows for _, rows in at]


REPEATED = st_.builds(
    lambda begin, end, places: tuple(row for row in range(begin, end) if row % 8 in places),
    st_.integers(0, 40),
    st_.integers(0, 90),
    st_.sets(st_.integers(0, 7), max_size=4),
)
ANYHOW = st_.lists(st_.integers(0, 90), unique=True, max_size=9).map(lambda rows: tuple(sorted(rows)))


@given(st_.lists(st_.one_of(REPEATED, ANYHOW), min_size=2, max_size=5).filter(any))
def test_whatever_rows_are_told_is_read(sizes: list[tuple[int, ...]]) -> None:
    words = told(*sizes)
    if words == GONE_BY:
        assert len({*sizes}) > 1
        assert readings(words, len(sizes)) == [None] * len(sizes)
    else:
        assert readings(words, len(sizes)) == sizes


GONE_BY = ", moving sts where the chart asks for it"


@pytest.mark.parametrize(
    ("sizes", "gone_by"),
    [
        # One size may have one more than another, not two.
        (((2, 9), (3, 7, 9)), False),
        (((9,), (3, 7, 9)), True),
        # Counted off from a dash, or from a reading to itself.
        ((rows(8, 60, 2), rows(8, 60, 2, 4)), True),
        ((rows(8, 60, 2), (2,)), True),
        # Two figures in brackets to be counted off from, and three.
        ((rows(8, 60, 1, 2, 4), rows(8, 60, 1, 3, 5)), False),
        ((rows(8, 60, 0, 2, 4), rows(8, 60, 1, 3, 5)), True),
        # One size alone never has a dash.
        ((rows(8, 60, 0, 2, 5),), False),
    ],
)
def test_lists_full_of_dashes_are_said_in_words(sizes: tuple[tuple[int, ...], ...], gone_by: bool) -> None:
    assert (told(*sizes) == GONE_BY) is gone_by


def test_each_kind_but_purl_columns_has_words_that_hold_for_every_size() -> None:
    """They are read in each language; the chart's key sends its reader to the readings of purl columns."""
    few, many = (2,), (2, 5, 9)
    ways = [
        Way(rows, rows, rows, rows, rows, tuple((row, (0,)) for row in rows), rows, rows, heights=(8,), period=(12,))
        for rows in (few, many)
    ]
    steps = tuple(KnitToListed(200, way=way) for way in ways)
    for name in known():
        language = printed(name)
        made = "".join(run.text for run in worded(*phrase(StepSaid(steps, (0, 1)), language.writing.for_sizes(SIZES[:2]))))
        said = sentences.said(f"{made}.", language.reading)
        assert not isinstance(said, sentences.Unreadable), made
        events = [a for one in said if isinstance(one, ReadPhrase) for a in one.arguments if isinstance(a, ReadEvents)]
        assert {one.what for one in events} == {*READ_KINDS}
        assert {one.what for one in events if one.rows} == {"columns"}


READ_KINDS = ("cross", "move", "drop", "hold", "latch", "columns", "change", "again")


def test_where_nothing_is_in_force_in_a_size_all_readings_are_named() -> None:
    """A chart that is worked once and asks for nothing in these rows may have ended there."""
    steps = tuple(KnitToListed(200, way=Way(moved=rows)) for rows in ((), (2, 5, 9)))
    assert "".join(run.text for run in worded(*and_on_the_way(StepSaid(steps, (0, 1)), LANGUAGE))).count("–") == 3


def changed(text: str, line: str, wrong: str) -> str:
    """The message where one line of a text is changed."""
    assert line in text
    _, faults = read_back_all(text.replace(line, wrong, 1))
    return in_english(faults[0]).message


@pytest.mark.parametrize(
    ("name", "line", "wrong"),
    [
        # In a repeat, in rows before one move, in a row of a table: left out, or one too many.
        ("anemone", "moving sts at\n        RC – (180: –: 188: –: 196)", "moving sts at\n        RC – (180: –: 188: –: –)"),
        ("anemone", "(M) 186 and 188; (L) 190;", "(M) 186; (L) 190;"),
        ("anemone", "(M) 186 and 188; (L) 190;", "(M) 186 and 188;"),
        ("anemone", "(M) 186 and 188; (L) 190;", "(M) 186 and 188; (L) 192;"),
        ("anemone", "moving sts at\n        RC – (180: –: 188: –: 196)", "moving sts at\n        RC 176 (180: –: 188: –: 196)"),
        ("marram", "latching up at RC 6, move", "latching up at RC 4 and 6, move"),
        ("marram", "latching up at RC 60 (60: 62:", "latching up at RC 60 (60: 60:"),
        # What was said before is gone by, where nothing has been.
        ("shoal", "Knit to RC 16.", "Knit to RC 16, changing the yarn as the stripes go on."),
        # Ladders begun and dropped.
        ("barnacle", "moving sts at RC 3 and 15", "moving sts at RC 3 and 14"),
        ("barnacle", "dropping ladders at RC 7 and 19", "dropping ladders at RC 7"),
        ("barnacle", "dropping ladders at RC 7 and 19", "dropping ladders at RC 6 and 19"),
        # Row 1 of a chart in two yarns.
        ("saltmarsh", "row 1 of the chart again at RC 68", "row 1 of the chart again at RC 67"),
        # Purl columns: ended, and deep ones.
        ("barnacle", "purl columns at RC 11 and 23", "purl columns at RC 11"),
        ("hawser", "columns on L 9 and R 9 every 12 rows\n        from RC 12", "columns on L 9 and R 8 every 12 rows from RC 12"),
        ("hawser", "columns on L 9 and R 9 every 12 rows\n        from RC 12", "columns on L 9 and R 9 every 12 rows from RC 24"),
        ("hawser", "columns on L 9 and R 9 every 12 rows\n        from RC 12", "columns every 12 rows from RC 24"),
        # And those that wait where the neck's centre is taken off.
        ("hawser", "that wait on L 9, L 8, L 1, R 1", "that wait on L 9, L 8, L 2, R 1"),
    ],
)
def test_what_is_told_on_the_way_has_to_be_so(name: str, line: str, wrong: str) -> None:
    assert "something else than is told" in changed(compiled(name).plain_text, line, wrong)


@pytest.mark.parametrize("stages", [MOST_STAGES, MOST_STAGES + 1])
def test_many_stages_of_a_rib_are_told_by_its_own_line_alone(stages: int) -> None:
    """In all sizes, also in one that has fewer of them in its rows; what charts ask for is told as before."""
    few, many = (Way(crossed=(3,), latched=tuple(range(24, 24 + 24 * n, 24))) for n in (1, stages))
    column = (KnitToListed(200, way=few), None, KnitToListed(220, way=many), st.KnitTo(200))
    made = told_briefly(column)
    kept = stages <= MOST_STAGES
    assert [way_of(step).latched if step else None for step in made] == [
        few.latched if kept else (),
        None,
        many.latched if kept else (),
        (),
    ]
    assert [way_of(step).crossed if step else None for step in made] == [(3,), None, (3,), ()]
