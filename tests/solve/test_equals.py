"""What is wanted alike comes out alike, and what is knitted several times is right as a whole."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from tests.solve.workshop import Workshop, origin, solve
from walewright.design.model import Design, RepeatStretch
from walewright.guide.english import LANGUAGE
from walewright.solve.algebra.quantities import BEYOND_COST, EQUAL_COST, HIDDEN, LESSER, OFF_COST, PLAIN_COST, STEADY, UNEVEN_COST
from walewright.solve.algebra.ranges import CENTRAL
from walewright.solve.edges.lengths import FINE
from walewright.solve.edges.pieces import _times
from walewright.solve.joins.joining import _CURVED_COST, _LONGER_COST
from walewright.solve.solver import programme_of

DOCS = Path(__file__).resolve().parents[2] / "docs"


def widths(design: Design, what: str) -> list[tuple[float, int]]:
    counts, told = solve(design)
    assert told == ()
    assert counts is not None
    return [next((d.wanted, d.solved) for d in g.deviations if LANGUAGE.measure(d.key) == what) for g in counts.sizes]


@pytest.mark.parametrize("upper", [17.9, 18.0, 18.1, 18.2, 18.3, 18.4])
@pytest.mark.parametrize("cuffs", [(11.0, 12.0, 12.5), (11.0, 13.0, 11.5), (11.3, 11.9, 12.2)])
def test_a_one_sided_width_wanted_alike_comes_out_alike(
    workshop: type[Workshop], upper: float, cuffs: tuple[float, float, float]
) -> None:
    """One edge slopes from cuffs of other widths to the same upper width: each edge by itself to the
    nearest stitch would not be."""
    shop = workshop("S M L", 40 / 14.3, 4.0)
    levels = shop.levels("sleeve", cuff=0, upper=40, top=50)
    moved = tuple(upper - cuff for cuff in cuffs)
    left = (shop.run("upper", moved), shop.run("top"))
    piece = shop.piece("sleeve", cuffs, levels, left, (shop.run("top"),))
    found = widths(shop.design(piece), "width at upper")
    assert len({round(wanted, 6) for wanted, _ in found}) == 1
    assert len({solved for _, solved in found}) == 1, found
    assert all(abs(solved - wanted) <= 1 for wanted, solved in found), found


def test_what_is_knitted_several_times_weighs_so_many_times(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    levels = shop.levels("gore", begin=0, close=7.5, top=20)
    run = (shop.run("top"),)
    once = shop.piece("gore", 40, levels, run)
    often = replace(once, copies=shop.counts(2), repeats=(RepeatStretch("begin", "close", shop.counts(6), origin("again")),))
    assert [_times(often, number) for number in range(3)] == [(2,), (12,), (2,)]
    weights = [max(w.weight for w in programme_of(shop.design(piece))[0].wishes) for piece in (once, often)]
    assert weights[1] == 12 * weights[0]


def test_the_distance_between_two_levels_is_weighed_as_well(workshop: type[Workshop]) -> None:
    """Each by itself they would come out at 10 and 22 rows, 12 apart where 10.2 are wanted (docs/solver.md, "What is best")."""
    shop = workshop("M", 2.0, 1.0)
    counts, told = solve(
        shop.design(shop.piece("cloth", 20, shop.levels("cloth", begin=0, low=10.9, top=21.1), (shop.run("top"),)))
    )
    assert told == ()
    assert counts is not None
    rows = dict(counts.sizes[0].pieces[0].levels)
    assert rows["top"] - rows["low"] == 10
    assert abs(rows["low"] - 10.9) < 2
    assert abs(rows["top"] - 21.1) < 2


def test_the_shares_are_those_that_the_document_tells() -> None:
    told = (DOCS / "solver.md").read_text(encoding="utf-8").partition("## What is best")[2].partition("## Joins")[0]
    for says in (
        f"| {OFF_COST:g} for each stitch or row off what is wanted, and {BEYOND_COST:g} more for each above the first",
        f"| {STEADY:g} times as much",
        f"| {LESSER:g} times as much",
        f"| {HIDDEN:g} times as much",
        f"| {EQUAL_COST:g} for each",
        f"| {_LONGER_COST * FINE:g} for each centimetre",
        f"| {_CURVED_COST * FINE:g} for each centimetre",
        f"| {UNEVEN_COST:g} for each stitch or row",
        f"| {PLAIN_COST:.4f} for each stitch or row",
        f"| {CENTRAL:.5f} for each stitch or row",
    ):
        assert says in told, says
