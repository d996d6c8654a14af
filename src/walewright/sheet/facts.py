"""The facts beside a drawing: what a section is made of, and in words everything that the drawing marks."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import zip_longest

from walewright.counted.model import SizedBand, SizedPiece, SizedSlot, SizedWedge, SizedZone
from walewright.counted.needles import last_row
from walewright.design.model import Design, EdgeName, Edging, Piece
from walewright.figures.marks import alike, motifs, slots_name
from walewright.figures.measures import name_of, wedge_called
from walewright.guide.model import Guide
from walewright.guide.numbers import SizedFigure, figure, sentence
from walewright.knit.operations import needle
from walewright.proof.model import Proof
from walewright.report.said import said
from walewright.sheet.fitting import NONE
from walewright.sheet.model import Fact
from walewright.sheet.supplies import dial_words, stitch_words
from walewright.solve.model import Counts
from walewright.write.model import Section


def _fact(guide: Guide, label: str, key: str, **facts: str | int) -> Fact:
    return Fact(guide.say(f"fact/{label}"), guide.say(f"fact/{key}", **facts))


def section_facts(
    guide: Guide, design: Design, counts: Counts, section: Section, drawn: bool = True, beside: str = "", image_of: str = ""
) -> Iterator[Fact]:
    """The facts of a piece, which has a drawing of its own if `drawn`, or lies on that of the piece `beside`, of an edging on a
    piece, or of a band. `image_of`: the piece before it of which it is the mirror image."""
    fabric_name = _fabric(design, section.name)
    if fabric_name is not None:
        fabric = design.fabric(fabric_name)
        yarn = next(y for y in design.yarns if y.name == fabric.yarn)
        stitch, dial = stitch_words(guide, fabric), dial_words(guide, fabric)
        yield _fact(guide, "fabric", "stitch-yarn-dial", stitch=stitch, yarn=yarn.label, dial=dial)
    if section.most > 1:
        yield Fact(guide.say("fact/make"), *guide.figured("fact/alike", count=figure([str(n) for n in section.copies])))
    piece = next((p for p in design.pieces if p.name == section.name), None)
    if piece is not None:
        if image_of:
            yield _mirror(guide, name_of(image_of), section, drawn)
        if beside:
            yield _fact(guide, "drawing", "drawn-with", piece=name_of(beside))
        yield from _piece(guide, design, piece, [g.piece(section.name) for g in counts.sizes])
    for band in design.bands:
        if band.name == section.name:
            yield _hung(guide, counts, band.name) if drawn else Fact(guide.say("fact/along"), _edges(guide, band.along))
            if band.picked is not None:
                yield _fact(guide, "picked-up", "stitches-to-rows", stitches=band.picked[0], rows=band.picked[1])
            yield from _holes(guide, [next(b for b in g.bands if b.name == band.name) for g in counts.sizes])


def _fabric(design: Design, section: str) -> str | None:
    """The fabric of a piece, of an edging on a piece, or of a band."""
    for piece in design.pieces:
        if piece.name == section:
            return piece.fabric
        if piece.start_edging is not None and f"{piece.name} {piece.start_edging}" == section:
            return design.edging(piece.start_edging).fabric
    edging: Edging | None = next((design.edging(b.edging) for b in design.bands if b.name == section), None)
    return edging.fabric if edging else None


def _mirror(guide: Guide, of: str, section: Section, drawn: bool) -> Fact:
    """Of which piece it is the mirror image, and, unless all its steps are another section's, that it has own ones."""
    own = any(not sentence.check and not sentence.refers for sentence in section.sentences)
    return _fact(guide, "mirror", "mirror-of" if drawn else "mirror-as-drawn", piece=of, own=own)


