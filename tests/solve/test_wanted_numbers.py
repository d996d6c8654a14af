"""Numbers that are wanted, one by one: what each asks of the programme, what it wishes for, and what it decides between equals, all
worked out by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.solve.workshop import Workshop, solve
from walewright.design.model import Origin
from walewright.report.said import said
from walewright.solve import solver
from walewright.solve.algebra.highs import Answer
from walewright.solve.algebra.programme import Draft, Programme, RuleKind, Wish
from walewright.solve.algebra.quantities import BEYOND_COST, EQUAL_COST, LESSER, OFF_COST, PLAIN_COST, UNEVEN_COST, Quantity, want
from walewright.solve.algebra.ranges import CENTRAL, want_place, want_range
from walewright.solve.algebra.sums import Terms

Bounds = tuple[int | None, int | None]


def quantity(draft: Draft, wanted: tuple[float, ...], off: float = 2.0, factor: int = 2, **more: object) -> Quantity:
    made = Quantity(
        name=said("start", piece="p"),
        pieces=("p",),
        origin=Origin("here"),
        terms=tuple(draft.variable("w", "p", size) for size in range(len(wanted))),
        factor=factor,
        wanted=wanted,
        cm=tuple(w / 2 for w in wanted),
        tolerance=(off,) * len(wanted),
        clause=said("starts-wide", piece="p"),
    )
    return replace(made, **more)  # type: ignore[arg-type]


def bounds(draft: Draft, kind: RuleKind = RuleKind.WANTED) -> list[Bounds]:
    return [(line.low, line.high) for rule in draft.rules if rule.kind is kind for _, line in rule.constraints]


def near(draft: Draft) -> list[Bounds]:
    return [(line.low, line.high) for rule in draft.rules for _, line in rule.near]


@pytest.mark.parametrize(
    ("wanted", "off", "factor", "more", "allowed", "nearer"),
    [
        # At most two stitches off, a stitch where that can be: 9 to 13 and 10 to 12 of 11.
        (11.0, 2.0, 1, {}, (9, 13), (10, 12)),
        (11.5, 2.0, 1, {}, (10, 13), (11, 12)),
        # Of one of two sides: pairs from 4.5 to 6.5, from 5 to 6.
        (11.0, 2.0, 2, {}, (5, 6), (5, 6)),
        (12.0, 2.0, 2, {}, (5, 7), (6, 6)),
        # None below nothing, unless it may be; and all that is more than two off is kept no nearer.
        (1.0, 2.0, 1, {}, (0, 3), (0, 2)),
        (1.0, 2.0, 1, {"signed": True}, (-1, 3), (0, 2)),
        (0.5, 2.0, 1, {"signed": True}, (-1, 2), (0, 1)),
        (-0.5, 2.0, 1, {"signed": True}, (-2, 1), (-1, 0)),
        (11.0, 2.5, 1, {}, (9, 13), None),
        # Rows and what nobody measures are no finished widths.
        (11.0, 2.0, 1, {"unit": "rows"}, (9, 13), None),
        (11.0, 2.0, 1, {"share": LESSER}, (9, 13), None),
        # An edge by itself gets its own share.
        (11.0, 2.0, 1, {"near": 0.25}, (9, 13), (11, 11)),
    ],
)
def test_how_far_off_a_number_may_be(
    wanted: float, off: float, factor: int, more: dict[str, object], allowed: Bounds, nearer: Bounds | None
) -> None:
    draft = Draft()
    want(draft, quantity(draft, (wanted,), off, factor, **more))
    assert bounds(draft) == [allowed]
    assert near(draft) == ([] if nearer is None else [nearer])


def test_what_it_costs_to_be_off() -> None:
    draft = Draft()
    made = quantity(draft, (11.0,), share=0.3, times=(2,))
    want(draft, made)
    assert draft.wishes == [Wish(2 * made.terms[0], 11.0, OFF_COST * 0.6, BEYOND_COST * 0.6, free=1.0)]
    # 10 and 12 are as near, and 10 is the plainer one: each pair more costs something.
    assert draft.nudges == [(0, 2 * PLAIN_COST)]
    (rule,) = draft.rules
    # 11 stitches are 5.5 cm: two of them are a centimetre.
    assert rule.cm_per_unit == pytest.approx(1.0)


@pytest.mark.parametrize(
    ("wanted", "factor", "cost"),
    [
        (10.5, 1, 1),
        (9.5, 1, -1),
        (11.5, 1, -1),
        (12.5, 1, 1),
        (13.5, 1, 1),
        (10.4, 1, 0),
        (10.0, 1, 0),
        (15.0, 2, -1),
        (17.0, 2, 1),
    ],
)
def test_tens_are_plainer_than_fours_and_fours_than_the_rest(wanted: float, factor: int, cost: int) -> None:
    draft = Draft()
    want(draft, quantity(draft, (wanted,), factor=factor))
    assert [c for _, c in draft.nudges] == [cost * factor * PLAIN_COST]


@pytest.mark.parametrize(
    ("wanted", "either", "graded"),
    [
        # No smaller, and where it is wanted alike no larger either; a stitch apart where odd and even are left open.
        ((8.0, 10.0), False, [(0, None)]),
        ((10.0, 8.0), False, [(None, 0)]),
        ((9.0, 9.0), False, [(0, None), (None, 0)]),
        ((9.0, 9.0), True, [(-1, None), (None, 1)]),
        ((8.0, 9.0, 9.0), False, [(0, None), (0, None), (None, 0)]),
    ],
)
def test_from_size_to_size_it_goes_the_way_that_is_wanted(wanted: tuple[float, ...], either: bool, graded: list[Bounds]) -> None:
    draft = Draft()
    made = quantity(draft, wanted, either=either)
    want(draft, made)
    assert bounds(draft, RuleKind.GRADING) == graded
    alike = [w for w in draft.wishes if w.weight == EQUAL_COST]
    # What is wanted alike is wished alike, unless it may be a stitch apart.
    assert len(alike) == (0 if either else len(wanted) - len(set(wanted)))
    bends = [w for w in draft.wishes if w.weight == UNEVEN_COST]
    assert [(w.terms, w.wanted) for w in bends] == [
        (2 * (made.terms[0] - 2 * made.terms[1] + made.terms[2]), wanted[0] - 2 * wanted[1] + wanted[2]) for _ in wanted[2:]
    ]


# ----------------------------------------------------------------- ranges and places

TOGETHER = {"weight": OFF_COST, "beyond": BEYOND_COST}


@pytest.mark.parametrize(
    ("least", "most", "more", "allowed", "weight"),
    [
        # From 4 to 10 in pairs; what lies at an end is within.
        (4.0, 10.0, {}, (2, 5), CENTRAL),
        (3.9, 10.1, {}, (2, 5), CENTRAL),
        (4.1, 9.9, {}, (3, 4), CENTRAL),
        (10.0, 4.0, {}, (2, 5), CENTRAL),
        # Just one fits.
        (5.5, 6.5, {}, (3, 3), CENTRAL),
        # None does: what is nearest to the middle, 5 of 4.2 to 5.8, as of any other number; at most two off.
        (4.2, 5.8, {}, (2, 3), OFF_COST),
        (4.2, 5.8, {"share": 0.5}, (2, 3), OFF_COST * 0.5),
        # Less than none only where it may be.
        (-6.0, 4.0, {}, (0, 2), CENTRAL),
        (-6.0, 4.0, {"signed": True}, (-3, 2), CENTRAL),
    ],
)
def test_anything_within_a_range_costs_nothing_but_what_decides_between_equals(
    least: float, most: float, more: dict[str, object], allowed: Bounds, weight: float
) -> None:
    draft = Draft()
    made = quantity(draft, (least,), **more)
    want_range(draft, made, (most,), (most / 2,))
    assert bounds(draft) == [allowed]
    beyond = 0.0 if weight == CENTRAL else weight * BEYOND_COST / OFF_COST
    assert draft.wishes == [Wish(2 * made.terms[0], (least + most) / 2, weight, beyond, free=1.0)]
    (rule,) = draft.rules
    assert rule.ranged
    (clause,) = rule.says
    assert "cm" in dict(clause.facts)


def test_a_range_of_one_number_is_that_number() -> None:
    one, other = Draft(), Draft()
    want_range(one, quantity(one, (11.0, 13.0)), (11.0, 13.0), (5.5, 6.5))
    want(other, quantity(other, (11.0, 13.0)))
    assert one == other
    # One size with a range is enough for all to be ranges.
    mixed = Draft()
    want_range(mixed, quantity(mixed, (12.0, 13.0)), (12.0, 17.0), (6.0, 8.5))
    assert bounds(mixed) == [(6, 6), (7, 8)]
    assert not bounds(mixed, RuleKind.GRADING)


@pytest.mark.parametrize(
    ("wanted", "off", "allowed"), [(-3.5, 3.0, (-6, -1)), (0.0, 3.0, (-3, 3)), (4.0, 3.0, (1, 7)), (4.5, 1.0, (4, 5))]
)
def test_a_place_may_lie_on_either_side_of_the_mark(wanted: float, off: float, allowed: Bounds) -> None:
    draft = Draft()
    made = quantity(draft, (wanted,), off, 1, share=LESSER)
    want_place(draft, made)
    assert bounds(draft) == [allowed]
    assert draft.wishes == [Wish(made.terms[0], wanted, OFF_COST * LESSER, BEYOND_COST * LESSER, free=1.0)]
    assert draft.rules[0].says[0].facts[-1][1].value == round(abs(wanted / 2), 1)  # type: ignore[union-attr]


def test_what_is_no_number_is_neither_asked_nor_wished_for() -> None:
    for way in (want, want_place, lambda draft, made: want_range(draft, made, (5.0,), (2.0,))):
        draft = Draft()
        way(draft, quantity(draft, (4.0,), terms=(Terms(),)))
        assert draft.wishes == []
        assert bounds(draft) == []


# ----------------------------------------------------------------- what is not proven to be the best


@pytest.mark.parametrize("values", [True, False])
def test_numbers_that_are_not_proven_best_are_no_counts(
    workshop: type[Workshop], monkeypatch: pytest.MonkeyPatch, values: bool
) -> None:
    """Whether the search was stopped with numbers in hand or without."""
    shop = workshop("M")
    piece = shop.piece("back", 40, shop.levels("back", hem=0, top=30), (shop.run("top"),))
    best = solver.best

    def stopped(part: Programme, sizes: int) -> Answer:
        found = best(part, sizes)
        return Answer("stopped", found.values if values else None, found.objective, found.bound)

    monkeypatch.setattr(solver, "best", stopped)
    counts, told = solve(shop.design(piece))
    assert counts is None
    assert [d.code for d in told] == ["no-proven-best"]
