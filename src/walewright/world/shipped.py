"""What comes with the compiler: grammars, patterns, and the data files inside the package."""

from __future__ import annotations

import hashlib
import os
import sys
from collections.abc import Callable
from contextlib import suppress
from importlib.util import cache_from_source, find_spec
from pathlib import Path
from typing import Literal

ShippedKind = Literal["grammar", "patterns"]

_PACKAGE = Path(__file__).resolve().parent.parent


def _shipped_roots(kind: ShippedKind) -> tuple[Path, ...]:
    # In a wheel the folders lie inside the package; in a checkout they lie beside src/.
    return (_PACKAGE / "_shipped" / kind, _PACKAGE.parent.parent / kind)


def shipped_text(kind: ShippedKind, relative: str) -> str:
    """Text of the shipped file `relative` (such as "tables/women.csv") of the folder `kind`.

    Raises FileNotFoundError when this installation does not have it; names that an author wrote are to be looked up in
    `shipped_names` first.
    """
    for root in _shipped_roots(kind):
        path = root / relative
        if path.is_file():
            return path.read_text(encoding="utf-8")
    raise FileNotFoundError(f"the installation lacks {kind}/{relative}")


def shipped_path(kind: ShippedKind, relative: str) -> Path:
    """Where that file lies, for who reads it as an author's. Raises FileNotFoundError as `shipped_text` does."""
    for root in _shipped_roots(kind):
        if (root / relative).is_file():
            return root / relative
    raise FileNotFoundError(f"the installation lacks {kind}/{relative}")


def shipped_names(kind: ShippedKind, folder: str = "", suffix: str = "") -> tuple[str, ...]:
    """File names ending in `suffix` right inside `kind`/`folder`, sorted; empty when there is no such folder."""
    for root in _shipped_roots(kind):
        place = root / folder
        if place.is_dir():
            return tuple(sorted(p.name for p in place.iterdir() if p.is_file() and p.name.endswith(suffix)))
    return ()


def package_text(relative: str) -> str:
    """Text of a data file inside the package itself, such as "sheet/themes/booklet.css". Raises FileNotFoundError."""
    return (_PACKAGE / relative).read_text(encoding="utf-8")


def library_text(package: str, relative: str) -> str:
    """Text of a file inside an installed library, which is not loaded for it. Raises FileNotFoundError."""
    found = find_spec(package)
    if found is None or not found.submodule_search_locations:
        raise FileNotFoundError(f"there is no {package}")
    return Path(found.submodule_search_locations[0], relative).read_text(encoding="utf-8")


def package_path(relative: str) -> Path:
    """Folder or file inside the package, for libraries that want a path (template loaders, font files)."""
    return _PACKAGE / relative


def compiled_beside(relative: str) -> Path | None:
    """The folder in which the interpreter keeps what it compiled of the package's files beside `relative`, for whatever else is
    compiled of them. None where it keeps nothing, or may not write there."""
    if sys.dont_write_bytecode:
        return None
    folder = Path(cache_from_source(str(package_path(relative)))).parent
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError:
        return None
    return folder if os.access(folder, os.W_OK) else None


def kept_beside(relative: str, name: str, make: Callable[[], bytes]) -> bytes:
    """What `make` makes, from where it was kept under `name` beside `relative` (`compiled_beside`); made, and kept where it can be,
    when it is not there or is no longer whole."""
    folder = compiled_beside(relative)
    if folder is None:
        return make()
    path = folder / name
    with suppress(OSError):
        check, data = (kept := path.read_bytes())[:32], kept[32:]
        if check == hashlib.sha256(data).digest():
            return data
    data = make()
    with suppress(OSError):
        # Whoever reads it meanwhile finds all of it or nothing.
        aside = path.with_suffix(f".{os.getpid()}")
        aside.write_bytes(hashlib.sha256(data).digest() + data)
        aside.replace(path)
    return data
