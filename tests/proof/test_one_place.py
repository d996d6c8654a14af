"""What is wanted, counted and knitted under one name is taken at one place: level, row and fabric."""

from __future__ import annotations

import pytest

from walewright.cli.sources import shipped
from walewright.counted.model import Deviation
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.pipeline import compile
from walewright.proof.model import Measure
from walewright.report.english import in_english
from walewright.world import shipped_text

SOURCE = """pattern "Wanted"
sizes one
    length 40 cm
machine standard
yarn wool "fine wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g
fabric firm
    stocking stitch in wool at tension 5
    swatch 40 stitches by 60 rows = 13.2 cm by 13.1 cm, 9 g
piece front in plain
    {lines}
    end cast off
"""
BESIDE_A_SLOPE = """levels hem 0 cm, middle 20 cm, top length
    start 20 cm wide with e-wrap
    left edge slope by -5 cm at top called vee
    right edge slope by -2 cm at middle called side
    right edge slope by -3 cm at top called armhole"""
BOTH_AT_ONCE = """levels hem 0 cm, middle 20 cm, top length
    start 20 cm wide with e-wrap
    edges slope to 24 cm wide at middle
    across to 16 cm wide at middle
    edges straight to top"""
ONE_NAME = """levels hem 0 cm, throat 25 cm, top length
    start 40 cm wide with e-wrap
    edges slope to 36 cm wide at throat called side
    edges slope to 30 cm wide at top called arm
    opening throat 6 cm wide from throat to top, cast off
        edges slope to 10 cm wide at top"""
TWO_FABRICS = """levels hem 0 cm, low 7.1 cm, high 13.3 cm, top length
    start 20 cm wide with e-wrap
    edges straight to top
    fabric firm from low to high"""


def table(text: str, name: str = "wanted.wale", **kept: object) -> tuple[dict[str, Deviation], dict[str, Measure]]:
    """What the first piece has in its only size: counted, and knitted."""
    outcome = compile(text, name, shipped(), Changes(**kept))  # type: ignore[arg-type]
    assert outcome.proven, [in_english(d).message for d in outcome.diagnostics]
    _, counts, _, proof = outcome.result()
    piece = proof.sizes[0].pieces[0]
    told = [d for d in counts.sizes[0].deviations if d.piece == piece.name]
    counted = {LANGUAGE.measure(d.key): d for d in told}
    assert len(counted) == len(told)
    return counted, {LANGUAGE.measure(m.key): m for m in piece.measures}


@pytest.mark.parametrize("lines", [BESIDE_A_SLOPE, BOTH_AT_ONCE, ONE_NAME, TWO_FABRICS])
def test_every_measure_has_its_count(lines: str) -> None:
    counted, knitted = table(SOURCE.format(lines=lines))
    assert set(knitted) <= set(counted)
    for what, measure in knitted.items():
        assert measure.wanted_cm == pytest.approx(counted[what].wanted_cm, abs=1e-6), what
        assert measure.knitted_cm == pytest.approx(counted[what].solved_cm, abs=1e-6), what


def test_beside_an_edge_that_is_half_way_no_width_is_wanted() -> None:
    counted, knitted = table(SOURCE.format(lines=BESIDE_A_SLOPE))
    assert "width at middle" not in counted
    assert "width at middle" not in knitted
    assert counted["width at top"].solved == 28


def test_where_loops_are_hung_back_there_are_two_widths() -> None:
    counted, knitted = table(SOURCE.format(lines=BOTH_AT_ONCE))
    assert (counted["width at middle"].solved, counted["width at middle across"].solved) == (68, 44)
    assert knitted["width at middle"].wanted_cm == pytest.approx(24)
    assert knitted["width at middle across"].wanted_cm == pytest.approx(16)
    assert knitted["width at middle"].knitted_cm > knitted["width at middle across"].knitted_cm + 7


def test_an_opening_may_have_a_level_s_name() -> None:
    counted, knitted = table(SOURCE.format(lines=ONE_NAME))
    assert (counted["width at throat"].solved, counted["width of throat"].solved) == (100, 28)
    assert knitted["width at throat"].wanted_cm == pytest.approx(36)
    assert knitted["width of throat"].wanted_cm == pytest.approx(10)


def test_a_crown_s_stitches_and_centimetres_are_of_one_row() -> None:
    counted, knitted = table(shipped_text("patterns", "bollard.wale"), "bollard.wale", sizes=("toddler",))
    assert counted["width at first_gather across"].solved == 52
    assert knitted["width at first_gather across"].knitted_cm == pytest.approx(26.0)


def test_rows_are_measured_each_in_its_fabric() -> None:
    counted, _ = table(SOURCE.format(lines=TWO_FABRICS))
    low, high, top = (counted[f"height of {level}"] for level in ("low", "high", "top"))
    assert high.solved_cm == pytest.approx(low.solved / 4.0 + (high.solved - low.solved) / (60 / 13.1))
    assert top.solved_cm == pytest.approx(high.solved_cm + (top.solved - high.solved) / 4.0)
