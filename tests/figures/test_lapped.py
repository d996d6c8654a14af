"""A V whose band is in two: one end lies over the other at its point."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import pairwise

import pytest

from tests.figures.test_bent import glued
from tests.whole.shipped_once import compiled
from walewright.design.model import EdgeName
from walewright.figures.banded import laps_at_point
from walewright.figures.drawn import drawn
from walewright.figures.garment import cover
from walewright.figures.measures import measured
from walewright.figures.rims import inner_rim, lapped_rim
from walewright.guide.english import LANGUAGE

V = [(n / 2, 20.0 + abs(n)) for n in range(-20, 21)]
DEPTH = 2.5


def test_the_upper_band_goes_on_to_the_line_of_the_other_side() -> None:
    line, rim = V, inner_rim(V, DEPTH)
    found = lapped_rim(line, rim)
    assert found is not None
    upper, edge = found
    assert upper[0] == (0.0, 20.0)
    assert upper[1:] == line[-len(upper) + 1 :]
    (x, y), (nx, ny) = edge[0], edge[1]
    # On the line of the left side, below the point where the mitre would be, and in line with its own rim.
    assert x < 0
    assert y - 20 == pytest.approx(-2 * x)
    mitre = next(b for a, b in pairwise(rim) if a == b)
    assert 20 < y < mitre[1]
    assert (nx - x) * (mitre[1] - y) == pytest.approx((ny - y) * (mitre[0] - x))


def test_a_round_neck_has_no_point() -> None:
    flat = [(-10.0, 40.0), (-6.0, 30.0), (6.0, 30.0), (10.0, 40.0)]
    assert lapped_rim(flat, inner_rim(flat, 1.0)) is None


@pytest.mark.parametrize(("name", "lapped"), [("fairlead", True), ("plover", True), ("tidewrack", False), ("shoal", False)])
def test_bands_up_both_sides_lap_and_a_band_all_round_does_not(name: str, lapped: bool) -> None:
    garment = glued(name)
    found = {laps_at_point(garment, piece.name, o.name) for piece in garment.pieces for o in piece.piece.openings}
    assert (True in found) == lapped


def test_ends_that_are_joined_do_not_lap() -> None:
    outcome = compiled("fairlead")
    design, counts, *_ = outcome.result()
    one, other = (EdgeName(band.name, end) for band, end in zip(design.bands, ("first end", "last end"), strict=True))
    joined = replace(design, joins=(*design.joins, replace(design.joins[0], one=(one,), other=(other,))))
    laps = []
    for of in (design, joined):
        garment = drawn(of, counts, tuple(measured(of, counts, p.name) for p in of.pieces), 0, None)
        laps.append(any(laps_at_point(garment, p.name, o.name) for p in garment.pieces for o in p.piece.openings))
    assert laps == [True, False]


def test_the_wearer_s_left_one_is_drawn_uppermost() -> None:
    """The last rim that is drawn goes from the point of the V to the right of the drawing, whose middle is 0 across."""
    outcome = compiled("fairlead")
    design, counts, *_ = outcome.result()
    worn = cover(LANGUAGE, design, counts, tuple(measured(design, counts, p.name) for p in design.pieces), outcome.glued)
    shapes = [stroke.data for stroke in worn.strokes if stroke.kind == "cloth"]
    last = [float(x) for x in re.findall(r"[ML](-?[\d.]+) ", shapes[-1])]
    middle = worn.width / 2
    assert max(last) - middle > 4 * (middle - min(last)) > 0
