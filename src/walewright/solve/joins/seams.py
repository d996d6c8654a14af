"""Joins of the counted garment: what both sides come to, and whether they meet."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from math import ceil

from walewright.counted.edges import EdgeLength, above, called_on_both, edge_length, split_part
from walewright.counted.in_size import InSize
from walewright.counted.model import SizedJoin, SizedSeam
from walewright.design.model import Design, DesignInSize, EdgeJoin, EdgeName
from walewright.glue.model import Chain, GluedSizes, Seam
from walewright.record import replace
from walewright.report.model import Change, Diagnostic, diagnosed
from walewright.report.said import Amount, Fact, Said, only, said
from walewright.solve.joins.joining import easing_mm, labelled, longer_cm, near_cm, rounded, spoken
from walewright.trade.edge_names import is_top
from walewright.trade.joins import JOINS
from walewright.trade.sides import SIDES

ROUNDING_CM = 1e-6


def side_length(of: InSize, side: Sequence[EdgeName]) -> EdgeLength:
    """Rows, stitches and centimetres of one side of a join."""
    return of.length(((edge.piece, edge.edge) for edge in side), rounded(side))


def apart_cm(of: InSize, join: EdgeJoin) -> float:
    """By how much `one` is longer than it should be (negative: shorter)."""
    return _beyond(of, join, side_length(of, join.one), side_length(of, join.other))


def _beyond(of: InSize, join: EdgeJoin, one: EdgeLength, other: EdgeLength) -> float:
    return one.cm - other.cm - longer_cm(of.at, join)


def _easing_cm(of: InSize, join: EdgeJoin, one: EdgeLength, other: EdgeLength) -> float:
    """What is eased in; of a join as near as rows allow, what these leave open."""
    easing = easing_mm(of.at, join) / 10
    if easing or join.longer is None:
        return easing
    return max(1, ceil(10 * (abs(_beyond(of, join, one, other)) - ROUNDING_CM))) / 10


def sized_join(of: InSize, join: EdgeJoin) -> SizedJoin:
    """A join in one size."""
    one, other = side_length(of, join.one), side_length(of, join.other)
    along_rows = not (one.stitches or other.stitches)
    return SizedJoin(
        one=join.one,
        other=join.other,
        one_rows=one.rows if along_rows else None,
        other_rows=other.rows if along_rows else None,
        one_cm=one.cm,
        other_cm=other.cm,
        easing_cm=_easing_cm(of, join, one, other),
        origin=join.origin,
        longer_cm=longer_cm(of.at, join),
        way=join.way,
        matching=join.matching,
    )


def chain_length(of: InSize, chain: Chain) -> EdgeLength:
    """Rows, stitches and centimetres of one side of a seam."""
    return of.length((p.owner, p.edge) for p in chain)


def _stitches(of: InSize, chain: Chain) -> tuple[int, ...]:
    return tuple(chain_length(of, (place,)).stitches for place in chain)


def sized_seam(of: InSize, seam: Seam) -> SizedSeam:
    """One seam of a join in one size."""
    join = of.design.joins[seam.join]
    one, other = chain_length(of, seam.one), chain_length(of, seam.other)
    along_rows = not (one.stitches or other.stitches) and bool(seam.other)
    return SizedSeam(
        one_rows=one.rows if along_rows else None,
        other_rows=other.rows if along_rows else None,
        one_cm=one.cm,
        other_cm=other.cm,
        easing_cm=_easing_cm(of, join, one, other),
        longer_cm=longer_cm(of.at, join),
        one_stitches=_stitches(of, seam.one),
        other_stitches=_stitches(of, seam.other),
    )


def unlike_joins(design: Design) -> list[Diagnostic]:
    """A message for each join row for row or loop for loop of rows to stitches: no counts could make those equal."""
    told: list[Diagnostic] = []
    for join in design.joins:
        sizes = tuple(at.size for at in design.each_size if _counted_out(at, join))
        one, other = (_kinds(design, side) for side in (join.one, join.other))
        note = said("runs-along", one_kinds=_each_kind(one), other_kinds=_each_kind(other))
        if join.ratio is not None:
            if {one, other} != {frozenset({"rows"}), frozenset({"stitches"})}:
                told.append(unmet(join, (note,), design.sizes, design, (said("rows-to-stitches"),)))
        elif JOINS[join.way].by_loops and one | other != {"stitches"}:
            told.append(unmet(join, (note,), sizes, design, (said("sew-it", way=join.way),)))
        elif sizes and one != other:
            told.append(unmet(join, (note,), sizes, design, (said("some-easing"),)))
    return told


def _counted_out(at: DesignInSize, join: EdgeJoin) -> bool:
    """Whether rows and stitches have to be equal, and not lengths alike."""
    return JOINS[join.way].by_loops or (easing_mm(at, join) == 0 and join.longer is None)


def _kinds(design: Design, side: Sequence[EdgeName]) -> frozenset[str]:
    return frozenset(kind for edge in side for kind in _kind(design, edge))


def _each_kind(kinds: frozenset[str]) -> tuple[Said, ...]:
    return tuple(said(f"along-{kind}") for kind in sorted(kinds))


def _kind(design: Design, edge_name: EdgeName) -> tuple[str, ...]:
    if design.band(edge_name.piece) is not None:
        return ("rows",)
    piece = design.piece(edge_name.piece)
    head, part = split_part(edge_name.edge)
    if head == "start" or is_top(head) or part == "centre" or head in {s.name for s in piece.slots}:
        return ("stitches",)
    if above(head) in {*(s.name for s in piece.slots), *(o.name for o in piece.openings)}:
        return ("stitches",)
    opening = next((o for o in piece.openings if o.name == head), None)
    if opening is not None and not part and any(opening.flat):
        return ("rows", "stitches")
    return ("rows",)


def unmet_joins(design: Design, glued: GluedSizes, garments: Sequence[InSize]) -> list[Diagnostic]:
    """A message for each join with a seam whose sides do not meet, over all sizes."""
    told: list[Diagnostic] = []
    for number, join in enumerate(design.joins):
        notes: dict[Said, None] = {}
        sizes: dict[str, None] = {}
        off: dict[int, float] = {}
        for size, of in enumerate(garments):
            for seam in (s for s in glued.in_size(size).seams if s.join == number and s.other):
                one, other = chain_length(of, seam.one), chain_length(of, seam.other)
                note = _apart(of, join, one, other)
                if note is not None:
                    notes[said("in-size", size=design.sizes[size], note=note)] = None
                    sizes[design.sizes[size]] = None
                    off[size] = max(off.get(size, 0.0), abs(_beyond(of, join, one, other)))
        if notes:
            changes = (*easing_changes(design, join, off), *_height_changes(design, join, off))
            told.append(unmet(join, tuple(notes), tuple(sizes), design, changes=changes))
    return told


def uneven_edges(design: Design, garments: Sequence[InSize]) -> Iterator[Diagnostic]:
    """A message for each name given to both edges of a piece that have not the same rows there. A join that takes one for the
    other would be wrong for one of them."""
    for piece in design.pieces:
        if piece.mirror_of is not None:
            continue
        for name in sorted(called_on_both(piece)):
            rows = [tuple(edge_length(of.pieces[piece.name], f"{name} {side}").rows for side in SIDES) for of in garments]
            over = [i for i, (left, right) in enumerate(rows) if left != right]
            if not over:
                continue
            runs = [next(run for run in side if run.name == name) for side in (piece.left, piece.right)]
            yield diagnosed(
                "called-edges-differ",
                *((o.span, "called") for o in dict.fromkeys(run.origin for run in runs)),
                notes=tuple(said("rows", size=design.sizes[i], left=rows[i][0], right=rows[i][1]) for i in over),
                helps=("call-each",),
                sizes=only(design.sizes, over),
                edge=name,
                piece=piece.name,
            )


def easing_changes(design: Design, join: EdgeJoin, off: Mapping[int, float]) -> tuple[tuple[Change, ...], ...]:
    """The easing with which sides that are `off` so many cm would meet; none for what is not compared by length."""
    if not off or any(_counted_out(design.at(size), join) for size in off):
        return ()
    values = tuple((design.sizes[i], ceil(10 * apart - ROUNDING_CM) / 10) for i, apart in off.items())
    return ((Change("easing", str(_number(design, join)), "", values),),)


def _height_changes(design: Design, join: EdgeJoin, off: Mapping[int, float]) -> tuple[tuple[Change, ...], ...]:
    """Levels where the joined edges end, moved by as much as these are apart, up and down, those of the fewest pieces first."""
    found: dict[tuple[str, str], None] = {}
    for edge in (*join.one, *join.other):
        if design.band(edge.piece) is not None:
            continue
        piece = design.piece(edge.piece)
        runs = [run for side in (piece.left, piece.right) for run in side if run.name == split_part(edge.edge)[0]]
        found |= {(piece.mirror_of or piece.name, run.to_level): None for run in runs}
    changes: list[tuple[Change, ...]] = []
    for name, at in found:
        level = design.piece(name).level(at)
        for by in (1, -1) if level.most is None else ():
            values = tuple((design.sizes[i], level.height[i] + by * apart) for i, apart in off.items())
            changes.append((Change("height", name, at, values, said("height", level=at, piece=name)),))
    return tuple(changes)


def _number(design: Design, join: EdgeJoin) -> int:
    return next(n for n, other in enumerate(design.joins) if other.origin == join.origin)


def sides_told(of: InSize, join: EdgeJoin) -> Said:
    """What both sides of a join come to, and how far they are apart: "sleeve cap 40 rows, 12.1 cm, back armhole 50 rows, ..."."""
    one, other = side_length(of, join.one), side_length(of, join.other)
    return said(
        "sides",
        one=spoken(join.one),
        one_count=counted(one),
        one_cm=Amount(one.cm),
        other=spoken(join.other),
        other_count=counted(other),
        other_cm=Amount(other.cm),
        difference=_difference(of, join, one, other),
        longer=longer_cm(of.at, join),
    )


def _difference(of: InSize, join: EdgeJoin, one: EdgeLength, other: EdgeLength) -> Said:
    """ "6 rows apart", or "the first 1.4 cm longer"."""
    rows, stitches = abs(one.rows - other.rows), abs(one.stitches - other.stitches)
    if _counted_out(of.at, join):
        return said("apart", count=counted(EdgeLength(rows, stitches, 0.0)))
    return said("first-longer", cm=Amount(abs(one.cm - other.cm)), longer=one.cm >= other.cm)


def unmet(
    join: EdgeJoin,
    notes: tuple[Said, ...],
    sizes: tuple[str, ...],
    design: Design,
    helps: tuple[Said, ...] = (),
    changes: tuple[tuple[Change, ...], ...] = (),
) -> Diagnostic:
    """The message that the sides of a join do not meet."""
    told = diagnosed(
        "join-does-not-meet",
        (join.origin.span, "joined-here"),
        *labelled(design, join),
        notes=notes,
        helps=helps or ("change-levels",),
        sizes=only(design.sizes, sizes),
        one=spoken(join.one),
        other=spoken(join.other),
    )
    return replace(told, changes=changes)


def allowed_cm(at: DesignInSize, join: EdgeJoin) -> float:
    """How far off the wanted difference of lengths a join may be."""
    return easing_mm(at, join) / 10 or near_cm(at.design, join)


def _apart(of: InSize, join: EdgeJoin, one: EdgeLength, other: EdgeLength) -> Said | None:
    lengths: dict[str, Fact] = {"one_cm": Amount(one.cm), "other_cm": Amount(other.cm)}
    if join.ratio is not None:
        rows, stitches = join.ratio
        if abs(stitches * (one.rows + other.rows) - rows * (one.stitches + other.stitches)) <= stitches:
            return None
        return said("ratio-against", one_count=counted(one), other_count=counted(other), rows=rows, stitches=stitches)
    if _counted_out(of.at, join):
        if (one.rows, one.stitches) == (other.rows, other.stitches):
            return None
        counts = {"one_count": counted(one), "other_count": counted(other)}
        return said("counts-against", **lengths, **counts, difference=_difference(of, join, one, other))
    longer = longer_cm(of.at, join)
    apart = abs(_beyond(of, join, one, other))
    allowed = allowed_cm(of.at, join)
    if apart <= allowed + ROUNDING_CM:
        return None
    if longer:
        return said("not-as-longer", **lengths, found=Amount(one.cm - other.cm), longer=longer, allowed=Amount(allowed))
    return said("not-eased", **lengths, apart=Amount(apart), allowed=allowed)


def counted(length: EdgeLength) -> Said:
    """ "98 rows", "40 stitches", or both."""
    if length.rows and length.stitches:
        return said("rows-and-stitches", rows=length.rows, stitches=length.stitches)
    if length.rows:
        return said("rows", rows=length.rows)
    return said("stitches", stitches=length.stitches) if length.stitches else said("nothing")
