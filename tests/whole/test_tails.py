"""Tails of the shipped garments: none is left to chance, and what is sewn with one has enough of it."""

from __future__ import annotations

import pytest

from tests.whole.garment import SHIPPED
from tests.whole.glued_garments import misread
from tests.whole.handwork_told import steps
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.bed import knit
from walewright.design import Changes
from walewright.knit import steps as st
from walewright.knit.operations import BreakYarn, Join
from walewright.knit.tails import MOST_TAILS
from walewright.pipeline import bed_of, compile
from walewright.record import replace

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


@pytest.mark.parametrize("name", GARMENTS)
def test_a_tail_that_is_named_hangs_there_long_enough_and_sews_one_seam(name: str) -> None:
    """As the hands are told it: the piece, its edging or the band is broken off with so long a tail, as often as it is knitted."""
    made = compiled(name)
    for plan in made.plans:
        broken: dict[str, list[int]] = {}
        for block in plan.blocks:
            own = [s.tail_cm for _, row in block.paragraphs for s in row if isinstance(s, st.BreakOff)]
            broken.setdefault(block.name, []).extend(own[-1:] * block.copies)
        joins = [s for b in plan.blocks for _, row in b.paragraphs for s in row if isinstance(s, st.JoinEdges)]
        named = [join for join in joins if join.tails]
        assert all(join.thread == "tail" for join in named)
        for join in named:
            assert len(join.tails) <= MOST_TAILS
            for piece, edging in join.tails:
                own = f"{piece}_{edging}".rstrip("_")
                tails = [cm for block, of in broken.items() if block.replace(" ", "_").startswith(own) for cm in of]
                assert max(tails, default=0) >= (join.one_mm or 0) / 10, (join, broken)


def test_whose_tail_it_is_is_said() -> None:
    text = " ".join(compiled("teasel").plain_text.replace("\u00a0", " ").split())
    assert (
        "44 (46: 48: 50: 52) rows, laying the 3 sts cast off on both edges together, with the tail of the sleeve and the back."
        in text
    )
    assert "14 rows of back welt, with the tail of the back welt." in text
    assert "on along the ends of 14 rows of sleeve welt, with the tail of the sleeve welt." in text


def test_the_bed_knows_whose_tail_may_sew() -> None:
    made = compiled("teasel")
    assert made.design is not None
    work = made.works[0]
    own = (("sleeve", "welt"),)
    for tails, case in (((("back", "welt"),), "tail-elsewhere"), ((*own, ("nobody", "")), "no-strip")):
        tasks = tuple(replace(task, tails=tails) if isinstance(task, Join) and task.tails == own else task for task in work.tasks)
        faults = knit(replace(work, tasks=tasks), bed_of(made.design)).faults
        assert {fault.case for fault in faults} == {case}


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
