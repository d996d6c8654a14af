"""Stitches cast off or on at once along two edges that are joined row for row: the seam says that they lie on each other."""

from __future__ import annotations

import pytest

from tests.whole.shipped_once import SHIPPED
from walewright.bed import knit
from walewright.design import Changes
from walewright.knit.operations import Join
from walewright.languages import printed
from walewright.pipeline import Outcome, bed_of, compile
from walewright.record import replace


def raglan(one: str, other: str, sizes: str = "S M") -> str:
    return f"""\
pattern "Raglan"
sizes {sizes}
    half {" ".join(("40", "44")[: len(sizes.split())])} cm
machine standard
yarn wool "wool", 100 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 20 cm by 20 cm
piece body in plain
    levels hem 0 cm, underarm 20 cm, top 38 cm
    start half wide with chain
    edges straight to underarm called side
    edges {one} slope to 18 cm wide at top called raglan
    end cast off
piece sleeve in plain, knit 2
    levels cuff 0 cm, underarm 16 cm, top 34 cm
    start 24 cm wide with chain
    edges straight to underarm called seam
    edges {other} slope to 8 cm wide at top called raglan
    end cast off
making up
    join body raglan to sleeve raglan
    join sleeve seam to sleeve seam
"""


def made(text: str, language: str = "english") -> Outcome:
    outcome = compile(text, "raglan.wale", SHIPPED, Changes(), printed(language))
    assert outcome.proven, outcome.diagnostics
    return outcome


def words(outcome: Outcome) -> str:
    return " ".join(outcome.plain_text.split())


@pytest.mark.parametrize(
    ("one", "other", "language", "told"),
    [
        ("cast off 2 cm then", "cast off 2 cm then", "english", "rows, laying the 4 sts cast off on both edges together"),
        ("cast off 2 cm then", "cast off 3 cm then", "english", "rows, laying the 4 sts cast off against 6"),
        ("cast off 2 cm then", "cast off 2 cm then", "german", "Reihen, die an beiden Kanten abgeketteten 4 M aufeinander"),
        ("cast off 2 cm then", "cast off 3 cm then", "german", "Reihen, die abgeketteten 4 M auf 6"),
    ],
)
def test_what_is_cast_off_at_the_underarm_is_told(one: str, other: str, language: str, told: str) -> None:
    outcome = made(raglan(one, other), language)
    assert told in words(outcome).replace("\u00a0", " ")
    seams = outcome.read[0].joins
    assert {seam.chained for seam in seams} >= {(4, 4 if one == other else 6)}


@pytest.mark.parametrize(("one", "other"), [("", ""), ("cast off 2 cm then", "")])
def test_nothing_is_said_where_one_side_has_none(one: str, other: str) -> None:
    text = words(made(raglan(one, other)))
    assert "row for row" in text
    assert "laying the" not in text


def test_what_is_cast_on_is_told_as_that() -> None:
    on = "steps 1 cm 3 times to top"
    text = raglan("", "").replace("slope to 18 cm wide at top", on).replace("slope to 8 cm wide at top", on)
    assert "laying the 6 sts cast on on both edges together" in words(made(text))


@pytest.mark.parametrize("chained", [(4, 5), (5, 5), (0, 4)])
def test_the_bed_counts_them(chained: tuple[int, int]) -> None:
    outcome = made(raglan("cast off 2 cm then", "cast off 2 cm then"))
    assert outcome.design is not None
    work = outcome.works[0]
    tasks = tuple(replace(task, chained=chained) if isinstance(task, Join) and any(task.chained) else task for task in work.tasks)
    assert knit(work, bed_of(outcome.design)).faults == ()
    faults = knit(replace(work, tasks=tasks), bed_of(outcome.design)).faults
    assert {(fault.code, fault.case) for fault in faults} == {("join-told", "chained")}
