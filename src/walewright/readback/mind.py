"""What a knitter has in mind while the hands obey: the needles with a loop, the carriage side, the counter, the yarn in use."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.knit import operations as op
from walewright.knit.operations import Operation, Side
from walewright.report.said import Fact, Said, said

CENTRE_WASTE_ROWS = 8
"""Rows of waste yarn that hold the stitches of a neck's centre; the words name none. Common practice: 6 to 10."""

MOST_MOVES = 200_000
"""In one block. A piece has some thousands; a damaged text could ask for a lifetime's."""

Needle = Literal["work", "held", "waiting", "waiting, held", "waiting on cord", "waiting on cord, held"]
"""In working position; held for shaping; in hold with a part that waits; held for shaping within such a part; the same two while
the part is on ravel cord."""

_STATES: dict[Needle, str] = {
    "work": "state/work",
    "held": "state/held",
    "waiting": "state/waiting",
    "waiting, held": "state/waiting-held",
    "waiting on cord": "state/on-cord",
    "waiting on cord, held": "state/on-cord-held",
}
"""What a message calls them."""


class Contradiction(Exception):
    """Words that cannot be obeyed here, and why."""

    def __init__(self, key: str, **facts: Fact) -> None:
        super().__init__(key)
        self.why = said(key, **facts)


def needle(slot: int) -> Said:
    """A needle as a message names it."""
    return said("needle/right", number=slot + 1) if slot >= 0 else said("needle/left", number=-slot)


def within(left: int, right: int, plain: tuple[int, ...]) -> None:
    """What is said to stay plain in the middle of a rib lies between the needles that its wales are counted from."""
    if plain and plain != (left + 1, right - 1):
        raise Contradiction("contradiction/not-mirrored", left=needle(plain[0]), right=needle(plain[-1]))


def in_reach(needles: Mapping[int, Needle]) -> list[int]:
    """Slots in working position, in order; none is no fault."""
    return sorted(s for s, state in needles.items() if state == "work")


