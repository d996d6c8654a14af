"""What steps would say otherwise: of the other half beside an opening, left and right changed, and of another piece or edge.

Two halves are compared as they are printed: what the steps of a section would say mirrored, beside what they say. What waits is no
part of it: while the first half is knitted the other waits, and while that is knitted nothing does.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import fields
from typing import Any

from walewright.knit import steps as st
from walewright.knit.steps import Step, StepBlock
from walewright.record import replace

SIDES: Mapping[str, str] = {
    **{"left": "right", "right": "left"},
    **{"left end": "right end", "right end": "left end"},
}

MIRRORED = frozenset(
    kind.__name__
    for kind in (
        *(st.KnitRows, st.Repeat, st.Decrease, st.IncreaseFashioned),
        *(st.IncreaseAtCarriage, st.CastOffAtCarriage, st.CastOnAtCarriage),
        *(st.HoldAtEnd, st.WrapHeld, st.ReturnHeld, st.ReturnSome, st.MarkEdges),
        *(st.OffOnWaste, st.CastOffAll, st.BreakOff, st.Now, st.NowInHalf, st.KnitTo, st.Together),
    )
)
"""Kinds of steps that can be said of the other half. What names needles, goes one way across the bed, or follows a chart cannot."""


def mirrored(block: StepBlock) -> StepBlock:
    """The block with left and right changed, and nothing that waits."""
    return _every(block, True)


def nothing_waiting(block: StepBlock) -> StepBlock:
    """The block as it is, but for what waits."""
    return _every(block, False)


def waits(block: StepBlock) -> bool:
    """Whether a part of it waits while another is worked."""
    return any(isinstance(s, st.HoldPart | st.PartOnCord) for _, steps in block.paragraphs for s in steps)


def hung_of(block: StepBlock) -> str:
    """The piece whose first row is hung on the needles: the one that the block hangs; nothing of others."""
    pieces = {s.piece for _, steps in block.paragraphs for s in steps if isinstance(s, st.RehangStart)}
    return pieces.pop() if len(pieces) == 1 else ""


def hung_on(block: StepBlock, piece: str) -> StepBlock:
    """The block with that row of another `piece`."""
    told = (
        (title, tuple(replace(s, piece=piece) if isinstance(s, st.RehangStart) else s for s in steps))
        for title, steps in block.paragraphs
    )
    return replace(block, paragraphs=tuple(told))


WhatHangs = str | tuple[st.PickUpAlong, ...]
"""What a block hangs: the first row of a piece, by its name; or edges of pieces, one a line, by their names alone."""


def along_of(block: StepBlock) -> tuple[st.PickUpAlong, ...]:
    """The edges that the block hangs or picks up, in the order of its steps."""
    return tuple(_edge_alone(s) for _, steps in block.paragraphs for s in steps if isinstance(s, ALONG))


def along_others(block: StepBlock, edges: Sequence[st.PickUpAlong]) -> StepBlock:
    """The block with as many other `edges` in the place of its own."""
    others = iter(edges)

    def other(step: Step) -> Step:
        if not isinstance(step, ALONG):
            return step
        edge = next(others)
        return replace(step, piece=edge.piece, edge=edge.edge, part=edge.part, copy=edge.copy)

    return replace(block, paragraphs=tuple((title, tuple(other(s) for s in steps)) for title, steps in block.paragraphs))


ALONG = (st.PickUpAlong, st.HangToLink)
"""Kinds of steps that name an edge of a piece."""


def _edge_alone(step: st.PickUpAlong | st.HangToLink) -> st.PickUpAlong:
    return st.PickUpAlong(step.piece, step.edge, step.part, stitches=0, first=0, last=0, facing="purl", left_end="", copy=step.copy)


def _every(block: StepBlock, change: bool) -> StepBlock:
    return replace(block, paragraphs=tuple((title, tuple(_step(s, change) for s in steps)) for title, steps in block.paragraphs))


def _step(step: Step, change: bool) -> Step:
    if isinstance(step, st.NowInHalf):
        step = st.Now(step.stitches, step.row, step.side, origin=step.origin)
    if isinstance(step, st.Repeat):
        return replace(step, body=tuple(_step(s, change) for s in step.body))
    if isinstance(step, st.Together):
        return replace(step, tracks=tuple(_track(track, change) for track in step.tracks))
    # Where the carriage is taken is not said again for the other half.
    return _changed(step) if change and (type(step).__name__ in MIRRORED or isinstance(step, st.CarriageAt)) else step


def _track(track: st.Track, change: bool) -> st.Track:
    return replace(track, title=_titled(track.title) if change else track.title, steps=tuple(_step(s, change) for s in track.steps))


def _titled(title: st.Words) -> st.Words:
    """What goes on, at the other side."""
    if isinstance(title, str):
        return other_edge(title)
    return replace(
        title, facts=tuple((name, SIDES.get(fact, fact) if isinstance(fact, str) else fact) for name, fact in title.facts)
    )


def _changed(step: Step) -> Step:
    other: dict[str, Any] = {}
    for field in fields(step):
        value = getattr(step, field.name)
        if field.name in ("side", "ends"):
            other[field.name] = SIDES.get(value, value)
    if isinstance(step, st.OffOnWaste):
        other["edge"] = other_edge(step.edge)
    return replace(step, **other)


def other_edge(edge: str) -> str:
    """ "shoulder left" for "shoulder right"."""
    name, _, part = edge.rpartition(" ")
    return f"{name} {SIDES[part]}" if name and part in SIDES else edge
