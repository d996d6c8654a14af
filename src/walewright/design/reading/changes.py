"""A knitter's changes: fewer sizes, another tension, another body, another yarn or bed. They stand beside the source, never in it.

Each comes as a short text ("17 st 24 rows", "104 cm"); what cannot be used is reported with the option it came by, for no
line of the source stands behind it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import field, fields

from walewright.design.findings import Findings, near_help
from walewright.design.model import Origin
from walewright.design.model.regrading import CountRow, GivenByName, GivenKind
from walewright.design.reading.called import look_up, meant
from walewright.design.reading.given import WAYS, read_count, read_measure
from walewright.design.reading.sizes import LARGEST_CM, GradedRows
from walewright.design.reading.values import literal
from walewright.design.reading.values import names as names_in
from walewright.record import record, replace
from walewright.report.model import NOWHERE, Diagnostic
from walewright.report.said import Amount
from walewright.source import syntax


@record
class Changes:
    """`sizes`: names to keep, or None for all. `chosen`: name of a choice to the alternative taken. By name of the fabric:
    `tensions` ("17 st 24 rows", to 10 cm), `swatches` ("40 st 60 rows 23.5 cm 21 cm 28 g"), `dials` ("6"). `measures`: name of a
    row to "104 cm", for all sizes kept. `yarns`: name to "my wool, 50 g = 120 m". `bed`: "standard", or facts of the source's
    ("needles=180"); `own_bed` one that the knitter has described in a file of its own, read."""

    sizes: tuple[str, ...] | None = None
    tensions: Mapping[str, str] = field(default_factory=dict)
    measures: Mapping[str, str] = field(default_factory=dict)
    swatches: Mapping[str, str] = field(default_factory=dict)
    dials: Mapping[str, str] = field(default_factory=dict)
    yarns: Mapping[str, str] = field(default_factory=dict)
    bed: str = ""
    own_bed: syntax.MachineBlock | None = None
    chosen: Mapping[str, str] = field(default_factory=dict)

    @property
    def only_choose_sizes(self) -> bool:
        """Whether some of the sizes are made as the pattern has them: on its bed, at its tension, to its measures."""
        given = self.tensions or self.swatches or self.measures or self.bed or self.own_bed is not None
        return self.sizes is not None and not given

    def texts(self) -> Iterator[tuple[GivenKind, str, str]]:
        """(kind, name, text) of everything given but sizes and choices; the bed has no name."""
        for kind, attribute in ATTRIBUTES.items():
            for name, text in getattr(self, attribute).items():
                yield kind, name, text
        if self.bed:
            yield "bed", "", self.bed

    def only(self, kept: Iterable[tuple[str, str]]) -> Changes:
        """These sizes and choices with nothing given but what is `kept`: (kind, name)."""
        wanted = set(kept)
        mappings = {
            attribute: {name: text for name, text in getattr(self, attribute).items() if (kind, name) in wanted}
            for kind, attribute in ATTRIBUTES.items()
        }
        bed = ("bed", "") in wanted
        own_bed = self.own_bed if bed else None
        return Changes(self.sizes, **mappings, bed=self.bed if bed else "", own_bed=own_bed, chosen=self.chosen)

    def with_text(self, kind: GivenKind, name: str, text: str) -> Changes:
        """These, with another text for one thing given."""
        if kind == "bed":
            return replace(self, bed=text)
        mappings = {attribute: dict(getattr(self, attribute)) for attribute in ATTRIBUTES.values()}
        mappings[ATTRIBUTES[kind]][name] = text
        return Changes(self.sizes, **mappings, bed=self.bed, own_bed=self.own_bed, chosen=self.chosen)

    @property
    def regrade(self) -> bool:
        """Whether anything but sizes and choices is given: figures in place of the source's own."""
        return any(getattr(self, f.name) for f in fields(self) if f.name not in ("sizes", "chosen"))


ATTRIBUTES: Mapping[GivenByName, str] = {
    "measure": "measures",
    "tension": "tensions",
    "swatch": "swatches",
    "dial": "dials",
    "yarn": "yarns",
}
"""Kind of what is given (the option's own word) to the field of `Changes`."""


def malformed(changes: Changes) -> tuple[Diagnostic, ...]:
    """Every text that does not read, whatever the source; what reads may still be impossible there."""
    findings = Findings()
    for kind, name, text in changes.texts():
        if WAYS[kind].read(text) is None:
            tell_malformed(kind, name, text, findings)
    return findings.all()


def tell_malformed(kind: str, name: str, text: str, findings: Findings) -> None:
    """A text that is not what its option takes."""
    way = WAYS[kind]
    findings.report(way.fault, helps=(way.example,), given=(kind, name), text=text)


