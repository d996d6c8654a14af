"""How high a cap has to be, so that the edge round it is as long as the armholes that it is sewn to.

How long a curved edge is depends on the rows on which it is cast off, which are only known when they are scheduled. So the rows
up to the free levels are not part of the programme: they are searched for, each trial scheduled and measured as it would be
knitted, and the design is solved again with the levels where they were found.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.design.model import Design, DesignInSize, EdgeJoin, Level, Piece
from walewright.record import replace
from walewright.solve.algebra.programme import Programme
from walewright.solve.algebra.sums import Values
from walewright.solve.edges.gauge import level_number, rows_to, stages
from walewright.solve.edges.lengths import Garment
from walewright.solve.joins.free_levels import FreeChange, Places, Trial, model, offs, own_ways, possible, ranges, step_of, steps
from walewright.solve.joins.joining import with_free_levels
from walewright.solve.joins.seams import ROUNDING_CM, allowed_cm

_TRIES = 3
"""Rounds in which every size may still move by two rows: sizes share the form of their schedules, so one moves the other."""

_ASIDE = (-4, 4, -2, 2, -1, 1)
"""Pairs of rows by which a free level is moved by itself where the ways of all of them together do not come near enough."""


def movers(design: Design, join: EdgeJoin) -> tuple[str, ...]:
    """Pieces, never mirror images, whose free levels move for a join: those of its first side, else those of the other."""
    free = {design.piece(n).mirror_of or n for n in with_free_levels(design, join)}
    for side in (join.one, join.other):
        found = dict.fromkeys(model(design, e) for e in side if model(design, e) in free)
        if found:
            return tuple(found)
    return ()


def pinned(
    design: Design, programme: Programme, terms: Garment, values: Mapping[int, int], together: bool = True
) -> tuple[Design, tuple[tuple[Trial, tuple[Places, ...]], ...]]:
    """The design with every free level that a join decides where it has to be, and the trials of joins that do not meet so.

    Other free levels are left to the programme; where it put them is as good as anywhere."""
    unmet: list[tuple[Trial, tuple[Places, ...]]] = []
    now = dict(values)
    done: set[str] = set()
    for join in design.joins:
        moving = tuple(name for name in movers(design, join) if name not in done)
        if not moving:
            continue
        trial = Trial(design=design, programme=programme, terms=terms, base=now, join=join, movers=moving, together=together)
        found = _search(trial)
        for places in found:
            now = now | dict(places)
        if any(abs(off) > allowed_cm(at, join) + ROUNDING_CM for at, off in zip(design.each_size, offs(trial, found), strict=True)):
            unmet.append((trial, found))
        done |= set(moving)
    chosen = replace(design, pieces=tuple(_pinned_piece(design, p, terms, now, frozenset(done)) for p in design.pieces))
    return chosen, tuple(unmet)


def _pinned_piece(design: Design, piece: Piece, terms: Garment, values: Values, done: frozenset[str]) -> Piece:
    """Its free levels where the rows are. Pieces that share the numbers of a level with one that was moved move with it."""
    moved = {v for name in done for of in terms[name] for level in design.piece(name).levels for v, _ in of.rows[level.name]}
    levels: list[Level] = []
    for level in piece.levels:
        own = [of.rows[level.name] for of in terms[piece.name]]
        if level.most is None or not any(v in moved for rows in own for v, _ in rows):
            levels.append(level)
            continue
        so_far = replace(piece, levels=(*levels, *piece.levels[len(levels) :]))
        heights = tuple(height_cm(at, so_far, level.name, 2 * at.of(own).at(values)) for at in design.each_size)
        levels.append(replace(level, height=heights, most=None))
    return replace(piece, levels=tuple(levels))


def height_cm(at: DesignInSize, piece: Piece, level: str, rows: int) -> float:
    """Centimetres to a level that is `rows` rows up; the levels below it are where they are wanted."""
    number = level_number(piece, level)
    low, _, fabric = stages(at.design, piece)[number - 1]
    return at.of(low.height) + (rows - rows_to(at, piece, low.name)) / fabric.rows_per_cm


# ----------------------------------------------------------------- the search


def _search(trial: Trial) -> tuple[Places, ...]:
    """For each size the places of the free levels with which the join comes nearest."""
    count = len(trial.design.sizes)

    def ways(size: int, step: int) -> Places | None:
        places = own_ways(trial, size, step)
        if places is None and step == as_it_is[size][0]:
            return as_it_is[size][1]
        return places

    # Where the programme put them there is room, whatever else there is.
    as_it_is = [_as_it_is(trial, i) for i in range(count)]
    bounds = [(min(0, as_it_is[i][0]), max(steps(trial, i), as_it_is[i][0])) for i in range(count)]
    found = nearest(trial, ways, bounds, rising=True)
    return _aside(trial, found if found is not None else tuple(places for _, places in as_it_is))


def _as_it_is(trial: Trial, size: int) -> tuple[int, Places]:
    places = {v: trial.base[v] for v in ranges(trial, size)}
    return step_of(trial, size, places), places


def nearest(trial: Trial, change: FreeChange, bounds: Sequence[tuple[int, int]], rising: bool) -> tuple[Places, ...] | None:
    """For each size what differs at the number of steps within its bounds with which the moving side is least off; it gets longer
    with every step (`rising`). All sizes are halved at once, since a trial schedules them together. None where some size can take
    none."""
    sizes = range(len(bounds))
    able: list[list[Places]] = []
    for i, (low_step, high_step) in enumerate(bounds):
        ways = (change(i, s) for s in range(low_step, high_step + 1))
        able.append([places for places in ways if places is not None and possible(trial, i, places)])
    if not all(able):
        return None
    low, high = [0 for _ in sizes], [len(a) - 1 for a in able]

    def off(at: Sequence[int]) -> list[float]:
        return offs(trial, [able[i][k] for i, k in enumerate(at)])

    while any(low[i] < high[i] for i in sizes):
        middle = [(a + b) // 2 for a, b in zip(low, high, strict=True)]
        for i, apart in enumerate(off(middle)):
            if (apart < 0) == rising:
                low[i] = min(middle[i] + 1, high[i])
            else:
                high[i] = middle[i]
    best, known = list(low), off(low)
    for _ in range(_TRIES):
        moved = False
        for by in (-1, 1):
            beside = [min(max(k + by, 0), len(able[i]) - 1) for i, k in enumerate(best)]
            if beside == best:
                continue
            for i, apart in enumerate(off(beside)):
                if abs(apart) < abs(known[i]) - ROUNDING_CM:
                    best[i], known[i], moved = beside[i], apart, True
        if not moved:
            break
        known = off(best)
    return tuple(able[i][k] for i, k in enumerate(best))


def _aside(trial: Trial, found: tuple[Places, ...]) -> tuple[Places, ...]:
    """The places, in sizes where they do not come near enough with single levels moved by themselves as long as that helps."""
    sizes = range(len(found))
    allowed = [allowed_cm(at, trial.join) + ROUNDING_CM for at in trial.design.each_size]
    known = offs(trial, found)
    if all(abs(known[i]) <= allowed[i] for i in sizes):
        return found
    within = [ranges(trial, i) for i in sizes]
    levels = max(len(w) for w in within)
    best = [dict(places) for places in found]
    for _ in range(_TRIES):
        before = list(known)
        for number, by in ((number, by) for number in range(levels) for by in _ASIDE):
            moved = [_moved(trial, i, best[i], number, by, within[i]) if abs(known[i]) > allowed[i] else None for i in sizes]
            if all(m is None for m in moved):
                continue
            then = offs(trial, [m or best[i] for i, m in enumerate(moved)])
            for i, places in enumerate(moved):
                if places is not None and abs(then[i]) < abs(known[i]) - ROUNDING_CM:
                    best[i], known[i] = dict(places), then[i]
        known = offs(trial, best)
        if all(abs(known[i]) <= allowed[i] or abs(known[i]) >= abs(before[i]) - ROUNDING_CM for i in sizes):
            break
    return tuple(best)


def _moved(
    trial: Trial, size: int, places: dict[int, int], number: int, by: int, within: dict[int, tuple[int, int]]
) -> Places | None:
    """The places with the level of that number moved by so many pairs of rows, if it may and there is room."""
    variables = sorted(within)
    if number >= len(variables):
        return None
    variable = variables[number]
    low, high = within[variable]
    if not low <= places[variable] + by <= high:
        return None
    moved = {**places, variable: places[variable] + by}
    return moved if possible(trial, size, moved) else None
