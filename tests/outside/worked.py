"""Published worked examples as sources: the example's figures are written as stitches and rows, and everything is compiled."""

from __future__ import annotations

from walewright.bed import KnitFabric
from walewright.cli.sources import shipped
from walewright.counted.model import SizedGarment, SizedRun
from walewright.design import Changes
from walewright.knit.operations import CastOff, Pass, SetCounter
from walewright.pipeline import Outcome, compile
from walewright.report.english import in_english

SHIPPED = shipped()

HEAD = """pattern "Worked example"

sizes one
    figure 10 cm

machine {bed}

yarn wool "wool", 100 g = 200 m

fabric plain
    stocking stitch in wool at tension 5
    swatch {stitches:g} stitches by {rows:g} rows = 10 cm by 10 cm, 10 g

edging band in plain, 4 rows deep, added after, cast off chain
"""


ONE_SIZE = """sizes one
    figure 10 cm
"""

WIDE = """wide
    needles 300
    pitch 4.5 mm
    prongs 1 2 3
    waste rows 8"""
"""A bed for pieces that a source knits in the round and that no shipped bed has room for when they are flat."""

INCH = 2.54
PER_INCH = 10 / INCH
"""So many to the inch are so many times this to 10 cm."""


def compiled(body: str, stitches: float = 28, rows: float = 40, bed: str = "fine", sizes: str = ONE_SIZE) -> Outcome:
    """The source with these pieces, at so many stitches and rows to 10 cm."""
    assert ONE_SIZE in HEAD
    head = HEAD.replace(ONE_SIZE, sizes).format(stitches=stitches, rows=rows, bed=bed)
    return compile(head + body, "worked.wale", SHIPPED, Changes())


def proven(body: str, stitches: float = 28, rows: float = 40, bed: str = "fine", sizes: str = ONE_SIZE) -> Outcome:
    """What comes of that source, with its proof."""
    outcome = compiled(body, stitches, rows, bed, sizes)
    assert outcome.proven, [(d.code, in_english(d).message, in_english(d).notes) for d in outcome.diagnostics]
    return outcome


def garment(body: str, stitches: float = 28, rows: float = 40, bed: str = "fine") -> SizedGarment:
    """The proven garment of that source."""
    outcome = proven(body, stitches, rows, bed)
    assert outcome.counts is not None
    return outcome.counts.sizes[0]


def knitted(outcome: Outcome, block: str, size: int = 0) -> KnitFabric:
    """A block as the bed knitted it."""
    return next(fabric for fabric in outcome.results[size].fabrics if fabric.name == block)


def picked(outcome: Outcome, band: str, piece: str, edge: str, part: int = 0) -> list[int]:
    """Along one part of an edge of a piece, from below: at which of its places the loops of a band were hung."""
    places = {point: at for at, point in enumerate(knitted(outcome, piece).edge(edge)[part].points)}
    links = [link for link in knitted(outcome, band).links if link.piece == piece and link.loops in places]
    return sorted(places[link.loops] for link in links)


def moves(run: SizedRun) -> list[tuple[int, int]]:
    """(rows after the beginning of the run, stitches moved, inwards negative)."""
    return [(row - run.from_row, by) for row, by in run.changes()]


def cast_offs(outcome: Outcome, block: str) -> list[tuple[int, int]]:
    """(rows on the counter, stitches) of every cast-off of a block that leaves stitches on the bed, as the bed worked it."""
    found, row = [], 0
    work = next(b for b in outcome.works[0].blocks if b.name == block)
    last = max(i for i, op in enumerate(work.operations) if isinstance(op, Pass))
    for index, op in enumerate(work.operations):
        if isinstance(op, SetCounter):
            row = op.rows
        elif isinstance(op, Pass):
            row += 1
        elif isinstance(op, CastOff) and index < last:
            found.append((row, op.last - op.first + 1))
    return found
