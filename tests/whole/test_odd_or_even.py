"""Pieces of which the number of stitches may be odd or even, from source to paper."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from tests.draws import few_of
from tests.whole.garments_at_random import Drawn, drawn
from tests.whole.more_garments_at_random import more
from tests.whole.test_garments_at_random import errors, outcome_of
from tests.whole.test_inside_lines import HEAD, proven
from walewright.pipeline import Outcome
from walewright.report.english import in_english

PIECE = re.compile(r"^piece (?!.*(mirror of|centre stitch| like )).*$", re.M)
PARTED = "odd-or-even-parted"
PLAIN = HEAD.format(prongs=3, width=20, height=20)
"""Two stitches and three rows to the centimetre."""


def either(text: str) -> str:
    """The source with the number of stitches left open wherever that can be said."""
    return PIECE.sub(lambda found: f"{found[0]}, odd or even", text)


def starts(made: Outcome, piece: str = "front") -> list[int]:
    assert made.counts is not None
    return [garment.piece(piece).start for garment in made.counts.sizes]


def one(lines: str, more: str = "", head: str = PLAIN) -> str:
    return f"{head}piece front in plain, odd or even{more}\n" + "".join(f"    {line}\n" for line in lines.split("; "))


@pytest.mark.parametrize("seed", few_of(range(150), 6))
@pytest.mark.parametrize("source", [more, drawn])
def test_garments_are_proven_with_either_number_or_it_is_told_where_they_part(source: Callable[[int], Drawn], seed: int) -> None:
    garment = source(seed)
    made = outcome_of(either(garment.text))
    if not made.proven:
        assert {d.code for d in errors(made)} == {PARTED}, (garment.kind, errors(made), garment.text)


@pytest.mark.parametrize("tenths", [200, 203, 206, 212, 248, 249, 251, 307])
def test_a_width_is_half_a_stitch_off_at_the_most(tenths: int) -> None:
    made = proven(one(f"levels hem 0 cm, top 10 cm; start {tenths / 10} cm wide with e-wrap; end cast off"))
    assert all(abs(start - tenths / 5) <= 0.5 for start in starts(made))


def test_the_text_names_other_needles_where_a_number_is_odd() -> None:
    made = proven(one("levels hem 0 cm, top 10 cm; start half + 0.3 cm wide with e-wrap; end cast off"))
    assert starts(made) == [89, 97, 107]
    even = proven(one("levels hem 0 cm, top 10 cm; start half / 4 wide with e-wrap; end cast off"))
    assert starts(even) == [22, 24, 27] or starts(even) == [22, 24, 26]
    assert even.instructions is not None


def test_widths_of_one_piece_are_odd_or_even_together_as_they_come_nearest_in_all() -> None:
    lines = "levels hem 0 cm, low 4 cm, top 30 cm; start {} cm wide with e-wrap; edges straight to low; "
    lines += "edges slope to {} cm wide at top; end cast off"
    both_odd = proven(one(lines.format(20.6, 24.6)))
    assert both_odd.counts is not None
    ends = [g.piece("front") for g in both_odd.counts.sizes]
    assert {(p.start, p.start + 2 * sum(by for run in p.left for _, by in run.changes())) for p in ends} == {(41, 49)}
    # One wants an odd number a little, the other an even one much more.
    apart = proven(one(lines.format(20.3, 25.0)))
    assert set(starts(apart)) == {40}


def test_sizes_wanted_alike_may_be_a_stitch_apart_where_another_width_differs() -> None:
    neck = "neck 12.2 cm wide, 8 cm deep, square, cast off"
    made = proven(one(f"levels hem 0 cm, top 40 cm; start half + (half - 44 cm) / 8 wide with e-wrap; {neck}; end cast off"))
    assert made.counts is not None
    widths = [g.piece("front").openings[0].width for g in made.counts.sizes]
    assert [w % 2 for w in widths] == [s % 2 for s in starts(made)]
    assert set(widths) == {24, 25}


@pytest.mark.parametrize("shape", ["neck 12 cm wide, 8 cm deep, v", "opening slit 0 cm wide from low to top"])
def test_a_piece_that_is_parted_between_two_stitches_is_told(shape: str) -> None:
    made = outcome_of(one(f"levels hem 0 cm, low 10 cm, top 40 cm; start half wide with e-wrap; {shape}; end cast off"))
    (told,) = errors(made)
    assert told.code == PARTED
    helps = in_english(told).helps
    assert len(helps) == (2 if "v" in shape.split() else 1)
    mended = one(f"levels hem 0 cm, low 10 cm, top 40 cm; start half wide with e-wrap; {shape}; end cast off")
    proven(mended.replace(", odd or even", ""))
    if len(helps) == 2:
        proven(mended.replace("odd or even", "centre stitch").replace(", v", ", v, cast off"))


def test_a_slit_beside_the_middle_parts_an_odd_number_too() -> None:
    lines = "levels hem 0 cm, low 10 cm, top 40 cm; start half + 0.3 cm wide with e-wrap"
    made = proven(one(f"{lines}; opening slit 0 cm wide from low to top, 8 cm left of centre; end cast off"))
    assert starts(made) == [89, 97, 107]


CHART = """chart figure
    key . knit
    key O hole
    key / two from left
    repeat 6 stitches
    | . . O / . . . |
    | . . . . . . . |
