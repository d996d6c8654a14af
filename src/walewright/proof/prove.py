"""The proof: nothing is printed that the bed did not knit as counted, and whose words did not knit the same."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import zip_longest

from walewright.bed import BedResult, Fabric, seam
from walewright.design.model import Design
from walewright.glue.model import Glued
from walewright.knit.operations import Join, Work, needle
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
from walewright.proof.seams import pairs, seam_proofs, spoken, unlike
from walewright.proof.sewing import seams_cm
from walewright.proof.spent import long_rows, spent
from walewright.proof.yarn import yarn_uses
from walewright.report.model import Diagnostic, Label
from walewright.solve.model import Counts, SizedGarment


def prove(
    design: Design,
    glued: Glued,
    counts: Counts,
    works: tuple[Work, ...],
    results: tuple[BedResult, ...],
    read_back: tuple[BedResult | None, ...],
) -> tuple[Proof | None, tuple[Diagnostic, ...]]:
    """Compare, size by size: what the bed made of the plan (`results`) with the counts, and with what it made of the
    printed words (`read_back`: None where they could not be read, the very same result where they are the same moves). Any
    difference is a diagnostic and no proof; a proof can come with warnings."""
    faults: list[Diagnostic] = []
    sizes: list[SizeProof] = []
    floats: list[tuple[str, tuple[LongFloat, ...]]] = []
    apart = unlike(glued, counts)
    for index, garment in enumerate(counts.sizes):
        faults += _refusals(design, garment, results[index])
        if not results[index].faults:
            faults += _miscounts(design, garment, results[index])
            faults += _unequal(design, glued, garment, results[index])
            faults += _unlike(design, glued, garment, results[index])
            faults += _unmatched(design, garment, results[index])
            faults += _unpaired(design, garment, results[index])
            faults += _misread(garment, results[index], read_back[index])
        if not faults:
            long = long_floats(design, garment, results[index].fabrics)
            floats.append((garment.size, long))
            seams = tuple(seam_proofs(design, glued, garment, _by_name(results[index]), apart))
            sizes.append(
                _size(design, glued, garment, seams, works[index], results[index], index, read_back[index] is not None, long)
            )
    if faults:
        return None, _merged(faults)
    drawn = pictures(design, counts.sizes, tuple(_by_name(result) for result in results))
    return Proof(tuple(sizes), drawn), tuple(float_warnings(floats))


# ----------------------------------------------------------------- what does not hold


def _refusals(design: Design, garment: SizedGarment, result: BedResult) -> Iterator[Diagnostic]:
    for fault in result.faults:
        yield Diagnostic(
            "bed-refuses",
            f"{fault.block} cannot be knitted as planned: {fault.message}",
            _place(design, fault.block),
            (f"the bed stopped at move {fault.index + 1} of {fault.block} ({fault.code})",),
            ("this is a fault of the plan, not of the source: please report it with the source",),
            sizes=(garment.size,),
        )


def _miscounts(design: Design, garment: SizedGarment, result: BedResult) -> Iterator[Diagnostic]:
    fabrics = _by_name(result)
    pieces = ((s.name, told) for s in garment.pieces for told in as_counted(design, design.piece(s.name), s, fabrics[s.name]))
    # A band that was not knitted at all leaves its edges open, which the garment's proof reports.
    knitted_bands = (b for b in garment.bands if b.name in fabrics)
    bands = ((b.name, told) for b in knitted_bands for told in band_as_counted(design, b, fabrics[b.name]))
    every = ((name, told) for name, fabric in fabrics.items() for told in deepest(design, fabric))
    for name, (where, counted, knitted) in (*pieces, *bands, *every):
        if counted != knitted:
            yield Diagnostic(
                "knitted-otherwise",
                f"the {name} was counted with {counted} at {where} and knitted with {knitted}",
                _place(design, name),
                helps=("this is a fault of the plan, not of the source: please report it with the source",),
                sizes=(garment.size,),
            )


def _unequal(design: Design, glued: Glued, garment: SizedGarment, result: BedResult) -> Iterator[Diagnostic]:
    """Seams whose rows the counts know: both sides have to have them on the fabric."""
    fabrics = _by_name(result)
    for made, sized in zip(glued.seams, garment.seams, strict=True):
        for side, rows in ((made.one, sized.one_rows), (made.other, sized.other_rows)):
            found = seam(fabrics, pairs(side))
            if rows is not None and found is not None and found.rows != rows:
                yield Diagnostic(
                    "knitted-otherwise",
                    f"the seam along {spoken(side)} was counted with {rows} rows and knitted with {found.rows}",
                    (Label(design.joins[made.join].origin.span, "joined here"),),
                    helps=("this is a fault of the plan, not of the source: please report it with the source",),
                    sizes=(garment.size,),
                )


def _unlike(design: Design, glued: Glued, garment: SizedGarment, result: BedResult) -> Iterator[Diagnostic]:
    """What is joined, hung, worn, free, open or folded on the bed otherwise than the garment was glued."""
    loose = (f"the open loops of {edge} of the {piece} were taken up by nothing" for piece, edge in result.open_edges)
    joined = (*otherwise_joined(glued, result), *otherwise_hung(design, glued, result), *otherwise_out(design, glued, result))
    for message in (*loose, *joined, *left_free(design, glued, result), *folds(design, result)):
        yield Diagnostic(
            "knitted-otherwise",
            message,
            helps=("this is a fault of the plan, not of the source: please report it with the source",),
            sizes=(garment.size,),
        )


def _unmatched(design: Design, garment: SizedGarment, result: BedResult) -> Iterator[Diagnostic]:
    """Joins across which a pattern is to go on: beside the seam both sides have the columns that follow each other."""
    fabrics = _by_name(result)
    for sized in garment.joins:
        for where, counted, knitted in matches(design, garment, sized, fabrics):
            if counted != knitted:
                yield Diagnostic(
                    "knitted-otherwise",
                    f"at {where} {counted} was counted and {knitted} knitted",
                    (Label(sized.origin.span, "joined here"),),
                    helps=("this is a fault of the plan, not of the source: please report it with the source",),
                    sizes=(garment.size,),
                )


def _unpaired(design: Design, garment: SizedGarment, result: BedResult) -> Iterator[Diagnostic]:
    """Holes of charts without a decrease, and the reverse."""
    fabrics = _by_name(result)
    for sized in garment.pieces:
        for row, at, what in unpaired(sized, fabrics[sized.name]):
            lacks = "stitch drawn through two loops" if what == "hole" else "hole"
            yield Diagnostic(
                "lace-unpaired",
                f"the {sized.name} has a {what} at needle {at} in row {row} and no {lacks} to it",
                _place(design, sized.name),
                helps=("this is a fault of the plan, not of the source: please report it with the source",),
                sizes=(garment.size,),
            )


def _misread(garment: SizedGarment, result: BedResult, again: BedResult | None) -> Iterator[Diagnostic]:
    if again is None:
        return
    copies = _by_name(again)
    for fabric in result.fabrics:
        if copies.get(fabric.name) != fabric:
            yield Diagnostic(
                "words-knit-otherwise",
                f"the printed words for {fabric.name} knit another fabric than the plan",
                notes=tuple(f"reading them back: {f.block}: {f.message}" for f in again.faults),
                helps=("this is a fault of the words, not of the source: please report it with the source",),
                sizes=(garment.size,),
            )
    yield from _put_together_otherwise(garment, result, again)
    if again.faults and not result.faults:
        for fault in again.faults:
            yield Diagnostic(
                "words-knit-otherwise", f"the printed words stop at {fault.block}: {fault.message}", sizes=(garment.size,)
            )


def _put_together_otherwise(garment: SizedGarment, result: BedResult, again: BedResult) -> Iterator[Diagnostic]:
    """Seams, the order of work, and what stays free: the first difference of each kind."""
    if again.faults:
        return
    found = (
        next((f"say {_done(b)} where {_done(a)} was planned" for a, b in zip_longest(result.done, again.done) if a != b), ""),
        next((f"leave the {e} of the {p} free" for p, e, _ in again.free_edges if (p, e, _) not in result.free_edges), ""),
        next((f"take up the {e} of the {p}" for p, e, _ in result.free_edges if (p, e, _) not in again.free_edges), ""),
    )
    for otherwise in filter(None, found):
        yield Diagnostic(
            "words-knit-otherwise",
            f"the printed words {otherwise}",
            helps=("this is a fault of the words, not of the source: please report it with the source",),
            sizes=(garment.size,),
        )


def _done(task: str | Join | None) -> str:
    """A block, or a join of the order of work, in words."""
    if not isinstance(task, Join):
        return f"`{task}`" if task else "nothing more"
    one, other = (" then ".join(f"{p} {e}{f' ({c})' if c else ''}" for p, e, c in side) for side in (task.one, task.other))
    return f"`{task.way} {one} from its {task.ends[0]} to {other} from its {task.ends[1]}`"


def _place(design: Design, block: str) -> tuple[Label, ...]:
    """The statement that the block comes from: the piece whose name it begins with, or the band."""
    described = [(band.name, band.origin.span) for band in design.bands]
    described += [(piece.name, piece.origin.span) for piece in design.pieces]
    for name, span in sorted(described, key=lambda d: -len(d[0])):
        if block == name or block.startswith(f"{name} "):
            return (Label(span, f"{name} is described here"),)
    return ()


def _merged(faults: list[Diagnostic]) -> tuple[Diagnostic, ...]:
    """One message for all sizes that fail alike."""
    merged: dict[tuple[str, str], Diagnostic] = {}
    for fault in faults:
        key = (fault.code, fault.message)
        known = merged.get(key)
        sizes = fault.sizes if known is None else tuple(dict.fromkeys((*known.sizes, *fault.sizes)))
        merged[key] = Diagnostic(
            fault.code, fault.message, fault.labels, fault.notes, fault.helps, severity=fault.severity, sizes=sizes
        )
    return tuple(merged.values())


# ----------------------------------------------------------------- what holds


def _by_name(result: BedResult) -> dict[str, Fabric]:
    return {fabric.name: fabric for fabric in result.fabrics}


def _size(
    design: Design,
    glued: Glued,
    garment: SizedGarment,
    seams: tuple[JoinProof, ...],
    work: Work,
    result: BedResult,
    index: int,
    read_back: bool,
    floats: tuple[LongFloat, ...],
) -> SizeProof:
    fabrics = _by_name(result)
    return SizeProof(
        garment.size,
        tuple(_piece(design, garment, fabric, index) for fabric in result.fabrics),
        seams,
        yarn_uses(design, spent(design, result.fabrics), seams_cm(design, glued, fabrics)),
        sum(len(block.operations) * block.copies for block in work.blocks) + len(work.joins),
        sum(fabric.loops * fabric.copies for fabric in result.fabrics),
        read_back,
        bobbins(design, garment, fabrics),
        tuple(long.found for long in floats),
    )


def _piece(design: Design, garment: SizedGarment, fabric: Fabric, index: int) -> PieceProof:
    piece = next((p for p in design.pieces if p.name == fabric.name), None)
    sized = None if piece is None else garment.piece(piece.name)
    found = () if piece is None or sized is None else measures(design, piece, sized, fabric, index, garment.deviations)
    return PieceProof(
        fabric.name,
        fabric.copies,
        needle(fabric.first_slot),
        needle(fabric.last_slot),
        fabric.most_stitches,
        fabric.rows,
        fabric.loops,
        found,
        long_rows(fabric),
    )
