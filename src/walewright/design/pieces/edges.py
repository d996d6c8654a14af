"""Edges: each side of a piece, or of a gap in it, as runs from level to level, every run with the move of that one edge."""

from __future__ import annotations

from collections.abc import Iterable

from walewright.design.findings import within
from walewright.design.model import EdgeRun, Origin, PerSize, ShapingWay
from walewright.design.model.per_size import plus
from walewright.design.pieces.inside_lines import inside_lines
from walewright.design.pieces.moves import EdgeMove, move, rated, tell_wrong_way
from walewright.design.pieces.outline import OutlineSide, level_index
from walewright.design.pieces.rates import rates_of, rows_enough
from walewright.design.pieces.steps import steps_of
from walewright.design.pieces.tracing import TracedSides, Tracing
from walewright.design.pieces.ways import shaping_way
from walewright.design.reading.places import NOT_NEGATIVE, POSITIVE, concerned
from walewright.report.model import Span
from walewright.report.said import said
from walewright.source import syntax
from walewright.trade.shaping import PATHS
from walewright.trade.sides import SIDES, EdgeSide

NAMED_ALWAYS = ("start", "end", "neck", "shoulder")
"""Edges that exist without being called."""


def traced(
    nodes: Iterable[syntax.EdgeLine | syntax.AcrossLine], least: PerSize, most: PerSize, on: Tracing, origin: Origin
) -> TracedSides | None:
    """Both edges from their statements, each led straight on to the last level; None when told why not.

    `least` and `most` are the width at the first level in cm (alike unless it is free)."""
    half, widest = tuple(w / 2 for w in least), tuple(w / 2 for w in most)
    now = {side: OutlineSide(on.first, half, widest, (), ((on.first, widest),)) for side in SIDES}
    statements = tuple(nodes)
    _check_names(tuple(n for n in statements if isinstance(n, syntax.EdgeLine)), on)
    for node in statements:
        after = _run(node, now, on) if isinstance(node, syntax.EdgeLine) else _across(node, now, on)
        if after is None:
            return None
        now = after
    top = on.levels[on.last].name
    still = tuple(0.0 for _ in half)
    for side, so_far in now.items():
        if so_far.level < on.last:
            rest = EdgeRun(
                name="",
                to_level=top,
                path="straight",
                change=still,
                cast_off=still,
                steps=(),
                way=ShapingWay("simple"),
                origin=Origin(f"{on.path} / edge to {top}", origin.span),
            )
            now[side] = _after(so_far, on.last, rest, EdgeMove(still, None, so_far.least, so_far.most))
    return now


def _run(node: syntax.EdgeLine, now: TracedSides, on: Tracing) -> TracedSides | None:
    """The sides after one statement."""
    findings = on.findings
    to = level_index(node.to_level, node.span, on.piece, on.levels, findings)
    if to is None:
        return None
    if node.path not in PATHS:
        findings.unknown("edge path", node.path, node.span, PATHS)
        return None
    which = SIDES if node.which == "both" else (node.which,)
    if not _may_come(node, to, which, now, on):
        return None
    come = now[which[0]].level
    if node.cast_off is not None and come == 0 and not _rows_to_cast_off(node, on):
        return None
    way = shaping_way(node.way, node.inset, node.span, on.machine, findings, node.at_once)
    if node.path == "rate":
        return _at_rate(node, (come, to), way, now, on) if way is not None else None
    steps = steps_of(node, on.cloth.at(to), on.what)
    if steps is None:
        return None
    moved = move(node, steps, to, now, on)
    cast_off = _cast_off(node, moved.change, on) if moved is not None else None
    if moved is None or cast_off is None or way is None:
        return None
    if not _at_once_is_inwards(node, moved, on):
        return None
    lines = inside_lines(node, now, moved, on)
    if lines is None:
        return None
    if lines:
        way = ShapingWay("inside", at_once=len(lines))
    run = EdgeRun(
        name=node.called or "",
        to_level=node.to_level,
        path=node.path,
        change=moved.change,
        cast_off=cast_off,
        steps=steps.count,
        way=way,
        origin=_origin(node, on),
        most=moved.most,
        lines=lines,
        in_turn=steps.in_turn,
        larger=node.larger,
        begins_moving=node.begins_moving,
        ends_moving=node.ends_moving,
    )
    return _moved(node, to, run, moved, now)


