"""A shape used at one edge: what it says of both edges, said of that one."""

from __future__ import annotations

from walewright.record import replace
from walewright.source import syntax
from walewright.trade.sides import EdgeSide


def at_edge(statement: syntax.Statement, edge: EdgeSide) -> syntax.Statement:
    """The statement for that edge, where it speaks of both: a width is then twice the distance from the centre line."""
    match statement:
        case syntax.EdgeLine(which="both"):
            if statement.width is None or statement.beside:
                return replace(statement, which=edge)
            most = _half(statement.width_most) if statement.width_most is not None else None
            return replace(statement, which=edge, width=_half(statement.width), width_most=most, beside="own")
        case syntax.WedgeLine(edge="both") | syntax.Shoulders(edge="both"):
            return replace(statement, edge=edge)
        case _:
            return statement


def _half(width: syntax.Expr) -> syntax.Expr:
    return syntax.Binary("/", width, syntax.Number(2.0, span=width.span), span=width.span)
