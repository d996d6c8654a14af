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
from walewright.figures.evened import evened
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


def test_ends_that_run_out_to_a_tip_are_pinned_on_along_the_curve() -> None:
    shawl = evened(garment_of("ebb").pieces[0])
    found = bend(shawl)
    assert found is not None
    top = shawl.shape.height

    def wale(x: float, low: float, high: float) -> list[tuple[float, float]]:
        return found.line([(x, low), (x, high)])

    inner = wale(found.edge, 0.0, top)
    ways = [math.atan2(d - b, c - a) for (a, b), (c, d) in pairwise(inner) if math.dist((a, b), (c, d)) > 0.2]
    assert ways == sorted(ways), "it bends one way only"
    assert ways[-1] - ways[0] == pytest.approx(found.angle, rel=0.05), "by what its wedges make"
    # The ends bend as well: what was straight on the bed is no straight line.
    end = wale(found.edge, 0.0, found.low)
    assert math.dist(end[0], end[-1]) < 0.99 * sum(math.dist(a, b) for a, b in pairwise(end))
    # A wale is as long as where its ends lie straight, and as far from the inner edge.
    straight = replace(found, pinned=0.0)
    for out in (10.0, 20.0):
        x = found.edge + out * found.way
        one, other = (of.line([(x, 20.0), (x, top - 20.0)]) for of in (found, straight))
        assert sum(math.dist(a, b) for a, b in pairwise(one)) == pytest.approx(
            sum(math.dist(a, b) for a, b in pairwise(other)), rel=0.01
        )
        assert min(math.dist(one[len(one) // 2], p) for p in inner) == pytest.approx(out, rel=0.02)


def test_a_strip_with_straight_ends_is_bent_where_its_wedges_are() -> None:
    shawl = garment_of("ebb").pieces[0]
    wide = replace(shawl.shape, left=tuple((-41.4, y) for _, y in shawl.shape.left))
    found = bend(replace(shawl, shape=wide))
    assert found is not None
    assert found.pinned == 0
    assert len(found.line([(found.edge, 0.0), (found.edge, found.low)])) == 2


def test_a_slope_has_no_waves() -> None:
    for name in ("ebb", "sandbar"):
        piece = garment_of(name).pieces[0]
        before, after = piece.shape, evened(piece).shape
        assert len(before.polygon) > 15 > 8 > len(after.polygon) - 1
        assert (before.width, before.height) == pytest.approx((after.width, after.height))


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
    # The size of the cover.
    size = (len(design.sizes) - 1) // 2
    return drawn(design, counts, pieces, size, outcome.glued.in_size(size))


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
