"""Steps of a part that waits for its turn, right out or on ravel cord."""

from __future__ import annotations

from dataclasses import dataclass

from walewright.knit.needle import Side
from walewright.knit.step import Step


@dataclass(frozen=True, slots=True)
class HoldPart(Step):
    """Put all needles of the half at `side`, `first`..`last`, into hold: they wait for the other half."""

    side: Side
    first: int
    last: int


@dataclass(frozen=True, slots=True)
class ReturnPart(Step):
    """Return the half that waits at `side`, needles `first`..`last`, to work."""

    side: Side
    first: int
    last: int


@dataclass(frozen=True, slots=True)
class PartOnCord(Step):
    """Lay ravel cord by hand into the hooks of the part at `side`, `first`..`last`, those held for shaping included, and push its
    needles fully back: it waits `rows` rows for the other part."""

    side: Side
    first: int
    last: int
    rows: int


@dataclass(frozen=True, slots=True)
class DrawPartsCord(Step):
    """Push the needles of the part that waits at `side`, `first`..`last`, right out and draw the cord out: the part waits in hold
    then, as after `HoldPart`."""

    side: Side
    first: int
    last: int
