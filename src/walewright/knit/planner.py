"""The planner: counts into a knitter's sentences, for every size.

A piece is a row of parts (`parts`): the whole width, at an opening the parts beside it one after the other, and the whole
width again where they rejoin. Each part is woven from the tracks of its edges and of what lies between them. The bed proves
what is planned here.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from walewright.design.model import Band, Design, EdgeName, Piece
from walewright.knit import parting
from walewright.knit import steps as st
from walewright.knit.at_once import Crowd, crowds
from walewright.knit.bands import band_block, edging_block
from walewright.knit.ends import edge_notes, edging_of, finish, start
from walewright.knit.figures import figures, taken_up
from walewright.knit.fold import Known, body_shape
from walewright.knit.hands import perform
from walewright.knit.linking import links
from walewright.knit.order import Key, Stretch
from walewright.knit.parts import Pattern, PiecePart, parts, pattern
from walewright.knit.state import State
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.knit.tails import Tails, open_end, tails
from walewright.knit.weave import crowded, weave
from walewright.knit.zones import Fabrics
from walewright.solve.model import Counts, SizedGarment, SizedJoin, SizedOpening, SizedPiece

Paragraph = tuple[str, tuple[Step, ...]]

SHAPED = "Knit and shape"
_UNSHAPED = (st.KnitTo, st.KnitRows, st.Now, st.MarkEdges, st.StartChart, st.StopChart, st.StopChartOn, st.StartStripes)


def plan(design: Design, counts: Counts) -> tuple[SizePlan, ...]:
    """One plan per size, in the order of `counts.sizes`."""
    drafts = [_draft(design, piece, tuple(g.piece(piece.name) for g in counts.sizes)) for piece in design.pieces]
    return tuple(_size_plan(design, garment, drafts) for garment in counts.sizes)


@dataclass(frozen=True, slots=True)
class _Draft:
    """A piece's pattern, what has to be taken apart in all its sizes, and the bodies of repeats found so, by paragraph."""

    pattern: Pattern
    unrolled: frozenset[Key]
    known: Mapping[str, Known]
    crowds: Mapping[tuple[int, int], tuple[Crowd, ...]]
    """What is told as going on together, by the numbers of the part and of the stretch in it."""


def _draft(design: Design, piece: Piece, sizes: tuple[SizedPiece, ...]) -> _Draft:
    found = pattern(design, piece, sizes)
    every = [parts(found, sized) for sized in sizes]
    unrolled = crowded(s for some in every for part in some for s in part.stretches)
    places: dict[tuple[int, int], list[Stretch]] = {}
    for some in every if len(sizes) > 1 else ():
        for i, part in enumerate(some):
            for j, rows in enumerate(part.stretches):
                places.setdefault((i, j), []).append(rows)
    draft = _Draft(found, unrolled, {}, {place: crowds(rows) for place, rows in places.items()})
    if not unrolled or len(sizes) == 1:
        return draft
    known: dict[str, Known] = {}
    for sized in sizes:
        for title, steps in _piece_block(draft, sized, Tails()).paragraphs:
            bodies = (body_shape(s.body) for s in steps if isinstance(s, st.Repeat) and s.times > 1)
            known[title] = known.get(title, frozenset()).union(bodies)
    return replace(draft, known=known)


def _size_plan(design: Design, garment: SizedGarment, drafts: list[_Draft]) -> SizePlan:
    blocks: list[StepBlock] = []
    needed = tails(design, garment)
    for draft in drafts:
        piece = draft.pattern.piece
        sized = garment.piece(piece.name)
        blocks.append(_piece_block(draft, sized, needed))
        edging = edging_of(design, piece)
        if edging is not None and edging.when == "after":
            blocks.append(edging_block(design, piece, sized, needed))
    before, after = links(design, garment, blocks)
    blocks += before
    bands = [
        (band, band_block(design, garment, band, next(b for b in garment.bands if b.name == band.name))) for band in design.bands
    ]
    # A neckband wants one shoulder open; what runs over that shoulder wants it closed.
    open_until = max((n for n, (band, _) in enumerate(bands, 1) if _round_a_gap(garment, band)), default=0)
    made = [block for _, block in bands]
    blocks += (*made[:open_until], *after, *made[open_until:])
    return SizePlan(garment.size, tuple(blocks), tuple(_making_up(design, garment)))


def _round_a_gap(garment: SizedGarment, band: Band) -> bool:
    """Whether the band runs along a gap of a piece, as that between its shoulders."""
    return any(e.edge.partition(" ")[0] == o.name for e in band.along for o in garment.piece(e.piece).openings)


