"""What there is to say, as data: the key of a sentence in a language's table, and the facts that go into it.

A stage that reports something knows neither the language nor the words. It names what is to be said and gives the facts: names
as their author wrote them, counts, lengths by size. The words are put in at the edge of the program, see `report.wording`.
"""

from __future__ import annotations

from collections.abc import Collection, Hashable, Iterator, Mapping, Sequence
from typing import TypeAlias, TypeVar

from walewright.record import record


@record
class Amount:
    """A measured number: `value` in `unit` ("cm", "m", "g", "stitches", "rows"; empty for a bare number)."""

    value: float
    unit: str = "cm"


@record
class BySize:
    """Measured numbers, one for each of the `sizes`, in `unit`. Without sizes: one number that is the same in all."""

    sizes: tuple[str, ...]
    values: tuple[float, ...]
    unit: str = "cm"


@record
class Said:
    """One thing to be said: the `key` of a sentence or phrase, and its facts by name."""

    key: str
    facts: tuple[tuple[str, Fact], ...] = ()


Fact: TypeAlias = "str | int | float | Amount | BySize | Said | tuple[Fact, ...]"
"""What can go into a sentence. A `str` is shown as it is: a name, or a line of the source, as its author wrote it; or it is a word
of a closed kind ("level", "left") that the table translates where the sentence asks for a `term`."""


def said(key: str, **facts: Fact) -> Said:
    """A sentence or phrase with its facts."""
    return Said(key, tuple(facts.items()))


def tenths(cm: float) -> Amount:
    """A length as it is told: to a millimetre."""
    return Amount(round(cm, 1))


T = TypeVar("T", bound=Hashable)


def grouped(of_size: Mapping[str, T]) -> Iterator[tuple[T, tuple[str, ...]]]:
    """What there is for each size, once, with the sizes that it holds for."""
    found: dict[T, list[str]] = {}
    for size, what in of_size.items():
        found.setdefault(what, []).append(size)
    yield from ((what, tuple(sizes)) for what, sizes in found.items())


def each_size(phrase: str, amounts: Mapping[str, Amount], sizes: int) -> tuple[Fact, ...]:
    """An amount that all of so many sizes have; else each that some have, as the `phrase` says it of its `amount` and `sizes`."""
    if len(amounts) == sizes and len(set(amounts.values())) == 1:
        return tuple(amounts.values())[:1]
    return tuple(said(phrase, amount=amount, sizes=names) for amount, names in grouped(amounts))


def size_as_said(size: str) -> str:
    """The name of a size as its author means it: `2_years` is 2 years."""
    return size.replace("_", " ")


def only(sizes: Sequence[str], some: Collection[int] | Collection[str]) -> tuple[str, ...]:
    """The sizes that a message is of, given by their numbers or names, as it names them: where it is of all `sizes`, none."""
    return tuple(s if isinstance(s, str) else sizes[s] for s in some) if len(some) < len(sizes) else ()


def by_size(sizes: Sequence[str], values: Sequence[float], unit: str = "cm", only: Sequence[str] | None = None) -> BySize:
    """Amounts of the sizes `only` (all, where nothing is said). Those of all sizes become one where they read the same."""
    if only is None or len(only) == len(sizes):
        same = len({f"{v:.2f}" for v in values}) == 1
        return BySize((), tuple(values[:1]), unit) if same else BySize(tuple(sizes), tuple(values), unit)
    pairs = [(s, v) for s, v in zip(sizes, values, strict=True) if s in only]
    return BySize(tuple(s for s, _ in pairs), tuple(v for _, v in pairs), unit)
