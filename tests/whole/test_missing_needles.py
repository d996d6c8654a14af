"""A bed from which needles are missing: what is knitted lies beside them, and what finds no place is reported."""

from __future__ import annotations

from functools import cache

import pytest

from tests.whole.glued_garments import SHIPPED
from walewright import bed
from walewright.bed.reach import spans
from walewright.bench_copies import bench_copy
from walewright.design import Changes
from walewright.knit import operations as op
from walewright.pipeline import Outcome, bed_of, compile

SOURCE = """\
pattern "Beside"
sizes S M
    length 40 42 cm
machine bulky
    edge guides
yarn wool "chunky wool", 100 g = 120 m
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g
fabric rib
    latched rib every 3rd needle in wool at tension 2
    swatch 40 stitches by 60 rows = 28.6 cm by 29.4 cm
edging hem in plain, 3 cm deep, folded, knitted first
edging trim in plain, 2 cm deep, added after
piece front in {fabric}
    levels bottom 0 cm, low 10 cm, middle 20 cm, top length
    start 24 cm wide on waste yarn{hem}
    edges straight to low
    edges slope to 20 cm wide at middle, fashioned 2 in
    edges cast off 2 cm then slope to 15 cm wide at top
    slot pocket 4 cm wide at low, cast off
    neck 8 cm wide, 6 cm deep, round, cast off
    end cast off
free front start
"""
MISSING = "missing=L3 R45"


@cache
def made(missing: str, fabric: str = "plain", hem: str = ", with hem") -> Outcome:
    text = SOURCE.format(fabric=fabric, hem=hem)
    text = text if hem else text.replace("free front start\n", "").replace("on waste yarn", "with e-wrap")
    return compile(text, "beside.wale", SHIPPED, Changes(bed=missing))


def used(outcome: Outcome) -> set[int]:
    moves = (move for work in outcome.works for block in work.blocks for move in block.operations)
    return {slot for move in moves for first, last in spans(move) for slot in range(first, last + 1)}


PLACES = ("missing=R50", "missing=L3", "missing=L3 R45", "missing=R3", "missing=L3 R30", "missing=L40 L3 R31")


@pytest.mark.parametrize("missing", PLACES)
def test_everything_lies_beside_what_is_missing(missing: str) -> None:
    outcome = made(missing)
    assert outcome.proven, outcome.diagnostics
    assert outcome.design is not None
    gone = set(outcome.design.machine.missing)
    assert gone
    assert not used(outcome) & gone
    whole = made("bulky, edge guides")
    assert whole.proven
    if gone & used(whole):
        assert used(outcome) != used(whole)
    else:
        assert outcome.works == whole.works
        assert outcome.plain_text == whole.plain_text


def test_the_words_are_those_of_the_place() -> None:
    outcome = made(MISSING)
    assert outcome.read == outcome.works
    copy, faults = bench_copy(outcome)
    assert faults == ()
    assert copy is not None
    assert "L 3" not in outcome.plain_text.replace("L 30", "")


def test_the_fabric_is_the_same() -> None:
    there, whole = made(MISSING), made("bulky, edge guides")
    assert there.results == whole.results
    assert there.proof == whole.proof


def test_the_bed_refuses_a_missing_needle() -> None:
    whole = made("bulky, edge guides")
    assert whole.design is not None
    gaps = bed.Bed(100, (1, 2, 3), bed_of(whole.design).gauges, bed_of(whole.design).fabrics, missing=frozenset({-3}))
    assert [f.code for f in bed.knit(whole.works[0], gaps).faults][:1] == ["needle-missing"]
    assert isinstance(whole.works[0].blocks[0].operations[0], op.MoveCarriage | op.IntoWork)


@pytest.mark.parametrize(
    ("missing", "fabric", "hem", "case"),
    [
        ("missing=L30 L10 R10 R30", "plain", ", with hem", "no-row"),
        ("missing=L2", "rib", "", "from-centre"),
    ],
)
def test_what_finds_no_place_is_reported_once(missing: str, fabric: str, hem: str, case: str) -> None:
    outcome = made(missing, fabric, hem)
    assert not outcome.proven
    assert [(d.code, d.case, d.sizes) for d in outcome.diagnostics if d.severity.name == "ERROR"] in (
        [("needle-missing", case, ("S", "M"))],
        [("needle-missing", case, ("S",)), ("needle-missing", case, ("M",))],
    )


@pytest.mark.parametrize("wrong", ["missing=L51", "missing=X3", "missing=R0", "missing="])
def test_a_needle_that_is_none_is_told(wrong: str) -> None:
    assert {d.code for d in made(wrong).diagnostics} & {"bad-machine-fact", "bad-bed"}


LONG = """piece cape in plain
    levels neck 0 cm, hem 90 cm
    start 20 cm wide with e-wrap
    left edge straight to hem called fall
    right edge straight to hem called edge
    end cast off
band border with {edging} along cape edge
free cape fall
"""


@pytest.mark.parametrize(
    ("edging", "missing", "room"),
    [
        ("trim", "missing=L3", 52),
        ("trim", "missing=R30", 79),
        ("trim", "missing=L40 R10", 48),
        ("trim", "missing=L50 R50", 98),
        ("ribbed", "missing=R30", 58),
        ("ribbed", "missing=L40 R25", 48),
    ],
)
def test_a_band_is_parted_by_the_needles_that_are_side_by_side(edging: str, missing: str, room: int) -> None:
    """A rib, which is told from the centre mark, by those on both sides of it."""
    text = SOURCE[: SOURCE.index("piece")] + "edging ribbed in rib, 2 cm deep, added after\n" + LONG.format(edging=edging)
    outcome = compile(text.format(fabric="plain", hem=""), "border.wale", SHIPPED, Changes(bed=missing))
    (told,) = [d for d in outcome.diagnostics if d.code == "band-parted"]
    assert dict(told.facts)["needles"] == room
    assert outcome.proven, outcome.diagnostics
    assert outcome.design is not None
    assert not used(outcome) & set(outcome.design.machine.missing)
