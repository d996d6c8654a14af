"""A picture of a fabric, drawn from the loops that the bed made.

Every loop is one curve of yarn from its feet, where it was made, to its head, where the loop stands that is drawn through it:
so a moved loop leans, a held one is tall, and a hole stays open without any rule for lace, tuck or cables. Between a loop and
the one drawn through it stands which lies in front: seen from the knit side of a stitch its legs, from the purl side its head
and feet. The fabric is shown from its right side; from the knit side left and right are those of the bed exchanged.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Iterator

from walewright.design.model import Design
from walewright.figures import yarns
from walewright.figures.cables import cables
from walewright.figures.measures import name_of
from walewright.figures.model import Drawing
from walewright.figures.pens import Paper, path
from walewright.guide.model import Guide
from walewright.proof.model import FabricPicture, PictureLoop
from walewright.record import record, replace

WIDEST, STITCH = 78.0, 4.4
"""mm: of a picture, and of a stitch at most."""

THICK = 0.22
"""Of a strand, as a share of the stitch's width; its outline is `RIM` mm on both sides."""

RIM = 0.14

DEEP = 0.35
"""How much darker the yarn is that is seen in the depth of a cable."""

BEHIND = 0.22
"""How much darker the stitches are that cross behind others."""

SIDE = 0.4
"""Of the line along those in front, mm."""

LONG = 0.9
"""How much higher a row of long stitches is."""

DrawnStrand = tuple[str, str]
"""(path data, yarn)."""


@record
class _Cloth:
    picture: FabricPicture
    mirrored: bool
    w: float
    base: tuple[float, ...]
    """Heights of the rows' feet in mm, upwards, one more than there are rows."""
    child: dict[tuple[int, int], PictureLoop]
    """(column, row) of a loop: the one drawn through it."""
    aside: dict[tuple[int, int], float]
    """(column, row) of a loop of a cable: the columns that it is drawn to the right."""

    def place(self, loop: PictureLoop) -> float:
        """x of the loop's middle at its foot."""
        return self.x(loop.column + self.aside.get((loop.column, loop.row), 0.0))

    def x(self, column: float) -> float:
        at = self.picture.columns - 1 - column if self.mirrored else column
        return (at + 0.5) * self.w

    def y(self, row: int) -> float:
        """Downwards from the picture's upper side."""
        at = self.base[row] if row < len(self.base) else self.base[-1]
        return self.base[-1] - at

    def rise(self, row: int) -> float:
        at = min(max(row, 0), self.picture.rows - 1)
        return self.base[at + 1] - self.base[at]

    def top(self, loop: PictureLoop) -> tuple[float, float, int]:
        """x and y of a loop's head, and the row there: at the foot of the loop drawn through it, else in the next row."""
        through = self.child.get((loop.column, loop.row))
        if through is None or through.row <= loop.row:
            return self.place(loop), self.y(loop.row + 1), loop.row + 1
        return self.place(through), self.y(through.row), through.row

    def knit_seen(self, loop: PictureLoop) -> bool:
        """Whether the stitch shows its legs to the beholder."""
        return (loop.face == 0) == self.mirrored


def picture(guide: Guide, design: Design, shown: FabricPicture, right_side: str) -> Drawing:
    """The picture of `shown`, seen from its `right_side` ("knit" or "purl")."""
    design = _lit(design, shown)
    crossed, aside = cables(shown, right_side == "knit")
    cloth = _cloth(design, shown, right_side == "knit", aside)
    paper = Paper()
    if crossed:
        _depth(design, cloth, paper)
    for cable in crossed:
        _group(_shaded(design), cloth, paper, cable.behind)
    loops = [loop for loop in shown.loops if loop.kind != "float" and (loop.column, loop.row) not in aside]
    layers = _layers(cloth, [loop for loop in loops if not _leans(cloth, loop)])
    leaning = [loop for loop in loops if _leans(cloth, loop)]
    width = THICK * cloth.w
    behind_feet = [strand for loop in leaning if cloth.knit_seen(loop) for strand in _feet(cloth, loop)]
    _draw(design, paper, [*_bars(cloth), *layers[0], *behind_feet], width)
    for loop in leaning:
        _draw(design, paper, [_head(cloth, loop)] if _head_behind(cloth, loop) else [], width)
    _draw(design, paper, layers[1], width)
    for loop in leaning:
        own = [*_lower(cloth, loop), *_upper(cloth, loop)]
        if not _head_behind(cloth, loop):
            own.append(_head(cloth, loop))
        if not cloth.knit_seen(loop):
            own.extend(_feet(cloth, loop))
        _draw(design, paper, own, width)
    # What is drawn through the leaning ones lies over them again.
    _draw(design, paper, [s for loop in leaning for s in _drawn_through(cloth, loop)], width)
    for cable in crossed:
        _group(design, cloth, paper, cable.front, solid=True)
        _sides(cloth, paper, cable.front)
    _holes(cloth, paper)
    _floats(design, cloth, paper)
    side = "knit" if right_side == "knit" else "purl"
    title = guide.say("drawing/fabric", fabric=name_of(shown.fabric), columns=shown.columns, rows=shown.rows, side=side)
    edge = 0.45 * cloth.w
    return paper.finished(title, shown.columns * cloth.w + 2 * edge, cloth.base[-1] + 2 * edge, -edge, -edge)


