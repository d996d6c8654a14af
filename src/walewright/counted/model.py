"""A counted piece: every stitch and row of it in one size, and when each edge changes; and what a garment of such pieces has.

Row numbers are row-counter values: what is at row n is done when n rows are counted, before row n + 1.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal

from walewright.counted.row_stretches import SizedNeedlesOut as SizedNeedlesOut
from walewright.counted.row_stretches import SizedRepeat as SizedRepeat
from walewright.design.model import EdgeName, Origin, ShapingWay
from walewright.record import record
from walewright.report.said import Said
from walewright.trade.ends import SlotTaken, Taken
from walewright.trade.fabrics import ChartArea, FabricSide
from walewright.trade.joins import JoinWay
from walewright.trade.shaping import WedgeKind
from walewright.trade.sides import EdgeEnd, EdgePart, EdgeSide, WhichEdges


@record
class ShapingPhrase:
    """`times` times over: for each (gap, by) of the motif, knit `gap` rows, then move the edge by `by` stitches (outwards
    positive). A gap of 0 is allowed for the first change of a run only."""

    gaps: tuple[int, ...]
    by: tuple[int, ...]
    times: int

    @property
    def rows(self) -> int:
        return sum(self.gaps) * self.times

    @property
    def change(self) -> int:
        return sum(self.by) * self.times


@record
class SizedLine:
    """A line within a piece along which an edge is shaped: on a "needle", the last that stays, `at` stitches from the centre mark
    to that edge's side; or with so many stitches ("count") always outside it."""

    of: Literal["needle", "count"]
    at: int


@record
class SizedRun:
    """One edge between two rows. Changes are placed by `phrases` from `from_row` on; plain rows then lead to `to_row`.

    Moves of one stitch are decreases or increases in the run's `way`; inward moves of two or more are cast off, outward ones cast
    on. Cast-offs, casts-on and simple increases happen at the carriage side: of a pair of edges shaped alike the carriage-side
    edge is moved at the scheduled row, the other one row later."""

    name: str
    from_row: int
    to_row: int
    phrases: tuple[ShapingPhrase, ...]
    way: ShapingWay
    origin: Origin
    across: bool = False
    """The one change, at `from_row` (= `to_row`), is loops hung back evenly over the whole width, not shaping at the edge."""
    half_gaps: bool = False
    """Of such a one: there is half a gap at each end."""
    lines: tuple[SizedLine, ...] = ()
    """Of the way "inside", from the centre outwards: a move takes or gives a stitch along each, a smaller one along the first."""

    def changes(self) -> Iterator[tuple[int, int]]:
        """(row, stitches) of each move, rows rising."""
        row = self.from_row
        for phrase in self.phrases:
            for _ in range(phrase.times):
                for gap, by in zip(phrase.gaps, phrase.by, strict=True):
                    row += gap
                    yield row, by

    def moved(self, to: int) -> int:
        """Stitches moved in all up to row `to`, phrase by phrase."""
        row, stitches = self.from_row, 0
        for phrase in self.phrases:
            if row > to:
                break
            end = row + phrase.rows
            if end <= to:
                row, stitches = end, stitches + phrase.change
                continue
            times, left = divmod(to - row, sum(phrase.gaps))
            stitches += sum(phrase.by) * times
            for gap, by in zip(phrase.gaps, phrase.by, strict=True):
                left -= gap
                stitches += by if left >= 0 else 0
            break
        return stitches


@record
class SizedOpening:
    """The parting. At `row` the `flat` centre stitches go to waste yarn (none if 0) and the halves part; each half's neck edge then
    moves by `run` (inwards for the half = negative `by`), rows counted for the half worked first; the other is its mirror image."""

    name: str
    row: int
    flat: int
    width: int
    run: SizedRun
    origin: Origin
    to_row: int
    """Where the parts end, at the top, or rejoin (`rejoins`): the gap's `width` stitches are then cast on again."""
    first: int
    """Slot of the first needle of the gap at its parting (the needle right of the parting line where `flat` is 0)."""
    taken: Taken = "waste"
    rejoins: bool = False
    left: tuple[SizedRun, ...] = ()
    """The gap's edges, as runs of the parts beside it: `left` is the inner edge of the part left of the gap, and a negative
    `by` takes stitches from that part. Rows are those of the part, which begins with the carriage at its outer edge."""
    right: tuple[SizedRun, ...] = ()

    @property
    def depth(self) -> int:
        """Rows from the parting to where the parts end."""
        return self.to_row - self.row

    def edge(self, side: EdgeSide) -> tuple[SizedRun, ...]:
        """The inner edge of the part at that side of the gap."""
        return (self.left if side == "left" else self.right) or (self.run,)


