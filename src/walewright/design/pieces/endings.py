"""How a piece ends: on waste yarn, closed, gathered, or with an edging that is knitted on."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.findings import Findings
from walewright.design.model import Edging, Piece
from walewright.record import record
from walewright.source import syntax
from walewright.trade.edgings import ENDED
from walewright.trade.ends import ENDS, EndWay


@record
class Ending:
    """How the last stitches of a piece are closed, and the `edging` that is knitted on them before."""

    way: EndWay
    edging: str | None = None


def ending(node: syntax.End, piece: str, edgings: Mapping[str, Edging | None], findings: Findings) -> Ending | None:
    """What an `end` says; None where it cannot be, which is told."""
    if node.way != "edging":
        if node.way in ENDS:
            return Ending(node.way)
        findings.unknown("way to end", node.way, node.span, ENDS)
        return None
    edging = findings.look_up("edging", node.edging or "", node.span, edgings)
    if edging is None:
        return None
    if edging.when == "first":
        findings.report(
            "edging-first-at-end",
            (node.span, "with"),
            (edging.origin.span, "knitted-first"),
            helps=("after",),
            piece=piece,
            edging=edging.name,
        )
        return None
    return Ending(ENDED[edging.cast_off], edging.name)


def in_one(end: syntax.End, piece: Piece, findings: Findings) -> bool:
    """Whether one tail can be drawn through all the last loops, or one edging be knitted on them: those of a piece in two parts
    come off one part at a time."""
    top = piece.levels[-1].name
    parted = next((o for o in piece.openings if (o.to_level or top) == top), None)
    if end.way not in ("gathered", "edging") or parted is None:
        return True
    drawn_up = end.way == "gathered"
    findings.report(
        "gathered-in-parts" if drawn_up else "edging-in-parts",
        (end.span, "gathered" if drawn_up else "with"),
        (parted.origin.span, "open"),
        helps=("end-below",) if drawn_up else ("bands", "end-below"),
        piece=piece.name,
        opening=parted.name,
        top=top,
        edging=piece.end_edging or "",
    )
    return False
