"""Sizes that are put together alike: those in which every piece is knitted equally often."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from walewright.design.model import Design
from walewright.report.model import Diagnostic
from walewright.report.said import only

Sizes = tuple[int, ...]


def alike(design: Design) -> tuple[Sizes, ...]:
    """The sizes by number, those with the same copies of every piece together, in the order of their first ones."""
    found: dict[tuple[int, ...], list[int]] = {}
    for size in range(len(design.sizes)):
        found.setdefault(tuple(piece.copies[size] for piece in design.pieces), []).append(size)
    return tuple(tuple(sizes) for sizes in found.values())


def merged(design: Design, told: Sequence[tuple[Sizes, Sequence[Diagnostic]]]) -> tuple[Diagnostic, ...]:
    """What there is to say of each group of sizes, once of all for which it is the same."""
    found: dict[Diagnostic, set[int]] = {}
    for sizes, some in told:
        for one in some:
            concerned = {size for size in sizes if not one.sizes or design.sizes[size] in one.sizes}
            found.setdefault(replace(one, sizes=()), set()).update(concerned)
    return tuple(replace(one, sizes=only(design.sizes, sorted(sizes))) for one, sizes in found.items())
