"""Rows joined to stitches, so many to so many: the one follows from the other, from the source to the words and back."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.in_english import plain_text
from walewright import pipeline
from walewright.bed import knit
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.knit.operations import Join
from walewright.pipeline import Outcome
from walewright.plan import plan_json

SOURCE = """\
pattern "Bordered"
sizes S M L
    wide 36 41.5 47 cm
machine standard
yarn wool "wool", 100 g = 400 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 28 stitches by 40 rows = 10 cm by 10 cm

piece shawl in plain
    levels hem 0 cm, top 30 cm
    start wide wide with e-wrap
    edges straight to top called side
    end on waste yarn

piece border in plain
    levels hem 0 cm, top between {low} and {high}
    start 6 cm wide with e-wrap
    left edge straight to top called inner
    right edge straight to top called outer
    end cast off

join border inner to shawl end, {ratio}
free border outer + shawl side
"""


def compiled(ratio: str, low: str = "0.5 * wide", high: str = "3 * wide", tension: str = "28 st 40 rows") -> Outcome:
    text = SOURCE.format(ratio=ratio, low=low, high=high)
    return pipeline.compile(text, "bordered.wale", shipped(), Changes(tensions={"plain": tension}))


@pytest.mark.parametrize("tension", ["28 st 40 rows", "30.5 st 39 rows", "26 st 44 rows"])
@pytest.mark.parametrize(("ratio", "rows", "stitches"), [("4 rows to 3 stitches", 4, 3), ("2 rows to 1 stitch", 2, 1)])
def test_the_border_has_its_rows_from_the_stitches_of_the_edge(ratio: str, rows: int, stitches: int, tension: str) -> None:
    made = compiled(ratio, tension=tension)
    assert made.proven, made.diagnostics
    assert made.counts is not None
    for wide, garment in zip((36, 41.5, 47), made.counts.sizes, strict=True):
        assert abs(garment.piece("border").rows - garment.piece("shawl").start * rows / stitches) <= 1
        # The edge keeps its own width: the border follows.
        assert abs(garment.piece("shawl").start - wide * float(tension.split()[0]) / 10) <= 1


def test_either_side_can_be_named_first() -> None:
    turned = SOURCE.replace("join border inner to shawl end", "join shawl end to border inner")
    made = pipeline.compile(
        turned.format(ratio="4 rows to 3 stitches", low="30 cm", high="60 cm"), "bordered.wale", shipped(), Changes()
    )
    assert made.proven, made.diagnostics


def test_the_words_say_it_and_the_plan_has_it() -> None:
    made = compiled("4 rows to 3 stitches")
    text = " ".join(plain_text(made.result()[2]).split())
    assert "Join the inner of the border to the last row of the shawl from its right end, 4 rows to 3 sts" in text
    (seam,) = [task for task in plan_json(made)["sizes"][0]["work"] if task["kind"] == "seam"]
    assert seam["ratio"] == [4, 3]


def test_the_bed_counts_for_itself() -> None:
    """Another ratio than was planned is refused where the seam is made."""
    made = compiled("4 rows to 3 stitches")
    assert made.design is not None
    work = made.works[0]
    other = tuple(replace(task, ratio=(5, 3)) if isinstance(task, Join) else task for task in work.tasks)
    result = knit(replace(work, tasks=other), pipeline.bed_of(made.design))
    assert [fault.code for fault in result.faults] == ["join-unequal"]


@pytest.mark.parametrize(
    ("ratio", "code"),
    [
        ("0 rows to 3 stitches", "join-ratio"),
        ("4 rows to 300 stitches", "join-ratio"),
        ("4 rows to 3 stitches, easing 1 cm", "join-ratio"),
        ("4 rows to 3 stitches, grafted", "join-ratio"),
    ],
)
def test_what_is_asked_besides_is_told(ratio: str, code: str) -> None:
    assert [d.code for d in compiled(ratio).diagnostics if d.severity.value == "error"] == [code]


def test_rows_to_rows_have_no_such_ratio() -> None:
    text = SOURCE.replace("to shawl end", "to shawl side_right").replace("shawl side\n", "shawl side_left + shawl end\n")
    text = text.replace("end on waste yarn", "end cast off")
    made = pipeline.compile(text.format(ratio="4 rows to 3 stitches", low="20 cm", high="60 cm"), "b.wale", shipped(), Changes())
    assert "join-does-not-meet" in [d.code for d in made.diagnostics]


def test_a_level_that_leaves_no_such_number_is_told() -> None:
    made = compiled("4 rows to 3 stitches", low="0.2 * wide", high="0.3 * wide")
    assert {d.code for d in made.diagnostics} & {"join-does-not-meet", "counts-conflict"}
