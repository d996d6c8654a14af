"""Deep ribs and halves that wait long, from source to proof: shaped, parted, with holes, as panels, in charts."""

from __future__ import annotations

import pytest

from tests.draws import few_of
from walewright.cli.sources import shipped
from walewright.counted import counted_piece
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.knit import steps as st
from walewright.pipeline import Outcome, compile
from walewright.proof.latched import deepest, latched
from walewright.report.english import in_english
from walewright.sheet.hand_tools import tools
from walewright.sheet.handwork import handwork

HEAD = """pattern "Strips"

sizes S M
    w 30 40 cm

machine {machine}

yarn wool "wool", 50 g = 200 m

chart ridge
    key . knit
    key - purl
    | - . . - |
    repeat 4 stitches

fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g

fabric rib
    latched rib every 3rd needle in wool at tension 5
    swatch 40 stitches by 60 rows = 13.4 cm by 13.8 cm, 8.5 g

fabric same
    latched rib every 2nd needle in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g

fabric ridged
    chart ridge in wool at tension 7, 2 edge stitches
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g

edging welt in rib, 12 cm deep, added after, cast off chain

"""

PIECES = {
    "narrowing": """piece body in rib
    levels hem 0 cm, top 30 cm
    start w wide with e-wrap
    edges slope to w - 6 cm wide at top called side, fashioned 2 in
    end cast off
""",
    "widening": """piece body in rib
    levels hem 0 cm, top 30 cm
    start w wide with e-wrap
    edges slope to w + 6 cm wide at top called side
    end cast off
""",
    "armholes and a neck": """piece body in rib
    levels hem 0 cm, arm 20 cm, top 30 cm
    start w wide with e-wrap
    edges straight to arm called side
    edges cast off 2 cm then slope to w - 8 cm wide at top called armhole
    neck 12 cm wide, 8 cm deep, v
    end cast off
""",
    "shoulders": """piece body in rib
    levels hem 0 cm, tip 28 cm, top 30 cm
    start w wide with e-wrap
    edges straight to tip called side
    neck 12 cm wide, 6 cm deep, round, cast off
    shoulders held from tip
    end cast off
""",
    "holes": """piece body in rib
    levels hem 0 cm, first 2 cm, last 28 cm, top 30 cm
    start 4 cm wide with e-wrap
    edges straight to top called side
    buttonholes 4 over 2 stitches from first to last, 1 cm from the left edge
    end cast off
""",
    "eyelets": """piece body in rib
    levels hem 0 cm, first 2 cm, last 28 cm, top 30 cm
    start 4 cm wide with e-wrap
    edges straight to top called side
    buttonholes 4 over 1 stitch from first to last, 1 cm from the left edge
    end cast off
""",
    "a zone": """piece body in plain
    levels hem 0 cm, low 5 cm, high 20 cm, top 30 cm
    start w wide on waste yarn, with welt
    fabric rib from low to high
    edges slope to w - 6 cm wide at top called side
    end cast off
""",
    "a panel": """piece body in plain
    levels hem 0 cm, top 30 cm
    start w wide with e-wrap
    edges straight to top called side
    fabric same from hem to top, 4 cm wide
    end cast off
""",
    "columns of a chart": """piece body in ridged
    levels hem 0 cm, top 30 cm
    start w wide with e-wrap
    edges straight to top called side
    neck 12 cm wide, 8 cm deep, v
    end cast off
""",
}


def built(name: str, machine: str = "standard") -> Outcome:
    return compile(HEAD.format(machine=machine) + PIECES[name], "strips.wale", shipped(), Changes())


@pytest.mark.parametrize("machine", ["fine", "standard"])
@pytest.mark.parametrize("name", PIECES)
def test_a_deep_rib_is_proven(name: str, machine: str) -> None:
    outcome = built(name, machine)
    assert [in_english(d).message for d in outcome.diagnostics if d.severity.name == "ERROR"] == []
    design, _, instructions, _ = outcome.result()
    for result in outcome.results:
        drops = [rows for fabric in result.fabrics for *_, rows in fabric.latched]
        assert drops
        assert max(drops) <= design.machine.stage[1]
    told = {h.title for h in handwork(LANGUAGE, design, instructions)}
    assert "Latching in stages" in told


SLOPES = {
    "outwards": "edges slope by 3 cm at top called side",
    "outwards steeply": "edges slope by 12 cm at top called side",
    "outwards, fashioned": "edges slope by 4 cm at top, fashioned 3 in called side",
    "a curve outwards, fashioned": "left edge curve by 3 cm at top, fashioned 2 in called one\n"
    "    right edge arch by 3 cm at top called other",
    "inwards": "edges slope by -4 cm at top called side",
    "inwards, fashioned": "edges slope by -4 cm at top, fashioned 3 in called side",
    "out and in": "edges slope by 3 cm at middle called side\n    edges slope by -4 cm at top called side",
    "in and out": "edges slope by -3 cm at middle called side\n    edges slope by 4 cm at top called side",
    "at the left only": "left edge slope by 4 cm at middle called one\n    left edge slope by -2 cm at top called one",
    "at the right only": "right edge slope by -2 cm at middle called one\n    right edge slope by 4 cm at top called one",
    "at a rate": "edges out 1 stitch every 6 rows to middle called side\n    edges in 1 stitch every 3 rows to top called side",
    "cast off where it begins": "edges cast off 0.7 cm then slope by -1.4 cm at top called side",
    "cast off at one edge": "left edge curve by 2 cm at top called one\n"
    "    right edge cast off 1 cm then slope by -2 cm at top called other",
}
"""Ways of edges from `low` on, which a deep rib begins at or lies across."""

