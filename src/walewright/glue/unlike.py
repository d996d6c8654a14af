"""Names that stand for several edges of one piece: lines of a band, or of the copies of a piece, that are not alike.

What is knitted several times is knitted alike, each copy hung on the same edges of its copy of a piece. Where a name stands for
the edges of both sides, or for the shoulders beside a neck, the lines are of different edges: each has to be named.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import islice, permutations, product

from walewright.design.model import Band, Design, EdgeJoin, EdgeName, Piece
from walewright.glue.chains import in_line
from walewright.glue.findings import spoken
from walewright.glue.lines import Hanging, HungCopy, apart
from walewright.glue.proposals import Attempt, errors
from walewright.glue.surface import Surface
from walewright.record import replace
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Fact, Said, said
from walewright.trade.sides import GAP_PARTS

EdgeNames = tuple[EdgeName, ...]

MOST_NAMED = 4
"""Names of a line that are tried in every order."""
MOST_TRIED = 12
"""Ways to name the lines that are tried."""


def unlike(surface: Surface, lines: Sequence[HungCopy]) -> Iterator[Diagnostic]:
    """One message for each band or piece whose lines are of different edges."""
    for hanging, ways in _unlike(surface, lines):
        place = next(i for i in range(len(hanging.along)) if len({way[i : i + 1] for way in ways}) > 1)
        facts: dict[str, Fact] = {
            "name": spoken(hanging.along[place : place + 1]),
            "count": len(ways),
            "edges": tuple(said("quoted", name=spoken(way[place : place + 1])) for way in ways),
        }
        if hanging.copies:
            yield diagnosed(
                "start-on-both-sides",
                (hanging.origin.span, "begun-here"),
                notes=("knitted-alike",),
                helps=("a-piece-for-each",),
                facts={"piece": hanging.owner, **facts},
            )
        else:
            yield diagnosed(
                "band-up-both-sides",
                (hanging.origin.span, "picked-up-here"),
                notes=("one-line",),
                helps=("a-band-for-each",),
                facts={"band": hanging.owner, **facts},
            )


def _unlike(surface: Surface, lines: Sequence[HungCopy]) -> Iterator[tuple[Hanging, tuple[EdgeNames, ...]]]:
    """Those hangings, with the names of each kind of line."""
    for hanging in dict.fromkeys(line.hanging for line in lines):
        ways = tuple(dict.fromkeys(_named(surface, line) for line in lines if line.hanging is hanging))
        if len(ways) > 1:
            yield hanging, ways


def _named(surface: Surface, line: HungCopy) -> EdgeNames:
    """The edges of a line, each by the name that means it alone; a way round an opening is one."""
    found: list[EdgeName] = []
    before: int | None = None
    for e in line.from_left:
        edge = surface.edges[e]
        head = _opening(surface, e)
        if before is not None and head and _opening(surface, before) == head and in_line(surface, (before, e)):
            found[-1] = EdgeName(edge.owner, head)
        else:
            found.append(EdgeName(edge.owner, edge.ring.edge))
        before = e
    return tuple(found)


def _opening(surface: Surface, edge: int) -> str:
    """Of whose edge it may be a part; empty of one without parts."""
    head, _, part = surface.edges[edge].ring.edge.rpartition(" ")
    return head if part in GAP_PARTS else ""


# ----------------------------------------------------------------- what leads further


def with_lines_named(
    design: Design, told: Sequence[Diagnostic], surface: Surface, lines: Sequence[HungCopy], attempt: Attempt
) -> tuple[Diagnostic, ...]:
    """The diagnostics; those about unlike lines with ways to name these that have been tried: nothing is wrong any more when they
    are written so."""
    found = dict(_unlike(surface, lines))
    if not found:
        return tuple(told)
    best: dict[Hanging, tuple[EdgeNames, ...]] = {}
    mended = design
    for hanging, ways in found.items():
        before = errors(attempt(mended))
        for some in islice(product(*(_orders(hanging, way, surface) for way in ways)), MOST_TRIED):
            tried = _apart(mended, hanging, some)
            if errors(attempt(tried)) < before:
                best[hanging], mended = some, tried
                break
    if len(best) < len(found) or errors(attempt(mended)):
        return tuple(told)
    helps = {h.origin.span: _help(h, some, attempt(_one(design, h, some[0]))) for h, some in best.items()}
    return tuple(
        replace(one, helps=helps[one.labels[0].span])
        if one.code in ("band-up-both-sides", "start-on-both-sides") and one.labels[0].span in helps
        else one
        for one in told
    )


def _orders(hanging: Hanging, way: EdgeNames, surface: Surface) -> list[EdgeNames]:
    orders = [way, *(permutations(way) if 1 < len(way) <= MOST_NAMED else ())]
    return [some for some in dict.fromkeys(orders) if apart(surface, some, hanging.inside) is None]


def _help(hanging: Hanging, ways: Sequence[EdgeNames], alone: Sequence[Diagnostic]) -> tuple[Said, ...]:
    each = tuple(said("quoted-along", along=spoken(way)) for way in ways)
    several = said("write-several", count=len(ways), pieces=hanging.copies, each=each)
    return (several,) if errors(alone) else (several, said("or-only-one", along=spoken(ways[0])))


def _one(design: Design, hanging: Hanging, way: EdgeNames) -> Design:
    """It runs along one of its lines only."""
    bands = tuple(replace(b, along=way) if b.name == hanging.owner else b for b in design.bands)
    pieces = tuple(replace(p, start_along=way) if p.name == hanging.owner else p for p in design.pieces)
    return replace(design, bands=bands, pieces=pieces)


def _apart(design: Design, hanging: Hanging, ways: Sequence[EdgeNames]) -> Design:
    """A band, or a piece with its joins, for each of the lines."""
    names = [hanging.owner, *(f"{hanging.owner} {n}" for n in range(2, len(ways) + 1))]
    bands: list[Band] = []
    for band in design.bands:
        bands += (
            [replace(band, name=n, along=w) for n, w in zip(names, ways, strict=True)] if band.name == hanging.owner else [band]
        )
    pieces: list[Piece] = []
    for piece in design.pieces:
        if piece.name == hanging.owner:
            each = tuple(max(1, copies // len(ways)) for copies in piece.copies)
            pieces += [replace(piece, name=n, start_along=w, copies=each) for n, w in zip(names, ways, strict=True)]
        else:
            pieces.append(piece)
    joins: list[EdgeJoin] = []
    for join in design.joins:
        own = any(name.piece == hanging.owner for name in (*join.one, *join.other))
        joins += [_of(join, hanging.owner, name) for name in names] if own and hanging.copies else [join]
    return replace(design, bands=tuple(bands), pieces=tuple(pieces), joins=tuple(joins))


def _of(join: EdgeJoin, owner: str, name: str) -> EdgeJoin:
    one, other = (tuple(replace(e, piece=name) if e.piece == owner else e for e in side) for side in (join.one, join.other))
    return replace(join, one=one, other=other)
