"""Slopes with fewer rows than stitches, and wedges with fewer stitches than steps: told before anything is solved."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Design, EdgeRun, PerSize, Piece, Wedge
from walewright.record import replace
from walewright.report.model import EDGE_FIGURES, Change, Diagnostic, Span, diagnosed
from walewright.report.said import Amount, Fact, each_size, only, said, tenths
from walewright.solve.conflict.changed import place
from walewright.solve.edges.gaps import gap_runs
from walewright.solve.edges.gauge import fabric_below, highest, level_number, rows_to
from walewright.solve.edges.held import end_of
from walewright.trade.shaping import WEDGES, rows_inside
from walewright.trade.sides import SIDES, EdgeSide

"""Rows of each step of a wedge, by its kind; a step of an edge takes two, as one that is held in."""
A_STITCH = 1.0
"""More or less is the solver's to find."""
EXACT = 1e-6


def too_flat(design: Design) -> Iterator[Diagnostic]:
    """A message for each statement of a slope that moves by more stitches than its rows allow, with free numbers at their best."""
    for piece in design.pieces:
        if piece.mirror_of is not None:
            continue
        told: set[Span] = set()
        for side in SIDES:
            edges = [(piece.levels[0].name, piece.left if side == "left" else piece.right, -1)]
            edges += [(o.from_level, gap_runs(o, side), 1) for o in piece.openings if o.from_level is not None]
            for low, runs, inwards in edges:
                for run in runs:
                    found = _flat(design, piece, side, low, run, inwards) if run.origin.span not in told else None
                    if found is not None:
                        told.add(run.origin.span)
                        yield found
                    low = run.to_level


def _flat(design: Design, piece: Piece, side: EdgeSide, low: str, run: EdgeRun, inwards: int) -> Diagnostic | None:
    if run.path != "slope":
        return None
    fabric = fabric_below(design, piece, run.to_level)
    count = range(len(design.sizes))
    rows = tuple(rows_to(at, piece, run.to_level, True) - rows_to(at, piece, low, True) for at in design.each_size)
    wide: dict[int, float] = {}
    tall: dict[int, float] = {}
    for i in count:
        ends = [run.change[i], (run.most or run.change)[i]]
        nearest = 0.0 if min(ends) <= 0 <= max(ends) else min(ends, key=abs)
        stitches = max(abs(nearest) - run.cast_off[i], 0.0) * fabric.stitches_per_cm
        # Without a tool, a new needle is put to work at the carriage side only: every second row on each side.
        a_row = float(run.way.at_once) if nearest * inwards >= 0 else 1.0 if run.way.kind == "fashioned" else 0.5
        a_row = run.way.at_once / rows_inside(nearest * inwards >= 0) if run.way.inside else a_row
        if stitches - rows[i] * a_row > A_STITCH + EXACT:
            wide[i] = (stitches - rows[i] * a_row) / fabric.stitches_per_cm
            tall[i] = (stitches / a_row - rows[i]) / fabric.rows_per_cm
    if not wide:
        return None
    gap = inwards > 0
    held = not gap and max(run.change) < 0
    nearer = () if gap else (*_nearer(design, piece, side, run, wide), *_in_steps(design, piece, run, rows))
    higher = _higher(design, piece, run.to_level, tall)
    told = diagnosed(
        "slope-too-flat",
        (run.origin.span, "over"),
        notes=("too-much",),
        helps=(*_faster(run, rows, inwards, fabric.stitches_per_cm), *(("hold",) if held else ())),
        sizes=only(design.sizes, list(wide)),
        level=run.to_level,
        change=_each(design, run.change),
        rows=_each(design, rows, "rows"),
        wide=_some(design, wide),
        tall=_some(design, tall),
    )
    return replace(told, changes=(*nearer, higher[-1:], *((higher,) if len(higher) > 1 else ())), other_ways=True)


def _faster(run: EdgeRun, rows: PerSize, inwards: int, per_cm: float) -> tuple[str, ...]:
    """The way of shaping that would move the edge in its rows: a tool that gains a stitch in every row, or two lost at once."""
    if run.way.inside or run.most is not None or run.way.at_once > 1:
        return ()
    gained = max(run.change, key=abs) * inwards < 0
    if gained and run.way.kind == "fashioned":
        return ()
    a_row = 1 if gained else 2
    stitches = [max(abs(cm) - off, 0.0) * per_cm for cm, off in zip(run.change, run.cast_off, strict=True)]
    if any(count - way * a_row > A_STITCH + EXACT for count, way in zip(stitches, rows, strict=True)):
        return ()
    return ("fashioned",) if gained else ("two-at-once",)


