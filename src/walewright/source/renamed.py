"""The author's names in the language that is printed: each is another one wherever it stands, so that all that is made of the
tree is as if its author had written it so.

What the language of sources gives a meaning stays as it is: edges of the trade, shipped beds, tables and their rows, functions,
units, fibres, parameters of shapes. No two names of a kind become one.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import fields
from typing import Any, Literal, get_args

from walewright.record import record, replace
from walewright.source import syntax
from walewright.source.quantities import Node
from walewright.trade.edge_names import OWN_EDGES
from walewright.trade.sides import GAP_PARTS

NameKind = Literal["size", "value", "level", "piece", "edge", "fabric", "yarn", "chart", "choice", "shape"]
KINDS: tuple[NameKind, ...] = get_args(NameKind)

FIELDS: Mapping[type[Node], Mapping[str, NameKind]] = {
    syntax.AcrossLine: {"level": "level"},
    syntax.BandLine: {"name": "piece", "edging": "edge"},
    syntax.ButtonholesLine: {"from_level": "level", "to_level": "level"},
    syntax.ChartBlock: {"name": "chart"},
    syntax.ChartKey: {"yarn": "yarn"},
    syntax.ChoiceLine: {"name": "choice", "alternatives": "choice"},
    syntax.CordLine: {"piece": "piece"},
    syntax.EdgeLine: {"to_level": "level", "called": "edge"},
    syntax.EdgeRef: {"piece": "piece", "edge": "edge"},
    syntax.EdgingLine: {"name": "edge", "fabric": "fabric"},
    syntax.End: {"edging": "edge"},
    syntax.FabricBlock: {"name": "fabric", "like": "fabric", "yarn": "yarn"},
    syntax.FinishedLine: {"name": "value"},
    syntax.ForBlock: {"choice": "choice", "alternative": "choice"},
    syntax.ForEachButtonhole: {"owners": "piece"},
    syntax.Let: {"name": "value"},
    syntax.LevelDef: {"name": "level"},
    syntax.MotifLine: {"chart": "chart", "level": "level"},
    syntax.Name: {"name": "value"},
    syntax.NeedlesLine: {"from_level": "level", "to_level": "level"},
    syntax.OpeningLine: {"name": "edge", "from_level": "level", "to_level": "level"},
    syntax.OwnFigure: {"size": "size"},
    syntax.PieceBlock: {"name": "piece", "fabric": "fabric", "mirror_of": "piece", "like": "piece", "image_of": "piece"},
    syntax.PlaceRef: {"owner": "piece", "edge": "edge"},
    syntax.Regauged: {"of": "fabric", "within": "fabric"},
    syntax.RepeatLine: {"from_level": "level", "to_level": "level"},
    syntax.Round: {"piece": "piece", "level": "level"},
    syntax.ShapeBlock: {"name": "shape"},
    syntax.Shoulders: {"from_level": "level"},
    syntax.SizeRow: {"name": "value"},
    syntax.Sizes: {"names": "size"},
    syntax.SlotLine: {"name": "edge", "level": "level"},
    syntax.Start: {"edging": "edge"},
    syntax.Stitch: {"yarn": "yarn", "chart": "chart"},
    syntax.StripeRows: {"yarn": "yarn"},
    syntax.TextLine: {"sizes": "size"},
    syntax.Use: {"name": "shape"},
    syntax.WedgeLine: {"from_level": "level", "to_level": "level"},
    syntax.YarnLine: {"name": "yarn", "strands": "yarn"},
    syntax.ZoneLine: {"fabric": "fabric", "from_level": "level", "to_level": "level"},
}
"""Where nodes have names of the author's, and of what."""

