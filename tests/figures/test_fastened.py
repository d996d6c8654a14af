"""What lies on a garment as it is worn: pockets with their edgings, a button on each buttonhole, and sides that are even."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest

from tests.whole.shipped_once import compiled
from walewright.counted.outline import Outline
from walewright.figures.drawn import DrawnGarment, drawn
from walewright.figures.evened import NEAR, evened
from walewright.figures.fastened import BUTTON
from walewright.figures.garment import cover, middle_size
from walewright.figures.measures import measured
from walewright.figures.model import Drawing
from walewright.guide.english import LANGUAGE


def garment_of(name: str) -> DrawnGarment:
    design, counts, _, _ = compiled(name).result()
    pieces = tuple(measured(design, counts, piece.name) for piece in design.pieces)
    return drawn(design, counts, pieces, middle_size(counts), None)


def cover_of(name: str) -> Drawing:
    outcome = compiled(name)
    design, counts, _, _ = outcome.result()
    return cover(LANGUAGE, design, counts, tuple(measured(design, counts, p.name) for p in design.pieces), outcome.glued)


def buttons(of: Drawing) -> list[tuple[float, float]]:
    """Where they are: the middles of filled circles of their size."""
    found = []
    for stroke in of.strokes:
        for ring in re.findall(r"M[^M]*Z", stroke.data) if stroke.kind == "cloth" else ():
            numbers = [float(n) for n in re.findall(r"-?[\d.]+", ring)]
            if "C" in ring and max(numbers[::2]) - min(numbers[::2]) == pytest.approx(2 * BUTTON, abs=0.03):
                found.append(((max(numbers[::2]) + min(numbers[::2])) / 2, (max(numbers[1::2]) + min(numbers[1::2])) / 2))
    return found


@pytest.mark.parametrize(("name", "count"), [("marram", 7), ("samphire", 6), ("turnstone", 4), ("whimbrel", 5), ("sanderling", 4)])
def test_a_button_lies_on_each_buttonhole(name: str, count: int) -> None:
    spots = buttons(cover_of(name))
    assert len(spots) == count
    if name != "sanderling":
        # One over the other in front, as far from each other as the holes are.
        heights = sorted(y for _, y in spots)
        gaps = [b - a for a, b in pairwise(heights)]
        assert max(gaps) < 1.25 * min(gaps)


def test_what_has_no_buttonholes_has_no_buttons() -> None:
    assert buttons(cover_of("tidewrack")) == []


def test_pockets_are_seen_with_their_edgings() -> None:
    garment = garment_of("samphire")
    mouths = [slot for name in ("left_front", "right_front") for slot in garment.piece(name).sized.slots]
    assert len(mouths) == 3
    ribbed = [s for s in cover_of("samphire").strokes if s.kind == "cloth"]
    boxes = [box for s in ribbed for box in re.findall(r"M([\d.]+) ([\d.]+)L([\d.]+) \2L\3 ([\d.]+)L\1 \4Z", s.data)]
    assert len({(x0, y0) for x0, y0, *_ in boxes if float(y0) < 85}) >= 3


def jogs(shape: Outline) -> float:
    """The longest level step of a side, cm."""
    steps = [(a, b) for side in (shape.left, shape.right) for a, b in pairwise(side)]
    return max((abs(b[0] - a[0]) for a, b in steps if abs(b[1] - a[1]) < 1e-6), default=0.0)


def test_a_border_makes_no_step_in_the_side() -> None:
    back = garment_of("saltmarsh").piece("back")
    border = back.of.design.fabric("border").stitches_per_cm / back.of.design.fabric(back.piece.fabric).stitches_per_cm
    assert 0 < abs(border - 1) < NEAR
    under = back.height("underarm") - 1
    assert len({round(back.shape.edge_x(y, "left"), 2) for y in (under / 2, under - 4, under)} | {0.0}) > 1
    even = evened(back).shape
    sides = [x for x, y in even.left if 0.5 < y < under]
    assert max(sides, default=even.left[0][0]) - min(sides, default=even.left[0][0]) < 0.01


def test_a_side_cast_on_in_steps_is_a_slope() -> None:
    front = garment_of("kittiwake").piece("front")
    assert jogs(front.shape) > 5 > jogs(evened(front).shape)
    ends = [(s.left[0], s.left[-1], round(s.width, 6)) for s in (front.shape, evened(front).shape)]
    assert ends[0] == ends[1]


def test_a_large_step_beside_small_ones_stays() -> None:
    back = garment_of("tidewrack").piece("back")
    assert evened(back) is back
    set_in = garment_of("plover").piece("front")
    assert jogs(evened(set_in).shape) == jogs(set_in.shape) > 1
