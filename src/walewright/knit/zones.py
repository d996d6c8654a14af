"""Fabrics: which yarn and tension a row is knitted with, and ribs latched up when their last row is knitted."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from walewright.counted.model import SizedPiece, SizedZone
from walewright.counted.needles import widest_of
from walewright.counted.ribs import rib_begin
from walewright.design.model import Design, Fabric, Piece
from walewright.knit import steps as st
from walewright.knit.order import Group, Key, Move, Rank, alone
from walewright.knit.ribbed import Ribbed
from walewright.knit.stages import stage_rows


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
        return st.UseYarnStep(self._yarn(row), fabric.tension, fabric=said_of(self.design, fabric), origin=self.origin(row))

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
        """Changes of yarn or tension within the rows, and the ribs that are latched up there. A shallow one that goes on beyond a
        parting is latched up before it as far as it is, for the needles after it are not the same; one in stages, at its rows."""
        for number, row in enumerate(sorted({r for z in self.sized.zones for r in (z.from_row, z.to_row)})):
            if first_row < row < last_row and self._changes(row):
                yield alone(("yarn", number), Move(row, Rank.YARN, self.use(row)))
        for number, zone in enumerate(self.sized.zones):
            every = self.design.fabric(zone.fabric).rib_every
            if every:
                needles = None if _whole_width(zone) else (zone.first, zone.last)
                rib = self._rib(every, zone.from_row, zone.to_row, needles, zone.origin.path)
                yield from self._latched(f"latch {number}", rib, first_row, last_row)
        base = self.design.fabric(self.piece.fabric).rib_every
        if base:
            for number, (begin, end) in enumerate(self._between_zones()):
                rib = self._rib(base, begin, end, None, self.piece.origin.path)
                yield from self._latched(f"latch base {number}", rib, first_row, last_row)

    def _rib(self, every: int, from_row: int, to_row: int, needles: tuple[int, int] | None, origin: str) -> Ribbed:
        begin = rib_begin(every, *widest_of(self.sized, from_row, to_row), needles)
        assert begin is not None, "the solver has refused a rib without a column"
        return Ribbed(every, begin, from_row, to_row, needles, origin)

    def _between_zones(self) -> Iterator[tuple[int, int]]:
        """Of a piece that is itself in a latched rib, the rows between its zones."""
        at = 0
        for begin, end in [*sorted((z.from_row, z.to_row) for z in self.sized.zones if _whole_width(z)), (self.sized.rows,) * 2]:
            if begin > at:
                yield at, begin
            at = max(at, end)

    def _latched(self, track: str, whole: Ribbed, first_row: int, last_row: int) -> Iterator[Group]:
        """One rib, as far as it lies in the rows; what of it is worked several times by itself."""
        for number, rib in enumerate(whole.by_repeats(self.sized)):
            yield from self._latched_once((track, number), rib, first_row, last_row)

    def _latched_once(self, key: Key, rib: Ribbed, first_row: int, last_row: int) -> Iterator[Group]:
        begin, end = max(rib.from_row, first_row), min(rib.to_row, last_row)
        if begin >= end:
            return
        stage = self.design.machine.stage
        counter = self.sized.counter
        if rib.in_repeat(self.sized):
            # Rows that are worked several times are not counted: each stage is told at its row.
            at = begin
            for row in stage_rows(begin, (end,), *stage):
                yield alone((f"{key[0]} at {row - begin}", key[1]), Move(row, Rank.LATCH, rib.step(row - at)))
                at = row
            return
        cuts = sorted({rib.to_row, *rib.cuts(self.sized)})
        rows = stage_rows(counter(rib.from_row), (counter(row) for row in cuts), *stage)
        sooner = "disturbed" if rib.disturbed(self.sized, self.piece.symmetric) else ""
        deepest = max(counter(z) - counter(a) for a, z in pairwise((rib.from_row, *cuts)))
        if deepest <= stage[1] and not sooner:
            yield alone(key, Move(end, Rank.LATCH, rib.step(counter(end) - counter(begin))))
        elif rib.from_row >= first_row:
            yield alone((f"{key[0]} in stages", key[1]), Move(begin, Rank.CHART, rib.stages(rows, sooner)))


def said_of(design: Design, fabric: Fabric) -> str:
    """Its name, where its yarn and tension alone do not tell its gauge: another fabric over the whole width of something has them
    too. What charts and stripes are counted as is said where they begin."""
    if fabric.chart or fabric.stripes:
        return ""
    others = (f for f in design.whole_fabrics() if (f.yarn, f.tension) == (fabric.yarn, fabric.tension))
    unlike = any(not (f.chart or f.stripes) and f.gauge != fabric.gauge for f in others)
    return fabric.name if unlike else ""


def _whole_width(zone: SizedZone) -> bool:
    return zone.first > zone.last
