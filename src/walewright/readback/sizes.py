"""Sizes that a line names: which of its text's they are."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.readback.phrases import ReadForSome, ReadPhrase, ReadRepeat, ReadRowsBySize, ReadRun, ReadSaid, ReadTrack
from walewright.record import replace


def of_sizes(told: tuple[ReadSaid, ...], sizes: tuple[str, ...]) -> tuple[ReadSaid, ...]:
    """What is told in a text of these sizes, each size that is named by its number."""
    return tuple(_of_sizes(one, sizes) for one in told)


def _of_sizes(one: ReadSaid, sizes: tuple[str, ...]) -> ReadSaid:
    match one:
        case ReadForSome():
            numbers = frozenset(number for number, name in enumerate(sizes) if name in one.names)
            return replace(one, body=of_sizes(one.body, sizes), sizes=numbers)
        case ReadRun():
            return replace(one, body=of_sizes(one.body, sizes), on_the_way=of_sizes(one.on_the_way, sizes))
        case ReadRepeat() | ReadTrack():
            return replace(one, body=of_sizes(one.body, sizes))
        case ReadPhrase() if any(isinstance(a, ReadRowsBySize) for a in one.arguments):
            told = (a.in_order(sizes) if isinstance(a, ReadRowsBySize) else a for a in one.arguments)
            return ReadPhrase(one.kind, tuple(told))
    return one


def strangers(told: tuple[ReadSaid, ...], sizes: tuple[str, ...]) -> frozenset[str]:
    """Sizes that are named and that the text has not."""
    return frozenset(name for one in told for name in _names(one)) - {*sizes}


def _names(one: ReadSaid) -> Iterator[str]:
    if isinstance(one, ReadForSome):
        yield from one.names
    if isinstance(one, ReadPhrase):
        for argument in one.arguments:
            if isinstance(argument, ReadRowsBySize):
                yield from (name for names, _ in argument.lists for name in names)
    else:
        for inner in one.body:
            yield from _names(inner)
