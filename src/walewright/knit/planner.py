"""The planner: counts into a knitter's sentences, for every size.

A piece is a row of parts (`parts`): the whole width, at openings the parts between them one after the other, and what they come
to where they rejoin. Each part is woven from the tracks of its edges and of what lies between them. The bed proves
what is planned here.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby, takewhile

from walewright.counted import counted_piece
from walewright.counted.model import SizedGarment, SizedPiece
from walewright.counted.parts import SizedPart
from walewright.design.model import Design, Piece
from walewright.glue.model import Face, Glued, GluedSizes, Task, start_facing
from walewright.knit import part_titles, parting
from walewright.knit import steps as st
from walewright.knit.alike_seams import told_together
from walewright.knit.at_once import Crowd, crowds
from walewright.knit.bands import band_block, edging_block
from walewright.knit.ends import edge_notes, finish, knitted_on, start
from walewright.knit.fold import NOTHING_KNOWN, BodyShape, Known, body_shape
from walewright.knit.hands import perform
from walewright.knit.order import GroupKey, RowStretch
from walewright.knit.parts import PiecePart, PiecePattern, parts, pattern
from walewright.knit.seaming import joins, links, made_on_the_bed, sewn_ends
from walewright.knit.state import State
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.knit.strips import Named, end_note, named_strips
from walewright.knit.tail_ends import top_of
from walewright.knit.tails import Tails, agreed, tails
from walewright.knit.weave import crowded, weave
from walewright.knit.working_order import WorkedPart
from walewright.knit.zones import Fabrics
from walewright.record import record, replace
from walewright.report.said import said
from walewright.solve.model import Counts

PlannedParagraph = tuple[st.Words, tuple[Step, ...]]

SHAPED = said("knit-and-shape")
_UNSHAPED = (st.KnitTo, st.KnitRows, st.Now, st.MarkEdges, st.StartChart, st.StopChart, st.StopChartOn, st.StartStripes)


def plan(design: Design, glued: GluedSizes, counts: Counts) -> tuple[SizePlan, ...]:
    """One plan per size, in the order of `counts.sizes`; things are done in the order of `glued`."""
    drafts = {piece.name: _draft(design, piece, tuple(g.piece(piece.name) for g in counts.sizes)) for piece in design.pieces}
    needed: dict[int, Tails] = {}
    for group, sizes in zip(glued.groups, glued.sizes, strict=True):
        needed |= zip(sizes, agreed([tails(design, group, counts.sizes[size]) for size in sizes]), strict=True)
    return told_together(
        tuple(_size_plan(design, glued.in_size(size), garment, drafts, needed[size]) for size, garment in enumerate(counts.sizes))
    )


@record
class _Draft:
    """A piece's pattern, what has to be taken apart in all its sizes, and the bodies of repeats found so, by paragraph."""

    pattern: PiecePattern
    unrolled: frozenset[GroupKey]
    known: Mapping[st.Words, Known]
    crowds: Mapping[tuple[int, int], tuple[Crowd, ...]]
    """What is told as going on together, by the numbers of the part and of the stretch in it."""


def _draft(design: Design, piece: Piece, sizes: tuple[SizedPiece, ...]) -> _Draft:
    found = pattern(design, piece, sizes)
    every = [parts(found, sized) for sized in sizes]
    unrolled = crowded(s for some in every for part in some for s in part.stretches)
    places: dict[tuple[int, int], list[RowStretch]] = {}
    for some in every if len(sizes) > 1 else ():
        for i, part in enumerate(some):
            for j, rows in enumerate(part.stretches):
                places.setdefault((i, j), []).append(rows)
    draft = _Draft(found, unrolled, {}, {place: crowds(rows) for place, rows in places.items()})
    if not unrolled or len(sizes) == 1:
        return draft
    repeated: dict[st.Words, Counter[BodyShape]] = {}
    for sized in sizes:
        for title, steps in _piece_block(draft, sized, Tails()).paragraphs:
            bodies = {body_shape(s.body) for s in steps if isinstance(s, st.Repeat) and s.times > 1}
            repeated.setdefault(title, Counter()).update(bodies)
    return replace(draft, known=repeated)


