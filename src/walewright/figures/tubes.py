"""What is joined to a tube, as it looks when made up: hats, mittens, socks, cowls, skirts, bags.

A tube is known by its joins: its side edges meet, those of one copy or of several all round, or its start meets its end, as of
what is knitted sideways in gores. Its outline says where it is wide and where it closes; a wedge of held rows in its middle,
knitted in and out over half of it, is a heel; what hangs on a slot is a thumb. Nothing is known by its name.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import pairwise

from walewright.counted.bands import rim_cm
from walewright.counted.edges import edge_length
from walewright.counted.model import SizedWedge
from walewright.counted.outline import Point
from walewright.figures.drawn import DrawnGarment
from walewright.figures.measures import LaidPiece
from walewright.figures.trims import RIBBED, Trim, trim_of
from walewright.glue.model import Glued, Place, Seam, bare
from walewright.record import record, replace
from walewright.trade.edge_names import is_top

CLOSING = 0.4
"""A top narrower than this share of the widest is closed."""

HALF = 0.35
"""Share of the width that is held at least where a heel is knitted."""

FALL = 1.6
"""How much wider than its top something gathered there is drawn at its foot at most."""

HELD = 0.95
"""A band shorter than this share of its edge holds the cloth in."""

PLEATED = 0.75
"""What is drawn in to less than this share of its width, and has needles left out to fold it by, is laid in pleats."""

THICK = 0.15
"""Of its length along the cloth, what flat cloth rises at least."""

SAMPLES = 40
"""Heights at which an outline is measured."""


@record
class Thumb:
    """A tube hung on a slot: where its base is (`across` from -1 at the left to 1 at the right, `height` cm), its length and half
    its width when it lies flat, cm."""

    across: float
    height: float
    length: float
    half: float
    closed: bool


@record
class Foot:
    """A sock's: cm from its top to the heel, from the back of the heel to the tip of the toe, and how thick it lies; whether its
    toe is knitted as the heel is."""

    leg: float
    length: float
    thick: float
    turned_toe: bool


@record
class MadeTube:
    """`profile`: (cm above the start, half the width as it lies flat), bottom up; `closed` at the top. `edging`: depth of the
    edging below it and half its width; `band`: depth of the band along its top; `trim` and
    `band_trim`: how these look. `piece` is what it is knitted as, `copies` how
    many of them go round; `upright`: its rows go up."""

    piece: LaidPiece
    profile: tuple[Point, ...]
    closed: bool
    upright: bool
    copies: int = 1
    edging: tuple[float, float] = (0.0, 0.0)
    band: float = 0.0
    trim: Trim = RIBBED
    band_trim: Trim = RIBBED
    thumb: Thumb | None = None
    foot: Foot | None = None
    waist: float = 0.0
    """cm above the start where a ring of another piece is set on; 0 without such a ring."""
    folds: int = 0
    """Of cloth that is laid in pleats, how many folds are seen all round."""

    @property
    def height(self) -> float:
        return self.profile[-1][0]

    @property
    def widest(self) -> float:
        """Half the width where it is widest."""
        return max(half for _, half in self.profile)


JoinedPart = frozenset[str]
"""Names of the pieces that hang together."""


def tube(garment: DrawnGarment, part: JoinedPart) -> MadeTube | None:
    """The tube that these pieces are made up to; None where they make no tube."""
    glued = garment.glued
    own = [p for p in garment.pieces if p.name in part]
    thumbs = {p.name: p for p in own if _on_slot(glued, own, p)}
    walls = [p for p in own if p.name not in thumbs]
    if not walls:
        return None
    main = max(walls, key=lambda p: p.shape.width * p.shape.height)
    copies = main.sized.copies
    every = [bare(garment.design, seam) for seam in glued.seams]
    seams = [s for s in every if {p.owner for p in (*s.one, *s.other)} == {main.name}]
    round_ = [s for s in seams if _meets(main, s)]
    alike = len({copy for s in round_ for copy in (p.copy for p in (*s.one, *s.other))})
    ring = alike if any(s.one[0].copy != s.other[0].copy for s in round_) else 1
    others = [p for p in walls if p is not main]
    if round_ and len(round_) == max(ring, copies if ring == 1 else ring):
        made = _upright(garment, main, others, seams, ring)
        if made is None or not thumbs:
            return made
        return _with_thumb(glued, made, next(iter(thumbs.values())))
    ends = [s for s in seams if {_end(p) for p in (*s.one, *s.other)} == {"start", "end"}]
    if ends and not others and not thumbs and len(ends) in (copies, 1):
        return _sideways(garment, main, seams, len(ends))
    return None


def _on_slot(glued: Glued, own: Iterable[LaidPiece], piece: LaidPiece) -> bool:
    """Whether it hangs on the loops below and above a slot of another one."""
    slots = {(p.name, slot.name) for p in own for slot in p.sized.slots}
    return any((place.owner, place.edge) in slots for line in glued.lines_of(piece.name) for place in line.along)


def _end(place: Place) -> str:
    return "start" if place.edge == "start" else "end" if place.edge == "end" else ""


def _side(piece: LaidPiece, place: Place) -> str:
    """The side of the piece whose rows an edge is; empty for other edges."""
    sized = piece.sized
    head, _, tail = place.edge.rpartition(" ")
    for side, runs in (("left", sized.left), ("right", sized.right)):
        if any(run.name == place.edge or (run.name == head and tail == side) for run in runs):
            return side
    return ""


def _meets(piece: LaidPiece, seam: Seam) -> bool:
    """Whether a seam puts a left side edge to a right one."""
    if len(seam.one) != 1 or len(seam.other) != 1:
        return False
    return {_side(piece, seam.one[0]), _side(piece, seam.other[0])} == {"left", "right"}


# ----------------------------------------------------------------- rows go up


def _upright(
    garment: DrawnGarment, main: LaidPiece, others: Sequence[LaidPiece], seams: Sequence[Seam], ring: int
) -> MadeTube | None:
    profile, narrowed, waist = _profile(main, ring), 1.0, 0.0
    wide = profile[-1][1]
    for other in others:
        # A ring of another piece set on the top, as a waistband is, which draws in what is wider.
        if not _on_top(garment.glued, main, other) or other.sized.copies % ring:
            return None
        height, top = profile[-1][0], _with_edging(other, _profile(other, ring))
        waist = waist or height
        before, profile = profile[0][1], _drawn_in(profile, top[0][1])
        narrowed = profile[0][1] / max(before, 1e-6)
        profile = (*profile, *((height + y, half) for y, half in top))
    of = main.of
    edging = (of.edging_cm, of.edging_width_cm * ring / 4 * narrowed)
    widest = max(half for _, half in profile)
    drawn_up = main.piece.end_way == "gathered" and not others
    shut = any(_shuts(s) for s in seams)
    band, band_trim = _band_on(garment, main, "end")
    trim = trim_of(garment.design, main.piece.start_edging)
    closed = drawn_up or shut or (profile[-1][1] < CLOSING * widest and not others and not band)
    made = MadeTube(main, profile, closed, upright=True, copies=ring, edging=edging, band=band, trim=trim, band_trim=band_trim)
    if waist:
        # Of each pleat, as many layers as the cloth is drawn in by, the outer fold is seen.
        folded = len({slot for out in of.sized.needles_out for slot in out.slots}) * ring
        drawn_in = _half_of(profile, waist) / max(wide, 1e-6)
        made = replace(made, waist=waist, folds=round(folded * drawn_in) if drawn_in < PLEATED else 0)
    foot = _foot(made) if ring == 1 and not others else None
    return made if foot is None else replace(made, band=0.0, foot=foot)


def _half_of(profile: Sequence[Point], height: float) -> float:
    """Half the width at the uppermost point that is no higher."""
    return [half for y, half in profile if y <= height + 1e-6][-1]


def _with_edging(piece: LaidPiece, profile: tuple[Point, ...]) -> tuple[Point, ...]:
    """The same with the edging at its start, which lies up when its end is joined to what is below."""
    high, half = profile[-1]
    deep = piece.of.edging_cm
    return (*profile, (high + deep, half)) if deep else profile


def _profile(piece: LaidPiece, ring: int) -> tuple[Point, ...]:
    shape = piece.shape
    low, high = min(shape.left[0][1], shape.right[0][1]), max(shape.left[-1][1], shape.right[-1][1])
    heights = [low + (high - low) * n / SAMPLES for n in range(SAMPLES + 1)]
    found = [(y, (shape.edge_x(y, "right") - shape.edge_x(y, "left")) * ring / 4) for y in heights]
    return tuple((y - low, max(half, 0.0)) for y, half in found)


def _drawn_in(profile: tuple[Point, ...], top: float) -> tuple[Point, ...]:
    """What is pleated or gathered at its top falls from there, and opens to so much at most."""
    height = max(profile[-1][0], 1e-6)
    return tuple((y, min(half, top * (1 + (FALL - 1) * (1 - y / height)))) for y, half in profile)


def _on_top(glued: Glued, main: LaidPiece, other: LaidPiece) -> bool:
    names = {main.name, other.name}
    return any(
        {p.owner for p in (*s.one, *s.other)} == names and any(p.owner == main.name and _end(p) == "end" for p in s.one + s.other)
        for s in glued.seams
    )


def _shuts(seam: Seam) -> bool:
    """Whether a seam closes the top: its loops meet each other."""
    return all(is_top(p.edge) for p in (*seam.one, *seam.other))


def _band_on(garment: DrawnGarment, piece: LaidPiece, edge: str) -> tuple[float, Trim]:
    """Depth in cm of the band along an edge and its look, 0 without one."""
    for band in garment.design.bands:
        for line in garment.glued.lines_of(band.name):
            if any((p.owner, p.edge) == (piece.name, edge) for p in line.along):
                return garment.band_cm(band.name), trim_of(garment.design, band.edging)
    return 0.0, RIBBED


def _foot(made: MadeTube) -> Foot | None:
    """Of a tube with a heel: held rows in its middle, in and out over half of it."""
    of = made.piece.of
    turns = sorted((w for w in of.sized.wedges if _is_turn(of.sized.widest, w)), key=lambda w: w.from_row)
    if not turns or turns[0].from_row <= 0 or of.sized.rows - turns[0].to_row < of.sized.rows * 0.1:
        return None
    heel = turns[0]
    toe = next((w for w in turns if w.from_row >= heel.to_row), None)
    leg = of.height_cm(heel.from_row)
    end = toe.from_row if toe is not None else of.sized.rows
    thick = 2 * made.widest
    walk = of.height_cm(end) - of.height_cm(heel.to_row)
    # A heel or a toe turned over half the tube reaches over about half of its thickness.
    return Foot(leg, walk + thick * (1.0 if toe is not None else 0.5), thick, toe is not None)


def _is_turn(widest: int, wedge: SizedWedge) -> bool:
    at_edges = 2 if wedge.edge == "both" else 1
    return wedge.kind == "both" and wedge.reach * at_edges >= HALF * widest


def _with_thumb(glued: Glued, made: MadeTube, thumb: LaidPiece) -> MadeTube:
    line = glued.lines_of(thumb.name)[0]
    of, shape = made.piece.of, made.piece.shape
    slot = next(s for s in of.sized.slots if s.name in {p.edge for p in line.along})
    x, height = of.point((slot.first + slot.last + 1) / 2, slot.row)
    left, right = shape.edge_x(height, "left"), shape.edge_x(height, "right")
    # Of the flat tube, with its seam at the left, or at the right where the thumb would lie behind.
    share = (x - left) / max(right - left, 1e-6) * 2
    across = 2 * share - 1 if share <= 1 else 1 - 2 * (2 - share)
    own = thumb.shape
    half = max(own.width, 1e-6) / 4
    closed = thumb.piece.end_way == "gathered" or _profile(thumb, 1)[-1][1] < CLOSING * half
    found = Thumb(across, height, own.height, half, closed)
    # What was increased for the thumb goes round it: the hand is as wide below it as above.
    palm = max(made.profile[0][1], made.profile[-1][1])
    profile = tuple((y, min(wide, palm)) for y, wide in made.profile)
    return replace(made, profile=profile, thumb=found)


# ----------------------------------------------------------------- rows go round


def _sideways(garment: DrawnGarment, main: LaidPiece, seams: Sequence[Seam], ring: int) -> MadeTube:
    of = main.of
    sides = {
        "left": [run.name for run in of.sized.left if run.name],
        "right": [run.name for run in of.sized.right if run.name],
    }
    whole = of.height_cm(of.sized.rows) + sum(
        (r.times - 1) * (of.height_cm(r.to_row) - of.height_cm(r.from_row)) for r in of.sized.repeats
    )
    along = {side: sum(edge_length(of, name).cm for name in dict.fromkeys(names)) or whole for side, names in sides.items()}
    drawn = {p.edge for s in seams if not s.other for p in s.one}
    top = min(sides, key=lambda side: (not drawn & set(sides[side]), along[side]))
    bottom = "left" if top == "right" else "right"
    deep = main.shape.start_width
    inwards = {side: _reach(main, side) for side in sides}
    closed = bool(drawn & set(sides[top]))
    none = (0.0, RIBBED)
    band = {side: max((_band_on(garment, main, name) for name in sides[side]), key=lambda b: b[0], default=none) for side in sides}
    (low, trim), (high, band_trim) = band[bottom], band[top]
    # What hangs on a shorter band is held in by it.
    held = min(along[bottom], _around(garment, main, sides[bottom]) or along[bottom])
    walk: tuple[float, ...] = (0.0, inwards[bottom], max(deep - inwards[top], inwards[bottom]), deep)
    rounds: tuple[float, ...] = (held, whole, whole, 0.0 if closed else along[top])
    if held < HELD * along[bottom]:
        walk, rounds = (walk[0], *walk[2:]), (rounds[0], *rounds[2:])
    heights = _as_it_lies(walk, [around * ring for around in rounds]) if closed else walk
    profile = tuple((y, around * ring / 4) for y, around in zip(heights, rounds, strict=True))
    edging = (low, held * ring / 4)
    return MadeTube(main, profile, closed, upright=False, copies=ring, edging=edging, band=high, trim=trim, band_trim=band_trim)


def _around(garment: DrawnGarment, piece: LaidPiece, edges: Sequence[str]) -> float:
    """How long the band along one of the edges is, cm; 0 without one."""
    for band in garment.design.bands:
        lines = garment.glued.lines_of(band.name)
        if len(lines) == 1 and any(p.owner == piece.name and p.edge in edges for p in lines[0].along):
            return rim_cm(garment.design, garment.counts.band(band.name))
    return 0.0


def _as_it_lies(walk: Sequence[float], rounds: Sequence[float]) -> tuple[float, ...]:
    """Heights of what is so wide all round after so many cm along the cloth: it rises by what it does not go in or out, so that a
    crown as long as it is wide lies flat."""
    heights = [0.0]
    for (a, b), (low, high) in zip(pairwise(walk), pairwise(rounds), strict=True):
        inwards = abs(high - low) / (2 * math.pi)
        heights.append(heights[-1] + max(math.sqrt(max((b - a) ** 2 - inwards**2, 0.0)), THICK * (b - a)))
    return tuple(heights)


def _reach(piece: LaidPiece, side: str) -> float:
    """How far held rows reach in from a side, cm."""
    of = piece.of
    return max((w.reach * of.stitch_cm(w.to_row) for w in of.sized.wedges if w.edge in ("both", side)), default=0.0)


# ----------------------------------------------------------------- its surface


def rounded(made: MadeTube) -> tuple[Point, ...]:
    """The profile with a closed top drawn as the dome that it lies as, about as high as a quarter of the tube is wide."""
    if not made.closed:
        return made.profile
    profile = made.profile if made.upright else _bulging(made.profile)
    widest = made.widest
    height = profile[-1][0]
    shoulder = max(y for y, half in profile if half >= 0.97 * widest)
    # What is knitted in gores lies as their rows let it; anything else is drawn up.
    deep = min(max(height - shoulder, 0.5 * widest if made.upright else 0.0), 1.25 * widest, height)
    begin = height - deep
    half = next(h for y, h in profile if y >= begin - 1e-6)
    dome = [(begin + deep * math.sin(n * math.pi / 24), half * math.cos(n * math.pi / 24)) for n in range(13)]
    return (*((y, h) for y, h in profile if y < begin), *dome)


def _bulging(profile: tuple[Point, ...]) -> tuple[Point, ...]:
    """What a band holds in at its foot goes out from there and round, as a beret's cloth does, and rolls over in the middle of its
    height, without a corner where it is widest."""
    (low, narrow), (_, wide), *above = profile
    if narrow >= HELD * wide:
        return profile
    rise, out = (profile[-1][0] - low) / 2, wide - narrow
    curve = ((low + rise * (1 - math.cos(t)), narrow + out * math.sin(t)) for t in (n * math.pi / 24 for n in range(13)))
    return (*curve, *((max(y, low + rise), half) for y, half in above))
