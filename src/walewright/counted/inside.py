"""Lines within a counted piece along which its edges are shaped: on which needle a stitch is lost or gained in which row."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.model import SizedPiece, SizedRun
from walewright.record import record
from walewright.trade.sides import EdgeSide


@record
class InsideMove:
    """A stitch lost (`by` -1) or gained (1) when `row` rows are knitted, along line number `line` of a run of the edge at `side`:
    in the next row `slot` has the two loops, or the one that was hung there."""

    side: EdgeSide
    run: SizedRun
    line: int
    row: int
    by: int
    slot: int


def moves(sized: SizedPiece) -> Iterator[InsideMove]:
    """All of a piece, edge by edge from the start up."""
    begins = sized.start_left, sized.start - sized.start_left
    for side, begin, runs in (("left", begins[0], sized.left), ("right", begins[1], sized.right)):
        yield from _of_edge("left" if side == "left" else "right", begin, runs)


def _of_edge(side: EdgeSide, begin: int, runs: tuple[SizedRun, ...]) -> Iterator[InsideMove]:
    place = begin
    for run in runs:
        for row, by in run.changes():
            one = 1 if by > 0 else -1
            for number, line in enumerate(run.lines[: abs(by)]):
                stays = line.at if line.of == "needle" else place - line.at
                # The outermost line is worked first, and goes with what the lines within it move.
                at = stays + number * one + (1 if by > 0 else 0)
                yield InsideMove(side, run, number, row, one, -at if side == "left" else at - 1)
            place += by
