"""The pieces of a garment opened out: laid flat with the side up that is worn inside, next to what they are joined to.

A piece is turned so that an edge of it lies along the edge that it meets, by right angles: all of them lie square, and none takes
the room of its corners. It is moved away until it lies on nothing. What finds no such place, as a thumb or a pocket's lining, lies
beneath the others. Parts that are alike, as two socks are, lie there once.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence

from walewright.counted.bands import rim_cm
from walewright.counted.edge_lines import WHOLE, DrawnEdge, edge_line, edging_foot
from walewright.counted.outline import Point
from walewright.design.model import DesignInSize
from walewright.figures.drawn import DrawnGarment
from walewright.figures.measures import LaidPiece
from walewright.figures.pens import turned
from walewright.figures.shapes import meet, middle
from walewright.glue.model import EndAt, Glued, Place, Seam, bare
from walewright.record import record, replace

PUSHES = 24
"""Places tried, each half a gap further off, before a piece is laid beneath the others."""

DiscKey = tuple[str, int]
"""(piece or band, number of its copy)."""


@record
class Disc:
    """A copy of a piece, or the strip of a band, laid flat: turned by `turn` degrees about its origin and moved by `shift` cm, y
    upwards. `corners` is its outline, `edges` are the lines of its edges by their names and their stretches, `foot` is where an
    edging along the start begins, all as it lies before that."""

    key: DiscKey
    piece: LaidPiece | None
    corners: DrawnEdge
    edges: Mapping[tuple[str, int], DrawnEdge]
    foot: DrawnEdge = ()
    holes: tuple[DrawnEdge, ...] = ()
    """Openings and slots within the piece."""
    turn: float = 0.0
    shift: Point = (0.0, 0.0)

    def at(self, line: Iterable[Point]) -> list[Point]:
        """Points of the disc, in cm of the layout."""
        return [(x + self.shift[0], y + self.shift[1]) for x, y in turned(line, (0.0, 0.0), self.turn)]

    @property
    def lying(self) -> list[Point]:
        """Its outline in the layout."""
        return self.at(self.corners)


def edge_of(discs: Mapping[DiscKey, Disc], place: Place, begins: EndAt) -> list[Point]:
    """The edge in the layout, walked from the end at which it begins; empty where nothing of it is drawn."""
    disc = discs.get((place.owner, place.copy))
    line = disc.edges.get((place.edge, place.cut), ()) if disc is not None else ()
    if disc is None or not line:
        return []
    return disc.at(line if begins in ("bottom", "left") else line[::-1])


def opened(garment: DrawnGarment, gap: float, slant: float = 0.8) -> dict[DiscKey, Disc]:
    """The discs laid out about `gap` cm apart, without those of parts that are alike, on a paper `slant` times as high as it is
    wide."""
    design, glued = garment.design, garment.glued
    waiting = {disc.key: disc for disc in _discs(garment)}
    placed: dict[DiscKey, Disc] = {}
    # A piece is laid beside the piece that it is sewn to; strips in the same seam come with it or after it.
    whole = [glued.seams[task.number] for task in glued.order if task.kind == "seam"]
    seams = [*(bare(design, seam) for seam in whole), *whole]
    for part in _parts(glued, waiting):
        own = {key: waiting[key] for key in part}
        laid = _laid(own, seams, gap, slant)
        _beneath(placed, laid, gap, slant)
    return placed


# ----------------------------------------------------------------- what there is


def _discs(garment: DrawnGarment) -> Iterator[Disc]:
    glued = garment.glued
    used = list(_used(glued))
    strips = {place.owner for seam in glued.seams for place in (*seam.one, *seam.other)}
    strips |= {place.owner for ends in glued.ends for place in (ends.one, ends.other)}
    worn = dict(glued.worn)
    for piece in garment.pieces:
        of, shape = piece.of, piece.shape
        across = -1 if worn.get(piece.name) == "purl" else 1
        lower = tuple(edging_foot(of, shape)) if of.edging_cm else ()
        corners = (*lower, shape.foot[-1], *_above(shape.polygon, shape.foot), shape.foot[0]) if lower else shape.polygon
        for copy in range(1, of.sized.copies + 1):
            names = {(p.edge, p.cut) for p in used if (p.owner, p.copy) == (piece.name, copy)} | {("start", 0)}
            edges = {name: _seen(edge_line(of, shape, name[0], _share(garment.at, piece, name)), across) for name in sorted(names)}
            holes = (*(gap.edge for gap in shape.gaps), *(edge_line(of, shape, slot.name) for slot in of.sized.slots if slot.name))
            foot = _seen(shape.foot, across) if lower else ()
            seen = tuple(_seen(hole, across) for hole in holes)
            yield Disc((piece.name, copy), piece, _seen(corners, across), edges, foot, seen)
    for band in garment.design.bands:
        sized = garment.counts.band(band.name)
        if band.name in strips and sized.stitches:
            long = rim_cm(garment.design, sized)
            yield from (_strip((band.name, n + 1), long, garment.band_cm(band.name)) for n in range(sized.copies))


def _above(polygon: DrawnEdge, foot: DrawnEdge) -> DrawnEdge:
    """The outline's corners that do not lie along the start."""
    return tuple(corner for corner in polygon if corner not in foot)


