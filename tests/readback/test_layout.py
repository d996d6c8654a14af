"""The layout of the text: headings tell names, heads tell sizes, lines are put together again."""

from __future__ import annotations

import pytest

from tests.in_english import WRITING, heading, is_note, laid_out
from walewright.knit.copies import NONE, Copy
from walewright.knit.steps import Linked
from walewright.write.sections import link_name


@pytest.mark.parametrize(
    ("name", "copies", "printed"),
    [
        ("back", 1, "Back"),
        ("back welt", 1, "Back welt"),
        ("sleeve", 2, "Sleeve (knit 2)"),
        ("Sleeve", 2, "“Sleeve” (knit 2)"),
        ("ßleeve", 1, "“ßleeve”"),
        ("_1", 1, "“\N{NO-BREAK SPACE}1”"),
        ("äußeres", 12, "Äußeres (knit 12)"),
        ("joining", 1, "Joining"),
        # Else it would look like a chart's heading.
        ("chart welt", 1, "“chart welt”"),
        ("chart", 1, "Chart"),
    ],
)
def test_names_are_told_by_their_heading(name: str, copies: int, printed: str) -> None:
    assert heading(name, (copies,)) == printed
    (section,) = laid_out(f"Sizes M\n\n{printed}\n{'=' * len(printed)}\n").sections
    assert (section.name, section.copies) == (name, (copies,))


@pytest.mark.parametrize(
    ("linked", "printed"),
    [
        (Linked("back", "shoulder right", NONE), "Join the right shoulder of the back on the bed"),
        (Linked("left_front", "end", NONE), "Join the last row of the left\N{NO-BREAK SPACE}front on the bed"),
        (Linked("of", "left", NONE), "Join the left of the of on the bed"),
        (Linked("sleeve", "first end", Copy(2)), "Join the left end of the 2nd sleeve on the bed"),
    ],
)
def test_links_are_told_by_their_heading(linked: Linked, printed: str) -> None:
    assert link_name(linked, WRITING) == printed
    (section,) = laid_out(f"Sizes M\n\n{printed}\n{'=' * len(printed)}\n").sections
    assert (section.name, section.joining) == (linked.name, False)
    before = "Before joining" + printed.removeprefix("Join")
    assert laid_out(f"Sizes M\n\n{before}\n{'=' * len(before)}\n").sections[0].joining


TEXT = """\
Sizes XS (2X: 3-6m)

Back
====

Knit
----
[ ] Knit 3
    rows.

-   Note: a note that

2X, 3-6m only

[ ] [ ] One
        two.
-   Three.

All sizes
---------
[ ] Four.

Joining
=======
"""


def test_lines() -> None:
    page = laid_out(TEXT)
    assert page.sizes == ("XS", "2X", "3-6m")
    assert page.strange == ()
    back, joining = page.sections
    assert joining.lines == ()
    told = [(line.words, line.only) for line in back.lines]
    some = frozenset({"2X", "3-6m"})
    assert told == [("Knit 3 rows.", None), ("Note: a note that", None), ("One two.", some), ("Three.", some), ("Four.", None)]
    assert [is_note(line) for line in back.lines] == [False, True, False, False, False]
    assert TEXT[back.lines[2].start : back.lines[2].end] == "[ ] [ ] One\n        two."


def test_boxes_beneath_a_line_are_no_words_of_it() -> None:
    steps = "[ ] [ ] 1. One\n            two.\n            [ ] [ ] [ ]\n( ) 2. Three.\n    ( )\n"
    page = laid_out(f"Sizes M\n\nGore (knit 10)\n==============\n\n{steps}")
    (gore,) = page.sections
    assert page.strange == ()
    assert [line.words for line in gore.lines] == ["One two.", "Three."]


@pytest.mark.parametrize(
    "row", ["Knit 3 rows.", " [ ] Knit", "1st size", "--", "[x] Knit", "    indented after nothing", "Sizes M"]
)
def test_rows_that_are_nothing(row: str) -> None:
    text = f"Sizes M\n\nBack\n====\n\n{row}\n"
    page = laid_out(text)
    (place,) = page.strange
    assert text[slice(*place)] == row


CHART = """\
Sizes M

Chart rose
==========

-   Note: a note that
    goes on

Columns 1 to 2 of 2:

    1 2
2 | = | | 2
1 | - = | 1

Repeat: none; the 2 columns and 2 rows are
    worked once.
Key: =  leave the needle
    3 times.

Joining
=======
"""


def test_charts() -> None:
    """Their notes are not read; rows keep their blanks, long lines are put together again."""
    page = laid_out(CHART)
    assert page.strange == ()
    assert [s.name for s in page.sections] == ["joining"]
    (sheet,) = page.sheets
    assert sheet.name == "rose"
    assert [line.words for line in sheet.lines] == [
        "Columns 1 to 2 of 2:",
        "    1 2",
        "2 | = | | 2",
        "1 | - = | 1",
        "Repeat: none; the 2 columns and 2 rows are worked once.",
        "Key: =  leave the needle 3 times.",
    ]
    assert CHART[sheet.lines[-1].start : sheet.lines[-1].end] == "Key: =  leave the needle\n    3 times."
    assert CHART[sheet.start : sheet.end] == "Chart rose"
