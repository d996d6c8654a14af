"""Loops round the garment: from a chord of one piece across its seams to the next, until the loop is closed or comes to an edge
that nothing is joined to.

A chord runs across a piece at a row, from edge to edge, or up along a wale, from the start to the top: so a piece knitted sideways
is measured by its rows. Where a seam is crossed, the same share of it is come to on the other side.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Literal

from walewright.counted.needles import tops
from walewright.design.model import Design
from walewright.fit.cloth import SHOULDERS, Cloth, RowEdge
from walewright.glue.model import Chain, EndAt, Glued, Place
from walewright.record import record
from walewright.trade.edge_names import top_between
from walewright.trade.joins import JOINS
from walewright.trade.sides import EdgeSide

MOST_CHORDS = 200


@record
class Bond:
    """An edge in a glueing: its own chain, where it is in it, and the chain across, both walked in the same direction. `sewn`: a
    seam that takes a stitch of each side. `strip`: the band that is hung here, else empty."""

    own: Chain
    begins: Sequence[EndAt]
    at: int
    across: Chain
    across_begins: Sequence[EndAt]
    sewn: bool
    strip: str = ""


PlaceKey = tuple[str, str, int]
"""(owner, edge, copy)"""


def key(place: Place) -> PlaceKey:
    """One edge of one copy."""
    return place.owner, place.edge, place.copy


def bonds(design: Design, glued: Glued) -> dict[PlaceKey, Bond]:
    """What every edge is put together with."""
    found: dict[PlaceKey, Bond] = {}
    for seam in glued.seams:
        sewn = JOINS[design.joins[seam.join].way].by_needle
        sides = ((seam.one, seam.one_begins), (seam.other, seam.other_begins))
        for (own, begins), (across, across_begins) in (sides, sides[::-1]):
            for at, place in enumerate(own):
                found[key(place)] = Bond(own, begins, at, across, across_begins, sewn)
    bands = {b.name for b in design.bands}
    for line in glued.lines:
        begun: Chain = (Place(line.owner, "start", line.copy, line.copies),)
        strip = line.owner if line.owner in bands else ""
        for at, place in enumerate(line.along):
            found[key(place)] = Bond(line.along, line.left_ends, at, across=begun, across_begins=("left",), sewn=False, strip=strip)
        found[key(begun[0])] = Bond(begun, ("left",), 0, line.along, line.left_ends, False)
    return found


def walker(design: Design, glued: Glued, own: Cloth) -> Walker:
    """Who follows loops round the garment in one size."""
    ring = {key(p): number for number, opening in enumerate(glued.openings) for p in opening.edges}
    return Walker(own, glued, bonds(design, glued), ring, len(glued.openings) <= glued.parts)


@record
class Chord:
    """`kind` "across" (at row `at`), "up" (at `at` of the width, from 0 at the left to 1) or "strip" (through a band)."""

    owner: str
    copy: int
    kind: Literal["strip", "across", "up"]
    at: float
    cm: float


@record
class LoopEnd:
    """A free edge that a loop comes to, and the edge of the piece there: where that has a band, the one that it hangs on."""

    edge: PlaceKey
    beneath: PlaceKey


@record
class WornLoop:
    """`ends` are the edges that the loop comes to, None where it is closed. `taken` is what sewn seams take of it."""

    chords: tuple[Chord, ...]
    ends: tuple[LoopEnd, LoopEnd] | None
    taken: float

    @property
    def cm(self) -> float:
        return sum(c.cm for c in self.chords) - self.taken

    @property
    def discs(self) -> frozenset[tuple[str, int]]:
        """The copies of pieces that it runs over, bands left out."""
        return frozenset((c.owner, c.copy) for c in self.chords if c.kind != "strip")


@record
class Exit:
    """Where a chord ends: an edge, and the share of it counted from its bottom or left end."""

    edge: PlaceKey
    share: float


@record
class Walker:
    cloth: Cloth
    glued: Glued
    """How the garment is put together in this size."""
    bonds: dict[PlaceKey, Bond]
    ring: dict[PlaceKey, int]
    """Free edge -> number of the opening that it belongs to."""
    flat: bool
    """Each part has one opening: a blanket, a scarf, a shawl."""

    # -------------------------------------------------------------- loops

    def across(self, piece: str, copy: int, row: int) -> WornLoop | None:
        """The loop that runs across `piece` in row `row`; None where it cannot be followed."""
        return self._loop(self._across(piece, copy, row))

    def along(self, piece: str, copy: int, edge: RowEdge) -> WornLoop | None:
        """The loop that runs along a row edge of a piece knitted sideways."""
        return self._loop(self._up(piece, copy, 0.0 if edge.side == "left" else 1.0))

    def _loop(self, first: tuple[Chord, Exit, Exit] | None) -> WornLoop | None:
        if first is None:
            return None
        chord, left, right = first
        forth = self._walk(chord, right)
        if forth is None:
            return None
        chords, end, taken = forth
        if end is None:
            return WornLoop((chord, *chords), None, taken)
        back = self._walk(chord, left)
        if back is None or back[1] is None:
            return None
        return WornLoop((*reversed(back[0]), chord, *chords), (back[1], end), taken + back[2])

    def _walk(self, first: Chord, leaving: Exit) -> tuple[list[Chord], LoopEnd | None, float] | None:
        """On from the end of a chord: (chords, the free edge at the end or None if the first chord is come to again, taken)."""
        chords: list[Chord] = []
        taken, last = 0.0, first
        for _ in range(MOST_CHORDS):
            bond = self.bonds.get(leaving.edge)
            if bond is None:
                return chords, LoopEnd(leaving.edge, leaving.edge), taken
            if bond.strip:
                copy = bond.across[0].copy
                chords.append(Chord(bond.strip, copy, "strip", 0.0, self.cloth.adds(bond.strip)))
                return chords, LoopEnd((bond.strip, "rim", copy), leaving.edge), taken
            entered = self._cross(bond, leaving.share)
            made = self._enter(entered) if entered is not None else None
            if made is None:
                return None
            chord, leaving = made
            if bond.sewn:
                taken += self._takes(last) + self._takes(chord)
            if (chord.owner, chord.copy, chord.kind) == (first.owner, first.copy, first.kind):
                return chords, None, taken
            chords.append(chord)
            last = chord
        return None

    def _takes(self, chord: Chord) -> float:
        """A seam takes one stitch of a row edge, one row of a first or last row."""
        return self.cloth.stitch(chord.owner) if chord.kind == "across" else self.cloth.row_height(chord.owner)

    # -------------------------------------------------------------- over a seam

    def _cross(self, bond: Bond, share: float) -> Exit | None:
        """The same place on the other side of a seam."""
        own = [self.cloth.length(p) for p in bond.own]
        across = [self.cloth.length(p) for p in bond.across]
        if None in own or None in across:
            return None
        before = [length or 0.0 for length in own[: bond.at]]
        whole = sum(length or 0.0 for length in own)
        inside = share if bond.begins[bond.at] in ("bottom", "left") else 1 - share
        way = (sum(before) + inside * (own[bond.at] or 0.0)) / whole if whole else 0.0
        rest = way * sum(length or 0.0 for length in across)
        for place, length, begins in zip(bond.across, across, bond.across_begins, strict=True):
            if rest <= (length or 0.0) + 1e-6 or place is bond.across[-1]:
                part = min(max(rest / length, 0.0), 1.0) if length else 0.0
                return Exit(key(place), part if begins in ("bottom", "left") else 1 - part)
            rest -= length or 0.0
        return None

    def _enter(self, at: Exit) -> tuple[Chord, Exit] | None:
        """The chord that begins there, and where it ends."""
        owner, name, copy = at.edge
        if self.cloth.piece(owner) is None:
            return None
        edge = self.cloth.named(owner, name)
        if edge is not None:
            made = self._across(owner, copy, edge.row(at.share))
            return made and (made[0], made[2] if edge.side == "left" else made[1])
        share = self._in_width(owner, name, at.share)
        made = self._up(owner, copy, share) if share is not None else None
        return made and (made[0], made[2] if name == "start" else made[1])

    def _in_width(self, owner: str, name: str, share: float) -> float | None:
        """The share of a whole row that a share of a start, an end or a shoulder is."""
        if name in ("start", "end"):
            return share
        between = self._between_gaps(owner).get(name)
        if between is not None:
            return between[0] + share * (between[1] - between[0])
        if name not in SHOULDERS:
            return None
        widths = [self.cloth.length(Place(owner, n)) or 0.0 for n in SHOULDERS]
        wide = self.cloth.extent(owner, self.cloth.sized(owner).rows) or sum(widths) or 1.0
        return share * widths[0] / wide if name == SHOULDERS[0] else 1 - (1 - share) * widths[1] / wide

    # -------------------------------------------------------------- chords

    def _across(self, piece: str, copy: int, row: int) -> tuple[Chord, Exit, Exit] | None:
        width = self.cloth.width(piece, row)
        exits = [e for side in ("left", "right") if (e := self._at_row(piece, copy, row, side)) is not None]
        if width is None or len(exits) < 2 or self.cloth.parted(piece, row):
            return None
        return Chord(piece, copy, "across", row, width), exits[0], exits[1]

    def _at_row(self, piece: str, copy: int, row: int, side: EdgeSide) -> Exit | None:
        edges = [e for e in self.cloth.row_edges[piece] if e.side == side and e.low < row <= e.high]
        return Exit((piece, edges[0].name, copy), edges[0].share(row)) if edges else None

    def _up(self, piece: str, copy: int, share: float) -> tuple[Chord, Exit, Exit] | None:
        cm = self.cloth.height(piece, share) + self.cloth.start_adds(piece)
        top = self._top(piece, share)
        if top is None:
            return None
        return Chord(piece, copy, "up", share, cm), Exit((piece, "start", copy), share), Exit((piece, top[0], copy), top[1])

    def _top(self, piece: str, share: float) -> tuple[str, float] | None:
        ends = self.cloth.fabrics[piece].edge("shoulder")
        if not any(o for o in self.cloth.sized(piece).openings if not o.rejoins) or not ends:
            return "end", share
        widths = [self.cloth.length(Place(piece, n)) or 0.0 for n in SHOULDERS]
        wide = self.cloth.extent(piece, self.cloth.sized(piece).rows) or 1.0
        if share * wide <= widths[0] + 1e-6 and widths[0]:
            return SHOULDERS[0], min(share * wide / widths[0], 1.0)
        if (1 - share) * wide <= widths[1] + 1e-6 and widths[1]:
            return SHOULDERS[1], max(1 - (1 - share) * wide / widths[1], 0.0)
        inner = self._between_gaps(piece).items()
        return next(((name, (share - low) / (high - low)) for name, (low, high) in inner if low <= share <= high), None)

    def _between_gaps(self, piece: str) -> Mapping[str, tuple[float, float]]:
        """The parts of a last row that lie between two openings, as shares of the whole row."""
        parts = tops(self.cloth.sized(piece)) if piece in self.cloth.fabrics else ()
        if len(parts) < 3:
            return {}
        left, (last, stitches) = parts[0][0], parts[-1]
        wide = last + stitches - left
        shares = (((first - left) / wide, (first + count - left) / wide) for first, count in parts[1:-1])
        return {top_between(number): share for number, share in enumerate(shares, 2)}


def rows_of(cloth: Cloth, piece: str) -> Iterator[tuple[str, int]]:
    """(level, row) from the first row up, each level's last row below it; the start's first row stands for its level."""
    seen: set[int] = set()
    for name, row in cloth.sized(piece).levels:
        at = max(row, 1)
        if at not in seen and at <= cloth.sized(piece).rows:
            seen.add(at)
            yield name, at
