"""Openings, slots and buttonholes at their limits; against every whole number tried."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import combinations, pairwise
from math import ceil, floor

import pytest

from tests.solve.tiny import Best, Number, agrees, least, moves, off, plainness, tiny, width

GAP = """\
piece back in plain
    levels hem 0 cm, slit 6 cm, high {high:g} cm, top {top:g} cm
    start {start:g} cm wide with e-wrap
    opening gap {flat:g} cm wide from slit to high, cast off
        edges {edges}
    end cast off
"""


def between(c: dict[str, int], below: str, above: str, wanted: float) -> float:
    """The rows from one level to the next: three rows off at the most."""
    rows = c[above] - c[below]
    return off(rows, wanted) + plainness(rows, wanted, 2) if abs(rows - wanted) <= 3 else 1e6


def possible(best: Best | None) -> Best | None:
    return None if best is None or best.cost > 1e5 else best


def near_the_line(done: Sequence[tuple[int, int]], slots: Sequence[int], apart: int, rows: int) -> None:
    """Half a stitch worse than the best of all ways to make as many single moves at the most."""
    line = [len(done) * (row - 0.5) / rows for row in range(1, rows + 1)]

    def astray(made: Sequence[int]) -> float:
        return max(abs(sum(at < row for at in made) - wanted) for row, wanted in enumerate(line, 1))

    ways = [w for w in combinations(slots, len(done)) if all(b - a >= apart for a, b in pairwise(w))]
    assert tuple(at for at, _ in done) in ways
    assert astray([at for at, _ in done]) <= min(map(astray, ways)) + 0.5 + 1e-6


@pytest.mark.parametrize("rows", [4, 5, 6, 8])
@pytest.mark.parametrize(
    ("edges", "flat", "wide", "need", "parity"),
    [
        # A decrease needs no carriage: once a row, and a row after the last one.
        ("slope to 13 cm wide at high", 3, 13, lambda n, _: n + 1, 1),
        # Where a gap narrows the part grows: at the carriage, once in two rows; it begins at its outer edge.
        ("slope to 3 cm wide at high", 11, 3, lambda n, _: 2 * n, 2),
        ("cast off 2 cm then slope to 15 cm wide at high", 3, 15, lambda n, cast: n - cast + 2, 1),
        ("steps 2.2 cm 3 times to high", 3, 16.2, lambda n, _: 6, 0),
        ("cast off 2 cm then curve to 13 cm wide at high", 3, 13, lambda n, cast: 4, 0),
        ("curve to 13 cm wide at high", 3, 13, lambda n, _: 2, 0),
    ],
)
def test_the_edge_of_a_gap_has_the_rows_that_its_moves_need(
    edges: str, flat: int, wide: float, need: Callable[[int, int], int], parity: int, rows: int
) -> None:
    made = tiny(GAP.format(high=6 + rows, top=30, start=26, flat=flat, edges=edges))
    # Only the gap that narrows, a move in two rows, is refused, and only in fewer than six rows.
    refused = wide < flat and rows < 6
    assert (made.counts is None) == refused
    if refused:
        assert made.error.code == "slope-too-flat"
        return
    cast = "cast off" in edges
    steps = "steps" in edges
    numbers = {
        "start": width(26),
        "flat": Number(flat, share=0.3),
        "wide": width(wide),
        "slit": Number(6),
        "high": Number(6 + rows),
        "top": Number(30),
    }
    if cast:
        numbers["cast"] = Number(2, step=1, within=1, share=0.3)

    def holds(c: dict[str, int]) -> bool:
        moved = (c["wide"] - c["flat"]) * (1 if wide > flat else -1)
        n = moved // 2
        alike = moved >= 0 and (not steps or n % 3 == 0) and n >= c.get("cast", 0)
        beside = min(c["start"] - c["wide"], c["start"] - c["flat"]) >= 2
        return alike and beside and c["high"] - c["slit"] >= need(n, c.get("cast", 0)) and c["top"] > c["high"]

    def cost(c: dict[str, int]) -> float:
        return between(c, "slit", "high", rows) + between(c, "high", "top", 24 - rows)

    best = possible(least(numbers, holds, cost))
    if best is None:
        assert made.error.code == "counts-conflict"
        assert made.line() == "edges " + edges
        return
    piece = made.piece
    (gap,) = piece.openings
    done = [(at - gap.row, by) for at, by in moves(gap.left)]
    counted = {"start": piece.start, "flat": gap.flat, "wide": gap.width, **{k: r for k, r in piece.levels if k != "hem"}}
    if cast:
        counted["cast"] = -done[0][1]
        assert done[0][0] == 1
    agrees(made, best, counted)
    assert gap.left == gap.right
    assert sum(by for _, by in done) == (gap.flat - gap.width) // 2
    if parity and not cast and {abs(by) for _, by in done} == {1}:
        near_the_line(done, range(1, gap.to_row - gap.row, parity), parity, gap.to_row - gap.row)


@pytest.mark.parametrize("start", [9.0, 10.0, 12.0, 14.0])
@pytest.mark.parametrize(("way", "beside"), [("", 1), (", fashioned 2 in", 2), (", fashioned 3 in", 3)])
def test_stitches_are_left_on_each_side_of_a_gap(start: float, way: str, beside: int) -> None:
    """One, or as many as the tool takes that shapes it."""
    made = tiny(GAP.format(high=20, top=30, start=start, flat=2, edges=f"slope to 8 cm wide at high{way}"))
    best = least(
        {"start": width(start), "flat": Number(2, share=0.3), "wide": width(8)},
        lambda c: (c["start"] - c["wide"]) // 2 >= beside and c["wide"] >= c["flat"],
    )
    if best is None:
        assert made.error.code == "counts-conflict"
        assert made.line().startswith("opening gap")
        return
    (gap,) = made.piece.openings
    agrees(made, best, {"start": made.piece.start, "flat": gap.flat, "wide": gap.width})


@pytest.mark.parametrize("apart", [1, 2, 3, 4])
def test_rows_over_the_whole_width_lie_between_two_openings(apart: int) -> None:
    made = tiny(f"""\
