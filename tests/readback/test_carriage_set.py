"""How the carriage is set while needles are right out: said where it begins and ends, and read there and nowhere else."""

from __future__ import annotations

import pytest

from tests.in_english import plain_text, read_back_all, write
from tests.readback.test_halves import PARTED, half, texts
from tests.write.test_repeated import block, cast_on, knitted
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step
from walewright.readback import read_back_all as read_back_in
from walewright.readback.german import LANGUAGE as GERMAN_READ
from walewright.report.english import in_english
from walewright.trade.sides import EdgeSide
from walewright.write import plain_text as plain_text_in
from walewright.write import write as write_in
from walewright.write.german import LANGUAGE as GERMAN

TURN: tuple[Step, ...] = (st.HoldAtEnd("right", 5), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(1))
SHORT_ROWS = (*TURN, st.HoldAtEnd("right", 4), st.KnitRows(2), st.ReturnHeld("right"), st.KnitRows(2), st.CastOffAll())


def plan(*steps: Step) -> tuple[SizePlan, ...]:
    return (SizePlan("S", (block("back", cast_on(20), ("Knit", (*knitted(20, 10), *steps))),)),)


TO_HOLD, TO_KNIT = ", carriage set to hold", ", carriage set to knit all"


def in_words(plans: tuple[SizePlan, ...]) -> str:
    """A plain text, its lines not broken within a sentence."""
    return plain_text(write(plans)).replace("\n" + " " * 8, " ").replace("\n" + " " * 7, " ")


def faults_of(text: str) -> list[str]:
    work, faults = read_back_all(text)
    assert bool(faults) == (work is None)
    return [in_english(fault).message for fault in faults]


def test_it_is_said_once_where_it_begins_and_once_where_it_ends() -> None:
    told = " ".join(texts(plan(*SHORT_ROWS), "back"))
    assert told.count(TO_HOLD) == told.count(TO_KNIT) == 1
    assert f"hold 5 sts{TO_HOLD}" in told
    assert "hold 4 more sts, " not in told.replace("hold 4 more sts, knit", "")
    assert f"return the needles held at the right to work{TO_KNIT}." in told.lower()
    assert faults_of(in_words(plan(*SHORT_ROWS))) == []


def test_it_ends_where_the_last_needle_comes_back() -> None:
    both = (st.HoldAtEnd("right", 5), st.HoldAtEnd("left", 5), st.ReturnHeld("left"), st.KnitRows(1), st.ReturnHeld("right"))
    told = " ".join(texts(plan(*both, st.CastOffAll()), "back"))
    assert f"held at the left to work{TO_KNIT}" not in told
    assert f"held at the right to work{TO_KNIT}." in told


@pytest.mark.parametrize(
    ("said", "instead"),
    [
        (TO_HOLD, ""),
        (TO_KNIT, ""),
        (TO_HOLD, TO_KNIT),
        (TO_KNIT, TO_HOLD),
        ("hold 4 more sts", f"hold 4 more sts{TO_KNIT}"),
        ("Knit to RC 10", f"Knit 2 rows{TO_HOLD}, knit to RC 10"),
    ],
)
def test_a_setting_that_is_left_out_or_misplaced_is_a_fault(said: str, instead: str) -> None:
    text = in_words(plan(*SHORT_ROWS))
    assert said in text
    (fault,) = faults_of(text.replace(said, instead, 1))
    assert "set to" in fault


def test_a_part_that_waits_is_gone_past() -> None:
    text = in_words(PARTED)
    assert f"into hold until its turn{TO_HOLD}" in text
    assert f"to work{TO_KNIT}." in text
    assert len(faults_of(text.replace(TO_HOLD, "", 1))) == 1
    assert len(faults_of(text.replace(f"to work{TO_KNIT}", "to work", 1))) == 1


def test_the_words_of_one_half_hold_for_the_other() -> None:
    """The other part waits in the one, and does not in the other."""

    def short_rows(side: EdgeSide) -> tuple[Step, ...]:
        turn = (st.HoldAtEnd(side, 3), st.KnitRows(1), st.WrapHeld(side), st.KnitRows(1))
        return (st.KnitRows(1), *turn, st.ReturnHeld(side), st.KnitRows(1), *half(side)[-3:])

    back = (st.CarriageAt("left"), st.SetRowCounter(54), st.ReturnPart("left", -20, -3), st.UseYarnStep("wool", "4"))
    right = (st.CentreToWaste(4, -2, 1, "neck centre"), st.HoldPart("left", -20, -3), *short_rows("right"))
    titled = (("Right half", right), ("Left half", (*back, *short_rows("left"))))
    plans = (SizePlan("S", (block("back", cast_on(20), ("Knit", knitted(20, 54)), *titled),)),)
    told = texts(plans, "back")
    assert told[-1].endswith("mirrored.")
    assert sum("if none is held any more" in text for text in told) == 1
    text = in_words(plans)
    assert faults_of(text) == []
    assert len(faults_of(text.replace(" if none is held any more", ""))) == 1


def test_it_is_said_and_read_in_german() -> None:
    text = plain_text_in(write_in(plan(*SHORT_ROWS), GERMAN), GERMAN)
    assert "Schlitten auf Halten" in text
    assert read_back_in(text, GERMAN_READ)[1] == ()
    _, faults = read_back_in(text.replace(", Schlitten auf Halten", ""), GERMAN_READ)
    assert [fault.code for fault in faults] == ["words-contradict"]