def _seen(line: Iterable[Point], across: int) -> DrawnEdge:
    return tuple((x * across, y) for x, y in line)


def _used(glued: Glued) -> Iterator[Place]:
    """The edges that something is done with."""
    for seam in glued.seams:
        yield from (*seam.one, *seam.other)
    for line in glued.lines:
        yield from line.along
    for ends in glued.ends:
        yield from (ends.one, ends.other)


def _share(at: DesignInSize, piece: LaidPiece, name: tuple[str, int]) -> tuple[float, float]:
    """Which part of an edge that bands are parted within a stretch of it is."""
    edge, number = name
    cut = next((c for c in at.design.cuts if (c.piece, c.edge) == (piece.name, edge)), None)
    if cut is None or not number:
        return WHOLE
    of, shape = piece.of, piece.shape
    line = edge_line(of, shape, edge)
    level = abs(line[-1][1] - line[0][1]) < 1e-6
    whole = (line[-1][0] - line[0][0]) / of.stitch_cm(0) if level else (line[-1][1] - line[0][1]) / of.row_cm(1)
    shares = (0.0, *(min(rows / max(whole, 1e-6), 1.0) for rows in at.of(cut.at)), 1.0)
    return shares[number - 1], shares[number]


def _strip(key: DiscKey, long: float, deep: float) -> Disc:
    corners = ((0.0, 0.0), (long, 0.0), (long, deep), (0.0, deep))
    edges: dict[tuple[str, int], DrawnEdge] = {
        ("start", 0): (corners[0], corners[1]),
        ("rim", 0): (corners[3], corners[2]),
        ("first end", 0): (corners[0], corners[3]),
        ("last end", 0): (corners[1], corners[2]),
    }
    return Disc(key, None, corners, edges)


def _parts(glued: Glued, discs: Mapping[DiscKey, Disc]) -> Iterator[list[DiscKey]]:
    """What hangs together, each part once: of two socks the first."""
    group = {key: {key} for key in discs}
    for places in (
        *((*seam.one, *seam.other) for seam in glued.seams),
        *((*line.along, Place(line.owner, "start", line.copy, line.copies)) for line in glued.lines),
    ):
        met = [group[key] for key in dict.fromkeys((p.owner, p.copy) for p in places) if key in group]
        for other in met[1:]:
            if other is not met[0]:
                met[0] |= other
                group |= dict.fromkeys(other, met[0])
    told: set[frozenset[str]] = set()
    for key in discs:
        owners = frozenset(owner for owner, _ in group[key])
        if key == min(group[key], key=list(discs).index) and owners not in told:
            told.add(owners)
            yield [k for k in discs if k in group[key]]


# ----------------------------------------------------------------- laying


def _laid(discs: Mapping[DiscKey, Disc], seams: Sequence[Seam], gap: float, slant: float) -> dict[DiscKey, Disc]:
    """One part: the piece with most neighbours first, and what it is joined to about it, in the order of the joins. What is joined
    to one piece alone, as the band of a front is, goes where that goes."""
    near = _neighbours(discs, seams)
    first = max(discs, key=lambda key: len(near[key]))
    hosts = _hosts(near, first)
    placed = {first: discs[first]}
    tried: set[int] = set()
    while True:
        for number, seam in enumerate(seams):
            if number in tried or not (found := _beside(discs, placed, seam)) or found[0].key in hosts:
                continue
            tried.add(number)
            own = _with_bands(discs, seams, hosts, found[0], gap)
            placed |= _fitted(placed, own, *found, gap) or _fitted(placed, {found[0].key: found[0]}, *found, gap)
            break
        else:
            break
    for key, disc in discs.items():
        if key not in placed and hosts.get(key) not in discs.keys() - placed.keys():
            _beneath(placed, _with_bands(discs, seams, hosts, disc, gap), gap, slant)
    for key, disc in discs.items():
        if key not in placed:
            _beneath(placed, {key: disc}, gap, slant)
    return placed


