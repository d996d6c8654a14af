"""A garment on beds of every kind, from the source to the bed and back from the words: what each has changes its steps, the list of
what is needed and the boxes, and no more."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

import pytest

from tests.docs.blocks import pages
from tests.whole.glued_garments import SHIPPED
from walewright.bench_copies import bench_copy
from walewright.design import Changes
from walewright.guide.english import LANGUAGE as GUIDE
from walewright.knit.operations import CastOn, MoveCarriage, Operation, UseYarn
from walewright.pipeline import Outcome, compile
from walewright.sheet import ProvenPattern, compose
from walewright.sheet.model import PageOptions, Sheet
from walewright.sheet.text_copy import text_copy

PAGE = next(page for page in pages() if page.name == "beds.md").read_text(encoding="utf-8")
TABARD = re.findall(r"^```wale\n(.*?)^```$", PAGE, re.MULTILINE | re.DOTALL)[0]


@cache
def made(bed: str = "", dial: str = "", text: str = TABARD) -> Outcome:
    given = Changes(sizes=("small",), bed=bed, dials={"plain": dial} if dial else {})
    outcome = compile(text, "tern.wale", SHIPPED, given)
    assert outcome.proven, outcome.diagnostics
    return outcome


def moves(outcome: Outcome) -> Iterator[Operation]:
    for work in outcome.works:
        for block in work.blocks:
            yield from block.operations


def proven(outcome: Outcome) -> ProvenPattern:
    return ProvenPattern(*outcome.result(), outcome.fit, glued=outcome.glued)


def sheet(outcome: Outcome) -> Sheet:
    return compose(GUIDE, proven(outcome), PageOptions(paper="a4", units="cm"))


BEDS = {
    "plate": ("", ""),
    "bulky": ("bulky", "6"),
    "mid of its width": ("mid, needles=100, pitch=8 mm", "6"),
    "by hand": ("starts by hand", ""),
    "plates and a comb": ("plates=A B C, starts with comb, crosses on slip", "B"),
    "unsaid": ("bulky, crosses on hold, starts with hem", "T"),
}


@pytest.mark.parametrize("bed", BEDS)
def test_it_is_proven_on_every_bed_and_from_its_bench_copy(bed: str) -> None:
    outcome = made(*BEDS[bed])
    copy, faults = bench_copy(outcome)
    assert faults == ()
    assert copy is not None


WAYS = {
    "plate": "hold",
    "bulky": "slip",
    "mid of its width": "lift",
    "by hand": "hold",
    "plates and a comb": "slip",
    "unsaid": "hold",
}
STARTS = {
    "plate": "hem", "bulky": "comb", "mid of its width": "comb", "by hand": "e-wrap", "plates and a comb": "comb", "unsaid": "hem",
}  # fmt: skip


@pytest.mark.parametrize("bed", BEDS)
def test_the_moves_are_those_of_the_bed(bed: str) -> None:
    outcome = made(*BEDS[bed])
    past_loops = [m.way for m in moves(outcome) if isinstance(m, MoveCarriage) and m.way]
    assert past_loops
    assert set(past_loops) == {WAYS[bed]}
    assert next(m.way for m in moves(outcome) if isinstance(m, CastOn)) == STARTS[bed]
    # The passes are as many whatever it begins on.
    assert len([m for m in moves(outcome) if type(m).__name__ == "Pass"]) == len(
        [m for m in moves(made()) if type(m).__name__ == "Pass"]
    )


def test_looser_and_tighter_are_plates() -> None:
    settings = [m.tension for m in moves(made()) if isinstance(m, UseYarn) and m.yarn == "wool"]
    assert set(settings) == {"2", "3", "4"}
    settings = [
        m.tension for m in moves(made("plates=A B C, starts with comb", "B")) if isinstance(m, UseYarn) and m.yarn == "wool"
    ]
    assert set(settings) == {"A", "B", "C"}


def words(outcome: Outcome) -> str:
    """All that is printed of it, on pages and in the plain text, but for what can be given in place of the source's own."""
    page = sheet(outcome)
    boxes = " ".join(text for box in page.handwork for text in (box.title, *box.lines))
    swatch = " ".join((page.swatch.title, *page.swatch.lines))
    tensions = " ".join(f"{t.title} {t.density} {t.text}" for t in page.tensions)
    copy = text_copy(GUIDE, page, proven(outcome), outcome.plain_text, "cm").partition("To regrade")[0]
    return " ".join((copy, boxes, swatch, tensions, *page.tools, *page.reading.lines, *page.words.values()))


