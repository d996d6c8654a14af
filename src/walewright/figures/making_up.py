"""The drawing of making up: the pieces opened out to scale, the edges that meet under one number, in the order of work.

A number is a join of the author's or a line of edges that something is hung on; where several edges have one number, as those of
two sleeves, a letter tells which meet. Numbers are told apart by the stroke of their edges as well, never by a colour. A dot lies
at the ends that come together: at those where a seam begins, and at those that hang at the left.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import groupby, pairwise
from typing import Literal

from walewright.counted.edge_lines import along
from walewright.counted.outline import Point
from walewright.design.model import Design
from walewright.figures.dimensions import AIR, DROP, RISE, Box, box_round, overlap
from walewright.figures.drawn import DrawnGarment
from walewright.figures.measures import name_of
from walewright.figures.model import Drawing
from walewright.figures.opened import Disc, DiscKey, edge_of, extent, inside, meet, opened
from walewright.figures.pens import LETTER_MM, Paper, path
from walewright.figures.trims import finish, trim_of
from walewright.glue.model import EndAt, Glued, Place, Task, runs_along
from walewright.guide.model import Guide, edge_said
from walewright.report.said import Fact, Said, said
from walewright.trade.edge_names import is_top, part_of_edge
from walewright.trade.joins import JoinWay

MOST = (140.0, 70.0)
"""mm that a drawing is wide and high at most. It is printed at eight tenths of that: the smallest size at which its numbers are
read with ease, 6.5 pt."""

LOW = 50.0
"""How high it is where it has no more than `FEW` numbers, whose list beside it is short."""

FEW = 4

ALONE = 60.0
"""How wide and how high one piece is at most."""

ROUND_IT = 10.0
"""mm that numbers and names take beyond the pieces, about."""

UPRIGHT = 1.15
"""By how much larger pieces have to become by lying on their sides."""

GAP = 7.0
"""Between pieces, mm."""

ROUND = 2.1
"""Half the height of a number's badge, mm."""

INWARDS = 3.4
"""From an edge to the middle of its badge, mm."""

RINGS, AROUND = 60, 24
"""Rings of places about an edge, each half a badge further off, and the places on each."""

EDGE = 1.2
"""Round the drawing, mm."""

RIB = 1.3
"""Between rib lines, mm."""

PENS = ("joint", "joint-broken", "joint-dotted", "joint-mixed")
"""The strokes of edges, a number after the other."""


@dataclass(frozen=True, slots=True)
class JoinedEdge:
    """An edge of a join, walked from the end with the dot."""

    place: Place
    begins: EndAt
    dotted: bool = True


@dataclass(frozen=True, slots=True)
class Joint:
    """Edges that meet: `label` is "4" or "4a"; `sides` are what is put together, each a chain of edges."""

    number: int
    label: str
    sides: tuple[tuple[JoinedEdge, ...], ...]


@dataclass(frozen=True, slots=True)
class Numbered:
    """A number and what is done there, in words of the guide; `origin` is the path of the statement that says so. `sewn`: edges are
    put together there, and nothing is hung on them."""

    number: int
    what: Said
    origin: str
    sewn: bool = True


@dataclass(frozen=True, slots=True)
class JoinsDrawn:
    """The drawing, and what its numbers stand for, in the order of work."""

    drawing: Drawing
    numbers: tuple[Numbered, ...]


def making_up(guide: Guide, garment: DrawnGarment) -> JoinsDrawn | None:
    """The pieces opened out; None where nothing is joined."""
    joints, numbers = joined(garment.design, garment.glued)
    if not joints:
        return None
    most = MOST[0], LOW if len(numbers) <= FEW else MOST[1]
    discs, scale = _to_scale(garment, most)
    while True:
        sheet = _laid_out(garment.design, joints, discs, scale)
        left, top, right, foot = sheet.box()
        over = max((right - left) / most[0], (foot - top) / most[1])
        if over <= 1:
            return JoinsDrawn(_finished(guide, garment, sheet, numbers), numbers)
        # What stands round the pieces keeps its size.
        scale *= 0.98 / over


