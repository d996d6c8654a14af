"""Nodes of the syntax tree that put pieces together: bands and joins."""

from __future__ import annotations

from walewright.record import record
from walewright.source.piece_lines import EdgeRef
from walewright.source.quantities import Expr, Name, Node
from walewright.trade.joins import JoinWay, NextCopy, WornFacing


@record
class BandLine(Node):
    """`band neckband with collar along front neck + back neck`: an edging picked up along edges, optionally
    `, buttonholes 6 over 2 stitches, 2 cm first, 3 cm last` (evenly between the first and the last, which are so far from the
    band's two ends, or, `along right_front edge`, from those of that part of it), `, 3 stitches to 4 rows` (`picked` and
    `of_rows`)."""

    name: str
    edging: str
    along: tuple[EdgeRef, ...]
    holes: int | Name = 0
    hole_stitches: int = 0
    first: Expr | None = None
    last: Expr | None = None
    facing: WornFacing = ""
    picked: int = 0
    of_rows: int = 0
    hole_along: tuple[EdgeRef, ...] = ()


@record
class JoinLine(Node):
    """`join back side to front side`, `join sleeve end to back armhole + front armhole, easing 2 cm`,
    `join sleeve cap to …, longer by 2 cm`, `join crown start to crown end, grafted`.

    `longer` is by how much the first side shall be longer than the other, `easing` how far off that it may be; `way` "sewn" |
    "grafted" | "linked" | "gathered" | "pleated"; `next_copy` "" | "own" (`each to its own`) | "next" (`each to the
    next`) | "all round".
    `, 4 rows to 3 stitches`: `of_rows` of the one side to `to_stitches` of the other, in place of lengths."""

    one: tuple[EdgeRef, ...]
    other: tuple[EdgeRef, ...]
    easing: Expr | None = None
    longer: Expr | None = None
    way: JoinWay = "sewn"
    matching: bool = False
    next_copy: NextCopy = ""
    of_rows: int = 0
    to_stitches: int = 0
