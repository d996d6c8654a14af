"""Where a band wider than the bed can be parted.

Strips are joined at the centre back, else at the shoulders (common practice), and so in the seams that make two of a band's edges
meet; else where one of the edges that the author names ends and the next one begins; and only else within an edge, in parts as even
as they can be, an even number of rows up.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import accumulate, combinations, pairwise
from math import ceil, comb

from walewright.counted import counted_piece
from walewright.counted.edges import edge_rows, held_rows, split_part, stretches
from walewright.counted.model import SizedPiece
from walewright.design.model import Band, Design, EdgeCut, EdgeName
from walewright.glue.model import Chain, GluedSizes, HangingLine, Place
from walewright.record import record, replace
from walewright.solve.joins.bands import places_of, stitches_along
from walewright.trade.edge_names import BAND_ENDS

Garments = Sequence[tuple[SizedPiece, ...]]
"""The pieces of each size."""


@dataclass(frozen=True, slots=True, order=True)
class PartingPlace:
    """Before the place of that number in a band's line, or within it: `share` of it from its left end."""

    place: int
    share: Fraction = Fraction(0)


PartingWay = tuple[PartingPlace, ...]
"""Where a band is parted, from the left needle to the right."""

_MOST_WAYS = 5_000
"""Of parting a band: it would lie along dozens of pieces."""


@record
class LongBand:
    """A band with the lines that it is hung on, its edges by the author's names, and the stitches of each place in each size."""

    design: Design
    band: Band
    lines: tuple[HangingLine, ...]
    garments: Garments
    counts: tuple[tuple[int, ...], ...]

    @property
    def along(self) -> Chain:
        return self.lines[0].along

    @property
    def named(self) -> tuple[tuple[int, ...], ...]:
        """The numbers of the places of each name."""
        ends = list(accumulate((len(own) for own in places_of(self.band, self.lines[0])), initial=0))
        return tuple(tuple(range(a, z)) for a, z in pairwise(ends))

    def left_of(self, at: PartingPlace, size: int) -> int:
        """Stitches of the band left of a parting place."""
        counts = self.counts[size]
        within = round(at.share * counts[at.place]) if at.share else 0
        return sum(counts[: at.place]) + within

    def widths(self, way: PartingWay, size: int) -> tuple[int, ...]:
        """Stitches of each part."""
        begins = (0, *(self.left_of(at, size) for at in way), sum(self.counts[size]))
        return tuple(z - a for a, z in pairwise(begins))

    def widest(self, way: PartingWay) -> int:
        return max(max(self.widths(way, size)) for size in range(len(self.counts)))


def room_of(design: Design, band: Band) -> int:
    """Needles side by side for a band. Where some of the bed are missing it is moved beside them, but for a rib or a chart, which
    is told from the centre mark."""
    half, missing = design.machine.needles // 2, design.machine.missing
    fabric = design.edged_in(band.edging)
    if fabric.rib_every or fabric.chart:
        return 2 * min([half, *(slot if slot >= 0 else -slot - 1 for slot in missing)])
    return max(z - a - 1 for a, z in pairwise(sorted({-half - 1, half, *missing})))


def long_band(design: Design, band: Band, glued: GluedSizes, garments: Garments) -> LongBand:
    """A band that lies on its lines, which are alike."""
    counts = tuple(stitches_along(at, band, glued.in_size(at.number), at.of(garments)) for at in design.each_size)
    return LongBand(design, band, glued.groups[0].lines_of(band.name), garments, counts)


def ways_to_part(line: LongBand) -> Iterator[PartingWay]:
    """Where the band can be parted so that each part has room on the bed in every size: at the best places that will do, in as few
    parts as can be, at the centre back if that is one of them, and the most even first; then in more parts, and at other places."""
    needles = room_of(line.design, line.band)
    centres = _centres(line)
    seams = [PartingPlace(n) for n in range(1, len(line.along)) if _at_seam(line.along, n)]
    names = [PartingPlace(own[0]) for own in line.named[1:]]
    at_seams = sorted({*centres, *seams})
    at_names = sorted({*at_seams, *(names if _once(line) else ())})
    tiers = [at_seams, at_names] if at_names != at_seams else [at_seams]
    tiers += [sorted({*at_names, *inside}) for inside in _insides(line, at_names)]
    for places in tiers:
        if line.widest(tuple(places)) > needles:
            continue
        for cuts in range(1, len(places) + 1):
            if comb(len(places), cuts) > _MOST_WAYS:
                break
            fit = [way for way in combinations(places, cuts) if line.widest(way) <= needles and _distinct(line, way)]
            yield from sorted(fit, key=lambda way: (not set(centres) & set(way), line.widest(way), way))


