"""The working pages: each section of the instructions with its drawing, facts and lines."""

from __future__ import annotations

import re
from collections.abc import Iterator

from walewright.design.model import Design, Edging
from walewright.pages.figures import graded
from walewright.pages.model import Drawing, Fact, Line, Part, SizeTable, Stage
from walewright.pages.model import Piece as Stretch
from walewright.pages.supplies import stitch_words
from walewright.solve.model import Counts
from walewright.write.model import Instructions, Paragraph, Run, Section, Sentence

Drawings = dict[str, tuple[Drawing, SizeTable | None]]
"""Piece name -> its schematic and legend."""


def parts(design: Design, counts: Counts, instructions: Instructions, drawings: Drawings, units: str) -> tuple[Part, ...]:
    """One part a section, in the order of work."""
    made = []
    for section in instructions.sections:
        drawing, legend = drawings.get(section.name, (None, None))
        made.append(
            Part(
                anchor=_anchor(section.name),
                title=section.title,
                facts=(*_facts(design, counts, section), *_schematic_fact(drawing, legend, units)),
                drawing=drawing,
                legend=legend,
                stages=_stages(section, instructions.sizes),
                opens_page=drawing is not None,
                counted=_counted(section),
            )
        )
    return tuple(made)


def joining(instructions: Instructions) -> Part:
    """The seams, as a part without drawing."""
    section = instructions.joining
    return Part(
        anchor="joining",
        title=section.title,
        facts=(),
        drawing=None,
        legend=None,
        stages=_stages(section, instructions.sizes),
        opens_page=False,
        counted=_counted(section),
    )


def _counted(section: Section) -> bool:
    return any(s.row or s.side for p in section.paragraphs for s in p.sentences)


def _anchor(name: str) -> str:
    # Piece names are words of letters, digits and underscores; a section's name may join two with a space.
    return "part-" + re.sub(r"[^A-Za-z0-9_]+", "-", name)


def _facts(design: Design, counts: Counts, section: Section) -> Iterator[Fact]:
    fabric_name = _fabric(design, section.name)
    if fabric_name is not None:
        fabric = design.fabric(fabric_name)
        yarn = next(y for y in design.yarns if y.name == fabric.yarn)
        yield Fact("Fabric", f"{stitch_words(fabric)}, in {yarn.label} at tension {fabric.tension}")
    if section.copies > 1:
        yield Fact("Make", f"{section.copies} alike: one box to tick for each")
    if any(p.name == section.name for p in design.pieces):
        yield Fact("Widest", f"{graded([str(g.piece(section.name).widest) for g in counts.sizes])} stitches")
        yield Fact("Rows", graded([str(g.piece(section.name).rows) for g in counts.sizes]))
    for band in design.bands:
        if band.name == section.name:
            yield Fact("Along", ", then ".join(f"{e.piece} {e.edge}" for e in band.along))


def _schematic_fact(drawing: Drawing | None, legend: SizeTable | None, units: str) -> tuple[Fact, ...]:
    # A legend names the unit itself; "both" stands with its units on the drawing.
    if drawing is None or legend is not None or units == "both":
        return ()
    return (Fact("Schematic", f"measurements in {'inches' if units == 'in' else 'centimetres'}"),)


def _fabric(design: Design, section: str) -> str | None:
    """The fabric of a piece, of an edging on a piece, or of a band."""
    for piece in design.pieces:
        if piece.name == section:
            return piece.fabric
        if piece.start_edging is not None and f"{piece.name} {piece.start_edging}" == section:
            return design.edging(piece.start_edging).fabric
    edging: Edging | None = next((design.edging(b.edging) for b in design.bands if b.name == section), None)
    return edging.fabric if edging else None


def _stages(section: Section, sizes: tuple[str, ...]) -> tuple[Stage, ...]:
    return tuple(_stage(p, section.copies, sizes) for p in section.paragraphs if p.sentences)


def _stage(paragraph: Paragraph, copies: int, sizes: tuple[str, ...]) -> Stage:
    only = paragraph.only
    if only:
        working = sorted({i for s in paragraph.sentences for i in s.sizes})
        only = f"{only}: {', '.join(sizes[i] for i in working)}"
    return Stage(paragraph.title, only, tuple(_line(s, copies, sizes, named=bool(only)) for s in paragraph.sentences))


def _line(sentence: Sentence, copies: int, sizes: tuple[str, ...], named: bool) -> Line:
    some = len(sentence.sizes) < len(sizes) and not named
    return Line(
        pieces=tuple(_stretches(sentence.runs)),
        boxes=0 if sentence.check else copies,
        row=sentence.row,
        side=sentence.side,
        check=sentence.check,
        sizes=", ".join(sizes[i] for i in sentence.sizes) if some else "",
    )


def _stretches(runs: tuple[Run, ...]) -> Iterator[Stretch]:
    """A sentence's runs as they are set: what must be true takes its full stop with it, since it stands on a line of its own;
    a needle's letter stays with its number; and a blank before a figure is set with the figure, because the renderer may
    break a line that ends in a blank at its first word."""
    made: list[Stretch] = []
    for run in runs:
        text, last = run.text, made[-1] if made else None
        if run.kind == "needle":
            text = re.sub(r"\b([LR]) (?=\d)", "\\1\N{NO-BREAK SPACE}", text)
        if run.kind == "word":
            if last is not None and last.kind == "check":
                stop = re.match(r"[.,;:]?\s*", text)
                assert stop is not None
                made[-1] = Stretch(last.text + stop.group().rstrip(), "check")
                text = text[stop.end() :]
        elif last is not None and last.kind == "word" and last.text.endswith(" "):
            made[-1] = Stretch(last.text.rstrip(), "word")
            text = text if run.kind == "check" else " " + text
        if text:
            made.append(Stretch(text, run.kind))
    yield from made
