"""What is drawn on a piece besides its outline: edgings, other fabrics, openings, slits, held rows, gathers, repeats."""

from __future__ import annotations

import itertools
from collections.abc import Iterator, Mapping, Sequence

from walewright.counted.model import SizedChart, SizedPiece, SizedRun, SizedSlot, SizedZone
from walewright.counted.outline import Outline, Point
from walewright.design.model import DesignInSize
from walewright.figures.darts import inside_lines
from walewright.figures.dimensions import AIR, LINE, Ruler, box_round
from walewright.figures.measures import LaidPiece, name_of
from walewright.figures.pens import LETTER_MM, Paper, hatched, path, zigzag
from walewright.figures.trims import RIBBED, Trim, finish
from walewright.figures.worked import clipped
from walewright.guide.model import Guide
from walewright.knit.operations import needle
from walewright.record import record
from walewright.trade.sides import SIDES, EdgeSide

RIB = 1.7
"""Between a band's rib lines, mm."""

BESIDE = (1.6, 5.0, 8.5, 12.0, 15.5, 19.0)
"""From the edge of a piece to a name beside it, mm."""


@record
class Bench:
    """The piece laid on paper: its origin (middle of the start) at (0, 0) mm, y downwards."""

    guide: Guide
    piece: LaidPiece
    within: DesignInSize
    scale: float
    alone: bool
    """The drawing is of one size only: needles and rows may stand on it."""
    aside: bool
    """A name may stand beside the piece, which makes the drawing wider."""
    paper: Paper
    ruler: Ruler
    trims: Mapping[str, Trim]
    """What is seen of edgings, by their names; of any other, ribs."""
    beside: LaidPiece | None = None
    """Whose neck is drawn on it besides its own."""

    def at(self, point: Point) -> Point:
        """cm of the piece in mm of paper."""
        return point[0] * self.scale, -point[1] * self.scale

    @property
    def left(self) -> float:
        return self.piece.shape.polygon_left * self.scale

    @property
    def right(self) -> float:
        return self.piece.shape.polygon_right * self.scale

    @property
    def top(self) -> float:
        """The upper end of the piece, of the edging knitted on there."""
        return -(self.piece.shape.height + self.piece.of.end_cm) * self.scale

    @property
    def foot(self) -> float:
        return self.piece.of.edging_cm * self.scale

    def stitch(self, slot: float, row: float) -> Point:
        """The paper's point at a needle's left side (`slot` of the bed) and a row."""
        return self.at(self.piece.of.point(slot, row))


def cloth(bench: Bench) -> None:
    """The piece with everything on it, lettering excepted; what lettering must keep off is told to the ruler."""
    shape, sized, paper = bench.piece.shape, bench.piece.sized, bench.paper
    for zone in sized.zones:
        _zone(bench, zone)
    _edging(bench)
    _end_edging(bench)
    paper.draw("outline", path([bench.at(p) for p in shape.polygon], closed=True))
    for motif in motifs(sized):
        _motif(bench, motif)
    for gap in shape.gaps:
        paper.draw("cloth", path([bench.at(p) for p in gap.edge], closed=True))
    if bench.beside is not None:
        line = [bench.at(p) for p in bench.beside.shape.neck]
        paper.draw("dart", path(line))
        bench.ruler.edges.extend(itertools.pairwise(line))
    for dart in shape.darts:
        lines = [bench.at(p) for p in dart.lines]
        paper.draw("dart", path(lines))
        bench.ruler.lines.append(box_round(lines))
    for out in sized.needles_out:
        for needle_out in out.slots:
            paper.draw("texture", path([bench.stitch(needle_out + 0.5, row) for row in (out.from_row, out.to_row)]))
    for spots in inside_lines(sized):
        line = [bench.stitch(*spot) for spot in spots]
        paper.draw("dart", path(line))
        bench.ruler.lines.append(box_round(line))
    for slot in sized.slots:
        _slit(bench, slot)
    for run in sized.right:
        if run.across:
            _across(bench, run)
    if bench.piece.piece.end_way == "gathered":
        _drawn_up(bench)
    for repeat in sized.repeats:
        _bracket(bench, repeat.from_row, repeat.to_row, f"× {repeat.times}")