def chosen_sizes(names: tuple[str, ...], changes: Changes, findings: Findings) -> tuple[str, ...]:
    """The sizes to make, in the order of the header; those that do not exist are reported and left out."""
    if changes.sizes is None:
        return names
    chosen: set[str] = set()
    for size in changes.sizes:
        found = meant(size, dict.fromkeys(names, ()))
        chosen.update(found[:1] if len(found) == 1 else ())
        if len(found) != 1:
            findings.report(
                "unknown-size/several" if found else "unknown-size/given",
                notes=("it-has",),
                helps=near_help(size, names) or ("one-of-these",),
                given=("size", ""),
                size=size,
                names=names,
            )
    if not changes.sizes:
        findings.report("unknown-size/no-name", notes=("pattern-has",), helps=("one-of-these",), given=("size", ""), names=names)
    # When none is left, all are read, so that the source's own faults are still told.
    return tuple(n for n in names if n in chosen) or names


def by_own_name(
    kind: str, texts: Mapping[str, str], known: Mapping[str, Iterable[str]], what: str, findings: Findings
) -> dict[str, tuple[str, str]]:
    """The name in the source of what is given -> (as it was typed, its text). What is unknown, or given twice, is reported."""
    found: dict[str, tuple[str, str]] = {}
    for typed, text in texts.items():
        name = look_up(typed, known, what, (kind, typed), findings)
        if name is not None and name in found:
            findings.report(
                "given-twice/texts", helps=("leave-one",), given=(kind, typed), name=name, one=found[name][1], other=text
            )
        elif name is not None:
            found[name] = typed, text
    return found


def changed_rows(graded: GradedRows, lets: Mapping[str, syntax.Let], changes: Changes, findings: Findings) -> GradedRows:
    """The size table with the knitter's own measurements in it. Only rows can be given: what the source works out from them, by a
    `let` or as a finished measurement, is refused with the rows that it follows from."""
    rows = dict(graded.rows)
    known = graded.names()
    texts: dict[str, str] = {}
    for typed, text in changes.measures.items():
        found = () if meant(typed, known) else meant(typed, dict.fromkeys(lets, ()))
        if len(found) == 1:
            _worked_out(found[0], typed, {*rows, *graded.counted}, lets, findings)
        else:
            texts[typed] = text
    counts, given = dict(graded.counts), dict(graded.given)
    for name, (typed, text) in by_own_name("measure", texts, known, "measurement", findings).items():
        if name in graded.counted:
            number = _count(graded, name, typed, text, findings)
            own_value = counts[name]
            if number is not None and own_value is not None:
                given[name] = number
                counts[name] = replace(own_value, amounts=(_amount(number, graded.counted[name]),) * len(graded.sizes))
            continue
        cm = read_measure(text)
        if cm is None:
            tell_malformed("measure", typed, text, findings)
        elif not 0 < cm <= LARGEST_CM:
            findings.report(
                "bad-measure/out-of-range",
                helps=("range",),
                given=("measure", typed),
                name=name,
                length=Amount(cm),
                longest=Amount(LARGEST_CM),
            )
        else:
            row = rows[name]
            own = Origin(f"measure {name}", NOWHERE)
            values = (cm,) * len(graded.sizes)
            rows[name] = row and replace(row, values=values, credit=None, origin=own)
    return replace(graded, rows=rows, counts=counts, given=given)


MOST_COUNTED = 1000
"""Of stitches, rows or things that a knitter may give; what is counted has narrower limits of its own."""


def _count(graded: GradedRows, name: str, typed: str, text: str, findings: Findings) -> float | None:
    """What is given in place of a row that counts: a number in the unit of the row, whole where the row's own numbers are."""
    row = graded.counted[name]
    own = graded.counts[name]
    read = read_count(text)
    found = literal(read, findings) if read is not None else None
    if own is None or read is None or found is None or found[1] != own.dimension or (read.unit == "%") != (row.unit == "%"):
        findings.report(
            "bad-measure/other-count",
            helps=("count-example",),
            given=("measure", typed),
            name=name,
            text=text,
            unit=row.unit,
            example=row.words(row.values[0]),
        )
        return None
    possible = 0 < read.value <= MOST_COUNTED or (read.value == 0 and 0 in row.values)
    if not possible or (row.whole and read.value != round(read.value)):
        findings.report(
            "bad-measure/count-out-of-range",
            helps=("count-range",),
            given=("measure", typed),
            name=name,
            count=row.words(read.value),
            whole=row.whole,
            most=MOST_COUNTED,
        )
        return None
    return read.value


def _amount(number: float, row: CountRow) -> float:
    """As expressions have it: a share is a part of one."""
    return number / 100 if row.unit == "%" else number


def _worked_out(name: str, typed: str, rows: Collection[str], lets: Mapping[str, syntax.Let], findings: Findings) -> None:
    """Refuses what the source works out itself."""
    found: dict[str, None] = {}
    seen: set[str] = set()
    left = [name]
    while left:
        last = left.pop()
        if last in seen:
            continue
        seen.add(last)
        if last in lets:
            # In the order in which they are written, which a stack turns round.
            left += reversed(tuple(names_in(lets[last].value)))
        elif last in rows:
            found[last] = None
    findings.report(
        "worked-out-measure",
        notes=("follows" if found else "same",),
        helps=("leave-out" if not found else "give-one" if len(found) > 1 else "give-it",),
        given=("measure", typed),
        name=name,
        rows=tuple(found),
        first=next(iter(found), ""),
    )
