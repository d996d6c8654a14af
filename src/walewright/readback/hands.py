"""A knitter's hands, obeying printed words: the needles they have in mind, and the moves they make.

The hands keep the state of each needle with a loop, the carriage side and the counter, and know nothing of a plan. Words
that cannot be obeyed, or whose numbers disagree with what is on the bed, raise `Contradiction`.
"""

from __future__ import annotations

from typing import Literal, cast

from walewright.knit import operations as op
from walewright.knit.operations import Operation, Side

CENTRE_WASTE_ROWS = 8
"""Rows of waste yarn that hold the stitches of a neck's centre; the words name none. Common practice: 6 to 10."""

MOST_MOVES = 200_000
"""In one block. A piece has some thousands; a damaged text could ask for a lifetime's."""

Needle = Literal["work", "held", "waiting", "waiting, held"]
"""In working position; held for shaping; in hold with a part that waits; held for shaping within such a part."""


class Contradiction(Exception):
    """Words that cannot be obeyed here. The text says why, without a capital."""


class Hands:
    """One block's worth of work: from an empty bed on, the carriage anywhere. Methods are named for the grammar's phrases."""

    def __init__(self) -> None:
        self.made: list[Operation] = []
        self._needles: dict[int, Needle] = {}
        self._carriage: Side | None = None
        self._row = 0

    # ------------------------------------------------------------- what is on the bed

    def _part(self) -> list[int]:
        """Slots of the part in work, those held for shaping included."""
        part = sorted(s for s, state in self._needles.items() if state in ("work", "held"))
        if not part:
            raise Contradiction("no needle is in work")
        return part

    def _working(self) -> list[int]:
        working = sorted(s for s, state in self._needles.items() if state == "work")
        if not working:
            raise Contradiction("no needle is in working position")
        return working

    def _held(self, side: Side) -> list[int]:
        """Slots held for shaping at a side, in order."""
        working = self._working()
        held = sorted(s for s, state in self._needles.items() if state == "held")
        found = [s for s in held if (s < working[0] if side == "left" else s > working[-1])]
        if not found:
            raise Contradiction(f"no needle is held at the {side}")
        return found

    def _at(self, carriage: Side | None) -> Side:
        if carriage is None:
            raise Contradiction("nothing has said where the carriage is")
        return carriage

    def _outermost(self, side: Side, count: int, slots: list[int]) -> tuple[int, int]:
        if not 1 <= count <= len(slots):
            raise Contradiction(f"{count} stitches are asked for and {len(slots)} are there")
        return (slots[0], slots[count - 1]) if side == "left" else (slots[-count], slots[-1])

    def _state(self, first: int, last: int, state: Needle) -> None:
        for s in range(first, last + 1):
            self._needles[s] = state

    def _empty(self, first: int, last: int) -> None:
        for s in range(first, last + 1):
            self._needles.pop(s, None)

    def _count(self, stitches: int, first: int, last: int) -> None:
        if stitches != last - first + 1:
            raise Contradiction(f"{op.needle(first)} to {op.needle(last)} are {last - first + 1} needles, not {stitches}")

    def _all(self, first: int, last: int, states: tuple[Needle, ...]) -> None:
        for s in range(first, last + 1):
            if self._needles.get(s) not in states:
                raise Contradiction(f"needle {op.needle(s)} is not {' or '.join(states)}")

    # ------------------------------------------------------------- setting up

    def needles_to_work(self, first: int, last: int, stitches: int) -> None:
        self._count(stitches, first, last)
        self._state(first, last, "work")
        self.made.append(op.IntoWork(first, last))

    def carriage_at(self, side: Side) -> None:
        if self._carriage != side:
            self.made.append(op.MoveCarriage(side))
        self._carriage = side

    def waste_start(self, rows: int) -> None:
        part = self._part()
        self.made += [op.UseYarn("waste", "waste"), op.CastOn("comb", part[0], part[-1])]
        self._cross(rows)
        self.made.append(op.UseYarn("ravel", "ravel"))
        self._cross(1)

    def closed_start(self, way: str) -> None:
        part = self._part()
        self.made.append(op.CastOn(way, part[0], part[-1]))

    def use_yarn_step(self, yarn: str, tension: str) -> None:
        self.made.append(op.UseYarn(yarn, tension))

    def set_row_counter(self, rows: int) -> None:
        self._row = rows
        self.made.append(op.SetCounter(rows))

    # ------------------------------------------------------------- knitting and shaping

    def _cross(self, rows: int) -> None:
        if len(self.made) + rows > MOST_MOVES:
            raise Contradiction(f"this is more than {MOST_MOVES} moves")
        for _ in range(rows):
            self._carriage = op.other(self._at(self._carriage))
            self.made.append(op.Pass(self._carriage))

    def knit_rows(self, rows: int) -> None:
        self._cross(rows)
        self._row += rows

    def knit_to(self, row: int) -> None:
        if row < self._row:
            raise Contradiction(f"the counter is at {self._row} already, beyond {row}")
        self.knit_rows(row - self._row)

    def reads(self, row: int) -> None:
        """The counter as it is."""
        if row != self._row:
            raise Contradiction(f"the counter is at {self._row}, not at {row}")

    def at(self, row: int) -> None:
        self.knit_to(row)

    def stands(self, stitches: int) -> None:
        """So many are in the part being worked."""
        there = len(self._part())
        if there != stitches:
            raise Contradiction(f"{stitches} stitches should be in the part being worked, and {there} are")

    def decrease(self, by: int, ends: str, inset: int = 0) -> None:
        for side in _sides(ends):
            if inset == 0:
                for _ in range(by):
                    self._move_in(side, 1, 1)
            else:
                self._move_in(side, inset, by)

    def _move_in(self, side: Side, prongs: int, by: int) -> None:
        part = self._part()
        first, last = self._outermost(side, prongs, part)
        emptied = self._outermost(side, by, part)
        self.made += [op.Transfer(first, last, by if side == "left" else -by), op.OutOfWork(*emptied)]
        self._empty(*emptied)

    def increase_fashioned(self, by: int, ends: str, inset: int) -> None:
        _one(by)
        for side in _sides(ends):
            outwards = -1 if side == "left" else 1
            first, last = self._outermost(side, inset, self._part())
            # Of the loops that move, the one nearest the middle of the bed leaves its needle empty.
            edge, inner = (first, last) if side == "left" else (last, first)
            self.made.append(op.IntoWork(edge + outwards, edge + outwards))
            self.made.append(op.Transfer(first, last, outwards))
            self.made.append(op.FillFromBelow(inner, inner - outwards))
            self._state(edge + outwards, edge + outwards, "work")

    def increase_at_carriage(self, by: int) -> None:
        _one(by)
        self._further(1)

    def _further(self, count: int) -> tuple[int, int]:
        part = self._part()
        at_left = self._at(self._carriage) == "left"
        first, last = (part[0] - count, part[0] - 1) if at_left else (part[-1] + 1, part[-1] + count)
        self._state(first, last, "work")
        self.made.append(op.IntoWork(first, last))
        return first, last

    def cast_off_at_carriage(self, stitches: int) -> None:
        side = self._at(self._carriage)
        first, last = self._outermost(side, stitches, self._part())
        self.made.append(op.CastOff(first, last, side))
        self._empty(first, last)

    def cast_on_at_carriage(self, stitches: int) -> None:
        first, last = self._further(stitches)
        self.made.append(op.CastOn("e-wrap", first, last))

    def hold_at_end(self, side: Side, stitches: int) -> None:
        first, last = self._outermost(side, stitches, self._working())
        self.made.append(op.Hold(first, last))
        self._state(first, last, "held")

    def wrap_held(self, side: Side) -> None:
        held = self._held(side)
        self.made.append(op.Wrap(held[-1] if side == "left" else held[0]))

    def return_held(self, side: Side) -> None:
        held = self._held(side)
        self.made.append(op.Release(held[0], held[-1]))
        self._state(held[0], held[-1], "work")

    def return_some(self, stitches: int, side: Side) -> None:
        held = self._held(side)
        # The innermost are those nearest to the needles in work.
        inner: Side = op.other(side)
        first, last = self._outermost(inner, stitches, held)
        self.made.append(op.Release(first, last))
        self._state(first, last, "work")

    def spread_evenly(self, first: int, last: int, stitches: int, *rounds: int) -> None:
        """`rounds`: for each stretch, the needles with one loop, the loops on the next, and how often."""
        self._count(stitches, first, last)
        old = self._working()
        if old != self._part():
            raise Contradiction("stitches are held while all are taken off")
        counts: list[int] = []
        for singles, changed, times in zip(rounds[::3], rounds[1::3], rounds[2::3], strict=True):
            self._enough((singles + 1) * times, stitches - len(counts))
            counts += [*([1] * singles), changed] * times
        counts += [1] * (stitches - len(counts))
        if sum(counts) != len(old):
            raise Contradiction(f"{sum(counts)} loops are to be hung on and {len(old)} are there")
        self.made.append(op.Spread(old[0], old[-1], first, tuple(counts)))
        self._empty(old[0], old[-1])
        self._free(first, last)
        self._state(first, last, "work")

    def slot_on_waste(self, stitches: int, first: int, last: int, edge: str) -> None:
        self._taken(stitches, first, last)
        self.made.append(op.OntoWaste(first, last, CENTRE_WASTE_ROWS, edge))
        self._own_length(first, last)

    def slot_closed(self, stitches: int, first: int, last: int) -> None:
        self._taken(stitches, first, last)
        self._next_on_the_right(last)
        self.made.append(op.Close(first, last, "right"))
        self._own_length(first, last)

    def eyelet_at(self, needle: int, side: Side) -> None:
        by = -1 if side == "left" else 1
        self._all(needle, needle, ("work",))
        self._all(needle + by, needle + by, ("work",))
        self.made.append(op.Transfer(needle, needle, by))

    def _taken(self, stitches: int, first: int, last: int) -> None:
        self._count(stitches, first, last)
        self._all(first, last, ("work",))

    def _own_length(self, first: int, last: int) -> None:
        """Empty needles come to work and get loops of a length of yarn of their own."""
        self.made += [op.IntoWork(first, last), op.CastOn("e-wrap", first, last, own_length=True)]
        self._state(first, last, "work")

    def _next_on_the_right(self, last: int) -> None:
        if last + 1 not in self._needles:
            raise Contradiction(f"there is no stitch beside {op.needle(last)} for the last of those closed")

    def _free(self, first: int, last: int) -> None:
        for s in range(first, last + 1):
            if s in self._needles:
                raise Contradiction(f"needle {op.needle(s)} is not empty")

    def _enough(self, wanted: int, there: int) -> None:
        if wanted > there:
            raise Contradiction(f"{wanted} needles are asked for and {there} are there")

    def mark_edges(self, what: str) -> None:
        """A thread at both ends: the knitting stays as it is."""

    def now(self, stitches: int, *told: int) -> None:
        """`told` is the counter, unless its value has just been named, and 1 for the carriage on the right, 0 for the left."""
        *row, right = told
        self.made.append(op.Check(stitches, row[0] if row else self._row, "right" if right else "left"))

    def now_in_half(self, stitches: int, waiting: int, *told: int) -> None:
        """The same in one part; so many stitches of others wait."""
        there = sum(1 for state in self._needles.values() if state.startswith("waiting"))
        if there != waiting:
            raise Contradiction(f"{waiting} stitches should wait, and {there} do")
        self.now(stitches + waiting, *told)

    # ------------------------------------------------------------- parting

    def centre_to_waste(self, stitches: int, first: int, last: int, edge: str) -> None:
        self._taken(stitches, first, last)
        self.made.append(op.OntoWaste(first, last, CENTRE_WASTE_ROWS, edge))
        self._empty(first, last)

    def close_centre(self, stitches: int, first: int, last: int) -> None:
        self._taken(stitches, first, last)
        self._next_on_the_right(last)
        self.made.append(op.Close(first, last, "right"))
        self._empty(first, last)

    def cast_on_between(self, stitches: int, first: int, last: int) -> None:
        self._count(stitches, first, last)
        self._free(first, last)
        self._own_length(first, last)

    def hold_part(self, side: Side, first: int, last: int) -> None:
        self._all(first, last, ("work",))
        self.made.append(op.Hold(first, last))
        self._state(first, last, "waiting")
        # What is held for shaping beside the part waits with it.
        for s in self._beside(first, last, "held"):
            self._needles[s] = "waiting, held"

    def _beside(self, first: int, last: int, state: Needle) -> list[int]:
        """Slots of that state that join `first`..`last` without a gap."""
        found: list[int] = []
        for at, step in ((first, -1), (last, 1)):
            while self._needles.get(at + step) == state:
                at += step
                found.append(at)
        return found

    def off_on_waste(self, rows: int, edge: str) -> None:
        part = self._part()
        self.made.append(op.OntoWaste(part[0], part[-1], rows, edge))
        self._empty(part[0], part[-1])

    def cast_off_all(self) -> None:
        part = self._part()
        self.made.append(op.CastOff(part[0], part[-1], self._at(self._carriage)))
        self._empty(part[0], part[-1])

    def gather_all(self) -> None:
        part = self._part()
        self.made.append(op.Gather(part[0], part[-1]))
        self._empty(part[0], part[-1])

    def break_off(self) -> None:
        self.made.append(op.BreakYarn())

    def return_part(self, side: Side, first: int, last: int) -> None:
        self._all(first, last, ("waiting",))
        self.made.append(op.Release(first, last))
        self._state(first, last, "work")
        for s in self._beside(first, last, "waiting, held"):
            self._needles[s] = "held"

    # ------------------------------------------------------------- edgings and bands

    def rehang_start(self, loops: int, piece: str) -> None:
        part = self._part()
        self._count(loops, part[0], part[-1])
        self.made.append(op.Rehang(piece, part[0], part[-1]))

    def pick_up_along(self, stitches: int, part: str, piece: str, edge: str, first: int, last: int) -> None:
        self._count(stitches, first, last)
        self._all(first, last, ("work",))
        self.made.append(op.PickUpEdge(piece, edge, part, first, last))

    def latch_rib(self, left: int, right: int, every: int, rows: int) -> None:
        self.made += [op.LatchUp(s, rows) for s in self._wales(left, right, every)]

    def latch_panel(self, every: int, left: int, right: int, first: int, last: int, rows: int) -> None:
        self._all(first, last, ("work", "held"))
        self.made += [op.LatchUp(s, rows) for s in self._wales(left, right, every) if first <= s <= last]

    def _wales(self, left: int, right: int, every: int) -> list[int]:
        """Every so many needles outwards from both, without those at the ends, from left to right."""
        if every < 1 or right < 0 or left != -1 - right:
            raise Contradiction(f"{op.needle(left)} and {op.needle(right)} are not the same needle of both sides")
        part = self._part()
        outwards = {*range(right, part[-1], every), *range(left, part[0], -every)}
        return [s for s in sorted(outwards) if part[0] < s < part[-1]]

    def edge_is(self, where: str, from_row: int, to_row: int, edge: str) -> None:
        self.made.append(op.NameEdge(edge, where, from_row, to_row))

    def say(self, text: str) -> None:
        """Words that nothing follows from."""


def _sides(ends: str) -> tuple[Side, ...]:
    """The left end comes first."""
    return ("left", "right") if ends == "both ends" else (cast(Side, ends.removesuffix(" end")),)


def _one(stitches: int) -> None:
    if stitches != 1:
        raise Contradiction(f"an increase adds 1 stitch, not {stitches}")