def words(bench: Bench) -> None:
    """Names on the piece, where there is room for them when the dimension lines are drawn: each thing is also told in words
    beside the drawing."""
    sized = bench.piece.sized
    for slots in alike(sized.slots):
        _name_slit(bench, slots)
    for zone in sized.zones:
        x0, x1 = _zone_ends(bench, zone)
        middle = (x0 + x1) / 2
        area = _area(bench, zone)
        low, high = max(y for _, y in area), min(y for _, y in area)
        shares = (0.3, 0.7, 0.2, 0.4, 0.6, 0.8)
        ys = [(low + high) / 2 + 0.9, low - 1.2, high + 2.6, *(low - (low - high) * share for share in shares)]
        xs = [middle, x0 + (x1 - x0) * 0.28, x0 + (x1 - x0) * 0.72]
        places = ((x, y, "middle") for y in ys for x in xs)
        name = (name_of(zone.fabric),)
        if not bench.ruler.write_free(places, name, "word", clear=True) and zone.panel is not None:
            _by_panel(bench, name, (x0, x1), ys)
    for motif in motifs(sized):
        (x0, low), (x1, high) = bench.stitch(motif.first, motif.from_row), bench.stitch(motif.last + 1, motif.to_row)
        places = (((x0 + x1) / 2, y, "middle") for y in ((low + high) / 2 + 0.9, high - 1.4, low + 3.2))
        bench.ruler.write_free(places, (name_of(motif.chart),), "word")
    if bench.piece.piece.end_way == "gathered":
        bench.ruler.write_free(
            ((0.0, bench.top + 5, "middle"), (bench.right + 1, bench.top + 1, "start")),
            (bench.guide.say("label/drawn-up"),),
            "word",
        )
    for run in sized.right:
        if run.across:
            x, y = bench.stitch(bench.piece.of.middle, run.from_row)
            closer = sum(by for _, by in run.changes()) < 0
            told = bench.guide.say("label/hung-closer" if closer else "label/hung-wider")
            bench.ruler.write_free(((x, y + d, "middle") for d in (4.0, -2.6, 7.0, -6.0)), (told,), "word")
    _way_of_knitting(bench)


def _by_panel(bench: Bench, name: tuple[str, ...], sides: tuple[float, float], ys: Sequence[float]) -> None:
    """The name of a narrow panel beside it, with a line that leads to it."""
    for y in ys:
        for x, way, anchor in ((sides[1], 1, "start"), (sides[0], -1, "end")):
            if bench.ruler.write_free([(x + 2.4 * way, y, anchor)], name, "word", clear=True):
                bench.paper.draw("guide", path([(x - 1.0 * way, y - 0.9), (x + 2.0 * way, y - 0.9)]))
                return


def alike(slots: tuple[SizedSlot, ...]) -> list[list[SizedSlot]]:
    """Slots in groups: those of a row of buttonholes together (same stitches, taken the same way, three or more of them)."""
    groups: dict[tuple[str, int], list[SizedSlot]] = {}
    for slot in slots:
        groups.setdefault((slot.taken, slot.last - slot.first), []).append(slot)
    made: list[list[SizedSlot]] = []
    for group in groups.values():
        made.extend([group] if len(group) > 2 or group[0].taken == "eyelet" else [[s] for s in group])
    return made


def slots_name(guide: Guide, slots: list[SizedSlot]) -> str:
    """What a group of slots is called."""
    if len(slots) == 1 and slots[0].name:
        return name_of(slots[0].name)
    kind = "eyelet" if slots[0].taken == "eyelet" else "buttonhole" if slots[0].taken == "cast-off" else "slot"
    return guide.say(f"slot/{kind}" if len(slots) == 1 else f"slot/{kind}s")


# ----------------------------------------------------------------- fabrics


