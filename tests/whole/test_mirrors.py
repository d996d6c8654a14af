"""Mirror images, drawn at random: the model's shaping, each move a row off at most where the carriage's side asks for it."""

from __future__ import annotations

import random

import pytest

from tests.whole.garment import SHIPPED
from walewright.counted import counted_piece
from walewright.counted.edges import edge_length
from walewright.counted.model import SizedRun
from walewright.design import Changes
from walewright.pipeline import compile
from walewright.report.english import in_english

SOURCE = """pattern "Fronts"
sizes S M
    length 40 44 cm
machine standard
yarn wool "fine wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = {wide} cm by {high} cm, 9 g
piece one in plain
    levels hem 0 cm, low 12 cm, throat 30 cm, top length
    start 18 cm wide with e-wrap
    left edge {low} to low called foot
    left edge {side} to throat called side
    left edge straight to top called scye
    right edge straight to throat called edge
    right edge {neck} at top called neckline
    end cast off
piece other in plain, mirror of one
join one side to other side
"""


def drawn(number: int) -> str:
    draws = random.Random(f"mirror {number}")
    away = draws.choice(("slope by 2 cm at low", "slope by -2 cm at low", "slope by 3 cm at low, fashioned 2 in"))
    low = draws.choice(("straight to low", away))
    side = draws.choice(("straight to throat", "slope by -3 cm at throat", "slope by 2 cm at throat", "curve by -4 cm at throat"))
    cast = draws.choice(("", "cast off 2 cm then "))
    neck = cast + draws.choice(("curve by -6 cm", "slope by -5 cm", "arch by -4 cm"))
    wide, high = draws.choice(((14.3, 15), (13.1, 14.2), (15.6, 15.3)))
    text = SOURCE.format(wide=wide, high=high, low="@", side="#", neck=neck)
    return text.replace("@ to low", low).replace("# to throat", side)


def needs_carriage(run: SizedRun, by: int) -> bool:
    return by < -1 or (by > 0 and run.way.kind == "simple")


@pytest.mark.parametrize("number", range(12))
def test_a_mirror_image_has_its_models_curve(number: int) -> None:
    outcome = compile(drawn(number), "fronts.wale", SHIPPED, Changes())
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]
    assert outcome.design is not None
    assert outcome.counts is not None
    one, other = (outcome.design.piece(name) for name in ("one", "other"))
    compared = 0
    for garment in outcome.counts.sizes:
        model, image = garment.piece("one"), garment.piece("other")
        assert (model.start, model.rows, model.levels) == (image.start, image.rows, image.levels)
        for its, turned in ((model.left, image.right), (model.right, image.left)):
            for run, same in zip(its, turned, strict=True):
                here, there = list(run.changes()), list(same.changes())
                assert [by for _, by in here] == [by for _, by in there]
                for (row, by), (at, _) in zip(here, there, strict=True):
                    if needs_carriage(run, by):
                        assert abs(row - at) == 1, "the carriage is at the other side a row earlier or later"
                    else:
                        assert abs(row - at) <= 1
                    compared += 1
        for edge in ("foot", "side", "neckline"):
            lengths = [edge_length(counted_piece(outcome.design, garment.piece(p.name)), edge) for p in (one, other)]
            assert lengths[0].rows == lengths[1].rows
            assert lengths[0].cm == pytest.approx(lengths[1].cm, abs=0.15)
    assert compared


PARTED = """pattern "Begun along parts"
sizes S
    hand 24 cm
machine standard
yarn wool "fine wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g
edging welt in plain, 3 cm deep, folded, knitted first
piece one in plain
    levels hem 0 cm, part 6 cm, top 7 cm
    start hand wide on waste yarn, with welt
    edges straight to top called side
    opening first 0 cm wide from part to top, hand / 4 left of centre
    opening second 0 cm wide from part to top, hand / 4 right of centre
    opening third 0 cm wide from part to top, 3 * hand / 8 right of centre
    end on waste yarn
piece other in plain, mirror of one
piece tab in plain
    levels base 0 cm, tip 4 cm
    start along one {edges}
    edges straight to tip called rim
    end cast off
piece other_tab in plain, mirror of tab
free tab rim + tab end + other_tab rim + other_tab end
"""


@pytest.mark.parametrize(
    ("edges", "mirrored"),
    [
        ("shoulder_2", ["shoulder 3"]),
        ("shoulder_left", ["shoulder right"]),
        ("side_left", ["side right"]),
        ("welt_left + one side_left", ["side right", "welt right"]),
        ("side_right + one welt_right", ["welt left", "side left"]),
    ],
)
def test_a_mirror_image_is_begun_on_the_other_side_of_what_its_model_is_begun_on(edges: str, mirrored: list[str]) -> None:
    outcome = compile(PARTED.format(edges=edges), "parted.wale", SHIPPED, Changes())
    assert outcome.design is not None, [(d.code, in_english(d).message) for d in outcome.diagnostics]
    along = outcome.design.piece("other_tab").start_along
    assert [(edge.piece, edge.edge) for edge in along] == [("other", edge) for edge in mirrored]
