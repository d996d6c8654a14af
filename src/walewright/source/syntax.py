"""The syntax tree: what the author wrote, with spans and nothing decided.

Every node is frozen; equality and hash ignore spans, so trees compare by meaning. Expressions keep the
units as written. A statement that could not be read is a `Broken` node, which later stages skip in silence.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from walewright.report.model import NOWHERE, Span


@dataclass(frozen=True, slots=True, kw_only=True)
class Node:
    span: Span = field(default=NOWHERE, compare=False, repr=False)


# ---------------------------------------------------------------- expressions


@dataclass(frozen=True, slots=True)
class Number(Node):
    """`12`, `12 cm`, `50 %`. `unit` is the word written, or None."""

    value: float
    unit: str | None = None


@dataclass(frozen=True, slots=True)
class Name(Node):
    name: str


@dataclass(frozen=True, slots=True)
class Negative(Node):
    value: Expr


@dataclass(frozen=True, slots=True)
class Binary(Node):
    """`op` is one of + - * /"""

    op: str
    left: Expr
    right: Expr


@dataclass(frozen=True, slots=True)
class Call(Node):
    """`min(a, b, ...)`, `max(a, b, ...)`, `round(a to b)` (args = (a, b)): a rounded to the nearest multiple of b."""

    function: str
    args: tuple[Expr, ...]


Expr = Number | Name | Negative | Binary | Call


# ---------------------------------------------------------------- statements


@dataclass(frozen=True, slots=True)
class Comment:
    """A `#` comment kept for the formatter: `own_line` comments stand before statement number `before`
    (ordinal over all statements of the file, in order); others at the end of that statement's line."""

    text: str
    before: int
    own_line: bool
    indent: int


@dataclass(frozen=True, slots=True)
class Broken(Node):
    """A line that could not be read; already reported."""

    text: str


@dataclass(frozen=True, slots=True)
class Text(Node):
    """`summary "…"`, `note "…"`, `difficulty "…"`, `story "…"`: `key` is the first word."""

    key: str
    text: str


@dataclass(frozen=True, slots=True)
class Pattern(Node):
    """`pattern "Title"` with a block of `Text`."""

    title: str
    body: tuple[Statement, ...]


@dataclass(frozen=True, slots=True)
class SizeRow(Node):
    """`length 54 56 58 cm`, or `bust from women bust`; either may end in `, to fit`."""

    name: str
    values: tuple[float, ...] = ()
    unit: str | None = None
    table: str | None = None
    table_row: str | None = None
    to_fit: bool = False


@dataclass(frozen=True, slots=True)
class Sizes(Node):
    """`sizes XS S M` with a block of `SizeRow`."""

    names: tuple[str, ...]
    body: tuple[Statement, ...]


@dataclass(frozen=True, slots=True)
class Let(Node):
    name: str
    value: Expr


@dataclass(frozen=True, slots=True)
class Machine(Node):
    """`machine bulky` (a shipped profile), or `machine NAME` with a block of `MachineFact`s."""

    name: str
    body: tuple[Statement, ...] = ()


@dataclass(frozen=True, slots=True)
class MachineFact(Node):
    """In a machine block: `needles 100`, `pitch 9 mm`, `prongs 1 2 3`, `waste rows 8`. `key` as written."""

    key: str
    values: tuple[Number, ...]


@dataclass(frozen=True, slots=True)
class Yarn(Node):
    """`yarn wool "aran-weight wool", 50 g = 82 m`."""

    name: str
    label: str
    ball_weight: Number
    ball_length: Number


@dataclass(frozen=True, slots=True)
class Fabric(Node):
    """`fabric plain` with a block of `Stitch` and `Swatch` (and texts)."""

    name: str
    body: tuple[Statement, ...]


@dataclass(frozen=True, slots=True)
class Stitch(Node):
    """`stocking stitch in wool at tension 4`: `stitch` = "stocking stitch" or "latched rib" (with `every`)."""

    stitch: str
    yarn: str
    tension: str
    every: int | None = None


@dataclass(frozen=True, slots=True)
class Swatch(Node):
    """`swatch 40 stitches by 60 rows = 25.2 cm by 27.0 cm, 34 g` (weight optional)."""

    stitches: Number
    rows: Number
    width: Number
    height: Number
    weight: Number | None = None


@dataclass(frozen=True, slots=True)
class Edging(Node):
    """`edging welt in rib, 6 cm deep, added after, cast off chain`.

    `fabric` names a fabric; `when` is "after" (hung on to finished loops) or "first" (`knitted first`: before the piece)."""

    name: str
    fabric: str
    depth: Expr
    when: str = "after"
    cast_off: str = "chain"


