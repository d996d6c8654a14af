"""Sizes that a line names: which of its text's they are."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.readback.phrases import (
    ReadEased,
    ReadEvents,
    ReadForSome,
    ReadPhrase,
    ReadRepeat,
    ReadRowsBySize,
    ReadRun,
    ReadSaid,
    ReadTrack,
)
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
        case ReadTrack(at=ReadRowsBySize() as at):
            return replace(one, body=of_sizes(one.body, sizes), at=at.in_order(sizes))
        case ReadRepeat() | ReadTrack():
            return replace(one, body=of_sizes(one.body, sizes))
        case ReadPhrase() if any(isinstance(a, _BY_SIZE) for a in one.arguments):
            told = (a.in_order(sizes) if isinstance(a, _BY_SIZE) else a for a in one.arguments)
            return ReadPhrase(one.kind, tuple(told))
    return one


_BY_SIZE = ReadRowsBySize | ReadEvents | ReadEased
"""Arguments that may name sizes."""


def _lists(argument: object) -> Iterator[ReadRowsBySize]:
    """What an argument tells of sizes that it names."""
    told = argument.rows if isinstance(argument, ReadEvents) else argument.told if isinstance(argument, ReadEased) else (argument,)
    return (one for one in told if isinstance(one, ReadRowsBySize))


def strangers(told: tuple[ReadSaid, ...], sizes: tuple[str, ...]) -> frozenset[str]:
    """Sizes that are named and that the text has not."""
    return frozenset(name for one in told for name in _names(one)) - {*sizes}


def _names(one: ReadSaid) -> Iterator[str]:
    if isinstance(one, ReadForSome):
        yield from one.names
    if isinstance(one, ReadTrack) and isinstance(one.at, ReadRowsBySize):
        yield from _named(one.at)
    if isinstance(one, ReadPhrase):
        for told in (told for argument in one.arguments for told in _lists(argument)):
            yield from _named(told)
    else:
        for inner in (*one.body, *(one.on_the_way if isinstance(one, ReadRun) else ())):
            yield from _names(inner)


def _named(told: ReadRowsBySize) -> Iterator[str]:
    return (name for names, _ in told.lists for name in names)
