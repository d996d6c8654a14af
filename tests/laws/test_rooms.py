"""The laws inside a stage: its rooms import one another in one order, and no two files import each other in a circle."""

from __future__ import annotations

import ast
from graphlib import CycleError, TopologicalSorter
from pathlib import Path

import pytest

from tests.laws.code_tree import PACKAGE, breaches, dotted, each_stage, imports, modules, stage, tree

ROOMS: dict[str, tuple[str, ...]] = {
    "counted": (
        "row_stretches",
        "model",
        "needles",
        "parts",
        "inside",
        "stretches",
        "edgings",
        "piece",
        "bands",
        "ribs",
        "edges",
        "in_size",
        "outline",
        "edge_lines",
    ),
    "design": ("model", "lookalikes", "findings", "reading", "pieces", "charts", "used", "put_together", "understand"),
    "solve": ("model", "algebra", "edges", "schedule", "sized", "joins", "conflict", "solver"),
}
"""The rooms of a stage, and its files beside them: each imports itself and what stands before it."""


def room(name: str, stage: str) -> str:
    """The room of a dotted module: "edges" of `walewright.solve.edges.rules`; "" outside the stage, and for its entry."""
    parts = name.split(".")
    return parts[2] if parts[1:2] == [stage] and len(parts) > 2 else ""


def offences(stage: str, importer: str, module: ast.Module) -> list[str]:
    """Imports of a module of the room `importer` that go against the order."""
    order = ROOMS[stage]
    found = []
    for name, line in imports(module, f"walewright.{stage}"):
        other = room(name, stage)
        if other and order.index(other) > order.index(importer):
            found.append(f"line {line}: {importer} imports {name}")
    return found


@each_stage(p for p in modules() if any(room(dotted(p), s) for s in ROOMS))
def test_a_room_imports_only_what_comes_before(paths: list[Path]) -> None:
    assert breaches(lambda path: offences(stage(path), room(dotted(path), stage(path)), tree(path)), paths) == {}


@pytest.mark.parametrize("stage", ROOMS)
def test_every_room_is_in_the_order(stage: str) -> None:
    found = {p.stem for p in (PACKAGE / stage).iterdir() if (p.is_dir() or p.suffix == ".py") and not p.name.startswith("_")}
    assert found == set(ROOMS[stage])


def test_an_offence_is_seen() -> None:
    assert len(offences("solve", "edges", ast.parse("from walewright.solve.joins.seams import x"))) == 1


def test_no_files_import_each_other_in_a_circle() -> None:
    """Imports that only the type checker follows are left out, and those inside a function, which wait until it is called."""
    graph = {dotted(p): _at_once(p) for p in modules()}
    try:
        tuple(TopologicalSorter(graph).static_order())
    except CycleError as circle:
        pytest.fail(" > ".join(circle.args[1]))


def _at_once(path: Path) -> set[str]:
    name = dotted(path)
    body = [n for n in tree(path).body if not (isinstance(n, ast.If) and "TYPE_CHECKING" in ast.unparse(n.test))]
    found = {module for module, _ in imports(ast.Module(body, []), name) if module != name}
    # A package's entry gathers what its files hold; a file that names the package means the files.
    return {module for module in found if not name.startswith(f"{module}.")}
