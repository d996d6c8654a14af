"""What is wanted otherwise than as one number in every size: ranges within which anything will do, and signed places."""

from __future__ import annotations

from math import ceil, floor

from walewright.record import replace
from walewright.report.said import said, tenths
from walewright.solve.algebra.programme import Draft, Wish
from walewright.solve.algebra.quantities import BEYOND_COST, EXACT, OFF_COST, PLAIN_COST, Quantity, want
from walewright.solve.algebra.sums import Linear, Terms

CENTRAL = PLAIN_COST / 10
"""For each stitch or row off the middle of a range: decides only where nothing else does."""


def want_range(draft: Draft, quantity: Quantity, most: tuple[float, ...], most_cm: tuple[float, ...]) -> None:
    """Writes a quantity that may be anything from `quantity.wanted` to `most` (`most_cm` in cm), at no cost.

    Where no whole number lies between the two, the nearest one is wanted, as of a quantity that is not free."""
    factor = quantity.factor
    ends = [(min(a, b), max(a, b)) for a, b in zip(quantity.wanted, most, strict=True)]
    spoken = [(min(a, b), max(a, b)) for a, b in zip(quantity.cm, most_cm, strict=True)]
    if all(high - low < EXACT for low, high in ends):
        want(draft, quantity)
        return
    lines: list[tuple[int, Linear]] = []
    for size, (terms, (wanted_low, wanted_high)) in enumerate(zip(quantity.terms, ends, strict=True)):
        if not terms:
            continue
        middle = (wanted_low + wanted_high) / 2
        low, high = ceil(wanted_low / factor - EXACT), floor(wanted_high / factor + EXACT)
        if low > high:
            off = quantity.tolerance[size]
            low, high = ceil((middle - off) / factor - EXACT), floor((middle + off) / factor + EXACT)
            draft.wishes.append(Wish(factor * terms, middle, OFF_COST * quantity.share, BEYOND_COST * quantity.share, free=1.0))
        else:
            draft.wishes.append(Wish(factor * terms, middle, CENTRAL))
        lines.append((size, terms.within(low if quantity.signed else max(low, 0), high)))
    lengths = (tenths(low) if high - low < EXACT else said("range", least=tenths(low), most=tenths(high)) for low, high in spoken)
    unit = quantity.cm_per_unit(most, most_cm)
    draft.rules.append(replace(quantity.rule(lengths, lines), cm_per_unit=unit, figure=quantity.figure, ranged=True))


def want_place(draft: Draft, quantity: Quantity) -> None:
    """Writes a quantity that may lie on either side of nothing, such as where a gap's middle is from the centre mark."""
    lines: list[tuple[int, Linear]] = []
    for size, (terms, wanted, off) in enumerate(zip(quantity.terms, quantity.wanted, quantity.tolerance, strict=True)):
        if terms:
            lines.append((size, terms.within(ceil(wanted - off - EXACT), floor(wanted + off + EXACT))))
            draft.wishes.append(Wish(terms, wanted, OFF_COST * quantity.share, BEYOND_COST * quantity.share, free=1.0))
    if lines:
        draft.rules.append(quantity.rule((tenths(abs(cm)) for cm in quantity.cm), lines))


def signed(draft: Draft, name: str, piece: str, wanted: tuple[float, ...]) -> tuple[Terms, ...]:
    """A new number in every size that may be below nothing: it has the sign that is wanted of it."""
    return tuple((1 if w >= 0 else -1) * draft.variable(name, piece, i) for i, w in enumerate(wanted))
