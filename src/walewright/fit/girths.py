"""Girths: what goes round at a level, with laps counted once.

Tubes are found by following loops at the levels of all pieces. The body is the widest tube that ends below its pieces' tops, where
other edges, of armholes or raglan lines, begin; its girth is that of the last row before them.
"""

from __future__ import annotations

from collections.abc import Container, Sequence
from itertools import pairwise

from walewright.design.model import Design, EdgeName, Lap, Measured
from walewright.fit.cloth import Cloth
from walewright.fit.loops import LoopEnd, Walker, WornLoop, rows_of
from walewright.fit.model import ROWS, Closing, Girth
from walewright.record import record, replace


@record
class Closed:
    """A loop that goes round: by itself, lapped or edge to edge."""

    loop: WornLoop
    closing: Closing
    cm: float


def closed(design: Design, walker: Walker, loop: WornLoop | None) -> Closed | None:
    """How a loop goes round; None where it does not."""
    if loop is None:
        return None
    if loop.ends is None:
        return Closed(loop, "closed", loop.cm)
    edges = [end.edge for end in loop.ends]
    if walker.ring.get(edges[0], -1) != walker.ring.get(edges[1], -2):
        return None
    lap = lap_of(design, loop.ends)
    if lap is not None:
        overlap = walker.cloth.at.of(lap.width) if lap.width else narrower(walker.cloth, lap)
        return Closed(loop, "lapped", loop.cm - overlap) if overlap is not None else None
    holes = [buttoned(design, end) for end in loop.ends]
    strips = [strip(walker.cloth, edge[0], loop) for edge in edges]
    if holes[0] != holes[1] and (overlap := strips[0 if holes[0] else 1]) is not None:
        both = [s for s in strips if s is not None]
        return Closed(loop, "lapped", loop.cm - min(overlap, *both))
    if len(loop.discs) > 1 and not walker.flat:
        return Closed(loop, "edge to edge", loop.cm)
    return None


def lap_of(design: Design, ends: tuple[LoopEnd, LoopEnd]) -> Lap | None:
    """The lap that the author states for two edges."""
    for lap in design.laps:
        for one, other in (ends, ends[::-1]):
            if _names(lap.over, one) and _names(lap.under, other):
                return lap
    return None


def _names(place: tuple[str, str], end: LoopEnd) -> bool:
    """Whether a place is an edge that is come to, or the one of a piece below a band."""
    return any(place[0] == edge[0] and place[1] in ("", edge[1]) for edge in (end.edge, end.beneath))


def buttoned(design: Design, end: LoopEnd) -> bool:
    """Whether there are buttonholes at an end of a loop: of a band that has some along a part of it, along the edge there."""
    band = next((b for b in design.bands if b.name == end.edge[0]), None)
    along = () if band is None else band.hole_along
    return bool(buttonholes(design, end.edge[0])) and (not along or EdgeName(*end.beneath[:2]) in along)


def band_on(design: Design, place: tuple[str, str]) -> str:
    """The band that is hung on an edge of a piece, else what has the edge."""
    found = (b.name for b in design.bands if place[1] and any((e.piece, e.edge) == place for e in b.along))
    return next(found, place[0])


def narrower(cloth: Cloth, lap: Lap) -> float | None:
    """The width of the narrower of two strips that lie upon each other as a whole."""
    owners = (band_on(cloth.design, place) for place in (lap.over, lap.under))
    found = [w for owner in owners if (w := width_of(cloth, owner)) is not None]
    return min(found) if found else None


def width_of(cloth: Cloth, owner: str) -> float | None:
    """How wide a band, or a piece that is a band knitted lengthways, is."""
    if cloth.band(owner) is not None:
        return cloth.depth(owner)
    return cloth.width(owner, 1) if cloth.piece(owner) is not None else None


def strip(cloth: Cloth, owner: str, loop: WornLoop) -> float | None:
    """The same where it is one: a band, or a piece that adds no more than a band does."""
    if cloth.band(owner) is not None:
        return cloth.depth(owner)
    width = next((c.cm for c in loop.chords if c.owner == owner), None)
    return width if width is not None and width <= WIDEST_BAND else None


WIDEST_BAND = 8.0
"""cm. Front bands are 2.5 to 5 cm wide, of a coat up to 8 (common practice): what is wider is a front."""


