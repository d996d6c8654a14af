"""Helps with a figure have been tried: what is printed does, what does not is not printed."""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import pytest

from tests.solve.workshop import Workshop, origin, put_together, solve
from walewright.design.model import Design, Piece, ShapingWay
from walewright.report.english import in_english
from walewright.report.model import Change, Diagnostic, Label, diagnosed
from walewright.report.said import said
from walewright.solve.conflict.changed import changed, figures
from walewright.solve.conflict.trying import MOST_TRIED, helped
from walewright.solve.solver import attempt


def straight(shop: Workshop, name: str, width: float, height: float | tuple[float, ...] = 30.0) -> Piece:
    levels = shop.levels(name, hem=0, up=height, top=60)
    return shop.piece(name, width, levels, (shop.run("up", name="side"), shop.run("top")))


def wide(shop: Workshop) -> Design:
    return shop.design(straight(shop, "back", 55))


def uneven(shop: Workshop) -> Design:
    pieces = straight(shop, "back", 40, (30, 30, 34)), straight(shop, "front", 40)
    return shop.design(*pieces, joins=(shop.join("back side", "front side"),))


def eased(shop: Workshop) -> Design:
    pieces = straight(shop, "back", 40, (30, 30, 34)), straight(shop, "front", 40)
    return shop.design(*pieces, joins=(shop.join("back side", "front side", 1.0),))


def curved(shop: Workshop) -> Design:
    """An armhole whose length is only known when it is scheduled, against a straight edge that is far too short."""
    levels = shop.levels("back", hem=0, up=20, top=40)
    runs = (shop.run("up"), shop.run("top", -8, "curve", name="armhole", cast_off=2))
    back = shop.piece("back", 40, levels, runs)
    return shop.design(back, straight(shop, "band", 10, 20), joins=(shop.join("back armhole", "band side", 0.5),))


MISTAKEN = (wide, uneven, eased, curved)


@pytest.mark.parametrize("mistaken", MISTAKEN)
def test_each_figure_that_is_printed_does(workshop: type[Workshop], mistaken: object) -> None:
    design = mistaken(workshop(needles=100))  # type: ignore[operator]
    counts, (told,) = solve(design)
    assert counts is None
    assert told.changes
    for change, help_ in zip(told.changes, in_english(told).helps, strict=False):
        otherwise = changed(design, change)
        assert otherwise is not None
        assert solve(otherwise)[0] is not None, help_


@pytest.mark.parametrize("mistaken", MISTAKEN[1:])
def test_one_change_at_a_time(workshop: type[Workshop], mistaken: object) -> None:
    _, (told,) = solve(mistaken(workshop(needles=100)))  # type: ignore[operator]
    assert all(len(changes) == 1 for changes in told.changes)
    assert len(told.helps) == len(told.changes) <= 2


@pytest.mark.parametrize("mistaken", MISTAKEN[1:])
def test_both_sides_of_a_join_are_told_with_their_difference(workshop: type[Workshop], mistaken: object) -> None:
    _, (told,) = solve(mistaken(workshop(needles=100)))  # type: ignore[operator]
    sizes = told.sizes or ("S", "M", "L")
    for size in sizes:
        note = next(n for n in in_english(told).notes if n.startswith(f"{size}: ") and " cm" in n)
        assert "apart" in note or "longer" in note or "shorter" in note


# ----------------------------------------------------------------- several mistakes at once


def too_wide_and_joined(shop: Workshop) -> Design:
    """Two pieces wider than the bed, a sloped side of one 5 cm longer than of the other. As wide as the bed they are alike."""

    def sloped(name: str, width: float) -> Piece:
        levels = shop.levels(name, hem=0, up=30, top=60)
        return shop.piece(name, width, levels, (shop.run("up", (20 - width) / 2, name="side"), shop.run("top")))

    join = replace(shop.join("back side", "front side", 0.5), longer=shop.each(5.0))
    return shop.design(sloped("back", 70), sloped("front", 52), joins=(join,))