def _moved(node: syntax.EdgeLine, to: int, run: EdgeRun, moved: EdgeMove, now: TracedSides) -> TracedSides:
    which = SIDES if node.which == "both" else (node.which,)
    return {side: _after(now[side], to, run, moved.of(now[side])) if side in which else now[side] for side in SIDES}


def _origin(node: syntax.EdgeLine, on: Tracing) -> Origin:
    """One path for both sides, so that edges shaped alike compare alike."""
    return Origin(f"{on.path} / edge to {node.to_level}", node.span)


def _at_rate(node: syntax.EdgeLine, between: tuple[int, int], way: ShapingWay, now: TracedSides, on: Tracing) -> TracedSides | None:
    """The sides after a statement that says so many stitches every so many rows."""
    place, nothing = on.cloth.place, tuple(0.0 for _ in on.sizes)
    rates = rates_of(node, way, on.cloth, on.machine, on.gap, between[0] == 0)
    cast_off = nothing if node.cast_off is None else place.across(node.cast_off, said("cast-off"), NOT_NEGATIVE)
    if rates is None or cast_off is None:
        return None
    if not rows_enough(node, rates, *between, on.cloth):
        return None
    moved = rated(node, rates, cast_off, between, now, on.cloth)
    if moved is None or not _at_once_is_inwards(node, moved, on) or (any(cast_off) and not _cast_off_inwards(node, on)):
        return None
    run = EdgeRun(
        name=node.called or "",
        to_level=node.to_level,
        path="rate",
        change=moved.change,
        cast_off=cast_off,
        steps=(),
        way=way,
        origin=_origin(node, on),
        most=moved.most,
        rates=rates,
        begins_moving=node.begins_moving,
        ends_moving=node.ends_moving,
    )
    return _moved(node, between[1], run, moved, now)


def _cast_off_inwards(node: syntax.EdgeLine, on: Tracing) -> bool:
    """Tells of an edge that goes out behind what it casts off."""
    if isinstance(node.by, syntax.Negative) != on.gap:
        return True
    on.findings.report("cast-off-too-wide/rate-outwards", (node.span, "then-out"), helps=("leave-out",), to_level=node.to_level)
    return False


def _may_come(node: syntax.EdgeLine, to: int, which: tuple[EdgeSide, ...], now: TracedSides, on: Tracing) -> bool:
    """Whether the edges of a statement stand at one level, below the one they are led to."""
    names = [level.name for level in on.levels]
    if not _together(node.span, {now[side].level for side in which}, now, on):
        return False
    come = now[which[0]].level
    if come < to <= on.last:
        return True
    on.findings.report(
        "edge-goes-down" if to <= come else "edge-past-opening",
        (node.span, "to"),
        notes=("levels",),
        helps=("another-level",),
        what=on.what,
        reached=names[come],
        end=names[on.last],
        to_level=node.to_level,
        piece=on.piece,
        levels=tuple(names),
    )
    return False


def _together(span: Span, reached: set[int], now: TracedSides, on: Tracing) -> bool:
    if len(reached) == 1:
        return True
    names = [level.name for level in on.levels]
    on.findings.report(
        "edges-apart",
        (span, "both"),
        notes=tuple(said("reached", side=side, level=names[now[side].level]) for side in SIDES),
        helps=("write-apart",),
    )
    return False


def _after(side: OutlineSide, level: int, run: EdgeRun, moved: EdgeMove) -> OutlineSide:
    return OutlineSide(level, moved.least, moved.farthest, (*side.runs, run), (*side.corners, (level, moved.farthest)))


