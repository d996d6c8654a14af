"""Garments for children: known by the shipped tables their sizes come from, and what published rules say of their cords."""

from __future__ import annotations

from collections.abc import Iterable

from walewright.design.findings import Findings
from walewright.report.model import Severity
from walewright.report.said import said
from walewright.source import syntax

TABLES = ("baby", "child", "youth")
"""Shipped size tables of children."""

CAUTIONS = (
    "United States: no drawstring at all in the hood or neck of children's upper outerwear, sizes 2T to 12 "
    "(US CPSC, Drawstrings in Children's Upper Outerwear, FAQ; 16 CFR 1120.3(b); ASTM F1816-97)",
    "United States: at the waist or bottom, sizes 2T to 16, at most 7.6 cm (3 in) of drawstring outside its channel, no toggles "
    "or knots at its free ends, and the string sewn down if it is one piece (same source)",
    "European Union: no cord or drawstring in the hood, head and neck area up to 7 years or 134 cm "
    "(Finnish Safety and Chemicals Agency, Cords and drawstrings on children's clothing, on EN 14682)",
    "European Union: no drawstring with free ends in the head and neck area from 7 to 14 years (same source)",
)
"""Published limits that bear on knitted garments; the rules where a garment is sold come first."""
LIMITS = tuple(said("shown", shown=caution) for caution in CAUTIONS)


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
