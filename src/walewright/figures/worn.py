"""A garment with a body, as it is worn: sleeves folded along their middle and let hang, the back's neck seen through the
front's, bands and welts with their ribs."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence, Set
from types import MappingProxyType

from walewright.counted.edge_lines import edge_line
from walewright.counted.outline import Outline, Point
from walewright.design.model import Design, EdgeName
from walewright.figures.banded import Rim, draw_rims
from walewright.figures.collars import NO_COLLARS, Collars, draw_hood, draw_rolled, draw_stand
from walewright.figures.darts import worn_darts
from walewright.figures.drawn import DrawnGarment
from walewright.figures.fastened import draw_buttons, draw_pockets, on_bands, own_buttons
from walewright.figures.gathers import gathers
from walewright.figures.measures import LaidPiece
from walewright.figures.model import Drawing
from walewright.figures.pens import Paper, hatched, path, turned
from walewright.figures.rims import RIB, UP_THE_NECK, Placing, beside, draw_rim, inner_rim, lapped_rim, up_the_neck
from walewright.figures.textures import show_charted
from walewright.figures.trims import RIBBED, Trim, finish, lay, rule, shade_of, trim_of
from walewright.figures.trunks import Placed, Trunk
from walewright.figures.worked import WorkedStripe, clipped, mirrored, show_motifs, show_panels, show_stripes, stripes
from walewright.record import record
from walewright.trade.sides import SIDES, EdgeSide

HANG = 52.0
"""Degrees below the horizontal at which a sleeve hangs."""

BOX = (150.0, 100.0)
"""mm of paper."""

WALE = 3.4
"""Between the wales that are drawn, mm."""

EDGE = 1.0
"""Round the drawing, mm."""


STRAP = 2.0
"""cm that a sleeve reaches over the shoulder at least, to be drawn there."""

TURNED_OVER = 0.25
"""Of the width of a neck: a band deeper than that does not lie within it."""


NO_RIMS: Mapping[str, tuple[Rim, ...]] = MappingProxyType({})


@record
class Sleeve:
    """In cm, y upwards, hanging at the garment's right: the folded shape, what of it goes on over the shoulder with it, and its
    cuff's inner and outer edge."""

    shape: tuple[Point, ...]
    cuff: tuple[tuple[Point, Point], tuple[Point, Point]] | None
    striped: tuple[WorkedStripe, ...]
    half: tuple[Point, ...]
    """What of its outline is seen, as it hangs on the bed; empty where a fabric of its own covers the wales."""
    hung: Placing
    shade: str = ""
    trim: Trim = RIBBED
    """Of its cuff."""
    strap: tuple[Point, ...] = ()
    """Of a sleeve that goes on over the shoulder, the end there that is seen: from its fold down to the front."""


def worn(
    garment: DrawnGarment,
    trunk: Trunk,
    title: str,
    collars: Collars = NO_COLLARS,
    edged: Mapping[str, tuple[Rim, ...]] = NO_RIMS,
) -> Drawing:
    """The garment made up, seen from its right side; the pieces are measured as they hang on the bed. `edged`: the bands on the
    outer edges of its fronts, by their names."""
    design = garment.design
    sleeves = tuple(sleeves_of(garment, trunk))
    corners = [(0.0, max(p.piece.shape.height + p.piece.of.end_cm for p in trunk.fronts) + 2.0), *collars.corners]
    for placed in trunk.fronts:
        foot = -placed.piece.of.edging_cm
        corners += [*(placed.at(p) for p in placed.piece.shape.polygon), (0.0, foot)]
        corners += [placed.at(p) for rim in edged.get(placed.name, ()) for p in rim.outer]
    corners += [(x * side, y) for sleeve in sleeves for x, y in sleeve.shape for side in (1, -1)]
    corners += [(x, y + UP_THE_NECK[1] * trunk.band) for sleeve in sleeves for x, y in sleeve.strap[:1]]
    low, high = min(y for _, y in corners), max(y for _, y in corners)
    wide = max(abs(x) for x, _ in corners)
    scale = min(BOX[0] / (2 * wide), BOX[1] / (high - low))
    across = -scale if mirrored(design, trunk.fronts[0].piece) else scale
    place: Placing = lambda p: (EDGE + wide * scale + p[0] * across, EDGE + (high - p[1]) * scale)  # noqa: E731
    paper = Paper()
    strap = next((sleeve.strap for sleeve in sleeves), ())
    _back(paper, trunk, place, strap)
    draw_hood(paper, collars, place)
    draw_stand(paper, collars, place)
    for sleeve in sleeves:
        for side in (1, -1):
            _draw_sleeve(paper, sleeve, side, place)
    for placed in trunk.fronts:
        draw_rims(paper, edged.get(placed.name, ()), lambda p, on=placed: place(on.at(p)))  # type: ignore[misc]
        draw_piece(paper, design, placed.piece, lambda p, on=placed: place(on.at(p)))  # type: ignore[misc]
        draw_pockets(paper, garment, placed.piece, lambda p, on=placed: place(on.at(p)))  # type: ignore[misc]
        draw_rolled(paper, collars, placed.name, place)
    paper.draw("seam", *(path([place(p) for p in gather]) for gather in gathers(garment, trunk, HANG)))
    inner: Mapping[str, Rim] = {}
    if len(trunk.fronts) == 1:
        _neckband(paper, trunk, place, strap)
    else:
        inner = _front_bands(paper, trunk, place)
    draw_buttons(paper, _buttons(garment, trunk, edged, inner, place))
    return paper.finished(title, 2 * (wide * scale + EDGE), (high - low) * scale + 2 * EDGE)


