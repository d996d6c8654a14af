"""Floats that are too long to be left: found on the fabric, and told as a warning where the author can mend them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.bed import KnitFabric
from walewright.bed.density import fabric_at
from walewright.counted.model import SizedGarment, SizedPiece
from walewright.design.model import Design, Origin
from walewright.knit.operations import needle
from walewright.proof.model import FloatFound
from walewright.proof.spent import courses_by_row, knit_of
from walewright.record import record
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Amount, Said, said

LONGEST_STITCHES = 5
"""Source: alessandrina.com, fair-isle pages."""

LONGEST_CM = 2.5
"""Source: zpag.net, length of floats (1 in; a source of hand knitting)."""

TOLD = 3
"""So many floats of a row are named by their needles, the others counted."""


@record
class LongFloat:
    """A float beyond the limits, and what it lies in: `within` a fabric, or a chart of a piece."""

    found: FloatFound
    within: str
    origin: Origin


def long_floats(design: Design, garment: SizedGarment, fabrics: Sequence[KnitFabric]) -> tuple[LongFloat, ...]:
    """All of one size, piece by piece, by rising row."""
    return tuple(found for fabric in fabrics for found in _of_fabric(design, garment, fabric))


def _of_fabric(design: Design, garment: SizedGarment, fabric: KnitFabric) -> Iterator[LongFloat]:
    rows = courses_by_row(fabric) if fabric.floats else {}
    sized = next((p for p in garment.pieces if p.name == fabric.name), None)
    for run in fabric.floats:
        courses = rows.get(run.counter, ())
        at = next((c for c in courses if c.first <= run.first <= c.last), None)
        if at is None:
            continue
        knit = knit_of(design, fabric_at(at, run.first), at.yarn, at.tension)
        cm = run.needles / knit.stitches_per_cm
        if run.needles > LONGEST_STITCHES or cm > LONGEST_CM:
            found = FloatFound(
                fabric.name, run.yarn, row=run.counter, first=needle(run.first), last=needle(run.last), stitches=run.needles, cm=cm
            )
            within, origin = _motif(sized, run.counter, run.first, run.last) or (knit.name, knit.origin)
            yield LongFloat(found, within, origin)


def _motif(sized: SizedPiece | None, counter: int, first: int, last: int) -> tuple[str, Origin] | None:
    """The motif that lies there."""
    for chart in () if sized is None else sized.charts:
        over = chart.first <= last and first <= chart.last
        if not chart.fabric and over and sized is not None and sized.within(chart.from_row, chart.to_row, counter):
            return chart.chart, chart.origin
    return None


def float_warnings(found: Sequence[tuple[str, Sequence[LongFloat]]]) -> Iterator[Diagnostic]:
    """One warning for each fabric or motif and yarn, `found` being (size, its floats)."""
    kinds = dict.fromkeys((f.within, f.found.yarn, f.origin) for _, floats in found for f in floats)
    for within, yarn, origin in kinds:
        notes = []
        longest = 0
        cm = 0.0
        sizes = []
        for size, floats in found:
            there = [f.found for f in floats if (f.within, f.found.yarn, f.origin) == (within, yarn, origin)]
            if there:
                sizes.append(size)
                notes.append(said("floats", size=size, pieces=_told(there)))
                longest = max(longest, *(f.stitches for f in there))
                cm = max(cm, *(f.cm for f in there))
        yield diagnosed(
            "long-float",
            (origin.span, "knitted-here"),
            notes=("catches", *notes),
            helps=("lift-it",),
            severity=Severity.WARNING,
            sizes=tuple(sizes),
            yarn=yarn,
            needles=longest,
            length=Amount(cm),
            within=within,
            most_stitches=LONGEST_STITCHES,
            most=Amount(LONGEST_CM),
        )


def _told(floats: Sequence[FloatFound]) -> tuple[Said, ...]:
    """ "back, 12 floats, the first at RC 2, before row 3, on needles L 5 to R 1, the last at RC 24", and so for each piece."""
    parts = []
    for piece in dict.fromkeys(f.piece for f in floats):
        there = [f for f in floats if f.piece == piece]
        rows = [f.row for f in there]
        first = [said("range", least=f.first, most=f.last) for f in there if f.row == rows[0]]
        at = said("float-at", counter=rows[0] - 1, row=rows[0], needles=tuple(first[:TOLD]), more=max(0, len(first) - TOLD))
        if min(rows) != max(rows):
            parts.append(said("floats-of", piece=piece, floats=len(there), at=at, last=max(rows) - 1))
        else:
            parts.append(said("float-of", piece=piece, at=at))
    return tuple(parts)
