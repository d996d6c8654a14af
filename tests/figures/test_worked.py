"""Fabrics on the drawing of a garment: a band cut out of a shape, stripes in the colours of their yarns."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from walewright.counted import counted_piece
from walewright.counted.model import SizedZone
from walewright.design import model as d
from walewright.figures import yarns
from walewright.figures.measures import measured
from walewright.figures.pens import Paper
from walewright.figures.worked import clipped, show_panels, stripes

Make = Callable[..., Any]
ORIGIN = d.Origin("by hand")
NECKED = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (7.0, 10.0), (5.0, 4.0), (3.0, 10.0), (0.0, 10.0))


def area(points: Any) -> float:
    found = list(points)
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(found, [*found[1:], found[0]], strict=True))) / 2


def test_bands_of_a_shape_make_up_the_whole_shape_without_its_neck() -> None:
    bands = [clipped(NECKED, 1, y, y + 2) for y in range(0, 10, 2)]
    assert sum(area(band) for band in bands) == pytest.approx(area(NECKED))
    assert area(bands[4]) == pytest.approx(2 * 10 - 2 * (8 / 3 + 4) / 2)
    assert clipped(NECKED, 0, 11, 12) == []


def test_stripes_have_their_yarns_colours_and_fill_the_piece(pattern: Make) -> None:
    made = pattern(1)
    navy = d.Yarn("navy", "navy", 50, 200, ORIGIN, "#203050")
    own = made.design.pieces[0].fabric
    fabrics = tuple(replace(f, stripes=((f.yarn, 4), ("navy", 2))) if f.name == own else f for f in made.design.fabrics)
    design = replace(made.design, fabrics=fabrics, yarns=(*made.design.yarns, navy))
    piece = measured(design, made.counts, made.design.pieces[0].name)
    shape = piece.laid[0].shape.polygon
    found = list(stripes(design, piece.laid[0], shape))
    assert {shade for _, shade in found} == {"#203050", yarns.colour(design, design.fabric(own).yarn)}
    assert sum(area(corners) for corners, _ in found) == pytest.approx(area(shape), rel=0.01)
    unstriped = measured(made.design, made.counts, made.design.pieces[0].name)
    assert not list(stripes(made.design, unstriped.laid[0], shape))


def test_a_panel_is_tinted_between_two_lines(pattern: Make) -> None:
    made = pattern(1)
    piece = measured(made.design, made.counts, made.design.pieces[0].name).laid[0]
    zone = SizedZone(piece.piece.fabric, 10, 30, -5, 4, ORIGIN)
    paper = Paper()
    panelled = counted_piece(made.design, replace(piece.sized, zones=(zone,)))
    show_panels(paper, made.design, replace(piece, of=panelled), lambda p: (p[0], -p[1]))
    drawn = paper.finished("panel", 1, 1).strokes
    assert [stroke.kind for stroke in drawn] == ["tint", "hatch"]
    assert drawn[1].data.count("M") == 2
