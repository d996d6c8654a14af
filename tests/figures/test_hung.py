"""Pieces begun along edges of others: what hangs on which needles."""

from __future__ import annotations

import re
from dataclasses import replace
from io import BytesIO
from itertools import combinations, pairwise

import pytest
from fontTools.ttLib import TTFont

from tests.figures.surveyed import lines
from tests.figures.test_worn import stages
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.counted.model import PickUp
from walewright.design.model import EdgeName
from walewright.figures.dimensions import DROP, LINE, RISE, Box, overlap
from walewright.figures.garment import middle_size
from walewright.figures.hung import BAND, BAND_ACROSS, BAND_IN_A_COLUMN, BESIDE, band_hung
from walewright.figures.hung_names import WORD_MM
from walewright.figures.model import Drawing, Lettering
from walewright.figures.schematic import drawing, fitting_scale
from walewright.guide.english import LANGUAGE
from walewright.guide.german import LANGUAGE as GERMAN
from walewright.guide.model import Guide
from walewright.sheet.facts import section_facts
from walewright.sheet.fonts import FACES, fixed
from walewright.sheet.theme import LETTERINGS
from walewright.trade.sides import EdgeEnd, EdgePart
from walewright.write.model import Section


def schematic(name: str, piece: str, guide: Guide = LANGUAGE) -> Drawing:
    made, pieces = stages(name)
    assert made.design is not None
    assert made.counts is not None
    of, at = next(p for p in pieces if p.piece.name == piece), made.design.at(middle_size(made.counts))
    return drawing(guide, at, of, "cm", fitting_scale(at, (of,)))


def across(of: Drawing, pattern: str) -> tuple[float, float]:
    """From where to where marks of that form lie."""
    xs = [float(x) for s in of.strokes if s.kind == "mark" for x in re.findall(pattern, s.data)]
    assert xs
    return min(xs), max(xs)


LOOPS = r"M(-?[\d.]+) 0a"
THROUGH = r"L(-?[\d.]+) 1\.4L"


@pytest.mark.parametrize(("piece", "loops_first"), [("right_thumb", True), ("left_thumb", False)])
def test_half_of_a_thumb_hangs_on_loops_and_half_is_picked_up(piece: str, loops_first: bool) -> None:
    of = schematic("mooring", piece)
    left, right = (across(of, form) for form in ((LOOPS, THROUGH) if loops_first else (THROUGH, LOOPS)))
    assert left[1] < 0 < right[0]
    (at,) = (t.x for t in of.letterings if "cast-on" in t.text)
    assert (at > 0) is loops_first


def test_names_are_in_the_language_of_the_page() -> None:
    words = " ".join(t.text for t in schematic("mooring", "right_thumb", GERMAN).letterings)
    assert "Anschlagkante" in words
    assert "cast-on" not in words


def test_a_piece_of_its_own_has_no_loops_at_its_start() -> None:
    assert not [s for s in schematic("mooring", "right_mitten").strokes if re.search(LOOPS, s.data)]


# ----------------------------------------------------------------- bands


def edge(name: str, part: EdgePart, stitches: int, left_end: EdgeEnd, piece: str = "back", live: bool = False) -> PickUp:
    return PickUp(EdgeName(piece, name), part, stitches, stitches, stitches / 2, left_end=left_end, live=live)


NECK = (
    edge("neck", "left", 12, "top"),
    edge("neck", "centre", 30, "left", live=True),
    edge("neck", "right", 18, "bottom"),
)


def band(*edges: PickUp, guide: Guide = LANGUAGE) -> Drawing:
    made = band_hung(guide, "neckband", edges)
    assert made is not None
    return made


def tips(of: Drawing) -> list[tuple[float, bool]]:
    """Where arrows end, and whether they point to the right."""
    found = [lines(s.data) for s in of.strokes if s.kind == "arrow"]
    return [(tip[0], tip[0] > tail[0]) for arrows in found for tip, tail, *_ in arrows]


def test_a_band_hangs_edge_by_edge_from_the_left() -> None:
    of = band(*NECK)
    through, loops = across(of, THROUGH), across(of, LOOPS)
    ends = [BESIDE + (BAND - 2 * BESIDE) * share for share in (0, 0.2, 0.7, 1)]
    assert ends[1] < loops[0] < loops[1] < ends[2]
    assert ends[0] < through[0] < ends[1]
    assert ends[2] < through[1] < ends[3]
    bars = [line[0][0] for s in of.strokes if s.kind == "slit" for line in lines(s.data)]
    assert bars == pytest.approx(ends[1:3], abs=0.01)


def test_arrows_go_up_the_rows() -> None:
    """To the left along the left side of a neck, whose top hangs at the left; none lies under stitches."""
    (left, to_right), (right, of_right) = tips(band(*NECK))
    assert (to_right, of_right) == (False, True)
    assert left < BESIDE + 2
    assert right > BAND - BESIDE - 2
    turned = (edge("neck", "left", 12, "bottom"), *NECK[1:])
    assert tips(band(*turned))[0][1]


def test_each_edge_has_its_name_and_its_piece_where_there_are_several() -> None:
    def names(of: Drawing) -> str:
        return " ".join(t.text for t in sorted(of.letterings, key=lambda t: (round(t.x, 1), t.y)) if len(t.text) > 1)

    assert names(band(*NECK)) == "left centre neck right"
    assert "front neck right" in names(band(*NECK, edge("neck", "right", 30, "bottom", "front")))
    assert "Halsausschnitt" in names(band(*NECK, guide=GERMAN))


