"""Starts that are sewn to, or picked up, though an edging was hung on their loops and cast off."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.design.model import Design, EdgeName, Origin
from walewright.glue.findings import spoken
from walewright.glue.lines import Hanging
from walewright.report.model import Diagnostic, diagnosed
from walewright.trade.edge_names import part_of_edge


def edged_starts(design: Design, hung: Sequence[Hanging]) -> Iterator[Diagnostic]:
    """The first row of a piece is taken up whole by an edging that is added after: nothing else can be joined to it or hung
    on it."""
    users = [(join.origin, (*join.one, *join.other)) for join in design.joins]
    users += [(hanging.origin, hanging.along) for hanging in hung]
    for origin, names in users:
        taken = next((name for name in names if _edged_after(design, name)), None)
        if taken is not None:
            yield _taken_up(design, origin, taken)


def _edged_after(design: Design, name: EdgeName) -> bool:
    if design.band(name.piece) is not None or part_of_edge(name.edge).name != "start":
        return False
    edging = design.piece(name.piece).start_edging
    return edging is not None and design.edging(edging).when == "after"


def _taken_up(design: Design, origin: Origin, name: EdgeName) -> Diagnostic:
    piece = design.piece(name.piece)
    labels = [(origin.span, "used-here")]
    if piece.start_origin is not None:
        labels.append((piece.start_origin.span, "edged-here"))
    return diagnosed(
        "edge-used-twice/edged",
        *labels,
        helps=("knit-first",),
        edge=spoken((name,)),
        piece=piece.name,
        edging=piece.start_edging or "",
    )
