"""A pattern as its pages are made of it."""

from __future__ import annotations

from walewright.design.model import Design
from walewright.fit.model import Fit
from walewright.glue.model import GluedSizes
from walewright.proof.model import Proof
from walewright.record import record
from walewright.sheet.photograph import ReadyPicture
from walewright.solve.model import Counts
from walewright.write.model import Instructions


@record
class ProvenPattern:
    """All of it comes from one build and has the same sizes in the same order. `fit`: the garment as it is worn; without it nothing
    is printed that goes round a body. `picture` is the photograph that the design names, read and made ready. `glued`: what meets
    what; without it there is no drawing of making up."""

    design: Design
    counts: Counts
    instructions: Instructions
    proof: Proof
    fit: Fit | None = None
    picture: ReadyPicture | None = None
    glued: GluedSizes | None = None
