"""Joins in the programme: how many rows and stitches each side has, and how long it is, as far as that is linear."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import floor, hypot

from walewright.design.model import Design, EdgeName, EdgeRun, Join, Piece
from walewright.solve.pieces import PieceTerms
from walewright.solve.programme import Draft, Kind, Linear, Rule, Terms, total
from walewright.solve.rules import below

FINE = 10_000
"""Lengths in a rule are whole ten-thousandths of a centimetre."""

_ROUNDING = 20
"""What a length may lose to that, over all its terms."""


@dataclass(frozen=True, slots=True)
class Measured:
    """A side of a join: rows, stitches, and its length in 1/FINE cm (`length` terms and `more_length`; None where it is no sum
    of counts)."""

    rows: Terms = ()
    stitches: Terms = ()
    length: Terms | None = ()
    more_length: int = 0

    def plus(self, other: Measured) -> Measured:
        """Both, one after the other."""
        known = None if self.length is None or other.length is None else total((self.length, 1), (other.length, 1))
        return Measured(
            total((self.rows, 1), (other.rows, 1)),
            total((self.stitches, 1), (other.stitches, 1)),
            known,
            self.more_length + other.more_length,
        )


Garment = Mapping[str, Sequence[PieceTerms]]
"""Piece name to its terms per size; a mirror image has its model's."""


def easing_mm(join: Join, size: int) -> int:
    """Easing as it is printed and checked: whole millimetres."""
    return round(join.easing[size] * 10)


def join_rules(draft: Draft, design: Design, garment: Garment) -> None:
    """Writes a rule for each join: equal rows and stitches, or lengths within the easing."""
    for join in design.joins:
        lines: list[tuple[int, Linear]] = []
        for size in range(len(design.sizes)):
            one, other = (side_terms(design, garment, side, size) for side in (join.one, join.other))
            if easing_mm(join, size) == 0:
                lines.append((size, Linear(total((one.rows, 1), (other.rows, -1)), 0, 0)))
                lines.append((size, Linear(total((one.stitches, 1), (other.stitches, -1)), 0, 0)))
            elif one.length is not None and other.length is not None:
                off = easing_mm(join, size) * FINE // 10 - _ROUNDING
                apart = other.more_length - one.more_length
                lines.append((size, Linear(total((one.length, 1), (other.length, -1)), apart - off, apart + off)))
        text = f"{spoken(join.one)} and {spoken(join.other)}"
        says = tuple(
            f"{text} are joined row for row"
            if not easing_mm(join, i)
            else f"{text} are joined with {easing_mm(join, i) / 10:g} cm eased in"
            for i in range(len(design.sizes))
        )
        fails = tuple(s.replace("are joined", "cannot be joined") for s in says)
        kept = tuple((i, line) for i, line in lines if line.terms)
        if kept:
            draft.rules.append(Rule(f"join of {text}", Kind.JOIN, (join.origin,), says, fails, kept))


def spoken(side: Sequence[EdgeName]) -> str:
    """ "back armhole + front armhole"."""
    return " + ".join(f"{e.piece} {e.edge}" for e in side)


def side_terms(design: Design, garment: Garment, side: Sequence[EdgeName], size: int) -> Measured:
    """One side of a join in one size."""
    found = Measured()
    for edge in side:
        found = found.plus(_edge(design, design.piece(edge.piece), garment[edge.piece][size], edge.edge, size))
    return found


def _edge(design: Design, piece: Piece, terms: PieceTerms, name: str, size: int) -> Measured:
    fabric = design.fabric(piece.fabric)
    if name in ("start", "end", "shoulder"):
        edges = (terms.left, terms.right)
        at = [e.start if name == "start" else e.after[-1] for e in edges]
        stitches = total((at[0], 1), (at[1], 1))
        if name == "shoulder":
            stitches = total((stitches, 1), *((o.half, -2) for o in terms.openings))
        return Measured(stitches=stitches, length=total((stitches, round(FINE / fabric.stitches_per_cm))))
    if name == "neck":
        rows = total(*((o.depth, 4) for o in terms.openings))
        stitches = total(*((o.flat, 2) for o in terms.openings))
        return Measured(rows, stitches, None)
    number = next(i for i, run in enumerate(piece.left) if run.name == name)
    return _run(piece, piece.left[number], number, terms, size, fabric.stitches_per_cm, fabric.rows_per_cm)


def _run(piece: Piece, run: EdgeRun, number: int, terms: PieceTerms, size: int, across: float, up: float) -> Measured:
    """A run of a row edge. Moves of one stitch lengthen it by the difference between a slanting and an upright row."""
    rows = total((terms.rows[run.to_level], 2), (terms.rows[below(piece, number, "left")], -2))
    row = FINE / up
    length, more_length = total((rows, round(row))), 0
    change = abs(run.change[size])
    if run.path == "slope" and not terms.left.cast_off[number]:
        moved = total((terms.left.after[number], 1), (terms.left.before(number), -1))
        slant = round(FINE * hypot(1 / across, 1 / up) - row)
        length = total((length, 1), (moved, slant if run.change[size] >= 0 else -slant))
    elif change:
        # Several stitches at a time: the length over the upright rows is taken as it is wanted.
        height = _height(piece, number, size)
        more_length += floor(FINE * (hypot(change, height) - height))
    return Measured(rows, (), length, more_length)


def _height(piece: Piece, number: int, size: int) -> float:
    at = {level.name: level.height[size] for level in piece.levels}
    return at[piece.left[number].to_level] - at[below(piece, number, "left")]
