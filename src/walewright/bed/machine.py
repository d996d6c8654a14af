"""The machine while a block is knitted: needles, carriage, counter, yarn, and the fabric so far.

Inside the package a needle is its index from the left end of the bed; `slot` = index - half.
"""

from __future__ import annotations

import re
from array import array
from collections.abc import Mapping
from dataclasses import dataclass, field

from walewright.bed.corners import HungEdge, Meetings
from walewright.bed.fabric import KnitPiece
from walewright.bed.loops import HELPERS, NOTHING, YARNLESS_COURSES, LoopKind, Loops
from walewright.bed.model import Bar, Bed, BedEdge, BedPart, Course, CourseKind, Hung, Link, Turn
from walewright.bed.pending import Kept, Pending, Strand
from walewright.bed.refusals import Refusal, YarnFor, refused, slot_of
from walewright.knit.operations import NameEdge, Side
from walewright.record import record
from walewright.report.said import Fact, Said, said

NON_WORKING, WORKING, HELD, CORDED = 0, 1, 2, 3
"""Corded: fully back, its loop kept by ravel cord."""
_RUNS = re.compile(rb"\x01+")
_HELD_ONES = re.compile(rb"\x02")


@record
class Layout:
    """Which needles a pass meets. `runs` half-open; indices -1 where there is none."""

    runs: tuple[tuple[int, int], ...]
    first: int
    last: int
    live_first: int
    live_last: int
    inside: tuple[int, ...]
    """Held needles between working ones."""
    beyond: dict[Side, int]
    """The innermost held needle beyond the working ones, by side."""


@record
class Thread:
    """What loops are made of: the number of the unbroken end, its yarn and the tension."""

    run: int
    yarn: str
    tension: str


