"""Figures written otherwise: a design with a proposed change in it, as if its author had made it."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from itertools import pairwise
from typing import assert_never

from walewright.design.model import Design, EdgeJoin, EdgeRun, Level, PerSize, Piece, ShapingWay
from walewright.design.model.per_size import minus, plus
from walewright.record import replace
from walewright.report.model import Change, WrittenFigure
from walewright.solve.edges.gauge import highest, level_number
from walewright.trade.sides import OTHER_SIDE, SIDES, EdgeSide

_Edit = Callable[[Piece], Piece | None]

WIDEST_BED = 400
"""Needles of a bed at the most, as the facts of a machine have it: nobody is told to look for a wider one."""

FEWEST_TO_10_CM, MOST_TO_10_CM = 3.0, 100.0
"""Stitches of a swatch to 10 cm, as it may be written."""

ALIKE = 1e-9
"""Lengths that differ by less are the same figure."""


def changed(design: Design, changes: Sequence[Change]) -> Design | None:
    """The design with these figures; None where it would not be one any more, or where a figure cannot be written by itself."""
    for change in changes:
        made = _one(design, change)
        if made is None:
            return None
        design = made
    return design


def figures(design: Design, change: Change) -> dict[str, float] | None:
    """What is written today where the change has its values, by size; None where there is no such figure."""
    sizes = {size: design.sizes.index(size) for size, _ in change.values}
    own = _written(design, change)
    return None if own is None else {size: own[i] for size, i in sizes.items()}


def _written(design: Design, change: Change) -> PerSize | None:
    match change.figure:
        case "needles":
            return (float(design.machine.needles),) * len(design.sizes)
        case "stitches":
            return (design.fabric(change.owner).stitches_per_cm * 10,) * len(design.sizes)
        case "easing":
            return design.joins[int(change.owner)].easing
    piece = design.piece(change.owner)
    match change.figure:
        case "height" | "least":
            return piece.levels[level_number(piece, change.at)].height
        case "most":
            return highest(piece.levels[level_number(piece, change.at)])
        case "cast-off":
            return next(run.cast_off for run in piece.left if run.to_level == change.at)
        case "steps":
            return (0.0,) * len(design.sizes)
        case "wedge":
            return next((wedge.width for wedge in piece.wedges if wedge.name == change.at), None)
        case "width" | "widest":
            left, right = (place(piece, side, change.at) for side in SIDES)
            return None if left is None or right is None else plus(left, right)
    return place(piece, _side(change), change.at)


def _one(design: Design, change: Change) -> Design | None:
    values = dict(change.values)
    new = tuple(values.get(size) for size in design.sizes)
    if any(v is not None and v < 0 for v in new):
        return None
    match change.figure:
        case "needles":
            most = max(values.values())
            if most > WIDEST_BED:
                return None
            needles = max(design.machine.needles, 2 * -(-round(most) // 2))
            return replace(design, machine=replace(design.machine, needles=needles))
        case "stitches":
            few = min(values.values())
            if not FEWEST_TO_10_CM <= few <= MOST_TO_10_CM:
                return None
            fabrics = tuple(
                replace(
                    f,
                    swatch_stitches=min(few, f.stitches_per_cm * 10),
                    swatch_rows=f.rows_per_cm * 10,
                    swatch_width_cm=10.0,
                    swatch_height_cm=10.0,
                )
                if f.name == change.owner
                else f
                for f in design.fabrics
            )
            return replace(design, fabrics=fabrics)
        case "easing":
            joins = tuple(_eased(j, new) if j.origin == design.joins[int(change.owner)].origin else j for j in design.joins)
            return replace(design, joins=joins)
        case "height" | "least" | "most":
            return _levelled(design, change, new)
        case "cast-off":
            return _each_copy(design, change.owner, lambda piece: _cast_off(piece, change.at, new))
        case "steps":
            return _each_copy(design, change.owner, lambda piece: _stepped(piece, change.at, round(max(values.values()))))
        case "wedge":
            return _each_copy(design, change.owner, lambda piece: _wedged(piece, change, new))
        case "width" | "widest":
            return _each_copy(design, change.owner, lambda piece: _widened(piece, SIDES, change.at, new, 0.5))
        case "left edge" | "right edge":
            side = _side(change)
            return _each_copy(
                design,
                change.owner,
                lambda piece: _widened(piece, (side if piece.name == change.owner else OTHER_SIDE[side],), change.at, new, 1.0),
            )
        case _:
            assert_never(change.figure)


def _side(change: Change) -> EdgeSide:
    """The side of "left edge" and "right edge"."""
    return "left" if change.figure == "left edge" else "right"


def _set(old: PerSize, new: Sequence[float | None]) -> PerSize:
    return tuple(a if b is None else b for a, b in zip(old, new, strict=True))


def _eased(join: EdgeJoin, new: Sequence[float | None]) -> EdgeJoin:
    return replace(join, easing=_set(join.easing, new))


# ----------------------------------------------------------------- levels


def _levelled(design: Design, change: Change, new: Sequence[float | None]) -> Design | None:
    """Levels of one name and height share their rows, so all of them go."""
    of = design.piece(change.owner)
    model = of.levels[level_number(of, change.at)]
    pieces: list[Piece] = []
    for piece in design.pieces:
        levels = tuple(_moved(level, change.figure, new) if _same(level, model) else level for level in piece.levels)
        rising = all(a < b - ALIKE for low, high in pairwise(levels) for a, b in zip(low.height, high.height, strict=True))
        ends = all(a <= b + ALIKE for x in levels for a, b in zip(x.height, highest(x), strict=True))
        if levels != piece.levels and not (rising and ends):
            return None
        pieces.append(replace(piece, levels=levels))
    return replace(design, pieces=tuple(pieces))


def _same(one: Level, other: Level) -> bool:
    return (one.name, one.height, highest(one)) == (other.name, other.height, highest(other))


def _moved(level: Level, what: WrittenFigure, new: Sequence[float | None]) -> Level:
    if level.most is None:
        return replace(level, height=_set(level.height, new))
    if what == "height":
        # Of a free one the end of its range that is passed.
        low = tuple(a if v is None else min(a, v) for a, v in zip(level.height, new, strict=True))
        high = tuple(a if v is None else max(a, v) for a, v in zip(level.most, new, strict=True))
        return replace(level, height=low, most=high)
    return replace(level, height=_set(level.height, new)) if what == "least" else replace(level, most=_set(level.most, new))


# ----------------------------------------------------------------- widths


def _each_copy(design: Design, owner: str, edit: _Edit) -> Design | None:
    """The piece and its mirror images."""
    pieces: list[Piece] = []
    for piece in design.pieces:
        made: Piece | None = piece
        if owner in (piece.name, piece.mirror_of):
            made = edit(piece)
        if made is None:
            return None
        pieces.append(made)
    return replace(design, pieces=tuple(pieces))


def place(piece: Piece, side: EdgeSide, level: str) -> PerSize | None:
    """How far from the centre an edge is wanted at a level where one of its runs ends; None where none does."""
    at = tuple(w / 2 for w in piece.start_width)
    if level == piece.levels[0].name:
        return None if piece.start_most else at
    for run in piece.left if side == "left" else piece.right:
        if run.most is not None or run.rates:
            return None
        at = plus(at, run.change)
        if run.to_level == level:
            return at
    return None


def _widened(piece: Piece, sides: Sequence[EdgeSide], level: str, new: Sequence[float | None], share: float) -> Piece | None:
    """With its edges otherwise at a level. What is straight stays so; the next width that is come to stays where it is."""
    edges: Mapping[str, tuple[EdgeRun, ...]] = {"left": piece.left, "right": piece.right}
    made = dict(edges)
    for side in sides:
        now = place(piece, side, level)
        if now is None:
            return None
        by = tuple(0.0 if v is None else share * v - a for a, v in zip(now, new, strict=True))
        runs = list(edges[side])
        first = next((n + 1 for n, run in enumerate(runs) if run.to_level == level), 0)
        if first:
            # It is come to by the last run that moves.
            last = next((n for n in range(first - 1, -1, -1) if any(runs[n].change)), None)
            if last is None:
                return None
            runs[last] = replace(runs[last], change=plus(runs[last].change, by))
        following = next((n for n in range(first, len(runs)) if any(runs[n].change)), None)
        if following is not None:
            runs[following] = replace(runs[following], change=minus(runs[following].change, by))
        made[side] = tuple(runs)
    if not all(_can_be_written(run) for runs in made.values() for run in runs):
        return None
    start = piece.start_width
    if level == piece.levels[0].name:
        start = _set(start, new)
    return replace(piece, left=made["left"], right=made["right"], start_width=start)


def _stepped(piece: Piece, level: str, times: int) -> Piece:
    """Its slopes to a level in so many equal steps."""

    def edge(runs: tuple[EdgeRun, ...]) -> tuple[EdgeRun, ...]:
        plain = ShapingWay("simple")
        return tuple(
            replace(run, path="steps", steps=(times,) * len(run.change), way=plain)
            if (run.to_level, run.path) == (level, "slope")
            else run
            for run in runs
        )

    return replace(piece, left=edge(piece.left), right=edge(piece.right))


def _wedged(piece: Piece, change: Change, new: Sequence[float | None]) -> Piece:
    """A wedge as wide; in a mirror image it lies at the other edge."""
    other = {"left": "right", "right": "left"}
    words = change.at.split(" ")
    name = change.at if piece.name == change.owner else " ".join((other.get(words[0], words[0]), *words[1:]))
    return replace(
        piece,
        wedges=tuple(replace(w, width=_set(w.width, new)) if w.name == name and w.width is not None else w for w in piece.wedges),
    )


def _cast_off(piece: Piece, level: str, new: Sequence[float | None]) -> Piece | None:
    def edge(runs: tuple[EdgeRun, ...]) -> tuple[EdgeRun, ...]:
        return tuple(replace(run, cast_off=_set(run.cast_off, new)) if run.to_level == level else run for run in runs)

    made = replace(piece, left=edge(piece.left), right=edge(piece.right))
    return made if all(_can_be_written(run) for run in (*made.left, *made.right)) else None


def _can_be_written(run: EdgeRun) -> bool:
    """Whether what is cast off at once is part of what the edge moves inwards, and two stitches at once go inwards only."""
    for change, cast_off in zip(run.change, run.cast_off, strict=True):
        if (cast_off and cast_off > ALIKE - change) or (run.way.at_once > 1 and change > ALIKE):
            return False
    return True
