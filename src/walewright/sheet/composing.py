"""Composing the sheet: every stage's results into words, figures and drawings, in the order of the booklet."""

from __future__ import annotations

from walewright.design.model import Design
from walewright.figures.garment import cover, middle_size
from walewright.figures.hung import BAND, BAND_ACROSS, BAND_IN_A_COLUMN, band_hung
from walewright.figures.measures import MeasuredPiece, measured, name_of
from walewright.figures.schematic import IN_A_COLUMN, PRINTED
from walewright.fit.model import Fit
from walewright.guide.model import Advice, Guide
from walewright.guide.numbers import graded, sentence
from walewright.record import replace
from walewright.sheet import advice, fitting, hand_tools, lengths, regrading, supplies
from walewright.sheet.caring import care
from walewright.sheet.charts import charts, other_pictures
from walewright.sheet.checked import checked
from walewright.sheet.finished import size_notes, size_table
from walewright.sheet.handwork import handwork
from walewright.sheet.images import images
from walewright.sheet.joins import with_joins
from walewright.sheet.legends import drawn_with, schematics
from walewright.sheet.model import ChartPart, Fact, PageOptions, PlacedPicture, Sheet, SheetPart
from walewright.sheet.needs import needs
from walewright.sheet.parts import Drawings, parts
from walewright.sheet.photograph import ReadyPicture
from walewright.sheet.proven import ProvenPattern
from walewright.sheet.shared import shared
from walewright.solve.model import Counts
from walewright.trade.papers import IN_STYLE_SHEETS
from walewright.write.model import Abbreviation, Instructions


def compose(guide: Guide, pattern: ProvenPattern, options: PageOptions) -> Sheet:
    """The sheet of a proven pattern, in the language of `guide`, which is that of the instructions."""
    guide = guide.on_plates() if pattern.design.machine.plates else guide
    sizes = tuple(map(name_of, pattern.design.sizes))
    pattern = replace(pattern, design=replace(pattern.design, sizes=sizes), instructions=replace(pattern.instructions, sizes=sizes))
    return replace(_sheet(guide, pattern, options), narrow=_narrow(pattern.instructions, options))


def _sheet(guide: Guide, pattern: ProvenPattern, options: PageOptions) -> Sheet:
    design, counts, instructions, proof, fit = pattern.design, pattern.counts, pattern.instructions, pattern.proof, pattern.fit
    pieces = tuple(measured(design, counts, p.name) for p in design.pieces)
    sections = _sections(guide, pattern, options, pieces)
    charted = charts(guide, pattern, options.large_print)
    texts = {at: _texts(design, at) for at in TEXTS}
    return Sheet(
        language=guide.code,
        paper=IN_STYLE_SHEETS[options.paper],
        title=design.title,
        summary=" ".join(texts["summary"]),
        difficulty=" ".join(texts["difficulty"]),
        story=texts["story"],
        notes=texts["note"],
        cover_facts=_cover_facts(guide, design, " ".join(texts["difficulty"])),
        cover=cover(guide, design, counts, pieces, pattern.glued),
        contents=_contents(guide, design, sections, instructions, charted),
        sizes=size_table(guide, design, counts, pieces, fit, options.units),
        size_notes=size_notes(guide, design, fit, options.units),
        materials=supplies.yarn_table(guide, design, proof),
        materials_notes=supplies.yarn_notes(guide, design, proof),
        tools=(*needs(guide, design, fit, options.units), *hand_tools.tools(guide, design, instructions)),
        tensions=supplies.tensions(guide, design, options.units, proof.small_swatches),
        swatch=advice.swatch_first(guide, design),
        care=care(guide, design),
        machine=supplies.machine(guide, design, counts),
        reading=reading(guide, design, fit, instructions),
        handwork=handwork(guide, design, instructions),
        example=graded(design.sizes) if len(design.sizes) > 1 else "",
        abbreviations=_explained(guide, instructions),
        parts=sections,
        trouble=advice.trouble(guide),
        safety=guide.advice["safety"],
        children=advice.cautions(guide, design, fit),
        checked=checked(guide, proof),
        author=", ".join(texts["designer"]),
        credits=credits(guide, design),
        version=options.version,
        date=options.date,
        colophon=_colophon(guide, design, options),
        charts=charted,
        pictures=other_pictures(guide, design, charted, proof),
        bobbins=lengths.bobbins(guide, design, proof),
        floats=lengths.floats(guide, design, proof),
        choices=regrading.choices(guide, design),
        regraded=regrading.regraded(guide, design, options.units),
        regraded_line=regrading.regraded_line(guide, design, options.units),
        words=page_words(guide),
        regrade=regrading.to_regrade(guide, design, options.units),
        photograph=_photograph(design, pattern.picture),
    )


def _narrow(instructions: Instructions, options: PageOptions) -> bool:
    """Whether lines are short enough for two columns: the figures of one size, in ordinary print."""
    return len(instructions.sizes) == 1 and not options.large_print


def _sections(
    guide: Guide, pattern: ProvenPattern, options: PageOptions, pieces: tuple[MeasuredPiece, ...]
) -> tuple[SheetPart, ...]:
    """The working pages with their drawings."""
    narrow = _narrow(pattern.instructions, options)
    printed = IN_A_COLUMN if narrow else PRINTED
    image_of = images(pattern.design.pieces, pattern.instructions.sections)
    drawn = schematics(guide, pattern.design, pieces, pattern.counts, options.units, image_of, printed=printed)
    # Large print shows every drawing at one width, at which letters of a long one would be small.
    widest = BAND if options.large_print else BAND_IN_A_COLUMN if narrow else BAND_ACROSS
    drawings = {**drawn, **_bands_hung(guide, pattern.design, pattern.counts, widest)}
    bare = parts(guide, pattern, drawings, narrow, drawn_with(pieces))
    joined = with_joins(guide, pattern, pieces, bare, options.large_print)
    if not any(section.joining for section in pattern.instructions.sections):
        return joined
    # They are sewn on long after the sizes have been read.
    last = max(at for at, section in enumerate(pattern.instructions.sections) if section.joining)
    buttons = tuple(fitting.buttons_notes(guide, pattern.fit, options.units))
    return tuple(replace(part, buttons=buttons) if at == last else part for at, part in enumerate(joined))


