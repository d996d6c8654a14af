"""Bands: how many stitches are picked up along each part of an edge.

A band walks its edges in the order they are named. A neck is walked as the piece hung on the bed, from left to right: down the
left half's edge, across the centre, up the right half's. The back hung with its right side away from the knitter, so its right
end meets the left end of the front, and the walk goes on once round.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from math import floor

from walewright.counted import counted_piece
from walewright.counted.edges import EdgeStretch, edge_rows, split_part, stretch_between, stretches
from walewright.counted.edgings import edging_rows, even, strip_end
from walewright.counted.model import NEXT_COPY, PickUp, SizedBand, SizedPiece
from walewright.design.model import Band, Design, DesignInSize, EdgeName, Fabric, Piece
from walewright.glue.model import Chain, Glued, HangingLine, Place
from walewright.record import replace
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Amount, only, said
from walewright.solve.edges.edgings import needles_of
from walewright.solve.edges.gauge import fabric_above
from walewright.solve.joins.band_holes import behind, holes_of
from walewright.solve.joins.mirrored import evened
from walewright.solve.joins.shares import BandPart, Shares, begun_on, shared_out
from walewright.trade.edge_names import is_top
from walewright.trade.sides import EdgePart

STITCH_FOR_STITCH = 0.15
"""Loops are taken one for one while the band is at most so much finer or coarser than they are (from memory; common practice
is stitch for stitch along cast-off and live edges)."""


def sized_bands(at: DesignInSize, glued: Glued, pieces: Sequence[SizedPiece]) -> tuple[SizedBand, ...]:
    """The bands in one size, each one for each of its lines, which are alike."""
    return tuple(
        _sized_band(at, band, glued.lines_of(band.name), shares)
        for band, shares in zip(at.design.bands, _shares(at, glued, pieces), strict=True)
    )


def _sized_band(at: DesignInSize, band: Band, lines: Sequence[HangingLine], shares: Shares) -> SizedBand:
    edging = at.design.edging(band.edging)
    fabric = at.design.fabric(edging.fabric)
    stitches = sum(shares.counts)
    rows = edging_rows(at, edging)
    part = _holed(band, lines[0], shares.parts, shares.counts)
    holes = tuple(holes_of(at, band, stitches, part, rows, fabric)) if band.holes else ()
    return SizedBand(
        name=band.name,
        stitches=stitches,
        rows=rows,
        pick_ups=_pick_ups(shares.parts, shares.counts),
        origin=band.origin,
        holes=holes,
        copies=len(lines),
        behind=tuple(behind(edging, rows, holes)),
        holed=part,
    )


def _holed(band: Band, line: HangingLine, parts: Sequence[BandPart], counts: Sequence[int]) -> tuple[int, int]:
    """Stitches left of the two ends of the part of a band that has its buttonholes."""
    if not band.hole_along:
        return 0, sum(counts)
    named = places_of(band, line)
    at = next(n for n in range(len(named)) if band.along[n : n + len(band.hole_along)] == band.hole_along)
    first, last = (sum(map(len, named[:n])) for n in (at, at + len(band.hole_along)))
    before, within = (sum(c for p, c in zip(parts, counts, strict=True) if p.place < end) for end in (first, last))
    return before, within


def _shares(at: DesignInSize, glued: Glued, pieces: Sequence[SizedPiece]) -> tuple[Shares, ...]:
    """What each band takes along the stretches of its line; as many along those that are mirror images."""
    return evened([_shared(at, band, glued.lines_of(band.name)[0], pieces) for band in at.design.bands])


def _shared(at: DesignInSize, band: Band, line: HangingLine, pieces: Sequence[SizedPiece]) -> Shares:
    """The stretches of a band's line, and the stitches of each as far as they depend on this band alone."""
    edging = at.design.edging(band.edging)
    fabric = at.design.fabric(edging.fabric)
    parts = _walk(at, line, pieces, fabric)
    if band.picked is not None:
        stitches, rows = band.picked
        parts = [part if part.firm else replace(part, wanted=part.points * stitches / rows) for part in parts]
    repeat, rest = needles_of(edging)
    if not repeat and band.picked is None:
        # What is picked up as it is written is not changed for the sake of a rib.
        repeat = 2 * fabric.rib_every
    return Shares(edging.name, tuple(parts), shared_out(parts, repeat, rest), repeat, rest)


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


def stitches_along(at: DesignInSize, band: Band, glued: Glued, pieces: Sequence[SizedPiece]) -> tuple[int, ...]:
    """Stitches that a band takes along each place of its line."""
    shares = next(own for other, own in zip(at.design.bands, _shares(at, glued, pieces), strict=True) if other.name == band.name)
    found = [0] * len(glued.lines_of(band.name)[0].along)
    for part, count in zip(shares.parts, shares.counts, strict=True):
        found[part.place] += count
    return tuple(found)


def _pick_ups(parts: Sequence[BandPart], counts: Sequence[int]) -> tuple[PickUp, ...]:
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


def _walk(at: DesignInSize, line: HangingLine, pieces: Sequence[SizedPiece], band: Fabric) -> list[BandPart]:
    """The parts of a line from the left needle to the right."""
    found: list[BandPart] = []
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
                told = replace(told, rows=stretch.length.rows, image=_image(at.design, piece, place.owner, told.part))
                found.append(replace(told, live=piece is not None and _is_live(piece, place.edge)))
    return found


def _image(design: Design, piece: Piece | None, owner: str, part: EdgePart) -> tuple[str, EdgePart]:
    """As `BandPart.image`."""
    if piece is None or piece.mirror_of is None:
        return owner, part
    return _image(design, design.piece(piece.mirror_of), piece.mirror_of, _ACROSS[part])


_ACROSS: Mapping[EdgePart, EdgePart] = {"whole": "whole", "left": "right", "centre": "centre", "right": "left"}


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
    if head == "start":
        return piece.start_way == "waste" and piece.start_edging is None
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


def _part(edge: EdgeName, stretch: EdgeStretch, band: Fabric) -> BandPart:
    """Along rows by length. Along stitches one for one, or by length where the band's tension is far from theirs."""
    cm = stretch.length.cm
    wanted = cm * band.stitches_per_cm
    count = stretch.length.stitches
    if not count:
        return BandPart(edge=edge, part=stretch.part, points=stretch.points, cm=cm, wanted=wanted, firm=False)
    if wanted / count >= 1 - STITCH_FOR_STITCH:
        wanted = count
    return BandPart(
        edge=edge,
        part=stretch.part,
        points=stretch.points,
        cm=cm,
        wanted=float(min(count, even(wanted)) if wanted != count else count),
        firm=True,
    )


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
    return _pick_ups(parts, begun_on(parts, min(sized.start, sum(p.points for p in parts))))


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
