"""No moves: what edges of the piece just knitted are called."""

from __future__ import annotations

from walewright.knit.move_kinds import NamedRows
from walewright.record import record


@record
class NameEdge:
    """Names a row edge of the piece just knitted for joins and bands: the `where` "outer" edges (both sides), the "left" or
    "right" outer edge alone, or the "inner" edges of the only two parts, from row `from_row` to `to_row` on the counter."""

    edge: str
    where: NamedRows
    from_row: int
    to_row: int


@record
class NameGap(NameEdge):
    """The "inner" edges of one of several gaps: the `gap`th from the left of those between parts in the row after `from_row`."""

    gap: int
