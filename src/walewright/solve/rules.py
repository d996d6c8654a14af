"""What a bed and a pair of hands ask of a piece's numbers, as rules of the programme."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Design, EdgeRun, Opening, Origin, Piece, Wedge
from walewright.solve.pieces import SIDES, EdgeTerms, PieceTerms
from walewright.solve.programme import Draft, Kind, Linear, Rule, Terms, total

Lines = list[tuple[int, Linear]]


def piece_rules(draft: Draft, design: Design, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    """Writes the rules of a piece into the draft."""
    _levels(draft, piece, terms)
    _bed(draft, design, piece, terms)
    for side in SIDES[:1] if piece.symmetric else SIDES:
        runs = piece.left if side == "left" else piece.right
        for number, run in enumerate(runs):
            if any(run.change):
                _one_way(draft, piece, run, number, [t.edge(side) for t in terms])
                _room(draft, piece, run, number, side, terms)
    for number, opening in enumerate(piece.openings):
        _opening(draft, piece, opening, number, terms)
    for wedge in piece.wedges:
        _wedge(draft, piece, wedge, terms)


def _rule(
    draft: Draft, name: str, kind: Kind, origins: tuple[Origin, ...], says: str, fails: str, lines: Lines, sizes: int
) -> None:
    made = [(i, line) for i, line in lines if line.terms]
    if made:
        draft.rules.append(Rule(name, kind, origins, (says,) * sizes, (fails,) * sizes, tuple(made)))


def below(piece: Piece, run: int, side: str) -> str:
    """The level where a run begins: where the last one ended."""
    runs = piece.left if side == "left" else piece.right
    return runs[run - 1].to_level if run else piece.levels[0].name


def _levels(draft: Draft, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    lines: Lines = []
    for low, high in zip(piece.levels, piece.levels[1:], strict=False):
        lines += [(i, Linear(total((t.rows[high.name], 1), (t.rows[low.name], -1)), 1, None)) for i, t in enumerate(terms)]
    says = f"there are two rows or more between two levels of the {piece.name}"
    fails = f"there cannot be two rows or more between all levels of the {piece.name}"
    _rule(draft, f"rising levels of the {piece.name}", Kind.CONSTRUCTION, (piece.origin,), says, fails, lines, len(terms))


def _bed(draft: Draft, design: Design, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    half = design.machine.needles // 2
    lines: Lines = []
    for i, t in enumerate(terms):
        for edge in (t.left, t.right):
            lines += [(i, Linear(place, None, half)) for place in {edge.start, *edge.after}]
    says = f"the bed has {design.machine.needles} needles"
    fails = f"the {piece.name} cannot hang on {design.machine.needles} needles"
    origins = (piece.origin, design.machine.origin)
    _rule(draft, f"bed width of the {piece.name}", Kind.MACHINE, origins, says, fails, lines, len(terms))


def _one_way(draft: Draft, piece: Piece, run: EdgeRun, number: int, edges: Sequence[EdgeTerms]) -> None:
    """A run moves in or out, not both; steps are equal; a cast-off is part of the move."""
    lines: Lines = []
    for i, (edge, change) in enumerate(zip(edges, run.change, strict=True)):
        outwards = total((edge.after[number], 1), (edge.before(number), -1))
        if change >= 0:
            lines.append((i, Linear(outwards, 0, None)))
        if change <= 0:
            lines.append((i, Linear(total((outwards, -1), (edge.cast_off[number], -1)), 0, None)))
        if edge.step[number]:
            sign = 1 if change >= 0 else -1
            lines.append((i, Linear(total((outwards, 1), (edge.step[number], -sign * run.steps)), 0, 0)))
    says = f"the edge of the {piece.name} to `{run.to_level}` moves one way" + (" in equal steps" if run.steps else "")
    fails = says.replace(" moves ", " cannot move ")
    _rule(draft, f"way of the edge to {run.to_level}", Kind.CONSTRUCTION, (run.origin,), says, fails, lines, len(edges))
    if run.way.kind == "fashioned":
        need = run.way.inset + 1
        lines = [(i, Linear(place, need, None)) for i, e in enumerate(edges) for place in (e.before(number), e.after[number])]
        says = f"shaping {run.way.inset} in takes {need} stitches on each side"
        fails = f"the {piece.name} cannot be shaped {run.way.inset} in"
        _rule(draft, f"stitches to shape at {run.to_level}", Kind.CONSTRUCTION, (run.origin,), says, fails, lines, len(edges))


def _room(draft: Draft, piece: Piece, run: EdgeRun, number: int, side: str, terms: Sequence[PieceTerms]) -> None:
    """So many moves need so many rows. A new width is knitted for a row at least before the run ends."""
    lines: Lines = []
    every = 1
    # A move that takes both ends in turn cannot be made at the row where a piece parts.
    parts = 1 if piece.openings else 0
    for i, t in enumerate(terms):
        edge = t.edge(side)
        pairs = total((t.rows[run.to_level], 1), (t.rows[below(piece, number, side)], -1))
        moved = total((edge.after[number], 1), (edge.before(number), -1))
        inwards = run.change[i] < 0
        size = total((moved, -1 if inwards else 1), (edge.cast_off[number], -1))
        if run.path == "slope" and (inwards or run.way.kind == "fashioned"):
            # One stitch every row; after a cast-off the first move waits for the other end's turn, and an increase needs a
            # stitch below the last row's to be filled from.
            waits = edge.cast_off[number] or (number == 0 and not inwards)
            lines.append((i, Linear(total((pairs, 2), (size, -1)), 2 if waits else 1, None)))
        elif run.path == "slope":
            every = 2
            lines.append((i, Linear(total((pairs, 1), (size, -1)), 1 + parts, None)))
        elif run.path == "steps":
            lines.append((i, Linear(pairs, run.steps + 1 + parts, None)))
        else:
            lines.append((i, Linear(pairs, 2 + parts, None)))
    how_often = "once a row" if every == 1 else "once in two rows"
    what = "moves by one stitch" if run.path == "slope" else "moves"
    if run.path != "slope":
        how_often = "once in two rows"
    says = f"the edge of the {piece.name} to `{run.to_level}` {what} {how_often} at most"
    fails = f"the edge of the {piece.name} to `{run.to_level}` cannot move so far in so few rows: it {what} {how_often} at most"
    _rule(draft, f"room for the edge to {run.to_level}", Kind.CONSTRUCTION, (run.origin,), says, fails, lines, len(terms))


def shoulder(t: PieceTerms, side: str, opening: int | None) -> Terms:
    """Stitches between an outer edge and the opening (or the centre) at the top."""
    at_top = t.edge(side).after[-1]
    return at_top if opening is None else total((at_top, 1), (t.openings[opening].half, -1))


def _opening(draft: Draft, piece: Piece, opening: Opening, number: int, terms: Sequence[PieceTerms]) -> None:
    size = len(terms)
    top = piece.levels[-1].name
    what = f"the {opening.name} of the {piece.name}"
    fits: Lines = []
    beside: Lines = []
    room: Lines = []
    least = max(1, opening.way.inset)
    for i, t in enumerate(terms):
        own = t.openings[number]
        fits.append((i, Linear(own.half, 1, None)))
        fits.append((i, Linear(total((own.half, 1), (own.flat, -1)), 0, None)))
        fits.append((i, Linear(own.depth, 1, None)))
        fits.append((i, Linear(total((t.rows[top], 1), (own.depth, -1)), 1, None)))
        beside += [(i, Linear(shoulder(t, side, number), least, None)) for side in SIDES]
        if opening.shape == "v":
            room.append((i, Linear(total((own.depth, 2), (own.half, -1), (own.flat, 1)), 1, None)))
    says = f"{what} begins above the start and is no wider at its middle than at its top"
    _rule(draft, f"form of {what}", Kind.CONSTRUCTION, (opening.origin,), says, f"{what} cannot be formed", fits, size)
    says = f"{least} stitches or more are left on each side of {what}"
    fails = f"no stitches can be left on each side of {what}"
    _rule(draft, f"stitches beside {what}", Kind.CONSTRUCTION, (opening.origin,), says, fails, beside, size)
    says = f"the edge of {what} moves by one stitch once a row at most"
    fails = f"the edge of {what} cannot move so far in so few rows: it moves by one stitch once a row at most"
    _rule(draft, f"room for {what}", Kind.CONSTRUCTION, (opening.origin,), says, fails, room, size)


def _wedge(draft: Draft, piece: Piece, wedge: Wedge, terms: Sequence[PieceTerms]) -> None:
    """Every two rows a group is held, and a group is a stitch at least; a fashioned neck beside it needs as many as its tool."""
    opening = 0 if piece.openings else None
    least = max(1, piece.openings[0].way.inset) if piece.openings else 1
    top = piece.levels[-1].name
    lines: Lines = []
    for i, t in enumerate(terms):
        groups = total((t.rows[top], 1), (t.rows[wedge.from_level], -1))
        sides = SIDES if wedge.edge == "both" else (wedge.edge,)
        lines += [(i, Linear(total((shoulder(t, side, opening), 1), (groups, -least)), 0, None)) for side in sides]
    group = "a stitch" if least == 1 else f"{least} stitches"
    what = f"the {wedge.name} of the {piece.name}"
    says = f"each two rows of {what} hold {group} at least"
    fails = f"there cannot be {group} for each two rows of {what}"
    _rule(draft, f"groups of {what}", Kind.CONSTRUCTION, (wedge.origin,), says, fails, lines, len(terms))
