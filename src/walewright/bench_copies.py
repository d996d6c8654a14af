"""Bench copies of proven outcomes: one size to stand at the machine with, each proven by its own words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from walewright.record import record, replace
from walewright.report.model import Diagnostic, Severity

if TYPE_CHECKING:
    from walewright.knit.operations import Block, Join, Work
    from walewright.pipeline import Outcome
    from walewright.write.model import Instructions


@record
class BenchCopy:
    """A copy of one size to stand at the machine with, and its plain text, from which it is read back."""

    instructions: Instructions
    plain_text: str


def bench_copy(outcome: Outcome, size: int = 0) -> tuple[BenchCopy | None, tuple[Diagnostic, ...]]:
    """The bench copy of size number `size` (from 0) of a proven outcome, or what its own words make of the garment instead.

    It is proven as the instructions are: its lines are read back without the plan, and make the same moves or knit the same fabric.
    Raises ValueError for an outcome that is not proven."""
    from walewright import knit, write
    from walewright.pipeline import printed_in

    design, *_ = outcome.result()
    plan, language = outcome.plans[size], printed_in(outcome)
    instructions = write.write_bench(plan, knit.unrolled(plan, design.charts), language.writing, design.charts)
    text = write.plain_text(instructions, language.writing)
    return proven_bench(outcome, size, BenchCopy(instructions, text))


def proven_bench(outcome: Outcome, size: int, copy: BenchCopy) -> tuple[BenchCopy | None, tuple[Diagnostic, ...]]:
    """The `copy`, if its words alone lead to the fabric of size number `size`; or why they do not."""
    from walewright import bed, knit, proof, readback
    from walewright.pipeline import bed_of, printed_in

    design, counts, _, _ = outcome.result()
    assert outcome.glued is not None
    works, unread = readback.read_back_all(copy.plain_text, printed_in(outcome).reading)
    if works is None:
        return None, unread
    if _moves(works[0]) == _moves(outcome.works[size]):
        return copy, ()
    alone = bed.knit(knit.moved_back(works[0], outcome.placed, size), bed_of(design))
    if alone == outcome.results[size]:
        return copy, ()
    again = tuple(alone if i == size else result for i, result in enumerate(outcome.results))
    _, faults = proof.prove(design, outcome.glued, counts, outcome.works, outcome.results, again)
    wrong = tuple(d for d in faults if d.severity is Severity.ERROR)
    return (None, wrong) if wrong else (copy, ())


def _moves(work: Work) -> tuple[Block | Join, ...]:
    """What hands and carriage do, without what is only stated to be true."""
    from walewright.knit.operations import Block, Check

    return tuple(
        replace(task, operations=tuple(move for move in task.operations if not isinstance(move, Check)))
        if isinstance(task, Block)
        else task
        for task in work.tasks
    )
