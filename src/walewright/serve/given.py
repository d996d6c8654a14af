"""What is filled in, as what a knitter gives: fields of the form to fields of `design.Changes`, and back."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any

from walewright.design.reading.given import read_bed, read_measure, read_swatch, read_tension, read_yarn
from walewright.serve.model import Offer, OfferedFabric, OfferedRow, OfferedYarn, Posted

PLAIN = re.compile(r"\d+(?:[.,]\d+)?")
"""A number without a unit, as it is typed."""

SWATCH = (("swatch-st", "st"), ("swatch-rows", "rows"), ("swatch-wide", "cm"), ("swatch-high", "cm"), ("swatch-grams", "g"))
"""Fields of a swatch, in the order in which they are said, with their units."""
TENSION = (("st", "st"), ("rows", "rows"))


def names(offer: Offer) -> Iterator[str]:
    """The names of every field that the form has."""
    yield from ("size", "bed", "bed-needles", "bed-pitch", "bed-more")
    yield from (f"choose:{choice.name}" for choice in offer.choices)
    yield from (f"measure:{row.name}" for row in offer.rows)
    for fabric in offer.fabrics:
        yield from (f"{key}:{fabric.name}" for key, _ in (*TENSION, *SWATCH))
        yield f"dial:{fabric.name}"
    for yarn in offer.yarns:
        yield from (f"{key}:{yarn.name}" for key in ("yarn", "grams", "metres"))


def parted(offer: Offer, posted: Posted) -> tuple[dict[str, str], dict[str, str]]:
    """What was filled in for fields that the form has, and what for others: of an alternative that is not taken now."""
    there = set(names(offer))
    values = {name: text for name, text in posted.items() if name in there}
    return values, {name: text for name, text in posted.items() if name not in there and text.strip()}


def chosen(posted: Posted) -> dict[str, str]:
    """The alternatives taken, of whatever choices were posted."""
    return {name.partition(":")[2]: text for name, text in posted.items() if name.startswith("choose:") and text}


def fields(offer: Offer, values: Posted) -> dict[str, Any]:
    """As `design.Changes` has it by its fields; what is left empty is not given."""
    found: dict[str, Any] = {
        "sizes": (values.get("size") or offer.size,),
        "chosen": {c.name: values[f"choose:{c.name}"] for c in offer.choices if values.get(f"choose:{c.name}")},
        "measures": dict(_each((row.name, _measure(row, values)) for row in offer.rows)),
        "tensions": dict(_each((f.name, _counted(f, values, TENSION)) for f in offer.fabrics)),
        "swatches": dict(_each((f.name, _counted(f, values, SWATCH)) for f in offer.fabrics)),
        "dials": dict(_each((f.name, values.get(f"dial:{f.name}", "").strip()) for f in offer.fabrics)),
        "yarns": dict(_each((yarn.name, _yarn(yarn, values)) for yarn in offer.yarns)),
        "bed": _bed(values),
    }
    return {name: value for name, value in found.items() if value}


def _each(pairs: Iterator[tuple[str, str]]) -> Iterator[tuple[str, str]]:
    return ((name, text) for name, text in pairs if text)


def _with_unit(text: str, unit: str) -> str:
    text = text.strip()
    return f"{text.replace(',', '.')} {unit}".rstrip() if PLAIN.fullmatch(text) else text


def in_cm(text: str) -> str:
    """A length as it is typed, with its unit."""
    return _with_unit(text, "cm")


def _measure(row: OfferedRow, values: Posted) -> str:
    text = values.get(f"measure:{row.name}", "")
    return _with_unit(text, "") if row.counts else in_cm(text)


def _counted(fabric: OfferedFabric, values: Posted, keys: tuple[tuple[str, str], ...]) -> str:
    texts = ((values.get(f"{key}:{fabric.name}", ""), unit) for key, unit in keys)
    return " ".join(_with_unit(text, unit) for text, unit in texts if text.strip())


def _yarn(yarn: OfferedYarn, values: Posted) -> str:
    """What is not filled in of a yarn is as in the pattern; the label is only said where it is given."""
    label, grams, metres = (values.get(f"{key}:{yarn.name}", "").strip() for key in ("yarn", "grams", "metres"))
    if not (label or grams or metres):
        return ""
    ball = f"{_with_unit(grams or yarn.grams, 'g')} = {_with_unit(metres or yarn.metres, 'm')}"
    return f"{label}, {ball}" if label else ball


def _bed(values: Posted) -> str:
    """A shipped bed and facts of one's own. A name that is no bed's is refused where beds are read; a file it can never be."""
    facts = (("needles", _with_unit(values.get("bed-needles", ""), "")), ("pitch", _with_unit(values.get("bed-pitch", ""), "mm")))
    said = [f"{key}={text}" for key, text in facts if text]
    return ", ".join(part for part in (values.get("bed", "").strip(), *said, values.get("bed-more", "").strip()) if part)


# ----------------------------------------------------------------- back into the form


def filled(remembered: Mapping[str, Any]) -> dict[str, str]:
    """Fields of the form from those of `design.Changes`. What does not read stands in the first field of its kind, to be seen."""
    found = {"size": next(iter(remembered.get("sizes") or ()), "")}
    found |= {f"choose:{name}": text for name, text in remembered.get("chosen", {}).items()}
    found |= {f"measure:{name}": _length(text) for name, text in remembered.get("measures", {}).items()}
    found |= {f"dial:{name}": text for name, text in remembered.get("dials", {}).items()}
    for name, text in remembered.get("tensions", {}).items():
        found |= _tension_fields(name, text)
    for name, text in remembered.get("swatches", {}).items():
        found |= _swatch_fields(name, text)
    for name, text in remembered.get("yarns", {}).items():
        found |= _yarn_fields(name, text)
    found |= _bed_fields(remembered.get("bed", ""))
    return {name: text for name, text in found.items() if text}


def _length(text: str) -> str:
    cm = read_measure(text)
    return text if cm is None else f"{round(cm, 4):g}"


def _tension_fields(name: str, text: str) -> dict[str, str]:
    read = read_tension(text)
    if read is None:
        return {f"st:{name}": text}
    return {f"st:{name}": f"{read.stitches:g}", f"rows:{name}": f"{read.rows:g}"}


def _swatch_fields(name: str, text: str) -> dict[str, str]:
    read = read_swatch(text)
    if read is None:
        return {f"swatch-st:{name}": text}
    numbers = (read.stitches, read.rows, read.width, read.height, *((read.weight,) if read.weight is not None else ()))
    return {f"{key}:{name}": f"{number.value:g}" for (key, _), number in zip(SWATCH, numbers, strict=False)}


def _yarn_fields(name: str, text: str) -> dict[str, str]:
    read = read_yarn(text)
    if read is None or read.length is None:
        return {f"yarn:{name}": text}
    amounts = (("grams", "g", read.weight), ("metres", "m", read.length))
    said = {f"{key}:{name}": f"{n.value:g}" + ("" if n.unit == unit else f" {n.unit}") for key, unit, n in amounts}
    return {f"yarn:{name}": read.label or "", **said}


def _bed_fields(text: str) -> dict[str, str]:
    read = read_bed(text)
    if read is None:
        return {"bed-more": text}
    found, more = {"bed": read.name}, []
    for part in text.split(",")[1 if read.name else 0 :]:
        key, _, value = (one.strip() for one in part.partition("="))
        if key == "needles" and "bed-needles" not in found:
            found["bed-needles"] = value
        elif key == "pitch" and "bed-pitch" not in found:
            found["bed-pitch"] = value.removesuffix("mm").strip()
        else:
            more.append(part.strip())
    return {**found, "bed-more": ", ".join(more)}
