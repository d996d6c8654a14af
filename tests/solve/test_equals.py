"""What is wanted alike comes out alike, and what is knitted several times is right as a whole."""

from __future__ import annotations

from dataclasses import replace

import pytest
from workshop import Workshop, origin, solve

from walewright.design.model import Design, RepeatStretch
from walewright.solve.pieces import _times
from walewright.solve.solver import programme_of


def widths(design: Design, what: str) -> list[tuple[float, int]]:
    counts, told = solve(design)
    assert told == ()
    assert counts is not None
    return [next((d.wanted, d.solved) for d in g.deviations if d.what == what) for g in counts.sizes]


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
    often = replace(once, copies=2, repeats=(RepeatStretch("begin", "close", 6, origin("again")),))
    assert [_times(often, number) for number in range(3)] == [2, 12, 2]
    weights = [max(w.weight for w in programme_of(shop.design(piece))[0].wishes) for piece in (once, often)]
    assert weights[1] == 12 * weights[0]
