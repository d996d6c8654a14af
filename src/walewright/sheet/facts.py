"""The facts beside a drawing: what a section is made of, and in words everything that the drawing marks."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from walewright.counted.model import SizedBand, SizedPiece, SizedSlot, SizedZone
from walewright.counted.needles import last_row
from walewright.design.model import Design, Edging, Piece
from walewright.figures.marks import alike, motifs, slots_name
from walewright.figures.measures import name_of
from walewright.guide.english.fabric_words import dial_words
from walewright.guide.numbers import SizedFigure, figure, listed, sentence, words
from walewright.knit.operations import needle
from walewright.proof.model import Proof
from walewright.sheet.model import Fact
from walewright.sheet.supplies import stitch_words
from walewright.solve.model import Counts
from walewright.trade.ends import SlotTaken
from walewright.trade.shaping import WedgeKind
from walewright.write.model import Section

_TAKEN: Mapping[SlotTaken, str] = {
    "waste": "left on waste yarn",
    "cast-off": "closed and cast on again",
    "eyelet": "each an empty needle",
}

_KIND: Mapping[WedgeKind, str] = {
    "in": "held step by step from the edge",
    "out": "held, and returned step by step",
    "both": "held, then returned",
}


def section_facts(design: Design, counts: Counts, section: Section) -> Iterator[Fact]:
    """The facts of a piece, an edging on a piece, or a band."""
    fabric_name = _fabric(design, section.name)
    if fabric_name is not None:
        fabric = design.fabric(fabric_name)
        yarn = next(y for y in design.yarns if y.name == fabric.yarn)
        yield Fact("Fabric", f"{stitch_words(fabric)}, in {yarn.label} at {dial_words(fabric)}")
    if section.copies > 1:
        yield Fact("Make", f"{section.copies} alike: one box to tick for each")
    piece = next((p for p in design.pieces if p.name == section.name), None)
    if piece is not None:
        yield from _piece(design, piece, [g.piece(section.name) for g in counts.sizes])
    for band in design.bands:
        if band.name == section.name:
            yield Fact("Along", ", then ".join(name_of(f"{e.piece} {e.edge}") for e in band.along))
            yield from _holes([next(b for b in g.bands if b.name == band.name) for g in counts.sizes])


def _fabric(design: Design, section: str) -> str | None:
    """The fabric of a piece, of an edging on a piece, or of a band."""
    for piece in design.pieces:
        if piece.name == section:
            return piece.fabric
        if piece.start_edging is not None and f"{piece.name} {piece.start_edging}" == section:
            return design.edging(piece.start_edging).fabric
    edging: Edging | None = next((design.edging(b.edging) for b in design.bands if b.name == section), None)
    return edging.fabric if edging else None


def _piece(design: Design, piece: Piece, sized: list[SizedPiece]) -> Iterator[Fact]:
    if piece.mirror_of is not None:
        yield Fact(
            "Mirror image", f"of the {name_of(piece.mirror_of)}, shaped where its own carriage stands: work it from its own lines"
        )
    if len(sized) == 1:
        # With more sizes these figures stand in the legend.
        yield Fact("Widest", f"{sized[0].widest} stitches")
        yield Fact("Rows", _row(sized[0], sized[0].rows))
    if piece.start_along:
        yield Fact("Begun on", ", then ".join(name_of(f"{e.piece} {e.edge}") for e in piece.start_along))
    yield from _slots(sized)
    yield from _openings(sized)
    yield from _wedges(sized)
    yield from _zones(design, sized)
    yield from _motifs(sized)
    for number in range(min(len(s.repeats) for s in sized)):
        repeats = [s.repeats[number] for s in sized]
        rows, times = figure([str(r.to_row - r.from_row) for r in repeats]), figure([str(r.times) for r in repeats])
        yield Fact("Repeated", *words(rows, " rows, ", times, " times in all"))
    if piece.end_way == "gathered":
        yield Fact("End", "all stitches drawn up on the tail")


def _row(sized: SizedPiece, row: int) -> str:
    return str(sized.counter(row))


def _slots(sized: list[SizedPiece]) -> Iterator[Fact]:
    groups = [alike(s.slots) for s in sized]
    for number in range(min(len(g) for g in groups)):
        of_size = [g[number] for g in groups]
        one = of_size[0][0]
        rows: list[str | SizedFigure] = []
        for i in _distinct_rows(of_size):
            at = [_row(s, slots[min(i, len(slots) - 1)].row) for s, slots in zip(sized, of_size, strict=True)]
            rows += ["; ", figure(at)] if rows else [", at ", figure(at, "RC ")]
        stitches = figure([str(s[0].stitches) for s in of_size])
        count = f"{len(of_size[0])} of " if len(of_size[0]) > 1 else ""
        if one.taken == "eyelet":
            told = words(figure([str(len(s)) for s in of_size]), *rows)
        else:
            told = words(count, stitches, " stitches, ", *_needles(of_size), *rows, f"; {_TAKEN.get(one.taken, one.taken)}")
        yield Fact(sentence(slots_name(of_size[0])), *told)


def _distinct_rows(of_size: Sequence[list[SizedSlot]]) -> list[int]:
    """Indices of the slots of a group that begin a row of their own."""
    first = of_size[0]
    return [i for i, slot in enumerate(first) if all(slot.row != before.row for before in first[:i])]


def _needles(of_size: Sequence[list[SizedSlot]]) -> tuple[str | SizedFigure, ...]:
    if any(len({(s.first, s.last) for s in slots}) > 1 for slots in of_size):
        return ("on the needles that the steps name",)
    return _from_to([s[0].first for s in of_size], [s[0].last for s in of_size])


def _from_to(first: Sequence[int], last: Sequence[int]) -> tuple[str | SizedFigure, ...]:
    return "needles ", figure([needle(n) for n in first]), " to ", figure([needle(n) for n in last])


def _openings(sized: list[SizedPiece]) -> Iterator[Fact]:
    for number, opening in enumerate(sized[0].openings):
        if opening.rejoins and all(len(s.openings) > number for s in sized):
            low = figure([_row(s, s.openings[number].row) for s in sized], "RC ")
            high = figure([_row(s, s.openings[number].to_row) for s in sized])
            told = words("the parts beside it are knitted one after the other from ", low, " to ", high)
            yield Fact(sentence(name_of(opening.name)), *told)


def _wedges(sized: list[SizedPiece]) -> Iterator[Fact]:
    for number in range(min(len(s.wedges) for s in sized)):
        found = [s.wedges[number] for s in sized]
        one = found[0]
        sides = "both edges" if one.edge == "both" else f"the {one.edge} edge"
        low = figure([_row(s, w.from_row) for s, w in zip(sized, found, strict=True)], "RC ")
        rows, held = figure([str(w.to_row - w.from_row) for w in found]), figure([str(w.reach) for w in found])
        told = words(held, f" stitches at {sides} {_KIND[one.kind]}, ", rows, " rows from ", low)
        yield Fact(sentence(name_of(one.name)) if one.name else "Short rows", *told)


def _zones(design: Design, sized: list[SizedPiece]) -> Iterator[Fact]:
    for number in range(min(len(s.zones) for s in sized)):
        found = [s.zones[number] for s in sized]
        fabric = design.fabric(found[0].fabric)
        low = figure([_row(s, z.from_row) for s, z in zip(sized, found, strict=True)], "RC ")
        high = figure([_row(s, _end(s, z)) for s, z in zip(sized, found, strict=True)])
        panel = found[0].panel is not None
        needles = (", ", *_from_to([z.first for z in found], [z.last for z in found])) if panel else ()
        told = words(f"{stitch_words(fabric)} at {dial_words(fabric)}, ", low, " to ", high, *needles)
        yield Fact(sentence(name_of(found[0].fabric)), *told)


def _end(sized: SizedPiece, zone: SizedZone) -> int:
    """The row at which a fabric ends: a panel's needles may leave it sooner."""
    return last_row(sized, zone.first, zone.last, zone.from_row, zone.to_row) if zone.panel is not None else zone.to_row


