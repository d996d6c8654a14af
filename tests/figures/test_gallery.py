"""Drawings of everything a piece can have: legible, whole, and nothing on top of anything else."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations, pairwise

import pytest

from tests.figures import gallery
from walewright.figures.dimensions import Ruler, overlap
from walewright.figures.measures import MeasuredPiece
from walewright.figures.model import Drawing
from walewright.figures.pens import LETTER_MM, Paper
from walewright.figures.schematic import drawing, fitting_scale
from walewright.guide.english import LANGUAGE
from walewright.sheet.legends import legend

NAMES = ("front", "mirror", "vest", "skirt", "tail", "thumb", "shawl", "scarf")


def of_one_size(piece: MeasuredPiece, size: int) -> MeasuredPiece:
    one = slice(size, size + 1)
    return replace(
        piece,
        laid=piece.laid[one],
        measures=tuple(replace(m, values=m.values[one], counts=m.counts[one]) for m in piece.measures),
    )


def of_sketch(made: gallery.Sketch, size: int | None = None, units: str = "cm") -> Drawing:
    """With letters in the smaller of two sizes, or with figures in size number `size`."""
    piece, design = made.measured(), made.design()
    if size is not None:
        piece, design = of_one_size(piece, size), replace(design, sizes=(design.sizes[size],))
    at = design.at(0)
    return drawing(LANGUAGE, at, piece, units, fitting_scale(at, (piece,)))


def drawn(name: str, size: int | None = None, units: str = "cm") -> Drawing:
    return of_sketch(getattr(gallery, name)(), size, units)


def boxes(of: Drawing) -> list[tuple[float, float, float, float]]:
    """What each lettering covers, a little less than it is given."""
    found = []
    for t in of.letterings:
        wide = len(t.text) * LETTER_MM - 0.4
        if t.turn:
            found.append((t.x - 2.0, t.y - wide / 2, t.x + 0.4, t.y + wide / 2))
        else:
            left = {"start": t.x, "middle": t.x - wide / 2, "end": t.x - wide}[t.anchor]
            found.append((left, t.y - 2.0, left + wide, t.y + 0.4))
    return found


def ruled(of: Drawing, pens: tuple[str, ...]) -> Iterator[tuple[float, float, float, float]]:
    """The boxes of level and upright strokes."""
    for stroke in of.strokes:
        if stroke.kind in pens:
            for run in stroke.data.replace("Z", "").split("M")[1:]:
                ends = [tuple(float(n) for n in p.split()) for p in re.split("[LAa]", run)[: 1 if "a" in run else None]]
                for (x0, y0), (x1, y1) in pairwise(ends):
                    if x0 == x1 or y0 == y1:
                        yield min(x0, x1), min(y0, y1), max(x0, x1) + 0.01, max(y0, y1) + 0.01


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize(("size", "units"), [(None, "cm"), (0, "cm"), (1, "in"), (0, "both")])
def test_nothing_lies_on_lettering(name: str, size: int | None, units: str) -> None:
    made = drawn(name, size, units)
    texts = boxes(made)
    assert not [(a, b) for a, b in combinations(texts, 2) if overlap(a, b)]
    # Dimension lines, slits and hairlines keep off as well.
    assert not [(t, line) for t in texts for line in ruled(made, ("measure", "slit", "guide")) if overlap(t, line)]


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("size", [None, 0])
def test_everything_is_on_the_paper_and_fits_a_page(name: str, size: int | None) -> None:
    made = drawn(name, size)
    assert made.width < 150
    assert made.height < 110
    for left, top, right, bottom in (*boxes(made), *ruled(made, ("outline", "measure", "guide"))):
        assert made.left <= left
        assert right <= made.left + made.width + 0.1
        assert made.top <= top
        assert bottom <= made.top + made.height + 0.1


@pytest.mark.parametrize("name", NAMES)
def test_every_measure_has_its_letter_on_the_drawing(name: str) -> None:
    piece = getattr(gallery, name)().measured()
    table = legend(LANGUAGE, piece, gallery.SIZES, "cm", len(gallery.SIZES) > 1)
    assert table is not None
    letters = [t.text for t in drawn(name).letterings if t.kind == "letter"]
    assert len(letters) == len(piece.measures)
    assert sorted(set(letters)) == sorted(row.key for row in table.groups[0].rows if row.key)


def test_what_is_measured() -> None:
    def labels(name: str) -> dict[str, tuple[str, tuple[int, ...]]]:
        return {m.label(LANGUAGE): (m.unit, m.counts) for m in getattr(gallery, name)().measured().measures}

    vest = labels("vest")
    assert vest["Width of pocket"] == ("st", (14, 14))
    assert vest["Height of pocket"] == ("rows", (20, 20))
    assert vest["Width of neck"] == ("st", (20, 20))
    assert vest["Left shoulder"][1] == (12, 12)
    assert vest["Right shoulder"][1] == (28, 28)
    skirt = labels("skirt")
    assert skirt["Depth of the flare short rows"] == ("st", (24, 24))
    assert skirt["Depth of the turn short rows"] == ("st", (22, 22))
    assert "Whole length, each repeat once" in skirt
    tail = labels("tail")
    # The rib above the waist has more stitches to the centimetre; the loops hung back closer show at the top.
    assert tail["Width at ease"] == ("st", (60, 62))
    assert tail["Width at top"] == ("st", (20, 22))


def words(of: Drawing) -> list[str]:
    return [t.text for t in of.letterings if t.kind == "word"]


def pens(of: Drawing) -> set[str]:
    return {s.kind for s in of.strokes}


def test_marks_are_drawn_and_named() -> None:
    assert "buttonholes" in words(drawn("front"))
    assert "slit" in pens(drawn("front"))
    vest = drawn("vest", 0)
    assert {"thumb", "R 9 to R 16", "moss"} <= set(words(vest))
    assert {"tint", "seam", "cloth"} <= pens(vest)
    skirt = drawn("skirt")
    assert "dart" in pens(skirt)
    assert "× 8" in [t.text for t in skirt.letterings]
    tail = drawn("tail")
    assert {"drawn up", "hung back closer"} <= set(words(tail))
    assert "mark" in pens(drawn("thumb"))
    assert pens(drawn("shawl")) <= {"outline", "measure", "guide"}


def test_a_label_without_room_goes_a_lane_further_out() -> None:
    ruler = Ruler(Paper(), "letter")
    for letter in "ABC":
        ruler.up((10.0 + 5 * lane for lane in range(8)), 0.0, 1.0, (letter,), +1)
    xs = sorted(t.x for t in ruler.paper.finished("", 1, 1).letterings)
    assert len(set(xs)) > 1
    assert not [1 for a, b in combinations(ruler.texts, 2) if overlap(a, b)]
