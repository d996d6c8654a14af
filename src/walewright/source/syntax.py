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

    `fabric` names a fabric; `when` is "after": hung on to finished loops."""

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


@dataclass(frozen=True, slots=True)
class LevelDef(Node):
    name: str
    height: Expr


@dataclass(frozen=True, slots=True)
class Levels(Node):
    """`levels hem 0 cm, underarm body, top length`: heights from the start of the piece, rising."""

    levels: tuple[LevelDef, ...]


@dataclass(frozen=True, slots=True)
class Start(Node):
    """`start half wide on waste yarn, with welt` | `start 20 cm wide with e-wrap` | `… with chain`.

    `way` is "waste" | "e-wrap" | "chain"; `edging` names an edging added along the start."""

    width: Expr
    way: str = "waste"
    edging: str | None = None


@dataclass(frozen=True, slots=True)
class Edge(Node):
    """One run of an edge, from where the last run ended up to a level.

    `edges straight to underarm called side`
    `edges slope to 44 cm wide at underarm, fashioned 2 in`
    `edges curve to 36 cm wide at chest` / `edges cast off 3 cm then curve to 36 cm wide at chest`
    `edges steps 2 cm 3 times to tip`
    `left edge slope by 3 cm at tip`
    `which` both|left|right; `path` straight|slope|curve|steps; `width` whole width ("to W wide") or
    `by` one edge's move (positive = outwards); `way` simple|fashioned with `inset` stitches in.
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


@dataclass(frozen=True, slots=True)
class Neck(Node):
    """`neck 18 cm wide, 8 cm deep, round` (shapes: round, v, square), optionally `, 7 cm flat` and `, fashioned 2 in`.

    Depth is measured down from the top level of the piece."""

    width: Expr
    depth: Expr
    shape: str
    flat: Expr | None = None
    way: str | None = None
    inset: int | None = None


@dataclass(frozen=True, slots=True)
class Shoulders(Node):
    """`shoulders held from tip`: held in steps from that level to the top, over all shoulder stitches."""

    from_level: str


@dataclass(frozen=True, slots=True)
class End(Node):
    """`end on waste yarn` | `end cast off`: `way` is "waste" | "cast-off"."""

    way: str


@dataclass(frozen=True, slots=True)
class EdgeRef(Node):
    """`back side`: a piece and one of its edges (`neck`, `shoulder`, `start`, `end` exist without being called)."""

    piece: str
    edge: str


@dataclass(frozen=True, slots=True)
class Band(Node):
    """`band neckband with collar along front neck + back neck`: an edging picked up along edges."""

    name: str
    edging: str
    along: tuple[EdgeRef, ...]


@dataclass(frozen=True, slots=True)
class Join(Node):
    """`join back side to front side`, `join sleeve end to back armhole + front armhole, easing 2 cm`."""

    one: tuple[EdgeRef, ...]
    other: tuple[EdgeRef, ...]
    easing: Expr | None = None


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
