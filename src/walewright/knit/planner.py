"""The planner: counts into a knitter's sentences, for every size.

A piece is a whole width up to its parting (if any), then the half at the carriage, then, with the counter taken back,
the other half as its mirror image. Each part is woven from the tracks of its edges. The bed proves what is planned here.
"""

from __future__ import annotations

from walewright.design.model import Design, EdgeName, Piece
from walewright.knit import steps as st
from walewright.knit.bands import band_block, edging_block
from walewright.knit.hands import State, perform
from walewright.knit.operations import Side
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.knit.tracks import BOTH, Group, mark_groups, run_groups, wedge_groups
from walewright.knit.weave import Key, Part, crowded, weave
from walewright.solve.model import Counts, SizedGarment, SizedOpening, SizedPiece, SizedRun

Paragraph = tuple[str, tuple[Step, ...]]

SIDES: tuple[Side, Side] = ("left", "right")

_LEAD: dict[Side, int] = {"left": 0, "right": 1}
"""Over the full width the carriage is at the right at the wedge's row: the left end can be held at once, the right a row later."""


def plan(design: Design, counts: Counts) -> tuple[SizePlan, ...]:
    """One plan per size, in the order of `counts.sizes`."""
    unrolled = {p.name: _crowded_in_any_size(design, p, counts) for p in design.pieces}
    return tuple(_size_plan(design, garment, unrolled) for garment in counts.sizes)


def _size_plan(design: Design, garment: SizedGarment, unrolled: dict[str, frozenset[Key]]) -> SizePlan:
    blocks: list[StepBlock] = []
    for piece in design.pieces:
        sized = garment.piece(piece.name)
        blocks.append(_piece_block(design, piece, sized, unrolled[piece.name]))
        if piece.start_edging is not None:
            blocks.append(edging_block(design, piece, sized))
    for band in design.bands:
        blocks.append(band_block(design, band, next(b for b in garment.bands if b.name == band.name)))
    joins = tuple(
        st.JoinEdges(_edges(j.one), _edges(j.other), round(j.easing_cm * 10), origin=j.origin.path) for j in garment.joins
    )
    return SizePlan(garment.size, tuple(blocks), joins)


def _edges(names: tuple[EdgeName, ...]) -> str:
    return " + ".join(f"{n.piece} {n.edge}" for n in names)


# ----------------------------------------------------------------- parts of a piece


def _opening(sized: SizedPiece) -> SizedOpening | None:
    return sized.openings[0] if sized.openings else None


def _outer(sized: SizedPiece, side: Side) -> tuple[SizedRun, ...]:
    return sized.left if side == "left" else sized.right


def _whole(design: Design, piece: Piece, sized: SizedPiece) -> Part:
    """The full width, from row 0 to the parting or the top."""
    opening = _opening(sized)
    last_row = opening.row if opening else sized.rows
    groups: list[Group] = []
    if piece.symmetric:
        groups += _run_track("outer", sized.left, BOTH)
    else:
        groups += _run_track("outer left", sized.left, "left end")
        groups += _run_track("outer right", sized.right, "right end")
    for wedge in sized.wedges:
        for side in SIDES:
            if wedge.edge in ("both", side) and wedge.from_row < last_row:
                groups += wedge_groups(f"wedge {side}", wedge, side, 0, _LEAD[side], wedge.origin.path)
    groups += mark_groups("mark", sized.left, _met(design, piece), piece.origin.path)
    return Part(0, last_row, tuple(g for g in groups if g.moves[0].row < last_row))


