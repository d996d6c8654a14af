"""Two pieces that differ by their necks alone lie on one drawing."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest

from tests.whole.shipped_once import compiled
from walewright.cli.formats.format import Pattern
from walewright.cli.options import Wanted
from walewright.figures.measures import MeasuredPiece, measured
from walewright.figures.necks import differ_by_necks
from walewright.guide.english import LANGUAGE
from walewright.pipeline import Outcome
from walewright.sheet import Sheet
from walewright.sheet.legends import drawn_with, schematics


def pieces(name: str) -> dict[str, MeasuredPiece]:
    design, counts, _, _ = compiled(name).result()
    return {piece.name: measured(design, counts, piece.name) for piece in design.pieces}


def sheet(outcome: Outcome) -> Sheet:
    return Pattern(outcome, Wanted({}, (), language="english").guide, "a4", "cm", "", "2026-01-02").sheet


@pytest.mark.parametrize("name", ["tidewrack", "plover", "hawser"])
def test_a_front_that_differs_by_its_neck_lies_on_the_back(name: str) -> None:
    assert drawn_with(tuple(pieces(name).values())) == {"front": "back"}


@pytest.mark.parametrize("name", ["saltmarsh", "lapwing", "dunlin", "shoal", "marram", "bollard"])
def test_what_differs_by_more_has_a_drawing_of_its_own(name: str) -> None:
    """A longer back, darts, a slit, a motif, two fronts, one piece."""
    assert drawn_with(tuple(pieces(name).values())) == {}


def test_every_size_has_to_be_the_same_but_for_the_neck() -> None:
    back, front = (pieces("tidewrack")[name] for name in ("back", "front"))
    assert differ_by_necks(back, front)
    assert not differ_by_necks(back, back), "there is no second neck to draw"
    first = front.laid[0]
    wider = replace(first, shape=replace(first.shape, left=((-50.0, 0.0), *first.shape.left[1:])))
    assert not differ_by_necks(back, replace(front, laid=(wider, *front.laid[1:])))
    higher = [replace(m, values=tuple(cm + 1 for cm in m.values)) if m.place == "whole" else m for m in front.measures]
    assert not differ_by_necks(back, replace(front, measures=tuple(higher)))


def test_both_necks_are_on_the_drawing_and_both_depths_in_its_legend() -> None:
    design, counts, _, _ = compiled("tidewrack").result()
    found = schematics(LANGUAGE, design, tuple(pieces("tidewrack").values()), counts, "cm", {})
    assert "front" not in found
    drawing, legend = found["back"]
    assert drawing is not None
    assert legend is not None
    rows = {row.label: row for group in legend.groups for row in group.rows}
    depths = [row for label, row in rows.items() if label.startswith("Depth of neck")]
    assert [row.label for row in depths] == ["Depth of neck of the back", "Depth of neck of the front"]
    front = pieces("tidewrack")["front"]
    (own,) = (m for m in front.measures if m.place == "neck depth")
    assert [cell.text for cell in depths[1].cells] == [LANGUAGE.cm(cm) for cm in own.values]
    assert sum(stroke.data.count("M") for stroke in drawing.strokes if stroke.kind == "dart") == 1
    letters = Counter(lettering.text for lettering in drawing.letterings if lettering.kind == "letter")
    assert letters[depths[0].key] == letters[depths[1].key] == 1


def test_the_front_says_where_its_drawing_is() -> None:
    parts = {part.title: part for part in sheet(compiled("tidewrack")).parts}
    assert parts["Front"].drawing is None
    told = {fact.label: fact.text for fact in parts["Front"].facts}
    assert told["Drawing"] == "that of the back with its measurements; the neck is the broken line there"
    assert "Drawing" not in {fact.label for fact in parts["Back"].facts}


def test_a_copy_of_one_size_has_both_drawings() -> None:
    back, front = (pieces("tidewrack")[name] for name in ("back", "front"))

    def only(piece: MeasuredPiece) -> MeasuredPiece:
        measures = (replace(m, values=m.values[:1], counts=m.counts[:1]) for m in piece.measures)
        return replace(piece, laid=piece.laid[:1], measures=tuple(measures))

    assert drawn_with((only(back), only(front))) == {}, "figures have no room for two necks"
