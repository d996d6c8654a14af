"""Fabrics and fibres, against the language and the classes that fibres are sorted in."""

from __future__ import annotations

import re
from typing import get_args

from tests.trade.pages import page, says
from walewright.trade.fabrics import (
    COLOUR_WAYS,
    FABRIC_SIDES,
    FITS,
    STITCH_KINDS,
    ChartFit,
    ColourWay,
    FabricSide,
    StitchFacts,
    StitchKind,
)
from walewright.trade.fibres import FIBRES, OTHER_NAMES, FibreKind


def test_every_kind_has_its_row() -> None:
    assert sorted(STITCH_KINDS) == sorted(get_args(StitchKind))
    assert get_args(ChartFit) == FITS
    assert get_args(FabricSide) == FABRIC_SIDES
    assert get_args(ColourWay) == COLOUR_WAYS
    assert sorted(FIBRES) == sorted(get_args(FibreKind))


def test_what_is_knitted_by_the_carriage_alone_and_what_goes_by_the_counter() -> None:
    """Stripes are plain rows in turn; a chart and stripes come back by rows, a rib is the same in all."""
    assert says("language", "- `stripes of N rows YARN, ...`: those rows in those yarns, again and again")
    assert {kind for kind, facts in STITCH_KINDS.items() if facts.plain} == {"stocking stitch", "stripes"}
    assert {kind for kind, facts in STITCH_KINDS.items() if facts.counts_rows} == {"chart", "stripes"}
    assert StitchFacts() == StitchFacts(plain=False, counts_rows=False)


def test_fibres_are_those_of_the_language() -> None:
    told = re.search(r"Fibres are called as labels call them: ([^.]+)\.", page("language"))
    assert told is not None
    listed: list[str] = []
    for word in told[1].split(", "):
        either = re.fullmatch(r"(\w+) \(or (\w+)\)", word)
        if either:
            one, other = either.groups()
            assert {OTHER_NAMES.get(one, one), OTHER_NAMES.get(other, other)} <= {one, other}
            assert (one in OTHER_NAMES) != (other in OTHER_NAMES)
            listed.append(OTHER_NAMES.get(one) or OTHER_NAMES[other])
        else:
            listed.append(word)
    assert sorted(listed) == sorted(FIBRES)
    assert len(OTHER_NAMES) == 2


def test_fibres_are_cared_for_by_what_they_are() -> None:
    """The classes of Regulation (EU) No 1007/2011, Annex I: fleeces, hair and silk; fibres of plants; cellulose regenerated, cupro,
    lyocell, modal and viscose; and what is made of polymers."""
    classes: dict[str, set[str]] = {}
    for fibre, care in FIBRES.items():
        classes.setdefault(care, set()).add(fibre)
    assert classes == {
        "plant": {"ramie", "hemp", "flax", "cotton"},
        "regenerated": {"viscose", "modal", "lyocell", "cupro"},
        "plastic": {"polyester", "polyamide", "elastane", "acrylic"},
        "hair": {"silk", "yak", "mohair", "llama", "cashmere", "camel", "angora", "alpaca", "wool"},
    }
