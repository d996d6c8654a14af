"""Garments as they are worn: how their pieces are found and where they lie."""

from __future__ import annotations

import re

import pytest

from tests.whole.shipped_once import compiled
from walewright.counted.edge_lines import edge_line
from walewright.figures.collars import Collars, collars_of
from walewright.figures.drawn import DrawnGarment
from walewright.figures.drawn import drawn as in_one_size
from walewright.figures.garment import cover, middle_size
from walewright.figures.gathers import gathers
from walewright.figures.measures import LaidPiece, MeasuredPiece, measured
from walewright.figures.model import Drawing
from walewright.figures.sideways import Sideways, sideways
from walewright.figures.trunks import Trunk, trunk_of
from walewright.figures.worn import HANG
from walewright.guide.english import LANGUAGE
from walewright.pipeline import Outcome


def stages(name: str) -> tuple[Outcome, tuple[MeasuredPiece, ...]]:
    made = compiled(name)
    assert made.design is not None
    assert made.counts is not None
    return made, tuple(measured(made.design, made.counts, p.name) for p in made.design.pieces)


def garment(name: str) -> DrawnGarment:
    made, pieces = stages(name)
    assert made.design is not None
    assert made.counts is not None
    assert made.glued is not None
    size = middle_size(made.counts)
    return in_one_size(made.design, made.counts, pieces, size, made.glued.in_size(size))


def trunk(name: str) -> Trunk:
    found = trunk_of(garment(name))
    assert found is not None
    return found


def collars(name: str) -> Collars:
    return collars_of(garment(name), trunk(name))


def across(name: str) -> Sideways | None:
    return sideways(garment(name))


def drawn(name: str) -> Drawing:
    made, pieces = stages(name)
    assert made.design is not None
    assert made.counts is not None
    return cover(LANGUAGE, made.design, made.counts, pieces, made.glued)


def span(of: LaidPiece, x: float) -> tuple[float, float]:
    return of.shape.polygon_left + x, of.shape.polygon_right + x


def test_a_back_in_two_panels_is_one_back_with_its_seam_in_the_middle() -> None:
    found = trunk("peatbank")
    assert found.bodies == {"left_front", "right_front", "left_back", "right_back"}
    backs = sorted(found.backs, key=lambda placed: placed.name)
    left, right = (sorted(placed.at((x, 0.0))[0] for x in span(placed.piece, 0.0)) for placed in backs)
    assert left[1] == pytest.approx(0.0)
    assert right[0] == pytest.approx(0.0)


def test_the_sleeve_of_a_raglan_is_no_back() -> None:
    found = trunk("teasel")
    assert [placed.name for placed in found.backs] == ["back"]
    of = drawn("teasel")
    corners = {p for line in outlines(of, "outline") for p in line}
    tips = {min(line, key=lambda p: p[1]) for line in outlines(of, "cloth") if min(x for x, _ in line) < 2}
    assert tips
    assert all(min(abs(x - a) + abs(y - b) for a, b in corners) < 0.1 for x, y in tips), "they hang from the neck"


def test_fronts_that_lap_lie_on_each_other_by_so_much() -> None:
    found = trunk("peatbank")
    assert [placed.name for placed in found.fronts] == ["right_front", "left_front"], "the left one lies over the right one"
    (right_from, _), (_, left_to) = (span(placed.piece, placed.x) for placed in found.fronts)
    assert left_to - right_from == pytest.approx(8.0)
    assert not found.band, "a facing is turned in"


def test_fronts_whose_chained_edges_lap_lie_on_each_other() -> None:
    found = trunk("turnstone")
    assert [placed.name for placed in found.fronts] == ["left_front", "right_front"], "the one with the buttonholes lies above"
    (left_from, left_to), (right_from, right_to) = (span(placed.piece, placed.x) for placed in found.fronts)
    chained = found.bands["left_front", "edge"] + found.bands["right_front", "edge"]
    assert 0 < chained < 1
    assert min(left_to, right_to) - max(left_from, right_from) == pytest.approx(2.4 - chained)


@pytest.mark.parametrize(("name", "depth"), [("whimbrel", 3.0), ("samphire", 2.0), ("turnstone", 0.0), ("peatbank", 0.0)])
def test_a_band_goes_on_behind_the_neck_from_one_front_to_the_other(name: str, depth: float) -> None:
    body = trunk(name)
    assert body.behind[0] == pytest.approx(depth, abs=0.3)
    if not depth:
        return
    # The ends of both fronts' bands lie at those of the back's, which is drawn before them.
    of = drawn(name)
    cloths = outlines(of, "cloth")
    middle = of.width / 2
    across = [
        line for line in cloths if min(y for _, y in line) < 10 and min(x for x, _ in line) < middle < max(x for x, _ in line)
    ]
    ends = [min(line, key=lambda p: p[1]) for line in cloths[cloths.index(across[0]) + 1 :] if min(y for _, y in line) < 10]
    for left in (True, False):
        end = min(p for p in ends if (p[0] < middle) == left and abs(p[0] - middle) < of.width / 8)
        assert min(abs(end[0] - x) + abs(end[1] - y) for x, y in across[0]) < 2.0


def test_a_shawl_collar_lies_on_both_fronts_and_is_deeper_at_the_neck() -> None:
    found = collars("peatbank")
    assert {of.front for of in found.rolled} == {"left_front", "right_front"}
    assert found.behind > 0
    for of in found.rolled:
        far = [((x - a) ** 2 + (y - b) ** 2) ** 0.5 for (x, y), (a, b) in zip(of.line, of.rim, strict=True)]
        assert far[-1] > 2 * far[0]
        assert abs(of.rim[-1][0]) > abs(of.line[-1][0]), "it is rolled over to the outside"