def _making_up(design: Design, garment: SizedGarment) -> Iterator[Step]:
    """The joins and the author's steps, in the order of work."""
    done = 0
    for number, text in enumerate(design.making_up):
        before = design.joins_before[number] if number < len(design.joins_before) else len(garment.joins)
        yield from (_join(design, j) for j in garment.joins[done:before])
        done = max(done, before)
        yield st.Say(text, "By hand")
    yield from (_join(design, j) for j in garment.joins[done:])


def _join(design: Design, join: SizedJoin) -> Step:
    easing, longer = round(join.easing_cm * 10), round(join.longer_cm * 10)
    rows = lengths = (0, 0)
    if join.way in ("sewn", "gathered"):
        if easing or longer:
            lengths = (round(join.one_cm * 10), round(join.other_cm * 10))
        elif join.one_rows is not None and join.one_rows == join.other_rows:
            rows = (join.one_rows, 0)
    ends = [open_end(design, e) for e in (*join.one, *join.other)]
    edges = "open" if join.way == "sewn" and all(ends) else "no tail" if join.way == "grafted" and not any(ends) else ""
    told = (easing, longer, join.way, rows[0], *lengths, edges)
    return st.JoinEdges(_edges(join.one), _edges(join.other), *told, origin=join.origin.path)


def _edges(names: tuple[EdgeName, ...]) -> str:
    return " + ".join(f"{n.piece} {n.edge}" for n in names)


# ----------------------------------------------------------------- a piece's sentences


def _piece_block(draft: _Draft, sized: SizedPiece, needed: Tails) -> StepBlock:
    design, piece = draft.pattern.design, draft.pattern.piece
    fabrics = Fabrics(design, piece, sized)
    found = figures(fabrics)
    state = State(piece.name, by_needle=False)
    paragraphs: list[Paragraph] = []

    def add(title: str, steps: tuple[Step, ...]) -> None:
        nonlocal state
        for step in steps:
            _, state = perform(state, step)
        paragraphs.append((title, steps))

    def knit(number: int, part: PiecePart, title: str) -> None:
        nonlocal state
        made: list[Step] = []
        known = draft.known.get(title, frozenset())
        for place, rows in enumerate(part.stretches):
            steps, state = weave(rows, draft.unrolled, state, known, draft.crowds.get((number, place), ()))
            # What must be true is stated once between two stretches.
            made += steps[1:] if made and steps and made[-1] == steps[0] else steps
        if title == SHAPED and _plain(made):
            title = "Knit"
        paragraphs.append((title, tuple(made)))

    def off(edge: str) -> tuple[Step, ...]:
        return finish(design, piece, edge, fabrics.at(sized.rows - 1), state.last - state.first + 1, needed)

    add("Cast on", start(design, piece, sized, fabrics.use(0)))
    last = "end"
    for number, part in enumerate(parts(draft.pattern, sized)):
        opening = part.opening
        if part.side is None or opening is None:
            knit(number, part, SHAPED if number == 0 else "Over the whole width")
            last = "end"
            if opening is not None:
                add(f"Part for the {opening.name}", parting.part(opening, state, fabrics.use(opening.row)))
            continue
        word = _word(piece, opening)
        if (state.left if part.side == "left" else state.right) is not None:
            again = taken_up(found, part.side, opening, part.last_row)
            begun = tuple((sized.counter(figure.from_row), figure.start) for figure in again)
            turn = parting.turn_to(part.side, opening, state, sized.counter(opening.row), fabrics.use(opening.row), begun)
            add(f"Return to the {part.side} {word}", turn)
        knit(number, part, f"{part.side.capitalize()} {word}")
        if not opening.rejoins:
            add("", off(f"shoulder {part.side}"))
            last = ""
        elif part.side == "right":
            add(f"Close the {opening.name}", parting.rejoin(opening, state, fabrics.at(opening.to_row)))
    if last:
        add("Finish", off(last))
    add("Edges for making up", tuple(edge_notes(piece, sized)))
    return StepBlock(piece.name, piece.name, piece.copies, tuple(p for p in paragraphs if p[1]))


def _word(piece: Piece, opening: SizedOpening) -> str:
    """Parts beside a gap in the middle are halves."""
    off_centre = any(any(o.centre) for o in piece.openings if o.name == opening.name)
    return "part" if opening.rejoins or off_centre else "half"


def _plain(steps: list[Step]) -> bool:
    return all(isinstance(s, _UNSHAPED) for s in steps)
