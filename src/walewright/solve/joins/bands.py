"""Bands: how many stitches are picked up along each part of an edge.

A band walks its edges in the order they are named. A neck is walked as the piece hung on the bed, from left to right: down the
left half's edge, across the centre, up the right half's. The back hung with its right side away from the knitter, so its right
end meets the left end of the front, and the walk goes on once round.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil, floor

from walewright.counted import counted_piece
from walewright.counted.edges import EdgeStretch, edge_rows, split_part, stretch_between, stretches
from walewright.counted.edgings import edging_rows, even, strip_end
from walewright.counted.model import NEXT_COPY, PickUp, SizedBand, SizedPiece
from walewright.design.model import Band, Design, DesignInSize, EdgeName, Fabric, Piece
from walewright.glue.model import Chain, EndAt, HangingLine, Place
from walewright.record import record, replace
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Amount, only, said
from walewright.solve.edges.edgings import needles_of
from walewright.solve.edges.gauge import fabric_above
from walewright.solve.joins.band_holes import behind, holes_of
from walewright.trade.edge_names import is_top
from walewright.trade.fabrics import FabricSide
from walewright.trade.sides import EdgePart

STITCH_FOR_STITCH = 0.15
"""Loops are taken one for one while the band is at most so much finer or coarser than they are (from memory; common practice
is stitch for stitch along cast-off and live edges)."""

SUITS_RIB = 0.03
"""Share by which a band's stitches may be changed so that its rib comes out whole."""


@record
class _Part:
    """A stretch of the walk: `points` places to pick up at, `wanted` stitches; a `firm` number is not adjusted. The two halves
    of a neck are parts that are not firm; where they are each other's mirror image they get the same."""

    edge: EdgeName
    part: EdgePart
    points: int
    cm: float
    wanted: float
    firm: bool
    facing: FabricSide = "purl"
    left_end: EndAt = "left"
    copy: int = 0
    live: bool = False
    between: tuple[int, int] | None = None
    rows: int = 0
    place: int = 0
    """Its number in the line."""


def sized_band(at: DesignInSize, band: Band, pieces: Sequence[SizedPiece], lines: Sequence[HangingLine]) -> SizedBand:
    """A band in one size, one for each of its `lines`, which are alike."""
    edging = at.design.edging(band.edging)
    fabric = at.design.fabric(edging.fabric)
    parts, counts = _counted(at, band, lines[0], pieces)
    rows = edging_rows(at, edging)
    part = _holed(band, lines[0], parts, counts)
    holes = tuple(holes_of(at, band, sum(counts), part, rows, fabric)) if band.holes else ()
    return SizedBand(
        name=band.name,
        stitches=sum(counts),
        rows=rows,
        pick_ups=_pick_ups(parts, counts),
        origin=band.origin,
        holes=holes,
        copies=len(lines),
        behind=tuple(behind(edging, rows, holes)),
        holed=part,
    )


def _holed(band: Band, line: HangingLine, parts: Sequence[_Part], counts: Sequence[int]) -> tuple[int, int]:
    """Stitches left of the two ends of the part of a band that has its buttonholes."""
    if not band.hole_along:
        return 0, sum(counts)
    named = places_of(band, line)
    at = next(n for n in range(len(named)) if band.along[n : n + len(band.hole_along)] == band.hole_along)
    first, last = (sum(map(len, named[:n])) for n in (at, at + len(band.hole_along)))
    before, within = (sum(c for p, c in zip(parts, counts, strict=True) if p.place < end) for end in (first, last))
    return before, within


def _counted(at: DesignInSize, band: Band, line: HangingLine, pieces: Sequence[SizedPiece]) -> tuple[list[_Part], tuple[int, ...]]:
    """The stretches of a band's line, and the stitches of each."""
    edging = at.design.edging(band.edging)
    fabric = at.design.fabric(edging.fabric)
    parts = _walk(at, line, pieces, fabric)
    if band.picked is not None:
        stitches, rows = band.picked
        parts = [part if part.firm else replace(part, wanted=part.points * stitches / rows) for part in parts]
    step, rest = needles_of(edging)
    if step:
        return parts, shared_out(parts, step, rest)
    # What is picked up as it is written is not changed for the sake of a rib.
    return parts, shared_out(parts, 2 * fabric.rib_every if band.picked is None else 0)


