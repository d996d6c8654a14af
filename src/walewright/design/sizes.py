"""The size table: a header of size names, and a row of lengths per measurement, written out or from a shipped table."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from walewright.design.findings import Findings, amount, near_help
from walewright.design.model import Measurement, Origin
from walewright.design.places import per_size
from walewright.design.tables import Published, Shipped, SizeTable, size_table
from walewright.design.units import LENGTH, NUMBER
from walewright.design.values import Value, literal, measured
from walewright.report.model import Severity, Span
from walewright.source import syntax

LARGEST_CM = 400.0
"""No measurement of a body or a garment for one is above four metres."""


@dataclass(frozen=True, slots=True)
class Graded:
    """The chosen sizes in the header's order, and their measurements (None: reported already)."""

    sizes: tuple[str, ...]
    rows: Mapping[str, Measurement | None]
    spans: Mapping[str, Span]

    def values(self) -> dict[str, Value | None]:
        """The rows as values of expressions."""
        return {n: Value(m.values, LENGTH, self.spans[n]) if m else None for n, m in self.rows.items()}


def grade(node: syntax.Sizes, chosen: tuple[str, ...], shipped: Shipped, findings: Findings) -> Graded:
    """Understands a size table for the `chosen` of its sizes."""
    findings.once("size", ((n, node.span) for n in node.names))
    rows = [s for s in node.body if isinstance(s, syntax.SizeRow)]
    findings.once("measurement", ((r.name, r.span) for r in rows))
    reader = _SizesReader(node, chosen, shipped, findings)
    understood: dict[str, Measurement | None] = {}
    for row in rows:
        if row.name not in understood:
            understood[row.name] = reader.row(row)
    return Graded(chosen, understood, {r.name: r.span for r in reversed(rows)})


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

    def _written(self, row: syntax.SizeRow) -> Measurement | None:
        have, want = len(row.values), len(self.node.names)
        if have != want:
            lacking = ", ".join(self.node.names[have:])
            self.findings.tell(
                "ragged-row",
                f"`{row.name}` has {_count(have, 'value')} for {_count(want, 'size')}",
                (row.span, _count(have, "value")),
                (self.node.span, _count(want, "size")),
                notes=(f"no value for {lacking}",) if lacking else (),
            )
            return None
        if row.unit is None:
            self.findings.tell("no-unit", f"`{row.name}` has no unit", (row.span, "bare numbers"), helps=("end the row with cm",))
            return None
        indices = [self.node.names.index(s) for s in self.chosen]
        values: list[float] = []
        for index in indices:
            read = literal(syntax.Number(row.values[index], row.unit, span=row.span), self.findings)
            if read is None:
                return None
            value, dimension = read
            if dimension != LENGTH:
                what = "a percentage" if dimension == NUMBER else dimension.kind
                self.findings.tell("wrong-unit", f"`{row.name}` must be a length", (row.span, what))
                return None
            values.append(value)
        return self._sound(row, tuple(values), "")

    def _published(self, row: syntax.SizeRow, name: str, measurement: str) -> Measurement | None:
        if name not in self.shipped.tables:
            self.findings.unknown("shipped size table", name, row.span, sorted(self.shipped.tables), code="unknown-table")
            return None
        table = size_table(name, self.shipped.tables[name])
        entries = table.row(measurement)
        if not entries:
            self.findings.tell(
                "unknown-table-row",
                f"the table `{name}` has no measurement `{measurement}`",
                (row.span, "not in the table"),
                notes=(f"it has {', '.join(table.measurements)}",),
                helps=near_help(measurement, table.measurements),
            )
            return None
        own = self._own(row)
        if own is None:
            return None
        absent = tuple(s for s in self.chosen if s not in entries and s not in own)
        if absent:
            self.findings.tell(
                "unknown-table-size",
                f"the table `{name}` has no `{measurement}` for {', '.join(absent)}",
                (row.span, "not in the table"),
                (self.node.span, "sizes of this pattern"),
                notes=(f"it has {', '.join(entries)}",),
                helps=(f"give them here: `{_with_own(row, absent)}`, with your own figures",),
                sizes=absent if len(absent) < len(self.chosen) else (),
            )
            return None
        used = [entries[s] for s in self.chosen if s not in own]
        self._doubted(row, table, measurement, used)
        recalled = tuple(e.size for e in used if e.status == "memory")
        if recalled:
            self.findings.tell(
                "table-from-memory",
                f"`{measurement}` in the table `{name}` is from memory",
                (row.span, "not seen in a published table"),
                notes=(f"from memory: {', '.join(recalled)}",),
                helps=("check the figures, or write them out",),
                sizes=recalled if len(recalled) < len(self.chosen) else (),
                severity=Severity.WARNING,
            )
        values = tuple(own[s] if s in own else entries[s].middle_cm for s in self.chosen)
        return self._sound(row, values, _credit(used, tuple(s for s in self.chosen if s in own)), measurement)

    def _own(self, row: syntax.SizeRow) -> dict[str, float] | None:
        """The author's own figures for sizes of a row from a table, in cm; None when one of them cannot be used."""
        self.findings.once(f"figure of `{row.name}`", ((o.size, o.span) for o in row.own))
        found: dict[str, float] = {}
        for figure in row.own:
            if figure.size not in self.node.names:
                self.findings.unknown("size", figure.size, figure.span, self.node.names, code="unknown-size")
                return None
            value = measured(figure.value, LENGTH, f"`{row.name}` of {figure.size}", self.findings)
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
        figures = ", ".join(f"{e.size} {amount(e.middle_cm)}" for e in doubtful)
        self.findings.tell(
            "table-slip",
            f"`{measurement}` in the table `{table.name}` is likely misprinted in its source: {figures}",
            (row.span, "used here"),
            notes=tuple(dict.fromkeys(f"{e.size}: {e.note}" for e in doubtful)),
            helps=(f"give your own figures here: `{_with_own(row, sizes)}`",),
            sizes=sizes if len(sizes) < len(self.chosen) else (),
            severity=Severity.WARNING,
        )

    def _sound(self, row: syntax.SizeRow, values: tuple[float, ...], source: str, published: str = "") -> Measurement | None:
        """Refuses what no body or garment measures; warns of a row that falls."""
        below = tuple(s for s, v in zip(self.chosen, values, strict=True) if v < 0)
        above = tuple(s for s, v in zip(self.chosen, values, strict=True) if v > LARGEST_CM)
        if below:
            self.findings.tell(
                "negative-measurement",
                f"`{row.name}` is less than nothing",
                (row.span, per_size(self.chosen, values)),
                sizes=below if len(below) < len(values) else (),
            )
            return None
        if above:
            self.findings.tell(
                "absurd-measurement",
                f"`{row.name}` is more than {amount(LARGEST_CM)}",
                (row.span, per_size(self.chosen, values)),
                sizes=above if len(above) < len(values) else (),
                helps=("look at the unit",),
            )
            return None
        falls = [i for i in range(1, len(values)) if values[i] < values[i - 1]]
        if falls:
            at = falls[0]
            self.findings.tell(
                "row-falls",
                f"`{row.name}` gets smaller from {self.chosen[at - 1]} to {self.chosen[at]}",
                (row.span, f"{amount(values[at - 1])}, then {amount(values[at])}"),
                severity=Severity.WARNING,
            )
        known = self.shipped.described(published)
        origin = Origin(f"sizes / {row.name}", row.span)
        return Measurement(row.name, values, row.to_fit, source, origin, published, row.about or known.about, known.name)


def _credit(used: list[Published], own: tuple[str, ...]) -> str:
    """Where the figures of a row are from; `own` are the sizes for which the author gives them."""
    credits = "; ".join(dict.fromkeys(e.source for e in used))
    credits += " (from memory, not seen)" if any(e.status == "memory" for e in used) else ""
    return f"{credits}, but {', '.join(own)} the author's own" if used and own else credits


def _with_own(row: syntax.SizeRow, sizes: tuple[str, ...]) -> str:
    """The row with a place for own figures."""
    given = [f"{o.size} {amount(o.value.value, o.value.unit or 'cm')}" for o in row.own]
    return ", ".join((f"{row.name} from {row.table} {row.table_row}", *given, *(f"{s} ... cm" for s in sizes)))


def _count(number: int, word: str) -> str:
    return f"{number} {word}" if number == 1 else f"{number} {word}s"
