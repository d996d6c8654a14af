"""The compiler's own sources, read as syntax trees."""

from __future__ import annotations

import ast
from collections.abc import Callable, Iterable, Iterator
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from walewright.languages import STAGES

ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "src" / "walewright"
LANGUAGES = frozenset(
    folder.name for stage in STAGES for folder in (PACKAGE / stage).iterdir() if folder.joinpath("__init__.py").is_file()
)
"""Folders of the words of a language, whether or not it has all that a printed one needs."""


def modules() -> tuple[Path, ...]:
    """Every Python file of the compiler."""
    return tuple(sorted(PACKAGE.rglob("*.py")))


@cache
def tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"), str(path))


@cache
def nodes(module: ast.Module) -> tuple[ast.AST, ...]:
    """Every node of a file: to walk through it takes longer than to parse it, and most laws do."""
    return tuple(ast.walk(module))


def dotted(path: Path) -> str:
    """`walewright.design.model` of its path."""
    parts = path.relative_to(PACKAGE.parent).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


def stage(path: Path) -> str:
    """The package or top module a file belongs to, such as "design" or "world"; "" for the package's own `__init__`."""
    parts = dotted(path).split(".")
    return parts[1] if len(parts) > 1 else ""


def each_stage(paths: Iterable[Path]) -> pytest.MarkDecorator:
    """A law is asked of all files of a stage in one test: a test a file would take longer to be told than to be made."""
    found: dict[str, list[Path]] = {}
    for path in paths:
        found.setdefault(stage(path), []).append(path)
    return pytest.mark.parametrize("paths", found.values(), ids=found.keys())


def breaches(law: Callable[[Path], Any], paths: Iterable[Path]) -> dict[str, Any]:
    """What a law has to say, by the files that it has something to say of."""
    return {dotted(path): said for path in paths if (said := law(path))}


def in_a_language(path: Path) -> bool:
    """Whether it holds words, and no more."""
    return not LANGUAGES.isdisjoint(path.relative_to(PACKAGE).parts)


def imports(module: ast.Module, within: str) -> Iterator[tuple[str, int]]:
    """(dotted module, line) of every import of our own code, wherever it stands. `from a.b import c` counts as `a.b.c`
    where c is a module or package, else as `a.b`. `within` is the importing package, for relative imports."""
    for node in nodes(module):
        if isinstance(node, ast.Import):
            for alias in node.names:
                if alias.name.split(".")[0] == "walewright":
                    yield alias.name, node.lineno
        elif isinstance(node, ast.ImportFrom):
            base = node.module or ""
            if node.level:
                base = ".".join((*within.split(".")[: len(within.split(".")) - node.level + 1], *filter(None, [base])))
            if base.split(".")[0] != "walewright":
                continue
            for alias in node.names:
                inner = f"{base}.{alias.name}"
                yield (inner if _is_module(inner) else base), node.lineno


@cache
def _is_module(name: str) -> bool:
    place = PACKAGE.parent.joinpath(*name.split("."))
    return place.is_dir() or place.with_suffix(".py").is_file()
