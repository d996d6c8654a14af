"""More than two shapings at the same time stand in a table by rows, and rows of it in which the same is done as one."""

from __future__ import annotations

from collections.abc import Sequence

import pytest
from hypothesis import given
from hypothesis import strategies as hs

from tests.whole.shipped_once import compiled
from walewright.knit import steps as st
from walewright.knit.merging import merged
from walewright.knit.steps import SizePlan, StepBlock
from walewright.languages import printed
from walewright.write import write
from walewright.write.align import Column
from walewright.write.model import Sentence
from walewright.write.row_by_row import Entry
from walewright.write.runs import EntryRun, in_runs
from walewright.write.together import MOST_READINGS, MOST_TRACKS, few_readings, told_by_readings

LEFT, RIGHT = st.Decrease("left end", 1, 2), st.Decrease("right end", 1, 0)


def lines(name: str) -> list[Sentence]:
    outcome = compiled(name)
    design = outcome.result()[0]
    told = write(outcome.plans, printed().writing, design.sizes, design.charts)
    return [sentence for section in told.sections for sentence in section.sentences]


@pytest.mark.parametrize("name", ["teasel", "fairlead", "turnstone", "whimbrel"])
def test_nobody_counts_more_than_two_things_at_once(name: str) -> None:
    together = [step for plan in compiled(name).plans for b in plan.blocks for _, steps in b.paragraphs for step in steps]
    several = [step for step in together if isinstance(step, st.Together) and len(step.tracks) > MOST_TRACKS]
    assert several
    side_by_side, most = 0, 0
    for line in lines(name):
        if line.kinds == ("Together",):
            side_by_side = 0
        elif line.goes_on and line.cells is None:
            # What is done once has no rows to count.
            side_by_side += "KnitRows" in line.kinds or "Repeat" in line.kinds
            most = max(most, side_by_side)
    assert most <= MOST_TRACKS
    crowded = any(sum(not (told_by_readings(t) or few_readings(t)) for t in step.tracks) > MOST_TRACKS for step in several)
    assert any(line.cells for line in lines(name)) == crowded


def test_moves_of_all_tracks_are_in_the_order_worked() -> None:
    one = st.Track("left", (st.KnitRows(2), LEFT, st.Repeat((st.KnitRows(2), LEFT), 2), st.KnitRows(2)))
    other = st.Track("right", (st.KnitRows(4), st.HoldAtEnd("right", 3), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(3)))
    hold, wrap = st.HoldAtEnd("right", 3), st.WrapHeld("right")
    two, first, last = st.KnitRows(2), st.KnitRows(1), st.KnitRows(2)
    wanted = [two, LEFT, two, hold, LEFT, first, wrap, first, LEFT, last]
    assert list(merged(st.Together(10, 18, (one, other)))) == wanted


def entries(rows: Sequence[int | None], step: st.Step = LEFT) -> Column[Entry]:
    return tuple(None if row is None else Entry(row, (step,), ((100 - row, 0),)) for row in rows)


def test_the_same_every_so_many_rows_is_one_row() -> None:
    table = [entries((20, 30)), entries((22, 33)), entries((24, 36)), entries((26, None)), entries((30, 40), RIGHT)]
    run, last = in_runs(table)
    assert isinstance(run, EntryRun)
    assert run.every == (2, 3)
    assert [e and e.row for e in run.first] == [20, 30]
    assert [e and e.row for e in run.last] == [26, 36]
    assert last == table[-1]


def test_two_rows_and_one_size_stay_as_they_are() -> None:
    table = [entries((20, 30)), entries((22, 33))]
    assert in_runs(table) == table
    single = [entries((row,)) for row in range(20, 30, 2)]
    assert in_runs(single) == single


GAPS = hs.lists(hs.tuples(hs.sampled_from([0, 1, 2, 3]), hs.sampled_from([0, 1, 2, 3]), hs.booleans()), max_size=12)


@given(GAPS)
def test_runs_say_what_the_table_says(gaps: list[tuple[int, int, bool]]) -> None:
    """A gap of 0: the size does nothing in that row."""
    at, table = [10, 10], list[Column[Entry]]()
    for left, right, which in gaps:
        at = [at[0] + left, at[1] + right]
        if left or right:
            table.append(entries((at[0] if left else None, at[1] if right else None), LEFT if which else RIGHT))
    told: list[list[tuple[int, st.Step]]] = [[], []]
    for row in in_runs(table):
        for size in (0, 1):
            first = (row.first if isinstance(row, EntryRun) else row)[size]
            if first is None:
                continue
            last = row.last[size] if isinstance(row, EntryRun) else first
            every = row.every[size] if isinstance(row, EntryRun) else None
            assert last is not None
            told[size] += [(at, first.steps[0]) for at in range(first.row, last.row + 1, every or 1)]
    wanted = [[(e.row, e.steps[0]) for row in table if (e := row[size]) is not None] for size in (0, 1)]
    assert told == wanted


def test_rows_with_the_carriage_at_the_other_side_are_told_mirrored() -> None:
    """The front of a garment with a deep neck: its second half is the first one, left and right changed, row by row."""
    assert any(line.kinds[:1] == ("Mirrored",) and "HoldAtEnd" in line.kinds for line in lines("fairlead"))


def three_at_once(few: int) -> tuple[Sentence, ...]:
    """A neck and short rows that are counted, and an outer edge that decreases so many times."""
    outer = (st.Repeat((st.KnitRows(2), RIGHT), few), st.KnitRows(20 - 2 * few))
    neck = (st.Repeat((st.KnitRows(2), LEFT), 10),)
    turn = st.Repeat((st.HoldAtEnd("right", 2), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(1)), 3)
    tracks = (st.Track("outer edge", outer), st.Track("neck", neck), st.Track("short rows", (st.KnitRows(14), turn)))
    steps = (st.Now(60, 100, "right"), st.Together(100, 120, tracks), st.Now(40, 120, "right"))
    told = write((SizePlan("M", (StepBlock("front", 1, (("Knit and shape", steps),)),)),), printed().writing)
    return told.sections[0].sentences


def test_what_is_done_a_few_times_beside_two_others_is_looked_up() -> None:
    few = three_at_once(MOST_READINGS)
    assert not any(line.cells for line in few)
    assert [line.text for line in few if line.text.startswith("For the outer edge")] == [
        "For the outer edge: at RC 102, 104, 106 and 108 decrease 1 st at the right end."
    ]
    assert any(line.cells for line in three_at_once(MOST_READINGS + 1))