def test_the_lining_of_a_pocket_is_no_collar() -> None:
    assert collars("samphire") == Collars()


def test_a_hood_stands_on_the_neck_and_strips_lie_along_the_fronts_only() -> None:
    found, body = collars("fulmar"), trunk("fulmar")
    assert found.hood is not None
    top = max(y for _, y in found.hood.outline)
    assert top > body.fronts[0].piece.shape.height + 15
    assert max(y for _, y in found.hood.face) < top
    assert body.bands.keys() == {("left_front", "edge"), ("right_front", "edge")}


def test_a_body_knitted_from_side_to_side_has_its_neck_up() -> None:
    found = across("kittiwake")
    assert found is not None
    corners = found.worn(found.front.shape.polygon)
    assert found.front.name == "front", "the deeper neck is in front"
    high = max(y for _, y in corners)
    assert max(y for _, y in found.neck) == pytest.approx(high, abs=0.01)
    assert min(y for _, y in found.neck) < min(y for _, y in found.behind) < high
    assert found.neck[0][0] == pytest.approx(found.behind[0][0], abs=0.6), "the ends of both necks meet"
    # The wristband that is picked up along the last row is outside of it.
    ((edge, outer, _),) = found.rims
    assert max(abs(x) for x, _ in outer) > max(abs(x) for x, _ in edge) == pytest.approx(max(abs(x) for x, _ in corners))
    assert drawn("kittiwake").width > 2 * drawn("kittiwake").height


@pytest.mark.parametrize("name", ["tidewrack", "peatbank", "bollard", "ebb"])
def test_nothing_else_is_knitted_from_side_to_side(name: str) -> None:
    assert across(name) is None


def outlines(of: Drawing, kind: str) -> list[list[tuple[float, float]]]:
    return [
        [(float(x), float(y)) for x, y in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", line)]
        for stroke in of.strokes
        if stroke.kind == kind
        for line in re.findall(r"M[^M]+", stroke.data)
    ]


def test_a_set_in_sleeve_hangs_from_the_end_of_the_shoulder() -> None:
    of = drawn("fairlead")
    body = max(outlines(of, "outline"), key=len)
    sleeves = [line for line in outlines(of, "cloth") if min(x for x, _ in line) < 2]
    assert sleeves
    tip = min(sleeves[0], key=lambda p: p[1])
    assert min(abs(tip[0] - x) + abs(tip[1] - y) for x, y in body) < 0.1, "the sleeve's highest point is a corner of the body"


def test_a_saddle_goes_on_over_the_shoulder() -> None:
    of = drawn("halyard")
    sleeves = [line for line in outlines(of, "outline") if min(x for x, _ in line) < 2 or max(x for x, _ in line) > of.width - 2]
    assert len(sleeves) == 2
    body = max((line for line in outlines(of, "outline") if line not in sleeves), key=len)
    for sleeve in sleeves:
        assert min(y for _, y in sleeve) < min(y for _, y in body) - 3, "it lies above the front's shoulder"
        assert max(y for _, y in sleeve) > of.height / 2, "and is one outline with the strap"


def test_a_neckband_goes_over_the_ends_of_straps() -> None:
    of = drawn("halyard")
    folds = [
        min(line, key=lambda p: p[1])
        for line in outlines(of, "outline")
        if min(x for x, _ in line) < 2 or max(x for x, _ in line) > of.width - 2
    ]
    bands = [line for line in outlines(of, "cloth") if max(x for x, _ in line) - min(x for x, _ in line) < of.width / 4]
    assert bands
    for x, y in folds:
        assert all(min(abs(x - a) + abs(y - b) for a, b in band) < 0.1 for band in bands), "from fold to fold"
    assert min(y for band in bands for _, y in band) >= 0, "and it is on the paper"


def test_darts_are_seen_where_the_piece_is_taken_in() -> None:
    bust = outlines(drawn("lapwing"), "dart")
    assert len(bust) == 2
    assert all(abs(line[0][0] - line[-1][0]) > 3 * abs(line[0][1] - line[-1][1]) for line in bust), "held rows go inwards"
    waist = outlines(drawn("greylag"), "dart")
    assert len(waist) == 6
    assert all(abs(line[0][1] - line[-1][1]) > 3 * abs(line[0][0] - line[-1][0]) for line in waist), "inside lines go upwards"
    assert len(outlines(drawn("kittiwake"), "dart")) == 2
    assert not outlines(drawn("tidewrack"), "dart")


def test_gathers_lie_in_the_sleeve_beside_the_armhole() -> None:
    of = garment("lapwing")
    body = trunk("lapwing")
    (front,) = body.fronts
    found = list(gathers(of, body, HANG))
    assert len(found) > 8
    armhole = [front.at(p) for side in ("left", "right") for p in edge_line(front.piece.of, front.piece.shape, f"armhole {side}")]
    tip = max(y for _, y in armhole)
    for (x, y), (far, low) in found:
        assert abs(far) > abs(x)
        assert low < y < tip, "they go down with the sleeve"
        assert min(abs(abs(x) - abs(a)) for a, _ in armhole) < 0.5
    assert len(outlines(drawn("lapwing"), "seam")) == len(found) + 2, "all are drawn, besides the edges of both cuffs"
    assert not list(gathers(garment("fairlead"), trunk("fairlead"), HANG)), "a head that is eased in has none"


def test_a_long_piece_that_is_all_there_is_lies_across_with_its_shorter_edge_up() -> None:
    of = drawn("sandbar")
    assert of.width > 2 * of.height
    (corners,) = outlines(of, "outline")
    top = [x for x, y in corners if y < 3]
    assert max(top) - min(top) > 0.95 * of.width - 5
