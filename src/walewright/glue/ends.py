"""Ends of bands that meet where no seam is: a band knitted in parts, parted within a piece."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import permutations

from walewright.design.model import Design
from walewright.glue.lines import HungCopy
from walewright.glue.surface import Path, Surface

_SEWN = 3_000_000
"""Glueings of ends are numbered so; nothing waits for them."""


def sewn_ends(design: Design, surface: Surface, lines: Sequence[HungCopy]) -> tuple[Path, ...]:
    """The ends of strips to be sewn together, two and two, which are put together here: parts of one band whose lines go on one
    after the other round one copy of a piece. Across a seam it sews them (`stage.glue`)."""
    whole = {band.name: band.part_of for band in design.bands if band.part_of}
    own = [line for line in lines if line.hanging.owner in whole]
    found: list[Path] = []
    for one, other in permutations(own, 2):
        before, after = surface.edges[one.path[-1]], surface.edges[other.path[0]]
        if whole[one.hanging.owner] != whole[other.hanging.owner] or before.after != other.path[0]:
            continue
        at = surface.corner(after.begin)
        ends = [_end_at(surface, line, at) for line in (one, other)]
        pair = tuple(end for end in ends if end is not None)
        if len(pair) == 2:
            surface.glue(pair[:1], pair[1:], _SEWN)
            found.append(pair)
    return tuple(found)


def _end_at(surface: Surface, line: HungCopy, corner: int) -> int | None:
    """The free end of a line's strip that comes to a corner."""
    for e, edge in enumerate(surface.edges):
        mine = (edge.owner, edge.copy) == (line.hanging.owner, line.copy) and edge.ring.state == "strip"
        if mine and surface.free(e) and corner in (surface.corner(edge.begin), surface.corner(edge.end)):
            return e
    return None
