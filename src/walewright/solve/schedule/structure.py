"""Structures: the phrases that a schedule is written in, alike in all sizes where that can be.

A structure is a list of motif lengths. (1, 2) is a phrase with one gap ("every 4th row 5 times") and then one with two
("the 3rd and then the 2nd row, 4 times"); `LONG` is one of several equal gaps and another, however many they are in a size
("3 times the 2nd row and then the 3rd, 20 times"). A size may work a phrase no times at all.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache

from walewright.counted.model import ShapingPhrase
from walewright.record import record
from walewright.solve.schedule.schedule import CLOSE, Taper, least_deviation, places

Structure = tuple[int, ...]

STRUCTURES: tuple[Structure, ...] = (
    (1,),
    (1, 1),
    (2,),
    (2, 1),
    (1, 2),
    (1, 1, 1),
    (2, 2),
    (1, 1, 2),
    (1, 2, 1),
    (2, 1, 1),
    (1, 1, 1, 1),
    (2, 1, 2),
    (2, 2, 1),
    (1, 2, 2),
    (1, 2, 1, 2),
    (2, 1, 2, 1),
)
"""Plainest first: fewest phrases, and of as many those with fewer gaps to keep in mind."""

LONG = 3
"""A motif of so many gaps or more, all alike but the last."""

LONG_STRUCTURES: tuple[Structure, ...] = (
    (LONG,),
    (1, LONG),
    (LONG, 1),
    (2, LONG),
    (LONG, 2),
    (LONG, LONG),
    (1, LONG, 1),
    (1, LONG, LONG),
    (LONG, LONG, 1),
    (LONG, LONG, LONG),
)
"""For slopes so long that none of the others keeps to them: a count within a count is harder to keep, and a dozen phrases harder
still."""

LONGEST_MOTIF = 6
"""Gaps of a motif: more than that no knitter keeps in mind for a round (from memory)."""

ALIKE = 2
"""Rows by which the two gaps of a motif may differ: the next row, or the next that the carriage allows."""

MORE_PHRASES = 1
"""A structure may have so many phrases more, if all sizes then work every one of them."""

_LONGEST = 12
"""Phrases that one size may take when no common structure fits."""


@record
class _PhrasesFound:
    """Phrases so far: their greatest deviation, how uneven their gaps are (squares, added up), and the last of them as (gaps,
    times) with what goes before it."""

    worst: float
    uneven: float
    last: tuple[tuple[int, ...], int] | None = None
    before: _PhrasesFound | None = None

    def phrases(self) -> tuple[tuple[tuple[int, ...], int], ...]:
        """All phrases, the first first."""
        found: list[tuple[tuple[int, ...], int]] = []
        at: _PhrasesFound | None = self
        while at is not None and at.last is not None:
            found.append(at.last)
            at = at.before
        return tuple(reversed(found))


_PhraseState = tuple[int, int]
"""Moves made and the slot of the last one (before the first: where its gap is counted from)."""


def phrase_schedules(tapers: Sequence[Taper], by: Sequence[int]) -> tuple[tuple[ShapingPhrase, ...], ...] | None:
    """Phrases for each taper, of one structure where possible; each move is `by[i]` stitches in size i.

    None if the moves of some taper do not fit into its slots. No schedule deviates more than half a stitch above the least
    that is possible.
    """
    searches: dict[Taper, _PhraseSearch] = {}
    for taper in tapers:
        if taper not in searches:
            search = _search(taper)
            if search is None:
                return None
            searches[taper] = search
    if not any(taper.moves for taper in tapers):
        return tuple(() for _ in tapers)
    structure = _common([search for taper, search in searches.items() if taper.moves])
    if structure is not None:
        made = [searches[taper].best(structure) for taper in tapers]
        return tuple(_phrases(f, structure, step) for f, step in zip(made, by, strict=True) if f is not None)
    alone = [searches[taper].fewest() for taper in tapers]
    return tuple(_phrases(f, tuple(len(g) for g, _ in f.phrases()), step) for f, step in zip(alone, by, strict=True))


@lru_cache(maxsize=256)
def _search(taper: Taper) -> _PhraseSearch | None:
    """Remembered: where levels are found by trying, most tapers are tried again."""
    least = least_deviation(taper)
    return None if least is None else _PhraseSearch(taper, least + taper.allowed_beyond)


def _common(searches: Sequence[_PhraseSearch]) -> Structure | None:
    """The plainest structure that suits all; rather one with a phrase more than one whose phrases some size leaves out: then every
    size reads the same sentences."""
    suits = next((s for s in (*STRUCTURES, *LONG_STRUCTURES) if all(search.fits(s) for search in searches)), None)
    if suits is None:
        return None
    longest = len(suits) + MORE_PHRASES
    of_its_kind = LONG_STRUCTURES if suits in LONG_STRUCTURES else STRUCTURES
    whole = (s for s in of_its_kind if len(s) <= longest and all(search.fits_whole(s) for search in searches))
    return next(whole, suits)


def _phrases(found: _PhrasesFound, structure: Structure, step: int) -> tuple[ShapingPhrase, ...]:
    made = [ShapingPhrase(gaps, (step,) * len(gaps), times) for gaps, times in found.phrases()]
    # A phrase not worked in this size keeps its place, so that the sizes line up.
    return tuple(
        phrase if phrase.times else ShapingPhrase((1,) * length, (step,) * length, 0)
        for phrase, length in zip(made, structure, strict=True)
    )


def _finished(states: dict[_PhraseState, _PhrasesFound], moves: int) -> _PhrasesFound | None:
    ends = [(found.worst, found.uneven, slot, found) for (made, slot), found in states.items() if made == moves]
    return min(ends, key=lambda e: (round(e[0], 9), round(e[1], 9), e[2]))[3] if ends else None


class _PhraseSearch:
    """Phrases that keep every move of a taper at a place that is allowed. What a beginning of phrases leads to is worked out
    once for all structures that begin so."""

    def __init__(self, taper: Taper, limit: float) -> None:
        self.taper = taper
        self.places = places(taper, limit)
        self.even = taper.rows / max(taper.moves, 1)
        begin = {(0, taper.begin): _PhrasesFound(0.0, 0.0)}
        self.reached: dict[tuple[Structure, bool], dict[_PhraseState, _PhrasesFound]] = {((), True): begin, ((), False): begin}

    def fits(self, structure: Structure) -> bool:
        """Whether some schedule of that structure keeps within the limit."""
        return _finished(self._after(structure, True), self.taper.moves) is not None

    def fits_whole(self, structure: Structure) -> bool:
        """Whether one does that leaves no phrase out."""
        return _finished(self._after(structure, False), self.taper.moves) is not None

    def best(self, structure: Structure) -> _PhrasesFound | None:
        """The least deviating schedule of that structure, if possible with all its phrases; None if none keeps within the limit."""
        whole = _finished(self._after(structure, False), self.taper.moves)
        return whole or _finished(self._after(structure, True), self.taper.moves)

    def _after(self, structure: Structure, may_skip: bool) -> dict[_PhraseState, _PhrasesFound]:
        key = (structure, may_skip)
        if key not in self.reached:
            before = self._after(structure[:-1], may_skip)
            self.reached[key] = self.after_phrase(before, structure[-1], may_skip)
        return self.reached[key]

    def fewest(self) -> _PhrasesFound:
        """The schedule with the fewest phrases; there always is one, since the best schedule is within the limit."""
        states: dict[_PhraseState, _PhrasesFound] = {(0, self.taper.begin): _PhrasesFound(0.0, 0.0)}
        seen = set(states)
        for _ in range(max(_LONGEST, self.taper.moves)):
            done = _finished(states, self.taper.moves)
            if done is not None:
                return done
            merged: dict[_PhraseState, _PhrasesFound] = {}
            for length in (1, 2):
                for state, found in self.after_phrase(states, length, may_skip=False).items():
                    if _beats(found.worst, found.uneven, merged.get(state)):
                        merged[state] = found
            # What fewer phrases led to already leads on with fewer in all.
            states = {state: found for state, found in merged.items() if state not in seen}
            seen |= states.keys()
        done = _finished(states, self.taper.moves)
        assert done is not None, "the best schedule has at most one phrase a move"
        return done

    def after_phrase(
        self, states: dict[_PhraseState, _PhrasesFound], length: int, may_skip: bool
    ) -> dict[_PhraseState, _PhrasesFound]:
        """The states that one more phrase of `length` gaps leads to, each with the least deviating way there."""
        reached: dict[_PhraseState, _PhrasesFound] = {}
        if may_skip:
            skipped = ((1,) * length, 0)
            for state, found in states.items():
                reached[state] = _PhrasesFound(found.worst, found.uneven, skipped, found)
        for (made, slot), found in states.items():
            for gaps in self._motifs(made, slot, length):
                self._work(reached, made, slot, found, gaps)
        return reached

    def _work(
        self, reached: dict[_PhraseState, _PhrasesFound], made: int, slot: int, found: _PhrasesFound, gaps: tuple[int, ...]
    ) -> None:
        places, moves, even = self.places, self.taper.moves, self.even
        worst, uneven, times = found.worst, found.uneven, 0
        each = sum((gap - even) ** 2 for gap in gaps)
        while made + len(gaps) <= moves:
            for gap in gaps:
                slot += gap
                share = places[made].get(slot)
                if share is None:
                    return
                made += 1
                if share > worst:
                    worst = share
            times += 1
            uneven += each
            known = reached.get((made, slot))
            if known is None or _beats(worst, uneven, known):
                reached[made, slot] = _PhrasesFound(worst, uneven, (gaps, times), found)

    def _motifs(self, made: int, slot: int, length: int) -> Iterator[tuple[int, ...]]:
        if made + length > self.taper.moves:
            return
        for gap in self._gaps(made, slot):
            if length == 1:
                yield (gap,)
            elif length == LONG:
                yield from self._long_motifs(made, slot, gap)
            else:
                # Twice the same gap is a phrase of one.
                yield from ((gap, second) for second in self._gaps(made + 1, slot + gap) if 0 < abs(second - gap) <= ALIKE)

    def _long_motifs(self, made: int, slot: int, gap: int) -> Iterator[tuple[int, ...]]:
        """Several of that gap and another one."""
        for alike in range(1, min(LONGEST_MOTIF, self.taper.moves - made)):
            slot += gap
            if slot not in self.places[made + alike - 1]:
                return
            if alike >= LONG - 1:
                yield from ((*(gap,) * alike, last) for last in self._gaps(made + alike, slot) if 0 < abs(last - gap) <= ALIKE)

    def _gaps(self, made: int, slot: int) -> Iterator[int]:
        """Gaps that bring the next move to a place of its own. The first move of all waits for a row to be knitted."""
        least = slot + (self.taper.least_gap if made else 1)
        for at in self.places[made]:
            if at >= least:
                yield at - slot


def _beats(worst: float, uneven: float, known: _PhrasesFound | None) -> bool:
    """Whether it deviates less, or, deviating alike, has the more even gaps."""
    if known is None or worst < known.worst - CLOSE:
        return True
    return worst <= known.worst + CLOSE and uneven < known.uneven - CLOSE
