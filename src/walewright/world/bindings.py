"""A package's declarations of the C functions that it calls, compiled once for all starts.

A package that declares them as C text has it parsed by cffi at each start, and the name of a type read anew at each call. What cffi
calls its out-of-line mode does both beforehand, for the same text (https://cffi.readthedocs.io/en/stable/cdef.html, "Preparing and
distributing modules"). A package that does not declare them in one text of one module is loaded as it is.
"""

from __future__ import annotations

import hashlib
import io
import marshal
import re
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager, redirect_stdout, suppress
from pathlib import Path
from types import SimpleNamespace
from typing import Any

from walewright.world.shipped import compiled_beside, kept_beside, library_text

DECLARED = re.compile(r"^ffi\.cdef\('''(.*?)'''\)$", re.MULTILINE | re.DOTALL)
"""Where a module declares what it calls."""

_OWN = "world/bindings.py"
"""What is compiled lies beside what the interpreter compiles of it."""


@contextmanager
def bound_beforehand(module: str) -> Iterator[None]:
    """While a package is imported for the first time whose `module` ("weasyprint.text.ffi") asks cffi for its bindings: they are of
    what was compiled."""
    made = None if module in sys.modules else _bound(module)
    if made is None:
        yield
        return
    import cffi

    parsing = cffi.FFI

    def chosen(*given: Any, **named: Any) -> Any:
        asks = sys._getframe(1).f_globals.get("__name__")
        return made if asks == module else parsing(*given, **named)

    cffi.FFI = chosen
    try:
        yield
    finally:
        cffi.FFI = parsing


def declared(module: str) -> str | None:
    """The one text in which it declares all that it calls; None where it has another way."""
    package, _, rest = module.partition(".")
    with suppress(FileNotFoundError):
        texts = DECLARED.findall(library_text(package, f"{rest.replace('.', '/')}.py"))
        return texts[0] if len(texts) == 1 else None
    return None


def _bound(module: str) -> Any:
    """Functions and types of that text, as an object that cffi makes of what was compiled; None where it cannot be had."""
    text = declared(module)
    # Compiled for one start only, they cost more than they spare.
    if text is None or compiled_beside(_OWN) is None:
        return None
    import _cffi_backend
    import cffi

    class Bound(_cffi_backend.FFI):  # type: ignore[misc]
        def cdef(self, *_: Any, **__: Any) -> None:
            """All that would be declared is."""

    written_for = hashlib.sha256(f"{cffi.__version__} {sys.version} {text}".encode()).hexdigest()[:16]
    with suppress(cffi.CDefError, cffi.VerificationError, OSError):
        code = kept_beside(_OWN, f"bindings.{written_for}", lambda: _compiled(text))
        made: dict[str, Any] = {"_cffi_backend": SimpleNamespace(FFI=Bound)}
        exec(marshal.loads(code), made)
        return made["ffi"]
    return None


def _compiled(text: str) -> bytes:
    """What cffi writes for `text`, as the interpreter's code."""
    import cffi

    parsed = cffi.FFI()
    parsed.cdef(text)
    parsed.set_source("bindings", None)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "bindings.py"
        # It says on the standard output what it writes.
        with redirect_stdout(io.StringIO()):
            parsed.emit_python_code(str(path))
        written = path.read_text(encoding="utf-8")
    return marshal.dumps(compile(written.replace("import _cffi_backend\n", ""), "bindings", "exec"))
