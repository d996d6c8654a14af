"""The lines that are for the page, written anew: texts, the photograph, what is needed, and what is measured on the garment."""

from __future__ import annotations

from collections.abc import Iterable

from walewright.source import syntax
from walewright.source.expressions import expression
from walewright.source.text import escaped


def text_line(line: syntax.TextLine) -> str:
    """`note "…", for L XL`."""
    sizes = [f"for {' '.join(line.sizes)}"] if line.sizes else []
    return ", ".join((f"{line.key} {escaped(line.text)}", *sizes, *in_languages(line.others)))


def photograph(line: syntax.PhotographLine) -> str:
    """`photograph "a.jpg", showing "…"`."""
    head = f"photograph {escaped(line.file)}, showing {escaped(line.showing)}"
    return ", ".join((head, *in_languages(line.others)))


def needed(line: syntax.NeededLine) -> str:
    """`needed "…", 6`."""
    amount: list[str] = []
    if isinstance(line.amount, syntax.ForEachButtonhole):
        amount = [f"for each buttonhole of {' + '.join(line.amount.owners)}"]
    elif line.amount is not None:
        amount = [amount_of(line.amount)]
    return ", ".join((f"needed {escaped(line.text)}", *amount, *in_languages(line.others)))


def in_languages(others: Iterable[syntax.InLanguage]) -> list[str]:
    """What a text is in other languages, each as a part of its line."""
    return [f"in {other.language} {escaped(other.text)}" for other in others]


def amount_of(value: syntax.Expr | syntax.ToMeasure) -> str:
    """An expression, or what is measured on the garment."""
    if isinstance(value, syntax.Round):
        return f"{'across' if value.across else 'round'} {value.piece} {value.level}"
    return f"along {place(value.place)}" if isinstance(value, syntax.Along) else expression(value)


def place(of: syntax.PlaceRef) -> str:
    """`neckband`, `sleeve start`."""
    return f"{of.owner} {of.edge}" if of.edge else of.owner
