"""What a knitter keeps in mind from one sentence to the next: the needles of the part being worked, how many are held for
shaping at each end, the parts that wait, the carriage side and the counter."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field

from walewright.design.model import Chart
from walewright.knit.charting import InForce
from walewright.knit.operations import Side, needle
from walewright.knit.stages import Rib
from walewright.record import record, replace


@record
class WaitingPart:
    """A part that waits: its outermost slots, those held for shaping at its ends included. `cord`: on ravel cord."""

    first: int
    last: int
    held_left: int
    held_right: int
    cord: bool = False

    @property
    def stitches(self) -> int:
        return self.last - self.first + 1


@record
class StripesInForce:
    """Stripes that have been begun: their first row is the one after counter value `base`. `carried` are the yarns that are not
    broken off."""

    fabric: str
    rows: tuple[tuple[str, int], ...]
    """(yarn, rows) from the first stripe on."""
    tension: str
    carried: tuple[str, ...]
    base: int

    def yarn(self, counter: int) -> str | None:
        """The yarn of the row after `counter`; None before the stripes begin."""
        at = counter - self.base
        if at < 0:
            return None
        at %= sum(rows for _, rows in self.rows)
        for yarn, rows in self.rows:
            if at < rows:
                return yarn
            at -= rows
        return None


@record
class State:
    """`first..last` are the part's outermost slots (held-for-shaping ones included); last < first when none is in work.
    `parts` are those that wait, from left to right; `gaps` is what has just been taken off between two parts, until they part."""

    block: str
    first: int = 0
    last: int = -1
    held_left: int = 0
    held_right: int = 0
    parts: tuple[WaitingPart, ...] = ()
    gaps: tuple[tuple[int, int], ...] = ()
    side: Side | None = None
    row: int = 0
    yarn: tuple[str, str] | None = None
    """Garment yarn and tension in use."""
    fabric: str = ""
    """The fabric that was said with them (`UseYarnStep.fabric`)."""
    charts: tuple[Chart, ...] = ()
    """All that the sentences may name."""
    by_needle: bool = True
    """Whether charts are worked. To plan sentences, positions and counts are enough, and no chart changes those."""
    in_force: tuple[InForce, ...] = ()
    """Charts begun and not stopped, in the order begun."""
    put_by: Mapping[tuple[str, int], int] = field(default_factory=dict)
    """(chart, slot) -> rows of a purl column that waits with its part, to be latched up when it has gone on."""
    stripes: StripesInForce | None = None
    ribs: tuple[Rib, ...] = ()
    """Ribs that are latched up in stages, begun and not ended."""
    idle: tuple[int, ...] = ()
    """Needles between the outermost ones that are out of work (a mock rib)."""

    def chart(self, name: str) -> Chart:
        for chart in self.charts:
            if chart.name == name:
                return chart
        raise ValueError(f"{self.block}: no chart is called {name!r}")

    def is_gap(self, slot: int) -> bool:
        """Whether the needle's stitch has just been taken off between two parts."""
        return any(first <= slot <= last for first, last in self.gaps)

    def waits(self, slot: int) -> bool:
        """Whether the needle belongs to a part that waits."""
        return any(part.first <= slot <= part.last for part in self.parts)

    @property
    def waiting(self) -> int:
        """Stitches of the parts that wait."""
        return sum(part.stitches for part in self.parts)

    @property
    def stitches(self) -> int:
        """Needles with loops on the whole bed."""
        taken = sum(last - first + 1 for first, last in self.gaps)
        return self.last - self.first + 1 - taken - len(self.idle) + self.waiting

    def working(self) -> tuple[int, int]:
        """The innermost range, without the needles held for shaping."""
        return self.first + self.held_left, self.last - self.held_right

    def part_on(self, slot: int) -> WaitingPart:
        """The part that waits on that needle."""
        for part in self.parts:
            if part.first <= slot <= part.last:
                return part
        raise ValueError(f"{self.block}: no part waits on {needle(slot)}")

    def beside(self, side: Side) -> WaitingPart | None:
        """The part that waits next to what is in work, at that side of it."""
        there = [part for part in self.parts if (part.last < self.first if side == "left" else part.first > self.last)]
        return (there[-1] if side == "left" else there[0]) if there else None

    def on_cord(self, slot: int, cord: bool) -> State:
        """With the part that waits on that needle on cord, or right out."""
        part = self.part_on(slot)
        if part.cord == cord:
            raise ValueError(f"{self.block}: the part on {needle(slot)} waits {'on cord' if cord else 'right out'} already")
        return replace(self, parts=tuple(replace(p, cord=cord) if p is part else p for p in self.parts))

    def wait(self, part: WaitingPart) -> State:
        """With `part` waiting, and none in work."""
        parts = tuple(sorted((*self.parts, part), key=lambda p: p.first))
        return replace(self, first=0, last=-1, held_left=0, held_right=0, parts=parts)

    def resume(self, slot: int) -> State:
        """With the part that waited on that needle in work: alone, or one width with the part in work beside it."""
        part = self.part_on(slot)
        rest = replace(self, parts=tuple(p for p in self.parts if p is not part))
        if self.last < self.first:
            return replace(rest, first=part.first, last=part.last, held_left=part.held_left, held_right=part.held_right)
        if part.last < self.first:
            return replace(rest, first=part.first, held_left=part.held_left)
        return replace(rest, last=part.last, held_right=part.held_right)