NOT_NAMED: Mapping[type[Node], tuple[str, ...]] = {
    syntax.Binary: ("op",),
    syntax.Broken: ("text",),
    syntax.Call: ("function",),
    syntax.ChartKey: ("symbol",),
    syntax.ChartRow: ("cells",),
    syntax.EdgingLine: ("fold_tension", "inside_tension"),
    syntax.InLanguage: ("language", "text"),
    syntax.MachineBlock: ("name",),
    syntax.NameLine: ("name",),
    syntax.MachineFact: ("key", "names"),
    syntax.NeededLine: ("text",),
    syntax.Number: ("unit",),
    syntax.PatternBlock: ("title",),
    syntax.PhotographLine: ("file", "showing"),
    syntax.PieceBlock: ("purpose",),
    syntax.Regauged: ("function",),
    syntax.Require: ("because",),
    syntax.ShapeBlock: ("parameters",),
    syntax.SizeRow: ("unit", "table", "table_row", "about"),
    syntax.Stitch: ("tension",),
    syntax.TextLine: ("key", "text"),
    syntax.Through: ("part",),
    syntax.Use: ("arguments",),
    syntax.UseFrom: ("names", "file"),
    syntax.Without: ("part",),
    syntax.YarnCount: ("text", "system"),
    syntax.YarnLine: ("label", "colour", "fibres"),
}
"""Fields of text that hold no such name, or that are looked at by themselves: `Use.arguments`, `Without.part`."""

PARTS = (*(f"_{part}" for part in GAP_PARTS), "_upper", "_edging")
"""What stands behind the name of an edge where a part of it is meant."""

GIVING_EDGES = (syntax.EdgeLine, syntax.EdgingLine, syntax.OpeningLine, syntax.SlotLine)
"""Lines that give an edge its name."""

WORD = re.compile(r"[^\W_]+(?: [^\W_]+)*")
"""What a name can be printed as: letters and digits, with blanks between words."""

Words = Mapping[NameKind, Mapping[str, str]]
"""By the kind of what is called so: names, and what each is printed as."""


@record
class Renaming:
    """By kind, the names of a source and what each becomes; and what the parameters of its shapes stand for."""

    names: Mapping[NameKind, Mapping[str, str]]
    parameters: Mapping[str, Mapping[str, NameKind]]

    def of(self, kind: NameKind, name: str) -> str:
        """What a name becomes."""
        found = self.names[kind].get(name)
        if found is not None or kind != "edge":
            return found or name
        head = next((name.removesuffix(part) for part in PARTS if name.endswith(part)), name)
        return self.of(kind, head) + name[len(head) :] if head != name and head not in OWN_EDGES else name

    @property
    def any(self) -> bool:
        """Whether any name becomes another."""
        return any(self.names.values())

    def before(self) -> dict[str, str]:
        """What each was called before, by what it is called now, with the parts of edges; of several the first."""
        made: dict[str, str] = {}
        for kind in KINDS:
            for old, new in self.names[kind].items():
                made.setdefault(new, old)
                if kind == "edge":
                    made |= {new + part: old + part for part in PARTS if new + part not in made}
        return made

    def back(self, kind: NameKind) -> dict[str, str]:
        """What each of a kind was called before, by what it is called now."""
        return {new: old for old, new in self.names[kind].items()}


def named(statements: tuple[Any, ...]) -> dict[NameKind, dict[str, None]]:
    """The author's names in these statements, by what is called so."""
    found: dict[NameKind, dict[str, None]] = {kind: {} for kind in KINDS}
    for node in _nodes(statements):
        for field, kind in FIELDS.get(type(node), {}).items():
            if kind != "edge" or type(node) in GIVING_EDGES:
                found[kind] |= dict.fromkeys(_listed(getattr(node, field)))
    return found


def renaming(statements: tuple[Any, ...], words: Words) -> Renaming:
    """What the names of these statements become, by the `words` of a language."""
    found = named(statements if words else ())
    shapes = {node.name: node for node in _nodes(statements if words else ()) if isinstance(node, syntax.ShapeBlock)}
    # A name that says which part of another edge is meant follows that edge's.
    whole = [name for name in found["edge"] if not any(name.removesuffix(part) in found["edge"] for part in PARTS if part in name)]
    found["edge"] = dict.fromkeys(whole)
    for name in OWN_EDGES:
        found["edge"].pop(name, None)
    made = {kind: _apart(names, words.get(kind, {})) for kind, names in found.items()}
    return Renaming(made, {name: {p: _stands_for(p, shape, shapes) for p in shape.parameters} for name, shape in shapes.items()})


