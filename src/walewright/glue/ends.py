"""Ends of bands that meet where no seam is: of a band knitted in parts, parted within a piece, and of one all round an opening."""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping, Sequence
from itertools import permutations

from walewright.design.model import Design
from walewright.glue.lines import HungCopy, closed_by_itself
from walewright.glue.surface import Path, Surface

_SEWN = 3_000_000
"""Glueings of ends are numbered so; nothing waits for them."""


def sewn_ends(design: Design, surface: Surface, lines: Sequence[HungCopy], free: Container[int]) -> tuple[Path, ...]:
    """The ends of strips to be sewn together, two and two, which are put together here: those of a band that goes all round an
    opening of one copy of a piece, unless they are meant to stay `free`; and parts of one band whose lines go on one after the
    other round one copy. Across a seam it sews them (`stage.glue`)."""
    rings = tuple(_all_round(design, surface, lines, free))
    for pair in rings:
        surface.glue(pair[:1], pair[1:], _SEWN)
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
    return (*rings, *found)


def parts_in_line(design: Design, surface: Surface, free: Container[int]) -> tuple[Path, ...]:
    """The ends of parts of one band that lie in line still when all seams are made: where what they lie along was hung on the
    other, as a hood is on a neckline. They are put together here, unless they are meant to stay `free`."""
    whole = {band.name: band.part_of for band in design.bands if band.part_of}
    found: list[Path] = []
    while (pair := next(_of_one_band(surface, whole, free), None)) is not None:
        surface.glue(pair[:1], pair[1:], _SEWN)
        found.append(pair)
    return tuple(found)


def _of_one_band(surface: Surface, whole: Mapping[str, str], free: Container[int]) -> Iterator[Path]:
    for ring in surface.openings():
        for one, other in zip(ring, (*ring[1:], ring[0]), strict=True):
            owners = [surface.edges[e].owner for e in (one, other)]
            strips = {surface.edges[e].ring.state for e in (one, other)} == {"strip"}
            if strips and one not in free and other not in free and owners[0] != owners[1]:
                bands = {whole.get(owner) for owner in owners}
                if len(bands) == 1 and None not in bands:
                    yield one, other


def _all_round(design: Design, surface: Surface, lines: Sequence[HungCopy], free: Container[int]) -> Iterator[Path]:
    """The two ends of each band whose line is the whole ring of an opening or a slot within one piece."""
    for line in lines:
        if design.band(line.hanging.owner) is None or not closed_by_itself(surface, line.path):
            continue
        strips = (e for e, edge in enumerate(surface.edges) if (edge.owner, edge.copy) == (line.hanging.owner, line.copy))
        ends = tuple(e for e in strips if surface.edges[e].ring.state == "strip" and surface.free(e))
        if len(ends) == 2 and not any(e in free for e in ends):
            yield ends


def _end_at(surface: Surface, line: HungCopy, corner: int) -> int | None:
    """The free end of a line's strip that comes to a corner."""
    for e, edge in enumerate(surface.edges):
        mine = (edge.owner, edge.copy) == (line.hanging.owner, line.copy) and edge.ring.state == "strip"
        if mine and surface.free(e) and corner in (surface.corner(edge.begin), surface.corner(edge.end)):
            return e
    return None
