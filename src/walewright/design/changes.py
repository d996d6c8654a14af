"""A knitter's changes: fewer sizes, another tension, another body. They stand beside the source, never in it.

Each comes as a short text ("17 st 24 rows", "104 cm"); what cannot be used is told of with the option it came by, for no
line of the source stands behind it.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from walewright.design.findings import Findings, near_help
from walewright.design.model import Fabric, Measurement, Origin
from walewright.design.sizes import LARGEST_CM, Graded
from walewright.design.units import LENGTH, NUMBER, ROWS, STITCHES, Dimension, convert
from walewright.design.values import LARGEST, Scope, Value
from walewright.report.model import NOWHERE

TENSION = re.compile(r"\s*(\d+(?:\.\d+)?)\s*([a-z]+)\s*(?:,|by|and|x)?\s*(\d+(?:\.\d+)?)\s*([a-z]+)\s*")
AMOUNT = re.compile(r"\s*(-?\d+(?:\.\d+)?)\s*([a-z%]*)\s*")

SWATCH_CM = 10.0
"""A tension is told as stitches and rows to 10 cm, as every yarn label does."""


@dataclass(frozen=True, slots=True)
class Changes:
    """`sizes`: names to keep, or None for all. `tensions`: fabric name to "17 st 24 rows" (to 10 cm). `measures`: name of a
    row or a `let` to "104 cm", for all sizes kept."""

    sizes: tuple[str, ...] | None = None
    tensions: Mapping[str, str] = field(default_factory=dict)
    measures: Mapping[str, str] = field(default_factory=dict)


def chosen_sizes(names: tuple[str, ...], changes: Changes, findings: Findings) -> tuple[str, ...]:
    """The sizes to make, in the order of the header; those that do not exist are told of and left out."""
    if changes.sizes is None:
        return names
    for size in changes.sizes:
        if size not in names:
            findings.tell(
                "unknown-size",
                f"the pattern has no size `{size}` (option --size)",
                notes=(f"it has {', '.join(names)}",),
                helps=near_help(size, names),
            )
    if not changes.sizes:
        findings.tell("unknown-size", "no size is named (option --size)", notes=(f"the pattern has {', '.join(names)}",))
    # When none is left, all are read, so that the source's own faults are still told.
    return tuple(n for n in names if n in changes.sizes) or names


def changed_rows(graded: Graded, lets: Mapping[str, object], changes: Changes, findings: Findings) -> Graded:
    """The size table with the knitter's own measurements in it; a name that is neither row nor `let` is told of."""
    rows = dict(graded.rows)
    for name, text in changes.measures.items():
        if name in rows:
            read = _amount(name, text, findings)
            if read is None:
                continue
            if read[1] != LENGTH:
                _refuse_measure(name, text, "it must be a length, such as 104 cm", findings)
            elif not 0 <= read[0] <= LARGEST_CM:
                _refuse_measure(name, text, f"it must be between 0 and {LARGEST_CM:g} cm", findings)
            else:
                row = rows[name]
                own = Origin(f"measure {name}", NOWHERE)
                values = (read[0],) * len(graded.sizes)
                rows[name] = row and Measurement(name, values, row.to_fit, "", own)
        elif name not in lets:
            known = (*rows, *lets)
            findings.tell(
                "unknown-name",
                f"no measurement is called `{name}` (option --measure {name})",
                notes=(f"measurements here: {', '.join(known)}",),
                helps=near_help(name, known),
            )
    return replace(graded, rows=rows)


def changed_lets(graded: Graded, lets: Mapping[str, object], changes: Changes, findings: Findings) -> dict[str, Value]:
    """What the knitter puts in place of `let`s."""
    found: dict[str, Value] = {}
    for name, text in changes.measures.items():
        if name in lets and name not in graded.rows:
            read = _amount(name, text, findings)
            if read is not None and abs(read[0]) > LARGEST:
                _refuse_measure(name, text, "it is more than any garment has", findings)
            elif read is not None:
                found[name] = Value((read[0],) * len(graded.sizes), read[1], NOWHERE)
    return found


