"""Slots and buttonholes: stitches taken out in mid-row and cast on again in their place."""

from __future__ import annotations

from walewright.design.cloth import Cloth
from walewright.design.edges import NAMED_ALWAYS
from walewright.design.findings import Findings
from walewright.design.fitting import leaves
from walewright.design.model import Buttonholes, Origin, PerSize, Slot
from walewright.design.openings import TAKEN_KNOWN, offset
from walewright.design.outline import NOTHING, SIDES, Outline, level_index, stretch
from walewright.design.places import NOT_NEGATIVE, POSITIVE, concerned
from walewright.report.model import Span
from walewright.source import syntax

MOST_HOLES = 100
MOST_HOLE_STITCHES = 20
"""Far beyond any button: a number above is a slip."""
ROWS_A_HOLE = 4
"""Rows from one buttonhole to the next at the least: a row each to close and to cover it, on even rows of the counter."""


def upper(slot: str) -> str:
    """How the cast-on edge above a slot is called in a source."""
    return f"{slot}_upper"


def slot(node: syntax.Slot, outline: Outline, cloth: Cloth) -> Slot | None:
    """A slot, checked against the width and the openings at its level."""
    what = f"slot `{node.name}` of piece `{outline.piece}`"
    findings = cloth.place.findings
    if node.name in NAMED_ALWAYS:
        findings.report(
            "reserved-name/every-piece-edge-2",
            (node.span, "slot-called"),
            notes=("kept-names",),
            name=node.name,
            NAMED_ALWAYS=tuple(NAMED_ALWAYS),
        )
        return None
    at = level_index(node.level, node.span, outline.piece, outline.levels, findings)
    if node.taken not in TAKEN_KNOWN:
        findings.unknown("way to take stitches off", node.taken, node.span, TAKEN_KNOWN)
        return None
    if at is None:
        return None
    place = cloth.at(at)
    width = place.across(node.width, f"the width of {what}", POSITIVE)
    centre = offset(node.offset, f"the middle of {what}", place)
    if width is None or centre is None or not _within_rows(node.level, at, node.span, what, outline, findings):
        return None
    reach = {s: tuple(w / 2 for w in width) for s in SIDES}
    if not leaves(reach, centre, outline.levels[at].height, what, f"at `{node.level}`", node.span, outline, place):
        return None
    return Slot(node.name, node.level, width, centre, node.taken, Origin(f"piece {outline.piece} / {node.name}", node.span))


def _within_rows(level: str, at: int, span: Span, what: str, outline: Outline, findings: Findings) -> bool:
    if 0 < at < len(outline.levels) - 1:
        return True
    findings.report("slot-at-edge", (span, "at"), helps=("give-level-own",), what=what, level=level, if_at=at == 0)
    return False


def buttonholes(node: syntax.Buttonholes, outline: Outline, cloth: Cloth) -> Buttonholes | None:
    """Slots one above another, checked: rows between them, and fabric on both sides of them."""
    what = f"the buttonholes of piece `{outline.piece}`"
    findings = cloth.place.findings
    if not count(node.count, node.stitches, node.span, what, findings):
        return None
    if node.edge not in SIDES:
        findings.unknown("edge", node.edge, node.span, SIDES)
        return None
    between = stretch(node.from_level, node.to_level, node.span, what, outline.piece, outline.levels, findings)
    if between is None:
        return None
    low, high = between
    place = cloth.at(low)
    distance = place.across(node.distance, f"the distance of {what} from the edge", NOT_NEGATIVE)
    ends = ((node.from_level, low), (node.to_level, high)) if node.count > 1 else ((node.from_level, low),)
    if distance is None or not all(_within_rows(name, at, node.span, what, outline, findings) for name, at in ends):
        return None
    made = Buttonholes(
        node.count,
        node.stitches,
        node.from_level,
        node.to_level,
        node.edge,
        distance,
        Origin(f"piece {outline.piece} / buttonholes", node.span),
    )
    sound = _apart(made, cloth.rows(low, high), cloth) and _beside(made, outline, between, cloth)
    return made if sound else None


def count(holes: int, stitches: int, span: Span, what: str, findings: Findings) -> bool:
    """Whether the numbers of holes and of their stitches can be meant; told when not."""
    for number, most, unit in ((holes, MOST_HOLES, "holes"), (stitches, MOST_HOLE_STITCHES, "stitches")):
        if not 1 <= number <= most:
            findings.report(
                "not-positive/here" if number < 1 else "absurd-count/here",
                (span, "here"),
                notes=("possible",),
                what=what,
                number=number,
                unit=unit,
                most=most,
            )
            return False
    return True


def _apart(made: Buttonholes, rows: PerSize | None, cloth: Cloth) -> bool:
    if made.count == 1 or rows is None or cloth.own is None:
        return True
    sizes = cloth.place.scope.sizes
    need = ROWS_A_HOLE * (made.count - 1)
    close = tuple(s for s, r in zip(sizes, rows, strict=True) if r < need - 1)
    if close:
        lacking = tuple((need - r) / cloth.own.rows_per_cm for r in rows)
        cloth.place.findings.report(
            "buttonholes-too-close",
            (made.origin.span, "here"),
            helps=("bring-their-ends",),
            sizes=cloth.place.scope.only(close),
            count=made.count,
            need=need,
            rows=cloth.place.per_size(rows, "rows"),
            lacking=concerned(sizes, lacking, close),
        )
    return not close


def _beside(made: Buttonholes, outline: Outline, between: tuple[int, int], cloth: Cloth) -> bool:
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
        place.findings.tell(
            "beyond-the-edge",
            f"the buttonholes of piece `{outline.piece}` leave nothing of the piece beside them",
            (made.origin.span, f"{place.per_size(wide)} in from the {made.edge} edge"),
            notes=(f"the piece has {place.per_size(room)} there",),
            helps=(f"bring them {concerned(sizes, over, beyond)} nearer to the edge at least",),
            sizes=place.scope.only(beyond),
        )
    return not beyond