piece back in plain
    levels hem 0 cm, one 6 cm, shut 11 cm, two {11 + apart} cm, top 30 cm
    start 14 cm wide with e-wrap
    opening low 2 cm wide from one to shut, cast off
    opening high 2 cm wide from two to top, cast off
    end cast off
""")
    numbers = {"one": Number(6), "shut": Number(11), "two": Number(11 + apart), "top": Number(30)}

    def cost(c: dict[str, int]) -> float:
        return between(c, "one", "shut", 5) + between(c, "shut", "two", apart) + between(c, "two", "top", 19 - apart)

    best = possible(least(numbers, lambda c: c["two"] - c["shut"] >= 2 and c["shut"] > c["one"], cost))
    assert best is not None
    agrees(made, best, {k: r for k, r in made.piece.levels if k != "hem"})


BESIDE = """\
piece back in plain
    levels hem 0 cm, one 6 cm, two 14 cm, three 20 cm, top 30 cm
    start {start:g} cm wide with e-wrap
    opening left_gap 2 cm wide from one to {high}, {off:g} cm left of centre, cast off
        edges straight to {high}
    opening right_gap 2 cm wide from {low} to three, {off:g} cm right of centre, cast off
        left edge slope by {move:g} cm at three{way}
        right edge straight to three
    end cast off