@record
class SizedSlot:
    """At `row`, the loops of slots `first`..`last` go on waste yarn or are closed ("cast-off"), and as many are cast on again.
    "eyelet": the one loop is moved to its neighbour towards the centre, and the empty needle stays in work."""

    name: str
    row: int
    first: int
    last: int
    taken: SlotTaken
    origin: Origin

    @property
    def stitches(self) -> int:
        """Taken there, and cast on again above."""
        return self.last - self.first + 1


@record
class SizedZone:
    """Fabric `fabric` from `from_row` to `to_row`, over the whole width (`first` > `last`) or over slots `first`..`last`."""

    fabric: str
    from_row: int
    to_row: int
    first: int
    last: int
    origin: Origin

    @property
    def panel(self) -> tuple[int, int] | None:
        """First and last slot of a panel; None of what goes over the whole width."""
        return (self.first, self.last) if self.first <= self.last else None


@record
class SizedChart:
    """A chart worked from the row above `from_row` to `to_row`, its first row first: of a charted fabric (`fabric`) over the whole
    width or as a panel, or of a motif (`fabric` empty). At `from_row` it lies on needles `first`..`last`; the rest as in
    `steps.StartChart`. `repeats` whole repeats lie side by side there."""

    chart: str
    fabric: str
    area: ChartArea
    from_row: int
    to_row: int
    first: int
    last: int
    edge: int
    start: int
    repeats: int
    origin: Origin

    @property
    def stitches(self) -> int:
        return self.last - self.first + 1


@record
class SizedWedge:
    """Holding at an outer edge from `from_row`. `groups` run from the outermost inwards.

    kind "in": one plain row, then `groups[0]` stitches held, 2 rows, `groups[1]` held, 2 rows … ; the last group stays in
    work, all return, one closing row. kind "out": its mirror image in time: at `from_row` all groups but the last (innermost) are
    held, and they return one by one, the inner ones first, every 2 rows, until all are in work. kind "both": in without the
    return, then out. `rest` stitches outside the first group are held from `from_row` to `to_row`, the first row after it that
    all knit: 2 * len(groups) rows later, of "both" 4 * len(groups)."""

    name: str
    edge: WhichEdges
    from_row: int
    groups: tuple[int, ...]
    origin: Origin
    kind: WedgeKind = "in"
    rest: int = 0

    @property
    def to_row(self) -> int:
        return self.from_row + (4 if self.kind == "both" else 2) * len(self.groups)

    @property
    def at_once(self) -> int:
        """Stitches that are held as it begins."""
        return self.rest + sum(self.groups[:-1] if self.kind == "out" else self.groups[:1])

    @property
    def reach(self) -> int:
        """Stitches that are ever held: the innermost group is not, where it is not held in and let out again."""
        return self.rest + sum(self.groups if self.kind == "both" else self.groups[:-1])


@record
class SizedPiece:
    """One piece in one size. `levels` maps level name to row; `start` stitches are centred on the bed (of an odd number one more
    lies right of the centre mark); `rows` is the row of the top level. All rows count a repeated stretch once; `counter` tells
    what the row counter shows."""

    name: str
    start: int
    levels: tuple[tuple[str, int], ...]
    rows: int
    left: tuple[SizedRun, ...]
    right: tuple[SizedRun, ...]
    openings: tuple[SizedOpening, ...]
    wedges: tuple[SizedWedge, ...]
    edging_rows: int
    """Rows of the edging along the start as it is seen (of a folded one those of the outside), 0 if none."""
    widest: int
    slots: tuple[SizedSlot, ...] = ()
    zones: tuple[SizedZone, ...] = ()
    repeats: tuple[SizedRepeat, ...] = ()
    start_pick_ups: tuple[PickUp, ...] = ()
    """Of a start "along": what is hung on from where, in order; it comes to `start` stitches."""
    charts: tuple[SizedChart, ...] = ()
    """By rising `from_row`."""
    needles_out: tuple[SizedNeedlesOut, ...] = ()
    end_rows: int = 0
    """Rows of the edging at the end as it is seen, 0 if none."""
    lean: int = 0
    """Stitches that a one-sided piece starts further left than centred (negative: right), so that it finds room on the bed."""
    copies: int = 1
    """How often it is knitted in this size."""

    @property
    def start_left(self) -> int:
        """Stitches left of the centre mark at the start."""
        return self.start // 2 + self.lean

    def row(self, level: str) -> int:
        return dict(self.levels)[level]

    def counter(self, row: int) -> int:
        """What the row counter shows at `row`: where a repeat ends, after its last time, and within one, the first time."""
        return row + sum((r.times - 1) * (r.to_row - r.from_row) for r in self.repeats if r.to_row <= row)

    def within(self, from_row: int, to_row: int, counter: int) -> bool:
        """Whether the row that brought the counter there lies between two rows, in any time of a repeat."""
        return self.counter(from_row) < counter <= self.counter(to_row)

    def out(self, row: int) -> frozenset[int]:
        """Needles within the width that are out of work in the row above `row`."""
        return frozenset(s for out in self.needles_out if out.from_row <= row < out.to_row for s in out.slots)

    def parted(self, row: int) -> SizedOpening | None:
        """The opening that the piece is parted by in the row above `row`."""
        return next((o for o in self.openings if o.row <= row < o.to_row), None)