def _piece(guide: Guide, design: Design, piece: Piece, sized: list[SizedPiece]) -> Iterator[Fact]:
    if len(sized) == 1:
        # With more sizes these figures stand in the legend.
        yield _fact(guide, "widest", "stitches", count=sized[0].widest)
        yield Fact(guide.say("fact/rows"), _row(sized[0], sized[0].rows))
    if piece.start_along:
        yield Fact(guide.say("fact/begun-on"), _edges(guide, piece.start_along))
    yield from _slots(guide, sized)
    yield from _openings(guide, sized)
    yield from _wedges(guide, piece, sized)
    yield from _zones(guide, design, sized)
    yield from _motifs(guide, sized)
    for number in range(min(len(s.repeats) for s in sized)):
        repeats = [s.repeats[number] for s in sized]
        rows, times = figure([str(r.to_row - r.from_row) for r in repeats]), figure([str(r.times) for r in repeats])
        yield Fact(guide.say("fact/repeated"), *guide.figured("fact/repeats", rows=rows, times=times))
    if piece.end_way == "gathered":
        yield _fact(guide, "end", "drawn-up")


def _hung(guide: Guide, counts: Counts, band: str) -> Fact:
    """How the band hangs whose edges its drawing names."""
    picked = next(b for b in counts.sizes[0].bands if b.name == band).pick_ups
    rows = any(pick.left_end in ("bottom", "top") for pick in picked)
    return Fact(guide.say("fact/on-needles"), sentence(guide.say("fact/hung", side=picked[0].facing, arrows=rows)))


def _edges(guide: Guide, edges: Sequence[EdgeName]) -> str:
    return guide.say("fact/then", edges=tuple(said("join/edge", piece=name_of(e.piece), edge=guide.hung(e.edge)) for e in edges))


def _counter(guide: Guide, rows: Sequence[str]) -> SizedFigure:
    """What the counter reads in each size, "RC" before it."""
    return figure(rows, f"{guide.say('rc')} ")


def _row(sized: SizedPiece, row: int) -> str:
    return str(sized.counter(row))


def _slots(guide: Guide, sized: list[SizedPiece]) -> Iterator[Fact]:
    groups = [alike(s.slots) for s in sized]
    for number in range(min(len(g) for g in groups)):
        of_size = [g[number] for g in groups]
        one = of_size[0][0]
        at_rows = [list(dict.fromkeys(_row(s, slot.row) for slot in slots)) for s, slots in zip(sized, of_size, strict=True)]
        rows = list(zip_longest(*at_rows, fillvalue=NONE))
        at = "; ".join((_counter(guide, rows[0]).marked, *(figure(row).marked for row in rows[1:])))
        if one.taken == "eyelet":
            told = guide.figured("fact/eyelets", count=figure([str(len(s)) for s in of_size]), rows=at)
        else:
            stitches = figure([str(s[0].stitches) for s in of_size])
            several = len(of_size[0]) if len(of_size[0]) > 1 else 0
            needles = _needles(guide, of_size)
            told = guide.figured(f"fact/slots-{one.taken}", stitches=stitches, several=several, needles=needles, rows=at)
        yield Fact(sentence(slots_name(guide, of_size[0])), *told)


def _needles(guide: Guide, of_size: Sequence[list[SizedSlot]]) -> str:
    if any(len({(s.first, s.last) for s in slots}) > 1 for slots in of_size):
        return guide.say("fact/needles-of-the-steps")
    return _from_to(guide, [s[0].first for s in of_size], [s[0].last for s in of_size])


def _from_to(guide: Guide, first: Sequence[int], last: Sequence[int]) -> str:
    low, high = (figure([needle(n) for n in of]).marked for of in (first, last))
    return guide.say("fact/needles", first=low, last=high)


def _openings(guide: Guide, sized: list[SizedPiece]) -> Iterator[Fact]:
    for number, opening in enumerate(sized[0].openings):
        if opening.rejoins and all(len(s.openings) > number for s in sized):
            low = _counter(guide, [_row(s, s.openings[number].row) for s in sized])
            high = figure([_row(s, s.openings[number].to_row) for s in sized])
            yield Fact(sentence(name_of(opening.name)), *guide.figured("fact/one-after-the-other", low=low, high=high))


