"""The design stage: what the source means. `understand` is the entry; the data are in `model`."""

from walewright.design.pieces.shapes import wanted_shapes
from walewright.design.reading.called import meant
from walewright.design.reading.changes import Changes, malformed
from walewright.design.reading.tables import Shipped
from walewright.design.understand import understand, understand_all

__all__ = ["Changes", "Shipped", "malformed", "meant", "understand", "understand_all", "wanted_shapes"]
