"""Shapings told one by one and worked together: the tracks under a line that names their rows, put into one order of rows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from walewright.readback.hands import Contradiction
from walewright.readback.phrases import ReadGraded, ReadPhrase

_FIRST = (
    ("wrap_held",),
    ("latch_rib", "latch_panel"),
    ("return_held", "return_some", "carriage_to_knit"),
    ("use_yarn_step",),
    ("spread_evenly",),
    ("hold_at_end", "carriage_to_hold"),
)
"""What goes before the rest at one row, and in which order: the yarn has just come past what is to be wrapped."""


_COUNTER = ("knit_to", "set_row_counter", "now", "now_in_half")
"""What names the counter."""


@dataclass(slots=True)
class Shapings:
    """Rows `begin` to `end` of the counter (None: this size works nothing here), printed as characters `start`..`stop`, and the
    phrases of each track, repeats written out."""

    begin: int | None
    end: int | None
    start: int
    stop: int
    ways: tuple[ReadPhrase, ...] = ()
    """At which rows something is done on the way."""
    tracks: list[tuple[str, list[ReadPhrase], tuple[int, ...] | None]] = field(default_factory=list)
    """Each with the readings of the counter at each of which all of it is done, where they are named."""

    def in_rows(self, size: int) -> Iterator[ReadPhrase]:
        """What is done, row by row. Raises `Contradiction` where a track does not count the rows named."""
        if self.begin is None or self.end is None:
            if any(phrases for _, phrases, _ in self.tracks):
                raise Contradiction("contradiction/work-without-rows")
            return
        todo: list[tuple[int, int, int, ReadPhrase]] = []
        for number, (title, phrases, readings) in enumerate(self.tracks):
            if readings is not None:
                rows = (self._within(reading) for reading in readings)
                todo += ((row, _rank(phrase), number, phrase) for row in rows for phrase in _at_once(phrases))
                continue
            at = self.begin
            for phrase in phrases:
                if phrase.kind == "knit_rows":
                    at += _rows(phrase, size)
                elif phrase.kind in _COUNTER:
                    raise Contradiction("contradiction/counter-within-tracks")
                else:
                    todo.append((at, _rank(phrase), number, phrase))
            if phrases and at != self.end:
                raise Contradiction("contradiction/rows-of-track", track=title, rows=at - self.begin, wanted=self.end - self.begin)
        at = self.begin
        yield ReadPhrase("reads", (ReadGraded((at,)),))
        for row, _, _, phrase in sorted(todo, key=lambda t: t[:3]):
            if row > at:
                yield ReadPhrase("knit_rows", (ReadGraded((row - at,)),))
                at = row
            yield phrase
        if self.end < at:
            raise Contradiction("contradiction/counter-goes-back", begin=self.begin, end=self.end)
        if self.end > at:
            yield ReadPhrase("knit_rows", (ReadGraded((self.end - at,)),))
        yield from self.ways

    def _within(self, reading: int) -> int:
        if self.begin is None or self.end is None or not self.begin <= reading <= self.end:
            raise Contradiction("contradiction/counter-elsewhere", counter=self.begin or 0, row=reading)
        return reading


def _at_once(phrases: Sequence[ReadPhrase]) -> Sequence[ReadPhrase]:
    """What is done at a reading of the counter: no row is knitted in it."""
    if any(phrase.kind == "knit_rows" or phrase.kind in _COUNTER for phrase in phrases):
        raise Contradiction("contradiction/counter-within-tracks")
    return phrases


def _rows(phrase: ReadPhrase, size: int) -> int:
    (rows,) = phrase.arguments
    assert isinstance(rows, ReadGraded)
    return rows.of(size) or 0


def _rank(phrase: ReadPhrase) -> int:
    return next((rank for rank, kinds in enumerate(_FIRST) if phrase.kind in kinds), len(_FIRST))