def _wedges(guide: Guide, piece: Piece, sized: list[SizedPiece]) -> Iterator[Fact]:
    named = {wedge.name: wedge_called(wedge) for wedge in piece.wedges}
    for number in range(min(len(s.wedges) for s in sized)):
        found = [s.wedges[number] for s in sized]
        one = found[0]
        low = _counter(guide, [_row(s, w.from_row + _later(s, w)) for s, w in zip(sized, found, strict=True)])
        # The first two rows after the return, or the one before the first hold and one after it, are knitted by all.
        rows, held = figure([str(w.to_row - w.from_row - 2) for w in found]), figure([str(w.reach) for w in found])
        sides = guide.say(f"fact/{one.edge}-edge")
        # The last group stays in work.
        steps = {} if one.kind == "both" else {"once": all(len(w.groups) <= 2 for w in found)}
        told = guide.figured(f"fact/held-{one.kind}", held=held, sides=sides, rows=rows, low=low, **steps)
        yield Fact(sentence(guide.said(named[one.name])) if one.name in named else guide.say("fact/short-rows"), *told)


def _later(sized: SizedPiece, wedge: SizedWedge) -> int:
    """A row that is knitted first where the carriage stands at the held side: at the right at even rows, in a part at its own."""
    return 1 if wedge.edge == "right" or sized.parted(wedge.from_row) is not None else 0


def _zones(guide: Guide, design: Design, sized: list[SizedPiece]) -> Iterator[Fact]:
    for number in range(min(len(s.zones) for s in sized)):
        found = [s.zones[number] for s in sized]
        fabric = design.fabric(found[0].fabric)
        low = _counter(guide, [_row(s, z.from_row) for s, z in zip(sized, found, strict=True)])
        high = figure([_row(s, _end(s, z)) for s, z in zip(sized, found, strict=True)])
        panel = found[0].panel is not None
        needles = _from_to(guide, [z.first for z in found], [z.last for z in found]) if panel else ""
        stitch, dial = stitch_words(guide, fabric), dial_words(guide, fabric)
        told = guide.figured("fact/zone", stitch=stitch, dial=dial, low=low, high=high, needles=needles)
        yield Fact(sentence(name_of(found[0].fabric)), *told)


def _end(sized: SizedPiece, zone: SizedZone) -> int:
    """The row at which a fabric ends: a panel's needles may leave it sooner."""
    return last_row(sized, zone.first, zone.last, zone.from_row, zone.to_row) if zone.panel is not None else zone.to_row


def _motifs(guide: Guide, sized: list[SizedPiece]) -> Iterator[Fact]:
    found = [motifs(s) for s in sized]
    for number in range(min(len(f) for f in found)):
        one = [f[number] for f in found]
        low = _counter(guide, [_row(s, m.from_row) for s, m in zip(sized, one, strict=True)])
        high = figure([_row(s, m.to_row) for s, m in zip(sized, one, strict=True)])
        needles = _from_to(guide, [m.first for m in one], [m.last for m in one])
        told = guide.figured("fact/motif-lies", low=low, high=high, needles=needles)
        yield Fact(guide.say("fact/motif", chart=name_of(one[0].chart)), *told)


def long_loops(guide: Guide, proof: Proof, section: str) -> Iterator[Fact]:
    """Stitches drawn long by hand, one by one, as many as the bed counted."""
    rows = [next((p.long_rows for p in size.pieces if p.name == section), ()) for size in proof.sizes]
    if any(rows):
        most, times, whole = (
            figure([str(n) for n in of]) for of in zip(*((max(r, default=0), len(r), sum(r)) for r in rows), strict=True)
        )
        told = guide.figured("fact/drawn-by-hand", most=most, times=times, whole=whole)
        yield Fact(guide.say("fact/drawn-long"), *told)


def _holes(guide: Guide, bands: list[SizedBand]) -> Iterator[Fact]:
    holes = [b.holes for b in bands]
    if not all(holes):
        return
    stitches = {h.stitches for found in holes for h in found}
    wide = "" if stitches == {1} else guide.listed([str(s) for s in sorted(stitches)])
    count, row = figure([str(len(found)) for found in holes]), _counter(guide, [str(h[0].row) for h in holes])
    key = "fact/holes-of" if wide else "fact/hole-eyelets"
    yield Fact(guide.say("fact/buttonholes"), *guide.figured(key, count=count, stitches=wide, row=row))