def draw_piece(paper: Paper, design: Design, piece: LaidPiece, place: Placing, squeeze: float = 1.0) -> None:
    """A piece as cloth with its edging's ribs; `squeeze` 1/2 folds it lengthwise, and less than 0 turns it round."""

    def put(p: Point) -> Point:
        return place((p[0] * squeeze, p[1]))

    shape = piece.shape
    foot, half = piece.of.edging_cm, piece.of.edging_width_cm / 2
    if foot:
        wide = max(shape.start_width, 1e-6)
        upper = [put(p) for p in shape.foot]
        lower = [put((-half + (x - shape.foot[0][0]) / wide * 2 * half, y - foot)) for x, y in shape.foot]
        trim = trim_of(design, piece.piece.start_edging)
        lay(paper, trim.shade, path([*upper, *reversed(lower)], closed=True))
        pairs = zip(itertools.pairwise(upper), itertools.pairwise(lower), strict=True)
        finish(paper, trim, upper, lower, (rib for (a, b), (c, d) in pairs for rib in hatched((a, b), (c, d), RIB)))
    shade = shade_of(design, design.fabric(piece.piece.fabric))
    lay(paper, shade, path([put(p) for p in shape.polygon], closed=True))
    for gap in shape.gaps:
        paper.draw("inside", path([put(p) for p in gap.edge], closed=True))
    _end_edging(paper, design, piece, put)
    striped = tuple(stripes(design, piece, shape.polygon))
    if not striped and not _patterned(piece):
        rule(paper, "wale", shade, *wales(shape.polygon, put))
    show_stripes(paper, striped, put)
    show_panels(paper, design, piece, put)
    show_charted(paper, design, piece, put)
    show_motifs(paper, design, piece, put)
    paper.draw("dart", *(path([put(p) for p in line]) for line in worn_darts(piece)))
    # What lies over the inner half of the outline is no part of it.
    paper.draw("outline", path([put(p) for p in shape.polygon], closed=True))


def _patterned(piece: LaidPiece) -> bool:
    """Whether charts lie over all of it, so that no wale is seen."""
    rows = [c.to_row - c.from_row for c in piece.sized.charts if c.fabric and c.area == "whole"]
    return sum(rows) >= piece.sized.rows


def _end_edging(paper: Paper, design: Design, piece: LaidPiece, put: Placing) -> None:
    """The edging knitted on at the end of a piece, above its last row."""
    of, shape = piece.of, piece.shape
    if not of.end_cm:
        return
    (x0, y), (x1, _) = shape.left[-1], shape.right[-1]
    more = (of.end_width_cm - (x1 - x0)) / 2
    lower = put((x0, shape.height)), put((x1, shape.height))
    upper = put((x0 - more, y + of.end_cm)), put((x1 + more, y + of.end_cm))
    trim = trim_of(design, piece.piece.end_edging)
    lay(paper, trim.shade, path([*lower, upper[1], upper[0]], closed=True))
    finish(paper, trim, lower, upper, hatched(lower, upper, RIB))


