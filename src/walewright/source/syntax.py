"""The syntax tree: what the author wrote, with spans and nothing decided.

Every node is frozen; equality and hash ignore spans, so trees compare by meaning. Expressions keep the
units as written. A statement that could not be read is a `Broken` node, which later stages skip in silence.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from walewright.report.model import Span
from walewright.source.choice_lines import ChoiceLine, ForBlock, UseFrom
from walewright.source.joining_lines import BandLine, JoinLine
from walewright.source.page_lines import ForEachButtonhole, InLanguage, NeededLine, PhotographLine, TextLine
from walewright.source.piece_lines import (
    AcrossLine,
    ButtonholesLine,
    EdgeLine,
    EdgeRef,
    End,
    EqualSteps,
    InsidePlace,
    LevelDef,
    Levels,
    MotifLine,
    Neck,
    NeedlesLine,
    OpeningLine,
    RepeatLine,
    Shoulders,
    SlotLine,
    Start,
    Use,
    WedgeLine,
    Without,
    ZoneLine,
)
from walewright.source.quantities import Binary, Call, Expr, Name, Negative, Node, Number, Regauged
from walewright.source.wearing_lines import Along, CordLine, FinishedLine, Free, LapLine, PlaceRef, Round, Through, ToMeasure
from walewright.trade.cells import CellKind
from walewright.trade.edgings import EdgingCastOff, EdgingKind, EdgingWhen
from walewright.trade.fabrics import ChartFit, ColourWay, FabricSide, StitchKind
from walewright.trade.parity import Parity
from walewright.trade.relations import Relation
from walewright.trade.sides import EdgeSide

__all__ = [
    "AcrossLine", "Along", "BandLine", "Binary", "Broken", "ButtonholesLine", "Call", "ChartBlock", "ChartKey", "ChartRepeat",
    "ChartRow", "ChartWay", "ChoiceLine", "Comment", "CordLine", "EdgeLine", "EdgeRef", "EdgingLine", "End", "EqualSteps", "Expr",
    "FabricBlock", "FinishedLine", "ForBlock", "ForEachButtonhole", "Free", "InLanguage", "InsidePlace", "JoinLine", "LapLine",
    "Let", "LevelDef", "Levels", "MachineBlock", "MachineFact", "MakingUp", "MotifLine", "Name", "Neck", "NeededLine",
    "NeedlesLine", "Negative", "Node", "Number", "OpeningLine", "OwnFigure", "PatternBlock", "PhotographLine", "PieceBlock",
    "PlaceRef", "Regauged", "RepeatLine", "Require", "RightSide", "Round", "ShapeBlock", "Shoulders", "SizeRow", "Sizes",
    "SlotLine", "Start", "Statement", "Stitch", "StripeRows", "Swatch", "TextLine", "Through", "ToMeasure", "Tree", "Use",
    "UseFrom", "WedgeLine", "Without", "YarnCount", "YarnLine", "ZoneLine",
]  # fmt: skip


@dataclass(frozen=True, slots=True)
class Comment:
    """A `#` comment: on its `own_line` before statement number `before` of all in the file, or at the end of that one's line."""

    text: str
    before: int
    own_line: bool
    indent: int


@dataclass(frozen=True, slots=True)
class Broken(Node):
    """A line that could not be read; already reported."""

    text: str


@dataclass(frozen=True, slots=True)
class PatternBlock(Node):
    """`pattern "Title"` with a block of `TextLine`."""

    title: str
    body: tuple[Statement, ...]
    others: tuple[InLanguage, ...] = ()


@dataclass(frozen=True, slots=True)
class SizeRow(Node):
    """`length 54 56 58 cm`, or `bust from women bust`; either may end in `, to fit`, and then in a text that says what it is.

    `bust from men bust, 3X 142 cm, 4X 152 cm`: `own` are figures of the author's, for sizes that the table lacks or has wrong."""

    name: str
    values: tuple[float, ...] = ()
    unit: str | None = None
    table: str | None = None
    table_row: str | None = None
    to_fit: bool = False
    own: tuple[OwnFigure, ...] = ()
    about: str = ""
    others: tuple[InLanguage, ...] = ()


@dataclass(frozen=True, slots=True)
class OwnFigure(Node):
    """`3X 142 cm`, of a row from a table."""

    size: str
    value: Number


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
class MachineBlock(Node):
    """`machine bulky` (a shipped profile), or `machine NAME` with a block of `MachineFact`s."""

    name: str
    body: tuple[Statement, ...] = ()


