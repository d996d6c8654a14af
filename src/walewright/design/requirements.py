"""Requirements: what the author says must hold between measurements, checked for every size."""

from __future__ import annotations

from walewright.design.findings import Findings, amount
from walewright.design.model import Origin, Requirement
from walewright.design.values import Scope, words
from walewright.source import syntax

CLOSE = 1e-6
"""Lengths nearer than this are equal: far below a stitch, above the noise of binary fractions."""

RELATIONS = ("<=", ">=", "=", "<", ">")


def requirement(node: syntax.Require, scope: Scope, findings: Findings) -> Requirement | None:
    """The requirement with both sides worked out; told, size by size, where it does not hold."""
    left, right = scope.value(node.left), scope.value(node.right)
    if node.relation not in RELATIONS:
        findings.unknown("relation", node.relation, node.span, RELATIONS)
        return None
    if left is None or right is None or not scope.agree(left, right):
        return None
    text = f"{words(node.left)} {node.relation} {words(node.right)}"
    unit = left.dimension.unit
    fails = [
        (size, a, b) for size, a, b in zip(scope.sizes, left.amounts, right.amounts, strict=True) if not _holds(a, node.relation, b)
    ]
    if fails:
        findings.tell(
            "require-fails",
            f"it is required that {text}, and it is not so" + (f": {node.because}" if node.because else ""),
            (node.span, f"fails in {', '.join(size for size, _, _ in fails)}"),
            notes=tuple(f"{size}: {amount(a, unit)} against {amount(b, unit)}" for size, a, b in fails),
            sizes=scope.only(tuple(size for size, _, _ in fails)),
        )
    return Requirement(left.amounts, node.relation, right.amounts, text, node.because or "", Origin(f"require {text}", node.span))


def _holds(left: float, relation: str, right: float) -> bool:
    over = left - right
    return {
        "<=": over <= CLOSE,
        ">=": over >= -CLOSE,
        "=": abs(over) <= CLOSE,
        "<": over < -CLOSE,
        ">": over > CLOSE,
    }[relation]