def _size_plan(design: Design, glued: Glued, garment: SizedGarment, drafts: Mapping[str, _Draft], needed: Tails) -> SizePlan:
    """Everything in the order of work. Seams and steps that follow each other are one block of joining."""
    blocks: list[StepBlock] = []
    for kind, tasks in groupby(glued.order, key=lambda task: _room(design, glued, task)):
        for made in _done(design, glued, garment=garment, drafts=drafts, needed=needed, room=kind, tasks=tuple(tasks)):
            blocks.append(made)
    return SizePlan(garment.size, tuple(_titled(tuple(_steps_apart(blocks)))), bool(design.machine.plates))


def _steps_apart(blocks: Sequence[StepBlock]) -> Iterator[StepBlock]:
    """Steps of the author's that come before all joins, a block of their own where more is knitted after them: they are of the
    whole garment, and would not be looked for under the join or the band that happens to come next."""
    first = next((at for at, block in enumerate(blocks) if block.joining or block.linked is not None), len(blocks))
    for at, block in enumerate(blocks):
        steps = [step for _, told in block.paragraphs for step in told]
        said_first = list(takewhile(lambda step: isinstance(step, st.Say), steps))
        if at != first or not block.joining or at + 1 == len(blocks) or not said_first:
            yield block
            continue
        yield StepBlock(JOINING, 1, (("", tuple(said_first)),), joining=True, opening=True)
        if len(said_first) < len(steps):
            yield replace(block, paragraphs=(("", tuple(steps[len(said_first) :])),))


def _room(design: Design, glued: Glued, task: Task) -> str:
    """Where a task is done: on the bed, or off it."""
    if task.kind in ("step", "ends"):
        return "by hand"
    if task.kind == "seam":
        return "links" if made_on_the_bed(design, glued.seams[task.number]) else "by hand"
    return "bed"


def _done(
    design: Design,
    glued: Glued,
    garment: SizedGarment,
    drafts: Mapping[str, _Draft],
    needed: Tails,
    room: str,
    tasks: Sequence[Task],
) -> Iterator[StepBlock]:
    if room == "by hand":
        yield StepBlock(JOINING, 1, (("", tuple(_by_hand(design, glued, garment, needed, tasks))),), joining=True)
    elif room == "links":
        yield from links(design, glued, garment, [task.number for task in tasks])
    else:
        yield from (_knitted(design, glued, garment, drafts, needed, task) for task in tasks)


def _knitted(
    design: Design, glued: Glued, garment: SizedGarment, drafts: Mapping[str, _Draft], needed: Tails, task: Task
) -> StepBlock:
    if task.kind == "band":
        band = next(b for b in design.bands if b.name == task.name)
        return band_block(design, glued, garment, band, next(b for b in garment.bands if b.name == band.name))
    piece, sized = design.piece(task.name), garment.piece(task.name)
    if task.kind == "edging":
        return edging_block(design, glued, piece, sized, start_facing(design, piece.name), needed)
    return _piece_block(drafts[task.name], sized, needed, named_strips(glued, piece), dict(glued.worn)[piece.name])


def _by_hand(design: Design, glued: Glued, garment: SizedGarment, needed: Tails, tasks: Sequence[Task]) -> Iterator[Step]:
    """The seams and the author's steps, in the order of work."""
    for kind, some in groupby(tasks, key=lambda task: task.kind):
        numbers = [task.number for task in some]
        if kind == "step":
            yield from (st.Say(design.making_up[number], "by hand") for number in numbers)
        elif kind == "ends":
            yield from sewn_ends(design, glued, garment, numbers, needed.ends)
        else:
            yield from joins(design, glued, garment, numbers, needed.sewing)


JOINING = "joining"
"""Blocks of what is done off the bed are called so, and numbered."""


