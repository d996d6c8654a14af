"""Wedges: rows knitted on part of the width while the rest is held. Shoulders are wedges up to the top."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from walewright.design.findings import Findings
from walewright.design.model import EdgeRun, Origin, PerSize, Wedge
from walewright.design.model.per_size import minus, plus
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.outline import NOTHING, PieceOutline, level_index, stretch
from walewright.design.reading.places import POSITIVE, AmountPlace, concerned
from walewright.record import replace
from walewright.report.said import said
from walewright.source import syntax
from walewright.trade.shaping import WEDGES
from walewright.trade.sides import SIDES, WHICH_EDGES, EdgeSide


def shoulders(node: syntax.Shoulders, outline: PieceOutline, findings: Findings) -> Wedge | None:
    """Shoulders held from a level to the top, at both edges or, of a piece with one shoulder, at one."""
    at = level_index(node.from_level, node.span, outline.piece, outline.levels, findings)
    if at is None:
        return None
    if at == len(outline.levels) - 1:
        findings.report(
            "shoulders-at-top",
            (node.span, "top"),
            notes=("levels",),
            helps=("lower",),
            from_level=node.from_level,
            piece=outline.piece,
            levels=tuple(level.name for level in outline.levels),
        )
        return None
    made = Wedge("shoulders", node.edge, node.from_level, Origin(f"piece {outline.piece} / shoulders", node.span))
    made = replace(made, larger_last=node.larger_last)
    return made if _edge_is_free(made, outline, findings) else None


def _edge_is_free(made: Wedge, outline: PieceOutline, findings: Findings) -> bool:
    """Whether the outer edges end, as far as they are shaped or named, where the shoulders begin: a held edge neither
    moves nor has rows of its own."""
    heights = {level.name: number for number, level in enumerate(outline.levels)}
    beyond: dict[str, EdgeRun] = {
        run.origin.path: run
        for side in SIDES
        if made.edge in ("both", side)
        for run in outline.side(side).runs
        if heights[run.to_level] > heights[made.from_level] and (run.name or _moves(run))
    }
    for run in beyond.values():
        findings.report(
            "edge-past-shoulder",
            (run.origin.span, "up"),
            (made.origin.span, "held"),
            helps=("end-or-hold",),
            piece=outline.piece,
            to_level=run.to_level,
            from_level=made.from_level,
        )
    return not beyond


def _moves(run: EdgeRun) -> bool:
    return any(abs(c) > 1e-9 for c in (*run.change, *(run.most or ())))


def wedge(node: syntax.WedgeLine, outline: PieceOutline, cloth: PieceCloth) -> Wedge | None:
    """Short rows at an edge, checked: the edge stands still, the width is there, and each step has a stitch."""
    place = cloth.place
    findings = place.findings
    what = said("wedge-of", piece=outline.piece)
    between = stretch(node, what, outline, findings)
    for called, word, known in (("kind of wedge", node.kind, WEDGES), ("edge to hold at", node.edge, WHICH_EDGES)):
        if word not in known:
            findings.unknown(called, word, node.span, known)
            return None
    if between is None:
        return None
    here = cloth.at(between[1])
    width = here.across(node.width, said("width-of", of=what), POSITIVE)
    rest = here.across(node.rest, said("rest-outside", of=what), POSITIVE) if node.rest is not None else None
    if width is None or (node.rest is not None and rest is None):
        return None
    side = "" if node.edge == "both" else f"{node.edge} "
    name = f"{side}wedge at {node.from_level}"
    origin = Origin(f"piece {outline.piece} / {name}", node.span)
    made = Wedge(
        name, node.edge, node.from_level, origin, node.to_level, width, kind=node.kind, rest=rest, larger_last=node.larger_last
    )
    sound = _edge_stands(made, between, outline, findings) and _has_width(made, outline, here)
    return made if sound else None


def sides_of(made: Wedge) -> tuple[EdgeSide, ...]:
    """The edges a wedge is held at."""
    return SIDES if made.edge == "both" else (made.edge,)


def _edge_stands(made: Wedge, between: tuple[int, int], outline: PieceOutline, findings: Findings) -> bool:
    numbers = {level.name: number for number, level in enumerate(outline.levels)}
    for side in sides_of(made):
        come = 0
        for run in outline.side(side).runs:
            to = numbers[run.to_level]
            inside = between[0] < to < between[1] if run.path == "across" else come < between[1] and to > between[0]
            if inside and _moves(run):
                findings.report(
                    "edge-moves-in-wedge",
                    (run.origin.span, "moves"),
                    (made.origin.span, "held"),
                    helps=("straight",),
                    side=side,
                    piece=outline.piece,
                    from_level=made.from_level,
                    to_level=made.to_level,
                )
                return False
            come = to
    return True


def _heights(made: Wedge, outline: PieceOutline) -> tuple[PerSize, PerSize]:
    heights = {level.name: level.height for level in outline.levels}
    return heights[made.from_level], heights[made.to_level or outline.levels[-1].name]


def _held(made: Wedge) -> PerSize:
    width = made.width or ()
    return plus(width, made.rest or (0.0,) * len(width))


def _has_width(made: Wedge, outline: PieceOutline, place: AmountPlace) -> bool:
    low, high = _heights(made, outline)
    sizes = place.scope.sizes
    parted = any(outline.parted(i, a, b) for i, (a, b) in enumerate(zip(low, high, strict=True)))
    # One statement for both edges holds at both at the same time.
    share = 2 if made.edge == "both" and not parted else 1
    room = tuple(min(r) / share for r in zip(*(outline.room(s, low, high) for s in sides_of(made)), strict=True))
    held = _held(made)
    # Held all at once and returned again, a wedge has to leave a stitch that is knitted meanwhile.
    spare = 1 / place.fabric.stitches_per_cm if place.fabric and made.kind == "both" else 0.0
    wide = tuple(s for s, h, r in zip(sizes, held, room, strict=True) if h > r - spare + NOTHING)
    if wide:
        over = tuple(h - r + spare for h, r in zip(held, room, strict=True))
        place.findings.report(
            "wedge-too-wide/one",
            (made.origin.span, "held"),
            notes=("room",),
            helps=("narrower",),
            sizes=place.scope.only(wide),
            wedge=made.called,
            piece=outline.piece,
            each=share == 2,
            held=place.per_size(held),
            room=place.per_size(room),
            over=concerned(sizes, over, wide),
        )
    return not wide


def together(wedges: Sequence[Wedge], outline: PieceOutline, place: AmountPlace) -> bool:
    """Whether wedges that share rows are one at each edge between the same two levels, and leave each other room."""
    sizes = place.scope.sizes
    for one, other in combinations(wedges, 2):
        (low, high), (start, end) = _heights(one, outline), _heights(other, outline)
        shared = [low[i] < end[i] - NOTHING and start[i] < high[i] - NOTHING for i in range(len(sizes))]
        if not any(shared):
            continue
        apart = not set(sides_of(one)) & set(sides_of(other))
        if not apart or low != start or high != end:
            place.findings.report(
                "stretches-overlap/wedges",
                (other.origin.span, "this"),
                (one.origin.span, "that"),
                helps=("same-time",),
                piece=outline.piece,
            )
            return False
        room = tuple(min(r) for r in zip(*(outline.room(s, low, high) for s in SIDES), strict=True))
        parted = any(outline.parted(i, a, b) for i, (a, b) in enumerate(zip(low, high, strict=True)))
        both = plus(_held(one), _held(other))
        wide = tuple(s for s, b, r in zip(sizes, both, room, strict=True) if b > r + NOTHING and not parted)
        if wide:
            over = minus(both, room)
            place.findings.report(
                "wedge-too-wide/both",
                (other.origin.span, "other"),
                (one.origin.span, "one"),
                notes=("room",),
                helps=("narrower",),
                sizes=place.scope.only(wide),
                piece=outline.piece,
                other_held=place.per_size(_held(other)),
                one_held=place.per_size(_held(one)),
                room=place.per_size(room),
                by=concerned(sizes, over, wide),
            )
            return False
    return True
