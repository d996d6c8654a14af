"""No stage decides by words: what is said to people is made of data, and nothing is read out of it again.

A field that holds words is compared, searched or cut up nowhere. Whether it is empty may be asked, and it may be printed, joined
and measured for a line's length. The code is read, not run: a name that was assigned from such a field in the same function
counts as the field.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from tests.laws.code_tree import breaches, dotted, each_stage, modules, nodes, stage, tree

WORDS = frozenset({"text", "message", "title", "label", "what", "says"})
"""Fields of the stages' data that hold words for people."""

CUTTING = frozenset(
    {
        *("startswith", "endswith", "removeprefix", "removesuffix", "replace", "split", "rsplit", "splitlines", "partition"),
        *("rpartition", "strip", "lstrip", "rstrip", "find", "rfind", "index", "count", "lower", "upper", "casefold", "islower"),
        *("isupper", "isdigit", "translate"),
    }
)
MATCHING = frozenset({"search", "match", "fullmatch", "findall", "finditer", "sub", "subn", "split"})
"""Of `re` and of compiled patterns, with words as an argument."""

AUTHORS_SOURCE = frozenset({"source"})
"""Stages whose input is the author's text: to take it apart is what they are for."""

ALLOWED = {
    "cli.edits._renamed": "the author's source, cut at the spans of what is edited in it",
    "cli.edits._written_instead": "the author's source, looked through for what is to be written otherwise",
    "design.reading.counts.tex": "a yarn's count as its author wrote it, read as a number",
    "design.model.machine.called": "the author's label of a machine, printed as far as its first comma",
    "design.findings.__init__": "the author's source: the names within a line",
    "sheet.parts._stretches": "where a line may break: a blank and a stop go with the figure beside them",
    "sheet.fewer_boxes._kept": "where a line may break",
    "sheet.fewer_boxes._cell": "whether there are any",
    "sheet.kept_words.keep_figures": "where a line may break: a figure stays with what it counts",
    "sheet.shared_styles.with_anchors_on_headings": "the anchors that a style sheet names",
    "sheet.shared_styles._heading": "whether there are any",
    "report.excerpt.column": "the author's source, shown under a message",
    "report.excerpt.shown": "the author's source, shown under a message",
    "report.places.line": "the author's source, cut into lines",
    "report.places.place": "the author's source, cut into lines",
    "write.plain._kept": "where a line may break: a figure's brackets stay together",
    "write.said.capital": "the capital of a sentence",
    "write.said.small": "the capital of a sentence",
}
"""Functions that take words apart, and what for: none of them decides by what the words say."""


def decisions(module: ast.Module) -> list[tuple[str, str]]:
    """Where words are compared, searched or cut up: (function, line and expression)."""
    found: list[tuple[str, str]] = []
    for scope in _scopes(module):
        names, name = _aliases(scope), getattr(scope, "name", "")
        found += ((name, f"line {node.lineno}: {ast.unparse(node)}") for node in _own(scope) if _decides(node, names))
    return found


Scope = ast.Module | ast.FunctionDef


def _scopes(module: ast.Module) -> Iterator[Scope]:
    yield module
    yield from (node for node in nodes(module) if isinstance(node, ast.FunctionDef))


def _own(scope: Scope) -> Iterator[ast.expr]:
    """The expressions of a scope, without those of functions within it."""
    waiting: list[ast.AST] = list(scope.body)
    while waiting:
        node = waiting.pop(0)
        if isinstance(node, ast.FunctionDef):
            continue
        if isinstance(node, ast.expr):
            yield node
        waiting += ast.iter_child_nodes(node)


def _aliases(scope: Scope) -> frozenset[str]:
    """Names that a scope gives to words: `text = sentence.text`, also several at once, and what is joined of them."""
    names: set[str] = set()
    for statement in ast.walk(scope):
        if isinstance(statement, ast.Assign):
            for target in statement.targets:
                names |= _named(target, statement.value)
    return frozenset(names)


