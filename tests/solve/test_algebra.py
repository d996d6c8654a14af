"""The integer programme by itself: sums and lines, rules, wishes and nudges as they are solved, its parts, and its limit."""

from __future__ import annotations

from itertools import product
from random import Random

import pytest

from walewright.design.model import Origin
from walewright.report.said import said
from walewright.solve.algebra import highs
from walewright.solve.algebra.coupling import LET_GO_COST, Coupling, coupled
from walewright.solve.algebra.highs import Answer, Slack, feasible, relaxed, solve_programme
from walewright.solve.algebra.programme import Draft, Rule, RuleKind, Wish, asks, components
from walewright.solve.algebra.ranges import signed
from walewright.solve.algebra.sums import NOTHING, Linear, Terms

X, Y = Terms(((0, 1),)), Terms(((1, 1),))
VALUES = (5, 3)


@pytest.mark.parametrize(
    ("made", "comes_to"),
    [
        (X + Y, 8),
        (X + 4, 9),
        (4 + X, 9),
        (X + 4 + 2, 11),
        ((X + 4) + (Y + 2), 14),
        (X - Y, 2),
        (X - 7, -2),
        (7 - X, 2),
        (10 - (X + 2), 3),
        (-(X + 1), -6),
        (3 * X, 15),
        (3 * (X + 2), 21),
        ((X + 2) * -2, -14),
        (0 * (X + 2), 0),
        (X + Y - X, 3),
        (sum([X, Y, X], start=NOTHING), 13),
    ],
)
def test_sums_are_reckoned_like_numbers(made: Terms, comes_to: int) -> None:
    assert made.at(VALUES) == comes_to
    assert made.at(dict(enumerate(VALUES))) == comes_to
    assert bool(made) == bool(list(made))
    assert all(coefficient for _, coefficient in made)


@pytest.mark.parametrize(
    ("line", "holds"),
    [
        (X >= 5, True),
        (X >= 6, False),
        (X <= 5, True),
        (X <= 4, False),
        (X >= Y + 2, True),
        (X >= Y + 3, False),
        (X <= Y + 2, True),
        (X <= Y + 1, False),
        (X.equals(5), True),
        (X.equals(4), False),
        ((X + 1).equals(Y + 3), True),
        ((X + 1).within(6, 6), True),
        ((X + 1).within(7, None), False),
        ((X + 1).within(None, 5), False),
        ((X + 1).within(None, None), True),
    ],
)
def test_a_line_holds_at_its_bounds_and_not_beyond(line: Linear, holds: bool) -> None:
    assert line.holds(VALUES) == holds
    # The number beside the variables has gone into the bounds.
    assert line.terms.more == 0


# ----------------------------------------------------------------- solved


def draft(count: int, pieces: str = "") -> tuple[Draft, list[Terms]]:
    made = Draft()
    return made, [made.variable(f"v{n}", pieces[n : n + 1] or "p", 0) for n in range(count)]


def bound(made: Draft, *lines: Linear) -> None:
    asks(made, said("x"), (Origin("here"),), [(0, line) for line in lines], 1)


def test_all_lines_of_one_variable_hold() -> None:
    """Whatever their order: the tightest bound of each side."""
    for lines in product((3, 5, 4), (9, 7, 8)):
        made, (x,) = draft(1)
        bound(made, x >= lines[0], x <= lines[1], x >= 2, x <= 10)
        made.wishes.append(Wish(x, 0.0, 1.0))
        low = solve_programme(made.programme())
        assert (low.status, low.values, low.objective) == ("optimal", {0: lines[0]}, pytest.approx(lines[0]))
        made.wishes[:] = [Wish(x, 20.0, 1.0)]
        assert solve_programme(made.programme()).values == {0: lines[1]}


