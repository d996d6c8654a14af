"""What a printed line says, as data: phrases and repeats with their graded numbers, for all sizes at once."""

from __future__ import annotations

from itertools import zip_longest

from walewright.knit.operations import SeamEnd
from walewright.record import record


@record
class ReadGraded:
    """A number's readings: one for all sizes, or one a size; None is a dash. Needles are slots, carriage sides 0 left, 1 right."""

    readings: tuple[int | None, ...]

    def of(self, size: int) -> int | None:
        """The reading of size number `size` (from 0)."""
        return self.readings[size] if len(self.readings) > 1 else self.readings[0]


SeamEdgesRead = tuple[tuple[str, str, int], ...]
"""(piece, edge, copy) along a seam."""
SeamRead = tuple[SeamEdgesRead, SeamEdgesRead, tuple[SeamEnd, SeamEnd]]
"""Both sides of a seam, and the end of the first edge of each at which it begins."""
Seams = tuple[SeamRead, ...]
ReadStripes = tuple[tuple[str, int], ...]
"""(yarn, rows) from the first knitted on."""
StripsRead = tuple[tuple[str, str, int], ...]
"""(piece, edging, rows at each end) of what is sewn on beyond the edges of a seam."""


@record
class ReadRows:
    """Rows or needles in a list, of which a size may have fewer than another: a dash is one that it has not."""

    numbers: tuple[ReadGraded, ...]

    def of(self, size: int) -> tuple[int, ...]:
        return tuple(row for row in (graded.of(size) for graded in self.numbers) if row is not None)


@record
class ReadRowsBySize:
    """Rows in a list for each of some sizes, which are named."""

    lists: tuple[tuple[frozenset[str], tuple[int, ...]], ...]

    def in_order(self, sizes: tuple[str, ...]) -> ReadRows:
        """The same in the order of a text's sizes."""
        return ReadRows(tuple(map(ReadGraded, zip_longest(*(self._own(size) for size in sizes)))))

    def one_each(self, sizes: tuple[str, ...]) -> ReadGraded:
        """Of lists of one number: that number in each of a text's sizes, and 0 in those that are not named."""
        return ReadGraded(tuple(next(iter(self._own(size)), 0) for size in sizes))

    def _own(self, size: str) -> tuple[int, ...]:
        return next((rows for names, rows in self.lists if size in names), ())


@record
class ReadCounts:
    """Numbers; a dash stands for one that a size has not."""

    numbers: tuple[ReadGraded, ...]

    def of(self, size: int) -> tuple[int, ...]:
        return tuple(graded.of(size) or 0 for graded in self.numbers)


@record
class ReadEased:
    """(easing, longer, easing of the second, longer along strips) of a seam, each with a dash, or untold, where a size has none."""

    told: tuple[ReadGraded | ReadRowsBySize, ...] = ()

    @property
    def numbers(self) -> tuple[ReadGraded, ...]:
        """All of them, as soon as it is known which sizes the text has."""
        return tuple(one for one in self.told if isinstance(one, ReadGraded))

    def in_order(self, sizes: tuple[str, ...]) -> ReadEased:
        return ReadEased(tuple(one.one_each(sizes) if isinstance(one, ReadRowsBySize) else one for one in self.told))

    def of(self, size: int) -> tuple[int | None, ...]:
        return tuple(graded.of(size) for graded in self.numbers)


@record
class ReadStrips:
    """(piece, edging) of strips, and the rows at the end of each."""

    names: tuple[tuple[str, str], ...]
    numbers: tuple[ReadGraded, ...]
    reached: tuple[ReadGraded, ...] = ()
    """How long they are together, and give or take how much, where one side alone goes on along them."""

    def of(self, size: int) -> tuple[tuple[str, str, int], ...]:
        told = zip(self.names, self.numbers, strict=True)
        return tuple((*name, graded.of(size) or 0) for name, graded in told)


