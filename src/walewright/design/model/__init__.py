"""The design as data: what the source means, everything in centimetres, per size."""

from walewright.design.model.charts import Cell, CellKey, Chart
from walewright.design.model.credit import Credit
from walewright.design.model.design import (
    Band,
    Buttonholes,
    Cord,
    Design,
    EdgeJoin,
    EdgeName,
    EdgeRun,
    Edging,
    Level,
    MachineProfile,
    Measurement,
    Opening,
    Piece,
    Requirement,
    ShapingWay,
    Slot,
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
    "CellKey",
    "Chart",
    "Cord",
    "CountPerSize",
    "Credit",
    "Design",
    "EdgeJoin",
    "EdgeName",
    "EdgeRun",
    "Edging",
    "Edition",
    "Fabric",
    "Finished",
    "Given",
    "Lap",
    "Level",
    "MachineProfile",
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
    "ShapingWay",
    "Slot",
    "Wedge",
    "Yarn",
    "Zone",
]
