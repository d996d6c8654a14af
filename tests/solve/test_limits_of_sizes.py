"""Graded sizes and what is told at a limit: never down, even steps, equals equal; against every whole number tried."""

from __future__ import annotations

import pytest

from tests.solve.tiny import Number, least, off, plainness, tiny
from walewright.guide.english import LANGUAGE
from walewright.report.english import in_english

SIZES = "S M L"


def graded(starts: tuple[float, ...], tops: tuple[float, ...] = (10.0, 10.0, 10.0), more: str = "") -> str:
    wide, high = (" ".join(f"{x:g}" for x in some) for some in (starts, tops))
    rows = f"sizes {SIZES}\n    wide {wide} cm\n    high {high} cm\n"
    return rows + f"piece back in plain{more}\n    levels hem 0 cm, top high\n    start wide wide with e-wrap\n    end cast off\n"


def together(numbers: dict[str, float], count: int) -> tuple[dict[str, Number], object, object]:
    """Numbers of `count` sizes, their rule and what they cost together."""
    names = list(numbers)
    wanted = list(numbers.values())

    def rule(c: dict[str, int]) -> bool:
        steps = zip(names, names[1:], wanted, wanted[1:], strict=False)
        return all((c[b] >= c[a] or y < x) and (c[b] <= c[a] or y > x) for a, b, x, y in steps)

    def cost(c: dict[str, int]) -> float:
        alike = sum(
            1.5 * abs(c[names[i]] - c[names[j]]) for i in range(count) for j in range(i) if abs(wanted[i] - wanted[j]) < 1e-6
        )
        bends = sum(
            0.001 * abs(c[names[i - 1]] - 2 * c[names[i]] + c[names[i + 1]] - (wanted[i - 1] - 2 * wanted[i] + wanted[i + 1]))
            for i in range(1, count - 1)
        )
        return alike + bends

    return {n: Number(w, near=1.0) for n, w in numbers.items()}, rule, cost


@pytest.mark.parametrize(
    "starts",
    [
        (10, 11, 12),
        (10.2, 11.1, 11.3),
        (12, 11, 10),
        (11, 11, 13),
        (13, 10, 13),
        (9, 12, 13),
        (10.9, 11.1, 12.4),
        (9, 9, 9),
        (10, 13, 16.9),
        (13, 12.9, 11),
    ],
)
def test_widths_go_up_where_they_should_in_steps_as_even_as_can_be(starts: tuple[float, ...]) -> None:
    made = tiny(graded(starts), sizes=SIZES)
    numbers, rule, cost = together(dict(zip("SML", starts, strict=True)), 3)
    best = least(numbers, rule, cost)  # type: ignore[arg-type]
    assert best is not None
    assert dict(zip("SML", (g.pieces[0].start for g in made.garments), strict=True)) in best.choices
    assert made.cost == pytest.approx(best.cost, abs=2e-6)


@pytest.mark.parametrize("tops", [(10, 11, 12), (9, 11, 11), (12, 11, 13), (10.6, 11.1, 11.4), (11, 13, 15)])
def test_heights_do_too(tops: tuple[float, ...]) -> None:
    made = tiny(graded((10, 10, 10), tops), sizes=SIZES)
    numbers, rule, cost = together(dict(zip("SML", tops, strict=True)), 3)
    numbers = {n: Number(w.wanted) for n, w in numbers.items()}
    best = least(numbers, rule, cost)  # type: ignore[arg-type]
    assert best is not None
    assert dict(zip("SML", (g.pieces[0].rows for g in made.garments), strict=True)) in best.choices
    assert made.cost == pytest.approx(best.cost, abs=2e-6)


