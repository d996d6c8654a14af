"""Edges shaped along lines within the piece: where the lines lie, and what cannot be."""

from __future__ import annotations

import pytest

from tests.design.shaped import design, front, only, piece, told
from walewright.design.model import InsideLine, ShapingWay

IN = "edges slope to 34 cm wide at low, shaped"
"""From 40 cm, 3 cm at each side; a stitch is 5 mm. At most 20 stitches are moved without a warning: 10 cm."""


def lines(*written: str, **options: str) -> tuple[InsideLine, ...]:
    """Those of the first run of the left edge."""
    return front(*written, **options).left[0].lines


def test_a_line_lies_so_far_from_the_centre_or_the_edge() -> None:
    assert lines(f"{IN} 12 cm from centre") == (InsideLine("centre", (12.0, 12.0)),)
    assert lines(f"{IN} 4 cm from the edge") == (InsideLine("edge", (4.0, 4.0)),)


def test_an_edge_shaped_along_lines_moves_as_far_as_it_is_led() -> None:
    run = front(f"{IN} 12 cm from centre").left[0]
    assert (run.change, run.way) == ((-3.0, -3.0), ShapingWay("inside", at_once=1))


def test_two_lines_are_named_from_the_centre_outwards() -> None:
    made = front(f"{IN} 3 cm from the edge and 12 cm from centre").left[0]
    assert [line.of for line in made.lines] == ["centre", "edge"]
    assert made.way.at_once == 2


def test_places_are_counted_from_the_centre_of_the_piece() -> None:
    start = "19 cm left to 1 cm right of centre with e-wrap"
    run = front("left edge slope by -2 cm at low, shaped 14 cm from centre", start=start).left[0]
    # The middle of the start is 9 cm left of the centre line.
    assert run.lines == (InsideLine("centre", (5.0, 5.0)),)
    other = front("right edge slope by -2 cm at low, shaped 6 cm left of centre", start=start).right[0]
    assert other.lines == (InsideLine("centre", (3.0, 3.0)),)


def test_each_edge_has_its_line_on_its_own_side_of_a_centre_that_is_not_in_the_middle() -> None:
    start = "25 cm left to 15 cm right of centre with e-wrap"
    made = design(piece("edges slope by -2 cm at low, shaped 6 cm from centre", start=start), head=HEAD_WIDE).piece("front")
    # The middle of the start is 5 cm left of the centre line.
    (line,) = made.left[0].lines
    assert (line.at("left"), line.at("right")) == ((1.0, 1.0), (11.0, 11.0))
    assert made.symmetric
    beside = piece("edges slope by -2 cm at low, shaped 6 cm from centre", start="35 cm left to 5 cm left of centre with e-wrap")
    assert [(d.code, d.case) for d in [only(beside)]] == [("line-inside", "no-room")]
    crossed = piece("edges slope by -2 cm at low, shaped 4 cm from centre and 13 cm from the edge", start=start)
    assert [(d.code, d.case) for d in [only(crossed)]] == [("line-inside", "one-place")]


def test_an_edge_may_have_more_lines_than_two() -> None:
    wide = piece(f"{IN} 3 cm from centre and 6 cm from centre and 2 cm from the edge")
    run = design(wide, head=HEAD_WIDE).piece("front").left[0]
    assert [line.of for line in run.lines] == ["centre", "centre", "edge"]
    assert run.way.at_once == 3


def test_a_mirror_image_has_the_lines_of_both_edges_turned() -> None:
    start = "25 cm left to 15 cm right of centre with e-wrap"
    model = piece("edges slope by -2 cm at low, shaped 6 cm from centre", name="model", start=start)
    parts = (model, "piece image in plain, mirror of model\n", "join image end to model end")
    made = design(*parts, head=HEAD_WIDE).piece("image")
    (line,) = made.right[0].lines
    assert (line.at("left"), line.at("right")) == ((11.0, 11.0), (1.0, 1.0))


def test_a_line_may_lie_beyond_the_centre() -> None:
    run = front("left edge slope by -2 cm at low, shaped 2 cm right of centre", start="16 cm wide with e-wrap").left[0]
    assert run.lines == (InsideLine("centre", (-2.0, -2.0)),)


