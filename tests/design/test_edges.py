"""New ways of leading an edge: rates, arches, two at once, one side's names, across, and free numbers."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, LEVELS, design, front, only, piece, told, understood
from walewright.design.model import EdgeRun, ShapingWay
from walewright.report.english import in_english
from walewright.report.model import Severity


def runs(found: tuple[EdgeRun, ...]) -> list[tuple[str, str, str, tuple[float, ...], tuple[float, ...] | None]]:
    return [(r.name, r.path, r.to_level, r.change, r.most) for r in found]


def test_how_far_a_rate_goes_follows_from_the_rows_of_its_stretch() -> None:
    # From 30 cm to 40 or 42 cm are 40 or 48 rows: 20 or 24 moves of half a centimetre.
    made = front("edges straight to high", "edges in 1 stitch every 2 rows to top")
    assert runs(made.left)[1] == ("", "rate", "top", (-10.0, -12.0), None)
    assert made.left == made.right
    assert runs(front("edges out 2 stitches every 10 rows to low").left)[0][3] == (4.0, 4.0)


def test_a_rate_counts_the_rows_of_the_fabric_there() -> None:
    made = front("edges in 1 stitch every 10 rows to low", "fabric dense from hem to low")
    # 50 rows of dense fabric, 5 stitches of 0.4 cm.
    assert made.left[0].change == pytest.approx((-2.0, -2.0))


def test_a_rate_up_to_a_free_level_is_free_itself() -> None:
    levels = "hem 0 cm, low 10 cm, top between 20 cm and 22 cm"
    made = front("edges straight to low", "edges in 1 stitch every 4 rows to top", levels=levels)
    assert runs(made.left)[1][3:] == ((-5.0, -5.0), (-6.0, -6.0))


def test_arch_and_two_at_once() -> None:
    made = front("edges slope to 36 cm wide at low, fashioned 3 in, two at once", "edges arch to 20 cm wide at top")
    assert made.left[0].way == ShapingWay("fashioned", 3, 2)
    assert (made.left[1].path, made.left[1].change) == ("arch", (-8.0, -8.0))


def test_an_edge_may_be_named_on_one_side_and_joined_by_that_name() -> None:
    text = piece("left edge straight to top called opening_edge", "right edge straight to top called side")
    made = design(text, "band border with collar along front opening_edge", "join front side to front start, easing 1 cm")
    assert [r.name for r in made.piece("front").left] == ["opening_edge"]
    assert not made.piece("front").symmetric
    assert made.bands[0].along[0].edge == "opening_edge"


def test_across_gives_both_sides_one_move_at_a_level_they_have_come_to() -> None:
    made = front("left edge slope by -2 cm at low", "right edge straight to low", "across to 50 cm wide at low")
    for side in (made.left, made.right):
        assert (side[1].path, side[1].to_level, side[1].change) == ("across", "low", (6.0, 6.0))
        assert side[2].to_level == "top"
    assert front("across to 50 cm wide at hem").left[0].path == "across"


def test_a_neck_is_held_against_the_width_after_across() -> None:
    lines = ("edges straight to low", "across to 22 cm wide at low")
    assert told(piece(*lines, "neck 21 cm wide, 4 cm deep, square")) == []
    assert told(piece(*lines, "neck 23 cm wide, 4 cm deep, square")) == ["neck-too-wide"]


def test_free_widths_and_levels() -> None:
    levels = "hem 0 cm, low 10 cm, middle between 18 cm and 20 cm, top between 30 cm and 34 cm"
    lines = (
        "edges slope to between 44 cm and 48 cm wide at low",
        "edges slope to 40 cm wide at middle",
        "edges slope by -1 cm at top",
    )
    made = front(*lines, levels=levels, start="between 36 cm and 40 cm wide on waste yarn")
    assert (made.start_width, made.start_most) == ((36.0, 36.0), (40.0, 40.0))
    assert [(x.height[0], x.most and x.most[0]) for x in made.levels] == [(0, None), (10, None), (18, 20), (30, 34)]
    # From the farthest place where a run begins, its change; from the nearest, the most: so 40 cm are 40 cm in any case.
    assert [r[3:] for r in runs(made.left)] == [
        ((2.0, 2.0), (6.0, 6.0)),
        ((-4.0, -4.0), (-2.0, -2.0)),
        ((-1.0, -1.0), None),
    ]


def test_free_levels_rise_at_both_ends() -> None:
    said = only(piece(levels="hem 0 cm, low between 10 cm and 45 cm, top length"))
    assert said.code == "levels-fall"
    assert "at its highest" in in_english(said).message
    assert told(piece(levels="hem between 0 cm and 1 cm, top length")) == ["first-level"]
    assert told(piece(levels="hem 0 cm, top between 40 cm and 40 cm")) == ["range-falls"]


@pytest.mark.parametrize(
    ("line", "moves", "help_"),
    [
        ("edges cast off 3 cm then curve by 5 cm at top", "moves out", "write a minus before the move: it goes in"),
        (
            "edges cast off 3 cm then curve to 46 cm wide at top",
            "moves out",
            "write a width below the one that the edges come from",
        ),
    ],
)
def test_a_move_the_wrong_way_is_told_as_one(line: str, moves: str, help_: str) -> None:
    said = only(piece("edges straight to low", line))
    assert (said.code, in_english(said).message) == (
        "cast-off-too-wide",
        f"stitches are cast off, and then the edge {moves} to `top`",
    )
    assert in_english(said).helps == (help_, "leave out what is cast off")
    assert "-" not in in_english(said).notes[0]


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("edges slope by -10 cm at low", None),
        ("edges slope by -21 cm at low, two at once", "no-width-left"),
        ("edges slope by 11 cm at low, fashioned 2 in", None),
        ("edges slope by 11 cm at low, two at once", "two-at-once-outwards"),
        ("across to 81 cm wide at hem", "across-too-far"),
        ("across to 80 cm wide at hem", None),
        ("across to 40 cm wide at hem", "without-effect"),
        ("across to 30 cm wide at top", "across-elsewhere"),
        ("edges slope to between 30 cm and 20 cm wide at low", "range-falls"),
    ],
)
def test_what_an_edge_can_do(line: str, code: str | None) -> None:
    assert told(piece(line, levels="hem 0 cm, low 10 cm, top length")) == ([code] if code else [])


def test_across_too_far_both_ways_names_the_sizes_that_its_figure_is_for() -> None:
    # 40 cm below: S wants more than 80 cm, M less than 20 cm, and one figure cannot be for both.
    head = HEAD.replace("length 40 42 cm", "length 40 42 cm\n    wide 82 18 cm")
    text = piece("edges straight to low", "across to wide wide at low", levels="hem 0 cm, low 10 cm, top length")
    (said,) = (d for d in understood(text, head=head)[1] if d.severity is Severity.ERROR)
    assert (said.code, said.sizes) == ("across-too-far", ("S",))
    assert "more than doubled" in in_english(said).message
    assert in_english(said).helps == ("write at most S 80 cm",)


def test_as_wide_across_in_another_fabric_is_another_number_of_stitches() -> None:
    other = "\nfabric other\n    stocking stitch in wool at tension 4\n    swatch 40 stitches by 60 rows = 10 cm by 10 cm, 8 g\n"
    for fabric, codes in (("plain", ["without-effect"]), ("other", [])):
        lines = ("edges straight to low", "across to 40 cm wide at low", f"fabric {fabric} from low to top")
        assert [c for c in told(piece(*lines, levels="hem 0 cm, low 10 cm, top length") + other) if c != "unused-name"] == codes


def test_across_twice_at_a_level() -> None:
    assert told(piece("across to 30 cm wide at hem", "across to 40 cm wide at hem")) == ["repeated-statement"]


def test_stitches_of_a_width_are_those_of_the_fabric_below_the_level() -> None:
    made = front("edges slope to 90 stitches wide at low", "fabric dense from hem to low", levels=LEVELS)
    assert made.left[0].change == pytest.approx((-2.0, -2.0))
