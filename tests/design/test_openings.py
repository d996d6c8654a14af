"""Openings: necks and partings anywhere, their edges, the room beside them, and their order."""

from __future__ import annotations

import pytest

from tests.design.shaped import design, front, only, piece, told
from walewright.design.model import EdgeRun, Opening
from walewright.report.english import in_english


def opening(*lines: str, **options: str) -> Opening:
    (found,) = front(*lines, **options).openings
    return found


def gap(runs: tuple[EdgeRun, ...]) -> list[tuple[str, str, tuple[float, ...]]]:
    return [(r.path, r.to_level, r.change) for r in runs]


@pytest.mark.parametrize(
    ("words", "path", "change"),
    [("round", "curve", 4.5), ("v", "slope", 9.0), ("square", "straight", 0.0), ("round, 18 cm flat", "straight", 0.0)],
)
def test_a_neck_is_a_gap_that_widens_up_to_the_top(words: str, path: str, change: float) -> None:
    closed = "" if words == "v" else ", cast off"
    made = opening(f"neck 18 cm wide, 8 cm deep, {words}{closed}")
    assert gap(made.left) == [(path, "top", (change, change))]
    assert made.left == made.right
    assert (made.from_level, made.to_level, made.centre, made.taken) == (None, "top", (0.0, 0.0), "cast-off" if closed else "waste")
    assert made.depth == (8.0, 8.0)


LOWER = "hem 0 cm, low 10 cm, lower 18 cm, middle 20 cm, high 30 cm, top length"


def test_the_edges_of_an_opening_are_led_from_its_parting() -> None:
    made = opening(
        "opening slit 4 cm wide from low to high, 6 cm left of centre, cast off",
        "    left edge out 1 stitch every 4 rows to middle",
        "    right edge slope by 2 cm at high, fashioned 2 in",
    )
    assert (made.from_level, made.to_level, made.centre, made.taken) == ("low", "high", (-6.0, -6.0), "cast-off")
    assert gap(made.left) == [("rate", "middle", (5.0, 5.0)), ("straight", "high", (0.0, 0.0))]
    assert gap(made.right) == [("slope", "high", (2.0, 2.0))]
    assert (made.flat, made.width, made.depth, made.shape) == ((4.0, 4.0), (11.0, 11.0), (20.0, 20.0), "edges")


def test_a_width_in_an_opening_is_the_gaps() -> None:
    made = opening("opening hole 4 cm wide from low to high", "    edges cast off 1 cm then curve to 10 cm wide at middle")
    assert gap(made.left)[0] == ("curve", "middle", (3.0, 3.0))
    assert made.left[0].cast_off == (1.0, 1.0)


def test_a_mirror_image_has_its_gap_on_the_other_side() -> None:
    text = piece("opening slit 2 cm wide from low to high, 6 cm left of centre", "    left edge slope by 2 cm at high")
    made = design(text, "piece back in plain, mirror of front")
    (one,), (other,) = made.piece("front").openings, made.piece("back").openings
    assert other.centre == (6.0, 6.0)
    assert gap(other.right) == gap(one.left)
    assert gap(other.left) == gap(one.right)
    assert other.left[0].origin.path.startswith("piece back /")


def test_an_opening_to_the_top_ends_in_shoulders_and_a_rejoined_one_does_not() -> None:
    to_top = piece("opening vent 2 cm wide from high to top")
    rejoined = piece("opening vent 2 cm wide from low to high")
    assert told(to_top, "join front shoulder to front vent") == []
    assert told(to_top, "join front end to front vent") == ["no-such-edge"]
    assert told(rejoined, "join front end to front vent") == []
    assert told(rejoined, "join front end to front neck") == ["no-such-edge"]


def test_openings_one_after_the_other_stand_in_their_order() -> None:
    lines = (
        "neck 10 cm wide, 4 cm deep, round",
        "opening b 2 cm wide from middle to high",
        "opening a 2 cm wide from low to under",
    )
    levels = "hem 0 cm, low 10 cm, under 18 cm, middle 20 cm, high 30 cm, top length"
    assert [o.name for o in front(*lines, levels=levels).openings] == ["a", "b", "neck"]


