"""Edges: each side of a piece as runs from level to level, every run with the move of that one edge.

A position is the distance of an edge from the centre line, in cm per size; a width is the sum of the two.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from itertools import pairwise

from walewright.design.findings import Findings, amount
from walewright.design.model import EdgeRun, Level, Machine, Origin, PerSize, Way
from walewright.design.places import LONGEST_CM, NOT_NEGATIVE, POSITIVE, Place
from walewright.report.model import Span
from walewright.source import syntax

SIDES = ("left", "right")
PATHS_KNOWN = ("straight", "slope", "curve", "steps")
ALWAYS_NAMED = ("start", "end", "neck", "shoulder")
"""Edges that exist without being called."""
MOST_STEPS = 200
"""More steps than that are a slope."""


@dataclass(frozen=True, slots=True)
class Side:
    """One edge as far as it is known: `level` is the index of the level reached, `position` where it stands there."""

    level: int
    position: PerSize
    runs: tuple[EdgeRun, ...] = ()
    corners: tuple[tuple[int, PerSize], ...] = ()
    """(level index, position) at the start and the end of every run."""

    def at(self, heights: PerSize, levels: tuple[Level, ...]) -> PerSize:
        """Position at these heights (cm per size), runs taken as straight between their ends."""
        found: list[float] = []
        for size, height in enumerate(heights):
            points = [(levels[i].height[size], p[size]) for i, p in self.corners]
            found.append(_between(points, height))
        return tuple(found)


def sides(
    nodes: Iterable[syntax.Edge],
    piece: str,
    start: PerSize,
    levels: tuple[Level, ...],
    place: Place,
    machine: Machine | None,
    origin: Origin,
) -> dict[str, Side] | None:
    """Left and right edge of a piece from its `edges` statements, each led straight on to the top; None when told why not.

    `start` is the width at the first level in cm."""
    half = tuple(w / 2 for w in start)
    now = {side: Side(0, half, (), ((0, half),)) for side in SIDES}
    edges = tuple(nodes)
    _check_names(edges, place.findings)
    for node in edges:
        moved = _run(node, piece, now, levels, place, machine)
        if moved is None:
            return None
        now = moved
    top = levels[-1].name
    rest = Origin(f"{origin.path} / edge to {top}", origin.span)
    still = tuple(0.0 for _ in start)
    for side, so_far in now.items():
        if so_far.level < len(levels) - 1:
            run = EdgeRun("", top, "straight", still, still, 0, Way("simple"), rest)
            now[side] = _after(so_far, len(levels) - 1, run, so_far.position)
    return now if _wide_enough(now, piece, levels, edges, place) else None


def _run(
    node: syntax.Edge, piece: str, now: dict[str, Side], levels: tuple[Level, ...], place: Place, machine: Machine | None
) -> dict[str, Side] | None:
    """The sides after one statement."""
    findings = place.findings
    names = [level.name for level in levels]
    if node.to_level not in names:
        findings.unknown(f"level of piece `{piece}`", node.to_level, node.span, names)
        return None
    if node.path not in PATHS_KNOWN:
        findings.unknown("edge path", node.path, node.span, PATHS_KNOWN)
        return None
    which = SIDES if node.which == "both" else (node.which,)
    reached = {now[side].level for side in which}
    if len(reached) > 1:
        findings.tell(
            "edges-apart",
            "`edges` moves both edges, and they have come to different levels",
            (node.span, "both edges from here"),
            notes=tuple(f"the {side} edge has come to `{names[now[side].level]}`" for side in SIDES),
            helps=("write `left edge` and `right edge` apart",),
        )
        return None
    to = names.index(node.to_level)
    come = reached.pop()
    if to <= come:
        findings.tell(
            "edge-goes-down",
            f"the edge has already come to `{names[come]}`, which is not below `{node.to_level}`",
            (node.span, f"to `{node.to_level}`"),
            notes=(f"levels of piece `{piece}` from the start up: {', '.join(names)}",),
        )
        return None
    change = _change(node, piece, now, place)
    cast_off = _cast_off(node, change, place) if change is not None else None
    way = shaping_way(node.way, node.inset, node.span, machine, findings)
    if change is None or cast_off is None or way is None:
        return None
    # One path for both sides, so that edges shaped alike compare alike.
    origin = Origin(f"piece {piece} / edge to {node.to_level}", node.span)
    run = EdgeRun(node.called or "", node.to_level, node.path, change, cast_off, node.times or 0, way, origin)
    after = dict(now)
    for side in which:
        position = tuple(p + c for p, c in zip(now[side].position, change, strict=True))
        after[side] = _after(now[side], to, run, position)
    return after


def _after(side: Side, level: int, run: EdgeRun, position: PerSize) -> Side:
    return Side(level, position, (*side.runs, run), (*side.corners, (level, position)))


def _change(node: syntax.Edge, piece: str, now: dict[str, Side], place: Place) -> PerSize | None:
    """The move of one edge over the run, outwards positive."""
    if node.path == "straight":
        return tuple(0.0 for _ in place.scope.sizes)
    times = node.times if node.path == "steps" and node.times is not None else 1
    if times < 1:
        place.findings.tell("not-positive", "an edge in steps needs at least one step", (node.span, f"{times} steps"))
        return None
    if times > MOST_STEPS:
        place.findings.tell("absurd-count", f"an edge in steps has at most {MOST_STEPS} of them", (node.span, f"{times} steps"))
        return None
    what = f"the edge of piece `{piece}`"
    if node.by is not None:
        by = place.across(node.by, what)
        return by and tuple(b * times for b in by)
    if node.width is None:
        place.findings.tell(
            "missing-part", f"the {node.path} to `{node.to_level}` does not say how far", (node.span, "no width and no `by`")
        )
        return None
    if node.which != "both":
        place.findings.tell(
            "width-of-one-edge",
            "a width belongs to both edges; one edge alone moves by a length",
            (node.span, f"only the {node.which} edge"),
            helps=(f"write `by` and how far the {node.which} edge moves",),
        )
        return None
    width = place.across(node.width, f"the width of piece `{piece}` at `{node.to_level}`", POSITIVE)
    before = [a + b for a, b in zip(now["left"].position, now["right"].position, strict=True)]
    return width and tuple((w - b) / 2 for w, b in zip(width, before, strict=True))


def _cast_off(node: syntax.Edge, change: PerSize, place: Place) -> PerSize | None:
    if node.cast_off is None:
        return tuple(0.0 for _ in change)
    cast_off = place.across(node.cast_off, "what is cast off", NOT_NEGATIVE)
    if cast_off is None:
        return None
    sizes = place.scope.sizes
    over = tuple(s for s, c, by in zip(sizes, cast_off, change, strict=True) if c > -by + 1e-6)
    if over:
        inwards = tuple(-c for c in change)
        place.findings.tell(
            "cast-off-too-wide",
            f"more is cast off than the edge moves in to `{node.to_level}`",
            (node.span, f"cast off {place.per_size(cast_off)}"),
            notes=(f"the edge moves in by {place.per_size(inwards)}",),
            sizes=place.scope.only(over),
        )
        return None
    return cast_off


def shaping_way(kind: str | None, inset: int | None, span: Span, machine: Machine | None, findings: Findings) -> Way | None:
    """The way an edge is shaped; a fashioned one needs a transfer tool of as many prongs as it is stitches in."""
    if kind in (None, "simple"):
        return Way("simple")
    if kind != "fashioned":
        findings.unknown("way of shaping", str(kind), span, ("simple", "fashioned"))
        return None
    depth = inset if inset is not None else 0
    if machine is not None and depth not in machine.prongs:
        findings.tell(
            "no-such-tool",
            f"shaping {depth} in needs a transfer tool of {depth} prongs",
            (span, f"fashioned {depth} in"),
            (machine.origin.span, "this bed"),
            notes=(f"the tools at hand have {', '.join(str(p) for p in machine.prongs)} prongs",),
        )
        return None
    return Way("fashioned", depth)


def _check_names(edges: tuple[syntax.Edge, ...], findings: Findings) -> None:
    """A called edge runs up both sides once, and the names every piece has are not given away."""
    for node in edges:
        if node.called in ALWAYS_NAMED:
            findings.tell(
                "reserved-name",
                f"every piece has an edge `{node.called}` already",
                (node.span, "called so here"),
                notes=(f"kept names: {', '.join(ALWAYS_NAMED)}",),
            )
    for which in SIDES:
        findings_of = [(n.called, n.span) for n in edges if n.called and n.which in ("both", which)]
        other = [n.called for n in edges if n.called and n.which in ("both", *(s for s in SIDES if s != which))]
        if which == "left":
            findings.once("edge", findings_of)
        for name, span in findings_of:
            if name not in other:
                findings.tell(
                    "one-sided-name",
                    f"the edge `{name}` is named on the {which} only",
                    (span, f"{which} edge"),
                    notes=("a named edge runs up both sides of the piece",),
                    helps=(f"call a run of the other edge `{name}` too",),
                )


def _wide_enough(now: dict[str, Side], piece: str, levels: tuple[Level, ...], edges: tuple[syntax.Edge, ...], place: Place) -> bool:
    for index, level in enumerate(levels):
        widths = tuple(
            a + b for a, b in zip(now["left"].at(level.height, levels), now["right"].at(level.height, levels), strict=True)
        )
        told = None
        none = tuple(s for s, w in zip(place.scope.sizes, widths, strict=True) if w < 1e-6)
        vast = tuple(s for s, w in zip(place.scope.sizes, widths, strict=True) if w > LONGEST_CM)
        if none:
            told = ("no-width-left", f"piece `{piece}` has no width left at `{level.name}`")
        elif vast:
            told = ("absurd-length", f"piece `{piece}` is more than {amount(LONGEST_CM / 100, 'm')} wide at `{level.name}`")
        if told:
            below = [n for n in edges if n.to_level in {x.name for x in levels[: index + 1]}]
            span = (below[-1] if below else edges[-1]).span
            place.findings.tell(*told, (span, place.per_size(widths)), sizes=place.scope.only(none or vast))
            return False
    return True


def _between(points: list[tuple[float, float]], height: float) -> float:
    for (low, a), (high, b) in pairwise(points):
        if height <= high:
            return a + (b - a) * (height - low) / (high - low)
    return points[-1][1]


def mirrored(runs: tuple[EdgeRun, ...], from_piece: str, to_piece: str) -> tuple[EdgeRun, ...]:
    """The same edge, its origins led to the mirrored piece."""
    return tuple(replace(r, origin=moved(r.origin, from_piece, to_piece)) for r in runs)


def moved(origin: Origin, from_piece: str, to_piece: str) -> Origin:
    """The origin of a datum in a mirror image: the path of the new piece, the span of the statement that shaped it."""
    return replace(origin, path=origin.path.replace(f"piece {from_piece}", f"piece {to_piece}", 1))
