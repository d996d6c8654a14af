"""What is called a shoulder though it is not: the last row of a part beside an opening, joined to another part of its own
piece, as the toe of a sock is. It is said as a part of the last row, the left or the right."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.record import replace
from walewright.trade.edge_names import OWN_TOPS, part_of_edge


def own_tops_told(plans: tuple[SizePlan, ...]) -> tuple[SizePlan, ...]:
    """The plans, in which the tops that a piece joins to itself are parts of its last row in every size."""
    steps = [step for plan in plans for block in plan.blocks for _, told in block.paragraphs for step in told]
    to_itself, to_others = set[str](), set[str]()
    for pieces, own in (found for step in steps for found in _shoulders_of(step)):
        (to_itself if own else to_others).update(pieces)
    pieces = to_itself - to_others
    return tuple(replace(plan, blocks=tuple(_block(block, pieces) for block in plan.blocks)) for plan in plans) if pieces else plans


def _shoulders_of(step: Step) -> Iterator[tuple[set[str], bool]]:
    """The pieces whose shoulders are joined or hung there, and whether a piece's to its own."""
    if isinstance(step, st.JoinEdges):
        for seam in step.seams:
            edges = (*seam.one, *seam.other)
            tops = {edge.piece for edge in edges if part_of_edge(edge.edge).name == "shoulder"}
            yield tops, len({edge.piece for edge in edges}) == 1 and all(edge.edge in OWN_TOPS for edge in edges)
    elif isinstance(step, st.PickUpAlong | st.HangToLink) and part_of_edge(step.edge).name == "shoulder":
        yield {step.piece}, False


def _block(block: StepBlock, pieces: set[str]) -> StepBlock:
    told = ((title, tuple(_step(step, block.name, pieces) for step in steps)) for title, steps in block.paragraphs)
    return replace(block, paragraphs=tuple(told))


def _step(step: Step, piece: str, pieces: set[str]) -> Step:
    match step:
        case st.OffOnWaste() if piece in pieces:
            return replace(step, edge=OWN_TOPS.get(step.edge, step.edge))
        case st.JoinEdges():
            return replace(step, seams=tuple(_seam(seam, pieces) for seam in step.seams))
    return step


def _seam(seam: st.SeamOf, pieces: set[str]) -> st.SeamOf:
    one, other = (
        tuple(replace(edge, edge=OWN_TOPS.get(edge.edge, edge.edge)) if edge.piece in pieces else edge for edge in side)
        for side in (seam.one, seam.other)
    )
    return st.SeamOf(one, other)
