"""What a printed line says, as data: phrases and repeats with their graded numbers, for all sizes at once."""

from __future__ import annotations

from dataclasses import dataclass

from walewright.knit.operations import SeamEnd


@dataclass(frozen=True, slots=True)
class ReadGraded:
    """A number's readings: one for all sizes, or one a size; None is a dash. Needles are slots, carriage sides 0 left, 1 right."""

    readings: tuple[int | None, ...]

    def of(self, size: int) -> int | None:
        """The reading of size number `size` (from 0)."""
        return self.readings[size] if len(self.readings) > 1 else self.readings[0]


SeamEdgesRead = tuple[tuple[str, str, int], ...]
"""(piece, edge, copy) along a seam."""
Seams = tuple[tuple[SeamEdgesRead, SeamEdgesRead, tuple[SeamEnd, SeamEnd]], ...]
"""Both sides of each seam, and the end of the first edge of each at which it begins."""
ReadStripes = tuple[tuple[str, int], ...]
"""(yarn, rows) from the first knitted on."""


@dataclass(frozen=True, slots=True)
class ReadRows:
    """Rows or needles in a list, of which a size may have fewer than another: a dash is one that it has not."""

    numbers: tuple[ReadGraded, ...]

    def of(self, size: int) -> tuple[int, ...]:
        return tuple(row for row in (graded.of(size) for graded in self.numbers) if row is not None)


@dataclass(frozen=True, slots=True)
class ReadCounts:
    """Numbers of which a dash says that there is none."""

    numbers: tuple[ReadGraded, ...]

    def of(self, size: int) -> tuple[int, ...]:
        return tuple(graded.of(size) or 0 for graded in self.numbers)


Argument = ReadGraded | ReadRows | ReadCounts | str | int | Seams | ReadStripes | tuple[int, int] | tuple[str, ...]
Reading = str | int | Seams | ReadStripes | tuple[int, ...] | tuple[str, ...] | None
"""An argument as one size reads it."""


@dataclass(frozen=True, slots=True)
class Several:
    """Arguments that are told together, taken apart again in the phrase they belong to."""

    arguments: tuple[ReadGraded | str, ...]


@dataclass(frozen=True, slots=True)
class ReadPhrase:
    """`kind` is the grammar's rule, the arguments stand in the order of its words."""

    kind: str
    arguments: tuple[Argument, ...]


@dataclass(frozen=True, slots=True)
class ReadRepeat:
    """The body is worked `times` times in all."""

    body: tuple[ReadSaid, ...]
    times: ReadGraded


@dataclass(frozen=True, slots=True)
class ReadForSome:
    """The body is worked by the sizes of these numbers (from 0) alone."""

    body: tuple[ReadSaid, ...]
    sizes: frozenset[int]


@dataclass(frozen=True, slots=True)
class ReadTrack:
    """One of several shapings that go on at the same time."""

    title: str
    body: tuple[ReadSaid, ...]


ReadSaid = ReadPhrase | ReadRepeat | ReadForSome | ReadTrack