def buttonholes(design: Design, owner: str) -> int:
    """How many buttonholes a band or a piece has."""
    band = next((b for b in design.bands if b.name == owner), None)
    if band is not None:
        return max(band.holes, default=0)
    piece = next((p for p in design.pieces if p.name == owner), None)
    return sum(max(h.counts) for h in piece.buttonholes) if piece is not None else 0


# ----------------------------------------------------------------- tubes


@record
class Tube:
    """Copies of pieces that are closed to a tube at the levels `at` of `piece`, from below. `open_above`: at the top of that piece
    the tube is no more. Where it is one again there, the piece goes from cuff to cuff, and its tubes are sleeves."""

    discs: frozenset[tuple[str, int]]
    piece: str
    at: tuple[tuple[str, Closed], ...]
    open_above: bool

    @property
    def owners(self) -> frozenset[str]:
        return frozenset(owner for owner, _ in self.discs)

    @property
    def top(self) -> Closed:
        return self.at[-1][1]


def tubes(design: Design, walker: Walker) -> tuple[Tube, ...]:
    """All tubes, those of further copies that are alike left out."""
    found: dict[frozenset[tuple[str, int]], Tube] = {}
    for piece in design.pieces:
        levels_there = [name for name, _ in rows_of(walker.cloth, piece.name)]
        for discs, levels in _by_discs(design, walker, piece.name).items():
            band = levels[0][1].closing != "closed" and strip(walker.cloth, piece.name, levels[0][1].loop) is not None
            if levels[0][0] != levels_there[0] or band:
                # Higher up, a loop may go round body and sleeves together: nothing of a body is so large.
                continue
            open_above = levels[-1][0] != levels_there[-1]
            tube = Tube(discs, piece.name, tuple(levels), open_above)
            if not _one_of_two(design, tube):
                # A sleeve has none of its own, however wide it becomes.
                tube = replace(tube, at=tuple(_before_sleeves(levels)))
            if discs not in found or len(levels) > len(found[discs].at):
                found[discs] = tube
    alike: dict[tuple[str, ...], Tube] = {}
    for tube in found.values():
        alike.setdefault(tuple(sorted(owner for owner, _ in tube.discs)), tube)
    return tuple(alike.values())


def _before_sleeves(levels: list[tuple[str, Closed]]) -> list[tuple[str, Closed]]:
    """Up to where the pieces slope out to sleeves that are one with them."""
    out = next((i for i in range(1, len(levels)) if levels[i][1].cm > levels[i - 1][1].cm + SPAN_MORE), len(levels))
    return levels[:out]


SPAN_MORE = 20.0
"""cm that a garment is wider from one level to the next where its sleeves are one with the body (from memory)."""


def _by_discs(design: Design, walker: Walker, piece: str) -> dict[frozenset[tuple[str, int]], list[tuple[str, Closed]]]:
    found: dict[frozenset[tuple[str, int]], list[tuple[str, Closed]]] = {}
    for level, row in rows_of(walker.cloth, piece):
        made = closed(design, walker, walker.across(piece, 1, row))
        if made is not None:
            found.setdefault(made.loop.discs, []).append((level, made))
    return found


def body(design: Design, all_tubes: Sequence[Tube]) -> Tube | None:
    """The widest tube that is no more at its pieces' tops. What there are two of, legs of trousers or bootees, is not a body."""
    ending = [t for t in all_tubes if t.open_above and not _one_of_two(design, t)]
    return max(ending, key=lambda t: t.top.cm, default=None)


def _one_of_two(design: Design, tube: Tube) -> bool:
    """Whether a copy or the mirror image of one of its pieces is not in a tube, which is one of the first size."""
    for owner, _ in tube.discs:
        piece = design.piece(owner)
        twins = {p.name for p in design.pieces if p.mirror_of == owner} | ({piece.mirror_of} if piece.mirror_of else set())
        if twins - tube.owners or any((owner, copy) not in tube.discs for copy in range(1, piece.copies[0] + 1)):
            return True
    return False


# ----------------------------------------------------------------- girths of all sizes