@dataclass(frozen=True, slots=True)
class Piece(Node):
    """`piece back in plain`, `piece sleeve in plain, knit 2`, `piece left in plain, mirror of right` with a block."""

    name: str
    fabric: str
    copies: int = 1
    mirror_of: str | None = None
    body: tuple[Statement, ...] = ()
    centre_stitch: bool = False
    """`, centre stitch`: an odd number of stitches, one of them at the centre."""
    purpose: str = ""
    """`, as hood`: what the piece is, where that matters for safety. "hood" or empty."""


@dataclass(frozen=True, slots=True)
class LevelDef(Node):
    name: str
    height: Expr
    most: Expr | None = None
    """Of a free level, `top between 52 cm and 60 cm`: from `height` to `most`."""


@dataclass(frozen=True, slots=True)
class Levels(Node):
    """`levels hem 0 cm, underarm body, top length`: heights from the start of the piece, rising."""

    levels: tuple[LevelDef, ...]


@dataclass(frozen=True, slots=True)
class Start(Node):
    """`start half wide on waste yarn, with welt` | `start 20 cm wide with e-wrap` | `… with chain` |
    `start 12 cm wide along mitten slot + mitten palm` | `start between 20 cm and 24 cm wide …`.

    `way` is "waste" | "e-wrap" | "chain" | "along" (loops hung on from edges of other pieces); `edging` names an edging
    added along the start."""

    width: Expr
    way: str = "waste"
    edging: str | None = None
    along: tuple[EdgeRef, ...] = ()
    most: Expr | None = None


@dataclass(frozen=True, slots=True)
class Edge(Node):
    """One run of an edge, from where the last run ended up to a level.

    `edges straight to underarm called side`
    `edges slope to 44 cm wide at underarm, fashioned 2 in`
    `edges curve to 36 cm wide at chest` / `edges cast off 3 cm then curve to 36 cm wide at chest`
    `edges steps 2 cm 3 times to tip`
    `edges arch to 10 cm wide at top`, `edges slope to between 8 cm and 12 cm wide at top`
    `edges in 1 stitch every 2 rows to tip`, `left edge out 1 stitch every 4 rows to top`
    `left edge slope by 3 cm at tip`, `edges slope …, fashioned 3 in, two at once`
    `which` both|left|right; `path` straight|slope|curve|arch|steps|rate; `width` whole width ("to W wide", a range with
    `width_most`) or `by` one edge's move (positive = outwards); of a rate `by` stitches (inwards negative) every
    `every` rows. `way` simple|fashioned with `inset` stitches in, `at_once` 1 or 2 stitches at a time.
    """

    which: str
    path: str
    to_level: str
    width: Expr | None = None
    by: Expr | None = None
    cast_off: Expr | None = None
    times: int | None = None
    called: str | None = None
    way: str | None = None
    inset: int | None = None
    width_most: Expr | None = None
    every: int | None = None
    at_once: int = 1


@dataclass(frozen=True, slots=True)
class Across(Node):
    """`across to 40 cm wide at yoke`: at that level the loops are taken off and hung back evenly on more or fewer needles."""

    width: Expr
    level: str


@dataclass(frozen=True, slots=True)
class Opening(Node):
    """`opening neck 4 cm wide from slit to top, cast off` with a block of `Edge`s: the two edges of the gap from its parting
    on, where `out` and a positive `by` widen the gap and `to W wide` is the width of the gap.

    `offset` (`, 6 cm left of centre` negative, `right of centre` positive) is where the middle of the gap parts the piece.
    `to_level` below the top: the parts rejoin there, and what the gap is wide is cast on again. `taken` "waste" |
    "cast-off": what becomes of the stitches of the gap's start."""

    name: str
    width: Expr
    from_level: str
    to_level: str
    offset: Expr | None = None
    taken: str = "waste"
    body: tuple[Statement, ...] = ()


@dataclass(frozen=True, slots=True)
class Slot(Node):
    """`slot thumb 6 cm wide at palm, 4 cm right of centre, on waste yarn`: stitches taken off ("waste") or closed
    ("cast-off", `cast off`) in mid-row and as many cast on again in their place."""

    name: str
    width: Expr
    level: str
    offset: Expr | None = None
    taken: str = "waste"


@dataclass(frozen=True, slots=True)
class Buttonholes(Node):
    """`buttonholes 6 over 2 stitches from hem to neck, 1.5 cm from the right edge`: slots one above another, the first at the
    lower level, the last at the upper one. With 1 stitch an eyelet."""

    count: int
    stitches: int
    from_level: str
    to_level: str
    edge: str
    distance: Expr


@dataclass(frozen=True, slots=True)
class Wedge(Node):
    """`wedge 9 cm wide at both edges from dart to dart_top, held in`: short rows by holding.

    Over `width` in from the edge: `kind` "in" (`held in`: held step by step from the edge inwards, then all returned; the edge
    gets no rows), "out" (`let out`: held at once, returned step by step outwards), "both" (`held in and let out`).
    `rest` (`, resting 12 cm`): further out from that, held all the while."""

    width: Expr
    edge: str
    from_level: str
    to_level: str
    kind: str
    rest: Expr | None = None


