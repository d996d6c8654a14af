"""The drawing of making up: the pieces opened out to scale, the edges that meet under one number, in the order of work.

A number is a join of the author's or a line of edges that something is hung on; where several edges have one number, as those of
two sleeves, a letter tells which meet. Numbers are told apart by the stroke of their edges as well, never by a colour. A dot lies
at the ends that come together: at those where a seam begins, and at those that hang at the left.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise

from walewright.counted.edge_lines import along
from walewright.counted.outline import Point
from walewright.design.model import Design
from walewright.figures.dimensions import AIR, DROP, RISE, Box, box_round, overlap
from walewright.figures.drawn import DrawnGarment
from walewright.figures.joints import JoinedEdge, Joint, Numbered, joined
from walewright.figures.measures import name_of
from walewright.figures.model import Drawing
from walewright.figures.opened import Disc, DiscKey, edge_of, extent, inside, meet, opened
from walewright.figures.pens import LETTER_MM, Paper, path
from walewright.figures.trims import finish, trim_of
from walewright.guide.model import Guide

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
