"""Fabric: what a block's operations really made, and what can be measured on it."""

from __future__ import annotations

from array import array
from bisect import bisect_right
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from walewright.bed.corners import Corners, HungEdge
from walewright.bed.density import Density, fabric_at
from walewright.bed.loops import NOTHING, SEWN_COURSE, YARNLESS, YARNLESS_COURSES, LoopKind
from walewright.bed.model import PARTS, Bar, BedEdge, BedPart, Course, Crossed, Float, Gauge, Hung, Link, Turn, inner_top
from walewright.bed.outline import BesideGap, reaches
from walewright.bed.sameness import digest, same
from walewright.knit.operations import Side

_SHOULDERS = ("end", "shoulder")


def split_name(name: str) -> tuple[str, BedPart]:
    """ "neck centre" is the part "centre" of "neck"; a name without such a last word is whole."""
    head, _, tail = name.rpartition(" ")
    for part in PARTS:
        if head and tail == part:
            return head, part
    return name, "whole"


UPPER = "upper"
"""Last word of the name of the edge that was cast on above a gap or a slot."""


def _spaced(name: str) -> str:
    """The edge above may be asked for as one word, "thumb_upper", where spaces part the names of edges."""
    return f"{name.removesuffix(f'_{UPPER}')} {UPPER}" if name.endswith(f"_{UPPER}") else name


