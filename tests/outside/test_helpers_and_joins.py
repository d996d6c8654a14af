"""Published figures of hems, waste yarn, holding, ribs by hand and lines that run over several pieces, read off the moves that
the bed was given and the fabric it made."""

from __future__ import annotations

from collections import Counter
from itertools import groupby, pairwise

import pytest

from tests.outside.worked import compiled, knitted, proven
from walewright.bed.loops import LoopKind
from walewright.knit import operations as op
from walewright.pipeline import Outcome
from walewright.report.english import in_english
from walewright.report.model import Severity

HEMMED = """
fabric hemming
    stocking stitch in wool at tension 4
    swatch 28 stitches by 40 rows = 10 cm by 10 cm, 10 g
edging hem in {fabric}, {rows} rows deep, {kind}, knitted first

piece skirt in plain{odd}
    levels hem 0 cm, top 40 rows
    start {stitches} stitches wide {start}, with hem
    end on waste yarn

piece yoke in plain{odd}
    levels hem 0 cm, top 40 rows
    start {stitches} stitches wide with e-wrap
    end on waste yarn

join skirt end to yoke end, linked
"""
"""In `worked.HEAD` the main fabric is at tension 5."""


def hemmed(kind: str = "folded", rows: int = 8, fabric: str = "hemming", stitches: int = 60) -> Outcome:
    odd = ", centre stitch" if stitches % 2 else ""
    return proven(HEMMED.format(kind=kind, rows=rows, fabric=fabric, odd=odd, stitches=stitches, start="on waste yarn"))


def moves(outcome: Outcome, block: str) -> tuple[op.Operation, ...]:
    return next(b for b in outcome.works[0].blocks if b.name == block).operations


def stretches(outcome: Outcome, block: str) -> list[tuple[str, str, int]]:
    """(yarn, tension, rows) of what is knitted, one after the other."""
    yarn, rows = ("", ""), []
    for move in moves(outcome, block):
        if isinstance(move, op.UseYarn):
            yarn = (move.yarn, move.tension)
        elif isinstance(move, op.Pass):
            rows.append(yarn)
    return [(*key, len(list(of))) for key, of in groupby(rows)]


# ----------------------------------------------------------------- hems


def test_a_hem_folded_on_the_machine() -> None:
    """Source: machine knitting site, hems, https://clearwaterknits.com/hems: 16 rows one number tighter than the main knitting, the
    joining row two numbers above the hem's setting, then main again: main 5, hem 4, joining row 6."""
    own = [(tension, rows) for yarn, tension, rows in stretches(hemmed(), "skirt") if yarn == "wool"]
    assert own == [("4", 16), ("6", 1), ("5", 40)]


def test_a_picot_hem_has_its_eyelets_half_way_over_an_odd_number() -> None:
    """Source: machine knitting site, hems, https://clearwaterknits.com/hems: 8 rows, every 2nd stitch moved, 8 rows; the empty
    needles stay in work; an odd number of stitches."""
    outcome = hemmed("picot", stitches=61)
    row, moved = 0, list[tuple[int, int]]()
    for move in moves(outcome, "skirt"):
        if isinstance(move, op.SetCounter):
            row = move.rows
        elif isinstance(move, op.Pass):
            row += 1
        elif isinstance(move, op.Transfer):
            moved.append((row, move.first))
        elif isinstance(move, op.HangFeet):
            break
    assert {at for at, _ in moved} == {8}
    needles = sorted(needle for _, needle in moved)
    assert {b - a for a, b in pairwise(needles)} == {2}
    assert len(needles) == (61 - 1) // 2
    skirt = knitted(outcome, "skirt")
    assert {course.count for course in skirt.passes(1)} == {61}


# ----------------------------------------------------------------- waste yarn


def test_waste_rows_and_one_row_of_ravel_cord_before_a_start() -> None:
    """Source: machine knitting site, waste yarn and ravel cord, https://clearwaterknits.com/waste-yarn-and-ravel-cord: usually 7
    or 8 rows of waste yarn, and then one row of ravel cord."""
    (waste, _, rows), (ravel, _, one), *_ = stretches(hemmed(), "skirt")
    assert (waste, ravel, one) == ("waste", "ravel", 1)
    assert 7 <= rows <= 8


