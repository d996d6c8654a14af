"""A command begins at once: what reads, solves, knits and prints is loaded when it is needed, not before the source is there."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

LOADED = """
import os, sys
def ends(event, about):
    if event == "open" and str(about[0]) == sys.argv[-1]:
        os.write(1, "\\n".join(sorted(sys.modules)).encode())
        os._exit(0)
sys.addaudithook(ends)
from walewright.cli import main
main(sys.argv[1:])
"""

SLOW = {"rich", "pydantic", "jinja2", "lark", "highspy", "numpy", "weasyprint"}
"""Libraries with work of their own to do."""

EARLY = {"cli", "languages", "record", "report", "trade", "world"}
"""Packages that a command line itself needs, and what their values are made of."""

PAPERS = {"walewright.trade", "walewright.trade.papers"}
"""Of the trade, the names of papers alone: a command line says which there are."""


def loaded(*arguments: str) -> set[str]:
    """What is loaded when the last of the arguments, a file, is opened."""
    found = subprocess.run([sys.executable, "-c", LOADED, *arguments], capture_output=True, text=True, check=True)
    assert found.stdout, "the file was never opened"
    return set(found.stdout.split("\n"))


def of_the_trade(names: set[str]) -> set[str]:
    return {name for name in names if f"{name}.".startswith("walewright.trade.")}


@pytest.mark.parametrize("command", ["check", "choices", "format", "build --as text --out built", "check --size small"])
def test_nothing_slow_is_loaded_before_the_source_is_read(command: str, sound: Path) -> None:
    names = loaded(*command.replace("built", str(sound.parent / "built")).split(), str(sound))
    ours = {name.split(".")[1] for name in names if name.startswith("walewright.")}
    assert ours == EARLY
    assert of_the_trade(names) == PAPERS
    assert {name.split(".")[0] for name in names} & SLOW == set()
    assert not any(name.startswith("walewright.report.english") for name in names), "there is nothing to say yet"


def test_show_loads_no_more(sound: Path) -> None:
    names = loaded("show", "knit", str(sound))
    assert {name.split(".")[1] for name in names if name.startswith("walewright.")} == EARLY
    assert of_the_trade(names) == PAPERS