@dataclass(slots=True)
class Machine:
    bed: Bed
    pieces: Mapping[str, KnitPiece]
    copies: int
    half: int
    axis: array[int]
    position: bytearray
    top: array[int]
    """The first loop on each needle, NOTHING, or a helper yarn's number."""
    more: dict[int, list[int]] = field(default_factory=dict)
    """Further loops by needle, in the order they were hung."""
    side: Side | None = None
    counter: int = 0
    section: int = 0
    main: int = 0
    """Section with which the piece's main part began: what was knitted before is an edging knitted first."""
    stretch: int = 0
    parting: int | None = None
    """What the counter was last set back to, as long as parts of the piece are worked apart, or where parts came together since."""
    yarn: str | None = None
    tension: str = ""
    run: int = 0
    runs: int = 0
    """Ends of yarn so far; `run` is the number of the one in use."""
    fastened: bool = False
    """The yarn ends in the last chain of a cast-off."""
    yarn_side: Side | None = None
    """The side where the yarn hangs from the knitting; None for a fresh end."""
    yarn_at: int = -1
    waiting_chain: tuple[int, int] | None = None
    """(last chain, held needle beside it): set on that needle if the yarn goes on, fastened off if it is broken."""
    over: int = -1
    """Innermost held needle that the last pass ran out over, on the carriage's side."""
    wrapped: int = -1
    """Needle wrapped since the last pass."""
    held_here: list[int] = field(default_factory=list)
    """Needles put to hold on the carriage's side since the last pass."""
    unwrapped: dict[int, Turn] = field(default_factory=dict)
    loops: Loops = field(default_factory=Loops)
    courses: list[Course] = field(default_factory=list)
    bars: list[Bar] = field(default_factory=list)
    turns: list[Turn] = field(default_factory=list)
    links: list[Link] = field(default_factory=list)
    spreads: list[Hung] = field(default_factory=list)
    ended: list[tuple[BedEdge, int]] = field(default_factory=list)
    """Edges of stitches that left the bed, live or cast off, with the leftmost slot."""
    named: list[tuple[int, NameEdge, int]] = field(default_factory=list)
    """(number of the operation, itself, section of the row before it)."""
    folds: list[tuple[int, int, int]] = field(default_factory=list)
    """(section, low, high): the rows from `low` to `high` on the counter were folded in the middle, the first one hung up."""
    taken: list[tuple[str, str, BedPart, int]] = field(default_factory=list)
    """(piece, edge, part, copy) that this block took up."""
    stretches: dict[str, list[tuple[tuple[str, BedPart, int], range]]] = field(default_factory=dict)
    """By piece, (edge, part, copy) and the numbers of its points that this block took up."""
    waste: list[tuple[str, str | int, int]] = field(default_factory=list)
    """What comes away, in order: ("comb", first, last) cast on, (yarn, tension, 1) a pass, (edge, "", rows) knitted off."""
    fastened_loops: list[int] = field(default_factory=list)
    fabric: str = ""
    panels: tuple[tuple[str, int, int], ...] = ()
    """What was said that is being knitted, see `Course`."""
    pending: Pending = field(default_factory=Pending)
    kept: Kept = field(default_factory=Kept)
    feet_hung_at: int | None = None
    """How many loops there were when the first row's feet were hung by this block itself."""
    folded: str = ""
    """Where the fold lies then: "front" (between work and knitter) or "behind"."""
    folded_above: str = ""
    """The same of a fold whose first row lies within the block."""
    hung: list[HungEdge] = field(default_factory=list)
    """What was picked up on empty needles."""
    over_hung: list[HungEdge] = field(default_factory=list)
    """What was hung over that, to be linked with it."""
    rehung: list[tuple[str, str]] = field(default_factory=list)
    """(piece, the side that faces the knitter) of first rows that were rehung."""
    meetings: Meetings = field(default_factory=Meetings)
    """Corners of finished pieces that have come together."""
    index: int = 0
    _layout: Layout | None = None

    # -------------------------------------------------------------- looking

    def at(self, index: int) -> Said:
        """The needle of an index, as it is told."""
        return slot_of(index - self.half)

    def refuse(self, kind: str, /, **facts: Fact) -> Refusal:
        return refused(kind, **facts)

    def span(self, first: int, last: int) -> tuple[int, int]:
        """Indices of a range of slots."""
        return first + self.half, last + self.half

    def layout(self) -> Layout:
        """Remembered until a needle changes position."""
        if self._layout is None:
            position = bytes(self.position)
            runs = tuple(found.span() for found in _RUNS.finditer(position))
            inside: tuple[int, ...] = ()
            beyond: dict[Side, int] = {"left": -1, "right": -1}
            first, last = (runs[0][0], runs[-1][1] - 1) if runs else (-1, -1)
            if runs and position.find(HELD) >= 0:
                inside = tuple(found.start() for found in _HELD_ONES.finditer(position, first, last))
                beyond = {"left": position.rfind(HELD, 0, first), "right": position.find(HELD, last + 1)}
            self._layout = Layout(runs, first, last, *self.live_ends(), inside, beyond)
        return self._layout

    def live_ends(self) -> tuple[int, int]:
        """Outermost needles that are in work, held or wait on cord; the one beyond the other where there are none."""
        return len(self.position) - len(self.position.lstrip(b"\0")), len(self.position.rstrip(b"\0")) - 1

    def working_ends(self) -> tuple[int, int] | None:
        """Outermost working needles with loops."""
        position, top = self.position, self.top
        first, last = position.find(WORKING), position.rfind(WORKING)
        while first >= 0 and top[first] == NOTHING:
            first = position.find(WORKING, first + 1)
        while last >= 0 and top[last] == NOTHING:
            last = position.rfind(WORKING, 0, last)
        return None if first < 0 else (first, last)

    def stitches(self) -> int:
        """Needles in work or held: those that carry loops, and empty ones that get one from the next row (an increase)."""
        return len(self.position) - self.position.count(NON_WORKING)

    def waits_at(self) -> int:
        """The leftmost needle that is held or waits on cord; below 0 for none."""
        return min((at for at in (self.position.find(HELD), self.position.find(CORDED)) if at >= 0), default=-1)

    def helper(self) -> int | None:
        """The number of the helper yarn in use, None for a garment yarn."""
        return HELPERS.get(self.yarn) if self.yarn is not None else None

    def yarn_missing(self, wanted: YarnFor) -> Refusal | None:
        if self.yarn is None:
            return self.refuse("no-yarn/none", wanted=said(f"bed/for/{wanted}"))
        if self.fastened:
            return self.refuse("no-yarn/fastened", yarn=self.yarn, wanted=said(f"bed/for/{wanted}"))
        return None

    def course_of(self, loop: int) -> Course:
        return next(course for course in reversed(self.courses) if course.first_loop <= loop)

    def row_of(self, index: int) -> int | None:
        """The row in which the needle's last loop was made; None without a garment loop."""
        loop = self.top[index]
        if index in self.more:
            # Held in mid-row, it has come as far as the yarn that was laid over it.
            loop = max((loop, *(more for more in self.more[index] if more >= 0 and self.loops.kind[more] == LoopKind.BAR)))
        return self.course_of(loop).counter if loop >= 0 else None

    def off_needle(self, index: int) -> tuple[int, ...]:
        return (self.top[index], *self.more.get(index, ()))

    # -------------------------------------------------------------- changing

    def set_position(self, first: int, last: int, position: int) -> None:
        self.position[first : last + 1] = bytes((position,)) * (last + 1 - first)
        self._layout = None

    def lift(self, index: int) -> tuple[int, ...]:
        """Take all loops off a needle."""
        lifted = self.off_needle(index)
        self.more.pop(index, None)
        self.top[index] = NOTHING
        return lifted

    def hang(self, index: int, loops: tuple[int, ...]) -> None:
        """Hang loops on a needle, over those it has."""
        if self.top[index] == NOTHING:
            self.top[index] = loops[0]
            loops = loops[1:]
        if loops:
            self.more.setdefault(index, []).extend(loops)

    def course(
        self,
        kind: CourseKind,
        first: int,
        last: int,
        first_loop: int,
        to: Side | None = None,
        thread: Thread | None = None,
        count: int | None = None,
    ) -> Course:
        """Record what the loops from `first_loop` on were made by; needles as indices. `thread` where it is not the yarn in use,
        `count` where later loops have been made already."""
        half = self.half
        live_first, live_last = self.live_ends()
        yarnless = kind in YARNLESS_COURSES
        own = thread or Thread(self.run, self.yarn or "", self.tension)
        course = Course(
            kind=kind,
            counter=self.counter,
            section=self.section,
            stretch=self.stretch,
            first=first - half,
            last=last - half,
            count=len(self.loops.parent) - first_loop if count is None else count,
            first_loop=first_loop,
            yarn="" if yarnless else own.yarn,
            tension="" if yarnless else own.tension,
            run=-1 if yarnless else own.run,
            to=to,
            live_first=live_first - half,
            live_last=live_last - half,
            fabric=self.fabric,
            panels=self.panels,
        )
        self.courses.append(course)
        return course

    def new_end(self) -> None:
        """From here on the yarn in use is a fresh end."""
        self.runs += 1
        self.run = self.runs
        self.fastened = False
        self.yarn_side = None
        self.over = self.wrapped = -1
        self.pending.at_edge = None

    def settle_chain(self, goes_on: bool) -> None:
        """The last chain of a cast-off beside a held needle: on that needle when the yarn goes on, else fastened off."""
        if self.waiting_chain is None:
            return
        chain, index = self.waiting_chain
        self.waiting_chain = None
        if goes_on and self.position[index] in (WORKING, HELD):
            self.hang(index, (chain,))
            self.yarn_at = index
        else:
            self.fastened_loops.append(chain)
            self.fastened = True

    def wrap(self, index: int, end: Strand | None = None) -> None:
        """Lay the yarn in use, or another `end`, round a held needle; a helper yarn leaves only its number."""
        helper = self.helper()
        if helper is not None:
            self.hang(index, (helper,))
            self.kept.helpers[self.yarn or ""] += 1
            return
        loop = self.loops.add(index - self.half, LoopKind.WRAP)
        self.hang(index, (loop,))
        self.course("wrap", index, index, loop, thread=None if end is None else Thread(end.run, end.yarn, self.tension))


def empty_machine(bed: Bed, pieces: Mapping[str, KnitPiece], copies: int, meetings: Meetings) -> Machine:
    """A bed without a loop, every needle in non-working position."""
    half = bed.needles // 2
    size = 2 * half
    needles = array("h", range(-half, half)), bytearray(size), array("i", [NOTHING]) * size
    return Machine(bed, pieces, copies, half, *needles, meetings=meetings)
