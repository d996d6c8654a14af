"""Quantities in their place: across the work stitches become cm, up the work rows do, by the swatch of the fabric there."""

from __future__ import annotations

from walewright.design.findings import Findings
from walewright.design.model import Fabric, PerSize
from walewright.design.reading.units import LENGTH, NUMBER, ROWS, STITCHES, Dimension
from walewright.design.reading.values import Here, Scope, Value
from walewright.report.model import NOWHERE
from walewright.report.said import Amount, BySize, Said, by_size
from walewright.source import syntax

LONGEST_CM = 1000.0
"""No knitted length is above ten metres: such a number is a slip of the unit."""


class AmountPlace:
    """Evaluates expressions where a length of the garment is meant; all results in cm per size."""

    def __init__(self, scope: Scope, findings: Findings, fabric: Fabric | None, in_fabric: bool = True) -> None:
        self.scope = scope
        self.findings = findings
        self.fabric = fabric
        """None when it is not known; then a count has no length, and nothing more is said of it."""
        self.in_fabric = in_fabric
        """Whether the place is in a fabric at all; a cord's length is not."""

    def across(self, expression: syntax.Expr, what: Said, least: float | None = None) -> PerSize | None:
        """A length across the work: cm, or stitches of the fabric here."""
        value = self.scope.value(expression, self._here(STITCHES))
        if value is None:
            return None
        if value.dimension == ROWS:
            self.findings.report("rows-across", (value.span, "rows"), helps=("width",), what=what)
            return None
        if value.dimension == STITCHES and self.in_fabric:
            return self._checked(_over(value, self.fabric.stitches_per_cm), what, least, value) if self.fabric else None
        return self._length(value, what, least, "stitches")

    def up(self, expression: syntax.Expr, what: Said, least: float | None = None) -> PerSize | None:
        """A length up the work: cm, or rows of the fabric here."""
        value = self.scope.value(expression, self._here(ROWS))
        if value is None:
            return None
        if value.dimension == STITCHES:
            self.findings.report("stitches-up", (value.span, "stitches"), helps=("height",), what=what)
            return None
        if value.dimension == ROWS:
            return self._checked(_over(value, self.fabric.rows_per_cm), what, least, value) if self.fabric else None
        return self._length(value, what, least, "rows")

    def _here(self, count: Dimension) -> Here | None:
        if self.fabric is None:
            return Here(count, None) if self.in_fabric else None
        return Here(count, self.fabric.stitches_per_cm if count == STITCHES else self.fabric.rows_per_cm)

    def _length(self, value: Value, what: Said, least: float | None, count: str) -> PerSize | None:
        if not is_length(value, what, self.findings, count if self.fabric else ""):
            return None
        return self._checked(value.amounts, what, least, value)

    def _checked(self, amounts: PerSize, what: Said, least: float | None, value: Value) -> PerSize | None:
        """`least` None: any sign; 0: zero is allowed; above 0: it must be more than zero."""
        sizes = self.scope.sizes
        if least is not None:
            low = tuple(s for s, a in zip(sizes, amounts, strict=True) if a < 0 or (least > 0 and a <= 1e-9))
            if low:
                self.findings.report(
                    "not-positive/length",
                    (value.span, "amounts"),
                    helps=("above-nothing",),
                    sizes=self.scope.only(low),
                    what=what,
                    above=least > 0,
                    amounts=self.per_size(amounts),
                )
                return None
        high = tuple(s for s, a in zip(sizes, amounts, strict=True) if abs(a) > LONGEST_CM)
        if high:
            self.findings.report(
                "absurd-length/value",
                (value.span, "amounts"),
                helps=("look",),
                sizes=self.scope.only(high),
                what=what,
                longest=Amount(LONGEST_CM / 100, "m"),
                amounts=self.per_size(amounts),
            )
            return None
        return amounts

    def per_size(self, amounts: PerSize, unit: str = "cm") -> BySize:
        """ "18 cm" when all sizes agree, else "XS 18 cm, S 19 cm"."""
        return per_size(self.scope.sizes, amounts, unit)


POSITIVE = 1.0
"""For `least`: more than zero."""
NOT_NEGATIVE = 0.0
"""For `least`: zero or more."""


def is_length(value: Value, what: Said, findings: Findings, count: str = "") -> bool:
    """Whether the value is in cm; reported when it is not. `count`: "stitches" or "rows" where those can be given too."""
    if value.dimension == LENGTH:
        return True
    if value.dimension == NUMBER:
        row = ((value.row, "row"),) if value.row != NOWHERE else ()
        helps = ("row-unit" if row else "or-count" if count else "length",)
        findings.report("no-unit/length", (value.span, "bare"), *row, helps=helps, what=what, count=count)
    else:
        findings.report(
            "wrong-unit/length", (value.span, "dimension"), helps=("a-length",), what=what, dimension=value.dimension.kind
        )
    return False


def per_size(sizes: tuple[str, ...], amounts: PerSize, unit: str = "cm") -> BySize:
    """Amounts for a message: one for all sizes where they agree, else each with the name of its size."""
    return by_size(sizes, amounts, unit)


def concerned(sizes: tuple[str, ...], amounts: PerSize, only: tuple[str, ...], unit: str = "cm") -> BySize:
    """The amounts of the sizes `only`, for a message; one amount where all sizes have it."""
    return by_size(sizes, amounts, unit, only)


def _over(value: Value, density: float) -> PerSize:
    return tuple(a / density for a in value.amounts)