@record
class ReadEvents:
    """At which rows something is done in a stretch of rows: told one by one, or every so many from one to another; without `rows`
    as it was said before."""

    what: str
    rows: tuple[ReadRows | ReadRowsBySize | tuple[int, *tuple[ReadGraded, ...]], ...]
    """Every so many rows from each of some to the last of the numbers."""

    @property
    def numbers(self) -> tuple[ReadGraded, ...]:
        return tuple(n for told in self.rows if not isinstance(told, ReadRowsBySize) for n in _told(told))

    def in_order(self, sizes: tuple[str, ...]) -> ReadEvents:
        told = tuple(rows.in_order(sizes) if isinstance(rows, ReadRowsBySize) else rows for rows in self.rows)
        return ReadEvents(self.what, told)

    def of(self, size: int) -> tuple[str, tuple[int, ...] | None]:
        """What is done, and the rows in order; None where the line names no rows for any size."""
        if not self.rows:
            return self.what, None
        found: list[int] = []
        for told in self.rows:
            if isinstance(told, ReadRows):
                found += told.of(size)
            elif not isinstance(told, ReadRowsBySize):
                every, (*firsts, last) = told[0], (number.of(size) for number in told[1:])
                for first in firsts:
                    found += range(first, last + 1, max(every, 1)) if first is not None and last is not None else ()
        return self.what, tuple(sorted(found))


def _told(rows: ReadRows | tuple[int, *tuple[ReadGraded, ...]]) -> tuple[ReadGraded, ...]:
    return rows.numbers if isinstance(rows, ReadRows) else rows[1:]


@record
class ReadStages:
    """Rows at which a rib is latched up: every so many from one to another, and one more."""

    every: int
    numbers: tuple[ReadGraded, ...]

    def of(self, size: int) -> tuple[int, ...]:
        first, last, *more = (number.of(size) for number in self.numbers)
        if first is None or last is None:
            return ()
        return (*range(first, last + 1, max(self.every, 1)), *(row for row in more if row is not None))


@record
class Several:
    """Arguments that are told together, taken apart again in the phrase they belong to."""

    arguments: tuple[ReadGraded | str, ...]


@record
class ReadPhrase:
    """`kind` is the grammar's rule, the arguments stand in the order of its words."""

    kind: str
    arguments: tuple[Argument, ...]


Listed = ReadGraded | ReadRows | ReadCounts | ReadEased | ReadStrips | ReadEvents | ReadStages
Argument = Listed | ReadRowsBySize | str | int | Seams | ReadStripes | tuple[int, int] | tuple[str, ...] | ReadPhrase
ReadNumbers = tuple[int | None, ...] | tuple[str, tuple[int, ...] | None] | StripsRead
Reading = ReadRowsBySize | str | int | Seams | ReadStripes | ReadNumbers | tuple[str, ...] | ReadPhrase | None
"""An argument as one size reads it."""


@record
class ReadRepeat:
    """The body is worked `times` times in all."""

    body: tuple[ReadSaid, ...]
    times: ReadGraded


@record
class ReadForSome:
    """The body is worked by the sizes that are named alone; `sizes` are their numbers (from 0), as soon as it is known which text
    it stands in."""

    body: tuple[ReadSaid, ...]
    names: frozenset[str]
    sizes: frozenset[int] = frozenset()


@record
class ReadTrack:
    """One of several shapings that go on at the same time."""

    title: str
    body: tuple[ReadSaid, ...]
    at: ReadRows | ReadRowsBySize | None = None
    """The readings of the counter at each of which all of it is done, where any are named."""


@record
class ReadRun:
    """The body is worked when the counter reads the first of the numbers, and then every so many rows until it reads the last;
    what `stands` is true after that, and what is told `on_the_way` is of all those rows."""

    numbers: tuple[ReadGraded, ReadGraded, ReadGraded]
    body: tuple[ReadSaid, ...]
    on_the_way: tuple[ReadSaid, ...]
    stands: ReadPhrase
    side: tuple[ReadGraded, ...] = ()
    """Where the carriage stands each time, if it is told."""


ReadSaid = ReadPhrase | ReadRepeat | ReadForSome | ReadTrack | ReadRun


def tenths(words: str, point: str) -> int:
    """Centimetres as millimetres; `point` stands before decimals."""
    return round(float(words.replace(point, ".")) * 10)


def figure(words: str) -> int:
    """The one number in a word or two: of "2nd", of "L 12"."""
    return int("".join(c for c in words if c.isdecimal()))
