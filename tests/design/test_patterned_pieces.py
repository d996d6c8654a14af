"""Charts in a piece: panels, motifs, widths and edges, and what cannot stand together with them."""

from __future__ import annotations

import pytest

from tests.design.drawing import chart, lacy, piece, places, plain, said, sound, source
from walewright.report.english import in_english
from walewright.report.model import Diagnostic

LACE = chart("..O/..", "......")
DOTS = chart("..N...", "......", name="dots")
SPOTS = chart("..R...", "......", name="spots")
FLAG = chart("NN..", name="flag", lines=["colours laid in blocks"])
CLOTHS = (
    LACE,
    DOTS,
    SPOTS,
    FLAG,
    chart("NN..", name="banner", lines=["colours laid in blocks"]),
    chart("......", "\\O....", "......", name="leaf"),
    plain(),
    plain(lacy(), name="lacy"),
    plain(lacy(name="dots"), name="dotted"),
    plain(lacy(name="spots"), name="spotted"),
    plain(lacy(name="flag"), name="flagged"),
    plain("latched rib every 3rd needle in wool at tension 4", name="rib"),
    plain("stripes of 4 rows wool, 2 rows navy at tension 4", name="striped"),
    plain("chart lace in wool at tension 6, 4 edge stitches", name="loose"),
)


def told(*lines: str, cloth: str = "plain", **options: str) -> tuple[Diagnostic, ...]:
    """What is told of a piece, but that edge stitches of the cloths mean nothing in a panel (tests/design/test_meanings.py)."""
    text = piece(*lines, **options).replace("piece front in plain", f"piece front in {cloth}")
    return tuple(d for d in said(*CLOTHS, text) if d.code != "without-effect")


def codes(*lines: str, **options: str) -> list[str]:
    return [d.code for d in told(*lines, **options)]


def in_cloth(cloth: str, *lines: str, **options: str) -> list[str]:
    """The codes told of a piece in another fabric than plain."""
    return [d.code for d in told(*lines, cloth=cloth, **options)]


# ----------------------------------------------------------------- panels and motifs


def test_a_panel_so_many_repeats_wide() -> None:
    bordered = chart("..O/...", ".......", lines=["repeat 4 stitches, after 2 stitches"])
    made = sound(bordered, plain(), plain(lacy(""), name="lacy"), piece("fabric lacy from low to high, 3 repeats wide")).piece(
        "front"
    )
    (zone,) = made.zones
    # 2 + 3 x 4 + 1 stitches, 2 to the centimetre.
    assert (zone.repeats, zone.width) == ((3, 3), (7.5, 7.5))


def test_a_panel_changes_neither_width_nor_rows_of_the_piece() -> None:
    dense = plain(lacy(""), name="lacy", swatch="    swatch 40 stitches by 60 rows = 10 cm by 10 cm\n")
    edge = "edges slope to 60 stitches wide at high"
    made = sound(LACE, plain(), dense, piece("fabric lacy from low to high, 3 repeats wide", edge)).piece("front")
    assert made.left[0].change == (-5.0, -5.0)


def test_stitches_of_a_panel_are_its_own() -> None:
    dense = plain(lacy(""), name="lacy", swatch="    swatch 40 stitches by 60 rows = 10 cm by 10 cm\n")
    made = sound(LACE, plain(), dense, piece("fabric lacy from low to high, 12 stitches wide")).piece("front")
    assert made.zones[0].width == (3.0, 3.0)


def test_a_panel_is_in_the_yarn_and_tension_around_it() -> None:
    assert codes("fabric lacy from low to high, 3 repeats wide") == []
    assert codes("fabric loose from low to high, 3 repeats wide") == ["panel-fabric"]
    assert codes("fabric striped from low to high, 10 cm wide") == ["panel-fabric"]
    assert codes("fabric loose from low to middle", "fabric lacy from hem to high, 3 repeats wide") == ["panel-fabric"]


