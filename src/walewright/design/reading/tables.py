"""The shipped data of this stage: size tables (CSV) with what their measurements are (TOML), machine profiles (TOML) and shapes
(sources), handed in as text by whoever reads files."""

from __future__ import annotations

import csv
import io
import tomllib
from collections.abc import Mapping
from dataclasses import field
from typing import Literal

from walewright.record import record


@record
class SharedFile:
    """A file that a source names: what messages call it, and its text, or why it cannot be read (`fault`, a case of
    `shared-file-unusable`)."""

    name: str
    text: str = ""
    fault: str = ""


@record
class Shipped:
    """What a source can name besides what it says itself. `files`: those in its own folder or below, by their path from there.

    `tables`: CSV text by table name ("women"); `machines`: TOML text by profile name ("bulky"); `shapes`: source text by the
    name of the shape that it defines, and `charts` likewise; `measures`: TOML text, what each measurement of the tables is (empty:
    nothing is said), told in `language` where it has that."""

    tables: Mapping[str, str]
    machines: Mapping[str, str]
    shapes: Mapping[str, str] = field(default_factory=dict)
    measures: str = ""
    charts: Mapping[str, str] = field(default_factory=dict)
    files: Mapping[str, SharedFile] = field(default_factory=dict)
    language: str = ""
    names: Mapping[str, str] = field(default_factory=dict)
    """By language, TOML text: what names are printed as in it, by what is called so."""
    written: Mapping[str, str] = field(default_factory=dict)
    """Sizes of a source that is printed in `language`, to what its author wrote: tables know these."""

    def described(self, measurement: str) -> Described:
        """What a measurement of the tables is called on paper and how it is taken; empty words for one that nothing is said of."""
        found = tomllib.loads(self.measures).get(measurement, {})
        found = found.get(self.language, found)
        return Described(str(found.get("name", "")), str(found.get("about", "")))


@record
class Described:
    """`name`: "back neck to wrist"; `about`: how it is taken, in a plain sentence without a full stop."""

    name: str
    about: str


FigureStatus = Literal["read", "memory", "slip"]

STATUSES: tuple[FigureStatus, ...] = ("read", "memory", "slip")


@record
class Published:
    """One published range of one measurement of one size, in cm. `status` is "read" (seen in its source), "memory" or "slip"
    (seen, and likely misprinted there; `note` says why)."""

    size: str
    measurement: str
    low_cm: float
    high_cm: float
    source: str
    status: FigureStatus
    note: str = ""

    @property
    def middle_cm(self) -> float:
        return (self.low_cm + self.high_cm) / 2


@record
class SizeTable:
    """A shipped table, in the order of its file."""

    name: str
    entries: tuple[Published, ...]

    @property
    def measurements(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(e.measurement for e in self.entries))

    def row(self, measurement: str) -> dict[str, Published]:
        """The entries of one measurement by size name."""
        return {e.size: e for e in self.entries if e.measurement == measurement}


def size_table(name: str, text: str) -> SizeTable:
    """Reads a shipped table: columns size, measurement, low_cm, high_cm, low_in, high_in, source, status, and, where some need
    it, note."""
    return SizeTable(name, tuple(_published(r) for r in csv.DictReader(io.StringIO(text))))


def _published(line: Mapping[str, str]) -> Published:
    low = float(line["low_cm"])
    high = float(line["high_cm"] or low)
    status = next(known for known in STATUSES if known == line["status"])
    return Published(
        line["size"], line["measurement"], low, high_cm=high, source=line["source"], status=status, note=line.get("note") or ""
    )
