"""What a cell of a chart asks of hands and carriage for one needle in one row. Left and right are the bed's."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.record import record
from walewright.trade.sides import EdgeSide

CellKind = Literal[
    "knit",
    "hole",
    "from left",
    "from right",
    "two from left",
    "two from right",
    "three",
    "purl",
    "tuck",
    "slip",
    "long",
    "ladder",
    "cross",
]
"""knit: by the carriage, or in a yarn of its own | hole: its loop has been moved away and none has come: empty, in work | from
left: the loop of the left neighbour lies here, its own has gone to the right | from right | two from left: its own and, on top,
the left neighbour's | two from right | three: its own and both neighbours' | purl: the stitch of this row is re-formed on the
other face | tuck: held, the yarn laid over it | slip: held, the yarn lifted off | long: drawn long by hand | ladder: dropped
when the run of such cells ends | cross: one of an even number of neighbours whose halves are exchanged."""

Working = Literal["by the carriage", "moved", "crossed", "held for a row", "over rows"]
"""When a cell is worked: "by the carriage" alone; "moved" or "crossed" with its neighbours before the row is knitted; "held for a
row", and worked by hand after it; "over rows": begun on its needle, and ended when the run of such cells one above another
ends."""


@record
class CellFacts:
    """What is asked of a kind of cell."""

    working: Working
    takes_from: tuple[EdgeSide, ...] = ()
    """The neighbours whose loops come to lie here."""
    keeps_own: bool = True
    """Whether the needle's own loop stays on it."""
    on_waste: bool = False
    """Whether it leaves the loop alone that the needle carries already: it can be worked on the last row of waste yarn."""
    needs_edge: bool = False
    """Whether it cannot be worked on an end needle, which has a neighbour at one side only (common practice)."""
    of_groups: bool = False
    """Whether it is one of a group side by side, worked as one."""

    @property
    def single(self) -> bool:
        """Whether it is worked on its needle without regard to the neighbours."""
        return self.working in ("held for a row", "over rows")

    @property
    def passes_on(self) -> EdgeSide | None:
        """Of a cell in the middle of a run of moves: the side a loop has come from, its own having gone to the other."""
        return self.takes_from[0] if self.takes_from and not self.keeps_own else None


CELLS: Mapping[CellKind, CellFacts] = {
    "knit": CellFacts("by the carriage", on_waste=True),
    "hole": CellFacts("moved", keeps_own=False, needs_edge=True),
    "from left": CellFacts("moved", ("left",), keeps_own=False),
    "from right": CellFacts("moved", ("right",), keeps_own=False),
    "two from left": CellFacts("moved", ("left",)),
    "two from right": CellFacts("moved", ("right",)),
    "three": CellFacts("moved", ("left", "right")),
    "purl": CellFacts("over rows", on_waste=True),
    "tuck": CellFacts("over rows", needs_edge=True),
    "slip": CellFacts("held for a row", needs_edge=True),
    "long": CellFacts("held for a row", needs_edge=True),
    "ladder": CellFacts("over rows", needs_edge=True),
    "cross": CellFacts("crossed", of_groups=True),
}