def _apart(names: Iterable[str], words: Mapping[str, str]) -> dict[str, str]:
    """New names for old ones; of two that would be one, or that would be what another is called already, the first."""
    there = tuple(names)
    made: dict[str, str] = {}
    for name in there:
        word = words.get(name, "")
        new = word.replace(" ", "_")
        if WORD.fullmatch(word) and new not in there and new not in made.values():
            made[name] = new
    return made


def _stands_for(parameter: str, shape: syntax.ShapeBlock, shapes: Mapping[str, syntax.ShapeBlock], deep: int = 8) -> NameKind:
    """What a parameter of a shape is the name of: by where it stands first in it."""
    for node in _nodes(shape.body):
        if isinstance(node, syntax.Use) and node.name in shapes and deep:
            for inner, value in node.arguments:
                if isinstance(value, syntax.Name) and value.name == parameter and inner in shapes[node.name].parameters:
                    return _stands_for(inner, shapes[node.name], shapes, deep - 1)
        for field, kind in FIELDS.get(type(node), {}).items():
            if parameter in _listed(getattr(node, field)):
                return kind
    return "value"


def _listed(value: Any) -> tuple[str, ...]:
    return value if isinstance(value, tuple) else (value,) if isinstance(value, str) and value else ()


def _nodes(value: Any) -> Iterator[Node]:
    if isinstance(value, tuple):
        for one in value:
            yield from _nodes(one)
    elif isinstance(value, Node):
        yield value
        for field in fields(value):
            if field.name not in ("span", "said"):
                yield from _nodes(getattr(value, field.name))


def renamed(statements: tuple[Any, ...], by: Renaming) -> tuple[Any, ...]:
    """The same statements with other names."""
    return tuple(_renamed(statement, by, frozenset()) for statement in statements)


def _renamed(value: Any, by: Renaming, kept: frozenset[str]) -> Any:
    """`kept`: the parameters of the shape around it."""
    if isinstance(value, tuple):
        return tuple(_renamed(one, by, kept) for one in value)
    if not isinstance(value, Node):
        return value
    if isinstance(value, syntax.ShapeBlock):
        kept = frozenset(value.parameters)
    kinds = FIELDS.get(type(value), {})
    changed: dict[str, Any] = {}
    for field in fields(value):
        before = getattr(value, field.name)
        if field.name in ("span", "said") or before is None:
            continue
        if field.name in kinds:
            after: Any = _names(kinds[field.name], before, by, kept)
        elif isinstance(value, syntax.Use) and field.name == "arguments":
            after = tuple((name, _argument(value.name, name, given, by, kept)) for name, given in value.arguments)
        elif isinstance(value, syntax.Without) and field.name == "part":
            after = next((new for kind in WITHOUT if (new := by.of(kind, before)) != before), before)
        else:
            after = _renamed(before, by, kept)
        if after != before or after is not before:
            changed[field.name] = after
    return replace(value, **changed) if changed else value


WITHOUT: tuple[NameKind, ...] = ("edge", "chart", "fabric", "shape")
"""What a piece can do without."""


def _names(kind: NameKind, value: Any, by: Renaming, kept: frozenset[str]) -> Any:
    if isinstance(value, tuple):
        return tuple(name if name in kept else by.of(kind, name) for name in value)
    return value if not isinstance(value, str) or value in kept else by.of(kind, value)


def _argument(shape: str, parameter: str, given: Any, by: Renaming, kept: frozenset[str]) -> Any:
    kind = by.parameters.get(shape, {}).get(parameter, "value")
    if isinstance(given, syntax.Name):
        return given if given.name in kept else replace(given, name=by.of(kind, given.name))
    return _renamed(given, by, kept)
