"""Together: shapings that go on at the same time, one line each under a line that names their rows."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from walewright.knit import steps as st
from walewright.knit.steps import Step
from walewright.report.said import said as said_of
from walewright.write.align import Column, align, closeness, likeness
from walewright.write.filling import phrase as filled_phrase
from walewright.write.heads import only, varies
from walewright.write.language import PrintedLanguage
from walewright.write.model import Sentence
from walewright.write.said import Phrase, StepSaid, between, capital, titled, worded
from walewright.write.words import PARTS, has_number, kinds, phrase, repeated, worked


def side_by_side(column: Column[st.Together], group: tuple[int, ...], language: PrintedLanguage) -> tuple[Sentence, ...]:
    """The rows, then a line for each track. `group` are the sizes that the lines are printed for."""
    said = StepSaid(column, group)
    runs = filled_phrase("together", language, said, PARTS)
    head = Sentence(runs, said.working, "", "", said.any.origin, True, ("Together",))
    rows = align([() if step is None else step.tracks for step in column], lambda track: track.title)
    return (head, *(_line(tracks, group, language) for tracks in rows))


def _line(tracks: Column[st.Track], group: tuple[int, ...], language: PrintedLanguage) -> Sentence:
    title = said_of("buttonholes") if buttonholes(tracks) else next(t.title for t in tracks if t is not None)
    steps = [() if t is None else tuple(s for s in t.steps if worked(s)) for t in tracks]
    told: list[str] = []
    phrases: list[Phrase] = []
    for column in align(steps, likeness, closeness):
        said = StepSaid(column, group)
        phrases.append(_for_some(said, language) if _apart(column, group, language) else phrase(said, language))
        told += kinds(said)
    all_of_it = worded(*between(language.sentences["between"], phrases))
    runs = capital(filled_phrase("track", language, title=titled(title, language), steps=all_of_it))
    working = tuple(i for i, t in enumerate(tracks) if t is not None)
    origin = next((t.origin for t in tracks if t is not None and t.origin), "")
    return Sentence(runs, working, "", "", origin, False, tuple(told), goes_on=True)


def buttonholes(tracks: Column[st.Track]) -> bool:
    """Whether nothing is done but to make holes of one kind above each other."""
    steps = [s for t in tracks if t is not None for s in _each(t.steps) if not isinstance(s, st.KnitRows)]
    return all(isinstance(s, st.SlotClosed) for s in steps) or all(isinstance(s, st.EyeletAt) for s in steps)


def _each(steps: Iterable[Step]) -> Iterator[Step]:
    for step in steps:
        yield from _each(step.body) if isinstance(step, st.Repeat) else (step,)


def _apart(column: Column[Step], group: tuple[int, ...], language: PrintedLanguage) -> bool:
    """Whether some sizes skip words that have no graded number to be a dash: then it is named which sizes work them."""
    if all(column[i] is not None for i in group):
        return False
    return not varies(column) or not all(has_number(s, language) for s in column if s is not None)


def _for_some(said: StepSaid, language: PrintedLanguage) -> Phrase:
    """The words with the sizes that work them, in square brackets."""
    alone = StepSaid(said.steps, said.working)
    body = repeated(alone, language) if isinstance(said.any, st.Repeat) else phrase(alone, language)
    sizes = only(said.working, len(said.steps), language)
    return filled_phrase("for_some", language, sizes=sizes, body=body)
