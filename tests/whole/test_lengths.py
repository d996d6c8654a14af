"""The solver's lengths of edges are those that the bed measures on what it knitted: row for row, point for point, and of slopes
within what two ways of drawing one line through whole rows may differ."""

from __future__ import annotations

import pytest

from tests.whole.garment import SHIPPED
from walewright.bed import seam
from walewright.bed.fabric import KnitFabric
from walewright.counted import counted_piece
from walewright.counted.edges import stretches
from walewright.counted.in_size import in_size
from walewright.design import Changes
from walewright.glue import glue
from walewright.guide.english import LANGUAGE
from walewright.pipeline import Outcome, compile
from walewright.report.english import in_english
from walewright.solve.joins.seams import chain_length

HEAD = """pattern "Edges"

sizes S M
    length 60 62 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

fabric rib
    latched rib every 3rd needle in wool at tension 2
    swatch 40 stitches by 60 rows = 28.6 cm by 29.4 cm, 56 g

fabric tight
    stocking stitch in wool at tension 3
    swatch 40 stitches by 60 rows = 27 cm by 28 cm, 62 g

"""

PIECES = {
    "edges of their own": """piece front in plain
    levels hem 0 cm, low 20 cm, chest 30 cm, top length
    start 40 cm wide with chain
    left edge straight to low called a
    left edge cast off 4 cm then slope by -8 cm at chest called b
    left edge straight to top called c
    right edge slope by 3 cm at low called d
    right edge cast off 3 cm then curve by -7 cm at chest called e
    right edge arch by -5 cm at top called f
    end cast off

piece other in plain, mirror of front
""",
    "wedges": """piece front in plain
    levels hem 0 cm, low 20 cm, chest 30 cm, high 40 cm, top length
    start 40 cm wide with chain
    edges straight to low called a
    left edge straight to chest called b
    right edge straight to chest called c
    edges straight to top called d
    wedge 9 cm wide at left edge from low to chest, held in
    wedge 9 cm wide at both edges from chest to high, held in and let out
    end cast off
""",
    "zones": """piece front in plain
    levels hem 0 cm, low 20 cm, chest 30 cm, high 40 cm, top length
    start 40 cm wide with chain
    edges straight to low called a
    edges slope to 34 cm wide at high called b
    edges straight to top called c
    fabric tight from low to chest
    fabric rib from high to top
    end cast off
""",
    "repeats": """piece front in plain
    levels hem 0 cm, low 10 cm, chest 16 cm, high 30 cm, top 34 cm
    start 40 cm wide with chain
    edges straight to low called a
    left edge straight to chest called b
    right edge straight to chest called c
    edges straight to top called d
    wedge 9 cm wide at left edge from low to chest, held in
    repeat 3 times from low to chest
    end cast off
""",
    "openings": """piece front in plain
    levels hem 0 cm, low 20 cm, chest 30 cm, high 40 cm, top length
    start 40 cm wide with chain
    edges straight to chest called a
    edges slope to 36 cm wide at top called b
    opening slit 4 cm wide from low to chest, 5 cm right of centre, cast off
        left edge slope by 2 cm at chest
    opening scoop 4 cm wide from high to top, cast off
        edges slope to 14 cm wide at top
    end cast off
""",
    "across": """piece front in plain
    levels hem 0 cm, low 20 cm, chest 30 cm, top length
    start 30 cm wide with chain
    edges straight to low called a
    across to 40 cm wide at low
    edges straight to chest called b
    across to 30 cm wide at chest
    edges slope to 20 cm wide at top, fashioned 2 in, two at once called c
    end gathered
""",
    "two at once after a cast-off": """piece front in plain
    levels hem 0 cm, low 20 cm, top length
    start 44 cm wide with chain
    edges straight to low called a
    edges cast off 3 cm then slope to 20 cm wide at top, fashioned 2 in, two at once called b
    end cast off
""",
    "in and out again": """piece front in plain
    levels hem 0 cm, low 20 cm, waist 30 cm, chest 44 cm, top length
    start 40 cm wide with chain
    edges straight to low called a
    edges slope to 32 cm wide at waist called a
    edges slope to 42 cm wide at chest called a
    edges straight to top called a
    end cast off
""",
    "slots": """piece front in plain, centre stitch
    levels hem 0 cm, low 20 cm, chest 30 cm, top length
    start 40 cm wide with chain
    edges straight to low called a
    slot pocket 12 cm wide at low, 5 cm left of centre, on waste yarn
    edges slope to 50 cm wide at top called b
    end cast off

piece lining in plain
    levels hem 0 cm, top 10 cm
    start 12 cm wide with chain
    end on waste yarn

join lining end to front pocket, grafted
""",
    "a cap": """piece back in plain
    levels hem 0 cm, underarm 20 cm, chest 26 cm, top 44 cm
    start 44 cm wide with chain
    edges straight to underarm called side
    edges cast off 3 cm then curve to 34 cm wide at chest called armhole
    edges straight to top called scye
    end cast off

piece front in plain
    levels hem 0 cm, underarm 20 cm, chest 26 cm, top 44 cm
    start 44 cm wide with chain
    edges straight to underarm called side
    edges cast off 3 cm then curve to 34 cm wide at chest called armhole
    edges straight to top called scye
    end cast off

piece sleeve in plain, knit 2
    levels cuff 0 cm, widest 30 cm, bend between 34 cm and 38 cm, top between 36 cm and 48 cm
    start 24 cm wide with chain
    edges slope to 32 cm wide at widest
    edges cast off 3 cm then curve to 20 cm wide at bend called cap
    edges arch to 8 cm wide at top called head
    end cast off

join back end to front end
join sleeve cap + sleeve head + sleeve end to back armhole + back scye + front armhole + front scye, longer by 2 cm
""",
}


