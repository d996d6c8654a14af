"""Every kind of step, written and read back alone."""

from __future__ import annotations

import inspect
import re

import pytest

from tests.in_english import rules, said, sentence
from tests.write.garments import KINDS, SAMPLES, joined
from walewright.knit import steps as st
from walewright.readback.hands import OBEYED, Hands
from walewright.readback.phrases import ReadPhrase
from walewright.readback.sentences import Unreadable
from walewright.write.english import LANGUAGE as WRITING
from walewright.write.lines import lines
from walewright.write.lines import sentence as line_in_words


def rule(kind: type[st.Step]) -> str:
    return re.sub(r"(?<=.)([A-Z])", r"_\1", kind.__name__).lower()


@pytest.mark.parametrize("kind", KINDS, ids=rule)
def test_every_kind_of_step_has_a_rule(kind: type[st.Step]) -> None:
    assert rule(kind) in {name for name, _ in rules()}
    assert kind in (st.Repeat, st.JoinEdges) or rule(kind) in OBEYED


def test_every_phrase_of_the_grammar_is_obeyed() -> None:
    """A repeat is written out and a join is not knitted; the counter that rows begin from together is no phrase of its own,
    nor is the beginning of a line; what is true after steps that are referred to, or of the other half, and how far those steps
    are worked, belongs to the reference."""
    phrases = {made[0] for name, made in rules() if name in ("_phrase", "_move")} - {"_told_way"}
    obeyed = {
        kind
        for kind in OBEYED
        if kind not in ("reads", "line", "as_far_as", "so_far") and not kind.endswith(("_reached", "_in_part"))
    }
    assert {*phrases, "on_the_way", "at", "stands", "bench_row"} - {"repeat", "join_edges"} == obeyed


@pytest.mark.parametrize("step", SAMPLES, ids=lambda s: type(s).__name__)
def test_a_method_takes_what_the_words_give(step: st.Step) -> None:
    (line,) = lines([(step,)])
    told = said(sentence(line, (0,)).text)
    for phrase in told if not isinstance(told, Unreadable) else ():
        if isinstance(phrase, ReadPhrase) and phrase.kind != "join_edges":
            assert inspect.signature(OBEYED[phrase.kind]).bind(Hands(), *phrase.arguments)


@pytest.mark.parametrize("step", SAMPLES, ids=lambda s: type(s).__name__)
def test_every_step_is_read_back_as_itself(step: st.Step) -> None:
    (line,) = lines([(step,)])
    words = sentence(line, (0,)).text
    if isinstance(step, st.Say):
        assert words.startswith("Note: ")
        return
    told = said(words)
    assert not isinstance(told, Unreadable), words
    if isinstance(step, st.Repeat):
        assert [type(t).__name__ for t in told] == ["ReadRepeat"]
    else:
        assert [t.kind for t in told if isinstance(t, ReadPhrase)] == [rule(type(step))]


PLATED: tuple[tuple[st.Step, tuple[object, ...]], ...] = (
    (st.UseYarnStep("wool", "3"), ("wool", "3")),
    (st.UseYarnStep("wool", "B", fabric="deep_rib"), ("wool", "B", "deep_rib", "")),
    (st.UseYarnStep("navy", "3", "carried"), ("navy", "3", "", "carried")),
    (st.UseLooser("wool", "4", "3", ()), ("wool", "4", "plate", "3")),
)


@pytest.mark.parametrize(("step", "told"), PLATED)
def test_a_plate_is_read_as_the_setting_that_it_is(step: st.Step, told: tuple[object, ...]) -> None:
    """In the words of a bed with plates, which say nothing of a dial."""
    (line,) = lines([(step,)])
    words = line_in_words(line, (0,), WRITING.on_plates()).text
    assert "plate" in words
    assert "tension" not in words
    found = said(words)
    assert not isinstance(found, Unreadable), words
    (read,) = found
    assert isinstance(read, ReadPhrase)
    assert read.arguments == told


@pytest.mark.parametrize("step", SAMPLES, ids=lambda s: type(s).__name__)
def test_every_step_can_stand_in_a_repeat(step: st.Step) -> None:
    if isinstance(step, st.JoinEdges):
        return
    (line,) = lines([(st.Repeat((st.KnitRows(1), step, st.BreakOff()), 2),)])
    (loop,) = said(sentence(line, (0,)).text)  # type: ignore[misc]
    assert len(loop.body) == 3


@pytest.mark.parametrize("name", ["to", "the", "and", "at", "left", "R", "COR", "st", "rows", "wool", "größe2", "in_work"])
def test_names_can_be_any_word(name: str) -> None:
    steps = (
        st.UseYarnStep(name, "4"),
        st.UseYarnStep(name, "4", "carried", name),
        st.MarkEdges(name),
        st.RehangStart(name, 5),
        st.PickUpAlong(name, name, "whole", 2, -1, 0, "purl", "left"),
        st.EdgeIs(name, "outer", 0, 9),
        joined(f"{name} {name} + {name} {name}", f"{name}.2 {name}", 5),
        joined(f"{name} {name}", "", 0, ends="left left"),
        st.StartChart(name, name, "whole", -4, 3, 1, -4),
        st.StartChart(name, "", "panel", -4, 3, 0, -4),
        st.StopChart(name),
        st.StopChartOn(name, -4, 3),
        st.StartStripes(name, ((name, 2), ("wool", 1)), "4.", (name, "wool")),
        st.StopStripes(name),
        st.HangToLink(name, name, "whole", 2, -1, 0, "knit", "the other piece", "right"),
    )
    for step in steps:
        (line,) = lines([(step,)])
        (told,) = said(sentence(line, (0,)).text)  # type: ignore[misc]
        assert isinstance(told, ReadPhrase)
        assert told.kind == rule(type(step))
        if isinstance(step, st.JoinEdges):
            ((one, other, _),) = told.arguments[1]
            assert one == ((name, name, 0),) * len(one)
            assert other in ((), ((name, name, 2),))
        else:
            assert name in told.arguments


@pytest.mark.parametrize("tension", ["4", "4.", "4..", "T4.5", "0"])
def test_a_tension_s_dots_are_not_the_sentence_s(tension: str) -> None:
    (line,) = lines([(st.UseYarnStep("wool", tension),), (st.SetRowCounter(0),)])
    told = said(sentence(line, (0,)).text)
    assert told[0].arguments == ("wool", tension)  # type: ignore[index, union-attr]
