"""Stretches of several shapings as tables."""

from __future__ import annotations

from tests.in_english import plain_text, write
from tests.write.rich_garments import yoke, yokes
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.write.model import Paragraph
from walewright.write.plain import WIDTH


def right_half(plans: tuple[SizePlan, ...]) -> tuple[Paragraph, ...]:
    paragraphs = write(plans).sections[0].paragraphs
    titles = [p.title for p in paragraphs]
    return paragraphs[titles.index("Right half") : titles.index("Left half")]


def test_what_goes_on_at_once_is_a_table() -> None:
    table, rest = right_half((yoke("M", 30, 3, (3,), 1),))
    assert (table.title, table.table, rest.title, rest.table) == ("Right half", True, "After that", False)
    note, *rows = table.sentences
    assert note.text == (
        "Note: at the same time cast off at the carriage side, decrease at the right end and decrease at the left end."
        " At each RC do what stands there; the sts are counted after it."
    )
    assert (note.check, note.cells, note.kinds) == (True, None, ())
    assert [r.text for r in rows] == [
        "RC 21, COL: cast off 3 sts at the carriage side; 23 sts.",
        "RC 22: decrease 1 st at the right end, 2 sts in; 22 sts.",
        "RC 24: decrease 1 st at the right end, 2 sts in, decrease 1 st at the left end, 2 sts in; 20 sts.",
        "RC 26: decrease 1 st at the right end, 2 sts in; 19 sts.",
        "RC 27: decrease 1 st at the left end, 2 sts in; 18 sts.",
        "RC 30: decrease 1 st at the left end, 2 sts in; 17 sts.",
        "RC 33: decrease 1 st at the left end, 2 sts in; 16 sts.",
    ]
    cells = rows[0].cells
    assert cells is not None
    assert ["".join(r.text for r in c) for c in (cells.row, cells.carriage, cells.what, cells.stitches)] == [
        "21",
        "COL",
        "Cast off 3 sts at the carriage side",
        "23 sts",
    ]
    assert (rows[0].kinds, rows[0].row, rows[0].check) == (("KnitTo", "CastOffAtCarriage"), "21", False)
    assert rest.sentences[0].text == "Knit to RC 40."


def test_the_carriage_is_told_where_something_is_done_by_its_side() -> None:
    rows = right_half((yoke("M", 30, 3, (3,), 1),))[0].sentences[1:]
    assert [bool(r.cells and r.cells.carriage) for r in rows] == ["carriage" in r.text for r in rows]


def test_columns_where_they_are_narrow_enough() -> None:
    text = plain_text(write((yoke("M", 30, 3, (3,), 1),)))
    assert "[ ]  7. RC 21, COL:  cast off 3 sts at the carriage side;       23 sts.\n[ ]  8. RC 22:       decrease 1 st" in text
    assert (
        "[ ]  9. RC 24:       decrease 1 st at the right end, 2 sts in, decrease 1 st at the left\n"
        "                     end, 2 sts in; 20 sts.\n" in text
    )


def test_a_dash_for_the_counter_is_for_the_whole_row() -> None:
    table = right_half((yoke("S", 30, 4, (3, 2), 1), yoke("M", 34, 5, (3, 2), 1)))[0]
    some = [s.text for s in table.sentences if s.sizes == (1,)]
    assert some == ["RC – (30): decrease 1 st at the right end, 2 sts in; 18 sts."]


def test_a_size_without_the_stretch() -> None:
    none = yoke("S", 30, 0, (), 0)
    (block,) = none.blocks
    plain = tuple((t, tuple(s for s in steps if not isinstance(s, st.Decrease | st.KnitRows))) for t, steps in block.paragraphs)
    empty = SizePlan("S", (StepBlock("back", 1, plain),))
    table, rest = right_half((empty, yoke("M", 34, 5, (3, 2), 1)))
    assert (table.only, rest.only, rest.title) == ("M only", "", "All sizes")


def test_eight_sizes_break_no_number() -> None:
    text = plain_text(write(yokes(8)))
    assert [line for line in text.split("\n") if line.count("(") != line.count(")")] == []
    assert max(len(line) for line in text.split("\n")) <= WIDTH


def texts(*steps: Step) -> list[str]:
    start = (st.NeedlesToWork(-20, 19, 40), st.SetRowCounter(0))
    plan = SizePlan("s", (StepBlock("back", 1, (("Knit", (*start, *steps)),)),))
    return [s.text for p in write((plan,)).sections[0].paragraphs for s in p.sentences if s.cells]


def test_one_shaping_alone_is_no_table() -> None:
    decrease = (st.KnitRows(2), st.Decrease("left end", 1, 0))
    wedge = (st.HoldAtEnd("right", 4), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(1))
    assert texts(*decrease * 6) == []
    assert texts(*wedge * 4, st.ReturnHeld("right")) == []
    assert len(texts(*(decrease + wedge) * 2)) == 4


def test_a_few_rows_are_no_table() -> None:
    one, other = st.Decrease("left end", 1, 0), st.Decrease("right end", 1, 0)
    assert texts(st.KnitRows(1), one, st.KnitRows(1), other, st.KnitRows(1), one) == []
    assert len(texts(st.KnitRows(1), one, st.KnitRows(1), other, st.KnitRows(1), one, st.KnitRows(1), other)) == 4


def test_statements_of_the_source_tell_shapings_apart() -> None:
    left = [st.Decrease("left end", 1, 0, origin=o) for o in ("neck", "neck", "neck", "cap")]
    steps = [x for d in left for x in (st.KnitRows(2), d)]
    assert len(texts(*steps)) == 4
    assert texts(*steps[:6], *steps[:2]) == []


def test_stitches_are_counted_through_everything_before() -> None:
    two = (st.KnitRows(1), st.Decrease("left end", 2, 3), st.KnitRows(1), st.CastOnAtCarriage(3))
    before = (
        st.Repeat((st.KnitRows(2), st.IncreaseFashioned("both ends", 2)), 3),
        st.HoldAtEnd("left", 5),
        st.HoldAtEnd("left", 2),
        st.ReturnSome("left", 2),
        st.CloseCentre(4, -2, 1),
        st.HoldPart("left", -15, -3),
        st.IncreaseAtCarriage(),
        st.BreakOff(),
    )
    # 40 + 6 - 4 are 42; of them 13 and the 5 held beside them wait; one more makes 25.
    assert [t.rpartition("; ")[2] for t in texts(*before, *two * 2)] == ["23 sts.", "26 sts.", "24 sts.", "27 sts."]
    back = (st.OffOnWaste(8, "end"), st.ReturnPart("left", -15, -3), st.SetRowCounter(4))
    assert [t.rpartition("; ")[2] for t in texts(*before, *back, *two * 2)] == [
        f"{working} sts in work, 5 held." for working in (11, 14, 12, 15)
    ]
    spread = st.SpreadEvenly(-15, 14, 30, "two together", 2, 10, 0, 0)
    assert texts(spread, st.CastOnBetween(2, 15, 16), *two * 2)[0] == "RC 1: decrease 2 sts at the left end, 3 sts in; 30 sts."
