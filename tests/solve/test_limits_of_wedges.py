"""Wedges at their limits: a stitch for every two rows, something in work all the while; against every whole number tried."""

from __future__ import annotations

import pytest

from tests.solve.tiny import Best, Number, Tiny, agrees, least, off, plainness, tiny, width

GORE = """\
piece back in plain
    levels hem 0 cm, low 10 cm, high {high:g} cm, top 40 cm
    start {start:g} cm wide with e-wrap
    {wedge}
    end cast off
"""


def dealt(stitches: int, count: int) -> tuple[int, ...]:
    """Groups that differ by a stitch at most, the larger ones outermost."""
    return tuple(sorted((stitches // count + (n < stitches % count) for n in range(count)), reverse=True))


def nearest(wide: float) -> Number:
    """The width of a wedge: the nearest whole number where that can be, else a stitch off."""
    return Number(wide, step=1, within=1.0, near=0.5)


def heights(low: float, high: float, top: float) -> dict[str, Number]:
    """Where a wedge begins and ends weighs little; its rows weigh three times."""
    return {"low": Number(low, share=0.02), "high": Number(high, share=0.02), "top": Number(top)}


def between(c: dict[str, int], below: str, above: str, wanted: float, share: float = 1.0) -> float:
    """The rows from one level to the next: three rows off at the most."""
    rows = c[above] - c[below]
    return off(rows, wanted, share) + plainness(rows, wanted, 2) if abs(rows - wanted) <= 3 else 1e6


def possible(best: Best | None) -> Best | None:
    return None if best is None or best.cost > 1e5 else best


@pytest.mark.parametrize("high", [14, 16, 18, 20, 21, 22])
@pytest.mark.parametrize("kind", ["held in", "let out", "held in and let out"])
@pytest.mark.parametrize("wide", [1.8, 3.0, 4.2])
def test_a_group_is_held_for_every_two_rows_or_for_four_held_in_and_let_out(high: float, kind: str, wide: float) -> None:
    line = f"wedge {wide:g} cm wide at the left edge from low to high, {kind}"
    made = tiny(GORE.format(start=12, high=high, wedge=line))
    both = kind == "held in and let out"
    each = 4 if both else 2

    def holds(c: dict[str, int]) -> bool:
        rows = c["high"] - c["low"]
        return rows >= 2 and c["top"] > c["high"] and rows % each == 0 and c["held"] >= rows // each

    best = possible(
        least(
            {"start": width(12), "held": nearest(wide), **heights(10, high, 40)},
            holds,
            lambda c: between(c, "low", "high", high - 10, 3.0) + between(c, "high", "top", 40 - high),
        )
    )
    if made.counts is None and made.error.code == "wedge-too-steep":
        # The written numbers by themselves leave a step without a stitch, and a stitch more would not mend it.
        assert (high - 10) / each > wide + 1
        assert made.line() == line
        return
    if best is None:
        assert made.error.code == "counts-conflict"
        assert line in made.blamed
        return
    (wedge,) = made.piece.wedges
    rows = made.piece.row
    levels = {"low": rows("low"), "high": rows("high"), "top": rows("top")}
    agrees(made, best, {"start": made.piece.start, "held": sum(wedge.groups), **levels})
    assert wedge.groups == dealt(sum(wedge.groups), (levels["high"] - levels["low"]) // each)
    assert (wedge.from_row, wedge.to_row) == (levels["low"], levels["high"])


@pytest.mark.parametrize(
    ("kind", "at", "wide", "rest", "stays"),
    [
        # Of one held in or let out the innermost group is in work all the while: all may be held in it.
        ("held in", "the left edge", 11.0, 0, 0),
        ("held in", "the left edge", 8.0, 4, 0),
        ("held in", "both edges", 6.0, 0, 0),
        ("let out", "both edges", 6.0, 0, 0),
        ("held in and let out", "the left edge", 10.6, 0, 1),
        ("held in and let out", "both edges", 6.0, 0, 1),
        ("held in and let out", "both edges", 4.0, 2, 1),
        ("held in", "both edges", 7.0, 0, 0),
        ("held in", "the left edge", 12.0, 1, 0),
        ("held in", "both edges", 6.6, 0, 0),
    ],
)
def test_something_stays_in_work_while_stitches_are_held(kind: str, at: str, wide: float, rest: float, stays: int) -> None:
    resting = f", resting {rest:g} cm" if rest else ""
    line = f"wedge {wide:g} cm wide at {at} from low to high, {kind}{resting}"
    made = tiny(GORE.format(start=11.9, high=14, wedge=line))
    edges = 2 if at == "both edges" else 1
    best = least(
        {"start": width(11.9), "held": nearest(wide), "rest": nearest(rest) if rest else Number(0, within=0)},
        lambda c: c["start"] - edges * (c["held"] + c["rest"]) >= stays,
    )
    if made.counts is None and made.error.code == "wedge-too-wide":
        assert edges * (wide + rest) > 11.9 - stays
        assert made.line() == line
        return
    assert best is not None
    wedge = made.piece.wedges[0]
    agrees(made, best, {"start": made.piece.start, "held": sum(wedge.groups), "rest": wedge.rest})


@pytest.mark.parametrize(("high", "steep"), [(20, False), (24, True), (26, True), (28, True)])
def test_the_rows_of_a_wedge_over_several_levels_weigh_three_times(high: float, steep: bool) -> None:
    """Five stitches hold ten rows: it gives way by four rows at the most."""
    body = f"""\
piece back in plain
    levels hem 0 cm, low 10 cm, half 14 cm, high {high} cm, top 40 cm
    start 12 cm wide with e-wrap
    wedge 5 cm wide at the right edge from low to high, held in
    end cast off
"""
    made = tiny(body)
    if steep:
        assert made.error.code == "wedge-too-steep"
        assert made.line().startswith("wedge 5 cm wide")
        return

    def cost(c: dict[str, int]) -> float:
        whole = c["high"] - c["low"]
        by_itself = off(whole, high - 10, 3.0) if abs(whole - (high - 10)) <= 4 else 1e6
        steps = between(c, "low", "half", 4) + between(c, "half", "high", high - 14) + between(c, "high", "top", 40 - high)
        return by_itself + steps

    best = possible(
        least(
            {"held": nearest(5), **heights(10, high, 40), "half": Number(14)},
            lambda c: c["held"] >= (c["high"] - c["low"]) // 2,
            cost,
        )
    )
    assert best is not None
    levels = {name: row for name, row in made.piece.levels if name != "hem"}
    agrees(made, best, {"held": sum(made.piece.wedges[0].groups), **levels})


# ----------------------------------------------------------------- shoulders

SHOULDERS = """\
edging trim in plain, chained
piece back in plain
    levels hem 0 cm, tip 20 cm, top {top:g} cm
    start {start:g} cm wide with e-wrap
    neck 8 cm wide, 6 cm deep, {neck}, cast off
    shoulders held from tip
    end cast off
"""


@pytest.mark.parametrize("top", [24, 26, 28, 29])
@pytest.mark.parametrize(("neck", "prongs"), [("square", 1), ("round, 5 cm flat, fashioned 2 in", 2)])
def test_a_shoulder_has_a_stitch_for_every_two_rows_or_those_of_the_tool_at_the_neck(top: float, neck: str, prongs: int) -> None:
    made = tiny(SHOULDERS.format(start=15, top=top, neck=neck))
    square = neck == "square"
    numbers = {
        "start": width(15),
        "wide": width(8),
        "flat": Number(8 if square else 5, share=1.0 if square else 0.3),
        "deep": Number(6),
        "tip": Number(20, share=0.02),
        "top": Number(top),
    }

    def holds(c: dict[str, int]) -> bool:
        own = c["flat"] == c["wide"] if square else c["flat"] <= c["wide"]
        shoulder = (c["start"] - c["wide"]) // 2
        return own and shoulder >= prongs * (c["top"] - c["tip"]) // 2 and shoulder >= prongs

    def cost(c: dict[str, int]) -> float:
        # The width of a square neck is its flat part: one number.
        twice = numbers["wide"].cost(c["wide"]) if square else 0.0
        return between(c, "tip", "top", top - 20, 3.0) - twice

    best = possible(least(numbers, holds, cost))
    if best is None:
        assert made.error.code in ("counts-conflict", "wedge-too-steep")
        assert made.line() == "shoulders held from tip"
        return
    piece = made.piece
    (neck_made,) = piece.openings
    counted = {"start": piece.start, "wide": neck_made.width, "flat": neck_made.flat, "deep": neck_made.to_row - neck_made.row}
    agrees(made, best, {**counted, "tip": piece.row("tip"), "top": piece.rows})
    assert {w.groups for w in piece.wedges} == {dealt((piece.start - neck_made.width) // 2, (piece.rows - piece.row("tip")) // 2)}


def test_wedges_at_both_edges_leave_something_between_them() -> None:
    """Two wedges held together in the same rows count together."""
    one = "wedge {0:g} cm wide at the %s edge from low to high, {1}"
    two = one % "left" + "\n    " + one % "right"
    made: list[Tiny] = [tiny(GORE.format(start=12, high=14, wedge=two.format(wide, "held in and let out"))) for wide in (5, 6)]
    for both, wide in zip(made, (5, 6), strict=True):
        best = least(
            {"start": width(12), "a": nearest(wide), "b": nearest(wide)},
            lambda c: c["start"] - c["a"] - c["b"] >= 1,
        )
        assert best is not None
        a, b = (
            (sum(w.groups) for w in both.piece.wedges) if len(both.piece.wedges) == 2 else (sum(both.piece.wedges[0].groups),) * 2
        )
        agrees(both, best, {"start": both.piece.start, "a": a, "b": b})
