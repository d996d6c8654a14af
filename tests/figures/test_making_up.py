"""The pieces opened out: every edge that is joined has its number once on each side, and nothing lies on anything."""

from __future__ import annotations

import math
import re
from collections import Counter
from functools import cache
from io import BytesIO
from itertools import combinations, pairwise

import pytest
from fontTools.ttLib import TTFont

from tests.figures.surveyed import lines
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.counted.edge_lines import along, edge_line, length, stretch
from walewright.counted.edges import edge_length
from walewright.figures.dimensions import overlap, through
from walewright.figures.drawn import DrawnGarment
from walewright.figures.drawn import drawn as in_one_size
from walewright.figures.garment import middle_size
from walewright.figures.joints import joined
from walewright.figures.making_up import PENS, JoinsDrawn, making_up
from walewright.figures.measures import measured
from walewright.figures.model import Drawing, Lettering
from walewright.figures.opened import extent, opened
from walewright.figures.shapes import meet, middle
from walewright.guide.english import LANGUAGE
from walewright.sheet.fonts import FACES, fixed
from walewright.sheet.joins import _by_line, _by_origin, _done, _reading
from walewright.sheet.stage import Stage, StepLine

NAMES = ("tidewrack", "mooring", "driftline", "curlew", "bollard")
"""Two sleeves, a thumb hung on a slot, what is joined to itself, copies joined all round, one piece."""


def garment(name: str, size: int) -> DrawnGarment:
    made = compiled(name)
    assert made.design is not None
    assert made.counts is not None
    assert made.glued is not None
    pieces = [measured(made.design, made.counts, p.name) for p in made.design.pieces]
    return in_one_size(made.design, made.counts, pieces, size, made.glued.groups[0])


@cache
def drawn(name: str) -> JoinsDrawn:
    found = making_up(LANGUAGE, garment(name, middle_size(compiled(name).counts)))  # type: ignore[arg-type]
    assert found is not None
    return found


@pytest.mark.parametrize("name", NAMES)
def test_an_edge_has_its_number_once_on_each_side(name: str) -> None:
    made = compiled(name)
    assert made.design is not None
    assert made.glued is not None
    joints, _ = joined(made.design, made.glued.groups[0])
    labels = Counter(t.text for t in drawn(name).drawing.letterings if t.kind == "figure")
    shown = {(e.place.owner, e.place.copy) for e in (e for j in joints for s in j.sides for e in s)}
    one_of_each = {owner for owner, _ in shown}
    for joint in joints:
        edges = [e for side in joint.sides for e in side if e.place.owner in one_of_each]
        # A neckband hangs on six edges, and is no piece that is laid out; of two socks one is drawn.
        assert 1 <= labels[joint.label] <= 2 * len(edges)
        if len(joint.sides) == 2 and all(len(side) == 1 for side in joint.sides) and name != "tidewrack":
            assert labels[joint.label] == 2


def test_the_joins_of_a_pullover_are_numbered_in_the_order_of_work() -> None:
    told = [(n.number, LANGUAGE.said(n.what)) for n in drawn("tidewrack").numbers]
    assert told == [
        (1, "back shoulder right to front shoulder left, joined on the bed"),
        (2, "neckband, hung with the dots at the left"),
        (3, "back shoulder left to front shoulder right, joined on the bed"),
        (4, "neckband, end to end"),
        (5, "sleeve to front and back, sewn"),
        (6, "back to front, sewn"),
        (7, "sleeve, edge to edge, sewn"),
    ]
    labels = Counter(t.text for t in drawn("tidewrack").drawing.letterings if t.kind == "figure")
    # Each sleeve's end lies between two armholes; a neck has six edges on two pieces, and the strip that hangs on them one.
    assert labels == {"1": 2, "2": 3, "3": 2, "4": 2, "5a": 3, "5b": 3, "6a": 2, "6b": 2, "7": 4}


