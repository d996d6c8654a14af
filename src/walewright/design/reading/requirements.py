"""Requirements: what the author says must hold between measurements, checked for every size."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.findings import Findings
from walewright.design.model import Measured, Origin, Requirement
from walewright.design.reading.units import LENGTH
from walewright.design.reading.values import Scope, words
from walewright.report.said import Amount, Said, said
from walewright.source import syntax
from walewright.trade.relations import RELATIONS

CLOSE = 1e-6
"""Lengths nearer than this are equal: far below a stitch, above the noise of binary fractions."""


def requirement(
    node: syntax.Require, measured: Measured | None, known: Mapping[str, Measured], scope: Scope, findings: Findings
) -> Requirement | None:
    """The requirement with both sides worked out; told, size by size, where it does not hold. `measured` is what its left side
    stands for where that is measured on the garment, `known` the finished measurements of that kind by name."""
    if node.relation not in RELATIONS:
        findings.unknown("relation", node.relation, node.span, RELATIONS)
        return None
    if isinstance(node.left, syntax.Name) and node.left.name in known:
        return _later(node, node.left.name, known[node.left.name], scope, findings)
    if isinstance(node.left, syntax.Round | syntax.Along):
        return _later(node, spoken(node.left), measured, scope, findings) if measured is not None else None
    left, right = scope.value(node.left), scope.value(node.right)
    if left is None or right is None or not scope.agree(left, right):
        return None
    text = f"{words(node.left)} {node.relation} {words(node.right)}"
    unit = left.dimension.unit
    fails = [
        (size, a, b) for size, a, b in zip(scope.sizes, left.amounts, right.amounts, strict=True) if not _holds(a, node.relation, b)
    ]
    if fails:
        findings.report(
            "require-fails/because" if node.because else "require-fails/bare",
            (node.span, "fails"),
            notes=tuple(said("against", size=size, left=Amount(a, unit), right=Amount(b, unit)) for size, a, b in fails),
            helps=(_mend(words(node.left), max((b - a for _, a, b in fails), key=abs), unit),),
            sizes=scope.only(tuple(size for size, _, _ in fails)),
            requirement=text,
            because=node.because or "",
            failing=tuple(size for size, _, _ in fails),
        )
    return Requirement(left.amounts, node.relation, right.amounts, text, node.because or "", Origin(f"require {text}", node.span))


def _mend(left: str, lacking: float, unit: str) -> Said:
    """By how much one side is short of the other, where it is furthest from it."""
    by = Amount(abs(lacking), unit)
    return said("larger", left=left, by=by) if lacking >= 0 else said("smaller", left=left, by=by)


def spoken(measured: syntax.ToMeasure) -> str:
    """What is measured, as the author writes it."""
    if isinstance(measured, syntax.Round):
        return f"{'across' if measured.across else 'round'} {measured.piece} {measured.level}"
    return f"along {measured.place.owner} {measured.place.edge or ''}".rstrip()


def _later(node: syntax.Require, left: str, measured: Measured, scope: Scope, findings: Findings) -> Requirement | None:
    """A requirement that can be checked only when the garment is knitted."""
    right = scope.value(node.right)
    if right is None:
        return None
    if right.dimension != LENGTH:
        findings.report(
            "wrong-unit/compared", (right.span, "dimension"), helps=("a-length",), measured=left, dimension=right.dimension.kind
        )
        return None
    text = f"{left} {node.relation} {words(node.right)}"
    return Requirement(
        (), node.relation, right.amounts, text, node.because or "", origin=Origin(f"require {text}", node.span), measured=measured
    )


def _holds(left: float, relation: str, right: float) -> bool:
    over = left - right
    return {
        "<=": over <= CLOSE,
        ">=": over >= -CLOSE,
        "=": abs(over) <= CLOSE,
        "<": over < -CLOSE,
        ">": over > CLOSE,
    }[relation]
