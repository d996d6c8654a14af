"""Pieces: start, levels, edges, neck, shoulders and end of each, and mirror images."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from itertools import pairwise

from walewright.design.edges import mirrored, moved, sides
from walewright.design.findings import Findings, amount
from walewright.design.model import Edging, Fabric, Level, Machine, Opening, Origin, Piece, Wedge
from walewright.design.openings import edge_is_free, opening, wedge
from walewright.design.places import POSITIVE, Place
from walewright.design.values import Scope
from walewright.source import syntax

STARTS_KNOWN = ("waste", "e-wrap", "chain")
ENDS_KNOWN = ("waste", "cast-off")
MOST_COPIES = 100


@dataclass(frozen=True, slots=True)
class Workroom:
    """What pieces are made of and in."""

    scope: Scope
    fabrics: Mapping[str, Fabric | None]
    edgings: Mapping[str, Edging | None]
    machine: Machine | None
    findings: Findings


def pieces(nodes: tuple[syntax.Piece, ...], room: Workroom) -> dict[str, Piece | None]:
    """Every piece by name, in the order of the source; None for those that could not be understood."""
    first: dict[str, syntax.Piece] = {}
    for node in nodes:
        first.setdefault(node.name, node)
    made: dict[str, Piece | None] = {n: _piece(p, room) for n, p in first.items() if p.mirror_of is None}
    for node in first.values():
        if node.mirror_of is not None and node.name not in made:
            _mirror(node, first, made, room)
    return {name: made[name] for name in first}


def _piece(node: syntax.Piece, room: Workroom) -> Piece | None:
    findings = room.findings
    owner = f"piece `{node.name}`"
    origin = Origin(f"piece {node.name}", node.span)
    fabric = findings.look_up("fabric", node.fabric, node.span, room.fabrics)
    place = Place(room.scope, findings, fabric)
    start = findings.one("start", (s for s in node.body if isinstance(s, syntax.Start)), owner)
    stack = findings.one("levels", (s for s in node.body if isinstance(s, syntax.Levels)), owner)
    neck = findings.one("neck", (s for s in node.body if isinstance(s, syntax.Neck)), owner)
    held = findings.one("shoulders", (s for s in node.body if isinstance(s, syntax.Shoulders)), owner)
    end = findings.one("end", (s for s in node.body if isinstance(s, syntax.End)), owner)
    lacking = [w for w, s in (("start", start), ("levels", stack), ("end", end)) if s is None]
    if lacking and not any(isinstance(s, syntax.Broken) for s in node.body):
        findings.tell("missing-part", f"{owner} has no {' and no '.join(lacking)}", (node.span, "this piece"))
    _copies(node, findings)
    width = _start(start, node, place, room) if start else None
    levels = _levels(stack, node, place) if stack else None
    if end and end.way not in ENDS_KNOWN:
        findings.unknown("way to end", end.way, end.span, ENDS_KNOWN)
        end = None
    shape = None
    if width is not None and levels is not None:
        edges = (s for s in node.body if isinstance(s, syntax.Edge))
        shape = sides(edges, node.name, width, levels, place, room.machine, origin)
    openings: list[Opening | None] = []
    wedges: list[Wedge | None] = []
    if levels is not None:
        openings = [opening(neck, node.name, shape, levels, place, room.machine)] if neck else []
        wedges = [wedge(held, node.name, levels, findings)] if held else []
        if (
            shape is not None
            and wedges
            and wedges[0] is not None
            and not edge_is_free(wedges[0], shape, node.name, levels, findings)
        ):
            return None
    if fabric is None or start is None or width is None or levels is None or shape is None or end is None:
        return None
    if None in openings or None in wedges:
        return None
    return Piece(
        name=node.name,
        fabric=node.fabric,
        copies=node.copies,
        mirror_of=None,
        levels=levels,
        start_width=width,
        start_way=start.way,
        start_edging=start.edging,
        left=shape["left"].runs,
        right=shape["right"].runs,
        openings=tuple(o for o in openings if o is not None),
        wedges=tuple(w for w in wedges if w is not None),
        end_way=end.way,
        origin=origin,
    )


def _copies(node: syntax.Piece, findings: Findings) -> None:
    if not 1 <= node.copies <= MOST_COPIES:
        findings.tell(
            "not-positive" if node.copies < 1 else "absurd-count",
            f"piece `{node.name}` is knitted {node.copies} times",
            (node.span, f"knit {node.copies}"),
            notes=(f"1 to {MOST_COPIES} are possible",),
        )


def _start(start: syntax.Start, node: syntax.Piece, place: Place, room: Workroom) -> tuple[float, ...] | None:
    findings = room.findings
    width = place.across(start.width, f"the start of piece `{node.name}`", POSITIVE)
    if start.way not in STARTS_KNOWN:
        findings.unknown("way to start", start.way, start.span, STARTS_KNOWN)
        return None
    if start.edging is not None:
        edging = findings.look_up("edging", start.edging, start.span, room.edgings)
        if edging is None:
            return None
        if edging.when == "after" and start.way != "waste":
            findings.tell(
                "edging-needs-loops",
                f"edging `{edging.name}` is hung on the first row, and a closed start leaves no loops there",
                (start.span, f"started with {start.way}"),
                (edging.origin.span, "added after"),
                helps=("start on waste yarn",),
            )
            return None
    return width


def _levels(stack: syntax.Levels, node: syntax.Piece, place: Place) -> tuple[Level, ...] | None:
    """The levels, strictly rising from 0 in every size."""
    findings = place.findings
    findings.once("level", ((d.name, d.span) for d in stack.levels))
    if len(stack.levels) < 2:
        findings.tell("missing-part", f"piece `{node.name}` needs two levels or more", (stack.span, "start and top at least"))
        return None
    found: list[Level] = []
    for definition in stack.levels:
        height = place.up(definition.height, f"level `{definition.name}` of piece `{node.name}`")
        if height is not None:
            path = f"piece {node.name} / level {definition.name}"
            found.append(Level(definition.name, height, Origin(path, definition.span)))
    if len(found) < len(stack.levels) or len({d.name for d in stack.levels}) < len(found):
        return None
    sizes = place.scope.sizes
    if any(abs(h) > 1e-9 for h in found[0].height):
        findings.tell(
            "first-level",
            f"the first level of piece `{node.name}` is its start, at 0 cm",
            (found[0].origin.span, f"at {place.per_size(found[0].height)}"),
        )
        return None
    sound = True
    for low, high in pairwise(found):
        not_above = [i for i in range(len(sizes)) if high.height[i] <= low.height[i] + 1e-9]
        if not_above:
            findings.tell(
                "levels-fall",
                f"`{high.name}` is not above `{low.name}` in piece `{node.name}`",
                (high.origin.span, f"`{high.name}`"),
                (low.origin.span, f"`{low.name}`"),
                notes=tuple(f"{sizes[i]}: {amount(low.height[i])}, then {amount(high.height[i])}" for i in not_above),
                sizes=place.scope.only(tuple(sizes[i] for i in not_above)),
            )
            sound = False
    return tuple(found) if sound else None


# ----------------------------------------------------------------- mirror images


def _mirror(node: syntax.Piece, nodes: Mapping[str, syntax.Piece], made: dict[str, Piece | None], room: Workroom) -> None:
    """Puts the mirror image, and every mirror image it is led back by, into `made`."""
    chain = [node]
    while (of := chain[-1].mirror_of) is not None and of in nodes and of not in made:
        if nodes[of] in chain:
            room.findings.tell(
                "mirror-ring",
                f"piece `{of}` is in the end a mirror of itself",
                (chain[-1].span, f"mirror of `{of}`"),
            )
            made.update(dict.fromkeys(n.name for n in chain))
            return
        chain.append(nodes[of])
    for link in reversed(chain):
        made[link.name] = _image(link, nodes, made, room.findings)


def _image(
    node: syntax.Piece, nodes: Mapping[str, syntax.Piece], made: Mapping[str, Piece | None], findings: Findings
) -> Piece | None:
    of = node.mirror_of or ""
    model = findings.look_up("piece", of, node.span, made)
    own = [s for s in node.body if not isinstance(s, syntax.Text | syntax.Broken)]
    if own:
        findings.tell(
            "mirror-with-shape",
            f"piece `{node.name}` is the mirror of `{of}` and has a shape of its own",
            (own[0].span, "its own"),
            (node.span, f"mirror of `{of}`"),
        )
    if of in nodes and nodes[of].fabric != node.fabric:
        findings.tell(
            "mirror-other-fabric",
            f"a mirror image is knitted in the fabric of its model, `{nodes[of].fabric}`",
            (node.span, f"in `{node.fabric}`"),
            (nodes[of].span, f"in `{nodes[of].fabric}`"),
        )
        return None
    _copies(node, findings)
    return _turned(model, node) if model is not None else None


def _turned(model: Piece, node: syntax.Piece) -> Piece:
    def own(origin: Origin) -> Origin:
        return moved(origin, model.name, node.name)

    return replace(
        model,
        name=node.name,
        copies=node.copies,
        mirror_of=model.name,
        levels=tuple(replace(level, origin=own(level.origin)) for level in model.levels),
        left=mirrored(model.right, model.name, node.name),
        right=mirrored(model.left, model.name, node.name),
        openings=tuple(replace(o, origin=own(o.origin)) for o in model.openings),
        wedges=tuple(replace(w, edge=_OTHER.get(w.edge, w.edge), origin=own(w.origin)) for w in model.wedges),
        origin=Origin(f"piece {node.name}", node.span),
    )


_OTHER = {"left": "right", "right": "left"}
