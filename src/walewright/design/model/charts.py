"""Charts as part of the design: what each symbol of a grid does with its needle."""

from __future__ import annotations

from typing import Literal

from walewright.design.model.origin import Origin
from walewright.record import record
from walewright.trade.cells import CellKind
from walewright.trade.sides import EdgeSide


@record
class Cell:
    """What is done with one needle for one row, as a symbol of a chart says. Left and right are the bed's.

    kind: "knit" | "hole" (its loop has been moved away and none has come: empty, in work) | "from left" (the loop of the left
    neighbour lies here, its own has gone to the right) | "from right" | "two from left" (its own and, on top, the left
    neighbour's) | "two from right" | "three" (its own and both neighbours') | "purl" (the stitch of this row is re-formed on the
    other face) | "tuck" (held, the yarn laid over it) | "slip" (held, the yarn lifted off) | "long" (drawn long by hand) |
    "ladder" (dropped when the run of such cells ends) | "cross" (one of 2 * `cross` neighbours that are exchanged).
    `yarn`: of a "knit" in another yarn than the fabric's, else empty."""

    kind: CellKind
    yarn: str = ""
    cross: int = 0
    hung_first: EdgeSide | Literal[""] = ""
    """Of a cross: the group hung first, "left" or "right"; it lies in front on the right side."""


@record
class CellKey:
    """A symbol (one character, the author's) and what it means."""

    symbol: str
    cell: Cell
    origin: Origin


@record
class Chart:
    """A grid of symbols: `rows` from the first knitted (the bottom line) up, each a character a needle, left to right as on the
    bed, the purl side facing.

    `repeat` columns from column `before` on are worked again and again across, the `before` columns once at the left and the
    `after` columns once at the right; all rows again and again upwards. `repeat` 0: no repeat, worked once (a motif).
    `picture`: its yarns are laid block by block and crossed; else a second yarn floats."""

    name: str
    rows: tuple[str, ...]
    key: tuple[CellKey, ...]
    before: int
    repeat: int
    after: int
    picture: bool
    origin: Origin
    row_origins: tuple[Origin, ...] = ()
    """Of each row; the span is the row's line, from its first symbol to its last."""
    stage: int = 0
    """Rows after which a purl column is latched up and goes on (see `Machine.stage`); 0: none of its columns is so deep."""

    @property
    def width(self) -> int:
        return len(self.rows[0])

    def cell(self, row: int, column: int) -> Cell:
        """Row and column from 0, the row counted from the bottom."""
        return next(k.cell for k in self.key if k.symbol == self.rows[row][column])

    @property
    def yarns(self) -> tuple[str, ...]:
        """The yarns its cells name, in the order of the key."""
        return tuple(dict.fromkeys(k.cell.yarn for k in self.key if k.cell.yarn))
