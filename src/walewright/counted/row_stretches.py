"""Stretches of rows of a counted piece that are worked again and again, or without some of its needles."""

from __future__ import annotations

from walewright.design.model import Origin
from walewright.record import record


@record
class SizedNeedlesOut:
    """Needles `slots`, rising, are out of work from `from_row` to `to_row`. `every`: each so many further on than the one before;
    0: they are named one by one."""

    from_row: int
    to_row: int
    slots: tuple[int, ...]
    every: int
    origin: Origin


@record
class SizedRepeat:
    """Rows `from_row`..`to_row` are worked `times` times in all."""

    from_row: int
    to_row: int
    times: int
    origin: Origin
