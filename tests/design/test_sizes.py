"""The size table: written rows, rows from shipped tables, and the numbers no body has."""

from __future__ import annotations

import pytest

from walewright.design.findings import Findings
from walewright.design.model import Measurement
from walewright.design.model.credit import Credit
from walewright.design.reading.sizes import grade
from walewright.design.reading.tables import Shipped
from walewright.design.reading.units import NUMBER, ROWS, STITCHES, Dimension
from walewright.fit.passing import credited
from walewright.guide.english import LANGUAGE
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity, Span
from walewright.source.syntax import Number, OwnFigure, SizeRow, Sizes

HEADER = Span("s.wale", 0, 10)
ROW = Span("s.wale", 20, 30)

Rows = tuple[dict[str, Measurement | None], tuple[Diagnostic, ...]]


def graded(shipped: Shipped, *rows: SizeRow, names: tuple[str, ...] = ("S", "M", "L"), chosen: tuple[str, ...] = ()) -> Rows:
    findings = Findings()
    made = grade(Sizes(names, rows, span=HEADER), chosen or names, shipped, findings)
    return dict(made.rows), findings.all()


def test_inches_become_centimetres(shipped: Shipped) -> None:
    rows, told = graded(shipped, SizeRow("chest", (30, 32, 34), "in"))
    assert not told
    chest = rows["chest"]
    assert chest is not None
    assert chest.values == pytest.approx((76.2, 81.28, 86.36))


def test_a_published_row_is_the_middle_of_its_range_with_its_credit(shipped: Shipped) -> None:
    rows, told = graded(shipped, SizeRow("bust", table="women", table_row="bust", to_fit=True))
    assert not told
    bust = rows["bust"]
    assert bust is not None
    assert bust.values == (83.5, 94.0, 104.0)
    assert bust.to_fit
    assert bust.credit == Credit(("Craft Yarn Council's www.YarnStandards.com",))


def test_chosen_sizes_keep_the_order_of_the_header(shipped: Shipped) -> None:
    rows, _ = graded(shipped, SizeRow("length", (50, 52, 54), "cm"), chosen=("S", "L"))
    length = rows["length"]
    assert length is not None
    assert length.values == (50.0, 54.0)


def test_a_figure_from_memory_is_used_with_a_warning(shipped: Shipped) -> None:
    rows, (said,) = graded(shipped, SizeRow("arm", table="men", table_row="upper_arm"))
    assert said.code == "table-from-memory"
    assert said.severity is Severity.WARNING
    arm = rows["arm"]
    assert arm is not None
    assert arm.credit is not None
    assert arm.credit.recalled


@pytest.mark.parametrize(("values", "lacking"), [((50, 52), ("no value for L",)), ((50, 52, 54, 56), ())])
def test_a_ragged_row_shows_the_row_and_the_header(shipped: Shipped, values: tuple[float, ...], lacking: tuple[str, ...]) -> None:
    rows, (said,) = graded(shipped, SizeRow("length", values, "cm", span=ROW))
    assert rows["length"] is None
    assert said.code == "ragged-row"
    assert [label.span for label in said.labels] == [ROW, HEADER]
    assert in_english(said).notes == lacking


@pytest.mark.parametrize(
    ("row", "code"),
    [
        (SizeRow("length", (50, 52, 54), to_fit=True), "no-unit"),
        (SizeRow("length", (50, 52, 54), "ell"), "unknown-name"),
        (SizeRow("length", (50, 52, 54), "g"), "wrong-unit"),
        (SizeRow("length", (50, 52, 54), "rows", to_fit=True), "wrong-unit"),
        (SizeRow("length", (50, 52, 54), "%", to_fit=True), "wrong-unit"),
        (SizeRow("length", (-1, 52, 54), "cm"), "negative-measurement"),
        (SizeRow("length", (50, 52, 3000), "cm"), "absurd-measurement"),
        (SizeRow("bust", table="wimen", table_row="bust"), "unknown-table"),
        (SizeRow("bust", table="women", table_row="busts"), "unknown-table-row"),
        (SizeRow("bust", table="baby", table_row="chest"), "unknown-table-size"),
    ],
)
def test_a_faulty_row_has_no_value_and_one_message(shipped: Shipped, row: SizeRow, code: str) -> None:
    rows, told = graded(shipped, row)
    assert list(rows.values()) == [None]
    assert [d.code for d in told] == [code]


def test_what_a_table_has_is_listed(shipped: Shipped) -> None:
    _, (table,) = graded(shipped, SizeRow("bust", table="wimen", table_row="bust"))
    assert "men, women" in in_english(table).notes[0]
    assert in_english(table).helps == ("`women` is close",)
    _, (row,) = graded(shipped, SizeRow("bust", table="women", table_row="busts"))
    assert "cross_back" in in_english(row).notes[0]
    _, (size,) = graded(shipped, SizeRow("bust", table="women", table_row="bust"), names=("M", "XXL"))
    assert size.sizes == ("XXL",)
    assert "5X" in in_english(size).notes[0]


