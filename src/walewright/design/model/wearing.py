"""What is said of a garment as it is worn: finished measurements, openings that the body passes, laps."""

from __future__ import annotations

from typing import Literal

from walewright.design.model.origin import Origin, PerSize
from walewright.record import record
from walewright.trade.relations import Relation
from walewright.trade.worn import BodyPart


@record
class Measured:
    """What is measured on the garment when it is knitted: `kind` "round level" or "round edge" (all round at the level or
    the row edge `at` of piece `owner`), "across level" (from free edge to free edge at that level) or "along" (an edge `at` of the
    piece, or, where that is empty, the last edge of the band `owner`)."""

    kind: Literal["round level", "round edge", "across level", "along"]
    owner: str
    at: str


@record
class Finished:
    """A finished measurement that the author states: `values` as worked out, or empty where it is `measured`. `fits` names what of
    the body it fits, `body` is how large that is; empty: none. `stretches`: it may be smaller than the body."""

    name: str
    values: PerSize
    measured: Measured | None
    fits: str
    body: PerSize
    stretches: bool
    origin: Origin
    wanted: PerSize = ()
    """How large the author wants what is `measured`; empty: nothing is said."""


@record
class Passage:
    """An opening that a part of the body ("head", "hand" ...) must pass, or (`never`) must not.

    `edge` is empty for a band's last edge. `figure` and `share` (stretched length to relaxed length) are the
    author's, else empty."""

    owner: str
    edge: str
    part: BodyPart
    never: bool
    figure: PerSize
    share: PerSize
    origin: Origin

    @property
    def place(self) -> str:
        """What its author names: the band, or the piece and the edge."""
        return f"{self.owner} {self.edge}".rstrip()


@record
class Lap:
    """A piece or band, or (`edge` not empty) an edge of a piece, laid over another for the wearing: (owner, edge). `width` is how
    far, empty: the whole width of the narrower one."""

    over: tuple[str, str]
    under: tuple[str, str]
    width: PerSize
    origin: Origin


@record
class Requirement:
    """left relation right, in cm per size; already evaluated. Checked by `design`, or, where the left side is `measured` on the
    knitted garment, by `fit` (`left` is then empty)."""

    left: PerSize
    relation: Relation
    right: PerSize
    text: str
    because: str
    origin: Origin
    measured: Measured | None = None
