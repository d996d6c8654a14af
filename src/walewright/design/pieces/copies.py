"""How often a piece is knitted: a number, or the name of one, which may differ from size to size."""

from __future__ import annotations

from walewright.design.findings import Findings, within
from walewright.design.model import CountPerSize
from walewright.design.reading.numbered import numbered
from walewright.design.reading.values import Scope
from walewright.report.said import said
from walewright.source import syntax

MOST_COPIES = 100

SEVERAL = 2
"""Taken in place of a number that is not known, so that nothing is reported about what several copies need."""


def copies_of(node: syntax.PieceBlock, scope: Scope, findings: Findings) -> CountPerSize:
    """How often the piece is knitted in each size."""
    counts = numbered(node.copies, scope, said("copies-of", piece=node.name), findings)
    if counts is None:
        return (SEVERAL,) * len(scope.sizes)
    wrong = [count for count in counts if not 1 <= count <= MOST_COPIES]
    if wrong:
        worst = min(wrong) if min(wrong) < 1 else max(wrong)
        findings.report(
            "not-positive/copies" if worst < 1 else "absurd-count/copies",
            (node.span, "knit"),
            notes=("possible",),
            helps=within(worst, 1, MOST_COPIES),
            sizes=scope.only(tuple(s for s, count in zip(scope.sizes, counts, strict=True) if count in wrong)),
            piece=node.name,
            copies=worst,
            most=MOST_COPIES,
        )
    return counts
