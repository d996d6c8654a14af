"""How little and how much a source may ask to be knitted: told before anything is solved."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.solve.workshop import Workshop, solve
from walewright.design.model import Design, Piece, RepeatStretch
from walewright.report.english import in_english
from walewright.report.model import Diagnostic
from walewright.solve import solver
from walewright.solve.conflict.amounts import FEWEST_ROWS, FEWEST_STITCHES, MOST_HEIGHTS, MOST_ROWS


@pytest.fixture
def _unsolved(monkeypatch: pytest.MonkeyPatch) -> None:
    def never(*_: object) -> None:
        raise AssertionError("solved")

    monkeypatch.setattr(solver, "programme_of", never)


def told(design: Design) -> Diagnostic:
    counts, (diagnostic,) = solve(design)
    assert counts is None
    return diagnostic


def plain(shop: Workshop, width: float, height: float, **more: object) -> Piece:
    levels = shop.levels("back", hem=0, middle=height / 2, top=height)
    return shop.piece("back", width, levels, (shop.run("middle", name="side"), shop.run("top")), **more)


@pytest.mark.usefixtures("_unsolved")
@pytest.mark.parametrize(
    ("width", "height", "says"),
    [(20.0, 0.001, "the back has 0.003 rows"), (20.0, 1.0, "the back has 3 rows"), (1.0, 20.0, "the back is 2 stitches wide")],
)
def test_a_piece_has_a_least_size(width: float, height: float, says: str) -> None:
    shop = Workshop("S M")
    found = told(shop.design(plain(shop, width, height)))
    assert found.code == "too-small"
    assert in_english(found).message.startswith(says)
    assert found.labels
    assert found.sizes == ()


def test_what_is_small_and_can_be_knitted_is() -> None:
    shop = Workshop("S", across=2.0, up=2.0)
    counts, diagnostics = solve(shop.design(plain(shop, FEWEST_STITCHES / 2, FEWEST_ROWS / 2)))
    assert diagnostics == ()
    assert counts is not None
    assert counts.sizes[0].pieces[0].rows == FEWEST_ROWS


@pytest.mark.usefixtures("_unsolved")
def test_rows_that_are_repeated_count_as_often() -> None:
    shop = Workshop("S")
    piece = plain(shop, 20, 400)
    repeated = RepeatStretch("hem", "middle", shop.counts(100), piece.origin)
    found = told(shop.design(replace(piece, repeats=(repeated,))))
    assert found.code == "too-much-knitting"
    assert in_english(found).message == f"the back has 60,600 rows, and {MOST_ROWS:,} are the most"


@pytest.mark.usefixtures("_unsolved")
def test_all_sizes_together_have_a_limit_and_some_can_be_built() -> None:
    shop = Workshop(" ".join(f"s{i}" for i in range(40)), across=3.0, up=4.0, needles=400)
    found = told(shop.design(plain(shop, 120, 100)))
    assert found.code == "too-much-knitting"
    # 360 needles and 400 rows, forty times.
    assert in_english(found).message.startswith("all sizes together have 5,760,000 stitches")
    assert in_english(found).helps == ("build up to 27 of the 40 sizes at a time, each named with `--size`",)


@pytest.mark.usefixtures("_unsolved")
def test_as_many_sizes_as_are_named_are_within_all_limits() -> None:
    """Too many stitches, and of heights so many that fewer sizes go at a time than by the stitches."""
    shop = Workshop(" ".join(f"s{i}" for i in range(60)), across=3.0, up=4.0, needles=400)
    many = [replace(plain(shop, 60, 5), name=f"p{i}") for i in range(30)]
    (help_,) = in_english(told(shop.design(*many))).helps
    able = int(help_.split()[3])
    assert able * sum(len(p.levels) for p in many) <= MOST_HEIGHTS < (able + 1) * sum(len(p.levels) for p in many)


@pytest.mark.usefixtures("_unsolved")
def test_rows_and_heights_of_many_pieces_have_a_limit() -> None:
    shop = Workshop(" ".join(f"s{i}" for i in range(50)))
    many = [replace(plain(shop, 10, height), name=f"p{i}") for i, height in enumerate([10.0] * 25)]
    found = told(shop.design(*many))
    assert in_english(found).message == f"all sizes together have 3,750 heights to find, and {MOST_HEIGHTS:,} are the most"
    high = [replace(plain(shop, 4, 200), name=f"p{i}") for i in range(5)]
    assert "150,000 rows" in in_english(told(shop.design(*high))).message


def test_the_widest_sensible_garment_is_counted() -> None:
    shop = Workshop("S M L", across=3.0, up=4.0, needles=250)
    counts, diagnostics = solve(shop.design(plain(shop, 80, 75)))
    assert diagnostics == ()
    assert counts is not None
