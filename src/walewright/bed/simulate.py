"""Knitting a whole work: block after block, then the joins."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from walewright.bed import (
    by_hand,
    carriage,
    closing,
    cord,
    crossing,
    drawing,
    dropping,
    folding,
    needles,
    picture,
    sewing,
    spreading,
    strands,
    taking,
)
from walewright.bed.corners import Meetings
from walewright.bed.fabric import KnitFabric, KnitPiece
from walewright.bed.finish import finish
from walewright.bed.lying import put_together
from walewright.bed.machine import Machine, empty_machine
from walewright.bed.model import Bed, Fault, fault_of
from walewright.bed.reach import out_of_reach
from walewright.bed.refusals import Refusal, refused
from walewright.bed.seams import free_edges, join, open_edges, open_feet
from walewright.bed.sides import ClothSheet, Turned
from walewright.knit import operations as ops
from walewright.record import record


@record
class BedResult:
    """Fabrics of the blocks that came to a good end, in order; `open_edges` are (piece, edge) that stay on waste yarn, `free_edges`
    (piece, edge, copy) all that nothing took up."""

    fabrics: tuple[KnitFabric, ...]
    faults: tuple[Fault, ...]
    open_edges: tuple[tuple[str, str], ...] = ()
    free_edges: tuple[tuple[str, str, int], ...] = ()
    done: tuple[str | ops.Join, ...] = ()
    """What came to a good end in the order in which it was done: blocks by their names, and joins."""
    sides: tuple[tuple[ClothSheet, Turned], ...] = ()
    """Each (piece, copy), the one that stands for all that hang together with it, and whether it is out with its other side."""


def _name_edge(m: Machine, op: ops.NameEdge) -> Refusal | None:
    """Looked at when the block is done, for rows still to be knitted may be named."""
    m.named.append((m.index, op, m.section))
    return None


def _join_in_block(m: Machine, op: ops.Join) -> Refusal | None:
    return m.refuse("join-in-block")


RULES: Mapping[type, Callable[[Machine, Any], Refusal | None]] = {
    ops.UseYarn: strands.use_yarn,
    ops.InFabric: strands.in_fabric,
    ops.BreakYarn: strands.break_yarn,
    ops.Pass: carriage.cross,
    ops.MoveCarriage: carriage.move_carriage,
    ops.SetCounter: carriage.set_counter,
    ops.Check: carriage.check,
    ops.Wrap: carriage.wrap,
    ops.IntoWork: needles.into_work,
    ops.OutOfWork: needles.out_of_work,
    ops.CastOn: needles.cast_on,
    ops.Transfer: needles.transfer,
    ops.FillFromBelow: needles.fill_from_below,
    ops.Hold: needles.hold,
    ops.Release: needles.release,
    ops.LayCord: cord.lay_cord,
    ops.DrawCord: cord.draw_cord,
    ops.LatchUp: dropping.latch_up,
    ops.Drop: dropping.drop,
    ops.Cross: crossing.cross_over,
    ops.LiftOff: by_hand.lift_off,
    ops.DrawLong: by_hand.draw_long,
    ops.LayIn: by_hand.lay_in,
    ops.PictureRow: picture.picture_row,
    ops.HangFeet: folding.hang_feet,
    ops.SewOff: sewing.sew_off,
    ops.CastOff: closing.cast_off,
    ops.Close: drawing.close,
    ops.Gather: drawing.gather,
    ops.Spread: spreading.spread,
    ops.OntoWaste: closing.onto_waste,
    ops.Rehang: taking.rehang,
    ops.PickUpEdge: taking.pick_up_edge,
    ops.NameEdge: _name_edge,
    ops.NameGap: _name_edge,
    ops.Join: _join_in_block,
}


def knit(work: ops.Work, bed: Bed) -> BedResult:
    """Knit the work. A block stops at its first fault, the others go on; what only follows from a fault is not reported again."""
    pieces: dict[str, KnitPiece] = {}
    faults: list[Fault] = []
    spoilt: set[str] = set()
    meetings = Meetings()
    done: list[str | ops.Join] = []
    joins = 0
    for task in work.tasks:
        if isinstance(task, ops.Join):
            fault = join(task, joins, pieces, meetings)
            faults += [fault] if fault is not None else []
            done += [task] if fault is None else []
            joins += 1
        elif task.name in pieces:
            faults.append(fault_of(refused("block-named-twice", piece=task.name), task.name, 0))
        else:
            result = _knit_block(task, bed, pieces, meetings)
            if isinstance(result, Fault):
                pieces[task.name] = KnitPiece(None)
                spoilt |= {op.piece for op in task.operations if isinstance(op, ops.Rehang | ops.PickUpEdge)}
                if result.code != taking.FOLLOWS:
                    faults.append(result)
            else:
                pieces[task.name] = KnitPiece(result)
                done.append(task.name)
    faults += [fault for fault in open_feet(pieces) if fault.block not in spoilt]
    fabrics = tuple(piece.fabric for piece in pieces.values() if piece.fabric is not None)
    sheets = [(fabric.name, copy) for fabric in fabrics for copy in range(1, fabric.copies + 1)]
    sides = tuple((sheet, meetings.sides.of(sheet)) for sheet in sheets)
    return BedResult(fabrics, tuple(faults), open_edges(pieces), free_edges(pieces), tuple(done), sides)


def _knit_block(block: ops.Block, bed: Bed, pieces: dict[str, KnitPiece], meetings: Meetings) -> KnitFabric | Fault:
    m = empty_machine(bed, pieces, block.copies, meetings)
    for m.index, op in enumerate(block.operations):
        refusal = out_of_reach(m, op) or RULES[type(op)](m, op)
        if refusal is not None:
            return _fault(block, m.index, m.counter, refusal)
    refusal = by_hand.settle(m, ())
    if refusal is not None:
        return _fault(block, len(block.operations), m.counter, refusal)
    result = finish(m, block)
    if not isinstance(result, KnitFabric):
        index, refusal = result
        return _fault(block, index, m.counter, refusal)
    refusal = put_together(m, block.name, result.corners.get(("start", "whole")))
    if refusal is not None:
        return _fault(block, len(block.operations), m.counter, refusal)
    for piece, edge, part, copy in m.taken:
        pieces[piece].taken.add((edge, part, copy))
    for piece, stretches in m.stretches.items():
        pieces[piece].stretches.extend(stretches)
    return result


def _fault(block: ops.Block, index: int, counter: int, refusal: Refusal) -> Fault:
    return fault_of(refusal, block.name, index, counter=counter)
