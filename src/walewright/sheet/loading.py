"""The page renderer, loaded: only those who print wait for it."""

from __future__ import annotations

from typing import Any

from walewright import world
from walewright.sheet.remembered import remember

LIBRARIES = ("libgobject-2.0.so.0", "libpango-1.0.so.0", "libharfbuzz.so.0", "libfontconfig.so.1", "libpangoft2-1.0.so.0")
"""What the renderer cannot do without, as the system's loader knows it on Linux."""


def renderer() -> Any:
    """The renderer's package. Its first import takes half a second.

    Raises OSError where a library of `LIBRARIES` is not installed."""
    with world.loaded_by_name(LIBRARIES), world.bound_beforehand("weasyprint.text.ffi"):
        import weasyprint
    remember()
    return weasyprint