def _laid_out(design: Design, joints: Sequence[Joint], discs: Mapping[DiscKey, Disc], scale: float) -> _OpenedPaper:
    sheet = _OpenedPaper(Paper(), discs, scale, extent(discs.values()))
    for disc in discs.values():
        _cloth(sheet, design, disc)
    marked = [(joint, edge) for joint in joints for side in joint.sides for edge in side]
    lines = [(joint, edge, sheet.line(edge)) for joint, edge in marked]
    for joint, _, line in lines:
        if len(line) > 1:
            sheet.paper.draw(PENS[(joint.number - 1) % len(PENS)], path(line))
    for disc in discs.values():
        _name(sheet, disc)
    for joint, edge, line in lines:
        # An edge whose rows are all held lies in one point.
        if line:
            if edge.dotted:
                sheet.paper.draw("arrow", _circle(line[0], 0.6))
            _badge(sheet, joint.label, line, discs[edge.place.owner, edge.place.copy])
    return sheet


def joined(design: Design, glued: Glued) -> tuple[tuple[Joint, ...], tuple[Numbered, ...]]:
    """The joints in the order of work. Seams of one join that follow each other have one number; so have the copies of a line."""
    joints: list[Joint] = []
    numbers: list[Numbered] = []
    named: list[Said] = []
    doing = [task for task in glued.order if task.kind in ("seam", "band", "piece", "ends")]
    for key, tasks in groupby(doing, key=lambda task: _alike(design, glued, task)):
        found = [sides for task in tasks for sides in _sides(glued, task)]
        if not found:
            continue
        number = len(numbers) + 1
        numbers.append(Numbered(number, _told(design, glued, key, found), _origin(design, key), key[0] in ("seam", "ends")))
        named.append(_edges_told(design, key, found))
        for at, sides in enumerate(found):
            # Within one copy no other edge can be meant.
            told_apart = len(found) > 1 and len({(e.place.owner, e.place.copy) for side in sides for e in side}) > 1
            joints.append(Joint(number, f"{number}{_letter(at) if told_apart else ''}", sides))
    # What several say by their pieces alone says which edges it means.
    often = Counter(one.what for one in numbers)
    told = (replace(one, what=edges) if often[one.what] > 1 else one for one, edges in zip(numbers, named, strict=True))
    return tuple(joints), tuple(told)


_Sides = tuple[tuple[JoinedEdge, ...], ...]


def _alike(design: Design, glued: Glued, task: Task) -> tuple[str, str, int]:
    if task.kind == "seam":
        return task.kind, "", glued.seams[task.number].join
    if task.kind == "ends":
        return task.kind, glued.ends[task.number].origin(design).path, -1
    return task.kind, task.name, -1


def _letter(at: int) -> str:
    return chr(ord("a") + at % 26)


def _sides(glued: Glued, task: Task) -> Iterator[_Sides]:
    """What a task puts together: once a seam, once a copy of what is hung on edges."""
    if task.kind == "seam":
        seam = glued.seams[task.number]
        meets = bool(seam.other)
        chains = [(seam.one, seam.one_begins), (seam.other, seam.other_begins)]
        yield tuple(
            tuple(JoinedEdge(place, begin, meets and at == 0) for at, (place, begin) in enumerate(zip(*chain, strict=True)))
            for chain in chains
            if chain[0]
        )
    elif task.kind == "ends":
        ends = glued.ends[task.number]
        yield (JoinedEdge(ends.one, "bottom"),), (JoinedEdge(ends.other, "bottom"),)
    else:
        for line in glued.lines_of(task.name):
            hung = tuple(JoinedEdge(place, end) for place, end in zip(line.along, line.left_ends, strict=True))
            yield hung, (JoinedEdge(Place(line.owner, "start", line.copy, line.copies), "left"),)


def _origin(design: Design, key: tuple[str, str, int]) -> str:
    kind, name, join = key
    if kind == "seam":
        return design.joins[join].origin.path
    if kind == "ends":
        return name
    if kind == "piece":
        return design.piece(name).origin.path
    return next(band.origin.path for band in design.bands if band.name == name)


