"""Moves by hand that tests of the bed and of the proof share."""

from __future__ import annotations

from walewright.bed import Bed, Gauge
from walewright.knit.operations import (
    BreakYarn,
    CastOn,
    Check,
    Hold,
    IntoWork,
    MoveCarriage,
    OntoWaste,
    Operation,
    OutOfWork,
    Pass,
    Release,
    SetCounter,
    Side,
    Transfer,
    UseYarn,
    other,
)

BED = Bed(40, (1, 2, 3), {("wool", "4"): Gauge(1.3, 1.85), ("wool", "2"): Gauge(1.4, 2.0)})
Ops = list[Operation]


def rows(count: int, to: Side) -> Ops:
    """So many passes, the first one `to` that side."""
    return [Pass(to if i % 2 == 0 else other(to)) for i in range(count)]


def again(first: int, last: int) -> Ops:
    """Cast on in the place of stitches taken off in mid-row."""
    return [IntoWork(first, last), CastOn("e-wrap", first, last, own_length=True)]


def apart_and_together() -> Ops:
    """From RC 18: two stitches off, the left part to RC 24, the right part to RC 24, four cast on between, and on together."""
    return [
        OntoWaste(1, 2, 8, "gap centre"),
        BreakYarn(),
        Hold(3, 7),
        MoveCarriage("left"),
        UseYarn("wool", "4"),
        *rows(2, "right"),
        Transfer(0, 0, -1),
        OutOfWork(0, 0),
        *rows(4, "right"),
        Hold(-8, -1),
        BreakYarn(),
        MoveCarriage("right"),
        SetCounter(18),
        Release(3, 7),
        UseYarn("wool", "4"),
        *rows(2, "left"),
        Transfer(3, 3, 1),
        OutOfWork(3, 3),
        *rows(4, "left"),
        *again(0, 3),
        Release(-8, -1),
        Check(16, 24, "right"),
    ]
