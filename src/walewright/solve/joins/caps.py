"""Caps that cannot meet: what both sides come to, and the end of the range or the width that would do."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil, floor
from typing import Literal

from walewright.record import replace
from walewright.report.model import Change, Diagnostic, diagnosed
from walewright.report.said import only, said
from walewright.solve.algebra.quantities import EXACT
from walewright.solve.edges.gauge import stages
from walewright.solve.joins.free_levels import Places, Trial, by_share, leading, measured, model, step_of
from walewright.solve.joins.joining import spoken
from walewright.solve.joins.matching import height_cm, nearest
from walewright.solve.joins.seams import ROUNDING_CM, allowed_cm, easing_changes, sides_told

_BEYOND = 40
"""Steps of two rows by which the search goes on beyond the range, to say what would do."""


def unmet_cap(trial: Trial, found: Sequence[Places]) -> Diagnostic | None:
    """Told for all sizes in which the whole range of the free levels is not enough, with what may be."""
    design, join = trial.design, trial.join
    made = measured(trial, found)
    offs = [trial.off(of) for of in made]
    over = [i for i, off in enumerate(offs) if abs(off) > allowed_cm(design.at(i), join) + ROUNDING_CM]
    if not over:
        return None
    name = trial.movers[0]
    piece = design.piece(name)
    level, _, _ = leading(trial, name, over[0])
    told = diagnosed(
        "cap-cannot-meet",
        (join.origin.span, "joined-here"),
        (level.origin.span, "free"),
        (piece.origin.span, "piece"),
        notes=tuple(said("in-size", size=design.sizes[i], note=sides_told(made[i], join)) for i in over),
        helps=("change-widths",),
        sizes=only(design.sizes, over),
        piece=name,
        one=spoken(join.one),
        other=spoken(join.other),
        level=level.name,
    )
    easing = easing_changes(design, join, {i: abs(offs[i]) for i in over})
    return replace(told, changes=(*_other_range(trial, found, over), *_other_width(trial, found, over), *easing))


def _other_range(trial: Trial, found: Sequence[Places], over: Sequence[int]) -> tuple[tuple[Change, ...], ...]:
    """The end of the range that may do."""
    design = trial.design
    name = trial.movers[0]

    def higher(size: int, step: int) -> Places:
        return by_share(trial, size, step) if size in over else found[size]

    steps = [step_of(trial, i, places) for i, places in enumerate(found)]
    bounds = [(s - _BEYOND, s + _BEYOND) if i in over else (s, s) for i, s in enumerate(steps)]
    there = nearest(trial, higher, bounds, rising=True)
    if there is None or not _meet(trial, there, over):
        return ()
    top, _, _ = leading(trial, name, over[0])
    piece = design.piece(name)
    ends: dict[Literal["least", "most"], dict[str, list[tuple[str, float]]]] = {}
    for i in over:
        lower = step_of(trial, i, there[i]) < steps[i]
        end: Literal["least", "most"] = "least" if lower else "most"
        for level in (x for x in piece.levels if x.most is not None and (x is top or lower)):
            rows = 2 * trial.terms[name][i].rows[level.name].at(there[i])
            cm = height_cm(design.at(i), piece, level.name, rows)
            tenths = (floor(10 * cm + EXACT) if lower else ceil(10 * cm - EXACT)) / 10
            ends.setdefault(end, {}).setdefault(level.name, []).append((design.sizes[i], tenths))
    if len(ends) > 1:
        return ()
    return tuple(tuple(Change(end, name, level, tuple(values)) for level, values in levels.items()) for end, levels in ends.items())


def _other_width(trial: Trial, found: Sequence[Places], over: Sequence[int]) -> tuple[tuple[Change, ...], ...]:
    """The width where the joined edge begins that may do, the free levels being at the end of their range."""
    design, name = trial.design, trial.movers[0]
    piece = design.piece(name)
    edges = {e.edge for side in (trial.join.one, trial.join.other) for e in side if model(design, e) == name}
    first = next((i for i, run in enumerate(piece.left) if run.name in edges), None)
    if first is None or not piece.symmetric:
        return ()
    where = piece.left[first - 1].to_level if first else piece.levels[0].name
    widths = [of.left.before(first) for of in trial.terms[name]]
    if any(len(terms.of) != 1 for terms in widths):
        return ()

    def wider(size: int, step: int) -> Places:
        variable = widths[size].of[0][0]
        return {**found[size], variable: trial.base[variable] + step}

    reach = [max(2, trial.base[terms.of[0][0]] // 2) for terms in widths]
    bounds = [(-reach[i], reach[i]) if i in over else (0, 0) for i in range(len(found))]
    there = nearest(trial, wider, bounds, rising=True)
    if there is None or not _meet(trial, there, over):
        return ()
    per_cm = next(f for low, high, f in reversed(stages(design, piece)) if where in (low.name, high.name)).stitches_per_cm
    values = tuple((design.sizes[i], round(2 * there[i][widths[i].of[0][0]] / per_cm, 1)) for i in over)
    return ((Change("width", name, where, values),),)


def _meet(trial: Trial, choice: Sequence[Places], over: Sequence[int]) -> bool:
    made = measured(trial, choice)
    return all(abs(trial.off(made[i])) <= allowed_cm(trial.design.at(i), trial.join) + ROUNDING_CM for i in over)
