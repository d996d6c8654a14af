"""The garment on the bed beside the garment glued: seams and lines, sides, what stayed free, and on which side folds lie."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby

from walewright.bed import BedResult, KnitFabric
from walewright.counted.model import SizedGarment
from walewright.design.model import Design, Piece
from walewright.glue.model import OPPOSITE, Chain, EndAt, EndsSewn, Glued, HangingLine, Place, Seam, right_side
from walewright.knit.operations import Join
from walewright.report.said import Fact, Said, said
from walewright.trade.edge_names import part_of_edge
from walewright.trade.edgings import EDGINGS

SeamWays = tuple["Walk", "Walk"]
"""Both sides of a seam."""

Walk = tuple[tuple[tuple[str, str, int], ...], str]
"""((piece, edge, copy), ...) along one side of a seam or a line, and the end of the first edge at which it begins."""


def left_free(design: Design, garment: SizedGarment, glued: Glued, result: BedResult) -> Iterator[Said]:
    """Edges of pieces that are free in one of the two and not in the other, each with where it is free. An opening that parts the
    piece without a stitch between has no centre."""
    pieces = {p.name: p for p in design.pieces}
    pointed = {(p.name, f"{o.name} centre") for p in garment.pieces for o in p.openings if o.flat == 0}
    wanted = {
        (place.owner, place.edge, place.copy)
        for opening in glued.openings
        for place in opening.edges
        if place.owner in pieces
        and place.edge
        and pieces[place.owner].strip_at(place.edge) is None
        and not _edged(pieces[place.owner], place.edge)
        and (place.owner, place.edge) not in pointed
    }
    # Ends of edgings are sewn together in the seam that they lie in line with.
    free = ((piece, _shoulder(edge), copy) for piece, edge, copy in result.free_edges if piece in pieces)
    found = {(piece, edge, copy) for piece, edge, copy in free if pieces[piece].strip_at(edge) is None}
    known = {(p, e) for p, e, _ in wanted}
    for piece, edge, copy in sorted(wanted ^ found):
        if (piece, edge, copy) in wanted or (piece, edge) in known or edge not in ("end", "start"):
            yield said("edge-free", edge=edge, piece=piece, glued=(piece, edge, copy) in wanted)


def _edged(piece: Piece, edge: str) -> bool:
    """Whether the edge is that of an edging at the start, which is knitted on or before it."""
    return edge == "start" and piece.start_edging is not None


def _shoulder(edge: str) -> str:
    """The bed calls the last rows of a parted piece its end or its shoulder, as they were named when they went on waste."""
    of = part_of_edge(edge)
    return f"shoulder {of.part}" if of.name == "end" and of.part in ("left", "right") else edge


def folds(design: Design, glued: Glued, result: BedResult) -> Iterator[Said]:
    """Hems that are not folded, or whose inside comes to lie at the side that is worn outside."""
    ended = {piece.name: piece.end_edging or "" for piece in design.pieces}
    worn = dict(glued.worn)
    for fabric in result.fabrics:
        made = ((_edging_in(design, fabric.name), fabric.folded), (ended.get(fabric.name, ""), fabric.folded_above))
        for edging, folded in made:
            if not edging or not EDGINGS[design.edging(edging).kind].folded:
                continue
            # An edging hung on at a start is a block of its own, which lies as its own fabric is worn.
            inside = "front" if worn.get(fabric.name, right_side(design, design.edging(edging).fabric)) == "knit" else "behind"
            if not folded:
                yield said("not-folded", fabric=fabric.name)
            elif folded != inside:
                yield said("folded", fabric=fabric.name, front=folded == "front")


def _edging_in(design: Design, block: str) -> str:
    """The edging that a block has at its beginning, or is."""
    name = _edging_of(design, block)
    after = bool(name) and design.edging(name).when == "after"
    return "" if after and any(piece.name == block for piece in design.pieces) else name


def _edging_of(design: Design, block: str) -> str:
    for band in design.bands:
        if band.name == block:
            return band.edging
    for piece in design.pieces:
        if piece.start_edging and block in (piece.name, f"{piece.name} {piece.start_edging}"):
            return piece.start_edging
    return ""


# ----------------------------------------------------------------- seams


def otherwise_joined(design: Design, glued: Glued, result: BedResult) -> Iterator[Said]:
    """Seams that are in the one and not in the other, or twice, whichever side and end they are told from."""
    copies = {fabric.name: fabric.copies for fabric in result.fabrics}
    ways = [*map(_ways, glued.seams), *map(_ways_of_ends, glued.ends)]
    wanted = Counter(map(min, ways))
    told = {way: min(same) for same in ways for way in same}
    sewn = (seam for task in result.done if isinstance(task, Join) for seam in _seams_of(task, copies))
    linked = (seam for fabric in result.fabrics if fabric.hung_over for seam in _linked(fabric))
    made = Counter(told.get(seam, seam) for seam in (*sewn, *linked))
    for seam in (wanted - made).elements():
        yield said("not-joined", **_sides(seam))
    for seam in (made - wanted).elements():
        yield said("joined-otherwise", **_sides(seam))
    yield from _otherwise_sewn_on(design, glued, result, told, copies)


def _otherwise_sewn_on(
    design: Design, glued: Glued, result: BedResult, told: Mapping[SeamWays, SeamWays], copies: dict[str, int]
) -> Iterator[Said]:
    """Ends of strips that a seam goes on along in the one and not in the other. Seams that are told together have theirs told
    together: those of one join, and those one after the other with which the same strips are named."""
    along: dict[SeamWays, frozenset[tuple[str, str]]] = {}
    of_join: dict[int, frozenset[tuple[str, str]]] = {}
    number: dict[SeamWays, int] = {}
    for seam in glued.seams:
        key = min(_ways(seam))
        along[key] = along.get(key, frozenset()) | {_strip(design, place) for ends in seam.over for place in ends}
        number[key] = seam.join
        of_join[seam.join] = of_join.get(seam.join, frozenset()) | along[key]
    for over, tasks in groupby((done for done in result.done if isinstance(done, Join)), key=lambda task: task.over):
        keys = [told.get(made, made) for task in tasks for made in _seams_of(task, copies)]
        sewn = {(piece, edging) for piece, edging, _ in over}
        there = frozenset[tuple[str, str]]().union(*(of_join.get(number.get(key, -1), frozenset()) for key in keys))
        for key in keys:
            for piece, edging in sorted(along.get(key, frozenset()) - sewn):
                yield said("ends-not-sewn", piece=piece, edging=edging, **_sides(key))
            for piece, edging in sorted(sewn - there):
                yield said("ends-sewn-otherwise", piece=piece, edging=edging, **_sides(key))


def _strip(design: Design, place: Place) -> tuple[str, str]:
    """A band, or a piece and its edging, as a seam tells them."""
    if design.band(place.owner) is not None:
        return place.owner, ""
    piece = design.piece(place.owner)
    at = piece.strip_at(place.edge)
    return piece.name, next(name for name, where in piece.strips if where == at)


def _ways(seam: Seam) -> tuple[tuple[Walk, Walk], ...]:
    """Told from either end, and either side first."""
    one, other = _walk(seam.one, seam.one_begins), _walk(seam.other, seam.other_begins)
    if not seam.other:
        return (((one[0], ""), other),)
    back, beside = _back(seam.one, seam.one_begins), _back(seam.other, seam.other_begins)
    return (one, other), (other, one), (back, beside), (beside, back)


def _ways_of_ends(ends: EndsSewn) -> tuple[tuple[Walk, Walk], ...]:
    pairs = ((ends.one, ends.other), (ends.other, ends.one))
    return tuple((way((a,), ("bottom",)), way((b,), ("bottom",))) for way in (_walk, _back) for a, b in pairs)


def _walk(chain: Chain, begins: Sequence[EndAt]) -> Walk:
    """An edge closed upon itself has no end to begin at."""
    return tuple((p.owner, p.edge, p.copy) for p in chain), begins[0] if begins else ""


def _back(chain: Chain, begins: Sequence[EndAt]) -> Walk:
    return _walk(chain[::-1], tuple(OPPOSITE[end] for end in begins[::-1]))


def _seams_of(join: Join, copies: dict[str, int]) -> Iterator[tuple[Walk, Walk]]:
    """One at each copy, where none is named."""
    times = max(1 if copy else copies[piece] for piece, _, copy in (*join.one, *join.other))
    for number in range(1, times + 1):
        one, other = (
            (tuple((p, edge, copy or min(number, copies[p])) for p, edge, copy in side), end)
            for side, end in zip((join.one, join.other), join.ends, strict=True)
        )
        yield one, other


def _linked(fabric: KnitFabric) -> Iterator[tuple[Walk, Walk]]:
    for number in range(1, fabric.copies + 1):
        one, other = (
            (tuple((h.piece, _shoulder(h.label), h.copy_for(number, fabric.copies)) for h in line), line[0].left_end)
            for line in (fabric.hung, fabric.hung_over)
        )
        yield one, other


def _sides(seam: tuple[Walk, Walk]) -> dict[str, Fact]:
    one, other = (" + ".join(f"{piece} {edge}" for piece, edge, _ in walk) for walk, _ in seam)
    return {"one": one, "other": other}


# ----------------------------------------------------------------- lines and sides


def otherwise_hung(design: Design, glued: Glued, result: BedResult) -> Iterator[Said]:
    """Bands and pieces that hang on other edges, in another order or with another side to the knitter than they are glued."""
    fabrics = {fabric.name: fabric for fabric in result.fabrics}
    worn = dict(glued.worn)
    for owner in dict.fromkeys(line.owner for line in glued.lines):
        fabric = fabrics.get(owner)
        if fabric is None or Counter(_hung(fabric, fabrics)) != Counter(_line(line, fabrics) for line in glued.lines_of(owner)):
            yield said("hangs-elsewhere", hung=owner)
    for fabric in result.fabrics:
        if fabric.hung_over:
            first = fabric.hung[0]
            if first.facing != worn[first.piece]:
                yield said("linked-wrong-sides", piece=first.piece, other_piece=fabric.hung_over[0].piece)
        elif fabric.hung and not glued.lines_of(fabric.name):
            yield said("hangs-on-nothing-glued", hung=fabric.name)


def _hung(fabric: KnitFabric, fabrics: dict[str, KnitFabric]) -> Iterator[tuple[Walk, str]]:
    for number in range(1, fabric.copies + 1):
        if fabric.hung:
            chain = tuple((h.piece, _on_the_bed(fabrics[h.piece], h.label), h.copy_for(number, fabric.copies)) for h in fabric.hung)
            yield (chain, fabric.hung[0].left_end), fabric.hung[0].facing


def _line(line: HangingLine, fabrics: dict[str, KnitFabric]) -> tuple[Walk, str]:
    """Without edges that this size has not: a neck may have no flat part in some."""
    there = [(p, end) for p, end in zip(line.along, line.left_ends, strict=True) if _knitted(fabrics, p.owner, p.edge)]
    chain = tuple((p.owner, _on_the_bed(fabrics[p.owner], p.edge), p.copy) for p, _ in there)
    return (chain, there[0][1] if there else ""), line.facing


def _knitted(fabrics: dict[str, KnitFabric], piece: str, edge: str) -> bool:
    """Whether a piece has an edge, itself or on what hangs from its first row."""
    own = (fabrics[piece], *(fabric for fabric in fabrics.values() if fabric.below == piece))
    return any(fabric.edge(edge) for fabric in own)


def _on_the_bed(fabric: KnitFabric, edge: str) -> str:
    """An edge on one side only goes by its name alone as well."""
    found = fabric.edge(edge)
    return edge if len(found) != 1 else f"{found[0].name} {found[0].part}"


def otherwise_out(design: Design, glued: Glued, result: BedResult) -> Iterator[Said]:
    """Of all that hangs together, pieces that come to lie with the side inside that is to be worn out; what falls apart."""
    worn = dict(glued.worn)
    parts: dict[tuple[str, int], set[bool]] = {}
    for (name, _), (part, turned) in result.sides:
        edging = _edging_of(design, name)
        face = worn.get(name) or (right_side(design, design.edging(edging).fabric) if edging else None)
        if face is not None:
            parts.setdefault(part, set()).add(turned == (face == "purl"))
    for part, ways in parts.items():
        if len(ways) > 1:
            yield said("right-side-in", piece=part[0])
    if len(parts) != glued.parts:
        yield said("falls-apart", parts=len(parts), glued=glued.parts)
