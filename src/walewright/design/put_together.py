"""Pieces: what stands in each piece's block, put together and checked against each other."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import field
from typing import TypeVar

from walewright.design.charts.areas import Ground
from walewright.design.charts.charted import charted
from walewright.design.charts.motifs import motif
from walewright.design.findings import Findings
from walewright.design.model import Chart, CountPerSize, EdgeName, Edging, Fabric, Level, MachineProfile, Origin, Piece
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.copies import copies_of
from walewright.design.pieces.edges import traced
from walewright.design.pieces.endings import Ending, ending, in_one
from walewright.design.pieces.inside_alone import inside_alone
from walewright.design.pieces.levels import StartWidth, levels, start
from walewright.design.pieces.mirrors import put_mirror
from walewright.design.pieces.names import EdgesOfPieces, edges, told_apart
from walewright.design.pieces.needles_out import needles_alone, needles_out
from walewright.design.pieces.openings import middle_told, neck, opening
from walewright.design.pieces.openings_apart import apart
from walewright.design.pieces.outline import PieceOutline
from walewright.design.pieces.rows_shared import one_thing_at_a_time
from walewright.design.pieces.slots import buttonholes, side_by_side, slot
from walewright.design.pieces.stretches import cloth_of, repeat, zone
from walewright.design.pieces.tracing import Tracing
from walewright.design.pieces.wedges import shoulders, together, wedge
from walewright.design.reading.places import LONGEST_CM, AmountPlace, concerned
from walewright.design.reading.values import Scope
from walewright.record import record, replace
from walewright.report.model import Span
from walewright.report.said import Amount, said
from walewright.source import syntax

PURPOSES_KNOWN = ("", "hood")

MadePart = TypeVar("MadePart")
NodeKind = TypeVar("NodeKind", bound=syntax.Node)


@record
class Workroom:
    """What pieces are made of and in; `edges` are those that something can be hung on. `first_rows`: where the cells of the charts'
    first rows stand. `told` are faults of a fabric or a chart that one piece in it has shown: the others would show them again."""

    scope: Scope
    fabrics: Mapping[str, Fabric | None]
    charts: Mapping[str, Chart | None]
    edgings: Mapping[str, Edging | None]
    machine: MachineProfile | None
    edges: EdgesOfPieces
    findings: Findings
    first_rows: Mapping[str, tuple[Span, ...]] = field(default_factory=dict)
    told: set[tuple[str, str]] = field(default_factory=set)


def pieces(nodes: tuple[syntax.PieceBlock, ...], room: Workroom) -> dict[str, Piece | None]:
    """Every piece by name, in the order of the source; None for those that could not be understood."""
    first: dict[str, syntax.PieceBlock] = {}
    for node in nodes:
        first.setdefault(node.name, node)
    made: dict[str, Piece | None] = {n: _piece(p, first, room) for n, p in first.items() if p.mirror_of is None}
    for node in first.values():
        if node.mirror_of is not None and node.name not in made:
            put_mirror(node, first, made, lambda n: _header(n, room), room.findings)
    return {name: made[name] for name in first}


@record
class _Block:
    """A piece's block by kinds of statements."""

    node: syntax.PieceBlock
    room: Workroom

    def every(self, kind: type[NodeKind]) -> tuple[NodeKind, ...]:
        return tuple(s for s in self.node.body if isinstance(s, kind))

    def one(self, what: str, kind: type[NodeKind]) -> NodeKind | None:
        return self.room.findings.one(what, self.every(kind), said("piece", piece=self.node.name))

    def understood(self, kind: type[NodeKind], make: Callable[[NodeKind], MadePart | None]) -> tuple[MadePart, ...] | None:
        """All of a kind; None when one could not be understood."""
        made = [make(n) for n in self.every(kind)]
        return None if any(m is None for m in made) else tuple(m for m in made if m is not None)


