"""Lengths of edges: rows that reach them, each a step up and sideways, as the bed measures them."""

from __future__ import annotations

from dataclasses import replace
from math import hypot

import pytest

from tests.solve.workshop import Workshop, origin, solve
from walewright.counted import CountedPiece, counted_piece
from walewright.counted.edges import EdgeLength, edge_length, held_rows, knitted_rows, stretches
from walewright.counted.model import ShapingPhrase, SizedOpening, SizedPiece, SizedRepeat, SizedRun, SizedWedge
from walewright.design.model import Design, Opening, Piece, RepeatStretch, Slot, Wedge, Zone
from walewright.report.english import in_english
from walewright.solve.edges.lengths import FINE, edge_terms
from walewright.solve.solver import programme_of

UP, ACROSS = 1 / 3.0, 1 / 2.0


def made(design: Design, name: str) -> SizedPiece:
    counts, told = solve(design)
    assert told == ()
    assert counts is not None
    return counts.sizes[0].piece(name)


def plain(shop: Workshop, **more: object) -> Piece:
    levels = shop.levels("back", hem=0, low=10, high=20, top=30)
    runs = (shop.run("low", name="foot"), shop.run("high", name="side"), shop.run("top", name="head"))
    return shop.piece("back", 40, levels, runs, **more)  # type: ignore[arg-type]


def apart(piece: Piece) -> Piece:
    """With names of its own for the right edge."""
    return replace(piece, right=tuple(replace(run, name=f"right_{run.name}") for run in piece.right))


def measured(shop: Workshop, piece: Piece, edge: str, round_it: bool = False) -> EdgeLength:
    design = shop.design(piece)
    return edge_length(counted_piece(design, made(design, piece.name)), edge, round_it)


def sized(left: tuple[SizedRun, ...], right: tuple[SizedRun, ...] = (), **more: object) -> SizedPiece:
    base = SizedPiece("back", 40, (("hem", 0), ("top", 60)), 60, left, right, (), (), 0, 40)
    return replace(base, **more)  # type: ignore[arg-type]


def one_sided(shop: Workshop, piece: Piece, counted: SizedPiece) -> CountedPiece:
    """Whose right edge has no name to be taken for the left one's."""
    return counted_piece(shop.design(replace(piece, right=())), counted)


def run(name: str, rows: tuple[int, int], *phrases: ShapingPhrase) -> SizedRun:
    shop = Workshop("M")
    return SizedRun(name, *rows, phrases, shop.run("top").way, origin(name))


