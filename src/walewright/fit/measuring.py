"""What the author asks to be measured on the knitted garment."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Design, Measured, PerSize
from walewright.fit.cloth import Cloth
from walewright.fit.girths import from_edge_to_edge, measured
from walewright.fit.loops import Walker
from walewright.fit.model import Girth
from walewright.glue.model import Place
from walewright.report.model import Diagnostic, Span, diagnosed


def lengths_of(design: Design, walkers: Sequence[Walker], what: Measured | None) -> tuple[Girth | None, PerSize]:
    """What goes round, where that is asked for, and the length in each size; empty where it cannot be told, or nothing is asked."""
    if what is not None and what.kind == "across level":
        return None, _known([from_edge_to_edge(walker, what) for walker in walkers])
    if what is not None and what.kind != "along":
        girth = measured(design, walkers, what)
        return girth, girth.values if girth is not None else ()
    return None, _along(walkers, what)


def _along(walkers: Sequence[Walker], what: Measured | None) -> PerSize:
    """The length of a band's last edge or of an edge of a piece: of both sides of a piece that has it on both, once."""
    if what is None:
        return ()
    return _known([_length(w.cloth, what) for w in walkers])


def _known(lengths: Sequence[float | None]) -> PerSize:
    """All of them, or none."""
    known = tuple(length for length in lengths if length is not None)
    return known if len(known) == len(lengths) else ()


def _length(cloth: Cloth, what: Measured) -> float | None:
    """In one size; of a band that is knitted in parts, of all of them, as they are sewn together."""
    parts = [band for band in cloth.design.bands if band.part_of == what.owner]
    if not parts:
        return cloth.length(Place(what.owner, what.at or "rim"))
    made = [found for found in (cloth.band(part.name) for part in parts) if found is not None]
    lines = sum(sized.copies for _, sized in made)
    return sum(sized.copies * cloth.rim(sized) for _, sized in made) * parts[0].parts / lines


def nothing(what: Measured | None, span: Span) -> Diagnostic:
    """That it cannot be told."""
    if what is not None and what.kind == "across level":
        return diagnosed("nothing-to-measure/goes-round", (span, "measured-here"), helps=("measure-round",))
    if what is not None and what.kind != "along":
        return diagnosed("nothing-to-measure/no-ring", (span, "measured-here"), helps=("join-the-pieces",))
    return diagnosed("nothing-to-measure/no-length", (span, "measured-here"))