@pytest.mark.parametrize("name", ["halyard", "kittiwake", "driftline", "peatbank"])
def test_what_numbers_stand_for_is_told_apart(name: str) -> None:
    made = compiled(name)
    assert made.design is not None
    assert made.glued is not None
    _, numbers = joined(made.design, made.glued.groups[0])
    told = [LANGUAGE.said(n.what) for n in numbers]
    assert len(set(told)) == len(told)


def test_a_line_has_the_number_of_its_own_seams() -> None:
    """Of a join that is sewn in two goes, each line has its own number."""
    made = compiled("halyard")
    assert made.design is not None
    assert made.glued is not None
    assert made.instructions is not None
    _, numbers = joined(made.design, made.glued.groups[0])
    by_line = _by_line(_by_origin([JoinsDrawn(drawn("halyard").drawing, numbers)]), made.instructions)
    assert sorted(list(of) for of in by_line.values()) == [
        ["1", "6"],
        ["2a, 2b"],
        ["4a, 4b"],
        ["5a, 5b"],
        ["7a, 7b"],
        ["8"],
    ]


@pytest.mark.parametrize("name", ["anemone", "hawser", "windrow", "tidewrack", "avocet"])
def test_legend_and_steps_have_the_labels_of_the_drawing(name: str) -> None:
    made, found = compiled(name), drawn(name)
    assert made.instructions is not None
    drawn_labels = {t.text for t in found.drawing.letterings if t.kind == "figure"}
    assert {label for n in found.numbers for label in n.labels} == drawn_labels
    known = {n.shown for n in found.numbers} | drawn_labels
    at_lines = [shown for of in _by_line(_by_origin([found]), made.instructions).values() for shown in of]
    assert all(set(shown.split(", ")) <= {part for one in known for part in one.split(", ")} for shown in at_lines)


def test_two_lines_of_one_number_have_a_label_each() -> None:
    made, found = compiled("anemone"), drawn("anemone")
    assert made.instructions is not None
    assert next(n.shown for n in found.numbers if len(n.labels) > 1) == "7a, 7b"
    by_line = [list(of) for of in _by_line(_by_origin([found]), made.instructions).values()]
    assert ["7a", "7b"] in by_line


def test_a_number_at_one_edge_is_told() -> None:
    assert drawn("anemone").alone
    assert drawn("anemone").meeting
    assert not drawn("avocet").meeting


def test_open_loops_are_not_sewn() -> None:
    made = compiled("marram")
    assert made.design is not None
    assert made.glued is not None
    _, numbers = joined(made.design, made.glued.groups[0])
    assert LANGUAGE.said(numbers[0].what) == "back to right front and left front, joined loop for loop"


@pytest.mark.parametrize("name", NAMES)
def test_nothing_is_drawn_off_the_paper(name: str) -> None:
    of = drawn(name).drawing
    for stroke in of.strokes:
        for x, y in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", stroke.data):
            assert of.left <= float(x) <= of.left + of.width
            assert of.top <= float(y) <= of.top + of.height
    assert all(of.left < t.x < of.left + of.width and of.top < t.y < of.top + of.height for t in of.letterings)
    assert of.width <= 140.1


PRINTED = (112.0, 61.0, 40.0)
"""mm of paper: how wide and how high a drawing is printed at most, and how high beside few numbers (`sheet/themes/booklet.css`)."""

LETTER_PT = 2.9 / 25.4 * 72
"""Of numbers as they are drawn (`sheet/theme.py`)."""


def rings(of: Drawing) -> list[tuple[float, float, float, float]]:
    """The boxes round the rings of numbers."""
    found = re.findall(r"M(-?[\d.]+) (-?[\d.]+)h([\d.]+)a([\d.]+)", "".join(s.data for s in of.strokes if s.kind == "badge"))
    boxes = [tuple(map(float, ring)) for ring in found]
    return [(x - r, y, x + flat + r, y + 2 * r) for x, y, flat, r in boxes]


