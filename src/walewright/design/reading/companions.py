"""Measures of the body that go with those of a source: what other shipped tables have for the sizes of the table it names.

A neck is held against a head without being asked for, so that nobody has to copy heads from one table to another.
"""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Measurement, Origin
from walewright.design.model.credit import Credit
from walewright.design.reading.sizes import GradedRows
from walewright.design.reading.tables import Published, Shipped, size_table
from walewright.report.model import NOWHERE
from walewright.source import syntax

BY_AGE = ("baby", "child", "youth")
"""Tables whose sizes are ages; `age` has heads and hands for them."""
GROWN = {"women": "woman", "men": "man"}
"""Tables of grown people, and what the tables `head` and `hand` call them."""
OF_GROUP = ("head", "hand")
OWN = ("centre_back_neck_to_wrist",)
"""Rows of a table itself that are looked at when the source names others of it."""


def companions(table: syntax.Sizes, graded: GradedRows, shipped: Shipped) -> tuple[Measurement, ...]:
    """Measures that the source does not name and a shipped table has for all of its sizes."""
    rows = [s for s in table.body if isinstance(s, syntax.SizeRow) and s.table]
    named = {m.body for m in graded.rows.values() if m is not None}
    found: dict[str, Measurement] = {}
    for row in rows:
        for name, entries in _entries(row.table or "", graded.sizes, shipped):
            if name not in named and name not in found:
                credit = Credit(tuple(dict.fromkeys(e.source for e in entries)))
                origin = Origin(f"sizes / {name}", NOWHERE)
                about = shipped.described(name).about
                found[name] = Measurement(
                    name, tuple(e.middle_cm for e in entries), True, credit=credit, origin=origin, published=name, about=about
                )
    return tuple(found.values())


def _entries(table: str, sizes: tuple[str, ...], shipped: Shipped) -> Iterator[tuple[str, tuple[Published, ...]]]:
    """(measure, its entry for each size)."""
    sizes = tuple(shipped.written.get(size, size) for size in sizes)
    wanted = [(name, table, sizes) for name in OWN]
    if table in BY_AGE:
        wanted += [(name, "age", sizes) for name in OF_GROUP]
    elif table in GROWN:
        wanted += [(name, name, (GROWN[table],) * len(sizes)) for name in OF_GROUP]
    for name, where, called in wanted:
        entries = size_table(where, shipped.tables[where]).row(name) if where in shipped.tables else {}
        if entries and all(size in entries for size in called):
            yield name, tuple(entries[size] for size in called)
