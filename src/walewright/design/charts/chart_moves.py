"""Loops moved to neighbouring needles in a row of a chart: every hole has its move, every move its hole."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.charts.drawn import Drawn
from walewright.design.model import MachineProfile
from walewright.report.said import Fact
from walewright.trade.cells import CELLS, CellKind
from walewright.trade.sides import EdgeSide

RIGHTWARDS, LEFTWARDS = 1, -1

_FROM: Mapping[EdgeSide, int] = {"left": RIGHTWARDS, "right": LEFTWARDS}
"""The way that a loop has gone which has come from that side."""

TAKES: Mapping[CellKind, tuple[int, ...]] = {kind: tuple(_FROM[s] for s in facts.takes_from) for kind, facts in CELLS.items()}
"""By kind of cell: the ways that the loops it takes have gone."""
PASSES_ON: Mapping[int, CellKind] = {_FROM[s]: kind for kind, facts in CELLS.items() if (s := facts.passes_on) is not None}
"""Kind of cell in the middle of a run of moves: a loop came, and its own went on."""
ENDS_ON: Mapping[int, CellKind] = {RIGHTWARDS: "two from left", LEFTWARDS: "two from right"}
"""Kind of cell at the end of a run of moves: two loops lie there."""
SIDE = {RIGHTWARDS: "right", LEFTWARDS: "left"}


def check_moves(drawn: Drawn, machine: MachineProfile | None) -> None:
    """Reports moves and holes that do not belong together."""
    for row in range(drawn.height):
        _ChartRow(drawn, row, machine).check()
    _holes_above_holes(drawn)


class _ChartRow:
    """One row as it stands on the needles; numbers are places in `stands`."""

    def __init__(self, drawn: Drawn, row: int, machine: MachineProfile | None) -> None:
        self.drawn = drawn
        self.row = row
        self.machine = machine
        self.stands = drawn.stands
        self.kinds = [drawn.cell(row, s.column).kind for s in self.stands]

    def check(self) -> None:
        taken: dict[int, int] = {}
        """A hole to the way its loop has gone."""
        for at in range(len(self.stands)):
            for way in TAKES[self.kinds[at]]:
                self._source(at, way, taken)
        for at, kind in enumerate(self.kinds):
            if kind == "hole":
                self._hole(at, taken)
            for way, passing in PASSES_ON.items():
                if kind == passing:
                    self._passed_on(at, way)

    def _source(self, at: int, way: int, taken: dict[int, int]) -> None:
        """Looks where a loop that is taken comes from."""
        source = at - way
        side = SIDE[-way]
        if not 0 <= source < len(self.kinds):
            self._report(
                "move-without-hole/outside",
                at,
                "from-outside",
                helps=("draw-column",),
                side=side,
                hole=self.drawn.symbol_for("hole"),
            )
        elif self.kinds[source] == "hole":
            if taken.setdefault(source, way) != way:
                self._report("move-without-hole/loop-gone", at, "again", helps=("two-holes",), side=side, gone=SIDE[taken[source]])
        elif self.kinds[source] == PASSES_ON[way]:
            if self._beginning(source, way) is None:
                self._report("move-without-hole/no-beginning", at, "no-hole")
        elif TAKES[self.kinds[source]]:
            self._report(
                "move-without-hole/loop-kept",
                at,
                "kept",
                helps=("drawn-as",),
                side=side,
                symbol=self._symbol(source),
                onward=SIDE[way],
                passing=self.drawn.symbol_for(PASSES_ON[way]),
            )
        else:
            self._report(
                "hole-unasked",
                source,
                "empty",
                also=(at, "loop"),
                helps=("draw-hole",),
                side=SIDE[way],
                stitch=self.kinds[source],
                hole=self.drawn.symbol_for("hole"),
            )

    def _beginning(self, at: int, way: int) -> int | None:
        """Where the run of moves through a place begins; None when it goes round and round."""
        while 0 <= at < len(self.kinds) and self.kinds[at] == PASSES_ON[way]:
            at -= way
        # What breaks a run elsewhere is told at the place where it breaks.
        return at if 0 <= at < len(self.kinds) or not self.drawn.chart.repeat else None

    def _hole(self, at: int, taken: dict[int, int]) -> None:
        if at + 1 < len(self.kinds) and (self.kinds[at + 1] == "hole" or self._ladder_begins(at + 1)):
            self._two_empty(at)
        if at in taken:
            self._tool(at, taken[at])
        else:
            takers = (self.drawn.symbol_for("two from left"), self.drawn.symbol_for("two from right"))
            self._report("hole-without-move/taken-by-none", at, "nowhere", helps=("draw-taker",), takers=takers)

    def _passed_on(self, at: int, way: int) -> None:
        onto = at + way
        if 0 <= onto < len(self.kinds) and way in TAKES[self.kinds[onto]]:
            return
        self._report(
            "hole-without-move/gone",
            at,
            "nowhere",
            helps=("draw-taker",),
            side=SIDE[way],
            taker=self.drawn.symbol_for(ENDS_ON[way]),
        )

    def _tool(self, hole: int, way: int) -> None:
        """Whether a tool at hand has prongs for all the loops that are moved together."""
        at = hole + way
        while 0 <= at < len(self.kinds) and self.kinds[at] == PASSES_ON[way]:
            at += way
        loops = abs(at - hole)
        if self.machine is None or not 0 <= at < len(self.kinds) or loops <= max(self.machine.prongs):
            return
        self._report(
            "move-beyond-tools",
            hole,
            "from-here",
            also=(at, "to-here"),
            notes=("largest",),
            helps=("nearer",),
            loops=loops,
            side=SIDE[way],
            prongs=max(self.machine.prongs),
        )

    def _ladder_begins(self, at: int) -> bool:
        below = self.drawn.below(self.row)
        column = self.stands[at].column
        return self.kinds[at] == "ladder" and (below is None or self.drawn.cell(below, column).kind != "ladder")

    def _two_empty(self, at: int) -> None:
        self._report("holes-meet/side-by-side", at + 1, "beside-empty", also=(at, "empty-too"), helps=("leave-one",))

    def _symbol(self, at: int) -> str:
        return self.drawn.symbol(self.row, self.stands[at].column)

    def _report(
        self,
        kind: str,
        at: int,
        label: str,
        also: tuple[int, str] | None = None,
        notes: tuple[str, ...] = (),
        helps: tuple[str, ...] = (),
        **facts: Fact,
    ) -> None:
        if not self.stands[at].told:
            return
        further = [(self.drawn.place(self.row, self.stands[also[0]].column), also[1])] if also is not None else []
        self.drawn.report_cell(kind, (self.row, self.stands[at].column), label, *further, notes=notes, helps=helps, facts=facts)


def _holes_above_holes(drawn: Drawn) -> None:
    for row in range(drawn.height):
        above = drawn.above(row)
        if above is None:
            continue
        for column in range(drawn.chart.width):
            if drawn.cell(row, column).kind == drawn.cell(above, column).kind == "hole":
                drawn.report_cell(
                    "holes-meet/row-by-row",
                    (above, column),
                    "twice",
                    (drawn.place(row, column), "before"),
                    helps=("work-row",),
                )
