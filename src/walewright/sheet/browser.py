"""The page for a browser: the sheet, and with it for each size the lines of its bench copy, and what the sheet says in figures for
all sizes said again for that one.

Everything is written here; the page's script only shows it and hides it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import fields, is_dataclass
from typing import Any, Literal, TypeVar, get_type_hints

from walewright.design.model import Design, PerSize
from walewright.figures.measures import name_of
from walewright.fit.model import Fit
from walewright.guide.model import Guide
from walewright.proof.model import Proof
from walewright.record import record, replace
from walewright.sheet import advice, hand_tools, lengths, supplies
from walewright.sheet.charts import anchor as chart_anchor
from walewright.sheet.facts import long_loops, section_facts
from walewright.sheet.finished import size_notes
from walewright.sheet.fitting import buttons_notes
from walewright.sheet.images import images
from walewright.sheet.model import Sheet
from walewright.sheet.needs import needs
from walewright.sheet.parts import anchor as part_anchor
from walewright.sheet.proven import ProvenPattern
from walewright.sheet.regrading import other_figures
from walewright.solve.model import Counts
from walewright.trade.sides import EdgeSide
from walewright.write.model import BenchCells, Instructions, Manner, Paragraph, Run, Section, Sentence

LineMark = Literal["", "hand", "note"]
"""Ticked off | ticked off, in the author's own words | it only states something."""


@record
class PageLine:
    """A line of a bench copy as it stands on the page: its words in stretches, each with its place ("where", "what", "counts").
    `row`: what the counter reads; `counts`: what is in work, held and waiting. `charts`: the rows of charts in work, each with the
    chart's place on the page."""

    stretches: tuple[tuple[str, tuple[Run, ...]], ...]
    mark: LineMark
    row: str = ""
    side: EdgeSide | str = ""
    counts: tuple[int, ...] = ()
    charts: tuple[tuple[str, int], ...] = ()


@record
class PageStage:
    """Lines under a small heading, which may be empty."""

    title: str
    lines: tuple[PageLine, ...]


@record
class PagePart:
    """The lines of one section of the sheet; `copies` numbers the pieces knitted alike, where there are several."""

    anchor: str
    stages: tuple[PageStage, ...]
    copies: tuple[str, ...]


@record
class OneSize:
    """A size that can be picked: its place among the sheet's sizes, its name, and its copy."""

    place: int
    name: str
    parts: tuple[PagePart, ...]


SizedBlock = tuple[str, Any]
"""The places of sizes, with blanks between, and what is said to them."""


@record
class PickedSizes:
    """`sizes`: those whose copies were read back. `blocks`: by its name, what a block of the sheet says to each size, where that is
    not what it says to all."""

    sizes: tuple[OneSize, ...]
    blocks: Mapping[str, tuple[SizedBlock, ...]]


def picked_sizes(guide: Guide, pattern: ProvenPattern, copies: Mapping[int, Instructions], sheet: Sheet, units: str) -> PickedSizes:
    """What the page has besides the `sheet`, composed of the same pattern. `copies`: the bench copies by the size's place."""
    design, fit = pattern.design, pattern.fit
    guide = guide.on_plates() if design.machine.plates else guide
    names = tuple(map(name_of, design.sizes))
    sizes = tuple(OneSize(place, names[place], tuple(_parts(guide, copies[place]))) for place in sorted(copies))
    if len(names) == 1:
        return PickedSizes(sizes, {})
    said = {}
    whole, drawn = _whole(sheet), {part.anchor for part in sheet.parts if part.drawing is not None}
    for place, copy in copies.items():
        of_size, knitted, proven = _of_size(design, names, place), _sized(pattern.counts, place), _sized(pattern.proof, place)
        worn = worn_in(fit, place) if fit is not None else None
        tools = (*needs(guide, of_size, worn, units), *hand_tools.tools(guide, of_size, pattern.instructions))
        others = other_figures(guide, design, place)
        told = dict(_said(guide, of_size, counts=knitted, copy=copy, proof=proven, worn=worn, units=units))
        facts = dict(_facts(guide, of_size, knitted, copy, proven, drawn))
        said[place] = {"tools": tools, "regrade": others, **told, **facts}
    keys = dict.fromkeys(key for of in said.values() for key in of)
    blocks = {key: _alike((place, of.get(key, ())) for place, of in said.items()) for key in keys}
    return PickedSizes(sizes, {key: block for key, block in blocks.items() if [one for _, one in block] != [whole.get(key, ())]})


def _alike(said: Iterable[tuple[int, Any]]) -> tuple[SizedBlock, ...]:
    """Sizes to which the same is said share a block."""
    found: list[tuple[list[int], Any]] = []
    for place, one in said:
        places = next((places for places, other in found if other == one), None)
        if places is None:
            found.append(([place], one))
        else:
            places.append(place)
    return tuple((" ".join(map(str, places)), one) for places, one in found)


# ----------------------------------------------------------------- the lines


def _parts(guide: Guide, copy: Instructions) -> Iterator[PagePart]:
    for section in copy.sections:
        copies = tuple(guide.ordinal(number) for number in range(1, section.most + 1)) if section.most > 1 else ()
        yield PagePart(part_anchor(section.name), tuple(_stages(section)), copies)


def _stages(section: Section) -> Iterator[PageStage]:
    for paragraph in section.paragraphs:
        yield PageStage(paragraph.title, tuple(_lines(paragraph)))


