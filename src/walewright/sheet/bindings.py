"""The renderer's declarations of the C functions that it calls, compiled once for all starts.

The renderer declares them as C text, which cffi parses at each start; and it reads the name of a type anew at each call. What cffi
calls its out-of-line mode does both beforehand, for the same text (https://cffi.readthedocs.io/en/stable/cdef.html, "Preparing and
distributing modules"). Where the renderer no longer declares them in one text of its own, it is loaded as it is.
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

from walewright import world

DECLARED = re.compile(r"^ffi\.cdef\('''(.*?)'''\)$", re.MULTILINE | re.DOTALL)
"""Where the renderer declares what it calls, in its module `BINDINGS`."""

BINDINGS = "weasyprint.text.ffi"


@contextmanager
def bound_beforehand() -> Iterator[None]:
    """While the renderer is imported for the first time: its bindings take what was compiled."""
    made = None if BINDINGS in sys.modules else _bound()
    if made is None:
        yield
        return
    import cffi

    parsing = cffi.FFI

    def chosen(*given: Any, **named: Any) -> Any:
        asks = sys._getframe(1).f_globals.get("__name__")
        return made if asks == BINDINGS else parsing(*given, **named)

    cffi.FFI = chosen
    try:
        yield
    finally:
        cffi.FFI = parsing


def declared() -> str | None:
    """The one text in which the renderer declares all that it calls; None where it has another way."""
    with suppress(FileNotFoundError):
        texts = DECLARED.findall(world.library_text("weasyprint", "text/ffi.py"))
        return texts[0] if len(texts) == 1 else None
    return None


def _bound() -> Any:
    """Functions and types of that text, as an object that cffi makes of what was compiled; None where it cannot be had."""
    text = declared()
    if text is None:
        return None
    import _cffi_backend
    import cffi

    class Bound(_cffi_backend.FFI):  # type: ignore[misc]
        def cdef(self, *_: Any, **__: Any) -> None:
            """All that would be declared is."""

    written_for = hashlib.sha256(f"{cffi.__version__} {sys.version} {text}".encode()).hexdigest()[:16]
    with suppress(cffi.CDefError, cffi.VerificationError, OSError):
        code = world.kept_beside("sheet/bindings.py", f"bindings.{written_for}", lambda: _compiled(text))
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
    return marshal.dumps(compile(written.replace("import _cffi_backend\n", ""), BINDINGS, "exec"))
