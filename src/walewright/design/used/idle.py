"""Shapes of the source that no piece uses: what would be wrong in them wherever they were used is reported too.

Names that may be levels or edges of the piece are not: they are known only where a shape is used.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import fields

from walewright.design.findings import Findings
from walewright.design.pieces.shapes import all_given
from walewright.design.reading.values import HIDDEN
from walewright.design.used.once import every
from walewright.design.used.uses import REFERENCES, Uses
from walewright.source import syntax


def tell_idle_shapes(tree: syntax.Tree, shipped: Iterable[str], found: Uses, findings: Findings) -> None:
    """Tells of every name that nothing has in the shapes of the source that nothing uses. `shipped`: the names of the others."""
    shapes = {s.name: s for s in reversed(every(tree, syntax.ShapeBlock))}
    idle = [s for s in every(tree, syntax.ShapeBlock) if not found.has("shape", s.name)]
    known = {
        "measurement": (
            *(r.name for t in every(tree, syntax.Sizes) for r in t.body if isinstance(r, syntax.SizeRow)),
            *(n.name for n in every(tree, syntax.Let) if HIDDEN not in n.name),
        ),
        "yarn": tuple(n.name for n in every(tree, syntax.YarnLine)),
        "chart": tuple(n.name for n in every(tree, syntax.ChartBlock)),
        "fabric": tuple(n.name for n in every(tree, syntax.FabricBlock)),
        "edging": tuple(n.name for n in every(tree, syntax.EdgingLine)),
    }
    elsewhere = tuple(sorted(shipped))
    for shape in idle:
        own = {*shape.parameters, *(s.name for s in shape.body if isinstance(s, syntax.Let))}
        for kind, name, node in _named(shape.body):
            if name not in own and kind in known and name not in known[kind]:
                findings.unknown(kind, name, node.span, known[kind])
        for use in (s for s in shape.body if isinstance(s, syntax.Use)):
            _use(use, shapes, elsewhere, findings)


def _use(use: syntax.Use, shapes: Mapping[str, syntax.ShapeBlock], shipped: tuple[str, ...], findings: Findings) -> None:
    """Whether a shape within an idle one is there and is given what it asks for. Of a shipped one only the name is known here."""
    if use.name not in shapes:
        if use.name not in shipped:
            findings.unknown("shape", use.name, use.span, (*shapes, *shipped))
        return
    all_given(use, shapes[use.name], findings)


def _named(node: object) -> Iterator[tuple[str, str, syntax.Node]]:
    """(kind, name, where) of every definition that is named; a bare name that a `use` gives may be a level and is left out."""
    if isinstance(node, tuple):
        for part in node:
            yield from _named(part)
    if not isinstance(node, syntax.Node):
        return
    if isinstance(node, syntax.Use):
        yield from _named(tuple(value for _, value in node.arguments if not isinstance(value, syntax.Name)))
        return
    kinds = REFERENCES.get(type(node), {})
    for field in fields(node):
        value = getattr(node, field.name)
        if field.name in kinds and value:
            yield kinds[field.name], value, node
        elif isinstance(value, syntax.Node | tuple):
            yield from _named(value)
