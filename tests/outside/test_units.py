"""Units against sources outside the project."""

from __future__ import annotations

import pint
import pytest

from walewright.design.units import LENGTH, MASS, NUMBER, WORDS, convert


def test_the_inch_is_2_54_centimetres() -> None:
    """Source: international yard and pound agreement, 1 July 1959: 1 yard = 0.9144 m exactly, so 1 in = 2.54 cm exactly."""
    assert convert(1, "in") == (2.54, LENGTH)
    assert convert(36, "in") == (91.44, LENGTH)
    assert convert(0.9144, "m") == convert(36, "in")


@pytest.mark.parametrize("unit", ["cm", "mm", "m", "in"])
@pytest.mark.parametrize("value", [0.1, 1.0, 17.5, 104.0])
def test_lengths_agree_with_the_stock_registry(unit: str, value: float) -> None:
    """Source: the unit definitions shipped with the pint library, an independent unit file."""
    stock = pint.UnitRegistry()
    expected = stock.Quantity(value, unit).to("centimeter").magnitude
    converted = convert(value, unit)
    assert converted is not None
    assert converted[0] == pytest.approx(expected, abs=1e-9)
    assert converted[1] == LENGTH


def test_grams_and_percent_agree_with_the_stock_registry() -> None:
    """Source: the unit definitions shipped with the pint library, an independent unit file."""
    stock = pint.UnitRegistry()
    assert convert(50, "g") == (stock.Quantity(50, "g").to("gram").magnitude, MASS)
    assert convert(30, "%") == (pytest.approx(stock.Quantity(30, "percent").to("").magnitude), NUMBER)


def test_every_word_is_a_unit_and_nothing_else_is() -> None:
    """Source: pint parses unit expressions; a pattern may only use the words of the language."""
    assert all(convert(1, word) is not None for word in WORDS)
    assert all(convert(1, word) is None for word in ("cm*g", "inch", "2 cm", "", "ft", "row/cm"))
