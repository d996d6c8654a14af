"""Bands wider than the bed: knitted in parts, whose ends are sewn together where they meet, a stitch of each."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import accumulate, islice, pairwise
from math import floor

from walewright.counted.model import SizedBand
from walewright.design.model import Band, Design, EdgeName
from walewright.glue.model import GluedSizes
from walewright.record import replace
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Said, by_size, only, said
from walewright.solve.edges.bed_width import bed
from walewright.solve.joins.band_holes import apart
from walewright.solve.joins.band_places import (
    Garments,
    LongBand,
    PartingWay,
    alongs_of,
    cuts_of,
    long_band,
    room_of,
    ways_to_part,
    whole,
    with_bands,
)
from walewright.solve.joins.bands import sized_bands

Glue = Callable[[Design], GluedSizes | None]


def together_as_it_is(_: Design) -> GluedSizes | None:
    """Of a garment that is put together already: bands stay whole."""
    return None


def bands_of(design: Design, glued: GluedSizes, garments: Garments) -> list[tuple[SizedBand, ...]]:
    """The bands of each size."""
    return [sized_bands(at, glued.in_size(at.number), at.of(garments)) for at in design.each_size]


def parted(design: Design, glued: GluedSizes, garments: Garments, glue: Glue) -> tuple[Design, GluedSizes, tuple[Diagnostic, ...]]:
    """The design with every band that is wider than the bed in parts, where it can be parted, put together again by `glue`, and
    what there is to say about it."""
    made = bands_of(design, glued, garments)
    for number, band in enumerate(design.bands):
        own = [bands[number] for bands in made]
        widest = max(sized.stitches for sized in own)
        if widest <= room_of(design, band) or band.part_of or named_elsewhere(design, band) or not all(map(apart, own)):
            continue
        if not _on_the_same_edges(glued, band):
            continue
        line = long_band(design, band, glued, garments)
        for way in islice(ways_to_part(line), _MOST_TRIED):
            parts = _parts(line, way, own)
            other = with_bands(design, band, parts, cuts_of(line, way)) if parts is not None else None
            again = glue(other) if other is not None else None
            if parts is None or other is None or again is None or not _fits(other, again, garments, parts):
                continue
            told = _told(line, way, widest, parts)
            design, glued, more = parted(other, again, garments, glue)
            return design, glued, (told, *more)
    return design, glued, ()


def _on_the_same_edges(glued: GluedSizes, band: Band) -> bool:
    """Whether the band lies on the same edges of the same copies in every size."""
    lines = (group.lines_of(band.name)[0] for group in glued.groups)
    return len({tuple((place.owner, place.edge, place.copy) for place in line.along) for line in lines}) == 1


_MOST_TRIED = 40
"""Ways of parting a band that are put together to see whether they will do."""


def named_elsewhere(design: Design, band: Band) -> bool:
    """Whether a measurement, an opening or a lap names the band: then it has to stay one."""
    measured = [f.measured for f in design.finished] + [r.measured for r in design.requirements]
    owners = {m.owner for m in measured if m is not None} | {p.owner for p in design.passages}
    owners |= {owner for lap in design.laps for owner, _ in (lap.over, lap.under)}
    return band.name in owners


def _parts(line: LongBand, way: PartingWay, sized: Sequence[SizedBand]) -> tuple[Band, ...] | None:
    """The parts as bands of their own; None where a buttonhole would lie across two of them."""
    design, band = line.design, line.band
    each = alongs_of(line, way)
    alongs = tuple(dict.fromkeys(each))
    taken = {b.name for b in design.bands} | {p.name for p in design.pieces}
    names: list[str] = []
    for number in range(len(alongs)):
        name = f"{band.name}_{number + 1}"
        while name in taken:
            name += "_part"
        names.append(name)
    bare = replace(band, holes=(), hole_stitches=0, first=(), last=(), hole_along=(), part_of=band.name, parts=len(each))
    plain = [replace(bare, name=name, along=along) for name, along in zip(names, alongs, strict=True)]
    if not band.holes:
        return tuple(plain)
    if len(alongs) < len(each):
        return None
    places = [_in_parts(made, line.widths(way, size)) for size, made in enumerate(sized)]
    if any(of is None for of in places):
        return None
    found: list[Band] = []
    for number, part in enumerate(plain):
        own = tuple(tuple(of[number]) for of in places if of is not None)
        counts = tuple(len(some) for some in own)
        holes = replace(part, holes=counts, hole_stitches=band.hole_stitches, first=band.first, last=band.last, places=own)
        found.append(holes if any(counts) else part)
    return tuple(found)


def _in_parts(sized: SizedBand, widths: Sequence[int]) -> list[list[int]] | None:
    """The stitches between the beginning of each part and each buttonhole in it; None where one would lie across two of them."""
    begins = list(accumulate(widths, initial=0))
    found: list[list[int]] = [[] for _ in widths]
    for hole in sized.holes:
        first, last = (slot + sized.stitches // 2 for slot in (hole.first, hole.last))
        home = next(n for n, (a, z) in enumerate(pairwise(begins)) if a <= first < z)
        # A stitch stays at each end of a part, and one more may be lost there for whole ribs.
        moved = max(begins[home] + _END - first, 0) + min(begins[home + 1] - 1 - _END - last, 0)
        if abs(moved) > _END:
            return None
        found[home].append(first + moved - begins[home])
    return found


_END = 2
"""Stitches between a buttonhole and the end of a part."""


def _fits(design: Design, glued: GluedSizes, garments: Garments, parts: Sequence[Band]) -> bool:
    own = {part.name for part in parts}
    made = [band for bands in bands_of(design, glued, garments) for band in bands if band.name in own]
    room = min((room_of(design, part) for part in parts), default=0)
    return all(band.stitches <= room and apart(band) for band in made)


def _told(line: LongBand, way: PartingWay, widest: int, parts: Sequence[Band]) -> Diagnostic:
    design, band = line.design, line.band
    return diagnosed(
        "band-parted",
        (band.origin.span, "picked-up-here"),
        bed(design.machine),
        notes=(
            *(said("part", part=part.name, along=written(part.along)) for part in parts),
            *_cuts_told(line, way),
            "ends-sewn",
        ),
        helps=("bands-of-their-own",),
        severity=Severity.WARNING,
        band=band.name,
        stitches=widest,
        needles=room_of(design, band),
        missing=bool(design.machine.missing),
        parts=len(way) + 1,
    )


def _cuts_told(line: LongBand, way: PartingWay) -> Iterator[Said]:
    """How far up or along an edge the band is parted within it."""
    ends = {(place.owner, place.edge): end for place, end in zip(line.along, line.lines[0].left_ends, strict=True)}
    for cut in cuts_of(line, way):
        rows = ends[cut.piece, cut.edge] in ("bottom", "top")
        for number in range(len(cut.at[0])):
            far = by_size(line.design.sizes, [at[number] for at in cut.at], "rows" if rows else "stitches")
            yield said("cut-rows" if rows else "cut-stitches", edge=written((EdgeName(cut.piece, cut.edge),)), far=far)


def written(along: Sequence[EdgeName]) -> str:
    """Edges as they are written in a source."""
    return " + ".join(f"{edge.piece} {edge.edge.replace(' ', '_')}" for edge in along)


# ----------------------------------------------------------------- what has no room and cannot be parted


def bands_too_wide(
    design: Design, glued: GluedSizes, garments: Garments, bands: Sequence[Sequence[SizedBand]]
) -> Iterator[Diagnostic]:
    """A message for each band with more stitches than the bed has needles that is not parted; `bands[i]` are those of size i."""
    needles = design.machine.needles
    for number, band in enumerate(design.bands):
        stitches = [own[number].stitches for own in bands]
        over = [i for i, count in enumerate(stitches) if count > needles]
        # Of buttonholes that do not fit on it another message tells, and where it is parted depends on them.
        if over and all(apart(own[number]) for own in bands):
            yield diagnosed(
                "wider-than-bed/band",
                (band.origin.span, "picked-up-here"),
                bed(design.machine),
                notes=tuple(said("in-size", size=design.sizes[i], note=said("stitches", stitches=stitches[i])) for i in over),
                helps=tuple(_ways_out(design, band, glued, garments, max(stitches))),
                sizes=only(design.sizes, over),
                band=band.name,
                stitches=max(stitches),
                needles=needles,
            )


def _ways_out(design: Design, band: Band, glued: GluedSizes, garments: Garments, most: int) -> Iterator[Said]:
    line = long_band(design, band, glued, garments)
    way = next((way for way in islice(ways_to_part(line), _MOST_TRIED) if whole(line, way)), None)
    if way is not None:
        along = tuple(dict.fromkeys(alongs_of(line, way)))
        yield said("several-bands", bands=len(along), each=tuple(said("along", along=written(part)) for part in along))
    else:
        named = [[sum(count[n] for n in own) for own in line.named] for count in line.counts]
        longest = max(range(len(band.along)), key=lambda n: max(count[n] for count in named))
        takes = max(count[longest] for count in named)
        if takes > design.machine.needles:
            yield said("lengthways", edge=written(band.along[longest : longest + 1]), takes=takes)
    per_10_cm = loosest(design, band, glued, garments)
    if per_10_cm is not None:
        yield said("knit-looser", stitches=per_10_cm)
    yield said("wider-bed", needles=most + most % 2)


def loosest(design: Design, band: Band, glued: GluedSizes, garments: Garments) -> float | None:
    """The most stitches to 10 cm at which the whole band has room on the bed in every size, to one place; None where there are none
    within reason: stitches that are picked up one for one do not depend on them."""
    edging = design.edging(band.edging)
    fabric = design.fabric(edging.fabric)
    tenths: int = floor(fabric.stitches_per_cm * 100 * design.machine.needles / _most(design, band, glued, garments))
    for per_10_cm in range(tenths, tenths - 12, -1):
        if per_10_cm < _FEWEST * fabric.stitches_per_cm * 100:
            return None
        # A little more has to fit too: a swatch is measured, and whole ribs are a step.
        other = replace(fabric, swatch_width_cm=fabric.swatch_stitches * 100 / (per_10_cm + _SPARE))
        changed = replace(design, fabrics=tuple(other if f.name == fabric.name else f for f in design.fabrics))
        if _most(changed, band, glued, garments) <= design.machine.needles:
            return float(per_10_cm) / 10
    return None


_SPARE = 0.5
"""Tenths of a stitch to 10 cm."""

_FEWEST = 0.5
"""Of the stitches to 10 cm as they are: at fewer it is another fabric."""


def _most(design: Design, band: Band, glued: GluedSizes, garments: Garments) -> int:
    return max(own.stitches for made in bands_of(design, glued, garments) for own in made if own.name == band.name)
