"""Multiples: widths whose stitches are so many more than a multiple, because a stitch pattern goes over them in whole repeats or
a rib with needles out of work begins and ends alike.

Such a width can be off by half a repeat, so where it stands its rule lets it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import gcd, lcm

from walewright.design.model import Design, Fabric, Origin, Piece
from walewright.record import record
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Said, said
from walewright.solve.algebra.programme import Draft, Rule, RuleKind
from walewright.solve.algebra.sums import Linear
from walewright.solve.algebra.terms import PieceTerms
from walewright.solve.edges.edgings import needles_of
from walewright.solve.edges.gauge import level_number
from walewright.trade.sides import SIDES, EdgeSide


@record
class FabricStretch:
    """Rows in one fabric over the whole width, from a level to a level."""

    fabric: Fabric
    from_level: str
    to_level: str
    origin: Origin


def whole_width(design: Design, piece: Piece) -> tuple[FabricStretch, ...]:
    """The stretches of a piece from the start up: its zones over the whole width and what they leave of its own fabric."""
    zones = sorted((z for z in piece.zones if z.width is None), key=lambda z: level_number(piece, z.from_level))
    own, top = design.fabric(piece.fabric), piece.levels[-1].name
    found: list[FabricStretch] = []
    at = piece.levels[0].name
    for zone in zones:
        if level_number(piece, zone.from_level) > level_number(piece, at):
            found.append(FabricStretch(own, at, zone.from_level, piece.origin))
        found.append(FabricStretch(design.fabric(zone.fabric), zone.from_level, zone.to_level, zone.origin))
        at = zone.to_level
    if level_number(piece, at) < level_number(piece, top):
        found.append(FabricStretch(own, at, top, piece.origin))
    return tuple(found)


@record
class Multiple:
    """At a level the stitches are `rest` more than a multiple of `step`, `least` times it at the least. `clause` says so in a
    message."""

    level: str
    step: int
    rest: int
    least: int
    clause: Said
    origins: tuple[Origin, ...]
    otherwise: Said | None = None
    """What to write where nothing else would do."""


def multiples(design: Design, piece: Piece) -> tuple[Multiple, ...]:
    """What a piece's widths have to be multiples of, and where."""
    found = list(_whole_repeats(design, piece))
    edging = design.edging(piece.start_edging) if piece.start_edging else None
    if edging is not None and edging.when == "first":
        step, rest = needles_of(edging)
        first = piece.levels[0].name
        # What the piece itself cannot have is left to the hands: the last needle is kept in work.
        parity = Multiple(
            level=first,
            step=1 if piece.parity == "either" else 2,
            rest=int(piece.parity == "odd"),
            least=0,
            clause=said("odd-number", piece=piece.name),
            origins=(),
        )
        others = [parity, *(m for m in found if all(station(piece, side, m.level) == 0 for side in SIDES))]
        if step and all(_agree(step, rest, m) for m in others):
            alike = said("edging-alike", edging=edging.name, piece=piece.name, rest=rest, step=step)
            found.append(Multiple(level=first, step=step, rest=rest, least=0, clause=alike, origins=(piece.origin, edging.origin)))
    return tuple(found)


def _whole_repeats(design: Design, piece: Piece) -> Iterator[Multiple]:
    for stretch in whole_width(design, piece):
        fabric = stretch.fabric
        if fabric.stitch != "chart" or fabric.fit != "whole" or not design.chart(fabric.chart).repeat:
            continue
        chart = design.chart(fabric.chart)
        rest = 2 * fabric.edge + chart.before + chart.after
        level = stretch.from_level
        origins = tuple(dict.fromkeys((stretch.origin, fabric.origin)))
        clause = said("whole-repeats", piece=piece.name, rest=rest, repeat=chart.repeat, level=level, fabric=fabric.name)
        yield Multiple(
            level=level,
            step=chart.repeat,
            rest=rest,
            least=1,
            clause=clause,
            origins=origins,
            otherwise=said("be-centred", fabric=fabric.name),
        )


def _agree(step: int, rest: int, other: Multiple) -> bool:
    """Whether there is a number that suits both."""
    return (rest - other.rest) % gcd(step, other.step) == 0


# ----------------------------------------------------------------- where they stand


def station(piece: Piece, side: EdgeSide, level: str) -> int | None:
    """Where an edge has come to at a level, spread loops included: 0 at the start, n after its run number n (from 1); None where it
    is on its way from one place to another."""
    number, come, last = level_number(piece, level), 0, 0
    found = 0 if number == 0 else None
    for index, run in enumerate(piece.left if side == "left" else piece.right, 1):
        to = level_number(piece, run.to_level)
        moving = any(run.change) or any(run.most or ())
        last = index if moving else last
        if to == number or (come < number < to and not moving):
            found = last
        come = to
    return found


def slack(design: Design, piece: Piece, side: EdgeSide, at: int) -> float:
    """Stitches that a width may be off at a station because it has to be a multiple: half of the steps from one possible number to
    the next."""
    steps = [m.step for m in multiples(design, piece) if station(piece, side, m.level) == at]
    if not steps:
        return 0.0
    # Of a piece with the centre mark in its middle every second number is possible.
    return lcm(*steps, 2 if piece.parity != "either" and (piece.symmetric or at == 0) else 1) / 2


def leeway(design: Design, piece: Piece, side: EdgeSide, number: int) -> float:
    """Stitches by which a plain slope, run `number` of an edge, may come to move otherwise than is written, because where it begins
    or ends is a multiple; 0 of any other run."""
    runs = piece.left if side == "left" else piece.right
    if runs[number].path != "slope" or any(runs[number].cast_off):
        return 0.0
    before = (n for n, run in enumerate(runs[:number], 1) if any(run.change) or any(run.most or ()))
    return max(slack(design, piece, side, at) for at in (max(before, default=0), number + 1))


def multiple_rules(draft: Draft, design: Design, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    """Writes into the draft that the widths are such multiples, of how many repeats is the programme's to find."""
    for multiple in multiples(design, piece):
        at = {side: station(piece, side, multiple.level) for side in SIDES}
        lines: list[tuple[int, Linear]] = []
        for size, own in enumerate(terms):
            places = [own.edge(side).before(n) for side, n in at.items() if n is not None]
            if len(places) < len(SIDES):
                continue
            times = draft.variable(f"{piece.name}: repeats at {multiple.level}", piece.name, size)
            width = places[0] + places[1] - multiple.step * times
            lines.append((size, width.equals(multiple.rest)))
            lines.append((size, times >= multiple.least))
        if lines:
            clause = multiple.clause
            says = (clause,) * len(terms)
            draft.rules.append(
                Rule(clause, RuleKind.CONSTRUCTION, multiple.origins, says, tuple(lines), otherwise=multiple.otherwise)
            )


def repeats_on_a_slope(design: Design) -> Iterator[Diagnostic]:
    """A message for each fabric in whole repeats that begins where an edge is on its way: no width stands there to be chosen."""
    for piece in design.pieces:
        for stretch in whole_width(design, piece):
            fabric = stretch.fabric
            if fabric.stitch != "chart" or fabric.fit != "whole":
                continue
            over = [side for side in SIDES if station(piece, side, stretch.from_level) is None]
            if not over:
                continue
            level = piece.level(stretch.from_level)
            yield diagnosed(
                "repeats-on-a-slope/edge-on-its-way",
                (stretch.origin.span, "begins-here"),
                (level.origin.span, "level"),
                notes=("width-follows",),
                helps=("two-steps", "or-centred"),
                fabric=fabric.name,
                level=level.name,
                piece=piece.name,
            )
