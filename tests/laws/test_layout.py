"""The checkout's top level, the packaging and the Python version, as they are promised."""

from __future__ import annotations

import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
TOP_LEVEL = {"README.md", "DEVELOPERS.md", "pyproject.toml", "grammar", "src", "patterns", "tests", "docs"}
MADE_BY_COMMANDS = {"out", "dist", "build"}
"""Ignored folders that building leaves behind."""


def test_the_top_level_is_exact() -> None:
    assert {p.name for p in ROOT.iterdir() if not p.name.startswith(".")} - MADE_BY_COMMANDS == TOP_LEVEL


def _cached(path: Path) -> bool:
    return any(part == "__pycache__" or part.startswith(".") for part in path.relative_to(ROOT).parts)


def test_one_version_everywhere() -> None:
    import walewright

    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert project["version"] == walewright.__version__


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A wheel built from this checkout."""
    place = tmp_path_factory.mktemp("wheel")
    build = "import sys, hatchling.build as b; print(b.build_wheel(sys.argv[1]))"
    made = subprocess.run([sys.executable, "-c", build, str(place)], cwd=ROOT, capture_output=True, text=True, check=False)
    assert made.returncode == 0, made.stderr
    return next(place.glob("*.whl"))


def test_the_wheel_brings_everything_it_needs(wheel: Path) -> None:
    held = set(zipfile.ZipFile(wheel).namelist())
    code = {p.relative_to(ROOT / "src").as_posix() for p in (ROOT / "src").rglob("*") if p.is_file() and not _cached(p)}
    shipped = {
        f"walewright/_shipped/{p.relative_to(ROOT).as_posix()}"
        for kind in ("grammar", "patterns")
        for p in (ROOT / kind).rglob("*")
        if p.is_file()
    }
    assert "walewright/py.typed" in code
    assert shipped
    assert (code | shipped) - held == set()


def test_the_wheel_brings_its_licence(wheel: Path) -> None:
    inside = zipfile.ZipFile(wheel)
    licences = [name for name in inside.namelist() if name.endswith(".dist-info/licenses/docs/LICENSE")]
    assert len(licences) == 1
    assert inside.read(licences[0]) == (ROOT / "docs" / "LICENSE").read_bytes()


def test_an_unpacked_wheel_works_away_from_the_checkout(wheel: Path, tmp_path: Path) -> None:
    zipfile.ZipFile(wheel).extractall(tmp_path / "installed")
    source = tmp_path / "scarf.wale"
    source.write_text((ROOT / "patterns" / "tidewrack.wale").read_text(encoding="utf-8"), encoding="utf-8")
    run = (
        "import sys; sys.path.insert(0, sys.argv[1]); import walewright; assert walewright.__file__.startswith(sys.argv[1]);"
        "from walewright.cli import main; sys.exit(main(['check', '--size', 'M', sys.argv[2]]))"
    )
    done = subprocess.run(
        [sys.executable, "-c", run, str(tmp_path / "installed"), str(source)],
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert "1 size proven" in done.stdout
