"""The picture of a fabric: every loop goes from where it was made to where the next is drawn through it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import replace
from typing import Any

import pytest

from walewright.design import model as d
from walewright.figures import yarns
from walewright.figures.cables import cables
from walewright.figures.loops import picture
from walewright.figures.model import Drawing
from walewright.guide.english import LANGUAGE
from walewright.proof.model import FabricPicture, PictureLoop

Make = Callable[..., Any]


def plain(columns: int, rows: int) -> dict[tuple[int, int], PictureLoop]:
    return {(c, r): PictureLoop(c, r, "knit", "wool", 0, ((c, r - 1),)) for r in range(rows) for c in range(columns)}


def shown(loops: dict[tuple[int, int], PictureLoop], floats: tuple[tuple[int, int, int, str], ...] = ()) -> FabricPicture:
    columns, rows = max(c for c, _ in loops) + 1, max(r for _, r in loops) + 1
    return FabricPicture("plain", columns, rows, tuple(loops.values()), floats)


@pytest.fixture
def design(pattern: Make) -> d.Design:
    found: d.Design = pattern(1).design
    navy = d.Yarn("navy", "navy", 50, 200, d.Origin("by hand"), "#203050")
    return replace(found, yarns=(*found.yarns, navy))


def strands(of: Drawing, colour: str) -> list[str]:
    """The curves of one colour in the order of painting."""
    data = "".join(s.data for s in of.strokes if s.kind == "strand" and s.colour == colour)
    return re.findall(r"M[^M]+", data)


def xs(data: str) -> tuple[float, float]:
    """Where a strand begins and ends across."""
    numbers = [float(n) for n in re.findall(r"-?[\d.]+", data)]
    return numbers[0], numbers[-2]


def wide(data: Iterable[str]) -> float:
    return max(abs(a - b) for a, b in map(xs, data))


WOOL = yarns.PALETTE[0]

LIT = yarns.lighter(WOOL)
"""Where there is no other yarn."""


def test_every_loop_is_seven_strands(design: d.Design) -> None:
    # Two lower and two upper halves of legs, a head, two feet.
    assert len(strands(picture(LANGUAGE, design, shown(plain(5, 4)), "knit"), LIT)) == 5 * 4 * 7


def test_from_the_knit_side_left_and_right_are_exchanged(design: d.Design) -> None:
    loops = plain(4, 2)
    loops[0, 0] = replace(loops[0, 0], yarn="navy")
    from_knit, from_purl = (strands(picture(LANGUAGE, design, shown(loops), side), "#203050") for side in ("knit", "purl"))
    whole = picture(LANGUAGE, design, shown(loops), "knit")
    middle = whole.left + whole.width / 2
    assert all(x > middle for data in from_knit for x in xs(data))
    assert all(x < middle for data in from_purl for x in xs(data))
    assert "seen from the purl side" in picture(LANGUAGE, design, shown(loops), "purl").title


def test_legs_lie_in_front_on_the_knit_side_and_behind_on_the_purl_side(design: d.Design) -> None:
    one = replace(plain(1, 1)[0, 0], through=())
    single = FabricPicture("plain", 1, 1, (one,), ())
    knit, purl = (strands(picture(LANGUAGE, design, single, side), LIT) for side in ("knit", "purl"))
    # The feet reach furthest to the side: first painted from the knit side, after the lower legs from the purl side.
    assert wide(knit[:2]) < wide(knit)
    assert knit != purl
    assert set(re.findall(r"M\S+", " ".join(knit))) == set(re.findall(r"M\S+", " ".join(purl)))


def test_a_re_formed_stitch_is_seen_from_its_other_side(design: d.Design) -> None:
    loops = plain(3, 3)
    loops[1, 1] = replace(loops[1, 1], yarn="navy")
    before = strands(picture(LANGUAGE, design, shown(loops), "knit"), "#203050")
    loops[1, 1] = replace(loops[1, 1], face=1)
    after = strands(picture(LANGUAGE, design, shown(loops), "knit"), "#203050")
    assert sorted(before) == sorted(after)
    assert before != after


def test_a_moved_loop_leans_and_its_hole_stays_open(design: d.Design) -> None:
    upright = wide(strands(picture(LANGUAGE, design, shown(plain(4, 4)), "knit"), LIT))
    loops = plain(4, 4)
    loops[2, 2] = replace(loops[2, 2], through=((2, 1), (1, 1)))
    loops[1, 2] = replace(loops[1, 2], kind="bar", through=())
    leaning = picture(LANGUAGE, design, shown(loops), "knit")
    legs = [data for data in strands(leaning, LIT) if abs(xs(data)[0] - xs(data)[1]) > upright * 0.9]
    assert len(legs) > len(
        [
            d_
            for d_ in strands(picture(LANGUAGE, design, shown(plain(4, 4)), "knit"), LIT)
            if abs(xs(d_)[0] - xs(d_)[1]) > upright * 0.9
        ]
    )


def test_a_held_loop_is_as_tall_as_its_rows(design: d.Design) -> None:
    def tallest(of: Drawing) -> float:
        found = []
        for data in strands(of, "#203050"):
            numbers = [float(n) for n in re.findall(r"-?[\d.]+", data)]
            found.append(abs(numbers[1] - numbers[-1]))
        return max(found)

    loops = plain(3, 5)
    loops[1, 1] = replace(loops[1, 1], yarn="navy")
    short = tallest(picture(LANGUAGE, design, shown(loops), "purl"))
    del loops[1, 2]
    loops[1, 3] = replace(loops[1, 3], through=((1, 1),))
    assert tallest(picture(LANGUAGE, design, shown(loops), "purl")) > 1.6 * short


def crossed(k: int, left_over: bool) -> dict[tuple[int, int], PictureLoop]:
    """A k x k cross between rows 5 and 6 of twelve, on columns 1 to 2k; what came from the left is navy."""
    loops = plain(2 * k + 2, 12)
    for i in range(k):
        loops[1 + k + i, 6] = replace(loops[1 + k + i, 6], through=((1 + i, 5),), over=left_over)
        loops[1 + i, 6] = replace(loops[1 + i, 6], through=((1 + k + i, 5),), over=not left_over)
        loops |= {(1 + i, r): replace(loops[1 + i, r], yarn="navy") for r in range(6)}
        loops |= {(1 + k + i, r): replace(loops[1 + k + i, r], yarn="navy") for r in range(6, 12)}
    return loops


@pytest.mark.parametrize("k", [1, 2, 3])
@pytest.mark.parametrize("left_over", [True, False])
def test_of_two_groups_that_cross_the_one_in_front_is_painted_last(design: d.Design, k: int, left_over: bool) -> None:
    for side in ("purl", "knit"):
        colours = [
            s.colour
            for s in picture(LANGUAGE, design, shown(crossed(k, left_over)), side).strokes
            if s.kind == "strand" and s.colour != "ink"
        ]
        # What lies in front for the knitter lies behind on the side that faces away.
        assert colours[-1] == ("#203050" if left_over == (side == "purl") else WOOL)


def test_a_cable_goes_aside_over_as_many_rows_as_it_has_stitches() -> None:
    (cable,), aside = cables(shown(crossed(3, True)), mirrored=False)
    assert {row for _, row in aside} == set(range(3, 9))
    assert cable.front == {(c, r) for c in (1, 2, 3) for r in (3, 4, 5)} | {(c, r) for c in (4, 5, 6) for r in (6, 7, 8)}
    assert len(cable.behind) == 18
    assert not cable.front & cable.behind
    for row in (3, 4, 5):
        assert aside[1, row] == pytest.approx(-aside[4, row])
    # Steadily on, never past the middle between the two rows of the crossing.
    way = [1 + aside[1, r] for r in (3, 4, 5)] + [4 + aside[4, r] for r in (6, 7, 8)]
    assert way == sorted(way)
    assert way[2] < 2.5 < way[3]


def test_cables_above_each_other_share_the_rows_between_them() -> None:
    loops = crossed(3, True)
    for i in range(3):
        loops[4 + i, 10] = replace(loops[4 + i, 10], through=((1 + i, 9),), over=True)
        loops[1 + i, 10] = replace(loops[1 + i, 10], through=((4 + i, 9),))
    found, _ = cables(shown(loops), mirrored=False)
    assert [sorted({row for _, row in cable.front}) for cable in found] == [[4, 5, 6, 7], [8, 9, 10, 11]]


def test_moved_loops_of_lace_are_no_cable() -> None:
    loops = plain(5, 4)
    loops[2, 2] = replace(loops[2, 2], through=((2, 1), (1, 1)))
    loops[1, 2] = replace(loops[1, 2], through=((0, 1),))
    loops[0, 2] = replace(loops[0, 2], kind="bar", through=())
    assert cables(shown(loops), mirrored=True) == ((), {})


def test_floats_are_broken_lines_from_the_knit_side_only(design: d.Design) -> None:
    of = shown(plain(6, 3), ((1, 1, 3, "navy"),))
    knit, purl = picture(LANGUAGE, design, of, "knit"), picture(LANGUAGE, design, of, "purl")
    (dashes,) = [s for s in knit.strokes if s.kind == "dashes"]
    x0, x1 = xs(dashes.data)
    assert x1 - x0 == pytest.approx(3 * 4.4, abs=0.05)
    assert not [s for s in purl.strokes if s.kind == "dashes"]
    assert strands(purl, "#203050")


def test_a_ladder_is_bars(design: d.Design) -> None:
    loops = plain(3, 3)
    for row in range(3):
        loops[1, row] = replace(loops[1, row], kind="float", through=(), yarn="navy")
    assert len(strands(picture(LANGUAGE, design, shown(loops), "knit"), "#203050")) == 3


def test_a_lace_shows_its_holes_and_a_tuck_none() -> None:
    from tests.whole.shipped_once import compiled

    def holes(name: str) -> int:
        made = compiled(name)
        assert made.design is not None
        assert made.proof is not None
        shown = made.proof.pictures[0]
        strokes = picture(LANGUAGE, made.design, shown, "knit").strokes
        return sum(s.data.count("Z") for s in strokes if s.kind == "fill" and s.colour == "ink")

    lace = compiled("avocet").design
    assert lace is not None
    chart = lace.charts[0]
    eyelets = sum(chart.cell(y, x).kind == "hole" for y in range(len(chart.rows)) for x in range(chart.repeat))
    assert holes("avocet") >= 2 * eyelets
    assert holes("barnacle") == 0


def test_strands_of_one_yarn_are_light_and_stand_out_from_their_rims() -> None:
    from tests.whole.shipped_once import compiled
    from walewright.figures.yarns import lightness

    made = compiled("hawser")
    assert made.design is not None
    assert made.proof is not None
    strokes = picture(LANGUAGE, made.design, made.proof.pictures[0], "knit").strokes
    shades = {lightness(s.colour) for s in strokes if s.kind == "strand" and s.colour.startswith("#")}
    assert max(shades) > 0.8
    assert max(shades) - min(shades) > 0.4
    # The line along the strand in front.
    assert [s for s in strokes if s.kind == "strand" and s.colour == "ink"]
