"""Joins, easing and free numbers at their limits; against every whole number tried."""

from __future__ import annotations

import pytest

from tests.solve.tiny import Best, Number, agrees, least, off, plainness, tiny, width, width_at

HELD_BACK = 0.03
"""Centimetres of an easing that are kept back for rounding."""


def between(c: dict[str, int], below: str, above: str, wanted: float) -> float:
    rows = c[above] - c[below]
    return off(rows, wanted) + plainness(rows, wanted, 2) if abs(rows - wanted) <= 3 else 1e6


def possible(best: Best | None) -> Best | None:
    return None if best is None or best.cost > 1e5 else best


def two(one: float, other: float, how: str, up: float = 1.0) -> str:
    """Two pieces whose sides go up so far, in cm, and are joined."""
    parts = [
        f"piece {name} in plain\n    levels hem 0 cm, {level} {high:g} cm, top 30 cm\n    start 10 cm wide with e-wrap\n"
        f"    edges straight to {level} called side\n    end cast off\n"
        for name, level, high in (("back", "a", one), ("front", "b", other))
    ]
    return "".join(parts) + f"join back side to front side{how}\n"


def sides(best_of: dict[str, int]) -> dict[str, int]:
    return {"a": best_of["a"], "b": best_of["b"]}


@pytest.mark.parametrize("one", [7.0, 8.0, 8.6])
@pytest.mark.parametrize("other", [8.0, 10.0, 11.0, 12.8, 14.0])
@pytest.mark.parametrize("how", ["", ", easing 1 cm", ", easing 2.1 cm", ", longer by 3 cm", ", easing 1 cm, longer by 2 cm"])
def test_joined_edges_of_rows_are_equal_or_their_lengths_within_the_easing(one: float, other: float, how: str) -> None:
    made = tiny(two(one, other, how))
    easing = float(how.split("easing ")[1].split()[0]) if "easing" in how else 0.0
    longer = float(how.split("longer by ")[1].split()[0]) if "longer" in how else 0.0
    exact = not how
    # Longer by so much without easing: as near as rows allow, two rows off at the most.
    may = 0.0 if exact else (easing or 2.0) - HELD_BACK

    def apart(c: dict[str, int]) -> float:
        return abs(c["a"] - c["b"] - longer)

    def cost(c: dict[str, int]) -> float:
        near = 0.5 * apart(c) if longer and not easing else 0.0
        return near + between(c, "a", "top", 30 - one) + between(c, "b", "up", 30 - other)

    numbers = {"a": Number(one), "b": Number(other), "top": Number(30), "up": Number(30)}
    # The tops are one number: levels of one name, one height and one fabric share their rows.
    best = possible(
        least(numbers, lambda c: c["top"] == c["up"] and apart(c) <= may + 1e-9, lambda c: cost(c) - numbers["up"].cost(c["up"]))
    )
    if best is None:
        assert made.error.code == "join-does-not-meet"
        assert made.line() == "join back side to front side" + how
        return
    back, front = made.garments[0].pieces
    agrees(made, best, {"a": back.row("a"), "b": front.row("b"), "top": back.rows, "up": front.rows})


@pytest.mark.parametrize("other", [12.0, 13.0, 14.0, 15.0, 16.6, 17.0])
@pytest.mark.parametrize("way", ["grafted", "sewn"])
def test_ends_that_are_joined_have_equal_stitches(other: float, way: str) -> None:
    how = ", grafted" if way == "grafted" else ""
    end = "on waste yarn" if way == "grafted" else "cast off"
    parts = [
        f"piece {name} in plain\n    levels hem 0 cm, top 10 cm\n    start {wide:g} cm wide with e-wrap\n    end {end}\n"
        for name, wide in (("back", 12.7), ("front", other))
    ]
    made = tiny("".join(parts) + f"join back end to front end{how}\n")
    best = least({"back": width(12.7), "front": width(other)}, lambda c: c["back"] == c["front"])
    if best is None:
        assert made.error.code == "join-does-not-meet"
        assert made.line() == f"join back end to front end{how}"
        return
    back, front = made.garments[0].pieces
    agrees(made, best, {"back": back.start, "front": front.start})


