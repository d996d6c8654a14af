"""Seams as the bed has them: both sides of each measured on the fabric, those that are alike told once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import groupby

from walewright.bed import KnitFabric, seam
from walewright.counted.model import SizedGarment
from walewright.design.model import Design, EdgeName
from walewright.glue.model import Chain, Glued, GluedSizes, Place
from walewright.proof.model import EndSewnOn, JoinProof, SewnEdge
from walewright.record import replace
from walewright.solve.model import Counts


def unlike(glued: GluedSizes, counts: Counts) -> frozenset[int]:
    """Joins whose seams differ in length in some size: each seam of them is told by itself, in all sizes."""
    found: set[int] = set()
    for size, garment in enumerate(counts.sizes):
        by_join: dict[int, set[tuple[float | None, ...]]] = {}
        for made, sized in zip(glued.in_size(size).seams, garment.seams, strict=True):
            lengths = sized.one_rows, sized.other_rows, round(sized.one_cm, 2), round(sized.other_cm, 2)
            by_join.setdefault(made.join, set()).add(lengths)
        found |= {join for join, lengths in by_join.items() if len(lengths) > 1}
    return frozenset(found)


def seam_proofs(
    design: Design, glued: Glued, garment: SizedGarment, fabrics: Mapping[str, KnitFabric], apart: frozenset[int]
) -> Iterator[JoinProof]:
    """One for each join, or, of the joins to be told `apart`, for each seam."""
    numbers = sorted(range(len(glued.seams)), key=lambda n: glued.seams[n].join)
    for join, group in groupby(numbers, key=lambda n: glued.seams[n].join):
        own = list(group)
        if join not in apart:
            of = design.joins[join]
            first = _measured(design, glued, garment, fabrics, own[0])
            over = dict.fromkeys(sewn_on(design, fabrics, e) for n in own for ends in glued.seams[n].over for e in ends)
            yield replace(first, one=_named(of.one), other=_named(of.other), times=len(own), over=tuple(over))
            continue
        for number in own:
            yield _measured(design, glued, garment, fabrics, number)
    yield from _of_ends(glued, fabrics)


def _of_ends(glued: Glued, fabrics: Mapping[str, KnitFabric]) -> Iterator[JoinProof]:
    """Ends of strips that are sewn together by themselves, those of copies told once."""
    named = [(sewn((pair.one,)), sewn((pair.other,))) for pair in glued.ends]
    alike = [(_of_any_copy(one), _of_any_copy(other)) for one, other in named]
    for number, (one, other) in enumerate(alike):
        if alike.index((one, other)) < number:
            continue
        pair, times = glued.ends[number], alike.count((one, other))
        here, there = (seam(fabrics, pairs((end,))) for end in (pair.one, pair.other))
        assert here is not None, "the bed has sewn these ends"
        assert there is not None, "the bed has sewn these ends"
        first, second = named[number] if times == 1 else (one, other)
        apart = abs((here.length_cm or 0.0) - (there.length_cm or 0.0))
        lengths = here.rows, there.rows, here.length_cm or 0.0, there.length_cm or 0.0, apart if here.rows != there.rows else 0.0
        yield JoinProof(first, second, *lengths, join=None, times=times)


def _of_any_copy(side: tuple[SewnEdge, ...]) -> tuple[SewnEdge, ...]:
    """Without the numbers of copies."""
    return tuple(replace(edge, copy=0) for edge in side)


def _measured(design: Design, glued: Glued, garment: SizedGarment, fabrics: Mapping[str, KnitFabric], number: int) -> JoinProof:
    made, sized = glued.seams[number], garment.seams[number]
    one, other = (seam(fabrics, pairs(side)) for side in (made.one, made.other or made.one))
    assert one is not None, "the bed has joined these edges"
    assert other is not None, "the bed has joined these edges"
    return JoinProof(
        one=sewn(made.one),
        other=sewn(made.other),
        one_rows=one.rows or None,
        other_rows=other.rows or None,
        one_cm=one.length_cm or 0.0,
        other_cm=other.length_cm or 0.0,
        easing_cm=sized.easing_cm,
        longer_cm=sized.longer_cm,
        way=design.joins[made.join].way,
        join=made.join,
        over=tuple(sewn_on(design, fabrics, end) for ends in made.over for end in ends),
    )


def sewn_on(design: Design, fabrics: Mapping[str, KnitFabric], end: Place) -> EndSewnOn:
    """The end of an edging or a band that a seam goes on along, as it was knitted."""
    edging = design.strip(end.owner, end.edge)
    assert edging is not None, "it is the end of a strip"
    per_cm = design.fabric(edging.fabric).rows_per_cm
    if design.band(end.owner) is not None:
        rows = fabrics[end.owner].end_rows
        return EndSewnOn(end.owner, "", rows, rows / per_cm)
    piece = design.piece(end.owner)
    at = piece.strip_at(end.edge)
    name = next(name for name, where in piece.strips if where == at)
    hung = fabrics.get(f"{piece.name} {edging.name}")
    if at == "end":
        rows = sum(edge.count for edge in fabrics[piece.name].edge(f"{name} left"))
    else:
        rows = fabrics[piece.name].rows_before if hung is None else hung.end_rows
    return EndSewnOn(piece.name, name, rows, rows / per_cm)


def pairs(chain: Chain) -> tuple[tuple[str, str], ...]:
    """(piece, edge) of each place."""
    return tuple((place.owner, place.edge) for place in chain)


def sewn(chain: Chain) -> tuple[SewnEdge, ...]:
    """The edges of one side of a seam, from its beginning."""
    return tuple(SewnEdge(p.owner, p.edge, p.copy if p.copies > 1 else 0) for p in chain)


def _named(names: tuple[EdgeName, ...]) -> tuple[SewnEdge, ...]:
    return tuple(SewnEdge(n.piece, n.edge) for n in names)
