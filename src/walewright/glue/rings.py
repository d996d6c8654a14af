"""The ring of a piece: its edges, walked clockwise as it hangs on the bed with its purl side to the knitter.

Up the left edges, over the top from left to right and down and up an opening there, down the right edges, and back along the
start. An opening that closes again and a slot are rings of their own, walked the other way round.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Literal

from walewright.design.model import Design, EdgeRun, Opening, Piece
from walewright.glue.model import EndAt
from walewright.record import record
from walewright.trade.edge_names import BAND_ENDS, top_between
from walewright.trade.ends import STARTS, EndWay
from walewright.trade.sides import EdgeSide

EdgeState = Literal["rows", "live", "closed", "drawn", "strip"]
"""rows | live: open loops | closed: stitches | drawn: gathered to a point | strip: the end of an edging at the start, or of a
band."""

ALONG_ROWS: frozenset[EdgeState] = frozenset({"rows", "strip"})


@record
class RingEdge:
    """`edge` as in `Place`, empty where it has no name; `begin` and `end` are what is known of its corners (levels, and whether
    they lie at the outer edge or at an opening), walked clockwise; `first` and `last` which of its ends those are.

    `state`: "rows", "live" (open loops), "closed" (stitches), "drawn" (gathered to a point) or "strip" (the end of an edging at
    the start or the end, or of a band). Such an edging is part of the piece: then `start` and `end` are its last edge."""

    edge: str
    state: EdgeState
    begin: frozenset[str]
    end: frozenset[str]
    first: EndAt
    last: EndAt
    cut: int = 0
    """Which stretch of the edge, as `EdgeName.cut`."""
    at_end: bool = False
    """Of the end of an edging: whether this is at the end of its piece."""

    @property
    def turned(self) -> RingEdge:
        """Walked the other way round."""
        return RingEdge(
            self.edge, self.state, self.end, end=self.begin, first=self.last, last=self.first, cut=self.cut, at_end=self.at_end
        )


def rings(design: Design, piece: Piece, purl_out: bool) -> tuple[tuple[RingEdge, ...], ...]:
    """The outer ring of the piece, then those of its openings and slots. A piece that is worn with its purl side out is looked
    at from its knit side."""
    found = tuple(_cut(design, piece, ring) for ring in (tuple(_outer_ring(design, piece)), *_inner_rings(piece)))
    return tuple(map(_turned, found)) if purl_out else found


def _cut(design: Design, piece: Piece, ring: tuple[RingEdge, ...]) -> tuple[RingEdge, ...]:
    """The ring with the edges that bands are parted within in stretches."""
    counts = {cut.edge: len(cut.at[0]) + 1 for cut in design.cuts if cut.piece == piece.name}
    return tuple(stretch for edge in ring for stretch in _stretches(edge, counts.get(edge.edge, 1)))


def _stretches(edge: RingEdge, count: int) -> Iterator[RingEdge]:
    if count == 1:
        yield edge
        return
    inside: frozenset[str] = frozenset()
    for n in range(count):
        number = n + 1 if edge.first in ("bottom", "left") else count - n
        begin, end = edge.begin if n == 0 else inside, edge.end if n == count - 1 else inside
        yield RingEdge(edge=edge.edge, state=edge.state, begin=begin, end=end, first=edge.first, last=edge.last, cut=number)


def strip(purl_out: bool) -> tuple[tuple[RingEdge, ...], ...]:
    """The ring of a band: its first end hung at the left needle, its last end at the right one."""
    none: frozenset[str] = frozenset()
    ring = (
        RingEdge(BAND_ENDS[0], "strip", none, none, "bottom", "top"),
        RingEdge("rim", "closed", none, none, "left", "right"),
        RingEdge(BAND_ENDS[1], "strip", none, none, "top", "bottom"),
        RingEdge("start", "closed", none, none, "right", "left"),
    )
    return (_turned(ring) if purl_out else ring,)


def _turned(ring: tuple[RingEdge, ...]) -> tuple[RingEdge, ...]:
    return tuple(edge.turned for edge in reversed(ring))


def _outer_ring(design: Design, piece: Piece) -> Iterator[RingEdge]:
    first, top = piece.levels[0].name, piece.levels[-1].name
    edging = design.edging(piece.start_edging) if piece.start_edging else None
    strips = {at: name for name, at in piece.strips}
    if edging is not None:
        yield RingEdge(f"{strips['start']} left", "strip", _corner("", "outer"), _corner(first, "outer"), "bottom", "top")
    yield from _side(piece, "left")
    if piece.end_edging is not None:
        yield RingEdge(f"{strips['end']} left", "strip", _corner(top, "outer"), _corner("", "outer"), "bottom", "top", at_end=True)
    yield from _top(piece, top)
    if piece.end_edging is not None:
        yield RingEdge(f"{strips['end']} right", "strip", _corner("", "outer"), _corner(top, "outer"), "top", "bottom", at_end=True)
    yield from (edge.turned for edge in reversed(list(_side(piece, "right"))))
    if edging is not None:
        yield RingEdge(f"{strips['start']} right", "strip", _corner(first, "outer"), _corner("", "outer"), "top", "bottom")
        live = edging.cast_off == "waste" and edging.when == "after"
    else:
        live = STARTS[piece.start_way].open
    at = _corner("" if edging else first, "outer")
    yield RingEdge("start", "live" if live else "closed", at, at, "right", "left")


BEYOND = "beyond "
"""Before the number, in a corner: how many openings of the last row lie further out than the one there."""


def _corner(level: str, where: str) -> frozenset[str]:
    return frozenset({f"level {level}", where} if level else {where})


# ----------------------------------------------------------------- sides and top


def _side(piece: Piece, side: EdgeSide) -> Iterator[RingEdge]:
    """The edges of one side from the start up."""
    runs = piece.left if side == "left" else piece.right
    both = {r.name for r in piece.left if r.name} & {r.name for r in piece.right}
    below = piece.levels[0].name
    stretch: tuple[str, str, str] | None = None
    found: list[tuple[str, str, str]] = []
    for run in runs:
        low, below = below, run.to_level
        if run.path == "across" or (not run.name and _held(piece, side, low, run)):
            continue
        if stretch is not None and run.name == stretch[0]:
            stretch = (stretch[0], stretch[1], run.to_level)
            found[-1] = stretch
        else:
            stretch = (run.name, low, run.to_level)
            found.append(stretch)
    for name, low, high in found:
        edge = f"{name} {side}" if name in both else name
        yield RingEdge(edge, "rows", _corner(low, "outer"), _corner(high, "outer"), "bottom", "top")


def _held(piece: Piece, side: EdgeSide, low: str, run: EdgeRun) -> bool:
    """Whether all of a run's stitches are held: of its rows a few at most reach the edge, and they belong to the slope."""
    order = [level.name for level in piece.levels]
    begin, end = order.index(low), order.index(run.to_level)
    for wedge in piece.wedges:
        top = order.index(wedge.to_level) if wedge.to_level else len(order) - 1
        if wedge.edge in ("both", side) and order.index(wedge.from_level) <= begin and end <= top:
            return True
    return False