def test_a_panel_with_nothing_that_repeats() -> None:
    assert codes("fabric rib from low to high, 3 repeats wide") == ["repeats-without-chart"]
    assert codes("fabric lacy from low to high, 0 repeats wide") == ["not-positive"]


def test_a_motif_stands_where_it_is_put() -> None:
    (motif,) = sound(LACE, plain(), piece("motif lace at low, 6 cm left of centre")).piece("front").motifs
    assert (motif.chart, motif.level, motif.centre) == ("lace", "low", (-6.0, -6.0))


def test_a_motif_needs_its_rows_and_its_width() -> None:
    tall = chart(*["......", "..N..."] * 20, name="tall")
    fits = said(tall, plain(), piece("motif tall at high"))
    assert fits == ()
    assert [d.code for d in said(tall, plain(), piece("motif tall at top"))] == ["motif-past-top"]
    assert [d.code for d in said(tall, plain(), piece("motif tall at low, 19 cm left of centre"))] == ["beyond-the-edge"]
    narrow = piece("edges slope to 6 cm wide at low", "motif tall at low, 2 cm left of centre")
    assert [d.code for d in said(tall, plain(), narrow)] == ["beyond-the-edge"]


def test_a_motif_has_no_repeat() -> None:
    repeated = chart("..O/..", "......", lines=["repeat 6 stitches"])
    assert [d.code for d in said(repeated, plain(), piece("motif lace at low"))] == ["motif-with-repeat"]


def test_a_mirror_image_has_the_motif_on_its_other_side() -> None:
    made = sound(LACE, plain(), piece("motif lace at low, 6 cm left of centre"), "piece other in plain, mirror of front\n")
    assert made.piece("other").motifs[0].centre == (6.0, 6.0)
    assert made.piece("other").motifs[0].origin.path.startswith("piece other")


# ----------------------------------------------------------------- width


def test_one_repeat_with_its_edges_has_to_be_there() -> None:
    # 6 + 2 x 4 stitches are 7 cm.
    assert in_cloth("lacy", start="7 cm wide") == []
    assert in_cloth("lacy", start="6.5 cm wide") == ["repeat-wider-than-piece"]
    assert codes("fabric lacy from low to high, 2 cm wide") == ["repeat-wider-than-piece"]
    assert codes("fabric lacy from low to high, 3 cm wide") == []


def test_only_the_sizes_that_are_too_narrow_are_named() -> None:
    text = piece(start="length - 34 cm wide").replace("in plain", "in lacy")
    (narrow,) = said(*CLOTHS, text)
    assert (narrow.code, narrow.sizes) == ("repeat-wider-than-piece", ("S",))


def test_where_the_chart_begins_its_width_counts() -> None:
    assert codes("edges slope to 5 cm wide at low", "fabric lacy from low to high")[0] == "repeat-wider-than-piece"


@pytest.mark.parametrize(
    ("repeat", "more", "found"),
    [
        ("repeat 4 stitches", "", []),
        ("repeat 4 stitches", ", centre stitch", ["repeat-parity"]),
        ("repeat 6 stitches", "", []),
        ("repeat 5 stitches", "", []),
        ("repeat 5 stitches", ", centre stitch", []),
    ],
)
def test_whole_repeats_come_to_an_even_or_an_odd_number(repeat: str, more: str, found: list[str]) -> None:
    assert [d.code for d in said(chart("......", lines=[repeat]), plain(lacy()), piece(more=more))] == found


def test_an_odd_border_of_an_even_repeat() -> None:
    parts = chart(".....", lines=["repeat 4 stitches"]), plain(lacy())
    assert [d.code for d in said(*parts, piece())] == ["repeat-parity"]
    assert said(*parts, piece(more=", centre stitch")) == ()
    assert [d.code for d in said(parts[0], plain(lacy(", centred")), piece())] == ["border-needs-whole"]


