"""Whether everything fits on the bed, told before anything is solved: no programme is needed to see it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil, floor

from walewright.design.model import Design, Machine, Piece
from walewright.report.model import Diagnostic, Label, Span
from walewright.solve.model import SizedBand
from walewright.solve.quantities import length

_A_STITCH = 1.0
"""A piece may be narrowed by a stitch to fit."""


def too_wide(design: Design) -> Iterator[Diagnostic]:
    """A message for each piece that is wider than the bed in some size."""
    needles = design.machine.needles
    for piece in design.pieces:
        if piece.mirror_of is not None:
            continue
        per_cm = design.fabric(piece.fabric).stitches_per_cm
        stations = [_widest(piece, size) for size in range(len(design.sizes))]
        over = [i for i, (cm, _, _) in enumerate(stations) if cm * per_cm > needles + _A_STITCH + 1e-9]
        if not over:
            continue
        cm, where, span = max((stations[i] for i in over), key=lambda s: s[0])
        notes = tuple(
            f"{design.sizes[i]}: {length(stations[i][0])} {stations[i][1]} take {_even(stations[i][0] * per_cm)} needles"
            for i in over
        )
        yield Diagnostic(
            "wider-than-bed",
            f"the {piece.name} takes up to {_even(cm * per_cm)} needles, and the bed has {needles}",
            (Label(span, f"widest {where}".rstrip(",")), *_bed(design.machine)),
            (*notes, f"at {per_cm * 10:.1f} stitches to 10 cm, {needles} needles make {length(floor(needles / per_cm * 10) / 10)}"),
            (
                f"make it {length(floor(needles / per_cm * 10) / 10)} wide at the most",
                f"knit it at {floor(needles / cm * 100) / 10:g} stitches to 10 cm or fewer",
                f"knit it on a bed of {_even(cm * per_cm)} needles or more",
            ),
            sizes=_only(design, over),
        )


def bands_too_wide(design: Design, garments: Sequence[Sequence[SizedBand]]) -> Iterator[Diagnostic]:
    """A message for each band with more stitches than the bed has needles; `garments[i]` are the bands of size i."""
    needles = design.machine.needles
    for number, band in enumerate(design.bands):
        stitches = [bands[number].stitches for bands in garments]
        over = [i for i, count in enumerate(stitches) if count > needles]
        if not over:
            continue
        most = max(stitches)
        fabric = design.fabric(design.edging(band.edging).fabric)
        yield Diagnostic(
            "wider-than-bed",
            f"band `{band.name}` takes up to {most} needles, and the bed has {needles}",
            (Label(band.origin.span, "picked up here"), *_bed(design.machine)),
            tuple(f"{design.sizes[i]}: {stitches[i]} stitches" for i in over),
            (
                "knit it as two bands, each along a part of these edges",
                f"knit it at {floor(fabric.stitches_per_cm * 100 * needles / most) / 10:g} stitches to 10 cm or fewer",
                f"knit it on a bed of {most} needles or more",
            ),
            sizes=_only(design, over),
        )


def _bed(machine: Machine) -> tuple[Label, ...]:
    return (Label(machine.origin.span, f"{machine.needles} needles"),)


def _only(design: Design, over: list[int]) -> tuple[str, ...]:
    return tuple(design.sizes[i] for i in over) if len(over) < len(design.sizes) else ()


def _even(stitches: float) -> int:
    """Needles for so many stitches, as many on each side of the centre."""
    return max(2 * floor(stitches / 2 + 0.5), 2 * ceil((stitches - _A_STITCH) / 2 - 1e-9))


def _widest(piece: Piece, size: int) -> tuple[float, str, Span]:
    """(width in cm that the centred piece needs, where, the statement that makes it so wide)."""
    # The centre mark stays in the middle of the start, so the longer side decides.
    found = (piece.start_width[size], "at the start", piece.origin.span)
    for side, runs in (("left", piece.left), ("right", piece.right)):
        place = piece.start_width[size] / 2
        for run in runs:
            place += run.change[size]
            if 2 * place > found[0] + 1e-9:
                where = f"at `{run.to_level}`" if piece.symmetric else f"at `{run.to_level}`, reckoned by its {side} side,"
                found = (2 * place, where, run.origin.span)
    return found
