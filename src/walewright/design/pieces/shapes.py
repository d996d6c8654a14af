"""Shapes: `use` replaced by the statements of a shape, the names in its brackets by what the `use` says.

A quantity becomes a hidden `let` of its own, so that it is worked out once however often its name stands in the shape; so do
the `let`s of a shape, which are local to one use. A name stands for itself. What comes of a shape has a `Used` span: messages
point at the `use`, and then at the statement in the shape.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import fields
from itertools import count
from typing import Any

from walewright.design.findings import Findings, Used
from walewright.design.pieces.one_edge import at_edge
from walewright.design.pieces.shape_extents import extents
from walewright.design.reading.choices import in_all
from walewright.design.reading.meanings import LEAVE_OUT
from walewright.design.reading.values import HIDDEN
from walewright.record import record, replace
from walewright.report.model import Span
from walewright.report.said import said
from walewright.source import syntax

DEEPEST = 20
"""Shapes within shapes; nobody follows more."""
MOST_STATEMENTS = 1000
"""Lines that shapes may give to a piece, their own uses and definitions among them."""
MOST_IN_ALL = 5000
"""Lines that shapes may give to all pieces of a source together."""

NAMES: Mapping[type, tuple[str, ...]] = {
    syntax.LevelDef: ("name",),
    syntax.Start: ("edging",),
    syntax.End: ("edging",),
    syntax.EdgeRef: ("piece", "edge"),
    syntax.EdgeLine: ("to_level", "called"),
    syntax.AcrossLine: ("level",),
    syntax.OpeningLine: ("name", "from_level", "to_level"),
    syntax.SlotLine: ("name", "level"),
    syntax.ButtonholesLine: ("from_level", "to_level"),
    syntax.WedgeLine: ("from_level", "to_level"),
    syntax.ZoneLine: ("fabric", "from_level", "to_level"),
    syntax.MotifLine: ("chart", "level"),
    syntax.RepeatLine: ("from_level", "to_level"),
    syntax.NeedlesLine: ("from_level", "to_level"),
    syntax.Shoulders: ("from_level",),
    syntax.Regauged: ("of", "within"),
}
"""Fields that hold a name of something, by kind of statement."""
FIELD_KINDS = {"to_level": "level", "from_level": "level", "called": "edge", "name": "name of something"}
"""What a field names, where it is not called so itself."""

OF_A_PIECE = (
    *(k for k in NAMES if k not in (syntax.LevelDef, syntax.EdgeRef, syntax.Regauged)),
    syntax.Levels,
    syntax.Neck,
    syntax.TextLine,
    syntax.Use,
)
"""What can stand in a shape, besides `let`."""


def wanted_shapes(tree: syntax.Tree) -> tuple[str, ...]:
    """Names of the shapes that a source uses, in whatever alternative, and does not define itself in all of them."""
    own = {s.name for s in tree.statements if isinstance(s, syntax.ShapeBlock)}
    blocks = (s.body for s in in_all(tree.statements) if isinstance(s, syntax.PieceBlock | syntax.ShapeBlock))
    used = (s.name for body in blocks for s in in_all(body) if isinstance(s, syntax.Use))
    return tuple(dict.fromkeys(name for name in used if name not in own))


def expanded(tree: syntax.Tree, shipped: Iterable[syntax.ShapeBlock], names: Iterable[str], findings: Findings) -> syntax.Tree:
    """The tree with every `use` replaced, and the `let`s of the shapes behind its statements.

    `shipped` are the shapes used from outside the tree, `names` those that could be; the tree's own come first."""
    own = [s for s in tree.statements if isinstance(s, syntax.ShapeBlock)]
    findings.once("shape", ((s.name, s.span) for s in own))
    shapes = {s.name: s for s in (*reversed([*shipped]), *reversed(own))}
    for shape in own:
        _sound(shape, findings)
    if not any(isinstance(s, syntax.PieceBlock) and any(isinstance(b, syntax.Use) for b in s.body) for s in tree.statements):
        return tree
    used = [b.name for s in tree.statements if isinstance(s, syntax.PieceBlock) for b in s.body if isinstance(b, syntax.Use)]
    expander = _Expander(shapes, tuple(dict.fromkeys((*(s.name for s in own), *names))), used, findings)
    statements = tuple(replace(s, body=expander.block(s.body)) if isinstance(s, syntax.PieceBlock) else s for s in tree.statements)
    return replace(tree, statements=(*statements, *expander.lets))


