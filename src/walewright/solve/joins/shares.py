"""How the stitches of a band are shared out over the stretches of its line."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Iterator, Sequence
from math import ceil, floor

from walewright.design.model import EdgeName
from walewright.glue.model import EndAt
from walewright.record import record
from walewright.trade.fabrics import FabricSide
from walewright.trade.sides import EdgePart

SUITS_RIB = 0.03
"""Share by which a band's stitches may be changed so that its rib comes out whole."""


@record
class BandPart:
    """A stretch of the walk: `points` places to pick up at, `wanted` stitches; a `firm` number is not adjusted. The two halves
    of a neck are parts that are not firm; where they are each other's mirror image they get the same."""

    edge: EdgeName
    part: EdgePart
    points: int
    cm: float
    wanted: float
    firm: bool
    facing: FabricSide = "purl"
    left_end: EndAt = "left"
    copy: int = 0
    live: bool = False
    between: tuple[int, int] | None = None
    rows: int = 0
    place: int = 0
    """Its number in the line."""
    image: tuple[str, EdgePart] = ("", "whole")
    """The piece that it is of and the part there; of a mirror image those of its model."""

    @property
    def size(self) -> tuple[int, float, float]:
        """What two stretches have in common that are each other's mirror image within a piece."""
        return self.points, round(self.cm, 6), round(self.wanted, 6)

    @property
    def itself(self) -> Hashable:
        """What copies and mirror images of one stretch have in common."""
        return (*self.image, self.edge.edge, self.between)


@record
class Shares:
    """The stretches of a band's line with the stitches of each, and what their sum is to be: even, and `rest` more than a multiple
    of `repeat` (0: any) where that changes little."""

    edging: str
    parts: tuple[BandPart, ...]
    counts: tuple[int, ...]
    repeat: int
    rest: int = 0


def _groups(parts: Sequence[BandPart]) -> Iterator[tuple[int, ...]]:
    """Parts that are not firm; two halves of one edge that are each other's mirror image go together."""
    soft = [i for i, p in enumerate(parts) if not p.firm]
    taken: set[int] = set()
    for i in soft:
        if i in taken:
            continue
        one = parts[i]
        twin = next((k for k in soft if k > i and parts[k].part != one.part and _alike(parts[k], one)), None)
        group = (i,) if twin is None else (i, twin)
        taken |= set(group)
        yield group


def _alike(one: BandPart, other: BandPart) -> bool:
    return one.edge == other.edge and one.points == other.points and abs(one.wanted - other.wanted) < 1e-9


def shared_out(parts: Sequence[BandPart], repeat: int, rest: int = 0) -> tuple[int, ...]:
    """Stitches of each part: even in all where the loops allow it, `rest` more than a multiple of `repeat` (0: any) where that
    changes little. The two halves of a neck that are alike get the same."""
    firm = sum(round(p.wanted) for p in parts if p.firm)
    counts = [round(p.wanted) for p in parts]
    groups = list(_groups(parts))
    if not groups:
        return tuple(counts)
    soft = [i for group in groups for i in group]
    wanted = sum(parts[i].wanted for i in soft)
    least, most = firm + len(soft), firm + sum(parts[i].points for i in soft)
    if rest:
        # Of halves that get the same only every second sum can be had.
        parity = firm % 2 if all(len(group) == 2 for group in groups) else None
        goal = _suiting(firm + wanted, repeat, rest, least, most, parity) - firm
    else:
        goal = _total(firm + wanted, repeat, least, most) - firm
    _fill(parts, groups, counts, goal, {i: parts[i].wanted * goal / wanted for i in soft})
    return tuple(counts)


def _suiting(wanted: float, repeat: int, rest: int, least: int, most: int, parity: int | None) -> int:
    """The nearest sum that is `rest` more than a multiple of `repeat`, and even or odd as asked for; where the loops give none that
    is near enough, as for a plain edging."""
    near = _near(wanted, repeat)
    numbers = range(max(least, floor(wanted - near)), min(most, ceil(wanted + near)) + 1)
    suit = [n for n in numbers if parity in (None, n % 2) and suits(n, wanted, repeat, rest)]
    return min(suit, key=lambda n: (abs(n - wanted), n), default=_total(wanted, 0, least, most))


def _near(wanted: float, repeat: int) -> float:
    """How far off what is wanted a number may be that an edging asks for."""
    return max(SUITS_RIB * wanted, repeat / 2)


def suits(stitches: int, wanted: float, repeat: int, rest: int) -> bool:
    """Whether a sum is one that the rib or the edging asks for, and near enough to what is wanted."""
    if rest:
        return stitches % repeat == rest and abs(stitches - wanted) <= _near(wanted, repeat) + 1e-9
    return bool(repeat) and stitches % repeat == 0 and abs(stitches - wanted) <= SUITS_RIB * wanted


def _fill(
    parts: Sequence[BandPart], groups: Sequence[tuple[int, ...]], counts: list[int], goal: int, ideal: dict[int, float]
) -> None:
    """Sets the counts of the groups, one at least and no more than there are places, to come to `goal` as far as that goes."""
    shares = [min(max(1, floor(ideal[g[0]])), parts[g[0]].points) for g in groups]

    def missing() -> int:
        return goal - sum(len(g) * share for g, share in zip(groups, shares, strict=True))

    while (rest := missing()) != 0:
        step = 1 if rest > 0 else -1
        open_to = [k for k, g in enumerate(groups) if len(g) <= abs(rest) and 1 <= shares[k] + step <= parts[g[0]].points]
        if not open_to:
            break
        most_off = max(open_to, key=lambda k: (round(step * (ideal[groups[k][0]] - shares[k]), 9), -k))
        shares[most_off] += step
    for share, group in zip(shares, groups, strict=True):
        for i in group:
            counts[i] = share


def begun_on(parts: Sequence[BandPart], stitches: int) -> tuple[int, ...]:
    """The stitches of a piece begun along edges, shared out over them as long as they are; equally over those that are alike where
    the sum can be had so."""
    wanted = sum(p.wanted for p in parts)
    ideal = {i: p.wanted * stitches / wanted for i, p in enumerate(parts)}
    alike = merged({(p.size, p.image[0]), p.itself, i} for i, p in enumerate(parts))
    groups = [tuple(i for i in range(len(parts)) if i in own) for own in alike]
    each, pairs = [0] * len(parts), [0] * len(parts)
    _fill(parts, [(i,) for i in range(len(parts))], each, stitches, ideal)
    _fill(parts, groups, pairs, stitches, ideal)
    lopsided = any(len({each[i] for i in group}) > 1 for group in groups)
    return tuple(pairs if lopsided and sum(pairs) == sum(each) else each)


def merged(sets: Iterable[set[Hashable]]) -> list[set[Hashable]]:
    """Sets that have something in common put together."""
    made: list[set[Hashable]] = []
    for own in sets:
        meeting = [other for other in made if other & own]
        made = [other for other in made if not other & own]
        made.append(own.union(*meeting))
    return made


def _total(wanted: float, repeat: int, least: int, most: int) -> int:
    if repeat:
        whole = repeat * floor(wanted / repeat + 0.5)
        if least <= whole <= most and suits(whole, wanted, repeat, 0):
            return whole
    goal = 2 * floor(wanted / 2 + 0.5)
    return min(max(goal, least + least % 2), most - most % 2)
