"""Seams that follow each other and are made alike in every size, told together whatever statements they come from: what is equal on
both sides of the body is said once."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.knit.tails import MOST_TAILS
from walewright.record import replace

MOST = 2
"""Seams of several statements in one sentence: the two sides of a body. More are read more easily one by one."""


def told_together(plans: tuple[SizePlan, ...]) -> tuple[SizePlan, ...]:
    """The plans of all sizes, in which seams of two statements are one sentence where all numbers are equal in every size."""
    if len({tuple(block.name for block in plan.blocks) for plan in plans}) != 1:
        return plans
    together = [_blocks(blocks) for blocks in zip(*(plan.blocks for plan in plans), strict=True)]
    return tuple(replace(plan, blocks=blocks) for plan, blocks in zip(plans, zip(*together, strict=True), strict=True))


def _blocks(blocks: Sequence[StepBlock]) -> tuple[StepBlock, ...]:
    """One block as each size has it."""
    told = [[step for _, steps in block.paragraphs for step in steps] for block in blocks]
    if not blocks[0].joining or len({len(steps) for steps in told}) != 1:
        return tuple(blocks)
    made: list[tuple[Step, ...]] = []
    for steps in zip(*told, strict=True):
        before = made[-1] if made else ()
        if before and all(_alike(one, other) for one, other in zip(before, steps, strict=True)):
            made[-1] = tuple(_both(one, other) for one, other in zip(before, steps, strict=True))
        else:
            made.append(steps)
    return tuple(replace(block, paragraphs=(("", of),)) for block, of in zip(blocks, zip(*made, strict=True), strict=True))


def _alike(one: Step, other: Step) -> bool:
    """Whether all that is said of two seams is equal but their edges: told together, seams that pass ends of unlike strips would
    all seem to pass each of these."""
    if not isinstance(one, st.JoinEdges) or not isinstance(other, st.JoinEdges):
        return False
    if one.turn or other.turn or one.edges == "beyond" or len(one.seams) + len(other.seams) > MOST:
        return False
    return _without_edges(one) == _without_edges(other) and _passed(one) == _passed(other)


def _without_edges(step: st.JoinEdges) -> st.JoinEdges:
    return replace(step, seams=(), strips=(), strip_rows=(), tails=())


def _passed(step: st.JoinEdges) -> dict[st.Strip, int]:
    """The strips whose ends are sewn on in a seam, in whatever order it comes to them."""
    return dict(zip(step.strips, step.strip_rows, strict=True))


def _both(one: Step, other: Step) -> Step:
    """Each seam keeps the statement that it comes from."""
    assert isinstance(one, st.JoinEdges)
    assert isinstance(other, st.JoinEdges)
    seams = tuple(replace(seam, origin=seam.origin or step.origin) for step in (one, other) for seam in step.seams)
    tails = tuple(dict.fromkeys((*one.tails, *other.tails))) if one.tails and other.tails else ()
    return replace(one, seams=seams, tails=tails if len(tails) <= MOST_TAILS else ())
