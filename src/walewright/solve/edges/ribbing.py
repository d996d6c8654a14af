"""Latched ribs on few stitches: whether there is a column to latch up at all."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil

from walewright.counted import counted_piece
from walewright.counted.model import SizedBand, SizedPiece
from walewright.counted.ribs import LatchedRib, ribs
from walewright.design.model import Design, Fabric, Piece, Zone
from walewright.record import record
from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.said import Amount, Said, only, said

LEAST = 3
"""Stitches of the narrowest rib: a column between two end needles."""


@record
class _Rib:
    """A rib as it is written: `what` is in `fabric`, and how it lies in each size."""

    fabric: Fabric
    what: Said
    span: Span
    lies: tuple[LatchedRib, ...]


def ribs_without_columns(
    design: Design, garments: Sequence[Sequence[SizedPiece]], bands: Sequence[Sequence[SizedBand]]
) -> Iterator[Diagnostic]:
    """A message for each rib that has no column but those of the end needles in some size; `garments[i]` and `bands[i]` are
    those of size i."""
    for rib in _ribs(design, garments, bands):
        bare = {design.sizes[i]: lies.widest[1] - lies.widest[0] + 1 for i, lies in enumerate(rib.lies) if lies.begin is None}
        if not bare:
            continue
        if any(lies.panel for lies in rib.lies):
            notes = tuple(said("in-size", size=size, note=said("on-an-end-needle")) for size in bare)
            helps: tuple[Said, ...] = (said("inwards"),)
        else:
            notes = tuple(said("in-size", size=size, note=said("stitches", stitches=count)) for size, count in bare.items())
            least = ceil(LEAST / rib.fabric.stitches_per_cm * 10) / 10
            helps = (said("wider", stitches=LEAST, cm=Amount(least)), said("no-rib"))
        yield diagnosed(
            "rib-without-column",
            (rib.span, "too-narrow"),
            (rib.fabric.origin.span, "rib"),
            notes=(*notes, "end-needles"),
            helps=helps,
            sizes=only(design.sizes, bare),
            rib=rib.what,
        )


def _ribs(design: Design, garments: Sequence[Sequence[SizedPiece]], bands: Sequence[Sequence[SizedBand]]) -> Iterator[_Rib]:
    for number, piece in enumerate(design.pieces):
        yield from _of_piece(design, piece, [pieces[number] for pieces in garments])
    for number, band in enumerate(design.bands):
        fabric = design.edged_in(band.edging)
        if fabric.rib_every:
            lies = tuple(_centred(fabric, of[number].stitches) for of in bands)
            yield _Rib(fabric, said("band", band=band.name), band.origin.span, lies)


def _of_piece(design: Design, piece: Piece, sizes: Sequence[SizedPiece]) -> Iterator[_Rib]:
    own = design.fabric(piece.fabric)
    made = [tuple(ribs(counted_piece(design, sized))) for sized in sizes]
    if own.rib_every:
        # Of the stretches in its own fabric the one that is narrowest where it is widest has to have a column too.
        stretches = ([rib for rib in found if rib.zone is None] for found in made)
        lies = tuple(min(found, key=_stitches, default=_centred(own, 2 * LEAST + 1)) for found in stretches)
        yield _Rib(own, said("the", name=piece.name), piece.origin.span, lies)
    zones = [zone for zone in piece.zones if design.fabric(zone.fabric).rib_every]
    for zone, *lying in zip(zones, *([rib for rib in found if rib.zone is not None] for found in made), strict=True):
        yield _Rib(design.fabric(zone.fabric), _called(zone, piece), zone.origin.span, tuple(lying))
    edging = design.edging(piece.start_edging) if piece.start_edging else None
    if edging is not None and design.fabric(edging.fabric).rib_every:
        fabric = design.fabric(edging.fabric)
        called = said("edging-of", edging=edging.name, piece=piece.name)
        yield _Rib(fabric, called, piece.origin.span, tuple(_centred(fabric, sized.start) for sized in sizes))


def _called(zone: Zone, piece: Piece) -> Said:
    return said("zone-of" if zone.width is None else "panel-of", fabric=zone.fabric, piece=piece.name)


def _stitches(rib: LatchedRib) -> int:
    return rib.widest[1] - rib.widest[0]


def _centred(fabric: Fabric, stitches: int) -> LatchedRib:
    return LatchedRib(fabric, 0, 0, (-(stitches // 2), stitches - stitches // 2 - 1))
