"""Pieces knitted more often in one size than in another, from one source to one document: bed, words, plan and pages."""

from __future__ import annotations

import json
import re
from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as hs

from tests.draws import draws, few_of
from tests.plan.schema_kept import faults
from tests.whole.copies_at_random import SIZES, copied
from tests.whole.test_garments_at_random import errors, looked_at
from walewright import pipeline, readback, sheet
from walewright.cli.sources import shipped
from walewright.cli.summary import summary
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.knit.operations import PickUpEdge
from walewright.languages import printed
from walewright.pipeline import Outcome
from walewright.plan import plan_json
from walewright.report.english import ENGLISH, in_english

SHIPPED = shipped()
COPIES = (6, 6, 8)
HEM = "edging hem in plain, 2 cm deep, folded, knitted first\n"
HEAD = f"""pattern "Gores"
sizes S M L
    waist 66 74 92 cm
    length 30 32 34 cm
    gores 6 6 8
let top = waist / gores + 1 cm
machine standard
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 11 g
edging casing in plain, 3 cm deep, folded, added after
{HEM}"""
GORE = """piece gore in plain, knit gores
    levels foot 0 cm, waist length
    start top * 2 wide on waste yarn, with hem
    edges slope to top wide at waist called side
    end cast off
"""
RING = "join gore side to gore side, each to the next all round\n"
SKIRT = f"{HEAD}{GORE}band waistband with casing along gore end\nfinished waistline round gore waist, wanted waist\n{RING}"
STRIPS = f"""{HEAD}piece strip in plain, knit gores
    levels foot 0 cm, low 5 cm, high 25 cm, head length
    start top wide with e-wrap
    left edge straight to head called one
    right edge straight to head called other
    buttonholes 2 over 2 stitches from low to high, 2 cm from the right edge
    end cast off
piece border in plain, knit gores
    levels foot 0 cm, head 6 cm
    start top wide with e-wrap
    edges straight to head called side
    end cast off
needed "buttons", for each buttonhole of strip
join strip end to border end
join strip one to strip other, each to the next
"""


@cache
def made(text: str, language: str = "english", *sizes: str) -> Outcome:
    outcome = pipeline.compile(text, "gores.wale", SHIPPED, Changes(sizes=sizes) if sizes else Changes(), printed(language))
    assert outcome.proven, [(d.code, in_english(d).message, in_english(d).notes) for d in outcome.diagnostics]
    return outcome


def joins_of(outcome: Outcome, size: int) -> list[tuple[int, int]]:
    """(copy, copy) of the first edges of each seam."""
    return [(join.one[0][2], join.other[0][2]) for join in outcome.works[size].joins]


def ring(copies: int) -> list[tuple[int, int]]:
    return [(n, n % copies + 1) for n in range(1, copies + 1)]


@pytest.mark.parametrize(
    ("language", "heading"), [("english", "Gore (knit 6 (6: 8))"), ("german", "„gore“ (6 (6: 8)-mal stricken)")]
)
def test_one_document_has_each_size_with_its_own_number(language: str, heading: str) -> None:
    outcome = made(SKIRT, language)
    assert heading in outcome.plain_text.splitlines()
    assert outcome.read == outcome.works
    for size, copies in enumerate(COPIES):
        assert [block.copies for block in outcome.works[size].blocks] == [copies, copies]
        assert joins_of(outcome, size) == ring(copies)
    assert [fabric.copies for result in outcome.results for fabric in result.fabrics] == [6, 6, 6, 6, 8, 8]


@pytest.mark.parametrize("size", [0, 2])
def test_a_size_by_itself_is_put_together_as_among_others(size: int) -> None:
    alone, together = made(SKIRT, "english", SIZES[size]), made(SKIRT)
    assert joins_of(alone, 0) == joins_of(together, size)
    assert alone.glued is not None
    assert together.glued is not None
    assert alone.glued.groups[0] == together.glued.in_size(size)


def test_sizes_with_as_many_share_what_holds_for_them() -> None:
    glued = made(SKIRT).glued
    assert glued is not None
    assert glued.sizes == ((0, 1), (2,))
    assert [len(group.seams) for group in glued.groups] == [6, 8]