NEXT_COPY = -1
"""In place of the number of a copy: each copy takes the next one, the last the first."""


@record
class PickUp:
    """`stitches` to pick up along one edge of a piece. `part`: "whole", or of a neck "left", "centre", "right"
    (left and right as the piece hung on the bed). `points` is what is there: loops on waste, or rows."""

    edge: EdgeName
    part: EdgePart
    stitches: int
    points: int
    cm: float
    facing: FabricSide = "purl"
    """The side of the piece to the knitter, "purl" or "knit"."""
    left_end: EdgeEnd | Literal[""] = ""
    """The end that hangs at the left: of rows "bottom" or "top", of stitches "left" or "right" as they hung on the bed."""
    copy: int = 0
    """Which of several copies of the piece; 0: the only one, or each copy with its own; `NEXT_COPY`."""
    live: bool = False
    """Whether open loops wait there."""
    between: tuple[int, int] | None = None
    """Of a stretch of an edge: of rows the counter's readings below and above it, of stitches how many lie left of its two ends."""
    rows: int = 0
    """Rows along it, 0 along stitches."""
    ratio: tuple[int, int] = (0, 0)
    """So many stitches for every so many rows, where simple numbers say it in every size; else noughts."""


@record
class SizedBand:
    name: str
    stitches: int
    rows: int
    pick_ups: tuple[PickUp, ...]
    origin: Origin
    holes: tuple[SizedSlot, ...] = ()
    """Buttonholes; rows are those of what is seen, from 0 on."""
    copies: int = 1
    holed: tuple[int, int] = (0, 0)
    """Stitches left of the two ends of the part that has the buttonholes."""
    behind: tuple[SizedSlot, ...] = ()
    """Their counterparts in the layer that is folded behind, which lie on them when it is hung up; rows are the counter's."""


@record
class SizedSeam:
    """A seam of `Glued.seams` with its lengths: rows of each side where both are row edges (else None), and cm."""

    one_rows: int | None
    other_rows: int | None
    one_cm: float
    other_cm: float
    easing_cm: float
    longer_cm: float
    one_stitches: tuple[int, ...] = ()
    other_stitches: tuple[int, ...] = ()
    """Of each edge, along the seam; 0 of edges of rows."""


@record
class SizedJoin:
    """A join with its lengths: rows of each side where both are row edges (else None), and cm."""

    one: tuple[EdgeName, ...]
    other: tuple[EdgeName, ...]
    one_rows: int | None
    other_rows: int | None
    one_cm: float
    other_cm: float
    easing_cm: float
    origin: Origin
    longer_cm: float = 0.0
    way: JoinWay = "sewn"
    matching: bool = False


@record
class MeasureKey:
    """What is measured of a piece. A level's width stands `across` what was hung back on other needles there, if it was; a wedge's
    height is beside its held stitches. A stretch goes from the level `name` to the level `to`. `times`: that many added up, 0 for a
    number that differs from size to size."""

    extent: Literal["width", "height", "depth"]
    at: Literal["start", "level", "opening", "slot", "wedge", "stretch"]
    name: str = ""
    across: bool = False
    to: str = ""
    times: int | None = None
    called: Said | None = None
    """What a wedge is called on a page, which has no name of its author's."""


@record
class Deviation:
    """Wanted against solved, for the check table and the proof; `unit` is "st" or "rows"."""

    piece: str
    key: MeasureKey
    wanted_cm: float
    wanted: float
    solved: int
    solved_cm: float
    unit: Literal["st", "rows"]


@record
class SizedGarment:
    size: str
    pieces: tuple[SizedPiece, ...]
    bands: tuple[SizedBand, ...]
    joins: tuple[SizedJoin, ...]
    deviations: tuple[Deviation, ...]
    seams: tuple[SizedSeam, ...] = ()
    """In the order of `Glued.seams`."""

    def piece(self, name: str) -> SizedPiece:
        return next(p for p in self.pieces if p.name == name)

    def band(self, name: str) -> SizedBand:
        return next(b for b in self.bands if b.name == name)
