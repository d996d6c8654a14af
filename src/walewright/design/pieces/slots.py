"""Slots and buttonholes: stitches taken out in mid-row and cast on again in their place."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.findings import Findings, within
from walewright.design.model import Buttonholes, CountPerSize, Origin, PerSize, Slot
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.edges import NAMED_ALWAYS
from walewright.design.pieces.fitting import CutOut, leaves
from walewright.design.pieces.openings import offset
from walewright.design.pieces.outline import NOTHING, PieceOutline, level_index, stretch
from walewright.design.reading.numbered import numbered
from walewright.design.reading.places import NOT_NEGATIVE, POSITIVE, concerned
from walewright.design.reading.values import Scope
from walewright.report.model import Span
from walewright.report.said import Said, said
from walewright.source import syntax
from walewright.trade.ends import TAKEN
from walewright.trade.sides import SIDES

MOST_HOLES = 100
MOST_HOLE_STITCHES = 20
"""Far beyond any button: a number above is a slip."""
ROWS_A_HOLE = 4
"""Rows from one buttonhole to the next at the least: a row each to close and to cover it, on even rows of the counter."""


def upper(slot: str) -> str:
    """How the cast-on edge above a slot is called in a source."""
    return f"{slot}_upper"


def slot(node: syntax.SlotLine, outline: PieceOutline, cloth: PieceCloth) -> Slot | None:
    """A slot, checked against the width and the openings at its level."""
    what = said("slot-of", slot=node.name, piece=outline.piece)
    findings = cloth.place.findings
    if node.name in NAMED_ALWAYS:
        findings.report(
            "reserved-name/opening",
            (node.span, "slot-called"),
            notes=("kept",),
            helps=("rename",),
            name=node.name,
            kept=NAMED_ALWAYS,
        )
        return None
    at = level_index(node.level, node.span, outline.piece, outline.levels, findings)
    if node.taken not in TAKEN:
        findings.unknown("way to take stitches off", node.taken, node.span, TAKEN)
        return None
    if at is None:
        return None
    place = cloth.at(at)
    width = place.across(node.width, said("width-of", of=what), POSITIVE)
    centre = offset(node.offset, said("middle-of", of=what), outline, place)
    if width is None or centre is None or not _within_rows(node.level, at, node.span, what, outline, findings):
        return None
    reach = {s: tuple(w / 2 for w in width) for s in SIDES}
    if not leaves(
        CutOut(what, node.span, reach, centre), outline.levels[at].height, said("at-level", level=node.level), outline, place
    ):
        return None
    return Slot(node.name, node.level, width, centre, node.taken, Origin(f"piece {outline.piece} / {node.name}", node.span))


def side_by_side(slots: Sequence[Slot], outline: PieceOutline, cloth: PieceCloth) -> bool:
    """Whether slots in one row leave fabric between them; told where two do not. A stitch each may be lost by rounding."""
    for number, one in enumerate(slots):
        for other in slots[:number]:
            at = next(i for i, level in enumerate(outline.levels) if level.name == one.level)
            place = cloth.at(at)
            if other.level != one.level or place.fabric is None:
                continue
            apart = zip(one.centre, other.centre, one.width, other.width, strict=True)
            between = tuple(abs(a - b) - (c + d) / 2 - 3 / place.fabric.stitches_per_cm for a, b, c, d in apart)
            near = tuple(s for s, cm in zip(place.scope.sizes, between, strict=True) if cm < -NOTHING)
            if near:
                place.findings.report(
                    "slots-overlap",
                    (one.origin.span, "one"),
                    (other.origin.span, "other"),
                    helps=("apart",),
                    sizes=place.scope.only(near),
                    one=one.name,
                    other=other.name,
                    piece=outline.piece,
                    level=one.level,
                    by=concerned(place.scope.sizes, tuple(-cm for cm in between), near),
                )
                return False
    return True


def _within_rows(level: str, at: int, span: Span, what: Said, outline: PieceOutline, findings: Findings) -> bool:
    if 0 < at < len(outline.levels) - 1:
        return True
    findings.report("slot-at-edge", (span, "at"), helps=("own-level",), what=what, level=level, start=at == 0)
    return False


def buttonholes(node: syntax.ButtonholesLine, outline: PieceOutline, cloth: PieceCloth) -> Buttonholes | None:
    """Slots one above another, checked: rows between them, and fabric on both sides of them."""
    what = said("buttonholes-of", of=said("piece", piece=outline.piece))
    findings = cloth.place.findings
    counts = numbered(node.count, cloth.place.scope, what, findings)
    if counts is None or not possible(counts, node.stitches, node.span, what, cloth.place.scope, findings):
        return None
    if node.edge not in SIDES:
        findings.unknown("edge", node.edge, node.span, SIDES)
        return None
    between = stretch(node, what, outline, findings)
    if between is None:
        return None
    low, high = between
    place = cloth.at(low)
    distance = place.across(node.distance, said("distance-from-edge", of=what), NOT_NEGATIVE)
    ends = ((node.from_level, low), (node.to_level, high)) if max(counts) > 1 else ((node.from_level, low),)
    if distance is None or not all(_within_rows(name, at, node.span, what, outline, findings) for name, at in ends):
        return None
    made = Buttonholes(
        counts=counts,
        stitches=node.stitches,
        from_level=node.from_level,
        to_level=node.to_level,
        edge=node.edge,
        distance=distance,
        origin=Origin(f"piece {outline.piece} / buttonholes", node.span),
    )
    sound = _apart(made, cloth.rows(low, high), cloth) and _beside(made, outline, between, cloth)
    return made if sound else None


def possible(holes: CountPerSize, stitches: int, span: Span, what: Said, scope: Scope, findings: Findings) -> bool:
    """Whether the numbers of holes and of their stitches can be meant; reported where not."""
    for numbers, most, unit in ((holes, MOST_HOLES, "hole"), ((stitches,) * len(holes), MOST_HOLE_STITCHES, "stitch")):
        wrong = tuple(i for i, number in enumerate(numbers) if not 1 <= number <= most)
        if wrong:
            number = numbers[wrong[0]]
            findings.report(
                "not-positive/number" if number < 1 else "absurd-count/number",
                (span, "here"),
                notes=("possible",),
                helps=within(number, 1, most),
                sizes=scope.only(tuple(scope.sizes[i] for i in wrong)),
                what=what,
                number=number,
                unit=unit,
                most=most,
            )
            return False
    return True


def _apart(made: Buttonholes, rows: PerSize | None, cloth: PieceCloth) -> bool:
    if max(made.counts) == 1 or rows is None or cloth.own is None:
        return True
    sizes = cloth.place.scope.sizes
    needs = tuple(ROWS_A_HOLE * (count - 1) for count in made.counts)
    close = tuple(s for s, r, need in zip(sizes, rows, needs, strict=True) if need and r < need - 1)
    if close:
        lacking = tuple((need - r) / cloth.own.rows_per_cm for r, need in zip(rows, needs, strict=True))
        worst = max((n for n, s in enumerate(sizes) if s in close), key=lambda n: needs[n] - rows[n])
        cloth.place.findings.report(
            "buttonholes-too-close",
            (made.origin.span, "here"),
            helps=("apart",),
            sizes=cloth.place.scope.only(close),
            count=made.counts[worst],
            needed=needs[worst],
            rows=cloth.place.per_size(rows, "rows"),
            lacking=concerned(sizes, lacking, close),
        )
    return not close


def _beside(made: Buttonholes, outline: PieceOutline, between: tuple[int, int], cloth: PieceCloth) -> bool:
    place = cloth.at(between[0])
    if place.fabric is None:
        return True
    sizes = place.scope.sizes
    low, high = (outline.levels[i].height for i in between)
    room = outline.room(made.edge, low, high)
    wide = tuple(d + made.stitches / place.fabric.stitches_per_cm for d in made.distance)
    beyond = tuple(s for s, w, r in zip(sizes, wide, room, strict=True) if w >= r - NOTHING)
    if beyond:
        over = tuple(w - r + 1 / place.fabric.stitches_per_cm for w, r in zip(wide, room, strict=True))
        place.findings.report(
            "beyond-the-edge/buttonholes",
            (made.origin.span, "in-from"),
            notes=("room",),
            helps=("nearer",),
            sizes=place.scope.only(beyond),
            piece=outline.piece,
            reach=place.per_size(wide),
            edge=made.edge,
            room=place.per_size(room),
            over=concerned(sizes, over, beyond),
        )
    return not beyond
