"""Latched ribs on few stitches: whether there is a column to latch up at all."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import ceil

from walewright.counted.model import SizedBand, SizedPiece
from walewright.counted.needles import widest_of
from walewright.counted.ribs import rib_begin
from walewright.design.model import Design, Fabric, Piece, Zone
from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.said import Amount, Said, said

LEAST = 3
"""Stitches of the narrowest rib: a column between two end needles."""


@dataclass(frozen=True, slots=True)
class _Rib:
    """A rib as it is written: `what` is in `fabric`, and how it lies in each size (first and last slot of the width, and of a
    panel those of the panel)."""

    fabric: Fabric
    what: Said
    span: Span
    lies: tuple[tuple[tuple[int, int], tuple[int, int] | None], ...]


def ribs_without_columns(
    design: Design, garments: Sequence[Sequence[SizedPiece]], bands: Sequence[Sequence[SizedBand]]
) -> Iterator[Diagnostic]:
    """A message for each rib that has no column but those of the end needles in some size; `garments[i]` and `bands[i]` are
    those of size i."""
    for rib in _ribs(design, garments, bands):
        bare = {
            design.sizes[i]: width[1] - width[0] + 1
            for i, (width, panel) in enumerate(rib.lies)
            if rib_begin(rib.fabric.rib_every, *width, panel) is None
        }
        if not bare:
            continue
        if any(panel for _, panel in rib.lies):
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
            sizes=tuple(bare) if len(bare) < len(design.sizes) else (),
            rib=rib.what,
        )


def _ribs(design: Design, garments: Sequence[Sequence[SizedPiece]], bands: Sequence[Sequence[SizedBand]]) -> Iterator[_Rib]:
    for number, piece in enumerate(design.pieces):
        yield from _of_piece(design, piece, [pieces[number] for pieces in garments])
    for number, band in enumerate(design.bands):
        fabric = design.fabric(design.edging(band.edging).fabric)
        if fabric.rib_every:
            lies = tuple((_centred(of[number].stitches), None) for of in bands)
            yield _Rib(fabric, said("band", band=band.name), band.origin.span, lies)


def _of_piece(design: Design, piece: Piece, sizes: Sequence[SizedPiece]) -> Iterator[_Rib]:
    own = design.fabric(piece.fabric)
    if own.rib_every:
        lies = tuple((_narrowest(sized), None) for sized in sizes)
        yield _Rib(own, said("the", name=piece.name), piece.origin.span, lies)
    for number, zone in enumerate(piece.zones):
        fabric = design.fabric(zone.fabric)
        if fabric.rib_every:
            yield _Rib(fabric, _called(zone, piece), zone.origin.span, tuple(_zone(sized, number) for sized in sizes))
    edging = design.edging(piece.start_edging) if piece.start_edging else None
    if edging is not None and design.fabric(edging.fabric).rib_every:
        lies = tuple((_centred(sized.start), None) for sized in sizes)
        called = said("edging-of", edging=edging.name, piece=piece.name)
        yield _Rib(design.fabric(edging.fabric), called, piece.origin.span, lies)


def _called(zone: Zone, piece: Piece) -> Said:
    return said("zone-of" if zone.width is None else "panel-of", fabric=zone.fabric, piece=piece.name)


def _narrowest(sized: SizedPiece) -> tuple[int, int]:
    """The width of the stretch in its own fabric that is narrowest where it is widest: it too has to have a column."""
    return min((widest_of(sized, *rows) for rows in _own_rows(sized)), key=_stitches, default=(-LEAST, LEAST))


def _own_rows(sized: SizedPiece) -> Iterator[tuple[int, int]]:
    """Rows in the piece's own fabric, between its zones over the whole width."""
    at = 0
    for begin, end in [*sorted((z.from_row, z.to_row) for z in sized.zones if z.first > z.last), (sized.rows, sized.rows)]:
        if begin > at:
            yield at, begin
        at = max(at, end)


def _zone(sized: SizedPiece, number: int) -> tuple[tuple[int, int], tuple[int, int] | None]:
    zone = sized.zones[number]
    return widest_of(sized, zone.from_row, zone.to_row), None if zone.first > zone.last else (zone.first, zone.last)


def _stitches(ends: tuple[int, int]) -> int:
    return ends[1] - ends[0]


def _centred(stitches: int) -> tuple[int, int]:
    return -(stitches // 2), stitches - stitches // 2 - 1