def _neighbours(discs: Mapping[DiscKey, Disc], seams: Sequence[Seam]) -> dict[DiscKey, set[DiscKey]]:
    """What each is sewn to."""
    sides = [{(p.owner, p.copy) for p in (*s.one, *s.other)} for s in seams]
    return {key: set().union(*(side for side in sides if key in side)) - {key} for key in discs}


def _hosts(near: Mapping[DiscKey, set[DiscKey]], first: DiscKey) -> dict[DiscKey, DiscKey]:
    """Of what is sewn to one other piece alone, which is sewn to more: which that is, unless everything lies about it."""
    hosts: dict[DiscKey, DiscKey] = {}
    for key, others in near.items():
        drawn = others & near.keys()
        if len(drawn) == 1 and key != first and first not in drawn:
            (host,) = drawn
            hosts |= {key: host} if len(near[host] & near.keys()) > 1 else {}
    return hosts


def _with_bands(
    discs: Mapping[DiscKey, Disc], seams: Sequence[Seam], hosts: Mapping[DiscKey, DiscKey], disc: Disc, gap: float
) -> dict[DiscKey, Disc]:
    """A disc, and beside it what is sewn to it alone."""
    made = {disc.key: disc}
    own = {key: discs[key] for key, host in hosts.items() if host == disc.key}
    for seam in seams:
        found = _beside(own, made, seam)
        if found:
            made |= _fitted(made, {found[0].key: found[0]}, *found, gap)
    return made


_Neighbour = tuple[Disc, tuple[Point, Point], tuple[Point, Point], Point]
"""A disc, the chord of its edge, the chord in the layout that it shall lie along, and the middle of what lies there."""


def _beside(discs: Mapping[DiscKey, Disc], placed: Mapping[DiscKey, Disc], seam: Seam) -> _Neighbour | None:
    """What a seam says of a disc that is not placed yet."""
    for own, begins, other, other_begins in (
        (seam.one, seam.one_begins, seam.other, seam.other_begins),
        (seam.other, seam.other_begins, seam.one, seam.one_begins),
    ):
        keys = {(p.owner, p.copy) for p in own}
        if len(keys) != 1 or not keys <= discs.keys() - placed.keys():
            continue
        (key,) = keys
        ours = _walked(discs, own, begins)
        theirs = _walked(placed, other, other_begins)
        if len(ours) > 1 and len(theirs) > 1:
            bodies = [placed[k] for k in dict.fromkeys((p.owner, p.copy) for p in other) if k in placed]
            middles = [middle(body.lying) for body in bodies]
            about = (sum(x for x, _ in middles) / len(middles), sum(y for _, y in middles) / len(middles))
            return discs[key], (ours[0], ours[-1]), (theirs[0], theirs[-1]), about
    return None


def _walked(discs: Mapping[DiscKey, Disc], chain: Sequence[Place], begins: Sequence[EndAt]) -> list[Point]:
    return [point for place, begin in zip(chain, begins, strict=True) for point in edge_of(discs, place, begin)]


def _fitted(
    placed: Mapping[DiscKey, Disc],
    group: Mapping[DiscKey, Disc],
    disc: Disc,
    own: tuple[Point, Point],
    other: tuple[Point, Point],
    about: Point,
    gap: float,
) -> dict[DiscKey, Disc]:
    """The disc turned and moved beside the chord, with the group that lies about it; nothing where it would lie on something
    wherever it is tried."""
    turn = round(math.degrees(_angle(other) - _angle(own)) / 90) * 90.0
    centre = ((other[0][0] + other[1][0]) / 2, (other[0][1] + other[1][1]) / 2)
    out = _outwards(other, centre, about)
    ((x, y),) = turned([((own[0][0] + own[1][0]) / 2, (own[0][1] + own[1][1]) / 2)], (0.0, 0.0), turn)
    round_it = {key: _turned(one, turn) for key, one in group.items()}
    for push in range(PUSHES):
        far = gap * (1 + push / 2)
        moved = _moved(round_it, (centre[0] + out[0] * far - x, centre[1] + out[1] * far - y))
        if len(group) > 1:
            moved = _moved(moved, _off_the_middle(moved, disc.key, about, gap))
        if not any(meet(one.lying, there.lying, gap * 0.6) for one in moved.values() for there in placed.values()):
            return moved
    return {}


def _turned(disc: Disc, turn: float) -> Disc:
    ((x, y),) = turned([disc.shift], (0.0, 0.0), turn)
    return replace(disc, turn=disc.turn + turn, shift=(x, y))