@dataclass(frozen=True, slots=True)
class MachineFact(Node):
    """In a machine block: `needles 100`, `pitch 9 mm`, `prongs 1 2 3`, `waste rows 8`. `key` as written."""

    key: str
    values: tuple[Number, ...]


@dataclass(frozen=True, slots=True)
class YarnLine(Node):
    """`yarn wool "aran-weight wool", 50 g = 82 m`."""

    name: str
    label: str
    ball_weight: Number | None = None
    ball_length: Number | None = None
    count: YarnCount | None = None
    """Of `yarn fine "28/2 wool", 500 g of 2/28 Nm`: the yarn's count in place of a length."""
    colour: str | None = None
    """`, shown "#23395d"`: the colour in which the page draws it."""
    strands: tuple[str, ...] = ()
    """Of `yarn marl "wool and silk", wool + silk together`, in place of a ball: the yarns that are held together."""
    fibres: tuple[str, ...] = ()  # `, fibre wool + polyamide`
    others: tuple[InLanguage, ...] = ()


@dataclass(frozen=True, slots=True)
class YarnCount(Node):
    """`2/28 Nm`, `83 tex`, `20/2 Ne`: `text` as written, without the system, and the system's abbreviation."""

    text: str
    system: str


@dataclass(frozen=True, slots=True)
class FabricBlock(Node):
    """`fabric plain` with a block of `Stitch` and `Swatch` (and texts); `fabric navy like plain, in blue`, which has the stitch and
    the swatch of `like` in a `yarn` of its own."""

    name: str
    body: tuple[Statement, ...]
    like: str = ""
    yarn: str = ""


@dataclass(frozen=True, slots=True)
class Stitch(Node):
    """`stocking stitch in wool at tension 4`: `stitch` = "stocking stitch", "latched rib" (with `every`), "chart" (with `chart`) or
    "stripes" (with `stripes`; `yarn` is then empty).

    `chart lozenge in wool at tension 5, centred, 2 edge stitches`: `fit` "whole" (`whole repeats`), "centred" or "balanced".
    `stripes of 4 rows wool, 2 rows navy at tension 5`."""

    stitch: StitchKind
    yarn: str
    tension: str
    every: int | None = None
    chart: str | None = None
    fit: ChartFit | None = None
    edge: int | None = None
    stripes: tuple[StripeRows, ...] = ()


@dataclass(frozen=True, slots=True)
class StripeRows(Node):
    rows: int
    yarn: str


@dataclass(frozen=True, slots=True)
class RightSide(Node):
    """In a fabric: `right side purl` or `right side knit`."""

    face: FabricSide


@dataclass(frozen=True, slots=True)
class ChartBlock(Node):
    """`chart lozenge` with a block of `ChartKey`s, `ChartRow`s, and at most one `ChartRepeat` and one `ChartWay`."""

    name: str
    body: tuple[Statement, ...]


@dataclass(frozen=True, slots=True)
class ChartKey(Node):
    """`key O hole`, `key N knit in navy`, `key C cross 2 over 2, left first`: `kind` as `design.model.Cell` has it."""

    symbol: str
    kind: CellKind
    yarn: str | None = None
    cross: int | None = None
    over: int | None = None
    hung_first: EdgeSide | None = None


@dataclass(frozen=True, slots=True)
class ChartRow(Node):
    """`| . . O / . |`: one row, as it lies before the knitter; the first line is the last row knitted. Blanks between the symbols
    mean nothing. `cells` are the symbols, `places` where each stands in the file."""

    cells: tuple[str, ...]
    places: tuple[Span, ...] = field(default=(), compare=False, repr=False)


@dataclass(frozen=True, slots=True)
class ChartRepeat(Node):
    """`repeat 6 stitches, after 1 stitch`: so many columns, after so many at the left, are the repeat across."""

    stitches: int
    after: int = 0


@dataclass(frozen=True, slots=True)
class ChartWay(Node):
    """`colours laid in blocks` (picture knitting) or `colours with floats`: `way` "blocks" or "floats"."""

    way: ColourWay


