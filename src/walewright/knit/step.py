"""What every step is: fields of text, or lists with text in them, which agree in all sizes; numbers, which may differ; and where it
comes from."""

from __future__ import annotations

from dataclasses import field
from typing import Any, TypeAlias

from walewright.knit.copies import Copy
from walewright.record import field_names, record
from walewright.report.said import Said

Words: TypeAlias = str | Said
"""What is said to people: the author's own text, or what the house says as data."""


@record(kw_only=True)
class Step:
    origin: str = field(default="", compare=False, repr=False)


def shape(step: Step) -> tuple[Any, ...]:
    """What must agree for two sizes' steps to be one graded sentence: the class and every text field."""
    parts: list[Any] = [type(step).__name__]
    for name in field_names(step):
        if name == "origin":
            continue
        value = getattr(step, name)
        if isinstance(value, str | Said | Copy):
            parts.append(value)
        elif isinstance(value, tuple):
            # A list of numbers may be longer in one size than in another; names, and what is said of each, agree.
            parts.append(tuple(shape(s) if isinstance(s, Step) else s for s in value if isinstance(s, Step | str | tuple)))
    return tuple(parts)


def numbers(step: Step) -> tuple[int, ...]:
    """The ints of a step in field order, those of a repeat's body first; lists of numbers, which may differ in length, are not
    among them."""
    found: list[int] = []
    for name in field_names(step):
        value = getattr(step, name)
        if isinstance(value, bool):
            continue
        if isinstance(value, int):
            found.append(value)
        elif isinstance(value, tuple):
            for inner in value:
                found.extend(numbers(inner) if isinstance(inner, Step) else ())
    return tuple(found)
