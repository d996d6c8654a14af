"""Pieces with everything a piece can have, built by hand, in two sizes: what the drawings have to cope with."""

from __future__ import annotations

from dataclasses import dataclass, replace

from walewright.counted import CountedPiece, counted_piece
from walewright.counted import model as s
from walewright.design import model as d
from walewright.figures.measures import MeasuredPiece, measured
from walewright.solve.model import Counts

ORIGIN = d.Origin("by hand")
SIMPLE = d.ShapingWay("simple")
SIZES = ("S", "L")

PLAIN = d.Fabric("plain", "stocking stitch", 0, "wool", "4", 20, 30, 10, 10, 0, ORIGIN)
RIB = d.Fabric("rib", "latched rib", 3, "wool", "2", 24, 30, 10, 10, 0, ORIGIN)
TUCK = d.Fabric("moss", "stocking stitch", 0, "wool", "6", 20, 30, 10, 10, 0, ORIGIN)


def run(from_row: int, to_row: int, *phrases: s.ShapingPhrase, name: str = "", across: bool = False) -> s.SizedRun:
    return s.SizedRun(name, from_row, to_row, phrases, SIMPLE, ORIGIN, across)


def every(gap: int, by: int, times: int) -> s.ShapingPhrase:
    return s.ShapingPhrase((gap,), (by,), times)


def at_once(by: int) -> s.ShapingPhrase:
    return s.ShapingPhrase((0,), (by,), 1)


@dataclass(frozen=True)
class Sketch:
    """One piece in two sizes. `levels` are names; their rows come with the counts."""

    name: str
    sized: tuple[s.SizedPiece, ...]
    piece: d.Piece

    def design(self) -> d.Design:
        bare = d.MachineProfile("bed", "bed", 200, 4.5, (1, 2, 3), 10, "", ORIGIN)
        yarn = d.Yarn("wool", "wool", 50, 200, ORIGIN)
        edging = d.Edging("welt", "rib", (3.0, 3.0), "after", "chain", ORIGIN)
        return d.Design("p.wale", "P", (), SIZES, (), bare, (yarn,), (PLAIN, RIB, TUCK), (edging,), (self.piece,), (), (), (), ())

    def counts(self) -> Counts:
        return Counts(tuple(s.SizedGarment(size, (p,), (), (), ()) for size, p in zip(SIZES, self.sized, strict=True)), ())

    def measured(self) -> MeasuredPiece:
        return measured(self.design(), self.counts(), self.name)

    def counted(self, size: int = 0) -> CountedPiece:
        return counted_piece(self.design(), self.sized[size])


def sketch(
    name: str,
    start: int,
    rows: int,
    levels: tuple[tuple[str, int], ...],
    left: tuple[s.SizedRun, ...],
    right: tuple[s.SizedRun, ...],
    grow: int = 0,
    **more: object,
) -> Sketch:
    """`grow` stitches more in the larger size."""
    of_piece = {k: more.pop(k) for k in ("start_way", "end_way", "start_edging", "start_along", "mirror_of") if k in more}
    edging_rows = 9 if of_piece.get("start_edging") else 0
    widest = start + 20
    small = s.SizedPiece(name, start, levels, rows, left, right, (), (), edging_rows, widest)
    small = replace(small, **more)  # type: ignore[arg-type]
    large = replace(small, start=start + grow)
    zero = (0.0, 0.0)
    # As every level is there for something, an edge comes to it.
    to_levels = tuple(d.EdgeRun("", level, "straight", zero, zero, (), SIMPLE, ORIGIN) for level, _ in levels[1:])
    piece = d.Piece(
        name=name,
        fabric="plain",
        copies=(1, 1),
        mirror_of=None,
        levels=tuple(d.Level(level, zero, ORIGIN) for level, _ in levels),
        start_width=zero,
        start_way="waste",
        start_edging=None,
        left=to_levels,
        right=to_levels,
        openings=(),
        wedges=(),
        end_way="waste",
        origin=ORIGIN,
    )
    return Sketch(name, (small, large), replace(piece, **of_piece))  # type: ignore[arg-type]


def front() -> Sketch:
    """A cardigan's left front: one-sided armhole and neck edge, a slanted shoulder at one side, buttonholes."""
    levels = (("hem", 0), ("underarm", 60), ("tip", 96), ("top", 102))
    left = (run(0, 60, name="side"), run(60, 96, at_once(-4), every(2, -1, 4), name="armhole"))
    right = (run(0, 70, name="front"), run(70, 102, at_once(-5), every(2, -1, 6), name="throat"))
    wedges = (s.SizedWedge("shoulder", "left", 96, (7, 7, 7), ORIGIN),)
    holes = tuple(s.SizedSlot(f"buttonhole {i}", 6 + 14 * i, 16, 17, "cast-off", ORIGIN) for i in range(5))
    return sketch("front_left", 40, 102, levels, left, right, wedges=wedges, slots=holes, start_edging="welt")


