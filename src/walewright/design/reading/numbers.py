"""How many of each kind a source may have: more than any garment, and as many as can be worked out in seconds."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from walewright.design.findings import Findings
from walewright.report.model import Span
from walewright.report.said import Said, said
from walewright.source import syntax

MOST_SIZES = 60
MOST_LEVELS = 100
"""Of one piece."""

MOST: Mapping[type[syntax.Node], tuple[str, int]] = {
    syntax.YarnLine: ("yarn", 60),
    syntax.FabricBlock: ("fabric", 60),
    syntax.ChartBlock: ("chart", 60),
    syntax.EdgingLine: ("edging", 60),
    syntax.PieceBlock: ("piece", 60),
    syntax.BandLine: ("band", 60),
    syntax.JoinLine: ("join", 150),
    syntax.Free: ("line of free edges", 150),
    syntax.CordLine: ("cord", 20),
    syntax.FinishedLine: ("finished measurement", 100),
    syntax.Through: ("passage", 50),
    syntax.LapLine: ("lap", 20),
    syntax.Require: ("requirement", 200),
}
"""What stands at the left margin: how it is called, and how many there may be. A garment for a family has twenty pieces."""


def not_too_many(tree: syntax.Tree, findings: Findings) -> bool:
    """Whether there are few enough of everything; told where not, at the first that is too many."""
    sound = True
    for what, places, most in _counted(tree):
        if len(places) > most:
            sound = False
            findings.report(
                "too-many",
                (places[most], "from-here"),
                helps=("second-source",),
                count=len(places),
                what=what,
                most=most,
            )
    return sound


def _counted(tree: syntax.Tree) -> Iterator[tuple[str | Said, Sequence[Span], int]]:
    for kind, (what, most) in MOST.items():
        yield what, [s.span for s in tree.statements if isinstance(s, kind)], most
    for statement in tree.statements:
        if isinstance(statement, syntax.Sizes):
            yield "size", [statement.span] * len(statement.names), MOST_SIZES
        elif isinstance(statement, syntax.PieceBlock):
            levels = [level.span for s in statement.body if isinstance(s, syntax.Levels) for level in s.levels]
            yield said("level-of", piece=statement.name), levels, MOST_LEVELS
