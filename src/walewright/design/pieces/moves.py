"""How far one statement moves an edge, in cm per size; where a width or a level is free, from how far to how far."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.design.model import PerSize, Rate
from walewright.design.model.per_size import minus, plus, times
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.outline import NOTHING, OutlineSide
from walewright.design.pieces.rates import far
from walewright.design.pieces.steps import StepsFound
from walewright.design.pieces.tracing import Tracing
from walewright.design.reading.places import NOT_NEGATIVE, POSITIVE, AmountPlace
from walewright.record import record, replace
from walewright.report.said import Said, said
from walewright.source import syntax
from walewright.trade.sides import SIDES, CentreSide, EdgeSide, PlaceOf


@record
class EdgeMove:
    """The move of one edge, outwards positive: `change`, or where it is free from `change` to `most`. `least` and `farthest`
    are where the edge may stand after it."""

    change: PerSize
    most: PerSize | None
    least: PerSize
    farthest: PerSize
    by: tuple[PerSize, PerSize] | None = None
    """How far the least and the farthest position are moved."""

    def of(self, side: OutlineSide) -> EdgeMove:
        """The same move of that side."""
        if self.by is None:
            return self
        return replace(self, least=plus(side.least, self.by[0]), farthest=plus(side.most, self.by[1]))


def move(node: syntax.EdgeLine, steps: StepsFound, to: int, now: Mapping[EdgeSide, OutlineSide], on: Tracing) -> EdgeMove | None:
    """The move of each edge of the statement up to level `to`, in so many `steps`, if in steps; None when it is reported why it has
    no move. A gap may narrow to nothing."""
    place, what = on.cloth.at(to), on.what
    here = now[SIDES[0] if node.which == "both" else node.which]
    if node.path == "straight":
        still = tuple(0.0 for _ in place.scope.sizes)
        return _moved(here, still, None)
    if steps.in_turn:
        return _moved(here, steps.far, None)
    if node.by is not None:
        by = place.across(node.by, said("edge-of", of=what))
        often = steps.count or (1,) * len(place.scope.sizes)
        return _moved(here, times(by, often), None) if by is not None else None
    if node.width is None:
        place.findings.report("missing-part/how-far", (node.span, "neither"), path=node.path, to_level=node.to_level)
        return None
    if node.beside:
        return _to_place(node, node.width, now, on.centre, place, what)
    if node.which != "both":
        place.findings.report("width-of-one-edge", (node.span, "one-edge"), helps=("write-place", "write-by"), side=node.which)
        return None
    return _to_width(node, node.width, now, place, what, NOT_NEGATIVE if on.gap else POSITIVE)


def _to_place(
    node: syntax.EdgeLine,
    wanted: syntax.Expr,
    now: Mapping[EdgeSide, OutlineSide],
    centre: PerSize,
    place: AmountPlace,
    what: Said,
) -> EdgeMove | None:
    """The move of an edge that is led to a place so far from the centre line; of both, where the centre is in their middle."""
    which = node.which
    if which == "both" and (node.beside != "own" or any(centre)):
        place.findings.report("edges-to-one-place", (node.span, "both"), helps=("one-by-one",))
        return None
    found = width_range(wanted, node.width_most, said("place-at", of=what, level=node.to_level), place, NOT_NEGATIVE)
    if found is None:
        return None
    side: EdgeSide = "right" if which == "right" else "left"
    near, far_off = found[0], found[1] or found[0]
    ends = [position(side, node.beside, distance, centre) for distance in (near, far_off)]
    least, most = (tuple(pick(pair) for pair in zip(*ends, strict=True)) for pick in (min, max))
    here = now[side]
    by = (minus(least, here.least), minus(most, here.most))
    if found[1] is None and here.least == here.most:
        return replace(_moved(here, by[0], None), by=by)
    return EdgeMove(minus(least, here.most), minus(most, here.least), least, most, by)


def position(side: EdgeSide, beside: CentreSide | PlaceOf, distance: PerSize, centre: PerSize) -> PerSize:
    """Where an edge stands, outwards from the middle of the start, that is so far from the centre line."""
    outwards = 1 if side == "right" else -1
    found = []
    for far_off, middle in zip(distance, centre, strict=True):
        # A piece whose start lies beside the centre line has its places on that side of it.
        own = outwards if abs(middle) < NOTHING else 1 if middle < 0 else -1
        right = own if beside == "own" else 1 if beside == "right" else -1
        found.append(outwards * (middle + right * far_off))
    return tuple(found)


def _to_width(
    node: syntax.EdgeLine,
    wanted: syntax.Expr,
    now: Mapping[EdgeSide, OutlineSide],
    place: AmountPlace,
    what: Said,
    narrowest: float,
) -> EdgeMove | None:
    widths = width_range(wanted, node.width_most, said("width-at", of=what, level=node.to_level), place, narrowest)
    if widths is None:
        return None
    width, most = widths
    left, right = now["left"], now["right"]
    least_before, most_before = plus(left.least, right.least), plus(left.most, right.most)
    widest = most or width
    by = (_half(width, least_before), _half(widest, most_before))
    if most is None and least_before == most_before:
        return replace(_moved(left, by[0], None), by=by)
    lowest, highest = _half(width, most_before), _half(widest, least_before)
    return EdgeMove(
        lowest,
        highest,
        plus(left.least, by[0]),
        plus(left.most, by[1]),
        by,
    )


def rated(
    node: syntax.EdgeLine,
    rates: Sequence[Rate],
    cast_off: PerSize,
    between: tuple[int, int],
    now: Mapping[EdgeSide, OutlineSide],
    cloth: PieceCloth,
) -> EdgeMove | None:
    """The move of an edge at a rate, with what is cast off before it."""
    here = now[SIDES[0] if node.which == "both" else node.which]
    found = far(rates, -1 if isinstance(node.by, syntax.Negative) else 1, cast_off, *between, cloth)
    if found is None:
        return None
    least, most = found
    return _moved(here, least, most if most != least else None)


def width_range(
    wanted: syntax.Expr, most: syntax.Expr | None, what: Said, place: AmountPlace, least: float = POSITIVE
) -> tuple[PerSize, PerSize | None] | None:
    """A width across, or the two ends of a free one."""
    low = place.across(wanted, what, least)
    if most is None:
        return (low, None) if low is not None else None
    high = place.across(most, what, least)
    if low is None or high is None or not rises(low, high, most, what, place):
        return None
    return low, high


def rises(low: PerSize, high: PerSize, most: syntax.Expr, what: Said, place: AmountPlace) -> bool:
    """Whether the second end of a range is above the first in every size; told where it is not."""
    sizes = place.scope.sizes
    falls = tuple(s for s, a, b in zip(sizes, low, high, strict=True) if b <= a + 1e-9)
    if falls:
        place.findings.report(
            "range-falls",
            (most.span, "from-to"),
            helps=("lesser-first",),
            sizes=place.scope.only(falls),
            what=what,
            low=place.per_size(low),
            high=place.per_size(high),
        )
    return not falls


def _moved(side: OutlineSide, change: PerSize, most: PerSize | None) -> EdgeMove:
    by = (tuple(map(min, change, most or change)), tuple(map(max, change, most or change)))
    return EdgeMove(change, most, plus(side.least, by[0]), plus(side.most, by[1]), by)


def _half(width: PerSize, before: PerSize) -> PerSize:
    return tuple((w - b) / 2 for w, b in zip(width, before, strict=True))


def tell_wrong_way(node: syntax.EdgeLine, change: PerSize, gap: bool, sizes: tuple[str, ...], place: AmountPlace) -> None:
    """Reports an edge that casts stitches off and then moves to where it would have more of them; `change` in cm, outwards
    positive."""
    helps = ["leave-out"]
    if node.by is not None:
        helps.insert(0, "without-minus" if gap else "minus")
    elif node.width is not None:
        helps.insert(0, "wider" if gap else "narrower")
    place.findings.report(
        "cast-off-too-wide/wrong-way",
        (node.span, "other-way"),
        notes=("moves",),
        helps=tuple(helps),
        sizes=place.scope.only(sizes),
        gap=gap,
        to_level=node.to_level,
        change=place.per_size(tuple(abs(c) for c in change)),
    )
