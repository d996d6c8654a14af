"""The proof: nothing is printed that the bed did not knit as counted, and whose words did not knit the same."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import zip_longest

from walewright.bed import BedResult, KnitFabric, seam
from walewright.counted import counted_piece
from walewright.counted.model import SizedGarment
from walewright.design.model import Design, DesignInSize
from walewright.glue.model import Glued, GluedSizes
from walewright.knit.operations import Block, Join, Work, needle
from walewright.proof.banded import band_as_counted
from walewright.proof.bobbins import bobbins
from walewright.proof.charted import matches
from walewright.proof.counted import as_counted
from walewright.proof.floats import LongFloat, float_warnings, long_floats
from walewright.proof.garment import folds, left_free, otherwise_hung, otherwise_joined, otherwise_out
from walewright.proof.lace import unpaired
from walewright.proof.latched import deepest
from walewright.proof.measures import measures
from walewright.proof.model import JoinProof, PieceProof, Proof, SizeProof
from walewright.proof.pictures import pictures
from walewright.proof.seams import pairs, seam_proofs, sewn, unlike
from walewright.proof.sewing import seams_cm
from walewright.proof.spent import long_rows, spent
from walewright.proof.strips import band_ends_as_counted, strips_as_counted
from walewright.proof.yarn import yarn_of_sizes
from walewright.record import replace
from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.said import Said, said
from walewright.report.wording import message_of
from walewright.solve.model import Counts


@dataclass(frozen=True)
class _Knitted:
    """A garment in one size: how it is put together and counted, the work, what the bed made of it, and what it made of the printed
    words."""

    at: DesignInSize
    glued: Glued
    garment: SizedGarment
    work: Work
    result: BedResult
    again: BedResult | None

    @property
    def design(self) -> Design:
        return self.at.design

    @cached_property
    def fabrics(self) -> dict[str, KnitFabric]:
        return _by_name(self.result)


def prove(
    design: Design,
    glued: GluedSizes,
    counts: Counts,
    works: tuple[Work, ...],
    results: tuple[BedResult, ...],
    read_back: tuple[BedResult | None, ...],
) -> tuple[Proof | None, tuple[Diagnostic, ...]]:
    """Compare, size by size: what the bed made of the plan (`results`) with the counts, and with what it made of the
    printed words (`read_back`: None where they could not be read, the very same result where they are the same moves). Any
    difference is a diagnostic and no proof; a proof can come with warnings."""
    made = [
        _Knitted(at, glued.in_size(at.number), garment, work, result, again)
        for at, garment, work, result, again in zip(design.each_size, counts.sizes, works, results, read_back, strict=True)
    ]
    faults: list[Diagnostic] = []
    sizes: list[SizeProof] = []
    floats: list[tuple[str, tuple[LongFloat, ...]]] = []
    apart = unlike(glued, counts)
    for one in made:
        faults += _refusals(one)
        if not one.result.faults:
            for amiss in (_miscounts, _unequal, _unlike, _unmatched, _unpaired, _misread):
                faults += amiss(one)
        if not faults:
            long = long_floats(design, one.garment, one.result.fabrics)
            floats.append((one.garment.size, long))
            sizes.append(_size(one, tuple(seam_proofs(design, one.glued, one.garment, one.fabrics, apart)), long))
    if faults:
        return None, merged(faults)
    drawn = pictures(design, counts.sizes, tuple(one.fabrics for one in made))
    yarn, small = yarn_of_sizes(design, [(spent(design, m.result.fabrics), seams_cm(design, m.glued, m.fabrics)) for m in made])
    taken = tuple(replace(size, yarn=uses) for size, uses in zip(sizes, yarn, strict=True))
    return Proof(taken, drawn, small), tuple(float_warnings(floats))


# ----------------------------------------------------------------- what does not hold


def _refusals(of: _Knitted) -> Iterator[Diagnostic]:
    described = _described(of.work)
    for fault in of.result.faults:
        yield diagnosed(
            "bed-refuses",
            *_place(of.design, described.get(fault.block, "")),
            notes=(said("stopped", move=fault.index + 1, fault=fault.code),),
            helps=("fault-of-the-plan",),
            sizes=(of.garment.size,),
            block=fault.block,
            refusal=fault.told,
        )


def needing_missing(
    design: Design, size: str, block: str, of: str, needed: int, missing: tuple[int, ...], room: int | None
) -> Diagnostic:
    """A block of `needed` needles that cannot be knitted without those that are `missing` within its reach: nowhere is there a
    row of more than `room`, or, None, it is counted from the centre, so that it cannot lie elsewhere."""
    bed, from_centre = design.machine, room is None
    return diagnosed(
        "needle-missing/from-centre" if from_centre else "needle-missing/no-row",
        *_place(design, of),
        (bed.origin.span, said("this-bed")),
        helps=("replace-needles",) if from_centre else ("replace-needles", "narrower"),
        sizes=(size,),
        block=block,
        needed=needed,
        missing=tuple(needle(slot) for slot in missing),
        room=room or 0,
    )


def _miscounts(of: _Knitted) -> Iterator[Diagnostic]:
    design, garment, fabrics, described = of.design, of.garment, of.fabrics, _described(of.work)
    pieces = ((s.name, told) for s in garment.pieces for told in as_counted(counted_piece(design, s), fabrics[s.name]))
    # A band that was not knitted at all leaves its edges open, which the garment's proof reports.
    knitted_bands = (b for b in garment.bands if b.name in fabrics)
    bands = ((b.name, told) for b in knitted_bands for told in band_as_counted(design, b, fabrics[b.name]))
    every = ((name, told) for name, fabric in fabrics.items() for told in deepest(design, fabric))
    ends = (*strips_as_counted(design, garment, fabrics), *band_ends_as_counted(design, of.glued, garment, fabrics))
    for name, (where, counted, knitted) in (*pieces, *bands, *ends, *every):
        if counted != knitted:
            yield diagnosed(
                "knitted-otherwise/counts",
                *_place(design, described.get(name, "")),
                helps=("fault-of-the-plan",),
                sizes=(garment.size,),
                name=name,
                counted=counted,
                where=where,
                knitted=knitted,
            )


def _unequal(of: _Knitted) -> Iterator[Diagnostic]:
    """Seams whose rows the counts know: both sides have to have them on the fabric."""
    for made, sized in zip(of.glued.seams, of.garment.seams, strict=True):
        for side, rows in ((made.one, sized.one_rows), (made.other, sized.other_rows)):
            found = seam(of.fabrics, pairs(side))
            if rows is not None and found is not None and found.rows != rows:
                yield diagnosed(
                    "knitted-otherwise/seam",
                    (of.design.joins[made.join].origin.span, "joined-here"),
                    helps=("fault-of-the-plan",),
                    sizes=(of.garment.size,),
                    side=tuple(said("edge-and-copy", piece=e.piece, edge=e.edge, copy=e.copy) for e in sewn(side)),
                    counted=rows,
                    knitted=found.rows,
                )


def _unlike(of: _Knitted) -> Iterator[Diagnostic]:
    """What is joined, hung, worn, free, open or folded on the bed otherwise than the garment was glued."""
    design, glued, garment, result = of.design, of.glued, of.garment, of.result
    loose = (said("loops-open", edge=edge, piece=piece) for piece, edge in result.open_edges)
    joined = (
        *otherwise_joined(design, glued, result),
        *otherwise_hung(design, glued, result),
        *otherwise_out(design, glued, result),
    )
    for otherwise in (*loose, *joined, *left_free(design, garment, glued, result), *folds(design, glued, result)):
        yield diagnosed("knitted-otherwise/garment", helps=("fault-of-the-plan",), sizes=(garment.size,), otherwise=otherwise)


def _unmatched(of: _Knitted) -> Iterator[Diagnostic]:
    """Joins across which a pattern is to go on: beside the seam both sides have the columns that follow each other."""
    for sized in of.garment.joins:
        for where, counted, knitted in matches(of.design, of.garment, sized, of.fabrics):
            if counted != knitted:
                yield diagnosed(
                    "knitted-otherwise/pattern",
                    (sized.origin.span, "joined-here"),
                    helps=("fault-of-the-plan",),
                    sizes=(of.garment.size,),
                    where=where,
                    counted=counted,
                    knitted=knitted,
                )


def _unpaired(of: _Knitted) -> Iterator[Diagnostic]:
    """Holes of charts without a decrease, and the reverse."""
    for sized in of.garment.pieces:
        for row, at, what in unpaired(sized, of.fabrics[sized.name]):
            yield diagnosed(
                f"lace-unpaired/{what}",
                *_place(of.design, sized.name),
                helps=("fault-of-the-plan",),
                sizes=(of.garment.size,),
                piece=sized.name,
                needle=at,
                row=row,
            )


def _misread(of: _Knitted) -> Iterator[Diagnostic]:
    garment, result, again = of.garment, of.result, of.again
    if again is None:
        return
    copies = _by_name(again)
    for fabric in result.fabrics:
        if copies.get(fabric.name) != fabric:
            yield diagnosed(
                "words-knit-otherwise/fabric",
                notes=tuple(said("reading-back", block=f.block, refusal=f.told) for f in again.faults),
                helps=("fault-of-the-words",),
                sizes=(garment.size,),
                name=fabric.name,
            )
    yield from _put_together_otherwise(garment, result, again)
    if again.faults and not result.faults:
        for fault in again.faults:
            yield diagnosed("words-knit-otherwise/stop", sizes=(garment.size,), block=fault.block, refusal=fault.told)


def _put_together_otherwise(garment: SizedGarment, result: BedResult, again: BedResult) -> Iterator[Diagnostic]:
    """Seams, the order of work, and what stays free: the first difference of each kind."""
    if again.faults:
        return
    orders = ((a, b) for a, b in zip_longest(result.done, again.done) if a != b)
    free = (edge for edge in again.free_edges if edge not in result.free_edges)
    taken = (edge for edge in result.free_edges if edge not in again.free_edges)
    found = (
        next((said("order", planned=_done(a), printed=_done(b)) for a, b in orders), None),
        next((said("left-free", edge=edge, piece=piece) for piece, edge, _ in free), None),
        next((said("taken-up", edge=edge, piece=piece) for piece, edge, _ in taken), None),
    )
    for one in filter(None, found):
        yield diagnosed(
            f"words-knit-otherwise/{one.key}",
            helps=("fault-of-the-words",),
            sizes=(garment.size,),
            facts=dict(one.facts),
        )


def _done(task: str | Join | None) -> Said:
    """A block, or a join of the order of work."""
    if not isinstance(task, Join):
        return said("quoted", name=task) if task else said("nothing-more")
    sides = (tuple(said("edge-and-copy", piece=p, edge=e, copy=c) for p, e, c in side) for side in (task.one, task.other))
    one, other = sides
    return said("join-done", way=task.way, one=one, one_end=task.ends[0], other=other, other_end=task.ends[1])


def _described(work: Work) -> dict[str, str]:
    """The piece or band that each block is described with."""
    return {task.name: task.of for task in work.tasks if isinstance(task, Block)}


def _place(design: Design, name: str) -> tuple[tuple[Span, Said], ...]:
    """The statement that describes the piece or band of that name."""
    origins = [(piece.name, piece.origin) for piece in design.pieces] + [(band.name, band.origin) for band in design.bands]
    return tuple((origin.span, said("described-here", name=name)) for of, origin in origins if of == name)


def merged(faults: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """One message for all sizes that fail alike."""
    merged: dict[Said, Diagnostic] = {}
    for fault in faults:
        key = message_of(fault)
        known = merged.get(key)
        merged[key] = replace(fault, sizes=tuple(dict.fromkeys((*(known.sizes if known is not None else ()), *fault.sizes))))
    return tuple(merged.values())


# ----------------------------------------------------------------- what holds


def _by_name(result: BedResult) -> dict[str, KnitFabric]:
    return {fabric.name: fabric for fabric in result.fabrics}


def _size(of: _Knitted, seams: tuple[JoinProof, ...], floats: tuple[LongFloat, ...]) -> SizeProof:
    fabrics = of.result.fabrics
    return SizeProof(
        size=of.garment.size,
        pieces=tuple(_piece(of, fabric) for fabric in fabrics),
        joins=seams,
        yarn=(),
        operations=sum(len(block.operations) * block.copies for block in of.work.blocks) + len(of.work.joins),
        loops=sum(fabric.loops * fabric.copies for fabric in fabrics),
        read_back=of.again is not None,
        bobbins=bobbins(of.design, of.garment, of.fabrics),
        floats=tuple(long.found for long in floats),
    )


def _piece(of: _Knitted, fabric: KnitFabric) -> PieceProof:
    sized = next((p for p in of.garment.pieces if p.name == fabric.name), None)
    return PieceProof(
        name=fabric.name,
        copies=fabric.copies,
        first_needle=needle(fabric.first_slot),
        last_needle=needle(fabric.last_slot),
        most_stitches=fabric.most_stitches,
        rows=fabric.rows,
        loops=fabric.loops,
        measures=() if sized is None else measures(of.at, counted_piece(of.design, sized), fabric, of.garment.deviations),
        long_rows=long_rows(fabric),
    )
