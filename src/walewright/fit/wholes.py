"""Finished measurements beside what their author wants: what single pieces are off adds up over all that are put together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.design.model import Design, Measured
from walewright.fit.cloth import Cloth
from walewright.fit.loops import Walker
from walewright.fit.measuring import lengths_of
from walewright.fit.model import Beside
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Amount, only, said

STITCHES_OFF = 2
"""Stitches that the width of a piece may be off at the most; so may the whole."""


def wholes(design: Design, walkers: Sequence[Walker]) -> Iterator[Beside]:
    """What is wanted and can be measured."""
    for one in design.finished:
        _, knitted = lengths_of(design, walkers, one.measured)
        if one.wanted and knitted:
            yield Beside(one.name, one.wanted, knitted)


def wholes_off(design: Design, first: Walker, found: Sequence[Beside]) -> Iterator[Diagnostic]:
    """A warning for each that is further off than the width of one piece may be."""
    for beside in found:
        finished = next(one for one in design.finished if one.name == beside.name)
        stitch = _stitch(first.cloth, finished.measured)
        off = {size: by for size, by in zip(design.sizes, beside.off, strict=True) if abs(by) > STITCHES_OFF * stitch + 1e-6}
        if not off:
            continue
        both = {size: pair for size, *pair in zip(design.sizes, beside.wanted, beside.knitted, strict=True)}
        even = [p.name for p in design.pieces if p.mirror_of is None and p.symmetric and p.parity == "even"]
        yield diagnosed(
            "whole-off",
            (finished.origin.span, "wanted"),
            notes=tuple(
                said("beside", size=s, wanted=Amount(both[s][0]), knitted=Amount(both[s][1]), off=Amount(abs(by)), more=by > 0)
                for s, by in off.items()
            ),
            helps=("for-seams", "leave-free", *(("odd-or-even",) if even else ())),
            severity=Severity.WARNING,
            sizes=only(design.sizes, off),
            measurement=beside.name,
        )


def _stitch(cloth: Cloth, what: Measured | None) -> float:
    """cm of a stitch of what is measured."""
    owner = what.owner if what is not None else cloth.design.pieces[0].name
    band = cloth.band(owner)
    if band is not None:
        return 1 / cloth.design.fabric(cloth.design.edging(band[0].edging).fabric).stitches_per_cm
    return cloth.stitch(owner)
