"""What is not said of a step is what is usual: an option has words where it is another than most are, and none where it is that."""

from __future__ import annotations

from dataclasses import MISSING, fields, replace

import pytest

from tests.in_english import said, sentence
from tests.write.garments import KINDS, SAMPLES
from walewright.knit import steps
from walewright.knit.step import Step
from walewright.readback.sentences import Unreadable
from walewright.write.lines import lines

SAID_EITHER_WAY = {
    ("WasteStart", "way"),
    ("RehangStart", "facing"),
    ("MarkEdges", "at"),
    *(("FoldUp", name) for name in ("way", "row", "begun")),
    *(("JoinEdges", name) for name in ("way", "edges", "longer_mm")),
}
"""What hands cannot do without being told: the usual is said too, in other words."""

APART = {
    ("SpreadEvenly", "first_runs"): "counts that come to all the stitches, so that none can be left out by itself",
    ("JoinEdges", "one_mm"): "two lengths that are said together",
    ("JoinEdges", "other_mm"): "likewise",
    ("JoinEdges", "strip_rows"): "said with the strips that they are of",
    ("JoinEdges", "ratio_rows"): "two counts that are said together",
    ("JoinEdges", "ratio_stitches"): "likewise",
    ("JoinEdges", "turn"): "to which copy, which is said with how many seams there are",
    ("JoinEdges", "times"): "likewise",
    ("JoinEdges", "thread_cm"): "said with a new length of yarn",
    ("JoinEdges", "tails"): "said with the thread that they are of",
    ("JoinEdges", "chained"): "said with the stitches of both edges",
    ("JoinEdges", "one_chain"): "two counts that are said together",
    ("JoinEdges", "other_chain"): "likewise",
    ("PickUpAlong", "low"): "the ends of a stretch, which is said with both",
    ("PickUpAlong", "high"): "likewise",
    ("HoldPart", "nth"): "which part of many, which is said with its side",
    ("PartOnCord", "nth"): "likewise",
    ("DrawPartsCord", "nth"): "likewise",
    ("ReturnPart", "nth"): "likewise",
    ("Say", "manner"): "the words are the author's, in whatever manner",
}
"""Options that cannot be left unsaid by themselves, and why."""


# Read back as open loops hung on, as a link's are.
LOOPS = steps.PickUpAlong("back", "neck", "centre", 22, -40, -19, "purl", "left", loops="open")


def _unsaid(kind: type[Step]) -> list[tuple[str, object]]:
    """The options of a kind, each with what it is where nothing is said."""
    return [(f.name, f.default) for f in fields(kind) if f.default is not MISSING and f.name != "origin"]


SPOKEN = tuple(
    pytest.param(step, name, usual, id=f"{type(step).__name__}-{name}-{getattr(step, name)}")
    for step in (*SAMPLES, LOOPS)
    for name, usual in _unsaid(type(step))
    if getattr(step, name) != usual and (type(step).__name__, name) not in APART
)


def _words(step: Step) -> str:
    (line,) = lines([(step,)])
    return sentence(line, (0,)).text


@pytest.mark.parametrize(("step", "name", "usual"), SPOKEN)
def test_what_is_not_said_is_what_is_usual(step: Step, name: str, usual: object) -> None:
    unusual, ordinary = _words(step), _words(replace(step, **{name: usual}))
    assert not isinstance(said(ordinary), Unreadable), ordinary
    assert ordinary != unusual
    if (type(step).__name__, name) not in SAID_EITHER_WAY:
        assert len(ordinary.split()) < len(unusual.split()), f"{ordinary}\n{unusual}"


def test_every_option_is_said_of_some_sample() -> None:
    options = {(kind.__name__, name) for kind in KINDS for name, _ in _unsaid(kind)}
    assert {(type(p.values[0]).__name__, p.values[1]) for p in SPOKEN} | APART.keys() == options