# ----------------------------------------------------------------- across


def _across(node: syntax.AcrossLine, now: TracedSides, on: Tracing) -> TracedSides | None:
    """The sides after loops are hung back over more or fewer needles; both get the same move."""
    at = level_index(node.level, node.span, on.piece, on.levels, on.findings)
    if at is None or not _together(node.span, {s.level for s in now.values()}, now, on) or not _may_be_hung(node, at, now, on):
        return None
    width = on.cloth.at(at).across(node.width, said("width-across", piece=on.piece, level=node.level), POSITIVE)
    if width is None:
        return None
    least, most = (plus(*e) for e in _ends(now))
    if not _can_be_hung(node, at, width, least, most, on):
        return None
    low = tuple((w - m) / 2 for w, m in zip(width, most, strict=True))
    high = tuple((w - m) / 2 for w, m in zip(width, least, strict=True))
    free = least != most
    origin = Origin(f"{on.path} / across at {node.level}", node.span)
    nothing = tuple(0.0 for _ in width)
    run = EdgeRun(
        name="",
        to_level=node.level,
        path="across",
        change=low,
        cast_off=nothing,
        steps=(),
        way=ShapingWay("simple"),
        origin=origin,
        most=high if free else None,
        rates=(),
        half_gaps=node.half_gaps,
    )
    after: TracedSides = {}
    for side, so_far in now.items():
        position = tuple(p + (w - t) / 2 for p, w, t in zip(so_far.least, width, least, strict=True))
        after[side] = _after(so_far, at, run, EdgeMove(low, None, position, position))
    return after


def _may_be_hung(node: syntax.AcrossLine, at: int, now: TracedSides, on: Tracing) -> bool:
    """Whether both edges have come to that level, and nothing is hung back there yet."""
    come, earlier = now["left"].level, now["left"].runs[-1:]
    if come != at:
        on.findings.report(
            "across-elsewhere",
            (node.span, "at"),
            helps=("lead-there" if come < at else "write-before",),
            reached=on.levels[come].name,
            level=node.level,
        )
    elif earlier and earlier[0].path == "across":
        on.findings.report(
            "repeated-statement/across",
            (node.span, "again"),
            (earlier[0].origin.span, "first"),
            helps=("leave-one-out",),
            piece=on.piece,
            level=node.level,
        )
    else:
        return True
    return False


def _can_be_hung(node: syntax.AcrossLine, at: int, width: PerSize, least: PerSize, most: PerSize, on: Tracing) -> bool:
    """Whether loops can be hung back so far, and are at all."""
    place = on.cloth.at(at)
    as_wide = all(max(abs(w - low), abs(w - high)) < 1e-6 for w, low, high in zip(width, least, most, strict=True))
    if as_wide and on.cloth.below(min(at + 1, on.last)) == on.cloth.below(at):
        why = said("as-wide-across", piece=on.piece, width=place.per_size(width))
        on.findings.report("without-effect", (node.span, "here"), helps=("leave-out",), why=why)
        return False
    doubled = tuple(s for s, w, high in zip(on.sizes, width, most, strict=True) if w > 2 * high + 1e-6)
    # Sizes that are out on the other side have another bound: they are reported when these are mended.
    far = doubled or tuple(s for s, w, low in zip(on.sizes, width, least, strict=True) if w < low / 2 - 1e-6)
    if far:
        more = bool(doubled)
        bound = tuple(2 * h for h in most) if more else tuple(w / 2 for w in least)
        on.findings.report(
            "across-too-far",
            (node.span, "to"),
            notes=("below", "loops"),
            helps=("write",),
            sizes=place.scope.only(far),
            piece=on.piece,
            more=more,
            level=node.level,
            width=place.per_size(width),
            least=place.per_size(least),
            bound=concerned(on.sizes, bound, far),
        )
    return not far


