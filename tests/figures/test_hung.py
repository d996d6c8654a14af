"""Pieces begun along edges of others: what hangs on which needles."""

from __future__ import annotations

import re

import pytest

from tests.figures.surveyed import lines
from tests.figures.test_worn import stages
from walewright.counted.model import PickUp
from walewright.design.model import EdgeName
from walewright.figures.dimensions import DROP, LINE, RISE
from walewright.figures.garment import middle_size
from walewright.figures.hung import BAND, BESIDE, WORD_MM, band_hung
from walewright.figures.model import Drawing
from walewright.figures.schematic import drawing, fitting_scale
from walewright.guide.english import LANGUAGE
from walewright.guide.german import LANGUAGE as GERMAN
from walewright.guide.model import Guide
from walewright.sheet.facts import section_facts
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

    assert names(band(*NECK)) == "neck left neck centre neck right"
    assert "front neck right" in names(band(*NECK, edge("neck", "right", 30, "bottom", "front")))
    assert "Halsausschnitt" in names(band(*NECK, guide=GERMAN))


def test_names_without_room_stand_beneath_their_loops() -> None:
    """One beneath the other where they would meet, each within the drawing and with a line to its loops."""
    of = band(edge("armhole", "left", 2, "top"), edge("armhole", "right", 2, "bottom"), *NECK)
    low = [t for t in of.letterings if t.y > 1]
    assert [t.text for t in low] == ["armhole left", "armhole right"]
    assert low[1].y - low[0].y == pytest.approx(LINE)
    for t in of.letterings:
        half = len(t.text) * WORD_MM / 2
        assert of.left <= t.x - half
        assert t.x + half <= of.left + of.width
        assert of.top < t.y - RISE + 0.6
        assert t.y + DROP < of.top + of.height
    far = band(edge("armhole", "left", 2, "top"), *NECK, edge("armhole", "right", 2, "bottom"))
    assert len({t.y for t in far.letterings if t.y > 1}) == 1


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
