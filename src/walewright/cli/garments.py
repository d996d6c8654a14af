"""The garments that the page offers: those that are shipped, those of a folder, or the sources that were named."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from pathlib import PurePath

from walewright import world
from walewright.serve.model import ServedGarment

PATTERN = re.compile(r"^\s*pattern\b", re.MULTILINE)
"""What a source has that is a garment, and one that only defines things for others has not."""


def shipped_garments() -> tuple[ServedGarment, ...]:
    """Every garment of this installation."""
    names = world.shipped_names("patterns", "", world.SOURCE_SUFFIX)
    return _named(str(world.shipped_path("patterns", name)) for name in names)


def garments_of(places: Sequence[str]) -> tuple[ServedGarment, ...]:
    """The sources among `places`, and those right inside the folders among them. A link that leads out of such a folder is left
    out."""
    return _named(file for place in places for file in (_inside(place) if world.is_folder(place) else (place,)))


def _inside(folder: str) -> Iterator[str]:
    for file in sorted(world.sources_known((), (folder,)).values()):
        text, _, _ = world.text_within(folder, PurePath(file).name)
        if text is not None and PATTERN.search(text):
            yield file


def _named(files: Iterable[str]) -> tuple[ServedGarment, ...]:
    """Each by the name of its file; of several that are called alike, the later ones have a number."""
    found: dict[str, ServedGarment] = {}
    for file in files:
        stem = PurePath(file).stem
        tried = (stem, *(f"{stem}-{number}" for number in range(2, len(found) + 3)))
        name = next(name for name in tried if name not in found)
        found[name] = ServedGarment(name, file)
    return tuple(found.values())
