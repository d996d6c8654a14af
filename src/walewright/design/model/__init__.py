"""The design as data: what the source means, everything in centimetres, per size."""

from walewright.design.model.charts import Cell, Chart, Key
from walewright.design.model.design import (
    Band,
    Buttonholes,
    Cord,
    Design,
    EdgeName,
    EdgeRun,
    Edging,
    Join,
    Level,
    Machine,
    Measurement,
    Opening,
    Piece,
    Requirement,
    Slot,
    Way,
    Wedge,
)
from walewright.design.model.fabrics import Fabric, Yarn
from walewright.design.model.origin import CountPerSize, Origin, PerSize
from walewright.design.model.rate import Rate
from walewright.design.model.regrading import Edition, Given
from walewright.design.model.wearing import Finished, Lap, Measured, Passage
from walewright.design.model.within import Motif, RepeatStretch, Zone

__all__ = [
    "Band",
    "Buttonholes",
    "Cell",
    "Chart",
    "Cord",
    "CountPerSize",
    "Design",
    "EdgeName",
    "EdgeRun",
    "Edging",
    "Edition",
    "Fabric",
    "Finished",
    "Given",
    "Join",
    "Key",
    "Lap",
    "Level",
    "Machine",
    "Measured",
    "Measurement",
    "Motif",
    "Opening",
    "Origin",
    "Passage",
    "PerSize",
    "Piece",
    "Rate",
    "RepeatStretch",
    "Requirement",
    "Slot",
    "Way",
    "Wedge",
    "Yarn",
    "Zone",
]
