"""Garments for children: known by the shipped tables that their sizes come from, or by what a size is called, and what published
rules say of their cords."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import get_args

from walewright.design.findings import Findings
from walewright.design.model.design import Caution
from walewright.record import record
from walewright.report.model import Severity, Span
from walewright.report.said import Said, said
from walewright.source import syntax

TABLES = ("age", "baby", "child", "youth")
"""Shipped size tables of children."""

CALLED = frozenset(
    (
        "preemie",
        "newborn",
        "baby",
        "infant",
        "toddler",
        "child",
        "tween",
        "youth",
        "girl",
        "boy",
        "doll",
        "cradle",
        "pram",
        "cot",
        "crib",
    )
)
"""Words by which sizes for children go, in tables that have grown people too and in authors' own; a doll's things are a child's."""

OLDEST = 14
"""Years: the end of childhood in the European rules for clothes (EN 14682, as told by the Finnish Safety and Chemicals Agency)."""

_AGE = re.compile(r"(\d+)_(?:(months?)|years?)")

CAUTIONS: tuple[Caution, ...] = get_args(Caution)
LIMITS = tuple(said(f"caution/{caution}") for caution in CAUTIONS)


@record
class ForChildren:
    """What makes a garment one for children, and where that stands."""

    span: Span
    why: Said


def for_children(sizes: syntax.Sizes) -> ForChildren | None:
    """The first row of the sizes that comes from a table of children, or else the first size that is called as one of theirs."""
    row = next((r for r in sizes.body if isinstance(r, syntax.SizeRow) and r.table in TABLES), None)
    if row is not None:
        return ForChildren(row.span, said("sizes-from", table=row.table or ""))
    size = next((name for name in sizes.names if _childs(name)), None)
    return ForChildren(sizes.span, said("size-of-child", size=size)) if size is not None else None


def _childs(size: str) -> bool:
    age = _AGE.fullmatch(size)
    if age is not None:
        return age[2] is not None or int(age[1]) <= OLDEST
    return not CALLED.isdisjoint(size.split("_"))


def look_after(
    known: ForChildren, pieces: Iterable[syntax.PieceBlock], cords: Iterable[syntax.CordLine], findings: Findings
) -> None:
    """Reports cords and hoods of a garment that is `known` as one for children."""
    why = (known.span, known.why)
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
