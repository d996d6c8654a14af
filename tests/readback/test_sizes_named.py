"""Sizes that heads, sentences and lists of rows name, as they are read back."""

from __future__ import annotations

import re

import pytest

from walewright import readback, write
from walewright.knit import expand
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.languages import known, printed


def plan(size: str, rows: tuple[int, ...], *, narrows: bool) -> SizePlan:
    """Something goes on beside short rows, then a rib is latched up; of two such sizes one alone has a decrease and a hole."""
    outer = (st.KnitRows(2), st.Decrease("right end", 1, 2), st.KnitRows(2)) if narrows else (st.KnitRows(4),)
    short = (st.HoldAtEnd("left", 2), st.KnitRows(2), st.ReturnHeld("left"), st.KnitRows(2))
    hole: tuple[Step, ...] = (st.EyeletAt(3, "right"), st.KnitRows(2)) if narrows else ()
    steps = (
        *(st.CarriageAt("right"), st.NeedlesToWork(-12, 11, 24), st.UseYarnStep("wool", "4")),
        *(st.ClosedStart("e-wrap"), st.SetRowCounter(0)),
        st.Together(0, 4, (st.Track("outer edge", outer), st.Track("short rows at the left", short))),
        *hole,
        *(st.SetRowCounter(0), st.LatchInStages(3, 1, rows), st.KnitTo(rows[-1]), st.BreakOff(), st.OffOnWaste(8, "end")),
    )
    return SizePlan(size, (StepBlock("back", 1, (("Knit", steps),)),))


def plans(one: str, other: str) -> tuple[SizePlan, ...]:
    return (
        plan(one, (6, 24, 42, 60, 76, 90), narrows=False),
        plan(other, (6, 26, 44, 62, 80), narrows=True),
    )


NAMES = [("S", "M"), ("3-6m", "6-9m"), ("2_years", "10_years"), ("34", "36"), ("5/6", "8.5"), ("only", "to")]


@pytest.mark.parametrize("name", known())
@pytest.mark.parametrize("sizes", NAMES, ids=" ".join)
def test_whatever_sizes_are_called(sizes: tuple[str, str], name: str) -> None:
    language = printed(name)
    told = plans(*sizes)
    text = write.plain_text(write.write(told, language.writing), language.writing)
    works, faults = readback.read_back_all(text, language.reading)
    assert faults == ()
    assert works == tuple(expand(one) for one in told)


def places(text: str, size: str) -> list[int]:
    """Where the size is named, but in the list of all sizes."""
    return [m.start() for m in re.finditer(rf"\b{size}\b", text) if m.start() > text.index("\n")]


@pytest.mark.parametrize("name", known())
def test_a_size_that_the_text_has_not_is_found_wherever_it_is_named(name: str) -> None:
    language = printed(name)
    text = write.plain_text(write.write(plans("petite", "tall"), language.writing), language.writing)
    at = places(text, "tall")
    # Two sentences in square brackets, a head, and the rows of a rib.
    assert len(at) == 4
    for place in at:
        _, faults = readback.read_back_all(f"{text[:place]}wide{text[place + 4 :]}", language.reading)
        assert {fault.code for fault in faults} == {"words-size-count"}


@pytest.mark.parametrize("name", known())
def test_another_size_is_another_work(name: str) -> None:
    language = printed(name)
    told = plans("petite", "tall")
    text = write.plain_text(write.write(told, language.writing), language.writing)
    for place in places(text, "tall")[:-1]:
        works, _ = readback.read_back_all(f"{text[:place]}petite{text[place + 4 :]}", language.reading)
        assert works != tuple(expand(one) for one in told)
