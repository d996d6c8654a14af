"""The design: what the source means, everything in centimetres, per size, each datum with its origin.

`PerSize` tuples run in the order of `Design.sizes`. Nothing here knows a stitch count; the only stitch
numbers are those the author wrote (a rib's "every 3rd needle", a fashioned decrease "2 in").
Outline convention: a piece is seen as it hangs on the bed, knitter's left = `left`; heights rise from the start.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Literal, TypeVar

from walewright.design.model.charts import Chart
from walewright.design.model.credit import Credit
from walewright.design.model.fabrics import Fabric, Yarn
from walewright.design.model.joined import Band, EdgeCut, EdgeJoin, EdgeName
from walewright.design.model.machine import MachineProfile
from walewright.design.model.origin import CountPerSize, Origin, PerSize
from walewright.design.model.page import Needed, Photograph
from walewright.design.model.regrading import Choice, Edition, Given
from walewright.design.model.runs import EdgeRun, ShapingWay
from walewright.design.model.wearing import Finished, Lap, Passage, Requirement
from walewright.design.model.within import Motif, NeedlesOut, RepeatStretch, Zone
from walewright.record import record
from walewright.report.said import Said, said
from walewright.trade.edge_names import OWN_EDGES, UPPER, StripAt, part_of_edge, strip_name
from walewright.trade.edgings import EdgingCastOff, EdgingKind, EdgingWhen
from walewright.trade.ends import EndWay, StartWay, Taken
from walewright.trade.joins import WornFacing
from walewright.trade.parity import Parity
from walewright.trade.shaping import OpeningShape, WedgeKind
from walewright.trade.sides import EdgeSide, WhichEdges

_T = TypeVar("_T")

Caution = Literal["us-hood", "us-waist", "eu-small", "eu-older"]
"""Published limits that bear on knitted garments for children; the rules where a garment is sold come first."""


@record
class Measurement:
    """A row of the size table, in cm. `credit` is of a shipped table."""

    name: str
    values: PerSize
    to_fit: bool
    credit: Credit | None
    origin: Origin
    published: str = ""
    """What the shipped table that it comes from calls it: "centre_back_neck_to_wrist"; else empty."""
    about: str = ""
    """How it is taken, in plain words: the author's, or the shipped table's."""
    printed: str = ""
    """What pages call it where they do not use its name: "back neck to wrist"."""

    @property
    def body(self) -> str:
        """What it is called in the trade: by the shipped table, or, of a measure of the body, by the author."""
        return self.published or (self.name if self.to_fit else "")


@record
class Edging:
    name: str
    fabric: str
    depth: PerSize
    when: EdgingWhen
    """"after" (hung on to finished loops) or "first" (knitted before the piece, which goes on from it)."""
    cast_off: EdgingCastOff
    """"chain", "sewn" (by back-stitch) or "waste" (left open on waste yarn, to be sewn or grafted down)."""
    origin: Origin
    kind: EdgingKind = "plain"
    """"plain" (so deep, then cast off) | "folded" (so deep, a fold row, as deep again, and its first row hung up) | "picot"
    (folded along a row of eyelets) | "mock rib" (folded, with needles out of work) | "rolled" (plain, and rolls by itself) |
    "facing" (a fold row first, then so deep; turned in whole and sewn down) | "chained" (one row, then cast off: no depth)."""
    mock: int = 0
    """Of a mock rib: every so many needles one is out of work: 2 (1x1) or 3 (2x1)."""
    fold_tension: str = ""
    """Of the fold row, looser; empty: there is none."""
    inside_tension: str = ""
    """Of the part inside the fold, tighter; empty: as the outside."""


@record
class Level:
    """A named height above the start. With `most` the level is free: anywhere from `height` to `most`, as joins need it."""

    name: str
    height: PerSize
    origin: Origin
    most: PerSize | None = None


@record
class Opening:
    """The width parts round a gap; the parts beside it go on one after the other, to the top or until they rejoin.

    The parting is at `from_level`, or, where that is None, `depth` cm below `to_level`. `flat` cm are taken at once there
    (`taken`: "waste" or "cast-off"), their middle `centre` cm right of the piece's centre line. `left` and `right` are the
    gap's two edges from the parting to `to_level`: a positive change widens the gap. A `to_level` below the top: the parts
    rejoin there and the gap's stitches are cast on again. `width` is the gap's last width.
    shape: round | v | square, of a `neck` statement; else "edges"."""

    name: str
    width: PerSize
    depth: PerSize
    flat: PerSize
    shape: OpeningShape
    way: ShapingWay
    origin: Origin
    from_level: str | None = None
    to_level: str = ""
    centre: PerSize = ()
    taken: Taken = "waste"
    left: tuple[EdgeRun, ...] = ()
    right: tuple[EdgeRun, ...] = ()


@record
class Slot:
    """At `level`, `width` cm of stitches, their middle `centre` cm right of the centre line, are taken off on waste yarn or
    closed ("cast-off") and as many cast on again in their place; knitting goes on over the whole width."""

    name: str
    level: str
    width: PerSize
    centre: PerSize
    taken: Taken
    origin: Origin


@record
class Buttonholes:
    """`counts` slots by size, of `stitches` (1: an eyelet), `distance` cm of fabric between them and the `edge`, evenly from
    `from_level` to `to_level`, one at each."""

    counts: CountPerSize
    stitches: int
    from_level: str
    to_level: str
    edge: EdgeSide
    distance: PerSize
    origin: Origin


@record
class Wedge:
    """Short rows by holding at an outer edge, from `from_level` to `to_level`.

    `width` cm in from the edge are held in steps; None: all the stitches between the edge and the opening (or the centre when
    there is none). `kind` "in": held step by step from the edge inwards, then all returned; "out": held at once, returned step
    by step outwards; "both": in, then out. `rest` cm nearest the edge, on top of `width`, are held all the while."""

    name: str
    edge: WhichEdges
    """"both", "left" or "right"."""
    from_level: str
    origin: Origin
    to_level: str = ""
    """Empty: the piece's top."""
    width: PerSize | None = None
    kind: WedgeKind = "in"
    rest: PerSize | None = None
    larger_last: bool = False
    """Of steps that differ by a stitch the larger ones are the inner ones, not the outer ones."""

    @property
    def printed(self) -> Said:
        """What it is called on a page."""
        if self.width is None:
            return said("wedge/shoulders")
        keys: dict[WhichEdges, str] = {"both": "wedge/both", "left": "wedge/left", "right": "wedge/right"}
        return said(keys[self.edge], level=self.from_level)

    @property
    def called(self) -> Said:
        """What it is called in a message."""
        if self.width is None:
            return said("the-shoulders")
        if self.edge == "both":
            return said("the-wedge", level=self.from_level)
        return said("the-side-wedge", side=self.edge, level=self.from_level)


