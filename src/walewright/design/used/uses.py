"""Which names of a source lead to something that is made: what nothing leads to is reported, and left out of the design.

Uses are gathered from the tree alone, whatever the kind: what is made (pieces, bands, joins and so on) refers to definitions, and
these to further ones. A definition that none of what is made comes to is unused, though another unused one may name it.

A row `to fit` is always used: the page prints it, to choose a size by. Levels and names of edges are looked at in `idle_places`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import fields

from walewright.design.findings import Findings
from walewright.design.model import Design
from walewright.design.pieces.shapes import NAMES
from walewright.design.reading.choices import in_all
from walewright.record import record, replace
from walewright.report.model import Severity, Span
from walewright.report.said import said
from walewright.source import syntax

REFERENCES: Mapping[type, Mapping[str, str]] = {
    syntax.Name: {"name": "measurement"},
    syntax.Stitch: {"yarn": "yarn", "chart": "chart"},
    syntax.StripeRows: {"yarn": "yarn"},
    syntax.YarnLine: {"strands": "yarn"},
    syntax.ChartKey: {"yarn": "yarn"},
    syntax.Regauged: {"of": "fabric", "within": "fabric"},
    syntax.FabricBlock: {"like": "fabric", "yarn": "yarn"},
    syntax.EdgingLine: {"fabric": "fabric"},
    syntax.PieceBlock: {"fabric": "fabric"},
    syntax.Start: {"edging": "edging"},
    syntax.End: {"edging": "edging"},
    syntax.ZoneLine: {"fabric": "fabric"},
    syntax.MotifLine: {"chart": "chart"},
    syntax.BandLine: {"edging": "edging"},
    syntax.Use: {"name": "shape"},
}
"""Fields that name a definition, or several, by kind of node, and the kind of what they name."""

DEFINITIONS: Mapping[type, str] = {
    syntax.SizeRow: "measurement",
    syntax.Let: "measurement",
    syntax.YarnLine: "yarn",
    syntax.ChartBlock: "chart",
    syntax.FabricBlock: "fabric",
    syntax.EdgingLine: "edging",
    syntax.ShapeBlock: "shape",
}
"""Statements that only say what a name stands for. All others make something, or say something about all that is made."""

NamedIn = tuple[str, str]
"""(kind, name): a yarn and a fabric may have one name."""


@record
class Uses:
    """`reached`: every definition that something made comes to. `users`: which definitions name it, used or not."""

    reached: frozenset[NamedIn]
    users: Mapping[NamedIn, tuple[NamedIn, ...]]

    def has(self, kind: str, name: str) -> bool:
        return (kind, name) in self.reached


def uses(written: syntax.Tree, expanded: syntax.Tree) -> Uses:
    """What the source uses. Shapes are used where they are `written`; all else by what they come to where they are `expanded`."""
    graph: dict[NamedIn, list[NamedIn]] = {}
    made: list[NamedIn] = []
    for node in _statements(expanded):
        found = [n for n in references(node) if n[0] != "shape"]
        if isinstance(node, syntax.ShapeBlock):
            continue
        if type(node) in DEFINITIONS and not (isinstance(node, syntax.SizeRow) and node.to_fit):
            graph.setdefault(_named(node), []).extend(found)
        else:
            made += [*found, _named(node)] if isinstance(node, syntax.SizeRow) else found
    for node in written.statements:
        shapes = [n for n in references(node) if n[0] == "shape"]
        if isinstance(node, syntax.ShapeBlock):
            # What an unused shape names is used by it, and by nothing that is made.
            own = {*node.parameters, *(s.name for s in node.body if isinstance(s, syntax.Let))}
            named = [n for n in references(node) if n[1] not in own]
            graph.setdefault(("shape", node.name), []).extend(shapes)
            graph.setdefault(("in a shape", node.name), []).extend(named)
        else:
            made += shapes
    return Uses(_reached(made, graph), _users(graph))


def with_what_is_used(design: Design, found: Uses) -> Design:
    """The design without what nothing made comes to, so that no later stage reckons with it or prints it."""
    return replace(
        design,
        measurements=tuple(m for m in design.measurements if found.has("measurement", m.name)),
        yarns=tuple(y for y in design.yarns if found.has("yarn", y.name)),
        charts=tuple(c for c in design.charts if found.has("chart", c.name)),
        fabrics=tuple(f for f in design.fabrics if found.has("fabric", f.name)),
        edgings=tuple(e for e in design.edgings if found.has("edging", e.name)),
    )


def references(node: object) -> Iterator[NamedIn]:
    """The definitions that a node and what stands in it name."""
    if isinstance(node, tuple):
        for part in node:
            yield from references(part)
    if not isinstance(node, syntax.Node):
        return
    named = REFERENCES.get(type(node), {})
    for field in fields(node):
        value = getattr(node, field.name)
        if field.name in named and value:
            yield from ((named[field.name], name) for name in (value if isinstance(value, tuple) else (value,)))
        elif isinstance(value, syntax.Node | tuple):
            yield from references(value)


def wanted_charts(tree: syntax.Tree) -> tuple[str, ...]:
    """Names of the charts that a source uses, in whatever alternative, and does not define itself."""
    own = {s.name for s in in_all(tree.statements) if isinstance(s, syntax.ChartBlock)}
    named = (name for kind, name in references(tree.statements) if kind == "chart")
    return tuple(dict.fromkeys(name for name in named if name not in own))


def tell_unused(tree: syntax.Tree, found: Uses, findings: Findings) -> None:
    """Reports every definition of the source that nothing made comes to, and of what is unused within its shapes."""
    for node in _statements(tree):
        if isinstance(node, syntax.UseFrom):
            _tell_of_other_files(node, tree, found, findings)
        if node.span.file != tree.file:
            # Of another file, which has more than this source needs: told where it is used.
            continue
        if type(node) in DEFINITIONS and _named(node) not in found.reached:
            _tell(node, found, findings)
        if isinstance(node, syntax.ShapeBlock):
            _within(node, findings)


def _tell_of_other_files(line: syntax.UseFrom, tree: syntax.Tree, found: Uses, findings: Findings) -> None:
    kinds = {_named(n): _named(n)[0] for n in _statements(tree) if type(n) in DEFINITIONS and n.span.file != tree.file}
    for name in line.names:
        named = [key for key in kinds if key[1] == name]
        if named and not found.reached.intersection(named):
            findings.report(
                "unused-name/definition",
                (line.span, "nowhere"),
                helps=("delete-or-use",),
                severity=Severity.WARNING,
                kind="definition" if named[0][0] == "measurement" else named[0][0],
                name=name,
                by=(),
            )


def _tell(node: syntax.Node, found: Uses, findings: Findings) -> None:
    kind, name = _named(node)
    users = [("shape" if k == "in a shape" else k, n) for k, n in found.users.get((kind, name), ())]
    by = tuple(dict.fromkeys(said("named", kind=k, name=n) for k, n in users))
    findings.report(
        "unused-name/definition",
        (node.span, "by-unused" if by else "nowhere"),
        notes=("by",) if by else (),
        helps=("or-to-fit" if isinstance(node, syntax.SizeRow) else "delete-or-use",),
        severity=Severity.WARNING,
        kind="definition" if isinstance(node, syntax.Let) else kind,
        name=name,
        by=by,
    )


def _within(shape: syntax.ShapeBlock, findings: Findings) -> None:
    """Names in brackets and definitions of a shape that its statements do not come to."""
    lets = {s.name: s for s in shape.body if isinstance(s, syntax.Let)}
    graph = {("", name): [("", n) for n in _words(let.value)] for name, let in lets.items()}
    made = [("", n) for s in shape.body if not isinstance(s, syntax.Let) for n in _words(s)]
    reached = _reached(made, graph)
    unused: list[tuple[str, str, Span, str]] = [(p, "value", shape.span, "delete-in-uses") for p in shape.parameters]
    unused += [(name, "definition", let.span, "delete-or-use") for name, let in lets.items()]
    for name, kind, span, help_ in unused:
        if ("", name) not in reached:
            findings.report(
                "unused-name/in-shape",
                (span, "nowhere"),
                helps=(help_,),
                severity=Severity.WARNING,
                shape=shape.name,
                kind=kind,
                name=name,
            )


def _words(node: object) -> Iterator[str]:
    """Everything in a node of a shape that a name in its brackets may stand for."""
    if isinstance(node, tuple):
        for part in node:
            yield from _words(part)
    if not isinstance(node, syntax.Node):
        return
    for field in fields(node):
        value = getattr(node, field.name)
        if isinstance(value, str) and (isinstance(node, syntax.Name) or field.name in NAMES.get(type(node), ())):
            yield value
        elif isinstance(value, syntax.Node | tuple):
            yield from _words(value)


def _statements(tree: syntax.Tree) -> Iterator[syntax.Node]:
    """The statements at the left margin, the rows of the size table among them."""
    for statement in tree.statements:
        if isinstance(statement, syntax.Sizes):
            yield from (s for s in statement.body if isinstance(s, syntax.SizeRow))
        else:
            yield statement


def _named(node: syntax.Node) -> NamedIn:
    return DEFINITIONS[type(node)], str(getattr(node, "name", ""))


def _reached(made: Iterable[NamedIn], graph: Mapping[NamedIn, list[NamedIn]]) -> frozenset[NamedIn]:
    seen: set[NamedIn] = set()
    left = list(made)
    while left:
        last = left.pop()
        if last not in seen:
            seen.add(last)
            left += graph.get(last, [])
    return frozenset(seen)


def _users(graph: Mapping[NamedIn, list[NamedIn]]) -> dict[NamedIn, tuple[NamedIn, ...]]:
    users: dict[NamedIn, dict[NamedIn, None]] = {}
    for user, named in graph.items():
        for one in named:
            if one != user:
                users.setdefault(one, {})[user] = None
    return {name: tuple(by) for name, by in users.items()}
