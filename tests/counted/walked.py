"""Pieces of any shape, and a walk over their needles row by row: what a knitter would see who looks at the bed after each row.

A walk expands the phrases by itself and takes needles in and out one move after the other; it asks the piece nothing.
"""

from __future__ import annotations

from dataclasses import dataclass

from hypothesis import strategies as some

from tests.counted.test_piece import asked
from tests.solve.workshop import SIMPLE, origin
from walewright.counted import CountedPiece
from walewright.counted.model import ShapingPhrase, SizedRun

ROWS = 36
MIDDLE = 18
"""Where the runs of a drawn edge meet."""


@dataclass(frozen=True)
class Move:
    """`by` stitches, at `row`, on the way from `low` to `high`."""

    low: int
    high: int
    row: int
    by: int


def expanded(runs: tuple[SizedRun, ...]) -> list[Move]:
    found: list[Move] = []
    for run in runs:
        row = run.from_row
        for phrase in run.phrases:
            for _ in range(phrase.times):
                for at in range(len(phrase.gaps)):
                    row += phrase.gaps[at]
                    found.append(Move(run.from_row, run.to_row, row, phrase.by[at]))
    return found


def beds(of: CountedPiece) -> dict[int, set[int]]:
    """The needles in work after all that is done at each row, from three rows before the start to three after the top."""
    sized = of.sized
    left = {move.row: 0 for move in expanded(sized.left)}
    right = {move.row: 0 for move in expanded(sized.right)}
    for moves, runs in ((left, sized.left), (right, sized.right)):
        for move in expanded(runs):
            moves[move.row] += move.by
    needles = set(range(-sized.start_left, sized.start - sized.start_left))
    found = {row: set(needles) for row in (-3, -2, -1)}
    for row in range(sized.rows + 4):
        for _ in range(left.get(row, 0)):
            needles.add(min(needles) - 1)
        for _ in range(-left.get(row, 0)):
            needles.remove(min(needles))
        for _ in range(right.get(row, 0)):
            needles.add(max(needles) + 1)
        for _ in range(-right.get(row, 0)):
            needles.remove(max(needles))
        found[row] = set(needles)
    return found


@some.composite
def phrases(draw: some.DrawFn, rows: int) -> tuple[ShapingPhrase, ...]:
    """Some phrases that are over before `rows` rows are."""
    made: list[ShapingPhrase] = []
    for _ in range(draw(some.integers(0, 3))):
        many = draw(some.integers(1, 2))
        gaps = tuple(draw(some.integers(1, 3)) for _ in range(many))
        by = tuple(draw(some.sampled_from([-1, -1, -1, 1, 1, -2, 2])) for _ in range(many))
        phrase = ShapingPhrase(gaps, by, draw(some.integers(1, 4)))
        if sum(p.rows for p in made) + phrase.rows < rows:
            made.append(phrase)
    return tuple(made)


@some.composite
def edges(draw: some.DrawFn) -> tuple[SizedRun, ...]:
    """Two runs, "low" and "high"."""
    below, above = draw(phrases(MIDDLE)), draw(phrases(ROWS - MIDDLE))
    if draw(some.booleans()):
        # A first move in the very row in which the run begins.
        above = (ShapingPhrase((0,), (draw(some.sampled_from([-3, -1, 2])),), 1), *above)
    return (
        SizedRun("low", 0, MIDDLE, below, SIMPLE, origin("low")),
        SizedRun("high", MIDDLE, ROWS, above, SIMPLE, origin("high")),
    )


@some.composite
def pieces(draw: some.DrawFn) -> CountedPiece:
    """Of 60 or 61 stitches, more or less off the centre mark, 36 rows high; 2 stitches and 3 rows to the cm."""
    start, lean = draw(some.sampled_from([60, 61])), draw(some.integers(-3, 3))
    return asked(rows=ROWS, start=start, lean=lean, left=draw(edges()), right=draw(edges()))