@record
class Piece:
    name: str
    fabric: str
    copies: CountPerSize
    """How often it is knitted in each size."""
    mirror_of: str | None
    levels: tuple[Level, ...]
    start_width: PerSize
    start_way: StartWay
    """"waste" | "hand waste" (waste yarn cast on by hand) | "e-wrap" | "chain" | "along" (hung on edges of other pieces)."""
    start_edging: str | None
    left: tuple[EdgeRun, ...]
    right: tuple[EdgeRun, ...]
    openings: tuple[Opening, ...]
    wedges: tuple[Wedge, ...]
    end_way: EndWay
    """"waste" | "cast-off" | "sewn-off" (cast off by back-stitch) | "gathered"."""
    origin: Origin
    end_edging: str | None = None
    """What is knitted on at the end, on the last row's stitches; it is closed as `end_way` says."""
    parity: Parity = "even"
    """Of the number of its stitches: an odd one has one needle more right of the centre mark than left of it."""
    settled: tuple[bool, ...] = ()
    """Of a parity of "either": in which sizes the number is odd, once that is settled."""
    start_most: PerSize | None = None
    """Of a free start width: from `start_width` to this."""
    start_along: tuple[EdgeName, ...] = ()
    """Of a start "along": the edges whose loops are hung on, in order."""
    slots: tuple[Slot, ...] = ()
    buttonholes: tuple[Buttonholes, ...] = ()
    zones: tuple[Zone, ...] = ()
    repeats: tuple[RepeatStretch, ...] = ()
    purpose: str = ""
    motifs: tuple[Motif, ...] = ()
    needles_out: tuple[NeedlesOut, ...] = ()
    start_facing: WornFacing = ""
    """Of a start "along": as `Band.facing`."""
    start_by_edges: bool = False
    """Of a start "along": it is as wide as the edges are long."""
    start_origin: Origin | None = None
    """Where the start is described; a mirror image has no such line."""

    @property
    def strips(self) -> tuple[tuple[str, StripAt], ...]:
        """What the ends of its edgings are called, each with where the edging is: its left end "welt left", its right one "welt
        right"."""
        own = {run.name for run in (*self.left, *self.right)} | {*OWN_EDGES}
        own |= {gap.name for gap in self.openings} | {slot.name for slot in self.slots}
        begun, ended = self.start_edging, self.end_edging
        found: list[tuple[str, StripAt]] = []
        if begun is not None:
            found.append((strip_name(begun, own, "start", ended or ""), "start"))
        if ended is not None:
            found.append((strip_name(ended, own, "end", begun or ""), "end"))
        return tuple(found)

    def strip_at(self, edge: str) -> StripAt | None:
        """Of an edge that is the end of an edging ("welt left", or "welt", both), where this is."""
        of = part_of_edge(edge)
        name = f"{of.name}{UPPER}" if of.upper else of.name
        return next((at for strip, at in self.strips if name == strip), None)

    @property
    def symmetric(self) -> bool:
        return self.left == self.right

    def odd(self, size: int) -> bool:
        """Whether it has an odd number of stitches in that size; what is not settled counts as even."""
        return self.parity == "odd" or (self.parity == "either" and bool(self.settled) and self.settled[size])

    def level(self, name: str) -> Level:
        return next(level for level in self.levels if level.name == name)


