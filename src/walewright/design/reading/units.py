"""Units of the language: written words to amounts in our own base units.

Base units: centimetre, stitch, row, gram. Conversion happens once, where a literal is read; after that a quantity is
a float and a `Dimension`. The inch is 2.54 cm exactly (international yard and pound agreement, 1959).
"""

from __future__ import annotations

from walewright.record import record
from walewright.report.said import Said, said


@record
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

UNITS = {
    "cm": (1.0, LENGTH),
    "mm": (1 / 10, LENGTH),
    "m": (100.0, LENGTH),
    "in": (2.54, LENGTH),
    "g": (1.0, MASS),
    **dict.fromkeys(("stitch", "stitches", "st", "sts"), (1.0, STITCHES)),
    **dict.fromkeys(("row", "rows"), (1.0, ROWS)),
    "%": (0.01, NUMBER),
}
"""What an author may write behind a number: how many of the base unit it is, and of what."""

WORDS = tuple(UNITS)

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
    if unit not in UNITS:
        return None
    factor, dimension = UNITS[unit]
    # Ten decimals of a centimetre: drops the noise of binary fractions (25.4 mm is 2.54 cm), nothing a tape could show.
    return round(value * factor, 10), dimension