def test_how_a_chart_lies_on_the_needles() -> None:
    for words, fit in (("", "whole"), (", whole repeats", "whole"), (", centred", "centred"), (", balanced", "balanced")):
        made = sound(LACE, plain(lacy(f"{words}, 4 edge stitches")), piece()).fabric("plain")
        assert (made.fit, made.edge, made.chart) == (fit, 4, "lace")


# ----------------------------------------------------------------- edges


def shaped(edge: int, *lines: str) -> list[str]:
    cloth = plain(lacy(f", {edge} edge stitches" if edge else ""))
    return [d.code for d in said(chart("..-...", "......"), cloth, piece(*lines))]


@pytest.mark.parametrize(
    ("need", "lines"),
    [
        (0, ()),
        (2, ("edges slope to 36 cm wide at top",)),
        (2, ("left edge curve by -4 cm at top",)),
        (3, ("edges slope to 36 cm wide at top, fashioned 2 in",)),
        (4, ("edges slope to 36 cm wide at top, fashioned 3 in",)),
        (4, ("edges slope to 36 cm wide at top, fashioned 2 in, two at once",)),
        (2, ("neck 12 cm wide, 6 cm deep, round",)),
        (0, ("neck 12 cm wide, 6 cm deep, square",)),
        (3, ("neck 12 cm wide, 6 cm deep, v, fashioned 2 in",)),
    ],
)
def test_edge_stitches_that_shaping_needs(need: int, lines: tuple[str, ...]) -> None:
    assert shaped(need, *lines) == []
    if need:
        assert shaped(need - 1, *lines) == ["edge-stitches-too-few"]


def test_edges_shaped_outside_the_chart_need_none() -> None:
    cloth = plain(lacy(", 1 edge stitch", name="dots"), name="dotted")
    edge = "edges slope to 36 cm wide at low"
    assert said(DOTS, plain(), cloth, piece(edge, "fabric dotted from low to high")) == ()
    assert [d.code for d in said(DOTS, plain(), cloth, piece(edge, "fabric dotted from hem to low"))] == ["edge-stitches-too-few"]


@pytest.mark.parametrize(
    "rows",
    [
        ("..O/..", "......"),
        ("......", ".T...."),
        ("......", ".V...."),
        ("......", ".L...."),
        ("......", "..H...", "..H..."),
        ("..N...", "......"),
    ],
)
def test_a_chart_worked_by_hand_needs_an_end_needle_that_knits(rows: tuple[str, ...]) -> None:
    assert [d.code for d in said(chart(*rows), plain(lacy("")), piece())] == ["edge-stitches-too-few"]
    assert said(chart(*rows), plain(lacy(", 1 edge stitch")), piece()) == ()


def test_a_yarn_laid_in_blocks_may_come_to_the_edge() -> None:
    assert said(chart("NN..", lines=["colours laid in blocks"]), plain(lacy("")), piece()) == ()


def test_a_fabric_with_too_few_is_told_of_once() -> None:
    other = piece().replace("piece front", "piece back")
    assert [d.code for d in said(LACE, plain(lacy("")), piece(), other)] == ["edge-stitches-too-few"]


# ----------------------------------------------------------------- what clashes


@pytest.mark.parametrize(
    "lines",
    [
        ("fabric rib from low to high, 10 cm wide",),
        ("slot pocket 10 cm wide at low",),
        ("buttonholes 3 over 2 stitches from low to high, 1.5 cm from the right edge",),
        ("across to 30 cm wide at low",),
        ("repeat 3 times from low to high",),
        ("motif banner at low",),
    ],
)
def test_what_cannot_be_in_a_charted_piece(lines: tuple[str, ...]) -> None:
    across = ("edges straight to low", *lines) if lines[0].startswith("across") else lines
    cloth = "dotted"
    assert in_cloth(cloth, *across) == ["patterns-clash"]
    # The message stands at what is in the way, and says how to mend it.
    text = piece(*across).replace("in plain", f"in {cloth}")
    (clash,) = said(*CLOTHS, text)
    assert in_english(clash).helps
    assert len(clash.labels) == 2


