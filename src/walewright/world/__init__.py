"""world: the only door to files, shipped data, fonts and the date.

Everything else in the compiler is a pure function of values, so that a build can be repeated and tested without a
machine's files. Faults of the author's files come back as diagnostics; only a missing shipped file is an exception,
because then the installation itself is broken.

`shipped` is what comes with the compiler; `reading` takes sources in; `names` knows which names mean one file; `sets` puts
the files of a pattern in place, all or none; `rewriting` puts a source anew where it was; `dates` knows what day it is.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

from walewright.world.bindings import bound_beforehand
from walewright.world.names import SOURCE_SUFFIX, alike, is_source_name, source_behind, sources_known
from walewright.world.reading import LARGEST_SOURCE, Held, read_held, read_source
from walewright.world.shipped import (
    compiled_beside,
    kept_beside,
    library_text,
    package_path,
    package_text,
    shipped_names,
    shipped_path,
    shipped_text,
)

if TYPE_CHECKING:
    from walewright.world.beside import read_beside
    from walewright.world.dates import today
    from walewright.world.fingerprints import (
        MISSING,
        file_fingerprint,
        fingerprint,
        names_fingerprint,
        program_fingerprint,
        shipped_fingerprint,
        sources_below,
    )
    from walewright.world.keeping import forget, kept, small_file
    from walewright.world.libraries import loaded_by_name
    from walewright.world.pictures import read_picture
    from walewright.world.rewriting import rewrite
    from walewright.world.sets import settle, write_set
    from walewright.world.within import bytes_within, is_folder, text_within

__all__ = [
    "LARGEST_SOURCE",
    "MISSING",
    "SOURCE_SUFFIX",
    "Held",
    "alike",
    "bound_beforehand",
    "bytes_within",
    "compiled_beside",
    "file_fingerprint",
    "fingerprint",
    "forget",
    "is_folder",
    "is_source_name",
    "kept",
    "kept_beside",
    "library_text",
    "loaded_by_name",
    "names_fingerprint",
    "package_path",
    "package_text",
    "program_fingerprint",
    "read_beside",
    "read_held",
    "read_picture",
    "read_source",
    "rewrite",
    "settle",
    "shipped_fingerprint",
    "shipped_names",
    "shipped_path",
    "shipped_text",
    "small_file",
    "source_behind",
    "sources_below",
    "sources_known",
    "text_within",
    "today",
    "write_set",
]

LATER = {
    "bytes_within": "within",
    "is_folder": "within",
    **dict.fromkeys(("MISSING", "file_fingerprint", "fingerprint", "names_fingerprint"), "fingerprints"),
    **dict.fromkeys(("program_fingerprint", "shipped_fingerprint", "sources_below"), "fingerprints"),
    **dict.fromkeys(("forget", "kept", "small_file"), "keeping"),
    "loaded_by_name": "libraries",
    "read_beside": "beside",
    "today": "dates",
    "read_picture": "pictures",
    "rewrite": "rewriting",
    "settle": "sets",
    "text_within": "within",
    "write_set": "sets",
}
"""What not every command needs, to the module that has it: loaded when it is first asked for."""


def __getattr__(name: str) -> Any:
    if name not in LATER:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(f"{__name__}.{LATER[name]}"), name)
