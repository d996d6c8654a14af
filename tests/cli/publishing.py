"""A small catalogue on disk, and what was published of it."""

from __future__ import annotations

import hashlib
import json
import os
import subprocess
import sys
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from walewright.cli import main
from walewright.cli.publishing.records import FOLDER

SCARF = """\
pattern "{name}"
    summary "A straight piece, {length} cm long."

sizes      S  M
    length {length} 60 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

piece scarf in plain
    levels bottom 0 cm, top length
    start 24 cm wide with e-wrap
    edges straight to top
    end cast off
"""

CATALOGUE = """\
title = "Scarves"
edition = "First edition"
date = 2026-03-01

[usual]
formats = ["html", "text"]

[[garments]]
sources = ["*.wale"]
"""

NAMES = ("lagoon", "skerry")


@dataclass(frozen=True)
class Publisher:
    """A folder of sources with a catalogue, and where its products go."""

    folder: Path
    into: Path

    @property
    def catalogue(self) -> Path:
        return self.folder / "scarves.toml"

    def source(self, name: str) -> Path:
        return self.folder / f"{name}.wale"

    def says(self, text: str) -> None:
        self.catalogue.write_text(text, encoding="utf-8")

    def arguments(self, *more: str) -> list[str]:
        return ["publish", str(self.catalogue), "--into", str(self.into), "--jobs", "1", *more]

    def run(self, *more: str) -> int:
        """In this very process."""
        return main(self.arguments(*more))

    def files(self) -> dict[str, bytes]:
        return {p.name: p.read_bytes() for p in sorted(self.into.iterdir()) if p.is_file()}

    def manifest(self) -> dict[str, Any]:
        read: dict[str, Any] = json.loads((self.into / "catalogue.json").read_bytes())
        return read

    def records(self) -> list[Path]:
        return sorted(p for p in (self.into / FOLDER).glob("*.json") if p.name != "shelf.json")

    def why(self, capsys: pytest.CaptureFixture[str], *more: str) -> dict[str, str]:
        """What a run makes, with the reason; it has to end well."""
        capsys.readouterr()
        assert self.run("--why", *more) == 0
        said = capsys.readouterr()
        assert said.err == ""
        lines = [line.split(": ", 1) for line in said.out.splitlines() if not line.startswith(("wrote ", "made ", "withdrew "))]
        return dict(lines)


def publisher(folder: Path, names: tuple[str, ...] = NAMES) -> Publisher:
    """A folder with sources of these names and their catalogue."""
    folder.mkdir()
    for at, name in enumerate(names):
        (folder / f"{name}.wale").write_text(SCARF.format(name=name.title(), length=40 + at), encoding="utf-8")
    made = Publisher(folder, folder.parent / f"{folder.name}-shelf")
    made.says(CATALOGUE)
    return made


def in_process(arguments: list[str], cwd: Path, more: Mapping[str, str] | None = None) -> subprocess.CompletedProcess[str]:
    """A command in a process of its own."""
    root = Path(__file__).resolve().parents[2]
    environment = {**os.environ, "PYTHONPATH": str(root / "src"), **(more or {})}
    command = [sys.executable, "-m", "walewright", *arguments]
    return subprocess.run(command, cwd=cwd, env=environment, capture_output=True, text=True, check=False)


def agrees(of: Publisher) -> None:
    """The manifest tells of the files that are there, and of no others."""
    files = of.files()
    told = {p["file"]: p["sha256"] for garment in of.manifest()["garments"] for p in garment["products"]}
    assert told == {n: hashlib.sha256(data).hexdigest() for n, data in files.items() if n not in ("catalogue.json", "index.html")}


@contextmanager
def watching(of: Publisher) -> Iterator[subprocess.Popen[str]]:
    """`--watch`, until it is left."""
    root = Path(__file__).resolve().parents[2]
    environment = {**os.environ, "PYTHONPATH": str(root / "src"), "PYTHONUNBUFFERED": "1"}
    command = [sys.executable, "-m", "walewright", *of.arguments("--watch")]
    run = subprocess.Popen(command, env=environment, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
    try:
        yield run
    finally:
        run.kill()
        run.wait()


def told(run: subprocess.Popen[str]) -> list[str]:
    """What is said until it watches again."""
    assert run.stdout is not None
    lines = []
    while (line := run.stdout.readline()) and not line.startswith("watching "):
        lines.append(line.rstrip())
    return lines
