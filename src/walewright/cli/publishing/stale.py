"""Which products have to be made, and why each."""

from __future__ import annotations

import os
from collections.abc import Mapping

from walewright import world
from walewright.catalogue.model import Catalogue, Making, Product
from walewright.cli.publishing.inputs import NAMES, PROGRAM, PYTHON, Inputs, asked
from walewright.cli.publishing.records import KeptProduct, Record
from walewright.record import record
from walewright.report.said import Said, said


@record
class Stale:
    """What has to be made of a making: each product with the reasons."""

    making: Making
    products: tuple[tuple[Product, tuple[Said, ...]], ...]


def stale(catalogue: Catalogue, making: Making, record: Record | None, damaged: bool, inputs: Inputs, into: str) -> Stale:
    """The products of a making that have to be made, none where all are as they would be made; `damaged`: something is kept of it
    that cannot be read."""
    if record is not None and record.garment is None and not _changed(record.depends, inputs):
        # A source that only defines.
        return Stale(making, ())
    known = {one.file: one for one in record.products} if record is not None else {}
    found = []
    for product in making.products:
        reasons = _reasons(catalogue, making, product, known.get(product.file), inputs, into)
        if reasons:
            found.append((product, (said("why-damaged"),) if damaged and product.file not in known else reasons))
    return Stale(making, tuple(found))


def _reasons(
    catalogue: Catalogue, making: Making, product: Product, kept: KeptProduct | None, inputs: Inputs, into: str
) -> tuple[Said, ...]:
    if kept is None or kept.made.product.format != product.format:
        return (said("why-new"),)
    now = asked(catalogue, making, product)
    before = {name: value for name, value in kept.depends.items() if name.startswith("asked:")}
    differ = sorted(name for name in {*now, *before} if now.get(name) != before.get(name))
    of_files = _changed({name: value for name, value in kept.depends.items() if name not in before}, inputs)
    reasons = (*(said("why-asked", name=name.partition(":")[2]) for name in differ), *of_files)
    if reasons:
        return reasons
    there = world.file_fingerprint(os.path.join(into, product.file))
    if there == kept.made.sha256:
        return ()
    return (said("why-gone") if there == world.MISSING else said("why-by-hand"),)


def _changed(depends: Mapping[str, str], inputs: Inputs) -> tuple[Said, ...]:
    """What of all that something depends on is otherwise now."""
    return tuple(_told(name, value, inputs.now(name)) for name, value in depends.items() if inputs.now(name) != value)


def _told(name: str, before: str, now: str) -> Said:
    kind, _, rest = name.partition(":")
    if name == PROGRAM:
        return said("why-program")
    if name == NAMES:
        return said("why-names")
    if name == PYTHON:
        return said("why-package", name=PYTHON, before=before, now=now)
    if kind == "package":
        return said("why-package", name=rest, before=before, now=now)
    return said("why-file", name=rest) if now != world.MISSING else said("why-file-gone", name=rest)