def _piece(node: syntax.PieceBlock, nodes: Mapping[str, syntax.PieceBlock], room: Workroom) -> Piece | None:
    findings = room.findings
    block = _Block(node, room)
    fabric = findings.look_up("fabric", node.fabric, node.span, room.fabrics)
    place = AmountPlace(room.scope, findings, fabric)
    begin, stack, end = block.one("start", syntax.Start), block.one("levels", syntax.Levels), block.one("end", syntax.End)
    lacking = [w for w, s in (("start", begin), ("levels", stack), ("end", end)) if s is None]
    if lacking and not block.every(syntax.Broken):
        findings.report("missing-part/piece", (node.span, "here"), helps=("add-lines",), piece=node.name, lacking=tuple(lacking))
    copies = _header(node, room)
    named = told_apart(node, findings)
    heights = levels(stack, node.name, place) if stack else None
    cloth = cloth_of(block.every(syntax.ZoneLine), heights, place, room.fabrics) if heights else PieceCloth(place, ())
    width = start(begin, node.name, cloth.at(1) if heights else place, room.edgings) if begin else None
    along = _along(begin, node, nodes, room) if begin else ()
    finish = ending(end, node.name, room.edgings, findings) if end else None
    if heights is None or width is None or begin is None:
        return None
    outline = _outline(block, heights, width, cloth)
    inside = _inside(block, outline, cloth, begin, finish or Ending("waste")) if outline else None
    if inside is not None and end is not None and finish is not None and not in_one(end, inside, findings):
        return None
    if fabric is None or finish is None or along is None or outline is None or inside is None or not named:
        return None
    return replace(
        inside,
        copies=copies,
        start_width=width.width,
        start_most=width.most,
        start_along=along,
        start_facing=begin.facing,
        start_by_edges=begin.width is None and begin.from_place is None,
        start_origin=Origin(f"piece {node.name}", begin.span),
    )


def _header(node: syntax.PieceBlock, room: Workroom) -> CountPerSize:
    """How often a piece is knitted; tells what is wrong with its first line."""
    if node.purpose not in PURPOSES_KNOWN:
        room.findings.unknown("purpose of a piece", node.purpose, node.span, PURPOSES_KNOWN[1:])
    return copies_of(node, room.scope, room.findings)


def _along(
    begin: syntax.Start, node: syntax.PieceBlock, nodes: Mapping[str, syntax.PieceBlock], room: Workroom
) -> tuple[EdgeName, ...] | None:
    """The edges of other pieces that a piece is begun on. Those pieces are knitted before it: they stand before it."""
    if begin.way != "along":
        return ()
    found = edges(begin.along, room.edges, room.findings)
    if not begin.along:
        room.findings.report("missing-part/along", (begin.span, "none"), piece=node.name)
        return None
    before = list(nodes)[: list(nodes).index(node.name)]
    for ref in begin.along:
        if ref.piece in nodes and ref.piece not in before:
            room.findings.report(
                "along-later-piece/piece",
                (ref.span, "along"),
                (nodes[ref.piece].span, "piece"),
                helps=("write-before",) if ref.piece != node.name else (),
                piece=node.name,
                model=ref.piece,
                edge=ref.edge,
            )
            return None
    return found


def _outline(block: _Block, heights: tuple[Level, ...], width: StartWidth, cloth: PieceCloth) -> PieceOutline | None:
    """The outer edges, led from the start to the top, and wide enough at every level."""
    node = block.node
    path = f"piece {node.name}"
    what = said("piece", piece=node.name)
    on = Tracing(
        node.name, what, path, heights, cloth, machine=block.room.machine, first=0, last=len(heights) - 1, centre=width.centre
    )
    statements = tuple(s for s in node.body if isinstance(s, syntax.EdgeLine | syntax.AcrossLine))
    sides = traced(statements, width.width, width.most or width.width, on, Origin(path, node.span))
    if sides is None:
        return None
    outline = PieceOutline(node.name, heights, sides["left"], sides["right"], centre=width.centre)
    return outline if _wide_enough(outline, statements, block, cloth.place) else None


