"""Lines of what is knitted with: yarns, what fabrics and charts have in their blocks, edgings."""

from __future__ import annotations

from dataclasses import field

from walewright.record import record
from walewright.report.model import Span
from walewright.source.page_lines import InLanguage
from walewright.source.quantities import Expr, Node, Number
from walewright.trade.cells import CellKind
from walewright.trade.edgings import EdgingCastOff, EdgingKind, EdgingWhen
from walewright.trade.fabrics import ChartFit, ColourWay, FabricSide, StitchKind
from walewright.trade.sides import EdgeSide


@record
class YarnCount(Node):
    """`2/28 Nm`, `83 tex`, `20/2 Ne`: `text` as written, without the system, and the system's abbreviation."""

    text: str
    system: str


@record
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


@record
class StripeRows(Node):
    rows: int
    yarn: str


@record
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


@record
class RightSide(Node):
    """In a fabric: `right side purl` or `right side knit`."""

    face: FabricSide


@record
class Swatch(Node):
    """`swatch 40 stitches by 60 rows = 25.2 cm by 27.0 cm, 34 g` (weight optional)."""

    stitches: Number
    rows: Number
    width: Number
    height: Number
    weight: Number | None = None
    loop: Number | None = None
    """`, 14 mm to a stitch`: yarn to a stitch as measured by unravelling."""


@record
class ChartKey(Node):
    """`key O hole`, `key N knit in navy`, `key C cross 2 over 2, left first`: `kind` as `design.model.Cell` has it."""

    symbol: str
    kind: CellKind
    yarn: str | None = None
    cross: int | None = None
    over: int | None = None
    hung_first: EdgeSide | None = None


@record
class ChartRow(Node):
    """`| . . O / . |`: one row, as it lies before the knitter; the first line is the last row knitted. Blanks between the symbols
    mean nothing. `cells` are the symbols, `places` where each stands in the file."""

    cells: tuple[str, ...]
    places: tuple[Span, ...] = field(default=(), compare=False, repr=False)


@record
class ChartRepeat(Node):
    """`repeat 6 stitches, after 1 stitch`: so many columns, after so many at the left, are the repeat across."""

    stitches: int
    after: int = 0


@record
class ChartWay(Node):
    """`colours laid in blocks` (picture knitting) or `colours with floats`: `way` "blocks" or "floats"."""

    way: ColourWay


@record
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
