"""A piece begun along edges without a width has as many stitches as a band would have there."""

from __future__ import annotations

import pytest

from tests.solve.tiny import Tiny, tiny

EDGES = {
    "straight": ("right edge straight to top called edge", "front edge", ""),
    "slope": ("right edge slope by -6 cm at top called edge", "front edge", ""),
    "cast off": (
        "right edge straight to mid called edge\n    right edge cast off 3 cm then slope by -3 cm at top called edge",
        "front edge",
        "",
    ),
    "end": ("right edge straight to top", "front end", ""),
    "neck": ("right edge straight to top", "front neck", "    neck 12 cm wide, 6 cm deep, square\n"),
    "vee": ("right edge straight to top", "front neck", "    neck 12 cm wide, 8 cm deep, v\n"),
    "slot": ("right edge straight to top", "front slit + front slit_upper", "    slot slit 8 cm wide at mid, on waste yarn\n"),
}


def begun(kind: str, across: float, high: str, hung: str, sizes: str = "sizes M") -> Tiny:
    """A front with an edge of that kind, and what is `hung` along it in a fabric of `across` stitches to the cm."""
    edge, along, more = EDGES[kind]
    return tiny(
        f"""{sizes}
fabric fine
    stocking stitch in rope at tension 3
    swatch 100 stitches by 100 rows = {100 / across:g} cm by 100 cm
edging trim in fine, 4 cm deep, added after
piece front in plain
    levels hem 0 cm, mid 10 cm, top {high}
    start 30 cm wide with e-wrap
    left edge straight to top
    {edge}
{more}    end cast off
{hung.format(along=along)}
""",
        needles=120,
    )


PIECE = """piece collar in fine
    levels seam 0 cm, top 8 cm
    start along {along}
    end cast off"""


@pytest.mark.parametrize("across", [0.7, 0.86, 1.0, 1.2])
@pytest.mark.parametrize("kind", EDGES)
def test_as_many_stitches_as_a_band_has(kind: str, across: float) -> None:
    band = begun(kind, across, "34 cm", "band collar with trim along {along}").garments[0].bands[0]
    piece = begun(kind, across, "34 cm", PIECE).garments[0].pieces[1]
    # Fewer than there are loops are picked up by a coarse band only.
    coarse = across < 0.85 and kind in ("end", "neck", "slot")
    if coarse:
        assert piece.start >= band.stitches
    else:
        assert abs(piece.start - band.stitches) <= 2
    assert sum(pick.stitches for pick in piece.start_pick_ups) == piece.start


def test_in_each_size_its_own() -> None:
    made = begun("straight", 1.0, "long", PIECE, "sizes S M L\n    long 30 37 44 cm")
    assert [garment.pieces[1].start for garment in made.garments] == [30, 38, 44]


def test_what_follows_goes_on_from_there() -> None:
    """An edge led `by` so far moves from wherever the start comes to; one led to a width comes to that."""
    led = PIECE.replace("    end", "    edges slope to 20 cm wide at top\n    end")
    collar = begun("straight", 1.0, "34 cm", led).garments[0].pieces[1]
    moved = sum(by for run in (*collar.left, *collar.right) for _, by in run.changes())
    assert (collar.start, collar.start + moved) == (34, 20)


def test_a_mirror_image_is_as_wide_as_its_own_edges() -> None:
    made = begun(
        "straight", 1.0, "34 cm", PIECE + "\npiece other in plain, mirror of front\npiece second in fine, mirror of collar"
    )
    pieces = {piece.name: piece.start for piece in made.garments[0].pieces}
    assert pieces["second"] == pieces["collar"] == 34


def test_the_edges_have_to_be_there_for_it() -> None:
    made = begun("straight", 1.0, "34 cm", PIECE.replace("start along", "start with e-wrap along"))
    assert made.counts is None
