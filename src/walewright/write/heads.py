"""Heads: which sizes something is for, where not all of them work it."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.knit.steps import KnitRows, KnitTo, Now, Repeat, Step, numbers
from walewright.report.said import said
from walewright.write.align import Column
from walewright.write.language import PrintedLanguage
from walewright.write.said import prose


def only(sizes: Sequence[int], of: int, language: PrintedLanguage) -> str:
    """ "S, M only" for the indices `sizes`; nothing when they are all `of` them."""
    return "" if len(sizes) == of else prose(said("only", sizes=language.named_sizes(sizes)), language)


def varies(column: Column[Step]) -> bool:
    """Whether a dash for the sizes that skip a step can stand in it: among numbers that the others have graded anyhow, or with
    rows; of a repeat, with its times, if it is one in any of them. "Decrease 1 (1: –) st" is said of some sizes instead."""
    steps = [step for step in column if step is not None]
    if isinstance(steps[0], Repeat):
        return any(isinstance(step, Repeat) and step.times != 1 for step in steps)
    if isinstance(steps[0], KnitRows | KnitTo | Now):
        return True
    told = {numbers(step) for step in steps}
    return len(told) > 1 or (len(steps) == 1 and 1 not in numbers(steps[0]))