TEXTS = ("summary", "difficulty", "story", "note", "designer")
"""An author's texts that have a place of their own."""


def _explained(guide: Guide, instructions: Instructions) -> tuple[tuple[str, str], ...]:
    """What the steps say short, and their words of the trade."""
    return (*instructions.abbreviations, *advice.glossary(guide, _kinds(instructions)))


def _texts(design: Design, key: str) -> tuple[str, ...]:
    return tuple(text for at, text in design.texts if at == key)


def _bands_hung(guide: Guide, design: Design, counts: Counts, widest: float) -> Drawings:
    middle = design.at(middle_size(counts)).of(counts.sizes)
    bands = ((band.name, band_hung(guide, band.name, band.pick_ups, widest)) for band in middle.bands)
    return {name: (hung, None) for name, hung in bands if hung is not None}


def _cover_facts(guide: Guide, design: Design, difficulty: str) -> tuple[Fact, ...]:
    sizes = "\N{NO-BREAK SPACE}· ".join(size.replace(" ", "\N{NO-BREAK SPACE}") for size in design.sizes)
    facts = [Fact(guide.say("cover/sizes" if len(design.sizes) > 1 else "cover/size"), sizes)]
    first, rest = shared([y.label for y in design.bought()], ", ")
    facts.append(Fact(guide.say("cover/yarn"), sentence(guide.say("cover/yarns", first=first, rest=rest))))
    bed = design.machine
    facts.append(Fact(guide.say("machine"), guide.say("cover/machine", machine=sentence(bed.called), needles=bed.needles)))
    facts += regrading.choices(guide, design)
    if difficulty:
        facts.append(Fact(guide.say("cover/difficulty"), difficulty))
    return tuple(facts)


def _photograph(design: Design, picture: ReadyPicture | None) -> PlacedPicture | None:
    if picture is None or design.photograph is None:
        return None
    return PlacedPicture(picture.uri, design.photograph.showing, picture.width, picture.height)


def credits(guide: Guide, design: Design) -> tuple[str, ...]:
    """Whose pattern it is, and of when."""
    texts = dict(design.texts)
    said = ((guide.say(f"cover/{key}", **{key: texts[key]}) if key in LABELLED else texts[key]) for key in CREDITS if key in texts)
    return tuple(said)


CREDITS = ("designer", "edition", "date", "copyright")
LABELLED = ("designer", "copyright")
"""Those that are printed with a word or a sign before them."""


def _contents(
    guide: Guide, design: Design, sections: tuple[SheetPart, ...], instructions: Instructions, charted: tuple[ChartPart, ...]
) -> tuple[tuple[str, str], ...]:
    """(anchor, heading) of everything that has a heading, as they follow."""
    by_hand = handwork(guide, design, instructions)
    return (
        ("sizes", guide.say("page/sizes")),
        ("materials", guide.say("page/materials")),
        ("reading", guide.say("reading")),
        ("trouble", guide.say("page/trouble")),
        ("safety", guide.advice["safety"].title),
        *((("by-hand", guide.say("page/work-by-hand")),) if by_hand else ()),
        *((chart.anchor, chart.title) for chart in charted),
        *((part.anchor, part.title) for part in sections),
        ("regrade", guide.say("page/regrade")),
        ("checked", guide.say("page/checked")),
    )


def reading(guide: Guide, design: Design, fit: Fit | None, instructions: Instructions, text: bool = False) -> Advice:
    """How to read the page, or the plain `text`."""
    some, kinds = _for_some_sizes(instructions), _kinds(instructions)
    edges = advice.about_edges(design, fit)
    return advice.reading(guide, design.sizes, some, kinds, design.machine.crossing, edges=edges, text=text)


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


def _colophon(guide: Guide, design: Design, options: PageOptions) -> str:
    made = f"Walewright {options.version}".strip()
    return guide.say("page/colophon", title=design.title, made=made, date=guide.date(options.date))


def page_words(guide: Guide) -> dict[str, str]:
    """The headings and other words that the templates themselves set."""
    return {word: guide.say(f"page/{word}") for word in PAGE_WORDS}


PAGE_WORDS = (
    "abbreviations",
    "as-drawn",
    "as-step",
    "at-this-row",
    "bench-back",
    "bench-charts",
    "bench-counter",
    "bench-finished",
    "bench-held",
    "bench-in-work",
    "bench-keys",
    "bench-next",
    "bench-pinned",
    "bench-rows",
    "bench-step",
    "bench-waiting",
    "bench-what",
    "carriage",
    "checked",
    "done",
    "explained-elsewhere",
    "hand-operated",
    "key",
    "left",
    "letter",
    "materials",
    "measure",
    "mine",
    "needed",
    "notes",
    "number",
    "of",
    "own-notes",
    "page",
    "pick-all",
    "pick-larger",
    "pick-larger-sign",
    "pick-size",
    "pick-smaller",
    "pick-smaller-sign",
    "pick-type",
    "pick-view",
    "pick-whole",
    "rc",
    "regrade",
    "right",
    "round",
    "sizes",
    "step",
    "stitches",
    "symbol",
    "trouble",
    "what-is-done",
    "what-it-is",
    "work-by-hand",
    "yours",
)
"""By these names the templates ask for them."""
