"""Deep ribs and parts on cord, read back: the same fabric as the plan's, and what a changed number comes to."""

from __future__ import annotations

import re

import pytest

from tests.in_english import plain_text, read_back, read_back_all, write
from walewright.bed import Bed, knit
from walewright.knit import expand
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.report.english import in_english

BED = Bed(100, (1, 2, 3))
SOONER = ", and sooner where its st is about to be moved, cast off, held, taken off or hung with another"


def piece(size: str, half: int, *steps: Step) -> SizePlan:
    begin = (
        *(st.CarriageAt("right"), st.NeedlesToWork(-half, half - 1, 2 * half), st.UseYarnStep("wool", "4")),
        *(st.ClosedStart("e-wrap"), st.SetRowCounter(0)),
    )
    return SizePlan(size, (StepBlock("back", 1, (("Knit", (*begin, *steps)),)),))


def ribbed(size: str, half: int, rows: tuple[int, ...]) -> SizePlan:
    """A rib that narrows, parts for a neck whose left half waits on cord, and is cast off."""
    top = rows[-1]
    wait = top - 20
    done: tuple[Step, ...] = (
        st.LatchInStages(3, 1, rows, "disturbed"),
        *(st.KnitTo(7), st.Decrease("both ends", 1, 2), st.KnitTo(15), st.IncreaseFashioned("both ends", 2), st.KnitTo(20)),
        st.CentreToWaste(4, -2, 1, "neck centre"),
        st.PartOnCord("left", -half, -3, wait),
        *(st.KnitTo(24), st.EyeletAt(4, "right"), st.KnitTo(top), st.BreakOff(), st.OffOnWaste(8, "shoulder right")),
        *(st.CarriageAt("left"), st.SetRowCounter(20), st.DrawPartsCord("left", -half, -3), st.ReturnPart("left", -half, -3)),
        *(st.UseYarnStep("wool", "4"), st.KnitTo(27), st.Decrease("right end", 1, 2), st.KnitTo(top)),
        *(st.BreakOff(), st.OffOnWaste(8, "shoulder left")),
    )
    return piece(size, half, *done)


PLANS = (ribbed("S", 12, (12, 24, 54)), ribbed("M", 14, (12, 24, 36, 60)))
TEXT = plain_text(write(PLANS))


def test_the_words_knit_the_plan() -> None:
    works, faults = read_back_all(TEXT)
    assert faults == ()
    assert works is not None
    for plan, work in zip(PLANS, works, strict=True):
        planned, read = knit(expand(plan), BED), knit(work, BED)
        assert planned.faults == read.faults == ()
        assert planned.fabrics == read.fabrics
        assert planned.fabrics[0].latched == read.fabrics[0].latched
        # The tools reach a column at the decrease in the smaller size, at the increase in the larger one.
        rows = {12, 20, 24, 27} | ({7, 54} if plan.size == "S" else {15, 36, 60})
        assert {row for _, row, *_ in planned.fabrics[0].latched} == rows


def test_sizes_with_fewer_rows_have_their_own() -> None:
    assert "at RC (S) 12, 24 and 54; (M) 12, 24, 36 and 60, each" in " ".join(TEXT.split())


def flat(text: str) -> str:
    """With every sentence on one line, so that words can be replaced in it."""
    return re.sub(r"\n {4,}", " ", text)


@pytest.mark.parametrize(
    ("there", "instead"),
    [
        (" every 3rd st", " every 5th st"),
        ("beginning with L 2 and R 2", "beginning with L 1 and R 1"),
        (", at most down to the RC named before" + SOONER, ""),
    ],
)
def test_other_rows_are_another_fabric(there: str, instead: str) -> None:
    assert there in flat(TEXT)
    work, faults = read_back(flat(TEXT).replace(there, instead, 1), 0)
    assert faults == ()
    assert work is not None
    planned, read = knit(expand(PLANS[0]), BED), knit(work, BED)
    assert read.faults or read.fabrics != planned.fabrics


@pytest.mark.parametrize(
    ("there", "instead"),
    [
        ("it waits 34 (40) rows", "it waits 33 (40) rows"),
        ("(S) 12, 24 and", "(S) 24, 12 and"),
        # What is told where the rows are knitted is something else then.
        ("(S) 12, 24 and", "(S) 12, 26 and"),
        ("(S) 12, 24 and", "(S) 12 and"),
        ("(S) 12, 24 and", "(S) 12, 12 and"),
        ("beginning with L 2 and R 2", "beginning with L 2 and R 3"),
        ("Push the needles of the left part, L 12 (14) to L 3,", "Push the needles of the left part, L 12 (14) to L 4,"),
        ("Return the waiting left part, L 12 (14) to L 3,", "Return the waiting left part, L 11 (14) to L 2,"),
    ],
)
def test_words_that_contradict(there: str, instead: str) -> None:
    assert there in flat(TEXT)
    work, faults = read_back(flat(TEXT).replace(there, instead, 1), 0)
    assert work is None
    assert [f.code for f in faults] == ["words-contradict"]


def test_a_cord_that_is_not_drawn_keeps_the_part() -> None:
    text, found = re.subn(r"Push the needles of the left part.*draw the ravel cord out of them\.", "Note: none.", flat(TEXT))
    assert found == 1
    work, faults = read_back(text, 0)
    assert work is None
    assert "not waiting" in in_english(faults[0]).message


@pytest.mark.parametrize(
    ("rows", "told"),
    [
        (((12, 24, 36, 48, 60), (12, 24, 36, 48, 60, 72)), "every 12 rows from RC 12 to RC 60 (72), each"),
        (((12, 24, 36, 48, 60, 66), (12, 24, 36, 48, 58)), "every 12 rows from RC 12 to RC 60 (48) and at RC 66 (58), each"),
        (((12, 24, 36, 48, 60, 72), (12, 24, 36, 46)), "every 12 rows from RC 12 to RC 60 (36) and at RC 72 (46), each"),
        (((12, 24, 36, 50, 60), (12, 24, 36, 48, 60)), "at RC 12, 24, 36, 50 (48) and 60, each"),
        # So many brackets that each size has its rows by itself.
        (
            ((6, 24, 42, 60, 76, 90), (6, 26, 44, 62, 80)),
            "at RC (S) 6, 24, 42, 60, 76 and 90; (M) 6, 26, 44, 62 and 80, each",
        ),
        (
            ((6, 8, 42, 60, 76), (7, 9, 44, 62, 80), (6, 8, 42, 60, 76)),
            "at RC (S, L) 6, 8, 42, 60 and 76; (M) 7, 9, 44, 62 and 80, each",
        ),
        (((12, 24, 36, 48), (12, 24, 36)), "at RC (S) 12, 24, 36 and 48; (M) 12, 24 and 36, each"),
    ],
)
def test_many_rows_are_told_by_how_often_they_come(rows: tuple[tuple[int, ...], ...], told: str) -> None:
    plans = tuple(
        piece(size, half, st.LatchInStages(3, 1, of), st.KnitTo(of[-1]), st.BreakOff(), st.OffOnWaste(8, "end"))
        for size, half, of in zip("SML", (12, 14, 16), rows, strict=False)
    )
    text = plain_text(write(plans))
    assert f", {told} time down" in " ".join(text.split())
    assert read_back_all(text) == (tuple(expand(plan) for plan in plans), ())
