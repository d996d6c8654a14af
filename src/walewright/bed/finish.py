"""The end of a block: is every loop held, which edges are there, and the fabric with its digest."""

from __future__ import annotations

import hashlib
from dataclasses import replace

from walewright.bed.fabric import Fabric
from walewright.bed.loops import NOTHING, Kind
from walewright.bed.machine import HELD, Machine, Refusal
from walewright.bed.model import Course, Edge, Part
from walewright.bed.outline import Shape, end_slot, missing_row, reaches, row_edge, shape
from walewright.knit.operations import Block, NameEdge, Side, needle

SIDES: tuple[Side, Side] = ("left", "right")


def finish(m: Machine, block: Block) -> Fabric | tuple[int, Refusal]:
    """The fabric, or a refusal with the index of the operation at fault (len(operations): the end of the block)."""
    m.settle_chain(goes_on=False)
    end = len(block.operations)
    refusal = _bed_empty(m) or _every_loop_held(m)
    if refusal is not None:
        return end, refusal
    rows = tuple(course for course in m.courses if course.kind == "knit")
    outline = shape(rows)
    edges = [*_start(m, rows), *(_measured(m, edge) for edge, _ in m.ended)]
    for index, op in m.named:
        found = _named(m, op, outline)
        if isinstance(found, Refusal):
            return index, found
        for edge in found:
            if any(known.name == edge.name and known.part == edge.part for known in edges):
                return index, m.refuse("edge-named-twice", f"there is already an edge called {op.edge!r}", edge=op.edge)
        edges += found
    return Fabric(
        name=block.name,
        copies=block.copies,
        courses=tuple(m.courses),
        slots=m.loops.slot,
        parents=m.loops.parent,
        more_parents=m.loops.more,
        kinds=bytes(m.loops.kind),
        faces=bytes(m.loops.face),
        links=tuple(m.links),
        edges=tuple(edges),
        bars=tuple(m.bars),
        turns=tuple(m.turns),
        feet=_feet(m),
        gauges=m.bed.gauges,
        digest=_digest(m, block, edges),
        _rows=rows,
    )


def _feet(m: Machine) -> tuple[int, ...]:
    """Loops drawn through waste or ravel yarn, from left to right."""
    parents = m.loops.parent
    feet: list[int] = []
    for course in m.courses:
        ids = range(course.first_loop, course.first_loop + course.count)
        if min(parents[ids.start : ids.stop]) < NOTHING:
            feet += [loop for loop in ids if parents[loop] < NOTHING]
    return tuple(sorted(feet, key=m.loops.slot.__getitem__))


def _bed_empty(m: Machine) -> Refusal | None:
    loaded = [i for i, loop in enumerate(m.top) if loop != NOTHING]
    if not loaded:
        return None
    held = [i for i in loaded if m.position[i] == HELD]
    if held:
        return m.refuse(
            "held-left",
            f"the block ends with {len(held)} needles still held, from {m.name(held[0])} to {m.name(held[-1])}",
            held[0],
            held[-1],
            needles=len(held),
        )
    return m.refuse(
        "loops-left",
        f"the block ends with loops on {len(loaded)} needles, from {m.name(loaded[0])} to {m.name(loaded[-1])}",
        loaded[0],
        loaded[-1],
        needles=len(loaded),
    )


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
    count = len(m.loops.parent)
    if sum(1 for number in (-1, -2, -3) if number in held) + count == len(held):
        return None
    loop = next(i for i in range(count) if i not in held)
    course = m.course_of(loop)
    name = needle(m.loops.slot[loop])
    return Refusal(
        "loop-dropped",
        f"nothing holds the loop made on needle {name} at RC {course.counter}",
        (("needle", name), ("row", course.counter)),
    )


def _measured(m: Machine, edge: Edge) -> Edge:
    """Stitches lie as wide as the row that they, or their chains, close."""
    loop = edge.points[0][0]
    while loop >= 0 and m.loops.kind[loop] == Kind.CHAIN:
        loop = m.loops.parent[loop]
    if loop < 0:
        return edge
    course = m.course_of(loop)
    gauge = m.bed.gauges.get((course.yarn, course.tension))
    return edge if gauge is None else replace(edge, length_cm=edge.count / gauge.stitches_per_cm)


def _start(m: Machine, rows: tuple[Course, ...]) -> list[Edge]:
    """What was cast on, rehung or picked up before the first pass, or else its own stitches; as wide as that pass lies."""
    if not rows:
        return []
    hung = [c for c in m.courses[: m.courses.index(rows[0])] if c.kind.startswith(("cast on", "rehang", "pick up"))]
    gauge = m.bed.gauges.get((rows[0].yarn, rows[0].tension))
    loops = [loop for c in hung or rows[:1] for loop in range(c.first_loop, c.first_loop + c.count)]
    points = tuple((loop,) for loop in sorted(loops, key=m.loops.slot.__getitem__))
    length = None if gauge is None else len(points) / gauge.stitches_per_cm
    return [Edge("start", "whole", "stitches", len(points), length, points)]