@dataclass(frozen=True, slots=True)
class Swatch(Node):
    """`swatch 40 stitches by 60 rows = 25.2 cm by 27.0 cm, 34 g` (weight optional)."""

    stitches: Number
    rows: Number
    width: Number
    height: Number
    weight: Number | None = None
    loop: Number | None = None
    """`, 14 mm to a stitch`: yarn to a stitch as measured by unravelling."""


@dataclass(frozen=True, slots=True)
class EdgingLine(Node):
    """`edging welt in rib, 6 cm deep, added after, cast off chain`.

    `fabric` names a fabric; `when` is "after" (hung on to finished loops) or "first" (`knitted first`: before the piece).

    `edging hem in plain, 3 cm deep, folded, fold row at tension 8, inside at tension 3, knitted first`; `kind` and `mock` as
    `design.model.Edging` has them: `folded`, `picot`, `mock rib 1 by 1`, `mock rib 2 by 1`, `rolled`, `facing`, `chained` (which
    has no depth)."""

    name: str
    fabric: str
    depth: Expr | None = None
    when: EdgingWhen = "after"
    cast_off: EdgingCastOff = "chain"
    kind: EdgingKind = "plain"
    mock: int = 0
    fold_tension: str | None = None
    inside_tension: str | None = None


@dataclass(frozen=True, slots=True)
class PieceBlock(Node):
    """`piece back in plain`, `piece sleeve in plain, knit 2`, `piece left in plain, mirror of right`, `piece front like back`
    with a block. `fabric` is empty where it is that of the piece that this one is `like`."""

    name: str
    fabric: str = ""
    copies: int | Name = 1
    mirror_of: str | None = None
    body: tuple[Statement, ...] = ()
    parity: Parity = "even"
    """`, centre stitch`: an odd number of stitches, one of them at the centre. `, odd or even`: whichever is nearer."""
    purpose: str = ""
    """`, as hood`: what the piece is, where that matters for safety. "hood" or empty."""
    like: str | None = None
    """The piece whose statements it has, but for those in its own block."""
    image_of: str | None = None
    """Of a mirror image with differences, once it is written out and needs no model: whose image it is."""

    @property
    def image(self) -> str | None:
        """The piece whose mirror image it is, with differences or without."""
        return self.mirror_of or self.image_of


@dataclass(frozen=True, slots=True)
class ShapeBlock(Node):
    """`shape set_in(armhole, chest, tip, across)` with a block of piece statements, in which the names in brackets stand
    for what a `use` says: a quantity, or the name of a level, an edge or an edging."""

    name: str
    parameters: tuple[str, ...]
    body: tuple[Statement, ...]


@dataclass(frozen=True, slots=True)
class Require(Node):
    """`require armhole >= upper_arm / 2 + 2 cm`, `require along neckband >= head * 0.8`: `relation` is one of <= >= = < >."""

    left: Expr | ToMeasure
    relation: Relation
    right: Expr
    because: str | None = None
    others: tuple[InLanguage, ...] = ()


@dataclass(frozen=True, slots=True)
class MakingUp(Node):
    """`making up` with a block of `TextLine` (key "step") and `JoinLine`, in the order of work."""

    body: tuple[Statement, ...]


Statement = (
    Broken
    | ChoiceLine
    | ForBlock
    | UseFrom
    | TextLine
    | PhotographLine
    | PatternBlock
    | SizeRow
    | Sizes
    | Let
    | MachineBlock
    | MachineFact
    | YarnLine
    | FabricBlock
    | Stitch
    | Swatch
    | RightSide
    | ChartBlock
    | ChartKey
    | ChartRow
    | ChartRepeat
    | ChartWay
    | EdgingLine
    | PieceBlock
    | Levels
    | Start
    | EdgeLine
    | NeedlesLine
    | AcrossLine
    | OpeningLine
    | SlotLine
    | ButtonholesLine
    | WedgeLine
    | ZoneLine
    | MotifLine
    | RepeatLine
    | Without
    | ShapeBlock
    | Use
    | CordLine
    | NeededLine
    | FinishedLine
    | Through
    | LapLine
    | Neck
    | Shoulders
    | End
    | BandLine
    | JoinLine
    | Require
    | MakingUp
)


@dataclass(frozen=True, slots=True)
class Tree:
    """A whole source: top-level statements in order, and the comments beside them."""

    file: str
    statements: tuple[Statement, ...]
    comments: tuple[Comment, ...] = ()
