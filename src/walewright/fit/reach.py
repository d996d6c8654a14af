"""Reach: from the middle of the back neck over the shoulder, the arm slightly bent, to the end of the sleeve.

- Over the shoulder (dropped, square, set in): half from shoulder end to shoulder end, then the whole sleeve with its edgings.
- From the neck (raglan, saddle): the sleeve comes to the neck; half the back neck, then the whole sleeve.
- Half the span: the sleeves are one with the body, which is wider there than at the body's girth.

Which of the two is the back is told by its neck: it is the less deep.
"""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Design, Measurement
from walewright.fit.cloth import Cloth, to_top
from walewright.fit.girths import SPAN_MORE, Tube, body
from walewright.fit.loops import Walker
from walewright.fit.model import Reach, Ring
from walewright.fit.rings import edges_below, is_sleeve
from walewright.glue.model import Glued, Place
from walewright.trade.edge_names import is_top
from walewright.trade.worn import ReachWay

ROW = "centre_back_neck_to_wrist"
LONG_SLEEVES = "arm_length_to_underarm"
"""A source that names this row means sleeves down to the wrist."""


def reaches(design: Design, walkers: Sequence[Walker], tubes: Sequence[Tube], rings: Sequence[Ring]) -> tuple[Reach, ...]:
    """The reach of every sleeve that is alike in all sizes told."""
    glued = walkers[0].glued
    neck = next((r for r in rings if r.role == "neck"), None)
    own = body(design, tubes)
    if own is None:
        return ()
    at_it = {p.owner for p in edges_below(design, glued, neck.edges)} if neck else own.owners
    # A garment that opens in front has no ring of its neck alone; the back has the gap.
    back = _back(design, walkers[0], sorted(own.owners & at_it), gap_only=neck is None)
    if back is None:
        return ()
    at_neck = {p.owner for r in rings for p in edges_below(design, glued, r.edges) if is_top(p.edge) or r is neck}
    found: list[Reach] = []
    for piece in design.pieces:
        if piece.name in own.owners or not is_sleeve(walkers[0], tubes, piece.name):
            continue
        way: ReachWay = "from the neck" if piece.name in at_neck and _top_free(glued, piece.name) else "over the shoulder"
        values = tuple(_way(w.cloth, w.glued, back, piece.name, way) for w in walkers)
        if all(v > 0 for v in values):
            found.append(_held(design, piece.name, way, values))
    if not found:
        found += _spans(design, walkers, own, back)
    alike = {(r.way, r.values): r for r in reversed(found)}
    return tuple(reversed(alike.values()))


def _held(design: Design, sleeve: str, way: ReachWay, values: tuple[float, ...]) -> Reach:
    row = body_reach(design)
    return Reach(sleeve, way, values, row.values if row else (), row.name if row else "")


def body_reach(design: Design) -> Measurement | None:
    """The body's reach, where the source names it, or the length of an arm from a table that has it."""
    named = next((m for m in design.measurements if m.body == ROW), None)
    long = any(m.body == LONG_SLEEVES for m in design.measurements)
    return named or (next((m for m in design.bodies if m.body == ROW), None) if long else None)


def _back(design: Design, walker: Walker, owners: Sequence[str], gap_only: bool) -> str | None:
    """The piece of the body with the least deep neck."""
    found: list[tuple[float, int, str]] = []
    for number, owner in enumerate(dict.fromkeys(owners)):
        piece = design.piece(owner) if walker.cloth.piece(owner) is not None else None
        if piece is None or not piece.symmetric:
            continue
        sized = walker.cloth.sized(owner)
        gap = to_top(piece)
        if gap is None and gap_only:
            continue
        deep = next((sized.rows - o.row for o in sized.openings if gap is not None and o.name == gap.name), 0)
        found.append((deep, number, owner))
    return min(found)[2] if found else None


def _top_free(glued: Glued, piece: str) -> bool:
    """Whether the last row of a piece lies at an opening, or under a band, and not in a seam."""
    seamed = {(p.owner, p.edge) for s in glued.seams for p in (*s.one, *s.other)}
    begun = any(line.owner == piece for line in glued.lines)
    return not begun and not any(owner == piece and is_top(edge) for owner, edge in seamed)


def _way(cloth: Cloth, glued: Glued, back: str, sleeve: str, way: ReachWay) -> float:
    return (_shoulders(cloth, back) if way == "over the shoulder" else _neck_width(cloth, back)) / 2 + whole(cloth, glued, sleeve)


def whole(cloth: Cloth, glued: Glued, sleeve: str) -> float:
    """A sleeve along its middle, with the edgings and bands at its ends."""
    bands = {
        line.owner
        for line in glued.lines
        for p in line.along
        if p.owner == sleeve and p.edge == "start" and cloth.band(line.owner) is not None
    }
    begun = any(line.owner == sleeve for line in glued.lines)
    if begun:
        bands |= {line.owner for line in glued.lines for p in line.along if p.owner == sleeve and p.edge == "end"}
    return cloth.height(sleeve, 0.5) + cloth.start_adds(sleeve) + cloth.end_adds(sleeve) + sum(cloth.adds(b) for b in bands)


def _shoulders(cloth: Cloth, piece: str) -> float:
    """From shoulder end to shoulder end: the width where the shoulders begin to slope, else at the top."""
    sized = cloth.sized(piece)
    slopes = [w.from_row for w in sized.wedges if w.to_row >= sized.rows]
    row = min([sized.rows, *slopes])
    return cloth.extent(piece, row)


def _neck_width(cloth: Cloth, piece: str) -> float:
    sized = cloth.sized(piece)
    gap = to_top(cloth.design.piece(piece))
    if gap is None:
        return cloth.length(Place(piece, "end")) or 0.0
    return next((o.width for o in sized.openings if o.name == gap.name), 0) * cloth.stitch(piece, sized.rows)


def _spans(design: Design, walkers: Sequence[Walker], own: Tube, back: str) -> list[Reach]:
    """Sleeves in one with the body."""
    values = []
    for w in walkers:
        rows = range(1, w.cloth.sized(back).rows + 1)
        wide = max((w.cloth.extent(back, row) for row in rows), default=0.0)
        at = next((c.cm for c in own.top.loop.chords if c.owner == back), 0.0)
        if wide < at + SPAN_MORE / 2:
            return []
        cuffs = {line.owner for line in w.glued.lines for p in line.along if p.owner == back and w.cloth.named(back, p.edge)}
        values.append(wide / 2 + max((w.cloth.adds(c) for c in cuffs), default=0.0))
    return [_held(design, back, "half the span", tuple(values))]
