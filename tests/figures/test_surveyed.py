"""Every kind of drawing, surveyed. A change in any of these is to be looked at on paper: `walewright build` prints them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache
from typing import Any

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.figures import gallery
from tests.figures.surveyed import survey
from tests.figures.test_gallery import drawn as schematic
from tests.figures.test_gallery import of_sketch
from tests.figures.test_loops import crossed, plain, shown
from tests.sheet.test_charts import LACE, chart, key
from tests.whole.shipped_once import compiled
from walewright.counted import model as s
from walewright.design import model as d
from walewright.figures import chart_drawing
from walewright.figures.chart_drawing import Centre
from walewright.figures.chart_sheets import Cut, cut, large
from walewright.figures.drawn import drawn
from walewright.figures.garment import cover, middle_size
from walewright.figures.hands import TECHNIQUES, Technique
from walewright.figures.hands.scene import Scene
from walewright.figures.loops import picture
from walewright.figures.making_up import making_up
from walewright.figures.measures import MeasuredPiece, measured
from walewright.figures.model import Drawing
from walewright.guide.english import LANGUAGE
from walewright.pipeline import Outcome

Make = Callable[..., Any]


# ----------------------------------------------------------------- hands


@pytest.mark.parametrize("technique", TECHNIQUES, ids=lambda technique: technique.key)
def test_hands(technique: Technique, snapshot: SnapshotAssertion) -> None:
    scene = Scene(LANGUAGE)
    technique.draw(scene)
    assert survey(scene.finished(technique.key)) == snapshot


def test_when_hands_are_shown(snapshot: SnapshotAssertion) -> None:
    assert "\n".join(f"{t.key}: {', '.join(t.when)}" for t in TECHNIQUES) == snapshot


# ----------------------------------------------------------------- charts

KEYS = (
    *(key(symbol, kind) for symbol, kind in zip("O/\\<>3-tsl|", (
        "hole", "two from right", "two from left", "from left", "from right", "three", "purl", "tuck", "slip", "long", "ladder",
    ), strict=True)),
    key("X", "cross", cross=1, hung_first="left"),
    key("Y", "cross", cross=2, hung_first="right"),
    key("Z", "cross", cross=3, hung_first="left"),
    key("N", "knit", "navy"),
    key("G", "knit", "gold"),
)  # fmt: skip
ALL = chart(
    (
        "..........t.",
        ".O/\\O..3.tt.",
        ".<>-s.l.|tt.",
        "XXYYYY..|.t.",
        ".ZZZZZZ.....",
        ".NNG..GGN.t.",
        "..NN.GG...t.",
    ),
    *KEYS,
    before=1,
    repeat=9,
    after=2,
)
TALL = chart(tuple("N.YYYYXX.GO/t-" * 3 if row % 3 else "ZZZZZZ..Nt.GG." * 3 for row in range(70)), *KEYS, repeat=30, before=2)


def coloured(made: Any) -> d.Design:
    colours = (d.Yarn("navy", "navy", 50, 200, gallery.ORIGIN, "#203050"), d.Yarn("gold", "gold", 50, 200, gallery.ORIGIN))
    return replace(made.design, yarns=(*made.design.yarns, *colours))


def sheets(pattern: Make, of: d.Chart, found: Cut, *centres: Centre) -> str:
    design = coloured(pattern(1))
    return "\n\n".join(
        f"{window.letter}\n{survey(chart_drawing.sheet(LANGUAGE, design, of, found, window, centres))}" for window in found.sheets
    )


@pytest.mark.parametrize("of", [*KEYS, key(".", "knit")], ids=lambda of: f"{of.cell.kind}{of.cell.cross or ''}{of.cell.yarn}")
def test_symbols_of_a_key(of: d.CellKey, pattern: Make, snapshot: SnapshotAssertion) -> None:
    assert survey(chart_drawing.key_drawing(LANGUAGE, coloured(pattern(1)), ALL, of.cell)) == snapshot


def test_a_chart_with_every_symbol(pattern: Make, snapshot: SnapshotAssertion) -> None:
    found = sheets(pattern, ALL, cut(ALL.width, len(ALL.rows), 0.8), Centre(6.0, "both"), Centre(11.5, "front"))
    assert found == snapshot


def test_a_chart_of_lace_in_large_print(pattern: Make, snapshot: SnapshotAssertion) -> None:
    assert sheets(pattern, LACE, large(LACE.width, len(LACE.rows), 1.1), Centre(5.0, "")) == snapshot


def test_a_chart_on_several_sheets(pattern: Make, snapshot: SnapshotAssertion) -> None:
    found = cut(TALL.width, len(TALL.rows), 0.72, (110.0, 120.0))
    assert len(found.sheets) == 9, "one of them has a neighbour at each of its sides"
    assert sheets(pattern, TALL, found, Centre(20.0, "")) == snapshot
    assert survey(chart_drawing.sheet_map(LANGUAGE, TALL, found)) == snapshot


# ----------------------------------------------------------------- schematics


@pytest.mark.parametrize("name", [sketch.__name__ for sketch in gallery.ALL])
@pytest.mark.parametrize(("size", "units"), [(None, "cm"), (0, "both"), (1, "in")])
def test_schematics(name: str, size: int | None, units: str, snapshot: SnapshotAssertion) -> None:
    assert survey(schematic(name, size, units)) == snapshot


def laden() -> gallery.Sketch:
    """Rib where the edges slope, a panel that an opening ends, a motif, darts along lines, needles out of work, folded, a slope at
    one shoulder, eyelets and a border at the end."""
    levels = (("hem", 0), ("waist", 24), ("bust", 50), ("top", 84))
    dart = replace(
        gallery.run(24, 50, gallery.every(6, -2, 3), name="side"), lines=(s.SizedLine("needle", 8), s.SizedLine("count", 4))
    )
    left = (gallery.run(0, 24, gallery.every(4, -1, 4), name="side"), dart, gallery.run(50, 84))
    right = (gallery.run(0, 24, gallery.every(3, 1, 5), name="side"), replace(dart, lines=dart.lines[:1]), gallery.run(50, 84))
    slit = s.SizedOpening(
        "slit", 58, 4, 10, gallery.run(58, 84), gallery.ORIGIN, to_row=84, first=2,
        left=(gallery.run(58, 84, gallery.every(4, -1, 3)),), right=(gallery.run(58, 84, gallery.every(2, -1, 3)),),
    )  # fmt: skip
    zones = (s.SizedZone("rib", 4, 20, 0, -1, gallery.ORIGIN), s.SizedZone("moss", 40, 84, 2, 5, gallery.ORIGIN))
    motif = s.SizedChart("fish", "", "panel", 30, 40, -12, -3, 1, -12, 0, gallery.ORIGIN)
    outs = (s.SizedNeedlesOut(60, 80, (-14, -10), 4, gallery.ORIGIN),)
    eyelets = tuple(s.SizedSlot(f"hole {at}", 54, at, at, "eyelet", gallery.ORIGIN) for at in (-14, -6))
    slope = (s.SizedWedge("shoulder", "left", 78, (5, 4, 3), gallery.ORIGIN, rest=2),)
    made = gallery.sketch(
        "laden", 60, 84, levels, left, right, openings=(slit,), zones=zones, charts=(motif,), needles_out=outs, slots=eyelets,
        wedges=slope, start_edging="welt", end_rows=6, grow=2,
    )  # fmt: skip
    worn = d.NeedlesOut("bust", "top", 4, (), gallery.ORIGIN, worn=(18.0, 19.0))
    return replace(made, piece=replace(made.piece, end_edging="welt", needles_out=(worn,)))


@pytest.mark.parametrize("size", [None, 1])
def test_a_schematic_with_everything(size: int | None, snapshot: SnapshotAssertion) -> None:
    assert survey(of_sketch(laden(), size)) == snapshot


def test_what_is_measured_of_it(snapshot: SnapshotAssertion) -> None:
    found = laden().measured().measures
    told = [f"{m.label(LANGUAGE)}: {m.place} {m.at} {[round(v, 3) for v in m.values]} {m.counts} {m.unit}" for m in found]
    assert "\n".join(told) == snapshot


@pytest.mark.parametrize("sketch", gallery.ALL, ids=lambda sketch: sketch.__name__)
def test_what_is_measured(sketch: Callable[[], gallery.Sketch], snapshot: SnapshotAssertion) -> None:
    found = sketch().measured()
    told = [f"{m.label(LANGUAGE)}: {m.place} {m.at} {[round(v, 3) for v in m.values]} {m.counts} {m.unit}" for m in found.measures]
    assert "\n".join(told) == snapshot


# ----------------------------------------------------------------- fabrics from their loops


@pytest.mark.parametrize("side", ["knit", "purl"])
def test_loops(side: str, pattern: Make, snapshot: SnapshotAssertion) -> None:
    design = coloured(pattern(1))
    lace = plain(6, 5)
    lace[2, 2] = replace(lace[2, 2], through=((2, 1), (1, 1)))
    lace[1, 2] = replace(lace[1, 2], kind="bar", through=())
    lace[4, 1] = replace(lace[4, 1], face=1)
    del lace[4, 3]
    lace[4, 4] = replace(lace[4, 4], through=((4, 2),))
    coloured_in = plain(6, 4)
    coloured_in |= {(c, 2): replace(coloured_in[c, 2], yarn="navy") for c in (1, 2, 4)}
    drawn = {
        "lace": shown(lace),
        "floats": shown(coloured_in, ((1, 1, 3, "navy"), (2, 0, 1, "wool"))),
        "cable of 2": shown(crossed(2, left_over=True)),
        "cable of 3": shown(crossed(3, left_over=False)),
    }
    told = [f"{name}\n{survey(picture(LANGUAGE, design, of, side))}" for name, of in drawn.items()]
    assert "\n\n".join(told) == snapshot


# ----------------------------------------------------------------- garments

SHOWN = ("tidewrack", "mooring", "driftline", "curlew", "bollard", "dunlin", "ebb", "breakwater", "dotterel", "fulmar", "marram")
"""Two sleeves, a thumb, copies side by side, what is joined to itself, one piece, a tube, and a body open in front."""


@cache
def stages(name: str) -> tuple[Outcome, tuple[MeasuredPiece, ...]]:
    made = compiled(name)
    assert made.design is not None
    assert made.counts is not None
    return made, tuple(measured(made.design, made.counts, p.name) for p in made.design.pieces)


def of_garment(name: str, made_up: bool) -> Drawing | None:
    made, pieces = stages(name)
    assert made.design is not None
    assert made.counts is not None
    assert made.glued is not None
    if not made_up:
        return cover(LANGUAGE, made.design, made.counts, pieces, made.glued)
    found = making_up(LANGUAGE, drawn(made.design, made.counts, pieces, middle_size(made.counts), made.glued.groups[0]))
    return None if found is None else found.drawing


@pytest.mark.parametrize("name", SHOWN)
def test_garments_as_they_are_worn(name: str, snapshot: SnapshotAssertion) -> None:
    found = of_garment(name, made_up=False)
    assert found is not None
    assert survey(found) == snapshot


@pytest.mark.parametrize("name", SHOWN)
def test_pieces_opened_out(name: str, snapshot: SnapshotAssertion) -> None:
    found = of_garment(name, made_up=True)
    assert (survey(found) if found else "nothing is joined") == snapshot
