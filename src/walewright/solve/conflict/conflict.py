"""Conflicts: why a programme has no solution, in terms of what was written, and the smallest change that would do.

A smallest set of rules that cannot hold together is found by leaving out one rule after the other and keeping out those
that are not needed for the conflict: first what the grading, the bed and the hands ask for, the author's own words last.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from walewright.design.model import Design
from walewright.record import replace
from walewright.report.model import Change, Diagnostic, Label, Span, diagnosed
from walewright.report.said import Said, grouped, only, said
from walewright.solve.algebra.highs import Slack, feasible, relaxed
from walewright.solve.algebra.programme import Programme, Rule, RuleKind
from walewright.solve.algebra.sums import Linear
from walewright.solve.joins.seams import unmet

ConflictSides = Callable[[Rule, int], Said | None]
"""What the sides of a join come to in a size, when they need not meet; by its rule."""


def explain(design: Design, part: Programme, sides: ConflictSides) -> tuple[tuple[Diagnostic, ...], bool]:
    """One message for each different set of rules that cannot hold together, over the sizes where it is so; and whether there is
    one because of a size by itself, and not because of all of them together. `sides` says what the sides of a join come to."""
    rules = sorted(part.rules, key=lambda r: r.kind)
    conflicts: list[tuple[tuple[Said, ...], list[int]]] = []
    for size in range(len(design.sizes)):
        own = [rule.only(frozenset({size})) for rule in rules]
        if feasible(_lines(own)):
            continue
        for names, sizes in conflicts:
            if not feasible(_lines([r for r in own if r.name in names])):
                sizes.append(size)
                break
        else:
            conflicts.append((tuple(r.name for r in _smallest(own)), [size]))
    if conflicts:
        return tuple(_message(design, rules, names, sizes, False, sides) for names, sizes in conflicts), True
    # Every size by itself is possible: what cannot be is all of them together, graded.
    return (_message(design, rules, tuple(r.name for r in _smallest(rules)), list(range(len(design.sizes))), True, sides),), False


def _lines(rules: Sequence[Rule]) -> list[Linear]:
    return [line for rule in rules for _, line in rule.constraints]


def _smallest(rules: Sequence[Rule]) -> list[Rule]:
    """Rules that cannot hold together although any one less of them can."""
    kept = [rule for rule in rules if rule.constraints]
    # Whole kinds first: most of them have no part in it.
    for kind in RuleKind:
        without = [r for r in kept if r.kind is not kind]
        if not feasible(_lines(without)):
            kept = without
    for rule in tuple(kept):
        without = [r for r in kept if r is not rule]
        if not feasible(_lines(without)):
            kept = without
    return kept


def _message(
    design: Design, rules: Sequence[Rule], names: Sequence[Said], sizes: Sequence[int], graded: bool, sides: ConflictSides
) -> Diagnostic:
    found = [rule for rule in rules if rule.name in names]
    # What fails is what binds the wanted numbers together: a join rather than the hands, the hands rather than the bed.
    binding = [r for r in found if not r.kind.is_wanted]
    failing = max(binding or found, key=lambda r: r.kind)
    because = sorted((r for r in found if r is not failing), key=lambda r: -r.kind)
    first = sizes[0]
    changes, helps = _smallest_changes(design, rules, found, sizes, graded)
    figures = {design.sizes[i]: tuple(r.says[i] for r in because if r.kind.is_wanted) for i in sizes}
    notes = tuple(said("figures", sizes=where, figures=says) for says, where in grouped(figures) if says)
    among = only(design.sizes, sizes)
    if failing.kind is RuleKind.JOIN and all(r.kind.is_wanted for r in because):
        join = next(j for j in design.joins if j.origin in failing.origins)
        lengths = tuple(said("in-size", size=design.sizes[i], note=note) for i in sizes if (note := sides(failing, i)) is not None)
        told = unmet(join, (*lengths, *notes), among, design, helps, changes)
        return replace(told, labels=(told.labels[0], *(Label(*place) for place in _labels(because, first))))
    free = next((r for r in because if r.ranged and r.figure[0] == "height"), None)
    if free is not None and failing.kind is RuleKind.CONSTRUCTION:
        _, name, level = free.figure
        told = diagnosed(
            "free-level-without-room",
            (free.origins[0].span, "free"),
            *_labels([failing, *(r for r in because if r is not free)], first),
            notes=notes or (said("in-size", size=design.sizes[first], note=free.says[first]),),
            helps=helps or ("go-farther",),
            sizes=among,
            piece=name,
            failing=failing.says[first],
            level=level,
        )
        return replace(told, changes=changes)
    wanted = tuple(r.name for r in found if r.kind.is_wanted)
    told = diagnosed(
        "counts-conflict/because" if because else "counts-conflict/alone",
        (failing.origins[0].span, failing.says[first]),
        *_labels(because, first),
        notes=notes if len(notes) > 1 else (),
        helps=helps or ((said("change", figures=wanted),) if wanted else ()),
        sizes=among,
        because=tuple(r.says[first] for r in because),
        failing=failing.says[first],
    )
    return replace(told, changes=changes)


def _labels(because: Sequence[Rule], size: int) -> tuple[tuple[Span, Said], ...]:
    return tuple((rule.origins[-1].span, rule.says[size]) for rule in because)


Candidates = tuple[tuple[Change, ...], ...]


def _smallest_changes(
    design: Design, rules: Sequence[Rule], found: Sequence[Rule], sizes: Sequence[int], graded: bool
) -> tuple[Candidates, tuple[Said, ...]]:
    """The wanted lengths to write instead, so that everything else holds: those of one figure each, what has to change least first,
    then of several. Beside them what to write in place of what is not a figure."""
    wanted = [rule for rule in found if rule.kind.is_wanted and rule.cm_per_unit]
    attempts = [_changed(design, rules, [rule], sizes, graded) for rule in wanted]
    # One that changes nothing only shows that what follows from other figures could lie otherwise: nobody could write that.
    possible = sorted((a for a in attempts if a is not None and a[1]), key=lambda a: a[0])
    if not possible:
        # Where other figures contradict each other too, those of all such conflicts have to change.
        together = [
            _changed(design, rules, free, sizes, graded) for free in (wanted, [*wanted, *_further(rules, wanted, sizes, graded)])
        ]
        possible = [a for a in together if a is not None and a[1]][:1]
    by_name = {rule.name: rule for rule in rules}
    candidates = [_as_changes(by_name, values) for _, values in possible]
    otherwise = tuple(dict.fromkeys(rule.otherwise for rule in found if rule.otherwise))
    # A figure that cannot be written by itself, because others follow from it, is only named.
    named = tuple(said("change", figures=tuple(values)) for _, values in possible[:1])
    return tuple(c for c in candidates if c), otherwise or named


def _as_changes(rules: Mapping[Said, Rule], values: Mapping[Said, Mapping[str, float]]) -> tuple[Change, ...]:
    made: list[Change] = []
    for name, by_size in values.items():
        figure, owner, at = rules[name].figure
        if not figure:
            return ()
        made.append(Change(figure, owner, at, tuple(by_size.items()), name))
    return tuple(made)


def _further(rules: Sequence[Rule], free: Sequence[Rule], sizes: Sequence[int], graded: bool) -> list[Rule]:
    """The wanted figures of further conflicts that are there when the `free` ones may be anything."""
    names = {rule.name for rule in free}
    further: set[Said] = set()
    for group in [list(sizes)] if graded else [[i] for i in sizes]:
        among = frozenset({*group, -1} if graded else group)
        left = [rule.only(among) for rule in rules if rule.name not in names]
        while not feasible(_lines(left)):
            found = {rule.name for rule in _smallest(left) if rule.kind.is_wanted and rule.cm_per_unit}
            if not found:
                break
            further |= found
            left = [rule for rule in left if rule.name not in found]
    return [rule for rule in rules if rule.name in further]


def _changed(
    design: Design, rules: Sequence[Rule], free: Sequence[Rule], sizes: Sequence[int], graded: bool
) -> tuple[float, dict[Said, dict[str, float]]] | None:
    """(centimetres changed, rule name to size to new length in cm) when only the `free` figures may change; None: not possible."""
    changed: dict[Said, dict[str, float]] = {}
    cost = 0.0
    for group in [list(sizes)] if graded else [[i] for i in sizes]:
        among = {*group, -1} if graded else set(group)
        # What only follows from other figures follows from the changed ones too.
        kept = [rule for rule in rules if rule not in free and rule.kind is not RuleKind.BETWEEN]
        hard = [line for rule in kept for i, line in rule.constraints if i in among]
        soft = [(rule, i, line) for rule in free for i, line in rule.constraints if i in among]
        answer = relaxed(hard, [Slack(line, rule.cm_per_unit) for rule, _, line in soft])
        if answer.values is None:
            return None
        cost += answer.objective
        for rule, i, line in soft:
            if not line.holds(answer.values):
                reached = line.terms.at(answer.values)
                changed.setdefault(rule.name, {})[design.sizes[i]] = reached * rule.cm_per_unit
    return cost, changed
