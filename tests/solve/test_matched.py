"""Matching joins: patterns that go on row by row up a seam and by whole repeats across it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.solve.workshop import Workshop, origin, solve
from walewright.counted.model import SizedGarment
from walewright.design.model import Design, EdgeJoin, Fabric, Piece, Zone
from walewright.report.english import in_english


def pieces(shop: Workshop, *, welt: tuple[float, float] = (5, 5), fabrics: tuple[str, str] = ("waves", "waves")) -> list[Piece]:
    """Two pieces with a rib of so many cm and then a fabric each."""
    made = []
    for name, deep, fabric in zip(("back", "front"), welt, fabrics, strict=True):
        levels = shop.levels(name, hem=0, welt=deep, top=50)
        zone = Zone("rib", "hem", "welt", None, shop.each(0), origin(f"{name} zone"))
        made.append(shop.piece(name, 40, levels, (shop.run("top", name="side"),), zones=(zone,), fabric=fabric))
    return made


def sewn(shop: Workshop, easing: float = 0.0) -> EdgeJoin:
    return replace(shop.join("back side", "front side", easing), matching=True)


def design(
    shop: Workshop, fabric: Fabric | None = None, join: EdgeJoin | None = None, before: int = 0, **of_pieces: object
) -> Design:
    chart = shop.chart("waves", 10, 12, before)
    both = (fabric or shop.charted(chart, 2, 3, edge=1), shop.striped("bars", 4, 2))
    return shop.design(*pieces(shop, **of_pieces), joins=(join or sewn(shop),), charts=(chart,), fabrics=both)  # type: ignore[arg-type]


def solved(made: Design) -> SizedGarment:
    counts, told = solve(made)
    assert told == ()
    assert counts is not None
    return counts.sizes[0]


def refused(made: Design) -> str:
    """Why it cannot be matched."""
    counts, told = solve(made)
    assert counts is None
    assert [d.code for d in told] == ["cannot-match"]
    return " ".join((in_english(told[0]).message, *in_english(told[0]).notes))


@pytest.mark.parametrize("fabric", ["waves", "bars"])
def test_sides_that_match(workshop: type[Workshop], fabric: str) -> None:
    garment = solved(design(workshop("M"), fabrics=(fabric, fabric)))
    (join,) = garment.joins
    assert join.matching
    assert join.one_rows == join.other_rows
    back, front = garment.pieces
    assert back.row("welt") == front.row("welt")


def test_the_patterns_are_brought_to_begin_in_the_same_row(workshop: type[Workshop]) -> None:
    """5 cm are 15 rows, 5.2 cm are 15.6: nearest even ones 16 and 16, and where they are 14 and 16 the programme gives way."""
    shop = workshop("M")
    for deep in ((4.9, 5.1), (4.6, 5.1)):
        apart = solved(replace(design(shop, welt=deep), joins=(shop.join("back side", "front side"),)))
        garment = solved(design(shop, welt=deep))
        assert garment.pieces[0].row("welt") == garment.pieces[1].row("welt")
        last = [p.row("welt") for p in apart.pieces]
    assert last[0] != last[1]


def test_what_cannot_match_says_why(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    chart = shop.chart("waves", 10, 12)
    assert "no pattern" in refused(design(shop, fabrics=("waves", "plain")))
    assert "`bars`" in refused(design(shop, fabrics=("waves", "bars")))
    assert "neither edge" in refused(design(shop, fabrics=("plain", "plain")))
    assert "centred" in refused(design(shop, shop.charted(chart, 2, 3, "centred")))
    assert "borders" in refused(design(shop, before=2))
    assert "eased" in refused(design(shop, join=sewn(shop, 1.0)))
    assert "along rows" in refused(design(shop, join=replace(shop.join("back end", "front end"), matching=True)))


def test_welts_too_far_apart_are_a_conflict(workshop: type[Workshop]) -> None:
    counts, told = solve(design(workshop("M"), welt=(4, 8)))
    assert counts is None
    assert "begin in the same rows" in " ".join((in_english(told[0]).message, *in_english(told[0]).labels))


def test_sides_of_several_edges_are_held_against_each_other_row_by_row(workshop: type[Workshop]) -> None:
    """The front is in two parts that lie one above the other; the upper one begins its pattern again."""
    shop = workshop("M")
    chart = shop.chart("waves", 10, 12)
    charted = shop.charted(chart, 2, 3)

    def part(name: str, high: float) -> Piece:
        return shop.piece(
            name,
            40,
            shop.levels(name, **{f"{name}_hem": 0, f"{name}_top": high}),
            (shop.run(f"{name}_top", name="side"),),
            fabric="waves",
        )

    for lower, codes in ((24.0, []), (26.0, ["cannot-match"])):
        made = (part("back", 48 + (lower - 24)), part("skirt", lower), part("yoke", 24.0))
        join = replace(shop.join("back side", "skirt side + yoke side"), matching=True)
        _, told = solve(shop.design(*made, joins=(join,), charts=(chart,), fabrics=(charted,)))
        assert [d.code for d in told] == codes


def test_a_pattern_from_the_hem_does_not_meet_one_from_further_up(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    chart = shop.chart("waves", 10, 12)
    back, front = pieces(shop, fabrics=("waves", "waves"))
    made = shop.design(
        replace(back, zones=()), front, joins=(sewn(shop),), charts=(chart,), fabrics=(shop.charted(chart, 2, 3, edge=1),)
    )
    assert "`waves` begins at `hem` of the back and at `welt` of the front" in refused(made)


@pytest.mark.parametrize(("low", "matches"), [((6, 6), True), ((6, 6.2), True), ((6, 9), False)])
def test_an_edge_is_reckoned_from_the_level_where_it_begins(
    workshop: type[Workshop], low: tuple[float, float], matches: bool
) -> None:
    """What is joined begins above the start and ends at the top: the pattern lies along it, from the start in both pieces."""
    shop = workshop("M")
    chart = shop.chart("waves", 10, 12)
    made = [
        shop.piece(
            name, 40, shop.levels(name, hem=0, low=at, top=at + 44), (shop.run("low"), shop.run("top", name="side")), fabric="waves"
        )
        for name, at in zip(("back", "front"), low, strict=True)
    ]
    whole = shop.design(*made, joins=(sewn(shop),), charts=(chart,), fabrics=(shop.charted(chart, 2, 3, edge=1),))
    if matches:
        back, front = solved(whole).pieces
        assert back.row("low") == front.row("low")
        return
    counts, told = solve(whole)
    assert counts is None
    assert "neither edge" not in " ".join((in_english(told[0]).message, *in_english(told[0]).notes))
