"""What is counted: a number that is written, or the name of one, which may differ from size to size."""

from __future__ import annotations

from walewright.design.findings import Findings
from walewright.design.model import CountPerSize
from walewright.design.reading.places import per_size
from walewright.design.reading.units import NUMBER
from walewright.design.reading.values import Scope
from walewright.report.said import Said
from walewright.source import syntax

NEAR = 1e-9
"""How far from a whole number a count may come out for the way in which computers divide."""


def numbered(count: int | syntax.Name, scope: Scope, what: Said, findings: Findings) -> CountPerSize | None:
    """The count of each size; None, and reported, where the name is not that of whole numbers without a unit."""
    if not isinstance(count, syntax.Name):
        return (count,) * len(scope.sizes)
    value = scope.named(count.name, count.span)
    if value is None:
        return None
    if value.dimension != NUMBER:
        findings.report(
            "wrong-unit/count", (count.span, "here"), helps=("no-unit",), what=what, name=count.name, dimension=value.dimension.kind
        )
        return None
    broken = tuple(s for s, n in zip(scope.sizes, value.amounts, strict=True) if abs(n - round(n)) > NEAR)
    if broken:
        findings.report(
            "count-not-whole",
            (count.span, "here"),
            helps=("round",),
            sizes=scope.only(broken),
            what=what,
            name=count.name,
            values=per_size(scope.sizes, value.amounts, ""),
        )
        return None
    return tuple(round(n) for n in value.amounts)