def fitting(changed: Mapping[str, Value], written: Scope, changes: Changes, findings: Findings) -> dict[str, Value]:
    """Those of the changed `let`s that stay a length where they were one, a number where they were one, as `written` knows them."""
    fits: dict[str, Value] = {}
    for name, value in changed.items():
        before = written.named(name, NOWHERE)
        if before is None or before.dimension == value.dimension:
            fits[name] = value
        else:
            _refuse_measure(name, changes.measures[name], f"`{name}` is {before.dimension.kind}", findings)
    return fits


def changed_fabrics(fabrics: Mapping[str, Fabric | None], changes: Changes, findings: Findings) -> dict[str, Fabric | None]:
    """The fabrics with the knitter's own tension: a swatch of 10 cm by 10 cm, its weight by area from the author's, the yarn to a
    stitch so that an area takes as much as before."""
    result = dict(fabrics)
    for name, text in changes.tensions.items():
        if name not in fabrics:
            findings.tell(
                "unknown-name",
                f"no fabric is called `{name}` (option --tension {name})",
                notes=(f"fabrics here: {', '.join(fabrics)}",),
                helps=near_help(name, fabrics),
            )
            continue
        counts = read_tension(text)
        if counts is None:
            findings.tell(
                "bad-tension",
                f"`{text}` is no tension (option --tension {name})",
                helps=("write stitches and rows to 10 cm, such as `17 st 24 rows`",),
            )
            continue
        fabric = fabrics[name]
        area = fabric.swatch_width_cm * fabric.swatch_height_cm if fabric else 1.0
        density = fabric.stitches_per_cm * fabric.rows_per_cm if fabric else 1.0
        result[name] = fabric and replace(
            fabric,
            swatch_stitches=counts[0],
            swatch_rows=counts[1],
            swatch_width_cm=SWATCH_CM,
            swatch_height_cm=SWATCH_CM,
            swatch_grams=fabric.swatch_grams * SWATCH_CM * SWATCH_CM / area,
            loop_cm=fabric.loop_cm * density / (counts[0] * counts[1] / SWATCH_CM**2),
            as_written=fabric,
            origin=Origin(f"tension {name}", NOWHERE),
        )
    return result


def read_tension(text: str) -> tuple[float, float] | None:
    """(stitches, rows) to 10 cm of "17 st 24 rows"; None when it is not that, or no tension a bed can knit."""
    found = TENSION.fullmatch(text)
    if found is None:
        return None
    stitches = convert(float(found[1]), found[2])
    rows = convert(float(found[3]), found[4])
    if stitches is None or rows is None or stitches[1] != STITCHES or rows[1] != ROWS:
        return None
    if not (FEWEST_PER_CM <= stitches[0] / SWATCH_CM <= MOST_PER_CM and FEWEST_PER_CM <= rows[0] / SWATCH_CM <= MOST_PER_CM):
        return None
    return stitches[0], rows[0]


FEWEST_PER_CM = 0.3
MOST_PER_CM = 10.0
"""Stitches or rows to the centimetre: the finest beds reach about 4 stitches and 6 rows, the coarsest hardly 1."""


def _amount(name: str, text: str, findings: Findings) -> tuple[float, Dimension] | None:
    found = AMOUNT.fullmatch(text)
    if found is not None:
        if not found[2]:
            return float(found[1]), NUMBER
        read = convert(float(found[1]), found[2])
        if read is not None:
            return read
    _refuse_measure(name, text, "write a number and its unit, such as 104 cm", findings)
    return None


def _refuse_measure(name: str, text: str, help_: str, findings: Findings) -> None:
    findings.tell("bad-measure", f"`{text}` cannot stand for `{name}` (option --measure {name})", helps=(help_,))
