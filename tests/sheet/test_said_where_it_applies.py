"""What pages and plain text say of a garment is so of it, and nothing is said that cannot be."""

from __future__ import annotations

import pytest

from tests.whole.shipped_once import compiled
from walewright.figures.measures import measured
from walewright.guide.english import LANGUAGE as ENGLISH
from walewright.guide.german import LANGUAGE as GERMAN
from walewright.guide.model import Guide
from walewright.pipeline import Outcome
from walewright.sheet import PageOptions, compose
from walewright.sheet.advice import cautions, swatch_first, worn_on
from walewright.sheet.finished import size_notes, size_table
from walewright.sheet.model import Sheet
from walewright.sheet.proven import ProvenPattern
from walewright.sheet.text_copy import text_copy


def pattern_of(made: Outcome) -> ProvenPattern:
    design, counts, instructions, proof = made.result()
    return ProvenPattern(design, counts, instructions, proof, made.fit, glued=made.glued)


def sheet_of(made: Outcome, guide: Guide = ENGLISH) -> Sheet:
    return compose(guide, pattern_of(made), PageOptions(units="cm", version="9.9", date=""))


def rows(name: str) -> dict[str, list[str]]:
    made = compiled(name)
    design, counts, *_ = made.result()
    pieces = tuple(measured(design, counts, piece.name) for piece in design.pieces)
    table = size_table(ENGLISH, design, counts, pieces, made.fit, "cm")
    return {row.label: [cell.text for cell in row.cells] for group in table.groups for row in group.rows}


# ----------------------------------------------------------------- sizes


def test_half_of_a_saddle_is_in_the_length_as_it_is_worn() -> None:
    """Body and armhole, as the author gives them, come to the length from the shoulder: half of the strap lies in it."""
    design = compiled("halyard").design
    assert design is not None
    wanted = {m.name: m.values for m in design.measurements}
    told = rows("halyard")["Back and front: length, with welt, and half the width of the strap"]
    for made, body, depth in zip(told, wanted["body"], wanted["depth"], strict=True):
        assert abs(float(made) - body - depth) <= 0.6


def test_no_strap_lies_between_shoulders_that_meet() -> None:
    assert "Back and front: length, with welt" in rows("tidewrack")


@pytest.mark.parametrize("name", ["halyard", "saltmarsh", "tidewrack", "samphire"])
def test_sleeves_are_told_all_round_in_every_garment(name: str) -> None:
    told = [label for label in rows(name) if label.startswith("Sleeve:") and "length" not in label]
    assert told
    assert all(label.startswith("Sleeve: all round") for label in told)


@pytest.mark.parametrize(
    ("name", "round_it", "seams"), [("sandbar", False, False), ("breakwater", False, True), ("tidewrack", True, True)]
)
def test_girths_and_seams_are_spoken_of_where_there_are_some(name: str, round_it: bool, seams: bool) -> None:
    made = compiled(name)
    assert made.design is not None
    note = size_notes(ENGLISH, made.design, made.fit, "cm")[1]
    assert ("all round" in note, "before seaming" in note) == (round_it, seams)


def test_a_cloth_is_chosen_by_its_measurements() -> None:
    wrap, pullover = (size_notes(ENGLISH, compiled(n).result()[0], compiled(n).fit, "cm")[0] for n in ("barnacle", "tidewrack"))
    assert "that fits" not in wrap
    assert "that fits" in pullover


def test_what_must_not_slip_through_is_told_with_its_figures() -> None:
    made = compiled("sanderling")
    notes = size_notes(ENGLISH, made.result()[0], made.fit, "cm")
    (neck,) = [note for note in notes if note.startswith("Front neck and back neck, all round: ")]
    assert "the head, 40 (43: 45.5: 47: 47.5) cm, must not slip through" in neck
    # An edge of the trade's name is told in the words of the page.
    german = size_notes(GERMAN, made.result()[0], made.fit, "cm")
    assert any("ront Halsausschnitt und back Halsausschnitt, rundherum: " in note for note in german)


# ----------------------------------------------------------------- cautions

WORN = {
    "body": ("dunlin", "shoal", "teasel", "sanderling", "samphire"),
    "waist": ("curlew",),
    "apart": ("limpet", "skerry", "mooring", "dotterel"),
    "cloth": ("avocet", "breakwater", "barnacle"),
    "feet": ("driftline",),
}


@pytest.mark.parametrize(("place", "name"), [(place, name) for place, names in WORN.items() for name in names])
def test_where_it_is_worn(place: str, name: str) -> None:
    made = compiled(name)
    assert made.design is not None
    assert worn_on(made.design, made.fit) == place


