"""Dimension arithmetic over sizes, names that need each other, and what is said when quantities do not mix."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from walewright.design.findings import Findings
from walewright.design.model import Fabric, Origin
from walewright.design.reading.units import LENGTH, NUMBER, STITCHES, Dimension
from walewright.design.reading.values import Scope, Value, words
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Span
from walewright.source.syntax import Binary, Broken, Call, Expr, Let, Name, Negative, Number, Regauged


def at(place: int) -> Span:
    return Span("v.wale", place, place + 1)


def fabric(name: str, stitches: float) -> Fabric:
    return Fabric(name, "stocking stitch", 0, "wool", "4", stitches, 40, 10, 10, 30, Origin(name))


def worked(expression: Expr, *lets: Let, broken: str = "") -> tuple[Value | None, tuple[Diagnostic, ...]]:
    findings = Findings([Broken(broken)] if broken else [])
    bust = Value((80.0, 90.0), LENGTH, at(90))
    fabrics = {"rib": fabric("rib", 30), "plain": fabric("plain", 25), "unread": None}
    scope = Scope(findings, ("S", "M"), {"bust": bust, "spoilt": None}, {n.name: n for n in lets}, fabrics)
    return scope.value(expression), findings.all()


CM4 = Number(4, "cm", span=at(1))


def test_as_many_stitches_are_wider_in_a_looser_fabric() -> None:
    value, told = worked(Regauged("stitches", Binary("/", Name("bust"), Number(2)), "rib", "plain"))
    assert not told
    assert value is not None
    assert value.amounts == pytest.approx((48.0, 54.0))
    assert value.dimension == LENGTH


@pytest.mark.parametrize(
    ("wrong", "code", "message"),
    [
        (Regauged("stitches", CM4, "rub", "plain"), "unknown-name", "no fabric is called `rub`"),
        (Regauged("stitches", CM4, "rib", "plane"), "unknown-name", "no fabric is called `plane`"),
        (Regauged("loops", CM4, "rib", "plain"), "unknown-name", "no function is called `loops`"),
        (Regauged("stitches", Number(4, "rows"), "rib", "plain"), "wrong-unit", "`stitches` takes a width, as a length"),
    ],
)
def test_stitches_are_those_of_a_width_in_a_fabric(wrong: Regauged, code: str, message: str) -> None:
    value, told = worked(wrong)
    assert value is None
    assert [(d.code, in_english(d).message) for d in told] == [(code, message)]


def test_of_a_fabric_that_was_reported_nothing_is_told_again() -> None:
    assert worked(Regauged("stitches", CM4, "rib", "unread")) == (None, ())


def test_an_author_reads_it_as_it_was_written() -> None:
    assert words(Regauged("stitches", Binary("+", Name("bust"), CM4), "rib", "plain")) == "stitches(bust + 4 cm of rib in plain)"


def test_a_length_is_worked_out_for_every_size() -> None:
    value, told = worked(Binary("+", Binary("/", Name("bust"), Number(2)), CM4))
    assert not told
    assert value is not None
    assert value.amounts == (44.0, 49.0)
    assert value.dimension == LENGTH


@pytest.mark.parametrize(
    ("expression", "amounts", "dimension"),
    [
        (Negative(CM4), -4.0, LENGTH),
        (Binary("*", CM4, CM4), 16.0, Dimension(length=2)),
        (Binary("/", Number(10, "stitches"), CM4), 2.5, Dimension(length=-1, stitches=1)),
        (Binary("*", Binary("/", Number(10, "stitches"), CM4), Number(8, "cm")), 20.0, STITCHES),
        (Number(50, "%"), 0.5, NUMBER),
        (Binary("*", Number(50, "%"), CM4), 2.0, LENGTH),
        (Call("min", (CM4, Number(30, "mm"), Number(2, "in"))), 3.0, LENGTH),
        (Call("max", (CM4, Number(30, "mm"), Number(2, "in"))), 5.08, LENGTH),
        (Call("round", (Number(4.3, "cm"), Number(5, "mm"))), 4.5, LENGTH),
        (Call("round", (Number(7, "stitches"), Number(2, "stitches"))), 8.0, STITCHES),
        (Call("round", (Negative(Number(7, "stitches")), Number(2, "stitches"))), -6.0, STITCHES),
    ],
)
def test_one_expression(expression: Expr, amounts: float, dimension: Dimension) -> None:
    value, told = worked(expression)
    assert not told
    assert value is not None
    assert value.amounts == pytest.approx((amounts, amounts))
    assert value.dimension == dimension


@given(st.floats(0.1, 500), st.sampled_from([0.5, 1.0, 2.0, 6.0]))
def test_rounding_lands_on_a_step_and_moves_by_half_a_step_at_most(value: float, step: float) -> None:
    rounded, _ = worked(Call("round", (Number(value, "cm"), Number(step, "cm"))))
    assert rounded is not None
    assert rounded.amounts[0] / step == pytest.approx(round(rounded.amounts[0] / step))
    assert abs(rounded.amounts[0] - value) <= step / 2 + 1e-6


@pytest.mark.parametrize(
    ("one", "other"),
    [
        (CM4, Number(3, "stitches", span=at(2))),
        (Number(3, "stitches", span=at(1)), Number(3, "rows", span=at(2))),
        (CM4, Number(3, span=at(2))),
        (CM4, Number(3, "g", span=at(2))),
    ],
)
@pytest.mark.parametrize("op", ["+", "-", "min"])
def test_what_cannot_be_mixed_shows_both_places(one: Expr, other: Expr, op: str) -> None:
    value, told = worked(Call("min", (one, other)) if op == "min" else Binary(op, one, other))
    assert value is None
    (said,) = told
    assert said.code == "mixed-units"
    assert [label.span for label in said.labels] == [at(1), at(2)]


def test_an_unknown_name_proposes_a_near_one() -> None:
    _, (said,) = worked(Name("bsut", span=at(1)))
    assert said.code == "unknown-name"
    assert in_english(said).helps == ("`bust` is close",)
    assert "bust" in in_english(said).notes[0]


def test_nothing_is_said_of_what_was_said_before() -> None:
    assert worked(Binary("+", Name("spoilt"), CM4)) == (None, ())
    assert worked(Name("ease"), broken="let ease = = 4 cm") == (None, ())


def test_lets_may_stand_in_any_order() -> None:
    value, told = worked(Name("a"), Let("a", Binary("*", Name("b"), Number(2))), Let("b", CM4))
    assert not told
    assert value is not None
    assert value.amounts == (8.0, 8.0)


def test_a_ring_of_lets_is_told_once_with_every_let() -> None:
    ring = (
        Let("a", Binary("+", Name("b"), Name("b")), span=at(1)),
        Let("b", Name("c"), span=at(2)),
        Let("c", Binary("+", Name("a"), CM4), span=at(3)),
    )
    value, told = worked(Binary("+", Name("a"), Name("c")), *ring)
    assert value is None
    (said,) = told
    assert said.code == "cyclic-let"
    assert {label.span for label in said.labels} == {at(1), at(2), at(3)}


@pytest.mark.parametrize("last", [CM4, Name("n0")])
def test_no_chain_of_lets_is_too_long(last: Expr) -> None:
    lets = [Let(f"n{i}", Name(f"n{i + 1}"), span=at(i)) for i in range(5000)]
    value, told = worked(Name("n0"), *lets, Let("n5000", last, span=at(5000)))
    if isinstance(last, Name):
        assert [d.code for d in told] == ["cyclic-let"]
        assert len(told[0].labels) < 10
    else:
        assert not told
        assert value is not None
        assert value.amounts == (4.0, 4.0)


def test_numbers_beyond_any_garment_are_told_and_never_overflow() -> None:
    huge: Expr = Number(1e9, "cm", span=at(1))
    for _ in range(60):
        huge = Binary("*", huge, Number(1e9), span=at(2))
    _, told = worked(Call("round", (huge, CM4)))
    assert [d.code for d in told] == ["number-too-large"]
    tiny: Expr = Number(1e-9)
    for _ in range(40):
        tiny = Binary("*", tiny, Number(1e-9))
    value, told = worked(Call("round", (Number(4), tiny)))
    assert not told or [d.code for d in told] == ["not-positive"]
    value, told = worked(Call("round", (Number(4), Number(1e-300))))
    assert value is not None
    assert value.amounts == (4.0, 4.0)


def test_a_let_that_needs_itself() -> None:
    _, told = worked(Name("a"), Let("a", Binary("+", Name("a"), Name("a")), span=at(1)))
    assert [d.code for d in told] == ["cyclic-let"]


def test_dividing_by_zero_names_the_sizes() -> None:
    nought = Binary("-", Name("bust"), Number(80, "cm"))
    _, (said,) = worked(Binary("/", CM4, nought))
    assert said.code == "division-by-zero"
    assert said.sizes == ("S",)


@pytest.mark.parametrize(
    ("expression", "code"),
    [
        (Call("mean", (CM4,)), "unknown-name"),
        (Call("min", ()), "impossible-statement"),
        (Call("round", (CM4,)), "impossible-statement"),
        (Call("round", (CM4, Number(0, "cm"))), "not-positive"),
        (Number(4, "ell"), "unknown-name"),
    ],
)
def test_faulty_expressions(expression: Expr, code: str) -> None:
    value, told = worked(expression)
    assert value is None
    assert [d.code for d in told] == [code]


def test_words_of_an_expression_keep_its_meaning() -> None:
    a, b, c = Name("a"), Name("b"), Name("c")
    assert words(Binary("-", a, Binary("-", b, c))) == "a - (b - c)"
    assert words(Binary("-", Binary("-", a, b), c)) == "a - b - c"
    assert words(Binary("*", Binary("+", a, b), c)) == "(a + b) * c"
    assert words(Binary("+", Binary("*", a, b), Number(2.5, "cm"))) == "a * b + 2.5 cm"
    assert words(Call("round", (a, CM4))) == "round(a to 4 cm)"
    assert words(Negative(Binary("+", a, b))) == "-(a + b)"
