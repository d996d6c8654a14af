"""Mirror images: the schedule of the model, each move a row earlier or later where the carriage's side asks for it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import zip_longest

from walewright.counted.model import ShapingPhrase, SizedRun
from walewright.design.model import EdgeRun
from walewright.record import replace
from walewright.solve.schedule.shaping import edge_runs
from walewright.solve.schedule.spans import LEFT, RIGHT, ShapingSpan

Gaps = Mapping[int, int]
"""Number of a phrase to the rows that its first gap is longer."""


def turned_runs(run: EdgeRun, whose: str, spans: Sequence[ShapingSpan]) -> tuple[SizedRun, ...] | None:
    """A run of an edge of a mirror image, in every size: as its model's edge has it at the other side. Where no shift by a row
    leaves hands the room they need, it is scheduled for itself."""
    model = edge_runs(run, LEFT if whose == RIGHT else RIGHT, spans)
    if model is None or run.path == "across" or run.rates or run.begins_moving:
        # Moves at a rate, and from the first row on, are made on the same rows, or where the carriage is by then.
        return edge_runs(run, whose, spans)
    for by in (-1, 1) if whose == RIGHT else (1, -1):
        gaps = [_gaps(sized, span, by, whose) for sized, span in zip(model, spans, strict=True)]
        known = [found for found in gaps if found is not None]
        if len(known) == len(gaps):
            apart = frozenset(number for found in known for number in found)
            made = [_moved(sized.phrases, of_size, apart) for sized, of_size in zip(model, known, strict=True)]
            # A size may have more phrases than another.
            worked = [any(phrase and phrase.times for phrase in alike) for alike in zip_longest(*made)]
            kept = (tuple(p for p, some in zip(phrases, worked, strict=False) if some) for phrases in made)
            return tuple(replace(sized, phrases=phrases) for sized, phrases in zip(model, kept, strict=True))
    return edge_runs(run, whose, spans)


def _needs_carriage(run: SizedRun, by: int) -> bool:
    return not run.way.anywhere(by)


def _gaps(run: SizedRun, span: ShapingSpan, by: int, whose: str) -> Gaps | None:
    """By how much first gaps change, so that all moves up to the last one that needs the carriage come `by` rows later; None if
    they cannot. In a part the carriage begins at the outer edge, whichever that is."""
    moves = list(run.changes())
    needing = [i for i, (_, change) in enumerate(moves) if _needs_carriage(run, change)]
    parted = [span.in_parts(moves[i][0] - span.from_row) for i in needing]
    if not needing or all(parted):
        return {}
    if any(parted):
        return None
    rows = [row - span.from_row + (by if i <= needing[-1] else 0) for i, (row, _) in enumerate(moves)]
    first = (0 if span.cast_off else 2) if whose == RIGHT else 2 if span.from_row == 0 and span.sign > 0 else 1
    after = [least + (2 if least == 0 else 1) for least in rows[:-1]]
    if rows[0] < first or rows[-1] >= span.rows or any(row < least for row, least in zip(rows[1:], after, strict=True)):
        return None
    phrases = [k for k, phrase in enumerate(run.phrases) for _ in range(phrase.times * len(phrase.by))]
    found = {phrases[0]: by}
    if needing[-1] + 1 < len(moves):
        found[phrases[needing[-1] + 1]] = -by
    return found


def _moved(phrases: Sequence[ShapingPhrase], gaps: Gaps, apart: frozenset[int]) -> tuple[ShapingPhrase, ...]:
    """The phrases with other first gaps; those `apart` are in two in every size, the first time by itself."""
    made: list[ShapingPhrase] = []
    for number, phrase in enumerate(phrases):
        if number not in apart:
            made.append(phrase)
            continue
        once = min(phrase.times, 1)
        gap = phrase.gaps[0] + (gaps.get(number, 0) if once else 0)
        made += [ShapingPhrase((gap, *phrase.gaps[1:]), phrase.by, once), replace(phrase, times=phrase.times - once)]
    return tuple(made)
