"""Units against sources outside the project."""

from __future__ import annotations

import pint
import pytest

from walewright.design.reading.units import LENGTH, MASS, NUMBER, WORDS, Dimension, convert


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
    """Expressions of units are none: a pattern may only use the words of the language."""
    assert all(convert(1, word) is not None for word in WORDS)
    assert all(convert(1, word) is None for word in ("cm*g", "inch", "2 cm", "", "ft", "row/cm"))


DEFINITIONS = """
centimetre = [length] = cm
millimetre = centimetre / 10 = mm
metre = 100 * centimetre = m
inch = 2.54 * centimetre = in
gram = [mass] = g
stitch = [stitches] = st = stitches = sts
row = [rows] = _ = rows
percent = 0.01 = %
"""


def test_amounts_are_those_of_a_registry_of_the_same_units_to_the_last_digit() -> None:
    """Source: the pint library, given the definitions of these units alone."""
    registry: pint.UnitRegistry = pint.UnitRegistry(None)
    registry.load_definitions(DEFINITIONS.strip().splitlines())
    values = [*(n / 100 for n in range(0, 30_000, 7)), *(n / 3 for n in range(200)), 1e-9, 1e15, 1e300]
    for unit in WORDS:
        for value in values:
            quantity = registry.Quantity(value, unit).to_base_units()
            powers = {str(name).strip("[]"): int(power) for name, power in quantity.dimensionality.items()}
            assert convert(value, unit) == (round(float(quantity.magnitude), 10), Dimension(**powers)), (value, unit)
