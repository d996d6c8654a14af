"""What edges are traced on."""

from __future__ import annotations

from walewright.design.findings import Findings
from walewright.design.model import Level, MachineProfile, PerSize
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.outline import OutlineSide
from walewright.record import record
from walewright.report.said import Said
from walewright.trade.sides import EdgeSide

TracedSides = dict[EdgeSide, OutlineSide]


@record
class Tracing:
    """What edges are traced on: the outline of a piece, or the gap of an opening in it (`gap`), from level `first` to `last`."""

    piece: str
    what: Said
    path: str
    """Beginning of the origins' paths."""
    levels: tuple[Level, ...]
    cloth: PieceCloth
    machine: MachineProfile | None
    first: int
    last: int
    centre: PerSize
    """How far right of the middle of the start the centre line lies."""
    gap: bool = False

    @property
    def findings(self) -> Findings:
        """Where faults are told."""
        return self.cloth.place.findings

    @property
    def sizes(self) -> tuple[str, ...]:
        """The sizes of the design."""
        return self.cloth.place.scope.sizes

    @property
    def inwards(self) -> int:
        """Sign of a move that takes stitches from the fabric: a gap takes them where it widens."""
        return 1 if self.gap else -1
