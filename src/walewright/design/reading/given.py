"""What a knitter gives, from its text: a tension, a swatch, a measurement, a dial, a yarn, a bed. The one place where these texts
are read.

A text becomes the words that a source would have in its place, so that what can be wrong with it is looked for, and told, in
the same place for both. None is a text that does not read; whether what it says is possible is asked later.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping

from walewright.design.reading.units import LENGTH, MASS, NUMBER, ROWS, STITCHES, Dimension, convert
from walewright.record import record
from walewright.source import syntax

AMOUNT = re.compile(r"\s*(-?\d+(?:\.\d+)?)\s*([a-z%]*)\s*")
BETWEEN = re.compile(r"(?:,|=|\bby\b|\band\b|\bx\b)")
COUNTED = re.compile(r"(\d+(?:\.\d+)?)\s*([a-z]+)")
DIAL = re.compile(r"\w[\w.]*")
"""As a source has it: the grammar's TENSION."""
BALL = re.compile(
    r"(?:(.*),)?\s*(\d+(?:\.\d+)?\s*[a-z]+)\s*(?:=\s*(\d+(?:\.\d+)?\s*[a-z]+)|of\s+(\S+)\s+([A-Za-z]+))\s*", re.DOTALL
)
HAD = re.compile(r"dial|(?:edge|starts|crosses|without)(?:[ _][a-z]+)+")
"""Facts of a bed that it has or has not, without a number: the first of them says what of."""
MISSING = re.compile(r"\s*missing\s*=\s*([LR] ?[0-9]+(?:\s+[LR] ?[0-9]+)*)\s*")
PLATES = re.compile(r"\s*plates\s*=\s*(\w[\w.]*(?:\s+\w[\w.]*)*)\s*")
NAME = re.compile(r"[^\W\d]\w*")
LONGEST_LABEL = 100
"""Letters of a yarn's label: more does not fit into a line of the page."""


@record
class TensionCounts:
    """Stitches and rows to 10 cm."""

    stitches: float
    rows: float


@record
class Ball:
    """A yarn's label (None: as in the source) and ball."""

    label: str | None
    weight: syntax.Number
    length: syntax.Number | None
    count: syntax.YarnCount | None


@record
class OwnBed:
    """A shipped bed by name (empty: the source's), with facts of its own."""

    name: str
    facts: tuple[syntax.MachineFact, ...]


def read_tension(text: str) -> TensionCounts | None:
    """ "17 st 24 rows", both to 10 cm."""
    found = tuple(_counted(text))
    kinds = [dimension for _, dimension in found]
    return TensionCounts(found[0][0], found[1][0]) if kinds == [STITCHES, ROWS] and _is_counted(text) else None


def read_swatch(text: str) -> syntax.Swatch | None:
    """ "40 st 60 rows 23.5 cm 21 cm 28 g": width before height; the weight may be left out."""
    found = tuple(_counted(text))
    kinds = [dimension for _, dimension in found]
    if kinds[:4] != [STITCHES, ROWS, LENGTH, LENGTH] or kinds[4:] not in ([], [MASS]) or not _is_counted(text):
        return None
    units = ("stitches", "rows", "cm", "cm", "g")
    stitches, rows, width, height, *weight = (syntax.Number(v, u) for (v, _), u in zip(found, units, strict=False))
    return syntax.Swatch(stitches, rows, width, height, weight[0] if weight else None)


def read_measure(text: str) -> float | None:
    """A length in cm."""
    found = AMOUNT.fullmatch(text)
    read = convert(float(found[1]), found[2]) if found and found[2] else None
    return read[0] if read is not None and read[1] == LENGTH else None


def read_count(text: str) -> syntax.Number | None:
    """A number without a unit, of stitches, of rows or a share: "7", "4 stitches", "80 %"."""
    found = AMOUNT.fullmatch(text)
    if found is None:
        return None
    read = convert(1.0, found[2]) if found[2] else (1.0, NUMBER)
    counts = read is not None and read[1] in (STITCHES, ROWS, NUMBER)
    return syntax.Number(float(found[1]), found[2] or None) if counts else None