class Mind:
    """One block's worth of work: from an empty bed on, the carriage anywhere. Moves are noted in `made`."""

    def __init__(self) -> None:
        self.made: list[Operation] = []
        self._needles: dict[int, Needle] = {}
        self._carriage: Side | None = None
        self._row = 0
        self._yarn: tuple[str, str] | None = None
        self.tails: dict[str, Side] = {}
        """At which end of the last rows on waste yarn, by their names, the tail hangs that was broken off before."""
        self._broken_at: Side | None = None
        self._fabric = ""
        """What the yarn in use was said to be for."""
        self._rows_of_line: list[tuple[int, frozenset[str]]] = []
        """The counter before each row that the line has knitted so far, and what hands did in it by a chart or stripes."""
        self._told_of: dict[str, int] = {}
        """Of how many of those rows the line has told already when something is done in them."""
        self._knitted = 0
        """Rows that were counted, however often the counter was set back."""
        self._cords: dict[tuple[int, int], tuple[int, int]] = {}
        """Needles on ravel cord -> the rows counted when it was laid, and those that it is to keep them."""

        self._as_far: int | None = None
        """The reading of the counter at which steps of an earlier section are left."""
        self._step = 0
        """The step of that section that is obeyed."""

    # ------------------------------------------------------------- as far as

    def as_far_as(self, row: int) -> None:
        """What follows is obeyed until the counter reads so."""
        if row <= self._row:
            raise Contradiction("contradiction/counter-beyond", counter=self._row, row=row)
        self._as_far = row

    def so_far(self, step: int = 0) -> None:
        """It has come to read so, in that step if one is named."""
        if self._as_far is not None and not self._come_so_far:
            raise Contradiction("contradiction/counter-elsewhere", counter=self._row, row=self._as_far)
        if step not in (0, self._step):
            raise Contradiction("contradiction/within-other-step", step=self._step, told=step)
        self._as_far = None

    @property
    def _come_so_far(self) -> bool:
        return self._as_far == self._row

    def _no_farther(self, rows: int) -> int:
        """So many rows, or as many as are left."""
        return rows if self._as_far is None else min(rows, self._as_far - self._row)

    # ------------------------------------------------------------- what is on the bed

    def _part(self) -> list[int]:
        """Slots of the part in work, those held for shaping included."""
        part = sorted(s for s, state in self._needles.items() if state in ("work", "held"))
        if not part:
            raise Contradiction("contradiction/none-in-work")
        return part

    def _threaded(self) -> str:
        """The yarn that is threaded, where none is named."""
        if self._yarn is None:
            raise Contradiction("contradiction/none-threaded")
        return self._yarn[0]

    def _working(self) -> list[int]:
        working = in_reach(self._needles)
        if not working:
            raise Contradiction("contradiction/none-in-working-position")
        return working

    def _held(self, side: Side) -> list[int]:
        """Slots held for shaping at a side, in order."""
        working = self._working()
        held = sorted(s for s, state in self._needles.items() if state == "held")
        found = [s for s in held if (s < working[0] if side == "left" else s > working[-1])]
        if not found:
            raise Contradiction("contradiction/none-held", side=side)
        return found

    def _at(self, carriage: Side | None) -> Side:
        if carriage is None:
            raise Contradiction("contradiction/carriage-unknown")
        return carriage

    def _outermost(self, side: Side, count: int, slots: list[int]) -> tuple[int, int]:
        if not 1 <= count <= len(slots):
            raise Contradiction("contradiction/stitches-there", count=count, there=len(slots))
        return (slots[0], slots[count - 1]) if side == "left" else (slots[-count], slots[-1])

    def _state(self, first: int, last: int, state: Needle) -> None:
        for s in range(first, last + 1):
            self._needles[s] = state

    def _empty(self, first: int, last: int) -> None:
        for s in range(first, last + 1):
            self._needles.pop(s, None)

    def _count(self, stitches: int, first: int, last: int) -> None:
        if stitches != last - first + 1:
            raise Contradiction(
                "contradiction/needles-counted", first=needle(first), last=needle(last), needles=last - first + 1, stitches=stitches
            )

    def _all(self, first: int, last: int, states: tuple[Needle, ...]) -> None:
        for s in range(first, last + 1):
            if self._needles.get(s) not in states:
                raise Contradiction(
                    "contradiction/needle-in-other-state",
                    needle=needle(s),
                    states=tuple(said(_STATES[state]) for state in states),
                )

    def _taken(self, stitches: int, first: int, last: int) -> None:
        self._count(stitches, first, last)
        self._all(first, last, ("work",))

    def _own_length(self, first: int, last: int, cm: int) -> None:
        """Empty needles come to work and get loops of a length of yarn of their own, of so many cm if any are named."""
        self.made += [op.IntoWork(first, last), op.CastOn("e-wrap", first, last, own_length=True, length_cm=cm)]
        self._state(first, last, "work")

    def _last_goes_to(self, slot: int) -> None:
        """The last of the stitches that are closed is hung on the next needle."""
        if slot not in self._needles:
            raise Contradiction("contradiction/nothing-beside-closed", needle=needle(slot - 1))
        self._hung_on(slot)

    def _hung_on(self, slot: int) -> None:
        """A further loop comes to a needle: what a chart has begun there is settled before."""

    def _row_begins(self) -> None:
        """The carriage is about to knit a row."""

    def _row_done(self) -> None:
        """The counter has gone up by a row."""

    def _gone_on(self) -> None:
        """Needles are in work again: what a chart has begun there goes on."""

    def _free(self, first: int, last: int) -> None:
        for s in range(first, last + 1):
            if s in self._needles:
                raise Contradiction("contradiction/needle-taken", needle=needle(s))

    def _enough(self, wanted: int, there: int) -> None:
        if wanted > there:
            raise Contradiction("contradiction/needles-there", wanted=wanted, there=there)
