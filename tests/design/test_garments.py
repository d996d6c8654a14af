"""What goes beyond a piece: starts, ends, edgings, bands with holes, ways to join, cords, and garments for children."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, design, front, piece, told, understood
from walewright.report.english import in_english
from walewright.report.model import Severity

WRITTEN = "sizes S M\n    length 40 42 cm"
CHILD = HEAD.replace(WRITTEN, "sizes 2_years 4_years\n    chest from child chest, to fit\n    length 40 42 cm")
BABY = HEAD.replace(WRITTEN, "sizes 3_months 6_months\n    chest from baby chest\n    length 40 42 cm")


def test_an_odd_piece_and_a_hood() -> None:
    made = front(more=", centre stitch, as hood")
    assert (made.parity, made.purpose) == ("odd", "hood")
    assert front().parity == "even"
    assert front(more=", odd or even").parity == "either"


def test_an_edging_knitted_first_needs_a_closed_start() -> None:
    assert design(piece(start="40 cm wide with chain, with welt")).edging("welt").when == "first"
    assert told(piece(start="40 cm wide on waste yarn, with welt")) == ["edging-needs-closed-start"]
    assert told(piece(start="40 cm wide with chain, with collar")) == ["edging-needs-loops"]
    assert told(piece(), "band b with welt along front start") == ["edging-first-in-band"]


def test_a_band_with_buttonholes() -> None:
    text = piece("right edge straight to top called edge")
    line = "band button with collar along front edge, buttonholes 6 over 2 stitches, 5 stitches first, 3 cm last"
    (made,) = design(text, line).bands
    assert (made.holes, made.hole_stitches, made.first, made.last) == ((6, 6), 2, (2.0, 2.0), (3.0, 3.0))
    assert told(text, line.replace("6 over 2", "6 over 0")) == ["not-positive"]
    assert told(text, line.replace("3 cm", "-3 cm")) == ["not-positive"]


def test_how_edges_are_joined() -> None:
    text = piece("left edge straight to top called one", "right edge straight to top called other")
    (made,) = design(text, "join front one to front other, longer by 8 rows, easing 1 cm, gathered").joins
    assert (made.longer, made.easing, made.way) == ((2.0, 2.0), (1.0, 1.0), "gathered")
    (made,) = design(text, "join front one to front other").joins
    assert (made.longer, made.easing, made.way) == (None, (0.0, 0.0), "sewn")


@pytest.mark.parametrize(
    ("start", "end", "join", "code"),
    [
        ("on waste yarn", "on waste yarn", "start to front end, grafted", None),
        ("on waste yarn, with collar", "on waste yarn", "start to front end, grafted", "join-needs-loops"),
        ("with chain", "on waste yarn", "start to front end, grafted", "join-needs-loops"),
        ("with chain", "on waste yarn", "start to front end, linked", None),
        ("on waste yarn", "cast off", "start to front end, grafted", "join-needs-loops"),
        ("on waste yarn", "cast off", "start to front end, linked", None),
        ("on waste yarn", "gathered", "start to front end, linked", "join-needs-loops"),
        ("on waste yarn", "on waste yarn", "side to front end, linked", "join-needs-loops"),
        ("on waste yarn", "on waste yarn", "start to front end, grafted, easing 1 cm", "loops-do-not-ease"),
        ("on waste yarn", "on waste yarn", "start to front end, linked, longer by 1 cm", "loops-do-not-ease"),
        ("on waste yarn", "on waste yarn", "pocket to front end, grafted", None),
        ("on waste yarn", "on waste yarn", "pocket_upper to front end, grafted", "join-needs-loops"),
        ("on waste yarn", "on waste yarn", "pocket_upper to front end, linked", None),
    ],
)
def test_joins_loop_by_loop(start: str, end: str, join: str, code: str | None) -> None:
    lines = ("edges straight to top called side", "slot pocket 6 cm wide at middle")
    text = piece(*lines, start=f"40 cm wide {start}", end=end)
    assert told(text, f"join front {join}") == ([code] if code else [])


@pytest.mark.parametrize(
    ("start", "end", "join", "help_"),
    [
        ("with chain", "on waste yarn", "start to front end, grafted", "begin `front` on waste yarn, or let the edges be sewn"),
        (
            "on waste yarn, with collar",
            "on waste yarn",
            "start to front end, grafted",
            "begin `front` on waste yarn, without an edging, or let the edges be sewn",
        ),
        ("on waste yarn", "cast off", "start to front end, grafted", "end `front` on waste yarn, or let the edges be sewn"),
        (
            "on waste yarn",
            "gathered",
            "start to front end, linked",
            "end `front` on waste yarn or cast off, or let the edges be sewn",
        ),
        # Nothing gives loops to an edge along the rows.
        ("on waste yarn", "on waste yarn", "side to front end, grafted", "let the edges be sewn"),
        ("on waste yarn", "on waste yarn", "pocket_upper to front end, grafted", "let the edges be sewn"),
    ],
)
def test_what_is_proposed_for_an_edge_without_loops_can_be_done(start: str, end: str, join: str, help_: str) -> None:
    lines = ("edges straight to top called side", "slot pocket 6 cm wide at middle")
    said = [
        d
        for d in understood(piece(*lines, start=f"40 cm wide {start}", end=end), f"join front {join}")[1]
        if d.code == "join-needs-loops"
    ]
    assert [in_english(d).helps for d in said] == [(help_,)]


def test_a_bare_number_is_helped_to_every_unit_that_can_stand_there() -> None:
    (across,) = understood(piece(start="40 wide on waste yarn"))[1]
    (up,) = understood(piece(levels="hem 0 cm, top 40"))[1]
    (cord,) = (d for d in understood(piece(), "cord front 90 long")[1] if d.code == "no-unit")
    assert [d.code for d in (across, up)] == ["no-unit"] * 2
    assert in_english(across).helps == ("write it in cm, mm, in or stitches",)
    assert in_english(up).helps == ("write it in cm, mm, in or rows",)
    # A cord is knitted in no fabric here, and has no stitches that could be counted.
    assert in_english(cord).helps == ("write it in cm, mm or in",)


def test_a_cord_is_drawn_through_a_piece() -> None:
    made = design(piece("slot casing 2 cm wide at low, cast off", more=", as hood"), "cord front 90 cm long")
    assert (made.cords[0].piece, made.cords[0].length) == ("front", (90.0, 90.0))
    assert (made.for_children, made.cautions) == (False, ())
    assert told(piece(), "cord frunt 90 cm long") == ["unknown-name"]
    assert told(piece(), "cord front 0 cm long") == ["not-positive"]


@pytest.mark.parametrize("head", [CHILD, BABY])
def test_garments_for_children_have_no_cord_and_are_warned_of_a_hood(head: str) -> None:
    made, told_of = understood(piece(), head=head)
    assert told_of == ()
    assert made is not None
    assert made.for_children
    assert made.cautions == ()
    made, (said,) = understood(piece(more=", as hood"), head=head)
    assert (said.code, said.severity) == ("hood-on-child", Severity.WARNING)
    assert made is not None
    assert {f"caution/{c}" for c in made.cautions} <= {note.key for note in said.notes}
    assert any("16 CFR 1120.3(b)" in note for note in in_english(said).notes)
    made, (said,) = understood(piece(), "cord front 40 cm long", head=head)
    assert (made, said.code, said.severity) == (None, "cord-on-child", Severity.ERROR)
    assert any("EN 14682" in note for note in in_english(said).notes)


@pytest.mark.parametrize(
    ("sizes", "children"),
    [
        ("toddler woman", True),
        ("woman_shoe_7 youth_shoe_4", True),
        ("cot bed", True),
        ("9_months 14_years", True),
        ("14_years 16_years", True),
        ("15_years 16_years", False),
        ("woman man", False),
        ("childlike grown", False),
    ],
)
def test_a_size_that_is_called_as_a_child_s_makes_it_one_for_children(sizes: str, children: bool) -> None:
    """14 years: EN 14682."""
    made, _ = understood(piece(), head=HEAD.replace(WRITTEN, f"sizes {sizes}\n    length 40 42 cm"))
    assert made is not None
    assert made.for_children == children


def test_the_message_names_the_size_of_a_child() -> None:
    _, (said,) = understood(
        piece(), "cord front 40 cm long", head=HEAD.replace(WRITTEN, "sizes toddler woman\n    length 40 42 cm")
    )
    assert any("`toddler` is a size for children" in label for label in in_english(said).labels)
