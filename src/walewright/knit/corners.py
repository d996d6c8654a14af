"""Inner corners of bands: how many stitches of the last row are too many there, told before it comes off.

A band knitted straight is as long at its last row as at the line it hangs on. Round an inner corner it has to get shorter: turned
by the angle t over its depth d, by 2 d tan(t / 2) (geometry), at the right angle of a square neck by 2 d. Round curves are left
to the band's own stretch. Nothing can be taken in mid-row without moving every stitch beyond: the last row is drawn in by hand.
"""

from __future__ import annotations

from collections import Counter
from itertools import pairwise
from math import atan2, degrees, radians, tan

from walewright.counted import counted_piece
from walewright.counted.bands import band_fabric, depth_cm
from walewright.counted.model import PickUp, SizedBand, SizedGarment, SizedOpening, SizedRun
from walewright.counted.needles import moves
from walewright.design.model import Band, Design, Fabric
from walewright.knit import steps as st
from walewright.report.said import Said, said
from walewright.trade.edge_names import part_of_edge

SHARP = 60
"""Degrees that a line turns by at a corner; what turns less is taken for a curve, or lies flat by itself (from memory)."""
STRAIGHT = 175
"""Degrees from which a corner is a slit, whose band is lapped or crossed at its foot."""
LEAST = 2
"""Stitches too many that are worth a word."""


def corner_notes(design: Design, garment: SizedGarment, band: Band, sized: SizedBand) -> tuple[st.Step, ...]:
    """A note for each number of stitches that is to be drawn in at corners of an edge, in the order of the band."""
    fabric, depth = band_fabric(design, band.name), depth_cm(design, sized)
    found: Counter[tuple[str, str, int, bool]] = Counter()
    arms = sized.pick_ups
    # Round a whole opening the band ends at a corner of it, and its ends are sewn together there.
    ring = len(arms) > 2 and part_of_edge(arms[-1].edge.edge).upper and _of_one_opening(arms[0], arms[-1])
    ends = () if ring or not arms else (arms[0], arms[-1])
    for one, other in pairwise((*arms, arms[0]) if ring else arms):
        stitches = round(_excess_cm(design, garment, one, other, depth) * fabric.stitches_per_cm)
        # Where the band ends, or its line turns back, nearer than it is deep, there is no corner to go round.
        short = [arm for arm in (one, other) if arm.cm < depth and (arm in ends or arm.part != "centre")]
        if stitches >= LEAST and not short:
            # Half of what goes is taken from each arm, two stitches for one. The flat part has a corner at both its ends; beyond
            # another arm the band goes straight on, unless it ends.
            needed = {id(arm): stitches * (2 if _flat(arm) else 1 if arm in ends else 0) for arm in (one, other)}
            room = all(arm.stitches >= needed[id(arm)] for arm in (one, other))
            found[one.edge.piece, part_of_edge(one.edge.edge).name, stitches, room] += 1
    return tuple(st.Say(_corner(*key, count), origin=band.origin.path) for key, count in found.items())


def _flat(arm: PickUp) -> bool:
    """Whether it is the foot of an opening, or the edge above it: that has a corner at both its ends."""
    return arm.part == "centre" or part_of_edge(arm.edge.edge).upper


def _of_one_opening(one: PickUp, other: PickUp) -> bool:
    names = {(arm.edge.piece, part_of_edge(arm.edge.edge).name, arm.copy) for arm in (one, other)}
    return len(names) == 1


def _corner(piece: str, edge: str, stitches: int, room: bool, corners: int) -> Said:
    where = said("edge", piece=piece, edge=edge)
    begun = said("inner-corner" if corners == 1 else "inner-corners", where=where, corners=corners, stitches=stitches)
    if not room:
        return said("corner-too-long", begun=begun)
    before, after = (stitches + 1) // 2, stitches // 2
    return said("corner-even" if before == after else "corner-uneven", begun=begun, before=before, after=after)


def _excess_cm(design: Design, garment: SizedGarment, one: PickUp, other: PickUp, depth: float) -> float:
    """By how much a band so deep is too long at its last row where the one edge goes over into the other."""
    if not _of_one_opening(one, other) or (one.edge, one.part) == (other.edge, other.part):
        return 0.0
    sized = garment.piece(one.edge.piece)
    opening = next((o for o in sized.openings if o.name == part_of_edge(one.edge.edge).name), None)
    if opening is None:
        return 0.0
    counted = counted_piece(design, sized)
    if one.edge != other.edge:
        beside = one if part_of_edge(other.edge.edge).upper else other
        turn = degrees(atan2(depth, _in(counted.fabric(opening.to_row), _edge(opening, beside), opening.to_row, depth)))
    else:
        turn = _turn(counted.fabric(opening.row, above=True), opening, {one.part, other.part}, depth)
    return 2 * depth * tan(radians(turn / 2)) if SHARP <= turn < STRAIGHT else 0.0


def _edge(opening: SizedOpening, arm: PickUp) -> tuple[SizedRun, ...]:
    return opening.left if arm.part == "left" else opening.right


def _turn(fabric: Fabric, opening: SizedOpening, parts: set[str], depth: float) -> float:
    """Degrees that the line turns by: from the gap's edge to its flat part, or, if it has no flat part, to its other edge."""
    sides = [runs for part, runs in (("left", opening.left), ("right", opening.right)) if part in parts]
    return sum(degrees(atan2(depth, _out(fabric, runs, opening.row, depth))) for runs in sides)


def _out(fabric: Fabric, runs: tuple[SizedRun, ...], row: int, depth: float) -> float:
    """How far, in cm, a gap's edge has gone outwards when it is so high above the parting."""
    top = row + depth * fabric.rows_per_cm
    return sum(-by for at, by in moves(runs).items() if at <= top) / fabric.stitches_per_cm


def _in(fabric: Fabric, runs: tuple[SizedRun, ...], row: int, depth: float) -> float:
    """How far, in cm, a gap's edge comes inwards on the last way, so high, to where the gap closes."""
    low = row - depth * fabric.rows_per_cm
    return sum(by for at, by in moves(runs).items() if at > low) / fabric.stitches_per_cm
