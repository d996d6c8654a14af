"""Hands at stitches that leave the bed or come back to it away from the edges: slots, gaps, parts that wait, spreading, the end."""

from __future__ import annotations

from walewright.knit import operations as op
from walewright.knit.operations import Side
from walewright.readback.mind import CENTRE_WASTE_ROWS, Contradiction, Mind, Needle, needle


class Partings(Mind):
    """Methods are named for the grammar's phrases."""

    def spread_evenly(self, first: int, last: int, stitches: int, rounds: tuple[int, ...]) -> None:
        """`rounds`: for each stretch, the needles with one loop, the loops on the next, and how often; at last, if the words have
        it, how many needles are left for one loop each."""
        self._count(stitches, first, last)
        old = self._working()
        if old != self._part():
            raise Contradiction("contradiction/held-while-taken-off")
        counts: list[int] = []
        told = len(rounds) // 3 * 3
        for singles, changed, times in zip(rounds[:told:3], rounds[1:told:3], rounds[2:told:3], strict=True):
            self._enough((singles + 1) * times, stitches - len(counts))
            counts += [*([1] * singles), changed] * times
        if sum(rounds[told:]) != stitches - len(counts):
            raise Contradiction("contradiction/needles-left", left=stitches - len(counts), told=sum(rounds[told:]))
        counts += [1] * (stitches - len(counts))
        if sum(counts) != len(old):
            raise Contradiction("contradiction/loops-spread", hung=sum(counts), there=len(old))
        self.made.append(op.Spread(old[0], old[-1], first, tuple(counts)))
        self._empty(old[0], old[-1])
        self._free(first, last)
        self._state(first, last, "work")

    def slot_on_waste(self, stitches: int, first: int, last: int, edge: str, cm: int = 0) -> None:
        self._taken(stitches, first, last)
        self.made.append(op.OntoWaste(first, last, CENTRE_WASTE_ROWS, edge))
        self._own_length(first, last, cm)

    def slot_closed(self, stitches: int, first: int, last: int, cm: int = 0) -> None:
        self._taken(stitches, first, last)
        self._last_goes_to(last + 1)
        self.made.append(op.Close(first, last, "right"))
        self._own_length(first, last, cm)

    def eyelet_at(self, needle: int, side: Side) -> None:
        by = -1 if side == "left" else 1
        self._all(needle, needle, ("work",))
        self._all(needle + by, needle + by, ("work",))
        self._hung_on(needle + by)
        self.made.append(op.Transfer(needle, needle, by))

    def centre_to_waste(self, stitches: int, first: int, last: int, edge: str) -> None:
        self._taken(stitches, first, last)
        self.made.append(op.OntoWaste(first, last, CENTRE_WASTE_ROWS, edge))
        self._empty(first, last)

    def close_centre(self, stitches: int, first: int, last: int) -> None:
        self._taken(stitches, first, last)
        self._last_goes_to(last + 1)
        self.made.append(op.Close(first, last, "right"))
        self._empty(first, last)

    def cast_on_between(self, stitches: int, first: int, last: int, cm: int = 0) -> None:
        self._count(stitches, first, last)
        self._free(first, last)
        self._own_length(first, last, cm)

    def hold_part(self, part: str | int, first: int, last: int) -> None:
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

    def part_on_cord(self, part: str | int, first: int, last: int, rows: int) -> None:
        self._all(first, last, ("work", "held"))
        self.made.append(op.LayCord(first, last))
        for s in range(first, last + 1):
            self._needles[s] = "waiting on cord" if self._needles[s] == "work" else "waiting on cord, held"
        self._cords[first, last] = (self._knitted, rows)

    def draw_parts_cord(self, part: str | int, first: int, last: int) -> None:
        if (first, last) not in self._cords:
            raise Contradiction("contradiction/no-cord-keeps-needles", first=needle(first), last=needle(last))
        begun, rows = self._cords.pop((first, last))
        if self._knitted - begun != rows:
            raise Contradiction("contradiction/rows-waited", rows=rows, waited=self._knitted - begun)
        self.made.append(op.DrawCord(first, last))
        for s in range(first, last + 1):
            self._needles[s] = "waiting" if self._needles[s] == "waiting on cord" else "waiting, held"

    def off_on_waste(self, rows: int, edge: str) -> None:
        part = self._part()
        self._row_begins()
        self.made.append(op.OntoWaste(part[0], part[-1], rows, edge))
        if self._broken_at is not None:
            self.tails[edge] = self._broken_at
        self._empty(part[0], part[-1])

    def cast_off_all(self) -> None:
        part = self._part()
        self.made.append(op.CastOff(part[0], part[-1], self._at(self._carriage)))
        self._empty(part[0], part[-1])

    def gather_all(self) -> None:
        part = self._part()
        self.made.append(op.Gather(part[0], part[-1]))
        self._empty(part[0], part[-1])

    def sew_off_all(self) -> None:
        part = self._part()
        self.made.append(op.SewOff(part[0], part[-1], self._at(self._carriage)))
        self._empty(part[0], part[-1])

    def break_off(self, tail_cm: int = 0) -> None:
        self.made.append(op.BreakYarn(tail_cm))
        self._yarn = None
        self._broken_at = self._carriage

    def return_part(self, part: str | int, first: int, last: int) -> None:
        self._all(first, last, ("waiting",))
        self.made.append(op.Release(first, last))
        self._state(first, last, "work")
        for s in self._beside(first, last, "waiting, held"):
            self._needles[s] = "held"
        self._gone_on()