def _at_seam(along: Chain, number: int) -> bool:
    """Whether a seam makes the two places there meet: they are of two pieces, or of two copies of one."""
    one, other = along[number - 1], along[number]
    return (one.owner, one.copy) != (other.owner, other.copy)


def _once(line: LongBand) -> bool:
    """Whether each edge lies in the line once, and all copies of the band along the same ones: then a stretch of it is told by its
    name."""
    edges = [[(place.owner, place.edge) for place in own.along] for own in line.lines]
    return len(set(line.band.along)) == len(line.band.along) and all(own == edges[0] for own in edges)


def _centres(line: LongBand) -> list[PartingPlace]:
    """The middle of an opening that the line passes on its way from one piece to another: the centre back."""
    found: list[PartingPlace] = []
    for own in line.named[1:-1] if _once(line) else ():
        parts = [split_part(line.along[n].edge)[1] for n in own]
        if parts == ["left", "centre", "right"] or parts == ["right", "centre", "left"]:
            at = PartingPlace(own[1], Fraction(1, 2))
        elif sorted(parts) == ["left", "right"]:
            at = PartingPlace(own[1])
        else:
            continue
        if _at_seam(line.along, own[0]) and _at_seam(line.along, own[-1] + 1) and _can_be_cut(line, at):
            found.append(at)
    return found


# ----------------------------------------------------------------- within an edge


def _insides(line: LongBand, corners: Sequence[PartingPlace]) -> Iterator[list[PartingPlace]]:
    """Places within what is too wide by itself, evenly; moved to either side where buttonholes may lie there."""
    if not _once(line):
        return
    by = line.band.hole_stitches + 3
    for moved in (0, by, -by, 2 * by, -2 * by) if line.band.holes else (0,):
        found: list[PartingPlace] = []
        for stretch in pairwise((PartingPlace(0), *corners, PartingPlace(len(line.along)))):
            found += _within(line, stretch, moved)
        if found:
            yield found


def _within(line: LongBand, stretch: tuple[PartingPlace, PartingPlace], moved: int) -> Iterator[PartingPlace]:
    """Where a stretch of the line is parted so that its parts are even and have room; `moved` so many stitches to the right."""
    needles = max(room_of(line.design, line.band) - _SPARE, 1)
    ends = [(_left(line, stretch[0], i), _left(line, stretch[1], i)) for i in range(len(line.counts))]
    size = max(range(len(ends)), key=lambda i: ends[i][1] - ends[i][0])
    begin, end = ends[size]
    parts = ceil((end - begin) / needles)
    counts = line.counts[size]
    for n in range(1, parts):
        at = Fraction((end - begin) * n, parts) + begin + moved
        place = next((k for k in range(len(counts)) if sum(counts[: k + 1]) >= at), len(counts) - 1)
        share = (at - sum(counts[:place])) / counts[place]
        found = PartingPlace(place, share) if 0 < share < 1 else PartingPlace(place + 1)
        if _can_be_cut(line, found):
            yield found


_SPARE = 4
"""Needles that are left free at the least where a part is as wide as the bed: whole ribs may take some more."""


def _left(line: LongBand, at: PartingPlace, size: int) -> int:
    return sum(line.counts[size]) if at.place >= len(line.along) else line.left_of(at, size)


def _can_be_cut(line: LongBand, at: PartingPlace) -> bool:
    return not at.share or all(_cut(line, at, size) is not None for size in range(len(line.counts)))


def _cut(line: LongBand, at: PartingPlace, size: int) -> int | None:
    """Where an edge is cut in one size: rows above its bottom, or stitches from its left end; None where it cannot be."""
    place = line.along[at.place]
    sized = next((p for p in line.garments[size] if p.name == place.owner), None)
    if sized is None or line.design.piece(place.owner).strip_at(place.edge) is not None:
        # The end of a band or of an edging.
        return None
    of = counted_piece(line.design, sized)
    (whole,) = stretches(of, place.edge)
    share = at.share if line.lines[0].left_ends[at.place] in ("bottom", "left") else 1 - at.share
    if whole.length.stitches:
        stitches = round(share * whole.length.stitches)
        return stitches if 0 < stitches < whole.length.stitches else None
    side, runs, (bottom, top) = edge_rows(of, place.edge)
    moves = {row for run in runs for row, by in run.changes() if abs(by) > 1 or run.across}
    held = held_rows(sized, side) if runs in (sized.left, sized.right) else frozenset()

    low, high = sized.counter(bottom), sized.counter(top)
    wanted = low + 2 * round(share * (high - low) / 2)

    def off(rows: int) -> int:
        return abs(sized.counter(bottom + rows) - wanted)

    def clear(rows: int) -> bool:
        row = bottom + rows
        near = {row - 1, row, row + 1}
        inside = any(r.from_row < row < r.to_row for r in sized.repeats)
        return not near & moves and not near & held and not inside and off(rows) <= _ABOUT

    return min(filter(clear, range(2, top - bottom - 1, 2)), key=off, default=None)