def places_of(band: Band, line: HangingLine) -> tuple[Chain, ...]:
    """The edges of a band's line by the names that the band has for them: an opening is one name and up to three edges."""
    found: list[Chain] = []
    todo = list(line.along)
    for name in band.along:
        own = [todo.pop(0)]
        while todo and (todo[0].owner, todo[0].copy) == (own[0].owner, own[0].copy) and split_part(todo[0].edge)[0] == name.edge:
            own.append(todo.pop(0))
        found.append(tuple(own))
    return tuple(found)


def stitches_along(at: DesignInSize, band: Band, line: HangingLine, pieces: Sequence[SizedPiece]) -> tuple[int, ...]:
    """Stitches that a band takes along each place of its line."""
    found = [0] * len(line.along)
    for part, count in zip(*_counted(at, band, line, pieces), strict=True):
        found[part.place] += count
    return tuple(found)


def _pick_ups(parts: Sequence[_Part], counts: Sequence[int]) -> tuple[PickUp, ...]:
    return tuple(
        PickUp(
            edge=p.edge,
            part=p.part,
            stitches=count,
            points=p.points,
            cm=p.cm,
            facing=p.facing,
            left_end=p.left_end,
            copy=p.copy,
            live=p.live,
            between=p.between,
            rows=p.rows,
        )
        for p, count in zip(parts, counts, strict=True)
        if count
    )


def _walk(at: DesignInSize, line: HangingLine, pieces: Sequence[SizedPiece], band: Fabric) -> list[_Part]:
    """The parts of a line from the left needle to the right."""
    found: list[_Part] = []
    ends = zip(line.along, line.left_ends, strict=True)
    for number, (place, end) in enumerate(ends):
        head, _ = split_part(place.edge)
        piece = next((p for p in at.design.pieces if p.name == place.owner), None)
        own, between = ((_end_of_band(at, place),), None) if piece is None else _there(at, place, pieces)
        for stretch in own:
            if stretch.points:
                alone = piece is not None and stretch.part in ("left", "right") and _on_one_side(piece, head)
                part = _part(EdgeName(place.owner, head), replace(stretch, part="whole") if alone else stretch, band)
                told = replace(part, facing=line.facing, left_end=end, copy=which_copy(place, line), between=between, place=number)
                told = replace(told, rows=stretch.length.rows)
                found.append(replace(told, live=piece is not None and _is_live(piece, place.edge)))
    return found


def _end_of_band(at: DesignInSize, place: Place) -> EdgeStretch:
    """The end of a band that is knitted before: its rows that are seen, a place to pick up at each."""
    length = strip_end(at, at.design.edging(next(band.edging for band in at.design.bands if band.name == place.owner)))
    return EdgeStretch("whole", length, length.rows)


def _there(at: DesignInSize, place: Place, pieces: Sequence[SizedPiece]) -> tuple[tuple[EdgeStretch, ...], tuple[int, int] | None]:
    """What is there to pick up along a place, and of a stretch of an edge where it lies, as `PickUp.between`."""
    sized = next(p for p in pieces if p.name == place.owner)
    of = counted_piece(at.design, sized)
    if not place.cut:
        return stretches(of, place.edge), None
    cut = next(c for c in at.design.cuts if (c.piece, c.edge) == (place.owner, place.edge))
    (whole,) = stretches(of, place.edge)
    bottom, top = (0, whole.length.stitches) if whole.length.stitches else edge_rows(of, place.edge)[2]
    low, high = (0, *at.of(cut.at), top - bottom)[place.cut - 1 : place.cut + 1]
    own = (stretch_between(of, place.edge, low, high),)
    return own, (low, high) if whole.length.stitches else (sized.counter(bottom + low), sized.counter(bottom + high))


