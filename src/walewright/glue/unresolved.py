"""Joins and lines that find no edges, and what stands in their way."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.design.model import Design, EdgeJoin, EdgeName, Origin
from walewright.glue.chains import units
from walewright.glue.findings import spoken
from walewright.glue.joins import Joining
from walewright.glue.lines import Hanging, HungCopy, apart
from walewright.glue.surface import Surface, SurfaceEdge
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Fact, Said, said

MOST_BETWEEN = 4
"""Edges that lie between two of a line and are named; more are another part of the garment."""


def unresolved(design: Design, joining: Joining, hung: Sequence[Hanging], lines: Sequence[HungCopy]) -> Iterator[Diagnostic]:
    """Joins without a seam, and bands and pieces that are hung on nothing."""
    users = _users(design, joining, lines)
    for number, join in enumerate(design.joins):
        if number not in joining.done and not _without_line(design, join, lines):
            yield (
                _once(join, joining.surface)
                or _used_twice(join.origin, (*join.one, *join.other), joining.surface, users)
                or _no_partner(join, joining.surface)
            )
    for hanging in hung:
        there = sum(1 for line in lines if line.hanging.owner == hanging.owner)
        if there == 0 or there < hanging.copies:
            yield _used_twice(hanging.origin, hanging.along, joining.surface, users) or _not_in_line(hanging, joining.surface)


def _without_line(design: Design, join: EdgeJoin, lines: Sequence[HungCopy]) -> bool:
    """Whether a join names a band that cannot be hung: that is reported of the band."""
    hung = {line.hanging.owner for line in lines}
    return any(design.band(name.piece) is not None and name.piece not in hung for name in (*join.one, *join.other))


def _once(join: EdgeJoin, surface: Surface) -> Diagnostic | None:
    """Of copies that are joined each to the next, what there is one of: a band is knitted as often as what it lies on."""
    copies = [surface.edges[u.path[0]].copies for u in units(surface, join.one[0], used=True)]
    if not join.next_copy or max(copies, default=0) > 1:
        return None
    return diagnosed(
        "join-not-in-line/knitted-once", (join.origin.span, "next"), helps=("leave-out-or-lines",), band=join.one[0].piece
    )


def _users(design: Design, joining: Joining, lines: Sequence[HungCopy]) -> dict[int, Origin]:
    """Edge -> the statement that uses it."""
    found = {e: design.joins[g.join].origin for g in joining.found for e in (*g.one, *g.other)}
    return found | {e: line.hanging.origin for line in lines for e in line.path}


def _used_twice(origin: Origin, names: Sequence[EdgeName], surface: Surface, users: dict[int, Origin]) -> Diagnostic | None:
    for name in dict.fromkeys(names):
        there, free = units(surface, name, used=True), units(surface, name)
        if there and len(free) < min(list(names).count(name), len(there)):
            before = next((users[e] for u in there for e in u.path if e in users), None)
            labels = [(origin.span, "used-here")]
            if before is not None and before.span != origin.span:
                labels.append((before.span, "already-used"))
            copies = surface.edges[there[0].path[0]].copies
            notes = ("copies",) if copies > 1 else ()
            facts: dict[str, Fact] = {"edge": spoken((name,)), "piece": name.piece, "copies": copies}
            return diagnosed("edge-used-twice/again", *labels, notes=notes, helps=("take-one-out",), facts=facts)
    return None


def _no_partner(join: EdgeJoin, surface: Surface) -> Diagnostic:
    sides = [side for side in (join.one, join.other) if len(side) > 1]
    return diagnosed(
        "join-not-in-line/no-one-line",
        (join.origin.span, "joined-here"),
        notes=tuple(note for side in sides for note in _gap(side, surface)),
        helps=("join-between",),
        one=spoken(join.one),
        other=spoken(join.other),
    )


def _gap(side: Sequence[EdgeName], surface: Surface) -> Iterator[Said]:
    found = apart(surface, tuple(side), inside=True) and apart(surface, tuple(side), inside=False)
    if found:
        yield said("gap", side=spoken(side), edge=spoken(found[:1]), next=spoken(found[1:]))


def _not_in_line(hanging: Hanging, surface: Surface) -> Diagnostic:
    between = apart(surface, hanging.along, hanging.inside)
    notes = []
    if between is not None:
        notes.append(said("apart", edge=spoken(between[:1]), next=spoken(between[1:])))
        notes += _nameless(hanging, between, surface) or _between(hanging, between, surface)
    return diagnosed(
        "line-not-in-order",
        (hanging.origin.span, "hung-here"),
        notes=(*notes, "clockwise" if hanging.inside else "anticlockwise"),
        helps=_as_a_line(hanging),
        along=spoken(hanging.along),
        side=hanging.face,
    )


def _as_a_line(hanging: Hanging) -> tuple[Said, ...]:
    once = tuple(dict.fromkeys((name.piece, name.edge) for name in hanging.along))
    if len(hanging.along) > 1 and len(once) == 1:
        return said("name-once", piece=hanging.along[0].piece), said("join-between", otherwise=True)
    return (said("join-between", otherwise=False),)


def _nameless(hanging: Hanging, between: tuple[EdgeName, EdgeName], surface: Surface) -> list[Said]:
    """An edge without a name beside the two: often the rest of the way to the top."""
    one, other = between if hanging.inside else between[::-1]
    after = {surface.edges[u.path[-1]].after for u in units(surface, one, used=True)}
    after |= {e for e, edge in enumerate(surface.edges) for u in units(surface, other, used=True) if edge.after == u.path[0]}
    loose = [surface.edges[e] for e in sorted(after) if not surface.edges[e].ring.edge]
    return [said("nameless", piece=edge.owner, **_from_to(edge)) for edge in loose[:1]]


def _between(hanging: Hanging, between: tuple[EdgeName, EdgeName], surface: Surface) -> list[Said]:
    """The free edges with names that lie on the way from the one to the other, if they are few."""
    one, other = between if hanging.inside else between[::-1]
    ways = [
        way
        for before in units(surface, one, used=True)
        for after in units(surface, other, used=True)
        if (way := surface.free_between(before.path[-1], after.path[0], MOST_BETWEEN))
    ]
    if not ways:
        return []
    edges = [surface.edges[e] for e in min(ways, key=len)]
    names = [EdgeName(edge.owner, edge.ring.edge) for edge in (edges if hanging.inside else reversed(edges))]
    return [said("between", edges=spoken(names))]


def _from_to(edge: SurfaceEdge) -> dict[str, Fact]:
    """The levels between which an edge lies; none of one that is not on the way from a level to a level."""
    levels = [next((c.removeprefix("level ") for c in at if c.startswith("level ")), "") for at in (edge.ring.begin, edge.ring.end)]
    low, high = levels if edge.ring.first == "bottom" else levels[::-1]
    return {"low": low if high else "", "high": high}
