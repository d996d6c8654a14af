"""Which pieces are a garment's body, and where they lie as it is worn: the front, in one piece or open in two, and the back.

A body is known by a neck, or by two fronts that are joined to one back, or to the two panels of one.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import field

from walewright.counted.outline import Point
from walewright.design.model import Design, DesignInSize, EdgeJoin
from walewright.figures.banded import laps_at_point, round_opening, seen_bands
from walewright.figures.drawn import DrawnGarment
from walewright.figures.measures import LaidPiece
from walewright.figures.trims import RIBBED, Trim, shade_of
from walewright.record import record

OPEN = 0.8
"""cm between the fronts of a body that has no band there."""


@record
class Placed:
    """A piece of the body, its origin `x` cm right of the garment's middle; `across` -1: turned over, as the inside of a back."""

    piece: LaidPiece
    x: float
    across: int = 1

    @property
    def name(self) -> str:
        return self.piece.name

    def at(self, point: Point) -> Point:
        return point[0] * self.across + self.x, point[1]

    def back(self, point: Point) -> Point:
        """The point of the piece that lies at one of the garment."""
        return (point[0] - self.x) * self.across, point[1]


@record
class Trunk:
    """The front, in one piece or in two, the second of which lies over the first where they lap; the back as it is seen from
    within; `band` cm of band along the neck or between the fronts, `bands` that along each edge, (piece, edge), of two fronts, and
    `behind` that of the back's neck behind two fronts; `trim` and `trims`: how these look."""

    fronts: tuple[Placed, ...]
    backs: tuple[Placed, ...]
    band: float
    bands: Mapping[tuple[str, str], float] = field(default_factory=dict)
    trim: Trim = RIBBED
    trims: Mapping[tuple[str, str], Trim] = field(default_factory=dict)
    behind: tuple[float, Trim] = (0.0, RIBBED)
    lapped: bool = False
    """Whether the band along the neck is in two, the ends of which lie over each other at its point."""

    @property
    def bodies(self) -> frozenset[str]:
        """Names of all its pieces."""
        return frozenset(placed.name for placed in (*self.fronts, *self.backs))


Wall = frozenset[str]
"""Names of the panels that lie side by side in one part of a body."""

_Joined = tuple[tuple[str, str], tuple[str, str]]


def trunk_of(garment: DrawnGarment) -> Trunk | None:
    """The body; None of what has none."""
    design, pieces = garment.design, garment.pieces
    necked = [p for p in pieces if _neck_cm(p) > OPEN]
    found = _fronts(design, pieces)
    if found is not None:
        left, right, behind = found
        edges = {(p.name, run.name) for p in (left, right) for run in (*p.sized.left, *p.sized.right) if run.name}
        banded = dict(_bands(garment, pieces, edges))
        bands = {edge: cm for edge, (cm, _) in banded.items()}
        trims = {edge: trim for edge, (_, trim) in banded.items()}
        depth = max(bands.values(), default=0.0)
        lapped = _lapped(garment.at, (left.name, right.name), bands)
        half = -lapped[1] / 2 if lapped else (depth or OPEN) / 2
        fronts = (
            Placed(left, -half - left.shape.polygon_right),
            Placed(right, half - right.shape.polygon_left),
        )
        order = fronts[::-1] if lapped and lapped[0] == left.name else fronts
        return Trunk(order, behind, depth, bands, trims=trims, behind=_behind(garment, behind))
    if not necked:
        return None

    def drop(p: LaidPiece) -> float:
        return p.shape.height - min(y for _, y in p.shape.neckline)

    body = max(necked, key=drop)
    back = next((p for p in pieces if p.name != body.name and p.shape.neck), None)
    rounds = (round_opening(garment, body.name, o.name) for o in body.piece.openings)
    depth, trim = next((found for found in rounds if found[0]), (0.0, RIBBED))
    at_point = any(laps_at_point(garment, body.name, o.name) for o in body.piece.openings)
    return Trunk((Placed(body, 0.0),), (Placed(back, 0.0, -1),) if back else (), depth, trim=trim, lapped=at_point)


def _neck_cm(piece: LaidPiece) -> float:
    """How wide an opening goes to its top, cm."""
    neck = piece.shape.neckline
    return neck[-1][0] - neck[0][0] if neck else 0.0


# ----------------------------------------------------------------- open in front


def _fronts(design: Design, pieces: tuple[LaidPiece, ...]) -> tuple[LaidPiece, LaidPiece, tuple[Placed, ...]] | None:
    """(the piece that hangs at the left, the one at the right, the back) of a body that is open in front."""
    by_name = {p.name: p for p in pieces}
    walls = _walls(design, by_name)
    sides: dict[Wall, dict[str, str]] = {}
    edges: dict[tuple[Wall, str], set[str]] = {}
    behind: dict[tuple[Wall, str], str] = {}
    for own, other in _every(design):
        wall = walls[other[0]]
        if own[0] in wall:
            continue
        piece = by_name[own[0]]
        edges.setdefault((wall, own[0]), set()).add(own[1])
        side = _side_of(piece, own[1])
        if side and not piece.shape.neck:
            sides.setdefault(wall, {}).setdefault(own[0], side)
            behind.setdefault((wall, own[0]), other[0])
    # Both fronts of a raglan meet the sleeves too: there are two of those, and one back.
    once = {name for name, piece in by_name.items() if piece.sized.copies == 1}
    for wall, found in sides.items():
        if not wall <= once:
            continue
        halves = [by_name[name] for name in found]
        for left in halves:
            for right in halves:
                if found[left.name] != "left" or found[right.name] != "right":
                    continue
                met_alike = edges[wall, left.name] == edges[wall, right.name]
                if _alike(left, right) or (met_alike and _as_long(left, right)):
                    panels = by_name[behind[wall, left.name]], by_name[behind[wall, right.name]]
                    return left, right, tuple(_side_by_side(panels))
    return None


