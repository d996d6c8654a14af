"""Lines that cannot be hung as they are written, written otherwise: only what has been tried is proposed."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import islice, product

from walewright.design.model import Design, EdgeName
from walewright.glue.findings import spoken
from walewright.glue.lines import Hanging, apart
from walewright.glue.surface import Surface
from walewright.record import record, replace
from walewright.report.model import Diagnostic, Severity
from walewright.report.said import Said, said
from walewright.trade.joins import WornFacing

OF_LINES = ("line-not-in-order", "line-closed", "line-not-mirrored")
MOST_NAMED = 12
"""Names of a line that are tried in other orders."""
MOST_TRIED = 12
"""Orders in which all neighbours meet that are tried."""

Attempt = Callable[[Design], tuple[Diagnostic, ...]]
FaultKey = tuple[str, int, int]


@record
class _Written:
    """`facing`: "right" or "wrong" side, where that has to be written too."""

    along: tuple[EdgeName, ...]
    facing: WornFacing

    @property
    def help(self) -> Said:
        if self.facing:
            return said("turn-over", along=spoken(self.along), side=self.facing)
        return said("write-along", along=spoken(self.along))


def with_proposals(
    design: Design, told: Sequence[Diagnostic], hung: Sequence[Hanging], surface: Surface, attempt: Attempt
) -> tuple[Diagnostic, ...]:
    """The diagnostics; before the helps of those about lines, another way to write the line: if nothing is wrong any more when all
    of them are written so."""
    before = set(map(_key, told))
    images = {piece.name for piece in design.pieces if piece.mirror_of}
    written = [h for h in hung if h.owner not in images]
    ways: dict[int, tuple[Hanging, _Written]] = {}
    for number, one in enumerate(told):
        hanging = next((h for h in written if h.origin.span == one.labels[0].span), None) if one.code in OF_LINES else None
        better = None if hanging is None else next(_that_lead_further(design, hanging, surface, before, attempt), None)
        if hanging is not None and better is not None:
            ways[number] = hanging, better
    mended = design
    for hanging, better in ways.values():
        mended = _rewritten(mended, hanging, better)
    if not ways or errors(attempt(mended)):
        return tuple(told)
    return tuple(_proposing(one, ways[number][1]) if number in ways else one for number, one in enumerate(told))


def _proposing(told: Diagnostic, written: _Written) -> Diagnostic:
    """A line that is closed can be helped by the order of the joins as well."""
    return replace(told, helps=(written.help, *(told.helps if told.code == "line-closed" else ())))


def _that_lead_further(
    design: Design, hanging: Hanging, surface: Surface, before: set[FaultKey], attempt: Attempt
) -> Iterator[_Written]:
    for written in islice(_other_ways(hanging, surface), MOST_TRIED):
        if errors(attempt(_rewritten(design, hanging, written))) < before:
            yield written


def errors(told: Iterable[Diagnostic]) -> set[FaultKey]:
    """What is wrong, each by its code and place: what a change must make fewer, and add nothing to."""
    return {_key(one) for one in told if one.severity is Severity.ERROR}


def _key(diagnostic: Diagnostic) -> FaultKey:
    span = diagnostic.labels[0].span
    return diagnostic.code, span.start, span.end


def _other_ways(hanging: Hanging, surface: Surface) -> Iterator[_Written]:
    """In another order with the same side to the knitter, then with the other side."""
    if len(hanging.along) > MOST_NAMED:
        return
    for inside in (hanging.inside, not hanging.inside):
        facing: WornFacing = "" if inside == hanging.inside else "right" if hanging.inside else "wrong"
        for along in _orders(surface, hanging.along, inside):
            if along != hanging.along or facing:
                yield _Written(along, facing)


def _orders(surface: Surface, names: tuple[EdgeName, ...], inside: bool) -> Iterator[tuple[EdgeName, ...]]:
    """The orders in which every two neighbours meet."""
    meet = {
        pair for pair in product(range(len(names)), repeat=2) if apart(surface, (names[pair[0]], names[pair[1]]), inside) is None
    }

    def go_on(so_far: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
        if len(so_far) == len(names):
            yield so_far
            return
        for after in range(len(names)):
            if after not in so_far and (not so_far or (so_far[-1], after) in meet):
                yield from go_on((*so_far, after))

    found = (tuple(names[number] for number in order) for order in go_on(()))
    yield from dict.fromkeys(islice(found, MOST_TRIED))


def _rewritten(design: Design, hanging: Hanging, written: _Written) -> Design:
    bands = tuple(
        replace(b, along=written.along, facing=written.facing or b.facing) if b.name == hanging.owner else b for b in design.bands
    )
    pieces = tuple(
        replace(p, start_along=written.along, start_facing=written.facing or p.start_facing) if p.name == hanging.owner else p
        for p in design.pieces
    )
    return replace(design, bands=bands, pieces=pieces)
