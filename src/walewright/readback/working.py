"""Working a section: its lines in order, as one size's knitter obeys them, and the steps of earlier sections that they refer to."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from typing import cast

from walewright.readback.halves import mirrored
from walewright.readback.hands import Contradiction
from walewright.readback.layout import PrintedLine, PrintedSection, is_note, section_name
from walewright.readback.phrases import (
    Argument,
    ReadEased,
    ReadForSome,
    ReadGraded,
    ReadPhrase,
    ReadRepeat,
    ReadRows,
    ReadRun,
    ReadSaid,
    ReadTrack,
)
from walewright.readback.sentences import LinesSaid, Unreadable
from walewright.readback.together import Shapings

MOST_PHRASES = 100_000
"""In one section, repeats written out. A piece has some hundreds; see also `hands.MOST_MOVES`."""

Obey = Callable[[ReadPhrase], None]
ReadAs = Callable[[ReadPhrase], ReadPhrase]
SaidInstead = Mapping[int, tuple[ReadSaid, ...]]
"""What lines, by where they begin, say otherwise than they are printed."""

_AGAIN = ("again", "again_mirrored", "again_on", "again_along", "again_far")
"""Phrases that refer to steps said above."""


class SectionAtWork:
    """One section of size number `size`. `start`..`end` are the characters of the text that are being obeyed."""

    def __init__(self, section: PrintedSection, size: int, obey: Obey, said: LinesSaid) -> None:
        self.start, self.end = section.start, section.end
        self._section, self._size, self._obey, self._said = section, size, obey, said
        self._done = 0
        self._together: Shapings | None = None
        self._read: ReadAs = _as_it_is
        self._instead: SaidInstead = {}

    def all_of_it(self, before: Sequence[PrintedSection]) -> None:
        """Do what the section says; `before` are those that stand earlier in the text. Raises `Contradiction`."""
        for line in self._section.lines:
            if not self._passed_by(line):
                told = _told(line, self._said)
                first = told[0]
                if isinstance(first, ReadPhrase) and first.kind in _AGAIN:
                    self.start, self.end = line.start, line.end
                    if first.kind == "again_far":
                        self._as_far(first, line, before)
                    else:
                        self._again(first, *self._referred(first, line, before), line)
                else:
                    self._line(told, line)
        self._close()

    def _referred(
        self, phrase: ReadPhrase, line: PrintedLine, before: Sequence[PrintedSection]
    ) -> tuple[tuple[PrintedLine, ...], ReadAs]:
        """The lines that are referred to, and how their phrases are read."""
        if phrase.kind == "again_mirrored":
            return self._other_half(phrase, line), mirrored
        lines = referred(phrase, line, before, self._said)
        if phrase.kind == "again_along":
            self._instead = _along(phrase, lines, self._said)
        return lines, _on(phrase, lines, self._said) if phrase.kind == "again_on" else _as_it_is

    def _passed_by(self, line: PrintedLine) -> bool:
        return is_note(line, self._said.language) or (line.only is not None and self._said.sizes[self._size] not in line.only)

    def _other_half(self, phrase: ReadPhrase, line: PrintedLine) -> tuple[PrintedLine, ...]:
        first, last, *_ = phrase.arguments
        above = tuple(one for one in self._section.lines if one.start < line.start)
        return _steps(self._section.name, above, (first, last), line, self._said)

    def _again(self, phrase: ReadPhrase, lines: tuple[PrintedLine, ...], read: ReadAs, line: PrintedLine) -> None:
        """The steps that are referred to, here, each as it is `read`, and then what is said to be true."""
        self._read = read
        stated = [a for a in phrase.arguments if isinstance(a, ReadPhrase) and a.kind == "before_last"]
        for one in lines:
            if stated and one is lines[-1]:
                self._before_last(stated[0], line)
            if not self._passed_by(one):
                self._line(self._instead.get(one.start) or _told(one, self._said), line)
        self._read, self._instead = _as_it_is, {}
        self._close()
        self.start, self.end = line.start, line.end
        for now in phrase.arguments:
            if isinstance(now, ReadPhrase) and now.kind != "edge_told" and now not in stated:
                self._reached(now)

    def _as_far(self, phrase: ReadPhrase, line: PrintedLine, before: Sequence[PrintedSection]) -> None:
        """The steps of an earlier section from one on until the counter reads so, and then what is said to be true."""
        name, first, row, *more = phrase.arguments
        within = tuple(a for told in more if isinstance(told, ReadPhrase) and told.kind == "within" for a in told.arguments)
        assert isinstance(name, str)
        assert isinstance(first, int)
        assert isinstance(row, ReadGraded)
        reading = row.of(self._size)
        if reading is None:
            return
        self._obey(ReadPhrase("as_far_as", (ReadGraded((reading,)),)))
        for one in _from_step(name, first, before, self._said):
            if not self._passed_by(one):
                told = _told(one, self._said)
                if not isinstance(told[0], ReadTrack):
                    self._close()
                    self._obey(ReadPhrase("line", (ReadGraded((one.first,)),)))
                self._line(told, line)
        self._close()
        self.start, self.end = line.start, line.end
        self._obey(ReadPhrase("so_far", within))
        for now in more:
            assert isinstance(now, ReadPhrase)
            if now.kind != "within":
                self._reached(now)

    def _before_last(self, phrase: ReadPhrase, line: PrintedLine) -> None:
        """What is said to be true before the last of the steps that a line stands for."""
        self._close()
        number, now = phrase.arguments
        if number != line.last:
            raise Contradiction("contradiction/other-last-step", last=line.last, told=cast(int, number))
        self._reached(cast(ReadPhrase, now))

    def _reached(self, now: ReadPhrase) -> None:
        if not _skipped(now, self._size):
            self._obey(ReadPhrase(f"{now.kind}_reached", now.arguments))

    def _line(self, told: tuple[ReadSaid, ...], line: PrintedLine) -> None:
        """What a line says, as characters of `line`."""
        first = told[0]
        if isinstance(first, ReadTrack):
            self.start, self.end = line.start, line.end
            if self._together is None:
                raise Contradiction("contradiction/track-without-rows")
            at = first.at.of(self._size) if isinstance(first.at, ReadRows) else None
            if at is None or at:
                self._together.tracks.append((first.title, list(self._counted(phrases(told, self._size))), at))
            self._together.stop = line.end
            return
        self._close()
        self.start, self.end = line.start, line.end
        self._begun()
        if isinstance(first, ReadPhrase) and first.kind == "together":
            begin, last = (a.of(self._size) for a in first.arguments if isinstance(a, ReadGraded))
            ways = tuple(a for a in first.arguments if isinstance(a, ReadPhrase))
            self._together = Shapings(begin, last, line.start, line.end, ways)
            return
        for phrase in self._counted(phrases(told, self._size)):
            self._obey(phrase)

    def _close(self) -> None:
        """Shapings that go on together are worked when all of them have been said."""
        together, self._together = self._together, None
        if together is not None:
            self.start, self.end = together.start, together.stop
            for phrase in together.in_rows(self._size):
                self._obey(phrase)

    def _begun(self) -> None:
        """Hands know where a line begins; what is joined off the bed is not for them."""
        if not self._section.joining:
            self._obey(ReadPhrase("line", ()))

    def _counted(self, told: Iterable[ReadPhrase]) -> Iterator[ReadPhrase]:
        for phrase in told:
            self._done += 1
            if self._done > MOST_PHRASES:
                raise Contradiction("contradiction/things-to-do", most=MOST_PHRASES)
            yield self._read(phrase)


def _as_it_is(phrase: ReadPhrase) -> ReadPhrase:
    return phrase


def _told(line: PrintedLine, said: LinesSaid) -> tuple[ReadSaid, ...]:
    told = said.read(line.words)
    assert not isinstance(told, Unreadable), "lines are looked through before"
    return told


# ----------------------------------------------------------------- steps of an earlier section


def referred(phrase: ReadPhrase, line: PrintedLine, before: Sequence[PrintedSection], said: LinesSaid) -> tuple[PrintedLine, ...]:
    """The lines that a line stands for. Raises `Contradiction` where no such lines are there, or not as many."""
    name, first, last, *_ = phrase.arguments
    assert isinstance(name, str)
    assert isinstance(first, int)
    assert isinstance(last, int)
    return _steps(name, _section_of(name, before, said).lines, (first, last), line, said)


def _section_of(name: str, before: Sequence[PrintedSection], said: LinesSaid) -> PrintedSection:
    """The one section that a sentence calls so."""
    of = section_name(name, said.language)
    found = [section for section in before if section.name == of and not section.joining]
    if not found:
        raise Contradiction("contradiction/section-missing", section=name)
    if len(found) > 1:
        raise Contradiction("contradiction/sections-alike", section=name, found=len(found))
    return found[0]


def _from_step(name: str, first: int, before: Sequence[PrintedSection], said: LinesSaid) -> tuple[PrintedLine, ...]:
    """The lines of a section from a step on, up to one that refers on."""
    lines = _section_of(name, before, said).lines
    begin = next((at for at, one in enumerate(lines) if one.first == first), None)
    if begin is None:
        raise Contradiction("contradiction/steps-of-section", section=name, first=first, last=first)
    end = next((at for at in range(begin, len(lines)) if _refers_on(lines[at], said)), len(lines))
    return lines[_with_rows(lines, begin, said) : end]


def _with_rows(lines: Sequence[PrintedLine], begin: int, said: LinesSaid) -> int:
    """Where a line begins with what stands above it: what goes on together has its rows said there."""
    while begin > 0 and isinstance(_told(lines[begin], said)[0], ReadTrack):
        begin -= 1
    return begin


def _steps(
    name: str, lines: tuple[PrintedLine, ...], numbers: tuple[Argument, Argument], line: PrintedLine, said: LinesSaid
) -> tuple[PrintedLine, ...]:
    """The lines of the steps of these `numbers`, which are as many as those that `line` stands for."""
    first, last = numbers
    assert isinstance(first, int)
    assert isinstance(last, int)
    begin = next((at for at, one in enumerate(lines) if one.first == first), None)
    end = next((at for at, one in enumerate(lines) if one.last == last), None)
    if begin is None or end is None or begin > end:
        raise Contradiction("contradiction/steps-of-section", section=name, first=first, last=last)
    if last - first != line.last - line.first:
        raise Contradiction("contradiction/steps-referred-to", wanted=line.last - line.first + 1, there=last - first + 1)
    told = lines[_with_rows(lines, begin, said) : end + 1]
    if any(_refers_on(one, said) for one in told):
        raise Contradiction("contradiction/steps-refer-on", section=name, first=first, last=last)
    return told


def _on(phrase: ReadPhrase, lines: tuple[PrintedLine, ...], said: LinesSaid) -> ReadAs:
    """How a phrase is read where the first row of another piece is hung. Raises `Contradiction` where none is."""
    piece = phrase.arguments[3]
    told_there = (one for line in lines if not is_note(line, said.language) for one in _told(line, said))
    if not any(isinstance(one, ReadPhrase) and one.kind == "rehang_start" for one in told_there):
        raise Contradiction("contradiction/nothing-hung")

    def read(told: ReadPhrase) -> ReadPhrase:
        return ReadPhrase(told.kind, (*told.arguments[:-1], piece)) if told.kind == "rehang_start" else told

    return read


def _along(phrase: ReadPhrase, lines: tuple[PrintedLine, ...], said: LinesSaid) -> SaidInstead:
    """What lines say that hang an edge, each with the next of those named in its place. Raises `Contradiction` where another number
    of edges is hung."""
    edges = [a for a in phrase.arguments if isinstance(a, ReadPhrase) and a.kind == "edge_told"]
    told_there = ((line, _told(line, said)) for line in lines if not is_note(line, said.language))
    hanging = [(line, told) for line, told in told_there if any(map(_hangs, told))]
    there = sum(_hangs(one) for _, told in hanging for one in told)
    if there != len(edges):
        raise Contradiction("contradiction/edges-hung", named=len(edges), there=there)
    others = iter(edges)
    return {line.start: tuple(_with_edge(one, next(others)) if _hangs(one) else one for one in told) for line, told in hanging}


def _hangs(one: ReadSaid) -> bool:
    return isinstance(one, ReadPhrase) and one.kind in ("pick_up_along", "hang_to_link")


def _with_edge(told: ReadSaid, edge: ReadPhrase) -> ReadPhrase:
    assert isinstance(told, ReadPhrase)
    facing, stitches, _, _, *rest = told.arguments
    # Which copy of the piece stands before the edge, where it is told.
    after = rest[2:] if isinstance(rest[0], int) else rest[1:]
    return ReadPhrase(told.kind, (facing, stitches, *edge.arguments, *after))


def _refers_on(line: PrintedLine, said: LinesSaid) -> bool:
    first = None if is_note(line, said.language) else _told(line, said)[0]
    return isinstance(first, ReadPhrase) and first.kind in _AGAIN


# ----------------------------------------------------------------- what a line says


def phrases(told: tuple[ReadSaid, ...], size: int) -> Iterator[ReadPhrase]:
    """The phrases that the size works, repeats written out."""
    for one in told:
        if isinstance(one, ReadRepeat):
            # The body's numbers mean nothing to a size that skips the repeat.
            for _ in range(one.times.of(size) or 0):
                anything = False
                for phrase in phrases(one.body, size):
                    anything = True
                    yield phrase
                if not anything:
                    break
        elif isinstance(one, ReadRun):
            for row in _rows_of_run(one, size):
                yield ReadPhrase("at", (ReadGraded((row,)), *one.side))
                yield from phrases(one.body, size)
            if one.numbers[0].of(size) is not None:
                yield from phrases((*one.on_the_way, one.stands), size)
        elif isinstance(one, ReadForSome):
            yield from phrases(one.body, size) if size in one.sizes else ()
        elif isinstance(one, ReadTrack):
            yield from phrases(one.body, size)
        elif not _skipped(one, size):
            yield one


def _rows_of_run(run: ReadRun, size: int) -> tuple[int, ...]:
    """The readings of the counter at which a run is worked. Raises `Contradiction` where they do not come to the last one."""
    first, every, last = (number.of(size) for number in run.numbers)
    if first is None:
        if (every, last) != (None, None):
            raise Contradiction("contradiction/some-dashes")
        return ()
    rows = (first,) if every is None else tuple(range(first, (last or 0) + 1, max(every, 1)))
    if not rows or rows[-1] != last:
        raise Contradiction("contradiction/run-beside-its-end", first=first, last=last or 0, every=every or 0)
    return rows


def _skipped(phrase: ReadPhrase, size: int) -> bool:
    dashes = {a.of(size) is None for a in phrase.arguments if isinstance(a, ReadGraded) and len(a.readings) > 1}
    if not dashes:
        # A size has no easing, or no seam at all: the lengths beside it tell which.
        eased = [n for a in phrase.arguments if isinstance(a, ReadEased) for n in a.numbers if len(n.readings) > 1]
        return bool(eased) and all(n.of(size) is None for n in eased)
    if len(dashes) > 1:
        raise Contradiction("contradiction/some-dashes")
    return True in dashes