def _named(m: Machine, op: NameEdge, outline: Shape | None) -> list[Edge] | Refusal:
    after, to = op.from_row, op.to_row
    if outline is None:
        return m.refuse(
            "rows-ambiguous",
            f"the counter was set back over the same needles, so RC {after} to {to} of {op.edge!r} does not say which rows",
            edge=op.edge,
        )
    if after >= to:
        return m.refuse("edge-without-rows", f"the edge {op.edge!r} from RC {after} to RC {to} has no rows", edge=op.edge)
    if op.where == "inner" and (len(outline.arms) != 2 or after < outline.parting):
        return m.refuse(
            "not-parted",
            f"the piece is not in two parts from RC {after} on, so it has no inner edges to call {op.edge!r}",
            edge=op.edge,
            row=after,
        )
    found: list[Edge] = []
    for side in SIDES:
        chain = outline.outer(side) if op.where == "outer" else outline.arms[SIDES.index(side)]
        row = missing_row(chain, after, to)
        if row is not None:
            return m.refuse(
                "rows-not-knitted",
                f"the edge {op.edge!r} runs from RC {after} to RC {to}, but row {row} was not knitted on the {side}",
                edge=op.edge,
                row=row,
            )
        found.append(_outer_edge(m, op, side, chain) if op.where == "outer" else _inner_edge(m, op, side, chain))
    if op.where == "outer" and found[0].count != found[1].count:
        left, right = found
        return m.refuse(
            "edge-sides-differ",
            f"the edge {op.edge!r} has {left.count} rows on the left and {right.count} on the right",
            edge=op.edge,
            left=left.count,
            right=right.count,
        )
    return found


def _outer_edge(m: Machine, op: NameEdge, side: Side, chain: tuple[Course, ...]) -> Edge:
    rows = [c for c in chain if op.from_row < c.counter <= op.to_row and reaches(c, side)]
    if not rows:
        return Edge(op.edge, side, "rows", 0, None, (), each=True)
    before = next((c for c in chain if c.counter == op.from_row and reaches(c, side)), None)
    below, since = (None, rows[0].first_loop) if before is None else (end_slot(before, side), before.first_loop)
    return row_edge(op.edge, side, rows, below, _casts(m, side, since), m.bed.gauges, each=True)


def _inner_edge(m: Machine, op: NameEdge, side: Side, chain: tuple[Course, ...]) -> Edge:
    """The left part's right end, the right part's left end; it begins beside the stitches taken out of the middle."""
    end: Side = "right" if side == "left" else "left"
    rows = [c for c in chain if op.from_row < c.counter <= op.to_row]
    below: int | None = next((end_slot(c, end) for c in chain if c.counter == op.from_row), None)
    for edge, first in m.ended:
        if below is None and edge.name == op.edge and edge.part == "centre":
            below = first - 1 if side == "left" else first + edge.count
    part: Part = side
    return replace(row_edge(op.edge, end, rows, below, _casts(m, end, rows[0].first_loop), m.bed.gauges, each=False), part=part)


def _casts(m: Machine, side: Side, since: int) -> list[Course]:
    """Chains cast off at one side after the loop `since`."""
    return [course for course in m.courses if course.kind == "cast off" and course.to == side and course.first_loop > since]


def _digest(m: Machine, block: Block, edges: list[Edge]) -> str:
    """Of all that makes the fabric: loops, parents, faces, yarns, tensions, wraps, edges; not of what the counter read.

    The rows of waste yarn are in it too: they come away, but to knit them otherwise than told is not to knit the same.
    """
    runs: dict[int, int] = {}
    courses = [
        (c.kind, c.to, c.yarn, c.tension, runs.setdefault(c.run, len(runs)), c.first, c.last, c.count, c.first_loop)
        for c in m.courses
    ]
    ends = [(e.name, e.part, e.along, e.count, e.points, e.live) for e in edges]
    links = [(link.loop, link.piece, link.loops) for link in m.links]
    digest = hashlib.sha256(repr((block.name, block.copies, courses, sorted(m.loops.more.items()), ends, links, m.waste)).encode())
    for flat in (m.loops.slot, m.loops.parent):
        digest.update(flat.tobytes())
    digest.update(m.loops.kind)
    digest.update(m.loops.face)
    return digest.hexdigest()