def _is_live(piece: Piece, edge: str) -> bool:
    """Whether the edge is one of open loops."""
    head, part = split_part(edge)
    if is_top(head):
        return piece.end_way == "waste"
    if part == "centre":
        return any(o.name == head and o.taken == "waste" for o in piece.openings)
    return any(slot.name == edge and slot.taken == "waste" for slot in piece.slots)


def _on_one_side(piece: Piece, edge: str) -> bool:
    """Whether the name is that of an outer edge at one side only: then it has no parts."""
    sides = [any(run.name == edge for run in runs) for runs in (piece.left, piece.right)]
    return sides in ([True, False], [False, True])


def which_copy(place: Place, line: HangingLine) -> int:
    """The number of a copy where it has to be told: not where each copy has a line of its own. Where each line lies on two copies,
    joined each to the next, one is its own and the other the next."""
    if line.copies == 1:
        return place.copy if place.copies > 1 else 0
    return NEXT_COPY if (place.copy - line.copy) % place.copies == 1 and place.copies > 1 else 0


def _part(edge: EdgeName, stretch: EdgeStretch, band: Fabric) -> _Part:
    """Along rows by length. Along stitches one for one, or by length where the band's tension is far from theirs."""
    cm = stretch.length.cm
    wanted = cm * band.stitches_per_cm
    count = stretch.length.stitches
    if not count:
        return _Part(edge=edge, part=stretch.part, points=stretch.points, cm=cm, wanted=wanted, firm=False)
    if wanted / count >= 1 - STITCH_FOR_STITCH:
        wanted = count
    return _Part(
        edge=edge,
        part=stretch.part,
        points=stretch.points,
        cm=cm,
        wanted=float(min(count, even(wanted)) if wanted != count else count),
        firm=True,
    )


# ----------------------------------------------------------------- sharing out


def _groups(parts: Sequence[_Part]) -> Iterator[tuple[int, ...]]:
    """Parts that are not firm; two halves of one edge that are each other's mirror image go together."""
    soft = [i for i, p in enumerate(parts) if not p.firm]
    taken: set[int] = set()
    for i in soft:
        if i in taken:
            continue
        one = parts[i]
        twin = next((k for k in soft if k > i and parts[k].part != one.part and _alike(parts[k], one)), None)
        group = (i,) if twin is None else (i, twin)
        taken |= set(group)
        yield group


def _alike(one: _Part, other: _Part) -> bool:
    return one.edge == other.edge and one.points == other.points and abs(one.wanted - other.wanted) < 1e-9


def shared_out(parts: Sequence[_Part], repeat: int, rest: int = 0) -> tuple[int, ...]:
    """Stitches of each part: even in all where the loops allow it, `rest` more than a multiple of `repeat` (0: any) where that
    changes little. The two halves of a neck that are alike get the same."""
    firm = sum(round(p.wanted) for p in parts if p.firm)
    counts = [round(p.wanted) for p in parts]
    groups = list(_groups(parts))
    if not groups:
        return tuple(counts)
    soft = [i for group in groups for i in group]
    wanted = sum(parts[i].wanted for i in soft)
    least, most = firm + len(soft), firm + sum(parts[i].points for i in soft)
    if rest:
        # Of halves that get the same only every second sum can be had.
        parity = firm % 2 if all(len(group) == 2 for group in groups) else None
        goal = _suiting(firm + wanted, repeat, rest, least, most, parity) - firm
    else:
        goal = _total(firm + wanted, repeat, least, most) - firm
    _fill(parts, groups, counts, goal, {i: parts[i].wanted * goal / wanted for i in soft})
    return tuple(counts)


