"""Linking: two edges hung on the same needles, right side to right side, knitted together in one row and chained off."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.design.model import Design, EdgeName
from walewright.knit import steps as st
from walewright.knit.dial import LINKING, looser
from walewright.knit.hands import perform
from walewright.knit.lengths import SEWN_IN
from walewright.knit.operations import Side, other
from walewright.knit.state import State
from walewright.knit.steps import Step, StepBlock
from walewright.solve.model import SizedGarment, SizedJoin

_SIDES: tuple[Side, Side] = ("right", "left")
_ENDS = ("end", "shoulder")


def links(design: Design, garment: SizedGarment, pieces: Sequence[StepBlock]) -> tuple[list[StepBlock], list[StepBlock]]:
    """The blocks of linked joins: those that come before the bands, and those after them. A neckband is knitted while one
    shoulder is open, so that of a pair of halves the left one comes last; there are no bands between if the design has none."""
    joins = [join for join in garment.joins if join.way == "linked"]
    if not joins:
        return [], []
    loops = {block.name: _loops(block) for block in pieces}
    before: list[StepBlock] = []
    after: list[StepBlock] = []
    for join in joins:
        for one, another in zip(join.one, join.other, strict=True):
            for part, block in _pair(design, garment, join, one, another, loops):
                (after if part == "left" else before).append(block)
    return before, after


_Loops = dict[str, dict[str, int]]
"""By piece and edge ("end", "shoulder left"), how many stitches there are along it."""


def _pair(
    design: Design, garment: SizedGarment, join: SizedJoin, one: EdgeName, another: EdgeName, loops: _Loops
) -> Iterator[tuple[str, StepBlock]]:
    """(part of `one`, block) of two edges: as they lie, the right half of the one is at the left half of the other."""
    (one, of_one), (another, of_another) = _split(one), _split(another)
    for part in (of_one,) if of_one else _parts(one, loops):
        of_other = of_another or (_facing(part) if _parts(another, loops) != ("whole",) else "whole")
        stitches = loops[one.piece].get(_label(one, part), loops[another.piece].get(_label(another, of_other), 0))
        name = f"{one.piece} {one.edge} link" if part == "whole" else f"{one.piece} {one.edge} {part} link"
        yield part, _block(design, garment, join, name, (one, part), (another, of_other), stitches)


def _split(edge: EdgeName) -> tuple[EdgeName, str]:
    """An edge of which the author named one side, as the edge and the side; of any other the side is empty."""
    head, _, side = edge.edge.rpartition(" ")
    return (EdgeName(edge.piece, head), side) if head in _ENDS and side in _SIDES else (edge, "")


def _parts(edge: EdgeName, loops: _Loops) -> tuple[str, ...]:
    if edge.edge in _ENDS and _label(edge, "whole") not in loops[edge.piece]:
        return _SIDES
    return ("whole",)


def _facing(part: str) -> str:
    return "whole" if part == "whole" else other("left" if part == "left" else "right")


def _label(edge: EdgeName, part: str) -> str:
    """Of the stitches of a last row: an author may call them end or shoulder."""
    name = "end" if edge.edge in _ENDS else edge.edge
    return name if part == "whole" else f"{name} {part}"


def _block(
    design: Design,
    garment: SizedGarment,
    join: SizedJoin,
    name: str,
    one: tuple[EdgeName, str],
    another: tuple[EdgeName, str],
    stitches: int,
) -> StepBlock:
    origin = join.origin.path
    first = -(stitches // 2)
    last = first + stitches - 1
    piece = design.piece(one[0].piece)
    fabric = design.fabric(piece.fabric)

    def hang(edge: tuple[EdgeName, str], facing: str, over: str) -> Step:
        return st.HangToLink(edge[0].piece, edge[0].edge, edge[1], stitches, first, last, facing, over, origin=origin)

    on = (
        st.CarriageAt("right", origin=origin),
        st.NeedlesToWork(first, last, stitches, origin=origin),
        hang(one, "right", "empty needles"),
        hang(another, "wrong", "the other piece"),
    )
    row = looser(fabric.tension, LINKING)
    knit = (
        st.UseLooser(fabric.yarn, row.label, row.than, row.numbers, origin=origin),
        st.SetRowCounter(0, origin=origin),
        st.KnitRows(1, origin=origin),
        st.Now(stitches, 1, "left", origin=origin),
    )
    off = (st.CastOffAll(origin=origin), st.BreakOff(SEWN_IN, origin=origin))
    return StepBlock(name, name, piece.copies, (("Hang on", on), ("Knit", knit), ("Finish", off)))


# ----------------------------------------------------------------- stitches along edges


def _loops(block: StepBlock) -> dict[str, int]:
    """Stitches of the edges that a piece's sentences leave, found by working them."""
    found: dict[str, int] = {}
    state = State(block.name, by_needle=False)
    for _, steps in block.paragraphs:
        for step in steps:
            found |= dict(_left_by(state, step, found))
            _, state = perform(state, step)
    return found


def _left_by(state: State, step: Step, found: dict[str, int]) -> Iterator[tuple[str, int]]:
    width = state.last - state.first + 1
    match step:
        case st.WasteStart() | st.ClosedStart():
            yield "start", width
        case st.OffOnWaste(edge=edge):
            yield edge.replace("shoulder", "end"), width
        case st.CastOffAll() | st.SewOffAll():
            # While the one half is cast off the other waits.
            yield "end right" if state.left is not None else "end left" if "end right" in found else "end", width
        case st.SlotOnWaste(stitches=stitches, edge=edge):
            yield edge, stitches
            yield f"{edge} upper", stitches
        case st.CentreToWaste(stitches=stitches, edge=edge):
            yield edge, stitches
