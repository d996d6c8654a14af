"""The syntax tree: what the author wrote, with spans and nothing decided.

Every node is frozen; equality and hash ignore spans, so trees compare by meaning. Expressions keep the
units as written. A statement that could not be read is a `Broken` node, which later stages skip in silence.
"""

from __future__ import annotations

from walewright.record import record
from walewright.source.choice_lines import ChoiceLine, ForBlock, UseFrom
from walewright.source.joining_lines import BandLine, JoinLine
from walewright.source.material_lines import (
    ChartKey,
    ChartRepeat,
    ChartRow,
    ChartWay,
    EdgingLine,
    RightSide,
    Stitch,
    StripeRows,
    Swatch,
    YarnCount,
    YarnLine,
)
from walewright.source.page_lines import ForEachButtonhole, InLanguage, NameLine, NeededLine, PhotographLine, TextLine
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
from walewright.trade.parity import Parity
from walewright.trade.relations import Relation

__all__ = [
    "AcrossLine", "Along", "BandLine", "Binary", "Broken", "ButtonholesLine", "Call", "ChartBlock", "ChartKey", "ChartRepeat",
    "ChartRow", "ChartWay", "ChoiceLine", "Comment", "CordLine", "EdgeLine", "EdgeRef", "EdgingLine", "End", "EqualSteps", "Expr",
    "FabricBlock", "FinishedLine", "ForBlock", "ForEachButtonhole", "Free", "InLanguage", "InsidePlace", "JoinLine", "LapLine",
    "Let", "LevelDef", "Levels", "MachineBlock", "MachineFact", "MakingUp", "MotifLine", "Name", "NameLine", "Neck", "NeededLine",
    "NeedlesLine", "Negative", "Node", "Number", "OpeningLine", "OwnFigure", "PatternBlock", "PhotographLine", "PieceBlock",
    "PlaceRef", "Regauged", "RepeatLine", "Require", "RightSide", "Round", "ShapeBlock", "Shoulders", "SizeRow", "Sizes",
    "SlotLine", "Start", "Statement", "Stitch", "StripeRows", "Swatch", "TextLine", "Through", "ToMeasure", "Tree", "Use",
    "UseFrom", "WedgeLine", "Without", "YarnCount", "YarnLine", "ZoneLine",
]  # fmt: skip


@record
class Comment:
    """A `#` comment: on its `own_line` before statement number `before` of all in the file, or at the end of that one's line."""

    text: str
    before: int
    own_line: bool
    indent: int


@record
class Broken(Node):
    """A line that could not be read; already reported."""

    text: str


@record
class PatternBlock(Node):
    """`pattern "Title"` with a block of `TextLine`."""

    title: str
    body: tuple[Statement, ...]
    others: tuple[InLanguage, ...] = ()


@record
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


@record
class OwnFigure(Node):
    """`3X 142 cm`, of a row from a table."""

    size: str
    value: Number


@record
class Sizes(Node):
    """`sizes XS S M` with a block of `SizeRow`."""

    names: tuple[str, ...]
    body: tuple[Statement, ...]


@record
class Let(Node):
    name: str
    value: Expr


@record
class MachineBlock(Node):
    """`machine bulky` (a shipped profile), or `machine NAME` with a block of `MachineFact`s."""

    name: str
    body: tuple[Statement, ...] = ()


@record
class MachineFact(Node):
    """In a machine block: `needles 100`, `prongs 1 2 3`, `starts by hand`; `key` as written. `names` of `plates 1, 2, 3`."""

    key: str
    values: tuple[Number, ...]
    names: tuple[str, ...] = ()


@record
class FabricBlock(Node):
    """`fabric plain` with a block of `Stitch`, `Swatch` and texts; `fabric navy like plain, in blue`: that of `like` in `yarn`."""

    name: str
    body: tuple[Statement, ...]
    like: str = ""
    yarn: str = ""


@record
class ChartBlock(Node):
    """`chart lozenge` with a block of `ChartKey`s, `ChartRow`s, and at most one `ChartRepeat` and one `ChartWay`."""

    name: str
    body: tuple[Statement, ...]


@record
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


@record
class ShapeBlock(Node):
    """`shape set_in(armhole, chest, tip, across)` with a block of piece statements, in which the names in brackets stand
    for what a `use` says: a quantity, or the name of a level, an edge or an edging."""

    name: str
    parameters: tuple[str, ...]
    body: tuple[Statement, ...]


@record
class Require(Node):
    """`require armhole >= upper_arm / 2 + 2 cm`, `require along neckband >= head * 0.8`: `relation` is one of <= >= = < >."""

    left: Expr | ToMeasure
    relation: Relation
    right: Expr
    because: str | None = None
    others: tuple[InLanguage, ...] = ()


@record
class MakingUp(Node):
    """`making up` with a block of `TextLine` (key "step") and `JoinLine`, in the order of work."""

    body: tuple[Statement, ...]


Statement = (
    Broken
    | ChoiceLine
    | ForBlock
    | UseFrom
    | NameLine
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


@record
class Tree:
    """A whole source: top-level statements in order, and the comments beside them."""

    file: str
    statements: tuple[Statement, ...]
    comments: tuple[Comment, ...] = ()
