"""How much of each thing is needed that the author lists beside the yarn."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Design, Needed, PerSize
from walewright.fit.loops import Walker
from walewright.fit.measuring import lengths_of, nothing
from walewright.glue.model import Glued
from walewright.report.model import Diagnostic


def needed(design: Design, walkers: Sequence[Walker]) -> tuple[tuple[PerSize, ...], list[Diagnostic]]:
    """In the order of the design, counted or in cm, and what cannot be measured."""
    found: list[PerSize] = []
    told: list[Diagnostic] = []
    for one in design.needed:
        amounts = one.values or _for_buttonholes(design, walkers, one)
        if one.measured is not None:
            _, amounts = lengths_of(design, walkers, one.measured)
            if not amounts:
                told.append(nothing(one.measured, one.origin.span))
        found.append(amounts)
    return tuple(found), told


def _for_buttonholes(design: Design, walkers: Sequence[Walker], one: Needed) -> PerSize:
    """One for each; a band is knitted once on each of its lines, and the copies of a piece are counted already."""
    if not one.holes:
        return ()
    return tuple(
        float(sum(w.cloth.at.of(counts) * max(1, _lines(design, w.glued, owner)) for owner, counts in one.holes)) for w in walkers
    )


def _lines(design: Design, glued: Glued, owner: str) -> int:
    """On how many lines a band lies; one that is knitted in parts has a line for each part of each copy."""
    parts = [band for band in design.bands if (band.part_of or band.name) == owner]
    return sum(len(glued.lines_of(band.name)) for band in parts) // parts[0].parts if parts else 0
