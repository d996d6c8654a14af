"""Single faults that can be made in a module: what `single_faults.py` draws from.

Each is one slip of a programmer's pen, in code that runs: docstrings, type annotations and the sentences of messages are left
alone, and so are decorators, imports, assertions, among them that sequences are as long as each other, and what is raised.
"""

from __future__ import annotations

import ast
import re
from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

Place = tuple[int, int]
"""A line, counted from 1, and a byte within it."""

Words = Mapping[str, frozenset[str]]
"""Closed kinds of words: what is called so in the code, and the words it is compared with; or a type of literals."""


@dataclass(frozen=True, slots=True)
class Fault:
    """`before`, from `start` to `end`, is made `after`; it is part of the statement on `lines`."""

    kind: str
    start: Place
    end: Place
    before: str
    after: str
    lines: range

    def made_in(self, text: str) -> str:
        """The text of the module with this fault in it."""
        start, end = _offset(text, self.start), _offset(text, self.end)
        data = text.encode()
        return (data[:start] + self.after.encode() + data[end:]).decode()


def _offset(text: str, place: Place) -> int:
    lines = text.splitlines(keepends=True)
    return sum(len(line.encode()) for line in lines[: place[0] - 1]) + place[1]


def literals(modules: Iterable[ast.Module]) -> Words:
    """The words of each `Literal` in the modules."""
    types = [
        n for module in modules for n in ast.walk(module) if isinstance(n, ast.Subscript) and ast.unparse(n.value) == "Literal"
    ]
    return _plain({ast.unparse(node): set(_words(node.slice)) for node in types})


def compared(module: ast.Module) -> Words:
    """The words that a name is compared with in a module."""
    found: dict[str, set[str]] = defaultdict(set)
    for node in ast.walk(module):
        if isinstance(node, ast.Compare):
            called = ast.unparse(node.left).rsplit(".", 1)[-1]
            found[called] |= {w for part in node.comparators for w in _words(part)}
        elif isinstance(node, ast.Match):
            called = ast.unparse(node.subject).rsplit(".", 1)[-1]
            found[called] |= {w for case in node.cases for part in ast.walk(case.pattern) for w in _words(part)}
    return _plain(found)


def _plain(kinds: Mapping[str, set[str]]) -> Words:
    plain = {called: frozenset(w for w in words if re.fullmatch(r"[a-z][a-z -]*", w)) for called, words in kinds.items()}
    return {called: words for called, words in plain.items() if len(words) > 1}


def _words(node: ast.AST) -> Iterator[str]:
    if isinstance(node, ast.MatchValue):
        node = node.value
    for part in node.elts if isinstance(node, ast.Tuple | ast.Set | ast.List) else [node]:
        if isinstance(part, ast.Constant) and isinstance(part.value, str):
            yield part.value


def faults_in(text: str, common: Words) -> list[Fault]:
    """Every fault that can be made in the module `text`, in the order of its lines; `common` kinds of words are of all modules."""
    module = ast.parse(text)
    found = _Finder(text, {**common, **compared(module)}).of_body(module.body, None)
    return sorted(set(found), key=lambda f: (f.start, f.end, f.kind, f.after))


SHIFTED: dict[type[ast.cmpop], tuple[type[ast.cmpop], ...]] = {
    ast.Lt: (ast.LtE, ast.Gt),
    ast.LtE: (ast.Lt, ast.GtE),
    ast.Gt: (ast.GtE, ast.Lt),
    ast.GtE: (ast.Gt, ast.LtE),
    ast.Eq: (ast.NotEq,),
    ast.NotEq: (ast.Eq,),
    ast.In: (ast.NotIn,),
    ast.NotIn: (ast.In,),
    ast.Is: (ast.IsNot,),
    ast.IsNot: (ast.Is,),
}
NEUTRAL = (
    (r"(tuple|Sequence)\b", "()"),
    (r"(list|Iterator|Iterable)\b", "[]"),
    (r"(dict|Mapping|Counter)\b", "{}"),
    (r"(set|frozenset|Set)\b", "frozenset()"),
    (r"int$", "0"),
    (r"float$", "0.0"),
    (r"bool$", "False"),
    (r"str$", '""'),
    (r".*\| None$", "None"),
)
"""By the beginning of what a function says it returns: what says nothing of that kind."""

EITHER_WAY = {"min", "max", "gcd", "lcm", "isclose", "hypot", "isinstance", "issubclass", "getattr", "field", "cast", "TypeVar"}
"""Called with their arguments the other way round these say the same, or cannot be called at all."""