_ABOUT = 12
"""Rows by which a cut may be moved where it cannot be at its even place."""


# ----------------------------------------------------------------- the edges of each part


def cuts_of(line: LongBand, way: PartingWay) -> tuple[EdgeCut, ...]:
    """Where edges are cut for the parts."""
    found: list[EdgeCut] = []
    for number in dict.fromkeys(at.place for at in way if at.share):
        place, within = line.along[number], [at for at in way if at.place == number and at.share]
        sizes = [sorted(_sure(_cut(line, at, size)) for at in within) for size in range(len(line.counts))]
        middle = [at.share for at in within] == [Fraction(1, 2)] and split_part(place.edge)[1] == "centre"
        found.append(EdgeCut(place.owner, place.edge, tuple(map(tuple, sizes)), middle))
    return tuple(found)


def _sure(at: int | None) -> int:
    assert at is not None, "only what can be cut is parted there"
    return at


def alongs_of(line: LongBand, way: PartingWay) -> tuple[tuple[EdgeName, ...], ...]:
    """The edges of each part, from the left needle on: by the author's names where they are whole."""
    begins = (PartingPlace(0), *way)
    ends = (*way, PartingPlace(len(line.along)))
    return tuple(tuple(_names(line, way, begin, end)) for begin, end in zip(begins, ends, strict=True))


def _names(line: LongBand, way: PartingWay, begin: PartingPlace, end: PartingPlace) -> Iterator[EdgeName]:
    for name, own in zip(line.band.along, line.named, strict=True):
        if begin <= PartingPlace(own[0]) and PartingPlace(own[-1] + 1) <= end:
            yield name
            continue
        for number in own:
            if begin.place <= number and PartingPlace(number) < end:
                yield _stretch(line.along[number], line.lines[0].left_ends[number], number, way, begin)


def _stretch(place: Place, left_end: str, number: int, way: PartingWay, begin: PartingPlace) -> EdgeName:
    """The stretch of a place that begins at `begin`, or at its own left end."""
    within = [at for at in way if at.place == number and at.share]
    nth = within.index(begin) + 1 if begin in within else 0
    cut = 0 if not within else nth + 1 if left_end in ("bottom", "left") else len(within) + 1 - nth
    return EdgeName(place.owner, place.edge, cut)


def _distinct(line: LongBand, way: PartingWay) -> bool:
    """Whether each edge is in one part, or whole parts are alike: those are copies of one band."""
    seen = [edge for part in dict.fromkeys(alongs_of(line, way)) for edge in set(part)]
    return len(seen) == len(set(seen))


def whole(line: LongBand, way: PartingWay) -> bool:
    """Whether the parts lie along edges that an author can name."""
    return all(edge in line.band.along for part in alongs_of(line, way) for edge in part)


def with_bands(design: Design, band: Band, parts: Sequence[Band], cuts: Sequence[EdgeCut]) -> Design:
    """The design with the parts in place of the band; what lies along its ends or is joined to them has those of the outermost
    parts."""
    ends = {EdgeName(band.name, end): EdgeName(part.name, end) for end, part in zip(BAND_ENDS, (parts[0], parts[-1]), strict=True)}

    def moved(edges: Sequence[EdgeName]) -> tuple[EdgeName, ...]:
        return tuple(ends.get(edge, edge) for edge in edges)

    def along(other: Band) -> Band:
        return replace(other, along=moved(other.along), hole_along=moved(other.hole_along))

    joins = tuple(replace(join, one=moved(join.one), other=moved(join.other)) for join in design.joins)
    bands = tuple(b for each in design.bands for b in (parts if each.name == band.name else (along(each),)))
    return replace(design, bands=bands, joins=joins, free=moved(design.free), cuts=(*design.cuts, *cuts))
