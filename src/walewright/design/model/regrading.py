"""What a knitter gave in place of the source's own figures, and those figures: kept side by side, so that every copy can say from
what it was regraded."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from walewright.design.model.fabrics import Fabric, Yarn
from walewright.design.model.origin import PerSize
from walewright.record import record

if TYPE_CHECKING:
    from walewright.design.model import MachineProfile, Measurement


GivenByName = Literal["measure", "tension", "swatch", "dial", "yarn"]
"""What is given of a row, a fabric or a yarn, by its name."""

GivenKind = Literal[GivenByName, "bed"]


@record
class Choice:
    """What the source leaves to the knitter: its `alternatives`, and the `alternative` taken. The first is the
    source's own."""

    name: str
    alternatives: tuple[str, ...]
    alternative: str

    @property
    def chosen(self) -> bool:
        """Whether it is another than where nothing is chosen."""
        return self.alternative != self.alternatives[0]


@record
class Given:
    """One thing given. `kind`: "measure", "tension", "swatch", "dial", "yarn" or "bed"; `name` that of the row, fabric or yarn,
    empty for the bed. `own` and `source` say both in words; a measure has no words, but its length in `own_cm` and, per size,
    in `source_cm`; one that counts has words, and no length."""

    kind: GivenKind
    name: str
    own: str = ""
    source: str = ""
    own_cm: float = 0.0
    source_cm: PerSize = ()


CountUnit = Literal["", "st", "rows", "%"]


@record
class CountRow:
    """A row of the sizes that counts something: its `values` as they are written, in `unit` ("st", "rows", "%"; empty: plain
    numbers), and what it counts (`about`) in the author's words."""

    name: str
    values: PerSize
    unit: CountUnit
    about: str = ""

    @property
    def whole(self) -> bool:
        """Whether the source has only whole numbers there: then it counts things."""
        return all(value == round(value) for value in self.values)

    def words(self, value: float) -> str:
        """ "7", "4 st", as the option takes it."""
        return f"{value:g} {self.unit}".rstrip()


@record
class Edition:
    """What the source itself says, for the sizes made: `measurements` in cm, `fabrics`, `yarns`, its bed; `sizes` are all that it
    has. Nothing that is used nowhere."""

    sizes: tuple[str, ...]
    measurements: tuple[Measurement, ...]
    fabrics: tuple[Fabric, ...]
    yarns: tuple[Yarn, ...]
    machine: MachineProfile
    counts: tuple[CountRow, ...] = ()
