"""Linking: two edges hung on the same needles, right side to right side, knitted together in one row and chained off."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.model import SizedSeam
from walewright.design.model import Design
from walewright.glue.model import OPPOSITE, Chain, EndAt, Face, Seam
from walewright.knit import steps as st
from walewright.knit.copies import NONE, of_several
from walewright.knit.dial import LINKING, looser
from walewright.knit.folding import use_looser
from walewright.knit.lengths import SEWN_IN
from walewright.knit.manners import LinkedOver
from walewright.knit.steps import Step, StepBlock
from walewright.record import record
from walewright.report.said import said
from walewright.trade.edge_names import part_of_edge
from walewright.trade.sides import EdgePart

_OTHER: dict[Face, Face] = {"purl": "knit", "knit": "purl"}


def link_block(design: Design, seam: Seam, sized: SizedSeam, worn: Face, copies: int) -> StepBlock:
    """The first side, worn with its side `worn` out, with that to the knitter, the second one over it with its wrong side.

    So the second one lies from left to right as it is walked clockwise: against the direction in which a seam is told.
    """
    join = design.joins[seam.join]
    origin = join.origin.path
    stitches = sum(sized.one_stitches)
    first = -(stitches // 2)
    last = first + stitches - 1
    piece = design.piece(seam.one[0].owner)
    fabric = design.fabric(piece.fabric)
    one = _LinkedSide(seam.one, seam.one_begins, sized.one_stitches, worn, "empty needles")
    over = _LinkedSide(seam.other, seam.other_begins, sized.other_stitches, _OTHER[worn], "the other piece")
    on = (
        st.CarriageAt("right", origin=origin),
        st.NeedlesToWork(first, last, stitches, origin=origin),
        *_hung(one, first, copies, origin),
        *_hung(over, first, copies, origin),
    )
    row = looser(fabric.tension, LINKING, design.machine.plates)
    knit = (
        use_looser(fabric.yarn, row, origin),
        st.SetRowCounter(0, origin=origin),
        st.KnitRows(1, origin=origin),
        st.Now(stitches, 1, "left", origin=origin),
    )
    off = (st.CastOffAll(origin=origin), st.BreakOff(SEWN_IN, origin=origin))
    place = seam.one[0]
    linked = st.Linked(place.owner, place.edge, of_several(place.copy, place.copies) if copies == 1 else NONE)
    paragraphs = ((said("hang-on"), on), (said("knit"), knit), (said("finish"), off))
    return StepBlock(linked.name, copies, paragraphs, of=place.owner, linked=linked)


@record
class _LinkedSide:
    """A side of a link, hung with its side `facing` to the knitter `over` what is there."""

    chain: Chain
    begins: tuple[EndAt, ...]
    counts: tuple[int, ...]
    facing: Face
    over: LinkedOver


def _hung(side: _LinkedSide, first: int, copies: int, origin: str) -> Iterator[Step]:
    at = first
    for place, end, stitches in zip(reversed(side.chain), reversed(side.begins), reversed(side.counts), strict=True):
        if stitches:
            of = part_of_edge(place.edge)
            named: tuple[str, EdgePart] = (place.edge, "whole") if of.upper else (of.name, of.part)
            copy = of_several(place.copy, place.copies) if copies == 1 else NONE
            last = at + stitches - 1
            yield st.HangToLink(
                place.owner,
                *named,
                stitches,
                at,
                last,
                facing=side.facing,
                over=side.over,
                left_end=OPPOSITE[end],
                copy=copy,
                origin=origin,
            )
            at = last + 1
