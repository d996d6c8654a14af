"""Regrading on paper: what a copy was regraded from, and what can be given to regrade it again."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from walewright.design.model import Design, Edition, Fabric, Given, Measurement
from walewright.design.model.regrading import GivenKind
from walewright.figures.measures import name_of
from walewright.guide.numbers import graded, length, sentence
from walewright.sheet.model import ListTable, Regrade, Row, RowGroup, SizesTable, TableCell
from walewright.sheet.supplies import stitch_words

WHAT: Mapping[GivenKind, str] = {
    "measure": "{name}",
    "tension": "Tension of {name}, to 10 cm",
    "swatch": "Swatch of {name}",
    "dial": "Dial for {name}",
    "yarn": "Yarn: {name}",
    "bed": "Bed",
}
"""What each kind of given thing is called."""


def source_of(design: Design) -> Edition:
    """The source's own figures; a design that comes of no source is its own."""
    return design.edition or Edition(design.sizes, design.measurements, design.fabrics, design.yarns, design.machine)


def regraded(design: Design, units: str) -> ListTable | None:
    """Each thing that the knitter gave, beside the source's; None for the source's own edition."""
    if not design.given:
        return None
    rows = tuple((_what(g), *_both(g, units)) for g in design.given)
    return ListTable("Regraded", ("What", "In this copy", "In the source"), rows)


def _what(given: Given) -> str:
    return sentence(WHAT[given.kind].format(name=name_of(given.name)))


def _both(given: Given, units: str) -> tuple[str, str]:
    if given.kind != "measure":
        return given.own, given.source
    return _told((given.own_cm,), units), _told(given.source_cm, units)


def _told(values: tuple[float, ...], units: str) -> str:
    first, second = zip(*(length(v, units) for v in values), strict=True)
    if units != "both":
        return f"{graded(list(first))} {units}"
    return f"{graded(list(first))} cm ({graded(list(second))} in)"


def regraded_line(design: Design, units: str) -> str:
    """The same in one sentence, for a cover; empty for the source's own edition."""
    told = [f"{_what(g)[:1].lower()}{_what(g)[1:]} {_both(g, units)[0]}" for g in design.given]
    return f"Regraded: {'; '.join(told)}." if told else ""


# ----------------------------------------------------------------- what can be given


def to_regrade(design: Design, units: str) -> Regrade:
    """The list of what can be given, with the source's own figures."""
    source = source_of(design)
    caption = "Measurements (--measure), in the source"
    rows = tuple(_measure(m, units) for m in source.measurements)
    measures = SizesTable(f"{caption}, {_unit(units)}", design.sizes, (RowGroup("", rows),)) if rows else None
    others = ListTable("Everything else", ("What", "Option", "In the source"), tuple(_others(source)))
    return Regrade(measures, others, tuple(_lines(source, design.file.rpartition("/")[2])))


def _unit(units: str) -> str:
    return {"cm": "cm", "in": "inches", "both": "cm and inches"}[units]


def _measure(row: Measurement, units: str) -> Row:
    about = row.about + (", to fit" if row.about and row.to_fit else "to fit" if row.to_fit else "")
    return Row(sentence(row.name), tuple(TableCell(*length(v, units)) for v in row.values), note=about)


def _others(source: Edition) -> Iterator[tuple[str, str, str]]:
    if len(source.sizes) > 1:
        yield "Size", "--size", ", ".join(size.replace("_", " ") for size in source.sizes)
    for fabric in source.fabrics:
        yield sentence(fabric.name), "--tension or --swatch", f"{fabric.tension_words} to 10 cm, in {fabric_words(fabric)}"
        yield f"{sentence(fabric.name)}: tension dial", "--dial", fabric.tension
    for yarn in source.yarns:
        yield sentence(yarn.name), "--yarn", yarn.words
    yield "Bed", "--bed", f"{source.machine.name}: {source.machine.words}"


def fabric_words(fabric: Fabric) -> str:
    """ "stocking stitch in wool"."""
    return f"{stitch_words(fabric)} in {name_of(fabric.yarn)}"


def _lines(source: Edition, file: str) -> Iterator[str]:
    size = f" --size {source.sizes[len(source.sizes) // 2]}" if len(source.sizes) > 1 else ""
    fabric = source.fabrics[0] if source.fabrics else None
    tension = f' --tension "{fabric.name}={fabric.tension_words}"' if fabric is not None else ""
    row = next(iter(source.measurements), None)
    middle = len(row.values) // 2 if row is not None else 0
    own = f' --measure "{row.name}={length(row.values[middle], "cm")[0]} cm"' if row is not None else ""
    yield (
        "Another tension, body, yarn or bed is given when the pattern is built; the source stays as it is. Names may be written as "
        "they stand here. A measurement that is not in the list follows from those that are."
    )
    yield f"Such as: walewright build {file}{size}{tension}{own}"
