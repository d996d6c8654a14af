"""Tails of the shipped garments: none is left to chance, and what is sewn with one has enough of it."""

from __future__ import annotations

import pytest

from tests.whole.garment import SHIPPED
from tests.whole.glued_garments import misread
from tests.whole.handwork_told import steps
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.design import Changes
from walewright.knit import steps as st
from walewright.knit.operations import BreakYarn
from walewright.pipeline import compile

GRAFTED = 4
SEWN_IN = 20


@pytest.mark.parametrize("name", GARMENTS)
def test_every_end_that_is_broken_off_has_a_length(name: str) -> None:
    assert [s for s in steps(compiled(name)) if isinstance(s, st.BreakOff) and s.tail_cm < SEWN_IN] == []


@pytest.mark.parametrize("name", GARMENTS)
def test_a_graft_has_four_widths_on_one_of_its_sides(name: str) -> None:
    made = compiled(name)
    assert made.counts is not None
    for plan, work, garment in zip(made.plans, made.works, made.counts.sizes, strict=True):
        told = {s.origin: s for b in plan.blocks for _, row in b.paragraphs for s in row if isinstance(s, st.JoinEdges)}
        for join in garment.joins:
            if join.way == "grafted" and told[join.origin.path].edges != "no tail":
                pieces = {e.piece for e in (*join.one, *join.other)}
                tails = [op.tail_cm for b in work.blocks if b.name in pieces for op in b.operations if isinstance(op, BreakYarn)]
                assert max(tails) >= GRAFTED * join.one_cm - 0.5


def test_there_are_grafts_to_look_at() -> None:
    joins = [s for name in GARMENTS for s in steps(compiled(name)) if isinstance(s, st.JoinEdges)]
    assert any(j.way == "grafted" and j.edges != "no tail" for j in joins)


@pytest.mark.parametrize("name", GARMENTS)
def test_every_seam_has_its_thread(name: str) -> None:
    """A seam is sewn with a tail or a new length that is half as long again; what is sewn with a tail has one that is broken off so
    long in one of its pieces."""
    made = compiled(name)
    assert made.counts is not None
    for plan in made.plans:
        joins = [s for b in plan.blocks for _, row in b.paragraphs for s in row if isinstance(s, st.JoinEdges)]
        for join in joins:
            loops = join.way == "grafted" or join.edges == "open"
            assert (join.thread == "") == loops, join
            assert (join.thread in ("new", "either")) == (join.thread_cm > 0), join


def test_the_sock_is_grafted_from_its_tail_and_its_seam_has_a_long_one() -> None:
    made = compiled("driftline")
    assert made.counts is not None
    for plan in made.plans:
        broken = [s.tail_cm for b in plan.blocks for _, row in b.paragraphs for s in row if isinstance(s, st.BreakOff)]
        joins = [s for b in plan.blocks for _, row in b.paragraphs for s in row if isinstance(s, st.JoinEdges)]
        graft, slit, side = sorted(joins, key=lambda s: (s.way != "grafted", s.rows))
        assert (graft.edges, graft.seams[0].one[0].begin, graft.seams[0].other[0].begin) == ("at tail", "right", "left")
        assert (slit.thread, side.thread) == ("tail", "tail")
        design = made.design
        assert design is not None
        cm = side.rows / design.fabric("plain").rows_per_cm
        assert any(tail >= 1.5 * cm for tail in broken[1:2]), (cm, broken)


TWO_SHOULDERS = """\
pattern "Slipover"
sizes S M
    wide 38 42 cm
    tall 40 44 cm
machine standard
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm
"""

HALF = """
piece {name} in plain
    levels hem 0 cm, top tall
    start wide wide with e-wrap
    edges straight to top called side
    neck wide * 0.3 wide, 8 cm deep, v
    end on waste yarn
free {name} neck
free {name} side
"""


def test_each_of_two_shoulders_is_grafted_from_its_own_tail() -> None:
    """The halves of a piece end at its outer edges, so that the tails hang at opposite ends."""
    source = (
        TWO_SHOULDERS + HALF.format(name="back") + HALF.format(name="front") + "join back shoulder to front shoulder, grafted\n"
    )
    outcome = compile(source, "slipover.wale", SHIPPED, Changes())
    assert outcome.proven, outcome.diagnostics
    text = " ".join((outcome.plain_text or "").split())
    assert (
        "Graft the left shoulder of the back from its left end to the right shoulder of the front from its right end and the right"
        " shoulder of the back from its right end to the left shoulder of the front from its left end, loop for loop with the long"
        " tail, which hangs there." in text
    )
    assert misread(source, (outcome.plain_text or "").replace("from its left", "from its right", 1))
