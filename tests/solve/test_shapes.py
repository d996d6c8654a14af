"""Pieces of every construction: their openings, edges, wedges, zones and slots, held against what a bed and hands can do."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from tests.solve.workshop import Workshop, origin, solve
from walewright.counted.model import SizedOpening, SizedPiece, SizedRun
from walewright.design.model import (
    Buttonholes,
    Design,
    EdgeRun,
    Level,
    Opening,
    PerSize,
    Piece,
    RepeatStretch,
    ShapingWay,
    Slot,
    Wedge,
    Zone,
)
from walewright.guide.english import LANGUAGE
from walewright.report.english import in_english
from walewright.solve.model import Counts

OTHER = {"left": "right", "right": "left"}


def solved(design: Design) -> Counts:
    counts, told = solve(design)
    assert told == ()
    assert counts is not None
    return counts


def gap(
    shop: Workshop,
    name: str,
    begin: str,
    end: str,
    flat: float | PerSize,
    left: tuple[EdgeRun, ...],
    right: tuple[EdgeRun, ...] | None = None,
    centre: float | PerSize = 0.0,
    taken: str = "waste",
) -> Opening:
    """An opening from level to level; its `right` edge is as its `left` one where nothing else is said."""
    right = left if right is None else right
    flats = shop.each(flat)
    width = tuple(f + sum(r.change[i] for r in (*left, *right)) for i, f in enumerate(flats))
    return Opening(
        name,
        width,
        shop.each(0.0),
        flats,
        "edges",
        ShapingWay("simple"),
        origin(f"opening {name}"),
        from_level=begin,
        to_level=end,
        centre=shop.each(centre),
        taken=taken,
        left=left,
        right=right,
    )


# ----------------------------------------------------------------- what holds of every piece


def place(start: int, runs: tuple[SizedRun, ...], row: int, side: str) -> int:
    """Stitches from the centre mark to an outer edge when `row` rows are knitted and all is done that is due then."""
    reach = start // 2 if side == "left" else start - start // 2
    return reach + sum(by for run in runs for at, by in run.changes() if at <= row)


def gap_place(opening: SizedOpening, side: str, row: int) -> int:
    """Stitches from the centre mark to a gap's edge."""
    begin = -opening.first if side == "left" else opening.first + opening.flat
    runs = opening.left if side == "left" else opening.right
    return begin - sum(by for run in runs for at, by in run.changes() if at <= row)


def carriage(piece: SizedPiece, side: str, row: int) -> str:
    """Where the carriage is when `row` rows are knitted: a part begins with it at its outer edge."""
    if any(o.row <= row < o.to_row for o in piece.openings):
        return side if row % 2 == 0 else OTHER[side]
    return "right" if row % 2 == 0 else "left"


def bound(by: int, run: SizedRun) -> bool:
    """Whether a move needs the carriage at its edge."""
    if by == 1:
        return run.way.kind != "fashioned"
    return by > 1 or by < (-2 if run.way.at_once == 2 else -1)


def sound(design: Design, counts: Counts) -> None:
    for garment in counts.sizes:
        for sized, piece in zip(garment.pieces, design.pieces, strict=True):
            outline(sized, piece)
            for opening, wanted in zip(sized.openings, piece.openings, strict=True):
                opens(sized, opening, wanted)
            held(sized, piece)
            for slot in sized.slots:
                assert slot.row % 2 == 0
                assert slot.last >= slot.first
                assert -place(sized.start, sized.left, slot.row, "left") < slot.first
                assert slot.last < place(sized.start, sized.right, slot.row, "right") - 1
        for deviation in garment.deviations:
            assert abs(deviation.solved - deviation.wanted) <= 4.0 + 1e-3, deviation


