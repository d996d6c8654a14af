"""Messages that tell how to mend, each with a source that causes it: the help is there, and where it changes the text, its edit
makes the message go away."""

from __future__ import annotations

import pytest

from tests.whole.shipped_once import SHIPPED
from walewright import pipeline
from walewright.cli.edits import applied, edits_of
from walewright.design import Changes
from walewright.report.english import in_english
from walewright.report.model import Diagnostic

SOURCE = """\
pattern "Panel"

sizes S
    length 40 cm

machine standard

yarn wool "wool", 100 g = 220 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 20 cm by 21 cm, 21 g

shape waist(narrow, wide, by)
    edges slope by -by at narrow
    edges slope by by at wide

piece front in plain
    levels hem 0 cm, low 20 cm, high 30 cm, top 40 cm
    start 30 cm wide with e-wrap
    edges straight to top
    end cast off
"""


def told(old: str, new: str, code: str) -> tuple[pipeline.Outcome, Diagnostic]:
    """What is told of the source with something written otherwise."""
    assert SOURCE.count(old) == 1
    text = SOURCE.replace(old, new)
    outcome = pipeline.compile(text, "panel.wale", SHIPPED, Changes())
    (found,) = (d for d in outcome.diagnostics if d.code == code)
    return outcome, found


EDGES = "    edges straight to top"
WRONG = {
    "copies": ("piece front in plain", "piece front in plain, knit 1000", "absurd-count", "write `100` in place of `1000`"),
    "no copies": ("piece front in plain", "piece front in plain, knit 0", "not-positive", "write `1` in place of `0`"),
    "times": (EDGES, f"{EDGES}\n    repeat 1 times from low to high", "not-positive", "write `2` in place of `1`"),
    "a distance": (
        "machine standard",
        "machine own\n    needles 200\n    pitch 9",
        "bad-machine-fact",
        "write `9 mm` in place of `9`",
    ),
}
CHANGED = tuple(WRONG)


@pytest.mark.parametrize("name", CHANGED)
def test_a_number_out_of_its_bounds_is_mended_by_an_edit(name: str) -> None:
    old, new, code, help_ = WRONG[name]
    outcome, found = told(old, new, code)
    assert help_ in in_english(found).helps
    edits = edits_of(outcome, again, found, in_english(found).helps.index(help_))
    assert edits
    after = again(applied(outcome.text, edits))
    assert code not in [d.code for d in after.diagnostics]


def again(text: str) -> pipeline.Outcome:
    return pipeline.understood(text, "panel.wale", SHIPPED, Changes())


HELPED = {
    "a fact": ("machine standard", "machine own\n    needles\n    pitch 9 mm", "bad-machine-fact", "as in `needles 200`"),
    "needles": ("machine standard", "machine own\n    needles 4\n    pitch 9 mm", "bad-machine-fact", "as in `needles 200`"),
    "a line elsewhere": (
        EDGES,
        f"{EDGES}\n    swatch 4 stitches by 6 rows = 2 cm by 2 cm",
        "misplaced-line",
        "in a `fabric` block",
    ),
    "two units": ("levels hem 0 cm", "levels hem length - 30 g", "mixed-units", "the same kind of unit"),
    "a quantity": (EDGES, "    use waist, narrow 10 cm, wide high, by 2 cm", "name-expected", "write the name of a level there"),
    "an edge": ("    end cast off", "    end cast off\njoin front sied to front start", "no-such-edge", "write one of those"),
    "a width": ("start 30 cm wide", "start 0 cm wide", "not-positive", "above zero"),
    "required": ("shape waist", "require length >= 41 cm\n\nshape waist", "require-fails", "make `length` larger, by 1 cm"),
    "a value": (EDGES, "    use waist, narrow low, wide high, by 2 cm, xxyz 3 cm", "unknown-argument", "write one of those"),
    "a table's row": ("    length 40 cm", "    length from women sleeve", "unknown-table-row", "write one of those"),
}


@pytest.mark.parametrize("name", tuple(HELPED))
def test_what_cannot_be_is_helped(name: str) -> None:
    old, new, code, help_ = HELPED[name]
    _, found = told(old, new, code)
    assert any(help_ in one for one in in_english(found).helps), in_english(found).helps


def test_a_colour_is_told_at_its_place() -> None:
    outcome, found = told("100 g = 220 m", '100 g = 220 m, shown "navy"', "bad-colour")
    span = found.labels[0].span
    assert outcome.text[span.start : span.end] == 'shown "navy"'


@pytest.mark.parametrize(
    ("line", "code", "message", "helps"),
    [
        (
            "edges straight to low\n    edges cast off 8 cm then straight to top",
            "cast-off-too-wide",
            "more is cast off than the edge moves in to `top`",
            ("leave out what is cast off",),
        ),
        (
            "edges straight to low\n    edges cast off 3 cm then curve to 40 cm wide at top",
            "cast-off-too-wide",
            "stitches are cast off, and then the edge moves out to `top`",
            ("write a width below the one that the edges come from",),
        ),
        (
            "edges slope to 4 cm wide at low\n    edges straight to top",
            "slope-too-flat",
            "the edge to `low` moves by more stitches than its rows allow",
            ("move several stitches at a time", "a `wedge`"),
        ),
        (
            "edges straight to top\n    left shoulder held at top",
            "unreadable-line",
            "`at` cannot follow `left shoulder held`",
            ("such a line reads `left shoulder held from tip`",),
        ),
    ],
)
def test_a_message_leads_to_what_was_meant(line: str, code: str, message: str, helps: tuple[str, ...]) -> None:
    levels = "levels hem 0 cm, low 1 cm, high 30 cm" if code == "slope-too-flat" else "levels hem 0 cm, low 20 cm, high 30 cm"
    text = SOURCE.replace("edges straight to top", line).replace("levels hem 0 cm, low 20 cm, high 30 cm", levels)
    outcome = pipeline.compile(text, "panel.wale", SHIPPED, Changes())
    (found,) = (in_english(d) for d in outcome.diagnostics if d.code == code)
    assert found.message == message
    assert all(any(one in help_ for help_ in found.helps) for one in helps), found.helps


def test_what_may_stand_in_a_piece_has_the_shoulder_of_one_side() -> None:
    _, found = told(EDGES, f"{EDGES}\n    sholders held from tip", "unreadable-line")
    (note,) = in_english(found).notes
    assert "`left shoulder`" in note
    assert "`right shoulder`" in note


def test_a_part_of_a_neck_is_no_sum_but_an_amount_with_its_word() -> None:
    _, found = told(EDGES, f"{EDGES}\n    neck 12 cm wide, with rim", "unreadable-line")
    (note,) = in_english(found).notes
    assert note.startswith("here can stand: an amount that is `deep` or `flat`, ")
    assert "`round`" in note
    assert not any(word in note for word in ("a number", "brackets", "round("))


def test_where_rows_are_missing_is_said_of_one_and_of_many() -> None:
    line = "    buttonholes 3 over 2 stitches from hem to top, 2 cm from left edge"
    outcome = pipeline.compile(SOURCE.replace(EDGES, f"{EDGES}\n{line}"), "panel.wale", SHIPPED, Changes())
    (found,) = (in_english(d) for d in outcome.diagnostics if d.code == "slot-at-edge")
    assert found.message == "the buttonholes of piece `front` cannot be at `hem`: there are no rows below it"
