"""The bench copy of a plan as data: a line for each time that hands do something, and the sentences of single moves that take the
place of charts, stripes and ribs in stages.

A chart is worked row by row here: what its cells ask for is told needle by needle, in the order in which it is done.
"""

from __future__ import annotations

from typing import Literal

from walewright.knit.move_kinds import HungFace
from walewright.knit.needle import Side
from walewright.knit.step import Step, Words
from walewright.record import record

Needles = tuple[int, ...]
"""Slots, rising."""


@record
class BenchLine:
    """Knit `rows` rows, which brings the counter to its value, and then do `body`. `row` and `side` are what the counter reads and
    where the carriage stands when that is done; None while nothing has set it. Then so many needles are in work, held (for shaping
    or for a pattern), and waiting with a part."""

    rows: int
    row: int | None
    side: Side | None
    body: tuple[Step, ...]
    in_work: int
    held: int
    waiting: int
    right_out: bool = False
    """Whether any of them are right out, past which the carriage goes: held for shaping, or of a part not on cord."""
    patterned: Literal["", "begun", "held"] = ""
    """Of a chart that goes on after the line: begun; or held, where needles of it are right out."""


BenchPart = BenchLine | Step
"""A step that is no line is only stated, or done off the bed."""


@record
class BenchBlock:
    """A block of the plan, `name`, `copies`, `joining`, `before` and `linked` as in `steps.StepBlock`."""

    name: str
    copies: int
    paragraphs: tuple[tuple[Words, tuple[BenchPart, ...]], ...]


@record
class PlainRows(Step):
    """Nothing is done but to knit the rows of the line."""


@record
class OfChart(Step):
    """What stands in the same line is done before row number `row` of `chart`, which is knitted next; or is that row `itself`,
    which is laid by hand."""

    row: int
    chart: str
    itself: bool = False


@record
class FabricBegins(Step):
    """From the next row on by `chart`, as `fabric`: on needles `first`..`last`, over the whole width where `first` > `last`."""

    fabric: str
    chart: str
    first: int
    last: int


@record
class MotifBegins(Step):
    """From the next row on `chart` on needles `first`..`last`, in the fabric it stands in."""

    chart: str
    first: int
    last: int


@record
class ChartEnds(Step):
    """No more of `chart`: on needles `first`..`last`, over the whole width where `first` > `last`."""

    chart: str
    first: int
    last: int


@record
class StripesBegin(Step):
    """From the next row on in stripes, as `fabric`; the yarns are changed where lines say so."""

    fabric: str


@record
class StripesEnd(Step):
    fabric: str


@record
class TakeUp(Step):
    """Thread `yarn` at `tension`: the end of it that hangs at the carriage's side, if one does. The yarn before it is broken."""

    yarn: str
    tension: str


@record
class HoldNeedles(Step):
    """Put `needles` into hold for a pattern."""

    needles: Needles


@record
class ReturnNeedles(Step):
    """Put `needles` back so that the next row knits them."""

    needles: Needles


@record
class FloatPast(Step):
    """Lift the yarn of the last row off `needles`, which are held, so that it floats past them, and return them to work."""

    needles: Needles


@record
class DrawLongOn(Step):
    """Draw the yarn of the last row through the loops of `needles`, which are held, to twice the usual length; return them."""

    needles: Needles


@record
class KnitNeedles(Step):
    """Lift the yarn of the last row off `needles`, which are held, knit them by hand with `yarn`, and return them to work."""

    needles: Needles
    yarn: str


@record
class LayColours(Step):
    """A row by hand: each of `yarns` is laid into the hooks of `places` of the same number, `main` into all others, neighbouring
    yarns crossed; then the carriage is taken across without yarn, and the counter counts."""

    yarns: tuple[str, ...]
    places: tuple[Needles, ...]
    main: str


@record
class MoveStitches(Step):
    """Move the stitches of `needles` one needle to `side`, those side by side on one tool; emptied needles stay in work."""

    needles: Needles
    side: Side


@record
class CrossStitches(Step):
    """From each needle of `firsts` on, exchange `half` stitches with as many at their right, hanging those of `side` first."""

    firsts: Needles
    half: int
    side: Side


@record
class DropRows(Step):
    """Let the columns of `needles` run down `rows` rows."""

    needles: Needles
    rows: int


@record
class LatchColumns(Step):
    """Re-form the columns of `needles` on the other face, `rows` rows, having dropped them as far if they are not. `along`: in one
    turn with those before it, which are as many rows deep as they are."""

    needles: Needles
    rows: int
    along: bool = False


@record
class LatchOn(Step):
    """As `LatchColumns`, down to the stitch that was re-formed and hung last."""

    needles: Needles
    rows: int
    along: bool = False


@record
class SetToHold(Step):
    """From here on the carriage goes past needles that are right out, and knits those in work."""


@record
class SetToKnit(Step):
    """From here on the carriage knits all needles."""


@record
class HangFirstRow(Step):
    """As `RehangStart`: of the `stitches` loops that are hung, `between` lie between two stitches of the first row, and one is at
    its edge. Then the ravel cord that parts them from the waste is pulled out."""

    piece: str
    stitches: int
    between: int
    facing: HungFace
