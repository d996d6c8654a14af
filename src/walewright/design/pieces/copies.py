"""How often a piece is knitted: a number, or the name of one that is the same in all sizes that are made together."""

from __future__ import annotations

from dataclasses import replace

from walewright.design.findings import Findings
from walewright.design.reading.numbered import numbered
from walewright.design.reading.values import Scope
from walewright.report.said import said
from walewright.source import syntax

SEVERAL = 2
"""Taken in place of a number that is not known, so that nothing is reported about what several copies need."""


def with_copies(node: syntax.PieceBlock, scope: Scope, findings: Findings) -> syntax.PieceBlock:
    """The piece with a number in place of a name. How a garment is put together is the same in all its sizes: told where their
    numbers differ."""
    if not isinstance(node.copies, syntax.Name):
        return node
    counts = numbered(node.copies, scope, said("copies-of", piece=node.name), findings)
    if counts is None:
        return replace(node, copies=SEVERAL)
    alike: dict[int, list[str]] = {}
    for size, count in zip(scope.sizes, counts, strict=True):
        alike.setdefault(count, []).append(size)
    if len(alike) > 1:
        findings.report(
            "copies-by-size",
            (node.copies.span, "differ"),
            notes=tuple(said("so-many", sizes=tuple(sizes), copies=count) for count, sizes in alike.items()),
            helps=(
                said("make-apart", groups=tuple(said("size-options", sizes=tuple(sizes)) for sizes in alike.values())),
                "choose",
            ),
            piece=node.name,
            name=node.copies.name,
        )
    return replace(node, copies=max(alike))


def number_of(node: syntax.PieceBlock) -> int:
    """How often a piece is knitted that `with_copies` has looked at."""
    assert isinstance(node.copies, int), "its number is worked out"
    return node.copies
