"""Mirror images with a block of their own: the model's statements turned over, with those of the block in their places.

Such a piece has nothing left to be mirrored later: it stands by itself, and its outline says what the model's says with left and
right exchanged. A mirror image without a block keeps its model, and with it the model's counts.
"""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.findings import Findings
from walewright.design.pieces.alike import Body, copied, merged
from walewright.record import replace
from walewright.source import syntax
from walewright.trade.sides import OTHER_SIDE, SIDES, WhichEdges


def turned_over(tree: syntax.Tree, findings: Findings) -> syntax.Tree:
    """The tree with the mirror images written out that say something of their own. Shapes are expanded before."""
    if not any(isinstance(s, syntax.PieceBlock) and _differs(s) for s in tree.statements):
        return tree
    nodes = {s.name: s for s in reversed(tree.statements) if isinstance(s, syntax.PieceBlock)}
    statements = tuple(
        _written(s, nodes, findings) if isinstance(s, syntax.PieceBlock) and _differs(s) else s for s in tree.statements
    )
    return replace(tree, statements=statements)


def _differs(piece: syntax.PieceBlock) -> bool:
    return piece.mirror_of is not None and any(not isinstance(s, syntax.TextLine | syntax.Broken) for s in piece.body)


def _written(piece: syntax.PieceBlock, nodes: Mapping[str, syntax.PieceBlock], findings: Findings) -> syntax.PieceBlock:
    """The piece as if it had been written without a model; as it was, where no model can be found or the fabric is another, which
    is reported where mirror images are made."""
    model = nodes.get(piece.mirror_of or "")
    met = {piece.name}
    turned = False
    while model is not None and model.mirror_of is not None and not _differs(model):
        if model.name in met:
            return replace(piece, body=_texts(piece.body))
        met.add(model.name)
        model, turned = nodes.get(model.mirror_of), not turned
    if model is None or model.name in met or model.fabric != piece.fabric:
        return replace(piece, body=_texts(piece.body))
    if _differs(model):
        model = _written(model, {n: p for n, p in nodes.items() if n != piece.name}, findings)
        if model.mirror_of is not None:
            return replace(piece, body=_texts(piece.body))

    body = copied(model, piece)
    if not turned:
        images = {n.image: n.name for n in reversed(list(nodes.values())) if n.image is not None}
        body = tuple(_turned(s, images) for s in body)
    return replace(
        piece,
        mirror_of=None,
        image_of=piece.mirror_of,
        parity=model.parity if piece.parity == "even" else piece.parity,
        purpose=piece.purpose or model.purpose,
        body=merged(body, piece, model.name, findings),
    )


def _texts(body: Body) -> Body:
    return tuple(s for s in body if isinstance(s, syntax.TextLine | syntax.Broken))


def _turned(statement: syntax.Statement, images: Mapping[str, str]) -> syntax.Statement:
    """The statement with left and right exchanged, as it says the same of the mirror image. What hangs on an edge of another piece
    hangs on that of its mirror image, where there is one."""
    match statement:
        case syntax.EdgeLine():
            beside = OTHER_SIDE[statement.beside] if statement.beside in SIDES else statement.beside
            which: WhichEdges = "both" if statement.which == "both" else OTHER_SIDE[statement.which]
            return replace(statement, which=which, beside=beside, places=_other_side(statement.places))
        case syntax.NeedlesLine():
            return replace(statement, places=_other_side(statement.places))
        case syntax.WedgeLine() | syntax.Shoulders():
            return replace(statement, edge="both" if statement.edge == "both" else OTHER_SIDE[statement.edge])
        case syntax.ButtonholesLine():
            return replace(statement, edge=OTHER_SIDE[statement.edge])
        case syntax.OpeningLine():
            body = tuple(_turned(s, images) for s in statement.body)
            return replace(statement, offset=_negative(statement.offset), body=body)
        case syntax.SlotLine() | syntax.ZoneLine() | syntax.MotifLine():
            return replace(statement, offset=_negative(statement.offset))
        case syntax.Start():
            along = tuple(replace(ref, piece=images.get(ref.piece, ref.piece)) for ref in reversed(statement.along))
            ends = [_negative(place) for place in (statement.to_place, statement.from_place)]
            return replace(statement, along=along, from_place=ends[0], to_place=ends[1])
        case _:
            return statement


def _other_side(places: tuple[syntax.InsidePlace, ...]) -> tuple[syntax.InsidePlace, ...]:
    return tuple(replace(p, of=OTHER_SIDE[p.of]) if p.of in SIDES else p for p in places)


def _negative(offset: syntax.Expr | None) -> syntax.Expr | None:
    if offset is None:
        return None
    return offset.value if isinstance(offset, syntax.Negative) else syntax.Negative(offset, span=offset.span)
