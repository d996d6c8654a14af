"""A strip bent by its short rows, and a skirt laid in pleats, as they are worn."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import pytest

from tests.figures.test_fastened import cover_of, garment_of
from tests.whole.shipped_once import compiled
from walewright.figures.bent import bend, outline_of
from walewright.figures.drawn import DrawnGarment, drawn
from walewright.figures.measures import measured
from walewright.figures.tubes import tube


def test_a_strip_whose_wedges_lie_at_one_side_is_a_crescent() -> None:
    shawl = garment_of("ebb").pieces[0]
    found = bend(shawl)
    assert found is not None
    repeat, wedge = shawl.sized.repeats[0], shawl.sized.wedges[0]
    of = shawl.of
    # By hand: what the inner edge lacks in each repeat, over as far as the rows are held.
    lacks = of.height_cm(wedge.to_row) - of.height_cm(wedge.from_row)
    assert found.angle == pytest.approx(repeat.times * lacks / (wedge.reach * of.stitch_cm(0)))
    inner = found.line([(found.edge, found.low), (found.edge, found.high)])
    whole = sum(math.dist(a, b) for a, b in pairwise(inner))
    assert whole == pytest.approx(repeat.times * (found.high - found.low - lacks), rel=0.01)
    # Both tips are up, and the outline is symmetrical but for the rows of the counter.
    line = outline_of(shawl, found)
    lowest = min(line, key=lambda p: p[1])
    assert abs(lowest[0]) < 2
    highest = sorted(line, key=lambda p: p[1])[-1]
    assert abs(highest[0]) > 5


def test_a_piece_without_repeats_or_with_a_pattern_lies_straight() -> None:
    assert bend(garment_of("sandbar").pieces[0]) is None
    shawl = garment_of("ebb").pieces[0]
    striped = tuple(replace(layer, fabric=replace(layer.fabric, stripes=((layer.fabric.yarn, 2),))) for layer in shawl.of.layers)
    assert bend(replace(shawl, of=replace(shawl.of, layers=striped))) is None


def glued(name: str) -> DrawnGarment:
    outcome = compiled(name)
    design, counts, _, _ = outcome.result()
    assert outcome.glued is not None
    pieces = tuple(measured(design, counts, piece.name) for piece in design.pieces)
    return drawn(design, counts, pieces, 0, outcome.glued.in_size(0))


def test_pleats_are_folds_and_a_waistband_stands_above_them() -> None:
    skirt = glued("curlew")
    made = tube(skirt, frozenset(p.name for p in skirt.pieces))
    assert made is not None
    main, band = skirt.piece("skirt"), skirt.piece("waistband")
    ladders = len({slot for out in main.sized.needles_out for slot in out.slots}) * 4
    # Three layers to a pleat: of three ladders one is the outer fold.
    assert made.folds == pytest.approx(ladders / 3, abs=ladders * 0.03)
    assert made.waist == pytest.approx(main.shape.height, abs=0.1)
    assert made.height - made.waist == pytest.approx(band.shape.height + band.of.edging_cm, abs=0.1)
    lines = [s for s in cover_of("curlew").strokes if s.kind == "seam"]
    assert sum(s.data.count("M") for s in lines) == 2 * round(made.folds / 4) - 1


def test_a_skirt_without_ladders_has_no_folds() -> None:
    skirt = glued("windrow")
    made = tube(skirt, frozenset(p.name for p in skirt.pieces))
    assert made is not None
    assert made.folds == 0


def test_a_mitt_is_as_wide_below_its_thumb_as_above() -> None:
    mitts = glued("dotterel")
    made = tube(mitts, frozenset(p.name for p in mitts.pieces if "right" in p.name))
    assert made is not None
    assert made.thumb is not None
    assert made.widest == pytest.approx(max(made.profile[0][1], made.profile[-1][1]))
