"""Yarn counts against published conversions."""

from __future__ import annotations

import pytest

from tests.outside.worked import HEAD
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import compile

PIECE = """
piece square in plain
    levels hem 0 cm, top 10 cm
    start 10 cm wide with e-wrap
    end cast off
"""
LINE = 'yarn wool "wool", 100 g = 200 m'


def tex(count: str) -> float:
    """Of a yarn whose source says its count."""
    assert LINE in HEAD
    head = HEAD.replace(LINE, f'yarn wool "wool", 100 g of {count}')
    text = head.format(bed="fine", stitches=28, rows=40) + PIECE
    outcome = compile(text, "counted.wale", shipped(), Changes())
    assert outcome.design is not None, [(d.code, d.message) for d in outcome.diagnostics]
    return outcome.design.yarns[0].tex


@pytest.mark.parametrize(
    ("count", "wanted"),
    [
        # ISO 1144: grams to 1000 m, to 10 000 m; denier to 9000 m.
        ("40 tex", 40.0),
        ("400 dtex", 40.0),
        # Source: http://textilelearner.blogspot.com/2012/12/count-conversion-of-yarn.html: tex = denier / 9, tex = 590.5 / Ne.
        ("180 denier", 20.0),
        ("20 Ne", 590.5 / 20),
        # Source: https://www.polytechnichub.com/count-conversion-formula/: tex = 1000 / Nm, tex = 885.8 / worsted count.
        ("28 Nm", 1000 / 28),
        ("30 NeK", 885.8 / 30),
        # Source: https://alessandrina.com/category/hints-and-tips/page/6/: linen, 300 yd to the pound; tex = 1653.5 / lea.
        ("12 lea", 1653.5 / 12),
    ],
)
def test_a_count_is_converted_as_published(count: str, wanted: float) -> None:
    assert tex(count) == pytest.approx(wanted, rel=1e-3)


def test_two_plies_are_twice_as_thick() -> None:
    """2/24 Nm has a resultant count of 12 Nm, 83.3 tex: count over plies (ISO 1139; trade practice)."""
    assert tex("2/24 Nm") == pytest.approx(1000 / 12, rel=1e-3)


def test_three_over_two_cotton_is_1260_yards_to_the_pound() -> None:
    """3 x 840 / 2 = 1260 yd to the pound, 394 tex. Source: machine knitting teacher notes,
    https://alessandrina.com/category/hints-and-tips/page/6/"""
    grams_to_the_pound, metres_to_the_yard = 453.59237, 0.9144
    yards = grams_to_the_pound / tex("3/2 Ne") * 1000 / metres_to_the_yard
    assert yards == pytest.approx(1260, rel=1e-3)
    assert tex("3/2 Ne") == pytest.approx(394, abs=0.5)
