"""At which end of a last edge the tail of its yarn hangs."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.counted.model import SizedGarment, SizedPiece
from walewright.counted.needles import to_the_top
from walewright.counted.parts import SizedPart, parts_of
from walewright.design.model import Design
from walewright.glue.model import OPPOSITE, EndAt, Place, Seam
from walewright.knit.folding import counted
from walewright.record import record
from walewright.trade.edge_names import is_top, number_of_top, part_of_edge, top_between
from walewright.trade.sides import OTHER_SIDE, EdgeSide


def top_of(sized: SizedPiece, part: SizedPart) -> str:
    """What the last row of a part is called."""
    if part.sides:
        return f"shoulder {part.sides[0]}"
    return top_between(next(n for n, gap in enumerate(to_the_top(sized), 1) if gap == part.right))


def last_edge(edge: str) -> str:
    """ "end" of a last edge, with its side or its number if one is named; of any other nothing. An author may call it either."""
    if not is_top(edge):
        return ""
    part = number_of_top(edge) or part_of_edge(edge).part
    return "end" if part == "whole" else f"end {part}"


def last_parts(sized: SizedPiece) -> Mapping[str, SizedPart]:
    """The parts that are knitted to the last row, from left to right, by what their last edges are called."""
    parts = [part for part in parts_of(sized) if part.to_row == sized.rows]
    return {"end" if part.whole else last_edge(top_of(sized, part)): part for part in parts}


def hangs_at(design: Design, sized: SizedPiece, last: str) -> EdgeSide | None:
    """The end of the last edge `last` where its tail hangs; None where there is no such edge, or its tail is used up in closing it.

    The yarn is broken where the carriage is; a chain runs from there to the other end first."""
    piece, part = design.piece(sized.name), last_parts(sized).get(last)
    if part is None or piece.end_way not in ("cast-off", "waste"):
        return None
    rows = sized.counter(sized.rows)
    if piece.end_edging is not None:
        rows += counted(design.edging(piece.end_edging), sized.end_rows)
    carriage = part.home if rows % 2 == 0 else OTHER_SIDE[part.home]
    return carriage if piece.end_way == "waste" else OTHER_SIDE[carriage]


def open_end(design: Design, place: Place) -> bool:
    """Whether the edge is the last row of a piece that ends on waste yarn."""
    return last_edge(place.edge) != "" and design.piece(place.owner).end_way == "waste"


@record
class GraftTail:
    """The tail that a graft is sewn with: of the last edge `last` of a copy of a piece. `first`: it hangs where the seam begins as
    it runs, not where it ends. `out_edge`: the row edge of the piece at whose top it comes out, if that has a name."""

    piece: str
    copy: int
    last: str
    first: bool
    out_edge: str


def graft_tail(design: Design, garment: SizedGarment, seam: Seam) -> GraftTail | None:
    """The tail of a graft, of the side named first if it is a last row; None where none hangs at an end of it."""
    for chain, begins in ((seam.one, seam.one_begins), (seam.other, seam.other_begins)):
        if not any(open_end(design, place) for place in chain):
            continue
        ends = (chain[0], begins[0]), (chain[-1], OPPOSITE[begins[-1]])
        for number, (place, end) in enumerate(ends):
            last, sized = last_edge(place.edge), garment.piece(place.owner)
            if open_end(design, place) and hangs_at(design, sized, last) == end:
                out, at = ends[1 - number]
                out_edge = edge_at(sized, last, at) if (out.owner, out.copy) == (place.owner, place.copy) else ""
                return GraftTail(place.owner, place.copy, last, number == 0, out_edge)
        return None
    return None


def edge_at(sized: SizedPiece, last: str, end: EndAt) -> str:
    """The row edge whose top is at that end of a last edge, by its name with its side; nothing where it has none."""
    part = last_parts(sized)[last]
    gap = part.left if end == "left" else part.right
    if gap is not None:
        # What is left of a gap is a right part's edge.
        return f"{gap.name} {'right' if end == 'left' else 'left'}"
    runs = [run.name for run in (sized.left if end == "left" else sized.right) if run.name]
    return f"{runs[-1]} {end}" if runs else ""
