"""Every kind of step has its words."""

from __future__ import annotations

import pytest
from garments import KINDS, SAMPLES

from walewright.knit import steps as st
from walewright.write.words import TEMPLATES, Said, has_number, phrase

SIZES = (0, 1)


def test_every_kind_of_step_has_a_template() -> None:
    assert set(TEMPLATES) == set(KINDS)


def test_every_kind_of_step_has_a_sample() -> None:
    assert {type(s) for s in SAMPLES} == set(KINDS)


@pytest.mark.parametrize("step", SAMPLES, ids=lambda s: type(s).__name__)
def test_a_number_or_none(step: st.Step) -> None:
    """A step that one size skips shows a dash exactly if it has a number; the others need a head of their own."""
    words = "".join(r.text for r in phrase(Said((step, None), SIZES)) if r.kind != "word")
    assert ("(–)" in words) is has_number(step)


@pytest.mark.parametrize(
    ("steps", "words"),
    [
        (
            (st.NeedlesToWork(-45, 44, 90), st.NeedlesToWork(-48, 47, 96)),
            "bring needles L 45 (L 48) to R 45 (R 48) to working position: 90 (96) sts",
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
            "take the centre 12 (14) sts, L 6 (L 7) to R 6 (R 7), off on waste yarn (neck centre)",
        ),
        (
            (st.LatchRib(3, 12), st.LatchRib(3, 14)),
            "beginning with L 2 and R 2, drop every 3rd st outwards, end needles left out, 12 (14) rows deep,"
            " and latch it up on the other face",
        ),
        (
            (st.JoinEdges("a b", "c d + e f", 0), st.JoinEdges("a b", "c d + e f", 5)),
            "join a b to c d and e f, easing in up to 0 (5) mm",
        ),
        # A repeat within a repeat stands in square brackets.
        (
            (st.Repeat((st.Repeat((st.KnitRows(1), st.BreakOff()), 2), st.BreakOff()), 3),) * 2,
            "[[knit 1 row, break off the yarn: work this 2 times in all], break off the yarn: work this 3 times in all]",
        ),
        # Once for every size is no repeat; once for some is one, or the sizes that skip it could not be told.
        ((st.Repeat((st.BreakOff(),), 1),) * 2, "[break off the yarn]"),
        ((st.Repeat((st.BreakOff(),), 1), None), "[break off the yarn: work this 1 (–) time in all]"),
        # Rows that a size does not knit are a dash.
        (
            (st.Repeat((st.KnitRows(0), st.BreakOff()), 2), st.Repeat((st.KnitRows(3), st.BreakOff()), 2)),
            "[knit – (3) rows, break off the yarn: work this 2 times in all]",
        ),
    ],
)  # fmt: skip
def test_words(steps: tuple[st.Step | None, ...], words: str) -> None:
    assert "".join(r.text for r in phrase(Said(steps, SIZES))) == words


def test_kinds_of_runs() -> None:
    runs = phrase(Said((st.NeedlesToWork(-45, 44, 90),), (0,)))
    assert [r.kind for r in runs] == ["word", "needle", "word", "needle", "word", "number", "word"]
    assert [r.kind for r in phrase(Said((st.Now(8, 9, "left"),), (0,)))] == ["check"]