@pytest.mark.parametrize("bed", ["plate", "by hand", "plates and a comb"])
def test_a_bed_with_plates_has_no_dial_on_its_pages(bed: str) -> None:
    told = words(made(*BEDS[bed])).lower()
    assert "put in plate" in told
    assert "dial" not in told
    assert "at tension" not in told


@pytest.mark.parametrize("bed", ["bulky", "mid of its width", "unsaid"])
def test_a_bed_with_a_dial_has_no_plates(bed: str) -> None:
    assert "plate" not in words(made(*BEDS[bed])).replace("plates 1 2 3 4", "").replace("plate bed", "")


NEEDED = {
    "plate": ("cast-on hem", "comb"),
    "bulky": ("cast-on comb", "hem, at least"),
    "by hand": ("weights for the width", "comb"),
}


@pytest.mark.parametrize("bed", NEEDED)
def test_what_is_needed_is_what_the_bed_has(bed: str) -> None:
    there, missing = NEEDED[bed]
    tools = " ".join(sheet(made(*BEDS[bed])).tools).lower()
    assert there in tools
    assert missing not in tools


def test_the_box_explains_the_start_that_is_printed() -> None:
    titles = {bed: {box.title for box in sheet(made(*BEDS[bed])).handwork} for bed in BEDS}
    assert "Start on a hung hem" in titles["plate"] & titles["unsaid"]
    assert "Waste yarn by e-wrap" in titles["by hand"]
    assert "Start on waste yarn" in titles["bulky"] & titles["plates and a comb"]
    assert "Start on waste yarn" not in titles["plate"] | titles["by hand"]


def test_two_lengths_of_cord_lie_in_a_start_on_a_hem() -> None:
    cords = {bed: next(u for u in made(*BEDS[bed]).result()[3].sizes[0].yarn if u.kind == "ravel") for bed in ("plate", "by hand")}
    assert cords["plate"].metres == pytest.approx(2 * cords["by hand"].metres)


@pytest.mark.parametrize(
    ("told", "otherwise", "code"),
    [
        ("put in plate 4, looser", "put in plate 9, looser", "no-such-plate"),
        (", past the needles in work pulled right out, then push these back", ", set to slip", "crossing-not-there"),
        (", past the needles in work pulled right out, then push these back", "", "crossing-drops"),
        (
            "Hang the cast-on hem on the needles in work, knit 1 row with ravel cord and 7 rows in waste yarn",
            "Cast on in waste yarn with the comb and knit 8 rows",
            "no-such-start",
        ),
    ],
)
def test_words_that_the_bed_cannot_follow_are_refused(told: str, otherwise: str, code: str) -> None:
    from walewright import bed, readback
    from walewright.pipeline import bed_of
    from walewright.readback.english import LANGUAGE as READING

    outcome = made()
    text = re.sub(r"\n {2,}(?=\S)", " ", outcome.plain_text)
    assert told.lower() in text.lower()
    damaged = re.sub(re.escape(told), otherwise, text, flags=re.IGNORECASE)
    works, unread = readback.read_back_all(damaged, READING)
    assert unread == ()
    assert works is not None
    assert outcome.design is not None
    assert [fault.code for fault in bed.knit(works[0], bed_of(outcome.design)).faults][:1] == [code]
