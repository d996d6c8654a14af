"""What stands in a source once: its title, its sizes, its bed; each name of a kind; and at the margin what belongs there."""

from __future__ import annotations

from typing import TypeVar

from walewright.design.findings import Findings
from walewright.design.pieces.names import given_edges
from walewright.record import record
from walewright.report.model import Span
from walewright.report.said import said
from walewright.source import syntax

StatementKind = TypeVar("StatementKind", bound=syntax.Node)

_AT_MARGIN = (
    syntax.Broken
    | syntax.ChoiceLine
    | syntax.UseFrom
    | syntax.NameLine
    | syntax.TextLine
    | syntax.PatternBlock
    | syntax.Sizes
    | syntax.Let
    | syntax.MachineBlock
    | syntax.YarnLine
    | syntax.ChartBlock
    | syntax.FabricBlock
    | syntax.EdgingLine
    | syntax.PieceBlock
    | syntax.ShapeBlock
    | syntax.BandLine
    | syntax.JoinLine
    | syntax.Free
    | syntax.CordLine
    | syntax.NeededLine
    | syntax.FinishedLine
    | syntax.Through
    | syntax.LapLine
    | syntax.Require
    | syntax.MakingUp
)


@record
class Heads:
    """What there is one of in a source."""

    title: syntax.PatternBlock | None
    table: syntax.Sizes | None
    bed: syntax.MachineBlock | None
    finish: syntax.MakingUp | None


def every(tree: syntax.Tree, kind: type[StatementKind]) -> tuple[StatementKind, ...]:
    """The statements of a kind at the margin of a source."""
    return tuple(s for s in tree.statements if isinstance(s, kind))


def heads(tree: syntax.Tree, lines_lost: bool, findings: Findings) -> Heads:
    """What there is one of. What lacks is told, and what has the name of another."""
    title = findings.one("pattern", every(tree, syntax.PatternBlock), said("the-source"))
    table = findings.one("sizes", every(tree, syntax.Sizes), said("the-source"))
    bed = findings.one("machine", every(tree, syntax.MachineBlock), said("the-source"))
    finish = findings.one("making up", every(tree, syntax.MakingUp), said("the-source"))
    if table is not None and not table.names:
        table = None
    for statement in tree.statements:
        if not isinstance(statement, _AT_MARGIN):
            findings.report("impossible-statement/at-margin", (statement.span, "alone"))
    parts = (("pattern title", title), ("sizes", table), ("machine", bed), ("piece", every(tree, syntax.PieceBlock) or None))
    lacking = [what for what, node in parts if node is None]
    if lacking and not lines_lost and tree.statements:
        findings.report("missing-part/source", (Span(tree.file, 0, 0), ""), lacking=tuple(lacking))
    _repeated_names(tree, findings)
    return Heads(title, table, bed, finish)


def _repeated_names(tree: syntax.Tree, findings: Findings) -> None:
    for what, nodes in (
        ("yarn", every(tree, syntax.YarnLine)),
        ("chart", every(tree, syntax.ChartBlock)),
        ("fabric", every(tree, syntax.FabricBlock)),
        ("edging", every(tree, syntax.EdgingLine)),
    ):
        findings.once(what, ((n.name, n.span) for n in nodes))
    # Levels and edges have names of their own in each piece; a reader meets them all on one page.
    blocks = [*(p.body for p in every(tree, syntax.PieceBlock)), *(s.body for s in every(tree, syntax.ShapeBlock))]
    stacks = [s for block in blocks for s in block if isinstance(s, syntax.Levels)]
    findings.alike("level", ((level.name, level.span) for stack in stacks for level in stack.levels))
    findings.alike("edge", (given for node in every(tree, syntax.PieceBlock) for given in given_edges(node)))
    # Pieces and bands head their own part of the page: their names are one kind. So are rows and lets.
    worked = [(n.name, n.span) for n in every(tree, syntax.PieceBlock)] + [(n.name, n.span) for n in every(tree, syntax.BandLine)]
    findings.once("piece", worked)
    rows = {r.name: r.span for t in every(tree, syntax.Sizes) for r in t.body if isinstance(r, syntax.SizeRow)}
    lets = [(n.name, n.span) for n in every(tree, syntax.Let)]
    # A chest can be stated as finished beside the row of the same name that it fits.
    stated_ones = [(n.name, n.span) for n in every(tree, syntax.FinishedLine)]
    findings.once("measurement", (*((n, s) for n, s in lets if n in dict(stated_ones)), *stated_ones))
    findings.once("measurement", (*((n, s) for n, s in rows.items()), *lets))
