"""Pieces that form no body, laid out in a group to one scale: a hat, a sock, a shawl, a blanket."""

from __future__ import annotations

from dataclasses import dataclass

from walewright.counted.outline import Point
from walewright.design.model import Design
from walewright.figures.measures import MeasuredPiece, name_of
from walewright.figures.model import Drawing
from walewright.figures.pens import LETTER_MM, Paper
from walewright.figures.worked import mirrored
from walewright.figures.worn import BOX, EDGE, Placing, draw_piece

SHOWN = 4
"""Copies of a piece that are drawn; more would say no more."""

NAMED = 5.0
"""Room under a piece for its name, mm."""


@dataclass(frozen=True, slots=True)
class _GroupItem:
    """A piece to lay out, in cm: its extent, folded lengthwise where its own edges are joined (`squeeze` 1/2), turned
    round where its right side is the knit side (less than 0)."""

    piece: MeasuredPiece
    squeeze: float
    left: float
    width: float
    height: float
    foot: float


def group(design: Design, pieces: tuple[MeasuredPiece, ...], size: int, title: str) -> Drawing:
    """The pieces side by side in as many rows as make them largest."""
    items = [_item(design, p, size) for p in pieces for _ in range(min(p.piece.copies, SHOWN))]
    rows, scale = max((_fitted(items, count) for count in range(1, len(items) + 1)), key=lambda fit: fit[1])
    named = len(pieces) > 1
    paper = Paper()
    gap = _gap(items)
    y, widest = EDGE, 0.0
    for row in rows:
        x = EDGE + (BOX[0] - _width(row, gap) * scale) / 2
        deep = max(i.height for i in row) * scale
        for item in row:
            # Pieces of a row stand on one line.
            origin: Point = (x - item.left * scale, y + deep - item.foot * scale)
            draw_piece(paper, design, item.piece, size, _placing(origin, scale), item.squeeze)
            name = name_of(item.piece.piece.name)
            if named and len(name) * LETTER_MM < (item.width + gap) * scale:
                paper.letter(x + item.width * scale / 2, y + deep + 3.8, name, kind="word")
            x += (item.width + gap) * scale
        widest = max(widest, x)
        y += deep + (NAMED if named else 0.0) + gap * scale
    return paper.finished(title, BOX[0] + 2 * EDGE, y - gap * scale + EDGE)


def _placing(origin: Point, scale: float) -> Placing:
    return lambda p: (origin[0] + p[0] * scale, origin[1] - p[1] * scale)


def _item(design: Design, piece: MeasuredPiece, size: int) -> _GroupItem:
    shape = piece.outlines[size]
    squeeze = (0.5 if _tube(design, piece.piece.name) else 1.0) * (-1 if mirrored(design, piece) else 1)
    half = max(piece.counted[size].edging_width_cm, piece.counted[size].end_width_cm) / 2
    left, right = sorted((min(shape.polygon_left, -half) * squeeze, max(shape.polygon_right, half) * squeeze))
    foot = piece.edging_cm[size]
    return _GroupItem(piece, squeeze, left, max(right - left, 0.5), max(piece.full_height(size), 0.5), foot)


def _tube(design: Design, name: str) -> bool:
    """Whether a join puts two edges of the piece itself together."""
    return any({e.piece for e in (*j.one, *j.other)} == {name} for j in design.joins)


def _gap(items: list[_GroupItem]) -> float:
    return 0.12 * max(i.width for i in items)


def _width(row: list[_GroupItem], gap: float) -> float:
    return sum(i.width for i in row) + gap * (len(row) - 1)


def _fitted(items: list[_GroupItem], count: int) -> tuple[list[list[_GroupItem]], float]:
    """`items` in at most `count` rows of about the same number, and mm of paper a cm at which they fill the box."""
    long = -(-len(items) // count)
    rows = [items[i : i + long] for i in range(0, len(items), long)]
    gap = _gap(items)
    wide = max(_width(row, gap) for row in rows)
    high = sum(max(i.height for i in row) for row in rows) + gap * (len(rows) - 1)
    room = BOX[1] - NAMED * len(rows)
    return rows, min(BOX[0] / wide, room / high)