def test_only_the_sizes_concerned_are_named(shipped: Shipped) -> None:
    _, (said,) = graded(shipped, SizeRow("length", (50, 52, 3000), "cm"))
    assert said.sizes == ("L",)


def test_a_row_that_falls_is_a_warning(shipped: Shipped) -> None:
    rows, (said,) = graded(shipped, SizeRow("length", (50, 54, 52), "cm"))
    assert said.code == "row-falls"
    assert said.severity is Severity.WARNING
    assert rows["length"] is not None


def test_repeated_sizes_and_rows(shipped: Shipped) -> None:
    rows = (SizeRow("length", (1, 2, 3), "cm", span=ROW), SizeRow("length", (4, 5, 6), "cm", span=Span("s.wale", 40, 50)))
    made, told = graded(shipped, *rows)
    assert [d.code for d in told] == ["repeated-name"]
    length = made["length"]
    assert length is not None
    assert length.values == (1.0, 2.0, 3.0)
    _, told = graded(shipped, names=("S", "S"))
    assert [d.code for d in told] == ["repeated-name"]


def own(size: str, value: float, unit: str | None = "cm") -> OwnFigure:
    return OwnFigure(size, Number(value, unit, span=ROW), span=ROW)


def test_own_figures_stand_where_the_table_has_none(shipped: Shipped) -> None:
    lacking = SizeRow("waist", table="men", table_row="waist", own=(own("3X", 132),))
    rows, told = graded(shipped, lacking, names=("XL", "3X", "4X"))
    assert (rows["waist"], told[0].code, told[0].sizes) == (None, "unknown-table-size", ("4X",))
    assert in_english(told[0]).helps == ("give them here: `waist from men waist, 3X 132 cm, 4X ... cm`, with your own figures",)
    whole = SizeRow("waist", table="men", table_row="waist", own=(own("3X", 132), own("4X", 55, "in")))
    rows, told = graded(shipped, whole, names=("XL", "3X", "4X"))
    assert [(d.code, d.sizes) for d in told] == [("table-from-memory", ("XL",))]
    waist = rows["waist"]
    assert waist is not None
    assert waist.values == pytest.approx((109.25, 132.0, 139.7))
    assert waist.credit is not None
    assert (waist.credit.recalled, waist.credit.own) == (True, ("3X", "4X"))
    assert LANGUAGE.said(credited(waist.credit)).endswith("(from memory, not seen), but 3X, 4X the author’s own")


@pytest.mark.parametrize(
    ("figures", "code"),
    [
        ((own("7X", 132),), "unknown-size"),
        ((own("M", 95), own("M", 96)), "repeated-name"),
        ((own("M", 95, None),), "no-unit"),
        ((own("M", 95, "g"),), "wrong-unit"),
        ((own("M", 0),), "not-positive"),
    ],
)
def test_own_figures_that_cannot_be_used(shipped: Shipped, figures: tuple[OwnFigure, ...], code: str) -> None:
    _, told = graded(shipped, SizeRow("bust", table="women", table_row="bust", own=figures))
    assert [d.code for d in told] == [code]


def test_a_likely_misprint_is_named_with_its_figure_and_why(shipped: Shipped) -> None:
    rows, (said,) = graded(shipped, SizeRow("back", table="women", table_row="cross_back"), names=("L", "2X", "4X"))
    assert (said.code, said.severity, said.sizes) == ("table-slip", Severity.WARNING, ("2X", "4X"))
    assert in_english(said).message == "`cross_back` in the table `women` is likely misprinted in its source: 2X 45.5 cm, 4X 47 cm"
    assert all("arm_length_to_underarm" in note for note in in_english(said).notes)
    back = rows["back"]
    assert back is not None
    assert back.values == (42.5, 45.5, 47.0)
    _, quiet = graded(shipped, SizeRow("back", table="women", table_row="cross_back", own=(own("2X", 47),)), names=("L", "2X"))
    assert quiet == ()


@pytest.mark.parametrize(
    ("unit", "kind", "amounts"),
    [
        (None, NUMBER, (5.0, 6.0, 7.0)),
        ("stitches", STITCHES, (5.0, 6.0, 7.0)),
        ("rows", ROWS, (5.0, 6.0, 7.0)),
        ("%", NUMBER, (0.05, 0.06, 0.07)),
    ],
)
def test_a_row_may_count_in_place_of_measuring(
    shipped: Shipped, unit: str | None, kind: Dimension, amounts: tuple[float, ...]
) -> None:
    findings = Findings()
    made = grade(Sizes(("S", "M", "L"), (SizeRow("holes", (5, 6, 7), unit),)), ("S", "M", "L"), shipped, findings)
    assert findings.all() == ()
    assert made.rows == {}
    value = made.values()["holes"]
    assert value is not None
    assert (value.dimension, value.amounts) == (kind, amounts)
