"""Schedules of single moves: on which rows an edge moves by one step each, along a wanted line.

The move at counter value t (rows from the beginning of the run) shows from row t + 1 on. With S(i) moves done before row i,
the deviation is the greatest |S(i) - f(i - 1/2)| over all rows. It falls apart into one share for each move: moving too early
leaves the row after it ahead of the line, too late leaves the row before it behind.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from math import inf

from walewright.record import record

ALLOWED_BEYOND = 0.5
"""Stitches by which a schedule may be worse than the best there is, if that makes it plainer."""

CLOSE = 1e-9


@record
class Taper:
    """`moves` moves over `rows` rows along `line` (`line[i - 1]` is wanted at row i, in moves).

    `slots` are the counter values at which a move can be made, rising; moves are `least_gap` rows apart at least. The first gap
    is counted from `begin`: 0, or the row of a cast-off that goes before. A move is of `size` stitches; the last one is of what
    is left of `stitches` in all (0: as many as the others). `first`, `last`: the first move is made in
    the first slot, the last one in the last slot, whatever that deviates."""

    moves: int
    rows: int
    line: tuple[float, ...]
    slots: tuple[int, ...]
    least_gap: int = 1
    begin: int = 0
    size: int = 1
    stitches: int = 0
    first: bool = False
    last: bool = False

    @property
    def allowed_beyond(self) -> float:
        """Half a stitch, in moves."""
        return ALLOWED_BEYOND / self.size

    def done(self, moves: int) -> float:
        """How far the edge is after so many moves, in moves: the last may be a smaller one."""
        return self.stitches / self.size if moves == self.moves and self.stitches else float(moves)

    def share(self, move: int, slot: int) -> float:
        """How far off the line the rows just before and after the slot are, when move number `move` (1 ...) is made there."""
        ahead = self.done(move) - self.line[slot] if slot < self.rows else 0.0
        behind = self.line[slot - 1] - (move - 1) if slot > 0 else 0.0
        return max(ahead, behind, 0.0)


def least_deviation(taper: Taper) -> float | None:
    """The least greatest deviation of any schedule, None if the moves do not fit into the slots."""
    found = best_schedule(taper)
    return None if found is None else found[0]


def best_schedule(taper: Taper) -> tuple[float, tuple[int, ...]] | None:
    """(least deviation, slots used), the earliest of the best; None if the moves do not fit."""
    if taper.moves == 0:
        return 0.0, ()
    bound = _some_bound(taper)
    if bound is None:
        return None
    first, *others = places(taper, bound)
    # reach: slot of the last move so far -> the least deviation
    reach = first
    back: list[dict[int, int]] = []
    for shares in others:
        following: dict[int, float] = {}
        origins: dict[int, int] = {}
        best, best_from = inf, -1
        before = iter(reach.items())
        ahead = next(before, None)
        for slot, share in shares.items():
            while ahead is not None and ahead[0] <= slot - taper.least_gap:
                if ahead[1] < best - CLOSE:
                    best, best_from = ahead[1], ahead[0]
                ahead = next(before, None)
            if best < inf:
                following[slot] = max(best, share)
                origins[slot] = best_from
        reach = following
        back.append(origins)
    least, at = min((value, slot) for slot, value in reach.items())
    path = [at]
    for origins in reversed(back):
        path.append(origins[path[-1]])
    return least, tuple(reversed(path))


def _some_bound(taper: Taper) -> float | None:
    """A deviation that some schedule keeps within, not much more than the least one; None if the moves do not fit at all.

    Places that deviate at most so much are slots in a row, and those of a later move lie later: taking the earliest that is
    free finds a schedule if there is one."""
    bound = ALLOWED_BEYOND
    while True:
        if _fits(taper, bound):
            return bound
        if bound > 2 * taper.moves:
            # No place is farther off than all moves.
            return None
        bound *= 2


def _fits(taper: Taper, bound: float) -> bool:
    last = -taper.least_gap
    for move in range(1, taper.moves + 1):
        low, high = _window(taper, move, bound)
        at = max(low, bisect_left(taper.slots, last + taper.least_gap))
        if at >= high:
            return False
        last = taper.slots[at]
    return True


def _window(taper: Taper, move: int, bound: float) -> tuple[int, int]:
    """The slots, by number from the first to before the last, where a move deviates at most so much: the line never falls."""
    if taper.last and move == taper.moves:
        return len(taper.slots) - 1, len(taper.slots)
    if taper.first and move == 1:
        return 0, 1
    before = float(move - 1)
    low = bisect_left(taper.line, taper.done(move) - bound - CLOSE)
    high = bisect_right(taper.line, before + bound + CLOSE) + 1
    return bisect_left(taper.slots, low), bisect_left(taper.slots, high)


def deviation(taper: Taper, used: Sequence[int]) -> float:
    """The greatest deviation of the moves at these slots, row by row, as the definition says."""
    worst = 0.0
    for row in range(1, taper.rows + 1):
        done = taper.done(sum(1 for slot in used if slot < row))
        worst = max(worst, abs(done - taper.line[row - 1]))
    return worst


def places(taper: Taper, allowed: float) -> tuple[dict[int, float], ...]:
    """For each move, the slots that keep its share within `allowed`, rising, each with its share."""
    found: list[dict[int, float]] = []
    for move in range(1, taper.moves + 1):
        low, high = _window(taper, move, allowed)
        found.append({slot: taper.share(move, slot) for slot in taper.slots[low:high]})
    return tuple(found)