@pytest.mark.parametrize("name", GARMENTS)
def test_every_number_is_read_with_ease(name: str) -> None:
    made = compiled(name)
    assert made.design is not None
    assert made.counts is not None
    assert made.glued is not None
    pieces = [measured(made.design, made.counts, p.name) for p in made.design.pieces]
    for group in made.glued.groups:
        found = making_up(LANGUAGE, in_one_size(made.design, made.counts, pieces, middle_size(made.counts), group))
        if found is None:
            continue
        of = found.drawing
        boxes = rings(of)
        assert len(boxes) == sum(t.kind == "figure" for t in of.letterings) > 0
        assert not [(a, b) for a, b in combinations(boxes, 2) if overlap(a, b)]
        high = PRINTED[2] if len(found.numbers) <= 4 else PRINTED[1]
        assert LETTER_PT * min(1.0, PRINTED[0] / of.width, high / of.height) >= 6.5


FONT = TTFont(BytesIO(fixed(next(face for face in FACES if (face.family, face.style) == ("Sheet Serif", "italic")))))


def name_box(t: Lettering) -> tuple[float, float, float, float]:
    """What a name takes on paper, by the widths of the sheet's own face, 2.9 mm high."""
    known, wide = FONT.getBestCmap(), FONT["hmtx"]
    half = sum(wide[known[ord(c)]][0] for c in t.text) / FONT["head"].unitsPerEm * 2.9 / 2
    return (t.x - 2.0, t.y - half, t.x + 0.5, t.y + half) if t.turn else (t.x - half, t.y - 2.0, t.x + half, t.y + 0.5)


@pytest.mark.parametrize("name", GARMENTS)
def test_no_name_lies_across_an_outline_a_ring_or_another_name(name: str) -> None:
    if not (found := making_up(LANGUAGE, garment(name, middle_size(compiled(name).counts)))):  # type: ignore[arg-type]
        return
    of = found.drawing
    names = [name_box(t) for t in of.letterings if t.kind == "word"]
    assert names
    assert not [pair for pair in combinations([*names, *rings(of)], 2) if overlap(*pair)]
    drawn_lines = [line for s in of.strokes if s.kind in ("mark", *PENS) for line in lines(s.data)]
    sides = [side for line in drawn_lines for side in pairwise(line)]
    crossed = [box for box in names for side in sides if through(box, (side[0], side[1]))]
    assert not crossed


@pytest.mark.parametrize("name", ["tidewrack", "fairlead", "hawser", "samphire"])
def test_strips_and_linings_lie_in_the_corners_or_close_by(name: str) -> None:
    """The pieces that nothing is laid next to widen the layout by less than their own width."""
    whole = opened(garment(name, 0), 4.0, 0.5)
    sewn = {key: disc for key, disc in whole.items() if disc.piece is not None and "lining" not in key[0]}
    loose = [disc for key, disc in whole.items() if key not in sewn]
    left, _, right, _ = extent(sewn.values())
    all_left, _, all_right, _ = extent(whole.values())
    x0, _, x1, _ = extent(loose[:1])
    assert (all_right - all_left) - (right - left) < x1 - x0


@pytest.mark.parametrize(
    ("name", "band", "front"),
    [
        ("marram", "button_band", "left_front"),
        ("marram", "buttonhole_band", "right_front"),
        ("fulmar", "left_band", "left_front"),
        ("fulmar", "right_band", "right_front"),
    ],
)
def test_what_is_sewn_to_one_piece_alone_lies_beside_that(name: str, band: str, front: str) -> None:
    discs = opened(garment(name, 0), 4.0)
    band_line, front_line = (discs[key, 1].at(discs[key, 1].edges[of, 0]) for key, of in ((band, "seam"), (front, "edge")))
    # Along the edge that it meets, and hardly further off it than pieces lie apart.
    assert all(abs(x - front_line[0][0]) < 5.0 for x, _ in band_line)
    assert min(y for _, y in band_line) < middle(front_line)[1] < max(y for _, y in band_line)


