"""The size table: a header of size names, and a row of lengths per measurement, written out or from a shipped table."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from walewright.design.findings import Findings, amount, near_help
from walewright.design.model import Measurement, Origin
from walewright.design.places import per_size
from walewright.design.tables import Shipped, SizeTable, size_table
from walewright.design.units import LENGTH, NUMBER
from walewright.design.values import Value, literal
from walewright.report.model import Severity, Span
from walewright.source import syntax

LARGEST_CM = 400.0
"""No measurement of a body or a garment for one is above four metres."""


@dataclass(frozen=True, slots=True)
class Graded:
    """The chosen sizes in the header's order, and their measurements (None: told of already)."""

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
    reader = _Reader(node, chosen, shipped, findings)
    understood: dict[str, Measurement | None] = {}
    for row in rows:
        if row.name not in understood:
            understood[row.name] = reader.row(row)
    return Graded(chosen, understood, {r.name: r.span for r in reversed(rows)})


class _Reader:
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
        absent = tuple(s for s in self.chosen if s not in entries)
        if absent:
            self.findings.tell(
                "unknown-table-size",
                f"the table `{name}` has no `{measurement}` for {', '.join(absent)}",
                (row.span, "not in the table"),
                (self.node.span, "sizes of this pattern"),
                notes=(f"it has {', '.join(entries)}",),
                sizes=absent if len(absent) < len(self.chosen) else (),
            )
            return None
        used = [entries[s] for s in self.chosen]
        recalled = tuple(e.size for e in used if e.status == "memory")
        if recalled:
            self.findings.tell(
                "table-from-memory",
                f"`{measurement}` in the table `{name}` is from memory",
                (row.span, "not seen in a published table"),
                notes=(f"from memory: {', '.join(recalled)}",),
                helps=("check the figures, or write them out",),
                sizes=recalled if len(recalled) < len(used) else (),
                severity=Severity.WARNING,
            )
        return self._sound(row, tuple(e.middle_cm for e in used), _credit(table, measurement, self.chosen), measurement)

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
        return Measurement(row.name, values, row.to_fit, source, Origin(f"sizes / {row.name}", row.span), published)


def _credit(table: SizeTable, measurement: str, sizes: tuple[str, ...]) -> str:
    used = [e for e in table.entries if e.measurement == measurement and e.size in sizes]
    credits = "; ".join(dict.fromkeys(e.source for e in used))
    return f"{credits} (from memory, not seen)" if any(e.status == "memory" for e in used) else credits


def _count(number: int, word: str) -> str:
    return f"{number} {word}" if number == 1 else f"{number} {word}s"
