"""Openings of one piece beside each other: one above the other, or side by side in the same rows with fabric between them."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from walewright.design.pieces.outline import NOTHING, OpeningGap, PieceOutline
from walewright.design.reading.places import AmountPlace, concerned


def apart(gaps: Sequence[OpeningGap], outline: PieceOutline, place: AmountPlace) -> bool:
    """Whether openings leave each other room, and begin and end in one order in all sizes; told where they do not."""
    pairs = [(other, one) for one, other in combinations(gaps, 2)]
    return all(
        _beside(one, other, outline, place)
        and _in_one_order(one, other, outline, place)
        and (_parted_by_others(one, other, gaps) or _rows_between(one, other, outline, place))
        for one, other in pairs
    )


def shared(one: OpeningGap, other: OpeningGap, size: int) -> tuple[float, float]:
    """Between which heights both are open: nowhere, where the first is not below the second."""
    return max(one.low[size], other.low[size]), min(one.high[size], other.high[size])


def _beside(one: OpeningGap, other: OpeningGap, outline: PieceOutline, place: AmountPlace) -> bool:
    """Whether fabric is between two openings wherever both are open."""
    sizes = place.scope.sizes
    over = tuple(_over(one, other, i) for i in range(len(sizes)))
    wide = tuple(s for s, o in zip(sizes, over, strict=True) if o > -NOTHING)
    if wide:
        rows = tuple(max(b - a, 0.0) for a, b in (shared(one, other, i) for i in range(len(sizes))))
        place.findings.report(
            "openings-overlap",
            (one.opening.origin.span, "one"),
            (other.opening.origin.span, "other"),
            helps=("end-before", "further-apart"),
            sizes=place.scope.only(wide),
            one=one.opening.name,
            other=other.opening.name,
            piece=outline.piece,
            one_low=place.per_size(one.low),
            one_high=place.per_size(one.high),
            other_low=place.per_size(other.low),
            other_high=place.per_size(other.high),
            shared=concerned(sizes, rows, wide),
            over=concerned(sizes, tuple(max(o, 0.0) for o in over), wide),
        )
    return not wide


def _over(one: OpeningGap, other: OpeningGap, size: int) -> float:
    """By how much one reaches over the other at the most, in cm; below 0 where fabric is between them, or no row is shared."""
    low, high = shared(one, other, size)
    if high - low < NOTHING:
        return float("-inf")
    left, right = (one, other) if _middle(one, size) < _middle(other, size) else (other, one)
    heights = {low, high, *(h[size] for h, _ in (*left.right, *right.left) if low < h[size] < high)}
    reach = max(left.reach("right", size, h) + right.reach("left", size, h) for h in heights)
    return reach - (_middle(right, size) - _middle(left, size))


def _middle(gap: OpeningGap, size: int) -> float:
    return gap.opening.centre[size]


def _in_one_order(one: OpeningGap, other: OpeningGap, outline: PieceOutline, place: AmountPlace) -> bool:
    """Whether it is the same one in all sizes that begins, ends and lies at the left of the other."""
    sizes = range(len(place.scope.sizes))
    places = [(a, b) for a in (one.low, one.high) for b in (other.low, other.high)]
    orders = [tuple(_sign(a[i] - b[i]) for i in sizes) for a, b in places]
    if any(low < high - NOTHING for low, high in (shared(one, other, i) for i in sizes)):
        orders.append(tuple(_sign(_middle(one, i) - _middle(other, i)) for i in sizes))
    if all(len(set(order)) == 1 for order in orders):
        return True
    place.findings.report(
        "openings-in-turn",
        (one.opening.origin.span, "one"),
        (other.opening.origin.span, "other"),
        notes=("one-text",),
        helps=("all-sizes",),
        one=one.opening.name,
        other=other.opening.name,
        piece=outline.piece,
        one_low=place.per_size(one.low),
        one_high=place.per_size(one.high),
        other_low=place.per_size(other.low),
        other_high=place.per_size(other.high),
    )
    return False


def _sign(cm: float) -> int:
    return 0 if abs(cm) < NOTHING else 1 if cm > 0 else -1


def _parted_by_others(one: OpeningGap, other: OpeningGap, gaps: Sequence[OpeningGap]) -> bool:
    """Whether in the row where the one ends and the other begins a further opening lies between them that is open below and above
    it: then the piece comes together in one of its parts, and parts in another."""
    sizes = range(len(one.low))
    lower, upper = (one, other) if one.low < other.low else (other, one)
    return any(
        all(
            third.low[i] < upper.low[i] - NOTHING
            and third.high[i] > lower.high[i] + NOTHING
            and min(_middle(one, i), _middle(other, i)) < _middle(third, i) < max(_middle(one, i), _middle(other, i))
            for i in sizes
        )
        for third in gaps
        if third is not one and third is not other
    )


def _rows_between(one: OpeningGap, other: OpeningGap, outline: PieceOutline, place: AmountPlace) -> bool:
    lower, upper = (one, other) if one.low < other.low else (other, one)
    return _whole_rows_between(lower, upper, outline, place)


def _whole_rows_between(lower: OpeningGap, upper: OpeningGap, outline: PieceOutline, place: AmountPlace) -> bool:
    """Whether the piece parts again above the place where its parts come together, not in the same row."""
    touch = tuple(s for i, s in enumerate(place.scope.sizes) if abs(upper.low[i] - lower.high[i]) < NOTHING)
    if touch:
        place.findings.report(
            "openings-touch",
            (upper.opening.origin.span, "from"),
            (lower.opening.origin.span, "to"),
            notes=("whole-rows",),
            helps=("own-level",),
            sizes=place.scope.only(touch),
            upper=upper.opening.name,
            piece=outline.piece,
            lower=lower.opening.name,
            low=place.per_size(upper.low),
            high=place.per_size(lower.high),
        )
    return not touch
