"""Together: shapings that go on at the same time, one line each under a line that names their rows."""

from __future__ import annotations

from functools import partial
from itertools import groupby

from walewright.knit import steps as st
from walewright.knit.merging import in_turn
from walewright.knit.steps import Step
from walewright.report.said import said as said_of
from walewright.write.align import Column, align, closeness, likeness
from walewright.write.filling import phrase as filled_phrase
from walewright.write.heads import only, varies
from walewright.write.language import PrintedLanguage
from walewright.write.model import Sentence
from walewright.write.rounds import readings as rows_of
from walewright.write.said import Phrase, StepSaid, between, capital, titled, worded
from walewright.write.words import PARTS, has_number, kinds, phrase, repeated, worked


def side_by_side(column: Column[st.Together], group: tuple[int, ...], language: PrintedLanguage) -> tuple[Sentence, ...]:
    """The rows, then a line for each track. `group` are the sizes that the lines are printed for."""
    said = StepSaid(column, group)
    runs = filled_phrase("together", language, said, PARTS)
    head = Sentence(runs=runs, sizes=said.working, row="", side="", origin=said.any.origin, check=True, kinds=("Together",))
    rows = align([() if step is None else step.tracks for step in column], lambda track: track.title)
    crowded = any(step is not None and sum(not told_by_readings(t) for t in step.tracks) > MOST_TRACKS for step in column)
    told = partial(_line, column=column, crowded=crowded, group=group, language=language)
    return (head, *map(told, rows))


def _line(
    tracks: Column[st.Track], *, column: Column[st.Together], crowded: bool, group: tuple[int, ...], language: PrintedLanguage
) -> Sentence:
    """A track of those of a `column`: of rows to count, or of readings where each time the same is done; in a crowd by its
    readings wherever that can be said."""
    title = said_of("buttonholes") if buttonholes(tracks) else next(t.title for t in tracks if t is not None)
    begun = tuple(None if step is None else step.from_row for step in column)
    readings = all(t is None or told_by_readings(t) or (crowded and few_readings(t)) for t in tracks)
    # The dash of a size that does nothing stands with the reading.
    group_of_steps = tuple(i for i in group if tracks[i] is not None) if readings else group
    at_each = [() if t is None else at_readings(t, at or 0) for t, at in zip(tracks, begun, strict=True)]
    steps = [found[0][1] if readings and found else _worked(t) if t else () for t, found in zip(tracks, at_each, strict=True)]
    told: list[str] = []
    phrases: list[Phrase] = []
    for steps_of_sizes in align(steps, likeness, closeness):
        said = StepSaid(steps_of_sizes, group_of_steps)
        apart = _apart(steps_of_sizes, tracks, group_of_steps, language)
        phrases.append(_for_some(said, language) if apart else phrase(said, language))
        told += kinds(said)
    all_of_it = worded(*between(language.sentences["between"], phrases))
    if readings:
        lists = [tuple(row for row, _ in found) or None for found in at_each]
        rows = rows_of(lists, group, language)
        runs = capital(filled_phrase("track/at", language, title=titled(title, language), rows=rows, steps=all_of_it))
    else:
        runs = capital(filled_phrase("track", language, title=titled(title, language), steps=all_of_it))
    working = tuple(i for i, t in enumerate(tracks) if t is not None)
    origin = next((t.origin for t in tracks if t is not None and t.origin), "")
    return Sentence(runs=runs, sizes=working, row="", side="", origin=origin, check=False, kinds=tuple(told), goes_on=True)


def _worked(track: st.Track) -> tuple[Step, ...]:
    return tuple(s for s in track.steps if worked(s))


def moves_of(track: st.Track, begun: int) -> list[tuple[int, Step]]:
    """What is done in a track that begins at a reading of the counter, and at which."""
    at, found = begun, list[tuple[int, Step]]()
    for step in in_turn(track.steps):
        if isinstance(step, st.KnitRows):
            at += step.rows
        else:
            found.append((at, step))
    return found


def at_readings(track: st.Track, begun: int) -> list[tuple[int, tuple[Step, ...]]]:
    """What is done at each reading of the counter, in a track that begins at one."""
    found = groupby(moves_of(track, begun), key=lambda move: move[0])
    return [(row, tuple(step for _, step in moves)) for row, moves in found]


MOST_TRACKS = 2
"""What goes on at the same time and is still told side by side; what has its readings of the counter is looked up."""

MOST_READINGS = 4
"""Readings at which the same is done each time, and which can be looked up beside two shapings that are counted."""


def few_readings(track: st.Track) -> bool:
    """Whether the same is done at few readings of the counter."""
    found = at_readings(track, 0)
    return len(found) <= MOST_READINGS and len({steps for _, steps in found}) == 1


def told_by_readings(track: st.Track) -> bool:
    """Whether the readings of the counter say all: something that is done once, or the same holes each time. Nobody has to count
    for it."""
    moves = moves_of(track, 0)
    if len(moves) == 1:
        return True
    each = {steps for _, steps in at_readings(track, 0)}
    return buttonholes((track,)) and len(each) == 1


def buttonholes(tracks: Column[st.Track]) -> bool:
    """Whether nothing is done but to make holes of one kind above each other."""
    steps = [s for t in tracks if t is not None for s in in_turn(t.steps) if not isinstance(s, st.KnitRows)]
    return all(isinstance(s, st.SlotClosed) for s in steps) or all(isinstance(s, st.EyeletAt) for s in steps)


def _apart(column: Column[Step], tracks: Column[st.Track], group: tuple[int, ...], language: PrintedLanguage) -> bool:
    """Whether some sizes skip words that have no graded number to be a dash, or most of those that work the track skip them, which
    makes a row of dashes: then it is named which sizes work them."""
    if all(column[i] is not None for i in group):
        return False
    skipping = sum(tracks[i] is not None and column[i] is None for i in group)
    if skipping and 2 * skipping >= sum(tracks[i] is not None for i in group):
        return True
    return not varies(column) or not all(has_number(s, language) for s in column if s is not None)


def _for_some(said: StepSaid, language: PrintedLanguage) -> Phrase:
    """The words with the sizes that work them, in square brackets."""
    alone = StepSaid(said.steps, said.working)
    body = repeated(alone, language) if isinstance(said.any, st.Repeat) else phrase(alone, language)
    sizes = only(said.working, len(said.steps), language)
    return filled_phrase("for_some", language, sizes=sizes, body=body)
