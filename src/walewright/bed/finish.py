"""The end of a block: is every loop held, which edges are there, and the fabric."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from walewright.bed.corners import corners
from walewright.bed.edges import SIDES, ended, feet, named, start
from walewright.bed.fabric import KnitFabric
from walewright.bed.loops import NOTHING, LoopKind
from walewright.bed.machine import CORDED, HELD, Machine
from walewright.bed.model import BedEdge, Course, Float
from walewright.bed.outline import Shape, beside_gaps, shape, whole_rows
from walewright.bed.refusals import Refusal, refused, slot_of
from walewright.bed.strips import corners_of_strips, rows_at_ends
from walewright.knit.operations import Block
from walewright.record import record


def finish(m: Machine, block: Block) -> KnitFabric | tuple[int, Refusal]:
    """The fabric, or a refusal with the index of the operation at fault (len(operations): the end of the block)."""
    m.settle_chain(goes_on=False)
    end = len(block.operations)
    refusal = _bed_empty(m) or _every_loop_held(m)
    if refusal is not None:
        return end, refusal
    passes = whole_rows([course for course in m.courses if course.kind == "knit"])
    rows = tuple(course for course in passes if course.section >= m.main)
    outline = shape(rows)
    edges = [*start(m, passes, rows), *ended(m)]
    floats = _floats(m)
    found = _named(m, passes, outline, edges)
    if isinstance(found, tuple):
        return found
    edges, strips = found.edges, found.strips
    own = corners(edges, [op for _, op, section in m.named if section >= m.main], outline)
    return KnitFabric(
        name=block.name,
        copies=block.copies,
        courses=tuple(m.courses),
        slots=m.loops.slot,
        parents=m.loops.parent,
        more_parents=m.loops.more,
        kinds=bytes(m.loops.kind),
        faces=bytes(m.loops.face),
        links=tuple(m.links),
        edges=(*edges, *strips),
        bars=tuple(m.bars),
        turns=tuple(m.turns),
        # What was folded up and hung is open no longer.
        feet=() if m.feet_hung_at is not None else feet(m),
        gauges=m.bed.gauges,
        fabrics=m.bed.fabrics,
        spreads=tuple(m.spreads),
        floats=floats,
        crossings=tuple(m.kept.crossings),
        crosses=tuple(m.kept.crosses),
        latched=tuple(m.kept.latched),
        corded=tuple(m.kept.corded),
        tails=tuple(m.kept.tails),
        waste=tuple(m.waste),
        helpers=dict(m.kept.helpers),
        _rows=rows,
        _by_row=_by_row(rows),
        _outer={side: {c.counter: c for c in outline.outer(side)} if outline else {} for side in SIDES},
        _gaps=beside_gaps(outline) if outline else {},
        _held=_held_in_rows(m, rows),
        folded=m.folded,
        folded_above=m.folded_above,
        corners=own | corners_of_strips(m, strips, own.get(("start", "whole"))),
        hung=tuple(m.hung),
        hung_over=tuple(m.over_hung),
        below=m.rehung[0][0] if m.rehung else "",
        end_rows=rows_at_ends(m, passes, range(m.section + 1)),
        rows_before=rows_at_ends(m, passes, range(m.main)),
    )


@record
class _Edges:
    """Those of the piece, and the ends of its edging."""

    edges: list[BedEdge]
    strips: list[BedEdge]


def _named(m: Machine, passes: Sequence[Course], outline: Shape | None, edges: list[BedEdge]) -> _Edges | tuple[int, Refusal]:
    """The `edges` with those that have been given names; or a refusal with the index of the operation at fault."""
    made = _Edges(list(edges), [])
    for index, op, section in m.named:
        # What is named before the piece itself begins is an edge of its edging.
        first = section < m.main
        found = named(m, op, shape([c for c in passes if c.section == section]) if first else outline)
        if isinstance(found, Refusal):
            return index, found
        for edge in found:
            if any((known.name, known.part) == (edge.name, edge.part) for known in (*made.edges, *made.strips)):
                return index, m.refuse("edge-named-twice/edge", edge=op.edge)
        home = made.strips if first or m.rehung else made.edges
        home += found
    return made


def _floats(m: Machine) -> tuple[Float, ...]:
    """Needle by needle as the yarn passed them, put together to runs as long as they are; by row, yarn and needle."""
    runs: list[Float] = []
    order = {row: i for i, row in enumerate(dict.fromkeys((f.counter, f.yarn) for f in m.kept.floats))}
    for one in sorted(m.kept.floats, key=lambda f: (order[f.counter, f.yarn], f.first)):
        last = runs[-1] if runs else None
        if last is not None and (last.counter, last.yarn) == (one.counter, one.yarn) and one.first <= last.last + 1:
            runs[-1] = Float(last.counter, last.yarn, last.first, max(last.last, one.last))
        else:
            runs.append(one)
    return tuple(runs)


def _held_in_rows(m: Machine, rows: tuple[Course, ...]) -> dict[int, frozenset[int]]:
    """First loop of a pass -> the needles held between its ends, whatever became of the yarn laid over them."""
    held: dict[int, frozenset[int]] = {}
    begins = {row.first_loop for row in rows}
    row = -1
    for kind, group in groupby(m.courses, key=lambda course: course.kind):
        courses = list(group)
        if kind == "knit":
            row = courses[-1].first_loop
        elif kind == "laid" and row in begins:
            held[row] = frozenset(course.first for course in courses)
    return held


def _by_row(rows: tuple[Course, ...]) -> dict[int, tuple[Course, ...]]:
    found: dict[int, tuple[Course, ...]] = {}
    for course in rows:
        found[course.counter] = (*found.get(course.counter, ()), course)
    return found


def _bed_empty(m: Machine) -> Refusal | None:
    loaded = [i for i, loop in enumerate(m.top) if loop != NOTHING]
    if not loaded:
        return None
    held = [i for i in loaded if m.position[i] in (HELD, CORDED)]
    if held:
        return m.refuse("held-left", held=len(held), first=m.at(held[0]), last=m.at(held[-1]))
    return m.refuse("loops-left", loaded=len(loaded), first=m.at(loaded[0]), last=m.at(loaded[-1]))


def _every_loop_held(m: Machine) -> Refusal | None:
    """By a later loop drawn through it, by waste yarn under an edge's name, or by being fastened off.

    Garment loops that only waste or ravel passes went through are held by nothing once those come away.
    """
    held = set(m.loops.parent)
    for others in m.loops.more.values():
        held.update(others)
    for edge, _ in m.ended:
        if edge.live:
            for point in edge.points:
                held.update(point)
    held.update(m.fastened_loops)
    if LoopKind.FLOAT in m.loops.kind:
        # A float or a ladder's bar is no loop.
        held.update(i for i, kind in enumerate(m.loops.kind) if kind == LoopKind.FLOAT)
    count = len(m.loops.parent)
    if sum(1 for number in (-1, -2, -3) if number in held) + count == len(held):
        return None
    loop = next(i for i in range(count) if i not in held)
    course = m.course_of(loop)
    return refused("loop-dropped", needle=slot_of(m.loops.slot[loop]), row=course.counter)
