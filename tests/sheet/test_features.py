"""What a section needs to be told of, and what hands need beside yarn and machine: by each thing alone."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from tests.sheet.test_charts import LACE, chart, key
from walewright.design import model as d
from walewright.guide.english import LANGUAGE
from walewright.sheet.hand_tools import moved_together, tools, used, worked
from walewright.sheet.handwork import by_hand, features
from walewright.write.model import Paragraph, Run, Section, Sentence

Make = Callable[..., Any]

AT = d.Origin("by hand")
ZERO = (0.0,)


def section(name: str, *kinds: str, joining: bool = False) -> Section:
    sentence = Sentence((Run("x"),), (0,), "", "", "", False, kinds)
    return Section(name, name, (1,), (Paragraph("", "", (sentence,)),), joining=joining)


@pytest.fixture
def plain(pattern: Make) -> d.Design:
    """One piece in one size, without edging, charts, bands and joins."""
    design: d.Design = pattern(1).design
    piece = replace(design.pieces[0], start_edging=None, openings=(), wedges=())
    return replace(design, pieces=(piece,), bands=(), joins=(), edgings=())


def of(design: d.Design, name: str, *kinds: str, joining: bool = False) -> list[str]:
    return list(features(design, section(name, *kinds, joining=joining)))


def with_piece(design: d.Design, **more: Any) -> d.Design:
    return replace(design, pieces=(replace(design.pieces[0], **more),))


# ----------------------------------------------------------------- a section


def test_the_kinds_of_its_steps_each_once(plain: d.Design) -> None:
    assert of(plain, "other", "WasteStart", "Decrease", "WasteStart") == ["Decrease", "WasteStart"]


@pytest.mark.parametrize("way", ["waste", "hand waste", "e-wrap", "chain", "along"])
def test_how_its_piece_begins(way: str, plain: d.Design) -> None:
    design = with_piece(plain, start_way=way)
    assert of(design, "back", "KnitRows") == ["KnitRows", f"start {way}"]
    assert of(design, "neckband", "KnitRows") == ["KnitRows"]


def test_buttonholes_of_a_piece_and_of_a_band(plain: d.Design) -> None:
    holes = (d.Buttonholes((2,), 2, "hem", "top", "right", (1.0,), AT),)
    assert "buttonholes" in of(with_piece(plain, buttonholes=holes), "back")
    band = d.Band("border", "trim", (), AT, holes=(3,))
    design = replace(plain, bands=(band, replace(band, name="other", holes=())), edgings=(edging("plain"),))
    assert "buttonholes" in of(design, "border")
    assert "buttonholes" not in of(design, "other")
    assert "buttonholes" not in of(design, "back")


def edging(kind: str, name: str = "trim", when: str = "after", mock: int = 0) -> d.Edging:
    return d.Edging(name, "plain", (2.0,), when, "chain", AT, kind=kind, mock=mock)  # type: ignore[arg-type]


def test_an_edging_is_told_where_it_is_knitted(plain: d.Design) -> None:
    """One that is knitted first with its piece, one that is knitted on afterwards in a section of its own, one at the end with its
    piece."""
    first = replace(with_piece(plain, start_edging="trim"), edgings=(edging("folded", when="first"), edging("rolled", "other")))
    assert of(first, "back") == ["start waste", "edging folded"]
    after = replace(first, edgings=(edging("folded"), edging("rolled", "other")))
    assert of(after, "back") == ["start waste"]
    assert of(after, "back trim") == ["edging folded"]
    ended = with_piece(after, start_edging=None, end_edging="other")
    assert of(ended, "back") == ["start waste", "edging rolled"]
    banded = replace(plain, edgings=after.edgings, bands=(d.Band("collar", "other", (), AT),))
    assert of(banded, "collar") == ["edging rolled"]
    mock = replace(first, edgings=(edging("mock rib", when="first", mock=3),))
    assert of(mock, "back") == ["start waste", "edging mock rib 3"]


CELLS = chart(
    ("OX-Nt..",), key("O", "hole"), key("X", "cross", cross=1, hung_first="left"), key("-", "purl"), key("N", "knit", "navy"),
    key("t", "tuck"),
)  # fmt: skip
OF_CELLS = ["cell hole", "cell cross", "cell purl", "cell tuck", "cell knit"]


def charted(plain: d.Design, drawn: d.Chart, **more: Any) -> d.Design:
    fabric = replace(plain.fabrics[0], name="charted", stitch="chart", chart=drawn.name)
    return with_piece(replace(plain, charts=(drawn,), fabrics=(*plain.fabrics, fabric)), **more)


def test_the_cells_of_its_charts(plain: d.Design) -> None:
    """Of the fabric of its piece, of one within it, of a motif, of its edging; where it works a chart."""
    told = ["StartChart", "start waste", *OF_CELLS, "other yarn", "cross beside purl"]
    whole = charted(plain, CELLS, fabric="charted")
    assert of(whole, "back", "StartChart") == told
    assert of(whole, "back") == ["start waste"]
    zoned = charted(plain, CELLS, zones=(d.Zone("charted", "hem", "top", None, (), AT),))
    assert of(zoned, "back", "StartChart") == told
    motif = charted(plain, CELLS, motifs=(d.Motif(CELLS.name, "hem", ZERO, AT),))
    assert of(motif, "back", "StartChart") == told
    assert of(charted(plain, CELLS), "back", "StartChart") == ["StartChart", "start waste"]
    edged = replace(
        charted(plain, CELLS), edgings=(replace(edging("plain"), fabric="charted"),), bands=(d.Band("rim", "trim", (), AT),)
    )
    assert of(edged, "rim", "StartChart") == ["StartChart", *OF_CELLS, "other yarn", "cross beside purl", "edging plain"]


def test_what_is_told_of_a_chart_as_a_whole(plain: d.Design) -> None:
    picture = replace(CELLS, picture=True, stage=12)
    found = of(charted(plain, picture, fabric="charted"), "back", "StartChart")
    assert found[-3:] == ["cell purl in stages", "picture", "cross beside purl"]
    apart = chart(("X.-", "-.."), key("X", "cross", cross=1, hung_first="left"), key("-", "purl"))
    assert "cross beside purl" not in of(charted(plain, apart, fabric="charted"), "back", "StartChart")


# ----------------------------------------------------------------- joins


def joined(plain: d.Design, one: str, other: str, way: str = "sewn", end: str = "cast-off", **more: Any) -> list[str]:
    pieces = tuple(replace(plain.pieces[0], name=n, end_way=end, **more) for n in ("back", "front"))
    join = d.EdgeJoin((d.EdgeName("back", one),), (d.EdgeName("front", other),), ZERO, AT, way=way)  # type: ignore[arg-type]
    design = replace(plain, pieces=pieces, joins=(join,))
    return of(design, "joining", "JoinEdges", joining=True)[1:]


SLOTTED = {"slots": (d.Slot("pocket", "hem", (4.0,), ZERO, "waste", AT),)}


@pytest.mark.parametrize(
    ("one", "other", "told"),
    [
        ("side", "side", "rows to rows"),
        ("side left", "armhole", "rows to rows"),
        ("start", "side", "stitches to rows"),
        ("side", "end", "stitches to rows"),
        ("end", "start", "stitches to stitches"),
        ("shoulder left", "neck centre", "stitches to stitches"),
        ("neck left", "side", "rows to rows"),
        ("pocket", "side", "stitches to rows"),
        ("slit upper", "side", "stitches to rows"),
    ],
)
def test_a_seam_is_told_by_what_lies_along_it(one: str, other: str, told: str, plain: d.Design) -> None:
    assert joined(plain, one, other, **SLOTTED) == ["join sewn", f"join {told}"]
    assert joined(plain, one, other, "gathered", **SLOTTED) == ["join gathered", f"join {told}"]


@pytest.mark.parametrize(("change", "steps", "told"), [((-12.0,), (4,), "stitches to stitches"), ((-12.0,), (30,), "rows to rows")])
def test_a_flank_in_wide_steps_is_stitches(change: tuple[float], steps: tuple[int], told: str, plain: d.Design) -> None:
    flank = d.EdgeRun("flank", "top", "steps", change, ZERO, steps, d.ShapingWay("simple"), AT)
    assert joined(plain, "flank", "flank", left=(flank,)) == ["join sewn", f"join {told}"]


def test_other_ways_to_join(plain: d.Design) -> None:
    assert joined(plain, "end", "end", "grafted") == ["join grafted"]
    assert joined(plain, "end", "end", "linked") == [], "it is a section of its own"
    assert of(plain, "link", "HangToLink") == ["HangToLink", "join linked"]
    # What waits on waste yarn is not sewn.
    assert joined(plain, "end", "shoulder left", end="waste") == ["join grafted", "join linked"]
    assert joined(plain, "end", "start", end="waste") == ["join sewn", "join stitches to stitches"]
    assert joined(plain, "end", "side", end="waste") == ["join sewn", "join stitches to rows"]


def test_joins_are_told_where_they_are_made(plain: d.Design) -> None:
    join = d.EdgeJoin((d.EdgeName("back", "side"),), (d.EdgeName("back", "side"),), ZERO, AT)
    design = replace(plain, joins=(join,))
    assert of(design, "joining", "JoinEdges", joining=True) == ["JoinEdges", "join sewn", "join rows to rows"]
    assert of(design, "joining", "Other", joining=True) == ["Other"]
    assert of(design, "joining", "JoinEdges") == ["JoinEdges"]


def test_a_section_points_to_its_charts_and_boxes(plain: d.Design) -> None:
    design = charted(plain, replace(CELLS, name="small_holes"), fabric="charted")
    found = by_hand(LANGUAGE, design, section("back", "StartChart", "CastOffAll"))
    assert found[0] == ("chart-small_holes", "Chart small holes")
    assert ("how-casting-off", "Casting off") in found
    assert ("how-eyelet-and-lace", "Eyelet and lace") in found
    assert len(set(found)) == len(found)


# ----------------------------------------------------------------- tools


def test_stitches_that_are_moved_together() -> None:
    keys = (key("O", "hole"), key("/", "two from right"), key("\\", "two from left"), key("<", "from right"), key(">", "from left"),
            key("3", "three"))  # fmt: skip
    for row, counts in {
        "...": set(),
        ".O/": set(),
        "./O": {1},
        "O\\.": {1},
        "O>\\": {2},
        "O>>\\": {3},
        "/<O": {2},
        "O3O": {1},
        "O>3O": {1, 2},
        "/O.O\\": {1},
        "/<O.O>>\\": {2, 3},
    }.items():
        assert moved_together(chart((row,), *keys)) >= counts, row
        if row != ".O/":
            assert moved_together(chart((row,), *keys)) == counts, row
    # Where it repeats, moves may begin in the repeat before.
    assert moved_together(chart((">\\.O",), *keys, repeat=4)) == {2}


def test_charts_that_are_worked_and_cells_that_occur(plain: d.Design) -> None:
    design = charted(plain, CELLS)
    assert worked(design) == (CELLS,)
    assert worked(replace(design, fabrics=plain.fabrics)) == ()
    motif = with_piece(replace(design, fabrics=plain.fabrics), motifs=(d.Motif(CELLS.name, "hem", ZERO, AT),))
    assert worked(motif) == (CELLS,)
    spare = replace(CELLS, key=(*CELLS.key, key("s", "slip")))
    assert [cell.kind for cell in used(spare)] == ["knit", "hole", "cross", "purl", "knit", "tuck"]


def listed(design: d.Design, *kinds: str) -> list[str]:
    from walewright.write.model import Instructions

    return list(tools(LANGUAGE, design, Instructions(("S",), (section("back", *kinds),), ())))


def of_tools(design: d.Design, word: str, *kinds: str) -> list[str]:
    return [line for line in listed(design, *kinds) if word in line.lower()]


FASHIONED, INSIDE = d.ShapingWay("fashioned", 3), d.ShapingWay("inside")


def run(way: d.ShapingWay = d.ShapingWay("simple"), name: str = "", path: str = "straight") -> d.EdgeRun:  # noqa: B008
    return d.EdgeRun(name, "top", path, ZERO, ZERO, (), way, AT)  # type: ignore[arg-type]


def test_waste_yarn_is_wanted_where_stitches_wait(plain: d.Design) -> None:
    bare = with_piece(plain, start_way="chain", end_way="cast-off", left=(run(),), right=(run(),), slots=(), openings=())
    gap = d.Opening("gap", (4.0,), (), (4.0,), "edges", FASHIONED, AT, "hem", "top", ZERO, "waste", (run(),), (run(),))
    only_swatches = ["Waste yarn, for the swatches only: smooth, of about the same thickness and in a contrasting colour"]
    assert of_tools(bare, "waste yarn") == only_swatches
    for more in (
        {"start_way": "waste"}, {"start_way": "hand waste"}, {"end_way": "waste"}, {"left": (run(path="across"),)},
        {"openings": (gap,)}, {"slots": SLOTTED["slots"]},
    ):  # fmt: skip
        assert len(of_tools(with_piece(bare, **more), "waste yarn")) == 1, more
        assert of_tools(with_piece(bare, **more), "waste yarn") != only_swatches, more
    for less in (
        {"openings": (replace(gap, taken="cast-off"),)}, {"openings": (replace(gap, flat=ZERO),)},
        {"slots": (replace(SLOTTED["slots"][0], taken="cast-off"),)}, {"start_way": "e-wrap"}, {"end_way": "gathered"},
    ):  # fmt: skip
        assert of_tools(with_piece(bare, **less), "waste yarn") == only_swatches, less


def test_cord_comb_and_weights(plain: d.Design) -> None:
    combed, by_hand_, hung = "WasteStart", "WasteStart by hand", "WasteStart hem"
    assert of_tools(plain, "ravel cord", combed) == ["Ravel cord: one strong, slippery length, as long as the note on it says"]
    assert of_tools(plain, "ravel cord", by_hand_) == of_tools(plain, "ravel cord", combed)
    assert of_tools(plain, "ravel cord", hung) == ["Ravel cord: two strong, slippery lengths, as long as the note on it says"]
    assert of_tools(plain, "ravel cord", "ClosedStart") == []
    assert "for a part that waits" in of_tools(plain, "ravel cord", "PartOnCord")[0]
    assert "two strong, slippery lengths" in of_tools(plain, "ravel cord", combed, "PartOnCord")[0]
    assert of_tools(plain, "comb", combed) == ["Cast-on comb, and weights for the width in work"]
    assert of_tools(plain, "hem", hung)[0].startswith("Cast-on hem, at least as wide")
    for without in (by_hand_, "ClosedStart"):
        assert of_tools(plain, "comb", without) == []
        assert of_tools(plain, "weights", without) == ["Weights for the width in work"]
    assert of_tools(plain, "small weights", "Decrease 1") == ["Small weights for the edges"]


def test_prongs_of_transfer_tools(plain: d.Design) -> None:
    bare = with_piece(plain, left=(run(),), right=(run(),), openings=())
    assert of_tools(bare, "transfer", "KnitTo") == []
    assert of_tools(bare, "transfer", "Decrease 1") == ["Transfer tool with 1 prong"]
    assert of_tools(with_piece(bare, right=(run(FASHIONED),)), "transfer") == ["Transfer tools with 1 and 3 prongs"]
    assert of_tools(with_piece(bare, left=(run(INSIDE),)), "transfer") == ["Transfer tools with 1 and 3 prongs"], (
        "the widest at hand"
    )
    gap = d.Opening("gap", (4.0,), (), ZERO, "edges", FASHIONED, AT, "hem", "top", ZERO, "waste", (run(),), (run(FASHIONED),))
    assert of_tools(with_piece(bare, openings=(gap,)), "transfer") == ["Transfer tools with 1 and 3 prongs"]
    laced = charted(bare, replace(LACE, name="lace"), fabric="charted")
    assert of_tools(laced, "transfer") == ["Transfer tools with 1 and 2 prongs"]


def test_what_charts_and_names_want(plain: d.Design) -> None:
    bare = with_piece(plain, left=(run(),), right=(run(),), openings=())
    assert of_tools(bare, "thread") == []
    assert len(of_tools(with_piece(bare, right=(run(name="side"),)), "thread")) == 1
    assert of_tools(bare, "crosses") == []
    crossed = charted(bare, CELLS)
    assert of_tools(crossed, "crosses") == ["For the crosses, two 1-prong transfer tools"]
    long = charted(bare, chart(("l",), key("l", "long")))
    assert len(of_tools(long, "card")) == 1
    assert of_tools(crossed, "card") == of_tools(crossed, "bobbins") == []
    assert len(of_tools(charted(bare, replace(CELLS, picture=True)), "bobbins")) == 1
    corded = replace(bare, cords=(d.Cord("front_hood", (90.5,), AT),))
    assert of_tools(corded, "cord or ribbon") == ["Cord or ribbon for the front hood: 90.5 cm"]
    assert listed(bare)[-1] == "Blunt sewing needle, pins that do not rust, tape measure, scissors with covered points"
    assert "Latch tool" not in listed(bare)
    assert "Latch tool" in listed(bare, "LatchRib")