@pytest.mark.parametrize("bed", ["fine", "standard", "mid", "bulky"])
def test_waste_rows_after_open_loops(bed: str) -> None:
    """Common practice: loops that are to be hung again are knitted off with 6 to 10 rows of waste yarn."""
    outcome = proven(HEMMED.format(kind="folded", rows=4, fabric="hemming", odd="", stitches=40, start="on waste yarn"), bed=bed)
    put_off = [move.rows for move in moves(outcome, "yoke") if isinstance(move, op.OntoWaste)]
    assert len(put_off) == 1
    assert 6 <= put_off[0] <= 10


def test_no_loop_on_waste_yarn_is_left_there() -> None:
    """Source: machine knitting site, waste yarn and ravel cord, https://clearwaterknits.com/waste-yarn-and-ravel-cord: waste yarn
    is not left in the garment. What is put on it and taken up by nothing is refused."""
    alone = compiled(
        "\npiece strip in plain\n    levels hem 0 cm, top 40 rows\n    start 40 stitches wide with e-wrap\n    end on waste yarn\n"
    )
    assert "loops-left-open" in [d.code for d in alone.diagnostics]
    assert not alone.proven
    assert proven(HEMMED.format(kind="folded", rows=4, fabric="hemming", odd="", stitches=40, start="on waste yarn")).proven


# ----------------------------------------------------------------- linking


def test_a_linking_row_and_its_cast_off_are_looser() -> None:
    """Common practice: a cast-off is one to three numbers looser than the knitting, so that the edge is no tighter. Linked, two
    layers are closed by it: as many loops as each piece has, at one setting."""
    outcome = hemmed()
    ((yarn, tension, rows),) = stretches(outcome, "skirt end link")
    assert (yarn, rows) == ("wool", 1)
    assert 5 + 1 <= float(tension) <= 5 + 3
    link = knitted(outcome, "skirt end link")
    assert Counter(taken.piece for taken in link.links) == {"skirt": 60, "yoke": 60}


# ----------------------------------------------------------------- holding

HELD = """
piece part in plain
    levels hem 0 cm, base 20 rows, tip {tip} rows, top 90 rows
    start 80 stitches wide with e-wrap
    wedge {wide} stitches wide at {edge} from base to tip, {kind}
    end cast off
"""


def held(outcome: Outcome) -> list[tuple[str, int, bool]]:
    """(edge, needles, whether the carriage is there) of each time that needles at an edge are held."""
    carriage, found = "right", []
    for move in moves(outcome, "part"):
        if isinstance(move, op.MoveCarriage | op.Pass):
            carriage = move.to
        elif isinstance(move, op.Hold):
            edge = "left" if move.last < 0 else "right"
            found.append((edge, move.last - move.first + 1, carriage == edge))
    return found


@pytest.mark.parametrize("edge", ["both edges", "the left edge", "the right edge"])
@pytest.mark.parametrize(("kind", "tip"), [("held in", 40), ("held in and let out", 60), ("held in and let out", 80)])
def test_at_most_one_needle_is_held_at_the_side_of_the_carriage(edge: str, kind: str, tip: int) -> None:
    """Source: university handout on machine knitting, http://creativemachineknitting.blogspot.co.uk/p/blog-page_10.html: at most
    one needle may go to hold on the side where the carriage is."""
    groups = held(proven(HELD.format(edge=edge, kind=kind, tip=tip, wide=30)))
    assert len(groups) >= (tip - 20) // (4 if "out" in kind else 2) - 1
    assert all(needles <= 1 for _, needles, at_carriage in groups if at_carriage)
    assert any(needles > 1 for _, needles, _ in groups)


@pytest.mark.parametrize(("stitches", "possible"), [(10, True), (6, False)])
def test_the_steepest_slope_by_holding(stitches: int, possible: bool) -> None:
    """Source: university handout on machine knitting, http://creativemachineknitting.blogspot.co.uk/p/blog-page_10.html: one needle
    every two rows is the steepest slope: 10 over 20 rows."""
    outcome = compiled(HELD.format(edge="the right edge", kind="held in", tip=40, wide=stitches))
    if not possible:
        assert not outcome.proven
        assert {d.code for d in outcome.diagnostics} & {"wedge-too-steep", "counts-conflict"}
        return
    assert outcome.proven
    # The last group is what still knits when all the others are held.
    assert [needles for _, needles, _ in held(outcome)] == [1] * 9


