"""The only door to files, shipped data, fonts and the date.

Everything else in the compiler is a pure function of values, so that a build can be repeated and tested without a
machine's files. Faults of the author's files come back as diagnostics; only a missing shipped file is an exception,
because then the installation itself is broken.
"""

from __future__ import annotations

import datetime
import os
import tempfile
from collections.abc import Mapping
from pathlib import Path
from typing import Literal

from walewright.report.model import Diagnostic, Label, Span

ShippedKind = Literal["grammar", "patterns"]

LARGEST_SOURCE = 2 * 1024 * 1024
"""Bytes. A garment is some kilobytes; a file beyond this is something else, given by mistake."""

_PACKAGE = Path(__file__).resolve().parent


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


def shipped_names(kind: ShippedKind, folder: str = "", suffix: str = "") -> tuple[str, ...]:
    """File names ending in `suffix` right inside `kind`/`folder`, sorted; empty when there is no such folder."""
    for root in _shipped_roots(kind):
        place = root / folder
        if place.is_dir():
            return tuple(sorted(p.name for p in place.iterdir() if p.is_file() and p.name.endswith(suffix)))
    return ()


def package_text(relative: str) -> str:
    """Text of a data file inside the package itself, such as "pages/sheet.css". Raises FileNotFoundError."""
    return (_PACKAGE / relative).read_text(encoding="utf-8")


def package_path(relative: str) -> Path:
    """Folder or file inside the package, for libraries that want a path (template loaders, font files)."""
    return _PACKAGE / relative


def read_source(path: str) -> tuple[str | None, Diagnostic | None]:
    """Text of the author's file, or the diagnostic that says why there is none. Line ends come back as "\\n"."""
    place = Path(path)
    try:
        if place.is_dir():
            return None, _fault(path, "source-is-folder", "this is a folder, not a source", "name a file in it that ends in .wale")
        size = place.stat().st_size
        if size > LARGEST_SOURCE:
            return None, _fault(
                path,
                "source-too-large",
                f"the file has {size / 1e6:.1f} MB; a source may have {LARGEST_SOURCE / 1e6:.1f} MB",
                "check that the right file was named",
            )
        data = place.read_bytes()
    except FileNotFoundError:
        return None, _fault(path, "source-missing", "there is no such file", "check the name and the folder")
    except (OSError, ValueError) as fault:
        return None, _fault(path, "source-unreadable", f"the file cannot be read: {_reason(fault)}", "check its permissions")
    if b"\0" in data:
        return None, _fault(path, "source-not-text", "this is a binary file, not a text", "name a text file that ends in .wale")
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as fault:
        return None, _fault(
            path,
            "source-not-text",
            f"the text is not UTF-8: byte {fault.start + 1} fits no letter",
            "save the file as UTF-8 in your editor",
        )
    return text.replace("\r\n", "\n").replace("\r", "\n"), None


def write_atomic(path: str, data: bytes) -> Diagnostic | None:
    """Put `data` at `path` in one move, so that no reader ever meets half a file. The folder is made if it is missing."""
    return write_together({path: data})


def write_together(files: Mapping[str, bytes]) -> Diagnostic | None:
    """Write several files (path -> bytes): all of them are written aside first, so that a full disk or a forbidden folder
    leaves every old file as it was. Each then takes its place in one move."""
    aside: list[tuple[str, str]] = []
    try:
        for path, data in files.items():
            try:
                aside.append((_write_aside(Path(path), data), path))
            except OSError as fault:
                return _unwritable(path, fault)
        while aside:
            temporary, path = aside[0]
            try:
                os.replace(temporary, path)
            except OSError as fault:
                return _unwritable(path, fault)
            del aside[0]
    finally:
        for temporary, _ in aside:
            Path(temporary).unlink(missing_ok=True)
    return None


def _write_aside(target: Path, data: bytes) -> str:
    target.parent.mkdir(parents=True, exist_ok=True)
    if target.is_dir():
        raise IsADirectoryError(None, "a folder has its name")
    handle, temporary = tempfile.mkstemp(prefix=f".{target.name}.", dir=target.parent)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
        # mkstemp makes private files; what is built is for everybody the folder is for.
        os.chmod(temporary, 0o666 & ~_umask())
    except OSError:
        Path(temporary).unlink(missing_ok=True)
        raise
    return temporary


def _unwritable(path: str, fault: OSError) -> Diagnostic:
    return _fault(
        path,
        "output-unwritable",
        f"the file cannot be written: {_reason(fault)}",
        "choose another folder with --out, or free its permissions",
    )


def today() -> datetime.date:
    """Today, or the day of SOURCE_DATE_EPOCH where that is set, so that a build can be repeated byte for byte."""
    epoch = os.environ.get("SOURCE_DATE_EPOCH", "")
    if epoch.isascii() and epoch.isdigit():
        return datetime.datetime.fromtimestamp(int(epoch), tz=datetime.UTC).date()
    return datetime.date.today()


def _umask() -> int:
    mask = os.umask(0o022)
    os.umask(mask)
    return mask


def _reason(fault: OSError | ValueError) -> str:
    return (getattr(fault, "strerror", None) or str(fault)).lower()


def _fault(path: str, code: str, message: str, proposal: str) -> Diagnostic:
    return Diagnostic(code=code, message=message, labels=(Label(Span(path, 0, 0)),), helps=(proposal,))
