"""Necks and shoulders: where a piece parts, and what is held at its outer edges up to the top."""

from __future__ import annotations

from walewright.design.edges import Side, shaping_way
from walewright.design.findings import Findings
from walewright.design.model import EdgeRun, Level, Machine, Opening, Origin, PerSize, Wedge
from walewright.design.places import NOT_NEGATIVE, POSITIVE, Place
from walewright.source import syntax

FLAT_SHARE = {"round": 0.5, "v": 0.0, "square": 1.0}
"""How much of a neck's width is taken at once when the author does not say: a round neck takes about half
(common practice), a V nothing, a square neck all of it."""


def opening(
    node: syntax.Neck,
    piece: str,
    sides: dict[str, Side] | None,
    levels: tuple[Level, ...],
    place: Place,
    machine: Machine | None,
) -> Opening | None:
    """The neck of a piece, checked against the width and the height that the piece has; `sides` None: not known."""
    what = f"the neck of piece `{piece}`"
    findings = place.findings
    width = place.across(node.width, f"the width of {what}", POSITIVE)
    depth = place.up(node.depth, f"the depth of {what}", POSITIVE)
    way = shaping_way(node.way, node.inset, node.span, machine, findings)
    if node.shape not in FLAT_SHARE:
        findings.unknown("neck shape", node.shape, node.span, FLAT_SHARE)
        return None
    flat = _flat(node, what, width, place)
    if width is None or depth is None or flat is None or way is None:
        return None
    made = Opening("neck", width, depth, flat, node.shape, way, Origin(f"piece {piece} / neck", node.span))
    return made if _fits(made, what, sides, levels, place) else None


def _flat(node: syntax.Neck, what: str, width: PerSize | None, place: Place) -> PerSize | None:
    if node.flat is None:
        return width and tuple(w * FLAT_SHARE[node.shape] for w in width)
    flat = place.across(node.flat, f"the flat part of {what}", NOT_NEGATIVE)
    if flat is None or width is None:
        return None
    sizes = place.scope.sizes
    wider = tuple(s for s, f, w in zip(sizes, flat, width, strict=True) if f > w + 1e-6)
    narrower = tuple(s for s, f, w in zip(sizes, flat, width, strict=True) if f < w - 1e-6)
    if wider or (node.shape == "square" and narrower):
        place.findings.tell(
            "neck-flat",
            f"the flat part of {what} is {'wider than the neck' if wider else 'less than the whole of a square neck'}",
            (node.flat.span, f"flat {place.per_size(flat)}"),
            (node.width.span, f"neck {place.per_size(width)}"),
            sizes=place.scope.only(wider or narrower),
        )
        return None
    return flat


def _fits(made: Opening, what: str, sides: dict[str, Side] | None, levels: tuple[Level, ...], place: Place) -> bool:
    sizes = place.scope.sizes
    top = levels[-1]
    deep = tuple(s for s, d, h in zip(sizes, made.depth, top.height, strict=True) if d >= h - 1e-6)
    if deep:
        place.findings.tell(
            "neck-too-deep",
            f"{what} is as deep as the piece is high, or deeper",
            (made.origin.span, f"{place.per_size(made.depth)} deep"),
            (top.origin.span, f"`{top.name}` at {place.per_size(top.height)}"),
            sizes=place.scope.only(deep),
        )
        return False
    if sides is None:
        return True
    parting = tuple(h - d for h, d in zip(top.height, made.depth, strict=True))
    for where, heights, gap in (("at its top", top.height, made.width), ("where it parts", parting, made.flat)):
        # The gap is centred, so the narrower side of the piece decides.
        narrow = [2 * min(a, b) for a, b in zip(*(s.at(heights, levels) for s in sides.values()), strict=True)]
        wide = tuple(s for s, g, n in zip(sizes, gap, narrow, strict=True) if g >= n - 1e-6)
        if wide:
            place.findings.tell(
                "neck-too-wide",
                f"{what} leaves nothing of the piece beside it",
                (made.origin.span, f"{place.per_size(gap)} wide"),
                notes=(f"the piece {where} is {place.per_size(tuple(narrow))} wide",),
                sizes=place.scope.only(wide),
            )
            return False
    return True


def wedge(node: syntax.Shoulders, piece: str, levels: tuple[Level, ...], findings: Findings) -> Wedge | None:
    """Shoulders held from a level to the top, at both edges."""
    names = [level.name for level in levels]
    if node.from_level not in names:
        findings.unknown(f"level of piece `{piece}`", node.from_level, node.span, names)
        return None
    if node.from_level == names[-1]:
        findings.tell(
            "shoulders-at-top",
            f"the shoulders are held from `{node.from_level}`, the top of piece `{piece}`: no rows are left for them",
            (node.span, "from the top"),
            notes=(f"levels from the start up: {', '.join(names)}",),
        )
        return None
    return Wedge("shoulders", "both", node.from_level, Origin(f"piece {piece} / shoulders", node.span))


def edge_is_free(made: Wedge, sides: dict[str, Side], piece: str, levels: tuple[Level, ...], findings: Findings) -> bool:
    """Whether the outer edges end, as far as they are shaped or named, where the shoulders begin: a held edge neither
    moves nor has rows of its own."""
    heights = {level.name: number for number, level in enumerate(levels)}
    beyond: dict[str, EdgeRun] = {
        run.origin.path: run
        for side in sides.values()
        for run in side.runs
        if heights[run.to_level] > heights[made.from_level] and (run.name or any(abs(c) > 1e-9 for c in run.change))
    }
    for run in beyond.values():
        findings.tell(
            "edge-past-shoulder",
            f"an edge of piece `{piece}` goes on to `{run.to_level}` while the shoulders are held from `{made.from_level}`",
            (run.origin.span, f"up to `{run.to_level}`"),
            (made.origin.span, f"held from `{made.from_level}`"),
            helps=(f"end this edge at `{made.from_level}`, or hold the shoulders from a higher level",),
        )
    return not beyond
