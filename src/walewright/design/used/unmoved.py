"""Measurements that are given and move no stitch: rows that are printed to choose a size by, and nothing is made from."""

from __future__ import annotations

from walewright.design.findings import Findings
from walewright.design.reading.called import meant
from walewright.design.reading.changes import Changes
from walewright.design.reading.sizes import GradedRows
from walewright.design.used.uses import Uses, uses
from walewright.record import replace
from walewright.report.model import Severity
from walewright.source import syntax


def tell_unmoved(written: syntax.Tree, expanded: syntax.Tree, graded: GradedRows, changes: Changes, findings: Findings) -> None:
    """Warns of every row given that nothing made follows from."""
    if not changes.measures or findings.failed:
        return
    made_from: Uses = uses(written, _without_fit(expanded))
    known = graded.names()
    for typed in changes.measures:
        found = meant(typed, known)
        row = graded.rows.get(found[0]) if len(found) == 1 else None
        given = row is not None and row.origin.path == f"measure {row.name}"
        given = given or (len(found) == 1 and found[0] in graded.given)
        if given and not made_from.has("measurement", found[0]):
            findings.report(
                "given-for-nothing",
                notes=("finished",) if row is not None and row.to_fit else (),
                helps=("choices",),
                severity=Severity.WARNING,
                given=("measure", typed),
                name=found[0],
            )


def _without_fit(tree: syntax.Tree) -> syntax.Tree:
    """The tree with no row that counts as used because it is printed."""

    def plain(node: syntax.Statement) -> syntax.Statement:
        if not isinstance(node, syntax.Sizes):
            return node
        return replace(node, body=tuple(replace(r, to_fit=False) if isinstance(r, syntax.SizeRow) else r for r in node.body))

    return replace(tree, statements=tuple(plain(s) for s in tree.statements))
