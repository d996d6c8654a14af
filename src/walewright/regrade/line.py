"""The way from the source's own value to the one that was given, in steps as fine as a knitter would try.

A step is written as the option takes it, so that what is tried is what a knitter could give.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from walewright.design.model import Edition, Fabric
from walewright.design.model.regrading import CountRow, GivenKind
from walewright.design.reading.given import read_bed, read_count, read_measure, read_swatch, read_tension
from walewright.record import record

STEP_CM = 0.5
"""A tape is read so (common practice)."""
STEPS = 64
"""Of a tension, between the source's and the given one."""


@record
class TrialLine:
    """What can be tried of one thing given: `at(0)` is the source's own, `at(last)` the given one. `rises`: the given value is the
    larger one."""

    kind: GivenKind
    name: str
    texts: tuple[str, ...]
    rises: bool

    @property
    def last(self) -> int:
        return len(self.texts) - 1


def lines(kind: GivenKind, name: str, text: str, source: Edition) -> Iterator[TrialLine]:
    """The ways there are, the likeliest first; none where nothing lies between, as between two yarns. `name` is the source's."""
    if kind == "measure":
        row = next((m for m in source.measurements if m.name == name), None)
        cm = read_measure(text)
        if row is not None and cm is not None:
            # The sizes that are made begin from their own values: the nearest to what was given is likeliest to do.
            for own in sorted(set(row.values), key=lambda v: abs(v - cm)):
                if own != cm:
                    yield _between(kind, name, own, cm, text)
        count = next((c for c in source.counts if c.name == name), None)
        number = read_count(text)
        if count is not None and number is not None:
            for value in sorted(set(count.values), key=lambda v: abs(v - number.value)):
                if value != number.value:
                    yield _counts(count, value, number.value, text)
    elif kind in ("tension", "swatch"):
        fabric = next((f for f in source.fabrics if f.name == name), None)
        wanted = _tension(kind, text)
        if fabric is not None and wanted is not None:
            yield _tensions(fabric, wanted)
    elif kind == "bed":
        yield from _needles(text, source)


def _between(kind: GivenKind, name: str, own: float, cm: float, text: str) -> TrialLine:
    """Half centimetres between two lengths, both ends as they are."""
    low, high = min(own, cm), max(own, cm)
    first, last = math.floor(low / STEP_CM) + 1, math.ceil(high / STEP_CM) - 1
    inner = [f"{n * STEP_CM:g} cm" for n in range(first, last + 1)]
    if cm < own:
        inner.reverse()
    return TrialLine(kind, name, (f"{own:g} cm", *inner, text), cm > own)


def _counts(count: CountRow, own: float, given: float, text: str) -> TrialLine:
    """One by one between two counts."""
    numbers = range(math.floor(min(own, given)) + 1, math.ceil(max(own, given)))
    inner = [count.words(float(n)) for n in (numbers if given > own else reversed(numbers))]
    return TrialLine("measure", count.name, (count.words(own), *inner, text), given > own)


def _tension(kind: str, text: str) -> tuple[float, float] | None:
    """Stitches and rows to 10 cm."""
    if kind == "tension":
        read = read_tension(text)
        return (read.stitches, read.rows) if read is not None else None
    swatch = read_swatch(text)
    if swatch is None or not swatch.width.value or not swatch.height.value:
        return None
    return swatch.stitches.value / swatch.width.value * 10, swatch.rows.value / swatch.height.value * 10


def _tensions(fabric: Fabric, wanted: tuple[float, float]) -> TrialLine:
    own = (fabric.stitches_per_cm * 10, fabric.rows_per_cm * 10)
    between = [tuple(a + (b - a) * n / STEPS for a, b in zip(own, wanted, strict=True)) for n in range(1, STEPS)]
    texts = [f"{stitches:.1f} st {rows:.1f} rows" for stitches, rows in between]
    ends = f"{wanted[0]:.10g} st {wanted[1]:.10g} rows"
    # Of the same stitches more rows are the larger tension.
    rises = wanted[0] > own[0] if round(wanted[0] - own[0], 1) else wanted[1] > own[1]
    return TrialLine("tension", fabric.name, (fabric.tension_words, *dict.fromkeys(texts), ends), rises)


def _needles(text: str, source: Edition) -> Iterator[TrialLine]:
    """Beds with more needles than the given one, up to the source's."""
    read = read_bed(text)
    if read is None:
        return
    needles = next((int(f.values[0].value) for f in read.facts if f.key == "needles"), None)
    # What else is given stays as it is written: some facts have names in place of numbers, and some have nothing.
    others = [part.strip() for part in text.split(",") if part.partition("=")[0].strip() != "needles"]
    if needles is not None and needles < source.machine.needles and needles % 2 == 0:
        counts = range(source.machine.needles, needles, -2)
        yield TrialLine("bed", "", (*(", ".join((*others, f"needles={n}")) for n in counts), text), False)
