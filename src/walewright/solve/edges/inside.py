"""What a bed and a pair of hands ask of what lies inside a piece: openings, wedges, slots, buttonholes."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations
from math import ceil

from walewright.design.model import Design, Opening, Piece, Wedge
from walewright.report.said import said
from walewright.solve.algebra.programme import Draft, Lines, asks
from walewright.solve.algebra.sums import NOTHING
from walewright.solve.algebra.terms import PieceTerms
from walewright.solve.edges.apart import share_rows, side_by_side, stitches_kept
from walewright.solve.edges.gaps import SHUT_CM, end_level, gap_runs, rejoins
from walewright.solve.edges.gauge import fabric_below, level_number
from walewright.solve.edges.held import beside, edge_at, end_of, wedge_sides
from walewright.trade.sides import SIDES


def inside_rules(draft: Draft, design: Design, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    """Writes the rules of a piece's openings, wedges, slots and buttonholes into the draft."""
    for number, opening in enumerate(piece.openings):
        _form(draft, piece, opening, number, terms)
        _beside(draft, piece, opening, number, terms)
    for one, other in combinations(range(len(piece.openings)), 2):
        if share_rows(piece, piece.openings[one], piece.openings[other]):
            side_by_side(draft, piece, one, other, terms)
        elif not _in_between(piece, one, other):
            _joined_between(draft, piece, one, other, terms)
    for number, wedge in enumerate(piece.wedges):
        _wedge(draft, piece, wedge, number, terms)
        _in_work(draft, piece, (number,), terms)
    for one, other in combinations(range(len(piece.wedges)), 2):
        if _together(piece, piece.wedges[one], piece.wedges[other]):
            _in_work(draft, piece, (one, other), terms)
    _slots(draft, design, piece, terms)
    for holes in piece.buttonholes:
        lines: Lines = [(i, t.rows[holes.to_level] - t.rows[holes.from_level] >= holes.counts[i] - 1) for i, t in enumerate(terms)]
        clause = said("buttonholes-apart", piece=piece.name, buttonholes=max(holes.counts), edge=holes.edge)
        asks(draft, clause, (holes.origin,), lines, len(terms))


# ----------------------------------------------------------------- openings


def _form(draft: Draft, piece: Piece, opening: Opening, number: int, terms: Sequence[PieceTerms]) -> None:
    lines: Lines = []
    # Where parts rejoin over a gap, a stitch at least is cast on between them: the edge above it is there to be taken up.
    least = 0 if opening.shape == "edges" and not rejoins(piece, opening) else 1
    for i, t in enumerate(terms):
        own = t.openings[number]
        # One that narrows to nothing comes to nothing: what is left would be a hole where its parts rejoin.
        shut = opening.shape == "edges" and abs(opening.width[i]) < SHUT_CM
        lines.append((i, own.width.equals(0) if shut else own.width >= least))
        lines.append((i, own.depth >= 1))
        lines.append((i, own.from_rows >= 1))
        for level in dict.fromkeys(run.to_level for run in opening.left):
            both = [
                own.edge(side).after[n] for side in SIDES for n, run in enumerate(gap_runs(opening, side)) if run.to_level == level
            ]
            if len(both) == len(SIDES):
                lines.append((i, both[0] + both[1] >= 0))
    asks(draft, said("opening-formed", opening=opening.name, piece=piece.name), (opening.origin,), lines, len(terms))


def _beside(draft: Draft, piece: Piece, opening: Opening, number: int, terms: Sequence[PieceTerms]) -> None:
    """Something is left of the piece on both sides of a gap, wherever its edges or those of the piece come to a place."""
    least = stitches_kept(opening)
    end = end_level(piece, opening)
    lines: Lines = []
    for i, t in enumerate(terms):
        own = t.openings[number]
        for side in SIDES:
            gap = own.edge(side)
            places = {opening.from_level: gap.start} if opening.from_level is not None else {}
            places |= {run.to_level: gap.after[n] for n, run in enumerate(gap_runs(opening, side))}
            for level, inner in places.items():
                if level is not None:
                    for outer in edge_at(piece, side, level, t.edge(side)):
                        lines.append((i, outer - inner >= least))
            if level_number(piece, end) == len(piece.levels) - 1:
                lines.append((i, t.edge(side).after[-1] - gap.after[-1] >= least))
    clause = said("stitches-beside", opening=opening.name, piece=piece.name, stitches=least)
    asks(draft, clause, (opening.origin,), list(dict.fromkeys(lines)), len(terms))


