"""Edgings on the start of a piece and bands along finished edges: hung on, knitted, their rib latched up, cast off."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.bands import depth_cm
from walewright.counted.model import SizedBand, SizedGarment, SizedPiece
from walewright.design.model import Band, Design, Edging, Piece
from walewright.glue.model import Chain, Face, Glued, HangingLine, Seam, right_side, runs_along
from walewright.knit import steps as st
from walewright.knit.corners import corner_notes
from walewright.knit.edging_hands import idle_slots
from walewright.knit.ends import pick_ups
from walewright.knit.folding import EdgingRows, counted, end_rows, first_use, in_work, knitted, set_aside
from walewright.knit.lengths import grafting_cm, seam_tail_cm, tail_cm
from walewright.knit.operations import Side, other
from walewright.knit.steps import Step, StepBlock
from walewright.knit.strips import named_strips, strip_note, through_both, told_ends
from walewright.knit.tails import Tails
from walewright.knit.zones import said_of
from walewright.record import replace
from walewright.report.said import Said, said
from walewright.trade.edgings import EDGINGS


def edging_block(design: Design, glued: Glued, piece: Piece, sized: SizedPiece, facing: Face, tails: Tails) -> StepBlock:
    """The edging on the rehung first row of a piece, which has its side `facing` to the knitter."""
    edging = design.edging(piece.start_edging or "")
    tail = tails.of_start(piece.name)
    left = sized.start // 2
    hang: tuple[Step, ...] = (
        st.CarriageAt("right", origin=edging.origin.path),
        st.NeedlesToWork(-left, sized.start - left - 1, sized.start, origin=edging.origin.path),
        *set_aside(edging, -left, sized.start - left - 1),
        st.RehangStart(piece.name, in_work(edging, -left, sized.start - left - 1), facing, origin=edging.origin.path),
    )
    # The first row is rehung so that the edging's own right side comes to lie outside.
    worn = right_side(design, edging.fabric)
    rows = EdgingRows(edging, design.fabric(edging.fabric), sized.edging_rows, -left, sized.start - left - 1, worn, hung=True)
    made = StepBlock(f"{piece.name} {edging.name}", sized.copies, _hung(design, rows, hang, tail), of=piece.name)
    if "start" not in named_strips(glued, piece):
        return made
    ends = tuple(strip_note(edging, piece, "start", sized.edging_rows))
    return replace(made, paragraphs=(*made.paragraphs, (said("edges"), ends)))


def band_block(design: Design, glued: Glued, garment: SizedGarment, band: Band, sized: SizedBand) -> StepBlock:
    """A band on stitches picked up along edges, from the left needle to the right in the order of `pick_ups`."""
    edging = design.edging(band.edging)
    first = -(sized.stitches // 2)
    last = first + sized.stitches - 1
    idle = idle_slots(first, last, edging.mock) if EDGINGS[edging.kind].idle_needles else ()
    hang = (
        *_which_part(design, glued, band),
        *open_and_joined(glued, glued.lines_of(band.name)[0]),
        *through_both(design, glued.lines_of(band.name)[0]),
        st.CarriageAt("right", origin=band.origin.path),
        st.NeedlesToWork(first, last, sized.stitches, origin=band.origin.path),
        *set_aside(edging, first, last),
        *pick_ups(sized.pick_ups, first, band.origin.path, idle),
    )
    # It has two ends, and one of them is sewn with its tail: to the other, or to what it meets.
    tail = seam_tail_cm(depth_cm(design, sized))
    worn = dict(glued.worn)[band.name]
    fabric = design.fabric(edging.fabric)
    rows = EdgingRows(edging, fabric, sized.rows, first, last, worn, holes=sized.holes, behind=sized.behind, hung=True)
    *before, (title, off) = _hung(design, rows, hang, tail)
    ends = (said("edges"), tuple(_named_ends(glued, band, edging, sized.rows)))
    paragraphs = (*before, (title, (*corner_notes(design, garment, band, sized), *off)), *([ends] if ends[1] else []))
    return StepBlock(band.name, sized.copies, paragraphs, of=band.name, runs=runs_along(design, glued, band) or "")


def _named_ends(glued: Glued, band: Band, edging: Edging, rows: int) -> Iterator[Step]:
    """The ends that something is sewn to or another band is picked up along, by their names."""
    told = {(place.owner, place.edge) for place in told_ends(glued)}
    for name, where in STRIP_ENDS.items():
        if (band.name, name) in told:
            yield st.EdgeIs(name, where, *end_rows(edging, rows), origin=band.origin.path)


def _which_part(design: Design, glued: Glued, band: Band) -> Iterator[Step]:
    """Of a band that is knitted in parts, which of them this is, and from where to where it goes."""
    parts = [part.name for part in design.bands if part.part_of == band.part_of]
    # Two parts alike are one band, knitted twice.
    if band.part_of and len(parts) == band.parts:
        along = glued.lines_of(band.name)[0].along
        number, whole = parts.index(band.name) + 1, band.part_of
        first, last = (said("edge", piece=place.owner, edge=place.edge) for place in (along[0], along[-1]))
        runs = runs_along(design, glued, band)
        if len(along) == 1:
            key = "part-of-band/within" if along[0].cut else "part-of-band/along"
            told = said(key, number=number, parts=band.parts, whole=whole, edge=first)
        elif runs is not None and runs.key == "runs/edge":
            # A whole opening, whose edges are several.
            opening = said("edge", piece=band.along[0].piece, edge=band.along[0].edge)
            told = said("part-of-band/along", number=number, parts=band.parts, whole=whole, edge=opening)
        else:
            told = said("part-of-band", number=number, parts=band.parts, whole=whole, first=first, last=last)
        yield st.Say(told, origin=band.origin.path)


STRIP_ENDS: dict[str, Side] = {"first end": "left", "last end": "right"}
"""The ends of a band, and at which needle they are."""


def open_and_joined(glued: Glued, line: HangingLine) -> Iterator[Step]:
    """What has to be joined already when the line is hung, and what of the rest has to be open still; where nothing is joined,
    nobody has been told to close anything."""
    joined = [_seam(seam) for seam in (glued.seams[n] for n in line.needs)]
    still = [_seam(seam) for seam in (glued.seams[n] for n in line.spares)]
    if joined:
        key = "joined-and-open" if still else "joined-already"
        yield st.Say(said(key, joined=tuple(joined), still=tuple(still)), origin=line.origin.path)


def _seam(seam: Seam) -> Said:
    if not seam.other:
        return said("seam-itself", one=_chain(seam.one))
    return said("seam", one=_chain(seam.one), other=_chain(seam.other))


def _chain(chain: Chain) -> tuple[Said, ...]:
    return tuple(said("edge", piece=place.owner, edge=place.edge) for place in chain)


def _hung(design: Design, of: EdgingRows, hang: tuple[Step, ...], tail: int) -> tuple[tuple[Said, tuple[Step, ...]], ...]:
    """Knitted from the hung loops to the cast-off, whose tail has `tail` cm if it is chained off."""
    origin = of.edging.origin.path
    ends: Side = "right" if counted(of.edging, of.rows) % 2 == 0 else other("right")
    called = said_of(design, of.fabric)
    knit = (
        first_use(of.edging, of.fabric, of.rows, called),
        st.SetRowCounter(0, origin=origin),
        *knitted(of, ends, design.machine, called),
    )
    off = _off(design, of.edging, in_work(of.edging, of.first, of.last), tail)
    if of.behind:
        off = (*off, st.Say(said("oversew-buttonholes"), origin=origin))
    return ((said("hang-on"), hang), (said("knit"), knit), (said("finish"), off))


def _off(design: Design, edging: Edging, stitches: int, tail: int) -> tuple[Step, ...]:
    origin = edging.origin.path
    fabric = design.fabric(edging.fabric)
    match edging.cast_off:
        case "sewn":
            return (st.BreakOff(tail_cm(fabric, stitches), origin=origin), st.SewOffAll(origin=origin))
        case "waste":
            off = st.OffOnWaste(design.machine.waste_rows, "end", origin=origin)
            return (st.BreakOff(grafting_cm(fabric, stitches), origin=origin), off)
    return (st.CastOffAll(origin=origin), st.BreakOff(tail, origin=origin))