def _told(design: Design, glued: Glued, key: tuple[str, str, int], found: Sequence[_Sides]) -> Said:
    kind, name, join = key
    if kind == "seam":
        way = _way(design, join, found)
        one, other = ([name_of(n) for n in dict.fromkeys(e.place.owner for e in _of_side(found, at))] for at in (0, -1))
        if len(found[0]) < 2:
            return said("joined/drawn-up", piece=tuple(one))
        if one == other:
            copies = {e.place.copy for side in found[0] for e in side}
            return said("joined/itself" if len(copies) == 1 else "joined/next", one=tuple(one), way=way)
        return said("joined/seam", one=tuple(one), other=tuple(other), way=way)
    band = design.band(name)
    if kind == "ends":
        owners = dict.fromkeys(e.place.owner for sides in found for side in sides for e in side)
        whole = dict.fromkeys(of.part_of or of.name if (of := design.band(owner)) is not None else owner for owner in owners)
        return said("joined/ends", piece=tuple(name_of(n) for n in whole))
    runs = runs_along(design, glued, band) if band is not None else None
    return said("joined/hung", piece=name_of(name), runs=_named(runs) if runs is not None else "")


def _of_side(found: Sequence[_Sides], at: int) -> list[JoinedEdge]:
    """The edges of the first sides of all that has one number, or of their last ones."""
    return [edge for sides in found for edge in sides[at]]


def _way(design: Design, join: int, found: Sequence[_Sides]) -> JoinWay | Literal["open"]:
    """How the edges are put together: open loops are sewn by no seam."""
    way = design.joins[join].way
    places = [
        edge.place for sides in found for side in sides for edge in side if design.strip(edge.place.owner, edge.place.edge) is None
    ]
    all_open = all(is_top(p.edge) and design.band(p.owner) is None and design.piece(p.owner).end_way == "waste" for p in places)
    return "open" if way == "sewn" and all_open else way


def _edges_told(design: Design, key: tuple[str, str, int], found: Sequence[_Sides]) -> Said:
    """What is joined, by its edges; without ends of strips, which are sewn on with them."""
    one, other = (_by_edge(design, _of_side(found, at)) for at in (0, -1))
    way: JoinWay | Literal["open"] = _way(design, key[2], found) if key[0] == "seam" else "sewn"
    if len(found[0]) < 2:
        return said("joined/drawn-up", piece=one)
    return said("joined/edges", one=one, other=other, way=way)


def _by_edge(design: Design, edges: Sequence[JoinedEdge]) -> tuple[Said, ...]:
    """ "back side" where both sides are meant, else "back side left"."""
    places = [e.place for e in edges if design.strip(e.place.owner, e.place.edge) is None] or [e.place for e in edges]
    parts: dict[tuple[str, str], dict[str, None]] = {}
    for place in places:
        parts.setdefault((place.owner, part_of_edge(place.edge).name), {})[place.edge] = None
    told = ((owner, edge_said(next(iter(of)) if len(of) == 1 else name)) for (owner, name), of in parts.items())
    return tuple(said("joined/edge", piece=name_of(owner), edge=edge) for owner, edge in told)


def _named(runs: Said) -> Said:
    """Where a part of a band runs, with names as a reader sees them, and the trade's own edges in the reader's language."""
    return Said(runs.key, tuple((key, _seen(key, fact)) for key, fact in runs.facts))


def _seen(key: str, fact: Fact) -> Fact:
    if isinstance(fact, Said):
        return _named(fact)
    return edge_said(str(fact)) if key == "edge" else name_of(str(fact))


# ----------------------------------------------------------------- paper


@dataclass(slots=True)
class _OpenedPaper:
    """`ground`: left, bottom, right and top of the layout in cm. `taken`: where badges and names stand, mm."""

    paper: Paper
    discs: Mapping[DiscKey, Disc]
    scale: float
    ground: tuple[float, float, float, float]
    taken: list[Box] = field(default_factory=list)

    def put(self, points: Iterable[Point]) -> list[Point]:
        left, _, _, high = self.ground
        return [((x - left) * self.scale, (high - y) * self.scale) for x, y in points]

    def line(self, edge: JoinedEdge) -> list[Point]:
        return self.put(edge_of(self.discs, edge.place, edge.begins))

    def free(self, box: Box) -> bool:
        return not any(overlap(box, other) for other in self.taken)

    def box(self) -> Box:
        """Round everything."""
        left, low, right, high = self.ground
        boxes = [*self.taken, (0.0, 0.0, (right - left) * self.scale, (high - low) * self.scale)]
        x0, y0 = min(b[0] for b in boxes) - EDGE, min(b[1] for b in boxes) - EDGE
        return x0, y0, max(b[2] for b in boxes) + EDGE, max(b[3] for b in boxes) + EDGE