def _edging(bench: Bench) -> None:
    depth, shape = bench.foot, bench.piece.shape
    if not depth:
        return
    half = bench.piece.of.edging_width_cm / 2 * bench.scale
    # An edging on a curved start is drawn along it.
    upper = [bench.at(p) for p in shape.foot] or [bench.at(shape.left[0]), bench.at(shape.right[0])]
    wide = upper[-1][0] - upper[0][0]
    lower = [(-half + (x - upper[0][0]) / wide * 2 * half, y + depth) for x, y in upper]
    pairs = zip(itertools.pairwise(upper), itertools.pairwise(lower), strict=True)
    trim = bench.trims.get(bench.piece.piece.start_edging or "", RIBBED)
    finish(bench.paper, trim, upper, lower, (rib for (a, b), (c, d) in pairs for rib in hatched((a, b), (c, d), RIB)))
    bench.paper.draw("outline", path([upper[0], *lower, upper[-1]]))


def _end_edging(bench: Bench) -> None:
    """The edging on the last row, whose ends lie as far in or out as its fabric is narrower or wider."""
    of, shape = bench.piece.of, bench.piece.shape
    if not of.end_cm:
        return
    (x0, y), (x1, _) = bench.at((shape.left[-1][0], shape.height)), bench.at((shape.right[-1][0], shape.height))
    more = (of.end_width_cm * bench.scale - (x1 - x0)) / 2
    lower, upper = ((x0, y), (x1, y)), ((x0 - more, bench.top), (x1 + more, bench.top))
    finish(bench.paper, bench.trims.get(bench.piece.piece.end_edging or "", RIBBED), lower, upper, hatched(lower, upper, RIB))
    bench.paper.draw("outline", path([lower[0], *upper, lower[1]]))


def _zone(bench: Bench, zone: SizedZone) -> None:
    area = _area(bench, zone)
    bench.paper.draw("tint", path(area, closed=True))
    if bench.within.design.fabric(zone.fabric).rib_every:
        x0, x1 = _zone_ends(bench, zone)
        low, high = max(y for _, y in area), min(y for _, y in area)
        bench.paper.draw("hatch", *hatched(((x0, high), (x1, high)), ((x0, low), (x1, low)), RIB))
    bench.paper.draw("seam", path(area, closed=True))
    if zone.panel is not None:
        bench.ruler.borders.extend(itertools.pairwise([*area, area[0]]))


def motifs(sized: SizedPiece) -> tuple[SizedChart, ...]:
    """Charts worked once in another fabric; charted fabrics and panels are zones."""
    return tuple(c for c in sized.charts if not c.fabric)


def _motif(bench: Bench, motif: SizedChart) -> None:
    (x0, low), (x1, high) = bench.stitch(motif.first, motif.from_row), bench.stitch(motif.last + 1, motif.to_row)
    box = path([(x0, low), (x1, low), (x1, high), (x0, high)], closed=True)
    bench.paper.draw("tint", box)
    bench.paper.draw("dart", box)


def _area(bench: Bench, zone: SizedZone) -> list[Point]:
    shape, of = bench.piece.shape, bench.piece.of
    low, high = of.height_cm(zone.from_row), of.height_cm(zone.to_row)
    if zone.panel is not None:
        # As far as it lies on the piece: an opening may end it.
        x0, x1 = (x / bench.scale for x in _zone_ends(bench, zone))
        return [bench.at(p) for p in clipped(clipped(shape.polygon, 1, low, high), 0, x0, x1)]
    left, right = (list(_side(shape, side, low, high)) for side in SIDES)
    return [bench.at(p) for p in (*right, *reversed(left))]


def _side(shape: Outline, side: EdgeSide, low: float, high: float) -> Iterator[Point]:
    """An outer edge from just above `low` to just below `high`: without the steps to the fabrics there."""
    tiny = min(1e-3, (high - low) / 4)
    yield shape.edge_x(low + tiny, side), low
    yield from (p for p in (shape.right if side == "right" else shape.left) if low + tiny < p[1] < high - tiny)
    yield shape.edge_x(high - tiny, side), high


