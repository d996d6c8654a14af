"""What cannot be counted is told: who is in conflict, in which sizes, and what would do."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.solve.workshop import Workshop, solve
from walewright.design.model import Design, EdgeName, Piece, ShapingWay
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity
from walewright.solve.algebra.highs import feasible
from walewright.solve.algebra.programme import RuleKind
from walewright.solve.conflict.conflict import _smallest
from walewright.solve.solver import programme_of


def told(design: Design) -> Diagnostic:
    """The one message there is."""
    counts, diagnostics = solve(design)
    assert counts is None
    (diagnostic,) = diagnostics
    return diagnostic


def straight(shop: Workshop, name: str, width: float | tuple[float, ...], height: float | tuple[float, ...] = 30.0) -> Piece:
    levels = shop.levels(name, hem=0, up=height, top=60)
    return shop.piece(name, width, levels, (shop.run("up", name="side"), shop.run("top")))


def test_a_piece_wider_than_the_bed(workshop: type[Workshop]) -> None:
    found = told(workshop(across=2.0, needles=100).design(straight(workshop(across=2.0), "back", (48.0, 52.0, 55.0))))
    assert found.code == "wider-than-bed"
    assert found.sizes == ("M", "L")
    assert in_english(found).message == "the back takes up to 110 needles, and the bed has 100"
    assert in_english(found).notes[0] == "M: 52 cm at the start take 104 needles"
    assert in_english(found).notes[-1] == "at 20.0 stitches to 10 cm, 100 needles make 50 cm"
    assert in_english(found).helps == (
        "make it 50 cm wide at the most",
        "knit it at 18.1 stitches to 10 cm or fewer",
        "knit it on a bed of 110 needles or more",
        "knit it as two pieces (panels) of 58 needles each, joined by a seam",
    )


@pytest.mark.parametrize(("needles", "panels"), [(2, 0), (4, 0), (40, 1)])
def test_panels_are_proposed_only_where_somebody_would_sew_them(workshop: type[Workshop], needles: int, panels: int) -> None:
    found = told(workshop(needles=needles).design(straight(workshop(), "back", 50.0)))
    assert found.code == "wider-than-bed"
    assert sum("panels" in h for h in in_english(found).helps) == panels


@pytest.mark.parametrize(("help_at", "across"), [("the tension", 1.81), ("the bed", 2.0)])
def test_what_is_proposed_for_a_narrow_bed_does(workshop: type[Workshop], help_at: str, across: float) -> None:
    needles = 100 if help_at == "the tension" else 110
    shop = workshop(across=across, needles=needles)
    counts, diagnostics = solve(shop.design(straight(shop, "back", (48.0, 52.0, 55.0))))
    assert diagnostics == ()
    assert counts is not None


def test_a_stitch_too_many_is_left_out(workshop: type[Workshop]) -> None:
    shop = workshop("M", across=2.0, needles=100)
    counts, diagnostics = solve(shop.design(straight(shop, "back", 50.5)))
    assert diagnostics == ()
    assert counts is not None
    assert counts.sizes[0].pieces[0].start == 100


def test_the_longer_side_decides_on_a_bed(workshop: type[Workshop]) -> None:
    shop = workshop("M", across=2.0, needles=100)
    levels = shop.levels("back", hem=0, top=40)
    found = told(shop.design(shop.piece("back", 40, levels, (shop.run("top", 12),), (shop.run("top", -12),))))
    # It leans, so that both sides together decide: 64 needles left of the middle of its start, 40 right of it.
    assert found.code == "wider-than-bed"
    assert "104 needles" in in_english(found).message


def test_a_one_sided_piece_leans_to_where_there_is_room(workshop: type[Workshop]) -> None:
    shop = workshop("M", across=2.0, needles=104)
    levels = shop.levels("back", hem=0, top=40)
    design = shop.design(shop.piece("back", 40, levels, (shop.run("top", 12),), (shop.run("top", -12),)))
    counts, found = solve(design)
    assert found == ()
    assert counts is not None
    piece = counts.sizes[0].piece("back")
    assert (piece.start, piece.start_left) == (80, 28)


def test_edges_joined_row_for_row_that_differ(workshop: type[Workshop]) -> None:
    shop = workshop()
    one, other = straight(shop, "back", 40, (30, 30, 34)), straight(shop, "front", 40)
    join = shop.join("back side", "front side")
    found = told(shop.design(one, other, joins=(join,)))
    assert found.code == "join-does-not-meet"
    assert found.sizes == ("L",)
    assert found.labels[0].span == join.origin.span
    assert in_english(found).notes == (
        "L: back side 102 rows, 34.0 cm; front side 90 rows, 30.0 cm: 12 rows apart",
        "L: `up` of the back is 34 cm up; `up` of the front is 30 cm up",
    )
    assert in_english(found).helps == (
        "the height of `up` of the back at 30.6 cm in L would work",
        "the height of `up` of the front at 33.4 cm in L would work",
    )
    assert [change.values for (change,) in found.changes] == [(("L", 30.6),), (("L", 33.4),)]


def test_the_change_proposed_does(workshop: type[Workshop]) -> None:
    shop = workshop()
    join = shop.join("back side", "front side")
    mended = shop.design(straight(shop, "back", 40, (30, 30, 30.7)), straight(shop, "front", 40), joins=(join,))
    assert solve(mended)[1] == ()


def test_where_two_conflicts_stand_side_by_side_both_are_in_the_proposal(workshop: type[Workshop]) -> None:
    shop = workshop("M")

    def steep(name: str, up: str, top: str) -> Piece:
        levels = shop.levels(name, hem=0, **{up: 2, top: 30})
        return shop.piece(name, 40, levels, (shop.run(up, 6, "steps", steps=12), shop.run(top, name="side")))

    # The join makes one programme of the two pieces, which have no level in common.
    join = shop.join("back side", "front side")
    found = told(shop.design(steep("back", "low", "high"), steep("front", "up", "top"), joins=(join,)))
    (proposed,) = in_english(found).helps
    assert proposed == (
        "change the height of `up` of the front, the rows from `low` to `high` of the back, the rows from `up` to `top` of the "
        "front and the height of `low` of the back"
    )


def test_lengths_beyond_the_easing(workshop: type[Workshop]) -> None:
    shop = workshop()
    back = straight(shop, "back", 40)
    sleeve = straight(shop, "sleeve", (56, 60, 70))
    found = told(shop.design(back, sleeve, joins=(shop.join("sleeve end", "back side + back side", 2.0),)))
    assert found.code == "join-does-not-meet"
    assert found.sizes == ("L",)
    assert "the width" not in in_english(found).message


def test_within_the_easing_counts_are_found_that_meet(workshop: type[Workshop]) -> None:
    """Nearest numbers alone would be too far apart."""
    shop = workshop("M", across=0.9, up=1.0)
    back = straight(shop, "back", 40, 31.2)
    sleeve = straight(shop, "sleeve", 62.6)
    join = shop.join("sleeve end", "back side + back side", 0.5)
    counts, diagnostics = solve(shop.design(back, sleeve, joins=(join,)))
    assert diagnostics == ()
    assert counts is not None
    (joined,) = counts.sizes[0].joins
    assert abs(joined.one_cm - joined.other_cm) <= 0.5


def test_too_many_moves_in_too_few_rows(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("sleeve", cuff=0, widest=(10, 5, 10), top=40)
    found = told(shop.design(shop.piece("sleeve", 20, levels, (shop.run("widest", 6, "steps", steps=12), shop.run("top")))))
    assert found.code == "counts-conflict"
    assert found.sizes == ("M",)
    assert in_english(found).message == (
        "because `widest` of the sleeve is 5 cm up, the edge of the sleeve to `widest` cannot move so far in so few rows: it moves "
        "once in 2 rows at most"
    )
    assert len(found.labels) == 2
    assert in_english(found).helps == ("the height of `widest` of the sleeve at 8.7 cm in M would work",)


def test_fashioned_shaping_needs_no_carriage(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    levels = shop.levels("sleeve", cuff=0, widest=5, top=40)
    way = ShapingWay("fashioned", 2)
    assert solve(shop.design(shop.piece("sleeve", 20, levels, (shop.run("widest", 6, way=way), shop.run("top")))))[1] == ()


def test_shoulders_of_fewer_stitches_than_groups(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("back", hem=0, tip=30, top=50)
    runs = (shop.run("tip"), shop.run("top"))
    found = told(shop.design(shop.piece("back", 30, levels, runs, neck=shop.neck("back", 18, 4, 9), held_from="tip")))
    assert found.code == "counts-conflict"
    assert "there cannot be a stitch for each two rows of the shoulders of the back" in in_english(found).message


def test_a_v_neck_that_is_too_shallow(workshop: type[Workshop]) -> None:
    shop = workshop()
    levels = shop.levels("front", hem=0, top=50)
    piece = shop.piece("front", 40, levels, (shop.run("top"),), neck=shop.neck("front", 18, 4, 0, "v"))
    found = told(shop.design(piece))
    assert found.code == "counts-conflict"
    assert "the edge of the neck of the front cannot move so far in so few rows" in in_english(found).message


def test_the_conflict_told_is_smallest(workshop: type[Workshop]) -> None:
    shop = workshop()
    one, other = straight(shop, "back", 40, 34), straight(shop, "front", 40)
    programme, _ = programme_of(shop.design(one, other, joins=(shop.join("back side", "front side"),)))
    found = _smallest(sorted(programme.rules, key=lambda r: r.kind))
    assert not feasible([line for rule in found for _, line in rule.constraints])
    for without in found:
        assert feasible([line for rule in found if rule is not without for _, line in rule.constraints])
    assert {rule.kind for rule in found} == {RuleKind.JOIN, RuleKind.WANTED}


def test_no_size_is_refused_that_could_be_counted_alone(workshop: type[Workshop]) -> None:
    """Two equal widths have to come out equal; each could be eased to a height of its own, but not both to both: they are let go,
    and it is said."""
    shop = workshop("S M", across=1.0, up=1.0)
    back, sleeve = straight(shop, "back", 40, (36, 44)), straight(shop, "sleeve", 40)
    for size in (0, 1):
        alone = workshop("S", across=1.0, up=1.0)
        one, other = straight(alone, "back", 40, back.levels[1].height[size]), straight(alone, "sleeve", 40)
        assert solve(alone.design(one, other, joins=(alone.join("sleeve end", "back side", 0.5),)))[1] == ()
    counts, (said,) = solve(shop.design(back, sleeve, joins=(shop.join("sleeve end", "back side", 0.5),)))
    assert counts is not None
    assert said.code == "sizes-not-graded"
    assert said.severity is Severity.WARNING
    assert said.labels
    starts = [garment.piece("sleeve").start for garment in counts.sizes]
    assert starts[0] != starts[1]


def test_a_band_of_more_stitches_than_needles(workshop: type[Workshop]) -> None:
    shop = workshop("M", needles=84)
    back = replace(straight(shop, "back", 40), start_way="waste")
    rib = shop.fabric("rib", 2.4, 3.0, 3)
    levels = shop.levels("front", hem=0, top=50)
    neck = shop.neck("front", 20, 20, 10)
    front = shop.piece("front", 40, levels, (shop.run("top"),), neck=neck)
    found = told(shop.design(back, front, bands=(shop.band("neckband", "front neck"),), rib=rib))
    assert found.code == "wider-than-bed"
    assert in_english(found).message.startswith("band `neckband` takes up to ")


def test_rows_are_not_joined_to_stitches_without_easing(workshop: type[Workshop]) -> None:
    shop = workshop()
    back, sleeve = straight(shop, "back", 40), straight(shop, "sleeve", 30)
    found = told(shop.design(back, sleeve, joins=(shop.join("sleeve end", "back side"),)))
    assert found.code == "join-does-not-meet"
    assert in_english(found).notes == ("sleeve end runs along stitches, back side along rows",)
    assert solve(shop.design(back, sleeve, joins=(shop.join("sleeve end", "back side", 1.0),)))[1] == ()


def test_rows_that_cannot_meet_are_counted_beside_widths_solved_apart(workshop: type[Workshop]) -> None:
    # The half shares its height with the back, and nothing its width, which the length of a side is reckoned with all the same.
    shop = workshop("M", across=2.0, up=3.0)
    back = straight(shop, "back", 40.0)
    half = shop.piece("half", 32.0, shop.levels("half", hem=0, top=60), (shop.run("top", name="side"),), (shop.run("top"),))
    join = replace(shop.join("back side", "half side"), one=(EdgeName("back", "side right"),))
    found = told(shop.design(back, half, joins=(join,)))
    assert found.code == "join-does-not-meet"
    assert in_english(found).notes[0] == "M: back side right 90 rows, 30.0 cm; half side 180 rows, 60.0 cm: 90 rows apart"
