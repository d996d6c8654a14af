"""Pieces counted by hand, put together by hand: what `glue` and the solver would say of their joins and bands."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.counted.model import SizedGarment, SizedJoin, SizedPiece, SizedSeam
from walewright.design.model import Design, EdgeName, Origin, Piece
from walewright.glue.model import EndAt, Glued, HangingLine, Place, Seam, Task

HERE = Origin("here")
OF_STITCHES = ("start", "end", "shoulder")
Pair = tuple[Place, Place | None]


def glued(design: Design, pieces: Sequence[SizedPiece], order: tuple[str, ...] = ()) -> Glued:
    """Seams edge by edge, each band on the edges it names. `order`: "seam 0", "band" by its name, ... behind the pieces."""
    by_name = {p.name: p for p in pieces}
    seams = []
    for number, join in enumerate(design.joins):
        for one, other in _pairs(join.one[0], join.other[0], by_name):
            ends = _ends(one), _ends(other, across=True) if other else ""
            seams.append(
                Seam(number, (one,), (other,) if other else (), (ends[0],), (ends[1],) if other else (), HERE)  # type: ignore[arg-type]
            )
    lines = tuple(HangingLine(b.name, 1, 1, tuple(Place(e.piece, e.edge) for e in b.along), (), "purl", HERE) for b in design.bands)
    tasks = [task for piece in design.pieces for task in _knit(piece, design)]
    tasks += [_task(name) for name in order] or [
        *(Task("band", band.name) for band in design.bands),
        *(Task("seam", number=i) for i in range(len(seams))),
    ]
    worn = tuple((owner.name, "knit") for owner in (*design.pieces, *design.bands))
    return Glued(tuple(seams), lines, (), tuple(tasks), 1, worn)  # type: ignore[arg-type]


def _knit(piece: Piece, design: Design) -> Iterator[Task]:
    yield Task("piece", piece.name)
    if piece.start_edging and design.edging(piece.start_edging).when == "after":
        yield Task("edging", piece.name)


def _task(name: str) -> Task:
    return Task("seam", number=int(name.split()[1])) if name.startswith("seam ") else Task("band", name)


def _pairs(one: EdgeName, other: EdgeName, pieces: dict[str, SizedPiece]) -> Iterator[Pair]:
    """An edge on both sides meets the other one's other side; an edge with itself is closed upon itself."""
    both = [_on_both(e, pieces[e.piece]) for e in (one, other)]
    if one == other and both[0]:
        yield Place(one.piece, f"{one.edge} left"), Place(one.piece, f"{one.edge} right")
    elif one == other:
        yield Place(one.piece, one.edge), None
    elif all(both):
        for here, there in (("right", "left"), ("left", "right")):
            yield Place(one.piece, f"{one.edge} {here}"), Place(other.piece, f"{other.edge} {there}")
    else:
        sides = [f"{e.edge} {side}" if on else e.edge for e, on, side in zip((one, other), both, ("right", "left"), strict=True)]
        yield Place(one.piece, sides[0]), Place(other.piece, sides[1])


def _on_both(edge: EdgeName, piece: SizedPiece) -> bool:
    if edge.edge == "shoulder":
        return True
    return all(edge.edge in {run.name for run in runs} for runs in (piece.left, piece.right))


def _ends(place: Place, across: bool = False) -> EndAt:
    if place.edge.partition(" ")[0] in OF_STITCHES:
        return "right" if across else "left"
    return "bottom"


def sized(join: SizedJoin, seam: Seam, pieces: Sequence[SizedPiece]) -> SizedSeam:
    """The lengths of a seam, from those of its join."""
    by_name = {p.name: p for p in pieces}
    counts = [tuple(_stitches(p, by_name[p.owner]) for p in chain) for chain in (seam.one, seam.other)]
    other = join.other_cm if seam.other else 0.0
    return SizedSeam(join.one_rows, join.other_rows, join.one_cm, other, join.easing_cm, join.longer_cm, *counts)


def _stitches(place: Place, piece: SizedPiece) -> int:
    name, _, part = place.edge.partition(" ")
    if name not in OF_STITCHES:
        return 0
    if not part:
        return piece.start
    (gap,) = piece.openings
    left = gap.first + piece.start // 2
    return left if part == "left" else piece.start - left - gap.flat


def sized_seams(design: Design, garment: SizedGarment, together: Glued) -> tuple[SizedSeam, ...]:
    """Those of all seams, in their order."""
    return tuple(sized(garment.joins[seam.join], seam, garment.pieces) for seam in together.seams)
