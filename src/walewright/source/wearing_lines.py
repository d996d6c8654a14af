"""Nodes of what is said of a garment as it is worn: finished measurements, openings, laps, cords, edges left free."""

from __future__ import annotations

from walewright.record import record
from walewright.source.piece_lines import EdgeRef
from walewright.source.quantities import Expr, Node


@record
class PlaceRef(Node):
    """`neckband` or `sleeve start`: a band, or a piece and one of its edges (None: the piece itself)."""

    owner: str
    edge: str | None = None


@record
class Round(Node):
    """`round back underarm`: all round the garment where that piece comes to that level; or, of a piece knitted sideways, along
    that row edge of it. `across strip top`: from one free edge to the other over all that is joined side by side."""

    piece: str
    level: str
    across: bool = False


@record
class Along(Node):
    """`along neckband`: the length of a band's last edge, or of an edge of a piece, as knitted."""

    place: PlaceRef


ToMeasure = Round | Along
"""What is measured on the garment when it is knitted."""


@record
class FinishedLine(Node):
    """`finished chest 2 * half, fits bust`, `finished waist round back waist, wanted 72 cm, fits waist, stretches`."""

    name: str
    amount: Expr | ToMeasure
    fits: Expr | None = None
    stretches: bool = False
    wanted: Expr | None = None
    """How large what is measured shall be."""


@record
class Through(Node):
    """`through neckband passes head`, `through neckband never passes head of baby_head, stretches to 140 %`."""

    place: PlaceRef
    part: str
    never: bool = False
    figure: Expr | None = None
    share: Expr | None = None


@record
class LapLine(Node):
    """`lap buttonhole_band over button_band`, `lap right_front edge over left_front edge, 8 cm wide`."""

    over: PlaceRef
    under: PlaceRef
    width: Expr | None = None


@record
class CordLine(Node):
    """`cord hood 90 cm long`: a cord or ribbon drawn through the piece."""

    piece: str
    length: Expr


@record
class Free(Node):
    """`free scarf side + scarf end`: edges that are meant to be joined to nothing."""

    edges: tuple[EdgeRef, ...]
