"""From the parser's tree of one line to a node, by the table in `rules`."""

from __future__ import annotations

import unicodedata
from collections.abc import Mapping
from typing import Any

from lark import Token, Tree

from walewright.record import record
from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.near import near
from walewright.report.said import Fact, said
from walewright.source import syntax
from walewright.source.limits import DEEPEST, too_deep
from walewright.source.rules import (
    AMOUNT_NAMES_TAKEN,
    EDGE_NAMES_TAKEN,
    EDGING_NAMES_TAKEN,
    OPERATIONS,
    ROUNDINGS,
    RULES,
    SIZE_NAMES_TAKEN,
    TUPLES,
    WORDS,
)
from walewright.source.spelling import name_fault, tension_fault
from walewright.source.text import unescaped

MOST_DIGITS = 9
"""Digits before the point: a thousand million stitches are a slip of the finger."""

MOST_DECIMALS = 15
"""Digits after the point, as many as a float keeps for small numbers."""


@record
class RulePart:
    """Fields of the node around, with the place where they are written; `places` are those of parts within it."""

    values: Mapping[str, object]
    span: Span
    places: Mapping[str, Span]

    def place(self, name: str) -> Span:
        """Where one of its fields is said."""
        return self.places.get(name, self.span)


class Refused(Exception):
    """The line reads, but one of its parts cannot mean anything. Caught in `built`."""

    def __init__(self, diagnostic: Diagnostic) -> None:
        self.diagnostic = diagnostic


def built(tree: Tree[Token], file: str, offset: int, span: Span, line: str) -> syntax.Statement | Diagnostic:
    """The node of a parsed line; or why there is none. `offset` is where the line begins in the file, `span` its extent, `line`
    its content."""
    try:
        node: syntax.Statement = Builder(file, offset).node(tree, span)
        _check_spelling(node, line)
        _check_name(node)
        _check_depth(node)
    except Refused as refused:
        return refused.diagnostic
    return node


