"""Fabrics: which yarn and tension a row is knitted with, and ribs latched up when their last row is knitted."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from walewright.counted import CountedPiece
from walewright.counted.parts import SizedPart
from walewright.counted.ribs import ribs
from walewright.design.model import Design, Fabric
from walewright.knit import steps as st
from walewright.knit.manners import Sooner
from walewright.knit.order import Group, GroupKey, Move, Rank, alone
from walewright.knit.ribbed import Ribbed
from walewright.knit.stages import stage_rows
from walewright.record import record


@record
class Fabrics:
    """The fabrics of a piece by row."""

    of: CountedPiece

    def at(self, row: int) -> Fabric:
        """That of the first row above `row`."""
        return self.of.fabric(row + 1)

    def use(self, row: int) -> st.UseYarnStep:
        """The yarn and tension of the first row above `row`."""
        fabric = self.at(row)
        named = said_of(self.of.design, fabric)
        return st.UseYarnStep(self.of.yarn(row + 1), fabric.tension, fabric=named, origin=self.origin(row))

    def goes_on(self, row: int) -> bool:
        """Whether stripes go on over `row`, which change their yarn by themselves."""
        return bool(self.at(row).stripes) and all(row not in (at.low, at.high) for at in self.of.layers)

    def origin(self, row: int) -> str:
        """The statement of what begins at `row`."""
        begins = (at.zone.origin.path for at in self.of.layers if at.zone is not None and row in (at.low, at.high))
        return next(begins, self.of.piece.origin.path)

    def _changes(self, row: int) -> bool:
        """Whether another yarn or tension is said at `row`. After stripes it always is: which of their yarns came last depends on
        how many rows the size has."""
        return self.use(row) != self.use(row - 1) or bool(self.at(row - 1).stripes)

    def groups(self, part: SizedPart) -> Iterator[Group]:
        """Changes of yarn or tension within the rows of a part, and the ribs that are latched up there. A shallow one that goes on
        beyond a parting is latched up before it as far as it is, for the needles after it are not the same; one in stages, at its
        rows."""
        sized, first_row, last_row = self.of.sized, part.from_row, part.to_row
        for number, row in enumerate(sorted({r for z in sized.zones for r in (z.from_row, z.to_row)})):
            if first_row < row < last_row and self._changes(row):
                yield alone(("yarn", number), Move(row, Rank.YARN, self.use(row)))
        for number, rib in enumerate(ribs(self.of)):
            if rib.panel is not None and not part.touches(*rib.panel):
                continue
            assert rib.begin is not None, "the solver has refused a rib without a column"
            origin = (self.of.piece if rib.zone is None else rib.zone).origin.path
            whole = Ribbed(rib.fabric.rib_every, rib.begin, rib.low, rib.high, rib.panel, origin)
            yield from self._latched(f"latch {number}", whole, first_row, last_row)

    def _latched(self, track: str, whole: Ribbed, first_row: int, last_row: int) -> Iterator[Group]:
        """One rib, as far as it lies in the rows; what of it is worked several times by itself."""
        for number, rib in enumerate(whole.by_repeats(self.of.sized)):
            yield from self._latched_once((track, number), rib, first_row, last_row)

    def _latched_once(self, key: GroupKey, rib: Ribbed, first_row: int, last_row: int) -> Iterator[Group]:
        begin, end = max(rib.from_row, first_row), min(rib.to_row, last_row)
        if begin >= end:
            return
        stage = self.of.design.machine.stage
        counter = self.of.sized.counter
        if rib.in_repeat(self.of.sized):
            # Rows that are worked several times are not counted: each stage is told at its row.
            at = begin
            for row in stage_rows(begin, (end,), *stage):
                yield alone((f"{key[0]} at {row - begin}", key[1]), Move(row, Rank.LATCH, rib.step(row - at)))
                at = row
            return
        cuts = sorted({rib.to_row, *rib.cuts(self.of.sized)})
        rows = stage_rows(counter(rib.from_row), (counter(row) for row in cuts), *stage)
        sooner: Sooner = "disturbed" if rib.disturbed(self.of.sized, self.of.piece.symmetric) else ""
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
