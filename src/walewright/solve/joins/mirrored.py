"""Edges that are mirror images: a band, or two bands of one edging, take the same number of stitches along both.

Each band by itself is shared out so that its own sum suits its rib. Of two neckbands that meet in the point of a V one may come out
two stitches longer than the other along the same edge. Where that is so, these bands are shared out anew, together.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Iterator, Mapping, Sequence
from math import ceil, floor

from walewright.record import record, replace
from walewright.solve.joins.shares import SUITS_RIB, BandPart, Shares, merged, suits

StretchAt = tuple[int, int]
"""The numbers of a band and of one of its stretches."""

Alike = tuple[StretchAt, ...]
"""Stretches that get the same number of stitches."""


def evened(bands: Sequence[Shares]) -> tuple[Shares, ...]:
    """The bands of one size, with as many stitches along each stretch as along its mirror image; those that have it so are left as
    they are."""
    made = list(bands)
    for together in _coupled(_classes(bands)):
        if any(len({made[band].counts[part] for band, part in alike}) > 1 for alike in together):
            for band, counts in _shared_anew(bands, together).items():
                made[band] = replace(made[band], counts=counts)
    return tuple(made)


def _classes(bands: Sequence[Shares]) -> list[Alike]:
    """Stretches along rows that are alike: copies and mirror images of one, and what of one piece is as long and has as many
    places, in all bands of one edging."""
    soft = {(b, p): part for b, band in enumerate(bands) for p, part in enumerate(band.parts) if not part.firm}
    keys: list[set[Hashable]] = [
        {(b, p), (bands[b].edging, part.image[0], part.size), (bands[b].edging, part.itself)} for (b, p), part in soft.items()
    ]
    return [tuple(spot for spot in soft if spot in own) for own in merged(keys)]


def _coupled(classes: Sequence[Alike]) -> Iterator[list[Alike]]:
    """The classes of bands that have to be shared out together."""
    for bands in merged({band for band, _ in alike} for alike in classes):
        yield [alike for alike in classes if alike[0][0] in bands]


# ----------------------------------------------------------------- together

_BandSums = tuple[int, ...]


@record
class _Choice:
    """Numbers of stitches for the first of the classes, and how far they are off what is wanted."""

    off: float = 0.0
    shares: tuple[int, ...] = ()


_MOST = 5_000
"""Sums that are followed up: those that are nearest to what is wanted."""


def _shared_anew(bands: Sequence[Shares], classes: Sequence[Alike]) -> dict[int, tuple[int, ...]]:
    """The stitches of these bands: as many whole ribs as can be, and then as near as can be to what each stretch asks for."""
    own = sorted({band for alike in classes for band, _ in alike})
    firm = tuple(sum(round(part.wanted) for part in bands[b].parts if part.firm) for b in own)
    known = {firm: _Choice()}
    for alike in classes:
        times = Counter(band for band, _ in alike)
        known = _followed(known, [bands[b].parts[p] for b, p in alike], [times[b] for b in own])
    best = min(known, key=lambda sums: (sum(_unsuited(bands[b], n) for b, n in zip(own, sums, strict=True)), known[sums].off, sums))
    share = {spot: count for alike, count in zip(classes, known[best].shares, strict=True) for spot in alike}
    return {b: tuple(share.get((b, p), round(part.wanted)) for p, part in enumerate(bands[b].parts)) for b in own}


def _followed(known: Mapping[_BandSums, _Choice], alike: Sequence[BandPart], times: Sequence[int]) -> dict[_BandSums, _Choice]:
    """The sums with each number that stretches may get that are alike, so many `times` in each band."""
    found: dict[_BandSums, _Choice] = {}
    wanted = sum(part.wanted for part in alike) / len(alike)
    most = min(*(part.points for part in alike), ceil(wanted * (1 + SUITS_RIB)) + 1)
    least = min(most, max(1, floor(wanted * (1 - SUITS_RIB)) - 1))
    for sums, choice in known.items():
        for share in range(least, most + 1):
            into = tuple(n + by * share for n, by in zip(sums, times, strict=True))
            off = round(choice.off + sum(times) * (share - wanted) ** 2 / max(wanted, 1.0), 9)
            if into not in found or off < found[into].off:
                found[into] = _Choice(off, (*choice.shares, share))
    return dict(sorted(found.items(), key=lambda item: (item[1].off, item[0]))[:_MOST])


def _unsuited(band: Shares, stitches: int) -> int:
    """0 for a sum that the rib or the edging asks for, and is near what is wanted; 1 for another even one, 2 for an odd one."""
    wanted = sum(round(part.wanted) if part.firm else part.wanted for part in band.parts)
    if suits(stitches, wanted, band.repeat, band.rest):
        return 0
    return 1 if stitches % 2 == 0 else 2
