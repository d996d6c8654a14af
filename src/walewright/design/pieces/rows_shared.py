"""What shares rows in a piece: which things may go on at the same time, and which may not."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from walewright.design.findings import Findings
from walewright.design.model import Piece
from walewright.design.pieces.outline import NOTHING, PieceOutline
from walewright.design.reading.places import AmountPlace
from walewright.record import record
from walewright.report.model import Span
from walewright.report.said import Said, said


@record
class RowsTaken:
    """Something that stands at a row (`low` == `high`, level indices) or goes over a stretch of them."""

    what: Said
    low: int
    high: int
    span: Span
    over_all: bool = False
    """Whether it is a fabric over the whole width, which rows that are repeated may lie in."""


def one_thing_at_a_time(piece: Piece, outline: PieceOutline, place: AmountPlace) -> bool:
    """Whether a piece's stretches and what stands at single rows of it leave each other alone; told where they do not."""
    findings = place.findings
    numbers = {level.name: number for number, level in enumerate(piece.levels)}

    def rows(what: Said, low: str, high: str, span: Span, over_all: bool = False) -> RowsTaken:
        return RowsTaken(what, numbers[low], numbers[high], span, over_all)

    top = piece.levels[-1].name
    wedges = [rows(w.called, w.from_level, w.to_level or top, w.origin.span) for w in piece.wedges]
    whole = [
        rows(said("fabric", fabric=z.fabric), z.from_level, z.to_level, z.origin.span, True) for z in piece.zones if z.width is None
    ]
    panels = [rows(said("panel", fabric=z.fabric), z.from_level, z.to_level, z.origin.span) for z in piece.zones if z.width]
    repeats = [rows(said("the-repeat"), r.from_level, r.to_level, r.origin.span) for r in piece.repeats]
    slots = [rows(said("slot", slot=s.name), s.level, s.level, s.origin.span) for s in piece.slots]
    holes = [rows(said("row-of-buttonholes"), b.from_level, b.to_level, b.origin.span) for b in piece.buttonholes]
    spread = [
        rows(said("change-across"), run.to_level, run.to_level, run.origin.span) for run in piece.left if run.path == "across"
    ]
    name = piece.name
    return (
        share_no_rows(whole, name, findings)
        and share_no_rows(repeats, name, findings)
        and whole_in_repeats(repeats, (*wedges, *whole, *panels), name, findings)
        and whole_width((*slots, *holes, *spread, *repeats), outline, findings, place)
        and nothing_held((*slots, *spread, *_ends(whole)), _of_some_width(piece, wedges), name, findings)
        and parted_with_nothing_held(piece, outline, place)
        and not_repeated((*slots, *holes, *spread), repeats, name, findings)
    )


def _ends(stretches: Sequence[RowsTaken]) -> list[RowsTaken]:
    return [RowsTaken(s.what, at, at, s.span) for s in stretches for at in (s.low, s.high)]


def _of_some_width(piece: Piece, wedges: Sequence[RowsTaken]) -> list[RowsTaken]:
    """Wedges but for shoulders: those are held in the parts of a neck, each from its own side."""
    return [rows for wedge, rows in zip(piece.wedges, wedges, strict=True) if wedge.width is not None]


def share_no_rows(stretches: Sequence[RowsTaken], piece: str, findings: Findings) -> bool:
    """Whether stretches of a kind have no row in common; told where they have."""
    for one, other in combinations(stretches, 2):
        if one.low < other.high and other.low < one.high:
            _tell_overlap(one, other, piece, "end-before", findings)
            return False
    return True


def whole_in_repeats(repeats: Sequence[RowsTaken], others: Sequence[RowsTaken], piece: str, findings: Findings) -> bool:
    """Whether every other stretch is in a repeat wholly, round it or outside it."""
    for rows in repeats:
        for other in others:
            shares = other.low < rows.high and rows.low < other.high
            inside = rows.low <= other.low and other.high <= rows.high
            around = other.low <= rows.low and rows.high <= other.high and other.over_all
            if shares and not inside and not around:
                _tell_overlap(rows, other, piece, "within-or-outside", findings)
                return False
    return True


