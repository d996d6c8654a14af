"""Loops moved to neighbouring needles in a row of a chart: every hole has its move, every move its hole."""

from __future__ import annotations

from walewright.design.drawn import Drawn
from walewright.design.model import Machine

RIGHTWARDS, LEFTWARDS = 1, -1

TAKES = {
    "from left": (RIGHTWARDS,),
    "two from left": (RIGHTWARDS,),
    "from right": (LEFTWARDS,),
    "two from right": (LEFTWARDS,),
    "three": (RIGHTWARDS, LEFTWARDS),
}
"""By kind of cell: the ways that the loops it takes have gone."""
PASSES_ON = {RIGHTWARDS: "from left", LEFTWARDS: "from right"}
"""Kind of cell in the middle of a run of moves: a loop came, and its own went on."""
SIDE = {RIGHTWARDS: "right", LEFTWARDS: "left"}


def check_moves(drawn: Drawn, machine: Machine | None) -> None:
    """Tells of moves and holes that do not belong together."""
    for row in range(drawn.height):
        _ChartRow(drawn, row, machine).check()
    _holes_above_holes(drawn)


class _ChartRow:
    """One row as it stands on the needles; numbers are places in `stands`."""

    def __init__(self, drawn: Drawn, row: int, machine: Machine | None) -> None:
        self.drawn = drawn
        self.row = row
        self.machine = machine
        self.stands = drawn.stands
        self.kinds = [drawn.cell(row, s.column).kind for s in self.stands]

    def check(self) -> None:
        taken: dict[int, int] = {}
        """A hole to the way its loop has gone."""
        for at in range(len(self.stands)):
            for way in TAKES.get(self.kinds[at], ()):
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
        comes = f"the loop of its {SIDE[-way]} neighbour lies on it"
        if not 0 <= source < len(self.kinds):
            self._tell(
                "move-without-hole",
                at,
                f"{comes}, and that needle is not in the chart",
                "takes a loop from outside",
                helps=(f"draw a column more on the {SIDE[-way]}, with {self.drawn.symbol_for('hole')} here",),
            )
        elif self.kinds[source] == "hole":
            if taken.setdefault(source, way) != way:
                self._tell(
                    "move-without-hole",
                    at,
                    f"{comes}, and that loop has gone to the {SIDE[taken[source]]}",
                    "the same loop again",
                    helps=("two moves leave two holes: draw one for each",),
                )
        elif self.kinds[source] == PASSES_ON[way]:
            if self._beginning(source, way) is None:
                self._tell("move-without-hole", at, "its row of moves begins at no empty needle", "no hole before it")
        elif self.kinds[source] in TAKES:
            self._tell(
                "move-without-hole",
                at,
                f"{comes}, and the neighbour is drawn with a loop that does not go there",
                f"`{self._symbol(source)}` does not give its loop",
                helps=(f"a loop that goes on to the {SIDE[way]} is drawn as {self.drawn.symbol_for(PASSES_ON[way])}",),
            )
        else:
            self._tell(
                "hole-unasked",
                source,
                f"its loop is moved to the {SIDE[way]}, and the needle that this leaves empty is drawn as {self.kinds[source]}",
                "empty, and not drawn so",
                also=(at, "the loop lies here"),
                helps=(f"draw it as {self.drawn.symbol_for('hole')}, or leave the move out",),
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
            takers = f"{self.drawn.symbol_for('two from left')} or {self.drawn.symbol_for('two from right')}"
            self._tell(
                "hole-without-move",
                at,
                "the needle is empty, and its loop lies on neither neighbour",
                "its loop lies nowhere",
                helps=(f"draw a neighbour as {takers}",),
            )

    def _passed_on(self, at: int, way: int) -> None:
        onto = at + way
        if 0 <= onto < len(self.kinds) and way in TAKES.get(self.kinds[onto], ()):
            return
        self._tell(
            "hole-without-move",
            at,
            f"its own loop has gone to the {SIDE[way]}, and lies on no needle there",
            "its loop lies nowhere",
            helps=(f"draw its {SIDE[way]} neighbour as {self.drawn.symbol_for('two ' + PASSES_ON[way])}",),
        )

    def _tool(self, hole: int, way: int) -> None:
        """Whether a tool at hand has prongs for all the loops that are moved together."""
        at = hole + way
        while 0 <= at < len(self.kinds) and self.kinds[at] == PASSES_ON[way]:
            at += way
        loops = abs(at - hole)
        if self.machine is None or not 0 <= at < len(self.kinds) or loops <= max(self.machine.prongs):
            return
        self._tell(
            "move-beyond-tools",
            hole,
            f"{loops} loops are moved together to the {SIDE[way]}",
            f"{loops} loops from here",
            also=(at, "to here"),
            notes=(f"the largest transfer tool at hand has {max(self.machine.prongs)} prongs",),
            helps=("bring the hole nearer to where two loops lie together",),
        )

    def _ladder_begins(self, at: int) -> bool:
        below = self.drawn.below(self.row)
        column = self.stands[at].column
        return self.kinds[at] == "ladder" and (below is None or self.drawn.cell(below, column).kind != "ladder")

    def _two_empty(self, at: int) -> None:
        self._tell(
            "holes-meet",
            at + 1,
            "its left neighbour is empty in the same row, and yarn laid over two empty needles makes no stitches",
            "empty beside an empty needle",
            also=(at, "empty too"),
            helps=("leave a needle with a loop between them",),
        )

    def _symbol(self, at: int) -> str:
        return self.drawn.symbol(self.row, self.stands[at].column)

    def _tell(
        self,
        code: str,
        at: int,
        message: str,
        label: str,
        also: tuple[int, str] | None = None,
        notes: tuple[str, ...] = (),
        helps: tuple[str, ...] = (),
    ) -> None:
        if not self.stands[at].told:
            return
        further = [(self.drawn.place(self.row, self.stands[also[0]].column), also[1])] if also is not None else []
        self.drawn.tell(code, (self.row, self.stands[at].column), message, label, *further, notes=notes, helps=helps)


def _holes_above_holes(drawn: Drawn) -> None:
    for row in range(drawn.height):
        above = drawn.above(row)
        if above is None:
            continue
        for column in range(drawn.chart.width):
            if drawn.cell(row, column).kind == drawn.cell(above, column).kind == "hole":
                drawn.tell(
                    "holes-meet",
                    (above, column),
                    "the needle was empty in the row before, and has a bar but no stitch yet that could be moved",
                    "empty twice in a row",
                    (drawn.place(row, column), "empty in the row before"),
                    helps=("work a row between the two holes",),
                )
