"""Rows of a shipped size table that contradict each other where a garment uses them together.

A set-in sleeve is a seam as long as the arm to the underarm, and a cap. Where its shoulder lies is told by the back across, where
its cuff ends by the reach; so reach less half the back less the seam is left for the cap. In the published tables that is 0.2 to
0.8 of the armhole's depth (women 0.36 to 0.48, men 0.61 to 0.73, children from 6 years on 0.66 to 0.81), and from one size to
the next it changes by a fifth at most. A cap as high as the armhole is deep fits no armhole: a figure is a slip.
"""

from __future__ import annotations

from itertools import pairwise

from walewright.design.findings import Findings
from walewright.design.reading.sizes import GradedRows
from walewright.design.used.uses import Uses
from walewright.report.model import Severity
from walewright.report.said import Amount, only, said
from walewright.source import syntax

REACH, BACK, SEAM, DEPTH = "centre_back_neck_to_wrist", "cross_back", "arm_length_to_underarm", "armhole_depth"

HIGHEST_CAP = 0.85
"""Of the armhole's depth; the published tables come to 0.81 where they agree with themselves."""
GREATEST_STEP = 0.5
"""Of the armhole's depth, from one size to the next."""


def look_for_disagreement(table: syntax.Sizes, graded: GradedRows, found: Uses, findings: Findings) -> None:
    """Warns of sizes whose reach, back, seam and armhole, all from one table and all used, leave no possible cap."""
    used = [r for r in table.body if isinstance(r, syntax.SizeRow) and r.table is not None and found.has("measurement", r.name)]
    for name in dict.fromkeys(r.table for r in used):
        rows = {r.table_row or r.name: r for r in used if r.table == name}
        if all(key in rows for key in (REACH, BACK, SEAM, DEPTH)):
            _cap({key: rows[key] for key in (REACH, BACK, SEAM, DEPTH)}, str(name), graded, findings)


def _cap(rows: dict[str, syntax.SizeRow], table: str, graded: GradedRows, findings: Findings) -> None:
    measured = {key: graded.rows.get(row.name) for key, row in rows.items()}
    values: dict[str, tuple[float, ...]] = {}
    for key, measurement in measured.items():
        # A figure that the knitter gives is not the table's.
        if measurement is None or measurement.credit is None:
            return
        values[key] = measurement.values
    left = [r - b / 2 - s for r, b, s in zip(values[REACH], values[BACK], values[SEAM], strict=True)]
    share = [cap / depth if depth else 0.0 for cap, depth in zip(left, values[DEPTH], strict=True)]
    told = {i for i, part in enumerate(share) if part > HIGHEST_CAP or part < 0}
    told |= {i for at, (one, other) in enumerate(pairwise(share)) if abs(one - other) > GREATEST_STEP for i in (at, at + 1)}
    if not told:
        return
    sizes = tuple(graded.sizes[i] for i in sorted(told))
    notes = tuple(
        said(
            "leaves",
            size=graded.sizes[i],
            reach=Amount(values[REACH][i]),
            back=Amount(values[BACK][i]),
            seam=Amount(values[SEAM][i]),
            cap=Amount(left[i]),
            depth=Amount(values[DEPTH][i]),
        )
        for i in sorted(told)
    )
    findings.report(
        "table-rows-disagree",
        *((row.span, said("shown", shown=key)) for key, row in rows.items()),
        notes=(*notes, "highest"),
        helps=("choose",),
        severity=Severity.WARNING,
        sizes=only(graded.sizes, sizes),
        table=table,
        among=sizes,
        highest=HIGHEST_CAP,
        last=sizes[-1],
    )
