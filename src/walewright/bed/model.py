"""What goes into the bed and what comes out: gauges, bed, faults, courses, edges. Fabrics are in `fabric`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from typing import Literal

from walewright.bed.refusals import Refusal
from walewright.knit.operations import Side
from walewright.record import record
from walewright.report.said import Fact, Said, said

BedStartsWith = Literal["comb", "hem", "nothing"]
BedCrossing = Literal["any", "slip", "lift", "hold", "none"]
BedPart = Literal["whole", "left", "centre", "right"]
PARTS: tuple[BedPart, ...] = ("left", "centre", "right")
"""From left to right, as the piece hung on the bed."""


@record
class Gauge:
    """Stitches and rows per cm of one yarn at one tension, at rest."""

    stitches_per_cm: float
    rows_per_cm: float


@record
class Bed:
    """A bed of `needles` needles (even), with transfer tools of so many `prongs`, and the gauges of what is knitted on it.

    `gauges` is by (yarn, tension); without one, lengths in cm of what is knitted so are None.
    """

    needles: int
    prongs: tuple[int, ...]
    gauges: Mapping[tuple[str, str], Gauge] = field(default_factory=dict)
    fabrics: Mapping[str, Gauge] = field(default_factory=dict)
    """By fabric, for what `InFabric` names: two fabrics can share yarn and tension."""
    start: BedStartsWith = "comb"
    """What it has to begin on: a comb, a hem to hang on the needles, or nothing."""
    crossing: BedCrossing = "any"
    """How its carriage passes loops in work without knitting them."""
    settings: tuple[str, ...] = ()
    """The plates by which its tension is set; none: a dial."""
    missing: frozenset[int] = frozenset()
    """Slots of needles that are not there."""


@record
class Fault:
    """What cannot be done, or does not come out as stated.

    `index` is the operation's in the block, len(operations) for the end of the block; for a join its index in the joins,
    `block` being "joins"; -1 where only the whole work shows it. `case` tells the messages of one code apart, `facts` are what
    its words name; `counter` is what the counter read then, and `sides` are those of a join.
    """

    code: str
    block: str
    index: int
    case: str = ""
    facts: tuple[tuple[str, Fact], ...] = ()
    counter: int | None = None
    sides: tuple[tuple[Said, ...], ...] = ()

    @property
    def told(self) -> Said:
        """Where it came to what fault, to be put into words."""
        why = Said(f"bed/{self.code}/{self.case}" if self.case else f"bed/{self.code}", self.facts)
        if self.sides:
            one, other = self.sides
            return said("bed/in-join", one=one, other=other, why=why)
        return why if self.counter is None else said("bed/in-block", block=self.block, counter=self.counter, why=why)


def fault_of(
    refusal: Refusal, block: str, index: int, counter: int | None = None, sides: tuple[tuple[Said, ...], ...] = ()
) -> Fault:
    """A refusal at its place: an operation of a block, or a join."""
    return Fault(code=refusal.code, block=block, index=index, case=refusal.case, facts=refusal.facts, counter=counter, sides=sides)


YarnCourse = Literal["knit", "laid", "by hand", "cast on", "cast off", "sew off", "wrap"]
YarnlessCourse = Literal["close", "fill", "rehang", "hang feet", "pick up"]
CourseKind = YarnCourse | YarnlessCourse
"""What made a course: with yarn, or by hanging and drawing older loops."""


@record
class Course:
    """`count` loops made in one go, ids from `first_loop`, on slots `first`..`last`, by rising slot (a cast-off as it went).

    `kind` "knit" is a pass, in picture knitting each block of one; "laid" yarn laid over a held needle in mid-row, whatever became
    of it (its loop's kind tells); "by hand" another yarn's loops on held needles. `cast_on` is the way something was cast on
    ("e-wrap", "chain"), else empty, and `apart` says that it was with a length of its own.
    `counter` is the row counter afterwards;
    `section` counts how often the counter was set back, so that it tells the parts of a parted piece, and `stretch` how often
    parts have come together again. `run` is the same number as long as the yarn is unbroken. `to` is where a pass
    went, or where a cast-off began. `live_first`..`live_last` are the slots of the outermost loops on the bed at that moment.
    """

    kind: CourseKind
    counter: int
    section: int
    stretch: int
    first: int
    last: int
    count: int
    first_loop: int
    yarn: str
    tension: str
    run: int
    to: Side | None
    live_first: int
    live_last: int
    fabric: str = ""
    """What `InFabric` said of the whole width."""
    panels: tuple[tuple[str, int, int], ...] = ()
    """What it said of needles: (fabric, first slot, last slot)."""
    cast_on: str = ""
    apart: bool = False

    @property
    def chained(self) -> bool:
        """Whether each stitch is a chain around a needle."""
        return self.kind == "cast off" or self.cast_on == "chain"


@record
class Float:
    """Yarn that runs past needles `first`..`last` in row `counter` without a loop on them: in colour work the other yarn, at a
    slipped stitch, over needles out of work."""

    counter: int
    yarn: str
    first: int
    last: int

    @property
    def needles(self) -> int:
        return self.last - self.first + 1


@record
class Bar:
    """Yarn laid in an empty hook by a pass: an increase at the edge, else a hole's bar; a stitch from the next pass."""

    counter: int
    slot: int
    loop: int
    at_edge: bool


@record
class Turn:
    """The yarn turned back beside the held needle `slot`, the innermost on that side, when the counter read `counter`.

    In a finished fabric an unwrapped turn was a real edge, such as a parted half's neck beside the half that waits.
    """

    counter: int
    slot: int
    side: Side
    wrapped: bool


@record
class BedEdge:
    """One stretch of a piece's edge.

    `points` are the places a needle can take up, in order (stitches from left to right, rows from below), each the ids of
    the loops there. `each` marks edges that both sides of the piece have alike: a join takes one of them.
    `live` stitches wait on waste yarn. `at` says at which end of its rows a row edge lies; of an opening's left part, the right.
    `length_cm` is as worn (`slopes`), None without a gauge. `loose_cm`: where single stitches were moved on its way, by how
    much another reckoning of its length may be off this one.
    """

    name: str
    part: BedPart
    along: Literal["rows", "stitches"]
    count: int
    length_cm: float | None
    points: tuple[tuple[int, ...], ...]
    each: bool = False
    live: bool = False
    at: Side | None = None
    loose_cm: float = 0.0


INNER_TOP = "shoulder "
"""Before the number, from the left, of a part of the last row that lies between two openings."""


def inner_top(name: str) -> int:
    """The number, from the left, of the last row of a part between two openings; 0 of every other edge."""
    number = name.removeprefix(INNER_TOP)
    return int(number) if name.startswith(INNER_TOP) and number.isdecimal() else 0


@record
class Link:
    """The loop `loop` of this fabric is made of, or hangs on, `loops` of `piece`."""

    loop: int
    piece: str
    loops: tuple[int, ...]


@record
class Hung:
    """Loops taken off and hung back on other needles, when `before` loops had been made: slots `old` came to lie at `new`."""

    before: int
    old: tuple[int, int]
    new: tuple[int, int]


@record
class Crossed:
    """Loops crossed on two tools, when `before` loops had been made and the counter read `counter`: the `left` of `first`..`last`
    went to the last needles, the rest to the first ones. The group of side `front` lies in front on the right side."""

    before: int
    counter: int
    first: int
    last: int
    left: int
    front: Side
