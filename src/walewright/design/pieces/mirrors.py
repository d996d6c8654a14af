"""Mirror images: pieces that are another's, turned over."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from walewright.design.findings import Findings
from walewright.design.model import CountPerSize, EdgeName, EdgeRun, Opening, Origin, PerSize, Piece
from walewright.record import replace
from walewright.source import syntax
from walewright.trade.edge_names import mirrored
from walewright.trade.sides import OTHER_SIDE, SIDES


def put_mirror(
    node: syntax.PieceBlock,
    nodes: Mapping[str, syntax.PieceBlock],
    made: dict[str, Piece | None],
    checked: Callable[[syntax.PieceBlock], CountPerSize],
    findings: Findings,
) -> None:
    """Puts the mirror image, and every mirror image it is led back by, into `made`; `checked` tells what is wrong with a
    piece's first line, and says how often it is knitted."""
    chain = [node]
    while (of := chain[-1].mirror_of) is not None and of in nodes and of not in made:
        if nodes[of] in chain:
            findings.report("mirror-ring", (chain[-1].span, "mirror"), helps=("in-full",), piece=of)
            made.update(dict.fromkeys(n.name for n in chain))
            return
        chain.append(nodes[of])
    for link in reversed(chain):
        made[link.name] = _image(link, nodes, made, checked, findings)


def _image(
    node: syntax.PieceBlock,
    nodes: Mapping[str, syntax.PieceBlock],
    made: Mapping[str, Piece | None],
    checked: Callable[[syntax.PieceBlock], CountPerSize],
    findings: Findings,
) -> Piece | None:
    of = node.mirror_of or ""
    model = findings.look_up("piece", of, node.span, made)
    if of in nodes and nodes[of].fabric != node.fabric:
        findings.report(
            "mirror-other-fabric",
            (node.span, "own"),
            (nodes[of].span, "model"),
            helps=("same-fabric",),
            fabric=nodes[of].fabric,
            own_fabric=node.fabric,
        )
        return None
    copies = checked(node)
    return replace(_turned(model, node, copies), start_along=_mirrored_edges(model, nodes, made)) if model is not None else None


def _turned(model: Piece, node: syntax.PieceBlock, copies: CountPerSize) -> Piece:
    def own(origin: Origin) -> Origin:
        # The path is the new piece's, the span that of the statement that shaped it.
        return replace(origin, path=origin.path.replace(f"piece {model.name}", f"piece {node.name}", 1))

    def runs(of: tuple[EdgeRun, ...]) -> tuple[EdgeRun, ...]:
        return tuple(replace(r, origin=own(r.origin), lines=tuple(line.turned for line in r.lines)) for r in of)

    def gap(of: Opening) -> Opening:
        return replace(of, centre=_turned_about(of.centre), left=runs(of.right), right=runs(of.left), origin=own(of.origin))

    return replace(
        model,
        name=node.name,
        copies=copies,
        mirror_of=model.name,
        start_origin=None,
        levels=tuple(replace(level, origin=own(level.origin)) for level in model.levels),
        left=runs(model.right),
        right=runs(model.left),
        openings=tuple(gap(o) for o in model.openings),
        wedges=tuple(
            replace(w, edge=w.edge if w.edge == "both" else OTHER_SIDE[w.edge], name=_other_words(w.name), origin=own(w.origin))
            for w in model.wedges
        ),
        slots=tuple(replace(s, centre=_turned_about(s.centre), origin=own(s.origin)) for s in model.slots),
        buttonholes=tuple(replace(b, edge=OTHER_SIDE[b.edge], origin=own(b.origin)) for b in model.buttonholes),
        zones=tuple(replace(z, centre=_turned_about(z.centre), origin=own(z.origin)) for z in model.zones),
        repeats=tuple(replace(r, origin=own(r.origin)) for r in model.repeats),
        # What a chart draws is not turned over: two fronts with one lace have it leaning the same way.
        motifs=tuple(replace(m, centre=_turned_about(m.centre), origin=own(m.origin)) for m in model.motifs),
        needles_out=tuple(
            replace(n, places=tuple(_turned_about(p) for p in n.places), turned=not n.turned, origin=own(n.origin))
            for n in model.needles_out
        ),
        purpose=node.purpose or model.purpose,
        origin=Origin(f"piece {node.name}", node.span),
    )


def _other_words(name: str) -> str:
    first, _, rest = name.partition(" ")
    return f"{OTHER_SIDE[first]} {rest}" if rest and first in SIDES else name


def _turned_about(centre: PerSize) -> PerSize:
    # Adding nought turns -0.0 into 0.0.
    return tuple(-c + 0.0 for c in centre)


def _mirrored_edges(model: Piece, nodes: Mapping[str, syntax.PieceBlock], made: Mapping[str, Piece | None]) -> tuple[EdgeName, ...]:
    """A mirror image hangs on the mirror images of what its model hangs on, on the other side where a piece has none of its own,
    and in the other order."""
    images = {n.image: n.name for n in reversed(list(nodes.values())) if n.image is not None}
    return tuple(
        EdgeName(images.get(e.piece, e.piece), mirrored(e.edge, _tops(made.get(e.piece)))) for e in reversed(model.start_along)
    )


def _tops(piece: Piece | None) -> int:
    """In how many parts the last row of a piece is."""
    return 1 + sum((o.to_level or piece.levels[-1].name) == piece.levels[-1].name for o in piece.openings) if piece else 1