def _wide_enough(
    outline: PieceOutline, statements: tuple[syntax.EdgeLine | syntax.AcrossLine, ...], block: _Block, place: AmountPlace
) -> bool:
    sizes = place.scope.sizes
    for index, level in enumerate(outline.levels):
        widths = outline.width(level.height)
        none = tuple(s for s, w in zip(sizes, widths, strict=True) if w < 1e-6)
        vast = tuple(s for s, w in zip(sizes, widths, strict=True) if w > LONGEST_CM)
        if none or vast:
            passed = {x.name for x in outline.levels[: index + 1]}
            below = [s for s in statements if isinstance(s, syntax.EdgeLine) and s.to_level in passed]
            lacking = tuple(-w for w in widths)
            place.findings.report(
                "no-width-left/piece" if none else "absurd-length/piece",
                ((below or statements)[-1].span if statements else block.node.span, "width"),
                helps=("leave-some" if all(w > -1e-6 for w in widths) else "less-in",) if none else (),
                sizes=place.scope.only(none or vast),
                piece=outline.piece,
                level=level.name,
                width=place.per_size(widths),
                lacking=concerned(sizes, lacking, none),
                longest=Amount(LONGEST_CM / 100, "m"),
            )
            return False
    return True


def _inside(block: _Block, outline: PieceOutline, cloth: PieceCloth, begin: syntax.Start, ending: Ending) -> Piece | None:
    """The piece but for its start's width and its copies: what parts it, is held in it, cut into it or goes over a stretch."""
    node, room, findings = block.node, block.room, block.room.findings
    block.one("neck", syntax.Neck)
    block.one("shoulders", syntax.Shoulders)
    necks = block.understood(syntax.Neck, lambda n: neck(n, outline, cloth, room.machine, node.parity))
    openings = block.understood(syntax.OpeningLine, lambda n: opening(n, outline, cloth, room.machine))
    if necks is None or openings is None or not apart((*openings, *necks[:1]), outline, cloth.place):
        return None
    # Openings from the start up, those that begin in one row from left to right.
    gaps = tuple(sorted((*openings, *necks[:1]), key=lambda g: (g.low, g.opening.centre)))
    if not middle_told(node.parity, gaps, Origin(f"piece {node.name}", node.span), cloth.place):
        return None
    parted = replace(outline, gaps=gaps)
    wedges = block.understood(syntax.WedgeLine, lambda n: wedge(n, parted, cloth))
    held = block.understood(syntax.Shoulders, lambda n: shoulders(n, parted, findings))
    slots = block.understood(syntax.SlotLine, lambda n: slot(n, parted, cloth))
    holes = block.understood(syntax.ButtonholesLine, lambda n: buttonholes(n, parted, cloth))
    zones = block.understood(syntax.ZoneLine, lambda n: zone(n, parted, cloth, room.fabrics, room.charts))
    repeats = block.understood(syntax.RepeatLine, lambda n: repeat(n, parted, findings, cloth.place))
    out = block.understood(syntax.NeedlesLine, lambda n: needles_out(n, parted, cloth))
    motifs = block.understood(syntax.MotifLine, lambda n: motif(n, parted, cloth, room.charts))
    if wedges is None or held is None or slots is None or holes is None:
        return None
    if zones is None or repeats is None or motifs is None or out is None:
        return None
    made = Piece(
        name=node.name,
        fabric=node.fabric,
        copies=(),
        mirror_of=None,
        levels=outline.levels,
        start_width=(),
        start_way=begin.way,
        start_edging=begin.edging,
        left=outline.left.runs,
        right=outline.right.runs,
        openings=tuple(g.opening for g in gaps),
        wedges=(*wedges, *held[:1]),
        end_way=ending.way,
        end_edging=ending.edging,
        origin=Origin(f"piece {node.name}", node.span),
        parity=node.parity,
        slots=slots,
        buttonholes=holes,
        zones=zones,
        repeats=repeats,
        purpose=node.purpose,
        motifs=motifs,
        needles_out=out,
    )
    sound = (
        side_by_side(slots, parted, cloth)
        and together(made.wedges, parted, cloth.place)
        and one_thing_at_a_time(made, parted, cloth.place)
    )
    sound = sound and inside_alone(made, parted, room.fabrics, room.charts, cloth.place)
    sound = sound and needles_alone(made, begin, parted, room.fabrics, cloth.place)
    ground = Ground(parted, cloth, room.fabrics, room.charts, told=room.told, edgings=room.edgings, first_rows=room.first_rows)
    return made if sound and charted(made, ground) else None