def outline(sized: SizedPiece, piece: Piece) -> None:
    assert sized.start % 2 == int(piece.odd(0))
    for side, runs, wanted in (("left", sized.left, piece.left), ("right", sized.right, piece.right)):
        for run, model in zip(runs, wanted, strict=True):
            assert run.to_row == sized.row(model.to_level)
            moves = list(run.changes())
            if run.across:
                assert run.from_row == run.to_row
                assert [row for row, _ in moves] in ([], [run.from_row])
                continue
            assert all(run.from_row <= row < run.to_row for row, _ in moves)
            assert len({by > 0 for _, by in moves}) <= 1
            for row, by in moves:
                if bound(by, run) and not piece.symmetric:
                    assert carriage(sized, side, row) == side, (side, row, by)
                if bound(by, run) and piece.symmetric:
                    assert row % 2 == 0
            if model.way.at_once == 2 and model.path != "steps" and not any(model.cast_off) and sum(by for _, by in moves) < 0:
                assert all(by == -2 for _, by in moves[:-1])
                assert all(by in (-1, -2) for _, by in moves[-1:])
        for (row, by), (later, _) in pairwise((row, by) for run in runs for row, by in run.changes()):
            assert later > row or by == 0
        assert all(place(sized.start, runs, row, side) >= 1 for row in range(sized.rows + 1))
    for before, after in pairwise(level for _, level in sized.levels):
        assert after - before >= 2
        assert after % 2 == 0


def opens(sized: SizedPiece, opening: SizedOpening, wanted: Opening) -> None:
    assert opening.row % 2 == opening.to_row % 2 == 0
    assert 2 <= opening.row < opening.to_row <= sized.rows
    assert opening.rejoins == (opening.to_row < sized.rows)
    assert opening.taken == wanted.taken
    for side, runs in (("left", opening.left), ("right", opening.right)):
        rows: list[int] = []
        for run in runs:
            for row, by in run.changes():
                assert run.from_row < row < run.to_row
                rows.append(row)
                if bound(by, run):
                    # The part began with the carriage at its outer edge, so at odd rows it is at the gap.
                    assert row % 2 == 1
        assert rows == sorted(set(rows))
        assert (runs[0].from_row, runs[-1].to_row) == (opening.row, opening.to_row)
        for row in range(opening.row, opening.to_row + 1):
            edge = place(sized.start, sized.left if side == "left" else sized.right, row, side)
            assert edge - gap_place(opening, side, row) >= 1, (side, row)
    end = opening.to_row
    assert gap_place(opening, "left", end) + gap_place(opening, "right", end) == opening.width
    # The one run that stands for both is the right one.
    assert list(opening.run.changes()) == [move for run in opening.right for move in run.changes()]


def held(sized: SizedPiece, piece: Piece) -> None:
    for wedge in sized.wedges:
        model = next(w for w in piece.wedges if w.origin == wedge.origin)
        assert wedge.from_row == sized.row(model.from_level)
        assert wedge.to_row == (sized.row(model.to_level) if model.to_level else sized.rows)
        assert wedge.kind == model.kind
        assert min(wedge.groups) >= 1
        assert max(wedge.groups) - min(wedge.groups) <= 1
        assert list(wedge.groups) == sorted(wedge.groups, reverse=True)
        assert (wedge.rest > 0) == (model.rest is not None)
        width = sized.start + sum(by for run in (*sized.left, *sized.right) for row, by in run.changes() if row <= wedge.from_row)
        stays = sum(wedge.groups) + wedge.rest - (0 if wedge.kind == "both" else wedge.groups[-1])
        assert stays * (2 if wedge.edge == "both" else 1) < width


def mirrored(model: Piece, name: str) -> Piece:
    """As `design` makes a mirror image."""
    return replace(
        model,
        name=name,
        mirror_of=model.name,
        left=model.right,
        right=model.left,
        openings=tuple(replace(o, left=o.right, right=o.left, centre=tuple(-c for c in o.centre)) for o in model.openings),
        wedges=tuple(replace(w, edge=OTHER.get(w.edge, w.edge)) for w in model.wedges),
        slots=tuple(replace(s, centre=tuple(-c for c in s.centre)) for s in model.slots),
        buttonholes=tuple(replace(b, edge=OTHER[b.edge]) for b in model.buttonholes),
        zones=tuple(replace(z, centre=tuple(-c for c in z.centre)) for z in model.zones),
    )


