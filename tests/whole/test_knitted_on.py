"""An edging knitted on at the end of a piece, from the source to the bed and back from the words."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.in_english import plain_text
from tests.whole.glued_garments import caught, changed, made, misread, work_of
from walewright.knit.operations import HangFeet, LatchUp, Operation, Pass, UseYarn
from walewright.pipeline import Outcome

SOURCE = """\
pattern "Knitted on"
sizes S M
    wide 40 44 cm
machine standard
yarn wool "wool", 50 g = 150 m
yarn navy "navy wool", 50 g = 150 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
fabric rib
    latched rib every 2nd needle in wool at tension 5
    swatch 40 stitches by 60 rows = 13 cm by 14 cm
fabric sailor
    stripes of 2 rows navy, 2 rows wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
edging welt in rib, 3 cm deep, added after, cast off chain
edging top in {edging}
piece skirt in plain
    levels hem 0 cm, waist 30 cm
    start wide wide on waste yarn, with welt
    edges slope to wide - 6 cm wide at waist called side
    end with top
piece cloth in sailor
    levels hem 0 cm, waist 10 cm
    start wide / 2 wide with e-wrap
    end cast off
join skirt side to skirt side
"""
KINDS = {
    "rib": "rib, 3 cm deep, added after, cast off sewn",
    "deep rib": "rib, 12 cm deep, added after, cast off chain",
    "plain": "plain, 3 cm deep, added after",
    "folded": "plain, 3 cm deep, folded, fold row at tension 9, inside at tension 6, added after",
    "picot": "plain, 2 cm deep, picot, added after",
    "rolled": "plain, 2 cm deep, rolled, added after, cast off sewn",
    "facing": "plain, 3 cm deep, facing, fold row at tension 9, added after",
    "chained": "plain, chained, added after",
    "striped": "sailor, 3 cm deep, added after",
}


def one_size(kind: str) -> str:
    return SOURCE.format(edging=KINDS[kind]).replace("sizes S M\n    wide 40 44 cm", "sizes one\n    wide 40 cm")


def outcome(kind: str) -> Outcome:
    found = made(SOURCE.format(edging=KINDS[kind]))
    assert found.proven, found.diagnostics
    return found


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_that_is_added_after_can_be_knitted_on(kind: str) -> None:
    result = outcome(kind).result()
    design, counts, _, _ = result
    for garment, work in zip(counts.sizes, outcome(kind).works, strict=True):
        skirt = garment.piece("skirt")
        wanted = 1 if kind == "chained" else round(design.edging("top").depth[0] * design.edged_in("top").rows_per_cm / 2) * 2
        assert skirt.end_rows == wanted
        # It is part of the piece: no section of its own, and nothing goes on waste yarn.
        assert [block.name for block in work.blocks] == ["skirt", "skirt welt", "cloth"]


def test_the_counter_goes_on_and_the_fold_names_its_row() -> None:
    found = outcome("folded")
    _, counts, instructions, _ = found.result()
    text = " ".join(plain_text(instructions).split())
    rows = counts.sizes[0].piece("skirt").rows
    assert rows == 120
    assert f"of the row knitted at RC {rows + 1} from left to right" in text
    assert "and on along the ends of 12 rows of skirt welt and 12 rows of skirt top, with" in text


def test_the_edge_is_as_long_as_the_edging_is_wide() -> None:
    found = outcome("rib")
    fit = next(ring for ring in found.fit.rings if any(p.edge == "end" for p in ring.edges)) if found.fit else None
    _, counts, _, _ = found.result()
    skirt = counts.sizes[0].piece("skirt")
    top = skirt.start + sum(by for runs in (skirt.left, skirt.right) for run in runs for _, by in run.changes())
    assert fit is not None
    # Its side is sewn, a stitch of each edge, in the tension of the skirt.
    assert fit.relaxed[0] == pytest.approx(top * 13 / 40 - 2 * 14 / 40)


def _row(op: Operation, by: int) -> Operation:
    return replace(op, row=op.row + by) if isinstance(op, HangFeet) and op.row else op


@pytest.mark.parametrize("by", [-1, 1])
def test_another_row_hung_up_is_found(by: int) -> None:
    text = one_size("folded")
    assert "knitted-otherwise" in caught(text, changed(work_of(text), "skirt", lambda op: _row(op, by)))
    printed = made(text).plain_text
    size = work_of(text)
    row = next(op.row for block in size.blocks for op in block.operations if isinstance(op, HangFeet) and op.row)
    assert misread(text, printed) == set()
    assert misread(text, printed.replace(f"knitted at RC {row}", f"knitted at RC {row + by}")) != set()


def test_a_fold_to_the_wrong_side_is_found() -> None:
    text = one_size("folded")
    turned = changed(work_of(text), "skirt", lambda op: replace(op, behind=True) if isinstance(op, HangFeet) else op)
    assert caught(text, turned) != set()


def test_a_rib_that_is_not_latched_up_is_found() -> None:
    text = one_size("rib")
    plain = changed(work_of(text), "skirt", lambda op: None if isinstance(op, LatchUp) else op)
    assert "knitted-otherwise" in caught(text, plain)


def test_a_copy_and_a_mirror_image_end_as_their_model_does() -> None:
    text = SOURCE.format(edging=KINDS["rib"]).replace(
        "piece cloth in sailor",
        "piece other like skirt\n    without top\npiece cloth in sailor",
    )
    assert not made(text).proven, "only what has a name can be left out"
    text = SOURCE.format(edging=KINDS["rib"]).replace(
        "piece cloth in sailor",
        "piece other like skirt\n    end cast off\npiece third in plain, mirror of skirt\npiece cloth in sailor",
    )
    text += "join other side to other side\njoin third side to third side\n"
    found = made(text)
    assert found.proven, found.diagnostics
    ends = {p.name: p.end_edging for p in found.result()[0].pieces}
    assert ends == {"skirt": "top", "other": None, "third": "top", "cloth": None}


def test_loops_left_on_waste_yarn_are_grafted_or_told() -> None:
    open_end = SOURCE.format(edging="plain, 3 cm deep, added after, cast off waste")
    assert [d.code for d in made(open_end).diagnostics] == ["edging-left-open"]
    grafted = open_end.replace("piece skirt in plain", "piece skirt in plain, knit 2") + "join skirt end to skirt end, grafted\n"
    assert made(grafted).proven, made(grafted).diagnostics


def test_needles_that_are_out_of_work_at_the_end_leave_no_stitch_to_knit_on() -> None:
    straight = SOURCE.format(edging=KINDS["rib"]).replace("edges slope to wide - 6 cm wide at waist", "edges straight to waist")
    straight = straight.replace("levels hem 0 cm, waist 30 cm", "levels hem 0 cm, line 4 cm, band 26 cm, waist 30 cm")
    to_top = straight.replace("    end with top", "    needles out every 10th from line to waist\n    end with top")
    assert [(d.code, d.case) for d in made(to_top).diagnostics] == [("needles-out", "end")]
    below = to_top.replace("from line to waist", "from line to band")
    assert made(below).proven, made(below).diagnostics


GROUNDS = {
    "tuck": "    chart honeycomb in wool at tension 7, centred, 2 edge stitches",
    "lace": "    chart eyelet_bricks in wool at tension 7, centred, 2 edge stitches",
    "stripes": "    stripes of 4 rows navy, 2 rows wool at tension 7",
}
POCKET = """\
pattern "Pocket"
sizes S M L
    tall 9.5 10 10.5 cm