def _half(design: Design, piece: Piece, sized: SizedPiece, opening: SizedOpening, side: Side) -> Part:
    """The half whose outer edge is at `side`, from the parting to the top."""
    neck_end = "left end" if side == "right" else "right end"
    groups = _run_track("outer", _outer(sized, side), f"{side} end")
    groups += run_groups("neck", opening.run, 0, neck_end, opening.origin.path)
    for wedge in sized.wedges:
        if wedge.edge in ("both", side):
            done = max(0, (opening.row - wedge.from_row) // 2)
            groups += wedge_groups("wedge", wedge, side, done, 1, wedge.origin.path)
    groups += mark_groups("mark", _outer(sized, side), _met(design, piece), piece.origin.path)
    return Part(opening.row, sized.rows, tuple(g for g in groups if g.moves[-1].row >= opening.row))


def _met(design: Design, piece: Piece) -> frozenset[str]:
    """Names of the piece's edges that are joined or picked up."""
    joined = (edge for join in design.joins for edge in (*join.one, *join.other))
    picked = (edge for band in design.bands for edge in band.along)
    return frozenset(edge.edge for edge in (*joined, *picked) if edge.piece == piece.name)


def _run_track(track: str, runs: tuple[SizedRun, ...], ends: str) -> list[Group]:
    return [g for number, run in enumerate(runs) for g in run_groups(track, run, number, ends, run.origin.path)]


def _crowded_in_any_size(design: Design, piece: Piece, counts: Counts) -> frozenset[Key]:
    parts: list[Part] = []
    for garment in counts.sizes:
        sized = garment.piece(piece.name)
        parts.append(_whole(design, piece, sized))
        opening = _opening(sized)
        if opening:
            parts += [_half(design, piece, sized, opening, "right"), _half(design, piece, sized, opening, "left")]
    return crowded(parts)


# ----------------------------------------------------------------- a piece's sentences


def _piece_block(design: Design, piece: Piece, sized: SizedPiece, unrolled: frozenset[Key]) -> StepBlock:
    state = State(piece.name)
    paragraphs: list[Paragraph] = []

    def add(title: str, steps: tuple[Step, ...]) -> None:
        nonlocal state
        for step in steps:
            _, state = perform(state, step)
        paragraphs.append((title, steps))

    add("Cast on", _start(design, piece, sized))
    body, state = weave(_whole(design, piece, sized), unrolled, state)
    paragraphs.append(("Knit" if _plain(body) else "Knit and shape", body))
    opening = _opening(sized)
    if opening is None:
        add("Finish", _finish(design, piece, "end"))
    else:
        parting = _parting(opening, state)
        add("Part for the neck", parting)
        right, state = weave(_half(design, piece, sized, opening, "right"), unrolled, state)
        paragraphs.append(("Right half", right))
        add("", _finish(design, piece, "shoulder right"))
        add("Return to the left half", _second_half(design, piece, opening, parting))
        left, state = weave(_half(design, piece, sized, opening, "left"), unrolled, state)
        paragraphs.append(("Left half", left))
        add("", _finish(design, piece, "shoulder left"))
    add("Edges for making up", _edge_notes(sized))
    return StepBlock(piece.name, piece.name, piece.copies, tuple(p for p in paragraphs if p[1]))


def _plain(steps: tuple[Step, ...]) -> bool:
    return all(isinstance(s, st.KnitTo | st.KnitRows | st.Now | st.MarkEdges) for s in steps)


def _start(design: Design, piece: Piece, sized: SizedPiece) -> tuple[Step, ...]:
    fabric = design.fabric(piece.fabric)
    half = sized.start // 2
    origin = piece.origin.path
    use = st.UseYarnStep(fabric.yarn, fabric.tension, origin=origin)
    needles = st.NeedlesToWork(-half, sized.start - half - 1, sized.start, origin=origin)
    if piece.start_way == "waste":
        rows = design.machine.waste_rows
        # The ravel row is one more pass; main knitting begins with the carriage at the right.
        side: Side = "right" if (rows + 1) % 2 == 0 else "left"
        begin: tuple[Step, ...] = (st.CarriageAt(side), needles, st.WasteStart(rows, origin=origin), use)
    else:
        begin = (st.CarriageAt("right"), needles, use, st.ClosedStart(piece.start_way, origin=origin))
    return (*begin, st.SetRowCounter(0, origin=origin), st.Now(sized.start, 0, "right", origin=origin))


def _finish(design: Design, piece: Piece, edge: str) -> tuple[Step, ...]:
    origin = piece.origin.path
    if piece.end_way == "waste":
        return (st.BreakOff(origin=origin), st.OffOnWaste(design.machine.waste_rows, edge, origin=origin))
    return (st.CastOffAll(origin=origin), st.BreakOff(origin=origin))


def _parting(opening: SizedOpening, state: State) -> tuple[Step, ...]:
    origin = opening.origin.path
    half = opening.flat // 2
    centre: tuple[Step, ...] = ()
    if opening.flat:
        centre = (st.CentreToWaste(opening.flat, -half, half - 1, f"{opening.name} centre", origin=origin),)
    first = state.first + state.held_left
    return (*centre, st.HoldPart("left", first, -half - 1, origin=origin))


def _second_half(design: Design, piece: Piece, opening: SizedOpening, parting: tuple[Step, ...]) -> tuple[Step, ...]:
    origin = opening.origin.path
    fabric = design.fabric(piece.fabric)
    held = next(s for s in parting if isinstance(s, st.HoldPart))
    return (
        st.CarriageAt("left", origin=origin),
        st.SetRowCounter(opening.row, origin=origin),
        st.ReturnPart("left", held.first, held.last, origin=origin),
        st.UseYarnStep(fabric.yarn, fabric.tension, origin=origin),
    )


def _edge_notes(sized: SizedPiece) -> tuple[Step, ...]:
    notes: list[Step] = []
    for run in sized.left:
        if run.name:
            notes.append(st.EdgeIs(run.name, "outer", run.from_row, run.to_row, origin=run.origin.path))
    for opening in sized.openings:
        notes.append(st.EdgeIs(opening.name, "inner", opening.row, sized.rows, origin=opening.origin.path))
    return tuple(notes)