def _to_scale(garment: DrawnGarment, most: Point) -> tuple[dict[DiscKey, Disc], float]:
    """The layout and mm of paper a cm: as the pieces hang, or all of them on their sides where they become larger so."""
    upright = _scaled(garment, most)
    aside = _scaled(garment, most[::-1])
    if aside[1] < upright[1] * UPRIGHT:
        return upright
    return {
        key: replace(disc, turn=disc.turn + 90, shift=(-disc.shift[1], disc.shift[0])) for key, disc in aside[0].items()
    }, aside[1]


def _scaled(garment: DrawnGarment, most: Point) -> tuple[dict[DiscKey, Disc], float]:
    """The gaps are so many mm of paper, so that the scale is found in a few rounds."""
    gap, wide, tall = 4.0, most[0] - ROUND_IT, most[1] - ROUND_IT
    for _ in range(3):
        discs = opened(garment, gap, tall / wide)
        left, low, right, high = extent(discs.values())
        if len(discs) == 1:
            wide, tall = min(wide, ALONE), min(tall, ALONE)
        scale = min(wide / max(right - left, 1.0), tall / max(high - low, 1.0))
        gap = GAP / scale
    return discs, scale


def _cloth(sheet: _OpenedPaper, design: Design, disc: Disc) -> None:
    corners = sheet.put(disc.lying)
    sheet.paper.draw("blank", path(corners, closed=True))
    sheet.paper.draw("mark", path(corners, closed=True))
    if disc.foot:
        upper, lower = sheet.put(disc.at(disc.foot)), sheet.put(disc.at(disc.edges["start", 0]))
        trim = replace(trim_of(design, disc.piece.piece.start_edging if disc.piece else None), shade="")
        pairs = zip(pairwise(upper), pairwise(lower), strict=True)
        finish(sheet.paper, trim, upper, lower, (rib for (a, b), (c, d) in pairs for rib in _ribs((a, b), (c, d))))
    for hole in disc.holes:
        line = sheet.put(disc.at(hole))
        sheet.paper.draw("mark", path(line))
        sheet.taken.append(box_round(line, AIR))


def _ribs(upper: tuple[Point, Point], lower: tuple[Point, Point]) -> Iterator[str]:
    count = round(math.dist(*upper) / RIB)
    for n in range(1, count):
        yield path([along(upper, n / count)[0], along(lower, n / count)[0]])


def _name(sheet: _OpenedPaper, disc: Disc) -> None:
    """The piece's name on it, or beside it where it is too small; nowhere, where it would lie on something else."""
    name = name_of(disc.key[0])
    half = len(name) * LETTER_MM * 0.85 / 2
    others = [sheet.put(other.lying) for other in sheet.discs.values() if other.key != disc.key]
    for x, y, turn in _name_places(sheet.put(disc.lying), half):
        box = (x - RISE, y - half, x + DROP, y + half) if turn else (x - half, y - RISE, x + half, y + DROP)
        box = (box[0] - AIR, box[1] - AIR, box[2] + AIR, box[3] + AIR)
        x0, y0, x1, y1 = box
        if sheet.free(box) and not any(meet([(x0, y0), (x1, y0), (x1, y1), (x0, y1)], other) for other in others):
            sheet.taken.append(box)
            sheet.paper.letter(x, y, name, turn=turn, kind="word")
            return


