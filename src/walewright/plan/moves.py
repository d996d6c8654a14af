"""Operations as JSON, row by row.

Each operation is an object whose `do` is its kind in lower case with hyphens and whose other keys are its fields. They are
gathered under the row of the counter at which they are done: what stands under row n is done when n rows are counted,
and a pass or a picture row is listed under the row it starts from.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import fields
from typing import Any

from walewright.knit.operations import Block, HangFeet, MoveCarriage, Operation, Pass, PictureRow, SetCounter

COUNTED = (Pass, PictureRow)
"""Moves with which the carriage crosses and the counter rises by one."""

SAID_SOMETIMES: Mapping[type, tuple[str, ...]] = {HangFeet: ("row",), MoveCarriage: ("way",)}
"""Fields that are left out where they say nothing."""


def block(made: Block) -> dict[str, Any]:
    """One block of the work: its name, its copies and its rows of operations, in order."""
    rows: list[dict[str, Any]] = [{"row": 0, "operations": []}]
    counter = 0
    for operation in made.operations:
        if rows[-1]["row"] != counter:
            rows.append({"row": counter, "operations": []})
        if isinstance(operation, SetCounter):
            # Setting the counter back starts a list of its own even when the number stays the same.
            counter = operation.rows
            rows.append({"row": counter, "operations": []})
        rows[-1]["operations"].append(move(operation))
        if isinstance(operation, COUNTED):
            counter += 1
    return {"name": made.name, "copies": made.copies, "rows": [row for row in rows if row["operations"]]}


def move(operation: Operation) -> dict[str, Any]:
    """One operation as an object."""
    told = {f.name: getattr(operation, f.name) for f in fields(operation)}
    optional = SAID_SOMETIMES.get(type(operation), ())
    return {"do": kind(type(operation)), **{name: _value(value) for name, value in told.items() if value or name not in optional}}


def join_side(side: tuple[tuple[str, str, int], ...]) -> list[dict[str, Any]]:
    """One side of a seam: its edges in order."""
    return [{"piece": piece, "edge": edge, "copy": copy} for piece, edge, copy in side]


def kind(of: type) -> str:
    """The `do` of an operation class: CastOff is "cast-off"."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", "-", of.__name__).lower()


def _value(value: object) -> object:
    if isinstance(value, tuple):
        return [_value(inner) for inner in value]
    return value
