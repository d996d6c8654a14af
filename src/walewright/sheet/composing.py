"""Composing the sheet: every stage's results into words, figures and drawings, in the order of the booklet."""

from __future__ import annotations

from dataclasses import replace

from walewright.design.model import Design
from walewright.figures.garment import cover, middle_size
from walewright.figures.measures import MeasuredPiece, measured
from walewright.figures.schematic import drawing, fitting_scale
from walewright.fit.model import Fit
from walewright.guide.english import advice
from walewright.guide.numbers import graded, sentence
from walewright.proof.model import Proof
from walewright.sheet import hand_tools, lengths, regrading, supplies
from walewright.sheet.charts import charts, other_pictures
from walewright.sheet.checked import checked
from walewright.sheet.finished import size_notes, size_table
from walewright.sheet.handwork import handwork
from walewright.sheet.legends import legend
from walewright.sheet.model import ChartPart, Fact, PageOptions, Sheet, SheetPart
from walewright.sheet.parts import Drawings, parts
from walewright.solve.model import Counts
from walewright.write.model import Abbreviation, Instructions


def compose(
    design: Design, counts: Counts, instructions: Instructions, proof: Proof, options: PageOptions, fit: Fit | None = None
) -> Sheet:
    """The sheet of a proven pattern. All come from one build and have the same sizes in the same order. `fit`: the garment as it is
    worn; without it nothing is printed that goes round a body."""
    # On the page a size is called as people say it: "3 months".
    design = replace(design, sizes=tuple(size.replace("_", " ") for size in design.sizes))
    instructions = replace(instructions, sizes=design.sizes)
    pieces = tuple(measured(design, counts, p.name) for p in design.pieces)
    drawings = _drawings(design, pieces, counts, options.units)
    sections = parts(design, counts, instructions, proof, drawings, options.units)
    charted = charts(design, counts, instructions, proof)
    texts = {
        key: tuple(text for k, text in design.texts if k == key) for key in ("summary", "difficulty", "story", "note", "author")
    }
    return Sheet(
        language="en",
        paper={"a4": "A4", "letter": "letter"}[options.paper],
        title=design.title,
        summary=" ".join(texts["summary"]),
        difficulty=" ".join(texts["difficulty"]),
        story=texts["story"],
        notes=texts["note"],
        cover_facts=_cover_facts(design, " ".join(texts["difficulty"])),
        cover=cover(design, counts, pieces),
        contents=_contents(design, sections, instructions, charted),
        sizes=size_table(design, pieces, fit, options.units),
        size_notes=size_notes(design, fit, options.units),
        materials=supplies.yarn_table(design, proof),
        materials_notes=supplies.yarn_notes(proof),
        tools=hand_tools.tools(design, instructions),
        tensions=supplies.tensions(design, options.units),
        swatch=supplies.swatch_advice(),
        machine=supplies.machine(design, counts),
        reading=advice.reading(design.sizes, _for_some_sizes(instructions), _kinds(instructions)),
        handwork=handwork(design, instructions),
        example=graded(design.sizes) if len(design.sizes) > 1 else "",
        abbreviations=instructions.abbreviations,
        parts=sections,
        trouble=advice.trouble(),
        safety=advice.safety(),
        children=advice.cautions(design),
        checked=checked(proof, options.units),
        author=", ".join(texts["author"]),
        version=options.version,
        date=options.date,
        colophon=_colophon(design, options),
        charts=charted,
        pictures=other_pictures(design, charted, proof),
        bobbins=lengths.bobbins(design, proof),
        floats=lengths.floats(design, proof),
        regraded=regrading.regraded(design, options.units),
        regraded_line=regrading.regraded_line(design, options.units),
        regrade=regrading.to_regrade(design, options.units),
    )


def _drawings(design: Design, pieces: tuple[MeasuredPiece, ...], counts: Counts, units: str) -> Drawings:
    size, sizes = middle_size(counts), design.sizes
    scale = fitting_scale(pieces, size)
    return {p.piece.name: (drawing(p, sizes, size, units, scale, design.fabrics), legend(p, sizes, units)) for p in pieces}


def _cover_facts(design: Design, difficulty: str) -> tuple[Fact, ...]:
    sizes = "\N{NO-BREAK SPACE}· ".join(size.replace(" ", "\N{NO-BREAK SPACE}") for size in design.sizes)
    facts = [Fact("Sizes" if len(design.sizes) > 1 else "Size", sizes)]
    yarns = ", ".join(y.label for y in design.yarns)
    facts.append(Fact("Yarn", sentence(yarns)))
    bed = design.machine
    facts.append(Fact("Machine", f"{sentence(bed.called)}, {bed.needles} needles"))
    if difficulty:
        facts.append(Fact("Difficulty", difficulty))
    return tuple(facts)


def _contents(
    design: Design, sections: tuple[SheetPart, ...], instructions: Instructions, charted: tuple[ChartPart, ...]
) -> tuple[tuple[str, str], ...]:
    # An edging is found behind its piece, and what is joined before a link beside it.
    named = {p.name for p in design.pieces} | {b.name for b in design.bands}
    last = instructions.sections[-1]
    listed = (
        part
        for part, section in zip(sections, instructions.sections, strict=True)
        if section.name in named or (section.joining and section is last)
    )
    return (
        ("sizes", "Sizes and measurements"),
        ("materials", "Materials, tension and machine"),
        ("reading", "Reading the pattern"),
        *((chart.anchor, chart.title) for chart in charted),
        *((part.anchor, part.title) for part in listed),
        ("trouble", "When things go wrong"),
        ("safety", "Working safely"),
        ("regrade", "To regrade"),
        ("checked", "How the pattern was checked"),
    )


def _kinds(instructions: Instructions) -> frozenset[str]:
    """The kinds of steps that the text has."""
    return frozenset(k for sec in instructions.sections for p in sec.paragraphs for s in p.sentences for k in s.kinds)


def _for_some_sizes(instructions: Instructions) -> bool:
    everybody = len(instructions.sizes)
    return any(
        len(s.sizes) < everybody or Abbreviation.SKIPPED in s.short
        for sec in instructions.sections
        for p in sec.paragraphs
        for s in p.sentences
    )


def _colophon(design: Design, options: PageOptions) -> str:
    made = f"Walewright {options.version}".strip()
    dated = f", {options.date}" if options.date else ""
    return f"{design.title}. Set from one source by {made}{dated}. {advice.SAFETY_SOURCE}"
