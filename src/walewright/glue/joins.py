"""Joins as seams: which copy and which side of one piece meets which of another.

A name stands for both sides and all copies of a piece; the partner is the one whose ends meet. Joins are taken in turn until none
can be resolved any more: two halves of an armhole make one line only when the shoulder between them is joined.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from walewright.design.model import Design, EdgeJoin, EdgeName, PerSize
from walewright.glue.chains import ChainRun, Unit, runs, units, wanted
from walewright.glue.rings import ALONG_ROWS, BEYOND
from walewright.glue.surface import Path, Surface, SurfaceEdge
from walewright.record import record
from walewright.trade.joins import JOINS

UPSIDE_DOWN = 0.4
"""Cost of a seam that has the bottom of one row edge meet the top of the other, where nothing else is known."""
FRESH = 0.2
"""Cost of a copy that has been joined to something else, where its corners do not say that it is meant."""

TWISTED = 4.0
"""Cost of a seam that would turn one of the pieces upside down against the other."""


@record
class Glueing:
    """Two chains, both clockwise, put together by join number `join`; without the `other`: one edge closed upon itself."""

    join: int
    one: Path
    other: Path
    beyond: Path = ()
    """Which of their edges are ends of strips that the join does not name."""


@dataclass(slots=True)
class Joining:
    """The seams found so far, and the joins that have some."""

    surface: Surface
    found: list[Glueing] = field(default_factory=list)
    done: set[int] = field(default_factory=set)
    doubted: set[int] = field(default_factory=set)
    """Joins of copies to copies that no corner tells apart, of two pieces that are joined already."""

    def put(self, join: int, one: Path, other: Path, beyond: Path = ()) -> None:
        if other:
            self.surface.glue(one, other, len(self.found))
        else:
            self.surface.fold(one[0], len(self.found))
        self.found.append(Glueing(join, one, other, beyond))
        self.done.add(join)


def is_overhang(join: EdgeJoin) -> bool:
    """Whether one edge of rows may go on beyond the other, along the ends of what is hung beside it: a strip sewn to a front, with
    the welt below and the neckband above."""
    return join.way == "sewn" and join.longer is not None and len(join.one) == len(join.other) == 1 and join.one != join.other


def resolve(design: Design, joining: Joining, shared: bool) -> bool:
    """One round through the joins; whether anything new was put together. A join with one name on a side may be resolved edge by
    edge at its turn, each name on the other side meeting it once; others only at last (`shared`), and so one of ends of strips
    alone, whose partners are known by the seams that they lie in line with. What names a band waits for it."""
    moved = False
    for number, join in enumerate(design.joins):
        before = len(joining.found)
        if is_overhang(join) or not _all_there(joining.surface, join) or (_of_strips(joining.surface, join) and not shared):
            continue
        if join.one == join.other and len(_names_of(joining.surface, join.one)) == 1 and join.next_copy in ("", "own"):
            _one_edge(joining, number, join)
        elif join.next_copy:
            if number not in joining.done:
                _copy_by_copy(joining, number, join)
        else:
            _in_runs(joining, number, join)
            single = 1 in (len(set(join.one)), len(set(join.other))) and len((*join.one, *join.other)) > 2
            if (shared or single) and number not in joining.done:
                _edge_by_edge(joining, number, join)
        moved = moved or len(joining.found) > before
    return moved


def _edges(surface: Surface, names: Sequence[EdgeName]) -> Iterator[SurfaceEdge]:
    return (surface.edges[e] for n in names for u in units(surface, n, used=True) for e in u.path)


def _all_there(surface: Surface, join: EdgeJoin) -> bool:
    """Whether everything that a join names is on the table."""
    return all(units(surface, name, used=True) for name in (*join.one, *join.other))


def _of_strips(surface: Surface, join: EdgeJoin) -> bool:
    """Whether a join names ends of strips alone."""
    return all(edge.ring.state == "strip" for edge in _edges(surface, (*join.one, *join.other)))


def _names_of(surface: Surface, names: Sequence[EdgeName]) -> frozenset[str]:
    """The edges that names mean, whichever the copy: one where an edge is joined to itself, two where it is on both sides."""
    return frozenset(edge.ring.edge for edge in _edges(surface, names))


def overhanging(design: Design, joining: Joining) -> None:
    """Joins that may go on along the ends of edgings and bands, now that these are there: by as much as one side is longer."""
    surface = joining.surface
    for number, join in enumerate(design.joins):
        while is_overhang(join):
            pair = _best(joining, number, _whole(surface, join.one), _whole(surface, join.other))
            if pair is None:
                break
            one, other = (run.path for run in pair)
            longer, beyond = join.longer or (), set[int]()
            if min(longer) > 0:
                other, beyond = _beyond(design, surface, other, longer)
            elif max(longer) < 0:
                one, beyond = _beyond(design, surface, one, tuple(-cm for cm in longer))
            joining.put(number, one, other, tuple(beyond))


def _beyond(design: Design, surface: Surface, path: Path, longer: PerSize) -> tuple[Path, set[int]]:
    """The edge with the ends of strips below and above it, if they are as deep as the other side is longer; and which these are."""
    free = surface.next_free()
    before = next((e for e, after in free.items() if after == path[0]), None)
    ends = ((before,) if before is not None else (), (free[path[-1]],))
    strips = tuple(tuple(e for e in some if surface.edges[e].ring.state == "strip") for some in ends)
    ways = [(a, b) for a in ((), strips[0]) for b in ((), strips[1])]

    def off(way: tuple[Path, Path]) -> float:
        depths = [_depth(design, surface.edges[e]) for some in way for e in some]
        return max(abs(sum(d[i] for d in depths) - cm) for i, cm in enumerate(longer))

    low, high = min(ways, key=off)
    return (*low, *path, *high), {*low, *high}


def _depth(design: Design, strip: SurfaceEdge) -> PerSize:
    """Of an edging at the start or the end of a piece, or of a band."""
    edging = design.strip(strip.owner, strip.ring.edge)
    assert edging is not None, "it is the end of one"
    return edging.depth


# ----------------------------------------------------------------- whole chains


def _pool(surface: Surface, names: Sequence[EdgeName]) -> list[Unit]:
    return [unit for name in dict.fromkeys(names) for unit in units(surface, name)]


def _in_runs(joining: Joining, number: int, join: EdgeJoin) -> None:
    """Every chain with all the names of its side, and its partner. Where strips are known by a corner that they have in common,
    those without one are no partners."""
    surface = joining.surface
    met = False
    while True:
        sides = [_whole(surface, names) for names in (join.one, join.other)]
        pair = _best(joining, number, sides[0], sides[1])
        if pair is None or (met and not _met(surface, *pair)):
            return
        met = _of_strips(surface, join) and _met(surface, *pair)
        if _in_doubt(joining, number, *pair):
            joining.doubted.add(number)
        joining.put(number, pair[0].path, pair[1].path)


def _in_doubt(joining: Joining, number: int, one: ChainRun, other: ChainRun) -> bool:
    """Whether one copy would do as well as another, and it matters which: of two pieces knitted several times, each, that other
    joins have put together already, so that the copies are a ring of all or a pair each."""
    surface = joining.surface
    a, b = surface.edges[one.path[0]], surface.edges[other.path[0]]
    if a.owner == b.owner or min(a.copies, b.copies) < 2 or _met(surface, one, other):
        return False
    together = ((_copy_of(surface, g.one)[0], _copy_of(surface, g.other)[0]) for g in joining.found if g.other and g.join != number)
    return any({a.owner, b.owner} == set(owners) for owners in together)


def _met(surface: Surface, one: ChainRun, other: ChainRun) -> bool:
    """Whether two chains have come together at an end already."""
    corners = ([surface.corner(_corner_at(surface, end)) for end in ends] for ends in _meeting(one.path, other.path))
    return any(a == b for a, b in corners)


def _whole(surface: Surface, names: Sequence[EdgeName]) -> list[ChainRun]:
    needs = wanted(names, surface)
    together = sum(count for _, count in needs) > 1
    return [run for run in runs(surface, _pool(surface, names), together) if run.names == needs]


def _edge_by_edge(joining: Joining, number: int, join: EdgeJoin) -> None:
    """Names shared out: `back shoulder` to the ends of two fronts."""
    surface = joining.surface
    counts = [_wanted_once(surface, names) for names in (join.one, join.other)]
    if counts[0] != counts[1]:
        return
    for _ in range(counts[0]):
        ones, others = (runs(surface, _pool(surface, names), together=False) for names in (join.one, join.other))
        pair = _best(joining, number, ones, others)
        if pair is None:
            return
        joining.put(number, pair[0].path, pair[1].path)


def _wanted_once(surface: Surface, names: Sequence[EdgeName]) -> int:
    """How many edges a side has: as many as are named, of names that stand there once all that they mean."""
    return len(names) if len(set(names)) < len(names) else len(_pool(surface, names))


def _one_edge(joining: Joining, number: int, join: EdgeJoin) -> None:
    """An edge and itself: sewn or drawn up, it is closed at each copy; loop by loop, the copies meet two and two."""
    pool = _pool(joining.surface, join.one)
    if JOINS[join.way].by_loops:
        for one, other in zip(pool[::2], pool[1::2], strict=False):
            joining.put(number, one.path, other.path)
        return
    for unit in pool:
        joining.put(number, unit.path, ())


def _copy_by_copy(joining: Joining, number: int, join: EdgeJoin) -> None:
    """Each copy to the one of its number; or to the next, and, all round, the last one to the first."""
    surface = joining.surface
    copies = max((surface.edges[u.path[0]].copies for u in _pool(surface, join.one)), default=0)
    last = copies - 1 if join.next_copy == "next" else copies
    for copy in range(1, last + 1):
        ones, others = (_whole(surface, names) for names in (join.one, join.other))
        after = copy if join.next_copy == "own" else copy % copies + 1
        here = [r for r in ones if surface.edges[r.path[0]].copy == copy]
        there = [r for r in others if surface.edges[r.path[0]].copy == after]
        pair = _best(joining, number, here, there, same_copy=join.next_copy == "own")
        if pair is not None:
            joining.put(number, pair[0].path, pair[1].path)


# ----------------------------------------------------------------- partners


def _best(
    joining: Joining, number: int, ones: Sequence[ChainRun], others: Sequence[ChainRun], same_copy: bool = True
) -> tuple[ChainRun, ChainRun] | None:
    """The two that suit best; None where nothing suits."""
    surface = joining.surface
    pairs = [
        (_cost(surface, a, b) + _copies_cost(joining, number, a, b, same_copy), i, k)
        for i, a in enumerate(ones)
        for k, b in enumerate(others)
        if not set(a.path) & set(b.path)
    ]
    if not pairs:
        return None
    _, i, k = min(pairs)
    return ones[i], others[k]


def _cost(surface: Surface, one: ChainRun, other: ChainRun) -> float:
    """How badly the ends of two chains suit each other when they meet in opposite directions."""
    return sum(_corners_cost(surface, a, b) for a, b in _meeting(one.path, other.path)) + (
        TWISTED if twisted(surface, one.path, other.path) else UPSIDE_DOWN if _upside_down(surface, one.path, other.path) else 0.0
    )


def _meeting(one: Path, other: Path) -> Iterator[tuple[tuple[int, bool], tuple[int, bool]]]:
    """((edge, at its beginning), (edge, at its beginning)) of the two ends of a seam."""
    yield (one[0], True), (other[-1], False)
    yield (one[-1], False), (other[0], True)


def _corners_cost(surface: Surface, one: tuple[int, bool], other: tuple[int, bool]) -> float:
    numbers = [_corner_at(surface, end) for end in (one, other)]
    if surface.corner(numbers[0]) == surface.corner(numbers[1]):
        return -1.0
    here, there = (surface.edges[e].ring.begin if begin else surface.edges[e].ring.end for e, begin in (one, other))
    common = here & there
    beyond = [{c for c in corner if c.startswith(BEYOND)} for corner in (here, there)]
    elsewhere = 0.25 if all(beyond) and not common & beyond[0] else 0.0
    return elsewhere + (0.0 if any(c.startswith("level ") for c in common) else 0.5) + (0.0 if common & {"outer", "inner"} else 1.0)


def _corner_at(surface: Surface, end: tuple[int, bool]) -> int:
    edge = surface.edges[end[0]]
    return edge.begin if end[1] else edge.end


def _upside_down(surface: Surface, one: Path, other: Path) -> bool:
    """Whether the bottom of one row edge would meet the top of the other."""
    a, b = surface.edges[one[0]].ring, surface.edges[other[-1]].ring
    return a.state in ALONG_ROWS and b.state in ALONG_ROWS and a.first != b.last


def twisted(surface: Surface, one: Path, other: Path) -> bool:
    """Whether two row edges between the same levels would meet bottom to top, or so the ends of two welts."""
    if len(one) != 1 or len(other) != 1:
        return False
    a, b = surface.edges[one[0]].ring, surface.edges[other[0]].ring
    if a.state == b.state == "strip" and a.at_end == b.at_end and all(ring.begin | ring.end for ring in (a, b)):
        return a.first != b.last
    if a.state != "rows" or b.state != "rows" or a.first == b.last:
        return False
    levels = [{c for c in x if c.startswith("level ")} for x in (a.begin, a.end, b.begin, b.end)]
    return bool(levels[0] & levels[2]) and bool(levels[1] & levels[3])


def _copies_cost(joining: Joining, number: int, one: ChainRun, other: ChainRun, same_copy: bool) -> float:
    """Of one piece, an edge meets one of the same copy; of several pieces, each copy has its turn."""
    surface = joining.surface
    a, b = surface.edges[one.path[0]], surface.edges[other.path[0]]
    if a.owner == b.owner:
        return 0.0 if (a.copy == b.copy) == same_copy else 20.0
    used = [
        (surface.edges[p[0]].owner, surface.edges[p[0]].copy) for g in joining.found if g.join == number for p in (g.one, g.other)
    ]
    again = sum(0.25 for edge in (a, b) if edge.copies > 1 and (edge.owner, edge.copy) in used)
    # One sleeve is at the one armhole: what lies at the same place already is known by its corners.
    met = {frozenset((_copy_of(surface, g.one), _copy_of(surface, g.other))) for g in joining.found if g.other}
    again += 0.25 if frozenset(((a.owner, a.copy), (b.owner, b.copy))) in met and max(a.copies, b.copies) > 1 else 0.0
    again += sum(FRESH for edge in (a, b) if edge.copies > 1 and _joined_elsewhere(joining, number, edge))
    return again + 0.01 * (a.copy + b.copy) + (0.1 if a.copies > 1 and b.copies > 1 and a.copy != b.copy else 0.0)


def _joined_elsewhere(joining: Joining, number: int, edge: SurfaceEdge) -> bool:
    """Whether another join puts this copy to another piece: one that nothing is joined to yet has its turn first."""
    discs = ({_copy_of(joining.surface, path) for path in (g.one, g.other) if path} for g in joining.found if g.join != number)
    return any((edge.owner, edge.copy) in found and len({owner for owner, _ in found}) > 1 for found in discs)


def _copy_of(surface: Surface, path: Path) -> tuple[str, int]:
    return surface.edges[path[0]].owner, surface.edges[path[0]].copy
