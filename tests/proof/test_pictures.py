"""Windows of the loop graph: where they lie, and that each loop is told as the bed made it."""

from __future__ import annotations

from dataclasses import replace

from tests.bed.by_hand import Ops, rows
from tests.proof.charted_by_hand import BEGIN, DESIGN, END, HERE, PLACED, SIZED, garment, key, knitted, lace
from walewright.bed.model import Float
from walewright.design.model import Chart
from walewright.knit.operations import Cross, LatchUp, PictureRow
from walewright.proof.model import FabricPicture, PictureLoop
from walewright.proof.pictures import MOST, pictures


def drawn(ops: Ops | None = None, **changed: object) -> FabricPicture:
    sized = replace(SIZED, charts=(replace(PLACED, **changed),))
    made = knitted(lace() if ops is None else ops)
    (found,) = pictures(DESIGN, [garment(sized)], [{"cloth": made}])
    return found


def at(found: FabricPicture, column: int, row: int) -> PictureLoop:
    (loop,) = [loop for loop in found.loops if (loop.column, loop.row) == (column, row)]
    return loop


def test_a_fabric_is_shown_two_repeats_each_way() -> None:
    found = drawn()
    assert (found.fabric, found.columns, found.rows) == ("lace", 10, 4)
    assert {(loop.column, loop.row) for loop in found.loops} == {(c, r) for c in range(10) for r in range(4)}
    assert [loop.kind for loop in found.loops if loop.row == 0].count("bar") == 2


def test_a_moved_loop_leads_to_where_it_was_made() -> None:
    found = drawn()
    # The chart's hole is on its second column, the decrease on the third.
    assert at(found, 1, 0).kind == "bar"
    assert at(found, 1, 0).through == ()
    assert sorted(at(found, 2, 0).through) == [(1, -1), (2, -1)]
    assert at(found, 3, 0).through == ((3, -1),)
    assert at(found, 1, 1).through == ((1, 0),)


def test_a_latched_stitch_shows_its_other_face() -> None:
    found = drawn([*BEGIN, *rows(4, "left"), LatchUp(-3, 2), *rows(6, "left"), *END])
    assert (at(found, 2, 0).face, at(found, 2, 1).face, at(found, 2, 2).face) == (1, 1, 0)


def test_a_window_begins_on_a_repeat_near_the_middle() -> None:
    one = drawn(first=-6, last=5, start=-4, edge=0, repeats=2)
    assert one.columns == 10
    narrow = replace(DESIGN.charts[0], rows=("O>", ".."), repeat=2)
    design = replace(DESIGN, charts=(narrow,))
    made = knitted(lace())
    (found,) = pictures(design, [garment()], [{"cloth": made}])
    assert found.columns == 4
    # 10 needles from L 5 on hold 5 repeats; of those the second and third from the left are the middle.
    begins = min(made.slots[i] for i in range(len(made.slots))) + 1 + 2
    assert begins == -3
    assert at(found, 2, 0).kind == ("bar" if -1 in (-4, 1) else "knit")


def test_a_window_is_never_larger_than_it_may_be() -> None:
    tall = replace(DESIGN, charts=(replace(DESIGN.charts[0], rows=(".....",) * 30),))
    (found,) = pictures(tall, [garment(replace(SIZED, charts=(replace(PLACED, to_row=80),)))], [{"cloth": knitted(lace())}])
    assert found.rows == MOST


def test_a_motif_has_a_margin() -> None:
    spot = Chart("spot", ("...", "..."), (key(".", "knit"),), 0, 0, 0, False, HERE)
    design = replace(DESIGN, fabrics=DESIGN.fabrics[:1], charts=(spot,))
    placed = replace(PLACED, chart="spot", fabric="", area="panel", from_row=4, to_row=6, first=-1, last=1, start=-1)
    sized = replace(SIZED, charts=(placed,))
    (found,) = pictures(design, [garment(sized)], [{"cloth": knitted(lace())}])
    assert (found.fabric, found.columns, found.rows) == ("spot", 7, 6)


def test_stripes_are_shown_twice() -> None:
    striped = replace(DESIGN.fabrics[0], name="stripes", stitch="stripes", stripes=(("wool", 2), ("navy", 2)))
    piece = replace(DESIGN.pieces[0], fabric="stripes", motifs=())
    design = replace(DESIGN, fabrics=(striped,), pieces=(piece,), charts=())
    (found,) = pictures(design, [garment(replace(SIZED, charts=()))], [{"cloth": knitted(lace())}])
    assert (found.fabric, found.columns, found.rows) == ("stripes", 12, 8)
    assert at(found, 0, 0).column == 0


def test_floats_are_cut_at_the_window() -> None:
    made = replace(knitted(lace()), floats=(Float(3, "navy", -6, -4), Float(4, "navy", 0, 1), Float(9, "navy", 0, 1)))
    (found,) = pictures(DESIGN, [garment()], [{"cloth": made}])
    assert found.floats == ((0, 0, 1, "navy"), (1, 5, 6, "navy"))


def test_the_group_hung_first_lies_behind_for_the_knitter() -> None:
    """It is in front on the right side, which faces away."""
    for front, over in (("left", [True, True, False, False]), ("right", [False, False, True, True])):
        found = drawn([*BEGIN, *rows(2, "left"), Cross(-3, 0, 2, front), *rows(8, "left"), *END])
        row = [loop for loop in found.loops if loop.row == 0]
        assert [loop.over for loop in row if 2 <= loop.column <= 5] == over
        assert not any(loop.over for loop in row if not 2 <= loop.column <= 5)
        assert at(found, 2, 0).through == ((4, -1),)
        assert not any(loop.over for loop in found.loops if loop.row)


def test_in_picture_knitting_each_loop_has_its_block_s_yarn() -> None:
    blocks = (("wool", -6, -3), ("navy", -2, 1), ("wool", 2, 5))
    found = drawn([*BEGIN, *rows(2, "left"), PictureRow("left", "4", blocks), *rows(7, "right"), *END])
    assert [loop.yarn for loop in found.loops if loop.row == 0] == ["wool"] * 3 + ["navy"] * 4 + ["wool"] * 3
