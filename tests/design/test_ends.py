"""Names of the ends of edgings and bands."""

from __future__ import annotations

import pytest

from tests.design.shaped import piece, understood
from walewright.report.english import in_english

BOTH = piece("edges straight to top called side", start="40 cm wide with chain, with welt", end="with collar")
SAME = BOTH.replace("chain, with welt", "chain, with foot").replace("end with collar", "end with foot")
FOOT = "edging foot in rib, 4 cm deep, added after\n"


def along(edge: str, *parts: str) -> tuple[str, ...]:
    design, diagnostics = understood(*parts, f"band trim with collar along {edge}")
    assert design is not None, diagnostics
    return tuple(f"{e.piece} {e.edge}" for e in design.bands[-1].along)


@pytest.mark.parametrize(
    ("edge", "name"),
    [
        ("front welt_left", "front welt left"),
        ("front welt_right", "front welt right"),
        ("front collar_left", "front collar left"),
        ("front welt", "front welt"),
    ],
)
def test_an_edging_names_its_ends(edge: str, name: str) -> None:
    assert along(edge, BOTH) == (name,)


def test_a_mirror_image_has_those_of_its_model() -> None:
    assert along("other welt_left", BOTH, "piece other in plain, mirror of front") == ("other welt left",)


def test_the_same_edging_at_both_ends() -> None:
    text = SAME.replace("with chain", "on waste yarn")
    assert along("front foot_left", FOOT, text) == ("front foot left",)
    assert along("front foot_upper_right", FOOT, text) == ("front foot upper right",)


def test_an_edge_that_has_the_name_of_the_edging_keeps_it() -> None:
    own = BOTH.replace("called side", "called welt")
    assert along("front welt_left", own) == ("front welt left",)
    assert along("front welt_edging_left", own) == ("front welt_edging left",)
    design, _ = understood(own)
    assert design is not None
    assert [name for name, _ in design.pieces[0].strips] == ["welt_edging", "collar"]
    assert design.pieces[0].strip_at("welt left") is None
    assert design.pieces[0].strip_at("welt_edging left") == "start"
    assert design.pieces[0].strip_at("collar right") == "end"


def test_a_facing_ends_behind_the_piece() -> None:
    turned = "edging fold in plain, 3 cm deep, facing, added after\n"
    _, found = understood(turned, BOTH.replace("end with collar", "end with fold"), "band trim with collar along front fold_left")
    assert [d.code for d in found] == ["no-such-edge"]


def test_the_ends_of_a_band_are_named_below_it() -> None:
    bands = "band trim with collar along front side_left\nband other with collar along trim first_end + front end"
    design, diagnostics = understood(BOTH, bands)
    assert design is not None, diagnostics
    assert [e.edge for e in design.bands[1].along] == ["first end", "end"]


@pytest.mark.parametrize("name", ["later", "trim"])
def test_a_band_along_one_that_is_not_there_yet(name: str) -> None:
    bands = f"band trim with collar along {name} first_end\nband later with collar along front side_left\n"
    _, (found,) = understood(BOTH, bands)
    assert (found.code, found.case) == ("along-later-piece", "band")
    helps = in_english(found).helps
    assert helps == (("write band `later` before band `trim`",) if name == "later" else ())


def test_a_band_has_no_other_edges() -> None:
    _, found = understood(BOTH, "band trim with collar along front side_left\nband other with collar along trim rim")
    assert [d.code for d in found] == ["no-such-edge"]


@pytest.mark.parametrize(
    "line", ["join front welt to front welt", "free front welt_left", "join front side_left to front welt_left"]
)
def test_seams_name_ends_as_well(line: str) -> None:
    _, found = understood(BOTH, line)
    assert found == ()
