"""Patterns and hand work that cannot stand together on the same needles in the same rows."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from walewright.design.areas import Area, Ground
from walewright.design.model import Buttonholes, PerSize, Piece
from walewright.design.outline import NOTHING
from walewright.report.model import Span

Reach = tuple[PerSize, PerSize]

COUNTED_ROWS = ("chart", "stripes")
"""Kinds that go by the row counter: rows worked again would bring them out of step."""


def apart(piece: Piece, found: tuple[Area, ...], ground: Ground) -> bool:
    """Whether all patterns of a piece leave each other alone, and all that is worked once leaves charts alone; told where not."""
    sound = True
    for one, other in combinations(found, 2):
        sound = _two(piece, one, other, ground) and sound
    for area in found:
        for thing in _once(piece, area, ground):
            sound = False
            what, span, sizes, proposal = thing
            _tell(piece, (what, span), (area.what, area.span), sizes, proposal, ground)
    return sound


def _two(piece: Piece, one: Area, other: Area, ground: Ground) -> bool:
    """Whether two patterns can stand together."""
    if one.kind != "chart":
        one, other = other, one
    shared = one.shares_rows(other.low, other.high, ground.sizes)
    if one.kind != "chart" or not shared or (one.reach is None and other.reach is None):
        return True
    meet = one.meets(other.reach)
    both = tuple(s for s, m in zip(ground.sizes, meet, strict=True) if m and s in shared)
    proposal = _proposal(one, other, shared, both, ground)
    if proposal is None:
        return True
    words, sizes = proposal
    _tell(piece, (one.what, one.span), (other.what, other.span), sizes, words, ground)
    return False


def _proposal(
    one: Area, other: Area, shared: tuple[str, ...], both: tuple[str, ...], ground: Ground
) -> tuple[str, tuple[str, ...]] | None:
    """How to mend two patterns that share rows (`both`: needles too), and the sizes concerned; None when nothing is wrong."""
    if other.kind == "stripes":
        return "work the chart in a plain fabric, or draw the stripes' rows in the chart", shared
    if other.kind == "rib":
        return ("let one end before the other begins, or move one beside the other", both) if both else None
    pictured = next((a for a in (one, other) if a.chart is not None and a.chart.picture), None)
    if pictured is not None:
        return f"let one end before the other begins: {pictured.what} lays its yarns over all needles of a row", shared
    if len({y for a in (one, other) if a.chart is not None for y in a.chart.yarns}) > 1:
        return "let them use the same other yarn, or let one end before the other begins", shared
    if not both:
        return None
    whole = next((a for a in (one, other) if a.reach is None), None)
    if whole is not None:
        local = other if whole is one else one
        late = _begins_within(whole, local, both, ground)
        return (f"let {local.what} begin and end within {whole.what}", late) if late else None
    motifs = [a for a in (one, other) if a.fabric is None]
    if len(motifs) == 1:
        panel = other if motifs[0] is one else one
        late = _begins_within(panel, motifs[0], both, ground)
        return (f"let {motifs[0].what} begin after {panel.what}", late) if late else None
    return "move one beside the other, or let one end before the other begins", both


def _begins_within(later: Area, area: Area, sizes: tuple[str, ...], ground: Ground) -> tuple[str, ...]:
    """The sizes in which `later` begins in the rows of `area`, which it would cover."""
    return tuple(
        s
        for s, at, low, high in zip(ground.sizes, later.low, area.low, area.high, strict=True)
        if s in sizes and low + NOTHING < at < high - NOTHING
    )


def _once(piece: Piece, area: Area, ground: Ground) -> Iterator[tuple[str, Span, tuple[str, ...], str]]:
    """What is worked once, or rows worked again, in a pattern: what, where, sizes, and how to mend it."""
    if area.kind in COUNTED_ROWS:
        for repeat in piece.repeats:
            sizes = area.shares_rows(ground.height(repeat.from_level), ground.height(repeat.to_level), ground.sizes)
            if sizes:
                yield (
                    "the repeat of rows",
                    repeat.origin.span,
                    sizes,
                    "let the rows that are repeated be in a plain fabric, or draw them so often in the chart"
                    if area.kind == "chart"
                    else "let the rows that are repeated be in a plain fabric",
                )
    if area.kind != "chart":
        return
    for slot in piece.slots:
        at = ground.height(slot.level)
        reach = _about(slot.centre, slot.width)
        yield from _cut(f"slot `{slot.name}`", slot.origin.span, at, at, reach, area, ground)
    for holes in piece.buttonholes:
        low, high = ground.height(holes.from_level), ground.height(holes.to_level)
        reach_of_holes = _holes(holes, low, ground)
        yield from _cut("the row of buttonholes", holes.origin.span, low, high, reach_of_holes, area, ground)
    for run in piece.left:
        if run.path == "across":
            at = ground.height(run.to_level)
            sizes = area.shares_rows(at, at, ground.sizes)
            if sizes:
                yield "the change across", run.origin.span, sizes, "let the chart end before that level or begin at it"


def _cut(
    what: str, span: Span, low: PerSize, high: PerSize, reach: Reach, area: Area, ground: Ground
) -> Iterator[tuple[str, Span, tuple[str, ...], str]]:
    shared = area.shares_rows(low, high, ground.sizes)
    sizes = tuple(s for s, m in zip(ground.sizes, area.meets(reach), strict=True) if m and s in shared)
    if sizes:
        beside = ", or beside it" if area.reach is not None else ""
        yield what, span, sizes, f"work it in rows where the chart is not{beside}"


def _about(centre: PerSize, width: PerSize) -> Reach:
    pairs = tuple(zip(centre, width, strict=True))
    return tuple(c - w / 2 for c, w in pairs), tuple(c + w / 2 for c, w in pairs)


def _holes(holes: Buttonholes, low: PerSize, ground: Ground) -> Reach:
    """From the outer side of buttonholes to their inner side, by the edge where they begin."""
    fabric = ground.cloth.own
    wide = holes.stitches / fabric.stitches_per_cm if fabric is not None else 0.0
    edge = ground.outline.position(holes.edge, low)
    outer = tuple(e - d for e, d in zip(edge, holes.distance, strict=True))
    inner = tuple(o - wide for o in outer)
    if holes.edge == "right":
        return inner, outer
    return tuple(-o for o in outer), tuple(-i for i in inner)


def _tell(
    piece: Piece, one: tuple[str, Span], other: tuple[str, Span], sizes: tuple[str, ...], proposal: str, ground: Ground
) -> None:
    place = ground.cloth.place
    place.findings.report(
        "patterns-clash",
        (one[1], "one"),
        (other[1], "other"),
        helps=("proposal",),
        sizes=place.scope.only(sizes),
        one=one[0],
        other=other[0],
        name=piece.name,
        proposal=proposal,
    )
