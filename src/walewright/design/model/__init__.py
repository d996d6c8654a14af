"""The design as data: what the source means, everything in centimetres, per size."""

from walewright.design.model.charts import Cell, CellKey, Chart
from walewright.design.model.credit import Credit
from walewright.design.model.design import (
    Buttonholes,
    Cord,
    Design,
    DesignInSize,
    Edging,
    Level,
    Measurement,
    Opening,
    Piece,
    Slot,
    Wedge,
)
from walewright.design.model.fabrics import Fabric, Yarn
from walewright.design.model.joined import Band, EdgeCut, EdgeJoin, EdgeName
from walewright.design.model.machine import MachineProfile
from walewright.design.model.origin import CountPerSize, Origin, PerSize
from walewright.design.model.page import Needed, Photograph
from walewright.design.model.rate import Rate
from walewright.design.model.regrading import Choice, Edition, Given
from walewright.design.model.runs import EdgeRun, InsideLine, ShapingWay, StepsAlike
from walewright.design.model.wearing import Finished, Lap, Measured, Passage, Requirement
from walewright.design.model.within import Motif, NeedlesOut, RepeatStretch, Zone

__all__ = [
    "Band",
    "Buttonholes",
    "Cell",
    "CellKey",
    "Chart",
    "Choice",
    "Cord",
    "CountPerSize",
    "Credit",
    "Design",
    "DesignInSize",
    "EdgeCut",
    "EdgeJoin",
    "EdgeName",
    "EdgeRun",
    "Edging",
    "Edition",
    "Fabric",
    "Finished",
    "Given",
    "InsideLine",
    "Lap",
    "Level",
    "MachineProfile",
    "Measured",
    "Measurement",
    "Motif",
    "Needed",
    "NeedlesOut",
    "Opening",
    "Origin",
    "Passage",
    "PerSize",
    "Photograph",
    "Piece",
    "Rate",
    "RepeatStretch",
    "Requirement",
    "ShapingWay",
    "Slot",
    "StepsAlike",
    "Wedge",
    "Yarn",
    "Zone",
]
