"""What was given beside what the source says: the record of a regraded copy."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from walewright.design.model import MachineProfile
from walewright.design.model.fabrics import Fabric, Yarn
from walewright.design.model.regrading import Edition, Given
from walewright.design.reading.changes import Changes
from walewright.design.reading.sizes import GradedRows
from walewright.design.used.uses import Uses


def edition(
    sizes: tuple[str, ...],
    graded: GradedRows,
    fabrics: Iterable[Fabric | None],
    yarns: Iterable[Yarn | None],
    machine: MachineProfile,
    found: Uses,
) -> Edition:
    """The source's own figures, but for what nothing uses."""
    return Edition(
        sizes,
        tuple(m for m in graded.rows.values() if m is not None and found.has("measurement", m.name)),
        tuple(f for f in fabrics if f is not None and found.has("fabric", f.name)),
        tuple(y for y in yarns if y is not None and not y.strands and found.has("yarn", y.name)),
        machine,
        tuple(c for c in graded.counted.values() if found.has("measurement", c.name)),
    )


def given(
    source: Edition,
    graded: GradedRows,
    fabrics: Mapping[str, Fabric | None],
    yarns: Mapping[str, Yarn | None],
    machine: MachineProfile,
    changes: Changes,
) -> Iterator[Given]:
    """Everything that the knitter's copy has otherwise by their own wish, in the order of the source."""
    for row in source.measurements:
        now = graded.rows[row.name]
        if now is not None and now.origin.path.startswith("measure "):
            yield Given("measure", row.name, own_cm=now.values[0], source_cm=row.values)
    for count in source.counts:
        value = graded.given.get(count.name)
        if value is not None:
            yield Given("measure", count.name, count.words(value), ", ".join(dict.fromkeys(map(count.words, count.values))))
    for fabric in source.fabrics:
        own = fabrics[fabric.name]
        if own is None:
            continue
        if own.basis.startswith("given") and own.origin.path.startswith("swatch "):
            yield Given("swatch", fabric.name, own.swatch_words, fabric.swatch_words)
        elif own.basis.startswith("given"):
            yield Given("tension", fabric.name, own.tension_words, fabric.tension_words)
        if own.own_dial:
            yield Given("dial", fabric.name, own.tension, fabric.tension)
    for yarn in source.yarns:
        of_own = yarns[yarn.name]
        if of_own is not None and of_own.origin.path.startswith("own "):
            yield Given("yarn", yarn.name, of_own.words, yarn.words)
    if changes.bed or changes.own_bed is not None:
        yield Given("bed", "", machine.words, source.machine.words)