def test_as_many_rows_back_as_out() -> None:
    """Source: university handout on machine knitting, http://creativemachineknitting.blogspot.co.uk/p/blog-page_10.html:
    returning, as many rows are worked as going out, and then one over all needles."""
    fabric = knitted(proven(HELD.format(edge="the right edge", kind="held in and let out", tip=60, wide=20)), "part")
    counts = [sum(course.count for course in fabric.passes(row)) for row in range(1, fabric.rows + 1)]
    shortest = [row for row, count in enumerate(counts) if count == min(counts)]
    short = [row for row, count in enumerate(counts) if count < 80]
    assert len(short) == short[-1] - short[0] + 1
    out, back = shortest[0] - short[0], short[-1] - shortest[-1]
    assert abs(out - back) <= 1
    assert counts[short[-1] + 1] == 80


# ----------------------------------------------------------------- ribs by hand


@pytest.mark.parametrize("every", [2, 3])
def test_every_second_or_third_wale_is_latched_up(every: int) -> None:
    """Common practice: on a single bed a rib is made by hand, every 2nd or 3rd wale dropped and re-formed on the other face."""
    outcome = proven(
        f"""
fabric rib
    latched rib every {every}{"nd" if every == 2 else "rd"} needle in wool at tension 4
    swatch 28 stitches by 40 rows = 10 cm by 10 cm, 10 g

piece welt in rib
    levels hem 0 cm, top 20 rows
    start 60 stitches wide with e-wrap
    end cast off
"""
    )
    fabric = knitted(outcome, "welt")
    rows = Counter(fabric.slots[loop] for loop, kind in enumerate(fabric.kinds) if kind == LoopKind.KNIT and fabric.faces[loop])
    slots = sorted(rows)
    assert set(rows.values()) == {20}
    # From the middle outwards, so at the middle two turned wales are as far apart as the two halves begin.
    assert Counter(b - a for a, b in pairwise(slots)).most_common(1)[0][0] == every
    # The outermost needle of either side is never dropped.
    assert 60 / every - 2 <= len(slots) <= 60 / every


# ----------------------------------------------------------------- lines over several pieces

PULLOVER = """
piece back in plain
    levels hem 0 cm, underarm 40 rows, top 100 rows
    start 90 stitches wide with e-wrap
    edges straight to underarm called side
    edges straight to top called armhole
    neck 30 stitches wide, 4 rows deep, square
    end on waste yarn

piece front in plain
    levels hem 0 cm, underarm 40 rows, top 100 rows
    start 90 stitches wide with e-wrap
    edges straight to underarm called side
    edges straight to top called armhole
    neck 30 stitches wide, 60 rows deep, square
    end on waste yarn

join back shoulder_left to front shoulder_right, linked
band neckband with band along {neck}
join back shoulder_right to front shoulder_left, linked
band left_band with band along {left}
join back side to front side
"""


def picked_up(outcome: Outcome, band: str) -> Counter[tuple[str, str]]:
    assert outcome.counts is not None
    made = next(b for b in outcome.counts.sizes[0].bands if b.name == band)
    found: Counter[tuple[str, str]] = Counter()
    for p in made.pick_ups:
        found[p.edge.piece, p.edge.edge] += p.stitches
    assert sum(found.values()) == made.stitches
    return found


def pullover(neck: str = "back neck + front neck", left: str = "back armhole_left + front armhole_right") -> Outcome:
    return compiled(PULLOVER.format(neck=neck, left=left), 21, 28)


def test_the_neck_line_of_a_pullover_with_one_shoulder_joined() -> None:
    """Source: online knitting handbook, chapter on neck bands, http://studioknits.com/bookpage82.htm: along a straight row edge 3
    stitches for 4 rows, 45 along 60; along loops stitch for stitch. Here round front and back, on both sides of each."""
    outcome = pullover()
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]
    assert picked_up(outcome, "neckband") == {("back", "neck"): 3 + 30 + 3, ("front", "neck"): 45 + 30 + 45}
    made = knitted(outcome, "neckband")
    assert Counter(link.piece for link in made.links) == {"back": 36, "front": 120}
    assert len({(link.piece, link.loops) for link in made.links}) == len(made.links)