def _zone_ends(bench: Bench, zone: SizedZone) -> tuple[float, float]:
    """x in mm of both sides of a zone, where they stand narrowest."""
    if zone.panel is not None:
        return bench.stitch(zone.first, zone.to_row)[0], bench.stitch(zone.last + 1, zone.to_row)[0]
    area = _area(bench, zone)
    middle = sum(x for x, _ in area) / len(area)
    return max(x for x, _ in area if x <= middle), min(x for x, _ in area if x > middle)


# ----------------------------------------------------------------- slits, gathers, repeats


def _slit(bench: Bench, slot: SizedSlot) -> None:
    (x0, y), (x1, _) = bench.stitch(slot.first, slot.row), bench.stitch(slot.last + 1, slot.row)
    if slot.taken == "eyelet":
        x, r = (x0 + x1) / 2, 0.6
        bench.paper.draw("slit", f"M{x - r:.2f} {y:.2f}a{r} {r} 0 1 0 {2 * r} 0a{r} {r} 0 1 0 {-2 * r} 0")
    else:
        ends = (path([(x, y - 0.8), (x, y + 0.8)]) for x in (x0, x1))
        bench.paper.draw("slit", path([(x0, y), (x1, y)]), *ends)
    bench.ruler.lines.append((x0 - 0.3, y - 0.9, x1 + 0.3, y + 0.9))


