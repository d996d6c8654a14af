"""The proof of a build: what the bed really knitted, beside what was wanted, per size and piece."""

from __future__ import annotations

from typing import Literal

from walewright.counted.model import MeasureKey
from walewright.record import record
from walewright.trade.joins import JoinWay


@record
class Measure:
    """Wanted and knitted, in cm; `off` is knitted minus wanted, in `unit` ("st" | "rows")."""

    key: MeasureKey
    wanted_cm: float
    knitted_cm: float
    off: float
    unit: Literal["st", "rows"]


@record
class PieceProof:
    name: str
    copies: int
    first_needle: str
    last_needle: str
    most_stitches: int
    rows: int
    loops: int
    measures: tuple[Measure, ...]
    long_rows: tuple[int, ...] = ()
    """How many stitches were drawn long by hand, of each row that has any."""


@record
class SewnEdge:
    """An edge in a seam; `copy` is 0 where all copies of the piece are meant, or there is one."""

    piece: str
    edge: str
    copy: int = 0


@record
class EndSewnOn:
    """The end of an edging or a band (then `edging` is empty) along which a seam goes on, as long as it was knitted."""

    piece: str
    edging: str
    rows: int
    cm: float


@record
class JoinProof:
    """The edges of both sides in order, the other side's empty where one edge is closed upon itself; rows are None where the edge
    does not run along rows. `longer_cm` and `way`: as asked. `join` numbers the join of the design, None of ends of strips that
    are sewn together by themselves; `times` its seams that are so. `over`: what the seam goes on along; rows and centimetres of
    the sides are without that.
    """

    one: tuple[SewnEdge, ...]
    other: tuple[SewnEdge, ...]
    one_rows: int | None
    other_rows: int | None
    one_cm: float
    other_cm: float
    easing_cm: float
    longer_cm: float = 0.0
    way: JoinWay = "sewn"
    join: int | None = 0
    times: int = 1
    over: tuple[EndSewnOn, ...] = ()


LoopSource = Literal["weighed", "measured", "estimated"]
"""How the length of yarn in a stitch is known: from the weight of the swatch, from a measured length, or from the density."""


@record
class FromLoops:
    """Yarn of the garment, reckoned by the loops that were knitted. `known`: the sources of a stitch's length, the surest first,
    and the fabrics of each; no fabrics where it is that of all. `spare` is added for ends, as a share."""

    known: tuple[tuple[LoopSource, tuple[str, ...]], ...]
    spare: float


@record
class AsInFabric:
    """Waste yarn: in loops as long as those of the `fabric`, as thick as the yarn `label`."""

    fabric: str
    label: str


@record
class OneLength:
    """Ravel cord: one length, or `lengths` alike that lie in one start, with so much at each end to pull at, used so many times;
    and another of `part_cm` for a part that waits on it. Either is 0 where it is not used."""

    cm: int
    ends_cm: int
    times: int
    lengths: int = 1
    part_cm: int = 0


YarnKind = Literal["yarn", "waste", "ravel"]

Reckoning = FromLoops | AsInFabric | OneLength


@record
class YarnUse:
    """Yarn for one size; `way` is how it was reckoned. Waste yarn and ravel cord have no `label`. `grams` and `metres` are all of
    it: what the garment takes with seams and tails, the swatches, and a reserve on both."""

    yarn: str
    label: str
    metres: float
    grams: float
    balls: int
    way: Reckoning
    error: float = 0.0
    """How far off it may be, as a share."""
    kind: YarnKind = "yarn"
    """"yarn" (of the garment), "waste" or "ravel"."""
    garment_grams: float = 0.0
    swatch_grams: float = 0.0
    reserve_grams: float = 0.0
    """What `grams` is made of; of waste yarn and ravel cord 0."""


@record
class BobbinUse:
    """In picture knitting: one end of yarn, wound on a bobbin of its own, and how long it has to be, in metres, tails included."""

    piece: str
    chart: str
    yarn: str
    number: int
    """From 1 within the piece, in the order in which they begin."""
    first: str
    """The needle of its first stitch."""
    row: int
    """The row in which it begins: it takes the counter from `row` - 1 to `row`."""
    metres: float
    last: str = ""
    """The needle of the last stitch of its block in that row."""
    last_row: int = 0
    """The last row in which it is laid."""
    rests: tuple[tuple[int, int], ...] = ()
    """(first row, last row) of stretches in between in which it hangs, to be taken up again."""


@record
class FloatFound:
    """A float longer than the limits: over needles `first`..`last` in row `row` of a piece."""

    piece: str
    yarn: str
    row: int
    first: str
    last: str
    stitches: int
    cm: float


@record
class PictureLoop:
    """One loop of a window of the loop graph. `column` and `row` from 0, from the left and the bottom; `kind` as the bed's (`Kind`
    in small letters: "knit", "bar", "float", "long" ...); `face` 1: re-formed, a knit stitch to the knitter. `through` are the
    (column, row) of the loops it is drawn through, some of them perhaps outside the window; `over` says whether it lies in front
    of a loop that crosses it (on the knitter's side)."""

    column: int
    row: int
    kind: str
    yarn: str
    face: int
    through: tuple[tuple[int, int], ...]
    over: bool = False


@record
class FabricPicture:
    """A window of a fabric as the bed knitted it, a repeat or two, to draw it from. `floats` are (row, first column, last column,
    yarn) of yarn that runs past needles."""

    fabric: str
    columns: int
    rows: int
    loops: tuple[PictureLoop, ...]
    floats: tuple[tuple[int, int, int, str], ...]


@record
class SizeProof:
    size: str
    pieces: tuple[PieceProof, ...]
    joins: tuple[JoinProof, ...]
    yarn: tuple[YarnUse, ...]
    operations: int
    """All that hands and carriage do, each block times its copies, and the seams."""
    loops: int
    """Loops of garment yarn, each block times its copies."""
    read_back: bool
    """True when the printed words, read back, are the same moves, or knitted the same fabric."""
    bobbins: tuple[BobbinUse, ...] = ()
    floats: tuple[FloatFound, ...] = ()


@record
class Proof:
    sizes: tuple[SizeProof, ...]
    pictures: tuple[FabricPicture, ...] = ()
    """One for each charted or striped fabric and motif, from the first size that has it."""
    small_swatches: tuple[tuple[str, int, int], ...] = ()
    """Fabrics with the stitches and rows of swatches smaller than the author's, with which yarn is reckoned where the whole ones
    would outweigh the garment."""
