"""Units of the language: written words to amounts in our own base units, by a pint registry of our own.

Base units: centimetre, stitch, row, gram. Conversion happens once, where a literal is read; after that a quantity is
a float and a `Dimension`. The inch is 2.54 cm exactly (international yard and pound agreement, 1959).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

from walewright.report.said import Said, said

if TYPE_CHECKING:
    import pint

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
"""The whole unit file: short, so that loading it costs a few milliseconds (pint's stock file takes a hundred)."""

WORDS = ("cm", "mm", "m", "in", "g", "stitch", "stitches", "st", "sts", "row", "rows", "%")
"""What an author may write behind a number."""


@dataclass(frozen=True, slots=True)
class Dimension:
    """Exponents of length, stitches, rows and mass; all zero is a bare number."""

    length: int = 0
    stitches: int = 0
    rows: int = 0
    mass: int = 0

    def times(self, other: Dimension) -> Dimension:
        return Dimension(self.length + other.length, self.stitches + other.stitches, self.rows + other.rows, self.mass + other.mass)

    def over(self, other: Dimension) -> Dimension:
        return Dimension(self.length - other.length, self.stitches - other.stitches, self.rows - other.rows, self.mass - other.mass)

    @property
    def unit(self) -> str:
        """The base unit in words: "cm", "stitches", "cm × cm", "stitches per cm"; empty for a bare number."""
        parts = (("cm", self.length), ("stitches", self.stitches), ("rows", self.rows), ("g", self.mass))
        above = " × ".join(word for word, power in parts for _ in range(power))
        below = " × ".join(word for word, power in parts for _ in range(-power))
        return f"{above or '1'} per {below}" if below else above

    @property
    def kind(self) -> Said:
        """What it is, for a message."""
        return _KINDS.get(self, said("in-unit", unit=self.unit))


NUMBER = Dimension()
LENGTH = Dimension(length=1)
STITCHES = Dimension(stitches=1)
ROWS = Dimension(rows=1)
MASS = Dimension(mass=1)

_KINDS = {
    NUMBER: said("bare-number"),
    LENGTH: said("length"),
    STITCHES: said("number-of-stitches"),
    ROWS: said("number-of-rows"),
    MASS: said("weight"),
}


def written(value: float, unit: str) -> str:
    """A quantity as an author would write it: at most two decimals, no trailing noughts."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return f"{'0' if text == '-0' else text} {unit}".strip()


def convert(value: float, unit: str) -> tuple[float, Dimension] | None:
    """`value` of `unit` in base units with its dimension; None for a word that is no unit of the language."""
    if unit not in WORDS:
        return None
    quantity = _registry().Quantity(value, unit).to_base_units()
    powers = {str(name).strip("[]"): int(float(str(power))) for name, power in quantity.dimensionality.items()}
    # Ten decimals of a centimetre: drops the noise of binary fractions (25.4 mm is 2.54 cm), nothing a tape could show.
    return round(float(quantity.magnitude), 10), Dimension(**powers)


@cache
def _registry() -> pint.UnitRegistry[float]:
    import pint  # here, because most commands never read a unit and the import is slow

    registry: pint.UnitRegistry[float] = pint.UnitRegistry(None)
    registry.load_definitions(DEFINITIONS.strip().splitlines())
    return registry
