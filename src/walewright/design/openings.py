"""Openings: where the width parts round a gap, to the top of the piece or until the parts rejoin. A neck is one of them."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.cloth import Cloth
from walewright.design.edges import NAMED_ALWAYS, Tracing, traced
from walewright.design.findings import Findings
from walewright.design.fitting import fits
from walewright.design.meanings import LEAVE_OUT
from walewright.design.model import EdgeRun, Machine, Opening, Origin, PerSize, Way
from walewright.design.outline import NOTHING, Gap, Outline, Side, stretch
from walewright.design.places import NOT_NEGATIVE, POSITIVE, Place, concerned
from walewright.design.ways import shaping_way
from walewright.source import syntax

FLAT_SHARE = {"round": 0.5, "v": 0.0, "square": 1.0}
"""How much of a neck's width is taken at once when the author does not say: a round neck takes about half
(common practice), a V nothing, a square neck all of it."""
PATHS = {"round": "curve", "v": "slope", "square": "straight"}
TAKE_SOME = "leave that out, or let it begin some stitches wide"
TAKEN_KNOWN = ("waste", "cast-off")


def neck(node: syntax.Neck, outline: Outline, cloth: Cloth, machine: Machine | None, odd: bool) -> Gap | None:
    """The neck of a piece, checked against the width and the height that the piece has. `odd`: the piece has a centre stitch."""
    what = f"the neck of piece `{outline.piece}`"
    place = cloth.at(len(outline.levels) - 1)
    findings = place.findings
    width = place.across(node.width, f"the width of {what}", POSITIVE)
    depth = place.up(node.depth, f"the depth of {what}", POSITIVE)
    way = shaping_way(node.way, node.inset, node.span, machine, findings)
    if node.shape not in FLAT_SHARE:
        findings.unknown("neck shape", node.shape, node.span, FLAT_SHARE)
        return None
    flat = _flat(node, what, width, place, odd)
    if width is None or depth is None or flat is None or way is None or not _taken(node.taken, node, findings):
        return None
    top = outline.levels[-1]
    origin = Origin(f"piece {outline.piece} / neck", node.span)
    deep = tuple(s for s, d, h in zip(place.scope.sizes, depth, top.height, strict=True) if d >= h - NOTHING)
    if deep:
        over = tuple(d - h for d, h in zip(depth, top.height, strict=True))
        findings.tell(
            "neck-too-deep",
            f"{what} is as deep as the piece is high, or deeper",
            (node.span, f"{place.per_size(depth)} deep"),
            (top.origin.span, f"`{top.name}` at {place.per_size(top.height)}"),
            helps=(f"make it less deep, by more than this: {concerned(place.scope.sizes, over, deep)}",),
            sizes=place.scope.only(deep),
        )
        return None
    half = tuple((w - f) / 2 for w, f in zip(width, flat, strict=True))
    if not any(half):
        findings.idle(node, "way", f"the edges of {what} go straight up, and nothing is shaped there", LEAVE_OUT)
    if not any(flat):
        findings.idle(node, "taken", f"{what} parts at a point, and no stitches are taken off there", TAKE_SOME)
    path = PATHS[node.shape] if any(half) else "straight"
    still = tuple(0.0 for _ in width)
    runs = (EdgeRun("", top.name, path, half, still, 0, way, origin),)
    made = Opening(
        "neck",
        width,
        depth,
        flat,
        node.shape,
        way,
        origin,
        to_level=top.name,
        centre=still,
        taken=node.taken,
        left=runs,
        right=runs,
    )
    parting = tuple(h - d for h, d in zip(top.height, depth, strict=True))
    reach = tuple((at, tuple(w / 2 for w in wide)) for at, wide in ((parting, flat), (top.height, width)))
    gap = Gap(made, parting, top.height, reach, reach)
    return gap if fits(gap, what, outline, place) else None


def _flat(node: syntax.Neck, what: str, width: PerSize | None, place: Place, odd: bool) -> PerSize | None:
    if node.flat is None and node.shape == "v" and odd:
        # The centre stitch stands at the point.
        return width and place.across(syntax.Number(1, "stitch"), f"the point of {what}", NOT_NEGATIVE)
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


def _taken(taken: str, node: syntax.Neck | syntax.Opening | syntax.Slot, findings: Findings) -> bool:
    if taken not in TAKEN_KNOWN:
        findings.unknown("way to take stitches off", taken, node.span, TAKEN_KNOWN)
    return taken in TAKEN_KNOWN


def opening(node: syntax.Opening, outline: Outline, cloth: Cloth, machine: Machine | None) -> Gap | None:
    """A parting from level to level, with the edges of its gap; checked against the width that the piece has there."""
    what = f"opening `{node.name}` of piece `{outline.piece}`"
    findings = cloth.place.findings
    if node.name in NAMED_ALWAYS and node.name != "neck":
        findings.tell(
            "reserved-name",
            f"every piece has an edge `{node.name}` already",
            (node.span, "an opening called so"),
            notes=(f"kept names: {', '.join(NAMED_ALWAYS)}",),
        )
        return None
    between = stretch(node.from_level, node.to_level, node.span, what, outline.piece, outline.levels, findings)
    if between is None or not _taken(node.taken, node, findings):
        return None
    low, high = between
    place = cloth.at(low)
    width = place.across(node.width, f"the width of {what} at its parting", NOT_NEGATIVE)
    centre = offset(node.offset, f"the middle of {what}", place)
    if width is None or centre is None:
        return None
    if low == 0:
        findings.tell(
            "opening-at-start",
            f"{what} begins at the start, where no row is knitted yet",
            (node.span, f"from `{node.from_level}`"),
            helps=("give it a level of its own, two rows up or more",),
        )
        return None
    if not any(width):
        findings.idle(node, "taken", f"{what} begins as a slit, and no stitches are taken off there", TAKE_SOME)
    path = f"piece {outline.piece} / {node.name}"
    origin = Origin(path, node.span)
    on = Tracing(outline.piece, what, path, outline.levels, cloth, machine, low, high, gap=True)
    edges = traced((s for s in node.body if isinstance(s, syntax.Edge)), width, width, on, origin)
    if edges is None or not _stays_open(edges, what, on, node):
        return None
    heights = tuple(outline.levels[i].height for i in between)
    ends = tuple(side.most for side in edges.values())
    made = Opening(
        node.name,
        tuple(a + b for a, b in zip(*ends, strict=True)),
        tuple(b - a for a, b in zip(*heights, strict=True)),
        width,
        "edges",
        next((r.way for r in edges["left"].runs if any(r.change)), Way("simple")),
        origin,
        from_level=node.from_level,
        to_level=node.to_level,
        centre=centre,
        taken=node.taken,
        left=edges["left"].runs,
        right=edges["right"].runs,
    )
    left, right = (tuple((outline.levels[i].height, reach) for i, reach in edges[side].corners) for side in ("left", "right"))
    gap = Gap(made, heights[0], heights[1], left, right)
    return gap if fits(gap, what, outline, place) else None


def offset(wanted: syntax.Expr | None, what: str, place: Place) -> PerSize | None:
    """How far right of the centre line, in cm; 0 where nothing is said."""
    if wanted is None:
        return tuple(0.0 for _ in place.scope.sizes)
    return place.across(wanted, what)


def _stays_open(edges: dict[str, Side], what: str, on: Tracing, node: syntax.Opening) -> bool:
    """Whether the gap's edges do not cross."""
    place = on.cloth.place
    for level in range(on.first, on.last + 1):
        at = on.levels[level]
        left, right = (edges[side].at(at.height, on.levels) for side in ("left", "right"))
        crossed = tuple(s for s, a, b in zip(on.sizes, left, right, strict=True) if a + b < -NOTHING)
        if crossed:
            short = tuple(-(a + b) for a, b in zip(left, right, strict=True))
            place.findings.tell(
                "no-width-left",
                f"{what} has no width left at `{at.name}`",
                (node.span, f"{place.per_size(tuple(a + b for a, b in zip(left, right, strict=True)))} wide"),
                helps=(f"bring its edges {concerned(on.sizes, short, crossed)} less together",),
                sizes=place.scope.only(crossed),
            )
            return False
    return True


