"""Fabrics: which yarn and tension a row is knitted with, and ribs latched up when their last row is knitted."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from walewright.design.model import Design, Fabric, Piece
from walewright.knit import steps as st
from walewright.knit.order import Group, Move, Rank, alone
from walewright.solve.model import SizedPiece, SizedZone


@dataclass(frozen=True, slots=True)
class Fabrics:
    """The fabrics of a piece by row."""

    design: Design
    piece: Piece
    sized: SizedPiece

    def at(self, row: int) -> Fabric:
        """That of the first row above `row`."""
        for zone in self.sized.zones:
            if _whole_width(zone) and zone.from_row <= row < zone.to_row:
                return self.design.fabric(zone.fabric)
        return self.design.fabric(self.piece.fabric)

    def spans(self) -> tuple[tuple[int, int, Fabric], ...]:
        """(from row, to row, fabric) from the start to the top, over the whole width."""
        bounds = {r for z in self.sized.zones if _whole_width(z) for r in (z.from_row, z.to_row) if 0 < r < self.sized.rows}
        return tuple((a, z, self.at(a)) for a, z in pairwise([0, *sorted(bounds), self.sized.rows]))

    def use(self, row: int) -> st.UseYarnStep:
        """The yarn and tension of the first row above `row`."""
        fabric = self.at(row)
        return st.UseYarnStep(self._yarn(row), fabric.tension, origin=self.origin(row))

    def _yarn(self, row: int) -> str:
        fabric = self.at(row)
        if not fabric.stripes:
            return fabric.yarn
        begun = next((a for a, z, _ in self.spans() if a <= row < z), row)
        at = (self.sized.counter(row) - self.sized.counter(begun)) % sum(rows for _, rows in fabric.stripes)
        for yarn, rows in fabric.stripes:
            if at < rows:
                return yarn
            at -= rows
        return fabric.yarn

    def goes_on(self, row: int) -> bool:
        """Whether stripes go on over `row`, which change their yarn by themselves."""
        return bool(self.at(row).stripes) and all(row not in (a, z) for a, z, _ in self.spans())

    def origin(self, row: int) -> str:
        """The statement of what begins at `row`."""
        begins = (z.origin.path for z in self.sized.zones if _whole_width(z) and row in (z.from_row, z.to_row))
        return next(begins, self.piece.origin.path)

    def _changes(self, row: int) -> bool:
        """Whether another yarn or tension is said at `row`. After stripes it always is: which of their yarns came last depends on
        how many rows the size has."""
        return self.use(row) != self.use(row - 1) or bool(self.at(row - 1).stripes)

    def groups(self, first_row: int, last_row: int) -> Iterator[Group]:
        """Changes of yarn or tension within the rows, and the ribs that end there. A rib that goes on beyond a parting is latched
        up before it as far as it is, for the needles after it are not the same."""
        for number, row in enumerate(sorted({r for z in self.sized.zones for r in (z.from_row, z.to_row)})):
            if first_row < row < last_row and self._changes(row):
                yield alone(("yarn", number), Move(row, Rank.YARN, self.use(row)))
        for number, zone in enumerate(self.sized.zones):
            every = self.design.fabric(zone.fabric).rib_every
            begin, end = max(zone.from_row, first_row), min(zone.to_row, last_row)
            if every and begin < end:
                rows = self.sized.counter(end) - self.sized.counter(begin)
                yield alone(("latch", number), Move(end, Rank.LATCH, _latch(zone, every, rows)))
        base = self.design.fabric(self.piece.fabric).rib_every
        if base:
            yield from self._latched_between(first_row, last_row, base)

    def _latched_between(self, first_row: int, last_row: int, every: int) -> Iterator[Group]:
        """A piece that is itself in a latched rib: the rows between its zones."""
        at = first_row
        bounds = sorted(
            (max(z.from_row, first_row), min(z.to_row, last_row))
            for z in self.sized.zones
            if _whole_width(z) and z.from_row < last_row and z.to_row > first_row
        )
        for number, (begin, end) in enumerate([*bounds, (last_row, last_row)]):
            if begin > at:
                rows = self.sized.counter(begin) - self.sized.counter(at)
                step = st.LatchRib(every, rows, origin=self.piece.origin.path)
                yield alone(("latch base", number), Move(begin, Rank.LATCH, step))
            at = max(at, end)


def _whole_width(zone: SizedZone) -> bool:
    return zone.first > zone.last


def _latch(zone: SizedZone, every: int, rows: int) -> st.Step:
    origin = zone.origin.path
    if _whole_width(zone):
        return st.LatchRib(every, rows, origin=origin)
    return st.LatchPanel(every, rows, zone.first, zone.last, origin=origin)