def _name_places(corners: Sequence[Point], half: float) -> Iterator[tuple[float, float, int]]:
    """x, y and the turn of a name of that half width: on the piece, beneath, above, and along its sides."""
    left, top, right, foot = box_round(corners)
    x, y = (left + right) / 2, (top + foot) / 2
    if 2 * half < right - left - 2 and foot - top > RISE + DROP:
        yield from ((x, y + d, 0) for d in (0.0, 4.0, -4.0, 8.0, -8.0))
    if right - left > RISE + DROP + 2 and 2 * half < foot - top - 2:
        yield x + 1, y, -90
    yield from ((x, foot + RISE + 0.8, 0), (x, top - DROP - 0.8, 0), (left - DROP - 0.8, y, -90), (right + RISE + 0.8, y, -90))


def _badge(sheet: _OpenedPaper, label: str, line: Sequence[Point], disc: Disc) -> None:
    """The number in a ring, inside the edge where there is room, else outside it, or as near as it finds a place that is free, with
    a line to its edge."""
    half = max(ROUND, (len(label) * 1.9 + 1.2) / 2)
    others = [sheet.put(other.lying) for other in sheet.discs.values() if other.key != disc.key]
    near = [place for place in _badge_places(line, sheet.put(disc.lying), half) if sheet.free(_badge_box(place[0], half))]
    clear = (place for place in near if not any(inside(place[0], other) for other in others))
    (x, y), edge = next(clear, None) or (near or [_further(sheet, line, half)])[0]
    sheet.taken.append(_badge_box((x, y), half))
    if math.hypot(edge[0] - x, edge[1] - y) > 1.7 * INWARDS:
        sheet.paper.draw("guide", path([edge, (x, y)]))
    flat, turn = half - ROUND, f"a{ROUND} {ROUND} 0 0 1 0"
    ring = f"M{x - flat:.2f} {y - ROUND:.2f}h{2 * flat:.2f}{turn} {2 * ROUND}h{-2 * flat:.2f}{turn} {-2 * ROUND}Z"
    sheet.paper.draw("badge", ring)
    sheet.paper.letter(x, y + 1.0, label)


def _further(sheet: _OpenedPaper, line: Sequence[Point], half: float) -> tuple[Point, Point]:
    """The nearest place all round the middle of an edge that is free: among so many there is always one."""
    (x, y), _ = along(line, 0.5)
    angles = [2 * math.pi * step / AROUND for step in range(AROUND)]
    rings = (ring * ROUND for ring in range(3, RINGS))
    places = ((x + far * math.cos(angle), y + far * math.sin(angle)) for far in rings for angle in angles)
    return next(place for place in places if sheet.free(_badge_box(place, half))), (x, y)


def _badge_places(line: Sequence[Point], shape: Sequence[Point], half: float) -> Iterator[tuple[Point, Point]]:
    """Where a badge may stand, the best place first, each with the point of the edge that it stands at."""
    for way, far in ((1, INWARDS), (-1, INWARDS), (1, INWARDS * 2), (-1, INWARDS * 2), (1, INWARDS * 3), (-1, INWARDS * 3)):
        for share in (0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92) if far == INWARDS else (0.5, 0.2, 0.8):
            (x, y), (dx, dy) = along(line, share)
            # Square to the edge, to the side where the piece is.
            inner = 1 if inside((x - dy * 0.05, y + dx * 0.05), shape) else -1
            off = (far + (half - ROUND) * abs(dy)) * inner * way
            yield (x - dy * off, y + dx * off), (x, y)


def _badge_box(at: Point, half: float) -> Box:
    return at[0] - half - 0.3, at[1] - ROUND - 0.3, at[0] + half + 0.3, at[1] + ROUND + 0.3


def _circle(at: Point, r: float) -> str:
    return f"M{at[0] - r:.2f} {at[1]:.2f}a{r} {r} 0 1 0 {2 * r} 0a{r} {r} 0 1 0 {-2 * r} 0Z"


def _finished(guide: Guide, garment: DrawnGarment, sheet: _OpenedPaper, numbers: Sequence[Numbered]) -> Drawing:
    x0, y0, x1, y1 = sheet.box()
    told = tuple(guide.say("joined/numbered", number=n.number, what=guide.said(n.what)) for n in numbers)
    title = guide.say("drawing/making-up", title=garment.design.title, size=name_of(garment.title_size), told="; ".join(told))
    return sheet.paper.finished(title, x1 - x0, y1 - y0, x0, y0)
