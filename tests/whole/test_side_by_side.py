"""Openings side by side in the same rows, from source to proof; and what is damaged in counts or in words."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from tests.whole.garment import SHIPPED
from tests.whole.glued_garments import misread
from walewright.counted import counted_piece
from walewright.counted.model import SizedOpening
from walewright.design import Changes
from walewright.knit import steps as st
from walewright.knit.steps import Step
from walewright.pipeline import Outcome, compile
from walewright.proof.counted import as_counted
from walewright.report.english import in_english

HEAD = """\
pattern "Parts"
sizes S M
    width 46 52 cm
    length 48 51 cm
machine standard
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm
fabric rib
    latched rib every 3rd needle in wool at tension 5
    swatch 40 stitches by 60 rows = 13.4 cm by 13.8 cm
edging welt in rib, 3 cm deep, added after, cast off chain
edging collar in rib, 2 cm deep, added after, cast off chain
"""
PONCHO = """\
piece front in plain
    levels hem 0 cm, foot 16 cm, head 30 cm, tip length - 2 cm, top length
    start width wide on waste yarn, with welt
    edges straight to tip called side
    opening left_slit 0 cm wide from foot to head, 14 cm left of centre
    opening right_slit 0 cm wide from foot to head, 14 cm right of centre
    neck 18 cm wide, 8 cm deep, round
    shoulders held from tip
    end cast off
piece back like front
    neck 18 cm wide, 2.5 cm deep, round
    without left_slit
    without right_slit
band left_band with collar along front left_slit
band right_band with collar along front right_slit
band neckband with collar along front neck + back neck
join front shoulder to back shoulder
join front side to back side
"""
IN_TURN = """\
piece front in plain
    levels hem 0 cm, one 8 cm, two 14 cm, three 22 cm, four 28 cm, five 34 cm, top length
    start width wide with e-wrap
    edges slope by -3 cm at top called side
    opening a 3 cm wide from one to three, 14 cm left of centre, cast off
        edges cast off 1 cm then curve to 6 cm wide at three
    opening b 2 cm wide from two to five, cast off
        left edge steps 1 cm 2 times to four
        left edge straight to five
        right edge slope by -1 cm at five
    opening c 3 cm wide from two to four, 14 cm right of centre, cast off
        edges slope to 0 cm wide at four
    end cast off
free front side
"""
TO_THE_TOP = """\
piece front in plain
    levels hem 0 cm, one 8 cm, two 14 cm, three 30 cm, top length
    start width wide with e-wrap
    edges straight to top called side
    opening a 2 cm wide from one to three, 14 cm left of centre, cast off
    opening neck 0 cm wide from two to top
        edges slope to 10 cm wide at top, fashioned 3 in
    opening c 2 cm wide from two to three, 14 cm right of centre, cast off
        edges out 1 stitch every 8 rows to three
    end cast off
free front side + front shoulder
"""
PATTERNED = """\
yarn ink "wool", 50 g = 200 m
fabric striped
    stripes of 2 rows wool, {second} rows ink at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm
fabric lace
    chart eyelet_bricks in wool at tension 7, centred, 3 edge stitches
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm
fabric holes
    chart eyelet_bricks in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm
fabric columns
    latched rib every 2nd needle in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm
piece front in plain
    levels hem 0 cm, one 8 cm, two 14 cm, three 22 cm, four 28 cm, five 34 cm, top length
    start width wide with e-wrap
    edges in 1 stitch every 10 rows to three called side
    edges out 1 stitch every 12 rows to top called side
    opening a 0 cm wide from one to four, 14 cm left of centre
    opening b 2 cm wide from two to five, cast off
        edges cast off 1 cm then curve to 5 cm wide at five
    opening c 0 cm wide from one to five, 14 cm right of centre
    {within}
    end cast off
