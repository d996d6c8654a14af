"""Regrading on paper: what a copy was regraded from, and what can be given to regrade it again."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from walewright.design.model import Choice, Design, Edition, Fabric, Given, Measurement
from walewright.design.model.regrading import CountRow
from walewright.figures.measures import name_of
from walewright.guide.model import Guide
from walewright.guide.numbers import length, sentence
from walewright.record import replace
from walewright.sheet.fitting import told
from walewright.sheet.model import Fact, ListTable, Regrade, Row, RowGroup, SizesTable, TableCell
from walewright.sheet.supplies import stitch_words


def source_of(design: Design) -> Edition:
    """The source's own figures; a design that comes of no source is its own."""
    return design.edition or Edition(design.sizes, design.measurements, design.fabrics, design.yarns, design.machine)


def choices(guide: Guide, design: Design) -> tuple[Fact, ...]:
    """What is chosen in this copy, and what else there is."""
    return tuple(
        Fact(sentence(name_of(c.name)), guide.say("cover/choice", taken=name_of(c.alternative), others=_besides(c)))
        for c in design.choices
    )


def _besides(choice: Choice) -> tuple[str, ...]:
    return tuple(name_of(a) for a in choice.alternatives if a != choice.alternative)


def regraded(guide: Guide, design: Design, units: str) -> ListTable | None:
    """Each thing that the knitter chose or gave, beside the source's; None for the source's own edition."""
    chosen = [(sentence(name_of(c.name)), name_of(c.alternative), name_of(c.alternatives[0])) for c in design.choices if c.chosen]
    rows = (*chosen, *((_what(guide, g), *_both(guide, g, units)) for g in design.given))
    if not rows:
        return None
    heads = tuple(guide.say(f"regraded/{column}") for column in ("what", "own", "source"))
    return ListTable(guide.say("regraded" if design.given else "regraded/chosen"), heads, rows)


def _what(guide: Guide, given: Given) -> str:
    return sentence(guide.say(f"regraded/{given.kind}", name=name_of(given.name)))


def _both(guide: Guide, given: Given, units: str) -> tuple[str, str]:
    if given.kind != "measure" or given.own:
        return given.own, given.source
    return told(guide, (given.own_cm,), units), told(guide, given.source_cm, units)


def regraded_line(guide: Guide, design: Design, units: str) -> str:
    """The same in one sentence, for a cover; empty for the source's own edition."""
    each = [f"{guide.within(_what(guide, g))} {_both(guide, g, units)[0]}" for g in design.given]
    return guide.say("regraded/line", told="; ".join(each)) if each else ""


# ----------------------------------------------------------------- what can be given


def to_regrade(guide: Guide, design: Design, units: str) -> Regrade:
    """The list of what can be given, with the source's own figures; for who has the pattern, not who builds it."""
    source = source_of(design)
    caption = guide.say("regrade/measures", unit=guide.say(f"regrade/{units}"))
    rows = tuple(_measure(guide, m, units) for m in source.measurements)
    measures = SizesTable(caption, design.sizes, (RowGroup("", rows),)) if rows else None
    return Regrade(measures, other_figures(guide, design), (guide.say("regrade/how"),))


def other_figures(guide: Guide, design: Design, place: int | None = None) -> ListTable:
    """What can be given besides measurements; the counts of all sizes, or of the one at `place`."""
    heads = guide.say("regraded/what"), guide.say("regraded/source")
    rows: dict[tuple[str, str], None] = dict.fromkeys((what, own) for what, _, own in optional(guide, design, place))
    return ListTable(guide.say("regrade/others"), heads, tuple(rows))


def optional(guide: Guide, design: Design, place: int | None = None) -> Iterator[tuple[str, str, str]]:
    """The same with the option of the command line that gives it: (what, option, the source's own)."""
    source = source_of(design)
    if place is not None:
        source = replace(source, counts=tuple(replace(c, values=c.values[place : place + 1]) for c in source.counts))
    yield from _offered(guide, design.choices)
    yield from _others(guide, source)


def such_as(guide: Guide, design: Design, file: str) -> str:
    """A command line that gives some of it."""
    return guide.say("regrade/such-as", command=_command(source_of(design), design.choices, file))


def _measure(guide: Guide, row: Measurement, units: str) -> Row:
    about = row.about
    if row.to_fit:
        about = guide.say("regrade/about-to-fit", about=about) if about else guide.say("regrade/to-fit")
    return Row(sentence(row.name), tuple(TableCell(*guide.length(v, units)) for v in row.values), note=about)


def _offered(guide: Guide, choices: Iterable[Choice]) -> Iterator[tuple[str, str, str]]:
    for choice in choices:
        own, *others = (name_of(a) for a in choice.alternatives)
        yield sentence(name_of(choice.name)), "--choose", guide.say("regrade/choice", own=own, others=tuple(others))


def _others(guide: Guide, source: Edition) -> Iterator[tuple[str, str, str]]:
    if len(source.sizes) > 1:
        yield guide.say("regrade/size"), "--size", ", ".join(name_of(size) for size in source.sizes)
    for count in source.counts:
        yield sentence(name_of(count.name)), "--measure", guide.say("regrade/count", values=_graded(count), about=count.about)
    for fabric in source.fabrics:
        tension = guide.say("regrade/to-10-cm", tension=fabric.tension_words, fabric=fabric_words(guide, fabric))
        yield sentence(fabric.name), guide.say("regrade/tension-or-swatch"), tension
        set_by = "regrade/plates" if source.machine.plates else "regrade/dial"
        yield guide.say(set_by, fabric=sentence(fabric.name)), "--dial", fabric.tension
    for yarn in source.yarns:
        yield sentence(yarn.name), "--yarn", yarn.words
    machine = source.machine
    bed = guide.say("regrade/bed", bed=machine.name, needles=machine.needles, pitch=guide.decimal(f"{machine.pitch_mm:g}"))
    yield guide.say("regraded/bed"), "--bed", bed


def _graded(count: CountRow) -> str:
    """ "5 (6: 7) stitches", or one number that all sizes have."""
    first, *others = (f"{value:g}" for value in count.values)
    graded = first if all(other == first for other in others) else f"{first} ({': '.join(others)})"
    return f"{graded} {count.unit}".rstrip()


def fabric_words(guide: Guide, fabric: Fabric) -> str:
    """ "stocking stitch in wool"."""
    return guide.say("regrade/fabric", stitch=stitch_words(guide, fabric), yarn=name_of(fabric.yarn))


def _command(source: Edition, choices: Sequence[Choice], file: str) -> str:
    """A command line that gives a choice, a size, a tension and a measurement of the source's."""
    choose = f" --choose {choices[0].name}={choices[0].alternatives[-1]}" if choices else ""
    size = f" --size {source.sizes[len(source.sizes) // 2]}" if len(source.sizes) > 1 else ""
    fabric = source.fabrics[0] if source.fabrics else None
    tension = f' --tension "{fabric.name}={fabric.tension_words}"' if fabric is not None else ""
    row = next(iter(source.measurements), None)
    middle = len(row.values) // 2 if row is not None else 0
    own = f' --measure "{row.name}={length(row.values[middle], "cm")[0]} cm"' if row is not None else ""
    return f"walewright build {file}{choose}{size}{tension}{own}"
