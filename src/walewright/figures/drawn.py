"""What is drawn: a garment in one of its sizes."""

from __future__ import annotations

from collections.abc import Iterable

from walewright.counted.bands import depth_cm
from walewright.counted.model import SizedGarment
from walewright.design.model import Design, DesignInSize
from walewright.figures.measures import LaidPiece, MeasuredPiece
from walewright.glue.model import UNGLUED, Glued
from walewright.record import record
from walewright.solve.model import Counts


@record
class DrawnGarment:
    """A garment in the one size that is drawn: its counts, its pieces laid flat, and what meets what."""

    at: DesignInSize
    counts: SizedGarment
    pieces: tuple[LaidPiece, ...]
    glued: Glued

    @property
    def design(self) -> Design:
        return self.at.design

    @property
    def title_size(self) -> str:
        """The name of the size, where there are others to tell it from."""
        return self.counts.size if len(self.design.sizes) > 1 else ""

    def piece(self, name: str) -> LaidPiece:
        return next(p for p in self.pieces if p.name == name)

    def band_cm(self, name: str) -> float:
        """How deep a band is."""
        return depth_cm(self.design, self.counts.band(name))


def drawn(design: Design, counts: Counts, pieces: Iterable[MeasuredPiece], size: int, glued: Glued | None) -> DrawnGarment:
    """The garment in its size number `size`; nothing meets where what is glued is not known."""
    at = design.at(size)
    return DrawnGarment(at, at.of(counts.sizes), tuple(at.of(p.laid) for p in pieces), glued or UNGLUED)
