"""Bands beside what the bed knitted: their stitches, their buttonholes through all layers, and the columns of their rib."""

from __future__ import annotations

from walewright.bed import KnitFabric
from walewright.counted.model import SizedBand
from walewright.counted.ribs import LatchedRib
from walewright.design.model import Design
from walewright.proof.counted import hole
from walewright.proof.latched import columns
from walewright.proof.told import Told
from walewright.report.said import said


def band_as_counted(design: Design, sized: SizedBand, fabric: KnitFabric) -> Told:
    """(where, counted, knitted) of one band."""
    edging = design.edging(next(b.edging for b in design.bands if b.name == sized.name))
    knit = design.fabric(edging.fabric)
    # A facing is turned in along a row of its own, the first.
    begun = 1 if edging.kind == "facing" else 0
    yield said("at/first-row"), sized.stitches, sum(course.count for course in fabric.passes(1))
    taken = [pick for pick in sized.pick_ups if pick.stitches]
    for pick, hung in zip(taken, fabric.hung, strict=False):
        (begin, end), (first, last) = pick.between or (0, 0), hung.stretch
        yield said("at/stretch-begins", piece=pick.edge.piece, edge=pick.edge.edge), begin, first
        yield said("at/stretch-ends", piece=pick.edge.piece, edge=pick.edge.edge), end, last
    for cut in sized.holes:
        yield from hole(cut, begun + cut.row, fabric)
    for cut in sized.behind:
        yield from hole(cut, cut.row, fabric)
    rib = LatchedRib(knit, 0, sized.rows, (-(sized.stitches // 2), sized.stitches - sized.stitches // 2 - 1))
    if knit.rib_every and rib.begin is not None:
        rows = range(begun + 1, begun + sized.rows + 1)
        yield said("at/rib-of-band"), *columns(fabric, rows, rib)
