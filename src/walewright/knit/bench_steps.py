"""The bench copy of a plan as data: a line for each time that hands do something, and the sentences of single moves that take the
place of charts, stripes and ribs in stages.

A chart is worked row by row here: what its cells ask for is told needle by needle, in the order in which it is done.
"""

from __future__ import annotations

from dataclasses import dataclass

from walewright.knit.needle import Side
from walewright.knit.step import Step, Words

Needles = tuple[int, ...]
"""Slots, rising."""


@dataclass(frozen=True, slots=True)
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


BenchPart = BenchLine | Step
"""A step that is no line is only stated, or done off the bed."""


@dataclass(frozen=True, slots=True)
class BenchBlock:
    """A block of the plan, `name`, `copies`, `joining`, `before` and `linked` as in `steps.StepBlock`."""

    name: str
    copies: int
    paragraphs: tuple[tuple[Words, tuple[BenchPart, ...]], ...]


@dataclass(frozen=True, slots=True)
class PlainRows(Step):
    """Nothing is done but to knit the rows of the line."""


@dataclass(frozen=True, slots=True)
class OfChart(Step):
    """What stands in the same line is for row number `row` of `chart`, which is knitted next."""

    row: int
    chart: str


@dataclass(frozen=True, slots=True)
class FabricBegins(Step):
    """From the next row on by `chart`, as `fabric`: on needles `first`..`last`, over the whole width where `first` > `last`."""

    fabric: str
    chart: str
    first: int
    last: int


@dataclass(frozen=True, slots=True)
class MotifBegins(Step):
    """From the next row on `chart` on needles `first`..`last`, in the fabric it stands in."""

    chart: str
    first: int
    last: int


@dataclass(frozen=True, slots=True)
class ChartEnds(Step):
    """No more of `chart`: on needles `first`..`last`, over the whole width where `first` > `last`."""

    chart: str
    first: int
    last: int


@dataclass(frozen=True, slots=True)
class StripesBegin(Step):
    """From the next row on in stripes, as `fabric`; the yarns are changed where lines say so."""

    fabric: str


@dataclass(frozen=True, slots=True)
class StripesEnd(Step):
    fabric: str


@dataclass(frozen=True, slots=True)
class TakeUp(Step):
    """Thread `yarn` at `tension`: the end of it that hangs at the carriage's side, if one does. The yarn before it is broken."""

    yarn: str
    tension: str


@dataclass(frozen=True, slots=True)
class HoldNeedles(Step):
    """Put `needles` into hold for a pattern."""

    needles: Needles


@dataclass(frozen=True, slots=True)
class ReturnNeedles(Step):
    """Put `needles` back so that the next row knits them."""

    needles: Needles


@dataclass(frozen=True, slots=True)
class FloatPast(Step):
    """Lift the yarn of the last row off `needles`, which are held, so that it floats past them, and return them to work."""

    needles: Needles


@dataclass(frozen=True, slots=True)
class DrawLongOn(Step):
    """Draw the yarn of the last row through the loops of `needles`, which are held, to twice the usual length; return them."""

    needles: Needles


@dataclass(frozen=True, slots=True)
class KnitNeedles(Step):
    """Lift the yarn of the last row off `needles`, which are held, knit them by hand with `yarn`, and return them to work."""

    needles: Needles
    yarn: str


@dataclass(frozen=True, slots=True)
class LayColours(Step):
    """A row by hand: each of `yarns` is laid into the hooks of `places` of the same number, `main` into all others, neighbouring
    yarns crossed; then the carriage is taken across without yarn, and the counter counts."""

    yarns: tuple[str, ...]
    places: tuple[Needles, ...]
    main: str


@dataclass(frozen=True, slots=True)
class MoveStitches(Step):
    """Move the stitches of `needles` one needle to `side`, those side by side on one tool; emptied needles stay in work."""

    needles: Needles
    side: Side


@dataclass(frozen=True, slots=True)
class CrossStitches(Step):
    """From each needle of `firsts` on, exchange `half` stitches with as many at their right, hanging those of `side` first."""

    firsts: Needles
    half: int
    side: Side


@dataclass(frozen=True, slots=True)
class DropRows(Step):
    """Let the columns of `needles` run down `rows` rows."""

    needles: Needles
    rows: int


@dataclass(frozen=True, slots=True)
class LatchColumns(Step):
    """Re-form the columns of `needles` on the other face, `rows` rows, having dropped them as far if they are not."""

    needles: Needles
    rows: int


@dataclass(frozen=True, slots=True)
class LatchOn(Step):
    """As `LatchColumns`, down to the stitch that was re-formed and hung last."""

    needles: Needles
    rows: int