def wales(edge: Sequence[Point], put: Placing, bent: Callable[[list[Point]], list[Point]] | None = None) -> Iterator[str]:
    """The wales of the fabric within an outline, a few of many, as fine lines from the hem up: enough to show which way it runs.
    `bent`: the curve on paper of a line that `put` does not leave straight."""
    x0, x1 = min(x for x, _ in edge), max(x for x, _ in edge)
    wide = math.dist(put((x0, 0.0)), put((x1, 0.0)))
    count = max(2, round(wide / WALE))
    for n in range(1, count):
        x = x0 + (x1 - x0) * n / count
        met = sorted(
            a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0])
            for a, b in itertools.pairwise([*edge, edge[0]])
            if min(a[0], b[0]) <= x < max(a[0], b[0])
        )
        for low, high in zip(met[::2], met[1::2], strict=False):
            ends = [(x, low), (x, high)]
            yield path(bent(ends) if bent else [put(p) for p in ends])


# ----------------------------------------------------------------- sleeves


def sleeves_of(garment: DrawnGarment, trunk: Trunk) -> Iterator[Sleeve]:
    """Pieces joined to edges of the front and of another piece, at once or by one edge of theirs: those go round an armhole."""
    done: set[str] = set()
    design, bodies = garment.design, trunk.bodies
    met: dict[tuple[str, str], list[EdgeName]] = {}
    for join in design.joins:
        for own, other in ((join.one, join.other), (join.other, join.one)):
            if len({e.piece for e in own}) == 1 and own[0].piece not in bodies and design.band(own[0].piece) is None:
                met.setdefault((own[0].piece, own[0].edge), []).extend(other)
    for (name, edge), others in met.items():
        if name in done or len({e.piece for e in others}) < 2:
            continue
        shoulder = next((t for t in (_shoulder(placed, others) for placed in trunk.fronts) if t is not None), None)
        if shoulder is not None:
            done.add(name)
            yield _hung(design, garment.piece(name), edge, shoulder)


def _shoulder(body: Placed, edges: list[EdgeName]) -> tuple[Point, Point] | None:
    """The upper end, at the garment's right, of that of the edges that is an outer edge of the front, and how far the shoulder goes
    from there towards the neck."""
    names = {e.edge for e in edges if e.piece == body.name} - {""}
    shape = body.piece.shape
    for side, sign in zip(SIDES[::-1], (1, -1), strict=True):
        height = _upper_end(body.piece, side, names)
        if height is not None:
            tip = sign * body.at((shape.edge_x(height, side), height))[0], height
            neck = shape.neckline or (shape.right if side == "left" else shape.left)
            x, y = body.at(max(neck, key=lambda p: (p[1], sign * p[0])))
            return tip, (sign * x - tip[0], y - tip[1])
    return None


def _upper_end(piece: LaidPiece, side: EdgeSide, names: Set[str]) -> float | None:
    """How high the edges of these names go on a side of a piece, cm; None where the side has no such edge."""
    sized, shape = piece.sized, piece.shape
    ends = [run.to_row for run in (sized.right if side == "right" else sized.left) if run.name in names]
    # Where its shoulder is held, an edge ends below the last row.
    highest = (shape.right if side == "right" else shape.left)[-1][1]
    return min(piece.of.height_cm(max(ends)), highest) if ends else None