def test_of_several_mistakes_each_change_is_counted_with_one_for_each_other(workshop: type[Workshop]) -> None:
    design = too_wide_and_joined(workshop(needles=100))
    counts, told = solve(design)
    assert counts is None
    assert [d.code for d in told] == ["wider-than-bed", "wider-than-bed"]
    assert all(d.changes for d in told)
    back, front = told
    assert "widest" not in [changes[0].figure for changes in back.changes]
    for changes in product(back.changes, front.changes):
        # Each is good for something with one of the others.
        assert any(_counts(design, (*changes[0], *other)) for other in front.changes)
        assert any(_counts(design, (*other, *changes[1])) for other in back.changes)
    # The first of each go together.
    assert _counts(design, (*back.changes[0], *front.changes[0]))


def _counts(design: Design, changes: tuple[Change, ...]) -> bool:
    otherwise = changed(design, changes)
    return otherwise is not None and solve(otherwise)[0] is not None


def test_no_figure_is_proposed_where_another_mistake_has_none(workshop: type[Workshop]) -> None:
    """A change that was counted with nothing else mended was not counted at all."""
    design = workshop("M").design(straight(workshop("M"), "back", 40))
    told = refused(design, 32.0)
    other_one = replace(told, code="join-does-not-meet", changes=())
    made = helped(design, (told, other_one), lambda other: (other_one,))
    assert [d.changes for d in made] == [(), ()]
    assert in_english(made[0]).helps == ("change the height of `up` of the back",)


def test_what_is_seen_at_a_glance_is_not_counted(workshop: type[Workshop]) -> None:
    """Of two mistakes that are, each is looked at by itself; only both mended are counted."""
    design = workshop("M").design(straight(workshop("M"), "back", 40))
    one = refused(design, 32.0)
    two = replace(one, code="wider-than-bed", case="piece", changes=((Change("needles", "", "", (("M", 250.0),)),),))

    def against(other: Design) -> tuple[Diagnostic, ...]:
        return (*at_least(other, 32.0, one), *(() if other.machine.needles >= 250 else (two,)))

    counted: list[Design] = []

    def count(other: Design) -> tuple[Diagnostic, ...]:
        counted.append(other)
        return against(other)

    made = helped(design, (one, two), count, against)
    assert [len(d.changes) for d in made] == [1, 1]
    assert [(d.machine.needles, d.piece("back").levels[1].height) for d in counted] == [(250, (32.0,))]


# ----------------------------------------------------------------- the mechanism by itself


def refused(design: Design, *values: float) -> Diagnostic:
    place = origin("here")
    changes = tuple(
        (Change("height", "back", "up", (("M", value),), said("height", level="up", piece="back")),) for value in values
    )
    some = said("change", figures=(said("height", level="up", piece="back"),))
    told = diagnosed("counts-conflict/alone", Label(place.span), helps=(some,), failing=said("odd-number", piece="back"))
    return replace(told, changes=changes)


def at_least(design: Design, cm: float, told: Diagnostic) -> tuple[Diagnostic, ...]:
    return () if design.piece("back").levels[1].height[0] >= cm - 1e-9 else (told,)


def test_a_change_that_is_too_small_is_made_larger_and_then_as_small_as_does(workshop: type[Workshop]) -> None:
    design = workshop("M").design(straight(workshop("M"), "back", 40))
    told = refused(design, 32.0)
    (said,) = helped(design, (told,), lambda other: at_least(other, 33.6, told))
    # To 32 cm it does not, half as much again is 33, two and a half times as much 35; halfway back 34 does too.
    assert said.changes[0][0].values == (("M", 34.0),)
    assert in_english(said).helps == ("the height of `up` of the back at 34 cm would work",)


def test_what_does_not_is_not_printed(workshop: type[Workshop]) -> None:
    design = workshop("M").design(straight(workshop("M"), "back", 40))
    told = refused(design, 31.0)
    (said,) = helped(design, (told,), lambda other: (told,))
    assert said.changes == ()
    assert in_english(said).helps == ("change the height of `up` of the back",)


def test_another_mistake_in_its_place_is_no_help(workshop: type[Workshop]) -> None:
    design = workshop("M").design(straight(workshop("M"), "back", 40))
    told = refused(design, 32.0)
    other_one = replace(told, code="join-does-not-meet")
    (said,) = helped(design, (told,), lambda other: (other_one,))
    assert said.changes == ()


def test_tries_are_bounded(workshop: type[Workshop]) -> None:
    design = workshop("M").design(straight(workshop("M"), "back", 40))
    told = refused(design, *(31.0 + n / 10 for n in range(20)))
    tried: list[Design] = []

    def count(other: Design) -> tuple[Diagnostic, ...]:
        tried.append(other)
        return (told,)

    helped(design, (told,), count)
    assert len(tried) == MOST_TRIED


