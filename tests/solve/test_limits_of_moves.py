"""How far what an edge does may be off what is written, and rows for arches, steps and gaps; against every whole number tried."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest

from tests.solve.tiny import Best, Number, Tiny, agrees, least, moves, off, plainness, tiny, width, width_at

BED = """\
piece back in plain
    levels hem 0 cm, top {high:g} cm
    start {start:g} cm wide with e-wrap
    {edges}
    end cast off
"""


def between(c: dict[str, int], below: str, above: str, wanted: float) -> float:
    """The rows from one level to the next: three rows off at the most."""
    rows = c[above] - c[below]
    return off(rows, wanted) + plainness(rows, wanted, 2) if abs(rows - wanted) <= 3 else 1e6


def possible(best: Best | None) -> Best | None:
    return None if best is None or best.cost > 1e5 else best


def refused(made: Tiny, line: str) -> None:
    assert made.error.code in ("counts-conflict", "join-does-not-meet"), made.error.code
    assert line in made.blamed


@pytest.mark.parametrize("each", [0.3, 0.5, 0.7, 1.0, 1.5, 2.4])
@pytest.mark.parametrize("high", [6, 7, 8])
def test_each_of_equal_steps_has_a_stitch_at_least(each: float, high: int) -> None:
    """Three steps need eight rows, and six rows are two too few."""
    edges = f"edges steps {each:g} cm 3 times to top"
    made = tiny(BED.format(start=13, high=high, edges=edges))

    def holds(c: dict[str, int]) -> bool:
        moved = c["wide"] - c["start"]
        return moved >= 6 and moved % 6 == 0 and c["top"] >= 8

    best = least({"start": width(13), "wide": Number(13 + 6 * each, within=5.0, near=5.0), "top": Number(high)}, holds)
    assert best is not None
    agrees(made, best, {"start": made.piece.start, "wide": width_at(made.piece, "top"), "top": made.piece.rows})
    assert len(moves(made.piece.left)) == 3


@pytest.mark.parametrize("each", [0.5, 1.0, 1.3, 1.5, 1.7, 2.3])
@pytest.mark.parametrize("larger", ["first", "last"])
def test_steps_that_may_differ_do_so_by_a_stitch_and_the_width_is_the_nearest(each: float, larger: str) -> None:
    edges = f"edges steps -{each:g} cm 3 times to top, larger steps {larger}"
    made = tiny(BED.format(start=30, high=20, edges=edges))
    best = least({"start": width(30), "wide": width(30 - 6 * each)}, lambda c: c["start"] - c["wide"] >= 6)
    assert best is not None
    agrees(made, best, {"start": made.piece.start, "wide": width_at(made.piece, "top")})
    by = [-b for _, b in moves(made.piece.left)]
    assert len(by) == 3
    assert max(by) - min(by) <= 1
    assert by == sorted(by, reverse=larger == "first")


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("each", [0.4, 1.0, 1.5, 1.6, 2.4])
@pytest.mark.parametrize("times", [2, 3])
def test_equal_steps_of_one_edge_may_be_a_stitch_and_half_their_number_off(side: str, each: float, times: int) -> None:
    edges = f"{side} edge steps {each:g} cm {times} times to top"
    made = tiny(BED.format(start=10, high=20, edges=edges))
    out = Number(5 + times * each, step=1, within=1 + times / 2)
    best = least(
        {"start": width(10), "out": out},
        lambda c: (c["out"] - c["start"] // 2) % times == 0 and c["out"] - c["start"] // 2 >= times,
        lambda c: off(c["out"] + c["start"] // 2, 10 + times * each),
    )
    assert best is not None
    runs = made.piece.left if side == "left" else made.piece.right
    done = moves(runs)
    agrees(made, best, {"start": made.piece.start, "out": made.piece.start // 2 + sum(b for _, b in done)})
    assert len({b for _, b in done}) == 1
    assert len(done) == times


@pytest.mark.parametrize("low", [1.4, 2.0, 2.5])
@pytest.mark.parametrize("high", [1.0, 1.4, 2.6])
def test_steps_of_several_sizes_are_a_stitch_off_at_the_most(low: float, high: float) -> None:
    """One step and two smaller or larger ones; each is as near as the width above them lets it be."""
    edges = f"edges steps -{low:g} cm then -{high:g} cm 2 times to top"
    made = tiny(BED.format(start=30, high=20, edges=edges))
    best = least(
        {
            "start": width(30),
            "one": Number(low, step=1, within=1, share=0.3),
            "two": Number(high, step=1, within=1, share=0.3),
            "wide": width(30 - 2 * low - 4 * high),
        },
        lambda c: c["start"] - c["wide"] == 2 * c["one"] + 4 * c["two"] and min(c["one"], c["two"]) >= 1,
    )
    assert best is not None
    one, two, again = (-b for _, b in moves(made.piece.left))
    assert two == again
    agrees(made, best, {"start": made.piece.start, "one": one, "two": two, "wide": width_at(made.piece, "top")})


# ----------------------------------------------------------------- arches


@pytest.mark.parametrize("rows", [0.8, 1.2, 1.9, 2.0, 2.5, 4, 6])
@pytest.mark.parametrize("shaped", ["curve", "arch"])
def test_a_curve_and_an_arch_need_four_rows(rows: float, shaped: str) -> None:
    """Of 0.8 rows four are 3.2 too many, and a distance of two levels is three rows off at the most."""
    edges = f"edges {shaped} to 14 cm wide at top"
    text = BED.format(start=20, high=8 + rows, edges="edges straight to low\n    " + edges)
    made = tiny(text.replace("cm, top", "cm, low 8 cm, top"))
    best = possible(
        least(
            {"start": width(20), "wide": width(14), "low": Number(8), "top": Number(8 + rows)},
            lambda c: c["start"] >= c["wide"] and c["top"] - c["low"] >= 4,
            lambda c: between(c, "low", "top", rows),
        )
    )
    assert (best is None) == (rows < 1)
    if best is None:
        refused(made, edges)
        return
    counted = {"start": made.piece.start, "wide": width_at(made.piece, "top"), "low": made.piece.row("low")}
    agrees(made, best, {**counted, "top": made.piece.rows})
    at = [row for row, _ in moves(made.piece.left)]
    by = [-b for _, b in moves(made.piece.left)]
    assert all(b - a >= 2 for a, b in pairwise(at))
    assert by == sorted(by, reverse=shaped == "curve")


# ----------------------------------------------------------------- the edges of a gap

GAP = """piece back in plain
    levels hem 0 cm, slit 6 cm, high {high:g} cm, top 30 cm
    start {start:g} cm wide with e-wrap
    opening gap {flat:g} cm wide from slit to high, cast off
        {edges}
    end cast off
