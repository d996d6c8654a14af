"""Free levels: where those of a piece are at every step of the highest, and what a join comes to then.

All of them go the same share of their ways, for that is what a range of each means first. Where hands find no room so, each is put
where there is some, as near to its share as that allows.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import field
from math import ceil, floor

from walewright.counted import CountedPiece, counted_piece
from walewright.counted.in_size import InSize
from walewright.design.model import Design, EdgeJoin, EdgeName, Level
from walewright.record import record
from walewright.report.said import Said
from walewright.solve.algebra.highs import solve_programme
from walewright.solve.algebra.programme import Programme, Rule, RuleKind, Wish
from walewright.solve.algebra.quantities import EXACT
from walewright.solve.algebra.sums import Linear, Terms
from walewright.solve.edges.gauge import rows_to
from walewright.solve.edges.lengths import Garment
from walewright.solve.joins.seams import apart_cm
from walewright.solve.sized.garment import sized_pieces

Places = Mapping[int, int]
"""Variable of a free level to its rows, in pairs; with what else is different then."""

Numbers = tuple[tuple[int, int], ...]
"""Variables with their numbers, rising."""


@record
class Trial:
    """One join and the pieces whose free levels move for it. `base` are the numbers found for everything else; `together`: sizes
    are scheduled in one form."""

    design: Design
    programme: Programme
    terms: Garment
    base: Mapping[int, int]
    join: EdgeJoin
    movers: tuple[str, ...]
    together: bool = True
    known: dict[tuple[int, int], Places | None] = field(default_factory=dict)
    """What `own_ways` found, by size and step."""
    rooms: dict[int, _Room] = field(default_factory=dict)
    """What there is room for, by size."""
    sized: dict[tuple[str, Numbers], tuple[CountedPiece, ...]] = field(default_factory=dict)
    """The pieces of the join that have been scheduled, each with those of its numbers that were moved."""

    def off(self, of: InSize) -> float:
        """By how much the side that moves is longer than it should be, in cm."""
        apart = apart_cm(of, self.join)
        return apart if any(model(self.design, e) in self.movers for e in self.join.one) else -apart


def model(design: Design, edge: EdgeName) -> str:
    """The piece that an edge is of, or whose mirror image it is of; of the end of a band the band."""
    name = edge.piece
    while design.band(name) is None and (of := design.piece(name).mirror_of) is not None:
        name = of
    return name


def leading(trial: Trial, name: str, size: int) -> tuple[Level, float, float]:
    """The free level of a piece that has the farthest to go, and the rows it goes from and to."""
    free = [level for level in trial.design.piece(name).levels if level.most is not None]
    ends = {level.name: _ends(trial, name, level, size) for level in free}
    farthest = max(free, key=lambda level: ends[level.name][1] - ends[level.name][0])
    return (farthest, *ends[farthest.name])


def _ends(trial: Trial, name: str, level: Level, size: int) -> tuple[float, float]:
    piece = trial.design.piece(name)
    low, high = (rows_to(trial.design.at(size), piece, level.name, most) for most in (False, True))
    return low, high


def steps(trial: Trial, size: int) -> int:
    """How many steps of two rows the free levels can take in a size, the first one being 0."""
    _, low, high = leading(trial, trial.movers[0], size)
    return max(0, floor(high / 2 + EXACT) - ceil(low / 2 - EXACT))


def step_of(trial: Trial, size: int, places: Mapping[int, int]) -> int:
    """The step that the highest free level is at."""
    level, low, _ = leading(trial, trial.movers[0], size)
    ((variable, _),) = trial.terms[trial.movers[0]][size].rows[level.name]
    return places[variable] - ceil(low / 2 - EXACT)


def by_share(trial: Trial, size: int, step: int) -> Places:
    """The free levels after so many steps: all levels of a piece go the same share of their ways."""
    found: dict[int, int] = {}
    for name in trial.movers:
        top, low, high = leading(trial, name, size)
        pairs = ceil(low / 2 - EXACT) + step
        # Above the range, which is only looked at for what would do, the others have come to their ends; below it they make room.
        share = min((2 * pairs - low) / (high - low), 1.0) if high - low > EXACT else 0.0
        for level in trial.design.piece(name).levels:
            if level.most is None:
                continue
            least, most = _ends(trial, name, level, size)
            at = pairs if level is top else floor((least + share * (most - least)) / 2 + 0.5)
            found |= {v: at for v, _ in trial.terms[name][size].rows[level.name]}
    return found


# ----------------------------------------------------------------- room


@record
class _Room:
    """What hands and bed ask of one size: for each variable the lines that say something of it, and those that the numbers found
    so far do not keep."""

    of: Mapping[int, Sequence[Linear]]
    broken: Sequence[Linear]


def _room(trial: Trial, size: int) -> _Room:
    if size not in trial.rooms:
        lines = [
            line
            for rule in trial.programme.rules
            if rule.kind in (RuleKind.MACHINE, RuleKind.CONSTRUCTION)
            for i, line in rule.constraints
            if i == size
        ]
        of: dict[int, list[Linear]] = {}
        for line in lines:
            for v, _ in line.terms:
                of.setdefault(v, []).append(line)
        trial.rooms[size] = _Room(of, [line for line in lines if not _holds(line, trial.base)])
    return trial.rooms[size]


def _holds(line: Linear, values: Places) -> bool:
    return line.holds(values) if all(v in values for v, _ in line.terms) else True


def possible(trial: Trial, size: int, places: Places) -> bool:
    """Whether hands and bed can do it, with everything else as it is."""
    values = {**trial.base, **places}
    if any(number < 0 for number in values.values()):
        return False
    room = _room(trial, size)
    return all(_holds(line, values) for lines in (room.broken, *(room.of.get(v, ()) for v in places)) for line in lines)


def own_ways(trial: Trial, size: int, step: int) -> Places | None:
    """The free levels after so many steps: by share, or, where there is no room so, each by itself as near to that as there is.
    None: nowhere."""
    key = size, step
    if key not in trial.known:
        share = by_share(trial, size, step)
        trial.known[key] = share if possible(trial, size, share) else _each_by_itself(trial, size, share)
    return trial.known[key]


def _each_by_itself(trial: Trial, size: int, share: Places) -> Places | None:
    lines: list[tuple[int, Linear]] = []
    for name in trial.movers:
        top, _, _ = leading(trial, name, size)
        for level in trial.design.piece(name).levels:
            for v, _ in trial.terms[name][size].rows[level.name] if level.most is not None else ():
                least, most = _ends(trial, name, level, size)
                low, high = (share[v], share[v]) if level is top else (ceil(least / 2 - EXACT), floor(most / 2 + EXACT))
                lines.append((size, Terms(((v, 1),)).within(max(low, 1), max(high, low))))
    for line in dict.fromkeys(line for v in share for line in _room(trial, size).of.get(v, ())):
        if all(v in share or v in trial.base for v, _ in line.terms):
            moving = Terms(tuple((v, c) for v, c in line.terms if v in share))
            still = sum(c * trial.base[v] for v, c in line.terms if v not in share)
            lines.append((size, (moving + still).within(line.low, line.high)))
    rule = Rule(Said("free-ways"), RuleKind.CONSTRUCTION, (), (), tuple(lines))
    wishes = tuple(Wish(Terms(((v, 1),)), float(at), 1.0, 1.0) for v, at in share.items())
    answer = solve_programme(Programme(trial.programme.variables, (rule,), wishes))
    return None if answer.status != "optimal" or answer.values is None else {v: answer.values.get(v, at) for v, at in share.items()}


def ranges(trial: Trial, size: int) -> dict[int, tuple[int, int]]:
    """For each variable of a free level the pairs of rows that it may be at."""
    found: dict[int, tuple[int, int]] = {}
    for name in trial.movers:
        for level in trial.design.piece(name).levels:
            if level.most is not None:
                least, most = _ends(trial, name, level, size)
                found |= {
                    v: (ceil(least / 2 - EXACT), floor(most / 2 + EXACT)) for v, _ in trial.terms[name][size].rows[level.name]
                }
    return found


# ----------------------------------------------------------------- lengths

FreeChange = Callable[[int, int], Places | None]
"""(size, steps) to the variables that are different then; None where that cannot be."""


def measured(trial: Trial, choice: Sequence[Places]) -> tuple[InSize, ...]:
    """The pieces of the join in every size, scheduled as they would be knitted."""
    moved = {v: at for places in choice for v, at in places.items()}
    names = dict.fromkeys(e.piece for e in (*trial.join.one, *trial.join.other) if trial.design.band(e.piece) is None)
    made = {name: _sized(trial, name, moved) for name in names}
    return tuple(InSize(at, {name: at.of(of) for name, of in made.items()}) for at in trial.design.each_size)


def _sized(trial: Trial, name: str, moved: Places) -> tuple[CountedPiece, ...]:
    """One of them; with the same numbers as before it is not scheduled again."""
    own = frozenset(v for of_size in trial.terms[name] for terms in of_size.all() for v, _ in terms)
    key = name, tuple(sorted((v, at) for v, at in moved.items() if v in own))
    if key not in trial.sized:
        values = {**trial.base, **moved}
        made = sized_pieces(trial.design, trial.design.piece(name), trial.terms[name], values, trial.together)
        trial.sized[key] = tuple(counted_piece(trial.design, sized) for sized in made)
    return trial.sized[key]


def offs(trial: Trial, choice: Sequence[Places]) -> list[float]:
    """By how much the moving side is longer than it should be, in each size."""
    return [trial.off(of) for of in measured(trial, choice)]
