"""Laws of the code itself: pure stages, short files, documented functions."""

from __future__ import annotations

import ast
from collections.abc import Set
from pathlib import Path

import pytest

from tests.laws.code_tree import breaches, dotted, each_stage, modules, nodes, stage, tree

LONGEST_FILE = 400
LONGEST_FUNCTION = 60
DOORS = {"world", "cli"}
"""Where files, the clock, the environment and the terminal may be touched."""

FORBIDDEN_NAMES = {"print", "open", "input", "exec", "eval", "breakpoint"}
FORBIDDEN_CALLS = {
    "datetime.now",
    "datetime.today",
    "datetime.utcnow",
    "date.today",
    "time.time",
    "read_text",
    "read_bytes",
    "write_text",
    "write_bytes",
}
FORBIDDEN_MODULES = {"os", "pathlib", "tempfile", "random", "subprocess", "socket", "time", "logging"}


HANDED_ON = {
    "walewright.sheet.render": {"os", "logging"},
    "walewright.sheet.fonts": {"pathlib"},
    "walewright.serve.progress": {"logging"},
    "walewright.record": {"exec"},
}
"""Modules that the page renderer has to be told something through, its date by the environment, its fonts by their paths; or that
it tells something through: the page that it sets. A record's `__init__` is compiled as that of a dataclass is."""


def impurities(module: ast.Module, allowed: Set[str] = frozenset()) -> list[str]:
    """Calls and imports that reach out of the program, but for the modules `allowed`."""
    forbidden = FORBIDDEN_MODULES - allowed
    found = []
    for node in nodes(module):
        if isinstance(node, ast.Call):
            called = ast.unparse(node.func)
            if called in FORBIDDEN_NAMES - allowed or any(called == c or called.endswith(f".{c}") for c in FORBIDDEN_CALLS):
                found.append(f"line {node.lineno}: {called}()")
        elif isinstance(node, ast.Import):
            found += [f"line {node.lineno}: import {a.name}" for a in node.names if a.name.split(".")[0] in forbidden]
        elif isinstance(node, ast.ImportFrom) and node.level == 0 and (node.module or "").split(".")[0] in forbidden:
            found.append(f"line {node.lineno}: from {node.module}")
        elif isinstance(node, ast.Global):
            found.append(f"line {node.lineno}: {' '.join(node.names)} is state outside a function")
    return found


@each_stage(p for p in modules() if stage(p) not in DOORS)
def test_a_stage_is_pure(paths: list[Path]) -> None:
    assert breaches(lambda path: impurities(tree(path), HANDED_ON.get(dotted(path), set())), paths) == {}


@pytest.mark.parametrize(
    "text",
    [
        "print('x')",
        "open('x')",
        "import datetime\ndatetime.datetime.now()",
        "from datetime import date\ndate.today()",
        "import random",
        "from os import environ",
        "Path('x').read_text()",
        "def f():\n    global state",
    ],
)
def test_the_law_sees_an_impurity(text: str) -> None:
    assert impurities(ast.parse(text)) != []


@each_stage(modules())
def test_a_file_is_short(paths: list[Path]) -> None:
    lines = {dotted(path): len(path.read_text(encoding="utf-8").splitlines()) for path in paths}
    assert {name: many for name, many in lines.items() if many > LONGEST_FILE} == {}


def too_long(module: ast.Module) -> list[str]:
    """Functions, at whatever depth, of more lines than can be read at a glance."""
    made = (n for n in nodes(module) if isinstance(n, ast.FunctionDef | ast.AsyncFunctionDef))
    lengths = ((node.name, (node.end_lineno or node.lineno) - node.lineno + 1) for node in made)
    return [f"{name}: {lines} lines" for name, lines in lengths if lines > LONGEST_FUNCTION]


@each_stage(modules())
def test_a_function_is_short(paths: list[Path]) -> None:
    assert breaches(lambda path: too_long(tree(path)), paths) == {}


@pytest.mark.parametrize(("lines", "found"), [(LONGEST_FUNCTION - 1, []), (LONGEST_FUNCTION, ["f: 61 lines"])])
def test_a_long_function_is_found(lines: int, found: list[str]) -> None:
    assert too_long(ast.parse("class C:\n    def f():\n" + "        x = 1\n" * lines)) == found


def undocumented(module: ast.Module) -> list[str]:
    """Public functions of the module's top level, and public methods longer than a line, without a docstring."""
    found = []
    for node in module.body:
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_") and ast.get_docstring(node) is None:
            found.append(node.name)
    return found


@each_stage(modules())
def test_public_functions_say_what_they_do(paths: list[Path]) -> None:
    assert breaches(lambda path: undocumented(tree(path)), paths) == {}


@each_stage(modules())
def test_every_module_says_what_it_is(paths: list[Path]) -> None:
    """A docstring says what one idea the file holds."""
    assert breaches(lambda path: path.stat().st_size > 0 and not ast.get_docstring(tree(path)), paths) == {}


def test_the_law_sees_a_silent_function() -> None:
    assert undocumented(ast.parse("def work(): pass\ndef _own(): pass\ndef told():\n    'Told.'")) == ["work"]


CATCH_ALLS = {"utils", "util", "helpers", "helper", "manager", "common", "misc", "tools"}


def test_no_module_is_a_catch_all() -> None:
    assert [dotted(p) for p in modules() if p.stem in CATCH_ALLS] == []