def _off_the_middle(group: Mapping[DiscKey, Disc], key: DiscKey, about: Point, gap: float) -> Point:
    """By how much a group is moved to one side, so that it stays on the side of a middle on which its piece lies: beyond it is room
    for the piece opposite with its own bands."""
    left, low, right, high = extent(group.values())
    own_left, own_low, own_right, own_high = extent([group[key]])
    # Each of two bands that lie side by side there has its name between them.
    (x, y), off = about, gap
    if own_right <= x < right + off:
        return x - off - right, 0.0
    if left - off < x <= own_left:
        return x + off - left, 0.0
    if own_high <= y < high + off:
        return 0.0, y - off - high
    if low - off < y <= own_low:
        return 0.0, y + off - low
    return 0.0, 0.0


def _outwards(chord: tuple[Point, Point], centre: Point, about: Point) -> Point:
    """Square to the chord, away from what lies there."""
    angle = _angle(chord) + math.pi / 2
    x, y = math.cos(angle), math.sin(angle)
    way = 1 if x * (centre[0] - about[0]) + y * (centre[1] - about[1]) >= 0 else -1
    return x * way, y * way


def _angle(chord: tuple[Point, Point]) -> float:
    return math.atan2(chord[1][1] - chord[0][1], chord[1][0] - chord[0][0])


def _beneath(placed: dict[DiscKey, Disc], more: Mapping[DiscKey, Disc], gap: float, slant: float) -> None:
    """Lays what hangs together into an empty corner, else into the room left beside or beneath what is placed, as close as it gets,
    whichever keeps the whole closer to the paper's shape."""
    if not placed:
        placed.update(more)
        return
    corner = _in_a_corner(placed, more, gap)
    if corner is not None:
        placed.update(_moved(more, corner))
        return
    left, low, right, high = extent(placed.values())
    own_left, own_low, own_right, own_high = extent(more.values())
    wide, tall = own_right - own_left, own_high - own_low
    beside = max((right - left + gap + wide) * slant, max(high - low, tall))
    under = max(max(right - left, wide) * slant, high - low + gap + tall)
    by = (right + gap - own_left, low - own_low) if beside <= under else (left - own_left, low - gap - own_high)
    back = (-gap / 2, 0.0) if beside <= under else (0.0, gap / 2)
    while _clear(placed, more, nearer := (by[0] + back[0], by[1] + back[1]), gap):
        by = nearer
    placed.update(_moved(more, by))


def _clear(placed: Mapping[DiscKey, Disc], more: Mapping[DiscKey, Disc], by: Point, gap: float) -> bool:
    """Whether what is moved so keeps that far from all that is placed, and goes by none of it."""
    there = [disc.lying for disc in _moved(more, by).values()]
    _, low, right, _ = extent(placed.values())
    beyond = any(px > right or py < low for lying in there for px, py in lying)
    return beyond and not any(meet(_about(lying, gap), disc.lying) for lying in there for disc in placed.values())


def _in_a_corner(placed: Mapping[DiscKey, Disc], more: Mapping[DiscKey, Disc], gap: float) -> Point | None:
    """By how much what hangs together is moved into a corner of what is placed that is empty, such as that between a back and a
    sleeve: the paper grows by nothing. None where each has something in it."""
    left, low, right, high = extent(placed.values())
    own_left, own_low, own_right, own_high = extent(more.values())
    for x in (right - own_right, left - own_left):
        for y in (low - own_low, high - own_high):
            there = [disc.lying for disc in _moved(more, (x, y)).values()]
            fits = own_right - own_left <= right - left and own_high - own_low <= high - low
            if fits and not any(meet(_about(lying, gap), disc.lying) for lying in there for disc in placed.values()):
                return x, y
    return None


def _about(lying: Sequence[Point], gap: float) -> list[Point]:
    """The box round a shape, that much wider on each side: a long strip keeps off by its sides too."""
    xs, ys = [x for x, _ in lying], [y for _, y in lying]
    x0, y0, x1, y1 = min(xs) - gap, min(ys) - gap, max(xs) + gap, max(ys) + gap
    return [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]


def _moved(discs: Mapping[DiscKey, Disc], by: Point) -> dict[DiscKey, Disc]:
    return {key: replace(disc, shift=(disc.shift[0] + by[0], disc.shift[1] + by[1])) for key, disc in discs.items()}


def extent(discs: Iterable[Disc]) -> tuple[float, float, float, float]:
    """(left, bottom, right, top) in cm of the layout."""
    points = [point for disc in discs for point in disc.lying]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs), min(ys), max(xs), max(ys)