def apart(gaps: Sequence[Gap], outline: Outline, place: Place) -> bool:
    """Whether no two openings are open in the same rows; told where they are."""
    sizes = place.scope.sizes
    for number, one in enumerate(gaps):
        for other in gaps[:number]:
            both = tuple(
                s for i, s in enumerate(sizes) if one.low[i] < other.high[i] - NOTHING and other.low[i] < one.high[i] - NOTHING
            )
            if both:
                over = tuple(min(a, b) - max(c, d) for a, b, c, d in zip(one.high, other.high, one.low, other.low, strict=True))
                place.findings.tell(
                    "openings-overlap",
                    f"`{one.opening.name}` and `{other.opening.name}` of piece `{outline.piece}` are open in the same rows",
                    (one.opening.origin.span, f"from {place.per_size(one.low)} to {place.per_size(one.high)}"),
                    (other.opening.origin.span, f"from {place.per_size(other.low)} to {place.per_size(other.high)}"),
                    helps=(f"let one end before the other begins: they share {concerned(sizes, over, both)}",),
                    sizes=place.scope.only(both),
                )
                return False
            lower, upper = (one, other) if one.low < other.low else (other, one)
            if not _whole_rows_between(lower, upper, outline, place):
                return False
    return True


def _whole_rows_between(lower: Gap, upper: Gap, outline: Outline, place: Place) -> bool:
    """Whether the piece parts again above the place where its parts come together, not in the same row."""
    touch = tuple(s for i, s in enumerate(place.scope.sizes) if upper.low[i] < lower.high[i] + NOTHING)
    if touch:
        place.findings.tell(
            "openings-touch",
            f"`{upper.opening.name}` of piece `{outline.piece}` begins in the row where `{lower.opening.name}` ends",
            (upper.opening.origin.span, f"from {place.per_size(upper.low)}"),
            (lower.opening.origin.span, f"to {place.per_size(lower.high)}"),
            notes=("rows over the whole width join the parts of one before the piece parts for the other",),
            helps=(f"let `{upper.opening.name}` begin at a level of its own, two rows up or more",),
            sizes=place.scope.only(touch),
        )
    return not touch