def _hung(design: Design, sleeve: LaidPiece, edge: str, shoulder: tuple[Point, Point]) -> Sleeve:
    """The sleeve with the upper end of `edge` at the tip of the armhole; what it has above goes on over the shoulder, folded along
    its middle as the sleeve is."""
    shape, (tip, along) = sleeve.shape, shoulder
    top, joined = (0.0, shape.height), _upper_end(sleeve, "left", {edge})
    at = (0.0, shape.height if joined is None else joined)
    foot, wide = -sleeve.of.edging_cm, sleeve.of.edging_width_cm / 2

    def hang(points: Iterable[Point]) -> tuple[Point, ...]:
        return tuple((x + tip[0] - at[0], y + tip[1] - at[1]) for x, y in turned(points, at, 90 - HANG))

    whole = ((0.0, 0.0), *shape.left, *shape.shoulder_left, top)
    half, over = whole, shape.left[-1][1] - at[1]
    strap: tuple[Point, ...] = ()
    if over > STRAP:
        half = tuple(clipped(whole, 1, 0.0, at[1]))
        high = -shape.edge_x((at[1] + shape.height) / 2, "left")
        at = (-high, at[1])
        far = max(math.hypot(*along), 1e-6)
        x, y = along[0] / far, along[1] / far
        inner = tip[0] + x * over, tip[1] + y * over
        # Its lower edge lies along the front's shoulder, its fold goes on in that of the sleeve.
        strap = (inner, (inner[0] + abs(y) * high, inner[1] + abs(x) * high))
    striped = tuple((hang(area), shade) for area, shade in stripes(design, sleeve, half))
    plain = half if not striped and not _patterned(sleeve) else ()
    cuff, outline = None, half
    if foot:
        ends = hang([shape.left[0], (0.0, 0.0), (-wide, foot), (0.0, foot)])
        cuff = (ends[0], ends[1]), (ends[2], ends[3])
        outline = ((0.0, foot), (-wide, foot), *half[1:])
    shade, trim = shade_of(design, design.fabric(sleeve.piece.fabric)), trim_of(design, sleeve.piece.start_edging)
    lying = hang(outline)
    seen = (*lying[:-1], *strap, lying[-1])
    end = strap[::-1]
    return Sleeve(seen, cuff, striped, half=plain, hung=lambda p: hang((p,))[0], shade=shade, trim=trim, strap=end)


def _draw_sleeve(paper: Paper, sleeve: Sleeve, side: int, place: Placing) -> None:
    def put(p: Point) -> Point:
        return place((p[0] * side, p[1]))

    lay(paper, sleeve.shade, path([put(p) for p in sleeve.shape], closed=True))
    show_stripes(paper, sleeve.striped, put)
    if sleeve.half:
        rule(paper, "wale", sleeve.shade, *wales(sleeve.half, lambda p: put(sleeve.hung(p))))
    paper.draw("outline", path([put(p) for p in sleeve.shape], closed=True))
    if sleeve.cuff is not None:
        upper, lower = ((put(a), put(b)) for a, b in sleeve.cuff)
        if sleeve.trim.shade != sleeve.shade:
            lay(paper, sleeve.trim.shade, path([*upper, *reversed(lower)], closed=True))
        finish(paper, sleeve.trim, upper, lower, hatched(upper, lower, RIB))
        paper.draw("seam", path(list(upper)))


# ----------------------------------------------------------------- neck and front


def _round_the_neck(line: Iterable[Point], strap: tuple[Point, ...]) -> list[Point]:
    """A neck's line from the garment's left to its right with the ends of the straps on the shoulders, if there are any."""
    return [*((-x, y) for x, y in strap), *line, *reversed(strap)]


def _back(paper: Paper, trunk: Trunk, place: Placing, strap: tuple[Point, ...]) -> None:
    """The back as far as it is seen: through the front's neck, or between the fronts."""
    front = trunk.fronts[0].piece.shape
    top = max(p.piece.shape.height for p in trunk.fronts)
    for placed in trunk.backs:
        back = placed.piece.shape
        rise = top - back.height

        def raised(line: Iterable[Point], on: Placed = placed, up: float = rise) -> list[Point]:
            return [(x, y + up) for x, y in map(on.at, line)]

        if len(trunk.fronts) > 1:
            paper.draw("inside", path([place(p) for p in raised(back.polygon)], closed=True))
            line, (depth, trim) = raised(back.neckline[::-1]), trunk.behind
            # What is turned over lies outside, where it is not seen.
            if line and 0 < depth <= TURNED_OVER * math.dist(line[0], line[-1]):
                draw_rim(paper, trim, line, inner_rim(line, depth), place)
            continue
        # Seen from within, left and right are exchanged: walked from the garment's left to its right all the same.
        line = raised(back.neck[::-1])
        if line and front.neck:
            seen = _round_the_neck(line, strap), _round_the_neck(front.neck, strap)
            paper.draw("inside", path([place(p) for p in (*seen[0], *reversed(seen[1]))], closed=True))
            if trunk.band:
                line = _round_the_neck(raised(back.neckline[::-1]), strap)
                draw_rim(paper, trunk.trim, line, inner_rim(line, trunk.band), place)
            else:
                paper.draw("seam", path([place(p) for p in line]))


