"""What is written beside the products: the manifest, and the shelf to leaf through. They are written together, and only where they
would differ from what is there."""

from __future__ import annotations

import json
import os
from collections.abc import Collection, Sequence

from walewright import languages, world
from walewright.catalogue.manifest import CataloguedGarment, manifest, manifest_bytes
from walewright.catalogue.model import MANIFEST, SHELF, Catalogue
from walewright.cli.publishing.inputs import PROGRAM, Inputs
from walewright.cli.publishing.records import KeptProduct, Record, folder_of
from walewright.report.model import Diagnostic

KEPT = "shelf.json"
"""Where it is kept of what the shelf was made."""

LARGEST = 64 * 1024 * 1024
"""Bytes of a manifest that is compared with; a larger one is written anew."""


def tell_of_all(
    catalogue: Catalogue, into: str, made: Sequence[Record], inputs: Inputs, failed: Collection[str]
) -> Diagnostic | None:
    """Write manifest and shelf of all records, those of makings that `failed` as far as their files are still there. Returns what
    kept them from it."""
    garments = [found for record in made if (found := _garment(catalogue, record, into, record.making in failed)) is not None]
    document = manifest(catalogue, garments)
    data = manifest_bytes(document)
    of = {"manifest": world.fingerprint(data), "program": inputs.now(PROGRAM)}
    before = _before(into)
    there = world.small_file(os.path.join(into, MANIFEST), LARGEST)
    if there == data and before == {**of, "shelf": world.file_fingerprint(os.path.join(into, SHELF))}:
        return None
    from walewright.catalogue.shelf import shelf

    page = shelf(document, languages.printed(catalogue.makings[0].language).guide).encode()
    fault = world.write_set(into, {MANIFEST: data, SHELF: page})
    kept = json.dumps({**of, "shelf": world.fingerprint(page)}, sort_keys=True).encode()
    return fault or world.write_set(folder_of(into), {KEPT: kept})


def _before(into: str) -> object:
    data = world.small_file(os.path.join(folder_of(into), KEPT), LARGEST)
    try:
        return json.loads(data) if data is not None else None
    except (ValueError, RecursionError):
        return None


def _garment(catalogue: Catalogue, record: Record, into: str, look: bool) -> CataloguedGarment | None:
    """What a record says; None where nothing is made of it. `look`: whether its files have to be looked at."""
    making = next(one for one in catalogue.makings if one.name == record.making)
    products = [one for one in record.products if not look or _is_there(into, one)]
    if record.garment is None or not products:
        return None
    files = {name.partition(":")[2]: value for name, value in record.depends.items() if name.startswith("file:")}
    return CataloguedGarment(making.source, making.language, files, record.garment, tuple(one.made for one in products))


def _is_there(into: str, one: KeptProduct) -> bool:
    return world.file_fingerprint(os.path.join(into, one.file)) == one.made.sha256
