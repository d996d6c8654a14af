"""How-tos: each technique of a pattern in one box, with a drawing inside its frame, and the pieces point to it."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from walewright.design import model as d
from walewright.figures.hands import TECHNIQUES, Technique
from walewright.figures.hands.scene import Scene
from walewright.guide.english import LANGUAGE
from walewright.sheet import html
from walewright.sheet.handwork import anchor, by_hand, handwork
from walewright.write.model import Paragraph, Run, Sentence

Make = Callable[..., Any]

ORIGIN = d.Origin("by hand")


def everything(pattern: Make) -> Any:
    """A pattern that needs every technique: all steps, a chart with all symbols, all edgings and joins."""
    made = pattern(2)
    kinds = tuple({k for t in TECHNIQUES for k in t.when if k[0].isupper()} | {"StartChart", "StartStripes"})
    words = Sentence((Run("Wool is carried up the side."),), (0, 1), "", "", "", False, kinds)
    first, *others = made.instructions.sections
    sections = (replace(first, paragraphs=(Paragraph("", "", (words,)),)), *others)
    symbols = {"O": "hole", "t": "tuck", "s": "slip", "l": "long", "H": "ladder", "-": "purl"}
    keys = (
        *(d.CellKey(c, d.Cell(k), ORIGIN) for c, k in symbols.items()),
        d.CellKey("x", d.Cell("cross", "", 1, "left"), ORIGIN),
        d.CellKey("n", d.Cell("knit", "wool"), ORIGIN),
    )
    charts = (
        d.Chart("all", ("OtslH-xxn",), keys, 0, 9, 0, False, ORIGIN),
        d.Chart("picture", ("nn",), keys, 0, 2, 0, True, ORIGIN),
    )
    fabrics = (
        *made.design.fabrics,
        replace(made.design.fabrics[0], name="charted", stitch="chart", chart="all"),
        replace(made.design.fabrics[0], name="pictured", stitch="chart", chart="picture"),
    )
    ways = ("e-wrap", "chain", "hand waste", "waste")
    edgings = ("folded", "picot", "rolled", "facing", "chained", "plain")
    design = made.design
    back = replace(
        design.pieces[0],
        fabric="charted",
        zones=(d.Zone("pictured", "hem", "top", None, (0.0, 0.0), ORIGIN),),
        buttonholes=(d.Buttonholes((2, 2), 2, "hem", "top", "right", (1.0, 1.0), ORIGIN),),
    )
    # Other pieces begin in other ways, each with a section of its own.
    more = tuple(replace(back, name=f"piece{i}", start_way=way, zones=(), start_edging=f"edge{i}") for i, way in enumerate(ways))
    bands = tuple(d.Band(f"band{i}", f"edge{i}", (d.EdgeName("back", "neck"),), ORIGIN) for i in range(len(edgings)))
    sections += tuple(replace(first, name=n) for n in (*(q.name for q in more), *(b.name for b in bands)))
    design = replace(
        design,
        charts=charts,
        fabrics=fabrics,
        pieces=(back, *design.pieces[1:], *more),
        edgings=(*design.edgings, *(replace(design.edgings[0], name=f"edge{i}", kind=kind) for i, kind in enumerate(edgings))),
        bands=(*design.bands, *bands),
        joins=(
            *(replace(design.joins[1], way=way) for way in ("sewn", "grafted", "linked", "gathered", "pleated")),
            replace(design.joins[1], one=(d.EdgeName("back", "start"),)),
            replace(design.joins[1], one=(d.EdgeName("back", "start"),), other=(d.EdgeName("front", "start"),)),
        ),
    )
    return replace(made, design=design, instructions=replace(made.instructions, sections=sections))


def test_every_technique_is_told_once(pattern: Make) -> None:
    made = everything(pattern)
    found = [h.title for h in handwork(LANGUAGE, made.design, made.instructions)]
    assert sorted(found) == sorted(LANGUAGE.how_to[t.key].title for t in TECHNIQUES)


def test_boxes_follow_the_order_in_which_the_garment_needs_them(pattern: Make) -> None:
    made = pattern(2)
    first, *_ = made.instructions.sections
    chart = d.Chart(
        "holes", ("O.",), (d.CellKey("O", d.Cell("hole"), ORIGIN), d.CellKey(".", d.Cell("knit"), ORIGIN)), 0, 2, 0, False, ORIGIN
    )
    laced = replace(made.design.fabrics[0], name="laced", stitch="chart", chart="holes")
    other, *pieces = made.design.pieces
    other = replace(other, start_way="e-wrap", start_edging=None, end_edging=None)
    design = replace(
        made.design,
        charts=(chart,),
        fabrics=(*made.design.fabrics, laced),
        pieces=(other, *(replace(piece, fabric="laced", start_edging=None, end_edging=None) for piece in pieces)),
    )

    def section(name: str, *steps: tuple[str, ...]) -> Any:
        lines = tuple(Sentence((Run("So."),), (0, 1), "", "", "", False, kinds) for kinds in steps)
        return replace(first, name=name, paragraphs=(Paragraph("", "", lines),))

    sections = (
        section(other.name, ("CastOffAll",), ("KnitRows", "HoldAtEnd"), ("WrapHeld",)),
        section(pieces[0].name, ("WasteStart",), ("HoldAtEnd", "StartChart"), ("MarkEdges",), ("OffOnWaste",)),
    )
    told = handwork(LANGUAGE, design, replace(made.instructions, sections=sections))
    keys = [how.anchor.removeprefix("how-") for how in told]
    assert keys == [
        *("e-wrap", "casting-off", "holding", "wrapping", "start-on-waste-yarn", "eyelet-and-lace", "a-marker"),
        "off-on-waste-yarn-at-the-end",
    ]
    assert [key.removeprefix("how-") for key, _ in by_hand(LANGUAGE, design, sections[1])] == [
        *("chart-holes", "start-on-waste-yarn", "holding", "eyelet-and-lace", "a-marker", "off-on-waste-yarn-at-the-end"),
    ]


def test_titles_and_places_are_unique() -> None:
    assert {key for key in LANGUAGE.how_to if "/" not in key} == {t.key for t in TECHNIQUES}
    assert len({h.title for h in LANGUAGE.how_to.values()}) == len({anchor(t) for t in TECHNIQUES}) == len(TECHNIQUES)


@pytest.mark.parametrize("technique", TECHNIQUES, ids=lambda t: t.key)
def test_a_drawing_stays_in_its_frame_and_is_named(technique: Technique) -> None:
    scene = Scene(LANGUAGE)
    technique.draw(scene)
    drawn = scene.finished(LANGUAGE.how_to[technique.key].shown)
    assert len(drawn.strokes) >= 2
    points = [(float(x), float(y)) for s in drawn.strokes for x, y in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", s.data)]
    assert all(-0.5 <= x <= drawn.width + 0.5 and -0.5 <= y <= drawn.height + 0.5 for x, y in points), sorted(points)[-3:]
    assert all(0 <= t.x <= drawn.width and 0 < t.y <= drawn.height for t in drawn.letterings)
    assert len(drawn.title) > 20


def test_a_piece_points_to_the_boxes_of_its_own_handwork(pattern: Make) -> None:
    page = html(pattern(3).sheet())
    welt = page.split('id="part-back-welt"')[1].split("</section>")[0]
    assert 'href="#how-latched-rib">Latched rib</a>' in welt
    assert "how-wrapping" not in welt
    back = page.split('id="part-back"')[1].split("</section>")[0]
    assert "#how-wrapping" in back
    assert "#how-latched-rib" not in back
    assert page.count('id="how-latched-rib"') == 1


def test_what_is_not_needed_is_not_told(pattern: Make) -> None:
    made = pattern(2)
    told = {h.title for h in handwork(LANGUAGE, made.design, made.instructions)}
    assert not told & {"Eyelet and lace", "Picture knitting", "Folded hem", "Latch-tool chain", "Buttonholes"}
    assert {"Start on waste yarn", "Latched rib", "Sewing row to row", "Sewing stitches to rows"} <= told


def test_stripes_are_told_of_only_where_a_yarn_is_carried(pattern: Make) -> None:
    made = pattern(2)
    first, *others = made.instructions.sections

    def told(kind: str) -> set[str]:
        lines = (Sentence((Run("Stripes."),), (0, 1), "", "", "", False, (kind,)),)
        sections = (replace(first, paragraphs=(Paragraph("", "", lines),)), *others)
        return {h.title for h in handwork(LANGUAGE, made.design, replace(made.instructions, sections=sections))}

    assert "Stripes carried up the side" in told("StartStripes carried")
    assert "Stripes carried up the side" not in told("StartStripes")