@pytest.mark.parametrize(
    ("written", "case"),
    [
        (("edges curve to 34 cm wide at low, shaped 12 cm from centre",), "slope"),
        (("edges straight to low", "edges cast off 1 cm then slope to 34 cm wide at middle, shaped 12 cm from centre"), "slope"),
        ((f"{IN} 6 cm from centre and 9 cm from centre and 12 cm from centre",), "no-room"),
        ((f"{IN} 6 cm from centre and 7 cm from centre and 14 cm from centre",), "no-room"),
        ((f"{IN} 12 cm left of centre",), "one-place"),
        ((f"{IN} 16 cm from centre",), "no-room"),
        ((f"{IN} 38 cm from the edge",), "no-room"),
        ((f"{IN} 12 cm from centre and 15 cm from centre",), "no-room"),
        ((f"{IN} 12 cm from centre", "fabric rib from hem to middle"), "fabric"),
        (("opening vent 2 cm wide from low to high", "    edges slope by 2 cm at high, shaped 2 cm from the edge"), "opening"),
    ],
)
def test_what_cannot_be(written: tuple[str, ...], case: str) -> None:
    told = only(piece(*written))
    assert (told.code, told.case) == ("line-inside", case)


def test_lines_of_both_edges_do_not_cross_in_the_same_rows() -> None:
    assert told(piece(f"{IN} 0 cm from centre"), head=HEAD_WIDE) == []

    def with_left(*right: str) -> list[str]:
        left = "left edge slope by -2 cm at low, shaped 3 cm right of centre"
        return told(piece(left, *right, start="30 cm wide with e-wrap"), head=HEAD_WIDE)

    right = "right edge slope by -2 cm at"
    assert with_left(f"{right} low, shaped 3.5 cm right of centre") == []
    assert with_left(f"{right} low, shaped 3 cm right of centre") == []
    assert with_left(f"{right} low, shaped 2.9 cm right of centre") == ["line-inside"]
    # Above the other's rows there is nothing to keep clear of; a line led by the edge comes nearer with it.
    assert with_left("right edge straight to low", f"{right} middle, shaped 2 cm right of centre") == []
    assert with_left(f"{right} low, shaped 9 cm from the edge") == []
    assert with_left(f"{right} low, shaped 10 cm from the edge") == ["line-inside"]


def test_a_line_is_shaped_by_itself() -> None:
    assert told(piece(f"{IN} 12 cm from centre", "fabric rib from hem to top, 4 cm wide")) == ["stretches-overlap"]
    assert told(
        piece(
            "edges straight to middle",
            "edges slope to 34 cm wide at high, shaped 14 cm from centre",
            "opening vent 2 cm wide from low to high",
        )
    ) == ["while-parted"]
    above = ("edges straight to high", "edges slope to 34 cm wide at top, shaped 12 cm from centre")
    assert told(piece(*above, "fabric rib from hem to high", "opening vent 2 cm wide from low to high")) == []


def test_a_motif_keeps_off() -> None:
    chart = "chart star\n    key . knit\n    key O hole\n    key / two from left\n    | . . O / . . |\n    | . . . . . . |\n"
    there = piece(f"{IN} 12 cm from centre", "motif star at hem")
    above = piece(f"{IN} 12 cm from centre", "motif star at middle")
    assert told(chart, there) == ["line-inside"]
    assert told(chart, above) == []


def test_many_stitches_are_warned_of() -> None:
    # 12 cm are 24 stitches: more than a tool of 3 prongs moves well.
    assert told(piece(f"{IN} 8 cm from centre")) == ["many-stitches-moved"]
    assert told(piece(f"{IN} 8 cm from centre"), head=HEAD_WIDE) == []


def test_a_mirror_image_has_its_lines_on_the_other_side() -> None:
    model = piece("left edge slope by -2 cm at low, shaped 14 cm left of centre", name="model")
    image = "piece image in plain, mirror of model\n    slot pocket 4 cm wide at middle, cast off\n"
    made = design(model, image, "join image end to model end").piece("image")
    assert made.right[0].lines == (InsideLine("centre", (14.0, 14.0)),)


HEAD_WIDE = """\
pattern "Trial"
sizes S M
    length 40 42 cm
machine bulky
    prongs 1 2 7
yarn wool "wool", 100 g = 300 m
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 20 cm by 15 cm
"""
