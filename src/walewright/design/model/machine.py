"""A bed and what belongs to it."""

from __future__ import annotations

from walewright.design.model.origin import Origin
from walewright.record import record
from walewright.trade.beds import BedStart, EmptyCrossing, HandTool


@record
class MachineProfile:
    """A bed. `needles` is even; `pitch_mm` between needles; `prongs` of the transfer tools at hand."""

    name: str
    label: str
    needles: int
    pitch_mm: float
    prongs: tuple[int, ...]
    waste_rows: int
    edge_guides: bool
    """Whether guides or weights at the outermost needles are moved when the width changes."""
    origin: Origin
    plates: tuple[str, ...] = ()
    """Names of the exchangeable plates by which the tension is set, the tightest first; none: by the numbers of a dial."""
    start: BedStart = "comb"
    crossing: EmptyCrossing = ""
    lacking: tuple[HandTool, ...] = ()
    """Tools that are not at hand."""
    missing: tuple[int, ...] = ()
    """Needles that are broken or taken out, as slots (0 is the first right of the centre mark), from left to right."""

    @property
    def called(self) -> str:
        """Its label as far as the first comma, else its name. What follows there is said by other facts, which the source may have
        replaced."""
        return (self.label or self.name).partition(",")[0]

    @property
    def words(self) -> str:
        """ "180 needles, 4.5 mm apart", and what else it has."""
        told = f"{self.needles} needles, {self.pitch_mm:g} mm apart" + (", edge guides" if self.edge_guides else "")
        return told + (f", plates {' '.join(self.plates)}" if self.plates else "")

    @property
    def stage(self) -> tuple[int, int]:
        """How many rows of a column are dropped and latched up at once, and how many at most, so that it hangs free above comb and
        weights: 20 to 30 on fine and standard beds, 10 to 15 on coarser ones, even, so that the carriage's side stays (common
        practice). Between a standard bed's 4.5 mm and a mid-gauge one's 6 mm no figure is known: the middle divides them."""
        return (24, 30) if self.pitch_mm < 5.25 else (12, 15)
