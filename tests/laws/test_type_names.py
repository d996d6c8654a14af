"""A type's name is that of one thing: no two modules of the compiler define a type of the same name."""

from __future__ import annotations

import ast
from collections import defaultdict
from collections.abc import Iterator

from tests.laws.code_tree import dotted, modules, tree


def types(module: ast.Module) -> Iterator[str]:
    """Classes and aliases of the module's top level: names in capitals throughout are values."""
    for node in module.body:
        if isinstance(node, ast.ClassDef):
            yield node.name
        elif isinstance(node, ast.Assign) and isinstance(node.targets[0], ast.Name):
            name = node.targets[0].id
            if name.lstrip("_")[:1].isupper() and not name.isupper():
                yield name


def twice() -> dict[str, list[str]]:
    found: defaultdict[str, list[str]] = defaultdict(list)
    for path in modules():
        for name in types(tree(path)):
            found[name].append(dotted(path))
    return {name: where for name, where in found.items() if len(where) > 1}


def test_no_type_has_the_name_of_another() -> None:
    assert twice() == {}


def test_the_law_sees_classes_and_aliases() -> None:
    assert list(types(ast.parse("class A: pass\n_Row = tuple[int, int]\nLIMIT = 3\nsmall = 2"))) == ["A", "_Row"]
