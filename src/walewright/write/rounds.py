"""What is counted off within a sentence: rounds of spreading, rows at which a rib is latched up, numbers of the dial."""

from __future__ import annotations

from walewright.knit import steps as st
from walewright.write.filling import Part, filled
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.said import StepSaid, between


def rounds(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """Of `steps.SpreadEvenly`: the loops on each needle, stretch by stretch, and those that are left."""
    told: list[list[Part]] = []
    for prefix in ("first_", "", "more_"):
        times, singles = said.graded(f"{prefix}runs"), said.graded(f"{prefix}singles")
        if not times.always(0):
            key = "round" if singles.always(0) else "round/singles"
            told.append(list(filled(key, language, said, times=times, singles=singles)))
    rest = list(filled("rest", language, said))
    left = [_left(step) for step in said.steps if step is not None]
    if any(left):
        told.append(rest)
    return list(between(language.sentences["rounds"], told))


def _left(step: st.Step) -> int:
    """Needles that get one loop each after the last changed one."""
    assert isinstance(step, st.SpreadEvenly)
    return step.left


def rows_listed(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """The rows of the stages. Sizes that have fewer have dashes before their last one."""
    lists = [list(step.rows) if isinstance(step, st.LatchInStages | st.LatchPanelInStages) else None for step in said.steps]
    longest = max(len(rows) for rows in lists if rows)
    columns = ([_graded_row(lists, i, longest, said).number(language)] for i in range(longest))
    return list(between(language.sentences["between"], columns, language.sentences["and"]))


def _graded_row(lists: list[list[int] | None], number: int, longest: int, said: StepSaid) -> Graded:
    def row(rows: list[int] | None) -> int | None:
        if not rows or (number < longest - 1 and number >= len(rows) - 1):
            return None
        return rows[-1] if number == longest - 1 else rows[number]

    return Graded(tuple(row(rows) for rows in lists), said.group)


def looser(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """By how many numbers of the dial."""
    least, *most = said.any.by
    if most:
        return list(filled("looser/range", language, least=least, most=most[0]))
    return list(filled("looser", language, least=least))