def test_names_without_room_stand_beneath_their_loops() -> None:
    """One beneath the other where they would meet, each within the drawing and with a line to its loops."""
    of = band(edge("armhole", "left", 2, "top"), edge("armhole", "right", 2, "bottom"), *NECK)
    low = [t for t in of.letterings if t.y > 1]
    assert [t.text for t in low] == ["armhole left", "armhole right"]
    assert abs(low[1].y - low[0].y) == pytest.approx(LINE)
    for t in of.letterings:
        half = len(t.text) * WORD_MM / 2
        assert of.left <= t.x - half
        assert t.x + half <= of.left + of.width
        assert of.top < t.y - RISE + 0.6
        assert t.y + DROP < of.top + of.height
    far = band(edge("armhole", "left", 2, "top"), *NECK, edge("armhole", "right", 2, "bottom"))
    assert len({t.y for t in far.letterings if t.y > 1}) == 1


def test_a_piece_that_hangs_in_parts_is_named_once_over_them() -> None:
    front = tuple(replace(pick, edge=EdgeName("front", "neck")) for pick in NECK)
    of = band(*NECK, *front)
    texts = [t.text for t in of.letterings if len(t.text) > 1]
    assert sorted(texts) == sorted(["back neck", "front neck", *["left", "centre", "right"] * 2])
    over = {t.text: t for t in of.letterings}
    assert over["back neck"].y < over["left"].y
    # Its middle is that of the bracket: of all its parts together.
    assert over["back neck"].x == pytest.approx((BESIDE + of.width / 2) / 2, abs=0.01)


def test_the_drawing_is_wide_where_names_have_no_room_over_their_loops() -> None:
    assert band(*NECK).width == BAND
    tight = (edge("shoulder", "whole", 2, "left"), *NECK, edge("shoulder", "whole", 2, "left", "front"))
    assert band(*tight).width == BAND_ACROSS
    narrow = band_hung(LANGUAGE, "neckband", tight, BAND_IN_A_COLUMN)
    assert narrow is not None
    assert narrow.width == BAND_IN_A_COLUMN


def test_names_that_find_no_room_are_no_drawing() -> None:
    """The edges are listed in words then."""
    crowd = [edge(f"a very long name of the edge number {n}", "whole", 1, "left") for n in range(40)]
    assert band_hung(LANGUAGE, "neckband", crowd, BAND) is None


FONT = TTFont(BytesIO(fixed(next(face for face in FACES if (face.family, face.style) == ("Sheet Serif", "italic")))))
WORD = float(re.findall(r'font-size="([\d.]+)"', LETTERINGS["word"])[0])


def box(t: Lettering) -> Box:
    """What a name takes on paper, by the widths that the sheet's own face has."""
    known, wide = FONT.getBestCmap(), FONT["hmtx"]
    half = sum(wide[known[ord(c)]][0] for c in t.text) / FONT["head"].unitsPerEm * WORD / 2
    return t.x - half, t.y - 0.72 * WORD, t.x + half, t.y + 0.2 * WORD


def straight(of: Drawing) -> list[Box]:
    """The ticks between edges, and the lines up to loops and over them."""
    found = [lines(s.data) for s in of.strokes if s.kind in ("slit", "guide")]
    sides = [side for drawn in found for line in drawn for side in pairwise(line)]
    return [(min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1])) for a, b in sides]


@pytest.mark.parametrize("widest", [BAND, BAND_IN_A_COLUMN, BAND_ACROSS])
@pytest.mark.parametrize("guide", [LANGUAGE, GERMAN], ids=["english", "german"])
@pytest.mark.parametrize("name", GARMENTS)
def test_no_name_meets_another_or_a_line_or_the_edge_of_the_drawing(name: str, guide: Guide, widest: float) -> None:
    made = compiled(name)
    assert made.design is not None
    assert made.counts is not None
    for sized in made.counts.sizes:
        for hung in sized.bands:
            of = band_hung(guide, hung.name, hung.pick_ups, widest)
            if of is None:
                assert sum(1 for pick in hung.pick_ups if pick.stitches) < 2
                continue
            taken = [box(t) for t in of.letterings]
            for one, other in combinations(taken, 2):
                assert not overlap(one, other), (name, hung.name)
            for line in straight(of):
                assert not any(overlap(line, text) for text in taken), (name, hung.name)
            for x0, y0, x1, y1 in taken:
                assert of.left <= x0 < x1 <= of.left + of.width
                assert of.top <= y0 < y1 <= of.top + of.height


def test_what_can_hang_in_one_way_only_is_not_drawn() -> None:
    assert band_hung(LANGUAGE, "pocket", (edge("pocket", "whole", 20, "left", live=True),)) is None
    assert band_hung(LANGUAGE, "pocket", (NECK[1], edge("neck", "left", 0, "top"))) is None


def test_the_page_shows_it_and_says_which_side_faces() -> None:
    made, _ = stages("tidewrack")
    assert made.counts is not None
    assert made.design is not None
    section = Section("neckband", "Neckband", (1,), ())
    told = {f.label: f.text for f in section_facts(LANGUAGE, made.design, made.counts, section)}
    assert told["Needles"] == "Purl side towards you; an arrow goes up the rows of its edge"
    assert "Along" not in told
    assert "Along" in {f.label for f in section_facts(LANGUAGE, made.design, made.counts, section, drawn=False)}
