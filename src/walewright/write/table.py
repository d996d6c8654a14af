"""Tables: a stretch of several shapings in words, one sentence for each row at which something is done."""

from __future__ import annotations

from walewright.write.align import Column
from walewright.write.grading import Graded
from walewright.write.model import Cells, Manner, Run, Sentence
from walewright.write.row_by_row import Entry, Rows, announced, table
from walewright.write.said import RC, StepSaid, capital, sts, worded
from walewright.write.words import kinds, phrase


def tabled(stretches: Column[Rows], group: tuple[int, ...]) -> tuple[Sentence, ...]:
    """What is announced first, then the rows. `group` are the sizes that the table is printed for."""
    note = f"Note: at the same time {announced(stretches)}. At each RC do what stands there; the sts are counted after it."
    working = tuple(i for i, s in enumerate(stretches) if s is not None)
    head = Sentence((Run(note),), working, "", "", "", True, manner=Manner.NOTE)
    return (head, *(_row(entries, group) for entries in table(stretches)))


def _row(entries: Column[Entry], group: tuple[int, ...]) -> Sentence:
    steps = next(e.steps for e in entries if e is not None)
    working = tuple(i for i, e in enumerate(entries) if e is not None)
    what: list[Run] = []
    told: list[str] = []
    for number in range(len(steps)):
        # The dash of a size that has nothing to do stands with the counter; the other numbers are for those who have.
        step = StepSaid(tuple(None if e is None else e.steps[number] for e in entries), working)
        what += (*([Run(", ")] if what else []), *phrase(step))
        told += kinds(step)
    row = Graded(tuple(None if e is None else e.row for e in entries), group)
    stitches = worded(*sts(Graded(tuple(None if e is None else e.stitches for e in entries), working)))
    runs = (RC, row.number(), Run(": "), *what, Run("; "), *stitches, Run("."))
    return Sentence(
        runs,
        working,
        row.text(),
        "",
        next((s.origin for e in entries if e is not None for s in e.steps if s.origin), ""),
        False,
        ("KnitTo", *told),
        Cells((row.number(),), capital(tuple(what)), stitches),
        row_said=True,
        row_graded=row.whole,
    )
