"""The loop graph as it grows: flat arrays, one entry a loop, ids in the order of making.

A pass appends a whole row by slices; that is what makes a garment of half a million loops a matter of moments.
"""

from __future__ import annotations

from array import array
from dataclasses import dataclass, field
from enum import IntEnum
from typing import get_args

from walewright.bed.model import CourseKind, YarnlessCourse

NOTHING = -1
"""No loop: an empty needle, or no parent."""
HELPERS = {"waste": -2, "ravel": -3}
"""Yarns that come away. Their loops are not fabric and need no identity: each is only its yarn's number."""


class LoopKind(IntEnum):
    """How a loop came about. FILL, REHUNG, PICKED and CLOSED are older loops hung on a needle or
    drawn through each other: no new yarn is in them. FLOAT is yarn that was laid and lies past the needle, as a float or a ladder's
    bar: no loop, held by nothing. LONG is a stitch drawn long by hand, SEWN a back-stitch."""

    KNIT = 0
    CAST_ON = 1
    BAR = 2
    WRAP = 3
    CHAIN = 4
    FILL = 5
    REHUNG = 6
    PICKED = 7
    CLOSED = 8
    FLOAT = 9
    LONG = 10
    SEWN = 11


YARNLESS = (LoopKind.FILL, LoopKind.REHUNG, LoopKind.PICKED, LoopKind.CLOSED)
YARNLESS_COURSES: tuple[CourseKind, ...] = get_args(YarnlessCourse)
SEWN_COURSE: CourseKind = "sew off"
"""Its yarn is the tail's, which is measured by its length."""


@dataclass(slots=True)
class Loops:
    """`parent` is the loop drawn through, `more` the further ones where several lay on the needle; `face` 1 is re-formed."""

    slot: array[int] = field(default_factory=lambda: array("h"))
    parent: array[int] = field(default_factory=lambda: array("i"))
    kind: bytearray = field(default_factory=bytearray)
    face: bytearray = field(default_factory=bytearray)
    more: dict[int, tuple[int, ...]] = field(default_factory=dict)

    def add(self, slot: int, kind: LoopKind, parents: tuple[int, ...] = ()) -> int:
        """One loop; its id."""
        loop = len(self.parent)
        self.slot.append(slot)
        self.parent.append(parents[0] if parents else NOTHING)
        self.kind.append(kind)
        self.face.append(0)
        if len(parents) > 1:
            self.more[loop] = parents[1:]
        return loop
