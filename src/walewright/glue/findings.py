"""What there is to say about a garment that does not hold together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import islice

from walewright.design.model import Design, DesignInSize, EdgeJoin, EdgeName
from walewright.glue.chains import Unit, units
from walewright.glue.joins import Joining
from walewright.glue.joins import twisted as is_twisted
from walewright.glue.lines import HungCopy
from walewright.glue.order import Ordered
from walewright.glue.surface import Surface
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import only, said


def spoken(names: Sequence[EdgeName]) -> str:
    """ "back armhole + front armhole", as the author writes it."""
    return " + ".join(f"{n.piece} {n.edge.replace(' ', '_')}" for n in names)


# ----------------------------------------------------------------- seams and lines that cannot be made


def twisted_seams(design: Design, joining: Joining) -> Iterator[Diagnostic]:
    """Two left edges, or two right ones, joined foot to foot: one message for each join."""
    told: set[int] = set()
    for g in joining.found:
        if g.join not in told and is_twisted(joining.surface, g.one, g.other):
            told.add(g.join)
            one, other = (joining.surface.edges[p[0]] for p in (g.one, g.other))
            side = "left" if one.ring.first == "bottom" else "right"
            yield diagnosed(
                "seam-twisted",
                (design.joins[g.join].origin.span, "joined-here"),
                helps=("left-to-right",),
                piece=one.owner,
                edge=one.ring.edge,
                other_piece=other.owner,
                other_edge=other.ring.edge,
                side=side,
            )


def in_doubt(design: Design, joining: Joining) -> Iterator[Diagnostic]:
    """Joins of copies to copies that could be made otherwise as well."""
    for number in sorted(joining.doubted):
        join = design.joins[number]
        owners = {join.one[0].piece, join.other[0].piece}
        before = (
            other.origin.span
            for n, other in enumerate(design.joins)
            if n in joining.done and n != number and {name.piece for name in (*other.one, *other.other)} == owners
        )
        yield diagnosed(
            "copies-in-doubt",
            (join.origin.span, "joined-here"),
            *((span, "joined-before") for span in islice(before, 1)),
            notes=("ring-or-pairs",),
            helps=("to-the-next", "to-its-own"),
            piece=join.one[0].piece,
            other=join.other[0].piece,
        )


_Disc = tuple[str, int]
"""A copy of a piece."""


def left_over(at: DesignInSize, joining: Joining) -> list[Diagnostic]:
    """Copies that nothing joins to another piece, be it over further copies, while others of them are joined to some."""
    surface = joining.surface
    together: dict[_Disc, set[_Disc]] = {}
    for g in joining.found:
        discs = {(surface.edges[e].owner, surface.edges[e].copy) for e in (*g.one, *g.other)}
        whole = set().union(discs, *(together.get(disc, ()) for disc in discs))
        together |= dict.fromkeys(whole, whole)
    used: dict[str, set[int]] = {}
    for (owner, copy), whole in together.items():
        if len({other for other, _ in whole}) > 1:
            used.setdefault(owner, set()).add(copy)
    found: list[Diagnostic] = []
    for piece in at.design.pieces:
        copies = at.of(piece.copies)
        idle = [n for n in range(1, copies + 1) if used.get(piece.name) and n not in used[piece.name]]
        if idle:
            joins = [j for j in at.design.joins if piece.name in {n.piece for n in (*j.one, *j.other)}]
            found.append(
                diagnosed(
                    "copies-left-over",
                    (piece.origin.span, "piece"),
                    *((j.origin.span, "joined-here") for j in joins),
                    helps=("knit-fewer",),
                    piece=piece.name,
                    copies=copies,
                    idle=len(idle),
                    joined=copies - len(idle),
                )
            )
    return found


def half_joined(design: Design, joining: Joining) -> Iterator[Diagnostic]:
    """An edge on both sides of a piece that a join finds a partner for on one side, while nothing takes the other side up: a strip
    is sewn on so, and a sleeve is forgotten so. Each to the next leaves the outer ones of the row. A welt has two ends on a front
    that has one side: where it lies in line with no seam, nothing is forgotten."""
    surface = joining.surface
    told: set[EdgeName] = set()
    for number, join in enumerate(design.joins):
        joined = {e for g in joining.found if g.join == number for e in (*g.one, *g.other)}
        for name in dict.fromkeys((*join.one, *join.other) if join.next_copy in ("", "own") else ()):
            every = units(surface, name, used=True)
            loose = [u for u in units(surface, name) if surface.edges[u.path[0]].ring.state != "strip"]
            if loose and any(set(unit.path) & joined for unit in every):
                if name not in told:
                    yield _half(join, name, loose[0], surface)
                told |= {*join.one, *join.other}
                break


def _half(join: EdgeJoin, name: EdgeName, loose: Unit, surface: Surface) -> Diagnostic:
    free = surface.edges[loose.path[0]]
    sides = dict.fromkeys(surface.edges[u.path[0]].ring.edge for u in units(surface, name, used=True))
    return diagnosed(
        "edge-half-joined",
        (join.origin.span, "joined-here"),
        notes=("stays-open",),
        helps=("name-the-side",),
        severity=Severity.WARNING,
        edge=spoken((name,)),
        piece=name.piece,
        free=spoken((EdgeName(name.piece, free.ring.edge),)),
        sides=tuple(said("quoted", name=spoken((EdgeName(name.piece, side),))) for side in sides),
    )


def mixed_copies(surface: Surface, lines: Sequence[HungCopy]) -> Iterator[Diagnostic]:
    """Bands and pieces that are hung several times: each copy lies on the same copy of a piece, or on the next; of other copies
    nobody could say which. A band up both sides of a piece that is knitted once is another mistake."""
    told: set[str] = set()
    for line in lines:
        owner = line.hanging.owner
        times = sum(1 for other in lines if other.hanging.owner == owner)
        for edge in (surface.edges[e] for e in line.path if times > 1):
            mixed = edge.copies != times or (edge.copy - line.copy) % times > 1
            if mixed and edge.copies > 1 and owner not in told:
                told.add(owner)
                yield diagnosed(
                    "copies-mixed",
                    (line.hanging.origin.span, "hung-here"),
                    helps=("pieces-of-their-own",),
                    hung=owner,
                    times=times,
                    piece=edge.owner,
                    copies=edge.copies,
                )


def shut_lines(design: Design, joining: Joining, work: Ordered) -> Iterator[Diagnostic]:
    """Lines that are rings by the time they can be hung. Of those on the same pieces, which keep each other from it, the last
    one is reported."""
    told: set[str] = set()
    for line, seams in reversed(work.shut):
        on = {joining.surface.edges[e].owner for e in line.path}
        if told & on:
            continue
        told |= on
        joins = [design.joins[n] for n in dict.fromkeys(joining.found[s].join for s in seams)]
        yield diagnosed(
            "line-closed",
            (line.hanging.origin.span, "hung-here"),
            *((j.origin.span, "joined-before") for j in joins),
            helps=("join-later",),
            along=spoken(line.hanging.along),
        )


def left_open(design: Design, surface: Surface) -> list[Diagnostic]:
    """One message for all edges of open loops that nothing takes up."""
    loose = [e for e, edge in enumerate(surface.edges) if edge.ring.state == "live" and surface.free(e)]
    if not loose:
        return []
    names: dict[str, int] = {}
    for e in loose:
        edge = surface.edges[e]
        names[f"{edge.owner} {edge.ring.edge}"] = names.get(f"{edge.owner} {edge.ring.edge}", 0) + 1
    owners = list(dict.fromkeys(surface.edges[e].owner for e in loose))
    sizes = _sizes_open(design, surface, loose)
    return [
        diagnosed(
            "loops-left-open",
            *((design.piece(owner).origin.span, said("the", name=owner)) for owner in owners),
            notes=("runs-down",),
            helps=("take-them-up", "close-them"),
            sizes=sizes,
            edges=tuple(said("edge-of-copies", edge=name, copies=count) for name, count in names.items()),
        )
    ]


def _sizes_open(design: Design, surface: Surface, loose: Sequence[int]) -> tuple[str, ...]:
    """The sizes concerned, where not all: a neck may have no flat part in some."""
    over: set[int] = set()
    for e in loose:
        edge = surface.edges[e]
        opening = next((o for o in design.piece(edge.owner).openings if edge.ring.edge == f"{o.name} centre"), None)
        over |= {i for i in range(len(design.sizes)) if opening is None or opening.flat[i] > 0}
    return only(design.sizes, sorted(over))


def crossed(design: Design) -> list[Diagnostic]:
    """What to say of a garment with a handle."""
    return [diagnosed("seams-cross", *((j.origin.span, "joined-here") for j in design.joins), helps=("exchanged",))]


# ----------------------------------------------------------------- mirror images


def not_mirrored(design: Design, surface: Surface, lines: Sequence[HungCopy]) -> Iterator[Diagnostic]:
    """What is hung all round an opening of a mirror image begins at the mirrored corner: the seam lies where its twin's does."""
    model = {p.name: p.mirror_of for p in design.pieces if p.mirror_of}
    for one in lines:
        for other in lines:
            first, begun = surface.edges[one.from_left[0]], surface.edges[other.from_left[0]]
            if model.get(begun.owner) != first.owner or not _alike(one, other, surface):
                continue
            ends = surface.edges[other.from_left[-1]]
            if begun.ring.edge == first.ring.edge and ends.ring.edge != first.ring.edge and _all_round(surface, other):
                yield diagnosed(
                    "line-not-mirrored",
                    (other.hanging.origin.span, "hung-here"),
                    (one.hanging.origin.span, "and-here"),
                    helps=("mirrored-corner",),
                    hung=other.hanging.owner,
                    piece=begun.owner,
                    model_hung=one.hanging.owner,
                    model=first.owner,
                )