free front side
"""
WITHIN = {
    "stripes that end in the midst": "fabric striped from hem to three",
    "stripes that begin with the parts and end with them": "fabric striped from one to five",
    "stripes that begin in the midst": "fabric striped from three to top",
    "lace to where one rejoins": "fabric lace from one to four",
    "lace in the midst": "fabric lace from two to three",
    "columns in an inner part": "fabric columns from two to three, 3 cm wide, 7 cm right of centre",
    "columns in the left part": "fabric columns from three to five, 2 cm wide, 17 cm left of centre",
    "lace in a part": "fabric holes from two to three, 5 cm wide, 8 cm left of centre",
    "wedges in the outer parts": "wedge 4 cm wide at both edges from four to five, held in",
}
KINDS = {"poncho": PONCHO, "in turn": IN_TURN, "to the top": TO_THE_TOP}


def compiled(text: str) -> Outcome:
    return compile(HEAD + text, "parts.wale", SHIPPED, Changes())


@pytest.fixture(scope="module")
def outcomes() -> dict[str, Outcome]:
    return {kind: compiled(text) for kind, text in KINDS.items()}


@pytest.mark.parametrize("kind", KINDS)
def test_openings_side_by_side_are_proven(outcomes: dict[str, Outcome], kind: str) -> None:
    outcome = outcomes[kind]
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]


@pytest.mark.parametrize("second", [2, 10])
@pytest.mark.parametrize("within", WITHIN)
def test_what_lies_in_several_parts_is_worked_in_each(within: str, second: int) -> None:
    """A yarn that waits for more than four rows is broken off."""
    text = PATTERNED.format(second=second, within=WITHIN[within])
    if "wedge" in within:
        text = text.replace("edges in 1 stitch every 10 rows to three", "edges straight to three").replace(
            "edges out 1 stitch every 12 rows to top", "edges straight to top"
        )
    outcome = compiled(text)
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]


def titles(outcome: Outcome, block: int = 0) -> list[str]:
    assert outcome.instructions is not None
    return [
        paragraph.title.replace("\u00a0", " ") for paragraph in outcome.instructions.sections[block].paragraphs if paragraph.title
    ]


def test_each_part_has_its_turn(outcomes: dict[str, Outcome]) -> None:
    assert titles(outcomes["poncho"])[1:-2] == [
        "Knit",
        "Part for the left slit and the right slit",
        "Left part",
        "Return to the middle part",
        "Middle part",
        "Return to the right part",
        "Right part",
        "Close the left slit and the right slit",
        "Over the whole width",
        "Part for the neck",
        "Right half",
        "Return to the left half",
    ]
    assert titles(outcomes["in turn"])[1:-2] == [
        "Knit and shape",
        "Part for the a",
        "Left part",
        "Return to the right part",
        "Right part",
        "Part for the b and the c",
        "Part 2 from the left",
        "Close the a",
        "Left part",
        "Return to part 3 from the left",
        "Part 3 from the left",
        "Return to the right part",
        "Right part",
        "Close the c",
        "Right part",
        "Close the b",
        "Over the whole width",
    ]


def steps(outcome: Outcome, size: int = 0) -> list[Step]:
    return [step for _, some in outcome.plans[size].blocks[0].paragraphs for step in some]


def test_a_part_that_is_joined_where_the_carriage_is_not_at_its_end_goes_on_with_a_new_yarn(outcomes: dict[str, Outcome]) -> None:
    made = steps(outcomes["in turn"])
    at = next(n for n, step in enumerate(made) if isinstance(step, st.CastOnBetween))
    assert [type(step) for step in made[at - 3 : at]] == [st.BreakOff, st.CarriageAt, st.UseYarnStep]
    back = next(step for step in made[at:] if isinstance(step, st.ReturnPart))
    now = next(step for step in made[at:] if isinstance(step, st.Now))
    assert (back.side, now.side) == ("left", "left")
    assert isinstance(now, st.NowInHalf)


def test_gaps_are_called_by_their_number_where_several_are_open(outcomes: dict[str, Outcome]) -> None:
    named = [(s.edge, s.gap if isinstance(s, st.GapIs) else 0) for s in steps(outcomes["in turn"]) if isinstance(s, st.EdgeIs)]
    assert named == [("side", 0), ("a", 0), ("b", 2), ("c", 3)]


def test_a_cast_off_at_the_right_end_of_an_inner_part_is_made_a_row_before(outcomes: dict[str, Outcome]) -> None:
    """The carriage is there at even rows; the count has odd ones, of a part that has it at its outer edge then."""
    outcome = outcomes["in turn"]
    assert outcome.counts is not None
    made = outcome.counts.sizes[0].piece("front")
    _, b, _ = made.openings
    due = [row for run in b.left for row, by in run.changes() if by]
    assert {row % 2 for row in due} == {1}
    fabric = outcome.results[0].fabrics[0]
    ends = [fabric.inner_end(row, "left", 1 if row <= made.openings[0].to_row else 0) for row in range(b.row + 1, b.to_row + 1)]
    moved = [b.row + n for n, (one, other) in enumerate(zip([b.first - 1, *ends], ends, strict=False)) if one != other]
    inner = [row for row in due if row < made.openings[0].to_row]
    assert moved[: len(inner)] == [row - 1 for row in inner]
    assert moved[len(inner) :] == due[len(inner) :]


# ----------------------------------------------------------------- damaged


def _first(o: SizedOpening) -> SizedOpening:
    return replace(o, first=o.first + 1)


def _row(o: SizedOpening) -> SizedOpening:
    return replace(o, row=o.row + 2)


def _to_row(o: SizedOpening) -> SizedOpening:
    return replace(o, to_row=o.to_row - 2)


def _flat(o: SizedOpening) -> SizedOpening:
    return replace(o, flat=o.flat + 1)


def _width(o: SizedOpening) -> SizedOpening:
    return replace(o, width=o.width + 1)


@pytest.mark.parametrize("number", range(3))
@pytest.mark.parametrize("damage", [_first, _row, _to_row, _flat, _width])
@pytest.mark.parametrize("kind", ["in turn", "to the top"])
def test_any_number_of_an_opening_that_is_another_is_found(
    outcomes: dict[str, Outcome], kind: str, damage: Callable[[SizedOpening], SizedOpening], number: int
) -> None:
    outcome = outcomes[kind]
    assert outcome.design is not None
    assert outcome.counts is not None
    fabric = outcome.results[0].fabrics[0]
    sized = outcome.counts.sizes[0].piece("front")
    assert all(counted == knitted for _, counted, knitted in as_counted(counted_piece(outcome.design, sized), fabric))
    openings = list(sized.openings)
    openings[number] = damage(openings[number])
    other = counted_piece(outcome.design, replace(sized, openings=tuple(openings)))
    assert any(counted != knitted for _, counted, knitted in as_counted(other, fabric))


IN_WORDS = (
    ("poncho", "The inner edges of the 1st gap", "The inner edges of the 2nd gap"),
    ("poncho", "return the waiting middle part", "return the waiting nearest part"),
    ("poncho", "into the hooks of the middle part, L 39 to R 39", "into the hooks of the middle part, L 39 to R 38"),
    ("poncho", "return the waiting middle part, L 39 to R 39", "return the waiting middle part, L 39 to R 40 (49)"),
    ("in turn", "RC 56 to RC 136, are called “b”", "RC 56 to RC 138, are called “b”"),
    ("in turn", "RC 56 to RC 112, are called “c”", "RC 58 to RC 112, are called “c”"),
    ("in turn", "The inner edges of the 3rd gap", "The inner edges of the 4th gap"),
    ("in turn", "The inner edges of the 2nd gap", "The inner edges of the 3rd gap"),
    ("in turn", "The inner edges of the 2nd gap from the left, from", "The inner edges from"),
    ("in turn", "Set the row counter to 032.", "Set the row counter to 034."),
)


@pytest.mark.parametrize(("kind", "there", "instead"), IN_WORDS)
def test_words_that_say_something_else_are_found(outcomes: dict[str, Outcome], kind: str, there: str, instead: str) -> None:
    text = outcomes[kind].plain_text or ""
    at = text.lower().find(there.lower())
    assert at >= 0, there
    assert misread(HEAD + KINDS[kind], text[:at] + instead + text[at + len(there) :])


CROSSED = """\
piece front in plain
    levels hem 0 cm, one 8 cm, two 14 cm, three 22 cm, four 34 cm, top length
    start width wide with e-wrap
    edges straight to top called side
    opening a 3 cm wide from one to three, 16 cm left of centre, cast off
    opening b 2 cm wide from two to {high}, cast off
    opening c 3 cm wide from three to four, 16 cm right of centre, cast off
    end cast off
free front side
"""


@pytest.mark.parametrize("high", ["four", "top"])
def test_one_ends_in_the_row_where_another_begins_beyond_a_third(high: str) -> None:
    outcome = compile(HEAD + CROSSED.format(high=high), "parts.wale", SHIPPED, Changes())
    assert outcome.proven, [in_english(d).message for d in outcome.diagnostics]
    assert outcome.counts is not None
    for garment in outcome.counts.sizes:
        a, _, c = garment.piece("front").openings
        assert a.to_row == c.row


@pytest.mark.parametrize("third", ["from two to three", "from three to four"])
def test_not_where_the_third_is_not_open_below_and_above(third: str) -> None:
    outcome = compile(HEAD + CROSSED.replace("from two to {high}", third), "parts.wale", SHIPPED, Changes())
    assert "openings-touch" in {d.code for d in outcome.diagnostics}
