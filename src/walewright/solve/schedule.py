"""Schedules of single moves: on which rows an edge moves by one step each, along a wanted line.

The move at counter value t (rows from the beginning of the run) shows from row t + 1 on. With S(i) moves done before row i,
the deviation is the greatest |S(i) - f(i - 1/2)| over all rows. It falls apart into one share for each move: moving too early
leaves the row after it ahead of the line, too late leaves the row before it behind.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

ALLOWED_BEYOND = 0.5
"""Stitches by which a schedule may be worse than the best there is, if that makes it plainer."""

CLOSE = 1e-9


@dataclass(frozen=True, slots=True)
class Taper:
    """`moves` moves over `rows` rows along `line` (`line[i - 1]` is wanted at row i, in moves).

    `slots` are the counter values at which a move can be made, rising; moves are `least_gap` rows apart at least. The first gap
    is counted from `begin`: 0, or the row of a cast-off that goes before. A move is of `size` stitches; the last one is of what
    is left of `stitches` in all (0: as many as the others)."""

    moves: int
    rows: int
    line: tuple[float, ...]
    slots: tuple[int, ...]
    least_gap: int = 1
    begin: int = 0
    size: int = 1
    stitches: int = 0

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
    slots = taper.slots
    if taper.moves == 0:
        return 0.0, ()
    # reach[k]: the least deviation with the moves so far, the last of them at slots[k]
    reach: list[float | None] = [taper.share(1, slot) for slot in slots]
    back: list[list[int]] = []
    for move in range(2, taper.moves + 1):
        following: list[float | None] = []
        origins: list[int] = []
        best: float | None = None
        best_from = -1
        before = 0
        for slot in slots:
            while before < len(slots) and slots[before] <= slot - taper.least_gap:
                value = reach[before]
                if value is not None and (best is None or value < best - CLOSE):
                    best, best_from = value, before
                before += 1
            following.append(None if best is None else max(best, taper.share(move, slot)))
            origins.append(best_from)
        reach = following
        back.append(origins)
    ends = [(value, k) for k, value in enumerate(reach) if value is not None]
    if not ends:
        return None
    least, at = min(ends)
    path = [at]
    for origins in reversed(back):
        path.append(origins[path[-1]])
    return least, tuple(slots[k] for k in reversed(path))


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
        shares = ((slot, taper.share(move, slot)) for slot in taper.slots)
        found.append({slot: share for slot, share in shares if share <= allowed + CLOSE})
    return tuple(found)
