"""How far an edge stretches: the tightest of its fabric, of how it is closed and of how it is begun decides."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.fit.tried_on import worn
from tests.fit.wardrobe import HEAD, VEST
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.model import Design, Edging
from walewright.fit import shares
from walewright.fit.shares import CHAINED, E_WRAP, FOLDED_SEWN, FOLDED_THROUGH_BOTH, MOCK_RIB, PICOT, ROLLED, SEWN, of_edging
from walewright.pipeline import understood
from walewright.trade.ends import StartWay


@pytest.fixture(scope="module")
def design() -> Design:
    made = understood(HEAD + VEST, "small.wale", shipped(), Changes()).design
    assert made is not None
    return made


def edging(design: Design, **what: object) -> Edging:
    return replace(design.edging("collar"), fabric="plain", **what)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("what", "share"),
    [
        ({"kind": "folded", "cast_off": "chain"}, FOLDED_THROUGH_BOTH),
        ({"kind": "folded", "cast_off": "sewn"}, FOLDED_SEWN),
        ({"kind": "folded", "cast_off": "waste"}, FOLDED_SEWN),
        ({"kind": "facing"}, FOLDED_SEWN),
        ({"kind": "picot"}, PICOT),
        ({"kind": "mock rib"}, MOCK_RIB),
        ({"kind": "rolled", "cast_off": "chain"}, ROLLED),
        ({"kind": "rolled", "cast_off": "sewn"}, SEWN),
        ({"kind": "chained"}, CHAINED),
    ],
)
def test_an_edging_stretches_as_its_kind_and_its_closing_do(design: Design, what: dict[str, object], share: float) -> None:
    assert of_edging(design, edging(design, **what)) == share


@pytest.mark.parametrize("kind", ["folded", "picot", "mock rib", "chained", "plain"])
@pytest.mark.parametrize(("way", "begun"), [("e-wrap", E_WRAP), ("chain", CHAINED)])
def test_of_one_knitted_first_the_tighter_of_start_and_kind_decides(design: Design, kind: str, way: StartWay, begun: float) -> None:
    first, after = (edging(design, kind=kind, when=when) for when in ("first", "after"))
    alone = of_edging(design, after)
    assert of_edging(design, first, way) == min(alone, begun)
    # One hung on later does not begin with the start, and a start on waste yarn stretches as what is taken up there.
    assert of_edging(design, after, way) == alone
    assert of_edging(design, first, "waste") == alone
    assert of_edging(design, first) == alone


@pytest.mark.parametrize(
    ("stitch", "every", "way", "share"),
    [
        ("latched rib", 2, "sewn", 1.5),
        ("latched rib", 2, "sewn-off", 1.5),
        ("latched rib", 3, "sewn", 1.4),
        ("latched rib", 4, "sewn-off", 1.4),
        ("latched rib", 2, "chain", 1.3),
        ("latched rib", 3, "chain", 1.3),
        ("stocking stitch", 0, "chain", 1.15),
        ("stocking stitch", 0, "sewn", 1.3),
        ("stocking stitch", 0, "waste", 1.3),
        ("stocking stitch", 0, "cast off", 1.15),
    ],
)
def test_a_last_row_stretches_as_it_is_closed(design: Design, stitch: str, every: int, way: str, share: float) -> None:
    """From memory, and below what was measured of hand knitting: ribs 1.96 and 2.23 (gulfcoastmakers.com)."""
    fabric = replace(design.fabric("rib"), stitch=stitch, rib_every=every)  # type: ignore[arg-type]
    assert shares.closed(fabric, way) == share  # type: ignore[arg-type]


def test_the_shares_are_between_stiff_and_twice_as_long() -> None:
    values = [v for name, v in vars(shares).items() if name.isupper() and isinstance(v, float)]
    assert len(values) > 8
    assert all(1.0 < value < 2.0 for value in values)


def test_a_start_much_wider_than_its_edges_is_warned_of() -> None:
    """A collar of 40 rows' edge, 13.3 cm: from a fifth more on."""
    collar = """
piece cloth in plain
    levels foot 0 cm, top 40 cm
    start 30 cm wide with chain
    left edge straight to top called one
    right edge straight to top
    end cast off
piece collar in plain
    levels foot 0 cm, rim 6 cm
    start {} cm wide along cloth one
    edges straight to rim
    end cast off
"""
    assert worn(collar.format(47)).codes() == []
    made = worn(collar.format(50))
    assert made.codes() == ["start-too-full"]
    (told,) = made.told
    text = HEAD + collar.format(50)
    assert text[told.labels[0].span.start :].startswith("start 50 cm wide")
    assert worn(collar.format(33)).codes() == ["start-draws-in"]
