"""Kinds are closed sets: a field that holds one says which, and what is looked up by kind knows all of them."""

from __future__ import annotations

import ast
import importlib
import re
from collections.abc import Iterator, Mapping
from dataclasses import fields
from functools import cache
from types import ModuleType, UnionType
from typing import Any, Literal, Union, get_args, get_origin, get_type_hints

import pytest

from tests.laws.code_tree import dotted, modules, nodes, tree
from walewright.figures.hands import TECHNIQUES
from walewright.languages import known, printed
from walewright.source import quantities, syntax
from walewright.source.rules import RULES
from walewright.trade.cells import CELLS
from walewright.trade.edgings import EDGINGS

NAMES = re.compile(
    r"(kind|way|sides?|ends?|taken|state|which|facing|part|where|when|at|status|relation|onto|head|before|changed|unit|sooner|off"
    r"|shape|face|stitch|role|basis|begin|system|fit|area|figure|extent)"
)
"""How a field that may hold one of a closed set is called, or the last word of its name."""

AUTHORS = "a name that the author gives"
GRAMMAR = "a rule of a grammar, which has them all"
WORDS = "words to print"
OPEN = {
    "design.model.wearing.Measured.at": AUTHORS,
    "design.pieces.shapes._Values.shape": AUTHORS,
    "fit.model.Girth.at": AUTHORS,
    "report.model.Change.at": AUTHORS,
    "solve.edges.bed_width.Station.at": AUTHORS,
    "source.piece_lines.Without.part": AUTHORS,
    "source.wearing_lines.Through.part": "as written; `design` knows the parts of the body",
    "source.quantities.Number.unit": "as written; `design` knows the units",
    "source.syntax.SizeRow.unit": "as written; `design` knows the units",
    "source.material_lines.YarnCount.system": "as written, in capitals or not; `design` knows the systems",
    "source.reading.ReadBlock.kind": GRAMMAR,
    "readback.phrases.ReadPhrase.kind": GRAMMAR,
    "report.said.Amount.unit": WORDS,
    "report.said.BySize.unit": WORDS,
    "proof.model.PictureLoop.kind": "as the bed's, in small letters",
    "figures.model.Stroke.kind": "a pen, which the style sheet of a page may have or not",
    "world.reading.Held.line_end": "the characters themselves",
}
"""Fields of such a name that hold anything else, and what."""


def plain_text(module: ast.Module) -> Iterator[str]:
    """Class and name of every field of such a name whose type is any text."""
    for node in nodes(module):
        for statement in node.body if isinstance(node, ast.ClassDef) else ():
            if isinstance(statement, ast.AnnAssign) and isinstance(statement.target, ast.Name):
                name, kind = statement.target.id, ast.unparse(statement.annotation)
                if NAMES.fullmatch(name.rpartition("_")[2]) and re.fullmatch(r"str( \| None)?", kind):
                    yield f"{node.name}.{name}"


def open_fields() -> set[str]:
    return {f"{dotted(path).removeprefix('walewright.')}.{name}" for path in modules() for name in plain_text(tree(path))}


def test_a_field_that_holds_a_kind_says_which_there_are() -> None:
    assert open_fields() - OPEN.keys() == set()


def test_every_exception_is_needed() -> None:
    assert OPEN.keys() - open_fields() == set()


def test_the_law_sees_an_open_field() -> None:
    source = "class A:\n    kind: str\n    start_way: str | None = None\n    name: str\n    way: Way\n"
    assert list(plain_text(ast.parse(source))) == ["A.kind", "A.start_way"]


# ----------------------------------------------------------------- tables


def kinds(annotation: Any) -> tuple[str, ...]:
    """The words of a closed set; none of any other type."""
    if get_origin(annotation) is Literal:
        return get_args(annotation)
    if get_origin(annotation) in (Union, UnionType):
        parts = [kinds(part) for part in get_args(annotation) if part is not type(None)]
        return tuple(word for part in parts for word in part) if all(parts) else ()
    return ()


def annotated(module: ModuleType, source: ast.Module) -> Iterator[tuple[str, Any, Any]]:
    """(name, type, value) of what a module defines with a type, but for types that are there for the type checker only."""
    for node in source.body:
        if isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name) and node.value is not None:
            try:
                annotation = eval(ast.unparse(node.annotation), vars(module))
            except NameError:
                continue
            yield node.target.id, annotation, getattr(module, node.target.id)