def _sound(shape: syntax.ShapeBlock, findings: Findings) -> None:
    named = [(p, shape.span) for p in shape.parameters]
    lets = [(s.name, s.span) for s in shape.body if isinstance(s, syntax.Let)]
    findings.once("value", (*named, *lets))
    for statement in shape.body:
        if not isinstance(statement, (*OF_A_PIECE, syntax.Let, syntax.Broken)):
            findings.report("impossible-statement/in-shape", (statement.span, "shape"))


@record
class _Values:
    """What the names in a shape stand for: `given` as the `use` says it, `meant` where a quantity is needed."""

    shape: str
    given: Mapping[str, syntax.Expr]
    meant: Mapping[str, syntax.Expr]


class _Expander:
    def __init__(
        self, shapes: Mapping[str, syntax.ShapeBlock], names: tuple[str, ...], used: Iterable[str], findings: Findings
    ) -> None:
        self.shapes = shapes
        self.names = names
        self.findings = findings
        self.lets: list[syntax.Let] = []
        self.number = count(1)
        # Those that are not used are not followed, and a ring among them is told where one is used.
        self.extents = extents(shapes, used)
        self.given = 0
        self.rings: set[tuple[str, ...]] = set()
        self.misnamed: set[Span] = set()

    def block(self, body: tuple[syntax.Statement, ...]) -> tuple[syntax.Statement, ...]:
        """A piece's statements with those of its shapes in their places."""
        lines = sum(self._lines(s) for s in body if isinstance(s, syntax.Use))
        beyond = lines > MOST_STATEMENTS or self.given + lines > MOST_IN_ALL
        if not beyond:
            self.given += lines
        made: list[syntax.Statement] = []
        for statement in body:
            if not isinstance(statement, syntax.Use):
                made.append(statement)
            elif self._ends(statement) and not (beyond and self._lines(statement)):
                made += self.used(statement, statement.span, ())
            else:
                # As for a line that cannot be read: what the piece lacks without it is not told as well.
                made.append(syntax.Broken("", span=statement.span))
        if beyond:
            self._flood([s for s in body if isinstance(s, syntax.Use)], lines)
        return tuple(made)

    def _lines(self, use: syntax.Use) -> int:
        """How many lines a use comes to; 0 where it is told for another reason."""
        extent = self.extents.get(use.name)
        return 0 if extent is None or extent.ring or extent.deep > DEEPEST else extent.lines

    def _ends(self, use: syntax.Use) -> bool:
        """Whether what a piece uses comes to an end that can be followed; told where not."""
        extent = self.extents.get(use.name)
        if extent is None:
            return True
        if extent.closed_by is not None:
            if extent.ring not in self.rings:
                self.rings.add(extent.ring)
                self.findings.report(
                    "shape-ring",
                    (extent.closed_by.span, "again"),
                    helps=("without",),
                    ring=extent.ring,
                    again=extent.closed_by.name,
                )
            return False
        if extent.deep > DEEPEST:
            self.findings.report(
                "shape-too-large/deep", (use.span, "deep"), helps=("less-deep",), deepest=DEEPEST, used=use.name, deep=extent.deep
            )
            return False
        return True

    def _flood(self, uses: list[syntax.Use], lines: int) -> None:
        most = max(uses, key=self._lines)
        if lines > MOST_STATEMENTS:
            self.findings.report(
                "shape-too-large/piece",
                (most.span, "comes"),
                helps=("fewer",),
                lines=lines,
                most=MOST_STATEMENTS,
                used=most.name,
                own_lines=self._lines(most),
            )
        else:
            self.findings.report(
                "shape-too-large/source",
                (most.span, "more"),
                helps=("fewer",),
                most=MOST_IN_ALL,
                lines=lines,
            )

    def used(self, use: syntax.Use, at: Span, path: tuple[str, ...]) -> Iterator[syntax.Statement]:
        """The statements of one use. `at` is the place of the outermost `use`, `path` the shapes around this one."""
        shape = self.shapes.get(use.name)
        if shape is None:
            self.findings.unknown("shape", use.name, use.span, self.names)
            return
        values = self._values(use, shape, at)
        if values is None:
            return
        of_both = False
        for statement in shape.body:
            if isinstance(statement, syntax.Use):
                inner: syntax.Use = self._filled(statement, values, self._mark(at, use.name))
                made = [*self.used(inner, at, (*path, use.name))]
            elif isinstance(statement, OF_A_PIECE):
                made = [self._filled(statement, values, self._mark(at, use.name))]
            else:
                continue
            of_both = of_both or any(at_edge(s, "left") != s for s in made)
            yield from (s if use.edge == "both" else at_edge(s, use.edge) for s in made)
        if not of_both and use.edge != "both":
            self.findings.idle(use, "edge", said("nothing-of-both-edges", shape=use.name), LEAVE_OUT)

    @staticmethod
    def _mark(at: Span, shape: str) -> Callable[[Span], Span]:
        model = at.model if isinstance(at, Used) else ""
        return lambda span: Used(at.file, at.start, at.end, span, shape, model)

    # ------------------------------------------------------------ values of the names

    def _values(self, use: syntax.Use, shape: syntax.ShapeBlock, at: Span) -> _Values | None:
        if not all_given(use, shape, self.findings):
            return None
        given = dict(use.arguments)
        number = next(self.number)
        meant: dict[str, syntax.Expr] = {}
        for name, value in given.items():
            meant[name] = value if isinstance(value, syntax.Name) else self._hidden(name, number, value, value.span)
        lets = [s for s in shape.body if isinstance(s, syntax.Let)]
        meant |= {let.name: syntax.Name(f"{let.name}{HIDDEN}{number}") for let in lets}
        values = _Values(use.name, given, meant)
        mark = self._mark(at, use.name)
        for let in lets:
            self._hidden(let.name, number, self._filled(let.value, values, mark), mark(let.span))
        return values

    def _hidden(self, name: str, number: int, value: syntax.Expr, span: Span) -> syntax.Name:
        """A definition of its own for a value, and the name that stands for it."""
        hidden = f"{name}{HIDDEN}{number}"
        self.lets.append(syntax.Let(hidden, value, span=span))
        return syntax.Name(hidden, span=span)

    # ------------------------------------------------------------ filling in

    def _filled(self, node: Any, values: _Values, mark: Callable[[Span], Span]) -> Any:
        """The node with the values in it and its spans marked."""
        if isinstance(node, syntax.Name) and node.name in values.meant:
            meant = values.meant[node.name]
            # A local definition has no place of its own here; a value keeps the place where the use says it.
            return replace(meant, span=mark(node.span)) if meant.span.file == "" else meant
        if isinstance(node, tuple):
            return tuple(self._filled(n, values, mark) for n in node)
        if not isinstance(node, syntax.Node):
            return node
        named = NAMES.get(type(node), ())
        changed: dict[str, Any] = {"span": mark(node.span), "said": tuple((name, mark(span)) for name, span in node.said)}
        for field in fields(node):
            value = getattr(node, field.name)
            if field.name in changed:
                continue
            if field.name in named and value in values.given:
                changed[field.name] = self._name(values.given[value], value, field.name, node, values)
            elif isinstance(value, syntax.Node | tuple):
                changed[field.name] = self._filled(value, values, mark)
        return replace(node, **changed)

    def _name(self, given: syntax.Expr, parameter: str, field: str, node: syntax.Node, values: _Values) -> str:
        if isinstance(given, syntax.Name):
            return given.name
        if given.span not in self.misnamed:
            self.misnamed.add(given.span)
            self.findings.lose(parameter)
            field = "fabric" if isinstance(node, syntax.Regauged) else field
            self.findings.report(
                "name-expected",
                (given.span, "quantity"),
                (node.span, "named"),
                helps=("name-one",),
                parameter=parameter,
                shape=values.shape,
                what=FIELD_KINDS.get(field, field),
            )
        return parameter


def all_given(use: syntax.Use, shape: syntax.ShapeBlock, findings: Findings) -> bool:
    """Whether a shape is given each of its values once, and nothing else; told where it is not."""
    named = [name for name, _ in use.arguments]
    findings.once(said("value-given", shape=use.name), ((name, use.span) for name in named))
    strange = [name for name in dict(use.arguments) if name not in shape.parameters]
    for name in strange:
        findings.unknown(said("value-of", shape=use.name), name, use.span, shape.parameters, code="unknown-argument")
    missing = [p for p in shape.parameters if p not in named]
    if missing:
        findings.report(
            "missing-argument",
            (use.span, "lacking"),
            (shape.span, "shape"),
            helps=("say-it",),
            used=use.name,
            missing=tuple(missing),
        )
    return not missing and not strange and len(set(named)) == len(named)
