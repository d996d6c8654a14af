"""The design stage: what the source means. `understand` is the entry; the data are in `model`."""

from walewright.design.pieces.shapes import wanted_shapes
from walewright.design.reading.called import meant
from walewright.design.reading.changes import Changes, malformed
from walewright.design.reading.tables import SharedFile, Shipped
from walewright.design.understand import understand, understand_all
from walewright.design.used.shared import MOST_FILES, file_key, only_definitions, used_files, with_shared
from walewright.design.used.uses import wanted_charts

__all__ = [
    "MOST_FILES",
    "Changes",
    "SharedFile",
    "Shipped",
    "file_key",
    "malformed",
    "meant",
    "only_definitions",
    "understand",
    "understand_all",
    "used_files",
    "wanted_charts",
    "wanted_shapes",
    "with_shared",
]