@dataclass(frozen=True, slots=True, eq=False)
class KnitFabric:
    """One piece, edging or band as knitted; equal to another if it is the `same` (`sameness`).

    Loops are numbered in the order of making; `slots`, `parents`, `kinds` (`LoopKind`) and `faces` (0 purl side to the knitter,
    1 re-formed) hold one entry each and are not to be changed. A parent below 0: -1 none, -2 waste yarn, -3 ravel yarn.
    `more_parents` has the further loops of those drawn through several. Waste and ravel loops are not in the fabric.
    `turns` and `bars` are as `model` says. `feet` are loops whose feet open when the waste yarn comes away, left to right.
    """

    name: str
    copies: int
    courses: tuple[Course, ...]
    slots: array[int]
    parents: array[int]
    more_parents: Mapping[int, tuple[int, ...]]
    kinds: bytes
    faces: bytes
    links: tuple[Link, ...]
    edges: tuple[BedEdge, ...]
    bars: tuple[Bar, ...]
    turns: tuple[Turn, ...]
    feet: tuple[int, ...]
    gauges: Mapping[tuple[str, str], Gauge]
    fabrics: Mapping[str, Gauge]
    spreads: tuple[Hung, ...]
    floats: tuple[Float, ...]
    crossings: tuple[tuple[int, int], ...]
    """(row, slot): in picture knitting the yarns of `slot - 1` and `slot` are crossed."""
    crosses: tuple[Crossed, ...]
    """Loops crossed on tools, in order."""
    latched: tuple[tuple[int, int, int, int], ...]
    """(loops made before, counter, slot, rows): how deep a wale was dropped and latched up, each time."""
    corded: tuple[tuple[int, int, int, int], ...]
    """(loops made before, counter, first slot, last slot) of what waited on ravel cord."""
    tails: tuple[tuple[str, int], ...]
    """(yarn, cm) of each tail, 0 where no length was asked for."""
    waste: tuple[tuple[str, str | int, int], ...]
    """Edges cast on or taken off in waste yarn, and the rows of it."""
    helpers: Mapping[str, int]
    """Loops of "waste" and "ravel" yarn that held it and came away."""
    _rows: tuple[Course, ...] = field(repr=False)
    """The piece's own passes, without those of an edging knitted first."""
    _by_row: Mapping[int, tuple[Course, ...]] = field(repr=False)
    _outer: Mapping[Side, Mapping[int, Course]] = field(repr=False)
    """Passes along each outer edge, by row, whether they reach it or not."""
    _gaps: Mapping[int, tuple[BesideGap, ...]] = field(repr=False)
    """Passes beside each gap, from left to right, by row."""
    _held: Mapping[int, frozenset[int]] = field(repr=False)
    """First loop of a pass -> the needles held between its ends."""
    folded: str = ""
    """Where the first rows lie that were folded up and hung: in "front" of the others (their purl sides together), or "behind"."""
    folded_above: str = ""
    """The same of rows whose first one lies within the piece: of an edging that was knitted on to it."""
    corners: Mapping[tuple[str, BedPart], Corners] = field(default_factory=dict, repr=False)
    """By an edge's name and part: of rows its bottom and top corner, of stitches its left and right one."""
    hung: tuple[HungEdge, ...] = field(default=(), repr=False)
    """Edges of other pieces that it was begun on, from left to right."""
    hung_over: tuple[HungEdge, ...] = field(default=(), repr=False)
    """Edges that were hung over these, to be linked with them."""
    below: str = ""
    """The piece whose first row it was knitted on."""
    end_rows: int = 0
    """Rows at each of its two ends, two that were folded upon each other as one."""
    rows_before: int = 0
    """The same of an edging that was knitted before the piece."""

    def __eq__(self, other: object) -> bool:
        return isinstance(other, KnitFabric) and same(self, other)

    def __hash__(self) -> int:
        return hash((self.name, self.slots.tobytes()))

    @property
    def digest(self) -> str:
        """The same for the same fabric."""
        return digest(self)

    @property
    def tails_cm(self) -> dict[str, int]:
        """Length of the tails asked for, by yarn, in all."""
        lengths: Counter[str] = Counter()
        for yarn, cm in self.tails:
            lengths[yarn] += cm
        return {yarn: cm for yarn, cm in lengths.items() if cm}

    # -------------------------------------------------------------- loops

    @property
    def loops(self) -> int:
        """Loops made of garment yarn, a ladder's bars among them: their yarn is that of the stitches that ran down."""
        uncounted = sum(self.kinds.count(kind) for kind in (*YARNLESS, LoopKind.SEWN))
        return len(self.parents) - uncounted - len(self._lifted())

    def _lifted(self) -> frozenset[int]:
        """What was laid and lifted off again: only floats are made of it."""
        if LoopKind.FLOAT not in self.kinds:
            return frozenset()
        return frozenset(c.first_loop for c in self.courses if c.kind == "laid" and self.kinds[c.first_loop] == LoopKind.FLOAT)

    @property
    def wraps(self) -> int:
        return self.kinds.count(LoopKind.WRAP)

    @property
    def chains(self) -> int:
        return self.kinds.count(LoopKind.CHAIN)

    @property
    def loops_by_yarn(self) -> dict[tuple[str, str], int]:
        """Loops made of each (yarn, tension); chains and wraps count one each, floats and what was sewn with a tail none."""
        counts: Counter[tuple[str, str]] = Counter()
        for (_, yarn, tension), count in self.loops_by_fabric.items():
            counts[yarn, tension] += count
        return dict(counts)

    @property
    def loops_by_fabric(self) -> dict[tuple[str, str, str], int]:
        """The same by (fabric, yarn, tension); the name is empty where none was said. Within a panel its fabric's counts."""
        counts: Counter[tuple[str, str, str]] = Counter()
        lifted = self._lifted()
        for course in self.courses:
            if course.kind in YARNLESS_COURSES or course.kind == SEWN_COURSE or course.first_loop in lifted:
                continue
            if not course.panels:
                counts[course.fabric, course.yarn, course.tension] += course.count
                continue
            for slot in self.slots[course.first_loop : course.first_loop + course.count]:
                counts[fabric_at(course, slot), course.yarn, course.tension] += 1
        return dict(counts)

    def parents_of(self, loop: int) -> tuple[int, ...]:
        """Loops that `loop` is drawn through (a FILL: the stitch it is the head of)."""
        first = self.parents[loop]
        return () if first == NOTHING else (first, *self.more_parents.get(loop, ()))

    def course_of(self, loop: int) -> Course:
        at = bisect_right(self.courses, loop, key=lambda course: course.first_loop) - 1
        return self.courses[at]

    # -------------------------------------------------------------- rows and widths

    def passes(self, row: int | None = None) -> tuple[Course, ...]:
        """Garment passes, or those that brought the counter to `row` (one for each part of a parted piece). The blocks of a picture
        row are one pass here, with the yarn that most of it is of; `courses` has each."""
        return self._rows if row is None else self._by_row.get(row, ())

    def held_in(self, course: Course) -> frozenset[int]:
        """Slots of needles held between the ends of a pass: tucked, slipped, drawn long or knitted with another yarn."""
        return self._held.get(course.first_loop, frozenset())

    def stitches_in(self, course: Course) -> int:
        """Stitches that a pass goes over, those on held needles between its ends among them: as many lie side by side there."""
        return course.count + len(self.held_in(course))

    def stitches_at(self, row: int) -> int:
        """Stitches in row `row` of the counter, all parts together; row 0 is the start. 0 if there is no such row."""
        found = sum(self.stitches_in(course) for course in self.passes(row))
        return found if found or row else sum(edge.count for edge in self.edge("start"))

    def extent_at(self, row: int) -> tuple[int, int] | None:
        """First and last slot knitted by row `row`, over all parts."""
        courses = self.passes(row)
        return (min(c.first for c in courses), max(c.last for c in courses)) if courses else None

    def width_cm(self, row: int) -> float | None:
        """Width of the stitches knitted by row `row` (row 0: of the start), None without gauge or row."""
        courses = self.passes(row)
        if not courses:
            start = self.edge("start") if row == 0 else ()
            return start[0].length_cm if start else None
        width = 0.0
        for course in courses:
            slots = (*self.slots[course.first_loop : course.first_loop + course.count], *self.held_in(course))
            part = self._density.width_cm(course, slots, len(slots))
            if part is None:
                return None
            width += part
        return width

    @property
    def _density(self) -> Density:
        return Density(self.gauges, self.fabrics)

    def height_cm(self, after: int, to: int) -> float | None:
        """Height of the counter's rows after+1 .. to, in whichever part, each at its own gauge, beside panels."""
        height = 0.0
        for course in (courses[-1] for row, courses in self._by_row.items() if after < row <= to):
            gauge = self._density.base(course)
            if gauge is None:
                return None
            height += 1 / gauge.rows_per_cm
        return height

    def rows_in_wale(self, slot: int, after: int = 0, to: int | None = None) -> int:
        """Rows after+1 .. to (None: the last) that went over a stitch on one needle: a wedge lengthens only the wales it covers.
        Rows in which a needle between working ones was held are among them.

        A wale is followed on its needle: loops hung back on other needles go on in another needle's count."""
        return sum(
            1
            for course in self._in_rows(after, to)
            if course.first <= slot <= course.last
            # A row without gaps has a loop on each of its needles; in others the needle is looked for.
            if course.count == course.last - course.first + 1
            or slot in self.slots[course.first_loop : course.first_loop + course.count]
            or slot in self.held_in(course)
        )

    def _in_rows(self, after: int, to: int | None) -> Iterator[Course]:
        """The passes of rows after+1 .. to (None: the last). Only these are looked at: a piece may ask for each of many wedges."""
        if to is None or to - after > len(self._by_row):
            return (c for c in self._rows if after < c.counter and (to is None or c.counter <= to))
        return (course for row in range(after + 1, to + 1) for course in self._by_row.get(row, ()))

    def outer_end(self, row: int, side: Side) -> int | None:
        """The outermost slot with a loop at one side of the piece when row `row` was knitted, held needles included."""
        course = self._outer[side].get(row)
        return None if course is None else course.live_first if side == "left" else course.live_last

    def edge_rows(self, side: Side, after: int, to: int) -> int:
        """How many of the rows after+1 .. to reach the outer edge at one side."""
        found = (self._outer[side].get(row) for row in range(after + 1, to + 1))
        return sum(1 for course in found if course is not None and reaches(course, side))

    def inner_end(self, row: int, part: Side, gap: int = 0) -> int | None:
        """Where the part at the left or the right of a gap ends beside it in row `row`, None where it is not there; `gap` is its
        number from the left, from 0 on."""
        beside = self._gaps.get(row, ())
        course = beside[gap][part == "right"] if gap < len(beside) else None
        return None if course is None else course.last if part == "left" else course.first

    def parts_at(self, row: int) -> int:
        """In how many parts row `row` is."""
        return len(self._gaps.get(row, ())) + 1

    def hung_back(self, row: int) -> Hung | None:
        """How the loops were hung back on other needles when row `row` was knitted and the next was not."""
        return next((hung for hung in self.spreads if self.course_of(hung.before - 1).counter == row), None)

    @property
    def rows(self) -> int:
        """Rows of the counter that were knitted."""
        return len(self._by_row)

    @property
    def most_stitches(self) -> int:
        """Most needles between the outermost loops at any pass or cast-on, gaps within not counted out."""
        return max((course.live_last - course.live_first + 1 for course in self.courses), default=0)

    @property
    def first_slot(self) -> int:
        return min(self.slots, default=0)

    @property
    def last_slot(self) -> int:
        return max(self.slots, default=0)

    # -------------------------------------------------------------- edges

    def edge(self, name: str) -> tuple[BedEdge, ...]:
        """The parts of an edge, from left to right; an edge that both sides have alike counts once. () if unknown.

        The ends of a parted piece's halves are the parts of "end" and of "shoulder" alike, and so is what ends between openings.
        """
        head, part = split_name(_spaced(name))
        at_top = head in _SHOULDERS
        names = _SHOULDERS if at_top else (head,)
        found = [
            edge
            for edge in self.edges
            if (edge.name in names and (edge.name == head or edge.part != "whole") and part in ("whole", edge.part))
            or (at_top and part == "whole" and inner_top(edge.name))
        ]
        found.sort(key=lambda edge: (("left", "whole", "centre", "right").index(edge.part), inner_top(edge.name)))
        if part == "whole" and found and found[0].each:
            return (found[0],)
        return tuple(found)


@dataclass(slots=True)
class KnitPiece:
    """A finished block while the rest is knitted: None for one that came to a fault."""

    fabric: KnitFabric | None
    taken: set[tuple[str, BedPart, int]] = field(default_factory=set)
    """(edge, part, copy) that something took up: each can be had once."""
    stretches: list[tuple[tuple[str, BedPart, int], range]] = field(default_factory=list)
    """(edge, part, copy) and the numbers of its points of which something took up a stretch."""

    def all_taken(self, edge: str, part: BedPart) -> bool:
        """Whether the edge of every copy has been taken up."""
        assert self.fabric is not None
        return all((edge, part, copy) in self.taken for copy in range(1, self.fabric.copies + 1))
