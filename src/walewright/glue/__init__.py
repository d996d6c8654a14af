"""Glue: how the pieces of a design are put together to a garment. Entry: `glue(design) -> (GluedSizes | None, diagnostics)`."""

from walewright.glue.model import Chain, Face, Glued, GluedSizes, HangingLine, Place, Seam, Task, WornOpening
from walewright.glue.stage import glue

__all__ = ["Chain", "Face", "Glued", "GluedSizes", "HangingLine", "Place", "Seam", "Task", "WornOpening", "glue"]