def _suiting(wanted: float, repeat: int, rest: int, least: int, most: int, parity: int | None) -> int:
    """The nearest sum that is `rest` more than a multiple of `repeat`, and even or odd as asked for; where the loops give none that
    is near enough, as for a plain edging."""
    near = max(SUITS_RIB * wanted, repeat / 2)
    numbers = range(max(least, floor(wanted - near)), min(most, ceil(wanted + near)) + 1)
    suit = [n for n in numbers if n % repeat == rest and parity in (None, n % 2) and abs(n - wanted) <= near + 1e-9]
    return min(suit, key=lambda n: (abs(n - wanted), n), default=_total(wanted, 0, least, most))


def _fill(parts: Sequence[_Part], groups: Sequence[tuple[int, ...]], counts: list[int], goal: int, ideal: dict[int, float]) -> None:
    """Sets the counts of the groups, one at least and no more than there are places, to come to `goal` as far as that goes."""
    shares = [min(max(1, floor(ideal[g[0]])), parts[g[0]].points) for g in groups]

    def missing() -> int:
        return goal - sum(len(g) * share for g, share in zip(groups, shares, strict=True))

    while (rest := missing()) != 0:
        step = 1 if rest > 0 else -1
        open_to = [k for k, g in enumerate(groups) if len(g) <= abs(rest) and 1 <= shares[k] + step <= parts[g[0]].points]
        if not open_to:
            break
        most_off = max(open_to, key=lambda k: (round(step * (ideal[groups[k][0]] - shares[k]), 9), -k))
        shares[most_off] += step
    for share, group in zip(shares, groups, strict=True):
        for i in group:
            counts[i] = share


def _total(wanted: float, repeat: int, least: int, most: int) -> int:
    if repeat:
        whole = repeat * floor(wanted / repeat + 0.5)
        if least <= whole <= most and abs(whole - wanted) <= SUITS_RIB * wanted:
            return whole
    goal = 2 * floor(wanted / 2 + 0.5)
    return min(max(goal, least + least % 2), most - most % 2)


# ----------------------------------------------------------------- pieces begun along edges


def start_pick_ups(
    at: DesignInSize, piece: Piece, sized: SizedPiece, pieces: Sequence[SizedPiece], line: HangingLine
) -> tuple[PickUp, ...]:
    """What a piece begun along edges is hung on: its stitches shared out over them as long as they are; fewer than its stitches
    where there are no more places (`short_starts` reports it)."""
    fabric = fabric_above(at.design, piece, piece.levels[0].name)
    parts = [replace(p, firm=False) for p in _walk(at, line, pieces, fabric)]
    if not parts:
        return ()
    counts = [0] * len(parts)
    wanted = sum(p.wanted for p in parts)
    goal = min(sized.start, sum(p.points for p in parts))
    groups = [(i,) for i in range(len(parts))]
    _fill(parts, groups, counts, goal, {i: p.wanted * goal / wanted for i, p in enumerate(parts)})
    return _pick_ups(parts, counts)


def short_starts(design: Design, garments: Sequence[Sequence[SizedPiece]]) -> Iterator[Diagnostic]:
    """A message for each piece begun along edges with more stitches than these have places; `garments[i]` are size i's."""
    for number, piece in enumerate(design.pieces):
        if piece.start_way != "along":
            continue
        made = [(pieces[number].start, sum(p.stitches for p in pieces[number].start_pick_ups)) for pieces in garments]
        over = [i for i, (start, hung) in enumerate(made) if start != hung]
        if not over:
            continue
        along = " + ".join(f"{e.piece} {e.edge}" for e in piece.start_along)
        per_cm = fabric_above(design, piece, piece.levels[0].name).stitches_per_cm
        fits = min(made[i][1] // 2 * 2 for i in over)
        yield diagnosed(
            "start-longer-than-edges",
            (piece.origin.span, "begun-here"),
            notes=tuple(said("places", size=design.sizes[i], stitches=made[i][0], places=made[i][1]) for i in over),
            helps=("narrower", "more-edges"),
            sizes=only(design.sizes, over),
            piece=piece.name,
            along=along,
            widest=Amount(floor(fits / per_cm * 10) / 10),
        )