def compiled(what: str) -> Outcome:
    outcome = compile(HEAD + PIECES[what], "edges.wale", SHIPPED, Changes())
    assert outcome.counts is not None, outcome.diagnostics
    return outcome


def fabrics(outcome: Outcome, size: int) -> dict[str, KnitFabric]:
    assert outcome.results[size].faults == ()
    return {fabric.name: fabric for fabric in outcome.results[size].fabrics}


@pytest.mark.parametrize("what", PIECES)
def test_edges_are_as_long_as_they_are_knitted(what: str) -> None:
    outcome = compiled(what)
    assert outcome.design is not None
    assert outcome.counts is not None
    compared = 0
    for size, garment in enumerate(outcome.counts.sizes):
        knitted = fabrics(outcome, size)
        for piece in outcome.design.pieces:
            for edge in knitted[piece.name].edges:
                found = stretches(counted_piece(outcome.design, garment.piece(piece.name)), edge.name, round_it=True)
                own = [s for s in found if edge.part in ("whole", s.part)]
                assert own, f"{piece.name} {edge.name} {edge.part}: not counted"
                where = f"{garment.size} {piece.name} {edge.name} {edge.part}"
                assert own[0].length.rows + own[0].length.stitches == edge.count, where
                assert own[0].length.cm == pytest.approx(edge.length_cm, abs=1e-9 + edge.loose_cm), where
                assert own[0].points == len(edge.points), where
                compared += 1
    assert compared >= 6


@pytest.mark.parametrize("what", [name for name, text in PIECES.items() if "\njoin " in text])
def test_sides_of_joins_are_as_long_as_they_are_knitted(what: str) -> None:
    outcome = compiled(what)
    assert outcome.design is not None
    assert outcome.counts is not None
    glued, _ = glue(outcome.design)
    assert glued is not None
    for size, garment in enumerate(outcome.counts.sizes):
        knitted, of = fabrics(outcome, size), in_size(outcome.design.at(size), garment.pieces)
        for sewn in glued.in_size(size).seams:
            for side in (sewn.one, sewn.other):
                counted = chain_length(of, side)
                bed = seam(knitted, tuple((p.owner, p.edge) for p in side))
                assert bed is not None
                assert (counted.rows, counted.stitches) == (bed.rows, bed.stitches)
                assert counted.cm == pytest.approx(bed.length_cm, abs=1e-9 + bed.loose_mm / 10)


def test_a_gap_of_free_width_is_measured_by_the_width_chosen() -> None:
    body = """piece front in plain
    levels hem 0 cm, low 20 cm, top length
    start 40 cm wide with chain
    opening vent 4 cm wide from low to top, cast off
        edges slope to between 8 cm and 16 cm wide at top
    end cast off
"""
    outcome = compile(HEAD + body, "edges.wale", SHIPPED, Changes())
    assert outcome.proof is not None, [in_english(d).message for d in outcome.diagnostics]
    for size in outcome.proof.sizes:
        gap = next(m for m in size.pieces[0].measures if LANGUAGE.measure(m.key) == "width of vent")
        assert 8 <= gap.wanted_cm <= 16
        assert abs(gap.off) < 1e-6, gap
