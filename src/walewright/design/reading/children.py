"""Garments for children: known by the shipped tables their sizes come from, and what published rules say of their cords."""

from __future__ import annotations

from collections.abc import Iterable
from typing import get_args

from walewright.design.findings import Findings
from walewright.design.model.design import Caution
from walewright.report.model import Severity
from walewright.report.said import said
from walewright.source import syntax

TABLES = ("baby", "child", "youth")
"""Shipped size tables of children."""

CAUTIONS: tuple[Caution, ...] = get_args(Caution)
LIMITS = tuple(said(f"caution/{caution}") for caution in CAUTIONS)


def table_of_children(sizes: syntax.Sizes) -> syntax.SizeRow | None:
    """The first row of the sizes that comes from a table of children."""
    return next((r for r in sizes.body if isinstance(r, syntax.SizeRow) and r.table in TABLES), None)


def look_after(
    row: syntax.SizeRow, pieces: Iterable[syntax.PieceBlock], cords: Iterable[syntax.CordLine], findings: Findings
) -> None:
    """Reports cords and hoods of a garment for children; `row` is what makes it one."""
    why = (row.span, said("sizes-from", table=row.table or ""))
    for cord in cords:
        findings.report("cord-on-child", (cord.span, "cord"), why, notes=LIMITS, helps=("leave-out",), piece=cord.piece)
    for piece in pieces:
        if piece.purpose == "hood":
            findings.report(
                "hood-on-child",
                (piece.span, "hood"),
                why,
                notes=("catches", *LIMITS),
                helps=("draw-nothing",),
                severity=Severity.WARNING,
                piece=piece.name,
            )