"""


@pytest.mark.parametrize("off", [2.0, 3.0, 4.0, 6.0])
@pytest.mark.parametrize(("way", "kept"), [("", 1), (", fashioned 2 in", 2)])
@pytest.mark.parametrize(("low", "high"), [("one", "three"), ("two", "three"), ("one", "two")])
def test_stitches_are_left_between_two_gaps(off: float, way: str, kept: int, low: str, high: str) -> None:
    """One, or as many as the tool takes that shapes one of them, wherever both are open."""
    move = 1.6
    made = tiny(BESIDE.format(start=22, off=off, low=low, high=high, move=move, way=way if way else ""))
    if made.counts is None:
        # What there is in centimetres is less than is kept, or rounds to less.
        assert 2 * off - 2 - move < kept + 1.5
        assert made.error.code in ("counts-conflict", "openings-overlap")
        return
    left, right = made.piece.openings
    between = right.first - (left.first + left.flat)
    moved = sum(by for _, by in moves(right.left))
    # The edge moves until both are shut, or has come half way where the left one shuts before.
    assert between >= kept
    assert high == "two" or between + moved >= kept
    assert between + moved - kept >= -1


def test_a_neck_begins_in_the_row_where_it_is_wanted_beside_a_slit() -> None:
    """Its rows are its own: it may not change places with where the slit begins or ends, whatever the rounding."""
    for depth, way in ((10.4, 0), (10.2, 1), (10.6, -1), (16.0, -1), (2.0, 1)):
        made = tiny(f"""\
piece back in plain
    levels hem 0 cm, low 6 cm, high 19.6 cm, top 30 cm
    start 22 cm wide with e-wrap
    opening slit 0 cm wide from low to high, 8 cm left of centre
    neck 6 cm wide, {depth:g} cm deep, square, cast off
    end cast off
""")
        if way == 0:
            assert made.error.code == "openings-touch"
            continue
        slit, neck = made.piece.openings
        assert (neck.row > slit.to_row) == (way > 0)
        assert neck.row > slit.row


@pytest.mark.parametrize("depth", [1.0, 2.6, 4.0, 7.0])
@pytest.mark.parametrize("top", [9.0, 10.4])
def test_a_neck_is_as_deep_as_is_written_and_begins_above_the_start(depth: float, top: float) -> None:
    made = tiny(f"""\
piece back in plain
    levels hem 0 cm, top {top} cm
    start 15 cm wide with e-wrap
    neck 6.3 cm wide, {depth} cm deep, square, cast off
    end cast off
""")
    numbers = {"start": width(15), "flat": width(6.3), "deep": Number(depth), "top": Number(top)}
    best = least(numbers, lambda c: c["deep"] >= 2 and c["top"] - c["deep"] >= 2)
    assert best is not None
    (neck,) = made.piece.openings
    assert neck.flat == neck.width
    agrees(made, best, {"start": made.piece.start, "flat": neck.flat, "deep": neck.to_row - neck.row, "top": made.piece.rows})


@pytest.mark.parametrize("high", [5, 6, 7, 8])
def test_a_v_neck_needs_a_row_for_each_stitch_and_one_more(high: int) -> None:
    made = tiny(f"""\
piece back in plain
    levels hem 0 cm, top 20 cm
    start 30 cm wide with e-wrap
    neck 15 cm wide, {high} cm deep, v
    end cast off
""")
    best = least({"wide": width(15), "deep": Number(high)}, lambda c: c["deep"] >= c["wide"] // 2 + 1)
    # Fourteen stitches, the fewest that are tried, need eight rows, and two rows off are the most: five are too few.
    assert (best is None) == (high == 5)
    if best is None:
        assert made.error.code == "counts-conflict"
        assert made.line().startswith("neck 15 cm")
        return
    (neck,) = made.piece.openings
    agrees(made, best, {"wide": neck.width, "deep": neck.to_row - neck.row})


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("where", [0.5, 1.0, 1.3, 2.0])
@pytest.mark.parametrize("more", ["", ", centre stitch"])
def test_a_gap_off_the_middle_lies_where_its_middle_comes_nearest(side: str, where: float, more: str) -> None:
    made = tiny(f"""\
