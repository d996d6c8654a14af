"""Where in the source a datum of the design comes from."""

from __future__ import annotations

from dataclasses import field

from walewright.record import record
from walewright.report.model import NOWHERE, Span

PerSize = tuple[float, ...]
"""A quantity for each size, in the order of `Design.sizes`."""

CountPerSize = tuple[int, ...]
"""A number of things for each size, in the same order."""


@record
class Origin:
    """The statement a datum came from: a readable path ("piece back / neck") and its span."""

    path: str
    span: Span = field(default=NOWHERE, compare=False, repr=False)
