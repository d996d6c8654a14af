"""Every place of the compiler's sources that reports something, read from their syntax trees: the kind, the keys of its labels,
notes and helps, and the facts that are given."""

from __future__ import annotations

import ast
import re
from collections.abc import Collection, Iterator
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from string import Formatter

from tests.laws.code_tree import in_a_language, modules, nodes, stage, tree
from walewright.report.english import ENGLISH

NOTHING: frozenset[str] = frozenset()
CELL = frozenset({"cell"})
REPORTING = {"report": NOTHING, "diagnosed": NOTHING, "report_cell": CELL, "_report": CELL}
"""Functions that report a kind, their first argument, and the facts that they add to those given."""

NO_FACTS = frozenset({"notes", "helps", "sizes", "severity", "changes", "facts", "given", "also", "other_ways"})
"""What is given by name besides facts."""

GROUPS = ("labels", "notes", "helps")


@dataclass(frozen=True, slots=True)
class Phrase:
    """A `said(...)` as it is written: its key (empty: it is worked out), its facts, and whether it is a label, note or help of a
    report: those have the report's facts too."""

    key: str
    facts: frozenset[str]
    line: int
    within_report: bool = False
    any_facts: bool = False
    """Whether facts are handed on to it that do not stand there."""


@dataclass(frozen=True, slots=True)
class Report:
    """A call that reports. `kinds` is empty where the kind is worked out elsewhere. `keys`: by group, those that are written there.
    `whole`: the groups whose keys are all written there."""

    path: Path
    line: int
    kinds: tuple[str, ...]
    facts: frozenset[str]
    any_facts: bool
    keys: dict[str, frozenset[str]] = field(hash=False)
    whole: frozenset[str] = frozenset()
    put_together: bool = False
    """Whether its kinds are all that a kind put together there can be; not each need be meant."""
    passes_on: bool = False
    """Whether it stands in one of the functions `REPORTING`, which hand on what they are given."""

    @property
    def package(self) -> str:
        return stage(self.path)


@cache
def fields_of(template: str) -> frozenset[str]:
    """The facts that a sentence has places for."""
    return frozenset(name for _, name, _, _ in Formatter().parse(template) if name)


@cache
def sources() -> tuple[Path, ...]:
    """The modules that may report: all but the words themselves."""
    return tuple(p for p in modules() if not in_a_language(p))


@cache
def of_package(package: str) -> tuple[Path, ...]:
    return tuple(p for p in sources() if stage(p) == package)


@cache
def literals(path: Path) -> frozenset[str]:
    """Every text that stands in a module, its docstrings too."""
    return frozenset(n.value for n in nodes(tree(path)) if isinstance(n, ast.Constant) and isinstance(n.value, str))


@cache
def reports(path: Path) -> tuple[Report, ...]:
    """Everything that a module reports."""
    return tuple(_reports(path))


def _reports(path: Path) -> Iterator[Report]:
    for function, node in _calls(path):
        name = called(node)
        if name not in REPORTING or not node.args or (name == "report" and not isinstance(node.func, ast.Attribute)):
            continue
        groups = {"labels": node.args[1:], **{k.arg: [k.value] for k in node.keywords if k.arg in GROUPS}}
        keys = {group: frozenset(_keys(groups.get(group, []))) for group in GROUPS}
        yield Report(
            path,
            node.lineno,
            tuple(_values(node.args[0], function)),
            frozenset(k.arg for k in node.keywords if k.arg and k.arg not in NO_FACTS) | REPORTING[name],
            any(k.arg in (None, "facts") for k in node.keywords),
            keys,
            frozenset(g for g in GROUPS if all(_is_written(part) for part in groups.get(g, []))),
            isinstance(node.args[0], ast.JoinedStr),
            function is not None and function.name in REPORTING,
        )


@cache
def phrases(path: Path) -> tuple[Phrase, ...]:
    """Every phrase that a module makes, the facts and parts of reports among them."""
    parts = {id(n) for _, call in _calls(path) if called(call) in REPORTING for n in _parts(call)}
    return tuple(
        Phrase(
            key,
            frozenset(k.arg for k in node.keywords if k.arg),
            node.lineno,
            id(node) in parts,
            called(node) == "Said" or any(k.arg is None for k in node.keywords),
        )
        for function, node in _calls(path)
        if called(node) in ("said", "Said") and node.args
        for key in (tuple(_values(node.args[0], function, SHARED)) or ("",))
    )


@cache
def handed_on(package: str) -> tuple[tuple[str, frozenset[str]], ...]:
    """Codes whose case a package takes from elsewhere, `f"code/{case}"`, with the facts that are given beside; among them "facts"
    where some are handed on."""
    return tuple(
        (str(node.args[0].values[0].value).removesuffix("/"), frozenset(k.arg or "facts" for k in node.keywords))
        for path in of_package(package)
        for _, node in _calls(path)
        if called(node) in REPORTING and node.args and isinstance(node.args[0], ast.JoinedStr)
        if isinstance(node.args[0].values[0], ast.Constant) and str(node.args[0].values[0].value).endswith("/")
    )


def wordy(path: Path, terms: frozenset[str]) -> Iterator[tuple[int, str]]:
    """Texts for people in what a module reports: sentences put together there, and words that are in no table."""
    for _, call in _calls(path):
        if called(call) not in REPORTING and called(call) != "said":
            continue
        keys = {id(n) for argument in call.args[:1] for n in ast.walk(argument)}
        for node in ast.walk(call):
            if isinstance(node, ast.JoinedStr):
                if id(node) in keys and KEY.fullmatch(pattern(node)):
                    # A key that is put together is found among those of the table.
                    continue
                yield node.lineno, ast.unparse(node)
            elif isinstance(node, ast.Constant) and isinstance(node.value, str) and " " in node.value and node.value not in terms:
                yield node.lineno, node.value


