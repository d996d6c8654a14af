"""Every step and every single move of a bench copy, in each language: written and read back alone, it is itself, whatever
needles it is told of."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from tests.write.garments import SAMPLES
from walewright.knit import bench_steps as bs
from walewright.knit import steps as st
from walewright.knit.bench_steps import BenchLine
from walewright.languages import printed
from walewright.readback.bench import _slots
from walewright.readback.phrases import ReadPhrase
from walewright.readback.sentences import Unreadable, said
from walewright.write import bench
from walewright.write.lines import lines
from walewright.write.lines import sentence as line_in_words

LANGUAGES = ("english", "german")


def rule(step: st.Step) -> str:
    return re.sub(r"(?<=.)([A-Z])", r"_\1", type(step).__name__).lower()


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("step", [s for s in SAMPLES if not isinstance(s, st.Say | st.Repeat)], ids=rule)
def test_a_step_is_read_as_itself(step: st.Step, language: str) -> None:
    tongue = printed(language)
    (line,) = lines([(step,)])
    words = line_in_words(line, (0,), tongue.writing).text
    told = said(words, tongue.reading)
    assert not isinstance(told, Unreadable), words
    assert [t.kind for t in told if isinstance(t, ReadPhrase)] == [rule(step)]
    # Whatever the order of its words, the hands are given the same as in English.
    english = printed("english")
    assert told == said(line_in_words(line, (0,), english.writing).text, english.reading)


NEEDLES = [
    (4,),
    (-5,),
    (4, 7),
    (-1, 0),
    (-6, -5, -4),
    (-8, -6, -4, -2, 0, 2),
    (-9, -8, -5, -4, -1, 0, 3, 4),
    (-20, -3, -2, -1, 6, 9, 12, 15, 18),
]
"""One, in either half; two; a run; every so manieth; groups; and some of each."""

MOVES: list[Callable[[tuple[int, ...]], st.Step]] = [
    bs.HoldNeedles,
    bs.ReturnNeedles,
    bs.FloatPast,
    bs.DrawLongOn,
    lambda needles: bs.KnitNeedles(needles, "navy"),
    lambda needles: bs.LayColours(("navy",), (needles,), "wool"),
    lambda needles: bs.MoveStitches(needles, "left"),
    lambda needles: bs.MoveStitches(needles, "right"),
    lambda needles: bs.DropRows(needles, 7),
    lambda needles: bs.LatchColumns(needles, 7),
    lambda needles: bs.LatchOn(needles, 7),
]


def phrases(step: st.Step, language: str) -> tuple[ReadPhrase, ...]:
    """What is read of a line of a bench copy in which the step is done."""
    tongue = printed(language)
    words = bench._sentence(BenchLine(2, 12, "left", (step,), 40, 0, 0), tongue.writing).text
    told = said(words, tongue.reading)
    assert not isinstance(told, Unreadable), words
    (line,) = told
    assert isinstance(line, ReadPhrase)
    assert line.kind == "bench_row"
    return tuple(a for a in line.arguments if isinstance(a, ReadPhrase) and not a.kind.startswith("bench_"))


def slots(phrase: ReadPhrase) -> list[int]:
    """The needles that a phrase tells of, in lists of its own or of what it is told by."""
    listed = [a for a in phrase.arguments if isinstance(a, ReadPhrase)]
    inner = [b for a in listed for b in a.arguments if isinstance(b, ReadPhrase)]
    return _slots(inner or listed)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("move", MOVES, ids=lambda move: type(move((0,))).__name__)
@pytest.mark.parametrize("needles", NEEDLES, ids=str)
def test_a_move_is_read_as_itself_on_its_needles(
    move: Callable[[tuple[int, ...]], st.Step], needles: tuple[int, ...], language: str
) -> None:
    step = move(needles)
    (told,) = phrases(step, language)
    assert told.kind == rule(step)
    assert slots(told) == list(needles)
    sides = [a for a in told.arguments if a in ("left", "right")]
    assert sides == ([step.side] if isinstance(step, bs.MoveStitches) else [])


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("half", [1, 2, 3])
@pytest.mark.parametrize("firsts", [(-4,), (-12, 2), (-1,)])
def test_what_is_crossed_is_read_in_its_halves(firsts: tuple[int, ...], half: int, language: str) -> None:
    (told,) = phrases(bs.CrossStitches(firsts, half, "right"), language)
    assert told.kind == "cross_stitches"
    crossed = [a for a in told.arguments if isinstance(a, ReadPhrase)]
    groups = [[_slots((group,)) for group in one.arguments if isinstance(group, ReadPhrase)] for one in crossed]
    assert groups == [[list(range(f, f + half)), list(range(f + half, f + 2 * half))] for f in firsts]


ONE_EACH: list[st.Step] = [
    bs.PlainRows(),
    bs.OfChart(3, "leaf"),
    bs.FabricBegins("lacy", "leaf", 0, -1),
    bs.FabricBegins("lacy", "leaf", -4, 3),
    bs.MotifBegins("leaf", -4, 3),
    bs.ChartEnds("leaf", 0, -1),
    bs.ChartEnds("leaf", -4, 3),
    bs.StripesBegin("striped"),
    bs.StripesEnd("striped"),
    bs.TakeUp("navy", "5"),
    bs.LayColours((), (), "navy"),
    bs.LayColours(("navy", "red"), ((1,), (-3, -2)), "wool"),
]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("step", ONE_EACH, ids=str)
def test_a_move_without_a_list_is_read_as_itself(step: st.Step, language: str) -> None:
    (told,) = phrases(step, language)
    assert told.kind == rule(step)
    numbers = [a.of(0) for a in told.arguments if not isinstance(a, str | ReadPhrase)]  # type: ignore[attr-defined]
    span = [step.first, step.last] if hasattr(step, "first") and step.first <= step.last else []  # type: ignore[attr-defined]
    assert numbers == ([step.row] if isinstance(step, bs.OfChart) else span)


@pytest.mark.parametrize("language", LANGUAGES)
def test_several_moves_stand_in_one_line(language: str) -> None:
    """In their order, beside an eyelet, which begins with like words."""
    steps = (bs.MoveStitches((4,), "left"), st.EyeletAt(4, "left"), bs.HoldNeedles((4,)), bs.MoveStitches((5, 6), "right"))
    tongue = printed(language)
    words = bench._sentence(BenchLine(0, 12, "left", steps, 40, 0, 0), tongue.writing).text
    told = said(words, tongue.reading)
    assert not isinstance(told, Unreadable), words
    (line,) = told
    assert isinstance(line, ReadPhrase)
    kinds = [a.kind for a in line.arguments if isinstance(a, ReadPhrase) and not a.kind.startswith("bench_")]
    assert kinds == [rule(s) for s in steps]