def _titled(blocks: Sequence[StepBlock]) -> Iterator[StepBlock]:
    """Blocks of joining know what is knitted after them; the last one is the making up."""
    number = 0
    for at, block in enumerate(blocks):
        if not block.joining:
            yield block
            continue
        number += not block.opening
        after = next((b for b in blocks[at + 1 :] if not b.joining), None)
        yield replace(block, name=f"{JOINING} {number}", before=(after.linked or after.name) if after else "")


# ----------------------------------------------------------------- a piece's sentences


def _piece_block(draft: _Draft, sized: SizedPiece, needed: Tails, named: Named = frozenset(), worn: Face = "knit") -> StepBlock:
    design, piece = draft.pattern.design, draft.pattern.piece
    fabrics = Fabrics(counted_piece(design, sized))
    state = State(piece.name, by_needle=False)
    paragraphs: list[PlannedParagraph] = []

    def add(title: st.Words, steps: tuple[Step, ...]) -> None:
        nonlocal state
        for step in steps:
            _, state = perform(state, step)
        paragraphs.append((title, steps))

    def knit(number: int, part: PiecePart, title: st.Words) -> None:
        nonlocal state
        made: list[Step] = []
        known = draft.known.get(title, NOTHING_KNOWN)
        for place, rows in enumerate(part.stretches):
            steps, state = weave(rows, draft.unrolled, state, known, draft.crowds.get((number, place), ()))
            # What must be true is stated once between two stretches.
            made += steps[1:] if made and steps and made[-1] == steps[0] else steps
        if title == SHAPED and _plain(made):
            title = said("knit")
        if design.machine.edge_guides and not _plain(made):
            made.insert(0, st.Say(said("edge-guides"), origin=piece.origin.path))
        paragraphs.append((title, tuple(made)))

    def off(edge: str) -> tuple[Step, ...]:
        return finish(design, piece, edge, fabrics.at(sized.rows - 1), state.last - state.first + 1, needed)

    add(said("cast-on"), start(design, piece, sized, fabrics.use(0), named))
    worked = parts(draft.pattern, sized)
    for number, part in enumerate(worked):
        turn, own = part.turn, part.turn.part
        if turn.turned:
            add(*_turned_to(piece, fabrics, part, worked[number - 1].turn, state))
        knit(number, part, part_titles.of_part(piece, sized, own) if number else SHAPED)
        if turn.openings:
            add(*_given_way(fabrics, turn, worked[number + 1].turn.part, state))
        elif turn.then == "ends" and not own.whole:
            add("", off(top_of(sized, own)))
    if worked[-1].turn.part.whole:
        add(said("knit-on"), knitted_on(design, piece, sized, state, worn))
        add(said("finish"), off("end"))
    knitted = [step for _, steps in paragraphs for step in steps]
    add(said("edges"), (*edge_notes(piece, sized, knitted), *end_note(design, piece, sized, named)))
    return StepBlock(piece.name, sized.copies, tuple(p for p in paragraphs if p[1]), of=piece.name)


def _turned_to(piece: Piece, fabrics: Fabrics, part: PiecePart, before: WorkedPart, state: State) -> PlannedParagraph:
    """A part that has waited, begun."""
    sized, own = fabrics.of.sized, part.turn.part
    begun = tuple((sized.counter(figure.from_row), figure.start) for figure in part.taken_up)
    use, at = fabrics.use(own.from_row), sized.counter(own.from_row)
    return part_titles.returned_to(piece, sized, own), parting.turn_to(own, before, state=state, counter=at, use=use, begun=begun)


def _given_way(fabrics: Fabrics, turn: WorkedPart, after: SizedPart, state: State) -> PlannedParagraph:
    """What is done where a part ends to be parted, or to be joined with others."""
    use, crossing = fabrics.use(after.from_row), fabrics.of.design.machine.crossing
    if turn.then == "parts":
        return part_titles.parted_for(turn.openings), parting.part(turn, after, state, use, crossing)
    return part_titles.closed(turn.openings), parting.rejoin(turn, after, state, fabrics.at(after.from_row), use, crossing)


def _plain(steps: list[Step]) -> bool:
    return all(isinstance(s, _UNSHAPED) for s in steps)
