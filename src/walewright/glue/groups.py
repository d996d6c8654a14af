"""Sizes that are put together alike: those in which every piece is knitted equally often."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations

from walewright.design.model import Design, Origin
from walewright.glue.model import Glued, Task
from walewright.record import replace
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import only, said

AlikeSizes = tuple[int, ...]


def alike(design: Design) -> tuple[AlikeSizes, ...]:
    """The sizes by number, those with the same copies of every piece together, in the order of their first ones."""
    found: dict[tuple[int, ...], list[int]] = {}
    for size in range(len(design.sizes)):
        found.setdefault(tuple(piece.copies[size] for piece in design.pieces), []).append(size)
    return tuple(tuple(sizes) for sizes in found.values())


def merged(design: Design, told: Sequence[tuple[AlikeSizes, Sequence[Diagnostic]]]) -> tuple[Diagnostic, ...]:
    """What there is to say of each group of sizes, once of all for which it is the same."""
    found: dict[Diagnostic, set[int]] = {}
    for sizes, some in told:
        for one in some:
            concerned = {size for size in sizes if not one.sizes or design.sizes[size] in one.sizes}
            found.setdefault(replace(one, sizes=()), set()).update(concerned)
    return tuple(replace(one, sizes=only(design.sizes, sorted(sizes))) for one, sizes in found.items())


def worked_otherwise(design: Design, sizes: Sequence[AlikeSizes], made: Sequence[Glued]) -> Iterator[Diagnostic]:
    """One message where something is knitted before another thing in some sizes and after it in others: what is printed has one
    order for all of them."""
    orders = [_knitted(design, glued) for glued in made]
    crossing = next((pair for one, other in combinations(orders, 2) if (pair := _crossing(one, other)) is not None), None)
    if crossing is None:
        return
    varying = [piece for piece in design.pieces if len(set(piece.copies)) > 1]
    named = [tuple(design.sizes[size] for size in some) for some in sizes]
    yield diagnosed(
        "copies-by-size",
        *((piece.origin.span, said("often", copies=tuple(str(piece.copies[some[0]]) for some in sizes))) for piece in varying),
        *((_origin(design, name).span, said("the", name=name)) for name in crossing),
        notes=tuple(
            said("order", sizes=names, order=tuple(name for name in order if name in crossing))
            for names, order in zip(named, orders, strict=True)
        ),
        helps=("same-order", said("make-apart", groups=tuple(said("size-options", sizes=names) for names in named))),
        first=crossing[0],
        then=crossing[1],
    )


def _knitted(design: Design, glued: Glued) -> tuple[str, ...]:
    """What is knitted, in its order: pieces, bands, and the links of edges by the piece that these are of."""

    def name(task: Task) -> str:
        if task.kind in ("piece", "band"):
            return task.name
        linked = task.kind == "seam" and design.joins[glued.seams[task.number].join].way == "linked"
        return f"{glued.seams[task.number].one[0].text} {glued.seams[task.number].one[0].copy}" if linked else ""

    return tuple(dict.fromkeys(filter(None, map(name, glued.order))))


def _crossing(one: Sequence[str], other: Sequence[str]) -> tuple[str, str] | None:
    """Two things that do not follow each other in the same order."""
    common = [name for name in other if name in one]
    return next(((a, b) for a, b in combinations([n for n in one if n in common], 2) if common.index(a) > common.index(b)), None)


def _origin(design: Design, name: str) -> Origin:
    every = {**{band.name: band.origin for band in design.bands}, **{piece.name: piece.origin for piece in design.pieces}}
    return every.get(name) or every[name.split(" ")[0]]
