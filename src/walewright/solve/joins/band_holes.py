"""Buttonholes of bands: where they lie, and whether they have room there."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import floor

from walewright.counted.model import SizedBand, SizedSlot
from walewright.design.model import Band, Design, DesignInSize, Edging, Fabric
from walewright.record import replace
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import only, said
from walewright.trade.edgings import EDGINGS
from walewright.trade.ends import SlotTaken


def _places(at: DesignInSize, band: Band, begin: int, end: int, fabric: Fabric) -> list[int]:
    """Stitches between the band's beginning and each of its buttonholes, the outermost as far as written from the `begin` and the
    `end` of the part that has them."""
    if band.places:
        return list(at.of(band.places))
    first = begin + floor(at.of(band.first) * fabric.stitches_per_cm + 0.5)
    last = end - floor(at.of(band.last) * fabric.stitches_per_cm + 0.5) - band.hole_stitches
    count = at.of(band.holes)
    if count == 1:
        return [first]
    return [first + floor((last - first) * k / (count - 1) + 0.5) for k in range(count)]


def holes_of(at: DesignInSize, band: Band, stitches: int, part: tuple[int, int], rows: int, fabric: Fabric) -> Iterator[SizedSlot]:
    """The buttonholes, on the `part` of its `stitches`, on an even row at half the depth, so that the carriage is at the right."""
    row = max(2, 2 * floor(rows / 4 + 0.5))
    taken: SlotTaken = "eyelet" if band.hole_stitches == 1 else "cast-off"
    for number, place in enumerate(_places(at, band, *part, fabric), 1):
        first = place - stitches // 2
        yield SizedSlot(
            name=f"buttonhole {number}", row=row, first=first, last=first + band.hole_stitches - 1, taken=taken, origin=band.origin
        )


def behind(edging: Edging, rows: int, holes: Sequence[SizedSlot]) -> Iterator[SizedSlot]:
    """The same holes in the layer that is folded behind, as many rows beyond the fold as theirs are before it. A fold along a row
    of its own, or of eyelets, lies in the middle of that row. What is closed lies between two rows; the bar of an eyelet is in the
    row after its own."""
    if edging.kind not in ("folded", "picot"):
        return
    both = 2 * rows + (1 if edging.fold_tension or edging.kind == "picot" else 0)
    for hole in holes:
        yield replace(hole, row=both - hole.row - (1 if hole.taken == "eyelet" else 0))


def crowded_holes(design: Design, garments: Sequence[Sequence[SizedBand]]) -> Iterator[Diagnostic]:
    """A message for each band whose buttonholes do not lie on it side by side, a stitch at least between them and at its ends;
    `garments[i]` are the bands of size i."""
    for number, band in enumerate(design.bands):
        made = [bands[number] for bands in garments]
        over = [i for i, sized in enumerate(made) if band.holes and not apart(sized)]
        if not over:
            continue
        fabric = design.edged_in(band.edging)
        edges = [
            floor(band.first[i] * fabric.stitches_per_cm + 0.5) + floor(band.last[i] * fabric.stitches_per_cm + 0.5) for i in over
        ]
        wide = [made[i].holed[1] - made[i].holed[0] for i in over]
        room = min((own - e - 1) // (band.hole_stitches + 1) for own, e in zip(wide, edges, strict=True))
        if any(s.rows < 4 for s in made):
            help_ = said("deeper", chained=not EDGINGS[design.edging(band.edging).kind].has_depth)
        else:
            help_ = said("fewer", room=room) if room > 0 else said("nearer-ends")
        yield diagnosed(
            "buttonholes-crowded",
            (band.origin.span, "buttonholes-here"),
            notes=tuple(
                said("band-has", size=design.sizes[i], stitches=n, rows=made[i].rows, part=bool(band.hole_along))
                for i, n in zip(over, wide, strict=True)
            ),
            helps=(help_,),
            sizes=only(design.sizes, over),
            buttonholes=max(band.holes[i] for i in over),
            band=band.name,
        )


def apart(band: SizedBand) -> bool:
    """Whether the buttonholes lie on their part of the band, a stitch at least between them and at its ends."""
    begin, end = band.holed[0] - band.stitches // 2, band.holed[1] - band.stitches // 2 - 1
    holes = band.holes
    inside = all(begin < hole.first and hole.last < end and 0 < hole.row < band.rows for hole in holes)
    return inside and all(after.first - before.last > 1 for before, after in pairwise(holes))
