"""Places counted from the centre line, wherever it lies on a piece, and shapes used at one edge."""

from __future__ import annotations

import pytest

from tests.design.dump import dump
from tests.design.shaped import design, front, only, piece, told

LEFT = "20 cm left to 2 cm right of centre with e-wrap"
"""A front 22 cm wide, its middle 9 cm left of the centre line."""


def changes(runs: tuple) -> list[float]:
    """How far each run goes, in the first size."""
    return [run.change[0] for run in runs]


def test_a_start_may_say_where_the_centre_line_lies() -> None:
    made = front(start=LEFT)
    assert made.start_width == (22.0, 22.0)
    assert front(start="30 cm left to 8 cm left of centre with e-wrap").start_width == (22.0, 22.0)


def test_one_edge_is_led_to_a_place() -> None:
    made = front("left edge slope to 15 cm from centre at low", "right edge curve to 12 cm from centre at low")
    assert (changes(made.left)[0], changes(made.right)[0]) == (-5.0, -8.0)


def test_of_a_piece_beside_the_centre_places_are_on_its_side() -> None:
    made = front("left edge slope to 15 cm from centre at low", "right edge slope to 8 cm from centre at low", start=LEFT)
    # From 20 to 15 cm left of the centre line, and from 2 cm right to 8 cm left of it.
    assert (changes(made.left)[0], changes(made.right)[0]) == (-5.0, -10.0)
    turned = "2 cm left to 20 cm right of centre with e-wrap"
    other = front("right edge slope to 15 cm from centre at low", "left edge slope to 8 cm from centre at low", start=turned)
    assert (changes(other.right), changes(other.left)) == (changes(made.left), changes(made.right))


def test_a_place_may_name_its_side() -> None:
    made = front("right edge slope to 1 cm left of centre at low", "left edge slope to 22 cm left of centre at low", start=LEFT)
    assert (changes(made.right)[0], changes(made.left)[0]) == (-3.0, 2.0)
    across = front("left edge slope to 5 cm right of centre at low")
    assert changes(across.left)[0] == -25.0


def test_a_place_goes_on_from_the_place_before() -> None:
    made = front("left edge slope to 15 cm from centre at low", "left edge slope to 18 cm from centre at middle")
    assert changes(made.left)[:2] == [-5.0, 3.0]


def test_both_edges_from_the_centre_are_a_width() -> None:
    assert dump(design(piece("edges slope to 15 cm from centre at low"))) == dump(design(piece("edges slope to 30 cm wide at low")))


def test_a_place_may_be_free() -> None:
    made = front("left edge slope to between 14 cm and 16 cm from centre at low", "right edge straight to low")
    run = made.left[0]
    assert (run.change, run.most) == ((-6.0, -6.0), (-4.0, -4.0))
    crossed = front("right edge slope to between 4 cm and 6 cm from centre at low", "left edge straight to low", start=LEFT)
    # Further from the centre is further in.
    assert (crossed.right[0].change, crossed.right[0].most) == ((-8.0, -8.0), (-6.0, -6.0))


def test_what_lies_in_a_piece_is_counted_from_its_centre_too() -> None:
    lines = (
        "slot pocket 4 cm wide at low, 10 cm left of centre, cast off",
        "opening vent 2 cm wide from middle to high, 6 cm left of centre",
        "    edges slope by 1 cm at high",
        "fabric rib from hem to top, 3 cm wide, 14 cm left of centre",
    )
    made = front(*lines[:3], start=LEFT)
    assert (made.slots[0].centre[0], made.openings[0].centre[0]) == (-1.0, 3.0)


def test_edges_of_a_gap_are_led_to_places_of_the_piece() -> None:
    lines = ("opening vent 2 cm wide from middle to top, 6 cm left of centre", "    left edge slope to 9 cm left of centre at top")
    assert changes(front(*lines).openings[0].left)[0] == 2.0
    own = ("opening vent 2 cm wide from middle to top", "    left edge slope to 9 cm from centre at top")
    assert changes(front(*own).openings[0].left)[0] == 8.0


@pytest.mark.parametrize(
    ("lines", "start", "code"),
    [
        (("edges slope to 9 cm left of centre at low",), "40 cm wide with e-wrap", "edges-to-one-place"),
        (("edges slope to 9 cm from centre at low",), LEFT, "edges-to-one-place"),
        (("left edge slope to -1 cm from centre at low",), LEFT, "not-positive"),
        ((), "4 cm left to 8 cm left of centre with e-wrap", "not-positive"),
        (("left edge slope to 3 cm right of centre at low",), LEFT, "no-width-left"),
        (("left edge slope to 20 cm wide at low",), LEFT, "width-of-one-edge"),
    ],
)
def test_what_cannot_be(lines: tuple[str, ...], start: str, code: str) -> None:
    assert only(piece(*lines, start=start)).code == code


ARMHOLE = """
shape armhole(chest, tip, across)
    edges cast off 2 cm then curve to across wide at chest called armhole
    edges straight to tip
    shoulders held from tip
"""


def test_a_shape_used_at_one_edge_leads_that_one() -> None:
    used = design(
        ARMHOLE,
        piece("left edge straight to low", "use armhole at the left edge, chest middle, tip high, across 30 cm", start=LEFT),
    )
    written = design(
        piece(
            "left edge straight to low",
            "left edge cast off 2 cm then curve to 15 cm from centre at middle called armhole",
            "left edge straight to high",
            "left shoulder held from high",
            start=LEFT,
        )
    )
    assert dump(used) == dump(written)


def test_a_shape_that_uses_another_hands_the_edge_on() -> None:
    outer = "shape body(low, chest, tip, across)\n    edges straight to low\n    use armhole, chest chest, tip tip, across across\n"
    made = design(ARMHOLE, outer, piece("use body at the right edge, low low, chest middle, tip high, across 30 cm"))
    assert changes(made.piece("front").right)[:2] == [0.0, -5.0]
    assert changes(made.piece("front").left) == [0.0]


def test_an_edge_that_a_shape_does_not_ask_for_is_told() -> None:
    split = "shape split(low)\n    left edge slope by 1 cm at low\n"
    assert told(split, piece("use split at the right edge, low low")) == ["without-effect"]


def test_one_shape_may_be_used_at_each_edge_of_a_piece_like_another() -> None:
    lean = "shape lean(low, by)\n    edges slope by by at low\n"
    back = piece("use lean at the left edge, low low, by 1 cm", "use lean at the right edge, low low, by 2 cm", name="back")
    front = "piece front like back\n    use lean at the right edge, low low, by 3 cm\n"
    made = design(lean, back, front, "join front end to back end").piece("front")
    assert (changes(made.left)[0], changes(made.right)[0]) == (1.0, 3.0)


def test_a_mirror_image_with_a_block_of_its_own_has_the_centre_turned_over() -> None:
    lines = ("left edge slope to 15 cm from centre at low", "right edge slope to 1 cm left of centre at low")
    model = piece(*lines, start=LEFT, name="model")
    image = "piece image in plain, mirror of model\n    slot pocket 4 cm wide at middle, 10 cm right of centre, cast off\n"
    made = design(model, image, "join image end to model end").piece("image")
    assert (changes(made.right)[0], changes(made.left)[0]) == (-5.0, -3.0)
    assert made.slots[0].centre[0] == 1.0
