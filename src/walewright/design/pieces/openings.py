"""Openings: where the width parts round a gap, to the top of the piece or until the parts rejoin. A neck is one of them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.design.findings import Findings
from walewright.design.model import EdgeRun, MachineProfile, Opening, Origin, PerSize, ShapingWay
from walewright.design.model.per_size import minus, plus
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.edges import NAMED_ALWAYS, traced
from walewright.design.pieces.fitting import fits
from walewright.design.pieces.outline import NOTHING, OpeningGap, OutlineSide, PieceOutline, stretch
from walewright.design.pieces.tracing import Tracing
from walewright.design.pieces.ways import shaping_way
from walewright.design.reading.meanings import LEAVE_OUT
from walewright.design.reading.places import NOT_NEGATIVE, POSITIVE, AmountPlace, concerned
from walewright.report.said import Said, said
from walewright.source import syntax
from walewright.trade.ends import TAKEN
from walewright.trade.parity import Parity
from walewright.trade.shaping import NECKS
from walewright.trade.sides import EdgeSide

TAKE_SOME = said("leave-out-or-wider")


def neck(
    node: syntax.Neck, outline: PieceOutline, cloth: PieceCloth, machine: MachineProfile | None, parity: Parity
) -> OpeningGap | None:
    """The neck of a piece, checked against the width and the height that the piece has, whose stitches are of that `parity`."""
    what = said("neck-of", piece=outline.piece)
    place = cloth.at(len(outline.levels) - 1)
    findings = place.findings
    width = place.across(node.width, said("width-of", of=what), POSITIVE)
    depth = place.up(node.depth, said("depth-of", of=what), POSITIVE)
    way = shaping_way(node.way, node.inset, node.span, machine, findings)
    if node.shape not in NECKS:
        findings.unknown("neck shape", node.shape, node.span, NECKS)
        return None
    flat = _flat(node, what, width, place, parity == "odd")
    if width is None or depth is None or flat is None or way is None or not _taken(node.taken, node, findings):
        return None
    top = outline.levels[-1]
    origin = Origin(f"piece {outline.piece} / neck", node.span)
    deep = tuple(s for s, d, h in zip(place.scope.sizes, depth, top.height, strict=True) if d >= h - NOTHING)
    if deep:
        over = minus(depth, top.height)
        findings.report(
            "neck-too-deep",
            (node.span, "deep"),
            (top.origin.span, "at"),
            helps=("less",),
            sizes=place.scope.only(deep),
            what=what,
            depth=place.per_size(depth),
            top=top.name,
            height=place.per_size(top.height),
            by=concerned(place.scope.sizes, over, deep),
        )
        return None
    half = tuple((w - f) / 2 for w, f in zip(width, flat, strict=True))
    if not any(half):
        for name in ("way", "begins_moving", "ends_moving"):
            findings.idle(node, name, said("edges-straight-up", what=what), LEAVE_OUT)
    if not any(flat):
        findings.idle(node, "taken", said("parts-at-point", what=what), TAKE_SOME)
    runs = (_neck_edge(node, half, top.name, way, origin),)
    made = Opening(
        name="neck",
        width=width,
        depth=depth,
        flat=flat,
        shape=node.shape,
        way=way,
        origin=origin,
        to_level=top.name,
        centre=outline.centre,
        taken=node.taken,
        left=runs,
        right=runs,
    )
    parting = minus(top.height, depth)
    reach = tuple((at, tuple(w / 2 for w in wide)) for at, wide in ((parting, flat), (top.height, width)))
    gap = OpeningGap(made, parting, top.height, reach, reach)
    return gap if fits(gap, what, outline, place) else None


def _neck_edge(node: syntax.Neck, far: PerSize, to_level: str, way: ShapingWay, origin: Origin) -> EdgeRun:
    path, still = NECKS[node.shape].path if any(far) else "straight", tuple(0.0 for _ in far)
    return EdgeRun(
        "", to_level, path, far, still, (), way=way, origin=origin, begins_moving=node.begins_moving, ends_moving=node.ends_moving
    )


def _flat(node: syntax.Neck, what: Said, width: PerSize | None, place: AmountPlace, odd: bool) -> PerSize | None:
    if node.flat is None and node.shape == "v" and odd:
        # The centre stitch stands at the point.
        return width and place.across(syntax.Number(1, "stitch"), said("point-of", of=what), NOT_NEGATIVE)
    if node.flat is None:
        return width and tuple(w * NECKS[node.shape].flat_share for w in width)
    flat = place.across(node.flat, said("flat-of", of=what), NOT_NEGATIVE)
    if flat is None or width is None:
        return None
    sizes = place.scope.sizes
    wider = tuple(s for s, f, w in zip(sizes, flat, width, strict=True) if f > w + 1e-6)
    narrower = tuple(s for s, f, w in zip(sizes, flat, width, strict=True) if f < w - 1e-6)
    if wider or (node.shape == "square" and narrower):
        place.findings.report(
            "neck-flat",
            (node.flat.span, "flat"),
            (node.width.span, "neck"),
            helps=("narrower",),
            sizes=place.scope.only(wider or narrower),
            what=what,
            wider=bool(wider),
            flat=place.per_size(flat),
            width=place.per_size(width),
        )
        return None
    return flat


def middle_told(parity: Parity, gaps: Sequence[OpeningGap], piece: Origin, place: AmountPlace) -> bool:
    """Whether it is known what lies in the middle where a piece parts: a gap there that takes no stitches parts it between two,
    of which an odd number has none."""
    for gap in gaps:
        at_once = tuple(s for s, flat in zip(place.scope.sizes, gap.opening.flat, strict=True) if flat < NOTHING)
        if parity == "either" and at_once and not any(gap.opening.centre):
            place.findings.report(
                "odd-or-even-parted",
                (gap.opening.origin.span, "parts"),
                (piece.span, "either"),
                helps=("leave-out", "stitch-at-point") if gap.opening.shape == "v" else ("leave-out",),
                sizes=place.scope.only(at_once),
                opening=gap.opening.name,
            )
            return False
    return True


def _taken(taken: str, node: syntax.Neck | syntax.OpeningLine | syntax.SlotLine, findings: Findings) -> bool:
    if taken not in TAKEN:
        findings.unknown("way to take stitches off", taken, node.span, TAKEN)
    return taken in TAKEN


def opening(
    node: syntax.OpeningLine, outline: PieceOutline, cloth: PieceCloth, machine: MachineProfile | None
) -> OpeningGap | None:
    """A parting from level to level, with the edges of its gap; checked against the width that the piece has there."""
    what = said("opening-of", opening=node.name, piece=outline.piece)
    findings = cloth.place.findings
    if node.name in NAMED_ALWAYS and node.name != "neck":
        findings.report(
            "reserved-name/opening",
            (node.span, "opening-called"),
            notes=("kept",),
            helps=("rename",),
            name=node.name,
            kept=NAMED_ALWAYS,
        )
        return None
    between = stretch(node, what, outline, findings)
    if between is None or not _taken(node.taken, node, findings):
        return None
    low, high = between
    place = cloth.at(low)
    width = place.across(node.width, said("width-at-parting", of=what), NOT_NEGATIVE)
    centre = offset(node.offset, said("middle-of", of=what), outline, place)
    if width is None or centre is None:
        return None
    if low == 0:
        findings.report("opening-at-start", (node.span, "from"), helps=("own-level",), what=what, from_level=node.from_level)
        return None
    if high < len(outline.levels) - 1 and not _crossed(node, what, machine, findings):
        return None
    if not any(width):
        findings.idle(node, "taken", said("begins-as-slit", what=what), TAKE_SOME)
    origin = Origin(f"piece {outline.piece} / {node.name}", node.span)
    to_centre = minus(outline.centre, centre)
    on = Tracing(outline.piece, what, origin.path, outline.levels, cloth, machine, first=low, last=high, centre=to_centre, gap=True)
    edges = traced((s for s in node.body if isinstance(s, syntax.EdgeLine)), width, width, on, origin)
    if edges is None or not _stays_open(edges, what, on, node):
        return None
    heights = tuple(outline.levels[i].height for i in between)
    ends = tuple(side.most for side in edges.values())
    made = Opening(
        name=node.name,
        width=plus(*ends),
        depth=tuple(b - a for a, b in zip(*heights, strict=True)),
        flat=width,
        shape="edges",
        way=next((r.way for r in edges["left"].runs if any(r.change)), ShapingWay("simple")),
        origin=origin,
        from_level=node.from_level,
        to_level=node.to_level,
        centre=centre,
        taken=node.taken,
        left=edges["left"].runs,
        right=edges["right"].runs,
    )
    left, right = (tuple((outline.levels[i].height, reach) for i, reach in edges[side].corners) for side in ("left", "right"))
    gap = OpeningGap(made, heights[0], heights[1], left, right)
    return gap if fits(gap, what, outline, place) else None


def _crossed(node: syntax.OpeningLine, what: Said, machine: MachineProfile | None, findings: Findings) -> bool:
    """Whether the carriage comes to the part that goes first, of an opening whose parts rejoin: past loops in work. Of one up to
    the top the part where the carriage is goes first."""
    if machine is None or machine.crossing != "none":
        return True
    findings.report(
        "no-empty-crossing",
        (node.span, "rejoins"),
        (machine.origin.span, "bed"),
        helps=("to-the-top",),
        what=what,
        level=node.to_level,
    )
    return False


def offset(wanted: syntax.Expr | None, what: Said, outline: PieceOutline, place: AmountPlace) -> PerSize | None:
    """How far right of the middle of the piece's start, in cm, what is said to be so far right of the centre line; at the centre
    line where nothing is said."""
    if wanted is None:
        return outline.centre
    off = place.across(wanted, what)
    return plus(off, outline.centre) if off is not None else None


def _stays_open(edges: Mapping[EdgeSide, OutlineSide], what: Said, on: Tracing, node: syntax.OpeningLine) -> bool:
    """Whether the gap's edges do not cross."""
    place = on.cloth.place
    for level in range(on.first, on.last + 1):
        at = on.levels[level]
        left, right = (edges[side].at(at.height, on.levels) for side in ("left", "right"))
        crossed = tuple(s for s, a, b in zip(on.sizes, left, right, strict=True) if a + b < -NOTHING)
        if crossed:
            short = tuple(-(a + b) for a, b in zip(left, right, strict=True))
            place.findings.report(
                "no-width-left/opening",
                (node.span, "wide"),
                helps=("less",),
                sizes=place.scope.only(crossed),
                what=what,
                level=at.name,
                width=place.per_size(plus(left, right)),
                short=concerned(on.sizes, short, crossed),
            )
            return False
    return True
