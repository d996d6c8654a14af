"""Edgings on the start of a piece and bands along finished edges: hung on, knitted, their rib latched up, cast off."""

from __future__ import annotations

from itertools import pairwise

from walewright.design.model import Band, Design, Edging, Piece
from walewright.knit import steps as st
from walewright.knit.operations import Side, other
from walewright.knit.steps import Step, StepBlock
from walewright.solve.model import SizedBand, SizedPiece


def edging_block(design: Design, piece: Piece, sized: SizedPiece) -> StepBlock:
    """The edging on the rehung first row of a piece."""
    edging = design.edging(piece.start_edging or "")
    half = sized.start // 2
    hang: tuple[Step, ...] = (
        st.CarriageAt("right", origin=edging.origin.path),
        st.NeedlesToWork(-half, sized.start - half - 1, sized.start, origin=edging.origin.path),
        st.RehangStart(piece.name, sized.start, origin=edging.origin.path),
    )
    return _hung(design, edging, f"{piece.name} {edging.name}", piece.copies, hang, sized.start, sized.edging_rows)


def band_block(design: Design, band: Band, sized: SizedBand) -> StepBlock:
    """A band on stitches picked up along edges, from the left needle to the right in the order of `pick_ups`."""
    edging = design.edging(band.edging)
    first = -(sized.stitches // 2)
    hang: list[Step] = [
        *_shoulders_first(band),
        st.CarriageAt("right", origin=band.origin.path),
        st.NeedlesToWork(first, first + sized.stitches - 1, sized.stitches, origin=band.origin.path),
    ]
    at = first
    for pick in sized.pick_ups:
        if pick.stitches:
            last = at + pick.stitches - 1
            hang.append(
                st.PickUpAlong(pick.edge.piece, pick.edge.edge, pick.part, pick.stitches, at, last, origin=band.origin.path)
            )
            at = last + 1
    return _hung(design, edging, band.name, 1, tuple(hang), sized.stitches, sized.rows)


def _shoulders_first(band: Band) -> list[Step]:
    """Necks of two pieces make one row of loops only when the shoulder between them is joined. Wrong sides facing, as they
    hung on the bed, the right half of the one lies beside the left half of the next."""
    necks = [edge.piece for edge in band.along if edge.edge == "neck"]
    return [
        st.Say(
            f"First join the right shoulder of the {one} to the left shoulder of the {next_one}, as they hung on the bed; "
            "the other shoulder stays open until the band is knitted. Hang the necks with the wrong side facing.",
            origin=band.origin.path,
        )
        for one, next_one in pairwise(necks)
    ]


def _hung(design: Design, edging: Edging, name: str, copies: int, hang: tuple[Step, ...], stitches: int, rows: int) -> StepBlock:
    fabric = design.fabric(edging.fabric)
    origin = edging.origin.path
    side: Side = "right"
    end = side if rows % 2 == 0 else other(side)
    knit: list[Step] = [
        st.UseYarnStep(fabric.yarn, fabric.tension, origin=origin),
        st.SetRowCounter(0, origin=origin),
        st.KnitTo(rows, origin=origin),
        st.Now(stitches, rows, end, origin=origin),
    ]
    if fabric.rib_every:
        knit.append(st.LatchRib(fabric.rib_every, rows, origin=origin))
    off = (st.CastOffAll(origin=origin), st.BreakOff(origin=origin))
    return StepBlock(name, name, copies, (("Hang on", hang), ("Knit", tuple(knit)), ("Finish", off)))