@pytest.mark.parametrize(
    "lines",
    [
        ("fabric rib from hem to low",),
        ("fabric striped from low to high",),
        ("fabric lacy from low to high, 3 repeats wide",),
        ("motif leaf at low",),
        ("wedge 12 cm wide at both edges from low to middle, held in",),
        ("neck 12 cm wide, 6 cm deep, round",),
        ("edges slope to 36 cm wide at top",),
        ("fabric rib from low to high, 10 cm wide", "fabric plain from low to high"),
        ("slot pocket 10 cm wide at middle", "fabric plain from low to high"),
        ("repeat 3 times from low to high", "fabric plain from low to high"),
    ],
)
def test_what_can_be_in_a_charted_piece(lines: tuple[str, ...]) -> None:
    assert in_cloth("spotted", *lines) == []


def test_beside_a_panel_all_is_free() -> None:
    panel = "fabric lacy from low to high, 3 repeats wide, 10 cm left of centre"
    assert codes(panel, "slot pocket 10 cm wide at middle, 8 cm right of centre") == []
    assert codes(panel, "slot pocket 10 cm wide at middle, 8 cm left of centre") == ["patterns-clash"]
    assert codes(panel, "buttonholes 3 over 2 stitches from low to high, 1.5 cm from the right edge") == []
    assert codes(panel, "buttonholes 3 over 2 stitches from low to high, 8 cm from the left edge") == ["patterns-clash"]
    assert codes(panel, "fabric rib from low to high, 10 cm wide, 8 cm right of centre") == []
    assert codes(panel, "fabric rib from low to high, 10 cm wide, 8 cm left of centre") == ["patterns-clash"]
    assert codes(panel, "edges straight to middle", "across to 30 cm wide at middle") == ["patterns-clash"]


def test_two_ribs_on_the_same_needles() -> None:
    panel = "fabric rib from low to high, 10 cm wide"
    assert in_cloth("rib", panel) == ["patterns-clash"]
    # Where the rib around it goes only so far, the panel may begin there.
    assert in_cloth("rib", panel, "fabric plain from low to high") == []
    assert codes(panel, "fabric rib from hem to low") == []
    assert codes(panel, "fabric rib from middle to top, 4 cm wide") == ["patterns-clash"]
    assert codes(f"{panel}, 10 cm left of centre", "fabric rib from middle to top, 4 cm wide, 8 cm right of centre") == []


def test_charts_and_stripes() -> None:
    assert in_cloth("striped", "motif leaf at low") == ["patterns-clash"]
    assert in_cloth("striped", "fabric lacy from low to high, 3 repeats wide") == ["patterns-clash"]
    assert in_cloth("striped", "repeat 3 times from low to high") == ["patterns-clash"]
    assert in_cloth("striped", "slot pocket 10 cm wide at low") == []


def test_two_charts_in_the_same_rows() -> None:
    panel = "fabric lacy from low to high, 3 repeats wide"
    assert codes(panel, "fabric dotted from low to high, 3 repeats wide") == ["patterns-clash"]
    assert codes(panel, "fabric dotted from low to high, 3 repeats wide, 12 cm left of centre") == []
    assert codes(panel, "motif leaf at middle") == []
    assert codes(
        "fabric spotted from low to high, 3 repeats wide", "fabric dotted from low to high, 3 repeats wide, 12 cm left of centre"
    ) == ["patterns-clash"]
    assert codes(panel, "fabric flagged from low to high, 3 repeats wide, 12 cm left of centre") == ["patterns-clash"]
    assert codes("motif leaf at low", "motif leaf at low, 2 cm left of centre") == ["patterns-clash"]


