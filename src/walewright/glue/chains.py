"""Chains of edges: which edges of the surface a name means, and how those of several names lie one after the other."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from walewright.design.model import EdgeName
from walewright.glue.surface import Path, Surface
from walewright.record import record
from walewright.trade.edge_names import TOPS, number_of_top
from walewright.trade.sides import GAP_PARTS, SIDES


@record
class Unit:
    """The edges that one name means once: a single edge, or the whole way round a neck."""

    name: EdgeName
    path: Path


def units(surface: Surface, name: EdgeName, used: bool = False) -> list[Unit]:
    """Everything that a name means, copy by copy and from left to right; only what is free, or (`used`) whatever there is."""
    return [Unit(name, path) for path in _paths(surface, name) if used or all(surface.free(e) for e in path)]


def _paths(surface: Surface, name: EdgeName) -> Iterator[Path]:
    head = "shoulder" if name.edge == "end" and not _there(surface, name.piece, "end") else name.edge
    single = [e for e in _of(surface, name.piece) if (surface.edges[e].ring.edge, surface.edges[e].ring.cut) == (head, name.cut)]
    if single:
        yield from ((e,) for e in single)
        return
    for _, first in _copies(surface, name.piece):
        by_name = {surface.edges[e].ring.edge: e for e in first if not surface.edges[e].ring.cut}
        parts = [by_name[edge] for edge in _parts(head, by_name) if edge in by_name]
        if not parts:
            continue
        if in_line(surface, parts):
            yield tuple(parts)
        else:
            yield from ((e,) for e in parts)


def _parts(head: str, names: Iterable[str]) -> list[str]:
    """What the parts of an edge are called, from left to right: of the last row also those between openings."""
    between = sorted((e for e in names if number_of_top(e)), key=number_of_top) if head in TOPS else []
    return [f"{head} {SIDES[0]}", *between, *(f"{head} {part}" for part in GAP_PARTS[1:])]


def _there(surface: Surface, owner: str, edge: str) -> bool:
    return any(surface.edges[e].ring.edge == edge for e in _of(surface, owner))


def _of(surface: Surface, owner: str) -> Iterator[int]:
    return (e for e, edge in enumerate(surface.edges) if edge.owner == owner)


def _copies(surface: Surface, owner: str) -> Iterator[tuple[int, list[int]]]:
    copies = sorted({surface.edges[e].copy for e in _of(surface, owner)})
    return ((copy, [e for e in _of(surface, owner) if surface.edges[e].copy == copy]) for copy in copies)


def in_line(surface: Surface, parts: Sequence[int]) -> bool:
    """Whether edges follow each other in their ring as they are given, or the other way round (of a piece worn purl side out)."""
    steps = pairwise(parts)
    return len(parts) > 1 and all(surface.edges[a].after == b or surface.edges[b].after == a for a, b in steps)


def clockwise(surface: Surface, unit: Unit) -> Path:
    """The unit's edges in the clockwise direction."""
    path = unit.path
    if len(path) > 1 and surface.edges[path[1]].after == path[0]:
        return path[::-1]
    return path


# ----------------------------------------------------------------- one after the other


@record
class ChainRun:
    """Units that follow each other clockwise, and how often each name is among them."""

    units: tuple[Unit, ...]
    path: Path
    names: tuple[tuple[EdgeName, int], ...]


def run_of(surface: Surface, some: Sequence[Unit]) -> ChainRun:
    """These units, which follow each other, as one run."""
    path = tuple(e for unit in some for e in clockwise(surface, unit))
    return ChainRun(tuple(some), path, _counted(u.name for u in some))


def _counted(names: Iterable[EdgeName]) -> tuple[tuple[EdgeName, int], ...]:
    return tuple(sorted(Counter(names).items(), key=lambda item: (item[0].piece, item[0].edge)))


def runs(surface: Surface, pool: Sequence[Unit], together: bool) -> list[ChainRun]:
    """The pool as runs as long as they are, or (not `together`) each unit by itself."""
    if not together:
        return [run_of(surface, [unit]) for unit in pool]
    ways = [clockwise(surface, u) for u in pool]
    after: dict[int, int] = {}
    for i, way in enumerate(ways):
        following = [k for k, other in enumerate(ways) if k != i and surface.meets(way[-1], other[0])]
        if following:
            after[i] = following[0]
    found: list[ChainRun] = []
    done: set[int] = set()
    begun = [i for i in range(len(pool)) if i not in after.values()]
    for first in (*begun, *_cuts(surface, ways, after)):
        if first in done:
            continue
        line = [first]
        while (following_one := after.get(line[-1])) is not None and following_one not in (*line, *done):
            line.append(following_one)
        done |= set(line)
        found.append(run_of(surface, [pool[i] for i in line]))
    return found


def _cuts(surface: Surface, ways: Sequence[Path], after: dict[int, int]) -> list[int]:
    """Where to begin a run that goes all the way round: at the bottom of rows, as at an underarm."""
    return sorted(after, key=lambda i: (surface.first_end(ways[i][0]) != "bottom", i))


def wanted(names: Sequence[EdgeName], surface: Surface) -> tuple[tuple[EdgeName, int], ...]:
    """How often each name is in one seam. Of a piece whose start or end is named, an edge on both sides is there twice: the seam
    goes round it."""
    round_it = {n.piece for n in names if n.edge in ("start", "end")}
    counted = Counter(names)
    for name in counted:
        if name.piece in round_it and _two_sided(surface, name):
            counted[name] = 2
    return tuple(sorted(counted.items(), key=lambda item: (item[0].piece, item[0].edge)))


def _two_sided(surface: Surface, name: EdgeName) -> bool:
    return all(_there(surface, name.piece, f"{name.edge} {side}") for side in SIDES) and name.edge not in TOPS