def test_rows_over_the_whole_width_lie_between_two_openings() -> None:
    said = only(piece("opening b 2 cm wide from middle to high", "opening a 2 cm wide from low to middle"))
    assert said.code == "openings-touch"
    assert in_english(said).message == "`b` of piece `front` begins in the row where `a` ends"
    assert in_english(said).helps == ("let `b` begin at a level of its own, two rows up or more",)
    assert told(piece("opening b 2 cm wide from middle to high", "opening a 2 cm wide from low to lower", levels=LOWER)) == []


def test_openings_that_reach_over_each_other_may_not_share_rows() -> None:
    said = only(piece("neck 10 cm wide, 11 cm deep, round", "opening a 2 cm wide from low to high"))
    assert (said.code, said.sizes) == ("openings-overlap", ("S",))
    assert in_english(said).helps == (
        "let one end before the other begins: they share S 1 cm",
        "or let them lie further apart, by more than this: S 3.73 cm",
    )


BESIDE = "opening b 2 cm wide from {low} to {high}, {off} cm right of centre"


@pytest.mark.parametrize(
    ("low", "high", "off", "edge", "code"),
    [
        ("low", "high", "5", "", None),
        ("middle", "high", "5", "", None),
        ("lower", "middle", "5", "", None),
        # The other one is 2 cm wide below and 4 cm above.
        ("low", "high", "2", "", "openings-overlap"),
        ("low", "high", "3", "", "openings-overlap"),
        ("low", "high", "3.1", "", None),
        # From 20 cm on it reaches no farther.
        ("low", "high", "5", "left edge slope by 2 cm at middle", "openings-overlap"),
        ("low", "high", "5", "left edge slope by 1.9 cm at middle", None),
        ("low", "high", "5", "right edge slope by 5 cm at middle", None),
        ("middle", "top", "5", "", None),
        ("high", "top", "2", "", "openings-touch"),
        ("high", "top", "9", "", "openings-touch"),
    ],
)
def test_openings_side_by_side_have_fabric_between_them(low: str, high: str, off: str, edge: str, code: str | None) -> None:
    one = "opening a 2 cm wide from low to high", "    edges slope by 1 cm at middle"
    other = BESIDE.format(low=low, high=high, off=off)
    text = piece(*one, other, *([f"    {edge}"] if edge else []), levels=LOWER)
    assert told(text) == ([code] if code else [])


def test_openings_that_share_rows_stand_from_left_to_right() -> None:
    right, left = (
        "opening {} 2 cm wide from low to high, 12 cm {} of centre".format(*of) for of in (("b", "right"), ("a", "left"))
    )
    made = front("neck 10 cm wide, 13 cm deep, v", right, left)
    assert [o.name for o in made.openings] == ["a", "b", "neck"]


def test_openings_begin_and_end_in_one_order_in_all_sizes() -> None:
    said = only(piece("neck 6 cm wide, 11 cm deep, round", "opening a 2 cm wide from low to high, 8 cm left of centre"))
    assert said.code == "openings-in-turn"
    # At 29 and 31 cm; the slit to 30 cm.
    assert in_english(said).labels[0].startswith("from S 29 cm, M 31 cm")
    assert told(piece("neck 6 cm wide, 13 cm deep, round", "opening a 2 cm wide from low to high, 8 cm left of centre")) == []


def test_several_openings_of_a_piece_go_to_its_top() -> None:
    """What ends between them is called by its number from the left."""
    lines = ("neck 6 cm wide, 4 cm deep, round", "opening a 2 cm wide from low to top, 8 cm left of centre")
    assert [o.name for o in front(*lines).openings] == ["a", "neck"]
    edges = ("shoulder", "shoulder_1", "shoulder_2", "shoulder_3", "end")
    assert [edge for edge in edges if told(piece(*lines), f"free front {edge}") == []] == ["shoulder", "shoulder_2"]
    more = (*lines, "opening b 2 cm wide from low to top, 8 cm right of centre")
    assert [told(piece(*more), f"free front shoulder_{n}") for n in (2, 3, 4)] == [[], [], ["no-such-edge"]]


def test_a_wedge_lies_beside_the_nearest_of_several_gaps() -> None:
    """The width is 40 cm; the left part has 12 cm between 10 and 30 cm, the right one 8 cm."""
    slits = (
        "opening a 0 cm wide from low to top, 8 cm left of centre",
        "opening b 0 cm wide from low to high, 12 cm right of centre",
    )
    edges = "edges straight to top"
    for side, wide, code in (
        ("left", 12, None),
        ("left", 12.5, "wedge-too-wide"),
        ("right", 8, None),
        ("right", 8.5, "wedge-too-wide"),
    ):
        wedge = f"wedge {wide} cm wide at the {side} edge from middle to high, held in"
        assert told(piece(edges, *slits, wedge)) == ([code] if code else []), (side, wide)