def test_levels_of_one_name_and_height_share_their_rows_and_others_do_not() -> None:
    parts = "".join(
        f"piece {name} in plain{more}\n    levels hem 0 cm, a {high} cm, top 20 cm\n"
        "    start 10 cm wide with e-wrap\n    end cast off\n"
        for name, high, more in (("one", 9.1, ""), ("two", 9.1, ", knit 3"), ("three", 9, ""))
    )
    made = tiny(parts)
    # Shared by one that is knitted three times: what each is off adds up. The distance to the top counts in each piece.
    best = possible(
        least(
            {"a": Number(9.1, share=3), "other": Number(9), "top": Number(20, share=3)},
            more=lambda c: 4 * between(c, "a", "top", 10.9) + between(c, "other", "top", 11),
        )
    )
    assert best is not None
    one, two_, three = made.garments[0].pieces
    assert one.levels == two_.levels
    agrees(made, best, {"a": one.row("a"), "other": three.row("a"), "top": one.rows})


# ----------------------------------------------------------------- free numbers


@pytest.mark.parametrize(
    ("low", "high", "found"), [(9, 15, {12}), (9, 13.4, {12}), (11, 12.6, {12}), (10.5, 11.9, {10, 12}), (12.2, 13.2, {12, 14})]
)
def test_a_free_width_lies_in_the_middle_of_its_range_or_is_the_nearest_to_it(low: float, high: float, found: set[int]) -> None:
    start = f"    start between {low} cm and {high} cm wide with e-wrap\n"
    made = tiny("piece back in plain\n    levels hem 0 cm, top 10 cm\n" + start + "    end cast off\n")
    middle = (low + high) / 2
    inside = [n for n in range(2, 30, 2) if low <= n <= high]
    expected = min(abs(n - middle) for n in (inside or range(2, 30, 2)))
    assert abs(made.piece.start - middle) == pytest.approx(expected)
    assert made.piece.start in found
    assert made.cost == pytest.approx(expected * (0.00001 if inside else 1.0), abs=1e-6)


@pytest.mark.parametrize(("first", "second"), [((6, 9), (7, 12)), ((8, 12), (8.5, 12.5)), ((6, 14), (12, 18))])
def test_two_free_levels_keep_two_rows_and_wish_for_the_distance_of_their_ranges(
    first: tuple[float, float], second: tuple[float, float]
) -> None:
    text = f"""\
piece back in plain
    levels hem 0 cm, a between {first[0]} cm and {first[1]} cm, b between {second[0]} cm and {second[1]} cm, top 30 cm
    start 10 cm wide with e-wrap
    end cast off
"""
    made = tiny(text)
    least_apart, most_apart = sorted((second[0] - first[0], second[1] - first[1]))
    middle, way = (least_apart + most_apart) / 2, (most_apart - least_apart) / 2
    costs = {
        (a, b): 1e-5 * (abs(a - sum(first) / 2) + abs(b - sum(second) / 2) + abs(b - a - middle))
        + max(0.0, abs(b - a - middle) - way - 1)
        for a in range(0, 40, 2)
        for b in range(a + 2, 40, 2)
        if first[0] <= a <= first[1] and second[0] <= b <= second[1]
    }
    assert costs[made.piece.row("a"), made.piece.row("b")] == pytest.approx(min(costs.values()), abs=1e-9)
    assert made.cost == pytest.approx(min(costs.values()), abs=1e-6)


@pytest.mark.parametrize("high", [10.4, 11.0, 12.9])
def test_levels_are_two_rows_apart_or_more(high: float) -> None:
    made = tiny(f"""\
piece back in plain
    levels hem 0 cm, a 10 cm, b {high} cm, top 30 cm
    start 10 cm wide with e-wrap
    end cast off
""")
    best = possible(
        least(
            {"a": Number(10), "b": Number(high), "top": Number(30)},
            lambda c: c["b"] - c["a"] >= 2 and c["top"] - c["b"] >= 2,
            lambda c: between(c, "a", "b", high - 10) + between(c, "b", "top", 30 - high),
        )
    )
    assert best is not None
    agrees(made, best, {k: r for k, r in made.piece.levels if k != "hem"})


def test_a_zone_is_reckoned_by_its_own_swatch_and_a_width_by_the_fabric_below() -> None:
    text = """\
fabric dense
    stocking stitch in rope at tension 3
    swatch 100 stitches by 100 rows = 80 cm by 50 cm
piece back in plain
    levels hem 0 cm, a 6 cm, b 12 cm, top 20 cm
    start 10 cm wide with e-wrap
    edges straight to a
    edges slope to 16 cm wide at b
    fabric dense from a to b
    end cast off
"""
    made = tiny(text)
    best = possible(
        least(
            {"start": width(10), "wide": width(20), "a": Number(6), "b": Number(18), "top": Number(26)},
            more=lambda c: between(c, "a", "b", 12) + between(c, "b", "top", 8),
        )
    )
    assert best is not None
    levels = {k: r for k, r in made.piece.levels if k != "hem"}
    agrees(made, best, {"start": made.piece.start, "wide": width_at(made.piece, "b"), **levels})
