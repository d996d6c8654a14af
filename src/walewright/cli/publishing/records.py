"""What is kept of each making beside its products: which files were made, of what, and what is said about the garment.

A record is JSON, with a fingerprint of itself: one that is cut short or changed counts for nothing, and what it described is made
again. As many are kept as the catalogue has makings, each of at most `MOST` bytes.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import asdict, field
from typing import Any

from walewright import world
from walewright.catalogue.manifest import MadeFile
from walewright.catalogue.model import JsonObject, Product
from walewright.record import record

FOLDER = ".walewright-kept"
SUFFIX = ".json"
FORMAT = 2
MOST = 4 * 1024 * 1024
"""Bytes of a record: a garment of many products has some tens of thousands."""


@record
class KeptProduct:
    """A file that was made, and what all that it depends on was."""

    made: MadeFile
    depends: Mapping[str, str]

    @property
    def file(self) -> str:
        """What it is called in the folder."""
        return self.made.product.file


@record
class Record:
    """What was made in one making. `garment` is what is said about it; None for a source that only defines. `depends`: what the
    compiled garment depends on."""

    making: str
    garment: JsonObject | None
    depends: Mapping[str, str]
    products: tuple[KeptProduct, ...] = field(default=())


def record_name(making: str) -> str:
    """What the record of a making is called in the folder."""
    return world.fingerprint(making.encode())[:32] + SUFFIX


def record_bytes(record: Record) -> bytes:
    """A record as it is kept."""
    told: JsonObject = {
        "making": record.making,
        "garment": record.garment,
        "depends": dict(record.depends),
        "products": [{**asdict(one.made), "depends": dict(one.depends)} for one in record.products],
    }
    return _text({"format": FORMAT, "check": world.fingerprint(_text(told)), "record": told})


def record_of(data: bytes) -> Record | None:
    """The record in the bytes of a file; None where they are damaged, or of another format."""
    try:
        whole = json.loads(data)
        told = whole["record"]
        if whole["format"] != FORMAT or whole["check"] != world.fingerprint(_text(told)):
            return None
        return Record(told["making"], told["garment"], told["depends"], tuple(_product(**one) for one in told["products"]))
    except (ValueError, KeyError, TypeError, RecursionError):
        return None


def _product(product: JsonObject, depends: JsonObject, **made: Any) -> KeptProduct:
    return KeptProduct(MadeFile(Product(**product), **made), depends)


def _text(value: JsonObject) -> bytes:
    return json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":")).encode()


def records(into: str) -> tuple[dict[str, Record], frozenset[str]]:
    """The records of a folder of products by their makings, and the names of all files that are kept there, damaged ones too."""
    found: dict[str, Record] = {}
    files = world.kept(folder_of(into), MOST, SUFFIX)
    for name, data in files.items():
        record = record_of(data)
        if record is not None and record_name(record.making) == name:
            found[record.making] = record
    return found, frozenset(files)


def folder_of(into: str) -> str:
    """Where what is kept of the products in `into` lies."""
    return f"{into}/{FOLDER}" if into else FOLDER
