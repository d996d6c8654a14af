"""Yarn that is estimated from the density of a fabric, against published relations for plain knitting.

A fabric whose swatch was not weighed is compiled twice, once higher: what the second piece takes more is its rows' yarn alone.
"""

from __future__ import annotations

import pytest

from tests.outside.spending import Panel, more

# Wales and courses to the centimetre of a fabric whose rows to the stitch are those of relaxed plain knitting.
WALES, COURSES = 2.2, 2.2 * 1.3


def loop_cm(wales: float, courses: float) -> float:
    """Yarn in a stitch as it is estimated, in cm."""
    spent = more(Panel(40, 40, wales * 10, courses * 10), Panel(40, 80, wales * 10, courses * 10))
    return spent.metres * 100 / spent.loops


def test_loop_length_of_an_examination_question() -> None:
    """Source: textile engineering entrance examination, 2015,
    https://www.textiletriangle.com/gate-textile/question-paper/2015-2/tf/54-2/: kc 5.5 and kw 4.2 at a loop of 0.5 cm give 92.4
    loops to the square centimetre. Asked of a fabric half as fine, which a swatch can have; that of the question is washed and
    tumbled, the estimate is for one that is only wetted, a few per cent less."""
    wales, courses = 4.2 / 0.5 / 2, 5.5 / 0.5 / 2
    assert wales * courses == pytest.approx(92.4 / 4)
    assert loop_cm(wales, courses) == pytest.approx(2 * 0.5, rel=0.05)


def test_constants_are_those_of_relaxed_wool() -> None:
    """Source: Munden 1959, Journal of the Textile Institute, as quoted in https://fr.scribd.com/presentation/143644499/
    Knitted-Fabric-Geometry: loops to the square centimetre times the square of the loop are 19.0 dry relaxed and 21.6 wet relaxed.
    The estimate is of the latter, so that nobody runs out."""
    area = WALES * COURSES * loop_cm(WALES, COURSES) ** 2
    assert area == pytest.approx(21.6, abs=0.15)
    assert area > 19.0


def test_yarn_in_a_row_is_about_four_times_its_width() -> None:
    """Source: lecture slides quoting Doyle and Munden, https://fr.scribd.com/presentation/143644499: a row of relaxed plain
    knitting takes 3.8 (dry) to 4.2 (washed) times its width of yarn."""
    assert 3.8 <= WALES * loop_cm(WALES, COURSES) <= 4.2


def test_a_finer_fabric_has_shorter_loops() -> None:
    """Source: lecture slides quoting Doyle and Munden, https://fr.scribd.com/presentation/143644499: courses and wales are each in
    inverse proportion to the loop, so twice as many of both have loops of half the length."""
    assert loop_cm(2 * WALES, 2 * COURSES) == pytest.approx(loop_cm(WALES, COURSES) / 2, rel=0.01)