def test_an_edge_called_on_one_side_is_that_side(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    piece = plain(shop)
    right = (replace(piece.right[0], name=""), *piece.right[1:])
    one_sided = replace(piece, right=right)
    assert measured(shop, one_sided, "foot", round_it=True).rows == 30
    assert measured(shop, one_sided, "side").rows == 30
    assert measured(shop, one_sided, "side", round_it=True).rows == 60
    assert measured(shop, one_sided, "side left", round_it=True).rows == 30


@pytest.mark.parametrize("kind", ["in", "out", "both"])
@pytest.mark.parametrize("edge", ["left", "right", "both"])
def test_a_held_edge_gets_two_rows_of_a_wedge(workshop: type[Workshop], kind: str, edge: str) -> None:
    shop = workshop("M")
    wedge = Wedge("dart", edge, "low", origin("dart"), "high", shop.each(10), kind)
    piece = apart(plain(shop, wedges=(wedge,)))
    design = shop.design(piece)
    counted = made(design, "back")
    low, high = counted.row("low"), counted.row("high")
    for side in ("left", "right"):
        rows = 2 if edge in ("both", side) else high - low
        assert edge_length(counted_piece(design, counted), "side" if side == "left" else "right_side").rows == rows
        reached = set(range(low + 1, high + 1)) - held_rows(counted, side)
        assert len(reached) == rows


def test_a_wedge_is_held_where_the_carriage_is_not(workshop: type[Workshop]) -> None:
    """With the carriage at the right the left edge is held at once, the right one a row later."""
    piece = sized((), wedges=(SizedWedge("dart", "both", 10, (3, 3, 3), origin("dart")),))
    assert held_rows(piece, "left") == {11, 12, 13, 14}
    assert held_rows(piece, "right") == {12, 13, 14, 15}


def test_a_left_edge_held_across_a_parting_comes_back_a_row_later(workshop: type[Workshop]) -> None:
    """Below the parting it is held with the carriage at the right, above it returned with the carriage come from the left."""
    gap = SizedOpening("neck", 12, 4, 4, run("neck", (12, 16)), origin("neck"), 16, -2)
    piece = sized((), rows=16, openings=(gap,), wedges=(SizedWedge("dart", "both", 10, (3, 3, 3), origin("dart")),))
    assert held_rows(piece, "left") == {11, 12, 13, 14, 15}
    assert held_rows(piece, "right") == {12, 13, 14, 15}


def test_a_slope_of_single_stitches_is_straight(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    piece = plain(shop)
    phrases = ShapingPhrase((0,), (-4,), 1), ShapingPhrase((2,), (-1,), 3)
    left = (run("foot", (0, 30)), run("side", (30, 60), *phrases))
    (found,) = stretches(one_sided(shop, piece, sized(left)), "side")
    # The step is crossed within a row; from there to the middle of the last stitch, and on to the top.
    wanted = hypot(4 * ACROSS, UP) + hypot(0.5 * ACROSS, UP) + hypot(2 * ACROSS, 4 * UP) + hypot(0.5 * ACROSS, 24 * UP)
    assert found.length.rows == 30
    assert found.length.cm == pytest.approx(wanted)
    # The end of every row, and the chain that was cast off.
    assert found.points == 30 + 4


def test_moves_while_an_edge_is_held_show_when_it_is_back(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    piece = plain(shop)
    wedge = SizedWedge("dart", "left", 30, (3, 3, 3), origin("dart"))
    left = (run("side", (30, 40), ShapingPhrase((3,), (-1,), 1)),)
    (found,) = stretches(one_sided(shop, piece, sized(left, wedges=(wedge,))), "side")
    assert found.length.rows == 6
    assert found.length.cm == pytest.approx(ACROSS / 2 + hypot(ACROSS / 2, 6 * UP))


def test_loops_hung_back_move_no_edge(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    piece = plain(shop)
    across = replace(run("", (30, 30), ShapingPhrase((0,), (-5,), 1)), across=True)
    left = (run("foot", (0, 30)), across, run("side", (30, 60)))
    found = edge_length(one_sided(shop, piece, sized(left)), "side")
    assert found.cm == pytest.approx(30 * UP)


def test_rows_of_a_repeat_count_each_time(workshop: type[Workshop]) -> None:
    again = SizedRepeat(10, 14, 3, origin("repeat"))
    assert knitted_rows(sized((), repeats=(again,)), 8, 16) == (9, 10, *(11, 12, 13, 14) * 3, 15, 16)
    shop = workshop("M")
    piece = plain(shop, repeats=(RepeatStretch("low", "high", shop.counts(4), origin("again")),))
    assert measured(shop, piece, "side").rows == 4 * 30
    assert measured(shop, piece, "head").rows == 30


def test_rows_of_a_zone_are_as_high_as_its_fabric(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    piece = plain(shop, zones=(Zone("rib", "low", "high", None, (), origin("zone")),))
    design = shop.design(piece, rib=shop.fabric("rib", 2.5, 4.0, 3))
    counted = made(design, "back")
    found = edge_length(counted_piece(design, counted), "side")
    assert found.rows == 40
    assert found.cm == pytest.approx(10.0)
    assert edge_length(counted_piece(design, counted), "end").cm == pytest.approx(20.0 * 2, abs=0.01)


def test_a_slot_has_a_lower_and_an_upper_edge(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    piece = plain(shop, slots=(Slot("pocket", "low", shop.each(12), shop.each(0), "waste", origin("pocket")),))
    for edge in ("pocket", "pocket upper"):
        assert measured(shop, piece, edge) == EdgeLength(0, 24, pytest.approx(12.0))  # type: ignore[arg-type]


def slit(shop: Workshop, centre: float, to: str, taken: float = 4.0) -> Piece:
    """A gap from `low`, wider on its left than on its right."""
    left, right = (shop.run(to, 3),), (shop.run(to),)
    gap = Opening(
        "slit",
        shop.each(taken + 3),
        (),
        shop.each(taken),
        "edges",
        left[0].way,
        origin("slit"),
        "low",
        to,
        shop.each(centre),
        "waste",
        left,
        right,
    )
    return plain(shop, openings=(gap,))


@pytest.mark.parametrize(("to", "rows"), [("high", 30), ("top", 60)])
@pytest.mark.parametrize("centre", [0.0, 6.0, -6.0])
def test_a_gap_has_both_row_edges_and_its_stitches(workshop: type[Workshop], centre: float, to: str, rows: int) -> None:
    shop = workshop("M")
    piece = slit(shop, centre, to)
    design = shop.design(piece)
    counted = made(design, "back")
    parts = {s.part: s.length for s in stretches(counted_piece(design, counted), "slit")}
    assert (parts["left"].rows, parts["right"].rows) == (rows, rows)
    assert parts["centre"].stitches == 8
    assert parts["left"].cm == pytest.approx(hypot(6 * ACROSS, rows * UP), rel=0.005)
    assert parts["right"].cm == pytest.approx(rows * UP)
    if to == "top":
        ends = [s.length.stitches for s in stretches(counted_piece(design, counted), "end")]
        assert sum(ends) == 80 - 14
        assert ends[1] - ends[0] == pytest.approx(6 - 4 * centre, abs=1)
    else:
        assert edge_length(counted_piece(design, counted), "slit upper").stitches == 14
        assert edge_length(counted_piece(design, counted), "end").stitches == 80


def test_terms_of_the_programme_come_to_what_is_knitted(workshop: type[Workshop]) -> None:
    """Before rows and stitches are known and after it, edges are equally long."""
    shop = workshop("M")
    wedge = Wedge("dart", "left", "low", origin("dart"), "high", shop.each(10))
    base = plain(shop, wedges=(wedge,), repeats=(RepeatStretch("low", "high", shop.counts(2), origin("again")),))
    top = (shop.run("top", -4, name="head"),)
    steps = (shop.run("top", -6, "steps", name="head", steps=3),)
    cast = (shop.run("top", -5, name="head", cast_off=2),)
    for last in (top, steps, cast):
        piece = apart(replace(base, left=(*base.left[:2], *last), right=(*base.right[:2], *last)))
        design = shop.design(piece)
        _, terms = programme_of(design)
        counted = made(design, "back")
        values = numbers(design)
        for edge in ("start", "foot", "side", "right_side", "head", "end"):
            own = edge_terms(design.at(0), piece, terms["back"][0], edge)
            found = edge_length(counted_piece(design, counted), edge)
            assert own.rows.at(values) == found.rows, edge
            assert own.stitches.at(values) == found.stitches, edge
            assert own.length.at(values) / FINE == pytest.approx(found.cm, abs=0.03 + own.loose / FINE), edge


def test_a_name_on_both_edges_with_a_wedge_at_one_is_told(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    wedge = Wedge("dart", "left", "low", origin("dart"), "high", shop.each(10))
    counts, (told,) = solve(shop.design(plain(shop, wedges=(wedge,))))
    assert counts is None
    assert told.code == "called-edges-differ"
    assert in_english(told).notes == ("M: 2 rows on the left, 30 on the right",)


def numbers(design: Design) -> dict[int, int]:
    from walewright.solve.algebra.programme import components
    from walewright.solve.solver import best

    programme, _ = programme_of(design)
    return {v: n for part in components(programme) for v, n in (best(part, len(design.sizes)).values or {}).items()}


def test_the_end_of_an_edging_has_its_rows_that_are_seen_at_their_own_height(workshop: type[Workshop]) -> None:
    """And no more: the piece's own rows begin above it."""
    piece = plain(shop := workshop(), start_edging="collar")
    design = shop.design(piece)
    counted = counted_piece(design, made(design, "back"))
    rows, fabric = counted.sized.edging_rows, design.edged_in("collar")
    assert rows
    for edge in ("collar left", "collar right", "collar"):
        assert edge_length(counted, edge) == EdgeLength(rows, 0, rows / fabric.rows_per_cm)
    assert edge_length(counted, "collar", round_it=True).rows == 2 * rows
    assert stretches(counted, "collar right")[0].points == rows
    _, garment = programme_of(design)
    terms = edge_terms(design.at(0), piece, garment["back"][0], "collar left")
    assert (terms.rows.of, terms.rows.more) == ((), rows)
    assert terms.length.more / FINE == pytest.approx(rows / fabric.rows_per_cm, abs=1e-3)