class _Finder:
    def __init__(self, text: str, kinds: Words) -> None:
        self.lines = [line.encode() for line in text.splitlines(keepends=True)]
        self.kinds = kinds

    def of_body(self, body: list[ast.stmt], returned: str | None) -> Iterator[Fault]:
        for statement in body:
            yield from self.of_statement(statement, returned)

    def of_statement(self, node: ast.stmt, returned: str | None) -> Iterator[Fault]:
        if _no_code(node):
            return
        inside = [part for part in ast.iter_child_nodes(node) if isinstance(part, ast.stmt | ast.match_case | ast.ExceptHandler)]
        if isinstance(node, ast.FunctionDef):
            returned = ast.unparse(node.returns) if node.returns else None
            own: list[ast.AST] = [d for d in (*node.args.defaults, *node.args.kw_defaults) if d]
        elif isinstance(node, ast.ClassDef):
            own = []
        elif isinstance(node, ast.AnnAssign):
            own = [node.value] if node.value else []
        else:
            own = [part for part in ast.iter_child_nodes(node) if part not in inside]
        last = min((part.lineno - 1 for part in inside if hasattr(part, "lineno")), default=node.end_lineno or node.lineno)
        header = range(node.lineno, max(node.lineno, last) + 1)
        if isinstance(node, ast.If | ast.While):
            yield self.negated(node.test, header)
        elif isinstance(node, ast.Return) and node.value is not None:
            yield from self.neutral(node.value, returned, header)
        for part in own:
            yield from self.of_expression(part, header)
        for part in inside:
            if isinstance(part, ast.stmt):
                yield from self.of_statement(part, returned)
            elif isinstance(part, ast.ExceptHandler):
                yield from self.of_body(part.body, returned)
            elif isinstance(part, ast.match_case):
                lines = range(part.pattern.lineno, part.pattern.lineno + 1)
                for word in ast.walk(part.pattern):
                    if isinstance(word, ast.Constant):
                        yield from self.of_constant(word, lines)
                if part.guard is not None:
                    yield self.negated(part.guard, lines)
                    yield from self.of_expression(part.guard, lines)
                yield from self.of_body(part.body, returned)

    def of_expression(self, node: ast.AST, lines: range) -> Iterator[Fault]:
        if isinstance(node, ast.JoinedStr):
            return
        if isinstance(node, ast.Constant):
            yield from self.of_constant(node, lines)
        elif isinstance(node, ast.Compare):
            for at, op in enumerate(node.ops):
                for other in SHIFTED[type(op)]:
                    ops = [*node.ops[:at], other(), *node.ops[at + 1 :]]
                    yield self.replaced("comparison", node, ast.Compare(node.left, ops, node.comparators), lines)
        elif isinstance(node, ast.BoolOp):
            other_op = ast.Or() if isinstance(node.op, ast.And) else ast.And()
            yield self.replaced("and/or", node, ast.BoolOp(other_op, node.values), lines)
        elif isinstance(node, ast.IfExp):
            yield self.negated(node.test, lines)
        elif isinstance(node, ast.comprehension):
            for test in node.ifs:
                yield self.negated(test, lines)
        elif isinstance(node, ast.BinOp) and isinstance(node.op, ast.Add | ast.Sub):
            yield self.replaced("term dropped", node, node.left, lines)
            if isinstance(node.op, ast.Add):
                yield self.replaced("term dropped", node, node.right, lines)
        elif isinstance(node, ast.Call):
            yield from self.of_call(node, lines)
        elif isinstance(node, ast.Subscript) and (index := ast.unparse(node.slice)) in ("0", "-1"):
            yield self.written("first/last", node.slice, "-1" if index == "0" else "0", lines)
            yield from self.of_expression(node.value, lines)
            return
        for part in ast.iter_child_nodes(node):
            if not (isinstance(part, ast.keyword) and part.arg == "strict"):
                yield from self.of_expression(part, lines)

    def of_call(self, node: ast.Call, lines: range) -> Iterator[Fault]:
        called = ast.unparse(node.func).rsplit(".", 1)[-1]
        if isinstance(node.func, ast.Name) and called in ("min", "max"):
            yield self.written("min/max", node.func, "max" if called == "min" else "min", lines)
        if called in EITHER_WAY:
            return
        for one, other in zip(node.args, node.args[1:], strict=False):
            first, second = ast.unparse(one), ast.unparse(other)
            if first != second and not any(isinstance(a, ast.Starred | ast.JoinedStr) for a in (one, other)):
                start, end = (one.lineno, one.col_offset), (other.end_lineno or 0, other.end_col_offset or 0)
                yield Fault("swapped", start, end, self.between(start, end), f"{second}, {first}", lines)

    def of_constant(self, node: ast.Constant, lines: range) -> Iterator[Fault]:
        value = node.value
        if isinstance(value, bool):
            yield self.written("number", node, str(not value), lines)
        elif isinstance(value, int):
            for other in (value + 1, value - 1) if value else (1,):
                yield self.written("number", node, str(other), lines)
        elif isinstance(value, float):
            yield self.written("number", node, repr(value * 0.9 if value else 1.0), lines)
        elif isinstance(value, str):
            for words in self.kinds.values():
                if value in words:
                    for other_word in sorted(words - {value}):
                        yield self.written("word", node, repr(other_word), lines)

    def negated(self, test: ast.expr, lines: range) -> Fault:
        return self.replaced("negated", test, ast.UnaryOp(ast.Not(), test), lines)

    def neutral(self, value: ast.expr, returned: str | None, lines: range) -> Iterator[Fault]:
        for pattern, nothing in NEUTRAL:
            if returned and re.match(pattern, returned):
                if ast.unparse(value) not in (nothing, nothing.replace('"', "'")):
                    yield self.written("neutral", value, nothing, lines)
                return

    def replaced(self, kind: str, node: ast.expr, other: ast.expr, lines: range) -> Fault:
        return self.written(kind, node, f"({ast.unparse(other)})", lines)

    def written(self, kind: str, node: ast.expr, after: str, lines: range) -> Fault:
        start, end = (node.lineno, node.col_offset), (node.end_lineno or 0, node.end_col_offset or 0)
        return Fault(kind, start, end, self.between(start, end), after, lines)

    def between(self, start: Place, end: Place) -> str:
        data = b"".join(self.lines[start[0] - 1 : end[0]])
        return data[start[1] : len(data) - len(self.lines[end[0] - 1]) + end[1]].decode()


def _no_code(node: ast.stmt) -> bool:
    """Docstrings, imports, assertions, what is raised, names of types, and what only a type checker reads."""
    match node:
        case ast.Import() | ast.ImportFrom() | ast.Assert() | ast.Raise() | ast.Expr(ast.Constant()):
            return True
        case ast.If(ast.Name("TYPE_CHECKING")):
            return True
        case ast.Assign([ast.Name(name)], _):
            return name.startswith("__") or re.fullmatch(r"_?[A-Z]\w*[a-z]\w*", name) is not None
    return False