def _name_slit(bench: Bench, slots: list[SizedSlot]) -> None:
    slot = slots[len(slots) // 2]
    (x0, y), (x1, _) = bench.stitch(slot.first, slot.row), bench.stitch(slot.last + 1, slot.row)
    needles = bench.guide.needles(needle(slot.first), needle(slot.last))
    more = (needles,) if bench.alone and len(slots) == 1 and slot.taken != "eyelet" else ()
    name = slots_name(bench.guide, slots)
    whole, parted = (name, *more), (*name.split(" "), *more)
    for text in (whole, parted):
        if bench.ruler.write_free(_by_slit(x0, x1, y, len(text)), text, "word", clear=True):
            return
    if not (bench.aside and _name_beside(bench, whole, slots)):
        # Rather across an edge than nowhere: its needles are told here alone.
        bench.ruler.write_free(_by_slit(x0, x1, y, len(whole)), whole, "word")


def _by_slit(x0: float, x1: float, y: float, lines: int) -> Iterator[tuple[float, float, str]]:
    """Where so many lines may stand about a slit."""
    middle = (x0 + x1) / 2
    yield middle, y - 2.3 - LINE * (lines - 1), "middle"
    yield middle, y + 4.0, "middle"
    yield x1 + 1.6, y + 0.9, "start"
    yield x0 - 1.6, y + 0.9, "end"


def _name_beside(bench: Bench, text: tuple[str, ...], slots: Sequence[SizedSlot]) -> bool:
    """The name of one of some slits in the open beside a narrow piece, of the middle one if it can be, with a line that leads to
    it past all lettering; False, and nothing, where there is no room."""
    middle = (len(slots) - 1) / 2
    for far, (_, slot), way in itertools.product(BESIDE, sorted(enumerate(slots), key=lambda one: abs(one[0] - middle)), (1, -1)):
        end, y = bench.stitch(slot.last + 1 if way > 0 else slot.first, slot.row)
        x = (bench.right if way > 0 else bench.left) + far * way
        leader = (min(end, x), y - AIR, max(end, x), y + AIR)
        if bench.ruler.free(leader, of_lines=False) and bench.ruler.write_free(
            [(x, y + 0.9, "start" if way > 0 else "end")], text, "word", clear=True
        ):
            bench.paper.draw("guide", path([(end + 0.6 * way, y), (x - 0.4 * way, y)]))
            return True
    return False


def _across(bench: Bench, run: SizedRun) -> None:
    """Gathers along the row where the loops are hung back on other needles."""
    shape, y = bench.piece.shape, bench.stitch(0, run.from_row)[1]
    height = -y / bench.scale
    tiny = 1e-3
    widths = [
        (shape.edge_x(h, "left") * bench.scale, shape.edge_x(h, "right") * bench.scale) for h in (height - tiny, height + tiny)
    ]
    x0, x1 = max(w[0] for w in widths), min(w[1] for w in widths)
    bench.paper.draw("mark", zigzag(x0, x1, y, 1.6))
    bench.ruler.lines.append((x0, y - 1.2, x1, y + 1.2))


def _drawn_up(bench: Bench) -> None:
    """A running thread through the last loops, its ends drawn up."""
    shape = bench.piece.shape
    x0, x1 = shape.edge_x(shape.height, "left") * bench.scale, shape.edge_x(shape.height, "right") * bench.scale
    y = bench.top
    bench.paper.draw("mark", zigzag(x0, x1, y, 1.4, 1.2), path([(x0 - 3, y - 2.2), (x0, y), (x0 - 3, y + 0.2)]))
    bench.ruler.lines.append((x0 - 3, y - 2.4, x1, y + 0.9))


def _bracket(bench: Bench, from_row: int, to_row: int, text: str) -> None:
    y0, y1 = bench.stitch(0, from_row)[1], bench.stitch(0, to_row)[1]
    x = bench.left - 3.2
    bench.paper.draw("slit", path([(x + 1.4, y0), (x, y0), (x, y1), (x + 1.4, y1)]))
    bench.ruler.lines.append((x - 0.2, y1, x + 1.5, y0))
    places = ((x - 1.2, (y0 + y1) / 2 + 1 + d, "end") for d in (0.0, 3.0, -3.0))
    bench.ruler.write_free(places, (text,), "figure")


ALONG, UPWARDS = (0.5, 0.2, 0.62, 0.35, 0.1, 0.02, 0.28, 0.42), (0.1, 0.3, 0.5, 0.68, 0.2, 0.04, 0.4, 0.6)
"""Of a piece's width and height: where the arrow may stand that says which way it grows, the best places first."""


def _way_of_knitting(bench: Bench) -> None:
    """An arrow: which way the piece grows on the bed, its words beside it or, where there is no room, along it. Left out where
    nothing is free."""
    text = (bench.guide.say("label/knitted-this-way"),)
    long = len(text[0]) * LETTER_MM
    if not _arrow_with(bench, text, (3 + long, 9.0), 0):
        _arrow_with(bench, text, (6.4, long + 1), -90)


def _arrow_with(bench: Bench, text: tuple[str, ...], room: Point, turn: int) -> bool:
    """The arrow and its words in a room so wide and so high; False, and nothing, where that is not free."""
    shape, of, (wide, high) = bench.piece.shape, bench.piece.of, room
    for share, rise in itertools.product(ALONG, UPWARDS):
        height = shape.height * rise
        x0, x1 = (shape.edge_x(height, side) * bench.scale for side in ("left", "right"))
        x, y = x0 + (x1 - x0) * share, -height * bench.scale
        box = (x - 2, y - high, x + wide, y)
        if (
            x1 - x < wide + 1
            or not bench.ruler.clear(box)
            or _in_gap(bench, box)
            or height + high / bench.scale > of.height_cm(shape_rows(bench))
        ):
            continue
        bench.paper.draw("measure", path([(x, y), (x, y - 8)]), path([(x - 1.2, y - 6.2), (x, y - 8), (x + 1.2, y - 6.2)]))
        if turn:
            bench.ruler.write(x + 5.0, y - high / 2, text, "middle", turn, kind="word")
        else:
            bench.ruler.write(x + 2, y - 3, text, "start", kind="word")
        bench.ruler.lines.append((x - 1.2, y - 8, x + 1.2, y))
        return True
    return False


def shape_rows(bench: Bench) -> int:
    """The rows below any opening: there the piece is whole across."""
    sized = bench.piece.sized
    return min([sized.rows, *(o.row for o in sized.openings)])


def _in_gap(bench: Bench, box: tuple[float, float, float, float]) -> bool:
    gaps: Iterator[tuple[float, float, float, float]] = (
        box_round([bench.at(p) for p in gap.edge]) for gap in bench.piece.shape.gaps
    )
    return any(box[0] < g[2] and g[0] < box[2] and box[1] < g[3] and g[1] < box[3] for g in gaps)