@record
class Builder:
    file: str
    offset: int

    def node(self, tree: Tree[Token], span: Span | None = None) -> Any:
        """The node or part of a rule in `RULES`."""
        makes = RULES[tree.data]
        span = span or self.span(tree)
        values: dict[str, Any] = dict(makes.fixed)
        places: dict[str, Span] = dict.fromkeys(makes.fixed, span)
        said: dict[str, Span] = {}
        open_fields = iter(makes.fields)
        for child in tree.children:
            made = self.child(child)
            if isinstance(child, Token) and child.type == "NUMBER":
                # A bare number in a statement counts something; quantities are `number`s.
                made = self.whole(made, child)
            if isinstance(made, RulePart):
                _merge(values, places, made)
                said.update({field: made.place(field) for field in made.values})
                continue
            if makes.many and isinstance(made, syntax.Node):
                values[makes.many] = (*values.get(makes.many, ()), made)
                continue
            name = next(open_fields)
            values[name] = syntax.Negative(made, span=made.span) if name == makes.turned else made
        if makes.node is None:
            return RulePart(values, span, said)
        if makes.places:
            *_, row = tree.children
            values[makes.places] = tuple(self.span(token) for token in getattr(row, "children", ()))
        for name, (called, help_) in makes.needs.items():
            if name not in values and values.get("kind") not in makes.unless:
                raise _incomplete(str(tree.data), called, help_, span)
        return makes.node(**values, span=span, said=tuple(said.items()))

    def child(self, child: Tree[Token] | Token, depth: int = 0) -> Any:
        """What one child of a rule stands for."""
        if isinstance(child, Token):
            return self.token(child)
        rule = str(child.data)
        if rule in RULES:
            return self.node(child)
        if rule in TUPLES:
            return tuple(self.child(c) for c in child.children)
        if rule in WORDS:
            return WORDS[rule].join(str(c) for c in child.children)
        return self.expression(child, depth)

    def expression(self, tree: Tree[Token], depth: int) -> Any:
        """An expression; raises `Refused` for one nested deeper than `DEEPEST`."""
        span = self.span(tree)
        if depth > DEEPEST:
            raise Refused(too_deep(span))
        rule = str(tree.data)
        if rule == "number":
            value = self.amount(tree.children[0])
            return syntax.Number(value, self.child(tree.children[1]) if len(tree.children) > 1 else None, span=span)
        if rule == "stitch_number":
            count = self.whole(self.amount(tree.children[0]), tree.children[0])
            return syntax.Number(float(count), self.child(tree.children[1]), span=span)
        if rule == "name":
            return syntax.Name(str(tree.children[0]), span=span)
        parts = tuple(self.child(c, depth + 1) for c in tree.children)
        if rule == "negative":
            return syntax.Negative(*parts, span=span)
        if rule == "call":
            return syntax.Call(parts[0], parts[1:], span=span)
        if rule == "regauged":
            of, within = (self.span(c) for c in tree.children[2:])
            return syntax.Regauged(*parts, span=span, said=(("of", of), ("within", within)))
        if rule == "round_call":
            return syntax.Call("round", parts, span=span)
        if rule == "rounded":
            self.check_rounding(parts[0], span)
            return syntax.Call(parts[0], parts[1:], span=span)
        return syntax.Binary(OPERATIONS[rule], *parts, span=span)

    def token(self, token: Token) -> object:
        """The value of a single word."""
        if token.type == "TEXT":
            return self.text(token)
        if token.type in ("NUMBER", "VALUE"):
            return self.amount(token)
        if token.type == "ORDINAL":
            return int(self.amount(token, str(token)[:-2]))
        if token.type == "COUNT":
            for part in str(token).split("/"):
                self.amount(token, part)
        if token.type in ("CELL", "SYMBOL"):
            self.check_seen(token)
        return str(token)

    def amount(self, token: Tree[Token] | Token, digits: str = "") -> float:
        """The number that a token writes; raises `Refused` for more digits than anything on a bed has."""
        assert isinstance(token, Token)
        whole, _, decimals = (digits or str(token)).lstrip("-").partition(".")
        if len(whole.lstrip("0")) > MOST_DIGITS or len(decimals) > MOST_DECIMALS:
            span = self.span(token)
            raise Refused(
                diagnosed(
                    "number-too-long",
                    (span, "digits"),
                    helps=("round-it",),
                    most_whole=MOST_DIGITS,
                    most_decimals=MOST_DECIMALS,
                    whole=len(whole),
                    decimals=len(decimals),
                )
            )
        return float(digits or token)

    def text(self, token: Token) -> str:
        """What the author wrote between the quotation marks; raises `Refused` where nothing of it is seen on paper."""
        text = unescaped(str(token))
        if all(unicodedata.category(letter)[0] in "CZ" for letter in text):
            raise Refused(diagnosed("empty-text", (self.span(token), "own"), helps=("write",)))
        return text

    def check_seen(self, symbol: Token) -> None:
        """Raises `Refused` for a symbol that is seen only together with the one before it, or not at all."""
        if unicodedata.category(symbol)[0] not in "MC":
            return
        raise Refused(diagnosed("invisible-symbol", (self.span(symbol), "own"), helps=("delete",), letter=ord(symbol)))

    def check_rounding(self, function: str, span: Span) -> None:
        """Raises `Refused` for a function that rounds nothing."""
        if function in ROUNDINGS:
            return
        meant = near(function, ROUNDINGS)
        helps = (said("close", meant=meant),) if meant else ()
        facts: dict[str, Fact] = {"what": "function", "name": function, "known": ROUNDINGS}
        raise Refused(diagnosed("unknown-name", (span, "here"), notes=("known",), helps=helps, facts=facts))

    def whole(self, value: float, token: Tree[Token] | Token) -> int:
        """A number that counts something; raises `Refused` when it has a fraction."""
        if value == int(value):
            return int(value)
        raise Refused(diagnosed("not-whole-number", (self.span(token), "count"), helps=("whole",), number=str(token)))

    def span(self, item: Tree[Token] | Token) -> Span:
        """Where a token or tree stands in the file."""
        place: Any = item if isinstance(item, Token) else item.meta
        return Span(self.file, self.offset + place.start_pos, self.offset + place.end_pos)


