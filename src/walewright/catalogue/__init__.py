"""catalogue: what a publisher issues together: the file that says it, what is made of it, and what is said of what was made.

catalogue, faults = catalogue.read("spring.toml", text, known)
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from walewright.catalogue.facts import garment_facts
    from walewright.catalogue.manifest import manifest_bytes, schema
    from walewright.catalogue.reading import read
    from walewright.catalogue.shelf import shelf

__all__ = ["garment_facts", "manifest_bytes", "read", "schema", "shelf"]

_WHERE = {
    "garment_facts": "facts",
    "manifest_bytes": "manifest",
    "read": "reading",
    "schema": "manifest",
    "shelf": "shelf",
}


def __getattr__(name: str) -> Any:
    """What is asked for, loaded then: a run in which nothing has changed draws nothing."""
    if name not in _WHERE:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(f"{__name__}.{_WHERE[name]}"), name)
