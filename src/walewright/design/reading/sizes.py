"""The size table: a header of size names, and a row for each measurement, written out or from a shipped table. A row may also count
something, in stitches, in rows or as plain numbers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field

from walewright.design.findings import Findings, near_help
from walewright.design.model import Measurement, Origin
from walewright.design.model.credit import Credit
from walewright.design.model.regrading import CountRow, CountUnit
from walewright.design.reading.places import per_size
from walewright.design.reading.tables import Published, Shipped, SizeTable, size_table
from walewright.design.reading.units import LENGTH, NUMBER, ROWS, STITCHES, convert, written
from walewright.design.reading.values import Value, literal, measured
from walewright.record import record
from walewright.report.model import NOWHERE, Severity, Span
from walewright.report.said import Amount, BySize, said
from walewright.source import syntax

LARGEST_CM = 400.0
"""No measurement of a body or a garment for one is above four metres."""


@record
class GradedRows:
    """The chosen sizes in the header's order, and their measurements (None: reported already)."""

    sizes: tuple[str, ...]
    rows: Mapping[str, Measurement | None]
    spans: Mapping[str, Span]
    counts: Mapping[str, Value | None]
    """Rows that measure no length."""
    counted: Mapping[str, CountRow] = field(default_factory=dict)
    """The same as they are written."""
    given: Mapping[str, float] = field(default_factory=dict)
    """What a knitter gave in the place of some of these, in the row's unit."""

    def values(self) -> dict[str, Value | None]:
        """The rows as values of expressions."""
        return {n: Value(m.values, LENGTH, self.spans[n]) if m else None for n, m in self.rows.items()} | dict(self.counts)

    def names(self) -> dict[str, tuple[str, ...]]:
        """What can be given by name, with the other names that a knitter may know each by."""
        measured: dict[str, tuple[str, ...]] = {n: (m.published, m.printed) if m is not None else () for n, m in self.rows.items()}
        return measured | dict.fromkeys(self.counted, ())


def grade(node: syntax.Sizes, chosen: tuple[str, ...], shipped: Shipped, findings: Findings) -> GradedRows:
    """Understands a size table for the `chosen` of its sizes."""
    findings.once("size", ((n, node.span) for n in node.names))
    rows = [s for s in node.body if isinstance(s, syntax.SizeRow)]
    findings.once("measurement", ((r.name, r.span) for r in rows))
    reader = _SizesReader(node, chosen, shipped, findings)
    understood: dict[str, Measurement | None] = {}
    counts: dict[str, Value | None] = {}
    counted: dict[str, CountRow] = {}
    for row in rows:
        if row.name in understood or row.name in counts:
            continue
        if is_count(row):
            counts[row.name] = reader.count(row)
            if counts[row.name] is not None:
                counted[row.name] = reader.as_written(row)
        else:
            understood[row.name] = reader.row(row)
    return GradedRows(chosen, understood, {r.name: r.span for r in reversed(rows)}, counts, counted)


def is_count(row: syntax.SizeRow) -> bool:
    """Whether a row counts something in place of measuring it: in stitches, in rows, or without a unit. A measure of the body has
    a unit."""
    if row.table is not None or row.to_fit:
        return False
    unit = convert(1.0, row.unit) if row.unit is not None else (1.0, NUMBER)
    return unit is not None and unit[1] in (STITCHES, ROWS, NUMBER)


