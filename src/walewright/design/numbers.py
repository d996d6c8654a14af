"""How many of each kind a source may have: more than any garment, and as many as can be worked out in seconds."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from walewright.design.findings import Findings
from walewright.report.model import Span
from walewright.source import syntax

MOST_SIZES = 60
MOST_LEVELS = 100
"""Of one piece."""

MOST: Mapping[type[syntax.Node], tuple[str, int]] = {
    syntax.Yarn: ("yarns", 60),
    syntax.Fabric: ("fabrics", 60),
    syntax.Chart: ("charts", 60),
    syntax.Edging: ("edgings", 60),
    syntax.Piece: ("pieces", 60),
    syntax.Band: ("bands", 60),
    syntax.Join: ("joins", 150),
    syntax.Free: ("lines of free edges", 150),
    syntax.Cord: ("cords", 20),
    syntax.Finished: ("finished measurements", 100),
    syntax.Through: ("passages", 50),
    syntax.Lap: ("laps", 20),
    syntax.Require: ("requirements", 200),
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
                (places[most], "too-many-here"),
                helps=("write-second-source",),
                places=len(places),
                what=what,
                most=most,
            )
    return sound


def _counted(tree: syntax.Tree) -> Iterator[tuple[str, Sequence[Span], int]]:
    for kind, (what, most) in MOST.items():
        yield what, [s.span for s in tree.statements if isinstance(s, kind)], most
    for statement in tree.statements:
        if isinstance(statement, syntax.Sizes):
            yield "sizes", [statement.span] * len(statement.names), MOST_SIZES
        elif isinstance(statement, syntax.Piece):
            levels = [level.span for s in statement.body if isinstance(s, syntax.Levels) for level in s.levels]
            yield f"levels in piece `{statement.name}`", levels, MOST_LEVELS