@pytest.mark.parametrize("name", NAMES)
def test_no_piece_lies_on_another_one(name: str) -> None:
    discs = opened(garment(name, 0), 4.0)
    assert not [(a.key, b.key) for a, b in combinations(discs.values(), 2) if meet(a.lying, b.lying)]
    left, low, right, high = extent(discs.values())
    assert right > left
    assert high > low


@pytest.mark.parametrize("name", ["plover", "saltmarsh", "turnstone", "spindrift", "teasel", "tidewrack"])
def test_every_piece_lies_square(name: str) -> None:
    laid = opened(garment(name, middle_size(compiled(name).result()[1])), 4.0)
    assert len(laid) > 2
    assert {disc.turn % 90 for disc in laid.values()} == {0.0}
    if name == "spindrift":
        turns = {key: disc.turn % 360 for key, disc in laid.items()}
        sleeves = {turns["sleeve", 1], turns["sleeve", 2]}
        assert abs(turns["back", 1] - turns["front", 1]) == 180, "the neck lies between them"
        assert len(sleeves) == 2
        assert not sleeves & {turns["back", 1], turns["front", 1]}, "and a sleeve at each side"


def test_neighbours_have_different_strokes_and_all_are_ink() -> None:
    used = [s.kind for s in drawn("tidewrack").drawing.strokes if s.kind in PENS]
    assert set(used) == set(PENS)
    assert not any(s.colour for s in drawn("tidewrack").drawing.strokes)


@pytest.mark.parametrize("name", ["tidewrack", "marram"])
def test_an_edge_is_drawn_as_long_as_it_is(name: str) -> None:
    laid = garment(name, 0)
    places = {p for seam in laid.glued.seams for p in (*seam.one, *seam.other)} | {
        p for line in laid.glued.lines for p in line.along
    }
    owners = {p.name: p for p in laid.pieces}
    seen = 0
    for place in places:
        if place.owner not in owners or place.cut:
            continue
        piece = owners[place.owner]
        of, shape = piece.of, piece.shape
        line = edge_line(of, shape, place.edge)
        assert line, place.text
        whole = edge_length(of, place.edge).cm
        if of.edging_cm and math.dist(line[0], (shape.left[0] if line[0][0] < 0 else shape.right[0])) > 1e-6:
            whole += math.hypot(of.edging_cm, (of.edging_width_cm - shape.start_width) / 2) if line[0][1] < 0 else 0
        if of.sized.wedges or of.sized.repeats:
            # Held rows close to nothing, and what is knitted several times is drawn once.
            continue
        assert length(line) == pytest.approx(whole, rel=0.12, abs=1.5), place.text
        seen += 1
    assert seen > 5


def test_an_edge_whose_rows_are_all_held_has_its_number_at_its_corner() -> None:
    labels = Counter(t.text for t in drawn("limpet").drawing.letterings if t.kind == "figure")
    assert labels["3"] == 1


def test_along_a_line() -> None:
    line = ((0.0, 0.0), (4.0, 0.0), (4.0, 4.0))
    assert along(line, 0.75) == ((4.0, 2.0), (0.0, 1.0))
    assert stretch(line, 0.25, 0.75) == ((2.0, 0.0), (4.0, 0.0), (4.0, 2.0))
    assert length(stretch(line, 0.25, 0.75)) == 4.0


@pytest.mark.parametrize(
    ("joints", "told"),
    [
        (("", "1", "2"), "in the order of the numbers:"),
        (("2", "3"), "in the order of the numbers; 1 is joined already:"),
        (("", "3, 4"), "in the order of the numbers; 1 and 2 are joined already:"),
        (("5", "4"), "in the order of the numbers; 1 to 3 are joined already:"),
        (("", ""), "in the order of the numbers:"),
    ],
)
def test_what_is_joined_by_then_is_said(joints: tuple[str, ...], told: str) -> None:
    """The picture stands with the last joins, and has the numbers of all."""
    lines = [StepLine((), 1, row="", side="", check=False, sizes="", joint=joint) for joint in joints]
    made = _done(tuple(Stage("", "", (line,)) for line in lines))
    assert _reading(LANGUAGE, drawn("limpet"), made).endswith(told)