def test_the_seams_are_one_sentence_with_their_number_by_size() -> None:
    words = " ".join(made(SKIRT).plain_text.split())
    assert (
        "Join the left side of each gore to the right side of the next one, and the last one to the first, 6 (6: 8) seams" in words
    )
    for size in SIZES:
        assert f"{size} only" not in words


def test_a_row_and_what_is_sewn_to_each() -> None:
    outcome = made(STRIPS)
    for size, copies in enumerate(COPIES):
        own, row = [(n, n) for n in range(1, copies + 1)], [(n, n + 1) for n in range(1, copies)]
        assert joins_of(outcome, size) == [*own, *row]
    words = " ".join(outcome.plain_text.split())
    assert "each to its own, 6 (6: 8) seams" in words
    assert "and so on, 5 (5: 7) seams" in words


def test_what_is_needed_and_the_yarn_go_by_the_copies() -> None:
    outcome = made(STRIPS)
    assert outcome.fit is not None
    assert outcome.fit.needed == ((12.0, 12.0, 16.0),)
    assert outcome.proof is not None
    loops = [sum(piece.loops * copies for piece in size.pieces) for size, copies in zip(outcome.proof.sizes, COPIES, strict=True)]
    assert [size.loops for size in outcome.proof.sizes] == loops


def test_all_round_is_measured_over_every_copy_of_a_size() -> None:
    """Each gore at its waist, as many as there are, less a stitch of both sides of each seam."""
    outcome = made(SKIRT)
    assert outcome.fit is not None
    assert outcome.counts is not None
    (beside,) = outcome.fit.beside
    for size, (garment, copies) in enumerate(zip(outcome.counts.sizes, COPIES, strict=True)):
        piece = garment.piece("gore")
        at_waist = piece.start + sum(by for runs in (piece.left, piece.right) for run in runs for _, by in run.changes())
        assert beside.knitted[size] == pytest.approx(copies * (at_waist - 2) * 14.3 / 40)


def test_openings_go_along_the_copies_of_each_size() -> None:
    outcome = made(SKIRT)
    assert outcome.fit is not None
    foot = next(r for r in outcome.fit.rings if r.edges[0].edge == "start")
    assert [len(chain) for chain in foot.chains] == list(COPIES)
    assert foot.copies == (1, 1, 1)


def test_the_plan_has_each_size_right() -> None:
    outcome = made(SKIRT)
    plan = json.loads(json.dumps(plan_json(outcome)))
    assert faults(plan) == []
    for size, copies in zip(plan["sizes"], COPIES, strict=True):
        assert [piece["copies"] for piece in size["pieces"]] == [copies]
        assert sum(join["times"] for join in size["joins"]) == copies
    foot = next(o for o in plan["worn"]["openings"] if isinstance(o["edges"], dict))
    assert {size: len(edges) for size, edges in foot["edges"].items()} == {"S": 6, "M": 6, "L": 8}


def test_the_pages_have_the_numbers_and_a_drawing_for_each_way() -> None:
    outcome = made(SKIRT)
    page = sheet.compose(LANGUAGE, sheet.ProvenPattern(*outcome.result(), outcome.fit, glued=outcome.glued), sheet.PageOptions())
    gore = next(part for part in page.parts if part.title.startswith("Gore"))
    assert gore.title == "Gore (knit 6 (6: 8))"
    assert any(fact.text.startswith("6 (6: 8) alike") for fact in gore.facts)
    assert [picture.sizes for picture in page.parts[-1].joins] == ["Sizes S and M", "Size L"]
    badges = [sum(1 for one in picture.drawing.letterings if re.fullmatch("2[a-h]", one.text)) for picture in page.parts[-1].joins]
    assert badges == [12, 16]


def test_one_in_some_sizes_and_several_in_others() -> None:
    tube = f"{HEAD.replace('gores 6 6 8', 'gores 1 1 2')}{GORE.replace('top * 2', '20 cm').replace('to top', 'to 15 cm')}{RING}"
    outcome = made(tube)
    assert "Gore (knit 1 (1: 2))" in outcome.plain_text
    assert [joins_of(outcome, size) for size in range(3)] == [[(0, 0)], [(0, 0)], [(1, 2), (2, 1)]]
    german = made(tube, "german")
    assert german.read == german.works