machine standard
yarn wool "wool", 50 g = 150 m
yarn navy "navy wool", 50 g = 150 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
fabric ground
{ground}
    right side {side}
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
edging lip in plain, 2 cm deep, folded, added after, cast off chain
piece pocket in ground
    levels foot 0 cm, mouth tall
    start 12 cm wide with e-wrap
    edges straight to mouth called side
    end with lip
free pocket start + pocket side + pocket end
"""


@pytest.mark.parametrize("ground", GROUNDS)
def test_a_pattern_ends_below_the_edging(ground: str) -> None:
    found = made(POCKET.format(ground=GROUNDS[ground], side="knit"))
    assert found.proven, found.diagnostics
    for garment, result in zip(found.result()[1].sizes, found.results, strict=True):
        (fabric,) = result.fabrics
        pocket = garment.piece("pocket")
        above = [course for row in range(pocket.rows + 1, fabric.rows + 1) for course in fabric.passes(row)]
        assert len(above) == 2 * pocket.end_rows
        assert {(course.count, course.yarn) for course in above} == {(pocket.start, "wool")}


def test_the_proof_finds_a_pattern_that_goes_on_into_the_edging() -> None:
    sizes = "sizes S M L\n    tall 9.5 10 10.5 cm"
    text = POCKET.format(ground=GROUNDS["stripes"], side="knit").replace(sizes, "sizes one\n    tall 10 cm")
    work, rows = work_of(text), made(text).result()[1].sizes[0].piece("pocket").rows
    (pocket,) = work.blocks
    operations = list(pocket.operations)
    first_of_edging = [n for n, op in enumerate(operations) if isinstance(op, Pass)][rows]
    operations.insert(first_of_edging, UseYarn("navy", "7"))
    assert "knitted-otherwise" in caught(text, replace(work, tasks=(replace(pocket, operations=tuple(operations)),)))


@pytest.mark.parametrize(("side", "way"), [("knit", "in front, towards you, purl"), ("purl", "behind, away from you, knit")])
def test_the_hidden_layer_lies_inside_of_the_piece(side: str, way: str) -> None:
    """Whatever side the edging's fabric would be worn on by itself."""
    found = made(POCKET.format(ground=GROUNDS["lace"], side=side))
    assert found.proven, found.diagnostics
    assert f"Fold the work up {way} sides together" in " ".join(plain_text(found.result()[2]).split())
