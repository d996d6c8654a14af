"""A package's bindings, compiled once, are those that it would parse at each start."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from types import SimpleNamespace

import cffi
import pytest

from walewright.world.bindings import DECLARED, bound_beforehand, declared

RENDERER = "weasyprint.text.ffi"

PRINTED = """
import sys
from types import SimpleNamespace
from walewright.sheet import render
from walewright.world import bindings
if {parsed}:
    bindings.declared = lambda _: None
page = '<html lang="en"><head><title>A hat</title></head><body><h1>A hat</h1><p>Knit to RC <b>20</b>.</p></body></html>'
laid = render.on_paper(page, SimpleNamespace(date="2026-01-02"))
import weasyprint.text.ffi, cffi
print(type(weasyprint.text.ffi.ffi).__name__, cffi.FFI.__name__, len(laid.warnings), laid.data.hex())
"""


def printed(where: Path, parsed: bool) -> list[str]:
    """What kind of bindings there are, what cffi is left with, warnings, and the PDF."""
    environment = {**os.environ, "PYTHONPYCACHEPREFIX": str(where)}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    program = [sys.executable, "-W", "ignore", "-c", PRINTED.format(parsed=parsed)]
    return subprocess.run(program, capture_output=True, text=True, check=True, env=environment).stdout.split()


def test_the_renderer_declares_in_one_text() -> None:
    """A renderer that declares otherwise starts later, no more: how it does has to be looked up again."""
    text = declared(RENDERER)
    assert text is not None
    assert "pango_layout_new" in text


def test_a_page_is_the_same(tmp_path: Path) -> None:
    kept, first = tmp_path / "kept", printed(tmp_path / "kept", parsed=False)
    assert first[:3] == ["Bound", "FFI", "0"]
    assert [path.name.split(".")[0] for path in kept.rglob("bindings.*") if path.suffix != ".pyc"] == ["bindings"]
    assert printed(kept, parsed=False) == first
    assert printed(kept, parsed=True) == ["FFI", *first[1:]]


def test_where_nothing_is_kept_they_are_parsed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("walewright.world.bindings.compiled_beside", lambda _: None)
    monkeypatch.setattr("walewright.world.bindings.sys", SimpleNamespace(modules={}))
    with bound_beforehand(RENDERER):
        assert cffi.FFI.__module__ == "cffi.api"


def test_what_is_no_longer_whole_is_made_anew(tmp_path: Path) -> None:
    first = printed(tmp_path, parsed=False)
    (kept,) = (path for path in tmp_path.rglob("bindings.*") if path.suffix != ".pyc")
    whole = kept.read_bytes()
    kept.write_bytes(whole[:100])
    assert printed(tmp_path, parsed=False) == first
    assert kept.read_bytes() == whole


@pytest.mark.parametrize("source", ["ffi.cdef('''int a;''')\nffi.cdef('''int b;''')\n", "import made_beforehand\n"])
def test_other_ways_of_declaring_are_left_alone(source: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("walewright.world.bindings.library_text", lambda *_: source)
    assert declared(RENDERER) is None
    assert DECLARED.findall("ffi.cdef('''int a;''')\n") == ["int a;"]