"""


def levels(rows: float) -> dict[str, Number]:
    return {"slit": Number(6), "high": Number(6 + rows), "top": Number(30)}


def distances(c: dict[str, int], rows: float) -> float:
    return between(c, "slit", "high", rows) + between(c, "high", "top", 24 - rows)


@pytest.mark.parametrize("rows", [2, 4, 5, 6, 8])
@pytest.mark.parametrize(
    ("edges", "flat", "wide", "need"),
    [
        # Filled from the stitch below that of the row before the last: not after the first row of a part.
        ("slope to 3 cm wide at high, fashioned 1 in", 9, 3, lambda n, cast: n + 2),
        ("arch to 13 cm wide at high", 7, 13, lambda n, cast: 2),
        # Steps after a cast-off, which is made at the carriage too.
        ("cast off 2 cm then steps 2 cm 3 times to high", 3, 15, lambda n, cast: 8),
        ("cast off 2 cm then arch to 13 cm wide at high", 3, 13, lambda n, cast: 4),
    ],
)
def test_the_edge_of_a_gap_has_the_rows_that_its_moves_need(
    edges: str, flat: int, wide: float, need: Callable[[int, int], int], rows: int
) -> None:
    line = "edges " + edges
    made = tiny(GAP.format(high=6 + rows, start=28, flat=flat, edges=line))
    cast, steps = "cast off" in edges, "steps" in edges
    numbers = {"start": width(28), "flat": Number(flat, share=0.3), "wide": width(wide), **levels(rows)}
    if cast:
        numbers["cast"] = Number(2, step=1, within=1, share=0.3)
    if steps:
        numbers["wide"] = Number(wide, within=5.0)

    def holds(c: dict[str, int]) -> bool:
        moved = (c["wide"] - c["flat"]) * (1 if wide > flat else -1)
        n = moved // 2 - c.get("cast", 0)
        alike = moved >= 0 and n >= 0 and (not steps or (n % 3 == 0 and n >= 3))
        beside = c["start"] - max(c["wide"], c["flat"]) >= 2
        return alike and beside and c["high"] - c["slit"] >= need(n, c.get("cast", 0)) and c["top"] > c["high"]

    best = possible(least(numbers, holds, lambda c: distances(c, rows)))
    if best is None:
        assert made.error.code in ("counts-conflict", "slope-too-flat")
        assert made.line() == line
        return
    (gap,) = made.piece.openings
    counted = {"start": made.piece.start, "flat": gap.flat, "wide": gap.width, **dict(made.piece.levels[1:])}
    if cast:
        counted["cast"] = -moves(gap.left)[0][1]
    agrees(made, best, counted)


@pytest.mark.parametrize("rows", [3, 4, 5, 6, 8])
@pytest.mark.parametrize("move", [2.3, 2.6, 4.4, 5.4])
def test_one_edge_of_a_gap_moves_by_the_nearest_number_though_a_height_gives_way(move: float, rows: int) -> None:
    """A decrease in every row, and a row after the last. What asks for more than one stitch more than that is told first."""
    line = f"left edge slope by {move:g} cm at high"
    made = tiny(GAP.format(high=6 + rows, start=28, flat=4, edges=line + "\n        right edge straight to high"))
    if move - rows > 1:
        assert made.error.code == "slope-too-flat"
        assert made.line() == line
        return
    numbers = {"start": width(28), "flat": Number(4, share=0.3), "move": Number(move, step=1, within=1, near=0.5), **levels(rows)}
    best = possible(least(numbers, lambda c: c["high"] - c["slit"] >= c["move"] + 1, lambda c: distances(c, rows)))
    assert best is not None
    (gap,) = made.piece.openings
    counted = {"start": made.piece.start, "flat": gap.flat, "move": -sum(b for _, b in moves(gap.left))}
    agrees(made, best, {**counted, **dict(made.piece.levels[1:])})


@pytest.mark.parametrize("where", [2.0, 4.0, 5.5, 5.9, 6.0, 6.3, 6.5, 7.0])
def test_the_middle_of_a_gap_is_a_stitch_and_a_half_off_its_place_at_the_most(where: float) -> None:
    """Beside it a stitch is left: it gives way towards the centre, and no further than it may."""
    made = tiny(f"""\