def named_kinds(path: Path) -> Iterator[tuple[int, str]]:
    """The kinds of things that are looked up or compared by their names, as far as they are written there."""
    for _, call in _calls(path):
        if called(call) in ("unknown", "look_up", "once", "alike") and call.args and isinstance(call.func, ast.Attribute):
            first = call.args[0]
            if isinstance(first, ast.Constant) and isinstance(first.value, str):
                yield first.lineno, first.value


def called(node: ast.Call) -> str:
    if isinstance(node.func, ast.Attribute):
        return node.func.attr
    return node.func.id if isinstance(node.func, ast.Name) else ""


@cache
def _calls(path: Path) -> tuple[tuple[ast.FunctionDef | None, ast.Call], ...]:
    """Every call of a module with the function that it stands in."""
    return tuple(_calls_below(tree(path), None))


def _calls_below(node: ast.AST, function: ast.FunctionDef | None) -> Iterator[tuple[ast.FunctionDef | None, ast.Call]]:
    """Every call below a node with the function that it stands in."""
    for child in ast.iter_child_nodes(node):
        if isinstance(child, ast.Call):
            yield function, child
        yield from _calls_below(child, child if isinstance(child, ast.FunctionDef) else function)


KEY = re.compile(r"(?:[a-z0-9/-]|\[a-z0-9-\]\+)+")
KINDS: Collection[str] = ENGLISH.wordings
SHARED: Collection[str] = frozenset(ENGLISH.phrases) | frozenset(ENGLISH.clauses)


def pattern(node: ast.JoinedStr) -> str:
    """A regular expression of the keys that a text put together can be."""
    return "".join(str(part.value) if isinstance(part, ast.Constant) else "[a-z0-9-]+" for part in node.values)


def _values(node: ast.expr, function: ast.FunctionDef | None, known: Collection[str] = KINDS) -> Iterator[str]:
    """The texts that an expression can be: written there, given a name in the same function, or, where it is put together, those
    of the `known` ones that it can be."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.JoinedStr):
        yield from (key for key in sorted(known) if re.fullmatch(pattern(node), key))
    elif isinstance(node, ast.IfExp):
        yield from _values(node.body, function, known)
        yield from _values(node.orelse, function, known)
    elif isinstance(node, ast.Name) and function is not None:
        for statement in ast.walk(function):
            if isinstance(statement, ast.Assign):
                for target in statement.targets:
                    yield from _given(target, statement.value, node.id)


def _given(target: ast.expr, value: ast.expr, name: str) -> Iterator[str]:
    if isinstance(target, ast.Name) and target.id == name:
        yield from _values(value, None)
    elif isinstance(target, ast.Tuple) and isinstance(value, ast.Tuple) and len(target.elts) == len(value.elts):
        for one, other in zip(target.elts, value.elts, strict=True):
            yield from _given(one, other, name)


def _parts(call: ast.Call) -> Iterator[ast.Call]:
    """The phrases that stand as a label, a note or a help of a report."""
    for argument in (*call.args[1:], *(k.value for k in call.keywords if k.arg in GROUPS)):
        yield from (n for n in ast.walk(argument) if isinstance(n, ast.Call) and called(n) == "said")


def _keys(arguments: list[ast.expr]) -> Iterator[str]:
    """The keys written in labels, notes or helps: texts, and the first arguments of phrases."""
    for argument in arguments:
        yield from _keys_in(argument)


def _keys_in(node: ast.AST) -> Iterator[str]:
    if isinstance(node, ast.Constant):
        if isinstance(node.value, str) and node.value:
            yield node.value
    elif isinstance(node, ast.Call):
        if called(node) == "said" and node.args:
            yield from _keys_in(node.args[0])
        elif called(node) in ("tuple", "Label"):
            for argument in node.args:
                yield from _keys_in(argument)
    elif isinstance(node, ast.IfExp):
        yield from _keys_in(node.body)
        yield from _keys_in(node.orelse)
    elif isinstance(node, ast.GeneratorExp | ast.ListComp):
        yield from _keys_in(node.elt)
    elif isinstance(node, ast.Tuple | ast.List | ast.Starred | ast.BinOp | ast.BoolOp):
        for child in ast.iter_child_nodes(node):
            yield from _keys_in(child)


def _is_written(node: ast.AST) -> bool:
    """Whether all keys of a label, or of notes or helps, are written where they are given."""
    if isinstance(node, ast.Constant):
        return True
    if isinstance(node, ast.IfExp):
        return _is_written(node.body) and _is_written(node.orelse)
    if isinstance(node, ast.Starred):
        return _is_written(node.value)
    if isinstance(node, ast.GeneratorExp | ast.ListComp):
        return _is_written(node.elt)
    if isinstance(node, ast.Call):
        if called(node) == "said":
            return bool(node.args) and _is_written(node.args[0])
        return called(node) in ("tuple", "Label") and all(_is_written(a) for a in node.args[-1:])
    if isinstance(node, ast.Tuple | ast.List):
        # Of a label, (place, key), the place is no key.
        elements = node.elts[1:] if len(node.elts) == 2 and not isinstance(node.elts[0], ast.Constant) else node.elts
        return all(_is_written(e) for e in elements)
    return False