def _joined_between(draft: Draft, piece: Piece, one: int, other: int, terms: Sequence[PieceTerms]) -> None:
    """Where parts come together, rows over the whole width join them before the piece parts again."""
    lower, upper = piece.openings[one], piece.openings[other]
    lines: Lines = [(i, t.openings[other].from_rows - t.openings[one].to_rows >= 1) for i, t in enumerate(terms)]
    clause = said("whole-rows-between", lower=lower.name, upper=upper.name, piece=piece.name)
    asks(draft, clause, (lower.origin, upper.origin), lines, len(terms))


def _in_between(piece: Piece, one: int, other: int) -> bool:
    """Whether another opening ends before the second of two begins, and begins after the first has ended."""
    low, *between, high = piece.openings[one : other + 1]
    return any(not share_rows(piece, low, o) and not share_rows(piece, o, high) for o in between)


# ----------------------------------------------------------------- wedges


def _wedge(draft: Draft, piece: Piece, wedge: Wedge, number: int, terms: Sequence[PieceTerms]) -> None:
    """Every two rows a group is held (and, of one held in and let out, two rows later for each back), and a group is a stitch at
    least; a fashioned neck beside it needs as many as its tool."""
    gaps = {beside(piece, wedge, side) for side in wedge_sides(wedge)}
    least = max(1 if gap is None else stitches_kept(piece.openings[gap]) for gap in gaps)
    both = wedge.kind == "both"
    lines: Lines = []
    even: Lines = []
    for i, t in enumerate(terms):
        own = t.wedges[number]
        lines += [(i, (2 if both else 1) * held >= least * own.pairs) for _, held in own.held]
        if both:
            half = 2 * draft.variable(f"{piece.name}: groups of {wedge.name} {number}", piece.name, i)
            even.append((i, own.pairs.equals(half)))
    groups = said("groups-held", wedge=wedge.called, piece=piece.name, stitches=least, rows=4 if both else 2, number=number)
    asks(draft, groups, (wedge.origin,), lines, len(terms))
    alike = said("held-in-and-out", wedge=wedge.called, piece=piece.name, number=number)
    asks(draft, alike, (wedge.origin,), even, len(terms))


def _together(piece: Piece, one: Wedge, other: Wedge) -> bool:
    """Whether two wedges at opposite edges are held in some rows together."""
    if set(wedge_sides(one)) & set(wedge_sides(other)):
        return False
    begin = max(level_number(piece, w.from_level) for w in (one, other))
    return begin < min(level_number(piece, end_of(piece, w)) for w in (one, other))


def _in_work(draft: Draft, piece: Piece, numbers: tuple[int, ...], terms: Sequence[PieceTerms]) -> None:
    """Something stays in work while wedges are held. Where the parts of an opening are worked one by one, each has to."""
    wedges = [piece.wedges[n] for n in numbers]
    parted = beside(piece, wedges[0], "left") is not None
    if parted and all(w.width is None and w.rest is None and w.kind != "both" for w in wedges):
        return
    lines: Lines = []
    # Of one held in or let out the innermost group is in work all the while.
    stays = 1 if any(w.kind == "both" for w in wedges) else 0
    for i, t in enumerate(terms):
        held = {side: stitches + t.wedges[n].rest for n in numbers for side, stitches in t.wedges[n].held}
        places = {side: edge_at(piece, side, wedges[0].from_level, t.edge(side)) or t.edge(side).after[-1:] for side in SIDES}
        reach = {side: found[-1] for side, found in places.items()}
        if not parted:
            width = reach["left"] + reach["right"]
            lines.append((i, width - sum(held.values(), NOTHING) >= stays))
        else:
            for side, h in held.items():
                gap = beside(piece, wedges[0], side)
                assert gap is not None, "the piece is parted"
                lines.append((i, reach[side] - t.openings[gap].edge(side).after[-1] - h >= stays))
    names = tuple(dict.fromkeys(w.called for w in wedges))
    clause = said("stays-in-work", wedges=names, piece=piece.name, numbers=numbers)
    asks(draft, clause, tuple(w.origin for w in wedges), lines, len(terms))


# ----------------------------------------------------------------- slots


def _slots(draft: Draft, design: Design, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    """A slot has a stitch at least, and lies inside the piece with a stitch beside it."""
    for number, slot in enumerate(piece.slots):
        per_cm = fabric_below(design, piece, slot.level).stitches_per_cm
        lines: Lines = []
        for i, t in enumerate(terms):
            centre = slot.centre[i] * per_cm if slot.centre else 0.0
            lines.append((i, t.slots[number] >= 1))
            for side, towards in zip(SIDES, (-centre, centre), strict=True):
                for reach in edge_at(piece, side, slot.level, t.edge(side)):
                    # Its middle may be half a stitch from where it is wanted.
                    lines.append((i, 2 * reach - t.slots[number] >= ceil(2 * towards) + 3))
        asks(draft, said("lies-inside", slot=slot.name, piece=piece.name), (slot.origin,), lines, len(terms))