def _lit(design: Design, shown: FabricPicture) -> Design:
    """Of one yarn the picture is drawn in line and light, whatever its colour: only what lies in front of what is to be seen."""
    if len({loop.yarn for loop in shown.loops} | {yarn for *_, yarn in shown.floats}) > 1:
        return design
    return replace(design, yarns=tuple(replace(y, colour=yarns.lighter(yarns.colour(design, y.name))) for y in design.yarns))


def _shaded(design: Design) -> Design:
    """The same yarns as they are seen behind others."""
    return replace(design, yarns=tuple(replace(y, colour=yarns.darker(yarns.colour(design, y.name), BEHIND)) for y in design.yarns))


def _holes(cloth: _Cloth, paper: Paper) -> None:
    """The openings of a lace: below each loop that was made on an empty needle, where no held loop and no ladder lies."""
    loops = cloth.picture.loops
    ladders = {(loop.column, loop.row) for loop in loops if loop.kind == "float"}
    held = {(loop.column, row) for loop in loops if loop.kind != "float" for row in range(loop.row + 1, cloth.top(loop)[2])}
    made = []
    for loop in loops:
        below = (loop.column, loop.row - 1)
        if loop.kind == "float" or loop.through or loop.row == 0 or below in ladders or (loop.column, loop.row) in held:
            continue
        rise = cloth.rise(loop.row - 1)
        x, y, across, up = cloth.place(loop), cloth.y(loop.row) + 0.12 * rise, 0.3 * cloth.w, 0.4 * rise
        half = f"a{across:.2f} {up:.2f} 0 1 0"
        made.append(f"M{x - across:.2f} {y:.2f}{half} {2 * across:.2f} 0{half} {-2 * across:.2f} 0Z")
    paper.draw("fill", *made, colour="ink")


def _cloth(design: Design, shown: FabricPicture, mirrored: bool, aside: dict[tuple[int, int], float]) -> _Cloth:
    fabric = next((f for f in design.fabrics if f.name == shown.fabric), design.fabrics[0] if design.fabrics else None)
    ratio = fabric.stitches_per_cm / fabric.rows_per_cm if fabric is not None else 0.75
    w = min(STITCH, WIDEST / (shown.columns + 1))
    base = [0.0]
    for row in range(shown.rows):
        here = [loop for loop in shown.loops if loop.row == row]
        long = sum(loop.kind == "long" for loop in here) / len(here) if here else 0.0
        base.append(base[-1] + w * min(max(ratio, 0.6), 1.1) * (1 + LONG * long))
    child = {at: loop for loop in shown.loops for at in loop.through}
    return _Cloth(shown, mirrored, w, tuple(base), child, aside)


# ----------------------------------------------------------------- cables


def _depth(design: Design, cloth: _Cloth, paper: Paper) -> None:
    """The shade behind the whole picture: at the waist of a cable it is fabric drawn deep, no hole."""
    edge = 0.45 * cloth.w
    x, y = cloth.picture.columns * cloth.w, cloth.base[-1]
    shade = yarns.darker(yarns.colour(design, cloth.picture.loops[0].yarn), DEEP)
    paper.draw("fill", path([(-edge / 2, 0), (x + edge / 2, 0), (x + edge / 2, y), (-edge / 2, y)], closed=True), colour=shade)