def _neckband(paper: Paper, trunk: Trunk, place: Placing, strap: tuple[Point, ...]) -> None:
    line = _round_the_neck(trunk.fronts[0].piece.shape.neckline, strap)
    if trunk.band and line:
        rim = inner_rim(line, trunk.band)
        draw_rim(paper, trunk.trim, line, rim, place)
        # The wearer's left one lies uppermost, at the right of the drawing.
        up_right = 1 if place(line[-1])[0] > place(line[0])[0] else -1
        if trunk.lapped and (upper := lapped_rim(line[::up_right], rim[::up_right])) is not None:
            draw_rim(paper, trunk.trim, *upper, place)


def _buttons(
    garment: DrawnGarment, trunk: Trunk, edged: Mapping[str, tuple[Rim, ...]], inner: Mapping[str, Rim], place: Placing
) -> Iterator[Point]:
    """Where they are seen: on bands, and on the front that lies over the other one."""
    for placed in trunk.fronts:
        beside_it = (*edged.get(placed.name, ()), *((inner[placed.name],) if placed.name in inner else ()))
        yield from (place(placed.at(spot)) for spot in on_bands(garment, placed.piece, beside_it))
    above = [placed for placed in trunk.fronts if own_buttons(placed.piece)][-1:]
    yield from (place(placed.at(spot)) for placed in above for spot in own_buttons(placed.piece))


def _front_bands(paper: Paper, trunk: Trunk, place: Placing) -> Mapping[str, Rim]:
    """The bands along the inner edge of each front, the right one over the left; by the names of the fronts, on these."""
    found: dict[str, Rim] = {}
    tops = [placed.at((o.right if side > 0 else o.left)[-1]) for placed, side, o in _inner_edges(trunk)]
    wide = max(x for x, _ in tops) - min(x for x, _ in tops)
    for placed, side, shape in _inner_edges(trunk):
        of = placed.piece.of
        runs = placed.piece.sized.right if side > 0 else placed.piece.sized.left
        banded: list[tuple[Point, float]] = []
        trim = RIBBED
        for name in dict.fromkeys(run.name for run in runs):
            trim = trunk.trims.get((placed.name, name), trim)
            depth = trunk.bands.get((placed.name, name), 0.0)
            banded += [(placed.at(p), depth) for p in edge_line(of, shape, name)] if depth else []
        line = [p for p, _ in banded]
        # What is too deep to lie within the neck is turned over, on the front.
        over = any(depth > TURNED_OVER * wide for _, depth in banded)
        moved = beside(line, side if over else -side)
        rim = [(x + (mx - x) * deep, y + (my - y) * deep) for ((x, y), deep), (mx, my) in zip(banded, moved, strict=True)]
        if banded and trunk.behind[0] and not over and line[-1] in tops:
            rim = up_the_neck(line, rim, banded[-1][1], side)
        if banded:
            draw_rim(paper, trim, line, rim, place)
            found[placed.name] = Rim(tuple(map(placed.back, line)), tuple(map(placed.back, rim)), trim)
    return found


def _inner_edges(trunk: Trunk) -> list[tuple[Placed, int, Outline]]:
    """Each front of two, 1 where its right edge is the inner one and -1 where the left is, and its outline."""
    middle = sum(x for placed in trunk.fronts for x in _ends(placed)) / 4
    return [(p, 1 if sum(_ends(p)) / 2 < middle else -1, p.piece.shape) for p in trunk.fronts]


def inner_names(trunk: Trunk) -> dict[str, set[str]]:
    """Of each front of two the names of its inner edges."""
    if len(trunk.fronts) < 2:
        return {}
    sides = [(p.name, p.piece.sized, side) for p, side, _ in _inner_edges(trunk)]
    return {name: {run.name for run in (sized.right if side > 0 else sized.left)} for name, sized, side in sides}


def _ends(placed: Placed) -> tuple[float, float]:
    shape = placed.piece.shape
    return placed.at((shape.polygon_left, 0.0))[0], placed.at((shape.polygon_right, 0.0))[0]
