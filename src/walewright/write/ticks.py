"""Ticks: what is ticked off below a line that stands for so much that one box does not say how far one has come."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from walewright.knit import steps as st
from walewright.knit.steps import Step
from walewright.write.align import Column
from walewright.write.model import Sentence

MOST_STEPS = 8
"""Steps that are kept in mind by one box."""

FEWEST_ROUNDS, MOST_ROUNDS = 3, 48
"""Rounds that are ticked off; of more, one counts on another way."""


def of_steps(referred: Iterable[Sentence]) -> tuple[int, ...]:
    """The numbers of steps that are referred to, where they are many."""
    numbers = tuple(number for sentence in referred for number in sentence.numbers)
    return numbers if len(numbers) > MOST_STEPS else ()


def of_rounds(columns: Sequence[Column[Step]]) -> tuple[int, ...]:
    """The numbers of the rounds of a line that is worked again and again with repeats of its own in it, in the size that works most
    of them."""
    rounds = max(
        (step.times for column in columns for step in column if isinstance(step, st.Repeat) and _in_rounds(step)), default=0
    )
    return tuple(range(1, rounds + 1)) if FEWEST_ROUNDS <= rounds <= MOST_ROUNDS else ()


def _in_rounds(step: st.Repeat) -> bool:
    return any(isinstance(inner, st.Repeat) for inner in step.body)