def test_only_what_can_apply_is_cautioned() -> None:
    def told(name: str) -> str:
        made = compiled(name)
        advice = cautions(ENGLISH, made.result()[0], made.fit)
        assert advice is not None
        return " ".join(advice.lines)

    jacket, skirt, hat, sock = map(told, ("teasel", "curlew", "limpet", "driftline"))
    assert ["Where a baby sleeps" in told(name) for name in ("breakwater", "limpet", "teasel")] == [True, False, False]
    assert all("small parts" in words and "No loose threads" in words for words in (jacket, skirt, hat, sock))
    assert [("Nightwear" in w, "waist and hem" in w, "hood, head or neck" in w) for w in (jacket, skirt, hat, sock)] == [
        (True, False, False),
        (False, True, False),
        (False, False, False),
        (False, False, False),
    ]
    assert "Hats, gloves and scarves" in hat


def test_the_swatch_of_a_rib_is_latched_up() -> None:
    told = {name: " ".join(swatch_first(ENGLISH, compiled(name).result()[0]).lines) for name in ("tidewrack", "curlew")}
    assert ["drop its columns and latch them up" in words for words in told.values()] == [True, False]


@pytest.mark.parametrize("name", ["lapwing", "kittiwake"])
def test_a_deep_rib_is_latched_up_in_stages(name: str) -> None:
    design = compiled(name).result()[0]
    most = design.machine.stage[1]
    assert max(fabric.swatch_rows for fabric in design.fabrics if fabric.rib_every and not fabric.swatch_of) > most
    lines = swatch_first(ENGLISH, design).lines
    at = next(at for at, line in enumerate(lines) if "latched rib" in line)
    assert f"at each {most} rows of the block" in lines[at]
    assert lines[at + 1].startswith("Knit the rows of the block")


@pytest.mark.parametrize(("name", "charted"), [("hawser", True), ("barnacle", True), ("tidewrack", False)])
def test_the_swatch_of_a_chart_is_worked_by_it(name: str, charted: bool) -> None:
    lines = swatch_first(ENGLISH, compiled(name).result()[0]).lines
    assert any("work the chart over the whole block" in line for line in lines) == charted


# ----------------------------------------------------------------- the plain text


@pytest.mark.parametrize("guide", [ENGLISH, GERMAN], ids=["english", "german"])
def test_the_plain_text_has_how_it_is_read_and_what_is_done_by_hand(guide: Guide) -> None:
    made = compiled("limpet")
    sheet = sheet_of(made, guide)
    text = " ".join(text_copy(guide, sheet, pattern_of(made), made.plain_text, "cm").split())
    assert sheet.handwork
    for advice in (sheet.swatch, sheet.care, sheet.safety, *sheet.trouble):
        assert all(" ".join(line.split()) in text for line in (advice.title, *advice.lines))
    for how in sheet.handwork:
        assert all(" ".join(line.split()) in text for line in (how.title, *how.lines))
    assert guide.say("reading/bar/text") in text
    assert guide.say("reading/bar") not in text


def test_the_side_of_edges_is_said_to_be_the_bed_s() -> None:
    assert "not the wearer’s" in " ".join(sheet_of(compiled("lapwing")).reading.lines)


@pytest.mark.parametrize("guide", [ENGLISH, GERMAN], ids=["english", "german"])
@pytest.mark.parametrize(("name", "bracketed"), [("ebb", True), ("limpet", True), ("tidewrack", False), ("curlew", False)])
def test_square_brackets_are_explained_where_there_are_any(name: str, bracketed: bool, guide: Guide) -> None:
    """A round of work within another one."""
    made = compiled(name)
    assert ("[" in made.plain_text.replace("[ ]", "").replace("[1]", "")) >= bracketed
    said = guide.say("reading/brackets")
    assert (said in sheet_of(made, guide).reading.lines) == bracketed


@pytest.mark.parametrize("guide", [ENGLISH, GERMAN], ids=["english", "german"])
def test_shoulders_are_named_to_who_knits_for_them(guide: Guide) -> None:
    told = {name: sheet_of(compiled(name), guide).reading.lines for name in ("lapwing", "mooring", "ebb", "windrow")}
    ways = [
        next(key for key in ("edges", "edges/pieces", "edges/one-piece") if guide.say(f"reading/{key}") in told[n]) for n in told
    ]
    assert ways == ["edges", "edges/pieces", "edges/one-piece", "edges/one-piece"]
    assert all(
        sum(guide.say(f"reading/{key}") in lines for key in ("edges", "edges/pieces", "edges/one-piece")) == 1
        for lines in told.values()
    )
    shoulder = "shoulder" if guide is ENGLISH else "Schulter"
    assert [any(shoulder in line for line in lines) for lines in told.values()] == [True, False, False, False]