def _tell_overlap(one: RowsTaken, other: RowsTaken, piece: str, proposal: str, findings: Findings) -> None:
    findings.report(
        "stretches-overlap/two-things",
        (other.span, "other"),
        (one.span, "one"),
        helps=(proposal,),
        one=one.what,
        other=other.what,
        piece=piece,
    )


def whole_width(points: Sequence[RowsTaken], outline: PieceOutline, findings: Findings, place: AmountPlace) -> bool:
    """Whether none of the points is in rows where the piece is parted; told where one is."""
    sizes = place.scope.sizes
    for point in points:
        low, high = (outline.levels[i].height for i in (point.low, point.high))
        gaps = [outline.parted(i, low[i], high[i]) for i in range(len(sizes))]
        parted = tuple(s for s, gap in zip(sizes, gaps, strict=True) if gap)
        gap = next((g for g in gaps if g), None)
        if gap is not None:
            findings.report(
                "while-parted",
                (point.span, "this"),
                (gap.opening.origin.span, "open"),
                helps=("before-or-after",),
                sizes=place.scope.only(parted),
                what=point.what,
                piece=outline.piece,
                low=place.per_size(gap.low),
                high=place.per_size(gap.high),
            )
            return False
    return True


def nothing_held(points: Sequence[RowsTaken], wedges: Sequence[RowsTaken], piece: str, findings: Findings) -> bool:
    """Whether none of the points is in rows where stitches are held; told where one is."""
    for point in points:
        held = next((w for w in wedges if w.low < point.low < w.high), None)
        if held is not None:
            findings.report(
                "while-held/whole-width",
                (point.span, "this"),
                (held.span, "held"),
                helps=("before-or-after",),
                what=point.what,
                piece=piece,
            )
            return False
    return True


def parted_with_nothing_held(piece: Piece, outline: PieceOutline, place: AmountPlace) -> bool:
    """Whether no wedge but the shoulders goes on over a row where the piece parts or its parts rejoin; told where one does."""
    heights = {level.name: level.height for level in piece.levels}
    sizes = place.scope.sizes
    for wedge in piece.wedges:
        if wedge.width is None:
            continue
        low, high = heights[wedge.from_level], heights[wedge.to_level]
        for gap in outline.gaps:
            for rejoins, at in ((False, gap.low), (True, gap.high)):
                over = tuple(s for s, a, h, b in zip(sizes, low, at, high, strict=True) if a + NOTHING < h < b - NOTHING)
                if over:
                    place.findings.report(
                        "while-held/parting",
                        (gap.opening.origin.span, "at"),
                        (wedge.origin.span, "held"),
                        helps=("end-or-begin",),
                        sizes=place.scope.only(over),
                        piece=piece.name,
                        rejoins=rejoins,
                        opening=gap.opening.name,
                        at=place.per_size(at),
                    )
                    return False
    return True


def not_repeated(points: Sequence[RowsTaken], repeats: Sequence[RowsTaken], piece: str, findings: Findings) -> bool:
    """Whether none of the points, each of which exists once, is in rows that are repeated."""
    for point in points:
        rows = next((r for r in repeats if _meet(r, point)), None)
        if rows is not None:
            findings.report(
                "in-repeat",
                (point.span, "this"),
                (rows.span, "repeated"),
                helps=("before-or-after",),
                what=point.what,
                piece=piece,
            )
            return False
    return True


def _meet(stretch: RowsTaken, other: RowsTaken) -> bool:
    """Whether something stands inside a stretch, or goes over rows of it."""
    if other.low == other.high:
        return stretch.low < other.low < stretch.high
    return stretch.low < other.high and other.low < stretch.high
