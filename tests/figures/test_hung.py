"""Pieces begun along edges of others: what hangs on which needles."""

from __future__ import annotations

import re

import pytest

from tests.figures.test_worn import stages
from walewright.figures.garment import middle_size
from walewright.figures.model import Drawing
from walewright.figures.schematic import drawing, fitting_scale
from walewright.guide.english import LANGUAGE
from walewright.guide.german import LANGUAGE as GERMAN
from walewright.guide.model import Guide


def schematic(name: str, piece: str, guide: Guide = LANGUAGE) -> Drawing:
    made, pieces = stages(name)
    assert made.design is not None
    assert made.counts is not None
    of, at = next(p for p in pieces if p.piece.name == piece), made.design.at(middle_size(made.counts))
    return drawing(guide, at, of, "cm", fitting_scale(at, (of,)))


def across(of: Drawing, pattern: str) -> tuple[float, float]:
    """From where to where marks of that form lie."""
    xs = [float(x) for s in of.strokes if s.kind == "mark" for x in re.findall(pattern, s.data)]
    assert xs
    return min(xs), max(xs)


LOOPS = r"M(-?[\d.]+) 0a"
THROUGH = r"L(-?[\d.]+) 1\.4L"


@pytest.mark.parametrize(("piece", "loops_first"), [("right_thumb", True), ("left_thumb", False)])
def test_half_of_a_thumb_hangs_on_loops_and_half_is_picked_up(piece: str, loops_first: bool) -> None:
    of = schematic("mooring", piece)
    left, right = (across(of, form) for form in ((LOOPS, THROUGH) if loops_first else (THROUGH, LOOPS)))
    assert left[1] < 0 < right[0]
    (at,) = (t.x for t in of.letterings if "cast-on" in t.text)
    assert (at > 0) is loops_first


def test_names_are_in_the_language_of_the_page() -> None:
    words = " ".join(t.text for t in schematic("mooring", "right_thumb", GERMAN).letterings)
    assert "Anschlagkante" in words
    assert "cast-on" not in words


def test_a_piece_of_its_own_has_no_loops_at_its_start() -> None:
    assert not [s for s in schematic("mooring", "right_mitten").strokes if re.search(LOOPS, s.data)]
