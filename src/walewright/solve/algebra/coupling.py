"""How sizes hang together: they are graded, and they share the form of their schedules. Neither is worth a size.

What is wanted no smaller in a larger size comes out no smaller, as long as every size can be counted so. Where that cannot be,
it is wished instead of asked for; then sizes are scheduled each for itself; at last they have nothing to do with each other.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import IntEnum

from walewright.design.model import Design
from walewright.record import replace
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Said, said
from walewright.solve.algebra.programme import Draft, Programme, Rule, RuleKind
from walewright.solve.algebra.sums import Linear, Values

LET_GO_COST = 300.0
"""For each stitch or row by which a grading goes down where it should go up: above everything but what rules say."""


class Coupling(IntEnum):
    """The closer the lower: a looser one is only taken where a closer one refuses a size."""

    GRADED = 0
    WISHED = 1
    """The grading gives way where it has to."""
    APART = 2
    """So it does, and sizes are scheduled each for itself."""
    ALONE = 3
    """Every size as if it were the only one."""

    @property
    def together(self) -> bool:
        """Whether the sizes share the form of their schedules."""
        return self < Coupling.APART


def coupled(programme: Programme, coupling: Coupling) -> Programme:
    """The programme with its sizes as closely coupled as that."""
    if coupling is Coupling.GRADED:
        return programme
    if coupling is Coupling.ALONE:
        sizes = frozenset(v.size for v in programme.variables)
        rules = tuple(rule.only(sizes) for rule in programme.rules if rule.kind is not RuleKind.GRADING)
        wishes = tuple(w for w in programme.wishes if len({programme.variables[v].size for v, _ in w.terms}) < 2)
        return replace(programme, rules=rules, wishes=wishes)
    draft = Draft(list(programme.variables), [], list(programme.wishes), list(programme.nudges))
    draft.rules += [_giving_way(draft, rule) if rule.kind is RuleKind.GRADING else rule for rule in programme.rules]
    return draft.programme()


def _giving_way(draft: Draft, rule: Rule) -> Rule:
    """A grading with a number of its own in each line, by which it may be broken at a cost."""
    lines: list[tuple[int, Linear]] = []
    for size, line in rule.constraints:
        of = draft.variables[line.terms.of[0][0]]
        more = draft.variable("let go", of.piece, of.size)
        draft.nudges += [(v, LET_GO_COST) for v, _ in more]
        lines.append((size, replace(line, terms=line.terms - more if line.low is None else line.terms + more)))
    return replace(rule, constraints=tuple(lines))


def told(design: Design, programme: Programme, values: Values, coupling: Coupling) -> Iterator[Diagnostic]:
    """What of the grading was let go, so that no size had to be refused; `programme` is the one before it was loosened."""
    if coupling is Coupling.GRADED:
        return
    broken = [r for r in programme.rules if r.kind is RuleKind.GRADING and any(not line.holds(values) for _, line in r.constraints)]
    notes = [Said("goes-down", rule.name.facts) for rule in broken]
    if not coupling.together:
        notes.append(said("rows-of-its-own"))
    if notes:
        origins = tuple(dict.fromkeys(origin.span for rule in broken for origin in rule.origins))
        places = origins or tuple(piece.origin.span for piece in design.pieces[:1])
        yield diagnosed(
            "sizes-not-graded",
            *((span, "let-go" if broken else "first-piece") for span in places),
            notes=tuple(notes),
            helps=("differ-more",),
            severity=Severity.WARNING,
        )