def _alike(one: HungCopy, other: HungCopy, surface: Surface) -> bool:
    """Whether two lines lie on the same edges, one of a model and one of its mirror image."""
    here, there = (sorted(surface.edges[e].ring.edge for e in line.path) for line in (one, other))
    return here == there and one.hanging.owner != other.hanging.owner


def _all_round(surface: Surface, line: HungCopy) -> bool:
    return surface.edges[line.path[0]].begin == surface.edges[line.path[-1]].end


# ----------------------------------------------------------------- what pieces are called


def named_for_other_side(design: Design, surface: Surface, lines: Sequence[HungCopy]) -> Iterator[Diagnostic]:
    """A piece called a left front that opens where the wearer's right front does. Bed left of a front is the wearer's left, so
    that the left front opens at bed right; worn with the purl side out it is the other way round."""
    hung = {e for line in lines for e in line.path}
    for piece in design.pieces:
        called = _front_of(piece.name)
        own = [
            e for e, edge in enumerate(surface.edges) if (edge.owner, edge.copy) == (piece.name, 1) and edge.ring.state == "rows"
        ]
        opens = {_worn_side(surface, e) for e in own if surface.free(e) or e in hung} - {""}
        if not called or len(opens) != 1:
            continue
        (side,) = opens
        if side == called:
            yield diagnosed(
                "named-for-other-side",
                (piece.origin.span, "called"),
                notes=("left-opens-right",),
                helps=("other-side",),
                severity=Severity.WARNING,
                piece=piece.name,
                worn={"left": "right", "right": "left"}[side],
                called=called,
            )


def _front_of(name: str) -> str:
    """ "left" or "right" of a name with that word and `front`."""
    words = name.lower().split("_")
    sides = [word for word in words if word in ("left", "right")]
    return sides[0] if len(sides) == 1 and "front" in words else ""


def _worn_side(surface: Surface, edge: int) -> str:
    """At which side of a piece, seen from the side that is worn inside, a row edge lies; "" of an opening's edges."""
    ring = surface.edges[edge].ring
    return "" if "inner" in ring.begin | ring.end else "left" if ring.first == "bottom" else "right"
