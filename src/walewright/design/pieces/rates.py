"""Rates: an edge that moves by so many stitches every so many rows, and how far that takes it."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil, floor

from walewright.design.findings import within
from walewright.design.model import MachineProfile, PerSize, Rate, ShapingWay
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.reading.numbered import numbered
from walewright.record import replace
from walewright.report.said import Said, said
from walewright.source import syntax

MOST_EVERY = 200
"""A stitch in more rows than that is no slope."""

PAIR = 2
"""Rows in which the carriage comes back to the side where it was."""


def rates_of(
    node: syntax.EdgeLine, way: ShapingWay, cloth: PieceCloth, machine: MachineProfile | None, gap: bool, at_start: bool
) -> tuple[Rate, ...] | None:
    """The rate of a statement in each size; None when told why it cannot be kept. `gap`: of the edge of a gap, which takes from the
    fabric where it moves outwards; `at_start`: no row is knitted below it."""
    findings, sizes, stitches = cloth.place.findings, cloth.place.scope.sizes, _stitches(node)
    rows = numbered(node.every or 0, cloth.place.scope, said("rows-of-rate", level=node.to_level), findings)
    if rows is None:
        return None
    wrong = tuple(s for s, n in zip(sizes, rows, strict=True) if not 1 <= n <= MOST_EVERY)
    if wrong:
        every = rows[sizes.index(wrong[0])]
        kind = "not-positive/every" if every < 1 else "absurd-count/every"
        only, helps = cloth.place.scope.only(wrong), within(every, 1, MOST_EVERY)
        findings.report(kind, (node.span, "every"), helps=helps, sizes=only, every=every, most=MOST_EVERY)
        return None
    if stitches == 0:
        findings.report("not-positive/rate", (node.span, "none"), helps=("a-stitch-or-straight",))
        return None
    inwards = isinstance(node.by, syntax.Negative) != gap
    # By more than two it is cast off, and `two at once` means nothing (`meanings`).
    if inwards and stitches < way.at_once:
        findings.report(
            "rate-not-kept/two-at-once",
            (node.span, "two"),
            helps=("write",),
            to_level=node.to_level,
            stitches=stitches,
            every=2 * rows[0],
        )
        return None
    single = (stitches == 1 and (inwards or way.kind == "fashioned")) or (inwards and stitches == way.at_once)
    odd = tuple(s for s, n in zip(sizes, rows, strict=True) if n % PAIR)
    if not single and odd:
        _tell_odd(node, stitches, rows[sizes.index(odd[0])], odd, cloth, machine)
        return None
    made = (_rate(stitches, n, not single, gap, node.cast_off is not None, at_start and not inwards) for n in rows)
    return tuple(replace(rate, pinned=node.begins_moving or node.ends_moving) for rate in made)


def _rate(stitches: int, every: int, at_carriage: bool, gap: bool, cast_off: bool, from_nothing: bool) -> Rate:
    """At the carriage's side two edges take two rows, so that each move has one before and one after it. What is cast off first
    takes two rows too, and a first increase needs a stitch below the last row's to be filled from."""
    if at_carriage:
        return Rate(stitches, every, 2 * PAIR if cast_off else PAIR, 0 if gap else PAIR, True)
    return Rate(stitches, every, PAIR if cast_off or from_nothing else 1, 1, False)


def _stitches(node: syntax.EdgeLine) -> int:
    number = node.by.value if isinstance(node.by, syntax.Negative) else node.by
    return round(number.value) if isinstance(number, syntax.Number) else 0


def _tell_odd(
    node: syntax.EdgeLine, stitches: int, every: int, odd: tuple[str, ...], cloth: PieceCloth, machine: MachineProfile | None
) -> None:
    helps: list[str | Said] = ["even"]
    tools = sorted(machine.prongs) if machine is not None else []
    if stitches == 1 and tools:
        helps.append(said("fashioned", prongs=tools[0]))
    cloth.place.findings.report(
        "rate-not-kept/increase-at-carriage" if stitches == 1 else "rate-not-kept/several-at-carriage",
        (node.span, "every"),
        helps=helps,
        sizes=cloth.place.scope.only(odd),
        to_level=node.to_level,
        rows=every,
        even=every + 1,
        stitches=stitches,
    )


def rows_enough(node: syntax.EdgeLine, rates: Sequence[Rate], come: int, to: int, cloth: PieceCloth) -> bool:
    """Whether the edge moves once at least in every size; told where it does not."""
    rows, sizes = cloth.rows(come, to, free=True), cloth.place.scope.sizes
    if rows is None:
        return False
    few = tuple(s for s, rate, r in zip(sizes, rates, rows, strict=True) if rate.moves(_up(r)) == 0)
    if few:
        low = cloth.levels[come].name
        cloth.place.findings.report(
            "rate-not-kept/too-few-rows",
            (node.span, "every"),
            notes=("there",),
            helps=("straight", "fewer"),
            sizes=cloth.place.scope.only(few),
            low=low,
            to_level=node.to_level,
            every=rates[sizes.index(few[0])].rows,
            rows=cloth.at(to).per_size(rows, "there"),
        )
    return not few


def _up(rows: float) -> int:
    """The even number of rows that may come of so many, at the most."""
    return 2 * ceil(rows / 2 - 1e-6)


def far(
    rates: Sequence[Rate], outwards: int, cast_off: PerSize, come: int, to: int, cloth: PieceCloth
) -> tuple[PerSize, PerSize] | None:
    """How far an edge moves at its rate, `outwards` 1 or -1, in cm: at the least and at the most, for a level may come out a row
    lower or higher than it is written, and a free one is anywhere. None when a fabric is not known."""
    fabric = cloth.below(to)
    lowest, highest = cloth.rows(come, to), cloth.rows(come, to, free=True)
    if fabric is None or lowest is None or highest is None:
        return None
    ends = [2 * floor(rows / 2 + 1e-6) for rows in lowest], [_up(rows) for rows in highest]
    least, most = (
        tuple(
            outwards * (rate.stitches * rate.moves(r) / fabric.stitches_per_cm + off)
            for rate, r, off in zip(rates, rows, cast_off, strict=True)
        )
        for rows in ends
    )
    return least, most
