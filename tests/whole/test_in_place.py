"""A stitch for each seam stays a stitch at every tension, and a width that is rounded to stitches is knitted as it is rounded."""

from __future__ import annotations

import pytest

from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes

SOURCE = """\
pattern "Cushion"
sizes S M
    side 40 44 cm
machine standard
yarn wool "wool", 100 g = 400 m
fabric plain
    stocking stitch in wool at tension 5
    swatch 30 stitches by 40 rows = 10 cm by 10 cm

piece seamed in plain
    levels hem 0 cm, top side + 4 rows
    start side + 2 stitches wide with e-wrap
    end cast off

piece blocks in plain
    levels hem 0 cm, top round_up(side to 10 rows)
    start round_down(side to 12 stitches) wide with e-wrap
    edges slope to round_up(side / 2 to 12 stitches) wide at top
    end cast off
free seamed start + seamed end + blocks start + blocks end
"""


@pytest.mark.parametrize("tension", ["30 st 40 rows", "29 st 39 rows", "31.3 st 42.1 rows", "24 st 33 rows"])
def test_counts_are_as_they_are_written_at_every_tension(tension: str) -> None:
    outcome = pipeline.compile(SOURCE, "cushion.wale", shipped(), Changes(tensions={"plain": tension}))
    assert outcome.proven, outcome.diagnostics
    assert outcome.counts is not None
    stitches, rows = (float(word) / 10 for word in tension.split()[::2])
    for side, garment in zip((40, 44), outcome.counts.sizes, strict=True):
        seamed, blocks = garment.piece("seamed"), garment.piece("blocks")
        assert abs(seamed.start - 2 - side * stitches) <= 1
        assert abs(seamed.rows - 4 - side * rows) <= 1
        assert blocks.start == side * stitches // 12 * 12
        assert blocks.rows == -(-side * rows // 10) * 10
        top = blocks.start + 2 * sum(by for run in blocks.left for _, by in run.changes())
        assert top == -(-side / 2 * stitches // 12) * 12
