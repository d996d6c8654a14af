"""Shipped beds against published pitches and needle counts, and the rule that no piece is wider than its bed.

`bed_widths.csv` beside this file gives each figure's source, and says which were read there and which are from memory.
The rule: a piece has at most as many stitches as the bed has needles, so in a fabric of s stitches to the centimetre the
widest piece is needles / s (derived: one loop a needle).
"""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.reading.machine import profile

with (Path(__file__).parent / "bed_widths.csv").open(encoding="utf-8", newline="") as table:
    PUBLISHED = tuple(csv.DictReader(table))

SOURCE = """\
pattern "Panel"
sizes one
    length 30 cm
machine {machine}
yarn wool "wool", 100 g = 120 m
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 25 cm by 30 cm, 40 g
piece panel in plain
    levels bottom 0 cm, top length
    start {stitches} stitches wide with e-wrap
    edges straight to top
    end cast off
"""


FROM_MEMORY = {"plate"}
"""Beds whose figures nobody has published where we looked; their own files say so."""


def test_every_shipped_bed_has_published_figures() -> None:
    assert {row["profile"] for row in PUBLISHED} | FROM_MEMORY == set(shipped().machines)
    assert {row["profile"] for row in PUBLISHED} & FROM_MEMORY == set()


@pytest.mark.parametrize("name", sorted(FROM_MEMORY))
def test_a_bed_from_memory_says_so(name: str) -> None:
    assert "from memory" in " ".join(shipped().machines[name].replace("#", " ").split())


@pytest.mark.parametrize("row", PUBLISHED, ids=lambda row: row["profile"])
def test_a_shipped_bed_is_as_published(row: dict[str, str]) -> None:
    bed = profile(row["profile"], shipped().machines[row["profile"]])
    assert bed.pitch_mm == float(row["pitch_mm"])
    assert bed.needles == int(row["needles"])


@pytest.mark.parametrize("row", PUBLISHED, ids=lambda row: row["profile"])
def test_a_piece_may_fill_the_bed(row: dict[str, str]) -> None:
    needles = int(row["needles"])
    outcome = pipeline.compile(SOURCE.format(machine=row["profile"], stitches=needles), "full.wale", shipped(), Changes())
    assert outcome.diagnostics == ()
    assert outcome.counts is not None
    assert outcome.counts.sizes[0].pieces[0].start == needles
    assert outcome.proof is not None
    assert outcome.proof.sizes[0].pieces[0].first_needle == f"L {needles // 2}"
    assert outcome.proof.sizes[0].pieces[0].last_needle == f"R {needles // 2}"


@pytest.mark.parametrize("row", PUBLISHED, ids=lambda row: row["profile"])
def test_a_piece_wider_than_the_bed_is_refused(row: dict[str, str]) -> None:
    wide = int(row["needles"]) + 4
    outcome = pipeline.compile(SOURCE.format(machine=row["profile"], stitches=wide), "wide.wale", shipped(), Changes())
    assert not outcome.proven
    assert [d.code for d in outcome.diagnostics] == ["wider-than-bed"]