def test_each_size_has_its_own_numbers() -> None:
    """Every figure differs from size to size: a size that read another one's would be seen."""
    text = """\
sizes S M L
    wide 10 14 18 cm
    most 16 22 28 cm
    low 14 18 22 cm
    high 30 36 42 cm
    neck 4 6 8 cm
    deep 6 8 10 cm
    slit 1 2 3 cm
    tip 26 30 34 cm
    pocket 2 4 6 cm
piece back in plain
    levels hem 0 cm, a low, tip tip, top high
    start wide wide with e-wrap
    edges slope to most wide at a
    edges straight to top
    neck neck wide, deep deep, round, slit * 2 flat, cast off
    shoulders held from tip
    slot pouch pocket wide at a, slit right of centre, cast off
    end cast off
"""
    made = tiny(text, sizes=SIZES)
    for n, garment in enumerate(made.garments):
        piece = garment.pieces[0]
        start, low, high, most = 10 + 4 * n, 14 + 4 * n, 30 + 6 * n, 16 + 6 * n
        assert piece.start == start
        assert (piece.row("a"), piece.rows) == (low, high)
        assert piece.start + 2 * sum(by for run in piece.left for _, by in run.changes()) == most
        (gap,) = piece.openings
        assert (gap.width, gap.flat, gap.to_row - gap.row) == (4 + 2 * n, 2 + 2 * n, 6 + 2 * n)
        assert gap.first == -(1 + n)
        (slot,) = piece.slots
        assert (slot.first, slot.last) == (1 + n - (1 + n), 1 + n + n)
        assert [sum(w.groups) for w in piece.wedges] == [(most - 4 - 2 * n) // 2]
        assert {w.from_row for w in piece.wedges} == {26 + 4 * n}
        deviations = {LANGUAGE.measure(d.key): (d.wanted_cm, d.solved_cm) for d in garment.deviations}
        assert deviations["width at start"] == pytest.approx((start, start))
        assert deviations["width at a"] == pytest.approx((most, most))
        assert deviations["height of a"] == pytest.approx((low, low))
        assert deviations["width of neck"] == pytest.approx((4 + 2 * n, 4 + 2 * n))
        assert deviations["depth of neck"] == pytest.approx((6 + 2 * n, 6 + 2 * n))
    assert made.cost == pytest.approx(0.0, abs=1e-6)


# ----------------------------------------------------------------- whom a conflict blames


STEPS = """\
piece back in plain
    levels hem 0 cm, a {low:g} cm, top 30 cm
    start 8 cm wide with e-wrap
    edges steps 2 cm {times} times to a
    edges straight to top called side
    end cast off
"""


@pytest.mark.parametrize("low", [6, 8, 10, 12])
def test_what_hands_cannot_do_is_blamed_and_the_figures_that_ask_for_it_are_named(low: int) -> None:
    """Six steps need fourteen rows; two more than are written can be had."""
    made = tiny(STEPS.format(low=low, times=6))
    if low + 2 >= 14:
        assert made.counts is not None
        assert made.piece.row("a") == 14
        return
    error = made.error
    assert error.code == "counts-conflict"
    assert made.line() == "edges steps 2 cm 6 times to a"
    assert made.line(1).startswith("levels hem 0 cm")
    assert len(error.labels) == 2
    assert in_english(error).message.startswith(
        f"because `a` of the back is {low} cm up, the edge of the back to `a` cannot move so far"
    )
    # One centimetre is one row. The figure that is proposed is the one that is kept, though two rows less would be given way to.
    assert in_english(error).helps == ("the height of `a` of the back at 14 cm would work",)
    assert tiny(STEPS.format(low=12, times=6)).counts is not None


def test_a_join_is_blamed_before_hands() -> None:
    """Six steps need fourteen rows, which the free level has; the other side of the join has ten at the most."""
    text = STEPS.format(low=12, times=6).replace("a 12 cm", "a between 8 cm and 20 cm").replace(
        "to a\n", "to a called lower\n", 1
    ) + (
        "piece front in plain\n    levels hem 0 cm, b 8 cm, top 30 cm\n    start 8 cm wide with e-wrap\n"
        "    edges straight to b called side\n    end cast off\njoin back lower to front side\n"
    )
    made = tiny(text)
    assert made.error.code == "counts-conflict"
    assert made.line() == "join back lower to front side"
    assert made.blamed == {made.line(), "levels hem 0 cm, b 8 cm, top 30 cm", "edges steps 2 cm 6 times to a called lower"}
    assert tiny(text.replace("b 8 cm", "b 12 cm")).counts is not None


def test_hands_are_blamed_before_the_bed() -> None:
    """Fourteen stitches or twenty-eight; the one is more than half of a repeat off, the other more than the bed has."""
    text = """\
chart wide_drawn
    key . knit
    key - purl
    | - . . . . . . . . . . . . . |
fabric wavy
    chart wide_drawn in rope at tension 5
    swatch 100 stitches by 100 rows = 100 cm by 100 cm
piece back in wavy
    levels hem 0 cm, top 20 cm
    start {0} cm wide with e-wrap
    end cast off
"""
    made = tiny(text.format(22), needles=20)
    assert made.error.code == "counts-conflict"
    assert made.line() == "piece back in wavy"
    assert in_english(made.error).labels[0].endswith("`wavy` is knitted in whole repeats")
    assert "machine own" in made.blamed
    assert tiny(text.format(21), needles=20).piece.start == 14
    assert tiny(text.format(22), needles=28).piece.start == 28


def test_only_the_sizes_are_told_that_have_the_conflict() -> None:
    text = "sizes S M L\n    low 6 14 8 cm\n" + STEPS.replace("{low:g} cm", "low").format(times=6)
    made = tiny(text, sizes=SIZES)
    assert made.error.code == "counts-conflict"
    assert made.error.sizes == ("S", "L")
    assert in_english(made.error).helps == ("the height of `a` of the back at 14 cm in S, L would work",)


@pytest.mark.parametrize(("wide", "needles", "beds"), [(27, 20, 28), (21.5, 20, 22), (30, 24, 30)])
def test_what_is_proposed_for_a_piece_too_wide_does(wide: float, needles: int, beds: int) -> None:
    text = "piece back in plain\n    levels hem 0 cm, top 20 cm\n    start {0:g} cm wide with e-wrap\n    end cast off\n"
    made = tiny(text.format(wide), needles=needles)
    assert made.error.code == "wider-than-bed"
    assert f"make it {needles} cm wide at the most" in in_english(made.error).helps
    assert tiny(text.format(needles), needles=needles).piece.start == needles
    # A stitch too many may be left out.
    assert tiny(text.format(needles + 1), needles=needles).piece.start == needles
    assert f"knit it on a bed of {beds} needles or more" in in_english(made.error).helps
    assert tiny(text.format(wide), needles=beds).counts is not None


def test_costs_of_two_sizes_alike_are_weighed_in_both_directions() -> None:
    """S and L are wanted alike with M below them: what is a stitch apart costs one and a half."""
    starts = (11.2, 10.0, 11.2)
    made = tiny(graded(starts), sizes=SIZES)
    first, _, last = (g.pieces[0].start for g in made.garments)
    assert first == last == 12
    bend = 0.001 * abs((12 - 20 + 12) - (11.2 - 20 + 11.2))
    assert made.cost == pytest.approx(2 * off(12, 11.2) + bend + 2 * plainness(12, 11.2, 2), abs=2e-6)


def test_two_sizes_alike_that_a_join_draws_apart_cost_one_and_a_half_for_each_stitch() -> None:
    """Ends that are joined have equal stitches: of 11.2 and 10 ten is least, of 11.2 and 13 twelve, though S and L are alike in
    the first piece."""
    parts = "".join(
        f"piece {name} in plain\n    levels hem 0 cm, top 10 cm\n    start {wide} wide with e-wrap\n    end cast off\n"
        for name, wide in (("back", "one"), ("front", "two"))
    )
    rows = "sizes S M L\n    one 11.2 12 11.2 cm\n    two 10 12 13 cm\n"
    made = tiny(rows + parts + "join back end to front end\n", sizes=SIZES)
    assert [[p.start for p in g.pieces] for g in made.garments] == [[10, 10], [12, 12], [12, 12]]
    each = off(10, 11.2) + off(12, 11.2) + off(12, 13) + plainness(12, 13, 2)
    bends = 0.001 * (abs(10 - 24 + 12 - (11.2 - 24 + 11.2)) + abs(10 - 24 + 12 - (10 - 24 + 13)))
    assert made.cost == pytest.approx(each + 1.5 * 2 + bends, abs=2e-6)