fabric figured
    chart figure in wool at tension 7, 2 edge stitches
    swatch 40 stitches by 60 rows = 20 cm by 20 cm
"""


def test_whole_repeats_come_to_an_odd_number() -> None:
    text = one("levels hem 0 cm, top 20 cm; start half wide with e-wrap; end cast off").replace(
        "front in plain", "front in figured"
    )
    made = proven(text.replace("piece front", CHART + "piece front"))
    assert all((start - 5) % 6 == 0 for start in starts(made))


@pytest.mark.parametrize(("mock", "rest"), [("1 by 1", 1), ("2 by 1", 2)])
def test_a_mock_rib_begins_and_ends_alike(mock: str, rest: int) -> None:
    edging = f"edging cuff in plain, 4 cm deep, mock rib {mock}, knitted first\n"
    text = one("levels hem 0 cm, top 20 cm; start half wide on waste yarn, with cuff; end cast off")
    made = proven(text.replace("piece front", edging + "piece front"))
    step = {"1 by 1": 2, "2 by 1": 3}[mock]
    assert all(start % step == rest for start in starts(made))


def test_a_panel_in_the_middle_has_the_number_of_its_piece() -> None:
    lines = (
        "levels hem 0 cm, top 20 cm; start half + 0.3 cm wide with e-wrap; fabric ribbed from hem to top, 6 cm wide; end cast off"
    )
    rib = (
        "fabric ribbed\n    latched rib every 2nd needle in wool at tension 7\n    swatch 40 stitches by 60 rows = 18 cm by 20 cm\n"
    )
    made = proven(one(lines).replace("piece front", rib + "piece front"))
    assert made.counts is not None
    for garment in made.counts.sizes:
        piece = garment.piece("front")
        (zone,) = piece.zones
        assert (zone.last - zone.first + 1) % 2 == piece.start % 2
        assert zone.first + zone.last == piece.start % 2 - 1


def test_a_piece_grafted_to_another_has_its_number_and_one_begun_along_it_too() -> None:
    yoke = """piece yoke in plain, odd or even
    levels seam 0 cm, top 8 cm
    start along front end
    end on waste yarn
piece collar in plain, odd or even
    levels seam 0 cm, top 8 cm
    start half + 0.3 cm wide on waste yarn
    end cast off
join collar start to yoke end, grafted
"""
    made = proven(one("levels hem 0 cm, top 20 cm; start half + 0.3 cm wide with e-wrap; end on waste yarn") + yoke)
    assert starts(made) == starts(made, "yoke") == starts(made, "collar")
    assert any(start % 2 for start in starts(made))


def test_mirror_images_and_pieces_like_another_have_its_number() -> None:
    half = """levels hem 0 cm, low 10 cm, top 30 cm; start half / 2 + 0.25 cm wide with e-wrap
left edge straight to top called side
right edge straight to low called front
right edge slope by -6 cm at top called front
end cast off"""
    text = one("; ".join(half.split("\n"))) + "piece other in plain, mirror of front\n"
    text += "piece third like front\n    left edge slope by 1 cm at top called side\n"
    made = proven(text)
    assert made.counts is not None
    for garment in made.counts.sizes:
        model, image, like = (garment.piece(name) for name in ("front", "other", "third"))
        assert model.start == image.start
        assert model.start % 2 == like.start % 2
    assert any(start % 2 for start in starts(made))
