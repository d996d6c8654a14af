"""Steps of several sizes: phrases of moves that are one like another, made into those steps, one after the other."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.counted.model import ShapingPhrase
from walewright.solve.schedule.spans import ShapingSpan

_PhrasePart = tuple[int, int, int]
"""(number of the phrase, number of the steps alike, 0: before whole motifs, 1: whole motifs, 2: after them)."""


def in_their_steps(
    phrases: Sequence[tuple[ShapingPhrase, ...]], spans: Sequence[ShapingSpan]
) -> tuple[tuple[ShapingPhrase, ...], ...]:
    """The phrases of every size, each parted where its steps change. A part that another size has is worked no times."""
    made = [list(_parted(of_size, span)) for of_size, span in zip(phrases, spans, strict=True)]
    places = sorted({place for of_size in made for place, _ in of_size})
    longest = {place: max(sum(at == place for at, _ in of_size) for of_size in made) for place in places}
    idle = {place: next(phrase for of_size in made for at, phrase in of_size if at == place) for place in places}
    lined: list[tuple[ShapingPhrase, ...]] = []
    for of_size in made:
        of_places: list[ShapingPhrase] = []
        for place in places:
            own = [phrase for at, phrase in of_size if at == place]
            pattern = idle[place]
            own += [ShapingPhrase(pattern.gaps, pattern.by, 0)] * (longest[place] - len(own))
            of_places += own
        lined.append(tuple(of_places))
    return tuple(lined)


def _parted(phrases: Sequence[ShapingPhrase], span: ShapingSpan) -> Iterator[tuple[_PhrasePart, ShapingPhrase]]:
    """The phrases of one size, each with its place among those of all."""
    steps = [(number, span.sign * stitches, times) for number, (stitches, times) in enumerate(span.in_turn) if times]
    for at, phrase in enumerate(phrases):
        motif, left = len(phrase.gaps), phrase.times * len(phrase.gaps)
        done = 0
        while left:
            number, by, times = steps[0]
            if done % motif:
                many, place, gaps = min(times, motif - done % motif), 0, phrase.gaps[done % motif :]
            elif times >= motif and left >= motif:
                many, place, gaps = min(times, left) // motif * motif, 1, phrase.gaps
            else:
                many, place, gaps = min(times, left), 2, phrase.gaps
            gaps = gaps if place == 1 else gaps[:many]
            yield (at, number, place), ShapingPhrase(gaps, (by,) * len(gaps), many // len(gaps))
            done, left = done + many, left - many
            steps = [(number, by, times - many), *steps[1:]] if times > many else steps[1:]