def _motifs(sized: list[SizedPiece]) -> Iterator[Fact]:
    found = [motifs(s) for s in sized]
    for number in range(min(len(f) for f in found)):
        one = [f[number] for f in found]
        low = figure([_row(s, m.from_row) for s, m in zip(sized, one, strict=True)], "RC ")
        high = figure([_row(s, m.to_row) for s, m in zip(sized, one, strict=True)])
        told = words(low, " to ", high, ", ", *_from_to([m.first for m in one], [m.last for m in one]))
        yield Fact(f"Motif {name_of(one[0].chart)}", *told)


def long_loops(proof: Proof, section: str) -> Iterator[Fact]:
    """Stitches drawn long by hand, one by one, as many as the bed counted."""
    rows = [next((p.long_rows for p in size.pieces if p.name == section), ()) for size in proof.sizes]
    if any(rows):
        most, times, whole = ([str(n) for n in of] for of in zip(*((max(r, default=0), len(r), sum(r)) for r in rows), strict=True))
        told = words("by hand, at most ", figure(most), " in a row, in ", figure(times), " rows; ", figure(whole), " in all")
        yield Fact("Loops drawn long", *told)


def _holes(bands: list[SizedBand]) -> Iterator[Fact]:
    holes = [b.holes for b in bands]
    if not all(holes):
        return
    stitches = {h.stitches for found in holes for h in found}
    size = "eyelets" if stitches == {1} else f"of {listed([str(s) for s in sorted(stitches)])} stitches"
    count, row = figure([str(len(found)) for found in holes]), figure([str(h[0].row) for h in holes], "RC ")
    yield Fact("Buttonholes", *words(count, f" {size}, at ", row))
