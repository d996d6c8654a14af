"""How a piece begins and ends, and what its edges are called for making up."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.counted.model import PickUp, SizedOpening, SizedPiece, SizedRun
from walewright.counted.parts import open_at
from walewright.design.model import Design, Edging, Fabric, Piece
from walewright.glue.model import Face, right_side
from walewright.knit import steps as st
from walewright.knit.copies import Copy
from walewright.knit.folding import EdgingRows, counted, first_use, knitted, set_aside
from walewright.knit.lengths import gathering_cm, tail_cm
from walewright.knit.manners import EdgeStretchOf, LoopsOpen
from walewright.knit.needles_out import left_out
from walewright.knit.operations import NamedRows, Side, other
from walewright.knit.shoulder_rows import rows_at_end
from walewright.knit.shoulder_rows import told as rows_told
from walewright.knit.state import State
from walewright.knit.steps import Step
from walewright.knit.strips import Named, strip_note
from walewright.knit.tails import Tails
from walewright.knit.zones import said_of
from walewright.trade.ends import STARTS, WasteCastOn


def start(design: Design, piece: Piece, sized: SizedPiece, use: st.UseYarnStep, named: Named = frozenset()) -> tuple[Step, ...]:
    """From an empty bed to the first row of the piece: carriage at the right, counter at 0. `use` is its first row's yarn; `named`
    are the edgings whose ends have to be called something."""
    origin = piece.origin.path
    first = -sized.start_left
    needles = st.NeedlesToWork(first, first + sized.start - 1, sized.start, origin=origin)
    # Where needles are left out neither edging nor pick-up begins the piece.
    to_work = (needles, *left_out(sized))
    if piece.start_way == "along":
        begin: tuple[Step, ...] = (
            st.CarriageAt("right", origin=origin),
            needles,
            *pick_ups(sized.start_pick_ups, first, origin),
            use,
        )
    else:
        edging = edging_of(design, piece)
        if edging is not None and edging.when == "first":
            begin = _edging_first(design, edging, piece, sized, needles)
            said = next(s for s in reversed(begin) if isinstance(s, st.UseYarnStep | st.UseLooser))
            # After stripes it is said which of their yarns goes on.
            if said != use or design.fabric(edging.fabric).stripes:
                begin = (*begin, use)
            if "start" in named:
                begin = (*begin, *strip_note(edging, piece, "start", sized.edging_rows))
        elif (cast_on := STARTS[piece.start_way].cast_on) is not None:
            begin = (st.CarriageAt("right"), *to_work, use, st.ClosedStart(cast_on, origin=origin))
        else:
            begin = (*_waste_start(design, piece, 0, *to_work), use)
    return (*begin, st.SetRowCounter(0, origin=origin), st.Now(sized.start - len(sized.out(0)), 0, "right", origin=origin))


def edging_of(design: Design, piece: Piece) -> Edging | None:
    """The edging along the piece's start, if it has one."""
    return None if piece.start_edging is None else design.edging(piece.start_edging)


def _waste_start(design: Design, piece: Piece, rows: int, *needles: Step) -> tuple[Step, ...]:
    """From the carriage's side to the ravel cord, so that the carriage is at the right when `rows` more are knitted."""
    waste = design.machine.waste_rows
    # The ravel row is one more pass.
    side: Side = "right" if (waste + 1 + rows) % 2 == 0 else "left"
    way: WasteCastOn = "by hand" if piece.start_way == "hand waste" else design.machine.start
    # Below a hung hem the first of the rows is of ravel cord.
    return (st.CarriageAt(side), *needles, st.WasteStart(waste - (way == "hem"), way, origin=piece.origin.path))


def _edging_first(design: Design, edging: Edging, piece: Piece, sized: SizedPiece, needles: st.NeedlesToWork) -> tuple[Step, ...]:
    """The edging's rows before the piece, which goes on from them: on waste yarn if they are folded and hung up, else on a closed
    edge."""
    fabric = design.fabric(edging.fabric)
    origin = edging.origin.path
    rows = counted(edging, sized.edging_rows)
    worn = right_side(design, piece.fabric)
    said = said_of(design, fabric)
    use = first_use(edging, fabric, sized.edging_rows, said)
    begin: tuple[Step, ...]
    if (cast_on := STARTS[piece.start_way].cast_on) is None:
        begin = (*_waste_start(design, piece, rows, needles, *set_aside(edging, needles.first, needles.last)), use)
    else:
        side: Side = "right" if rows % 2 == 0 else other("right")
        begin = (st.CarriageAt(side, origin=origin), needles, use, st.ClosedStart(cast_on, origin=origin))
    return (
        *begin,
        st.SetRowCounter(0, origin=origin),
        *knitted(EdgingRows(edging, fabric, sized.edging_rows, needles.first, needles.last, worn), "right", design.machine, said),
    )


def pick_ups(picked: tuple[PickUp, ...], first: int, origin: str, idle: tuple[int, ...] = ()) -> Iterator[Step]:
    """Loops hung on from needle `first` to the right, in order, `idle` needles passed over."""
    at = first
    for pick in picked:
        if pick.stitches:
            last = at + pick.stitches - 1
            stitches = pick.stitches - sum(at <= x <= last for x in idle)
            copy = Copy(pick.copy)
            loops = _loops(pick, stitches)
            stretch, low, high = _stretch(pick)
            yield st.PickUpAlong(
                piece=pick.edge.piece,
                edge=pick.edge.edge,
                part=pick.part,
                stitches=stitches,
                first=at,
                last=last,
                facing=pick.facing,
                left_end=pick.left_end,
                copy=copy,
                loops=loops,
                stretch=stretch,
                low=low,
                high=high,
                per=pick.ratio[0],
                every=pick.ratio[1],
                origin=origin,
            )
            at = last + 1