@cache
def loaded() -> tuple[tuple[ModuleType, ast.Module], ...]:
    return tuple((importlib.import_module(dotted(p)), tree(p)) for p in modules() if p.stem != "__main__")


def tables() -> Iterator[tuple[str, tuple[str, ...], tuple[str, ...]]]:
    """(name, kinds, what is there) of every table whose keys are kinds, and of every list of kinds in `trade`."""
    for module, source in loaded():
        for name, annotation, value in annotated(module, source):
            of = get_args(annotation)
            if get_origin(annotation) in (dict, Mapping) and kinds(of[0]):
                yield f"{module.__name__}.{name}", kinds(of[0]), tuple(value)
            elif get_origin(annotation) is tuple and module.__name__.startswith("walewright.trade") and kinds(of[0]):
                yield f"{module.__name__}.{name}", kinds(of[0]), value


PARTS = ("walewright.trade.sides.GAP_PARTS", "walewright.trade.edgings.WHENS")
"""Lists that are not meant to have all: `GAP_PARTS` leaves out the whole."""


def test_every_table_has_all_kinds() -> None:
    found = {name: (known, there) for name, known, there in tables() if name not in PARTS}
    assert len(found) > 40
    assert {name: set(known) ^ set(there) for name, (known, there) in found.items() if set(known) != set(there)} == {}


# ----------------------------------------------------------------- the grammar's words


def closed_fields() -> Iterator[tuple[type[syntax.Node], str, tuple[str, ...]]]:
    """(node, field, kinds) of every field of the tree that holds a kind."""
    nodes = {made.node for made in RULES.values() if made.node is not None}
    for node in sorted(nodes, key=lambda n: n.__name__):
        hints = get_type_hints(node, {**vars(quantities), **vars(syntax), **vars(importlib.import_module(node.__module__))})
        for field in fields(node):
            if kinds(hints[field.name]):
                yield node, field.name, kinds(hints[field.name])


def test_the_rules_make_every_kind_and_no_other() -> None:
    made: dict[str, set[object]] = {}
    filled = {name for rule in RULES.values() for name in rule.fields}
    for rule in RULES.values():
        for name, value in rule.fixed.items():
            made.setdefault(name, set()).add(value)
    known: dict[str, set[object]] = {}
    for node, name, words in closed_fields():
        default = next(f.default for f in fields(node) if f.name == name)
        known.setdefault(name, {None}).update(words)
        # What a word of the grammar fills is written as it is.
        missing = set() if name in filled else set(words) - made.get(name, set()) - {default}
        assert not missing, f"{node.__name__}.{name}: no rule of the grammar makes {missing}"
    assert {name: made[name] - words for name, words in known.items() if made.get(name, set()) - words} == {}


# ----------------------------------------------------------------- what is explained

WITHOUT_A_BOX = {
    "cell knit": "the carriage knits it",
    "cell from left": "explained with the holes that loops are moved from",
    "cell from right": "explained with the holes that loops are moved from",
    "edging plain": "knitted as any fabric",
    "edging mock rib": "a folded one; its needles are told in the steps",
}


@pytest.mark.parametrize("feature", [*(f"cell {kind}" for kind in CELLS), *(f"edging {kind}" for kind in EDGINGS)])
def test_every_kind_is_explained_in_a_box_or_needs_none(feature: str) -> None:
    assert (feature in {when for technique in TECHNIQUES for when in technique.when}) != (feature in WITHOUT_A_BOX)


@pytest.mark.parametrize("language", known())
def test_every_kind_of_cell_and_edging_has_its_words(language: str) -> None:
    """What messages and pages call it, and what a chart's key says of it."""
    words = printed(language)
    assert {*CELLS, *EDGINGS} - set(words.telling.terms) == set()
    assert {f"cell/{kind}" for kind in CELLS} - set(words.guide.words.phrases) == set()
    told = {key.removeprefix("mark/") for key in words.writing.prose.phrases if key.startswith("mark/")}
    assert set(CELLS) - told - set(TOLD_OTHERWISE) == set()


TOLD_OTHERWISE = {"from left", "from right", "two from left", "two from right", "cross"}
"""Kinds that a key tells with their side or their groups."""