def test_links_of_some_sizes_are_sections_of_their_own() -> None:
    sideways = f"""{HEAD}piece gore in plain, knit gores
    levels begin 0 cm, close top
    start length wide on waste yarn
    edges straight to close called hem
    end on waste yarn
join gore end to gore start, linked, each to the next all round
"""
    outcome = made(sideways)
    assert [len(work.blocks) for work in outcome.works] == [1 + copies for copies in COPIES]
    assert [len(size.pieces) for size in outcome.result()[3].sizes] == [1 + copies for copies in COPIES]
    german = made(sideways, "german")
    assert german.read == german.works
    assert "gore end 8 link" in summary(outcome, LANGUAGE, ENGLISH, everything=True)


PANELS = f"""{HEAD.replace(HEM, "")}piece panel in plain, knit gores
    levels foot 0 cm, head length
    start 12 cm wide with e-wrap
    edges straight to head called side
    end cast off
band rib with casing along panel end + panel end
join panel side to panel side, each to the next all round
"""


def test_what_cannot_be_told_of_some_sizes_names_them() -> None:
    outcome = pipeline.compile(PANELS, "panels.wale", SHIPPED, Changes())
    assert [(d.code, d.sizes) for d in errors(outcome)] == [("copies-mixed", ("S", "M")), ("copies-mixed", ("L",))]


def test_one_band_on_two_copies_of_more_in_some_sizes() -> None:
    outcome = made(PANELS.replace("gores 6 6 8", "gores 2 2 3"))
    bands = [next(block for block in work.blocks if block.name == "rib") for work in outcome.works]
    picked = [[op.copy for op in band.operations if isinstance(op, PickUpEdge)] for band in bands]
    assert [len(set(copies)) for copies in picked] == [2, 2, 2]
    assert [sorted(joins_of(outcome, size)) for size in range(3)] == [ring(2), ring(2), ring(3)]


# ----------------------------------------------------------------- damaged

DAMAGES = {
    "fewer knitted": ("(knit 6 (6: 8))", "(knit 6 (6: 7))"),
    "one number for all": ("(knit 6 (6: 8))", "(knit 6)"),
    "too few numbers": ("(knit 6 (6: 8))", "(knit 6 (8))"),
    "a seam too few": ("6 (6: 8) seams", "6 (6: 7) seams"),
    "sizes exchanged": ("6 (6: 8) seams", "8 (6: 6) seams"),
    "not all round": ("and the last one to the first", "and so on"),
    "each to its own": ("and the last one to the first", "each to its own"),
    "copies told otherwise": ("of the next one", "of each gore"),
}


@pytest.mark.parametrize("damage", DAMAGES)
def test_damaged_words_do_not_make_the_garment(damage: str) -> None:
    outcome = made(SKIRT)
    before, after = DAMAGES[damage]
    pattern = re.compile(re.escape(before).replace("\\ ", r"\s+"))
    text, times = pattern.subn(after, outcome.plain_text)
    assert times
    works, told = readback.read_back_all(text, printed().reading)
    assert works != outcome.works
    assert told or works is not None


# ----------------------------------------------------------------- drawn at random


@settings(max_examples=draws(20), deadline=None)
@given(seed=hs.integers(0, 10**6))
def test_drawn_garments_are_read_back_to_the_same_in_every_size(seed: int) -> None:
    one = copied(seed)
    outcome = pipeline.compile(one.drawn.text, "drawn.wale", SHIPPED, Changes())
    codes = {d.code for d in outcome.diagnostics}
    if codes == {"copies-by-size"}:
        return
    assert outcome.proven, (codes, one.drawn.text)
    german = pipeline.compile(one.drawn.text, "drawn.wale", SHIPPED, Changes(), printed("german"))
    assert german.proven
    assert outcome.works == outcome.read
    assert german.works == german.read
    for size, copies in enumerate(one.copies):
        gores = [join for join in outcome.works[size].joins if {side[0][0] for side in (join.one, join.other)} == {"gore"}]
        assert len(gores) == (copies if one.ring else copies - 1)
        assert next(block.copies for block in outcome.works[size].blocks if block.name == "gore") == copies


@pytest.mark.parametrize("seed", few_of(range(30), 3))
def test_drawn_garments_and_what_makes_them_wrong(seed: int) -> None:
    looked_at(copied(seed).drawn)