def _loops(pick: PickUp, stitches: int) -> LoopsOpen:
    even = stitches == pick.points
    if pick.live and pick.edge.edge == "start" and pick.between is None:
        return "on cord" if even else "cord"
    return "open" if pick.live and even else ""


def _stretch(pick: PickUp) -> tuple[EdgeStretchOf, int, int]:
    if pick.between is None:
        return "", 0, 0
    return "rows" if pick.left_end in ("bottom", "top") else "stitches", *pick.between


def finish(design: Design, piece: Piece, edge: str, fabric: Fabric, stitches: int, tails: Tails) -> tuple[Step, ...]:
    """The `stitches` of the last row, in `fabric` or that of the edging knitted on, off the bed, called `edge` if left open."""
    origin = piece.origin.path
    fabric = fabric if piece.end_edging is None else design.edged_in(piece.end_edging)
    tail = tails.of_end(piece.name, edge, fabric, stitches)
    if piece.end_way == "waste":
        return (st.BreakOff(tail, origin=origin), st.OffOnWaste(design.machine.waste_rows, edge, origin=origin))
    if piece.end_way == "gathered":
        return (st.BreakOff(gathering_cm(fabric, stitches), origin=origin), st.GatherAll(origin=origin))
    if piece.end_way == "sewn-off":
        return (st.BreakOff(tail_cm(fabric, stitches), origin=origin), st.SewOffAll(origin=origin))
    return (st.CastOffAll(origin=origin), st.BreakOff(tail, origin=origin))


def knitted_on(design: Design, piece: Piece, sized: SizedPiece, state: State, worn: Face) -> tuple[Step, ...]:
    """The edging at the end of a piece, on the stitches of its last row, which are in work, up to its own last row; nothing where
    there is none. The counter goes on from the piece's rows, after which the carriage is at the right. `worn`: the side
    of the piece that is worn outside."""
    if piece.end_edging is None:
        return ()
    edging = design.edging(piece.end_edging)
    fabric = design.fabric(edging.fabric)
    said = said_of(design, fabric)
    after = sized.counter(sized.rows)
    ends: Side = "right" if counted(edging, sized.end_rows) % 2 == 0 else "left"
    use = first_use(edging, fabric, sized.end_rows, said)
    of = EdgingRows(edging, fabric, sized.end_rows, state.first, state.last, worn, after=after)
    return (
        *([] if (use.yarn, use.tension) == state.yarn and not said else [use]),
        *knitted(of, ends, design.machine, said),
    )


# ----------------------------------------------------------------- names of edges


def edge_notes(piece: Piece, sized: SizedPiece, steps: Sequence[Step]) -> Iterator[Step]:
    """The named edges, by what the row counter shows where they begin and end in the `steps` of the piece."""
    left, right = _named(sized.left), _named(sized.right)
    for run in left:
        # Edges alike of one statement are one name for both sides.
        yield _edge(sized, run, "outer" if piece.symmetric or run in right else "left")
    if not piece.symmetric:
        yield from (_edge(sized, run, "right") for run in right if run not in left)
    for opening in sized.openings:
        yield _inner(sized, opening)
    # Said once of edges alike.
    yield from dict.fromkeys(_above(sized, steps))


NamedRun = tuple[str, int, int, str]
"""(name, from row, to row, origin)"""


def _above(sized: SizedPiece, steps: Sequence[Step]) -> Iterator[Step]:
    """A note of the rows that are knitted at an outer end above a named edge, where a shoulder is held from there in steps. That
    edge is measured to where the shoulder begins (common practice)."""
    ends: tuple[tuple[Side, tuple[SizedRun, ...]], ...] = (("left", sized.left), ("right", sized.right))
    for side, runs in ends:
        named = _named(runs)
        last = named[-1] if named else None
        for wedge in sized.wedges:
            after = sized.rows - wedge.to_row
            begins = last is not None and wedge.kind == "in" and wedge.edge in (side, "both") and last[2] == wedge.from_row
            if last is not None and begins and after <= 2:
                begin, end = sized.counter(last[2]), sized.counter(sized.rows)
                rows = rows_at_end(steps, side, begin)
                yield st.Say(rows_told(last[0], rows, begin, end), origin=last[3])


def _named(runs: tuple[SizedRun, ...]) -> list[NamedRun]:
    """Runs with names; what goes on under the same name is one edge."""
    found: list[NamedRun] = []
    for run in runs:
        if not run.name or run.across:
            continue
        if found and found[-1][0] == run.name and found[-1][2] == run.from_row:
            found[-1] = (run.name, found[-1][1], run.to_row, found[-1][3])
        else:
            found.append((run.name, run.from_row, run.to_row, run.origin.path))
    return found


def _edge(sized: SizedPiece, named: NamedRun, where: NamedRows) -> Step:
    name, begin, end, origin = named
    return st.EdgeIs(name, where, sized.counter(begin), sized.counter(end), origin=origin)


def _inner(sized: SizedPiece, opening: SizedOpening) -> Step:
    begin, end = sized.counter(opening.row), sized.counter(opening.to_row)
    gaps = open_at(sized, opening.row)
    if len(gaps) == 1:
        return st.EdgeIs(opening.name, "inner", begin, end, origin=opening.origin.path)
    return st.GapIs(opening.name, "inner", begin, end, gaps.index(opening) + 1, origin=opening.origin.path)
