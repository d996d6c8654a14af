"""Trials of the source with other changes, as many as a bound of work allows.

Work is reckoned from what is counted and knitted, never from a clock: a copy is explained in the same words on every computer.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from walewright.design import Changes
    from walewright.pipeline import Outcome

MOST_WORK = 40_000
"""Of all trials together. A unit is what takes a millisecond on the computer where this was measured: the largest garment, in six
sizes, is counted a dozen times."""
A_TRIAL = 100
"""Of each, whatever is in it (measured, as the next two)."""
A_HEIGHT = 18
"""Of each level of each piece in each size, counted."""
STITCHES = 125
"""So many, knitted and read back, are a unit."""


@dataclass(slots=True)
class Trials:
    """How to compile the source with some changes: `count` as far as its stitches and rows, `whole` to the proof; and how much
    work is `left`."""

    count: Callable[[Changes], Outcome]
    whole: Callable[[Changes], Outcome]
    left: float = MOST_WORK

    @property
    def more(self) -> bool:
        """Whether another may be made."""
        return self.left > 0

    def counted(self, changes: Changes) -> Outcome:
        """As far as stitches and rows."""
        return self._tried(self.count(changes))

    def proven(self, changes: Changes) -> Outcome:
        """To the proof."""
        return self._tried(self.whole(changes))

    def _tried(self, outcome: Outcome) -> Outcome:
        self.left -= work(outcome)
        return outcome


def work(outcome: Outcome) -> float:
    """What a trial took."""
    done: float = A_TRIAL
    if outcome.design is not None and outcome.glued is not None:
        heights = sum(len(piece.levels) for piece in outcome.design.pieces if piece.mirror_of is None)
        done += A_HEIGHT * heights * len(outcome.design.sizes)
    if outcome.counts is not None and outcome.plans:
        done += sum(piece.start * piece.rows for size in outcome.counts.sizes for piece in size.pieces) / STITCHES
    return done
