"""Published worked examples as sources: the example's figures are written as stitches and rows, and everything is compiled."""

from __future__ import annotations

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.knit.operations import CastOff, Pass, SetCounter
from walewright.pipeline import Outcome, compile
from walewright.solve.model import SizedGarment, SizedRun

SHIPPED = shipped()

HEAD = """pattern "Worked example"

sizes one
    figure 10 cm

machine {bed}

yarn wool "wool", 100 g = 200 m

fabric plain
    stocking stitch in wool at tension 5
    swatch {stitches:g} stitches by {rows:g} rows = 10 cm by 10 cm, 10 g

edging band in plain, 4 rows deep, added after, cast off chain
"""


def compiled(body: str, stitches: float = 28, rows: float = 40, bed: str = "fine") -> Outcome:
    """The source with these pieces, at so many stitches and rows to 10 cm."""
    return compile(HEAD.format(stitches=stitches, rows=rows, bed=bed) + body, "worked.wale", SHIPPED, Changes())


def garment(body: str, stitches: float = 28, rows: float = 40, bed: str = "fine") -> SizedGarment:
    """The proven garment of that source."""
    outcome = compiled(body, stitches, rows, bed)
    assert outcome.proven, [(d.code, d.message, d.notes) for d in outcome.diagnostics]
    assert outcome.counts is not None
    return outcome.counts.sizes[0]


def moves(run: SizedRun) -> list[tuple[int, int]]:
    """(rows after the beginning of the run, stitches moved, inwards negative)."""
    return [(row - run.from_row, by) for row, by in run.changes()]


def cast_offs(outcome: Outcome, block: str) -> list[tuple[int, int]]:
    """(rows on the counter, stitches) of every cast-off of a block that leaves stitches on the bed, as the bed worked it."""
    found, row = [], 0
    work = next(b for b in outcome.works[0].blocks if b.name == block)
    last = max(i for i, op in enumerate(work.operations) if isinstance(op, Pass))
    for index, op in enumerate(work.operations):
        if isinstance(op, SetCounter):
            row = op.rows
        elif isinstance(op, Pass):
            row += 1
        elif isinstance(op, CastOff) and index < last:
            found.append((row, op.last - op.first + 1))
    return found
