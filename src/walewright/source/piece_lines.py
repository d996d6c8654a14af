"""Nodes of the syntax tree that stand in the block of a piece: its outline, and what is done within it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from walewright.record import record
from walewright.source.quantities import Expr, Name, Node
from walewright.trade.ends import EndWay, StartWay, Taken
from walewright.trade.joins import WornFacing
from walewright.trade.shaping import EdgePath, LargerSteps, NeckShape, WayKind, WedgeKind
from walewright.trade.sides import CentreSide, EdgeSide, PlaceOf, WhichEdges

if TYPE_CHECKING:
    from walewright.source.syntax import Statement


@record
class EdgeRef(Node):
    """`back side`: a piece and one of its edges (`neck`, `shoulder`, `start`, `end` exist without being called)."""

    piece: str
    edge: str


@record
class LevelDef(Node):
    name: str
    height: Expr
    most: Expr | None = None
    """Of a free level, `top between 52 cm and 60 cm`: from `height` to `most`."""


@record
class Levels(Node):
    """`levels hem 0 cm, underarm body, top length`: heights from the start of the piece, rising."""

    levels: tuple[LevelDef, ...]


@record
class Start(Node):
    """`start half wide on waste yarn, with welt` | `start 20 cm wide with e-wrap` | `… with chain` |
    `start 12 cm wide along mitten slot + mitten palm` | `start between 20 cm and 24 cm wide …` |
    `start half / 2 left to 1 cm right of centre …`: from `from_place` to `to_place`, right of the centre line positive, without
    a `width`. `start along mitten slot + mitten palm` has neither: it is as wide as the edges are long.

    `way` is "waste" | "hand waste" (`on waste yarn by hand`) | "e-wrap" | "chain" | "along" (loops hung on from edges of
    other pieces); `edging` names an edging added along the start; `facing` "right" | "wrong" | "" of those edges' sides."""

    width: Expr | None
    way: StartWay = "waste"
    edging: str | None = None
    along: tuple[EdgeRef, ...] = ()
    most: Expr | None = None
    facing: WornFacing = ""
    from_place: Expr | None = None
    to_place: Expr | None = None


@record
class InsidePlace(Node):
    """`shaped 9 cm from centre and 3 cm from the edge`: a line inside the piece, along which stitches are lost or gained. `of` is
    what its distance is measured from: the "edge", or the centre line, on the edge's "own", its "left" or its "right" side."""

    distance: Expr
    of: PlaceOf


@record
class EqualSteps(Node):
    """`3 stitches 2 times`: some of the steps that follow one another, outwards positive."""

    by: Expr
    times: int | Name = 1


@record
class EdgeLine(Node):
    """One run of an edge, from where the last run ended up to a level.

    `edges straight to underarm called side`
    `edges slope to 44 cm wide at underarm, fashioned 2 in`
    `edges curve to 36 cm wide at chest` / `edges cast off 3 cm then curve to 36 cm wide at chest`
    `edges steps 2 cm 3 times to tip`, `edges steps -4 stitches then -3 stitches 2 times to tip`, `…, larger steps first`
    `edges arch to 10 cm wide at top`, `edges slope to between 8 cm and 12 cm wide at top`
    `edges in 1 stitch every 2 rows to tip`, `left edge out 1 stitch every 4 rows to top`
    `left edge slope by 3 cm at tip`, `edges slope …, fashioned 3 in, two at once`, `…, ending with a move`
    `left edge slope to 9 cm from centre at tip`, `right edge curve to 9 cm left of centre at tip`
    `which` both|left|right; `path` straight|slope|curve|arch|steps|rate; `width` whole width ("to W wide", a range with
    `width_most`), with `beside` the place of an edge, so far from the centre line ("own", "left", "right" of it), or `by` one
    edge's move (positive = outwards); of a rate `by` stitches (inwards negative) every `every` rows. `way` simple|fashioned with
    `inset` stitches in, `at_once` 1 or 2 stitches at a time, or "inside", a stitch at each of the `places`.
    """

    which: WhichEdges
    path: EdgePath
    to_level: str
    width: Expr | None = None
    by: Expr | None = None
    cast_off: Expr | None = None
    times: int | Name | None = None
    called: str | None = None
    way: WayKind | None = None
    inset: int | None = None
    width_most: Expr | None = None
    every: int | Name | None = None
    at_once: int = 1
    beside: CentreSide = ""
    places: tuple[InsidePlace, ...] = ()
    in_turn: tuple[EqualSteps, ...] = ()
    """Steps of several sizes, in place of `by` and `times`."""
    larger: LargerSteps = ""
    """Of `times` steps that are equal but for a stitch, which come first."""
    begins_moving: bool = False
    """Its first move is made in the first row where it can be."""
    ends_moving: bool = False
    """Its last move is made in the last row where it can be."""


@record
class AcrossLine(Node):
    """`across to 40 cm wide at yoke`: at that level the loops are taken off and hung back evenly on more or fewer needles;
    `, half a gap at each end`."""

    width: Expr
    level: str
    half_gaps: bool = False


