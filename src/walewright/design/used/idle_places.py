"""Levels and names of edges that nothing comes to. They change nothing that is made, and are warned of where they are given.

A level is come to by what goes to it, begins, ends or stands at it, or is measured there; its first and its last are the
piece's own. One that another piece shares has an effect without that: both get the same number of rows up to it. An edge's
name is come to where the edge is joined, banded, begun along, lapped, measured or called free, by its own name or by that of one
of its parts, and of a mirror image too. What a shape names is named for all its uses, and nothing is reported of it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import fields

from walewright.design.findings import Findings, Used
from walewright.design.model import Design, Level, Piece
from walewright.report.model import Severity, Span
from walewright.source import syntax

AT_LEVELS: Mapping[type, tuple[str, ...]] = {
    syntax.EdgeLine: ("to_level",),
    syntax.AcrossLine: ("level",),
    syntax.OpeningLine: ("from_level", "to_level"),
    syntax.SlotLine: ("level",),
    syntax.ButtonholesLine: ("from_level", "to_level"),
    syntax.WedgeLine: ("from_level", "to_level"),
    syntax.ZoneLine: ("from_level", "to_level"),
    syntax.MotifLine: ("level",),
    syntax.RepeatLine: ("from_level", "to_level"),
    syntax.NeedlesLine: ("from_level", "to_level"),
    syntax.Shoulders: ("from_level",),
}
"""Fields of a piece's statements that name a level of it."""

AT_EDGES: Mapping[type, tuple[str, str]] = {
    syntax.EdgeRef: ("piece", "edge"),
    syntax.PlaceRef: ("owner", "edge"),
    syntax.Round: ("piece", "level"),
}
"""Fields that name a piece and an edge of it, wherever they stand; or, of a `round`, a level of it."""

PARTS = ("", "_left", "_right")
"""What an edge on both sides is called: both of it, or one."""

IdlePlace = tuple[str, str]
"""(piece, level or edge)."""


def tell_idle_places(whole: syntax.Tree, design: Design, findings: Findings) -> None:
    """Warns of every level and every called edge of the source that nothing comes to. `whole` has its shapes expanded."""
    models = {piece.name: _model(piece, design) for piece in design.pieces}
    outside = {(models.get(owner, owner), name) for owner, name in _named(whole.statements)}
    shared = _shared(design)
    made = [node for node in whole.statements if isinstance(node, syntax.PieceBlock) and node.mirror_of is None]
    # A name that pieces share, because one is like the other, is used where that of any of them is.
    used = {_written(edge) for node in made for edge in _called(node) if _is_named(node, edge, outside)}
    for node in made:
        _levels(node, outside, shared, findings)
        _edges(node, used, findings)


def _model(piece: Piece, design: Design) -> str:
    """The piece that has the shape: itself, or what it is the mirror image of in the end."""
    while piece.mirror_of is not None:
        piece = design.piece(piece.mirror_of)
    return piece.name


def _levels(node: syntax.PieceBlock, outside: set[IdlePlace], shared: set[IdlePlace], findings: Findings) -> None:
    come_to = set(_come_to(node.body))
    for stack in (s for s in node.body if isinstance(s, syntax.Levels)):
        for level in stack.levels[1:-1]:
            place = (node.name, level.name)
            if level.name in come_to or place in outside or place in shared:
                continue
            if not isinstance(level.span, Used):
                findings.report(
                    "unused-name/level",
                    (level.span, "unnamed"),
                    helps=("delete-or-use",),
                    severity=Severity.WARNING,
                    level=level.name,
                    piece=node.name,
                )


def _come_to(body: tuple[syntax.Statement, ...]) -> Iterator[str]:
    """The levels that a piece's statements, and those in the blocks of its openings, name."""
    for statement in body:
        for field in AT_LEVELS.get(type(statement), ()):
            yield getattr(statement, field)
        yield from _come_to(getattr(statement, "body", ()))


def _shared(design: Design) -> set[IdlePlace]:
    """Levels of one name and one height in one fabric, which have one row in all their pieces."""
    found: dict[tuple[object, ...], list[IdlePlace]] = {}
    for piece in design.pieces:
        for level in piece.levels if piece.mirror_of is None else ():
            found.setdefault((level.name, level.height, _highest(level), piece.fabric), []).append((piece.name, level.name))
    return {place for places in found.values() if len(places) > 1 for place in places}


def _highest(level: Level) -> tuple[float, ...]:
    return level.most or level.height


def _called(node: syntax.PieceBlock) -> Iterator[syntax.EdgeLine]:
    return (s for s in node.body if isinstance(s, syntax.EdgeLine) and s.called is not None)


def _is_named(node: syntax.PieceBlock, edge: syntax.EdgeLine, outside: set[IdlePlace]) -> bool:
    return any((node.name, f"{edge.called}{part}") in outside for part in PARTS)


def _written(edge: syntax.EdgeLine) -> Span:
    """Where an edge's name is written: in the piece, in the piece that it is like, or in a shape."""
    span = edge.place_of("called") or edge.span
    return span.shape if isinstance(span, Used) else span


def _edges(node: syntax.PieceBlock, used: set[Span], findings: Findings) -> None:
    named = {edge.called for edge in _called(node) if _written(edge) in used}
    for edge in _called(node):
        span = edge.place_of("called") or edge.span
        if edge.called in named or isinstance(span, Used):
            continue
        named.add(edge.called)
        findings.report(
            "unused-name/edge",
            (span, "only-here"),
            helps=("leave-out-or-free",),
            severity=Severity.WARNING,
            edge=str(edge.called),
            piece=node.name,
        )


def _named(node: object) -> Iterator[IdlePlace]:
    """Every piece's edge or level that a statement outside its own piece names."""
    if isinstance(node, tuple):
        for part in node:
            yield from _named(part)
    if not isinstance(node, syntax.Node):
        return
    if type(node) in AT_EDGES:
        owner, name = (getattr(node, field) for field in AT_EDGES[type(node)])
        if name:
            yield owner, name
    for field in fields(node):
        value = getattr(node, field.name)
        if isinstance(value, syntax.Node | tuple):
            yield from _named(value)