def girths(design: Design, walkers: Sequence[Walker]) -> tuple[Girth, ...]:
    """Girths of every tube: at its first and last level, and where it is narrowest or widest between them."""
    by_size = [tubes(design, w) for w in walkers]
    own = None if _for_feet(design) else body(design, by_size[0])
    found = _sideways(design, walkers, {owner for tube in by_size[0] for owner in tube.owners})
    for tube in by_size[0]:
        alike = [t for of in by_size for t in of if (t.discs, t.piece) == (tube.discs, tube.piece)]
        if len(alike) < len(by_size) or any([n for n, _ in t.at] != [n for n, _ in tube.at] for t in alike):
            continue
        is_body = own is not None and tube.discs == own.discs
        if tube.top.closing == "edge to edge" and not is_body:
            continue
        for number in _telling([made.cm for _, made in tube.at], is_body):
            level, first = tube.at[number]
            if _drawn_up(walkers[0], tube.piece, level):
                continue
            values = tuple(t.at[number][1].cm for t in alike)
            last = number == len(tube.at) - 1
            found.append(Girth(tube.piece, level, _over(first), first.closing, values, is_body and last))
    return tuple(found)


def _drawn_up(walker: Walker, piece: str, at: str) -> bool:
    """Whether what lies there is drawn up, or closed upon itself, as the top of a hat is: nothing goes round it. `at` is a level,
    or the name of a row edge."""
    sized = walker.cloth.sized(piece)
    edge = walker.cloth.named(piece, at)
    last = edge is None and sized.row(at) == sized.rows
    if last and walker.cloth.design.piece(piece).end_way == "gathered":
        return True
    bond = walker.bonds.get((piece, "end" if last else at, 1)) if last or edge is not None else None
    return bond is not None and not bond.across


def _for_feet(design: Design) -> bool:
    """Whether it is to fit feet: a sock's tube, open above like a body's, has no armholes."""
    return any(m.body in ROWS["foot"] for m in design.measurements if m.to_fit or m.published)


def _telling(cm: Sequence[float], is_body: bool) -> list[int]:
    """The levels that tell something: the first, each where what grew begins to shrink or the other way round, and where the girth
    comes to what it is at the last one; of a body the last one itself."""
    steps = [0, *(i for i in range(1, len(cm)) if abs(cm[i] - cm[i - 1]) > SAME)]
    turns = [at for at, after in pairwise(steps) if at and (cm[at] > cm[at - 1]) != (cm[after] > cm[after - 1])]
    told = {0, *turns, steps[-1]}
    if is_body:
        told = {*(told - {steps[-1]}), len(cm) - 1}
    return sorted(told)


SAME = 0.1
"""cm. Girths that differ by less are one."""


def _sideways(design: Design, walkers: Sequence[Walker], upright: Container[str]) -> list[Girth]:
    """Along the named row edges of pieces that are no tube across: their rows run up and down when they are worn."""
    found: list[Girth] = []
    for piece in design.pieces:
        if piece.name in upright:
            continue
        for edge in walkers[0].cloth.row_edges[piece.name]:
            made = measured(design, walkers, Measured("round edge", piece.name, edge.name)) if edge.name else None
            if made is not None and made.closing == "closed" and not _drawn_up(walkers[0], piece.name, edge.name):
                found.append(made)
    return found


def _over(made: Closed) -> tuple[str, ...]:
    return tuple(c.owner for c in made.loop.chords)


def measured(design: Design, walkers: Sequence[Walker], what: Measured) -> Girth | None:
    """All round at the place that the author names."""
    made = [closed(design, w, _at(w, what)) for w in walkers]
    there = [m for m in made if m is not None]
    if not there or len(there) < len(made):
        return None
    return Girth(what.owner, what.at, _over(there[0]), there[0].closing, tuple(m.cm for m in there))


def _at(walker: Walker, what: Measured) -> WornLoop | None:
    cloth = walker.cloth
    if what.kind != "round edge":
        return walker.across(what.owner, 1, max(cloth.sized(what.owner).row(what.at), 1))
    edge = cloth.named(what.owner, what.at)
    return walker.along(what.owner, 1, edge) if edge is not None else None


def from_edge_to_edge(walker: Walker, what: Measured) -> float | None:
    """All across at the level that the author names, from one free edge to the other; None where it goes round or is not known."""
    loop = _at(walker, what)
    return loop.cm if loop is not None and loop.ends is not None else None
