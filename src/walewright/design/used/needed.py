"""What is for the page alone: what is needed beside the yarn, and the photograph."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from walewright.design.findings import Findings
from walewright.design.model import Band, CountPerSize, Needed, Origin, PerSize, Photograph, Piece
from walewright.design.model.per_size import times
from walewright.design.pieces.worn import Worn
from walewright.design.reading.numbered import NEAR
from walewright.design.reading.places import LONGEST_CM
from walewright.design.reading.units import LENGTH, NUMBER
from walewright.design.reading.values import Value, words
from walewright.report.said import Amount, by_size, said
from walewright.source import syntax

MOST_NEEDED = 1000
"""Of one thing, in one size."""


def needed(node: syntax.NeededLine, worn: Worn, bands: Iterable[Band | None], findings: Findings) -> Needed | None:
    """One thing and how much of it: counted, in cm, or as the knitted garment has it. None where told why not."""
    origin = Origin(f"needed {node.text}", node.span)
    if node.amount is None:
        return Needed(node.text, "", origin)
    if isinstance(node.amount, syntax.ForEachButtonhole):
        holes = _holes(node.amount, worn.pieces, {b.name: b for b in bands if b is not None}, findings)
        return None if holes is None else Needed(node.text, "count", origin, holes=holes)
    if isinstance(node.amount, syntax.Along | syntax.Round):
        measured = worn.measured(node.amount)
        return None if measured is None else Needed(node.text, "length", origin, measured=measured)
    value = worn.scope.value(node.amount)
    if value is None:
        return None
    if value.dimension == NUMBER:
        values = _counted(value, node.amount, worn, findings)
    elif value.dimension == LENGTH:
        values = _within(value, LONGEST_CM, "cm", worn, findings)
    else:
        findings.report("wrong-unit/needed", (value.span, "dimension"), helps=("count-or-length",), dimension=value.dimension.kind)
        return None
    return None if values is None else Needed(node.text, "count" if value.dimension == NUMBER else "length", origin, values)


def _counted(value: Value, written: syntax.Expr, worn: Worn, findings: Findings) -> PerSize | None:
    sizes = worn.scope.sizes
    broken = tuple(s for s, n in zip(sizes, value.amounts, strict=True) if abs(n - round(n)) > NEAR)
    if broken:
        findings.report(
            "count-not-whole",
            (value.span, "here"),
            helps=("round",),
            sizes=worn.scope.only(broken),
            what=said("needed"),
            name=words(written),
            values=by_size(sizes, value.amounts, ""),
        )
        return None
    found = _within(value, MOST_NEEDED, "", worn, findings)
    return found and tuple(float(round(n)) for n in found)


def _within(value: Value, most: float, unit: str, worn: Worn, findings: Findings) -> PerSize | None:
    """The amounts, none below nought, one above it, and none beyond `most`; told where not."""
    sizes = worn.scope.sizes
    low = tuple(s for s, n in zip(sizes, value.amounts, strict=True) if n < -NEAR)
    amounts = by_size(sizes, value.amounts, unit)
    if low or max(value.amounts) <= NEAR:
        findings.report(
            "not-positive/length",
            (value.span, "amounts"),
            helps=("above-nothing",),
            sizes=worn.scope.only(low) if low else (),
            what=said("needed"),
            above=not low,
            amounts=amounts,
        )
        return None
    high = tuple(s for s, n in zip(sizes, value.amounts, strict=True) if n > most)
    if high:
        findings.report(
            "absurd-length/value" if unit else "absurd-count/needed",
            (value.span, "amounts"),
            helps=("look",),
            sizes=worn.scope.only(high),
            what=said("needed"),
            longest=Amount(most / 100, "m") if unit else Amount(most, ""),
            amounts=amounts,
        )
        return None
    return value.amounts


def _holes(
    node: syntax.ForEachButtonhole, pieces: Mapping[str, Piece | None], bands: Mapping[str, Band], findings: Findings
) -> tuple[tuple[str, CountPerSize], ...] | None:
    """The buttonholes of each that is named, by size; a piece's in all its copies."""
    found: list[tuple[str, CountPerSize]] = []
    for owner in node.owners:
        if owner in bands:
            counts = [bands[owner].holes] if bands[owner].holes else []
        else:
            piece = findings.look_up("piece or band", owner, node.span, {**dict.fromkeys(bands), **pieces})
            if piece is None:
                return None
            counts = [times(holes.counts, piece.copies) for holes in piece.buttonholes]
        if not counts:
            findings.report("no-buttonholes", (node.span, "here"), helps=("own-count",), owner=owner)
            return None
        found.append((owner, tuple(sum(of_size) for of_size in zip(*counts, strict=True))))
    return tuple(found)


def photograph(title: syntax.PatternBlock, findings: Findings) -> Photograph | None:
    """The picture that the pattern's block names."""
    lines = (s for s in title.body if isinstance(s, syntax.PhotographLine))
    line = findings.one("photograph", lines, said("the-pattern"))
    return None if line is None else Photograph(line.file, line.showing, Origin("photograph", line.span))