def test_the_armhole_line_of_a_pullover_over_its_shoulder() -> None:
    """Source: online knitting handbook, chapter on neck bands, http://studioknits.com/bookpage82.htm: 3 stitches for 4 rows of a
    straight edge: 45 along the 60 rows of the back and 45 along those of the front."""
    outcome = pullover()
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]
    assert picked_up(outcome, "left_band") == {("back", "armhole"): 45, ("front", "armhole"): 45}
    # Hung from one underarm over the shoulder to the other.
    rows = [knitted(outcome, link.piece).course_of(link.loops[0]).counter for link in knitted(outcome, "left_band").links]
    assert rows[:45] == sorted(rows[:45])
    assert rows[45:] == sorted(rows[45:], reverse=True)
    assert rows[44] >= 98
    assert rows[45] >= 98


def test_a_line_that_is_a_ring_already_is_refused_with_another_way_to_begin() -> None:
    """Common practice: a band is picked up flat, with one seam of its ring still open. Begun at the shoulder, an armhole is a
    ring once the shoulder is joined; what is proposed can be hung."""
    (told,) = [d for d in pullover(left="front armhole_right + back armhole_left").diagnostics if d.severity is Severity.ERROR]
    assert told.code == "line-closed"
    along = in_english(told).helps[0].split("`along ")[1].rstrip("`")
    assert pullover(left=along).proven


CARDIGAN = """
piece back in plain
    levels hem 0 cm, underarm 60 rows, top 100 rows
    start 96 stitches wide with e-wrap
    edges straight to underarm called side
    edges straight to top called armhole
    neck 24 stitches wide, 2 rows deep, square, 24 stitches flat
    end on waste yarn

piece right_front in plain, centre stitch
    levels hem 0 cm, underarm 60 rows, throat 64 rows, top 100 rows
    start 45 stitches wide with e-wrap
    right edge straight to underarm called side
    right edge straight to top called armhole
    left edge straight to throat called front
    left edge in 1 stitch every 4 rows to top, fashioned 2 in called neckline
    end on waste yarn

piece left_front in plain, mirror of right_front

join back shoulder_left to right_front end, linked
join back shoulder_right to left_front end, linked
band border with band along {along}
join back side_left to right_front side
join back side_right to left_front side
"""

UP_AND_DOWN = "right_front front + right_front neckline + back neck + left_front neckline + left_front front"


def test_the_border_of_a_cardigan_up_one_front_and_down_the_other() -> None:
    """Source: online knitting handbook, chapter on neck bands, http://studioknits.com/bookpage82.htm: 3 stitches for 4 rows of a
    straight edge, 4 for 5 along a slope decreased every 4th row: 48 along 64 rows, 28.8 along 36; the back neck's loops one by
    one."""
    outcome = compiled(CARDIGAN.format(along=UP_AND_DOWN), 21, 28)
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]
    found = picked_up(outcome, "border")
    assert found["back", "neck"] == 24 + 2 + 2
    for front in ("right_front", "left_front"):
        assert found[front, "front"] == 64 * 3 / 4
        assert found[front, "neckline"] == pytest.approx(36 * 4 / 5, abs=1)
    rows = [
        knitted(outcome, "right_front").course_of(loops[0]).counter for piece, loops in links(outcome) if piece == "right_front"
    ]
    down = [knitted(outcome, "left_front").course_of(loops[0]).counter for piece, loops in links(outcome) if piece == "left_front"]
    assert rows == sorted(set(rows))
    # Both fronts give the same rows: one is the other's mirror image.
    assert down == rows[::-1]


def links(outcome: Outcome) -> list[tuple[str, tuple[int, ...]]]:
    return [(link.piece, link.loops) for link in knitted(outcome, "border").links]


def test_a_border_in_the_other_order_is_refused_with_the_one_that_can_be_hung() -> None:
    """Common practice: a border is picked up in one go, from the hem of one front to that of the other, each stretch where the
    last one ends."""
    away = CARDIGAN.format(along=" + ".join(reversed(UP_AND_DOWN.split(" + "))))
    (told,) = [d for d in compiled(away, 21, 28).diagnostics if d.severity is Severity.ERROR]
    assert told.code == "line-not-in-order"
    assert in_english(told).helps == (f"write `along {UP_AND_DOWN}`",)