class _SizesReader:
    def __init__(self, node: syntax.Sizes, chosen: tuple[str, ...], shipped: Shipped, findings: Findings) -> None:
        self.node = node
        self.chosen = chosen
        self.shipped = shipped
        self.findings = findings

    def row(self, row: syntax.SizeRow) -> Measurement | None:
        if row.table is not None:
            return self._published(row, row.table, row.table_row or row.name)
        return self._written(row)

    def count(self, row: syntax.SizeRow) -> Value | None:
        """A row of stitches, rows, shares or plain numbers."""
        if not self._complete(row):
            return None
        read = [
            literal(syntax.Number(row.values[self.node.names.index(s)], row.unit, span=row.span), self.findings)
            for s in self.chosen
        ]
        found = [r for r in read if r is not None]
        if len(found) < len(read):
            return None
        amounts = tuple(value for value, _ in found)
        return Value(amounts, found[0][1], row.span, row.span if row.unit is None else NOWHERE)

    def as_written(self, row: syntax.SizeRow) -> CountRow:
        """A complete row that counts, for the list of what can be given."""
        values = tuple(row.values[self.node.names.index(s)] for s in self.chosen)
        unit = convert(1.0, row.unit) if row.unit is not None else None
        word: CountUnit = "" if unit is None else "%" if unit[1] == NUMBER else "st" if unit[1] == STITCHES else "rows"
        return CountRow(row.name, values, word, row.about)

    def _complete(self, row: syntax.SizeRow) -> bool:
        """Whether a row has a value for each size; reported where not."""
        have, want = len(row.values), len(self.node.names)
        if have != want:
            self.findings.report(
                "ragged-row",
                (row.span, "values"),
                (self.node.span, "sizes"),
                notes=("lacking",) if have < want else (),
                helps=("a-value-each",),
                row=row.name,
                values=have,
                wanted=want,
                lacking=self.node.names[have:],
            )
            return False
        return True

    def _written(self, row: syntax.SizeRow) -> Measurement | None:
        if not self._complete(row):
            return None
        if row.unit is None:
            self.findings.report("no-unit/row", (row.span, "bare"), helps=("cm",), row=row.name)
            return None
        indices = [self.node.names.index(s) for s in self.chosen]
        values: list[float] = []
        for index in indices:
            read = literal(syntax.Number(row.values[index], row.unit, span=row.span), self.findings)
            if read is None:
                return None
            value, dimension = read
            if dimension != LENGTH:
                kind = said("percentage") if dimension == NUMBER else dimension.kind
                self.findings.report("wrong-unit/row", (row.span, "dimension"), helps=("a-length",), row=row.name, dimension=kind)
                return None
            values.append(value)
        return self._sound(row, tuple(values), None)

    def _published(self, row: syntax.SizeRow, name: str, measurement: str) -> Measurement | None:
        if name not in self.shipped.tables:
            self.findings.unknown("shipped size table", name, row.span, sorted(self.shipped.tables), code="unknown-table")
            return None
        table = size_table(name, self.shipped.tables[name])
        there = table.row(measurement)
        entries = {size: there.pop(written) for size, written in self.shipped.written.items() if written in there} | there
        if not entries:
            self.findings.report(
                "unknown-table-row",
                (row.span, "table"),
                notes=("it-has",),
                helps=near_help(measurement, table.measurements) or ("one-of-these",),
                table=name,
                measurement=measurement,
                measurements=tuple(table.measurements),
            )
            return None
        own = self._own(row)
        if own is None:
            return None
        absent = tuple(s for s in self.chosen if s not in entries and s not in own)
        if absent:
            self.findings.report(
                "unknown-table-size",
                (row.span, "table"),
                (self.node.span, "sizes"),
                notes=("it-has",),
                helps=("own",),
                sizes=absent if len(absent) < len(self.chosen) else (),
                table=name,
                measurement=measurement,
                absent=tuple(absent),
                known=tuple(entries),
                with_own=_with_own(row, absent),
            )
            return None
        used = [entries[s] for s in self.chosen if s not in own]
        self._doubted(row, table, measurement, used)
        recalled = tuple(e.size for e in used if e.status == "memory")
        if recalled:
            self.findings.report(
                "table-from-memory",
                (row.span, "not-seen"),
                notes=("memory",),
                helps=("check",),
                severity=Severity.WARNING,
                sizes=recalled if len(recalled) < len(self.chosen) else (),
                measurement=measurement,
                table=name,
                recalled=tuple(recalled),
            )
        values = tuple(own[s] if s in own else entries[s].middle_cm for s in self.chosen)
        return self._sound(row, values, _credit(used, tuple(s for s in self.chosen if s in own)), measurement)

    def _own(self, row: syntax.SizeRow) -> dict[str, float] | None:
        """The author's own figures for sizes of a row from a table, in cm; None when one of them cannot be used."""
        self.findings.once(said("figure-of", row=row.name), ((o.size, o.span) for o in row.own))
        found: dict[str, float] = {}
        for figure in row.own:
            if figure.size not in self.node.names:
                self.findings.unknown("size", figure.size, figure.span, self.node.names, code="unknown-size")
                return None
            value = measured(figure.value, LENGTH, said("row-of-size", row=row.name, size=figure.size), self.findings)
            if value is None:
                return None
            found.setdefault(figure.size, value)
        return found

    def _doubted(self, row: syntax.SizeRow, table: SizeTable, measurement: str, used: list[Published]) -> None:
        """Warns of figures that are likely misprinted in their source."""
        doubtful = [e for e in used if e.status == "slip"]
        if not doubtful:
            return
        sizes = tuple(e.size for e in doubtful)
        self.findings.report(
            "table-slip",
            (row.span, "here"),
            notes=tuple(dict.fromkeys(said("doubt", size=e.size, note=e.note) for e in doubtful)),
            helps=("own",),
            severity=Severity.WARNING,
            sizes=sizes if len(sizes) < len(self.chosen) else (),
            measurement=measurement,
            table=table.name,
            figures=BySize(sizes, tuple(e.middle_cm for e in doubtful)),
            with_own=_with_own(row, sizes),
        )

    def _sound(
        self, row: syntax.SizeRow, values: tuple[float, ...], credit: Credit | None, published: str = ""
    ) -> Measurement | None:
        """Refuses what no body or garment measures; warns of a row that falls."""
        below = tuple(s for s, v in zip(self.chosen, values, strict=True) if v < 0)
        above = tuple(s for s, v in zip(self.chosen, values, strict=True) if v > LARGEST_CM)
        if below:
            self.findings.report(
                "negative-measurement",
                (row.span, "values"),
                helps=("no-minus",),
                sizes=below if len(below) < len(values) else (),
                row=row.name,
                values=per_size(self.chosen, values),
            )
            return None
        if above:
            self.findings.report(
                "absurd-measurement",
                (row.span, "values"),
                helps=("look",),
                sizes=above if len(above) < len(values) else (),
                row=row.name,
                longest=Amount(LARGEST_CM),
                values=per_size(self.chosen, values),
            )
            return None
        falls = [i for i in range(1, len(values)) if values[i] < values[i - 1]]
        if falls:
            at = falls[0]
            self.findings.report(
                "row-falls",
                (row.span, "then"),
                helps=("check-order",),
                severity=Severity.WARNING,
                row=row.name,
                one=self.chosen[at - 1],
                next=self.chosen[at],
                value=Amount(values[at - 1]),
                next_value=Amount(values[at]),
            )
        known = self.shipped.described(published)
        origin = Origin(f"sizes / {row.name}", row.span)
        return Measurement(
            row.name, values, row.to_fit, credit, origin, published=published, about=row.about or known.about, printed=known.name
        )


def _credit(used: list[Published], own: tuple[str, ...]) -> Credit | None:
    """Where the figures of a row are from; `own` are the sizes for which the author gives them."""
    if not used:
        return None
    return Credit(tuple(dict.fromkeys(e.source for e in used)), any(e.status == "memory" for e in used), own)


def _with_own(row: syntax.SizeRow, sizes: tuple[str, ...]) -> str:
    """The row with a place for own figures."""
    given = [f"{o.size} {written(o.value.value, o.value.unit or 'cm')}" for o in row.own]
    return ", ".join((f"{row.name} from {row.table} {row.table_row}", *given, *(f"{s} ... cm" for s in sizes)))
