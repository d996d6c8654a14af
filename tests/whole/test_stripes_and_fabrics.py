"""Stripes beside other fabrics: they begin with the rows that they are knitted in, on the bed, in words and in drawings."""

from __future__ import annotations

import pytest

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.figures.measures import measured
from walewright.figures.worked import stripes
from walewright.figures.yarns import colour
from walewright.pipeline import Outcome, compile
from walewright.report.english import in_english

SOURCE = """
pattern "Scarf"

sizes one
    width 30 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m
yarn navy "navy wool", 100 g = 240 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 20 stitches by 30 rows = 20 cm by 20 cm

fabric bands
    stripes of 4 rows wool, 4 rows navy at tension 5
    swatch 20 stitches by 30 rows = 20 cm by 20 cm

piece scarf in bands
    levels hem 0 cm, low 4 cm, top 20 cm
    start width wide with e-wrap
    fabric plain from hem to low
    edges straight to top
    end cast off
"""


def built(source: str) -> Outcome:
    outcome = compile(source, "scarf.wale", shipped(), Changes())
    assert [in_english(d).message for d in outcome.diagnostics if d.severity.name == "ERROR"] == []
    return outcome


IN_A_ZONE = SOURCE.replace("in bands", "in plain").replace("plain from hem to low", "bands from low to top")


@pytest.mark.parametrize("source", [SOURCE, IN_A_ZONE])
def test_stripes_begin_with_their_own_first_row(source: str) -> None:
    """1.5 rows a cm: they begin above row 6, the piece's own as a zone's."""
    (fabric,) = built(source).results[0].fabrics
    yarns = [fabric.passes(row)[0].yarn for row in range(1, 31)]
    assert yarns == [*["wool"] * 6, *(["wool"] * 4 + ["navy"] * 4) * 3]


def test_a_drawing_shows_stripes_above_another_fabric() -> None:
    design, counts, *_ = built(SOURCE).result()
    (piece,) = measured(design, counts, "scarf").laid
    drawn = list(stripes(design, piece, piece.shape.polygon))
    assert {shade for _, shade in drawn} == {colour(design, "wool"), colour(design, "navy")}
    assert min(y for corners, _ in drawn for _, y in corners) == pytest.approx(4)