def _group(design: Design, cloth: _Cloth, paper: Paper, group: frozenset[tuple[int, int]], solid: bool = False) -> None:
    """The stitches that cross as one, over what is drawn already: `solid` hides it."""
    loops = [loop for loop in cloth.picture.loops if (loop.column, loop.row) in group and loop.kind != "float"]
    if solid:
        for loop in loops:
            # What is seen between the legs of a stitch: the group itself further back, not what it crosses.
            shade = yarns.darker(yarns.colour(design, loop.yarn), DEEP)
            paper.draw("fill", _ground(cloth, loop), colour=shade)
    behind, front = _layers(cloth, loops)
    _draw(design, paper, behind, THICK * cloth.w)
    _draw(design, paper, front, THICK * cloth.w)


def _sides(cloth: _Cloth, paper: Paper, group: frozenset[tuple[int, int]]) -> None:
    """A line up both sides of the stitches that cross in front."""
    rows: dict[int, list[PictureLoop]] = {}
    for loop in cloth.picture.loops:
        if (loop.column, loop.row) in group and loop.kind != "float":
            rows.setdefault(loop.row, []).append(loop)
    lines: list[list[tuple[float, float]]] = [[], []]
    for row in sorted(rows):
        xs = [cloth.place(loop) for loop in rows[row]]
        lines[0].append((min(xs) - 0.48 * cloth.w, cloth.y(row)))
        lines[1].append((max(xs) + 0.48 * cloth.w, cloth.y(row)))
    paper.draw("strand", *(path(line) for line in lines if len(line) > 1), colour="ink", width=SIDE)


def _ground(cloth: _Cloth, loop: PictureLoop) -> str:
    """The area of a stitch, from its foot to its head."""
    x0, y0, half = cloth.place(loop), cloth.y(loop.row), 0.46 * cloth.w
    x1, y1, _ = cloth.top(loop)
    return path([(x0 - half, y0), (x1 - half, y1), (x1 + half, y1), (x0 + half, y0)], closed=True)


def _leans(cloth: _Cloth, loop: PictureLoop) -> bool:
    through = cloth.child.get((loop.column, loop.row))
    if (loop.column, loop.row) in cloth.aside:
        return False
    return through is not None and through.column != loop.column


def _head_behind(cloth: _Cloth, loop: PictureLoop) -> bool:
    through = cloth.child.get((loop.column, loop.row))
    return through is None or cloth.knit_seen(through)


def _layers(cloth: _Cloth, loops: Iterable[PictureLoop]) -> tuple[list[DrawnStrand], list[DrawnStrand]]:
    """What lies behind and what in front, of loops that stand upright."""
    behind: list[DrawnStrand] = []
    front: list[DrawnStrand] = []
    for loop in loops:
        legs, rounds = (front, behind) if cloth.knit_seen(loop) else (behind, front)
        legs.extend(_lower(cloth, loop))
        rounds.extend(_feet(cloth, loop))
        above, head = (front, behind) if _head_behind(cloth, loop) else (behind, front)
        above.extend(_upper(cloth, loop))
        head.append(_head(cloth, loop))
    return behind, front


# ----------------------------------------------------------------- the parts of a loop

FOOT, WAIST, SHOULDER = 0.14, 0.25, 0.32
"""Half the loop's width at its foot, in the middle and at its head, as shares of the stitch's."""


def _corners(cloth: _Cloth, loop: PictureLoop, sign: int) -> tuple[tuple[float, float], tuple[float, float], tuple[float, float]]:
    """Foot, middle and shoulder of one leg."""
    w, h = cloth.w, cloth.rise(loop.row)
    x0, y0 = cloth.place(loop), cloth.y(loop.row)
    x1, y1, _ = cloth.top(loop)
    foot = (x0 + sign * FOOT * w, y0 + 0.04 * h)
    shoulder = (x1 + sign * SHOULDER * w, y1 + 0.1 * h)
    return foot, ((x0 + x1) / 2 + sign * WAIST * w, (y0 + y1) / 2 + 0.05 * h), shoulder


def _lower(cloth: _Cloth, loop: PictureLoop) -> Iterator[DrawnStrand]:
    for sign in (-1, 1):
        foot, middle, _ = _corners(cloth, loop, sign)
        lean = (cloth.top(loop)[0] - cloth.place(loop)) / 4
        rise = foot[1] - middle[1]
        yield (
            _curve(foot, (foot[0] + sign * 0.02, foot[1] - rise * 0.4), (middle[0] - lean, middle[1] + rise * 0.3), middle),
            loop.yarn,
        )


