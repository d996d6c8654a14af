"""The integer programme as plain data: variables, named rules over them, and wishes that pull them to wanted numbers.

Everything a rule says is in integers, so that a solution can be checked again without any solver.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from enum import IntEnum
from typing import Literal

from walewright.design.model import Origin
from walewright.record import record, replace
from walewright.report.model import WrittenFigure
from walewright.report.said import Said
from walewright.solve.algebra.sums import Linear, Terms, Values

FigureAt = tuple[WrittenFigure | Literal[""], str, str]
"""Which figure, whose, and where, as in a `Change`; empty where it is not a figure of the author's."""


class RuleKind(IntEnum):
    """Who asks for a rule, in the order in which rules are left out to find what a conflict is about."""

    GRADING = 0
    MACHINE = 1
    CONSTRUCTION = 2
    JOIN = 3
    BETWEEN = 4
    """A wanted number that follows from others the author wrote, such as the rows between two levels."""
    WANTED = 5

    @property
    def is_wanted(self) -> bool:
        """Whether it is a number and not a rule that binds numbers."""
        return self >= RuleKind.BETWEEN


@record
class Variable:
    """A whole number from 0 up, of one piece in one size. Stitches are counted per side of the centre, rows in pairs."""

    name: str
    piece: str
    size: int


@record
class Rule:
    """A named group of constraints that stands or falls as one, with a clause for each size.

    `says[i]` is the clause for size i ("the back is 30 cm high at `underarm`"), which can be denied too. `name` is no other
    rule's; of a wanted number it is the figure ("the height of `underarm` of the back").
    `constraints` carry the size that they belong to; -1 is for those that speak of two sizes at once.
    """

    name: Said
    kind: RuleKind
    origins: tuple[Origin, ...]
    says: tuple[Said, ...]
    constraints: tuple[tuple[int, Linear], ...]
    cm_per_unit: float = 0.0
    """Of a wanted number: how many centimetres one unit of its terms is."""
    near: tuple[tuple[int, Linear], ...] = ()
    """Of a finished width: the same as the constraints, but no more than a stitch off. Kept wherever that is possible at all."""
    otherwise: Said | None = None
    """What to write in its place, where no other figure would do."""

    ranged: bool = False
    """Of a number that is free within a range."""
    figure: FigureAt = ("", "", "")
    """Of a wanted number: (what, of which piece, at which level), as in `Change`."""

    def only(self, sizes: frozenset[int]) -> Rule:
        """The same rule as far as it speaks of these sizes alone."""
        kept = tuple(c for c in self.constraints if c[0] in sizes)
        return replace(self, constraints=kept, near=tuple(c for c in self.near if c[0] in sizes))


@record
class Wish:
    """Costs `weight` for each unit that the sum of terms is off `wanted`, and `beyond` more for each unit above `free`."""

    terms: Terms
    wanted: float
    weight: float
    beyond: float = 0.0
    free: float = 1.0


@record
class Programme:
    """A whole programme. `nudges` are small costs (variable, cost per unit) that decide between equals."""

    variables: tuple[Variable, ...]
    rules: tuple[Rule, ...]
    wishes: tuple[Wish, ...]
    nudges: tuple[tuple[int, float], ...] = ()

    def nearer(self, sizes: Sequence[int]) -> Programme:
        """The same programme with no finished width of these sizes more than a stitch off."""
        among = frozenset(sizes)
        rules = tuple(
            replace(r, constraints=(*r.constraints, *(c for c in r.near if c[0] in among))) if r.near else r for r in self.rules
        )
        return replace(self, rules=rules)

    def broken(self, values: Values) -> Iterator[Rule]:
        """The rules that these values do not keep."""
        for rule in self.rules:
            if any(not line.holds(values) for _, line in rule.constraints):
                yield rule


@dataclass(slots=True)
class Draft:
    """A programme being written."""

    variables: list[Variable] = field(default_factory=list)
    rules: list[Rule] = field(default_factory=list)
    wishes: list[Wish] = field(default_factory=list)
    nudges: list[tuple[int, float]] = field(default_factory=list)

    def variable(self, name: str, piece: str, size: int) -> Terms:
        """A new variable."""
        self.variables.append(Variable(name, piece, size))
        return Terms(((len(self.variables) - 1, 1),))

    def programme(self) -> Programme:
        """What has been written so far."""
        return Programme(tuple(self.variables), tuple(self.rules), tuple(self.wishes), tuple(self.nudges))


Lines = list[tuple[int, Linear]]
"""Constraints with the sizes that they belong to."""


def asks(
    draft: Draft, clause: Said, origins: tuple[Origin, ...], lines: Lines, sizes: int, kind: RuleKind = RuleKind.CONSTRUCTION
) -> None:
    """Writes a rule that says the same in every size, if it says anything. Its clause is its name: where two say the same, a fact
    more tells them apart."""
    made = [(i, line) for i, line in lines if line.terms]
    if made:
        draft.rules.append(Rule(clause, kind, origins, (clause,) * sizes, tuple(made)))


def components(programme: Programme) -> tuple[Programme, ...]:
    """The independent parts of a programme, in the order of their first variable. Variables of one piece stay together.

    Variables keep their numbers, so that solutions can be put together; a part holds only rules and wishes of its own.
    """
    leader = list(range(len(programme.variables)))

    def find(v: int) -> int:
        while leader[v] != v:
            leader[v] = leader[leader[v]]
            v = leader[v]
        return v

    def unite(several: Sequence[int]) -> None:
        for v in several[1:]:
            a, b = sorted((find(several[0]), find(v)))
            leader[b] = a

    by_piece: dict[str, list[int]] = {}
    for number, variable in enumerate(programme.variables):
        by_piece.setdefault(variable.piece, []).append(number)
    for members in by_piece.values():
        unite(members)
    for rule in programme.rules:
        for _, line in rule.constraints:
            unite([v for v, _ in line.terms])
    for wish in programme.wishes:
        unite([v for v, _ in wish.terms])
    roots = sorted({find(v) for v in range(len(programme.variables))})
    return tuple(
        Programme(
            programme.variables,
            tuple(r for r in programme.rules if any(find(line.terms.of[0][0]) == root for _, line in r.constraints if line.terms)),
            tuple(w for w in programme.wishes if w.terms and find(w.terms.of[0][0]) == root),
            tuple(n for n in programme.nudges if find(n[0]) == root),
        )
        for root in roots
    )
