"""What forms no body, laid out in a group to one scale: what is joined to a tube as it looks when made up, as a hat, a sock or a
skirt; anything else as its pieces lie, as a shawl or a blanket."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from walewright.counted.edges import edge_length
from walewright.counted.outline import Point
from walewright.design.model import Design
from walewright.figures.banded import draw_rims, rims
from walewright.figures.bent import Bend, bend, draw_bent, outline_of
from walewright.figures.drawn import DrawnGarment
from walewright.figures.measures import LaidPiece, name_of
from walewright.figures.model import Drawing
from walewright.figures.opened import Disc, extent, opened
from walewright.figures.pens import LETTER_MM, Paper
from walewright.figures.rims import Placing
from walewright.figures.tube_drawing import box, draw_tube
from walewright.figures.tubes import JoinedPart, MadeTube, tube
from walewright.figures.worked import mirrored
from walewright.figures.worn import BOX, EDGE, draw_piece
from walewright.record import record, replace
from walewright.trade.sides import SIDES

SHOWN = 4
"""Copies of a piece that are drawn; more would say no more."""

PAIR = 2
"""Copies of something made up that are drawn: a pair."""

LONG = 1.3
"""How many times as long as it is wide a piece is at least that is worn across."""

SEAM = 0.4
"""Between copies that are joined, cm."""

NAMED = 5.0
"""Room under a piece for its name, mm."""


@record
class _GroupItem:
    """Something to lay out, in cm: its extent, the name beneath it (or ""), and how it is drawn at so many mm a cm."""

    left: float
    low: float
    width: float
    height: float
    name: str
    draw: Callable[[Paper, Placing, float], None]


def group(garment: DrawnGarment, title: str) -> Drawing:
    """The items side by side in as many rows as make them largest."""
    items = list(_items(garment))
    rows, scale = max((_fitted(items, count) for count in range(1, len(items) + 1)), key=lambda fit: fit[1])
    named = any(item.name for item in items)
    paper = Paper()
    gap = _gap(items)
    y = EDGE
    for row in rows:
        x = EDGE + (BOX[0] - _width(row, gap) * scale) / 2
        deep = max(i.height for i in row) * scale
        for item in row:
            # What is in a row stands on one line.
            item.draw(paper, _placing((x - item.left * scale, y + deep + item.low * scale), scale), scale)
            if item.name and len(item.name) * LETTER_MM < (item.width + gap) * scale:
                paper.letter(x + item.width * scale / 2, y + deep + 3.8, item.name, kind="word")
            x += (item.width + gap) * scale
        y += deep + (NAMED if named else 0.0) + gap * scale
    return paper.finished(title, BOX[0] + 2 * EDGE, y - gap * scale + EDGE)


def _placing(origin: Point, scale: float) -> Placing:
    return lambda p: (origin[0] + p[0] * scale, origin[1] - p[1] * scale)


# ----------------------------------------------------------------- items


def _items(garment: DrawnGarment) -> Iterator[_GroupItem]:
    design, pieces = garment.design, garment.pieces
    named = len(pieces) > 1
    if not named and not design.joins and pieces[0].sized.copies == 1 and _long(pieces[0]):
        yield _across(garment, pieces[0])
        return
    for part in _parts(garment):
        made = tube(garment, frozenset(part))
        if made is not None:
            for _ in range(min(made.piece.sized.copies // made.copies, PAIR)):
                yield _made_up(design, made)
            continue
        side_by_side = _joined_copies(garment, part)
        if side_by_side is not None:
            yield side_by_side
            continue
        for piece in pieces:
            if piece.name in part:
                for _ in range(min(piece.sized.copies, SHOWN)):
                    yield _flat(garment, piece, named)


def _long(piece: LaidPiece) -> bool:
    return piece.full_height > LONG * piece.shape.width


def _parts(garment: DrawnGarment) -> list[JoinedPart]:
    """The pieces that hang together, by their names."""
    names = [p.name for p in garment.pieces]
    group: dict[str, set[str]] = {name: {name} for name in names}
    met = [{e.piece for e in (*join.one, *join.other)} for join in garment.design.joins]
    lines = {line.owner: {p.owner for p in line.along} for line in garment.glued.lines if line.owner in group}
    for together in (*met, *({owner, *others} for owner, others in lines.items())):
        whole = set().union(*(group[name] for name in together if name in group))
        group |= dict.fromkeys(whole, whole)
    return list(dict.fromkeys(frozenset(group[name]) for name in names))


def _made_up(design: Design, made: MadeTube) -> _GroupItem:
    left, low, right, high = box(made)

    def draw(paper: Paper, place: Placing, scale: float) -> None:
        draw_tube(paper, design, made, place, scale)

    return _GroupItem(left, low, max(right - left, 0.5), max(high - low, 0.5), "", draw)


def _joined_copies(garment: DrawnGarment, part: JoinedPart) -> _GroupItem | None:
    """Copies of one piece that are joined to each other lie as they are joined, seen from their right side."""
    piece = next(p for p in garment.pieces if p.name in part)
    if len(part) > 1 or piece.sized.copies == 1:
        return None
    laid = {key: disc for key, disc in opened(replace(garment, pieces=(piece,)), SEAM).items() if disc.piece is not None}
    if len(laid) < piece.sized.copies:
        return None
    edged = rims(garment, piece)
    boxes = [extent(laid.values()), *(_box(disc.at([*rim.line, *rim.outer])) for disc in laid.values() for rim in edged)]
    left, low, right, high = *(min(b[n] for b in boxes) for n in (0, 1)), *(max(b[n] for b in boxes) for n in (2, 3))
    across = 1 if mirrored(garment.design, piece) else -1

    def draw(paper: Paper, place: Placing, scale: float) -> None:
        for disc in laid.values():
            # Opened out they lie wrong side up: turned over, left and right are exchanged.
            def turned_over(p: Point, on: Disc = disc) -> Point:
                ((x, y),) = on.at([p])
                return place((-x, y))

            draw_rims(paper, edged, lambda p, put=turned_over: put((-across * p[0], p[1])))  # type: ignore[misc]
            draw_piece(paper, garment.design, piece, turned_over, -across)

    return _GroupItem(-right, low, right - left, high - low, "", draw)


def _box(points: Sequence[Point]) -> tuple[float, float, float, float]:
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs), min(ys), max(xs), max(ys)


def _across(garment: DrawnGarment, piece: LaidPiece) -> _GroupItem:
    """A long piece that is all there is, laid across as it is worn: the shorter of its long edges up."""
    design, of, shape = garment.design, piece.of, piece.shape
    found = bend(piece)
    if found is not None:
        return _crescent(piece, found)
    along = {side: sum(edge_length(of, name).cm for name in _names(piece, side)) for side in SIDES}
    # Without names no edge has a length: then they are alike.
    up = 1 if along["right"] <= along["left"] else -1
    turn = up * (-1 if mirrored(design, piece) else 1)
    half = max(of.edging_width_cm, of.end_width_cm) / 2
    edged = rims(garment, piece)
    banded = [p for rim in edged for p in rim.outer]
    xs = [up * x for x in (min(shape.polygon_left, -half), max(shape.polygon_right, half), *(x for x, _ in banded))]
    ys = [-turn * y for y in (-of.edging_cm, shape.height + of.end_cm, *(y for _, y in banded))]

    def draw(paper: Paper, place: Placing, scale: float) -> None:
        put: Placing = lambda p: place((-turn * p[1], up * p[0]))  # noqa: E731
        draw_rims(paper, edged, put)
        draw_piece(paper, design, piece, put)

    return _GroupItem(min(ys), min(xs), max(ys) - min(ys), max(xs) - min(xs), "", draw)


def _crescent(piece: LaidPiece, found: Bend) -> _GroupItem:
    """A piece that its short rows bend, its inner edge up."""
    left, low, right, high = _box(outline_of(piece, found))

    def draw(paper: Paper, place: Placing, scale: float) -> None:
        draw_bent(paper, piece, found, place)

    return _GroupItem(left, low, right - left, high - low, "", draw)


def _names(piece: LaidPiece, side: str) -> Iterator[str]:
    sized = piece.sized
    yield from dict.fromkeys(run.name for run in (sized.left if side == "left" else sized.right) if run.name)


def _flat(garment: DrawnGarment, piece: LaidPiece, named: bool) -> _GroupItem:
    """A piece as it lies, turned round where its right side is the knit side."""
    shape = piece.shape
    across = -1 if mirrored(garment.design, piece) else 1
    half = max(piece.of.edging_width_cm, piece.of.end_width_cm) / 2
    edged = rims(garment, piece)
    banded = [(x * across, y) for rim in edged for x, y in rim.outer]
    xs = [min(shape.polygon_left, -half) * across, max(shape.polygon_right, half) * across, *(x for x, _ in banded)]
    ys = [-piece.of.edging_cm, shape.height + piece.of.end_cm, *(y for _, y in banded)]

    def draw(paper: Paper, place: Placing, scale: float) -> None:
        draw_rims(paper, edged, lambda p: place((p[0] * across, p[1])))
        draw_piece(paper, garment.design, piece, place, across)

    name = name_of(piece.name) if named else ""
    return _GroupItem(min(xs), min(ys), max(max(xs) - min(xs), 0.5), max(max(ys) - min(ys), 0.5), name, draw)


# ----------------------------------------------------------------- rows


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
