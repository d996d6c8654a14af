"""What is held, cut into or laid over a piece: wedges, slots, buttonholes, zones and repeats, and what shares rows."""

from __future__ import annotations

import pytest

from tests.design.shaped import design, front, only, piece, told
from walewright.design.model import EdgeName
from walewright.report.english import in_english

SHORT = "hem 0 cm, low 10 cm, middle 12 cm, high 14 cm, top length"


def test_a_wedge_keeps_what_is_said_of_it() -> None:
    line = "wedge 9 cm wide at left edge from low to high, held in and let out, resting 3 cm"
    (made,) = front(line, levels=SHORT).wedges
    assert (made.edge, made.from_level, made.to_level, made.kind) == ("left", "low", "high", "both")
    assert (made.width, made.rest) == ((9.0, 9.0), (3.0, 3.0))


def test_shoulders_are_a_wedge_over_all_stitches_to_the_top() -> None:
    (made,) = front("shoulders held from high").wedges
    assert (made.edge, made.kind, made.width, made.to_level) == ("both", "in", None, "")


def test_wedges_at_both_edges_between_the_same_levels_work_together() -> None:
    left = "wedge 15 cm wide at left edge from low to high, held in"
    right = "wedge 25 cm wide at right edge from low to high, held in"
    assert told(piece(left, right, levels=SHORT)) == []
    assert told(piece(left, right.replace("25", "26"), levels=SHORT)) == ["wedge-too-wide"]
    assert told(piece(left, right.replace("to high", "to middle"), levels=SHORT)) == ["stretches-overlap"]


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("wedge 20 cm wide at both edges from low to high, held in", None),
        ("wedge 20 cm wide at both edges from low to high, held in and let out", "wedge-too-wide"),
        ("wedge 21 cm wide at both edges from low to high, let out", "wedge-too-wide"),
        ("wedge 18 cm wide at both edges from low to high, let out, resting 3 cm", "wedge-too-wide"),
        ("wedge 40 cm wide at right edge from low to high, let out", None),
        ("wedge 3.5 cm wide at right edge from low to high, let out", None),
        ("wedge 2 cm wide at right edge from low to high, held in and let out", None),
        ("wedge 0 cm wide at right edge from low to high, let out", "not-positive"),
        ("wedge 9 cm wide at right edge from low to hihg, let out", "unknown-name"),
        ("wedge 9 cm wide at right edge from high to low, let out", "stretch-falls"),
    ],
)
def test_what_a_wedge_can_be(line: str, code: str | None) -> None:
    assert told(piece(line, levels=SHORT)) == ([code] if code else [])


def test_a_wedge_beside_a_gap_has_the_room_of_its_part() -> None:
    lines = ("opening vent 10 cm wide from low to top", "wedge 16 cm wide at left edge from middle to high, held in")
    said = only(piece(*lines, levels=SHORT))
    assert said.code == "wedge-too-wide"
    assert in_english(said).notes == ("there are 15 cm",)
    assert told(piece(lines[0], lines[1].replace("16", "15"), levels=SHORT)) == []


@pytest.mark.parametrize(
    ("edge", "code"),
    [
        ("left edge slope by -2 cm at low", None),
        ("left edge slope by -2 cm at high", "edge-moves-in-wedge"),
        ("left edge slope by -2 cm at top", "edge-moves-in-wedge"),
        ("right edge slope by -2 cm at top", None),
    ],
)
def test_a_held_edge_stands_still(edge: str, code: str | None) -> None:
    line = "wedge 9 cm wide at left edge from low to high, held in"
    assert told(piece(edge, line, levels=SHORT)) == ([code] if code else [])


def test_a_slot_has_two_edges_to_speak_of() -> None:
    text = piece("slot thumb 6 cm wide at middle, 4 cm right of centre, on waste yarn")
    thumb = piece(
        name="thumb", levels="root 0 cm, tip 6 cm", start="12 cm wide along front thumb + front thumb_upper", end="gathered"
    )
    made = design(text, thumb)
    (slot,) = made.piece("front").slots
    assert (slot.level, slot.width, slot.centre, slot.taken) == ("middle", (6.0, 6.0), (4.0, 4.0), "waste")
    on = made.piece("thumb")
    assert on.start_along == (EdgeName("front", "thumb"), EdgeName("front", "thumb upper"))
    assert (on.start_way, on.end_way) == ("along", "gathered")


def test_the_mirror_image_of_a_piece_begun_on_another_is_begun_on_its_mirror_image() -> None:
    text = piece("slot thumb 6 cm wide at middle, 4 cm right of centre")
    thumb = piece(name="thumb", levels="root 0 cm, tip 6 cm", start="12 cm wide along front thumb + front thumb_upper")
    made = design(text, "piece back in plain, mirror of front", thumb, "piece other in plain, mirror of thumb")
    assert made.piece("back").slots[0].centre == (-4.0, -4.0)
    assert made.piece("other").start_along == (EdgeName("back", "thumb upper"), EdgeName("back", "thumb"))


def test_a_piece_cannot_be_begun_on_itself() -> None:
    text = piece("slot hole 6 cm wide at middle", start="40 cm wide along front hole")
    assert told(text) == ["along-later-piece"]


