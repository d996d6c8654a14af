"""The law of dead code: what these packages define is used somewhere in the compiler, and what a function is given it looks at.

The code is read by names alone: a name that is used anywhere, as a name or an attribute, is in use, whoever has it.
"""

from __future__ import annotations

import ast
from collections import Counter
from functools import cache

import pytest

from tests.laws.code_tree import dotted, modules, nodes, stage, tree

HELD = frozenset({"design", "glue", "report", "solve"})

FOR_TESTS = {
    "walewright.design.understand.understand_all": "all that is defined, used or not, which no page shows",
    "walewright.design.model.charts.row_origins": "data keeps where it is from, whether or not it is pointed at",
    "walewright.solve.schedule.schedule.deviation": "how far a schedule strays, which the solver reckons by parts",
    "walewright.report.codes.CODES": "every code with its page",
    "walewright.report.english.in_english": "what is told, by itself",
}
"""Defined for tests, and why."""


@cache
def used() -> Counter[str]:
    """How often each name is read anywhere in the compiler, as a name or an attribute."""
    found: Counter[str] = Counter()
    for path in modules():
        for node in nodes(tree(path)):
            if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Load):
                found[node.id] += 1
            elif isinstance(node, ast.Attribute):
                found[node.attr] += 1
            elif isinstance(node, ast.ImportFrom):
                # What is taken under another name is used by that one.
                found.update(alias.name for alias in node.names if alias.asname)
    return found


@cache
def called_only() -> frozenset[str]:
    """Names of functions that are called wherever they are read: what they are given is theirs to say."""
    called = Counter(
        call.func.id
        for path in modules()
        for call in nodes(tree(path))
        if isinstance(call, ast.Call) and isinstance(call.func, ast.Name)
    )
    return frozenset(name for name, times in called.items() if times == used()[name])


def defined(module: ast.Module) -> list[str]:
    """Names of functions, methods, classes, fields and constants."""
    found: list[str] = []
    for node in nodes(module):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef):
            found.append(node.name)
            if isinstance(node, ast.ClassDef):
                found += [f.target.id for f in node.body if isinstance(f, ast.AnnAssign) and isinstance(f.target, ast.Name)]
    for node in module.body:
        targets = node.targets if isinstance(node, ast.Assign) else [node.target] if isinstance(node, ast.AnnAssign) else []
        found += [target.id for target in targets if isinstance(target, ast.Name)]
    return [name for name in found if not name.startswith("__")]


def unread(function: ast.FunctionDef) -> list[str]:
    """What a function is given and never reads."""
    given = [a.arg for a in (*function.args.posonlyargs, *function.args.args, *function.args.kwonlyargs)]
    read = {node.id for node in ast.walk(function) if isinstance(node, ast.Name)}
    return [name for name in given if name not in read and name not in ("self", "cls")]


PATHS = tuple(path for path in modules() if stage(path) in HELD)


def test_what_is_defined_is_used() -> None:
    idle = {f"{dotted(path)}.{name}" for path in PATHS for name in defined(tree(path)) if not used()[name]}
    assert idle == set(FOR_TESTS)


def test_what_a_function_is_given_it_looks_at() -> None:
    functions = [(path, node) for path in PATHS for node in nodes(tree(path)) if isinstance(node, ast.FunctionDef)]
    found = [f"{dotted(p)}.{f.name}: {name}" for p, f in functions if f.name in called_only() for name in unread(f)]
    assert found == []


@pytest.mark.parametrize(
    ("text", "names", "lost"),
    [
        ("def f(a, b):\n    return a\n", ["f"], ["b"]),
        ("class C:\n    x: int\n    def g(self, a):\n        return [a for _ in self.x]\n", ["C", "x", "g"], []),
        ("A = 1\nB: int = 2\n", ["A", "B"], []),
    ],
)
def test_the_law_sees_names_and_parameters(text: str, names: list[str], lost: list[str]) -> None:
    module = ast.parse(text)
    assert sorted(defined(module)) == sorted(names)
    assert [name for node in nodes(module) if isinstance(node, ast.FunctionDef) for name in unread(node)] == lost
