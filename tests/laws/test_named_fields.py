"""Fields have names: nothing is called with a row of values that only their order tells apart, and nothing takes so many."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.laws.code_tree import breaches, each_stage, modules, nodes, tree

MOST_IN_ORDER = 6
"""Values that a call tells apart by their order alone; a starred one counts as one."""

MOST_PARAMETERS = 7


def _commands(module: ast.Module) -> set[str]:
    """Functions that a command of the command line runs: it gives them each option by its name."""
    calls = (n for n in nodes(module) if isinstance(n, ast.Call) and ast.unparse(n.func) == "command")
    return {ast.unparse(call.args[1]) for call in calls if len(call.args) > 1}


def by_order(module: ast.Module) -> list[str]:
    """Calls with too many values in order."""
    calls = (node for node in nodes(module) if isinstance(node, ast.Call))
    return [f"line {c.lineno}: {ast.unparse(c.func)}, {len(c.args)}" for c in calls if len(c.args) > MOST_IN_ORDER]


def _of_methods(module: ast.Module) -> Iterator[ast.AST]:
    for node in nodes(module):
        if isinstance(node, ast.ClassDef):
            plain = (f for f in node.body if isinstance(f, ast.FunctionDef | ast.AsyncFunctionDef))
            yield from (f for f in plain if not any(ast.unparse(d) == "staticmethod" for d in f.decorator_list))


def taking_many(module: ast.Module) -> list[str]:
    """Functions with too many parameters; what a method is of is none."""
    methods, commands = set(_of_methods(module)), _commands(module)
    found = []
    for node in nodes(module):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef | ast.Lambda):
            name = getattr(node, "name", "lambda")
            given = len([*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs]) - (node in methods)
            if given > MOST_PARAMETERS and name not in commands:
                found.append(f"line {node.lineno}: {name}, {given}")
    return found


@each_stage(modules())
def test_values_have_names(paths: list[Path]) -> None:
    assert breaches(lambda path: by_order(tree(path)), paths) == {}


@each_stage(modules())
def test_what_goes_together_is_one_value(paths: list[Path]) -> None:
    assert breaches(lambda path: taking_many(tree(path)), paths) == {}


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("f(1, 2, 3, 4, 5, 6)", []),
        ("f(1, 2, 3, 4, 5, 6, g=7)", []),
        ("x.f(1, 2, 3, 4, 5, 6, 7)", ["line 1: x.f, 7"]),
        ("f(g(1, 2, 3, 4, 5, 6, 7))", ["line 1: g, 7"]),
        ("f(1, 2, 3, 4, 5, 6, *more)", ["line 1: f, 7"]),
    ],
)
def test_the_law_sees_values_in_order(text: str, found: list[str]) -> None:
    assert by_order(ast.parse(text)) == found


SEVEN = "a, b, c, d, e, f, g"


@pytest.mark.parametrize(
    ("text", "found"),
    [
        (f"def f({SEVEN}): pass", []),
        (f"def f({SEVEN}, h): pass", ["line 1: f, 8"]),
        (f"def f({SEVEN}, *, h=0): pass", ["line 1: f, 8"]),
        (f"async def f({SEVEN}, *more, h=0): pass", ["line 1: f, 8"]),
        (f"class C:\n    def f(self, {SEVEN}): pass", []),
        (f"class C:\n    @staticmethod\n    def f({SEVEN}, h): pass", ["line 3: f, 8"]),
        (f"class C:\n    def f(self, {SEVEN}, h): pass", ["line 2: f, 8"]),
        (f"lambda {SEVEN}, h: 0", ["line 1: lambda, 8"]),
        (f"def f():\n    def inner({SEVEN}, h): pass", ["line 2: inner, 8"]),
        (f"def _f({SEVEN}, h): pass\nC = command('f', _f, [])", []),
    ],
)
def test_the_law_sees_many_parameters(text: str, found: list[str]) -> None:
    assert taking_many(ast.parse(text)) == found