RIBS = {
    "whole": ("rib", ""),
    "from the hem": ("plain", "fabric rib from hem to middle"),
    "from where the edges move": ("plain", "fabric rib from low to top"),
    "a panel": ("plain", "fabric same from hem to top, 3 cm wide, 2 cm right of centre"),
}


EVERY = ("2nd", "3rd", "4th")
MOVING = [
    (edges, rib, EVERY[(turn + one + other) % len(EVERY)])
    for turn in range(len(EVERY))
    for one, edges in enumerate(SLOPES)
    for other, rib in enumerate(RIBS)
]
"""All with all others: the first third has each of two with each other."""


@pytest.mark.parametrize("moving", few_of(MOVING, len(MOVING) // len(EVERY)), ids="-".join)
def test_a_deep_rib_between_edges_that_move_is_proven(moving: tuple[str, str, str]) -> None:
    edges, rib, every = moving
    fabric, zone = RIBS[rib]
    source = (
        HEAD.format(machine="standard").replace("3rd", every).replace("2nd", every)
        + f"""piece body in {fabric}
    levels hem 0 cm, low 4 cm, middle 13 cm, top 26 cm
    start w - 10 cm wide with e-wrap
    {zone or "edges straight to low"}
    {"edges straight to low" if zone else ""}
    {SLOPES[edges]}
    end cast off
"""
    )
    outcome = compile(source, "strips.wale", shipped(), Changes(sizes=("S",)))
    assert [in_english(d).message for d in outcome.diagnostics if d.severity.name == "ERROR"] == []
    drops = [rows for result in outcome.results for fabric in result.fabrics for *_, rows in fabric.latched]
    assert drops
    assert max(drops) <= 30


@pytest.mark.parametrize("every", ["2nd", "3rd"])
@pytest.mark.parametrize("edge", ["both edges", "the left edge", "the right edge"])
@pytest.mark.parametrize("way", ["held in", "let out", "held in and let out"])
def test_a_rib_in_the_very_rows_of_a_wedge_is_proven(way: str, edge: str, every: str) -> None:
    """A column is latched up before its stitch is held."""
    wide = "4 cm" if way == "held in and let out" else "7 cm"
    source = (
        HEAD.format(machine="standard").replace("3rd", every).replace("2nd", every)
        + f"""piece body in plain
    levels hem 0 cm, low 4 cm, high 11 cm, top 14 cm
    start w wide with e-wrap
    fabric rib from low to high
    wedge {wide} wide at {edge} from low to high, {way}
    end cast off
"""
    )
    outcome = compile(source, "strips.wale", shipped(), Changes(sizes=("S",)))
    assert [in_english(d).message for d in outcome.diagnostics if d.severity.name == "ERROR"] == []


def test_the_proof_sees_a_column_that_was_left_out_or_dropped_too_deep() -> None:
    outcome = built("narrowing")
    design, counts, _, _ = outcome.result()
    (fabric,) = outcome.results[0].fabrics
    sized = counts.sizes[0].piece("body")
    told = list(latched(counted_piece(design, sized), fabric))
    assert told
    assert all(counted == knitted for _, counted, knitted in told)
    faces = bytearray(fabric.faces)
    faces[faces.index(1)] = 0
    object.__setattr__(fabric, "faces", bytes(faces))
    assert any(counted != knitted for _, counted, knitted in latched(counted_piece(design, sized), fabric))
    object.__setattr__(fabric, "latched", (*fabric.latched, (0, 40, 1, 31)))
    assert [(counted, knitted) for _, counted, knitted in deepest(design, fabric)] == [(30, 31)]


@pytest.mark.parametrize(("deep", "cord"), [("7.5 cm", False), ("12 cm", True)])
def test_a_half_of_a_neck_waits_as_long_as_it_can(deep: str, cord: bool) -> None:
    source = PIECES["armholes and a neck"].replace("8 cm deep", f"{deep} deep").replace("in rib", "in plain")
    outcome = compile(HEAD.format(machine="standard") + source, "strips.wale", shipped(), Changes())
    design, _, instructions, _ = outcome.result()
    kinds = {type(s) for plan in outcome.plans for block in plan.blocks for _, steps in block.paragraphs for s in steps}
    assert (st.PartOnCord in kinds, st.HoldPart in kinds) == (cord, not cord)
    assert ("A part waiting on ravel cord" in {h.title for h in handwork(LANGUAGE, design, instructions)}) == cord
    assert any(tool.startswith("Ravel cord") for tool in tools(LANGUAGE, design, instructions)) == cord
