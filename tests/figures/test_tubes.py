"""What is joined to a tube is drawn as it looks when made up, by its joins and outline alone."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest

from tests.whole.shipped_once import compiled
from walewright.figures.drawn import drawn as in_one_size
from walewright.figures.garment import cover, middle_size
from walewright.figures.measures import measured
from walewright.figures.model import Drawing
from walewright.figures.tubes import MadeTube, rounded, tube
from walewright.guide.english import LANGUAGE
from walewright.pipeline import Outcome


def found(name: str, *part: str) -> MadeTube | None:
    made = compiled(name)
    assert made.design is not None
    assert made.counts is not None
    assert made.glued is not None
    pieces = tuple(measured(made.design, made.counts, p.name) for p in made.design.pieces)
    garment = in_one_size(made.design, made.counts, pieces, middle_size(made.counts), made.glued.groups[0])
    return tube(garment, frozenset(part))


def drawn(made: Outcome, glued: bool = True) -> Drawing:
    assert made.design is not None
    assert made.counts is not None
    pieces = tuple(measured(made.design, made.counts, p.name) for p in made.design.pieces)
    return cover(LANGUAGE, made.design, made.counts, pieces, made.glued if glued else None)


@pytest.mark.parametrize(
    ("name", "piece"), [("bollard", "hat"), ("limpet", "hat"), ("skerry", "beret"), ("mooring", "right_mitten")]
)
def test_a_drawn_up_top_closes(name: str, piece: str) -> None:
    made = found(name, piece) if name != "mooring" else found(name, piece, "right_thumb")
    assert made is not None
    assert made.closed
    line = rounded(made)
    assert line[-1][1] == pytest.approx(0, abs=1e-6)
    assert line[-1][0] == pytest.approx(made.height)
    assert [y for y, _ in line] == sorted(y for y, _ in line)


def test_a_beret_rolls_over_above_its_band() -> None:
    made = found("skerry", "beret")
    assert made is not None
    line = rounded(made)
    widest = max(range(len(line)), key=lambda n: line[n][1])
    assert line[widest][0] == pytest.approx(made.height / 2, rel=0.05), "as much of it lies above as below"
    assert line[0][1] == pytest.approx(made.edging[1]), "it hangs on its band"
    # No corner: where it is widest its side is upright.
    (below, narrow), (above, wide) = line[widest - 1], line[widest]
    assert wide - narrow < 0.2 * (above - below)
    # What leans out more steeply than it is looked down upon is not seen, and its outline hides the band.
    drawing = drawn(compiled("skerry"))
    outline = [stroke for stroke in drawing.strokes if stroke.kind == "outline"][-1]
    corners = [(float(x), float(y)) for x, y in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", outline.data)]
    lowest = max(corners, key=lambda p: p[1])
    assert lowest[0] == pytest.approx(drawing.width / 2, abs=1)
    slopes = [(d - b) / (c - a) for (a, b), (c, d) in pairwise(corners) if a > lowest[0] + 1 and d < b]
    assert slopes[0] > -0.2, "it is round at its foot"


def test_a_tube_is_half_as_wide_as_its_piece() -> None:
    made = found("bollard", "hat")
    assert made is not None
    shape = made.piece.shape
    assert 4 * made.profile[0][1] == pytest.approx(shape.start_width)
    assert made.upright
    assert made.thumb is None


def test_a_skirt_in_gores_is_open_and_wider_at_its_hem() -> None:
    made = found("windrow", "skirt")
    assert made is not None
    assert not made.closed
    assert not made.upright
    assert made.profile[0][1] > 1.2 * made.profile[-1][1]
    assert made.band > 0


def test_four_panels_and_a_waistband_are_one_ring() -> None:
    made = found("curlew", "skirt", "waistband")
    assert made is not None
    assert made.copies == 4
    assert not made.closed
    assert made.profile[0][1] > made.profile[-1][1]


def test_a_sock_has_a_foot_and_a_hat_has_none() -> None:
    sock, hat = found("driftline", "sock"), found("bollard", "hat")
    assert sock is not None
    assert sock.foot is not None
    assert sock.foot.turned_toe
    assert sock.foot.length > sock.foot.thick
    assert hat is not None
    assert hat.foot is None


def test_the_thumbs_of_a_pair_are_mirror_images() -> None:
    right, left = found("mooring", "right_mitten", "right_thumb"), found("mooring", "left_mitten", "left_thumb")
    assert right is not None
    assert left is not None
    assert right.thumb is not None
    assert left.thumb is not None
    assert right.thumb.across == pytest.approx(-left.thumb.across, abs=0.05)
    assert right.thumb.closed


@pytest.mark.parametrize(("name", "part"), [("tidewrack", ("back", "front", "sleeve")), ("sandbar", ("shawl",))])
def test_what_is_no_tube_is_none(name: str, part: tuple[str, ...]) -> None:
    assert found(name, *part) is None


@pytest.mark.parametrize("name", ["bollard", "driftline", "mooring", "windrow", "curlew", "dotterel", "hawser", "breakwater"])
def test_nothing_is_drawn_off_the_paper(name: str) -> None:
    of = drawn(compiled(name))
    for stroke in of.strokes:
        for x, y in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", stroke.data):
            assert -0.1 <= float(x) <= of.width + 0.1
            assert -0.1 <= float(y) <= of.height + 0.1


def test_a_hat_is_wales_to_its_crown_and_no_flat_piece() -> None:
    made, flat = drawn(compiled("bollard")), drawn(compiled("bollard"), glued=False)
    assert made.width == flat.width
    assert made.strokes != flat.strokes
    assert "wale" in {s.kind for s in made.strokes}


def test_a_cable_and_a_lace_show_where_they_are() -> None:
    for name in ("hawser", "anemone"):
        of = drawn(compiled(name))
        assert of.tiles
        assert {t.name for t in of.tiles} == {s.colour for s in of.strokes if s.kind == "tiled"}
        assert len({t.name for t in of.tiles}) == len(of.tiles)