def read_row(text: str) -> float | syntax.Number | None:
    """What is given in place of a row of the sizes: a length in cm, or a count."""
    cm = read_measure(text)
    return cm if cm is not None else read_count(text)


def read_dial(text: str) -> str | None:
    """The dial's label, as a source has it: "6", "4.5", "4..", "T"."""
    return text.strip() if DIAL.fullmatch(text.strip()) else None


def read_yarn(text: str) -> Ball | None:
    """ "my wool, 50 g = 120 m", "50 g = 120 m" or "fine wool, 500 g of 2/28 Nm"."""
    found = BALL.fullmatch(text.strip())
    if found is None:
        return None
    label = found[1].strip() if found[1] is not None else None
    weight, length = (_number(part) if part else None for part in (found[2], found[3]))
    if weight is None or (found[3] and length is None) or label == "" or len(label or "") > LONGEST_LABEL or not _plain(label):
        return None
    return Ball(label, weight, length, syntax.YarnCount(found[4], found[5]) if found[4] else None)


def read_bed(text: str) -> OwnBed | None:
    """ "standard", "needles=180, pitch=4.5 mm" or "standard, needles=180"."""
    first, *others = (part.strip() for part in text.split(","))
    named = NAME.fullmatch(first) is not None and HAD.fullmatch(first) is None
    facts = [_fact(part) for part in (others if named else (first, *others))]
    read = tuple(f for f in facts if f is not None)
    return OwnBed(first if named else "", read) if len(read) == len(facts) else None


@record
class GivenWay:
    """How the values of one option are written."""

    read: Callable[[str], object | None]
    fault: str
    """The kind of the diagnostic for a text that does not read."""
    example: str
    """The key of its help that shows how such a text is written."""


WAYS: Mapping[str, GivenWay] = {
    "tension": GivenWay(read_tension, "bad-tension/unreadable", "tension-example"),
    "swatch": GivenWay(read_swatch, "bad-swatch", "swatch-example"),
    "measure": GivenWay(read_row, "bad-measure/unreadable", "measure-example"),
    "dial": GivenWay(read_dial, "bad-dial", "dial-example"),
    "yarn": GivenWay(read_yarn, "bad-ball", "ball-example"),
    "bed": GivenWay(read_bed, "bad-bed", "bed-example"),
}
"""How each option's value is read, and what is said of one that does not read."""


def _counted(text: str) -> Iterator[tuple[float, Dimension]]:
    for number, unit in COUNTED.findall(text):
        read = convert(float(number), unit)
        yield read if read is not None else (float(number), NUMBER)


def _is_counted(text: str) -> bool:
    """Whether the text is numbers with their units and what may stand between them, nothing else."""
    return not BETWEEN.sub(" ", COUNTED.sub(" ", text)).strip()


def _number(text: str) -> syntax.Number | None:
    found = AMOUNT.fullmatch(text)
    return syntax.Number(float(found[1]), found[2]) if found and found[2] else None


def _plain(label: str | None) -> bool:
    """Whether a label can stand on paper: no control characters."""
    return label is None or label.isprintable()


def _fact(text: str) -> syntax.MachineFact | None:
    if HAD.fullmatch(text):
        return syntax.MachineFact(text.replace("_", " "), ())
    missing = MISSING.fullmatch(text)
    if missing is not None:
        return syntax.MachineFact("missing", (), tuple(f"{s} {n}" for s, n in re.findall(r"([LR]) ?([0-9]+)", missing[1])))
    plates = PLATES.fullmatch(text)
    if plates is not None:
        return syntax.MachineFact("plates", (), tuple(plates[1].split()))
    key, equals, value = (part.strip() for part in text.partition("="))
    numbers = re.findall(r"\d+(?:\.\d+)?\s*(?:[a-z]+)?", value)
    read = tuple(
        syntax.Number(float(found[1]), found[2] or None) for found in (AMOUNT.fullmatch(n) for n in numbers) if found is not None
    )
    whole = not re.sub(r"\d+(?:\.\d+)?\s*(?:[a-z]+)?", "", value).strip()
    return syntax.MachineFact(key.replace("_", " "), read) if key and equals and read and whole else None
