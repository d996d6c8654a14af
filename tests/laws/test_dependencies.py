"""What is imported is declared, and what is declared is imported."""

from __future__ import annotations

import ast
import re
import sys
import tomllib
from collections.abc import Iterable, Mapping
from functools import cache
from importlib.metadata import packages_distributions

from tests.laws.code_tree import ROOT, modules, nodes, tree
from walewright.sheet.fonts import FACES

PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
TOOLS = {"hatchling", "httpx2", "mypy", "ruff", "watchfiles"}
"""Run by name, or a part of what runs them: nothing imports them."""
OWN = {"walewright", "tests"}


def plain(name: str) -> str:
    """A distribution's name as an index writes it."""
    return re.sub(r"[-_.]+", "-", name).lower()


def declared(requirements: Iterable[str]) -> set[str]:
    return {plain(found[0]) for line in requirements if (found := re.match(r"[\w.-]+", line))}


def imported(trees: Iterable[ast.Module]) -> set[str]:
    """Top names of all imports but those of our own code and of Python itself."""
    names: set[str] = set()
    for module in trees:
        for node in nodes(module):
            if isinstance(node, ast.Import):
                names |= {alias.name.split(".")[0] for alias in node.names}
            elif isinstance(node, ast.ImportFrom) and not node.level:
                names.add((node.module or "").split(".")[0])
    return names - OWN - sys.stdlib_module_names


@cache
def installed() -> Mapping[str, list[str]]:
    """Top names of all that is installed, to the packages that bring them: every package's list of files is read for it."""
    return packages_distributions()


def distributions(names: Iterable[str]) -> set[str]:
    """What has to be installed for these imports; a name that nothing installed brings stands for itself."""
    known = installed()
    return {plain(known.get(name, [name])[0]) for name in names}


def in_tests() -> list[ast.Module]:
    return [ast.parse(p.read_text(encoding="utf-8")) for p in sorted((ROOT / "tests").rglob("*.py"))]


def fonts() -> set[str]:
    """The packages of the typefaces are found by name, because only their files are wanted."""
    return {plain(face.package) for face in FACES}


EXTRAS = {name: lines for name, lines in PROJECT["optional-dependencies"].items() if name != "test"}
"""What some commands can use, for those who want it."""


def test_the_compiler_declares_what_it_imports_and_nothing_else() -> None:
    needed = distributions(imported(tree(path) for path in modules()))
    optional = declared(line for lines in EXTRAS.values() for line in lines)
    assert optional <= needed
    assert optional & declared(PROJECT["dependencies"]) == set()
    assert needed - optional | fonts() == declared(PROJECT["dependencies"])


def test_what_is_optional_is_loaded_within_a_function() -> None:
    for path in modules():
        at_once = imported([ast.Module([n for n in tree(path).body if isinstance(n, ast.Import | ast.ImportFrom)], [])])
        assert distributions(at_once) & declared(line for lines in EXTRAS.values() for line in lines) == set(), path


def test_the_tests_declare_what_they_import_and_nothing_else() -> None:
    needed = distributions(imported(in_tests()))
    extra = declared(PROJECT["optional-dependencies"]["test"])
    assert needed - declared(PROJECT["dependencies"]) == extra - TOOLS
    assert extra & declared(PROJECT["dependencies"]) == set()


def test_every_dependency_has_a_lower_bound() -> None:
    for line in (*PROJECT["dependencies"], *(line for lines in PROJECT["optional-dependencies"].values() for line in lines)):
        assert re.search(r">=\d", line), line


def test_the_law_sees_an_import_within_a_function() -> None:
    text = (
        "import os\ndef f():\n    from numpy import array\n    import lark.visitors\nfrom walewright import sheet\nfrom . import x"
    )
    assert imported([ast.parse(text)]) == {"numpy", "lark"}


def test_names_are_compared_as_an_index_does() -> None:
    assert declared(["Fontpkg_Source.Sans-3>=3.52", "weasyprint>=68,<71"]) == {"fontpkg-source-sans-3", "weasyprint"}
    assert distributions(["PIL", "no_such_package_of_ours"]) == {"pillow", "no-such-package-of-ours"}