def _upper(cloth: _Cloth, loop: PictureLoop) -> Iterator[DrawnStrand]:
    for sign in (-1, 1):
        _, middle, shoulder = _corners(cloth, loop, sign)
        lean = (cloth.top(loop)[0] - cloth.place(loop)) / 4
        rise = middle[1] - shoulder[1]
        yield (
            _curve(middle, (middle[0] + lean, middle[1] - rise * 0.3), (shoulder[0], shoulder[1] + rise * 0.4), shoulder),
            loop.yarn,
        )


def _head(cloth: _Cloth, loop: PictureLoop) -> DrawnStrand:
    (x0, y), (x1, _) = _corners(cloth, loop, -1)[2], _corners(cloth, loop, 1)[2]
    arch = y - 0.62 * cloth.rise(cloth.top(loop)[2])
    return _curve((x0, y + 0.03), (x0 - 0.02 * cloth.w, arch), (x1 + 0.02 * cloth.w, arch), (x1, y + 0.03)), loop.yarn


def _feet(cloth: _Cloth, loop: PictureLoop) -> Iterator[DrawnStrand]:
    """Half of the arc to each neighbour."""
    w, h = cloth.w, cloth.rise(loop.row)
    for sign in (-1, 1):
        (x, y), _, _ = _corners(cloth, loop, sign)
        end = cloth.place(loop) + sign * 0.5 * w
        low = y + 0.36 * h
        yield (
            _curve((x, y - 0.03), (x - sign * 0.03 * w, y + 0.2 * h), (x + sign * 0.12 * w, low), (end + sign * 0.02, low)),
            loop.yarn,
        )


def _drawn_through(cloth: _Cloth, loop: PictureLoop) -> Iterator[DrawnStrand]:
    """The legs of the loop that is drawn through a leaning one, where they lie in front of its head."""
    through = cloth.child.get((loop.column, loop.row))
    if through is not None and cloth.knit_seen(through):
        yield from _lower(cloth, through)


def _bars(cloth: _Cloth) -> Iterator[DrawnStrand]:
    """Yarn that lies past a needle: straight across, behind everything."""
    for loop in cloth.picture.loops:
        if loop.kind == "float":
            x, y = cloth.x(loop.column), cloth.y(loop.row) - 0.3 * cloth.rise(loop.row)
            yield f"M{x - cloth.w / 2:.2f} {y:.2f}L{x + cloth.w / 2:.2f} {y:.2f}", loop.yarn


def _curve(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float], d: tuple[float, float]) -> str:
    (x0, y0), *rest = a, b, c, d
    return f"M{x0:.2f} {y0:.2f}C" + " ".join(f"{x:.2f} {y:.2f}" for x, y in rest)


# ----------------------------------------------------------------- yarn on paper


def _draw(design: Design, paper: Paper, strands: list[DrawnStrand], width: float) -> None:
    """Strands of one depth: their outlines first, then the yarns, a path each."""
    by_yarn: dict[str, list[str]] = {}
    for data, yarn in strands:
        by_yarn.setdefault(yarn, []).append(data)
    for yarn, drawn in by_yarn.items():
        paper.draw("strand", *drawn, colour=yarns.darker(yarns.colour(design, yarn), 0.62), width=width + 2 * RIM)
    for yarn, drawn in by_yarn.items():
        paper.draw("strand", *drawn, colour=yarns.colour(design, yarn), width=width)


def _floats(design: Design, cloth: _Cloth, paper: Paper) -> None:
    """Floats over what hides them: broken lines from the knit side, whole strands from the purl side."""
    covered = {
        (loop.column, row)
        for loop in cloth.picture.loops
        if loop.kind != "float"
        for row in range(loop.row, max(cloth.top(loop)[2], loop.row + 1))
    }
    for row, first, last, yarn in cloth.picture.floats:
        columns = [c for c in range(first, last + 1) if (c, row) in covered]
        shade = yarns.colour(design, yarn)
        y = cloth.y(row) - 0.3 * cloth.rise(row)
        for _, run in itertools.groupby(enumerate(columns), key=lambda item: item[1] - item[0]):
            found = [c for _, c in run]
            x0, x1 = sorted((cloth.x(found[0]), cloth.x(found[-1])))
            data = f"M{x0 - cloth.w / 2:.2f} {y:.2f}L{x1 + cloth.w / 2:.2f} {y:.2f}"
            if cloth.mirrored:
                paper.draw("dashes", data, colour=yarns.darker(shade, 0.35), width=0.35)
            else:
                _draw(design, paper, [(data, yarn)], THICK * cloth.w * 0.8)
