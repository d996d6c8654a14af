"""The fabrics of a piece by height: its own, and those of zones over the whole width. Panels lie in them and change neither."""

from __future__ import annotations

from walewright.design.model import Fabric, Level, PerSize
from walewright.design.reading.places import AmountPlace
from walewright.record import record


@record
class PieceCloth:
    """`own` is the piece's fabric; `bands` are (first level, last level, fabric) of whole-width zones. A fabric that is not
    known is None."""

    place: AmountPlace
    levels: tuple[Level, ...]
    bands: tuple[tuple[int, int, Fabric | None], ...] = ()

    @property
    def own(self) -> Fabric | None:
        """The piece's fabric."""
        return self.place.fabric

    def below(self, level: int) -> Fabric | None:
        """The fabric of the rows just below a level; at the start, of the first rows."""
        row = max(level, 1)
        return next((fabric for low, high, fabric in self.bands if low < row <= high), self.own)

    def at(self, level: int) -> AmountPlace:
        """Where quantities across the work at that level are understood."""
        return AmountPlace(self.place.scope, self.place.findings, self.below(level))

    def rows(self, low: int, high: int, free: bool = False) -> PerSize | None:
        """Rows between two levels in every size, not rounded; with `free`, those of free levels at their highest. None when a
        fabric is not known."""
        counted = [0.0] * len(self.place.scope.sizes)
        for level in range(low + 1, high + 1):
            fabric = self.below(level)
            if fabric is None:
                return None
            upper, lower = (self._height(i, free) for i in (level, level - 1))
            counted = [c + (a - b) * fabric.rows_per_cm for c, a, b in zip(counted, upper, lower, strict=True)]
        return tuple(counted)

    def _height(self, level: int, free: bool) -> PerSize:
        found = self.levels[level]
        return found.most if free and found.most is not None else found.height