# ----------------------------------------------------------------- figures in a design


def test_levels_of_pieces_that_are_alike_go_together_and_never_fall(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    design = shop.design(straight(shop, "back", 40), straight(shop, "front", 40))
    made = changed(design, (Change("height", "back", "up", (("M", 35.0),)),))
    assert made is not None
    assert [p.levels[1].height for p in made.pieces] == [(35.0,), (35.0,)]
    assert changed(design, (Change("height", "back", "up", (("M", 60.0),)),)) is None


def test_a_width_is_set_where_its_run_ends(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    levels = shop.levels("back", hem=0, up=20, on=30, top=40)
    piece = shop.piece("back", 40, levels, (shop.run("up", 2), shop.run("on"), shop.run("top", -4)))
    design = shop.design(piece)
    change = Change("width", "back", "on", (("M", 48.0),))
    assert figures(design, change) == {"M": 44.0}
    made = changed(design, (change,))
    assert made is not None
    assert [run.change for run in made.piece("back").left] == [(4.0,), (0.0,), (-6.0,)]
    assert made.piece("back").right == made.piece("back").left


def test_an_edge_still_moves_by_what_it_casts_off(workshop: type[Workshop]) -> None:
    """Narrower at the hem, the edge above it would have 2 cm to cast off and nothing to move."""
    shop = workshop("M")
    levels = shop.levels("back", hem=0, up=30, top=60)
    design = shop.design(shop.piece("back", 44, levels, (shop.run("up"), shop.run("top", -3, cast_off=2))))
    assert changed(design, (Change("width", "back", "hem", (("M", 42.0),)),)) is not None
    assert changed(design, (Change("width", "back", "hem", (("M", 41.0),)),)) is None
    assert changed(design, (Change("cast-off", "back", "top", (("M", 3.5),)),)) is None


def test_two_at_once_go_inwards_only(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    levels = shop.levels("back", hem=0, up=30, top=60)
    by_twos = shop.run("top", -3, way=ShapingWay("fashioned", 2, at_once=2))
    design = shop.design(shop.piece("back", 44, levels, (shop.run("up"), by_twos)))
    assert changed(design, (Change("width", "back", "hem", (("M", 39.0),)),)) is not None
    assert changed(design, (Change("width", "back", "hem", (("M", 37.0),)),)) is None


def test_of_two_changes_of_a_bed_or_a_fabric_both_are_kept(workshop: type[Workshop]) -> None:
    design = workshop("M").design(straight(workshop("M"), "back", 40))
    beds = (Change("needles", "", "", (("M", 260.0),)), Change("needles", "", "", (("M", 240.0),)))
    looser = (Change("stitches", "plain", "", (("M", 17.0),)), Change("stitches", "plain", "", (("M", 18.0),)))
    made = changed(design, (*beds, *looser))
    assert made is not None
    assert made.machine.needles == 260
    assert made.fabric("plain").stitches_per_cm == pytest.approx(1.7)


# ----------------------------------------------------------------- free levels


def test_free_levels_find_their_own_ways_where_one_share_has_no_room(workshop: type[Workshop]) -> None:
    """3 cm apart at every share of their ways, and 5 cm to move between: one goes down, the other up."""
    shop = workshop("M", across=1.3, up=1.85)
    low, high = shop.levels("sleeve", first=37, top=40)
    free = (replace(low, most=(48.0,)), replace(high, most=(51.0,)))
    levels = (*shop.levels("sleeve", cuff=0, widest=30), *free)
    runs = (shop.run("widest", 5), shop.run("first", -6, name="cap"), shop.run("top", -5, name="cap"))
    sleeve = shop.piece("sleeve", 24, levels, runs, end_way="cast-off")
    tall = straight(shop, "back", 40, 20)
    join = replace(shop.join("sleeve cap + sleeve end", "back side + front side", 6.0), longer=(2.0,))
    design = shop.design(tall, straight(shop, "front", 40, 20), sleeve, joins=(join,))
    counts, told = attempt(design, put_together(design))
    assert counts is not None, told
    made = counts.sizes[0].piece("sleeve")
    assert made.row("top") - made.row("first") > 3 * 1.85 + 1
