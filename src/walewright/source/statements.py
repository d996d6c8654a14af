"""Every statement as one line, in the one form that the formatter writes."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any

from walewright.source import syntax
from walewright.source.expressions import amount, expression, number
from walewright.source.text import escaped

STARTS = {"waste": "on waste yarn", "e-wrap": "with e-wrap", "chain": "with chain"}
ENDS = {"waste": "on waste yarn", "cast-off": "cast off"}
WHICH = {"both": "edges", "left": "left edge", "right": "right edge"}
ORDINAL_ENDINGS = {1: "st", 2: "nd", 3: "rd"}


def line(statement: syntax.Statement) -> str:
    """The statement without its block and its indentation."""
    return _LINES[type(statement)](statement)


def ordinal(count: int) -> str:
    """`3rd`, `11th`."""
    ending = "th" if count % 100 in (11, 12, 13) else ORDINAL_ENDINGS.get(count % 10, "th")
    return f"{count}{ending}"


def _joined(*parts: str) -> str:
    """Parts of a line after one another; those that say nothing left out."""
    return " ".join(p for p in parts if p)


def _options(head: str, options: Iterable[str]) -> str:
    return ", ".join((head, *(o for o in options if o)))


def _way(way: str | None, inset: int | None) -> str:
    return f"fashioned {inset} in" if way == "fashioned" else way or ""


def _size_row(row: syntax.SizeRow) -> str:
    if row.table is not None:
        said = f"{row.name} from {row.table} {row.table_row}"
    else:
        said = _joined(row.name, *(number(v) for v in row.values), row.unit or "")
    return _options(said, ["to fit" if row.to_fit else ""])


def _machine_fact(fact: syntax.MachineFact) -> str:
    return _joined(fact.key, *(amount(v) for v in fact.values))


def _yarn(yarn: syntax.Yarn) -> str:
    return f"yarn {yarn.name} {escaped(yarn.label)}, {amount(yarn.ball_weight)} = {amount(yarn.ball_length)}"


def _stitch(stitch: syntax.Stitch) -> str:
    every = f"every {ordinal(stitch.every)} needle" if stitch.every is not None else ""
    return _joined(stitch.stitch, every, f"in {stitch.yarn} at tension {stitch.tension}")


def _swatch(swatch: syntax.Swatch) -> str:
    counted = f"swatch {amount(swatch.stitches)} by {amount(swatch.rows)}"
    measured = f"{amount(swatch.width)} by {amount(swatch.height)}"
    return _options(f"{counted} = {measured}", [amount(swatch.weight) if swatch.weight else ""])


def _edging(edging: syntax.Edging) -> str:
    options = (f"{expression(edging.depth)} deep", f"added {edging.when}", f"cast off {edging.cast_off}")
    return _options(f"edging {edging.name} in {edging.fabric}", options)


def _piece(piece: syntax.Piece) -> str:
    copies = f"knit {piece.copies}" if piece.copies != 1 else ""
    mirror = f"mirror of {piece.mirror_of}" if piece.mirror_of is not None else ""
    return _options(f"piece {piece.name} in {piece.fabric}", [copies, mirror])


def _levels(levels: syntax.Levels) -> str:
    return "levels " + ", ".join(f"{level.name} {expression(level.height)}" for level in levels.levels)


def _start(start: syntax.Start) -> str:
    said = f"start {expression(start.width)} wide {STARTS[start.way]}"
    return _options(said, [f"with {start.edging}" if start.edging is not None else ""])


def _edge(edge: syntax.Edge) -> str:
    first = f"cast off {expression(edge.cast_off)} then" if edge.cast_off is not None else ""
    if edge.path == "straight":
        path = f"straight to {edge.to_level}"
    elif edge.path == "steps" and edge.by is not None:
        path = f"steps {expression(edge.by)} {edge.times} times to {edge.to_level}"
    elif edge.width is not None:
        path = f"{edge.path} to {expression(edge.width)} wide at {edge.to_level}"
    else:
        assert edge.by is not None
        path = f"{edge.path} by {expression(edge.by)} at {edge.to_level}"
    called = f"called {edge.called}" if edge.called is not None else ""
    return _options(_joined(WHICH[edge.which], first, path, called), [_way(edge.way, edge.inset)])


def _neck(neck: syntax.Neck) -> str:
    flat = f"{expression(neck.flat)} flat" if neck.flat is not None else ""
    said = f"neck {expression(neck.width)} wide, {expression(neck.depth)} deep, {neck.shape}"
    return _options(said, [flat, _way(neck.way, neck.inset)])


def _refs(refs: Iterable[syntax.EdgeRef]) -> str:
    return " + ".join(f"{ref.piece} {ref.edge}" for ref in refs)


def _join(join: syntax.Join) -> str:
    easing = f"easing {expression(join.easing)}" if join.easing is not None else ""
    return _options(f"join {_refs(join.one)} to {_refs(join.other)}", [easing])


def _require(require: syntax.Require) -> str:
    because = f"because {escaped(require.because)}" if require.because is not None else ""
    return _joined(f"require {expression(require.left)} {require.relation} {expression(require.right)}", because)


_LINES: dict[type, Callable[[Any], str]] = {
    syntax.Broken: lambda s: s.text,
    syntax.Text: lambda s: f"{s.key} {escaped(s.text)}",
    syntax.Pattern: lambda s: f"pattern {escaped(s.title)}",
    syntax.Sizes: lambda s: " ".join(("sizes", *s.names)),
    syntax.SizeRow: _size_row,
    syntax.Let: lambda s: f"let {s.name} = {expression(s.value)}",
    syntax.Machine: lambda s: f"machine {s.name}",
    syntax.MachineFact: _machine_fact,
    syntax.Yarn: _yarn,
    syntax.Fabric: lambda s: f"fabric {s.name}",
    syntax.Stitch: _stitch,
    syntax.Swatch: _swatch,
    syntax.Edging: _edging,
    syntax.Piece: _piece,
    syntax.Levels: _levels,
    syntax.Start: _start,
    syntax.Edge: _edge,
    syntax.Neck: _neck,
    syntax.Shoulders: lambda s: f"shoulders held from {s.from_level}",
    syntax.End: lambda s: f"end {ENDS[s.way]}",
    syntax.Band: lambda s: f"band {s.name} with {s.edging} along {_refs(s.along)}",
    syntax.Join: _join,
    syntax.Require: _require,
    syntax.MakingUp: lambda s: "making up",
}
