"""Every kind of step has its words."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Literal

import pytest

from tests.in_english import has_number, phrase, sentence
from tests.write.garments import KINDS, SAMPLES, joined
from walewright.knit import steps as st
from walewright.write.english import LANGUAGE
from walewright.write.lines import lines
from walewright.write.model import Abbreviation, Manner
from walewright.write.said import StepSaid
from walewright.write.words import kind, named

SIZES = (0, 1)


def test_every_kind_of_step_has_a_template() -> None:
    assert {named(k) for k in KINDS} <= set(LANGUAGE.sentences)


def test_every_kind_of_step_has_a_sample() -> None:
    assert {type(s) for s in SAMPLES} == set(KINDS)


@pytest.mark.parametrize("step", SAMPLES, ids=lambda s: type(s).__name__)
def test_a_number_or_none(step: st.Step) -> None:
    """A step that one size skips shows a dash exactly if it has a number; the others need a head of their own."""
    words = "".join(r.text for r in phrase(StepSaid((step, None), SIZES)) if r.kind != "word")
    assert ("(–)" in words) is has_number(step)


@pytest.mark.parametrize(
    ("steps", "words"),
    [
        (
            (st.NeedlesToWork(-45, 44, 90), st.NeedlesToWork(-48, 47, 96)),
            "bring needles L 45 (48) to R 45 (48) to working position: 90 (96) sts",
        ),
        ((st.KnitRows(1), st.KnitRows(1)), "knit 1 row"),
        ((st.KnitRows(1), None), "knit 1 (–) row"),
        ((st.KnitRows(1), st.KnitRows(2)), "knit 1 (2) rows"),
        ((st.Decrease("both ends", 1, 2), st.Decrease("both ends", 1, 2)), "decrease 1 st at both ends, 2 sts in"),
        ((st.Decrease("left end", 1, 0), st.Decrease("left end", 2, 0)), "decrease 1 (2) sts at the left end"),
        ((st.SetRowCounter(0), st.SetRowCounter(84)), "set the row counter to 000 (084)"),
        ((st.Now(80, 114, "right"), st.Now(84, 118, "right")), "80 (84) sts, RC 114 (118), COR"),
        (
            (st.CentreToWaste(12, -6, 5, "neck centre"), st.CentreToWaste(14, -7, 6, "neck centre")),
            "take the centre 12 (14) sts, L 6 (7) to R 6 (7), off on waste yarn (neck centre)",
        ),
        (
            (st.LatchRib(3, 1, 12), st.LatchRib(3, 1, 14)),
            "beginning with L 2 and R 2, drop every 3rd st outwards, 12 (14) rows deep,"
            " and latch it up on the other face; leave the end sts as they are",
        ),
        # Two plain wales lie in the middle of a rib that has one elsewhere.
        (
            (st.LatchRib(2, 1, 12), st.LatchRib(2, 1, 14)),
            "beginning with L 2 and R 2, drop every 2nd st outwards, 12 (14) rows deep,"
            " and latch it up on the other face; in the middle L 1 to R 1 stay plain; leave the end sts as they are",
        ),
        (
            (joined("a b", "c d + e f", 0, ends="left top"), joined("a b", "c d + e f", 5, ends="left top")),
            "join the b of the a from its left end to the d of the c from its top, then the f of the e, easing in up to 0.5 cm (M)",
        ),
        # One needle, where it is one for all, is named once.
        (
            (st.CentreToWaste(1, 0, 0, "neck centre"), st.CentreToWaste(1, 0, 0, "neck centre")),
            "take the centre 1 st, R 1, off on waste yarn (neck centre)",
        ),
        (
            (st.CloseCentre(1, 3, 3), st.CloseCentre(2, 3, 4)),
            "close the 1 (2) sts between the parts, R 4 to R 4 (5), by chaining them through each other to the right and on to"
            " the next needle",
        ),
        (
            (st.EdgeIs("front", "left", 0, 60), st.EdgeIs("front", "left", 0, 64)),
            "the left edge from RC 0 to RC 60 (64) is called “front”",
        ),
        ((st.ReturnSome("left", 4), st.ReturnSome("left", 5)), "return the innermost 4 (5) sts held at the left to work"),
        # A way of spreading that no size uses is not said; one that a size does not use has a dash.
        (
            (st.SpreadEvenly(-4, 3, 8, "two together", 0, 2, 0, 0), st.SpreadEvenly(-5, 4, 10, "two together", 0, 3, 0, 0)),
            "take the sts in work off on waste yarn and hang them back from the left on needles L 4 (5) to R 4 (5), 8 (10) sts:"
            " 2 loops on each of the next 2 (3) needles; 1 loop on each of the last 6 (7) needles",
        ),
        (
            (st.SpreadEvenly(-4, 3, 8, "an empty needle", 1, 2, 0, 0), st.SpreadEvenly(-4, 3, 8, "an empty needle", 2, 1, 1, 1)),
            "take the sts in work off on waste yarn and hang them back from the left on needles L 4 to R 4, 8 sts: *1 loop"
            " on each of 1 (2) needles, no loop on the next; work from * 2 (1) times in all; *1 loop, no"
            " loop; work from * – (1) time in all; 1 loop on each of the last 4 (3) needles",
        ),
        # A round without a single loop between is one of its own: nobody counts 0 needles off.
        (
            (st.SpreadEvenly(-2, 1, 4, "two together", 0, 4, 0, 0), st.SpreadEvenly(-2, 1, 4, "two together", 1, 2, 0, 0)),
            "take the sts in work off on waste yarn and hang them back from the left on needles L 2 to R 2, 4 sts: 2 loops"
            " on each of the next 4 (–) needles; *1 loop, 2 loops; work from * – (2) times in all",
        ),
        # Beside the rounds of another size that have none either.
        (
            (st.SpreadEvenly(-2, 1, 4, "two together", 1, 1, 0, 2), st.SpreadEvenly(-2, 1, 4, "two together", 0, 4, 0, 0)),
            "take the sts in work off on waste yarn and hang them back from the left on needles L 2 to R 2, 4 sts: *1 loop,"
            " 2 loops; work from * 1 (–) time in all; 2 loops on each of the next 2 (4) needles",
        ),
        # Where nothing is left after the last two together, nothing is said of it.
        (
            (st.SpreadEvenly(-3, 2, 6, "two together", 2, 2, 0, 0),) * 2,
            "take the sts in work off on waste yarn and hang them back from the left on needles L 3 to R 3, 6 sts:"
            " *1 loop on each of 2 needles, 2 loops on the next; work from * 2 times in all",
        ),
        # Names of the source are words, held together by no-break spaces.
        (
            (st.MarkEdges("armhole_left", "left end"),) * 2,
            "tie a marker thread at the left end, where “armhole\N{NO-BREAK SPACE}left” begins",
        ),
        # A repeat within a repeat stands in square brackets; the outer one says that all of it is meant.
        (
            (st.Repeat((st.Repeat((st.KnitRows(1), st.BreakOff()), 2), st.BreakOff()), 3),) * 2,
            "[[knit 1 row, break off the yarn: work this 2 times in all], break off the yarn: work all of this 3 times in all]",
        ),
        # Once for every size is no repeat; once for some is one, or the sizes that skip it could not be told.
        ((st.Repeat((st.BreakOff(),), 1),) * 2, "[break off the yarn]"),
        ((st.Repeat((st.BreakOff(),), 1), None), "[break off the yarn: work this 1 (–) time in all]"),
        # Rows that a size does not knit are 0: a dash would leave out what follows.
        (
            (st.Repeat((st.KnitRows(0), st.BreakOff()), 2), st.Repeat((st.KnitRows(3), st.BreakOff()), 2)),
            "[knit 0 (3) rows, break off the yarn: work this 2 times in all]",
        ),
    ],
)  # fmt: skip
def test_words(steps: tuple[st.Step | None, ...], words: str) -> None:
    assert "".join(r.text for r in phrase(StepSaid(steps, SIZES))) == words


SHORT = {
    Abbreviation.COL: r"\bCOL\b",
    Abbreviation.COR: r"\bCOR\b",
    Abbreviation.LEFT: r"\bL \d",
    Abbreviation.RIGHT: r"\bR \d",
    Abbreviation.RC: r"\bRC\b",
    Abbreviation.STITCH: r"\bsts?\b",
    Abbreviation.SKIPPED: "–",
}


@pytest.mark.parametrize("skipped", [False, True])
@pytest.mark.parametrize("step", SAMPLES, ids=lambda s: type(s).__name__)
def test_a_phrase_knows_the_abbreviations_in_it(step: st.Step, skipped: bool) -> None:
    runs = phrase(StepSaid((step, None if skipped else step), SIZES))
    text = "".join(r.text for r in runs)
    assert {a for r in runs for a in r.short} == {a for a, pattern in SHORT.items() if re.search(pattern, text)}


@pytest.mark.parametrize(("head", "manner", "told"), [("note", Manner.NOTE, "Note: "), ("by hand", Manner.BY_HAND, "")])
def test_plain_words_are_no_steps_and_abbreviate_nothing(head: Literal["note", "by hand"], manner: Manner, told: str) -> None:
    said = sentence(lines([(st.Say("Knit 3 sts – to RC 4, at L 1.", head),)])[0], (0,))
    assert (said.manner, said.short, said.text) == (manner, frozenset(), f"{told}Knit 3 sts – to RC 4, at L 1.")


def test_a_sentence_knows_whether_it_names_the_counter() -> None:
    def told(*steps: st.Step) -> tuple[str, bool]:
        (line,) = lines([(step,) for step in steps])
        made = sentence(line, (0,))
        return made.text, made.row_said

    now = st.Now(80, 20, "left")
    assert told(now) == ("80 sts, RC 20, COL.", True)
    assert told(st.KnitTo(20), now) == ("Knit to RC 20. 80 sts, COL.", True)
    assert told(st.SetRowCounter(20), now) == ("Set the row counter to 020. 80 sts, COL.", False)


def test_the_figures_of_three_sizes_are_known() -> None:
    def kept(*steps: st.Step) -> list[str]:
        runs = phrase(StepSaid(steps, tuple(range(len(steps)))))
        return [r.text[begin:end] for r in runs for begin, end in r.figures]

    assert kept(*(st.Now(n, r, side) for n, r, side in ((80, 20, "left"), (84, 21, "right"), (90, 22, "left")))) == [
        "80 (84: 90)",
        "RC 20 (21: 22),",
        "COL (COR: COL)",
    ]
    assert kept(*(st.NeedlesToWork(-n, n - 1, 80) for n in (40, 42, 44))) == ["L 40 (42: 44)", "R 40 (42: 44)"]
    assert kept(st.KnitTo(4), st.KnitTo(6)) == []


def test_stripes_say_whether_a_yarn_is_carried() -> None:
    starts = [s for s in SAMPLES if isinstance(s, st.StartStripes)]
    assert {kind(s) for s in starts} == {"StartStripes carried", "StartStripes"}
    assert [s for s in starts if (kind(s) == "StartStripes carried") is not bool(s.carried)] == []


def test_kinds_of_runs() -> None:
    runs = phrase(StepSaid((st.NeedlesToWork(-45, 44, 90),), (0,)))
    assert [r.kind for r in runs] == ["word", "needle", "word", "needle", "word", "number", "word"]
    assert [r.kind for r in phrase(StepSaid((st.Now(8, 9, "left"),), (0,)))] == ["check"]


def _lengths(*pairs: tuple[int, int]) -> str:
    steps = tuple(replace(joined("a b", "c d", abs(a - b) + 1, ends="left left"), one_mm=a, other_mm=b) for a, b in pairs)
    return "".join(r.text for r in phrase(StepSaid(steps, tuple(range(len(pairs))))))


def test_easing_is_what_the_lengths_differ_by() -> None:
    """Nothing is said of it where no size has a centimetre to ease in; of the second side it is said that it is that one. Where a
    size has less than half a centimetre, the others are named."""
    assert _lengths((484, 463), (500, 490)).endswith(", 48.4 (50) cm to 46.3 (49) cm, easing in up to 2.1 (1) cm")
    assert _lengths((484, 463), (504, 500)).endswith(" cm to 46.3 (50) cm, easing in up to 2.1 cm (S)")
    assert _lengths((463, 484), (490, 500)).endswith(", easing in up to 2.1 (1) cm of what it is joined to")
    assert _lengths((463, 484), (505, 500)).endswith(", easing in up to 2.1 cm (S) of what it is joined to")
    both = ", easing in up to 1 cm (M), and up to 2.1 cm (S) of what it is joined to"
    assert _lengths((463, 484), (500, 490)).endswith(both)
    assert _lengths((114, 123), (128, 119)).endswith(", 11.4 (12.8) cm to 12.3 (11.9) cm")
    assert _lengths((406, 406)).endswith(", 40.6 cm to 40.6 cm")