def _merge(values: dict[str, object], places: dict[str, Span], part: RulePart) -> None:
    """Takes over the fields of a part; raises `Refused` when one of them has been said before."""
    again = next((name for name in part.values if name in places), None)
    if again is not None:
        raise Refused(diagnosed("repeated-option", (part.span, "again"), (places[again], "first"), helps=("leave-one-out",)))
    values.update(part.values)
    places.update(dict.fromkeys(part.values, part.span))


def _incomplete(line: str, called: str, help_: str, span: Span) -> Refused:
    return Refused(diagnosed("incomplete-statement", (span, "lacking"), helps=(help_,), line=line, lacking=called))


def _check_spelling(node: syntax.Statement, line: str) -> None:
    """Raises `Refused` for a name that is given here and could not be printed and read back."""
    given: tuple[str, ...] = ()
    if isinstance(node, syntax.Sizes):
        given = node.names
    elif isinstance(node, syntax.ChoiceLine):
        given = (node.name, *node.alternatives)
    elif isinstance(node, syntax.Levels):
        given = tuple(level.name for level in node.levels)
    elif isinstance(node, syntax.EdgeLine):
        given = (node.called or "",)
    elif isinstance(node, syntax.Stitch | syntax.EdgingLine | syntax.MachineFact):
        _check_tensions(node, line)
        given = (getattr(node, "name", ""),)
    elif isinstance(node, syntax.ShapeBlock):
        given = (node.name, *node.parameters)
    elif not isinstance(node, syntax.Use):
        given = (getattr(node, "name", ""),)
    fault = next((f for name in given if name and (f := name_fault(name, line, node.span)) is not None), None)
    if fault is not None:
        raise Refused(fault)


def _check_tensions(node: syntax.Stitch | syntax.EdgingLine | syntax.MachineFact, line: str) -> None:
    """Raises `Refused` for a setting of the tension that would not be printed as it stands on a dial or a plate."""
    said: tuple[str | None, ...]
    match node:
        case syntax.Stitch():
            said = (node.tension,)
        case syntax.EdgingLine():
            said = (node.fold_tension, node.inside_tension)
        case _:
            said = node.names if node.key == "plates" else ()
    fault = next((f for t in said if t and (f := tension_fault(t, line, node.span)) is not None), None)
    if fault is not None:
        raise Refused(fault)


def _check_name(node: syntax.Statement) -> None:
    """Raises `Refused` for a name that could be given but never used."""
    taken: tuple[str, ...] = ()
    given: tuple[str, ...] = (getattr(node, "name", ""),)
    if isinstance(node, syntax.Let | syntax.SizeRow | syntax.FinishedLine):
        taken = AMOUNT_NAMES_TAKEN
    elif isinstance(node, syntax.Sizes):
        taken, given = SIZE_NAMES_TAKEN, node.names
    elif isinstance(node, syntax.EdgingLine):
        taken = EDGING_NAMES_TAKEN
    elif isinstance(node, syntax.EdgeLine):
        taken, given = EDGE_NAMES_TAKEN, (node.called or "",)
    elif isinstance(node, syntax.OpeningLine | syntax.SlotLine):
        taken = EDGE_NAMES_TAKEN
    elif isinstance(node, syntax.ShapeBlock):
        taken, given = AMOUNT_NAMES_TAKEN, node.parameters
    name = next((n for n in given if n in taken), None)
    if name is not None:
        raise Refused(
            diagnosed(
                "reserved-word",
                (node.span, "named"),
                notes=("taken",),
                helps=("longer",),
                name=name,
                taken=tuple(taken),
            )
        )


def _check_depth(node: syntax.Statement) -> None:
    """Raises `Refused` for a depth of what is one row deep."""
    if isinstance(node, syntax.EdgingLine) and node.kind == "chained" and node.depth is not None:
        raise Refused(diagnosed("chained-depth", (node.depth.span, "depth"), helps=("leave-out",), edging=node.name))
