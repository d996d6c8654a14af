"""A knitter's figures as a small file that remembers them: JSON, by the names of the options that give the same."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from walewright import world
from walewright.cli.command_line import CommandLine
from walewright.record import record
from walewright.report.columns import named
from walewright.report.model import Diagnostic

SUFFIX = ".figures.json"
OPTION = "--from"
KIND, VERSION = "figures", 1
"""What the file says of itself under `walewright` and `version`."""

NAMED = {
    "choose": "chosen",
    "tension": "tensions",
    "swatch": "swatches",
    "measure": "measures",
    "yarn": "yarns",
    "dial": "dials",
}
"""Keys that have a value a name, and the field of `design.Changes` that each is."""

LONGEST = 400
"""Letters of a name or value: no option takes more that makes sense."""

OTHER_WAY = {"tensions": "swatches", "swatches": "tensions"}
"""Of these a fabric has one."""


@record
class Remembered:
    """`garment`: the name of the source that they were given for; `fields` as `design.Changes` has them, without those where
    nothing is given."""

    garment: str
    fields: Mapping[str, Any]


def written(garment: str, fields: Mapping[str, Any]) -> str:
    """The file's text. Read again, it gives the same fields."""
    said: dict[str, Any] = {"walewright": KIND, "version": VERSION, "garment": garment}
    if fields.get("sizes"):
        said["size"] = list(fields["sizes"])
    said |= {key: dict(fields[attribute]) for key, attribute in NAMED.items() if fields.get(attribute)}
    if fields.get("bed"):
        said["bed"] = fields["bed"]
    return json.dumps(said, ensure_ascii=False, indent=1) + "\n"


def read(text: str) -> Remembered | str:
    """What such a text remembers; or, of another text, the key at which it cannot be understood (empty: it is no such file)."""
    try:
        said = json.loads(text)
    except (ValueError, RecursionError):
        return ""
    if not isinstance(said, dict) or said.get("walewright") != KIND:
        return ""
    if said.get("version") != VERSION or isinstance(said["version"], bool):
        return "version"
    known = {"walewright", "version", "garment", "size", "bed", *NAMED}
    unfit = next((key for key, value in said.items() if key not in known or not _fits(key, value)), None)
    if unfit is not None:
        return unfit[:LONGEST] or "?"
    fields: dict[str, Any] = {attribute: said[key] for key, attribute in NAMED.items() if said.get(key)}
    if said.get("size"):
        fields["sizes"] = tuple(said["size"])
    if said.get("bed"):
        fields["bed"] = said["bed"]
    return Remembered(said.get("garment", ""), fields)


def _fits(key: str, value: object) -> bool:
    if key in NAMED:
        return isinstance(value, dict) and all(_plain(name) and name and _plain(text) and text for name, text in value.items())
    if key == "size":
        return isinstance(value, list) and all(_plain(name) and name for name in value)
    return key in ("walewright", "version") or _plain(value)


def _plain(value: object) -> bool:
    return isinstance(value, str) and len(value) <= LONGEST and (not value or value.isprintable())


def from_file(line: CommandLine, file: str, faults: list[Diagnostic]) -> Mapping[str, Any]:
    """The fields that the file remembers; what is wrong with it goes to `faults`."""
    text, fault = world.read_source(file)
    if text is None:
        faults += (fault,) if fault is not None else ()
        return {}
    found = read(text)
    if isinstance(found, Remembered):
        return found.fields
    fault = line.fault(
        "figures-file/unfit" if found else "figures-file/other", "keep-anew", at=(file, OPTION), file=named(file), key=named(found)
    )
    faults.append(fault)
    return {}


def over(remembered: Mapping[str, Any], given: Mapping[str, Any]) -> dict[str, Any]:
    """What is given by hand, and all that is remembered besides: of two figures for one thing the one given by hand holds."""
    both = dict(given)
    for attribute, values in remembered.items():
        if attribute in ("sizes", "bed"):
            own = given.get(attribute) or (attribute == "bed" and given.get("own_bed"))
            both[attribute] = given.get(attribute) if own else values
        else:
            mine = given.get(attribute) or {}
            instead = given.get(OTHER_WAY.get(attribute, "")) or {}
            both[attribute] = {name: text for name, text in values.items() if name not in instead} | mine
    return both
