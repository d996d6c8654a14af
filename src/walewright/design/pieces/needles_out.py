"""Needles that take no part over a stretch of rows: ladders, and the lines along which pleats fold.

A needle's stitch goes to its neighbour where it is taken out, and it comes back to work empty. Nothing else goes on in those rows,
for no stitch can be moved onto such a needle, and no column be counted over it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise

from walewright.design.model import Fabric, NeedlesOut, Origin, PerSize, Piece
from walewright.design.model.per_size import plus
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.moves import position
from walewright.design.pieces.outline import NOTHING, PieceOutline, stretch
from walewright.design.pieces.rows_shared import RowsTaken
from walewright.design.reading.places import NOT_NEGATIVE, POSITIVE, AmountPlace
from walewright.report.said import said
from walewright.source import syntax
from walewright.trade.sides import SIDES

FEWEST_BETWEEN = 3
"""Every third needle: two needles out side by side would let the yarn hang."""
BESIDE = 3.0
"""Stitches in the design that a needle out lies from the edge and from the next, so that rounding leaves two."""


def needles_out(node: syntax.NeedlesLine, outline: PieceOutline, cloth: PieceCloth) -> NeedlesOut | None:
    """Which needles, and over which rows; told where that cannot be."""
    findings = cloth.place.findings
    what = said("needles-out-of", piece=outline.piece)
    between = stretch(node, what, outline, findings)
    if between is None:
        return None
    low, high = between
    place = cloth.at(high)
    places = _places(node, outline, low, place)
    if places is None or not _room(node, places, outline, low, place):
        return None
    worn = None
    if node.worn is not None:
        worn = _worn(node.worn, outline, low, place)
        if worn is None:
            return None
    origin = Origin(f"piece {outline.piece} / needles out from {node.from_level}", node.span)
    return NeedlesOut(node.from_level, node.to_level, node.every or 0, places, origin, worn=worn)


def _worn(width: syntax.Expr, outline: PieceOutline, low: int, place: AmountPlace) -> PerSize | None:
    """How wide the piece is where it is folded: folds make it narrower."""
    worn = place.across(width, said("worn-width-of", piece=outline.piece), POSITIVE)
    if worn is None:
        return None
    left, right = (outline.position(side, outline.levels[low].height, above=True) for side in SIDES)
    flat = plus(left, right)
    wider = tuple(s for s, w, f in zip(place.scope.sizes, worn, flat, strict=True) if w > f - NOTHING)
    if wider:
        place.findings.report(
            "needles-out/worn",
            (width.span, "worn"),
            helps=("worn",),
            sizes=place.scope.only(wider),
            piece=outline.piece,
            width=place.per_size(flat),
            worn=place.per_size(worn),
        )
        return None
    return worn


def _places(node: syntax.NeedlesLine, outline: PieceOutline, low: int, place: AmountPlace) -> tuple[PerSize, ...] | None:
    """Right of the middle of the start, on both sides where no side is said."""
    made: list[PerSize] = []
    for one in node.places:
        distance = place.across(one.distance, said("place-of-needle", piece=outline.piece), NOT_NEGATIVE)
        if distance is None:
            return None
        for side in SIDES:
            outwards = 1 if side == "right" else -1
            if one.of == "edge":
                edge = outline.position(side, outline.levels[low].height, above=True)
                made.append(tuple(outwards * (e - d) for e, d in zip(edge, distance, strict=True)))
            elif one.of in ("own", side):
                made.append(tuple(outwards * at for at in position(side, one.of, distance, outline.centre)))
    return tuple(dict.fromkeys(made))


def _room(node: syntax.NeedlesLine, places: tuple[PerSize, ...], outline: PieceOutline, low: int, place: AmountPlace) -> bool:
    sizes = place.scope.sizes
    stitch = 1 / place.fabric.stitches_per_cm if place.fabric is not None else 0.0
    left, right = (outline.position(side, outline.levels[low].height, above=True) for side in SIDES)
    if node.every is not None:
        narrow = tuple(s for s, a, b in zip(sizes, left, right, strict=True) if min(a, b) < (node.every / 2 + BESIDE) * stitch)
        if node.every >= FEWEST_BETWEEN and not narrow:
            return True
        place.findings.report(
            "needles-out/every",
            (node.span, "which"),
            helps=("every",),
            sizes=place.scope.only(narrow if node.every >= FEWEST_BETWEEN else ()),
            fewest=FEWEST_BETWEEN,
            piece=outline.piece,
        )
        return False
    near = []
    for i, size in enumerate(sizes):
        at = sorted(p[i] for p in places)
        gaps = [at[0] + left[i], right[i] - at[-1], *(b - a for a, b in pairwise(at))]
        if min(gaps) < BESIDE * stitch - NOTHING:
            near.append(size)
    if near:
        only = place.scope.only(tuple(near))
        place.findings.report("needles-out/near", (node.span, "which"), helps=("apart",), sizes=only, piece=outline.piece)
    return not near


def needles_alone(
    piece: Piece, start: syntax.Start, outline: PieceOutline, fabrics: Mapping[str, Fabric | None], place: AmountPlace
) -> bool:
    """Whether nothing else goes on where needles are out of work; told where something does."""
    numbers = {level.name: number for number, level in enumerate(piece.levels)}
    own = fabrics.get(piece.fabric)
    if piece.needles_out and own is not None and (own.rib_every or own.chart):
        spans = (piece.needles_out[0].origin.span, "rows")
        place.findings.report("needles-out/fabric", spans, helps=("fabric",), fabric=piece.fabric, piece=piece.name)
        return False
    from_start = next((out for out in piece.needles_out if numbers[out.from_level] == 0), None)
    if from_start is not None and (piece.start_edging or piece.start_way == "along"):
        where = (from_start.origin.span, "rows"), (start.span, "start")
        place.findings.report("needles-out/start", *where, helps=("start",), along=not piece.start_edging, piece=piece.name)
        return False
    to_end = next((out for out in piece.needles_out if out.to_level == piece.levels[-1].name), None)
    if to_end is not None and piece.end_edging:
        spans = (to_end.origin.span, "rows")
        place.findings.report("needles-out/end", spans, helps=("end",), edging=piece.end_edging, piece=piece.name)
        return False
    for number, out in enumerate(piece.needles_out):
        low, high = numbers[out.from_level], numbers[out.to_level]
        others = [*_others(piece, outline, numbers), *_before(piece, number, numbers)]
        other = next((o for o in others if o.low <= high and low <= o.high), None)
        other = other or next((o for o in _moves(piece, numbers) if o.low < high and low < o.high), None)
        if other is not None:
            place.findings.report(
                "needles-out/other-work",
                (out.origin.span, "rows"),
                (other.span, "other"),
                helps=("other-rows",),
                what=other.what,
                piece=piece.name,
            )
            return False
    return True


def _others(piece: Piece, outline: PieceOutline, numbers: dict[str, int]) -> Iterator[RowsTaken]:
    """What may not even begin or end in a row where needles are taken out or come back."""
    top = piece.levels[-1].name
    for wedge in piece.wedges:
        yield RowsTaken(wedge.called, numbers[wedge.from_level], numbers[wedge.to_level or top], wedge.origin.span)
    for zone in piece.zones:
        yield RowsTaken(said("fabric", fabric=zone.fabric), numbers[zone.from_level], numbers[zone.to_level], zone.origin.span)
    for repeat in piece.repeats:
        yield RowsTaken(said("the-repeat"), numbers[repeat.from_level], numbers[repeat.to_level], repeat.origin.span)
    for slot in piece.slots:
        yield RowsTaken(said("slot", slot=slot.name), numbers[slot.level], numbers[slot.level], slot.origin.span)
    for holes in piece.buttonholes:
        yield RowsTaken(said("row-of-buttonholes"), numbers[holes.from_level], numbers[holes.to_level], holes.origin.span)
    for motif in piece.motifs:
        yield RowsTaken(said("motif-there", chart=motif.chart), numbers[motif.level], len(piece.levels) - 1, motif.origin.span)
    for gap in outline.gaps:
        begins = max(i for i, level in enumerate(piece.levels) if level.height[0] <= gap.low[0] + NOTHING)
        yield RowsTaken(
            said("opening-there", opening=gap.opening.name), begins, numbers[gap.opening.to_level], gap.opening.origin.span
        )
    for run in piece.left:
        if run.path == "across":
            yield RowsTaken(said("change-across"), numbers[run.to_level], numbers[run.to_level], run.origin.span)


def _before(piece: Piece, number: int, numbers: dict[str, int]) -> Iterator[RowsTaken]:
    """Other needles that are out of work."""
    for out in piece.needles_out[:number]:
        yield RowsTaken(said("needles-out-there"), numbers[out.from_level], numbers[out.to_level], out.origin.span)


def _moves(piece: Piece, numbers: dict[str, int]) -> Iterator[RowsTaken]:
    """Edges on their way; what is cast off as they begin is done in the row where they begin."""
    for runs in (piece.left, piece.right):
        low = 0
        for run in runs:
            high = numbers[run.to_level]
            if run.path != "across" and (any(run.change) or run.most is not None):
                yield RowsTaken(
                    said("edge-there", level=run.to_level), low - (1 if any(run.cast_off) else 0), high, run.origin.span
                )
            low = high
