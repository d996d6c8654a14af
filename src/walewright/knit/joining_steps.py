"""Steps of what the piece is to the others: its named edges, and the seams that put edges together."""

from __future__ import annotations

from walewright.knit.copies import Copy
from walewright.knit.manners import SeamChain, SeamEdges, SeamThread, SeamTurn
from walewright.knit.move_kinds import HungEnd, NamedRows, SeamWay
from walewright.knit.step import Step
from walewright.record import record

Strip = tuple[str, str]
"""A band, or a piece and its edging: (name of the band or piece, name of the edging or empty)."""


@record
class EdgeIs(Step):
    """`edge` (`where` "outer" both sides, "left" or "right" that side alone, or "inner" of the parts) runs from row `from_row`
    to `to_row`."""

    edge: str
    where: NamedRows
    from_row: int
    to_row: int


@record
class GapIs(EdgeIs):
    """The inner edges of one of several gaps make `edge`: the `gap`th from the left of those between parts in the row after
    `from_row`."""

    gap: int


@record
class EdgeInSeam(Step):
    """An edge of a seam: `edge` ("armhole left") of a piece; `copy` which of its copies, where that has to be said; `begin`
    the end at which the seam comes to it (see operations.PickUpEdge)."""

    piece: str
    edge: str
    copy: Copy
    begin: HungEnd


@record
class SeamOf(Step):
    """What lies against what: edges of both sides, from the same end of the seam. No `other`: an edge closed upon itself."""

    one: tuple[EdgeInSeam, ...]
    other: tuple[EdgeInSeam, ...]


@record
class JoinEdges(Step):
    """Make the `seams`, which are alike in their numbers; the rest as in operations.Join. `strips`: what is sewn on in them beyond
    the edges, such as the ends of welts. With a `turn` one seam stands for as many as there are `times`, one at each copy."""

    seams: tuple[SeamOf, ...]
    easing_mm: int
    longer_mm: int = 0
    way: SeamWay = "sewn"
    rows: int = 0
    one_mm: int = 0
    other_mm: int = 0
    edges: SeamEdges = ""
    """ "open": both are open loops, which no seam holds. "no tail": of a graft, neither is a last row, where a tail hangs.
    "at tail": a graft begins where its tail hangs. "beyond": what one side is longer lies along the strips."""
    strips: tuple[Strip, ...] = ()
    strip_rows: tuple[int, ...] = ()
    """The rows at the end of each of them."""
    ratio_rows: int = 0
    ratio_stitches: int = 0
    turn: SeamTurn = ""
    times: int = 0
    thread: SeamThread = ""
    thread_cm: int = 0
    """How long a new length of yarn is; 0 where tails sew all of the seams."""
    tails: tuple[Strip, ...] = ()
    """Whose tails sew the seams, in their order; nothing where that is not told."""
    chained: SeamChain = ""
    one_chain: int = 0
    other_chain: int = 0
    """Stitches cast off or on at once along each side, which lie on each other; noughts where one side has none."""
