"""Steps of an edge in the programme: how many stitches each of them moves, and how far they go in all."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import CountPerSize, Design, EdgeRun, Piece
from walewright.report.said import Fact, Said, said
from walewright.solve.algebra.programme import Draft, Lines, asks
from walewright.solve.algebra.quantities import LESSER, Quantity, want
from walewright.solve.algebra.sums import NOTHING, Terms, Values
from walewright.solve.algebra.terms import EdgeTerms
from walewright.solve.edges.gauge import fabric_below

StepsInTurn = tuple[tuple[Terms, ...], ...]
"""By size, how much each of a run's steps goes that are of several sizes; none of another run."""


def steps_in_turn(draft: Draft, design: Design, piece: Piece, run: EdgeRun, whose: str, edge: dict[str, Fact]) -> StepsInTurn:
    """The numbers of a run's steps, each as near as can be to what is written of it. `whose` edge it is, in names of numbers, and
    in what a message calls them."""
    sizes = range(len(design.sizes))
    made: list[tuple[Terms, ...]] = []
    per_cm = fabric_below(design, piece, run.to_level).stitches_per_cm
    for number, alike in enumerate(run.in_turn, 1):
        name = f"{piece.name}: {whose} step {number} to {run.to_level}"
        terms = tuple(draft.variable(name, piece.name, i) for i in sizes)
        far = tuple(map(abs, alike.cm))
        figure: dict[str, Fact] = {"piece": piece.name, "opening": "", "side": "", "level": run.to_level, **edge, "number": number}
        quantity = Quantity(
            name=said("step-move", **figure),
            pieces=(piece.name,),
            origin=run.origin,
            terms=terms,
            factor=1,
            wanted=tuple(cm * per_cm for cm in far),
            cm=far,
            tolerance=(1.0,) * len(sizes),
            clause=said("step-moves", **figure),
            share=LESSER,
            times=piece.copies,
        )
        want(draft, quantity)
        made.append(terms)
    return tuple(tuple(of_size) for of_size in zip(*made, strict=True)) or ((),) * len(sizes)


def steps_off(run: EdgeRun, sizes: int) -> CountPerSize:
    """By how many steps a run's width can be off for the reason that all of them are equal."""
    return run.steps if run.equal_steps else (0,) * sizes


def step_rules(draft: Draft, run: EdgeRun, edge: Sequence[EdgeTerms], number: int, which: Said) -> None:
    """Writes into the draft that each step of run number `number` has a stitch at least, and that those which are not all equal
    come to its move after what is cast off first."""
    lines: Lines = []
    for size, terms in enumerate(edge):
        far = terms.ways[number][0] * terms.moved(number) - terms.cast_off[number]
        if run.larger and run.change[size]:
            lines.append((size, far >= run.steps[size]))
        elif run.equal_steps and run.change[size]:
            lines.append((size, terms.step[number] >= 1))
        elif run.in_turn:
            parts = terms.in_turn[number]
            moves = sum((alike.times[size] * part for alike, part in zip(run.in_turn, parts, strict=True)), start=NOTHING)
            lines += [(size, far.equals(moves)), *((size, part >= 1) for part in parts)]
    if lines:
        clause = said("steps-have-stitches", edge=which, level=run.to_level, run=number)
        asks(draft, clause, (run.origin,), lines, len(edge))


def steps_made(run: EdgeRun, edge: EdgeTerms, number: int, size: int, values: Values) -> tuple[tuple[int, int], ...]:
    """(stitches, times) of a run's steps, in turn; none where all are equal."""
    if run.in_turn:
        terms = edge.in_turn[number]
        return tuple((t.at(values), alike.times[size]) for t, alike in zip(terms, run.in_turn, strict=True))
    if not run.larger:
        return ()
    far = abs(edge.moved(number).at(values)) - edge.cast_off[number].at(values)
    each, more = divmod(far, run.steps[size])
    larger, others = (each + 1, more), (each, run.steps[size] - more)
    return (larger, others) if run.larger == "first" else (others, larger)