@pytest.mark.parametrize("wanted", [0.0, 3.4, 6.6, 9.0])
@pytest.mark.parametrize(("weight", "beyond", "free"), [(1.0, 0.0, 1.0), (1.0, 30.0, 1.0), (2.0, 5.0, 2.0)])
def test_a_wish_costs_for_each_unit_and_more_beyond_what_is_free(wanted: float, weight: float, beyond: float, free: float) -> None:
    made, (x, y) = draft(2)
    bound(made, x + y >= 8, x <= 6, y <= 6)
    made.wishes += [Wish(x + 1, wanted, weight, beyond, free), Wish(y, 2.0, 1.5)]
    made.nudges.append((1, 0.25))
    found = solve_programme(made.programme())

    def cost(a: int, b: int) -> float:
        off = abs(a + 1 - wanted)
        return weight * off + beyond * max(0.0, off - free) + 1.5 * abs(b - 2) + 0.25 * b

    costs = {(a, b): cost(a, b) for a in range(7) for b in range(7) if a + b >= 8}
    assert found.values is not None
    assert costs[found.values[0], found.values[1]] == pytest.approx(min(costs.values()))
    assert (found.objective, found.bound) == (pytest.approx(min(costs.values())), pytest.approx(min(costs.values())))


def test_what_cannot_hold_is_infeasible() -> None:
    assert feasible([X >= 3, X <= 3])
    assert not feasible([X >= 3, X <= 2])
    assert not feasible([X + Y >= 3, X <= 1, Y <= 1])
    assert feasible([X + Y >= 2, X <= 1, Y <= 1])
    # Between two whole numbers there is none.
    assert not feasible([(2 * X).equals(2 * Y + 1)])
    # What says nothing of any variable.
    assert feasible([Linear(NOTHING, None, 0)])
    assert not feasible([Linear(NOTHING, 1, None)])


def test_what_may_be_broken_is_broken_least() -> None:
    """By either bound, at its own cost."""
    lines = [X <= 4, Y <= 4]
    found = relaxed(lines, [Slack(X + Y >= 10, 3.0), Slack((X - Y).within(-1, 1), 1.0)])
    assert found.values == {0: 4, 1: 4}
    assert found.objective == pytest.approx(6.0)
    found = relaxed([X.equals(4), Y.equals(1)], [Slack((X - Y).within(-1, 1), 2.0), Slack((Y - X).within(-1, 1), 0.5)])
    assert found.objective == pytest.approx(2 * 2.0 + 2 * 0.5)


