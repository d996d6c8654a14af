"""Steps into operations: one size's sentences, worked by hands from an empty bed to an empty bed."""

from __future__ import annotations

from walewright.design.model import Chart
from walewright.knit.hands import perform
from walewright.knit.operations import Block, Join, Operation, Work
from walewright.knit.state import State
from walewright.knit.steps import JoinEdges, Say, SizePlan, Step, StepBlock


def expand(plan: SizePlan, charts: tuple[Chart, ...] = ()) -> Work:
    """The work of one size: every operation of every block, in order, and the joins. `charts` are all that the plan may name;
    ValueError where it names another."""
    return Work(
        plan.size, tuple(_block(b, charts) for b in plan.blocks), tuple(_join(j) for j in plan.joins if not isinstance(j, Say))
    )


def _block(block: StepBlock, charts: tuple[Chart, ...]) -> Block:
    state = State(block.name, charts=charts)
    made: list[Operation] = []
    for _, steps in block.paragraphs:
        for step in steps:
            more, state = perform(state, step)
            made += more
    return Block(block.name, tuple(made), block.copies)


def _join(step: Step) -> Join:
    if not isinstance(step, JoinEdges):
        raise TypeError(f"not a join: {step!r}")
    told = (step.rows, step.one_mm, step.other_mm)
    return Join(edges(step.one), edges(step.other), step.easing_mm, step.longer_mm, step.way, *told)


def edges(text: str) -> tuple[tuple[str, str], ...]:
    """ "back armhole + front armhole" as ((piece, edge), ...). A piece's name is one word; an edge's may be two ("thumb upper")."""
    pairs: list[tuple[str, str]] = []
    for part in text.split(" + "):
        piece, _, edge = part.partition(" ")
        pairs.append((piece, edge))
    return tuple(pairs)
