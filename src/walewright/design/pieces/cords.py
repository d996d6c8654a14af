"""Cords: whether a piece has anything that a cord can be drawn through."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from walewright.design.findings import Findings
from walewright.design.model import Band, Chart, Cord, Edging, Fabric, Piece
from walewright.report.model import Severity
from walewright.trade.edgings import EDGINGS


def drawn_through(
    cords: Iterable[Cord | None],
    pieces: Mapping[str, Piece | None],
    bands: Iterable[Band | None],
    made: tuple[Mapping[str, Edging | None], Mapping[str, Fabric | None], Mapping[str, Chart | None]],
    findings: Findings,
) -> None:
    """Warns of a cord on a piece without a hem, a hole or a slot. `made` are the edgings, fabrics and charts by name."""
    hung = tuple(band for band in bands if band is not None)
    for cord in cords:
        piece = pieces.get(cord.piece) if cord is not None else None
        if cord is None or piece is None or any(_channels(piece, hung, *made)):
            continue
        findings.report(
            "cord-through-nothing",
            (cord.origin.span, "cord"),
            (piece.origin.span, "folded-edging-hole"),
            helps=("give-piece-folded",),
            severity=Severity.WARNING,
            name=piece.name,
        )


def _channels(
    piece: Piece,
    bands: tuple[Band, ...],
    edgings: Mapping[str, Edging | None],
    fabrics: Mapping[str, Fabric | None],
    charts: Mapping[str, Chart | None],
) -> Iterator[bool]:
    yield bool(piece.slots or piece.buttonholes or piece.mirror_of)
    named = [piece.start_edging, piece.end_edging, *(b.edging for b in bands if any(e.piece == piece.name for e in b.along))]
    yield any(edging is not None and EDGINGS[edging.kind].channel for name in named if name for edging in (edgings.get(name),))
    yield any(b.holes for b in bands if any(e.piece == piece.name for e in b.along))
    worked = [fabrics.get(name) for name in (piece.fabric, *(z.fabric for z in piece.zones))]
    drawn = [charts.get(name) for name in (*(f.chart for f in worked if f), *(m.chart for m in piece.motifs)) if name]
    yield any(key.cell.kind == "hole" for chart in drawn if chart is not None for key in chart.key)
