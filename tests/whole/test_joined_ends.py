"""Joins of the ends of welts and bands, from the source to the bed, back from the words, and in the tables."""

from __future__ import annotations

import json
import re
from dataclasses import replace

import pytest

from tests.in_english import plain_text
from tests.whole.glued_garments import caught, joins_changed, made, misread, work_of
from walewright import bed
from walewright.bed import KnitFabric
from walewright.cli.summary import summary
from walewright.guide.english import LANGUAGE
from walewright.knit.operations import Join, NameEdge
from walewright.pipeline import Outcome, bed_of
from walewright.plan import plan_bytes
from walewright.proof.sewing import seams_cm
from walewright.report.english import ENGLISH

HEAD = """\
pattern "Ends joined"
sizes S M
    wide 30 33 cm
machine standard
yarn wool "wool", 50 g = 150 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
fabric rib
    latched rib every 2nd needle in wool at tension 5
    swatch 40 stitches by 60 rows = 13 cm by 14 cm
edging border in rib, 2 cm deep, added after
"""
WELTS = {
    "rib": ("rib, 4 cm deep, added after", "on waste yarn"),
    "rib, first": ("rib, 4 cm deep, knitted first", "with e-wrap"),
    "folded": ("plain, 4 cm deep, folded, fold row at tension 9, inside at tension 6, added after", "on waste yarn"),
    "folded, first": ("plain, 4 cm deep, folded, fold row at tension 9, inside at tension 6, knitted first", "on waste yarn"),
    "rolled": ("plain, 4 cm deep, rolled, added after", "on waste yarn"),
}


def piece(name: str, start: str, end: str = "cast off") -> str:
    return f"""\
piece {name} in plain
    levels hem 0 cm, upper 20 cm
    start wide wide {start}, with welt
    edges straight to upper called side
    end {end}
"""


def skirt(welt: str = "rib", join: str = "back welt + back side to front welt + front side", end: str = "cast off") -> str:
    edging, start = WELTS[welt]
    return f"{HEAD}edging welt in {edging}\n{piece('back', start, end)}{piece('front', start, end)}join {join}\n"


def strapped(more: str = "") -> str:
    """A strap along the edge of a cloth and the end of the band above it: it has as many rows as both."""
    return f"""{HEAD}piece cloth in plain
    levels hem 0 cm, upper 20 cm
    start wide wide with e-wrap
    edges straight to upper called side
    end cast off
piece strap in plain
    levels hem 0 cm, upper between 15 cm and 40 cm
    start 4 cm wide with e-wrap
    left edge straight to upper called seam
    end cast off
band rim with border along cloth end
join cloth side_right + rim last_end to strap seam{more}
"""


def one_size(text: str) -> str:
    return text.replace("sizes S M\n    wide 30 33 cm", "sizes S\n    wide 30 cm")


def outcome(text: str) -> Outcome:
    found = made(text)
    assert found.proven, found.diagnostics
    return found


def words(text: str) -> str:
    return " ".join(plain_text(outcome(text).result()[2]).split())


# ----------------------------------------------------------------- counts


@pytest.mark.parametrize("welt", WELTS)
def test_a_seam_has_the_rows_of_its_welts(welt: str) -> None:
    of = outcome(skirt(welt)).result()[1].sizes[0]
    back = of.piece("back")
    assert {(seam.one_rows, seam.other_rows) for seam in of.seams} == {(back.rows + back.edging_rows,) * 2}
    apart = outcome(skirt(welt, "back side to front side")).result()[1].sizes[0]
    assert {seam.one_rows for seam in apart.seams} == {back.rows}


def test_a_free_level_finds_the_rows_of_an_edge_and_the_end_of_a_band() -> None:
    for of in outcome(strapped()).result()[1].sizes:
        rim = next(band for band in of.bands if band.name == "rim")
        assert of.piece("strap").rows == of.piece("cloth").rows + rim.rows


def test_sides_of_other_lengths_are_told_with_both() -> None:
    (told,) = [
        d for d in made(strapped().replace("between 15 cm and 40 cm", "20 cm")).diagnostics if d.code == "join-does-not-meet"
    ]
    assert any("rim last end" in str(note.facts) or "counts-against" in str(note) for note in told.notes)


def test_ends_have_no_loops_to_link() -> None:
    (told,) = [d for d in made(strapped(", linked")).diagnostics if d.code == "join-needs-loops"]
    assert dict(told.facts)["piece"] == "cloth"
    ends = strapped().replace("cloth side_right + rim last_end to strap seam", "rim last_end to strap end, grafted")
    assert "join-needs-loops" in [d.code for d in made(ends).diagnostics]


# ----------------------------------------------------------------- words and tables


