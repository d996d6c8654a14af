"""Two sets of a garment's edges: those that it is put together by, as it was glued, and those that its printed work takes up."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Design
from walewright.glue import Glued
from walewright.glue.rings import rings
from walewright.knit.operations import Block, CastOn, Join, PickUpEdge, Rehang, Work
from walewright.trade.edge_names import BAND_ENDS, part_of_edge

Edges = set[tuple[str, str]]
"""(piece or band, edge)."""


def put_together(design: Design, glued: Glued, size: int) -> Edges:
    """Every edge with a name that is at no opening of the garment, of whichever copy: something was glued to it."""
    free = {(p.owner, p.edge, p.copy) for opening in glued.openings for p in opening.edges}
    found: Edges = set()
    for piece in design.pieces:
        named = [edge for ring in rings(design, piece, purl_out=False) for edge in ring if edge.edge and edge.state != "drawn"]
        for copy in range(1, piece.copies[size] + 1):
            found |= {(piece.name, e.edge) for e in named if (piece.name, e.edge, copy) not in free}
    for band in design.bands:
        copies = range(1, len(glued.lines_of(band.name)) + 1)
        found |= {(band.name, e) for e in (*BAND_ENDS, "start") for copy in copies if (band.name, e, copy) not in free}
    return found


def told(design: Design, work: Work) -> tuple[Edges, Edges]:
    """The edges that blocks and seams name, those that blocks begin with, and those of strips whose ends a seam goes on along."""
    named: Edges = set()
    over: Edges = set()
    for block in work.blocks:
        for op in block.operations:
            if isinstance(op, PickUpEdge):
                named |= {(op.piece, edge) for edge in _edges(design, op.piece, op.edge, op.part)}
        if _begun_along(design, block):
            named.add((block.name, "start"))
    for join in (task for task in work.tasks if isinstance(task, Join)):
        named |= {(piece, one) for piece, edge, _ in (*join.one, *join.other) for one in _edges(design, piece, edge, "whole")}
        over |= {(piece, end) for piece, edging, _ in join.over for end in _ends(edging)}
    return named, over


def _begun_along(design: Design, block: Block) -> bool:
    """Whether a piece or a band gets its first loops from edges that are picked up: then that joins its own start to them. What
    only links edges has no name of its own."""
    if block.name not in {made.name for made in (*design.pieces, *design.bands)}:
        return False
    first = next((op for op in block.operations if isinstance(op, CastOn | PickUpEdge | Rehang)), None)
    return isinstance(first, PickUpEdge)


def _ends(edging: str) -> tuple[str, ...]:
    return tuple(f"{edging} {side}" for side in ("left", "right")) if edging else BAND_ENDS


def _edges(design: Design, owner: str, edge: str, part: str) -> Iterator[str]:
    """The edges of a piece that a name of the work means, as they are called where it is glued."""
    name = edge if part == "whole" else f"{edge} {part}"
    if design.band(owner) is not None:
        yield name
        return
    own = {e.edge for ring in rings(design, design.piece(owner), purl_out=False) for e in ring}
    of = part_of_edge(name)
    if of.name in ("end", "shoulder"):
        name = name.replace("end", "shoulder") if "end" not in own else "end"
    if name in own:
        yield name
    else:
        # The whole way round an opening, or an edge on one side, told with its side.
        yield from (one for one in own if one == of.name or part_of_edge(one).name == name)
