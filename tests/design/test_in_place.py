"""Lengths and counts in one sum, where the fabric is known; rounding up and down."""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.design.conftest import cm
from tests.design.shaped import piece, understood
from walewright.design.findings import Findings
from walewright.design.model import Piece
from walewright.design.reading.values import Scope
from walewright.report.english import in_english
from walewright.source import read
from walewright.source import syntax as s


def front(*lines: str, head: str = "", **more: str) -> Piece:
    design, told = understood(head, piece(*lines, **more))
    assert design is not None, [in_english(d).message for d in told]
    return design.piece("front")


def messages(*parts: str) -> list[tuple[str, str]]:
    _, told = understood(*parts)
    return [(d.code, " ".join(in_english(d).helps)) for d in told]


def test_stitches_are_added_to_a_width_in_the_fabric_there() -> None:
    """Plain has 2 stitches to the centimetre, dense 2.5."""
    assert front(start="length + 2 stitches wide on waste yarn").start_width == (41.0, 43.0)
    dense = front("fabric dense from low to top", "edges slope to 30 cm - 5 stitches wide at high")
    assert dense.left[0].change == pytest.approx((-6.0, -6.0))
    assert front(start="max(length, 83 stitches) wide on waste yarn").start_width == (41.5, 42.0)


def test_rows_are_added_to_a_height() -> None:
    made = front(levels="hem 0 cm, low 10 cm + 2 rows, top length - 8 rows")
    assert [level.height for level in made.levels] == [(0, 0), (10.5, 10.5), (38.0, 40.0)]


@pytest.mark.parametrize(("function", "counts"), [("round", (80, 88)), ("round_up", (80, 88)), ("round_down", (80, 80))])
def test_rounding_to_stitches_in_the_fabric_there(function: str, counts: tuple[int, int]) -> None:
    """40 cm and 42 cm are 80 and 84 stitches; halves go up."""
    found = front(start=f"{function}(length to 8 stitches) wide on waste yarn").start_width
    assert tuple(2 * width for width in found) == pytest.approx(counts)


@pytest.mark.parametrize(
    "line",
    ["start length + 2 rows wide on waste yarn", "start length + 2 wide on waste yarn", "levels hem 0 cm, top length + 2 sts"],
)
def test_what_has_no_length_there_is_not_added(line: str) -> None:
    text = piece().replace("start 40 cm wide on waste yarn", line) if line.startswith("start") else piece(levels=line[7:])
    assert [code for code, _ in messages(text)] == ["mixed-units"]


def test_a_name_has_no_place_and_is_told_where_the_sum_can_stand() -> None:
    ((code, help_),) = messages("let wide = length + 2 stitches", piece(start="wide wide on waste yarn"))
    assert code == "mixed-units"
    assert "where the width" in help_


@pytest.mark.parametrize(("length", "code"), [("length + 4 stitches", "mixed-units"), ("4 stitches", "wrong-unit")])
def test_a_length_outside_the_fabric_has_no_stitches(length: str, code: str) -> None:
    assert code in [told for told, _ in messages(piece(), f"cord front {length} long")]


def test_a_function_that_rounds_nothing_is_told() -> None:
    _, (told,) = read("trial.wale", "let a = round_upp(3 cm to 2 cm)")
    assert (told.code, in_english(told).helps) == ("unknown-name", ("`round_up` is close",))


amounts = st.decimals(-500, 500, places=3).map(float)
steps = st.decimals("0.001", 60, places=3).map(float)


@given(amounts, steps)
def test_rounding_is_as_in_exact_arithmetic(value: float, step: float) -> None:
    def worked(function: str) -> float:
        found = Scope(Findings(), ("S",), {}, {}).value(s.Call(function, (cm(value), cm(step))))
        assert found is not None
        return found.amounts[0]

    share = Fraction(str(value)) / Fraction(str(step))
    assert worked("round_up") == pytest.approx(float(ceil(share) * Fraction(str(step))))
    assert worked("round_down") == pytest.approx(float(floor(share) * Fraction(str(step))))
    assert worked("round") == pytest.approx(float(floor(share + Fraction(1, 2)) * Fraction(str(step))))
