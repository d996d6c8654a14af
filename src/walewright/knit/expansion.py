"""Steps into operations: one size's sentences, worked by hands from an empty bed to an empty bed."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Chart
from walewright.knit.copies import in_turn
from walewright.knit.hands import perform
from walewright.knit.operations import Block, Join, Operation, SeamEnd, Work
from walewright.knit.state import State
from walewright.knit.steps import EdgeInSeam, JoinEdges, Say, SizePlan, StepBlock


def expand(plan: SizePlan, charts: tuple[Chart, ...] = ()) -> Work:
    """The work of one size: every operation of every block, in order, and the joins. `charts` are all that the plan may name;
    ValueError where it names another."""
    tasks: list[Block | Join] = []
    for block in plan.blocks:
        if block.joining:
            tasks += _joins(block)
        else:
            tasks.append(_block(block, charts))
    return Work(plan.size, tuple(tasks))


def _block(block: StepBlock, charts: tuple[Chart, ...]) -> Block:
    state = State(block.name, charts=charts)
    made: list[Operation] = []
    for _, steps in block.paragraphs:
        for step in steps:
            more, state = perform(state, step)
            made += more
    return Block(block.name, tuple(made), block.copies, block.of)


def _joins(block: StepBlock) -> Iterator[Join]:
    for step in (step for _, steps in block.paragraphs for step in steps):
        if isinstance(step, Say):
            continue
        if not isinstance(step, JoinEdges):
            raise TypeError(f"not a join: {step!r}")
        ratio = (step.ratio_rows, step.ratio_stitches)
        over = tuple((*strip, rows) for strip, rows in zip(step.strips, step.strip_rows, strict=True))
        chained = (step.one_chain, step.other_chain)
        sewn = (over, step.thread_cm, chained, step.tails)
        told = (step.easing_mm, step.longer_mm, step.way, step.rows, step.one_mm, step.other_mm, ratio, *sewn)
        for seam in step.seams:
            ends: tuple[SeamEnd, SeamEnd] = (seam.one[0].begin, seam.other[0].begin) if seam.other else ("", "")
            for number in range(1, step.times + 1) if step.turn else (0,):
                yield Join(_edges(seam.one, step, number), _edges(seam.other, step, number), ends, *told)


def _edges(side: tuple[EdgeInSeam, ...], step: JoinEdges, number: int) -> tuple[tuple[str, str, int], ...]:
    """The edges of one side, in turn of the copies of the seam of that `number`."""
    return tuple((edge.piece, edge.edge, in_turn(edge.copy, step.turn, number, step.times)) for edge in side)