def test_a_neck_wider_than_its_piece_says_by_how_much() -> None:
    # A stitch of 0.5 cm has to stay on each side.
    said = only(piece("neck length wide, 4 cm deep, square"))
    assert said.code == "neck-too-wide"
    assert in_english(said).helps == ("make it S 1 cm, M 3 cm narrower at least, or the piece as much wider there",)


def test_an_opening_over_one_edge_says_how_far_it_is_off() -> None:
    said = only(piece("opening slit 10 cm wide from low to high, 16 cm right of centre"))
    assert said.code == "beyond-the-edge"
    left, right = in_english(said).notes
    assert left == "left of it, at its top, the piece has 31 cm"
    assert right == "on the right, at its top, it goes 1 cm beyond the edge of the piece"
    assert in_english(said).helps == ("make it 1.5 cm narrower at least on that side, or move it as far towards the centre",)


@pytest.mark.parametrize(
    ("line", "edge", "code"),
    [
        ("opening slit 0 cm wide from low to high", "", None),
        ("opening slit 2 cm wide from hem to high", "", "opening-at-start"),
        ("opening slit 2 cm wide from high to low", "", "stretch-falls"),
        ("opening slit 2 cm wide from low to hihg", "", "unknown-name"),
        ("opening shoulder 2 cm wide from low to high", "", "reserved-name"),
        ("opening neck 2 cm wide from low to high", "", None),
        ("opening slit 2 cm wide from low to high", "edges slope by -2 cm at high", "no-width-left"),
        ("opening slit 2 cm wide from low to high", "edges slope by -1 cm at high", None),
        ("opening slit 2 cm wide from low to high", "edges slope by 2 cm at high, two at once", None),
        ("opening slit 2 cm wide from low to high", "edges slope by -1 cm at high, two at once", "two-at-once-outwards"),
        ("opening slit 2 cm wide from low to high", "edges cast off 3 cm then curve by 2 cm at high", "cast-off-too-wide"),
        ("opening slit 2 cm wide from low to middle", "edges slope by 1 cm at high", "edge-past-opening"),
        ("opening slit 2 cm wide from low to middle", "edges slope by 1 cm at low", "edge-goes-down"),
        ("opening slit 2 cm wide from low to high", "edges straight to high called a", "named-in-opening"),
        ("opening slit 2 cm wide from low to high", "edges slope by 30 cm at high", "beyond-the-edge"),
    ],
)
def test_what_an_opening_can_be(line: str, edge: str, code: str | None) -> None:
    assert told(piece(line, *([f"    {edge}"] if edge else []))) == ([code] if code else [])


def test_openings_and_edges_have_names_of_their_own() -> None:
    line = "opening side 2 cm wide from low to high"
    assert told(piece("edges straight to top called side", line)) == ["repeated-name"]
    assert told(piece("neck 10 cm wide, 4 cm deep, v", "opening neck 2 cm wide from low to middle")) == ["repeated-name"]


def test_a_gap_may_narrow_to_nothing() -> None:
    made = front("opening vent 4 cm wide from low to high, cast off", "    edges slope to 0 cm wide at high").openings[0]
    assert made.left[0].change == (-2.0, -2.0)
    assert made.width == (0.0, 0.0)
    assert (
        only(piece("opening vent 4 cm wide from low to high, cast off", "    edges slope by -3 cm at high")).code == "no-width-left"
    )


@pytest.mark.parametrize(
    ("one", "other", "codes"),
    [
        ("8 cm left of centre", "8 cm right of centre", []),
        # 4 cm wide each, and 3 stitches of 5 mm between them.
        ("3 cm left of centre", "2.6 cm right of centre", []),
        ("3 cm left of centre", "2.4 cm right of centre", ["slots-overlap"]),
        ("3 cm left of centre", "3 cm left of centre", ["slots-overlap"]),
    ],
)
def test_slots_side_by_side_leave_fabric_between_them(one: str, other: str, codes: list[str]) -> None:
    lines = [f"slot {name} 4 cm wide at low, {place}, cast off" for name, place in (("one", one), ("two", other))]
    assert told(piece(*lines)) == codes
    apart = [lines[0], lines[1].replace("at low", "at middle")]
    assert told(piece(*apart)) == []