def _lines(paragraph: Paragraph) -> Iterator[PageLine]:
    charts: tuple[tuple[str, int], ...] = ()
    at: int | None = None
    for sentence in paragraph.sentences:
        cells = sentence.bench
        if cells is None:
            yield PageLine((("what", sentence.runs),), _mark(sentence))
            continue
        if cells.chart_rows:
            charts, at = tuple((chart_anchor(chart), row) for chart, row in cells.chart_rows), cells.row
        elif cells.row != at:
            charts = ()
        yield _line(sentence, cells, charts)


def _mark(sentence: Sentence) -> LineMark:
    if sentence.check:
        return "note"
    return "hand" if sentence.manner is Manner.BY_HAND else ""


def _line(sentence: Sentence, cells: BenchCells, charts: tuple[tuple[str, int], ...]) -> PageLine:
    counter = f"{cells.row:03}" if cells.row is not None else ""
    counts = cells.in_work, cells.held, cells.waiting
    return PageLine(cells.stretches, _mark(sentence), counter, cells.side, counts, charts)


# ----------------------------------------------------------------- what is said to one size

SizedResult = TypeVar("SizedResult", Counts, Proof)


def _sized(result: SizedResult, place: int) -> SizedResult:
    """The results of one size."""
    return replace(result, sizes=result.sizes[place : place + 1])


def _of_size(design: Design, names: tuple[str, ...], place: int) -> Design:
    """The design as far as the blocks of a sheet ask for it."""
    cords = tuple(replace(cord, length=cord.length[place : place + 1]) for cord in design.cords)
    needed = tuple(replace(one, values=one.values[place : place + 1]) for one in design.needed)
    return replace(design, sizes=names[place : place + 1], cords=cords, needed=needed)


def _said(
    guide: Guide, design: Design, counts: Counts, copy: Instructions, proof: Proof, worn: Fit | None, units: str
) -> Iterator[tuple[str, Any]]:
    """By the names of the blocks. All is of one size."""
    kinds = frozenset(k for section in copy.sections for s in section.sentences for k in s.kinds)
    yield "size-notes", size_notes(guide, design, worn, units)
    yield "buttons", tuple(buttons_notes(guide, worn, units))
    yield "materials-notes", supplies.yarn_notes(guide, design, proof)
    yield "machine", supplies.machine(guide, design, counts)
    yield "bobbins", lengths.bobbins(guide, design, proof)
    floats = lengths.floats(guide, design, proof)
    yield "floats", (floats,) if floats is not None else ()
    edges = advice.about_edges(design, worn)
    yield "reading", advice.reading(guide, design.sizes, False, kinds, design.machine.crossing, edges=edges).lines
    yield "example", ()
    yield "abbreviations", (*copy.in_columns, *copy.abbreviations, *advice.glossary(guide, kinds, counted=True))


def _facts(
    guide: Guide, design: Design, counts: Counts, copy: Instructions, proof: Proof, drawn: Collection[str]
) -> Iterator[tuple[str, Any]]:
    """Those of each section. `drawn`: the anchors of the pieces with drawings of their own."""
    image_of = images(design.pieces, copy.sections)
    for section in copy.sections:
        anchor = part_anchor(section.name)
        found = section_facts(guide, design, counts, section, anchor in drawn, image_of=image_of.get(section.name, ""))
        yield f"facts {anchor}", (*found, *long_loops(guide, proof, section.name))


def _whole(sheet: Sheet) -> dict[str, Any]:
    """What the sheet says to all sizes, by the names of the blocks."""
    return {
        "size-notes": sheet.size_notes,
        "buttons": tuple(note for part in sheet.parts for note in part.buttons),
        "materials-notes": sheet.materials_notes,
        "tools": sheet.tools,
        "machine": sheet.machine,
        "bobbins": sheet.bobbins,
        "floats": (sheet.floats,) if sheet.floats is not None else (),
        "reading": sheet.reading.lines,
        "example": (sheet.example,) if sheet.example else (),
        "regrade": sheet.regrade.others if sheet.regrade is not None else (),
        "abbreviations": sheet.abbreviations,
        **{f"facts {part.anchor}": (*part.facts, *part.details) for part in sheet.parts},
    }


WornThing = TypeVar("WornThing")


def worn_in(worn: WornThing, place: int) -> WornThing:
    """The garment as it is worn, or anything of it, in one size."""
    if isinstance(worn, tuple):
        return tuple(worn_in(one, place) for one in worn)  # type: ignore[return-value]
    if not is_dataclass(worn) or isinstance(worn, type):
        return worn
    hints = get_type_hints(type(worn))
    made = {f.name: _in_size(getattr(worn, f.name), hints[f.name], place) for f in fields(worn) if f.init}
    return replace(worn, **made)


def _in_size(value: Any, hint: object, place: int) -> Any:
    if hint == PerSize:
        return value[place : place + 1]
    if hint == tuple[PerSize, ...]:
        return tuple(one[place : place + 1] for one in value)
    if hint == tuple[tuple[float | None, ...], ...]:
        # What a size has not so many of, it has not.
        return tuple(one[place : place + 1] for one in value if one[place] is not None)
    if hint == tuple[tuple[str, PerSize], ...]:
        return tuple((name, one[place : place + 1]) for name, one in value)
    return worn_in(value, place)