def _named(target: ast.expr, value: ast.expr) -> set[str]:
    if isinstance(target, ast.Tuple) and isinstance(value, ast.Tuple):
        return {name for t, v in zip(target.elts, value.elts, strict=False) for name in _named(t, v)}
    return {target.id} if isinstance(target, ast.Name) and _is_words(value, frozenset()) else set()


def _is_words(node: ast.expr, names: frozenset[str]) -> bool:
    """Whether an expression is a field of words, a name for it, or words joined of such fields."""
    match node:
        case ast.Attribute(attr=attr):
            return attr in WORDS
        case ast.Name(id=name):
            return name in names
        case ast.Call(
            func=ast.Attribute(value=ast.Constant(value=str()), attr="join"), args=[ast.GeneratorExp() | ast.ListComp() as all_]
        ):
            return _is_words(all_.elt, names)
        case ast.ListComp() | ast.GeneratorExp() | ast.SetComp():
            return _is_words(node.elt, names)
        case ast.Call(func=ast.Attribute(value=inner, attr=attr)) if attr in CUTTING:
            return _is_words(inner, names)
        case ast.Subscript(value=inner, slice=ast.Slice()):
            return _is_words(inner, names)
        case ast.BoolOp(values=values):
            return any(_is_words(v, names) for v in values)
    return False


def _decides(node: ast.expr, names: frozenset[str]) -> bool:
    match node:
        case ast.Compare():
            # Whether there is one at all is no question about its words.
            compared = [c for op, c in zip(node.ops, node.comparators, strict=True) if not isinstance(op, ast.Is | ast.IsNot)]
            return bool(compared) and any(_is_words(side, names) for side in (node.left, *compared))
        case ast.Call(func=ast.Attribute(value=value, attr=attr)):
            if attr in CUTTING and _is_words(value, names):
                return True
            return attr in MATCHING and any(_is_words(argument, names) for argument in node.args)
        case ast.Subscript(value=value, slice=ast.Slice()):
            return _is_words(value, names)
    return False


READ = tuple(p for p in modules() if stage(p) not in AUTHORS_SOURCE)


@cache
def placed(path: Path) -> list[tuple[str, str]]:
    """The decisions of a file, each with its function as exceptions name it."""
    return [(f"{dotted(path).partition('.')[2]}.{name}", where) for name, where in decisions(tree(path))]


@each_stage(READ)
def test_nothing_is_decided_by_words(paths: list[Path]) -> None:
    assert breaches(lambda path: [found for found in placed(path) if found[0] not in ALLOWED], paths) == {}


def test_every_exception_is_needed() -> None:
    assert set(ALLOWED) - {name for path in READ for name, _ in placed(path)} == set()


@pytest.mark.parametrize(
    "text",
    [
        "any('carr' in s.text for s in sentences)",
        "notes = [n for n in notes if not n.text.startswith('Repeat:')]",
        "row = m.label.lower().removeprefix('whole ')",
        "known = share in use.text",
        "if first.what == 'width at start': pass",
        "def f(run):\n    text, last = run.text, None\n    return re.match('[.,;]', text)",
        "def f(sentences):\n    text = ' '.join(s.text for s in sentences)\n    return re.search('RC', text)",
        "def f(notes):\n    told = [n.text for n in notes]\n    return 'x' in told",
        "_GRADED.finditer(fact.text)",
        "capital = block.title[:1]",
        "sentence.runs[0].text.startswith(NOTES)",
    ],
)
def test_the_law_sees_a_decision(text: str) -> None:
    assert decisions(ast.parse(text)) != []


@pytest.mark.parametrize(
    "text",
    [
        "if paragraph.title: print(paragraph.title)",
        "line = f'{fact.label}: {fact.text}'",
        "short = len(fact.text) <= 20",
        "given = ball.label is None",
        "first = rule.says[0]",
        "if note.kind in ABOVE: told.append(note.text)",
    ],
)
def test_the_law_lets_words_be_printed(text: str) -> None:
    assert decisions(ast.parse(text)) == []
