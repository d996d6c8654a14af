"""Free levels: how high a cap has to be, so that the edge round it is as long as the armholes that it is sewn to.

How long a curved edge is depends on the rows on which it is cast off, which are only known when they are scheduled. So the rows
up to the free levels are not part of the programme: they are searched for, each trial scheduled and measured as it would be
knitted, and the design is solved again with the levels where they were found.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from math import ceil, floor

from walewright.design.model import Design, EdgeName, Join, Level, Piece
from walewright.report.model import Diagnostic, Label
from walewright.solve.garment import sized_pieces
from walewright.solve.gauge import level_number, rows_to, stages
from walewright.solve.joining import rounded, spoken, with_free_levels
from walewright.solve.lengths import Garment
from walewright.solve.model import SizedPiece
from walewright.solve.programme import Kind, Programme, Values
from walewright.solve.quantities import EXACT, length
from walewright.solve.seams import ROUNDING_CM, allowed_cm, apart_cm, side_length

_TRIES = 3
"""Rounds in which every size may still move by two rows: sizes share the form of their schedules, so one moves the other."""

_BEYOND = 40
"""Steps of two rows by which the search goes on beyond the range, to say what would do."""

Rows = Mapping[str, int]
"""Level to rows."""


@dataclass(frozen=True, slots=True)
class Trial:
    """One join and the pieces whose free levels move for it. `base` are the numbers found for everything else."""

    design: Design
    programme: Programme
    terms: Garment
    base: Mapping[int, int]
    join: Join
    movers: tuple[str, ...]

    def off(self, size: int, garment: Sequence[SizedPiece]) -> float:
        """By how much the side that moves is longer than it should be, in cm."""
        apart = apart_cm(self.design, self.join, size, garment)
        return apart if any(_model(self.design, e).name in self.movers for e in self.join.one) else -apart


Choice = Sequence[int]
"""For each size a number of steps; what a step is, the search says."""


def movers(design: Design, join: Join) -> tuple[str, ...]:
    """Pieces, never mirror images, whose free levels move for a join: those of its first side, else those of the other."""
    free = {design.piece(n).mirror_of or n for n in with_free_levels(design, join)}
    for side in (join.one, join.other):
        found = dict.fromkeys(_model(design, e).name for e in side if _model(design, e).name in free)
        if found:
            return tuple(found)
    return ()


def pinned(design: Design, programme: Programme, terms: Garment, values: Values) -> tuple[Design, tuple[Diagnostic, ...]]:
    """The design with every free level that a join decides where it has to be, or what stands against that.

    Other free levels are left to the programme; where it put them is as good as anywhere."""
    told: list[Diagnostic] = []
    now = dict(values) if isinstance(values, Mapping) else dict(enumerate(values))
    done: set[str] = set()
    for join in design.joins:
        moving = tuple(name for name in movers(design, join) if name not in done)
        if not moving:
            continue
        trial = Trial(design, programme, terms, now, join, moving)
        found = _search(trial)
        fault = _no_room(trial) if found is None else _unmet(trial, found)
        if found is None or fault is not None:
            told += [fault] if fault is not None else []
            done |= set(moving)
            continue
        for size, steps in enumerate(found):
            now |= _numbers(trial, size, steps)
        done |= set(moving)
    chosen = replace(design, pieces=tuple(_pinned_piece(design, p, terms, now, frozenset(done)) for p in design.pieces))
    return chosen, tuple(told)


def _model(design: Design, edge: EdgeName) -> Piece:
    piece = design.piece(edge.piece)
    while piece.mirror_of is not None:
        piece = design.piece(piece.mirror_of)
    return piece


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
        heights = tuple(
            _height(design, so_far, level.name, i, sum(2 * c * values[v] for v, c in rows)) for i, rows in enumerate(own)
        )
        levels.append(replace(level, height=heights, most=None))
    return replace(piece, levels=tuple(levels))


def _height(design: Design, piece: Piece, level: str, size: int, rows: int) -> float:
    """Centimetres to a level that is `rows` rows up; the levels below it are where they are wanted."""
    number = level_number(piece, level)
    low, _, fabric = stages(design, piece)[number - 1]
    return low.height[size] + (rows - rows_to(design, piece, low.name, size)) / fabric.rows_per_cm


# ----------------------------------------------------------------- steps of the free levels


def _range(trial: Trial, name: str, size: int) -> tuple[Level, float, float]:
    """The free level of a piece that has the farthest to go, and the rows it goes from and to."""
    piece = trial.design.piece(name)
    free = [level for level in piece.levels if level.most is not None]
    ends = {level.name: tuple(rows_to(trial.design, piece, level.name, size, most) for most in (False, True)) for level in free}
    farthest = max(free, key=lambda level: ends[level.name][1] - ends[level.name][0])
    low, high = ends[farthest.name]
    return farthest, low, high


def _steps(trial: Trial, size: int) -> int:
    """How many steps of two rows the free levels can take in a size, the first one being 0."""
    _, low, high = _range(trial, trial.movers[0], size)
    return max(0, floor(high / 2 + EXACT) - ceil(low / 2 - EXACT))


def _numbers(trial: Trial, size: int, step: int) -> dict[int, int]:
    """The variables of the free levels after so many steps: all levels of a piece go the same share of their ways."""
    found: dict[int, int] = {}
    for name in trial.movers:
        piece = trial.design.piece(name)
        leading, low, high = _range(trial, name, size)
        pairs = ceil(low / 2 - EXACT) + step
        # Above the range, which is only looked at for what would do, the others have come to their ends; below it they make room.
        share = min((2 * pairs - low) / (high - low), 1.0) if high - low > EXACT else 0.0
        for level in piece.levels:
            if level.most is None:
                continue
            least, most = (rows_to(trial.design, piece, level.name, size, end) for end in (False, True))
            at = pairs if level is leading else floor((least + share * (most - least)) / 2 + 0.5)
            found |= {v: at for v, _ in trial.terms[name][size].rows[level.name]}
    return found


# ----------------------------------------------------------------- trials


Change = Callable[[int, int], Mapping[int, int]]
"""(size, steps) to the variables that are different then."""


def _measured(trial: Trial, change: Change, choice: Choice) -> tuple[tuple[SizedPiece, ...], ...]:
    """The pieces of the join in every size, scheduled as they would be knitted."""
    values = dict(trial.base)
    for size, step in enumerate(choice):
        values |= change(size, step)
    names = dict.fromkeys(e.piece for e in (*trial.join.one, *trial.join.other))
    made = [sized_pieces(trial.design, trial.design.piece(n), trial.terms[n], values) for n in names]
    return tuple(tuple(of[i] for of in made) for i in range(len(choice)))


def _possible(trial: Trial, change: Change, size: int, step: int) -> bool:
    """Whether hands and bed can do it, with everything else as it is."""
    values = dict(trial.base) | dict(change(size, step))
    if any(number < 0 for number in values.values()):
        return False
    for rule in trial.programme.rules:
        if rule.kind in (Kind.MACHINE, Kind.CONSTRUCTION):
            lines = (line for i, line in rule.constraints if i == size)
            if not all(line.holds(values) for line in lines if all(v in values for v, _ in line.terms)):
                return False
    return True


def _search(trial: Trial) -> tuple[int, ...] | None:
    """For each size the number of steps with which the join comes nearest; None where some size has room at none of them."""
    sizes = range(len(trial.design.sizes))

    def change(size: int, step: int) -> Mapping[int, int]:
        return _numbers(trial, size, step)

    return _nearest(trial, change, [(0, _steps(trial, i)) for i in sizes], rising=True)


def _nearest(trial: Trial, change: Change, bounds: Sequence[tuple[int, int]], rising: bool) -> tuple[int, ...] | None:
    """For each size the number of steps within its bounds with which the moving side is least off; it gets longer with every
    step (`rising`). All sizes are halved at once, since a trial schedules them together. None where some size can take none."""
    sizes = range(len(bounds))
    able = [[s for s in range(low, high + 1) if _possible(trial, change, i, s)] for i, (low, high) in enumerate(bounds)]
    if not all(able):
        return None
    low, high = [0 for _ in sizes], [len(a) - 1 for a in able]

    def off(at: Sequence[int]) -> list[float]:
        made = _measured(trial, change, [able[i][k] for i, k in enumerate(at)])
        return [trial.off(i, garment) for i, garment in enumerate(made)]

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


# ----------------------------------------------------------------- what cannot meet


def _no_room(trial: Trial) -> Diagnostic:
    """Told where the free levels find no place, in some size, at which everything can be shaped in the rows between them."""
    design, name = trial.design, trial.movers[0]
    over = [
        i
        for i in range(len(design.sizes))
        if not any(_possible(trial, lambda size, step: _numbers(trial, size, step), i, s) for s in range(_steps(trial, i) + 1))
    ]
    leading, low, high = _range(trial, name, over[0])
    return Diagnostic(
        "free-level-without-room",
        f"wherever the free levels of the {name} are, its edges have too few rows to be shaped in",
        (Label(leading.origin.span, f"`{leading.name}` is free"), Label(design.piece(name).origin.span, f"the {name}")),
        (f"`{leading.name}` is {floor(low)} to {ceil(high)} rows up in {design.sizes[over[0]]}",),
        (
            f"let `{leading.name}` and the free levels below it go higher",
            "or let the edges between them move in less: a wider top, or more cast off at once",
        ),
        sizes=tuple(design.sizes[i] for i in over) if len(over) < len(design.sizes) else (),
    )


def _unmet(trial: Trial, found: Choice) -> Diagnostic | None:
    """Told for all sizes in which the whole range of the free levels is not enough, with what would be."""
    design, join = trial.design, trial.join

    def levels(size: int, step: int) -> Mapping[int, int]:
        return _numbers(trial, size, step)

    made = _measured(trial, levels, found)
    over = [i for i, g in enumerate(made) if abs(trial.off(i, g)) > allowed_cm(design, join, i) + ROUNDING_CM]
    if not over:
        return None
    notes = []
    for i in over:
        one, other = (side_length(design, made[i], side) for side in (join.one, join.other))
        longer = join.longer[i] if join.longer else 0.0
        extra = f", and should be {length(longer)} longer" if longer else ""
        notes.append(f"{design.sizes[i]}: {spoken(join.one)} {one.cm:.1f} cm, {spoken(join.other)} {other.cm:.1f} cm{extra}")
    name = trial.movers[0]
    piece = design.piece(name)
    leading, _, _ = _range(trial, name, over[0])
    return Diagnostic(
        "cap-cannot-meet",
        f"however far up the free levels of the {name} are, {spoken(join.one)} cannot meet {spoken(join.other)}",
        (
            Label(join.origin.span, "joined here"),
            Label(leading.origin.span, f"`{leading.name}` is free"),
            Label(piece.origin.span, f"the {name}"),
        ),
        tuple(notes),
        (*_other_range(trial, found, over), *_other_width(trial, found, over))
        or ("change the widths that these edges come from, or allow more easing",),
        sizes=tuple(design.sizes[i] for i in over) if len(over) < len(design.sizes) else (),
    )


def _other_range(trial: Trial, found: Choice, over: Sequence[int]) -> tuple[str, ...]:
    """The end of the range that would do."""
    design = trial.design
    name = trial.movers[0]

    def higher(size: int, step: int) -> Mapping[int, int]:
        return _numbers(trial, size, step)

    bounds = [(s - _BEYOND, s + _BEYOND) if i in over else (s, s) for i, s in enumerate(found)]
    there = _nearest(trial, higher, bounds, rising=True)
    if there is None or not _meet(trial, higher, there, over):
        return ()
    leading, _, _ = _range(trial, name, over[0])
    piece = design.piece(name)
    ends: dict[str, dict[str, dict[str, str]]] = {}
    for i in over:
        at = _numbers(trial, i, there[i])
        end, whole = ("least", floor) if there[i] < found[i] else ("most", ceil)
        for level in (x for x in piece.levels if x.most is not None and (x is leading or end == "least")):
            rows = sum(2 * c * at[v] for v, c in trial.terms[name][i].rows[level.name])
            height = length(whole(10 * _height(design, piece, level.name, i, rows) + (EXACT if end == "least" else -EXACT)) / 10)
            ends.setdefault(end, {}).setdefault(level.name, {})[design.sizes[i]] = height
    return tuple(
        f"let {_and([f'`{level}` of the {name} be {_each(design, by_size)}' for level, by_size in levels.items()])} at the {end}"
        for end, levels in ends.items()
    )


def _other_width(trial: Trial, found: Choice, over: Sequence[int]) -> tuple[str, ...]:
    """The width where the joined edge begins that would do, the free levels being at the end of their range."""
    design, name = trial.design, trial.movers[0]
    piece = design.piece(name)
    edges = {e.edge for side in (trial.join.one, trial.join.other) for e in side if _model(design, e).name == name}
    first = next((i for i, run in enumerate(piece.left) if run.name in edges), None)
    if first is None or not piece.symmetric or not (rounded(trial.join.one) or rounded(trial.join.other)):
        return ()
    where = piece.left[first - 1].to_level if first else piece.levels[0].name
    widths = [of.left.before(first) for of in trial.terms[name]]
    if any(len(terms) != 1 for terms in widths):
        return ()

    def wider(size: int, step: int) -> Mapping[int, int]:
        variable = widths[size][0][0]
        return {**_numbers(trial, size, found[size]), variable: trial.base[variable] + step}

    reach = [max(2, trial.base[terms[0][0]] // 2) for terms in widths]
    bounds = [(-reach[i], reach[i]) if i in over else (0, 0) for i in range(len(found))]
    there = _nearest(trial, wider, bounds, rising=True)
    if there is None or not _meet(trial, wider, there, over):
        return ()
    per_cm = next(f for low, high, f in reversed(stages(design, piece)) if where in (low.name, high.name)).stitches_per_cm
    by_size = {design.sizes[i]: length(2 * (trial.base[widths[i][0][0]] + there[i]) / per_cm) for i in over}
    return (f"make the {name} {_each(design, by_size)} wide at `{where}`",)


def _meet(trial: Trial, change: Change, choice: Choice, over: Sequence[int]) -> bool:
    made = _measured(trial, change, choice)
    return all(abs(trial.off(i, made[i])) <= allowed_cm(trial.design, trial.join, i) + ROUNDING_CM for i in over)


def _each(design: Design, by_size: Mapping[str, str]) -> str:
    """ "38 cm", or "38 cm in M and 40 cm in L, XL"."""
    if len(by_size) == len(design.sizes) and len(set(by_size.values())) == 1:
        return next(iter(by_size.values()))
    grouped: dict[str, list[str]] = {}
    for size, text in by_size.items():
        grouped.setdefault(text, []).append(size)
    return _and([f"{text} in {', '.join(sizes)}" for text, sizes in grouped.items()])


def _and(parts: Sequence[str]) -> str:
    return ", ".join(parts[:-1]) + f" and {parts[-1]}" if len(parts) > 1 else parts[0]