@dataclass(frozen=True, slots=True)
class Zone(Node):
    """`fabric rib from waist to hip`, `fabric cable from hem to top, 8 cm wide, 6 cm left of centre`: another fabric between two
    levels, over the whole width or a panel of it."""

    fabric: str
    from_level: str
    to_level: str
    width: Expr | None = None
    offset: Expr | None = None


@dataclass(frozen=True, slots=True)
class RepeatStretch(Node):
    """`repeat 8 times from base to gore`: the rows between the two levels are worked so many times in all."""

    times: int
    from_level: str
    to_level: str


@dataclass(frozen=True, slots=True)
class Shape(Node):
    """`shape set_in(armhole, chest, tip, across)` with a block of piece statements, in which the names in brackets stand
    for what a `use` says: a quantity, or the name of a level, an edge or an edging."""

    name: str
    parameters: tuple[str, ...]
    body: tuple[Statement, ...]


@dataclass(frozen=True, slots=True)
class Use(Node):
    """`use set_in, chest chest, tip top, across 36 cm`: the statements of a shape, shipped or the source's own, with these values
    for its names."""

    name: str
    arguments: tuple[tuple[str, Expr], ...]


@dataclass(frozen=True, slots=True)
class Cord(Node):
    """`cord hood 90 cm long`: a cord or ribbon drawn through the piece."""

    piece: str
    length: Expr


@dataclass(frozen=True, slots=True)
class Neck(Node):
    """`neck 18 cm wide, 8 cm deep, round` (shapes: round, v, square), optionally `, 7 cm flat`, `, cast off` and `, fashioned 2 in`.

    Depth is measured down from the top level of the piece."""

    width: Expr
    depth: Expr
    shape: str
    flat: Expr | None = None
    way: str | None = None
    inset: int | None = None
    taken: str = "waste"


@dataclass(frozen=True, slots=True)
class Shoulders(Node):
    """`shoulders held from tip`: held in steps from that level to the top, over all shoulder stitches."""

    from_level: str


@dataclass(frozen=True, slots=True)
class End(Node):
    """`end on waste yarn` | `end cast off` | `end gathered`: `way` is "waste" | "cast-off" | "gathered"."""

    way: str


@dataclass(frozen=True, slots=True)
class EdgeRef(Node):
    """`back side`: a piece and one of its edges (`neck`, `shoulder`, `start`, `end` exist without being called)."""

    piece: str
    edge: str


@dataclass(frozen=True, slots=True)
class Band(Node):
    """`band neckband with collar along front neck + back neck`: an edging picked up along edges, optionally
    `, buttonholes 6 over 2 stitches, 2 cm first, 3 cm last` (evenly between the first and the last, which are so far from the
    band's two ends)."""

    name: str
    edging: str
    along: tuple[EdgeRef, ...]
    holes: int = 0
    hole_stitches: int = 0
    first: Expr | None = None
    last: Expr | None = None


@dataclass(frozen=True, slots=True)
class Join(Node):
    """`join back side to front side`, `join sleeve end to back armhole + front armhole, easing 2 cm`,
    `join sleeve cap to …, longer by 2 cm`, `join crown start to crown end, grafted`.

    `longer` is by how much the first side shall be longer than the other, `easing` how far off that it may be; `way` "sewn" |
    "grafted" | "linked" | "gathered"."""

    one: tuple[EdgeRef, ...]
    other: tuple[EdgeRef, ...]
    easing: Expr | None = None
    longer: Expr | None = None
    way: str = "sewn"


@dataclass(frozen=True, slots=True)
class Require(Node):
    """`require armhole >= upper_arm / 2 + 2 cm`: `relation` is one of <= >= = < >."""

    left: Expr
    relation: str
    right: Expr
    because: str | None = None


@dataclass(frozen=True, slots=True)
class MakingUp(Node):
    """`making up` with a block of `Text` (key "step")."""

    body: tuple[Statement, ...]


Statement = (
    Broken
    | Text
    | Pattern
    | SizeRow
    | Sizes
    | Let
    | Machine
    | MachineFact
    | Yarn
    | Fabric
    | Stitch
    | Swatch
    | Edging
    | Piece
    | Levels
    | Start
    | Edge
    | Across
    | Opening
    | Slot
    | Buttonholes
    | Wedge
    | Zone
    | RepeatStretch
    | Shape
    | Use
    | Cord
    | Neck
    | Shoulders
    | End
    | Band
    | Join
    | Require
    | MakingUp
)


@dataclass(frozen=True, slots=True)
class Tree:
    """A whole source: top-level statements in order, and the comments beside them."""

    file: str
    statements: tuple[Statement, ...]
    comments: tuple[Comment, ...] = ()