@record
class Cord:
    """A cord or ribbon drawn through a piece, `length` cm long."""

    piece: str
    length: PerSize
    origin: Origin


@record
class Design:
    file: str
    title: str
    texts: tuple[tuple[str, str], ...]
    """(key, text) of the pattern block: summary, story, difficulty, note."""
    sizes: tuple[str, ...]
    measurements: tuple[Measurement, ...]
    machine: MachineProfile
    yarns: tuple[Yarn, ...]
    fabrics: tuple[Fabric, ...]
    edgings: tuple[Edging, ...]
    pieces: tuple[Piece, ...]
    bands: tuple[Band, ...]
    joins: tuple[EdgeJoin, ...]
    requirements: tuple[Requirement, ...]
    making_up: tuple[str, ...]
    """What to do by hand, in the author's words and order."""
    cords: tuple[Cord, ...] = ()
    for_children: bool = False
    """Whether its sizes come from the shipped tables of babies and children, or one is called as theirs are."""
    cautions: tuple[Caution, ...] = ()
    """Published limits, with their sources, that are to be printed with a garment for children that has a hood."""
    joins_before: tuple[int, ...] = ()
    """For each step of `making_up`, how many of `joins` come before it; where nothing is said of a step, all."""
    charts: tuple[Chart, ...] = ()
    free: tuple[EdgeName, ...] = ()
    """Edges that are meant to stay free."""
    finished: tuple[Finished, ...] = ()
    passages: tuple[Passage, ...] = ()
    laps: tuple[Lap, ...] = ()
    bodies: tuple[Measurement, ...] = ()
    """Measures of the body that shipped tables have for these sizes and the source does not speak of."""
    edition: Edition | None = None
    """The source's own figures; None where a design comes of no source."""
    given: tuple[Given, ...] = ()
    """What the knitter gave in their place."""
    choices: tuple[Choice, ...] = ()
    """What the source leaves to the knitter, and what is taken here."""
    cuts: tuple[EdgeCut, ...] = ()
    """Edges within which a band wider than the bed is parted."""
    needed: tuple[Needed, ...] = ()
    photograph: Photograph | None = None

    def chart(self, name: str) -> Chart:
        return next(c for c in self.charts if c.name == name)

    def fabric(self, name: str) -> Fabric:
        return next(f for f in self.fabrics if f.name == name)

    def bought(self) -> tuple[Yarn, ...]:
        """The yarns that are had by themselves: those that are others held together are not."""
        return tuple(y for y in self.yarns if not y.strands)

    def whole_fabrics(self) -> tuple[Fabric, ...]:
        """Those that something is knitted in over its whole width; of panels alone, nothing is measured by its rows."""
        used = {p.fabric for p in self.pieces} | {e.fabric for e in self.edgings}
        used |= {zone.fabric for p in self.pieces for zone in p.zones if zone.width is None}
        return tuple(f for f in self.fabrics if f.name in used)

    def edging(self, name: str) -> Edging:
        return next(e for e in self.edgings if e.name == name)

    def edged_in(self, edging: str) -> Fabric:
        """What an edging is knitted in."""
        return self.fabric(self.edging(edging).fabric)

    def piece(self, name: str) -> Piece:
        return next(p for p in self.pieces if p.name == name)

    def band(self, name: str) -> Band | None:
        """The band of that name; None where it is a piece's."""
        return next((b for b in self.bands if b.name == name), None)

    def strip(self, owner: str, edge: str) -> Edging | None:
        """The edging that an edge is an end of: of a band, or along a piece; None of any other edge."""
        band = self.band(owner)
        if band is not None:
            return self.edging(band.edging)
        piece = self.piece(owner)
        at = piece.strip_at(edge)
        name = None if at is None else piece.start_edging if at == "start" else piece.end_edging
        return None if name is None else self.edging(name)

    def cloth(self, owner: str) -> Fabric:
        """What a piece or a band is knitted in."""
        band = self.band(owner)
        return self.fabric(self.piece(owner).fabric) if band is None else self.edged_in(band.edging)

    def at(self, size: int) -> DesignInSize:
        """The view of its size number `size`."""
        return DesignInSize(self, size)

    @property
    def each_size(self) -> tuple[DesignInSize, ...]:
        """The views of all its sizes, in their order."""
        return tuple(map(self.at, range(len(self.sizes))))


@record
class DesignInSize:
    """A view of a design in one of its sizes, `number` in their order: who is given it needs no size's number beside it, and reads
    whatever differs from size to size by `of`."""

    design: Design
    number: int

    @property
    def size(self) -> str:
        return self.design.sizes[self.number]

    def of(self, by_size: Sequence[_T]) -> _T:
        """What is so in this size of something that has a value for each: a `PerSize` of the design, or what was made of every
        size in their order."""
        return by_size[self.number]

    def each(self, several: Iterable[Sequence[_T]]) -> tuple[_T, ...]:
        """The same of several things."""
        return tuple(map(self.of, several))