_LAST_ROW: Mapping[EndWay, EdgeState] = {"waste": "live", "cast-off": "closed", "sewn-off": "closed", "gathered": "drawn"}


def _top(piece: Piece, top: str) -> Iterator[RingEdge]:
    state = _LAST_ROW[piece.end_way]
    outer = _corner("" if piece.end_edging else top, "outer")
    gaps = sorted((o for o in piece.openings if not rejoins(piece, o)), key=lambda o: o.centre[:1])
    if not gaps:
        yield RingEdge("end", state, outer, outer, "left", "right")
        return
    for number, gap in enumerate(gaps, 1):
        inner = _beside(top, number - 2, len(gaps)), _beside(top, len(gaps) - number, len(gaps))
        edge = top_between(number) if number > 1 else "shoulder left"
        yield RingEdge(edge, state, inner[0] if number > 1 else outer, inner[1], "left", "right")
        yield from _gap(gap, _corner(top, "inner"))
    yield RingEdge("shoulder right", state, _beside(top, len(gaps) - 1, len(gaps)), outer, "left", "right")


def _beside(top: str, others: int, gaps: int) -> frozenset[str]:
    """The corner of a part's last row at an opening; of several openings, so many `others` lie further out. Where two pieces lie
    right side to right side, the one's from the left are the other's from the right."""
    return _corner(top, "inner") | ({f"{BEYOND}{others}"} if gaps > 1 else set())


def _gap(opening: Opening, above: frozenset[str]) -> Iterator[RingEdge]:
    """Down its left edge, across its foot, up its right one."""
    foot = _corner(opening.from_level or "", "inner")
    yield RingEdge(f"{opening.name} left", "rows", above, foot, "top", "bottom")
    if any(opening.flat):
        state: EdgeState = "live" if opening.taken == "waste" else "closed"
        yield RingEdge(f"{opening.name} centre", state, foot, foot, "left", "right")
    yield RingEdge(f"{opening.name} right", "rows", foot, above, "bottom", "top")


def rejoins(piece: Piece, opening: Opening) -> bool:
    """Whether the parts beside the gap come together again."""
    return opening.to_level not in ("", piece.levels[-1].name)


def _inner_rings(piece: Piece) -> Iterator[tuple[RingEdge, ...]]:
    for opening in piece.openings:
        if rejoins(piece, opening):
            head = _corner(opening.to_level, "inner")
            left, *rest = _gap(opening, head)
            upper = RingEdge(f"{opening.name} upper", "closed", head, head, "right", "left")
            yield (*rest, upper, left) if any(opening.width) else (*rest, left)
    for slot in piece.slots:
        if slot.taken != "waste":
            # Closed it has no edge that anything could be joined to, as a buttonhole has none.
            continue
        at = _corner(slot.level, "inner")
        yield (
            RingEdge(slot.name, "live", at, at, "left", "right"),
            RingEdge(f"{slot.name} upper", "closed", at, at, "right", "left"),
        )