piece back in plain
    levels hem 0 cm, slit 6 cm, top 20 cm
    start 16 cm wide with e-wrap
    opening gap 3 cm wide from slit to top, {where} cm right of centre, cast off
    end cast off
""")
    costs = {
        (start, first, flat): off(start, 16) + 0.3 * (off(2 * first + flat, 2 * where) + off(flat, 3))
        for start in (14, 16, 18)
        for first in range(-8, 8)
        for flat in range(1, 6)
        if first + flat <= start // 2 - 1 and abs(first + flat / 2 - where) <= 1.5 and abs(flat - 3) <= 2
    }
    if where + 1.5 >= 8:
        assert made.error.code == "beyond-the-edge"
        return
    (gap,) = made.piece.openings
    assert costs[made.piece.start, gap.first, gap.flat] == pytest.approx(min(costs.values()))


# ----------------------------------------------------------------- so many rows to so many stitches


@pytest.mark.parametrize("wide", [9.0, 10.0, 11.0, 12.0])
@pytest.mark.parametrize("high", [10.0, 12.0, 14.0, 16.0, 18.0, 20.0])
@pytest.mark.parametrize(("rows", "stitches"), [(4, 3), (1, 1), (2, 1)])
def test_a_join_in_a_ratio_has_as_many_rows_as_its_stitches_ask_for_but_one(
    wide: float, high: float, rows: int, stitches: int
) -> None:
    how = f"join border inner to shawl end, {rows} row{'s' * (rows > 1)} to {stitches} stitch{'es' * (stitches > 1)}"
    made = tiny(f"""\
piece shawl in plain
    levels hem 0 cm, top 30 cm
    start {wide:g} cm wide with e-wrap
    end on waste yarn
piece border in plain
    levels hem 0 cm, high {high:g} cm
    start 6 cm wide with e-wrap
    left edge straight to high called inner
    right edge straight to high called outer
    end cast off
{how}
""")
    best = least({"wide": width(wide), "high": Number(high)}, lambda c: abs(c["high"] * stitches - c["wide"] * rows) <= stitches)
    if best is None:
        refused(made, how)
        return
    shawl, border = made.garments[0].pieces
    agrees(made, best, {"wide": shawl.start, "high": border.rows})


# ----------------------------------------------------------------- whole repeats above one edge by itself


@pytest.mark.parametrize("columns", [2, 3, 4, 6, 7])
@pytest.mark.parametrize("by", [3.0, 4.0, 5.0, 5.5, 6.0, 7.0])
def test_whole_repeats_above_one_edge_are_half_a_repeat_off_or_a_stitch(columns: int, by: float) -> None:
    line = f"left edge slope by {by:g} cm at low"
    made = tiny(f"""\
chart wavy_drawn
    key . knit
    key - purl
    | - {". " * (columns - 1)}|
fabric wavy
    chart wavy_drawn in rope at tension 5, whole repeats
    swatch 100 stitches by 100 rows = 100 cm by 100 cm
piece back in plain
    levels hem 0 cm, low 20 cm, top 30 cm
    start 10 cm wide with e-wrap
    {line}
    fabric wavy from low to top
    end cast off
""")
    out = Number(5 + by, step=1, within=max(1.0, columns / 2))
    best = least(
        {"start": width(10), "out": out, "low": Number(20), "top": Number(30)},
        lambda c: (c["start"] // 2 + c["out"]) % columns == 0 and c["low"] >= 2 * (c["out"] - c["start"] // 2) + 2,
        lambda c: off(c["start"] // 2 + c["out"], 10 + by) + between(c, "low", "top", 10),
    )
    if best is None or best.cost > 1e5:
        assert made.counts is None
        return
    piece = made.piece
    found = {"start": piece.start, "out": piece.start // 2 + sum(b for _, b in moves(piece.left))}
    assert {**found, "low": piece.row("low"), "top": piece.rows} in best.choices