@pytest.mark.parametrize("asked", [True, False])
def test_at_the_limit_of_nodes_it_stops_with_what_it_has(asked: bool, monkeypatch: pytest.MonkeyPatch) -> None:
    """Half of three sums over the same things taken or left: asked for, one node finds none; wished for, it finds something."""
    made, several = draft(20)
    bound(made, *(x <= 1 for x in several))
    chance = Random(3)
    sums = [[chance.randrange(1, 100) for _ in several] for _ in range(3)]
    for weights in sums:
        whole = sum((w * x for w, x in zip(weights, several, strict=True)), start=NOTHING)
        if asked:
            bound(made, whole.equals(sum(weights) // 2))
        else:
            made.wishes.append(Wish(whole, sum(weights) / 2, 1.0))
    monkeypatch.setattr(highs, "NODE_LIMIT", 1)
    found = solve_programme(made.programme())
    assert found.status == "stopped"
    if asked:
        assert found == Answer("stopped", None, 0.0, 0.0)
        return
    assert found.values is not None
    off = sum(abs(sum(w * found.values[n] for n, w in enumerate(weights)) - sum(weights) / 2) for weights in sums)
    assert found.objective == pytest.approx(off, abs=1e-4)
    assert found.bound < found.objective


# ----------------------------------------------------------------- parts


def test_what_has_nothing_to_do_with_each_other_is_apart() -> None:
    """Numbers of one piece stay together; rules and wishes of two pieces bring these together, and a nudge goes with its own."""
    made, (a, b, c, d) = draft(4, "ppqr")
    bound(made, a >= 1)
    bound(made, c <= 3)
    made.wishes.append(Wish(d, 2.0, 1.0))
    made.nudges += [(1, 0.5), (3, 0.5)]
    apart = components(made.programme())
    assert [(len(p.rules), len(p.wishes), p.nudges) for p in apart] == [(1, 0, ((1, 0.5),)), (1, 0, ()), (0, 1, ((3, 0.5),))]
    assert {len(p.variables) for p in apart} == {4}
    bound(made, (b - c).within(0, 5))
    assert [len(p.rules) for p in components(made.programme())] == [3, 0]
    made.wishes.append(Wish(c + d, 1.0, 1.0))
    (whole,) = components(made.programme())
    assert whole == made.programme()


def test_a_rule_that_says_nothing_is_not_written() -> None:
    made, (x,) = draft(1)
    asks(made, said("x"), (), [(0, Linear(NOTHING, 0, 0))], 1)
    assert made.rules == []
    asks(made, said("x"), (), [(0, Linear(NOTHING, 0, 0)), (1, x >= 2)], 2)
    (rule,) = made.rules
    assert (rule.constraints, rule.says, rule.kind) == (((1, x >= 2),), (said("x"),) * 2, RuleKind.CONSTRUCTION)


def test_of_a_rule_some_sizes_can_be_taken_and_nearer_is_asked_of_some() -> None:
    rule = Rule(said("w"), RuleKind.WANTED, (), (), ((0, X >= 1), (1, Y >= 1), (-1, X >= Y)), near=((0, X >= 3), (1, Y >= 3)))
    only = rule.only(frozenset({1}))
    assert (only.constraints, only.near) == (((1, Y >= 1),), ((1, Y >= 3),))
    made, _ = draft(2)
    made.rules.append(rule)
    (nearer,) = made.programme().nearer([0]).rules
    assert nearer.constraints == (*rule.constraints, (0, X >= 3))
    assert made.programme().nearer([]).rules == (rule,)
    assert [list(made.programme().broken(v)) == [] for v in ((1, 1), (0, 1), (1, 2), (3, 1))] == [True, False, False, True]


# ----------------------------------------------------------------- coupled


def test_a_grading_gives_way_at_a_cost_where_it_has_to() -> None:
    """The second is to be no smaller, and cannot: it is wished for, and let go by as much as it has to."""
    made, (x, y) = draft(2)
    bound(made, x >= 5, y <= 3)
    made.rules.append(Rule(said("g"), RuleKind.GRADING, (), (), ((-1, y >= x), (-1, x <= y + 1))))
    graded = made.programme()
    assert coupled(graded, Coupling.GRADED) is graded
    assert solve_programme(graded).status == "infeasible"
    for coupling in (Coupling.WISHED, Coupling.APART):
        found = solve_programme(coupled(graded, coupling))
        assert found.values is not None
        assert (found.values[0], found.values[1]) == (5, 3)
        assert found.objective == pytest.approx((2 + 1) * LET_GO_COST)
    assert [c.together for c in Coupling] == [True, True, False, False]


def test_alone_nothing_is_said_of_two_sizes() -> None:
    made = Draft()
    x, y = (made.variable("w", "p", size) for size in (0, 1))
    bound(made, x >= 1)
    made.rules.append(Rule(said("g"), RuleKind.GRADING, (), (), ((-1, y >= x),)))
    made.rules.append(Rule(said("both"), RuleKind.CONSTRUCTION, (), (), ((-1, y >= x), (1, y >= 2))))
    made.wishes += [Wish(x, 1.0, 1.0), Wish(y - x, 0.0, 1.0)]
    alone = coupled(made.programme(), Coupling.ALONE)
    assert [rule.constraints for rule in alone.rules] == [((0, x >= 1),), ((1, y >= 2),)]
    assert alone.wishes == (Wish(x, 1.0, 1.0),)


def test_a_number_has_the_sign_that_is_wanted_of_it() -> None:
    made = Draft()
    found = signed(made, "off", "p", (2.0, -2.0, 0.0))
    assert [terms.at(dict.fromkeys(range(3), 3)) for terms in found] == [3, -3, 3]
    assert [v.size for v in made.variables] == [0, 1, 2]