@record
class OpeningLine(Node):
    """`opening neck 4 cm wide from slit to top, cast off` with a block of `EdgeLine`s: the two edges of the gap from its parting
    on, where `out` and a positive `by` widen the gap and `to W wide` is the width of the gap.

    `offset` (`, 6 cm left of centre` negative, `right of centre` positive) is where the middle of the gap parts the piece.
    `to_level` below the top: the parts rejoin there, and what the gap is wide is cast on again. `taken` "waste" |
    "cast-off": what becomes of the stitches of the gap's start."""

    name: str
    width: Expr
    from_level: str
    to_level: str
    offset: Expr | None = None
    taken: Taken = "waste"
    body: tuple[Statement, ...] = ()


@record
class SlotLine(Node):
    """`slot thumb 6 cm wide at palm, 4 cm right of centre, on waste yarn`: stitches taken off ("waste") or closed
    ("cast-off", `cast off`) in mid-row and as many cast on again in their place."""

    name: str
    width: Expr
    level: str
    offset: Expr | None = None
    taken: Taken = "waste"


@record
class ButtonholesLine(Node):
    """`buttonholes 6 over 2 stitches from hem to neck, 1.5 cm from the right edge`: slots one above another, the first at the
    lower level, the last at the upper one. With 1 stitch an eyelet. `count` is a number or the name of one."""

    count: int | Name
    stitches: int
    from_level: str
    to_level: str
    edge: EdgeSide
    distance: Expr


@record
class WedgeLine(Node):
    """`wedge 9 cm wide at both edges from dart to dart_top, held in`: short rows by holding.

    Over `width` in from the edge: `kind` "in" (`held in`: held step by step from the edge inwards, then all returned; the edge
    gets no rows), "out" (`let out`: held at once, returned step by step outwards), "both" (`held in and let out`).
    `rest` (`, resting 12 cm`): further out from that, held all the while."""

    width: Expr
    edge: WhichEdges
    from_level: str
    to_level: str
    kind: WedgeKind
    rest: Expr | None = None
    larger_last: bool = False
    """`, larger steps last`: where the steps differ by a stitch, the larger ones are the inner ones."""


@record
class ZoneLine(Node):
    """`fabric rib from waist to hip`, `fabric cable from hem to top, 8 cm wide, 6 cm left of centre`: another fabric between two
    levels, over the whole width or a panel of it."""

    fabric: str
    from_level: str
    to_level: str
    width: Expr | None = None
    offset: Expr | None = None
    repeats: int | Name | None = None
    """`, 3 repeats wide`: of a charted fabric, in place of a width."""


@record
class MotifLine(Node):
    """`motif anchor at yoke, 4 cm left of centre`: a chart without a repeat, worked once from that level up."""

    chart: str
    level: str
    offset: Expr | None = None


@record
class NeedlesLine(Node):
    """`needles out every 12th from line to band`, `needles out at 6 cm from centre and 2 cm from the edge from line to band`:
    needles that take no part between two levels: every so many, or those at `places`, on both sides where a place says no side.
    `, worn 16 cm wide`: how wide the piece is there when it is folded along them."""

    from_level: str
    to_level: str
    every: int | None = None
    places: tuple[InsidePlace, ...] = ()
    worn: Expr | None = None


@record
class RepeatLine(Node):
    """`repeat 8 times from base to gore`: the rows between the two levels are worked that many times in all; `times` is a
    number or the name of one."""

    times: int | Name
    from_level: str
    to_level: str


@record
class Use(Node):
    """`use set_in, chest chest, tip top, across 36 cm`: the statements of a shape, shipped or the source's own, with these values
    for its names. With `edge` (`use set_in at the left edge, …`) what it says of both edges is said of that one."""

    name: str
    arguments: tuple[tuple[str, Expr], ...]
    edge: WhichEdges = "both"


@record
class Without(Node):
    """`without pocket`: what a piece leaves out of those that it is like; `part` is the name of an opening, slot, motif, zone or
    shape, or `neck`, `shoulders`, `buttonholes`, `wedges`."""

    part: str


@record
class Neck(Node):
    """`neck 18 cm wide, 8 cm deep, round` (shapes: round, v, square), optionally `, 7 cm flat`, `, cast off`,
    `, fashioned 2 in` and `, ending with a move`.

    Depth is measured down from the top level of the piece."""

    width: Expr
    depth: Expr
    shape: NeckShape
    flat: Expr | None = None
    way: WayKind | None = None
    inset: int | None = None
    taken: Taken = "waste"
    begins_moving: bool = False
    ends_moving: bool = False


@record
class Shoulders(Node):
    """`shoulders held from tip`: held in steps from that level to the top, over all shoulder stitches.

    `edge` "both", or, of a piece with one shoulder, `left shoulder held from tip`, "left" or "right"."""

    from_level: str
    edge: WhichEdges = "both"
    larger_last: bool = False


@record
class End(Node):
    """`end on waste yarn` | `end cast off` | `end cast off sewn` | `end gathered` | `end with EDGING`: `way` is "waste" |
    "cast-off" | "sewn-off" | "gathered" | "edging", and `edging` the name of what is knitted on there."""

    way: EndWay | Literal["edging"]
    edging: str | None = None