def _ends(now: TracedSides) -> tuple[tuple[PerSize, PerSize], tuple[PerSize, PerSize]]:
    return (now["left"].least, now["right"].least), (now["left"].most, now["right"].most)


# ----------------------------------------------------------------- what a run may be


def _rows_to_cast_off(node: syntax.EdgeLine, on: Tracing) -> bool:
    """Tells of a cast-off at the start: what is cast on and closed at once is no part of the piece."""
    first = on.levels[0].name
    on.findings.report(
        "cast-off-at-start",
        (node.cast_off.span if node.cast_off is not None else node.span, "at-start"),
        helps=("narrower", "straight-first"),
        what=on.what,
        first=first,
    )
    return False


def _cast_off(node: syntax.EdgeLine, change: PerSize, on: Tracing) -> PerSize | None:
    if node.cast_off is None:
        return tuple(0.0 for _ in change)
    place = on.cloth.place
    cast_off = place.across(node.cast_off, said("cast-off"), NOT_NEGATIVE)
    if cast_off is None:
        return None
    inwards = tuple(c * on.inwards for c in change)
    over = tuple(s for s, c, by in zip(on.sizes, cast_off, inwards, strict=True) if c > by + 1e-6)
    if any(by < -1e-6 for by in inwards):
        outwards = tuple(s for s, by in zip(on.sizes, inwards, strict=True) if by < -1e-6)
        tell_wrong_way(node, change, on.gap, outwards, place)
        return None
    if over:
        excess = tuple(c - max(by, 0.0) for c, by in zip(cast_off, inwards, strict=True))
        place.findings.report(
            "cast-off-too-wide/more-than-edge",
            (node.span, "cast-off"),
            notes=("moves",),
            helps=("less",) if any(by > 0 for by in inwards) else ("leave-out", "go-in"),
            sizes=place.scope.only(over),
            to_level=node.to_level,
            cast_off=place.per_size(cast_off),
            inwards=place.per_size(inwards),
            excess=concerned(on.sizes, excess, over),
        )
        return None
    return cast_off


def _at_once_is_inwards(node: syntax.EdgeLine, moved: EdgeMove, on: Tracing) -> bool:
    if node.at_once == 1:
        return True
    if node.at_once != 2:
        on.findings.report("absurd-count/at-once", (node.span, "once"), helps=within(node.at_once, 1, 2), at_once=node.at_once)
        return False
    ends = (moved.change, moved.most or moved.change)
    out = tuple(s for s, *by in zip(on.sizes, *ends, strict=True) if any(c * on.inwards < -1e-9 for c in by))
    if out:
        on.findings.report(
            "two-at-once-outwards",
            (node.span, "two"),
            helps=("one-at-a-time",),
            sizes=on.cloth.place.scope.only(out),
            to_level=node.to_level,
        )
    return not out


def _check_names(edges: tuple[syntax.EdgeLine, ...], on: Tracing) -> None:
    """A side has a name once, and the names every piece has are not given away."""
    findings = on.findings
    for node in edges:
        if node.called and on.gap:
            findings.report("named-in-opening", (node.span, "called"), helps=("leave-name-out",), what=on.what, called=node.called)
        elif node.called in NAMED_ALWAYS:
            findings.report(
                "reserved-name/called-edge",
                (node.span, "here"),
                notes=("kept",),
                helps=("rename",),
                name=node.called,
                kept=NAMED_ALWAYS,
            )
    twice: set[Span] = set()
    for side in SIDES:
        first: dict[str, Span] = {}
        before: str | None = None
        for node in edges:
            if node.which not in ("both", side):
                continue
            # Runs that follow one another under one name are one edge: a curve that goes on straight.
            apart = node.called is not None and node.called in first and node.called != before
            before = node.called
            if node.called is None:
                continue
            if apart and node.span not in twice:
                twice.add(node.span)
                findings.once("edge", ((node.called, first[node.called]), (node.called, node.span)))
            first.setdefault(node.called, node.span)
