"""A type's name is that of one thing: no two modules of the compiler define a type of the same name."""

from __future__ import annotations

import ast
from collections import defaultdict
from collections.abc import Iterator

from tests.laws.code_tree import dotted, modules, tree

TO_BE_RENAMED = frozenset(
    [
        "Band",
        "Cell",
        "Change",
        "Column",
        "Course",
        "Crossed",
        "Drawing",
        "Edge",
        "Ends",
        "Fabric",
        "Graded",
        "Hung",
        "InForce",
        "Join",
        "Key",
        "Kind",
        "Line",
        "Loop",
        "Mark",
        "Measure",
        "Measured",
        "Opening",
        "Part",
        "Phrase",
        "Piece",
        "Place",
        "Rows",
        "Run",
        "Said",
        "Seam",
        "Section",
        "Sheet",
        "Sides",
        "SizeTable",
        "Span",
        "Stretch",
        "Stripes",
        "Tally",
        "Told",
        "Track",
        "_Found",
        "_Search",
        "_State",
    ]
)
"""Names that are still given twice. Many are a statement in `source` and what it means in `design`."""


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
    assert {name: where for name, where in twice().items() if name not in TO_BE_RENAMED} == {}


def test_what_has_been_renamed_is_an_exception_no_more() -> None:
    assert TO_BE_RENAMED - twice().keys() == set()


def test_the_law_sees_classes_and_aliases() -> None:
    assert list(types(ast.parse("class A: pass\n_Row = tuple[int, int]\nLIMIT = 3\nsmall = 2"))) == ["A", "_Row"]