piece back in plain{more}
    levels hem 0 cm, slit 6 cm, top 20 cm
    start {15 if more else 16} cm wide with e-wrap
    opening gap 3 cm wide from slit to top, {where} cm {side} of centre, cast off
    end cast off
""")
    (gap,) = made.piece.openings
    # The middle of an odd number is half a stitch right of the mark.
    middle = where * (1 if side == "right" else -1) + (0.5 if more else 0)
    best = least({"flat": Number(3, step=1, share=0.3)})
    assert best is not None
    costs = {
        (first, flat): 0.3 * (off(2 * first + flat, 2 * middle) + off(flat, 3)) for first in range(-8, 8) for flat in range(1, 6)
    }
    assert costs[gap.first, gap.flat] == pytest.approx(min(costs.values()))
    assert made.cost == pytest.approx(min(costs.values()), abs=0.005)


# ----------------------------------------------------------------- slots


@pytest.mark.parametrize("wide", [0.4, 2.0, 3.0, 5.0, 6.0, 7.0, 8.0, 9.0])
@pytest.mark.parametrize("where", [0.0, 1.0, -1.0, 1.5, -1.5])
def test_a_slot_has_a_stitch_and_a_half_beside_the_place_that_is_written(wide: float, where: float) -> None:
    """Its middle may lie half a stitch off, so that a stitch is left whichever way it does."""
    place = "" if not where else f", {abs(where)} cm {'right' if where > 0 else 'left'} of centre"
    made = tiny(f"""\
piece back in plain
    levels hem 0 cm, at 10 cm, top 20 cm
    start 12 cm wide with e-wrap
    slot pocket {wide:g} cm wide at at{place}, cast off
    end cast off
""")
    nothing_beside = 6 - abs(where) - wide / 2 <= 0
    assert (made.counts is None) == nothing_beside
    if nothing_beside:
        assert made.error.code == "beyond-the-edge"
        return
    best = least(
        {"start": width(12), "slot": width(wide, step=1 if where else 2)},
        lambda c: c["slot"] >= 1 and all(c["start"] - c["slot"] >= ceil(2 * towards) + 3 for towards in (where, -where)),
    )
    assert best is not None
    (slot,) = made.piece.slots
    stitches = slot.last - slot.first + 1
    agrees(made, best, {"start": made.piece.start, "slot": stitches})
    # Of two places equally near the one towards the left.
    wanted = where - stitches / 2
    assert slot.first == min((abs(first - wanted), first) for first in range(floor(wanted) - 1, ceil(wanted) + 2))[1]


@pytest.mark.parametrize(("count", "high"), [(2, 14), (3, 18), (3, 19), (4, 23.2), (5, 27)])
def test_buttonholes_lie_two_rows_apart_or_more_and_evenly(count: int, high: float) -> None:
    made = tiny(f"""\
piece back in plain
    levels hem 0 cm, low 10 cm, high {high:g} cm, top 40 cm
    start 12 cm wide with e-wrap
    buttonholes {count} over 1 stitch from low to high, 2 cm from the right edge
    end cast off
""")
    numbers = {"low": Number(10), "high": Number(high), "top": Number(40)}

    def cost(c: dict[str, int]) -> float:
        return between(c, "low", "high", high - 10) + between(c, "high", "top", 40 - high)

    best = possible(least(numbers, lambda c: c["high"] - c["low"] >= 2 * (count - 1), cost))
    assert best is not None
    agrees(made, best, {k: r for k, r in made.piece.levels if k != "hem"})
    rows = [slot.row for slot in made.piece.slots]
    low, whole = made.piece.row("low"), made.piece.row("high") - made.piece.row("low")
    assert rows[0] == low
    assert rows[-1] == low + whole
    assert all(row % 2 == 0 and abs(row - low - whole * n / (count - 1)) <= 1 for n, row in enumerate(rows))
    # Two stitches stand between them and the edge.
    assert {slot.first for slot in made.piece.slots} == {6 - 2 - 1}
