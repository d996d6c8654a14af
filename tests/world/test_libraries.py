"""A package that looks for libraries under several names."""

from __future__ import annotations

import ctypes.util
import subprocess
import sys
from collections.abc import Callable

import pytest

from walewright import world

Search = Callable[[str], str | None]


@pytest.fixture
def search() -> Search:
    """What Python looks for libraries with."""
    return ctypes.util.find_library


@pytest.mark.skipif(sys.platform != "linux", reason="how libraries are found there")
def test_what_the_loader_knows_is_not_searched_for(search: Search) -> None:
    with world.loaded_by_name(("libc.so.6",)):
        assert ctypes.util.find_library is not search
        assert ctypes.util.find_library("no-library-of-this-name") is None
    assert ctypes.util.find_library is search


@pytest.mark.skipif(sys.platform != "linux", reason="how libraries are found there")
def test_after_a_failure_libraries_are_searched_for_as_before(search: Search) -> None:
    with pytest.raises(OSError, match="broken"), world.loaded_by_name(("libc.so.6",)):
        raise OSError("broken")
    assert ctypes.util.find_library is search


def test_where_one_is_missing_nothing_changes(search: Search) -> None:
    with world.loaded_by_name(("libc.so.6", "no-library-of-this-name.so.1")):
        assert ctypes.util.find_library is search


@pytest.mark.skipif(sys.platform != "linux", reason="how libraries are found there")
def test_the_renderer_is_loaded_without_another_program() -> None:
    """Each of its libraries has a name that the loader knows: no compiler and no linker is asked."""
    program = (
        "import sys\n"
        "asked = []\n"
        "sys.addaudithook(lambda event, args: asked.append(args[0]) if event == 'subprocess.Popen' else None)\n"
        "from walewright.sheet.loading import renderer\n"
        "assert renderer().HTML\n"
        "print(asked)\n"
    )
    told = subprocess.run([sys.executable, "-W", "ignore", "-c", program], capture_output=True, text=True, check=True)
    assert told.stdout == "[]\n"
