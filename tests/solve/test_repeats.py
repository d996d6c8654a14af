"""Charted fabrics: whole repeats as numbers of the programme, and where repeats, panels and motifs lie on the needles."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from tests.draws import draws
from tests.solve.workshop import Workshop, origin, solve
from walewright.counted import counted_piece
from walewright.counted.edges import edge_length
from walewright.counted.model import SizedPiece
from walewright.design.model import Design, Motif, Piece, ShapingWay, Zone
from walewright.guide.english import LANGUAGE
from walewright.report.english import in_english
from walewright.solve.model import Counts


def solved(design: Design) -> Counts:
    counts, told = solve(design)
    assert told == ()
    assert counts is not None
    return counts


def only(design: Design) -> SizedPiece:
    return solved(design).sizes[0].pieces[0]


def told_of(design: Design) -> list[str]:
    counts, told = solve(design)
    assert counts is None
    return [d.code for d in told]


def ends_at(piece: SizedPiece, row: int) -> tuple[int, int]:
    """First and last slot at a row, what is cast off there not yet gone."""
    left = piece.start_left + sum(by for run in piece.left for at, by in run.changes() if at < row)
    right = piece.start - piece.start_left + sum(by for run in piece.right for at, by in run.changes() if at < row)
    return -left, right - 1


# ----------------------------------------------------------------- the law

NUMBERS = {
    "repeat": st.integers(2, 24),
    "up": st.integers(1, 12),
    "before": st.integers(0, 5),
    "after": st.integers(0, 5),
    "edge": st.integers(0, 4),
    "needles": st.sampled_from([100, 150, 200, 250]),
    "across": st.floats(1.2, 3.6),
    "width": st.floats(18, 60),
    "step": st.floats(0, 5),
    "taper": st.floats(-4, 4),
    "odd": st.booleans(),
    "sided": st.booleans(),
    "zoned": st.booleans(),
    "fit": st.sampled_from(["whole", "whole", "centred", "balanced"]),
}


@settings(max_examples=draws(150), deadline=None)
@given(**NUMBERS)
def test_the_knitted_count_is_a_legal_multiple_with_its_edges_centred_as_asked(
    repeat: int,
    up: int,
    before: int,
    after: int,
    edge: int,
    needles: int,
    across: float,
    width: float,
    step: float,
    taper: float,
    odd: bool,
    sided: bool,
    zoned: bool,
    fit: str,
) -> None:
    """Of a piece whose edges are led to where the fabric begins (at the start or, `zoned`, above it), and on from there."""
    shop = Workshop("S M", across, 3.0, needles)
    if fit != "whole":
        before = after = 0
    chart = shop.chart("waves", repeat, up, before, after)
    charted = shop.charted(chart, across * 1.1, 3.3, fit, edge)
    levels = shop.levels("body", hem=0, chest=20, top=60)
    left = (shop.run("chest", (0, 0)), shop.run("top", (taper, taper)))
    right = (shop.run("chest", (0, 0)), shop.run("top", (-taper, -taper))) if sided else None
    zones = (Zone("waves", "chest", "top", None, shop.each(0), origin("zone")),) if zoned else ()
    model = shop.piece("body", (width, width + step), levels, left, right, odd=odd, zones=zones)
    if not zoned:
        model = replace(model, fabric="waves")
    per_cm = across if zoned else across * 1.1
    legal = 2 * edge + before + after
    steps = repeat if (repeat % 2 == 0) else 2 * repeat
    assume(repeat % 2 == 1 or (legal - odd) % 2 == 0)
    design = shop.design(model, charts=(chart,), fabrics=(charted,))
    counts, told = solve(design)
    if counts is None:
        # Only for want of room: on the bed, for one repeat, or for the taper in its rows.
        tight = (width + step + 2 * abs(taper)) * across * 1.1 + steps > needles - 2
        assert tight or width * per_cm < legal + 1.5 * steps + 8 + 2 * abs(taper) * per_cm, told
        return
    for size, garment in enumerate(counts.sizes):
        piece = garment.pieces[0]
        (made,) = piece.charts
        row = piece.row("chest") if zoned else 0
        first, last = ends_at(piece, row)
        assert (made.area, made.fabric, made.chart, made.edge) == ("whole", "waves", "waves", edge)
        assert (made.from_row, made.to_row) == (row, piece.rows)
        assert (made.first, made.last) == (first + edge, last - edge)
        assert (last - first + 1) % 2 == odd
        wanted = (width + step * size) * per_cm
        if fit == "whole":
            assert made.repeats >= 1
            assert last - first + 1 == legal + made.repeats * repeat
            assert made.start == made.first + before
            assert abs(last - first + 1 - wanted) <= max(2, steps / 2) + 1e-6
            continue
        assert abs(last - first + 1 - wanted) <= 2 + 1e-6
        mark = made.start + piece.lean
        # On slot 0 lies the middle column of an odd repeat, or the first of the right half of an even one.
        assert (mark + (repeat // 2 if fit == "centred" else 0)) % repeat == 0
        if made.repeats:
            assert made.first <= made.start < made.first + repeat
            assert made.start + made.repeats * repeat - 1 <= made.last < made.start + (made.repeats + 1) * repeat - 1


# ----------------------------------------------------------------- whole repeats


def straight(shop: Workshop, width: float | tuple[float, ...], **more: object) -> Piece:
    return shop.piece("body", width, shop.levels("body", hem=0, top=40), (shop.run("top", name="side"),), **more)


def test_the_nearest_multiple_is_taken_in_every_size_and_the_check_table_says_so(workshop: type[Workshop]) -> None:
    shop = workshop("S M L")
    chart = shop.chart("waves", 12, 8, 1, 2)
    model = straight(shop, (40, 45, 50), fabric="waves", odd=True)
    counts = solved(shop.design(model, charts=(chart,), fabrics=(shop.charted(chart, 2.0, 3.0, edge=1),)))
    # 5 more than a multiple of 12: 77 or 89, 89, 101.
    assert [g.pieces[0].start for g in counts.sizes] == [77, 89, 101]
    off = [d.solved - d.wanted for g in counts.sizes for d in g.deviations if LANGUAGE.measure(d.key) == "width at start"]
    assert off == pytest.approx([-3, -1, 1])


def test_a_bed_too_narrow_for_the_next_repeat_is_in_the_message(workshop: type[Workshop]) -> None:
    shop = workshop("S", needles=100)
    chart = shop.chart("waves", 40, 8)
    design = shop.design(straight(shop, 49, fabric="waves"), charts=(chart,), fabrics=(shop.charted(chart, 2.0, 3.0, edge=12),))
    counts, told = solve(design)
    assert counts is None
    (message,) = told
    assert message.code == "counts-conflict"
    text = " ".join((in_english(message).message, *in_english(message).labels))
    assert "the bed has 100 needles" in text
    assert "whole repeats of 40" in text


def test_a_join_row_for_row_with_loops_makes_both_pieces_go_by_the_repeats(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("waves", 14, 8)
    charted = shop.charted(chart, 2.0, 3.0, edge=1)
    one, other = straight(shop, 40, fabric="waves"), replace(straight(shop, 40), name="lining", origin=origin("lining"))
    design = shop.design(one, other, joins=(shop.join("body end", "lining end"),), charts=(chart,), fabrics=(charted,))
    (message,) = solve(design)[1]
    assert "whole repeats of 14" in " ".join((in_english(message).message, *in_english(message).labels))


def test_repeats_at_the_level_where_a_zone_begins(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("waves", 10, 8)
    levels = shop.levels("body", hem=0, waist=20, chest=40, yoke=41, top=60)
    runs = (shop.run("waist", -3), shop.run("chest", 3), shop.run("yoke"), shop.run("top", -4))
    zone = Zone("waves", "yoke", "top", None, shop.each(0), origin("zone"))
    piece = only(
        shop.design(shop.piece("body", 42, levels, runs, zones=(zone,)), charts=(chart,), fabrics=(shop.charted(chart, 2, 3),))
    )
    (made,) = piece.charts
    first, last = ends_at(piece, made.from_row)
    assert (last - first + 1) % 10 == 0
    assert piece.start % 10 != 0


def test_whole_repeats_on_a_slope_are_told(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("waves", 10, 8)
    charted = shop.charted(chart, 2, 3)
    levels = shop.levels("body", hem=0, waist=20, top=60)
    zone = Zone("waves", "waist", "top", None, shop.each(0), origin("zone"))
    model = shop.piece("body", 42, levels, (shop.run("top", -5),), zones=(zone,))
    assert told_of(shop.design(model, charts=(chart,), fabrics=(charted,))) == ["repeats-on-a-slope"]
    assert only(shop.design(model, charts=(chart,), fabrics=(replace(charted, fit="centred"),))).charts


def test_whole_repeats_that_begin_beside_a_neck_are_told(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("waves", 10, 8)
    charted = shop.charted(chart, 2, 3)
    zone = Zone("waves", "tip", "top", None, shop.each(0), origin("zone"))
    neck = shop.neck("body", 14, 14, 8)
    model = shop.piece("body", 40, shop.levels("body", hem=0, tip=40, top=50), (shop.run("top"),), neck=neck, zones=(zone,))
    (told,) = solve(shop.design(model, charts=(chart,), fabrics=(charted,)))[1]
    assert told.code == "repeats-on-a-slope"
    assert "parted by the neck" in in_english(told).notes[0]
    assert only(shop.design(model, charts=(chart,), fabrics=(replace(charted, fit="centred"),))).charts
    assert only(shop.design(replace(model, openings=()), charts=(chart,), fabrics=(charted,))).charts


@pytest.mark.parametrize("what", ["cast off", "held"])
def test_whole_repeats_where_the_width_changes_at_once_are_told(workshop: type[Workshop], what: str) -> None:
    shop = workshop("S")
    chart = shop.chart("waves", 10, 8)
    charted = shop.charted(chart, 2, 3)
    levels = shop.levels("body", hem=0, waist=20, tip=40, top=50)
    zone = Zone("waves", "waist" if what == "cast off" else "tip", "top", None, shop.each(0), origin("zone"))
    runs = (shop.run("waist"), shop.run("tip", -5, cast_off=3) if what == "cast off" else shop.run("tip"), shop.run("top"))
    held = "tip" if what == "held" else ""
    model = shop.piece("body", 44, levels, runs, zones=(zone,), held_from=held)
    (told,) = solve(shop.design(model, charts=(chart,), fabrics=(charted,)))[1]
    assert told.code == "repeats-on-a-slope"
    assert what.replace("cast off", "taken off") in " ".join(in_english(told).notes)
    assert told.helps
    later = replace(zone, from_level="tip" if what == "cast off" else "waist")
    for possible in (replace(model, zones=(later,)), model):
        fit = "whole" if possible is not model else "centred"
        assert only(shop.design(possible, charts=(chart,), fabrics=(replace(charted, fit=fit),))).charts


def test_a_fabric_cut_by_a_zone_begins_again_above_it(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("waves", 10, 8)
    levels = shop.levels("body", hem=0, welt=5, chest=20, yoke=30, top=60)
    zones = tuple(Zone("rib", a, b, None, shop.each(0), origin(a)) for a, b in (("chest", "yoke"), ("hem", "welt")))
    model = shop.piece("body", 40, levels, (shop.run("top"),), zones=zones, fabric="waves")
    piece = only(shop.design(model, charts=(chart,), fabrics=(shop.charted(chart, 2, 3),)))
    assert [(c.from_row, c.to_row) for c in piece.charts] == [
        (piece.row("welt"), piece.row("chest")),
        (piece.row("yoke"), piece.rows),
    ]


def test_a_leaning_piece_takes_its_chart_along(workshop: type[Workshop]) -> None:
    shop = workshop("S", needles=100)
    chart = shop.chart("waves", 6, 8)
    levels = shop.levels("front", hem=0, top=60)
    model = shop.piece("front", 30, levels, (shop.run("top"),), (shop.run("top", 15),), fabric="waves")
    made = [
        only(shop.design(model, charts=(chart,), fabrics=(shop.charted(chart, 2, 3, fit),)))
        for fit in ("whole", "centred", "balanced")
    ]
    for piece in made:
        assert piece.lean > 0
        assert piece.charts[0].first == -piece.start_left
    assert made[0].charts[0].start == -made[0].start_left
    assert (made[1].charts[0].start + made[1].lean + 3) % 6 == 0
    assert (made[2].charts[0].start + made[2].lean) % 6 == 0


def test_a_mirror_image_keeps_the_chart_the_same_way_round(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("waves", 7, 8, 2, 1)
    levels = shop.levels("left", hem=0, top=60)
    runs = (shop.run("top"),), (shop.run("top", -5),)
    model = shop.piece("left", 30, levels, *runs, fabric="waves")
    image = replace(model, name="right", mirror_of="left", left=model.right, right=model.left, origin=origin("piece right"))
    pieces = solved(shop.design(model, image, charts=(chart,), fabrics=(shop.charted(chart, 2, 3, edge=1),))).sizes[0].pieces
    for piece in pieces:
        (made,) = piece.charts
        assert made.start == made.first + 2 == -piece.start_left + 3
        assert piece.start == 5 + 7 * made.repeats


# ----------------------------------------------------------------- panels


@pytest.mark.parametrize(
    ("repeat", "before", "odd", "stitches"), [(6, 0, False, 18), (5, 0, False, 20), (5, 0, True, 15), (6, 1, True, 19)]
)
def test_a_panel_has_the_repeats_nearest_to_its_width(
    workshop: type[Workshop], repeat: int, before: int, odd: bool, stitches: int
) -> None:
    """7 cm of 2.6 stitches are 18.2."""
    shop = workshop("S")
    chart = shop.chart("cable", repeat, 8, before)
    zone = Zone("cable", "hem", "top", shop.each(7), shop.each(0), origin("zone"))
    design = shop.design(straight(shop, 40, zones=(zone,), odd=odd), charts=(chart,), fabrics=(shop.charted(chart, 2.6, 3),))
    piece = only(design)
    (made,) = piece.charts
    assert (made.area, made.edge, made.start) == ("panel", 1, made.first + before)
    assert made.last - made.first + 1 == stitches == before + repeat * made.repeats
    assert made.first + made.last == (0 if odd else -1)
    # The panel takes more stitches to the cm than what is beside it.
    assert abs(piece.start - ((40 - stitches / 2.6) * 2 + stitches)) <= 1
    (start,) = (d for g in solved(design).sizes for d in g.deviations if LANGUAGE.measure(d.key) == "width at start")
    assert start.solved_cm == pytest.approx((piece.start - stitches) / 2 + stitches / 2.6)
    assert abs(start.solved - start.wanted) <= 1
    for edge in ("start", "end"):
        assert edge_length(counted_piece(design, piece), edge).cm == pytest.approx(start.solved_cm)


def test_a_panel_that_cannot_be_in_the_middle_lies_half_a_needle_right(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("cable", 6, 8, 1)
    zone = Zone("cable", "hem", "top", shop.each(1), shop.each(0), origin("zone"), repeats=shop.counts(2))
    design = shop.design(straight(shop, 40, zones=(zone,)), charts=(chart,), fabrics=(shop.charted(chart, 2, 3),))
    (made,) = only(design).charts
    assert (made.first, made.last, made.repeats) == (-6, 6, 2)


def test_edges_go_by_the_panel_that_is_on_their_side(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("cable", 10, 8)
    zone = Zone("cable", "hem", "top", shop.each(1), shop.each(8), origin("zone"), repeats=shop.counts(1))
    levels = shop.levels("front", hem=0, waist=30, top=60)
    runs = (shop.run("waist", 2), shop.run("top")), (shop.run("waist", 2), shop.run("top", -1))
    plain = only(shop.design(shop.piece("front", 40, levels, *runs)))
    piece = only(
        shop.design(shop.piece("front", 40, levels, *runs, zones=(zone,)), charts=(chart,), fabrics=(shop.charted(chart, 4, 3),))
    )
    row = piece.row("waist")
    # 10 stitches take 2.5 cm in the panel and 5 cm beside it: 5 stitches more, all at the right.
    assert ends_at(piece, row)[0] in (ends_at(plain, row)[0] - 1, ends_at(plain, row)[0], ends_at(plain, row)[0] + 1)
    assert abs(ends_at(piece, row)[1] - ends_at(plain, row)[1] - 5) <= 1


def test_shaping_may_reach_a_charted_panel_but_no_slot(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("cable", 10, 8)
    zone = Zone("cable", "hem", "top", shop.each(1), shop.each(8), origin("zone"), repeats=shop.counts(2))
    levels = shop.levels("front", hem=0, top=60)
    model = shop.piece("front", 40, levels, (shop.run("top", -8),), zones=(zone,))
    charted = shop.charted(chart, 2, 3)
    assert only(shop.design(model, charts=(chart,), fabrics=(charted,)))
    ribbed = replace(model, zones=(replace(zone, fabric="rib", repeats=(), width=shop.each(10)),))
    assert told_of(shop.design(ribbed)) == ["panel-crossed"]


def test_two_panels_of_rib_have_no_wale_and_row_in_common(workshop: type[Workshop]) -> None:
    shop = workshop("S")

    def ribs(place: float, begins: str = "hem") -> list[str]:
        first = Zone("rib", "hem", "mid", shop.each(6), shop.each(0), origin("one"))
        second = Zone("rib", begins, "top", shop.each(6), shop.each(place), origin("two"))
        levels = shop.levels("front", hem=0, mid=30, top=60)
        return [d.code for d in solve(shop.design(shop.piece("front", 40, levels, (shop.run("top"),), zones=(first, second))))[1]]

    assert ribs(7) == []
    assert ribs(5) == ["panel-crossed"]
    assert ribs(0) == ["panel-crossed"]
    assert ribs(0, begins="mid") == []


# ----------------------------------------------------------------- motifs


def with_motif(shop: Workshop, level: str, centre: float, across: int, up: int, odd: bool = False) -> Design:
    chart = shop.chart("anchor", across, up, motif=True)
    motif = Motif("anchor", level, shop.each(centre), origin("motif"))
    levels = shop.levels("body", hem=0, chest=20, yoke=40, top=60)
    zones = (Zone("rib", "yoke", "top", None, shop.each(0), origin("zone")),)
    model = shop.piece("body", 40, levels, (shop.run("chest"), shop.run("yoke", -5), shop.run("top")), odd=odd)
    return shop.design(replace(model, motifs=(motif,), zones=zones), charts=(chart,))


@pytest.mark.parametrize(
    ("across", "odd", "slots"), [(10, False, (-5, 4)), (11, True, (-5, 5)), (11, False, (-5, 5)), (10, True, (-4, 5))]
)
def test_a_motif_lies_round_its_place(workshop: type[Workshop], across: int, odd: bool, slots: tuple[int, int]) -> None:
    piece = only(with_motif(workshop("S"), "chest", 0, across, 30, odd))
    (made,) = piece.charts
    assert (made.first, made.last) == slots
    assert (made.area, made.fabric, made.start, made.repeats, made.edge) == ("panel", "", made.first, 0, 1)
    assert (made.from_row, made.to_row) == (piece.row("chest"), piece.row("chest") + 30)
    (beside,) = only(with_motif(workshop("S"), "chest", 6, across, 30, odd)).charts
    assert beside.first == made.first + 12


def test_a_motif_needs_room(workshop: type[Workshop]) -> None:
    shop = workshop("S M")
    assert solve(with_motif(shop, "chest", 14, 20, 60))[0] is not None
    assert told_of(with_motif(shop, "chest", 15, 20, 60)) == ["motif-outside"]
    assert told_of(with_motif(shop, "chest", -15, 20, 60)) == ["motif-outside"]
    assert told_of(with_motif(shop, "chest", 0, 20, 61)) == ["motif-too-high"]
    assert solve(with_motif(shop, "yoke", 0, 20, 60))[0] is not None
    assert told_of(with_motif(shop, "yoke", 0, 20, 62)) == ["motif-too-high"]


def test_a_motif_lies_beside_a_neck(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("anchor", 8, 10, motif=True)
    levels = shop.levels("body", hem=0, chest=50, top=60)
    model = shop.piece("body", 40, levels, (shop.run("top"),), neck=shop.neck("body", 16, 14, 10))
    for centre, codes in ((0.0, ["motif-outside"]), (14.0, [])):
        motif = Motif("anchor", "chest", shop.each(centre), origin("motif"))
        _, told = solve(shop.design(replace(model, motifs=(motif,)), charts=(chart,)))
        assert [d.code for d in told] == codes


def test_repeats_that_never_agree_on_one_width_are_told_with_a_way_out(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    low, high = shop.chart("low", 6, 8), shop.chart("high", 6, 8)
    levels = shop.levels("body", hem=0, yoke=30, top=60)
    zone = Zone("high", "yoke", "top", None, shop.each(0), origin("zone"))
    model = shop.piece("body", 40, levels, (shop.run("top"),), zones=(zone,), fabric="low")
    fabrics = shop.charted(low, 2, 3, edge=1), shop.charted(high, 2, 3, edge=2)
    (told,) = solve(shop.design(model, charts=(low, high), fabrics=fabrics))[1]
    assert told.code == "counts-conflict"
    assert sorted(in_english(told).helps) == ["let `high` be centred", "let `low` be centred"]
    mended = (fabrics[0], replace(fabrics[1], fit="centred"))
    assert only(shop.design(model, charts=(low, high), fabrics=mended)).charts


@pytest.mark.parametrize(
    ("way", "edge"), [(ShapingWay("simple"), 1), (ShapingWay("fashioned", 2), 3), (ShapingWay("fashioned", 2, 2), 4)]
)
def test_panels_and_motifs_keep_clear_of_what_a_tool_moves_in_their_rows(
    workshop: type[Workshop], way: ShapingWay, edge: int
) -> None:
    shop = workshop("S")
    cable, anchor = shop.chart("cable", 8, 8), shop.chart("anchor", 6, 10, motif=True)
    levels = shop.levels("body", hem=0, underarm=30, top=60)
    runs = (shop.run("underarm"), shop.run("top", -5, way=way))
    low, high = (Zone("cable", a, z, shop.each(4), shop.each(0), origin(a)) for a, z in (("hem", "underarm"), ("underarm", "top")))
    motifs = tuple(Motif("anchor", at, shop.each(-6), origin(f"motif {at}")) for at in ("hem", "underarm"))
    model = shop.piece("body", 40, levels, runs, zones=(low, high), motifs=motifs)
    made = only(shop.design(model, charts=(cable, anchor), fabrics=(shop.charted(cable, 2, 3),)))
    assert [(c.chart, c.edge) for c in made.charts] == [("cable", 1), ("anchor", 1), ("cable", edge), ("anchor", edge)]


def test_a_motif_ends_before_a_neck_takes_its_needles(workshop: type[Workshop]) -> None:
    shop = workshop("S")
    chart = shop.chart("anchor", 8, 24, motif=True)
    levels = shop.levels("body", hem=0, low=36, chest=41, top=60)
    model = shop.piece("body", 40, levels, (shop.run("top"),), neck=shop.neck("body", 16, 14, 10))
    for level, centre, codes in (("low", 0.0, []), ("chest", 0.0, ["motif-outside"]), ("chest", 14.0, [])):
        motif = Motif("anchor", level, shop.each(centre), origin("motif"))
        _, told = solve(shop.design(replace(model, motifs=(motif,)), charts=(chart,)))
        assert [d.code for d in told] == codes
        assert all("opening `neck` is in its way from its row" in in_english(d).notes[0] for d in told)


def test_a_motif_may_be_there_twice_in_a_row(workshop: type[Workshop]) -> None:
    shop = workshop("S M")
    design = with_motif(shop, "chest", 8, 10, 30)
    (model,) = design.pieces
    other = replace(model.motifs[0], centre=shop.each(-8))
    twice = shop.design(replace(model, motifs=(*model.motifs, other)), charts=design.charts)
    assert [len(piece.charts) for piece in (only(twice),)] == [2]