def _nearer(design: Design, piece: Piece, side: EdgeSide, run: EdgeRun, by: dict[int, float]) -> tuple[tuple[Change, ...], ...]:
    """The edge, or the whole width where both edges are alike, not so far from where it comes from."""
    now = place(piece, side, run.to_level)
    if now is None:
        return ()
    new = {i: now[i] - (cm if run.change[i] > 0 else -cm) for i, cm in by.items()}
    if piece.symmetric:
        values = tuple((design.sizes[i], 2 * cm) for i, cm in new.items())
        return ((Change("width", piece.name, run.to_level, values),),)
    name = said("edge-at", piece=piece.name, level=run.to_level, side=side)
    return ((Change(EDGE_FIGURES[side], piece.name, run.to_level, tuple((design.sizes[i], cm) for i, cm in new.items()), name),),)


def _higher(design: Design, piece: Piece, level: str, by: dict[int, float]) -> tuple[Change, ...]:
    """A level so much higher, and with it all that is above it, so that the piece keeps its shape: from the top down, so that they
    rise at every moment."""
    return tuple(
        Change(
            "most" if above.most is not None else "height",
            piece.name,
            above.name,
            tuple((design.sizes[i], highest(above)[i] + cm) for i, cm in by.items()),
            said("height", level=above.name, piece=piece.name),
        )
        for above in reversed(piece.levels[level_number(piece, level) :])
    )


def _in_steps(design: Design, piece: Piece, run: EdgeRun, rows: PerSize) -> tuple[tuple[Change, ...], ...]:
    """Several stitches at a time, cast off or on where the carriage is, which comes back every second row."""
    times = int(min(rows) // WEDGES["in"].rows_a_step)
    if not times or run.most is not None or any(run.cast_off):
        return ()
    each = tuple(c / times for c in run.change)
    alike = max(each) - min(each) < EXACT
    cm: Fact = tenths(each[0]) if alike else f"{'-' if each[0] < 0 else ''}L"
    words = said("several-at-a-time", cm=cm, times=times, level=run.to_level)
    return ((Change("steps", piece.name, run.to_level, tuple((size, float(times)) for size in design.sizes), words, exact=True),),)


def too_steep(design: Design) -> Iterator[Diagnostic]:
    """A message for each wedge some of whose steps would have no stitch."""
    for piece in design.pieces:
        for wedge in piece.wedges if piece.mirror_of is None else ():
            found = _steep(design, piece, wedge)
            if found is not None:
                yield found


def _steep(design: Design, piece: Piece, wedge: Wedge) -> Diagnostic | None:
    if wedge.width is None:
        return None
    end, each = end_of(piece, wedge), WEDGES[wedge.kind].rows_a_step
    fabric = fabric_below(design, piece, end)
    count = range(len(design.sizes))
    rows = tuple(rows_to(at, piece, end) - rows_to(at, piece, wedge.from_level) for at in design.each_size)
    stitches = tuple(w * fabric.stitches_per_cm for w in wedge.width)
    lacking = {i: rows[i] / each - stitches[i] for i in count if rows[i] / each > stitches[i] + A_STITCH}
    if not lacking:
        return None
    wider = tuple((design.sizes[i], wedge.width[i] + n / fabric.stitches_per_cm) for i, n in lacking.items())
    wide = Change("wedge", piece.name, wedge.name, wider, said("width-of-the", part=wedge.called, piece=piece.name))
    told = diagnosed(
        "wedge-too-steep",
        (wedge.origin.span, "in"),
        helps=("wider-or-lower",),
        sizes=only(design.sizes, list(lacking)),
        wedge=wedge.called,
        rows_a_step=each,
        stitches=_each(design, stitches, "stitches"),
        rows=_each(design, rows, "rows"),
    )
    higher = _higher(design, piece, end, {i: -n * each / fabric.rows_per_cm for i, n in lacking.items()})
    return replace(told, changes=((wide,), higher[-1:]))


# ----------------------------------------------------------------- amounts of sizes


def _amount(value: float, unit: str) -> Amount:
    return tenths(abs(value)) if unit == "cm" else Amount(round(abs(value), 1), unit)


def _each(design: Design, amounts: PerSize, unit: str = "cm") -> Fact:
    return _some(design, dict(enumerate(amounts)), unit)


def _some(design: Design, amounts: dict[int, float], unit: str = "cm") -> Fact:
    """ "2 cm", or "2 cm (S), 3 cm (M, L)"."""
    return each_size("of-sizes", {design.sizes[i]: _amount(value, unit) for i, value in amounts.items()}, len(amounts))