def test_buttonholes() -> None:
    (made,) = front("buttonholes 6 over 2 stitches from low to high, 1.5 cm from the right edge").buttonholes
    assert (made.counts, made.stitches, made.edge, made.distance) == ((6, 6), 2, "right", (1.5, 1.5))
    mirrored = design(
        piece("buttonholes 6 over 1 stitch from low to high, 1.5 cm from the right edge"), "piece back in plain, mirror of front"
    )
    assert mirrored.piece("back").buttonholes[0].edge == "left"


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("buttonholes 21 over 2 stitches from low to high, 1 cm from the right edge", None),
        ("buttonholes 22 over 2 stitches from low to high, 1 cm from the right edge", "buttonholes-too-close"),
        ("buttonholes 0 over 2 stitches from low to high, 1 cm from the right edge", "not-positive"),
        ("buttonholes 6 over 50 stitches from low to high, 1 cm from the right edge", "absurd-count"),
        ("buttonholes 6 over 2 stitches from hem to high, 1 cm from the right edge", "slot-at-edge"),
        ("buttonholes 6 over 2 stitches from low to top, 1 cm from the right edge", "slot-at-edge"),
        ("buttonholes 6 over 2 stitches from low to high, 39 cm from the right edge", "beyond-the-edge"),
        ("buttonholes 6 over 2 stitches from low to high, 38 cm from the right edge", None),
        ("slot hole 10 cm wide at middle, 15 cm right of centre", "beyond-the-edge"),
        ("slot hole 10 cm wide at middle, 14 cm right of centre", None),
        ("slot hole 40 cm wide at middle", "beyond-the-edge"),
        ("slot hole 10 cm wide at hem", "slot-at-edge"),
        ("slot hole 10 cm wide at waist", "unknown-name"),
        ("slot neck 10 cm wide at middle", "reserved-name"),
        ("fabric rib from low to middle, 8 cm wide, 6 cm left of centre", None),
        ("fabric rib from low to middle, 8 cm wide, 16 cm left of centre", "beyond-the-edge"),
        ("fabric dense from low to middle, 8 cm wide", "panel-fabric"),
        ("fabric dense from low to middle", None),
        ("fabric lace from low to middle", "unknown-name"),
        ("fabric rib from middle to low", "stretch-falls"),
        ("repeat 8 times from low to high", None),
        ("repeat 1 times from low to high", "not-positive"),
        ("repeat 800 times from low to high", "absurd-count"),
        ("repeat 8 times from high to low", "stretch-falls"),
    ],
)
def test_what_else_can_be_in_a_piece(line: str, code: str | None) -> None:
    assert told(piece(line)) == ([code] if code else [])


def test_a_zone_and_a_panel_keep_what_is_said_of_them() -> None:
    whole, panel = front("fabric dense from hem to low", "fabric rib from low to high, 8 cm wide, 6 cm left of centre").zones
    assert (whole.fabric, whole.width, whole.centre) == ("dense", None, (0.0, 0.0))
    assert (panel.fabric, panel.width, panel.centre) == ("rib", (8.0, 8.0), (-6.0, -6.0))


def test_a_repeat_keeps_its_rows_and_changes_no_width() -> None:
    back_again = ("edges slope by 2 cm at middle", "edges slope by -2 cm at high", "repeat 3 times from low to high")
    (made,) = front("edges straight to low", *back_again).repeats
    assert (made.from_level, made.to_level, made.times) == ("low", "high", (3, 3))
    said = only(piece("edges straight to low", "left edge slope by 2 cm at high", "repeat 3 times from low to high"))
    assert said.code == "repeat-changes-width"
    assert "left edge" in in_english(said).message


def test_a_repeat_may_begin_where_the_width_was_changed_across() -> None:
    lines = ("edges straight to low", "across to 44 cm wide at low", "repeat 3 times from low to high")
    assert told(piece(*lines)) == []
    assert told(piece(*lines[:2], "repeat 3 times from hem to high")) == ["repeat-changes-width"]


SLOT = "slot hole 4 cm wide at middle, 12 cm left of centre"
WEDGE = "wedge 9 cm wide at left edge from low to high, held in"


@pytest.mark.parametrize(
    ("lines", "code"),
    [
        (("opening vent 2 cm wide from low to high", SLOT), "while-parted"),
        (("opening vent 2 cm wide from middle to high", SLOT), None),
        (("opening vent 2 cm wide from low to high", "repeat 2 times from middle to high"), "while-parted"),
        (("opening vent 2 cm wide from low to middle", "repeat 2 times from middle to high"), None),
        (
            ("opening vent 2 cm wide from low to high", "buttonholes 2 over 1 stitch from middle to high, 1 cm from the left edge"),
            "while-parted",
        ),
        (("edges straight to middle", "across to 44 cm wide at middle", "opening vent 2 cm wide from low to high"), "while-parted"),
        ((WEDGE, SLOT), "while-held"),
        ((WEDGE, "edges straight to middle", "across to 44 cm wide at middle"), "edge-moves-in-wedge"),
        ((WEDGE, "opening vent 2 cm wide from middle to top"), "while-held"),
        ((WEDGE, "fabric dense from middle to top"), "while-held"),
        ((WEDGE, "fabric dense from low to high"), None),
        ((WEDGE, "repeat 4 times from low to high"), None),
        ((WEDGE, "repeat 4 times from middle to high"), "stretches-overlap"),
        (("repeat 4 times from low to high", SLOT), "in-repeat"),
        (("repeat 4 times from low to middle", SLOT), None),
        (("repeat 4 times from low to high", "repeat 4 times from middle to top"), "stretches-overlap"),
        (("repeat 4 times from low to high", "fabric dense from middle to top"), "stretches-overlap"),
        (("repeat 4 times from low to high", "fabric dense from hem to top"), None),
        (("repeat 4 times from low to high", "fabric dense from low to middle"), None),
        (("fabric rib from low to high", "fabric dense from middle to top"), "stretches-overlap"),
    ],
)
def test_what_may_share_rows(lines: tuple[str, ...], code: str | None) -> None:
    assert told(piece(*lines, levels=SHORT)) == ([code] if code else [])