# ----------------------------------------------------------------- openings


def test_a_slit_takes_nothing_and_may_lie_off_the_centre(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("front", hem=0, slit=20, top=40)
    still = (shop.run("top"),)
    for centre, first in ((0.0, 0), (4.0, 8), (-4.0, -8)):
        design = shop.design(
            shop.piece("front", 40, levels, still, openings=(gap(shop, "slit", "slit", "top", 0, still, centre=centre),))
        )
        counts = solved(design)
        sound(design, counts)
        opening = counts.sizes[0].pieces[0].openings[0]
        assert (opening.flat, opening.width, opening.first) == (0, 0, first)
        assert not opening.rejoins


def test_a_gap_that_rejoins_is_cast_on_again(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("back", hem=0, key=20, mid=24, shut=30, top=40)
    edges = (shop.run("mid", 1.5, "curve"), shop.run("shut", -1, "slope"))
    opening = gap(shop, "keyhole", "key", "shut", 1, edges, taken="cast-off")
    design = shop.design(shop.piece("back", 40, levels, (shop.run("top"),), openings=(opening,)))
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        made = garment.pieces[0].openings[0]
        assert made.rejoins
        assert made.to_row == garment.pieces[0].row("shut")
        assert (made.flat, made.width) == (2, 4)
        assert made.left == made.right


def test_a_neck_in_two_runs_has_them_in_one_run_too(workshop: type[Workshop]) -> None:
    """Straight up at first and then round: the plain rows belong to the first gap after them."""
    shop = workshop()
    levels = shop.levels("front", hem=0, slit=20, neck=30, top=38)
    edges = (shop.run("neck"), shop.run("top", 6, "curve", cast_off=2))
    design = shop.design(
        shop.piece("front", 44, levels, (shop.run("top"),), openings=(gap(shop, "neck", "slit", "top", 3, edges),))
    )
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        opening = garment.pieces[0].openings[0]
        assert (opening.flat, opening.width) == (6, 30)
        first = next(opening.run.changes())
        assert first == (garment.pieces[0].row("neck") + 1, -4)


def test_a_gap_has_edges_of_its_own(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("front", hem=0, neck=20, top=38)
    opening = gap(shop, "neck", "neck", "top", 3, (shop.run("top", 4, "curve"),), (shop.run("top", 7),), centre=2.0)
    model = shop.piece("front", 44, levels, (shop.run("top"),), openings=(opening,))
    design = shop.design(model, mirrored(model, "image"))
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        one, image = (p.openings[0] for p in garment.pieces)
        assert one.flat == 6
        assert abs(one.first + 3 - 4) <= 1
        assert one.width == 6 + 8 + 14
        assert image.first == -(one.first + one.flat)
        assert list(image.left[0].changes()) == list(one.right[0].changes())
        assert list(image.right[0].changes()) == list(one.left[0].changes())


def test_of_an_odd_number_the_middle_stitch_is_taken_with_the_gap(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("front", hem=0, neck=20, top=38)
    opening = gap(shop, "neck", "neck", "top", 3, (shop.run("top", 5, "curve"),))
    model = shop.piece("front", 44, levels, (shop.run("top", -2),), openings=(opening,), odd=True)
    design = shop.design(model, mirrored(model, "image"))
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        for piece in garment.pieces:
            made = piece.openings[0]
            assert made.flat % 2 == made.width % 2 == 1
            assert made.first == -(made.flat // 2)
            shoulders = [
                place(piece.start, piece.left, piece.rows, "left") - gap_place(made, "left", piece.rows),
                place(piece.start, piece.right, piece.rows, "right") - gap_place(made, "right", piece.rows),
            ]
            assert shoulders[0] == shoulders[1]


# ----------------------------------------------------------------- edges


def test_edges_of_their_own_keep_to_their_carriage_sides_through_a_parting(workshop: type[Workshop]) -> None:
    shop = workshop(up=2.6)
    levels = shop.levels("front", hem=0, a=12, split=20, b=27, join=33, top=44)
    left = (shop.run("a", 3), shop.run("b", -5, "curve", cast_off=1.5), shop.run("top", 4))
    right = (shop.run("a"), shop.run("b", 5), shop.run("top", -6, "arch"))
    opening = gap(shop, "slit", "split", "join", 0, (shop.run("join"),), centre=3.0)
    model = shop.piece("front", 40, levels, left, right, openings=(opening,))
    design = shop.design(model, mirrored(model, "image"))
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        one, image = garment.pieces
        for a, b in zip((*one.left, *one.right), (*image.right, *image.left), strict=True):
            assert sum(by for _, by in a.changes()) == sum(by for _, by in b.changes())


@pytest.mark.parametrize("change", [-5.0, -5.5])
@pytest.mark.parametrize("path", ["slope", "curve", "arch"])
def test_two_at_once_go_as_one_move(workshop: type[Workshop], change: float, path: str) -> None:
    shop = workshop()
    levels = shop.levels("sleeve", cuff=0, top=14)
    run = shop.run("top", change, path, way=ShapingWay("fashioned", 3, 2))
    design = shop.design(shop.piece("sleeve", 30, levels, (run,)))
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        moves = [by for _, by in garment.pieces[0].left[0].changes()]
        assert sum(moves) == 2 * change
        assert moves[-1] == (-1 if change == -5.5 else -2)


def test_an_arch_steepens(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("cap", start=0, top=12)
    design = shop.design(shop.piece("cap", 36, levels, (shop.run("top", -10, "arch"),)))
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        moves = list(garment.pieces[0].left[0].changes())
        by = [-b for _, b in moves]
        assert by == sorted(by)
        assert by[0] == 1
        assert by[-1] > 1
        ones = [row for row, b in moves if b == -1]
        gaps = [b - a for a, b in pairwise(ones)]
        assert gaps == sorted(gaps, reverse=True)


def test_loops_are_hung_back_over_the_whole_width(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("sleeve", cuff=0, puff=10, top=30)
    still = shop.each(0.0)
    across = EdgeRun("", "puff", "across", shop.each(6.0), still, (), ShapingWay("simple"), origin("across"))
    runs = (shop.run("puff"), across, shop.run("top"))
    design = shop.design(shop.piece("sleeve", 20, levels, runs))
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        piece = garment.pieces[0]
        assert list(piece.left[1].changes()) == [(piece.row("puff"), 12)]
        assert piece.widest == 64
        assert [d.solved for d in garment.deviations if LANGUAGE.measure(d.key) == "width at puff across"] == [64]
    for change in (14.0, -7.0):
        # More than twice, less than half.
        wild = (runs[0], replace(across, change=shop.each(change)), runs[2])
        counts_of_wild, told = solve(shop.design(shop.piece("sleeve", 20, levels, wild)))
        assert counts_of_wild is None
        assert "two go on a needle" in in_english(told[0]).message


# ----------------------------------------------------------------- what is free


def test_a_free_width_costs_nothing_and_meets_its_join(workshop: type[Workshop]) -> None:
    shop = workshop()
    one = shop.piece("one", 20, shop.levels("one", start=0, top=20), (shop.run("top"),), start_most=shop.each(26.0))
    fixed = shop.piece("two", (21.0, 22.5, 25.0), shop.levels("two", start=0, top=20), (shop.run("top"),))
    design = shop.design(one, fixed, joins=(shop.join("one start", "two start"),))
    counts = solved(design)
    for garment in counts.sizes:
        assert garment.pieces[0].start == garment.pieces[1].start
        width = next(d for d in garment.deviations if d.piece == "one" and LANGUAGE.measure(d.key) == "width at start")
        assert width.wanted == pytest.approx(width.solved)
    alone = solved(shop.design(one))
    assert all(40 <= g.pieces[0].start <= 52 for g in alone.sizes)
    assert all(c.objective < 0.01 for c in alone.components)


def test_a_width_to_come_to_holds_wherever_a_free_start_is(workshop: type[Workshop]) -> None:
    """`design` says how far it is from the farthest start to the nearest."""
    shop = workshop()
    run = replace(shop.run("top", 3.0), most=shop.each(6.0))
    design = shop.design(shop.piece("one", 20, shop.levels("one", start=0, top=20), (run,), start_most=shop.each(26.0)))
    for garment in solved(design).sizes:
        piece = garment.pieces[0]
        assert piece.start + 2 * sum(by for _, by in piece.left[0].changes()) == 64


def test_a_free_edge_ends_where_its_join_wants_it(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    cap = replace(shop.run("top", -9.0, "curve"), most=shop.each(-5.0))
    sleeve = shop.piece("sleeve", 40, shop.levels("sleeve", start=0, top=20), (cap,))
    for width in (24.0, 28.0):
        other = shop.piece("other", width, shop.levels("other", start=0, top=9), (shop.run("top"),))
        design = shop.design(sleeve, other, joins=(shop.join("sleeve end", "other start"),))
        piece = solved(design).sizes[0].piece("sleeve")
        assert piece.start + 2 * sum(by for _, by in piece.left[0].changes()) == 2 * width


def test_a_free_level_is_anywhere_in_its_range(workshop: type[Workshop]) -> None:
    shop = workshop()
    low, *_, top = shop.levels("cap", start=0, top=10)
    free = replace(top, most=shop.each(14.0))
    design = shop.design(shop.piece("cap", 30, (low, free), (shop.run("top", -8),)))
    counts = solved(design)
    for garment in counts.sizes:
        assert 30 <= garment.pieces[0].rows <= 42
        height = next(d for d in garment.deviations if LANGUAGE.measure(d.key) == "height of top")
        assert height.wanted == garment.pieces[0].rows
    assert all(c.objective < 0.01 for c in counts.components)


# ----------------------------------------------------------------- wedges


@pytest.mark.parametrize("kind", ["in", "out", "both"])
@pytest.mark.parametrize("edge", ["both", "left", "right"])
@pytest.mark.parametrize("rest", [None, 2.0])
def test_wedges_of_every_kind(workshop: type[Workshop], kind: str, edge: str, rest: float | None) -> None:
    shop = workshop()
    levels = shop.levels("body", hem=0, dart=(20, 21, 22), up=(23.3, 24.3, 25.3), top=44)
    wedge = Wedge("dart", edge, "dart", origin("dart"), "up", shop.each(9.0), kind, None if rest is None else shop.each(rest))
    design = shop.design(shop.piece("body", 40, levels, (shop.run("top"),), wedges=(wedge,)))
    counts = solved(design)
    sound(design, counts)
    made = [g.pieces[0].wedges[0] for g in counts.sizes]
    assert all(sum(w.groups) == 18 for w in made)
    assert all(w.rest == (0 if rest is None else 4) for w in made)
    # Equally high in all sizes: the same steps.
    assert len({w.groups for w in made}) == 1
    assert len(made[0].groups) == (2 if kind == "both" else 5)


def test_the_one_shoulder_of_a_front_is_what_its_other_edge_leaves(workshop: type[Workshop]) -> None:
    """The neckline of a front that opens goes on while the shoulder is held."""
    shop = workshop()
    levels = shop.levels("front", hem=0, tip=40, top=44)
    held = Wedge("shoulders", "right", "tip", origin("shoulders"))
    sides = (shop.run("tip"), shop.run("top", -2)), (shop.run("top"),)
    design = shop.design(shop.piece("front", 20, levels, *sides, wedges=(held,)))
    counts = solved(design)
    sound(design, counts)
    assert [sum(w.groups) for g in counts.sizes for w in g.pieces[0].wedges] == [36] * len(counts.sizes)


def test_all_but_a_rest_of_the_width_is_held_in_a_gore(workshop: type[Workshop]) -> None:
    """Held from the left in and let out again, right across the centre."""
    shop = workshop()
    levels = shop.levels("crown", base=0, gore=2, closed=14, top=16)
    wedge = Wedge("gore", "left", "gore", origin("gore"), "closed", shop.each(18.0), "both")
    repeat = RepeatStretch("gore", "closed", shop.counts(6), origin("repeat"))
    design = shop.design(shop.piece("crown", 20, levels, (shop.run("top"),), wedges=(wedge,), repeats=(repeat,)))
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        piece = garment.pieces[0]
        assert sum(piece.wedges[0].groups) == 36
        assert (piece.repeats[0].from_row, piece.repeats[0].to_row) == (piece.row("gore"), piece.row("closed"))
        assert piece.counter(piece.rows) == piece.rows + 5 * (piece.row("closed") - piece.row("gore"))


def test_nothing_would_stay_in_work(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("body", hem=0, dart=20, up=28, top=44)
    wedges = tuple(
        Wedge("dart", edge, "dart", origin(f"dart {edge}"), "up", shop.each(wide), "both")
        for edge, wide in (("left", 14.0), ("right", 11.0))
    )
    piece = shop.piece("body", 20, levels, (shop.run("top"),), wedges=wedges)
    counts, told = solve(shop.design(piece))
    assert counts is None
    assert "no stitches can stay in work" in in_english(told[0]).message
    wide = replace(piece, start_width=shop.each(27.0))
    sound(shop.design(wide), solved(shop.design(wide)))


def test_more_groups_than_stitches(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("body", hem=0, dart=20, up=30, top=44)
    wedge = Wedge("dart", "left", "dart", origin("dart"), "up", shop.each(5.0), "in")
    counts, told = solve(shop.design(shop.piece("body", 40, levels, (shop.run("top"),), wedges=(wedge,))))
    assert counts is None
    assert told[0].code == "wedge-too-steep"
    said = "the left wedge at dart has fewer stitches than steps: a step takes 2 rows and a stitch at least"
    assert in_english(told[0]).message == said


# ----------------------------------------------------------------- fabrics


def test_rows_and_widths_go_by_the_fabric_that_is_there(workshop: type[Workshop]) -> None:
    shop = workshop(across=2.0, up=3.0)
    levels = shop.levels("body", hem=0, rib=10, neck=30, top=40)
    zone = Zone("rib", "hem", "rib", None, shop.each(0.0), origin("zone"))
    rib = shop.fabric("rib", 3.0, 4.0, 3)
    runs = (shop.run("rib"), shop.run("top", 2.0))
    neck = shop.neck("body", 16, 12, 8)
    design = shop.design(shop.piece("body", 30, levels, runs, zones=(zone,), neck=neck), rib=rib)
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        piece = garment.pieces[0]
        assert piece.start == 90
        assert piece.row("rib") == 40
        assert piece.row("top") == 40 + 90
        # To a width in plain: fewer stitches than straight on.
        assert piece.openings[0].width == 32
        assert piece.rows - piece.openings[0].row == 36
        assert (piece.zones[0].from_row, piece.zones[0].to_row) == (0, 40)
        assert piece.zones[0].first > piece.zones[0].last


def test_a_width_is_measured_in_the_rows_below_it_and_loops_hung_back_in_those_above(workshop: type[Workshop]) -> None:
    shop = workshop(across=2.0, up=3.0)
    levels = shop.levels("sleeve", cuff=0, rib=10, top=40)
    zone = Zone("rib", "cuff", "rib", None, shop.each(0.0), origin("zone"))
    across = EdgeRun("", "rib", "across", shop.each(4.0), shop.each(0.0), (), ShapingWay("simple"), origin("across"))
    runs = (shop.run("rib", 2.0), across, shop.run("top"))
    rib = shop.fabric("rib", 3.0, 4.0, 3)
    piece = solved(shop.design(shop.piece("sleeve", 20, levels, runs, zones=(zone,)), rib=rib)).sizes[0].pieces[0]
    assert piece.start == 60
    shaped, hung, _ = ([by for _, by in run.changes()] for run in piece.left)
    # 24 cm of rib, then 32 cm of plain.
    assert piece.start + 2 * sum(shaped) == 72
    assert piece.start + 2 * sum(shaped) + 2 * sum(hung) == 64


def test_levels_alike_but_for_their_fabric_have_rows_of_their_own(workshop: type[Workshop]) -> None:
    shop = workshop(up=3.0)
    levels = shop.levels("a", hem=0, rib=10, top=40)
    zone = Zone("rib", "hem", "rib", None, shop.each(0.0), origin("zone"))
    plain = shop.piece("a", 30, levels, (shop.run("top"),))
    ribbed = shop.piece("b", 30, levels, (shop.run("top"),), zones=(zone,))
    again = shop.piece("c", 30, levels, (shop.run("top"),), zones=(zone,))
    garment = solved(shop.design(plain, ribbed, again, rib=shop.fabric("rib", 2.0, 4.0, 3))).sizes[0]
    assert [p.row("top") for p in garment.pieces] == [120, 130, 130]


@pytest.mark.parametrize("odd", [False, True])
def test_a_panel_lies_on_needles(workshop: type[Workshop], odd: bool) -> None:
    shop = workshop()
    levels = shop.levels("body", hem=0, top=40)
    zones = tuple(Zone("rib", "hem", "top", shop.each(8.2), shop.each(c), origin(f"panel {c}")) for c in (0.0, 9.0))
    piece = solved(shop.design(shop.piece("body", 40, levels, (shop.run("top"),), zones=zones, odd=odd))).sizes[0].pieces[0]
    middle, beside = piece.zones
    if odd:
        assert (middle.first, middle.last) == (-8, 8)
    else:
        assert (middle.first, middle.last) == (-8, 7)
    assert beside.last - beside.first + 1 == 16
    assert abs((beside.first + beside.last + 1) / 2 - 18) <= 1


# ----------------------------------------------------------------- slots


@pytest.mark.parametrize(("centre", "odd", "slots"), [(0.0, False, (-6, 5)), (4.0, False, (2, 13)), (0.0, True, (-6, 6))])
def test_a_slot_has_its_needles(workshop: type[Workshop], centre: float, odd: bool, slots: tuple[int, int]) -> None:
    shop = workshop()
    levels = shop.levels("hand", wrist=0, thumb=10, top=20)
    slot = Slot("thumb", "thumb", shop.each(6.1), shop.each(centre), "waste", origin("slot"))
    model = shop.piece("hand", 20, levels, (shop.run("top"),), slots=(slot,), odd=odd)
    design = shop.design(model, mirrored(model, "image"))
    counts = solved(design)
    sound(design, counts)
    made, image = (p.slots[0] for p in counts.sizes[0].pieces)
    assert (made.first, made.last) == slots
    assert made.row == counts.sizes[0].pieces[0].row("thumb")
    if not odd:
        assert (image.first, image.last) == (-1 - made.last, -1 - made.first)


def test_a_slot_beyond_the_edge(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("hand", wrist=0, thumb=10, top=20)
    slot = Slot("thumb", "thumb", shop.each(6.0), shop.each(8.0), "waste", origin("slot"))
    counts, told = solve(shop.design(shop.piece("hand", 20, levels, (shop.run("top"),), slots=(slot,))))
    assert counts is None
    assert "cannot lie inside" in in_english(told[0]).message


@pytest.mark.parametrize("stitches", [1, 2])
def test_buttonholes_are_even_and_exact_at_both_ends(workshop: type[Workshop], stitches: int) -> None:
    shop = workshop()
    levels = shop.levels("front", hem=0, low=2, high=(35, 37, 41), top=44)
    holes = Buttonholes(shop.counts(6), stitches, "low", "high", "right", shop.each(1.5), origin("holes"))
    model = shop.piece("front", 24, levels, (shop.run("top", -3),), (shop.run("top"),), buttonholes=(holes,))
    design = shop.design(model, mirrored(model, "image"))
    counts = solved(design)
    sound(design, counts)
    for garment in counts.sizes:
        one, image = garment.pieces
        rows = [s.row for s in one.slots]
        assert rows[0] == one.row("low")
        assert rows[-1] == one.row("high")
        gaps = [b - a for a, b in pairwise(rows)]
        assert max(gaps) - min(gaps) <= 2
        assert {s.last for s in one.slots} == {24 - 3 - 1}
        assert {s.last - s.first + 1 for s in one.slots} == {stitches}
        assert {s.taken for s in one.slots} == {"eyelet" if stitches == 1 else "cast-off"}
        assert [(s.row, -1 - s.last) for s in one.slots] == [(s.row, s.first) for s in image.slots]


# ----------------------------------------------------------------- anything


def heights(shop: Workshop, piece: str, *steps: float) -> tuple[Level, ...]:
    names = ("hem", "a", "b", "c", "top")
    total = 0.0
    found: dict[str, float] = {"hem": 0.0}
    for name, step in zip(names[1:], steps, strict=True):
        total += step
        found[name] = total
    return shop.levels(piece, **found)


PATHS = st.sampled_from(["slope", "curve", "arch"])
MOVES = st.sampled_from([-4.0, -2.5, 0.0, 1.5, 3.0])


@settings(max_examples=draws(25), deadline=None)
@given(
    across=st.floats(1.0, 3.5),
    steps=st.lists(st.floats(6.0, 15.0), min_size=4, max_size=4),
    moves=st.lists(st.tuples(MOVES, PATHS, st.booleans()), min_size=8, max_size=8),
    flat=st.sampled_from([0.0, 2.0, 3.3]),
    centre=st.sampled_from([0.0, 3.0, -3.0]),
    widen=st.sampled_from([0.0, 1.5]),
    rejoin=st.booleans(),
    odd=st.booleans(),
)
def test_any_outline_can_be_scheduled(
    across: float,
    steps: list[float],
    moves: list[tuple[float, str, bool]],
    flat: float,
    centre: float,
    widen: float,
    rejoin: bool,
    odd: bool,
) -> None:
    shop = Workshop("S M", across, across * 1.4, needles=600)
    levels = heights(shop, "piece", *steps)

    def edge(some: list[tuple[float, str, bool]]) -> tuple[EdgeRun, ...]:
        named = zip(("a", "b", "c", "top"), some, strict=True)
        return tuple(
            shop.run(to, change, path, way=ShapingWay("fashioned", 2) if fashioned else ShapingWay("simple"))
            for to, (change, path, fashioned) in named
        )

    left, right = edge(moves[:4]), edge(moves[4:])
    end = "c" if rejoin else "top"
    sides = [tuple(shop.run(to, widen, "curve" if to == "b" else "slope") for to in ("b", "c", "top") if to <= end or end == "top")]
    opening = gap(shop, "gap", "a", end, flat, sides[0], centre=centre)
    model = shop.piece("piece", 44, levels, left, right, openings=(opening,), odd=odd)
    design = shop.design(model, mirrored(model, "image"))
    counts = solved(design)
    sound(design, counts)