def test_a_fabric_that_begins_over_a_panel_would_cover_it() -> None:
    panel = "fabric dotted from low to high, 3 repeats wide"
    assert codes(panel, "fabric lacy from middle to top") == ["patterns-clash"]
    assert codes(panel, "fabric lacy from hem to high") == []


def test_a_panel_of_rib_in_stripes_stays_free() -> None:
    assert in_cloth("striped", "fabric rib from low to high, 10 cm wide") == []


# ----------------------------------------------------------------- the first row of a piece

FIRST_ROWS = {
    "holes": "..O/..", "tuck": "..T...", "slip": "..V...", "long": "..L...", "cross": ".CCCC.", "floats": "..N...",
    "purl": "..-...",
}  # fmt: skip
UNTOUCHED = ("purl", "blocks")


def begun(kind: str, way: str, *more: str) -> list[str]:
    """The codes told of a piece that begins in a chart whose first row has cells of a kind."""
    lines = ["colours laid in blocks"] if kind == "blocks" else []
    drawn = chart(*["......"] * 4, FIRST_ROWS.get(kind, "..N..."), lines=lines)
    text = piece(way=way).replace("in plain", "in lacy")
    return [d.code for d in said(drawn, plain(), plain(lacy(), name="lacy"), *more, text)]


@pytest.mark.parametrize("kind", [*FIRST_ROWS, "blocks"])
@pytest.mark.parametrize("way", ["on waste yarn", "on waste yarn by hand"])
def test_a_piece_on_waste_yarn_begins_with_a_row_that_moves_no_loop(kind: str, way: str) -> None:
    expected = [] if kind in UNTOUCHED else ["chart-begins-open"]
    welt = "edging welt in plain, 3 cm deep, added after\n"
    assert begun(kind, way) == expected
    assert begun(kind, f"{way}, with welt", welt) == expected


@pytest.mark.parametrize("kind", [*FIRST_ROWS, "blocks"])
def test_above_a_hem_any_row_may_be_the_first(kind: str) -> None:
    """A row of the hem's own has knitted the fold together before."""
    for hem in ("folded", "picot", "mock rib 1 by 1"):
        assert begun(kind, "on waste yarn, with hem", f"edging hem in plain, 3 cm deep, {hem}, knitted first\n") == []


@pytest.mark.parametrize("kind", [*FIRST_ROWS, "blocks"])
def test_on_a_closed_start_any_row_may_be_the_first(kind: str) -> None:
    assert begun(kind, "with e-wrap") == begun(kind, "with chain") == []
    assert begun(kind, "with e-wrap, with roll", "edging roll in plain, 3 cm deep, rolled, knitted first\n") == []


def test_the_cell_in_the_way_is_marked_once() -> None:
    parts = (chart("......", "..O/.."), plain(), plain(lacy(), name="lacy"))
    one = piece(way="on waste yarn").replace("in plain", "in lacy")
    other = one.replace("piece front", "piece back")
    found = said(*parts, one, other)
    assert places(source(*parts, one, other), found) == [("chart-begins-open", 1, 3)]
    assert dict(found[0].facts)["column"] == 3
    assert in_english(found[0]).helps


@pytest.mark.parametrize("line", ["fabric lacy from hem to low", "fabric lacy from hem to low, 3 repeats wide"])
def test_zones_and_motifs_that_begin_with_the_piece_count_too(line: str) -> None:
    parts = (chart("......", "..O/.."), plain(), plain(lacy("" if "wide" in line else ", 4 edge stitches"), name="lacy"))
    assert [d.code for d in said(*parts, piece(line, way="on waste yarn"))] == ["chart-begins-open"]
    assert said(*parts, piece(line.replace("from hem to low", "from low to high"), way="on waste yarn")) == ()
    motif = piece("motif lace at hem", way="on waste yarn")
    assert [d.code for d in said(*parts[:2], motif)] == ["chart-begins-open"]
    assert said(*parts[:2], motif.replace("at hem", "at low")) == ()
