"""Edges by name, and what is knitted on or joined along them: bands and joins."""

from __future__ import annotations

from walewright.design.model.origin import CountPerSize, Origin, PerSize
from walewright.record import record
from walewright.trade.joins import JoinWay, NextCopy, WornFacing


@record
class EdgeName:
    """A piece's edge. Names given by the author with `called` (of one edge or both), of openings and slots, and always: start,
    end, neck, shoulder."""

    piece: str
    edge: str
    cut: int = 0
    """Of an edge that a band is parted within: which stretch of it, from 1 on, from the bottom or from the left; 0: all of it."""


@record
class EdgeCut:
    """Where bands are parted within an edge (as the glued garment names it, "side left"): per size, rows above its bottom or
    stitches right of its left end, rising."""

    piece: str
    edge: str
    at: tuple[tuple[int, ...], ...]
    middle: bool = False
    """Whether it is cut once, in its middle: the centre back."""


@record
class Band:
    """An edging knitted on loops picked up along edges, in the order worked."""

    name: str
    edging: str
    along: tuple[EdgeName, ...]
    origin: Origin
    holes: CountPerSize = ()
    """Buttonholes by size, of `hole_stitches` (1: eyelets), at half the depth, the outermost `first` and `last` cm from the band's
    ends, or from those of the part that lies along `hole_along`; empty where it has none."""
    hole_stitches: int = 0
    first: PerSize = ()
    last: PerSize = ()
    facing: WornFacing = ""
    """The side of the pieces to the knitter when they are hung: "right" or "wrong", as they are worn; empty: so that the right side
    of the band comes outside."""
    picked: tuple[int, int] | None = None
    """So many stitches to so many rows, where the author says it; None: as many as the length of the edge has."""
    places: tuple[tuple[int, ...], ...] = ()
    """Of a part of a band that is wider than the bed: per size, the stitches between its beginning and each of its buttonholes."""
    hole_along: tuple[EdgeName, ...] = ()
    """Neighbours among `along`; empty: all of it."""
    part_of: str = ""
    """The band that it is a part of, as its author calls it."""
    parts: int = 1
    """Of how many parts that band is made."""


@record
class EdgeJoin:
    """Edges put together; `easing` is the difference in length allowed, in cm (0 and no `longer`: equal rows).

    `longer`: `one` shall be that much longer than `other`, within the easing (where none is given: as near as rows allow).
    `way`: "sewn" | "grafted" | "linked" (both need open loops or equal stitches) | "gathered" (sewn, the fullness drawn in) |
    "pleated" (sewn, the fullness laid in folds)."""

    one: tuple[EdgeName, ...]
    other: tuple[EdgeName, ...]
    easing: PerSize
    origin: Origin
    longer: PerSize | None = None
    way: JoinWay = "sewn"
    matching: bool = False
    """Stitch patterns go on across the join without a break: row by row up the seam, and by whole repeats across it."""
    next_copy: NextCopy = ""
    """Of pieces knitted several times: "" (what corners tell), "own" (each copy to the one of its number), "next" (each to the
    next one) or "all round" (and the last to the first)."""
    ratio: tuple[int, int] | None = None
    """So many rows of the one side to so many stitches of the other, in place of lengths."""
