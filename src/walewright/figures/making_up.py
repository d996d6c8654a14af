"""The drawing of making up: the pieces opened out to scale, the edges that meet under one number, in the order of work.

A number is a join of the author's or a line of edges that something is hung on; where several edges have one number, as those of
two sleeves, a letter tells which meet. Numbers are told apart by the stroke of their edges as well, never by a colour. A dot lies
at the ends that come together: at those where a seam begins, and at those that hang at the left.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from walewright.counted.edge_lines import along
from walewright.counted.outline import Point
from walewright.design.model import Design
from walewright.figures.badges import Badges, Labelled
from walewright.figures.dimensions import AIR, DROP, LINE, RISE, Box, box_round, overlap
from walewright.figures.drawn import DrawnGarment
from walewright.figures.joints import JoinedEdge, Joint, Numbered, joined
from walewright.figures.measures import name_of
from walewright.figures.model import Drawing
from walewright.figures.opened import Disc, DiscKey, edge_of, extent, opened
from walewright.figures.pens import Paper, path
from walewright.figures.shapes import inside, meet
from walewright.figures.trims import finish, trim_of
from walewright.guide.model import Guide
from walewright.record import record, replace

BESIDE, ACROSS = (140.0, 76.0), (222.0, 62.0)
"""mm that a drawing is wide and high at most: beside the list of its numbers, and across the page with the list beneath it. It is
printed at eight tenths of that: the smallest size at which its numbers are read with ease, 6.5 pt."""

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

TOUCHING = 0.6
"""Between the end of an edge and the beginning of the next, mm, for them to be one line."""

APART = 1.5
"""Between a name that stands beside its piece and any other piece, mm."""

NAME_MM = 1.45
"""Width of a character of a name, mm, with a little air."""

EDGE = 1.2
"""Round the drawing, mm."""

RIB = 1.3
"""Between rib lines, mm."""

PENS = ("joint", "joint-broken", "joint-dotted", "joint-mixed")
"""The strokes of edges, a number after the other."""


@record
class JoinsDrawn:
    """The drawing, and what its numbers stand for, in the order of work. `meeting`: a number stands at edges that meet; `alone`:
    one stands at one edge only, where something is hung that is not drawn, or which is closed upon itself."""

    drawing: Drawing
    numbers: tuple[Numbered, ...]
    meeting: bool = True
    alone: bool = False


def making_up(guide: Guide, garment: DrawnGarment, room: Point = BESIDE) -> JoinsDrawn | None:
    """The pieces opened out, at most so wide and so high; None where nothing is joined."""
    joints, numbers = joined(garment.design, garment.glued)
    if not joints:
        return None
    most = room[0], LOW if len(numbers) <= FEW else room[1]
    discs, scale = _to_scale(garment, most)
    while True:
        sheet = _laid_out(garment.design, joints, discs, scale)
        left, top, right, foot = sheet.box()
        over = max((right - left) / most[0], (foot - top) / most[1])
        if over <= 1:
            numbers = tuple(_as_drawn(number, joints, discs) for number in numbers)
            sides = {sum(any(sheet.line(edge) for edge in side) for side in joint.sides) for joint in joints}
            drawing = _finished(guide, garment, sheet, numbers)
            return JoinsDrawn(drawing, numbers, meeting=max(sides) > 1, alone=1 in sides)
        # What stands round the pieces keeps its size.
        scale *= 0.98 / over


def _as_drawn(number: Numbered, joints: Sequence[Joint], discs: Mapping[DiscKey, Disc]) -> Numbered:
    """The number with those of its labels that stand on the drawing: of copies that are alike one is drawn."""
    drawn = [
        joint.label
        for joint in joints
        if joint.number == number.number and any(edge_of(discs, edge.place, edge.begins) for side in joint.sides for edge in side)
    ]
    return replace(number, labels=tuple(dict.fromkeys(drawn)) or number.labels)


def _laid_out(design: Design, joints: Sequence[Joint], discs: Mapping[DiscKey, Disc], scale: float) -> _OpenedPaper:
    sheet = _OpenedPaper(Paper(), discs, scale, extent(discs.values()))
    for disc in discs.values():
        _cloth(sheet, design, disc)
    lines = [(at, edge, sheet.line(edge)) for at, joint in enumerate(joints) for side in joint.sides for edge in side]
    for at, _, line in lines:
        if len(line) > 1:
            sheet.paper.draw(PENS[(joints[at].number - 1) % len(PENS)], path(line))
    unnamed = [disc for disc in discs.values() if not _name_on(sheet, disc)]
    shapes = {disc.key: sheet.put(disc.lying) for disc in discs.values()}
    found: list[Labelled] = []
    for at, edge, line in _chains(lines):
        if edge.dotted:
            sheet.paper.draw("arrow", _circle(line[0], 0.6))
        found.append(Labelled(at, joints[at].label, line, shapes[edge.place.owner, edge.place.copy]))
    badges = Badges(sheet.paper, list(shapes.values()), found, sheet.taken)
    badges.put()
    for disc in unnamed:
        _name_by(sheet, disc)
    return sheet


_EdgeLine = tuple[int, JoinedEdge, list[Point]]
"""Which joint an edge is of, and where it lies."""


def _chains(lines: Sequence[_EdgeLine]) -> Iterator[_EdgeLine]:
    """Edges of one piece that follow each other of one joint as one line, with the first of them: they have the number once."""
    made: _EdgeLine | None = None
    # An edge whose rows are all held lies in one point; one that is not drawn has no such point.
    for at, edge, line in (one for one in lines if one[2]):
        if made is not None and made[0] == at and _goes_on(made, edge, line):
            made = at, made[1], [*made[2], *line]
            continue
        if made is not None:
            yield made
        made = at, edge, line
    if made is not None:
        yield made


def _goes_on(made: _EdgeLine, edge: JoinedEdge, line: Sequence[Point]) -> bool:
    _, first, before = made
    same = (first.place.owner, first.place.copy) == (edge.place.owner, edge.place.copy)
    return same and math.dist(before[-1], line[0]) < TOUCHING


# ----------------------------------------------------------------- paper


@dataclass(slots=True)
class _OpenedPaper:
    """`ground`: left, bottom, right and top of the layout in cm. `taken`: where badges and names stand, mm."""

    paper: Paper
    discs: Mapping[DiscKey, Disc]
    scale: float
    ground: tuple[float, float, float, float]
    taken: list[Box] = field(default_factory=list)
    ribbed: dict[DiscKey, list[Point]] = field(default_factory=dict)
    """Of each piece with an edging along its start: the outline of that."""

    def letter(self, x: float, y: float, turn: int, lines: Sequence[str], box: Box) -> None:
        """A name, and that its box is taken."""
        self.taken.append(box)
        for number, line in enumerate(lines):
            at = (x + number * LINE, y) if turn else (x, y + number * LINE)
            self.paper.letter(*at, line, turn=turn, kind="word")

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
        sheet.ribbed[disc.key] = [*upper, *reversed(lower)]
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


def _name_on(sheet: _OpenedPaper, disc: Disc) -> bool:
    """The piece's name on it, on one line or on two, off its rib; False, and nothing, where there is no room."""
    name, shape = name_of(disc.key[0]), sheet.put(disc.lying)
    words = tuple(name.split(" "))
    for lines in ((name,), words) if len(words) == 2 else ((name,),):
        wide, more = max(map(len, lines)) * NAME_MM / 2, (len(lines) - 1) * LINE
        for x, y, turn in _places_on(shape, wide, more):
            box = _name_box(x, y, turn, wide, more)
            rib, corners = sheet.ribbed.get(disc.key), _corners(box)
            off_rib = rib is None or not meet(corners, rib)
            if off_rib and sheet.free(box) and all(inside(corner, shape) for corner in corners):
                sheet.letter(x, y, turn, lines, box)
                return True
    return False


