"""How far shapes go, reckoned without following them: how many lines each comes to, how deep, and whether it ends at all.

A shape that uses two shapes, each of which uses two, doubles at every level: sixteen such levels are as many lines as nobody
would wait for. So each shape is looked at once, after those it uses, in time linear in what is written.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from walewright.record import record
from walewright.source import syntax

BEYOND = 10**9
"""Where counting ends: more lines than that are more than any limit."""


@record
class Extent:
    """Of one shape: `lines` that a use of it comes to, its own uses and definitions among them; shapes within shapes that are
    `deep`, itself counted; and where it never ends, the `ring` of names, the first again at the end, and the use that closes it."""

    lines: int
    deep: int
    ring: tuple[str, ...] = ()
    closed_by: syntax.Use | None = None


def extents(shapes: Mapping[str, syntax.ShapeBlock], used: Iterable[str]) -> dict[str, Extent]:
    """The shapes `used`, and those that these use, by name. One that is not among `shapes` counts as nothing: that it is missing
    is told elsewhere."""
    found: dict[str, Extent] = {}
    for name in used:
        if name in shapes:
            _look(name, shapes, found)
    return found


def _look(name: str, shapes: Mapping[str, syntax.ShapeBlock], found: dict[str, Extent]) -> None:
    """A walk with a path of its own: no chain of shapes is too long for it."""
    path: dict[str, Iterator[syntax.Use]] = {}
    rings: dict[str, tuple[tuple[str, ...], syntax.Use]] = {}
    if name not in found:
        path[name] = _uses(shapes[name])
    while path:
        last = next(reversed(path))
        use = next(path[last], None)
        if use is None:
            path.popitem()
            found[last] = _extent(shapes[last], found, rings.get(last))
        elif use.name in path:
            names = list(path)
            ring = (*names[names.index(use.name) :], use.name)
            rings.setdefault(last, (ring, use))
        elif use.name in shapes and use.name not in found:
            path[use.name] = _uses(shapes[use.name])


def _extent(shape: syntax.ShapeBlock, found: Mapping[str, Extent], ring: tuple[tuple[str, ...], syntax.Use] | None) -> Extent:
    lines, deep = 0, 1
    for statement in shape.body:
        lines += 1
        within = found.get(statement.name) if isinstance(statement, syntax.Use) else None
        if within is not None:
            lines, deep = lines + within.lines, max(deep, within.deep + 1)
            if ring is None and within.closed_by is not None:
                ring = (within.ring, within.closed_by)
    return Extent(min(lines, BEYOND), deep, *(ring or ()))


def _uses(shape: syntax.ShapeBlock) -> Iterator[syntax.Use]:
    return (s for s in shape.body if isinstance(s, syntax.Use))