def _side_by_side(panels: tuple[LaidPiece, LaidPiece]) -> Iterator[Placed]:
    """The panels of a back seen from within, the one that meets the left front first; of one piece that piece."""
    left, right = panels
    if left is right:
        yield Placed(left, 0.0, -1)
        return
    yield Placed(left, left.shape.polygon_left, -1)
    yield Placed(right, right.shape.polygon_right, -1)


def _walls(design: Design, by_name: dict[str, LaidPiece]) -> dict[str, Wall]:
    """The wall of each piece: with it those that are like it and joined to it along their side edges."""
    found = {name: {name} for name in by_name}
    for own, other in _every(design):
        one, two = by_name[own[0]], by_name[other[0]]
        if one is not two and _alike(one, two) and _side_of(one, own[1]) and _side_of(two, other[1]):
            both = found[own[0]] | found[other[0]]
            found |= dict.fromkeys(both, both)
    return {name: frozenset(wall) for name, wall in found.items()}


def _every(design: Design) -> Iterator[_Joined]:
    for join in design.joins:
        yield from _single(design, join)


def _single(design: Design, join: EdgeJoin) -> list[_Joined]:
    """(piece, edge) to (piece, edge), both ways round, of a join of one edge to one, ends of bands and edgings left out."""
    sides = [[(e.piece, e.edge) for e in side if design.strip(e.piece, e.edge) is None] for side in (join.one, join.other)]
    if any(len(side) != 1 for side in sides):
        return []
    (one,), (other,) = sides
    return [(one, other), (other, one)]


def _side_of(piece: LaidPiece, edge: str) -> str:
    """The side of a piece that alone has the named edge, or ""."""
    on = [side for side, runs in (("left", piece.sized.left), ("right", piece.sized.right)) if any(r.name == edge for r in runs)]
    return on[0] if len(on) == 1 else ""


AS_LONG = 0.02
"""Of their length: by no more do two fronts of one body differ."""


def _alike(one: LaidPiece, other: LaidPiece) -> bool:
    mirrored = one.piece.mirror_of == other.name or other.piece.mirror_of == one.name
    return mirrored or (one.name != other.name and one.piece.levels == other.piece.levels)


def _as_long(one: LaidPiece, other: LaidPiece) -> bool:
    """Whether they are as long as each other: one of two fronts may have a pocket, and so a level, more than the other."""
    lengths = one.full_height, other.full_height
    return one.name != other.name and max(lengths) - min(lengths) <= AS_LONG * max(lengths)


# ----------------------------------------------------------------- bands and laps


def _bands(
    garment: DrawnGarment, pieces: tuple[LaidPiece, ...], edges: set[tuple[str, str]]
) -> Iterator[tuple[tuple[str, str], tuple[float, Trim]]]:
    """The edges that bands are seen along, with their depth in cm and their look: bands picked up there, or strips of
    their own."""
    for band, cm, trim in seen_bands(garment):
        yield from (((e.piece, e.edge), (cm, trim)) for e in band.along if (e.piece, e.edge) in edges)
    joins = list(_every(garment.design))
    for piece in pieces:
        own = [(mine, other) for mine, other in joins if mine[0] == piece.name]
        if len(own) == 1 and own[0][1] in edges and _side_of(piece, own[0][0][1]):
            fabric = garment.design.fabric(piece.piece.fabric)
            trim = Trim("rib" if fabric.rib_every else "plain", shade_of(garment.design, fabric))
            yield own[0][1], (piece.shape.width, trim)


def _behind(garment: DrawnGarment, backs: tuple[Placed, ...]) -> tuple[float, Trim]:
    """Depth and look of the band round the neck of a back; 0 of one that has none."""
    rounds = (round_opening(garment, placed.name, o.name) for placed in backs for o in placed.piece.piece.openings)
    return next((found for found in rounds if found[0]), (0.0, RIBBED))


def _lapped(at: DesignInSize, fronts: tuple[str, str], bands: Mapping[tuple[str, str], float]) -> tuple[str, float] | None:
    """The front that lies over the other one, and how far in cm, where the fronts themselves lap: their edges, or the bands along
    them by more than these are deep (`bands`), as chained edges do."""
    for lap in at.design.laps:
        sides = [_lapped_edges(at.design, *place) for place in (lap.over, lap.under)]
        pieces = [{piece for piece, _ in side} for side in sides]
        if not lap.width or any(len(side) != 1 for side in pieces) or set.union(*pieces) != set(fronts):
            continue
        banded = sum(max(bands.get(edge, 0.0) for edge in side) for side in sides)
        if at.of(lap.width) > banded:
            return pieces[0].pop(), at.of(lap.width) - banded
    return None


def _lapped_edges(design: Design, owner: str, edge: str) -> list[tuple[str, str]]:
    """The edges, (piece, edge), that lap: one that is named, or those that a band lies along."""
    band = design.band(owner)
    if band is None:
        return [(owner, edge)] if edge else []
    return [(along.piece, along.edge) for along in band.along]