def test_the_words_name_the_ends_and_say_which_rows_they_are() -> None:
    told = words(skirt())
    assert "Join the left welt, then the left side of the back to the right welt, then the right side of the front" in told
    assert "row for row, 98 rows" in told
    assert "The outer edges from RC 0 to RC 18 are called “welt”." in told
    assert "The right edge from RC 0 to RC 8 is called “right end”." in words(strapped())


def test_free_welts_are_vents_and_nothing_is_sewn_there() -> None:
    text = skirt(join="back side to front side\nfree back welt + front welt")
    assert "and on along the ends" not in words(text)
    assert "and on along the ends of 18 rows of back welt and 18 rows of front welt" in words(skirt(join="back side to front side"))


def test_the_same_edging_at_both_ends_is_joined_by_its_upper_name() -> None:
    text = skirt(join="back welt + back side + back welt_upper to front welt + front side + front welt_upper", end="with welt")
    assert "then the left upper welt of the front, row for row" in words(text)


def test_plan_and_table_have_the_rows_of_what_a_seam_goes_on_along() -> None:
    found = outcome(skirt(join="back side to front side"))
    joins = json.loads(plan_bytes(found))["sizes"][0]["joins"]
    (side,) = joins
    assert side["one_rows"] == 80
    assert [(o["piece"], o["edging"], o["rows"]) for o in side["over"]] == [("back", "welt", 18), ("front", "welt", 18)]
    assert side["over"][0]["cm"] == pytest.approx(18 * 14 / 60, abs=0.01)
    told = summary(found, LANGUAGE, ENGLISH, everything=True)
    assert re.search(r"and on along back welt and front welt +rows +18/18 +18/18\n +cm +4.2/4.2", told)
    (named,) = json.loads(plan_bytes(outcome(skirt())))["sizes"][0]["joins"]
    assert (named["one_rows"], named.get("over")) == (98, None)


def test_a_seam_is_as_long_with_the_ends_named_as_without() -> None:
    lengths = []
    for text in (skirt(), skirt(join="back side to front side")):
        found = outcome(text)
        assert found.glued is not None
        design = found.result()[0]
        # On the bed the blocks are the same.
        fabrics = {f.name: f for f in _knitted(text)}
        lengths.append(seams_cm(design, found.glued.in_size(0), fabrics)["wool"])
    assert lengths[0] == pytest.approx(lengths[1])


def _knitted(text: str) -> tuple[KnitFabric, ...]:
    design = outcome(text).design
    assert design is not None
    return bed.knit(work_of(text), bed_of(design)).fabrics


# ----------------------------------------------------------------- damage


@pytest.mark.parametrize("welt", WELTS)
def test_a_seam_without_its_welts_is_found(welt: str) -> None:
    text = one_size(skirt(welt))
    join = work_of(text).joins[0]
    bare = replace(join, one=join.one[1:], other=join.other[1:], rows=80)
    assert caught(text, joins_changed(work_of(text), 0, bare)) == {"knitted-otherwise"}
    short = replace(join, rows=join.rows - 2)
    assert caught(text, joins_changed(work_of(text), 0, short)) == {"join-told"}
    turned = replace(join, ends=(join.ends[0], "top" if join.ends[1] == "bottom" else "bottom"))
    assert caught(text, joins_changed(work_of(text), 0, turned)) != set()


def test_another_end_of_a_band_is_found() -> None:
    text = one_size(strapped())

    def other(join: Join) -> Join:
        swapped = tuple((p, "first end" if e == "last end" else e, c) for p, e, c in join.one)
        return replace(join, one=swapped, other=join.other)

    (join,) = work_of(text).joins
    assert caught(text, joins_changed(work_of(text), 0, other(join))) != set()
    tasks = tuple(
        task if isinstance(task, Join) else replace(task, operations=tuple(op for op in task.operations if not _is_end(op)))
        for task in work_of(text).tasks
    )
    assert caught(text, replace(work_of(text), tasks=tasks)) == {"edge-unknown"}


def _is_end(op: object) -> bool:
    return isinstance(op, NameEdge) and op.edge == "last end"


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("welt, then the left side of the front", "side of the front"),
        ("welt, then the left side of the front", "welt, then the right side of the front"),
        ("98 rows", "96 rows"),
        ("RC 0 to RC 18 are called “welt”", "RC 0 to RC 16 are called “welt”"),
    ],
)
def test_other_words_are_found(old: str, new: str) -> None:
    text = one_size(skirt())
    printed = outcome(text).plain_text
    changed = re.sub(r"\s+".join(map(re.escape, old.split())), new, printed)
    assert changed != printed
    assert misread(text, changed) != set()
