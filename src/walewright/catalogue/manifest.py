"""The manifest, `catalogue.json`: format 1. What was made, with fingerprints, and of what."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import asdict

from walewright import __version__, world
from walewright.catalogue.model import Catalogue, JsonObject, Product
from walewright.record import record

FORMAT = 1
"""Version of the document's shape: rises when a reader of the old shape could misunderstand the new one."""


@record
class MadeFile:
    """A product as it lies there: its form, its fingerprint and size, and on how many pages it lies."""

    product: Product
    sha256: str
    bytes: int
    pages: int


@record
class CataloguedGarment:
    """A source in a language, the fingerprints of the files that are its own, what is said about it, and its products."""

    source: str
    language: str
    files: Mapping[str, str]
    facts: JsonObject
    products: tuple[MadeFile, ...]


def schema() -> JsonObject:
    """The JSON Schema (draft 2020-12) of the document."""
    read: JsonObject = json.loads(world.package_text("catalogue/catalogue.schema.json"))
    return read


def manifest(catalogue: Catalogue, garments: Iterable[CataloguedGarment]) -> JsonObject:
    """The document of all that was made."""
    return {
        "format": FORMAT,
        "compiler": f"walewright {__version__}",
        "catalogue": catalogue.file.replace("\\", "/").rpartition("/")[2],
        "title": catalogue.title,
        "edition": catalogue.edition,
        "date": catalogue.date.isoformat(),
        "imprint": list(catalogue.imprint),
        "garments": [_garment(one) for one in garments],
    }


def manifest_bytes(document: JsonObject) -> bytes:
    """The document as UTF-8 JSON: keys sorted, the same bytes for the same products."""
    return (json.dumps(document, ensure_ascii=False, indent=1, sort_keys=True, allow_nan=False) + "\n").encode()


def _garment(one: CataloguedGarment) -> JsonObject:
    return {
        "source": one.source,
        "language": one.language,
        "files": dict(one.files),
        **one.facts,
        "products": [_product(made) for made in one.products],
    }


def _product(made: MadeFile) -> JsonObject:
    """A product; what its format does not depend on, or does not have, is not there."""
    form = {**asdict(made.product), "pages": made.pages}
    return {
        "sha256": made.sha256,
        "bytes": made.bytes,
        **{name: value for name, value in form.items() if value},
    }
