"""A damaged chart is refused at its place, or knits another fabric; it never passes unseen and never is an exception."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as hs

from tests.draws import draws
from tests.in_english import plain_text, read_back, write
from tests.write.chart_garments import LOZENGE, ROSE, WIDE, worked
from walewright.knit import steps as st
from walewright.report.english import in_english

PLAN = worked(
    "M",
    (
        st.StartChart("lozenge", "lace", "whole", -18, 17, 2, -18),
        st.KnitRows(8),
        st.StopChart("lozenge"),
        st.StartChart("rose", "", "panel", -2, 1, 0, -2),
        st.KnitRows(4),
        st.StopChart("rose"),
        st.StartChart("wide", "", "panel", -18, 17, 0, -18),
        st.KnitRows(2),
    ),
)
TEXT = plain_text(write((PLAN,), charts=(LOZENGE, ROSE, WIDE)))
WORK, _ = read_back(TEXT, 0)


@pytest.mark.parametrize(
    ("there", "instead"),
    [
        ("2 | C C C C . . | . x . | 2", "2 | C C C C . . . . x . | 2"),
        ("1 | . . O A < O - . . - | 1", "1 | . . . . . . - . . - | 1"),
        ("1 | . . O A < O - . . - | 1", "1 | . . O A < . - . . - | 1"),
        ("1 | x x x . | 1", "1 | x x . . | 1"),
        ("hanging the\n    right first", "hanging the\n    left first"),
        ("Key: x  lay navy.", "Key: x  lay red."),
        ("lay navy.\nKey: 1  lay red.", "lay red.\nKey: 1  lay navy."),
        ("column on L 2", "column on L 1"),
        ("tension 4.. Cast", "tension 4. Cast"),
    ],
)  # fmt: skip
def test_another_fabric_is_read_from_other_words(there: str, instead: str) -> None:
    assert there in TEXT
    work, _ = read_back(TEXT.replace(there, instead, 1), 0)
    assert work != WORK


@pytest.mark.parametrize(
    ("there", "instead", "code", "message"),
    [
        ("3 | . / O . . . | . v l | 3\n", "", "words-contradict", "row 2 stands below row 4"),
        ("4 | . . O \\ . - | . u u | 4\n", "", "words-contradict", "the chart has 3 rows"),
        ("1 | . . O A < O - . . - | 1\n", "", "words-contradict", "no row below row 2"),
        ("3 | . / O . . . | . v l | 3", "3 | . / O . . . | . v l | 4", "words-contradict", "number 3 at its left end and 4"),
        ("3 | . / O . . . | . v l | 3", "3 | . / O . . | . v l | 3", "words-contradict", "9 symbols stand here for 10 columns"),
        ("3 | . / O . . . | . v l | 3", "3 | . / Q . . . | . v l | 3", "words-unreadable", "the key has no Q"),
        ("3 | . / O . . . | . v l | 3", "3 | . / O.. . | . v l | 3", "words-unreadable", "no row, no key and no note"),
        ("Columns 1 to 10 of 10:", "Columns 1 to 10 of 11:", "words-contradict", "ends with column 10 of 11"),
        ("Columns 1 to 10 of 10:", "Column 1 to 10 of 10:", "words-unreadable", "no row, no key and no note"),
        ("    1       5        10", "    1       6        10", "words-contradict", "column number 6 does not stand"),
        ("Columns 35 to 72 of 100, columns 35 to 38", "Columns 36 to 72 of 100, columns 36 to 38", "words-contradict", ""),
        ("72 of 100, columns 35 to 38", "72 of 100, columns 36 to 38", "words-contradict", "do not go on"),
        ("Columns 35 to 72 of 100, columns 35 to 38", "Columns 39 to 72 of 100, columns 39 to 38", "words-contradict", ""),
        ("Key: O  leave the needle empty in work;", "Key: O  leave the needle empty;", "words-unreadable", "make no sense"),
        ("Key: O  leave", "Key: O leave", "words-unreadable", "make no sense"),
        ("Key: l  hold", "Key: v  hold", "words-contradict", "v has two meanings"),
        ("exchange the left 2 and", "exchange the left 3 and", "words-contradict", "3 and 2 are not the halves of 4"),
        ("goes one needle to\n    the left.", "goes one needle to\n    the right.", "words-contradict", "a loop comes from"),
        ("Repeat: columns 1 to 10 across", "Repeat: columns 1 to 9 across", "words-contradict", "not those beside the repeat"),
        ("Repeat: columns 1 to 10 across", "Repeat: columns 2 to 11 across", "words-contradict", "the chart has 10 columns"),
        ("Repeat: columns 1 to 10 across", "Repeat: columns 0 to 10 across", "words-contradict", "the chart has 10 columns"),
        ("columns 1 to 3 once at the left", "columns 1 to 2 once at the left", "words-contradict", "not those beside the repeat"),
        ("the 4 columns and 3 rows", "the 4 columns and 2 rows", "words-contradict", "4 columns and 3 rows"),
        ("Repeat: none; the 4 columns and 3 rows are worked once.\n", "", "words-contradict", "has to say once what is repeated"),
        ("Chart rose\n==========", "Chart lozenge\n=============", "words-contradict", "two charts lozenge"),
        ("Chart rose\n==========", "Chart daisy\n===========", "words-contradict", "there is no chart rose"),
        ("Key: x  lay navy.", "Key: x  knit plain.", "words-contradict", "only a chart whose yarns are laid by hand"),
        ("The chart “lozenge” ends", "The chart “wide” ends", "words-contradict", "the chart wide is not being worked"),
    ],
)  # fmt: skip
def test_damage_is_found(there: str, instead: str, code: str, message: str) -> None:
    assert there in TEXT
    work, faults = read_back(TEXT.replace(there, instead, 1), 0)
    assert work is None
    assert code in {f.code for f in faults}
    assert any(message in in_english(f).message for f in faults), faults


def test_strips_that_disagree_where_they_overlap() -> None:
    lines = TEXT.split("\n")
    begin = next(i for i, line in enumerate(lines) if line.startswith("Columns 35 to 72"))
    at = next(i for i in range(begin, len(lines)) if lines[i].startswith("199 |"))
    assert lines[at][6:12] == "u v . "
    lines[at] = lines[at].replace("| u", "| -", 1)
    text = "\n".join(lines)
    work, faults = read_back(text, 0)
    assert work is None
    (fault,) = faults
    assert fault.code == "words-contradict"
    assert in_english(fault).message == "chart wide: row 199 has other symbols where the strips overlap"
    span = fault.labels[0].span
    assert text[span.start : span.end] == lines[at]


def test_a_row_missing_in_one_strip() -> None:
    begin = TEXT.index("Columns 35 to 72")
    at = TEXT.index("\n200 |", begin)
    end = TEXT.index("\n", at + 1)
    work, faults = read_back(TEXT[:at] + TEXT[end:], 0)
    assert work is None
    assert in_english(faults[0]).message == "chart wide: row 200 does not stand in every strip"


def test_a_fault_points_at_the_key_s_line_with_all_its_words() -> None:
    text = TEXT.replace("marks\n    beside it show", "marks\n    below it show")
    _, (fault,) = read_back(text, 0)
    span = fault.labels[0].span
    assert text[span.start : span.end].startswith("Key: O  leave")
    assert text[span.start : span.end].endswith("below it show.")


@settings(max_examples=draws(150), deadline=None)
@given(hs.data())
def test_any_damage_is_a_value(data: hs.DataObject) -> None:
    """A letter changed, a stretch cut out or a line doubled in the small charts: faults or moves, never an exception."""
    begin, end = TEXT.index("Chart lozenge"), TEXT.index("Chart wide")
    at = data.draw(hs.integers(begin, end))
    till = data.draw(hs.integers(at, min(at + 40, end)))
    instead = data.draw(hs.sampled_from(("", "x", "9", "|", "\n", "=", ". ", TEXT[at:till] * 2)))
    work, faults = read_back(TEXT[:at] + instead + TEXT[till:], 0)
    assert (work is None) == bool(faults)
