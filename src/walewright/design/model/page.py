"""What is said of a garment for its page alone: the photograph, and what is needed beside the yarn."""

from __future__ import annotations

from typing import Literal

from walewright.design.model.origin import CountPerSize, Origin, PerSize
from walewright.design.model.wearing import Measured
from walewright.record import record


@record
class Photograph:
    """A picture in a file beside the source, and in words what is to be seen on it."""

    file: str
    showing: str
    origin: Origin


@record
class Needed:
    """Something to have at hand: `values` of it, counted or cm, or what is `measured` on the knitted garment, or one for each
    buttonhole of the pieces and bands `holes`, of which each has so many by size. None of all: nothing is said."""

    what: str
    unit: Literal["count", "length", ""]
    origin: Origin
    values: PerSize = ()
    measured: Measured | None = None
    holes: tuple[tuple[str, CountPerSize], ...] = ()