def mirror() -> Sketch:
    made = front()
    turned = tuple(
        replace(
            p,
            left=p.right,
            right=p.left,
            wedges=tuple(replace(w, edge="right") for w in p.wedges),
            slots=tuple(replace(k, first=-1 - k.last, last=-1 - k.first) for k in p.slots),
        )
        for p in made.sized
    )
    return replace(made, sized=turned, piece=replace(made.piece, mirror_of="front_right"))


def vest() -> Sketch:
    """An opening off the centre that rejoins, a neck off the centre to the top, a panel and a slot."""
    levels = (("hem", 0), ("pocket", 20), ("flap", 40), ("top", 90))
    edge = (run(0, 90),)
    slant = (run(20, 40, every(4, -1, 2)),)
    pocket = s.SizedOpening("pocket", 20, 10, 14, run(20, 40), ORIGIN, to_row=40, first=4, rejoins=True, left=slant, right=slant)
    steep, flat = (run(66, 90, every(2, -1, 4)),), (run(66, 90, every(2, -1, 10)),)
    neck = s.SizedOpening("neck", 66, 6, 20, run(66, 90), ORIGIN, to_row=90, first=-14, left=steep, right=flat)
    zones = (s.SizedZone("moss", 0, 64, -22, -9, ORIGIN),)
    slots = (s.SizedSlot("thumb", 52, 8, 15, "waste", ORIGIN),)
    return sketch("vest", 60, 90, levels, edge, edge, openings=(pocket, neck), zones=zones, slots=slots)


def skirt() -> Sketch:
    """A gore: darts at both edges, worked eight times, on an odd count."""
    levels = (("waist", 0), ("hip", 24), ("end", 48))
    wedges = (
        s.SizedWedge("flare", "right", 6, (8, 8, 8, 9), ORIGIN, "in"),
        s.SizedWedge("turn", "left", 24, (6, 6, 6), ORIGIN, "both", rest=4),
    )
    repeats = (s.SizedRepeat(0, 48, 8, ORIGIN),)
    return sketch("gore", 61, 48, levels, (run(0, 48),), (run(0, 48),), wedges=wedges, repeats=repeats)


def tail() -> Sketch:
    """A curved hem, a rib waist of another tension, loops hung back closer, and an end drawn up."""
    levels = (("hem", 0), ("waist", 30), ("ease", 44), ("top", 80))
    up = (run(0, 44), run(44, 44, at_once(-12), across=True), run(44, 80, every(4, -1, 8)))
    wedges = (s.SizedWedge("hem", "both", 0, (5, 5, 5, 15), ORIGIN, "out"),)
    zones = (s.SizedZone("rib", 30, 44, 0, -1, ORIGIN),)
    return sketch("tail", 60, 80, levels, up, up, wedges=wedges, zones=zones, end_way="gathered", start_edging="welt", grow=2)


def thumb() -> Sketch:
    """Tiny, hung on edges of another piece."""
    levels = (("base", 0), ("tip", 12), ("end", 14))
    up = (run(0, 12), run(12, 14, every(2, -1, 1)))
    along = (d.EdgeName("hand", "thumb"), d.EdgeName("hand", "thumb upper"))
    return sketch("thumb", 9, 14, levels, up, up, start_way="along", start_along=along, end_way="gathered")


def shawl() -> Sketch:
    """Wide and low, down to a point; many levels near each other."""
    levels = (("start", 0), ("a", 2), ("b", 4), ("c", 8), ("tip", 100))
    down = (run(0, 2), run(2, 100, every(2, -1, 44)))
    return sketch("shawl", 92, 100, levels, down, down)


def scarf() -> Sketch:
    """Far longer than wide, with an eyelet row."""
    eyelets = tuple(s.SizedSlot(f"hole {i}", 200, at, at, "eyelet", ORIGIN) for i, at in enumerate((-8, 0, 8)))
    return sketch("scarf", 40, 480, (("start", 0), ("holes", 200), ("end", 480)), (run(0, 480),), (run(0, 480),), slots=eyelets)


ALL = (front, mirror, vest, skirt, tail, thumb, shawl, scarf)