def _name_by(sheet: _OpenedPaper, disc: Disc) -> None:
    """The piece's name beside it; nowhere, where it would lie on something else."""
    name, shape = name_of(disc.key[0]), sheet.put(disc.lying)
    shapes = [sheet.put(other.lying) for other in sheet.discs.values()]
    half = len(name) * NAME_MM / 2
    for x, y, turn in _places_by(shape, half):
        box = _name_box(x, y, turn, half, 0.0)
        # Nearer to its own piece than to any other.
        about = _corners((box[0] - APART, box[1] - APART, box[2] + APART, box[3] + APART))
        others = any(meet(about, other) for other in shapes if other != shape)
        if sheet.free(box) and not others and not meet(_corners(box), shape):
            sheet.letter(x, y, turn, (name,), box)
            return


def _name_box(x: float, y: float, turn: int, half: float, more: float) -> Box:
    if turn:
        return x - RISE - AIR, y - half - AIR, x + DROP + more + AIR, y + half + AIR
    return x - half - AIR, y - RISE - AIR, x + half + AIR, y + DROP + more + AIR


def _corners(box: Box) -> list[Point]:
    x0, y0, x1, y1 = box
    return [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]


def _places_on(corners: Sequence[Point], half: float, more: float = 0.0) -> Iterator[tuple[float, float, int]]:
    """x, y and the turn of a name of that half width, and so much higher than a line: on the piece, from its middle outwards."""
    left, top, right, foot = box_round(corners)
    x, y = (left + right) / 2, (top + foot) / 2
    steps = sorted((n / 8 for n in range(-7, 8)), key=abs)
    on_it = [(x + across * (x - left), y + down * (y - top)) for down in steps for across in steps]
    on_it.sort(key=lambda at: math.dist(at, (x, y)))
    if 2 * half < right - left - 2:
        yield from ((px, py + 1 - more / 2, 0) for px, py in on_it)
    if 2 * half < foot - top - 2:
        yield from ((px + 1 - more / 2, py, -90) for px, py in on_it)


def _places_by(corners: Sequence[Point], half: float) -> Iterator[tuple[float, float, int]]:
    """The same beneath the piece, above it, and along its sides."""
    left, top, right, foot = box_round(corners)
    x, y = (left + right) / 2, (top + foot) / 2
    for off in (0.9, 5.5, 9.0):
        level = [(px, py, 0) for px in (x, right - half, left + half) for py in (foot + RISE + off, top - DROP - off)]
        upright = [(px, py, -90) for py in (y, foot - half, top + half) for px in (left - DROP - off, right + RISE + off)]
        yield from (*level, *upright) if right - left > foot - top else (*level[:2], *upright, *level[2:])


def _circle(at: Point, r: float) -> str:
    return f"M{at[0] - r:.2f} {at[1]:.2f}a{r} {r} 0 1 0 {2 * r} 0a{r} {r} 0 1 0 {-2 * r} 0Z"


def _finished(guide: Guide, garment: DrawnGarment, sheet: _OpenedPaper, numbers: Sequence[Numbered]) -> Drawing:
    x0, y0, x1, y1 = sheet.box()
    told = tuple(guide.say("joined/numbered", number=n.shown, what=guide.said(n.what)) for n in numbers)
    title = guide.say("drawing/making-up", title=garment.design.title, size=name_of(garment.title_size), told="; ".join(told))
    return sheet.paper.finished(title, x1 - x0, y1 - y0, x0, y0)
