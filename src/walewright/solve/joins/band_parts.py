"""Bands wider than the bed: knitted in parts, which meet where a seam joins the edges that they run along.

A band is parted between two of its edges only where a seam ends: there the ends of the parts are sewn together in that seam (common
practice: strips are joined at the centre back, else at the shoulders; a seam takes a stitch of each).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from itertools import combinations, pairwise
from math import comb, floor

from walewright.counted.model import SizedBand, SizedPiece
from walewright.design.model import Band, Design, EdgeName
from walewright.glue.model import Chain, Glued, HangingLine
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Said, only, said
from walewright.solve.edges.bed_width import bed
from walewright.solve.joins.bands import apart, places_of, sized_band, stitches_along

PartEnds = tuple[int, ...]
"""After how many of its edges each part of a band ends; the last is the number of all."""

Garments = Sequence[tuple[SizedPiece, ...]]
"""The pieces of each size."""

Glue = Callable[[Design], Glued | None]


def together_as_it_is(_: Design) -> Glued | None:
    """Of a garment that is put together already: bands stay whole."""
    return None


def bands_of(design: Design, glued: Glued, garments: Garments) -> list[tuple[SizedBand, ...]]:
    """The bands of each size."""
    return [tuple(sized_band(design, b, i, own, glued.lines_of(b.name)) for b in design.bands) for i, own in enumerate(garments)]


def parted(design: Design, glued: Glued, garments: Garments, glue: Glue) -> tuple[Design, Glued, tuple[Diagnostic, ...]]:
    """The design with every band that is wider than the bed in parts, where it can be parted, put together again by `glue`, and
    what there is to say about it."""
    told: list[Diagnostic] = []
    made = bands_of(design, glued, garments)
    for number, band in enumerate(design.bands):
        widest = max(bands[number].stitches for bands in made)
        whole = [bands[number] for bands in made]
        if widest <= design.machine.needles or named_elsewhere(design, band) or not all(map(apart, whole)):
            continue
        for ends in ways_to_part(design, band, glued.lines_of(band.name)[0], garments):
            parts = _parts(design, band, ends, whole, glued.lines_of(band.name)[0], garments)
            if parts is None:
                continue
            own = tuple(b for each in design.bands for b in (parts if each.name == band.name else (each,)))
            other = replace(design, bands=own)
            again = glue(other)
            if again is None or not _fits(other, again, garments, parts):
                continue
            design, glued = other, again
            told.append(_told(design, band, widest, parts, ends))
            break
        else:
            continue
        more = parted(design, glued, garments, glue)
        return more[0], more[1], (*told, *more[2])
    return design, glued, tuple(told)


def named_elsewhere(design: Design, band: Band) -> bool:
    """Whether a measurement, an opening or a lap names the band: then it has to stay one."""
    measured = [f.measured for f in design.finished] + [r.measured for r in design.requirements]
    owners = {m.owner for m in measured if m is not None} | {p.owner for p in design.passages}
    owners |= {owner for lap in design.laps for owner, _ in (lap.over, lap.under)}
    return band.name in owners


def ways_to_part(design: Design, band: Band, line: HangingLine, garments: Garments) -> Iterator[PartEnds]:
    """Where the band can be parted so that each part has room on the bed in every size: in as few parts as can be, the most even
    first."""
    needles = design.machine.needles
    counts = [stitches_along(design, band, line, pieces) for pieces in garments]
    number = len(band.along)
    places = places_of(band, line)
    corners = [n for n in range(1, number) if _at_seam(places, n)]
    between = list(pairwise((0, *corners, number)))
    if any(sum(count[a:z]) > needles for count in counts for a, z in between):
        return
    for cuts in range(1, len(corners) + 1):
        if comb(len(corners), cuts) > _MOST_WAYS:
            return
        ways = [(*some, number) for some in combinations(corners, cuts)]
        widest = {ends: max(sum(count[a:z]) for count in counts for a, z in pairwise((0, *ends))) for ends in ways}
        fit = [ends for ends in ways if widest[ends] <= needles and _distinct(band.along, ends)]
        yield from sorted(fit, key=lambda ends: (widest[ends], ends))
        if fit:
            return


_MOST_WAYS = 5_000
"""Of parting a band: it would lie along dozens of pieces."""


def parts_of(along: Sequence[EdgeName], ends: PartEnds) -> tuple[tuple[EdgeName, ...], ...]:
    """The edges of each part, from the left needle on; parts that lie along edges of the same names are told once."""
    return tuple(dict.fromkeys(tuple(along[a:z]) for a, z in pairwise((0, *ends))))


def _at_seam(places: Sequence[Chain], number: int) -> bool:
    """Whether a seam makes the two edges there meet: they are of two pieces, or of two copies of one."""
    one, other = places[number - 1][-1], places[number][0]
    return (one.owner, one.copy) != (other.owner, other.copy)


def _distinct(along: Sequence[EdgeName], ends: PartEnds) -> bool:
    """Whether each edge is in one part, or whole parts are alike: those are copies of one band."""
    seen = [edge for part in parts_of(along, ends) for edge in set(part)]
    return len(seen) == len(set(seen))


def _parts(
    design: Design, band: Band, ends: PartEnds, sized: Sequence[SizedBand], line: HangingLine, garments: Garments
) -> tuple[Band, ...] | None:
    """The parts as bands of their own; None where a buttonhole would lie across two of them."""
    alongs = parts_of(band.along, ends)
    taken = {b.name for b in design.bands} | {p.name for p in design.pieces}
    names: list[str] = []
    for number in range(len(alongs)):
        name = f"{band.name}_{number + 1}"
        while name in taken:
            name += "_part"
        names.append(name)
    bare = replace(band, holes=(), hole_stitches=0, first=(), last=())
    plain = [replace(bare, name=name, along=along) for name, along in zip(names, alongs, strict=True)]
    if not band.holes:
        return tuple(plain)
    if len(alongs) < len(ends):
        return None
    places = [
        _in_parts(made, stitches_along(design, band, line, pieces), ends) for made, pieces in zip(sized, garments, strict=True)
    ]
    if any(of is None for of in places):
        return None
    found: list[Band] = []
    for number, part in enumerate(plain):
        own = tuple(tuple(of[number]) for of in places if of is not None)
        counts = tuple(len(some) for some in own)
        holes = replace(part, holes=counts, hole_stitches=band.hole_stitches, first=band.first, last=band.last, places=own)
        found.append(holes if any(counts) else part)
    return tuple(found)


def _in_parts(sized: SizedBand, counts: Sequence[int], ends: PartEnds) -> list[list[int]] | None:
    """The stitches between the beginning of each part and each buttonhole in it; None where one would lie across two of them."""
    begins = [0, *(sum(counts[:end]) for end in ends)]
    found: list[list[int]] = [[] for _ in ends]
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


def _fits(design: Design, glued: Glued, garments: Garments, parts: Sequence[Band]) -> bool:
    own = {part.name for part in parts}
    made = [band for bands in bands_of(design, glued, garments) for band in bands if band.name in own]
    return all(band.stitches <= design.machine.needles and apart(band) for band in made)


def _told(design: Design, band: Band, widest: int, parts: Sequence[Band], ends: PartEnds) -> Diagnostic:
    return diagnosed(
        "band-parted",
        (band.origin.span, "picked-up-here"),
        bed(design.machine),
        notes=(*(said("part", part=part.name, along=written(part.along)) for part in parts), "ends-sewn"),
        helps=("bands-of-their-own",),
        severity=Severity.WARNING,
        band=band.name,
        stitches=widest,
        needles=design.machine.needles,
        parts=len(ends),
    )


def written(along: Sequence[EdgeName]) -> str:
    """Edges as they are written in a source."""
    return " + ".join(f"{edge.piece} {edge.edge.replace(' ', '_')}" for edge in along)


# ----------------------------------------------------------------- what has no room and cannot be parted


def bands_too_wide(design: Design, glued: Glued, garments: Garments, bands: Sequence[Sequence[SizedBand]]) -> Iterator[Diagnostic]:
    """A message for each band with more stitches than the bed has needles; `bands[i]` are those of size i."""
    needles = design.machine.needles
    for number, band in enumerate(design.bands):
        stitches = [own[number].stitches for own in bands]
        over = [i for i, count in enumerate(stitches) if count > needles]
        if over:
            yield diagnosed(
                "wider-than-bed/band",
                (band.origin.span, "picked-up-here"),
                bed(design.machine),
                notes=tuple(said("in-size", size=design.sizes[i], note=said("stitches", stitches=stitches[i])) for i in over),
                helps=tuple(_ways_out(design, band, glued.lines_of(band.name), garments, max(stitches))),
                sizes=only(design.sizes, over),
                band=band.name,
                stitches=max(stitches),
                needles=needles,
            )


def _ways_out(design: Design, band: Band, lines: Sequence[HangingLine], garments: Garments, most: int) -> Iterator[Said]:
    along = next((parts_of(band.along, ends) for ends in ways_to_part(design, band, lines[0], garments)), ())
    if along:
        yield said("several-bands", bands=len(along), each=tuple(said("along", along=written(part)) for part in along))
    else:
        counts = [stitches_along(design, band, lines[0], pieces) for pieces in garments]
        longest = max(range(len(band.along)), key=lambda n: max(count[n] for count in counts))
        takes = max(count[longest] for count in counts)
        if takes > design.machine.needles:
            yield said("lengthways", edge=written(band.along[longest : longest + 1]), takes=takes)
    per_10_cm = loosest(design, band, lines, garments)
    if per_10_cm is not None:
        yield said("knit-looser", stitches=per_10_cm)
    yield said("wider-bed", needles=most + most % 2)


def loosest(design: Design, band: Band, lines: Sequence[HangingLine], garments: Garments) -> float | None:
    """The most stitches to 10 cm at which the whole band has room on the bed in every size, to one place; None where there are none
    within reason: stitches that are picked up one for one do not depend on them."""
    edging = design.edging(band.edging)
    fabric = design.fabric(edging.fabric)
    tenths: int = floor(fabric.stitches_per_cm * 100 * design.machine.needles / _most(design, band, lines, garments))
    for per_10_cm in range(tenths, tenths - 12, -1):
        if per_10_cm < _FEWEST * fabric.stitches_per_cm * 100:
            return None
        # A little more has to fit too: a swatch is measured, and whole ribs are a step.
        other = replace(fabric, swatch_width_cm=fabric.swatch_stitches * 100 / (per_10_cm + _SPARE))
        changed = replace(design, fabrics=tuple(other if f.name == fabric.name else f for f in design.fabrics))
        if _most(changed, band, lines, garments) <= design.machine.needles:
            return float(per_10_cm) / 10
    return None


_SPARE = 0.5
"""Tenths of a stitch to 10 cm."""

_FEWEST = 0.5
"""Of the stitches to 10 cm as they are: at fewer it is another fabric."""


def _most(design: Design, band: Band, lines: Sequence[HangingLine], garments: Garments) -> int:
    return max(sized_band(design, band, i, pieces, lines).stitches for i, pieces in enumerate(garments))
