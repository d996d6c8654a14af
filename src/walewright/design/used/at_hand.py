"""What the statements of a source need a tool for that is not at hand, told at each."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from walewright.design.findings import Findings
from walewright.design.model import MachineProfile
from walewright.design.used.uses import Uses
from walewright.report.model import Severity, Span
from walewright.source import syntax

ToolNeed = tuple[Span, str]
"""Where a tool is needed, and the key of the help that says how to do without it; empty where only the tool helps."""


def look_at_hand(statements: Iterable[syntax.Statement], found: Uses, machine: MachineProfile | None, findings: Findings) -> None:
    """Tells of every statement that needs a tool which the bed's owner lacks."""
    if machine is None or not machine.lacking:
        return
    for statement in statements:
        if "latch tool" in machine.lacking:
            for span, way in _latched(statement, found):
                helps = (way, "have-it") if way else ("have-it",)
                findings.report("no-such-tool/latch-tool", (span, "here"), (machine.origin.span, "bed"), helps=helps)
        if "edge weights" in machine.lacking and isinstance(statement, syntax.PieceBlock):
            at = next(_weighted(statement.body), None)
            if at is not None:
                findings.report(
                    "no-such-tool/edge-weights",
                    (at, "here"),
                    (machine.origin.span, "bed"),
                    helps=("pull",),
                    severity=Severity.WARNING,
                    piece=statement.name,
                )


def _latched(statement: syntax.Statement, found: Uses) -> Iterator[ToolNeed]:
    """Where loops are drawn through others with a latch tool."""
    match statement:
        case syntax.FabricBlock(name=name, body=body) if found.has("fabric", name):
            yield from ((s.span, "mock") for s in body if isinstance(s, syntax.Stitch) and s.stitch == "latched rib")
        case syntax.ChartBlock(name=name, body=body) if found.has("chart", name):
            drawn = {symbol for row in body if isinstance(row, syntax.ChartRow) for symbol in row.cells}
            keys = (k for k in body if isinstance(k, syntax.ChartKey) and k.kind == "purl" and k.symbol in drawn)
            yield from ((key.span, "") for key in keys)
        case syntax.EdgingLine(name=name) if found.has("edging", name):
            if statement.kind == "chained":
                yield statement.span, ""
            elif statement.cast_off == "chain" and statement.when == "after":
                yield statement.span, "sewn"
        case syntax.JoinLine(way="linked"):
            yield statement.span, "seam"
        case syntax.PieceBlock(body=body):
            yield from _in_piece(body)


def _in_piece(body: Iterable[syntax.Statement]) -> Iterator[ToolNeed]:
    for line in body:
        match line:
            case syntax.Start(way="chain"):
                yield line.span, "e-wrap"
            case syntax.End(way="cast-off"):
                yield line.span, "end-sewn"
            case syntax.EdgeLine(cast_off=length) if length is not None:
                yield line.span, "in-steps"
            case syntax.Neck(taken="cast-off") | syntax.SlotLine(taken="cast-off"):
                yield line.span, "waste"
            case syntax.OpeningLine(taken=taken, body=edges):
                if taken == "cast-off":
                    yield line.span, "waste"
                yield from _in_piece(edges)


def _weighted(body: Iterable[syntax.Statement]) -> Iterator[Span]:
    """Where the work has to be drawn down at an edge: beside stitches that are cast on or off, and where needles return from
    hold."""
    for line in body:
        match line:
            case syntax.EdgeLine(cast_off=length) if length is not None:
                yield line.span
            case syntax.WedgeLine() | syntax.Shoulders() | syntax.SlotLine():
                yield line.span
            case syntax.OpeningLine(body=edges):
                yield from _weighted(edges)
