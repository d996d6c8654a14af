"""The garment glued: what meets what, what hangs on what and in which order, what stays open.

A piece is a disc that lies with the side up that is worn inside; its boundary is a ring of edges walked clockwise. Two edges that
are put together meet in opposite directions, so that no direction has to be said of a join. Nothing here is measured: lengths are
those of the counts. What holds here holds in every size.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.design.model import Band, Design, EdgeName, Origin
from walewright.record import record, replace
from walewright.report.said import Said, said
from walewright.trade.edge_names import part_of_edge
from walewright.trade.sides import OTHER_SIDE, SIDES

Face = Literal["purl", "knit"]
"""A side of the fabric. On the bed the purl side is to the knitter."""

EndAt = Literal["bottom", "top", "left", "right"]
"""An end of an edge: of rows the bottom or the top one, of stitches the left or the right one, as the piece hung on the bed."""


@record
class Place:
    """An edge of one copy of a piece: "side left", "neck centre", "end". `owner` is a piece, or a band (then `edge` is "rim",
    "first end" or "last end"). `copy` counts from 1, of `copies`."""

    owner: str
    edge: str
    copy: int = 1
    copies: int = 1
    cut: int = 0
    """Which stretch of an edge that a band is parted within, as `EdgeName.cut`."""

    @property
    def text(self) -> str:
        return f"{self.owner} {self.edge}"


Chain = tuple[Place, ...]

OPPOSITE: dict[EndAt, EndAt] = {"bottom": "top", "top": "bottom", "left": "right", "right": "left"}
"""The other end of an edge."""


@record
class Seam:
    """Two chains of edges put together. `one` and `other` are both walked in the same direction along the seam.

    Without the `other` it is one edge closed upon itself: folded in half, or drawn up.

    `join` numbers the join of the design. `one_begins[i]` is the end at which the seam comes to `one[i]`, and so of `other`.
    `over`: the ends of strips (of bands and edgings) along which the seam goes on beyond its beginning and beyond its end, though
    the join does not name them."""

    join: int
    one: Chain
    other: Chain
    one_begins: tuple[EndAt, ...]
    other_begins: tuple[EndAt, ...]
    origin: Origin
    over: tuple[Chain, Chain] = ((), ())
    beyond: bool = False
    """Whether one side alone goes on along them, and is longer by as much."""


def bare(design: Design, seam: Seam) -> Seam:
    """The seam without the ends of bands and edgings that it goes along: the edges of its pieces alone."""

    def kept(chain: Chain, begins: tuple[EndAt, ...]) -> tuple[Chain, tuple[EndAt, ...]]:
        pairs = [(p, b) for p, b in zip(chain, begins, strict=True) if design.strip(p.owner, p.edge) is None]
        return tuple(p for p, _ in pairs), tuple(b for _, b in pairs)

    (one, one_begins), (other, other_begins) = kept(seam.one, seam.one_begins), kept(seam.other, seam.other_begins)
    return replace(seam, one=one, one_begins=one_begins, other=other, other_begins=other_begins, over=((), ()))


@record
class HangingLine:
    """Edges hung on the bed side by side, from the left needle to the right: of a band or of a piece begun along them.

    `left_ends[i]` is the end of `along[i]` that hangs at the left. `needs` are the seams (by number) that make neighbours meet,
    `spares` those that would close the line to a ring: they are made afterwards."""

    owner: str
    copy: int
    copies: int
    along: Chain
    left_ends: tuple[EndAt, ...]
    facing: Face
    origin: Origin
    needs: tuple[int, ...] = ()
    spares: tuple[int, ...] = ()


@record
class EndsSewn:
    """Two ends of strips that meet and are in no seam, sewn together: of a band knitted in parts, or where one of them is knitted
    after the seam that they lie in line with. Each is a place ("last end")."""

    one: Place
    other: Place

    def origin(self, design: Design) -> Origin:
        """The statement that they come from: the first band among them, else the piece of the first."""
        band = design.band(self.one.owner) or design.band(self.other.owner)
        return band.origin if band is not None else design.piece(self.one.owner).origin


@record
class WornOpening:
    """A ring of edges that nothing is joined to: what is left of the boundary of the garment."""

    edges: Chain


TaskKind = Literal["piece", "edging", "band", "seam", "ends", "step"]


@record
class Task:
    """One thing to do: knit a piece (with all its copies), the edging on its start or a band, make a seam, sew ends of strips
    together, or a step of the author's. `number` is that of the seam in `Glued.seams`, of the ends in `Glued.ends` or of the step
    in `Design.making_up`."""

    kind: TaskKind
    name: str = ""
    number: int = -1


@record
class Glued:
    seams: tuple[Seam, ...]
    lines: tuple[HangingLine, ...]
    openings: tuple[WornOpening, ...]
    order: tuple[Task, ...]
    parts: int
    """Parts that hang together; two gloves are two."""
    worn: tuple[tuple[str, Face], ...]
    """The side of each piece and band that is worn outside."""
    ends: tuple[EndsSewn, ...] = ()

    def lines_of(self, owner: str) -> tuple[HangingLine, ...]:
        """The lines on which a band, or a piece begun along edges, is hung: one a copy."""
        return tuple(line for line in self.lines if line.owner == owner)


UNGLUED = Glued((), (), (), (), 0, ())


@record
class GluedSizes:
    """The garment in all its sizes: what holds for each of the `groups`, which are put together alike, and the numbers of its
    `sizes`. One group, where every piece is knitted equally often in all of them."""

    groups: tuple[Glued, ...]
    sizes: tuple[tuple[int, ...], ...]

    def in_size(self, size: int) -> Glued:
        """How size number `size` is put together."""
        return next(glued for glued, sizes in zip(self.groups, self.sizes, strict=True) if size in sizes)


# ----------------------------------------------------------------- parts of a band


def runs_along(design: Design, glued: Glued, band: Band) -> Said | None:
    """Where a part of a band that is knitted in parts runs: "right front to centre back", "back neck"; None of a whole band, and
    of parts that are alike."""
    parts = [part.name for part in design.bands if part.part_of == band.part_of]
    lines = glued.lines_of(band.name)
    if not band.part_of or len(parts) != band.parts or not lines:
        return None
    along = lines[0].along
    first = _cut_at(design, glued, along[0], lines[0].left_ends[0])
    last = _cut_at(design, glued, along[-1], OPPOSITE[lines[0].left_ends[-1]])
    if first is None and last is None and len({place.owner for place in along}) == 1:
        name = band.along[0]
        return said("runs/edge", piece=name.piece, edge=name.edge) if len(band.along) == 1 else said("runs/piece", piece=name.piece)
    ends = (first or said("runs/piece", piece=along[0].owner), last or said("runs/piece", piece=along[-1].owner))
    return said("runs/to", first=ends[0], last=ends[1])


def _cut_at(design: Design, glued: Glued, place: Place, end: EndAt) -> Said | None:
    """What is there, where the line was parted within an opening or an edge at that end of a place; None where the edge ends."""
    of = part_of_edge(place.edge)
    cut = next((c for c in design.cuts if (c.piece, c.edge) == (place.owner, place.edge)), None)
    if cut is not None and place.cut and place.cut != (1 if end in ("bottom", "left") else len(cut.at[0]) + 1):
        centre = said("runs/centre", piece=place.owner)
        return centre if cut.middle else said("runs/within", piece=place.owner, edge=place.edge)
    # At the foot of a v, which has no stitches of its own there.
    opening = any(own.name == of.name for piece in design.pieces if piece.name == place.owner for own in piece.openings)
    if opening and of.part in SIDES and end == "bottom":
        foot = {line.along[n] for line in glued.lines for n in (0, -1)}
        other = replace(place, edge=f"{of.name} {OTHER_SIDE[of.part]}")
        names = {p.edge for line in glued.lines for p in line.along if p.owner == place.owner}
        return said("runs/centre", piece=place.owner) if other in foot and f"{of.name} centre" not in names else None
    return None


# ----------------------------------------------------------------- which side faces the knitter

_TURNED: dict[Face, Face] = {"purl": "knit", "knit": "purl"}


def right_side(design: Design, fabric: str) -> Face:
    """The side of a fabric that is worn outside."""
    return "purl" if design.fabric(fabric).right_side == "purl" else "knit"


def facing(design: Design, worn: Face, fabric: str, said: str = "") -> Face:
    """The side of a piece, worn with its side `worn` out, that is to the knitter while `fabric` is knitted on. What is knitted
    always has its purl side to the knitter. `said`: "right" or "wrong" side facing, in the author's words."""
    if said:
        return worn if said == "right" else _TURNED[worn]
    return worn if right_side(design, fabric) == "purl" else _TURNED[worn]


def worn_of(design: Design, edges: tuple[EdgeName, ...], out: Mapping[str, Face]) -> Face:
    """The side out of the pieces that these edges belong to; `out`: of those that were hung on others."""
    name = edges[0].piece
    return out.get(name) or right_side(design, design.piece(name).fabric)


def start_facing(design: Design, piece: str) -> Face:
    """The side of a piece to the knitter while its first row is rehung for the edging at its start."""
    own = design.piece(piece)
    assert own.start_edging is not None
    return facing(design, right_side(design, own.fabric), design.edging(own.start_edging).fabric)
