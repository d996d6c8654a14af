"""Finished measurements, what seams take, and ease."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from types import ModuleType
from typing import Any

import pytest

from walewright.design import model as d
from walewright.pages.finished import rounds, size_notes, size_table
from walewright.pages.garment import cover
from walewright.pages.measures import measured

Make = Callable[..., Any]
ORIGIN = d.Origin("by hand")


def pieces(made: Any) -> tuple[Any, ...]:
    return tuple(measured(made.design, made.counts, p.name) for p in made.design.pieces)


def test_ease_is_finished_less_body(pattern: Make) -> None:
    made = pattern(2)
    table = size_table(made.design, pieces(made), "cm")
    groups = {g.title: g.rows for g in table.groups}
    (row,) = groups["Ease: finished less body"]
    assert row.label == "Bust: all round at underarm"
    # Twice 58 stitches of 30.8 cm to 40, less a bust of 76 cm; to the half centimetre.
    assert [c.text for c in row.cells] == ["13.5", "12.5"]


def test_no_ease_without_a_body_to_fit(pattern: Make) -> None:
    made = pattern(2)
    bodies = tuple(replace(m, to_fit=False) for m in made.design.measurements)
    table = size_table(replace(made.design, measurements=bodies), pieces(made), "cm")
    assert [g.title for g in table.groups] == ["Finished"]


def test_a_level_of_the_bodys_name_goes_before_the_chest(pattern: Make) -> None:
    made = pattern(2)
    waist = d.Measurement("underarm", (70.0, 80.0), True, "", ORIGIN)
    design = replace(made.design, measurements=(*made.design.measurements, waist))
    (row,) = size_table(design, pieces(made), "cm").groups[-1].rows
    assert row.label == "Underarm: all round at underarm"


def test_notes_say_what_is_measured_and_what_a_seam_takes(pattern: Make) -> None:
    design = pattern(2).design
    assert "before seaming" in size_notes(design, "cm")[0]
    # Two stitches of 0.77 cm.
    assert "one stitch of each side into it: about 1.5 cm in all" in size_notes(design, "cm")[0]
    assert "about ½ in in all" in size_notes(design, "in")[0]
    assert "seam takes" not in size_notes(replace(design, joins=()), "cm")[0]


def cardigan(gallery: ModuleType) -> tuple[d.Design, Any, tuple[Any, ...]]:
    """A back and the gallery's fronts, the sides joined."""
    one, other, back = gallery.front(), gallery.mirror(), gallery.tail()
    names = {"front_left": one, "front_right": other, "back": back}
    counts_of, design_pieces = [], []
    for name, made in names.items():
        runs = back.sized[0].left if name == "back" else ()
        sized = tuple(replace(p, name=name) for p in made.sized)
        if runs:
            named = tuple(replace(r, name="side") if i == 0 else r for i, r in enumerate(runs))
            sized = tuple(replace(p, left=named, right=named) for p in sized)
        counts_of.append(sized)
        edges = {
            side: tuple(
                d.EdgeRun(r.name, made.piece.levels[1].name, "straight", (0.0,), (0.0,), 0, r.way, ORIGIN) for r in of if r.name
            )
            for side, of in (("left", sized[0].left), ("right", sized[0].right))
        }
        mirror_of = "front_left" if name == "front_right" else None
        design_pieces.append(replace(made.piece, name=name, mirror_of=mirror_of, left=edges["left"], right=edges["right"]))
    counts = gallery.s.Counts(
        tuple(gallery.s.SizedGarment(size, tuple(p[i] for p in counts_of), (), (), ()) for i, size in enumerate(gallery.SIZES)), ()
    )
    sides = tuple(
        d.Join((d.EdgeName("back", "side"),), (d.EdgeName(f, "side"),), (0.0, 0.0), ORIGIN) for f in ("front_left", "front_right")
    )
    design = replace(one.design(), pieces=tuple(design_pieces), joins=sides, title="Cardigan")
    return design, counts, tuple(measured(design, counts, p.name) for p in design.pieces)


def test_a_cardigan_goes_round_with_both_fronts(gallery: ModuleType) -> None:
    design, _, made = cardigan(gallery)
    (at,) = rounds(design, made)
    assert at.pieces == ("back", "front_left", "front_right")
    # 40 stitches a front and 60 for the back, 2 to the centimetre.
    assert at.values[0] == pytest.approx((40 + 40 + 60) / 2)


def test_a_cardigans_fronts_lie_side_by_side_on_the_cover(gallery: ModuleType) -> None:
    design, counts, made = cardigan(gallery)
    drawing = cover(design, counts, made)
    assert "seen from the front" in drawing.title
    assert [s.kind for s in drawing.strokes].count("inside") == 1
    without = replace(design, joins=())
    assert "The pieces of Cardigan" in cover(without, counts, made).title


def test_what_is_no_body_is_laid_out_as_a_group(gallery: ModuleType) -> None:
    for make in (gallery.thumb, gallery.shawl, gallery.scarf, gallery.skirt):
        made = make()
        design, counts = made.design(), made.counts()
        drawing = cover(design, counts, (measured(design, counts, made.name),))
        assert drawing.title == "The pieces of P in size S, to one scale"
        assert drawing.height < 120
        assert {"cloth"} <= {s.kind for s in drawing.strokes}


def test_a_tube_is_drawn_folded(gallery: ModuleType) -> None:
    def width(design: d.Design, made: Any) -> float:
        import re

        of = cover(design, made.counts(), (measured(design, made.counts(), made.name),))
        xs = [float(x) for s in of.strokes if s.kind == "cloth" for x in re.findall(r"[ML](-?[\d.]+) ", s.data)]
        ys = [float(y) for s in of.strokes if s.kind == "cloth" for y in re.findall(r"[ML]-?[\d.]+ (-?[\d.]+)", s.data)]
        return (max(xs) - min(xs)) / (max(ys) - min(ys))

    made = gallery.thumb()
    flat = made.design()
    closed = replace(flat, joins=(d.Join((d.EdgeName("thumb", "side"),), (d.EdgeName("thumb", "side"),), (0.0, 0.0), ORIGIN),))
    assert width(closed, made) == pytest.approx(width(flat, made) / 2, rel=0.02)
