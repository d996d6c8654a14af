"""Lines that no page end parts from those they belong to."""

from __future__ import annotations

import io
import re
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pypdf
import pytest

from walewright.sheet import html
from walewright.sheet.model import Fact, RowGroup
from walewright.sheet.render import pdf
from walewright.write.model import Paragraph, Run, Sentence

Make = Callable[..., Any]

ROW = re.compile(r'<tr class="((?:do|must)[^"]*)">.*?<td class="what"[^>]*>(.*?)</td>', re.DOTALL)


def step(number: int, text: str = "Knit on.") -> Sentence:
    return Sentence((Run(text),), (0, 1), "", "", "by hand", False, (), None, numbers=(number,))


def told(text: str, kind: str = "word") -> Sentence:
    return replace(step(1), runs=(Run(text, kind),), check=True, numbers=())  # type: ignore[arg-type]


LINES = (
    Paragraph("Knit", "", (step(1), told("At the same time:"), step(2), step(3), told("8 sts.", "check"), step(4), step(5))),
    Paragraph("Finish", "", (step(6, "Cast off."),)),
    Paragraph("Edges", "", (told("One side."), told("The other side."))),
)


def page_of(made: Any, name: str, *paragraphs: Paragraph) -> str:
    section = replace(made.instructions.sections[0], name=name, paragraphs=paragraphs)
    return html(replace(made, instructions=replace(made.instructions, sections=(section,))).sheet())


def classes(page: str) -> list[tuple[str, str]]:
    return [(re.sub(r"<[^>]+>", "", what), kinds) for kinds, what in ROW.findall(page)]


def test_what_must_be_true_in_the_end_stays_with_the_line_before_it_and_a_head_with_the_one_behind(pattern: Make) -> None:
    made = classes(page_of(pattern(2), "back", *LINES))
    assert ("8 sts.", "must closes") in made
    assert ("At the same time:", "must leads") in made
    assert re.search(r"tr\.closes[^{]*\{ break-before: avoid; \}", page_of(pattern(2), "back", *LINES))


def test_short_lines_worked_at_the_same_time_are_on_one_page_and_long_ones_may_be_parted(pattern: Make) -> None:
    def block(text: str) -> Paragraph:
        tracks = tuple(replace(step(n, f"Edge {n}: {text}"), goes_on=True) for n in (2, 3, 4))
        return Paragraph("Knit", "", (step(1), told("At the same time:"), *tracks, told("8 sts.", "check"), step(5)))

    short, long = (page_of(pattern(2), "back", block(text)) for text in ("knit on.", "knit on, " * 40))
    assert [kinds.split().count("kept") for _, kinds in classes(short)] == [0, 0, 0, 1, 1, 0, 0]
    assert [kinds.split().count("kept") for _, kinds in classes(long)] == [0] * 7
    assert all(classes(page)[1][1].split()[:2] == ["must", "leads"] for page in (short, long))
    assert re.search(r"tr\.kept[^{]*\{ break-before: avoid; \}", short)


def test_what_must_be_true_first_stays_with_its_heading(pattern: Make) -> None:
    page = page_of(pattern(2), "back", Paragraph("Knit", "", (told("8 sts.", "check"), step(1), step(2))))
    assert classes(page)[0] == ("8 sts.", "must leads first")


@pytest.mark.parametrize(("name", "first"), [("back", "do first last"), ("an edging", "do first")])
def test_a_first_line_is_not_alone_where_no_heading_follows(pattern: Make, name: str, first: str) -> None:
    """A piece has headings; the few lines of an edging have none, and are one run."""
    lines = Paragraph("Block", "", (step(1, "Pin it out."),)), Paragraph("Knit", "", (step(2), step(3)))
    page = page_of(pattern(2), name, *lines)
    assert ("<h3>Knit</h3>" in page) == (name == "back")
    assert dict(classes(page))["Pin it out."] == first


def first_page(page: str, sheet: Any, above: int) -> str:
    section = re.search(r'<section class="part[^"]*"[^>]*>.*?</section>', page, re.DOTALL)
    assert section is not None
    body = f'<body class="sizes-2"><div style="height: {above}mm"></div>{section[0]}</body></html>'
    return pypdf.PdfReader(io.BytesIO(pdf(page[: page.index("<body")] + body, sheet)[0])).pages[0].extract_text()


def test_remarks_at_the_end_stay_with_the_last_line(pattern: Make) -> None:
    made = pattern(2)
    page, sheet, parted = page_of(made, "an edging", *LINES), made.sheet(), 0
    for above in range(196, 241, 4):
        text = first_page(page, sheet, above)
        assert ("Cast off." in text) == ("One side." in text) == ("The other side." in text)
        assert ("8 sts." in text) or text.count("Knit on.") < 3
        parted += text.count("Knit on.") > 0 and "Cast off." not in text
    assert parted


def test_a_short_fact_is_kept_on_one_line() -> None:
    assert Fact("Picked up", "1 stitch to 2 rows").short
    assert not Fact("Needles", "Knit side towards you; an arrow goes up the rows of its edge").short


@pytest.mark.parametrize(("last", "kept"), [(1, 4), (3, 4), (6, 3)])
def test_no_few_rows_of_a_long_table_go_over_alone(pattern: Make, last: int, kept: int) -> None:
    """The last three go with the one before them, and so does the heading of a group that begins among them."""
    sheet = pattern(2).sheet()
    row = sheet.sizes.groups[0].rows[0]
    groups = tuple(RowGroup(title, (row,) * count) for title, count in (("Finished", 12 - last), ("Ease", last)))
    page = html(replace(sheet, sizes=replace(sheet.sizes, groups=groups)))
    table = re.search(r'<div class="whole wide tall">.*?</table>', page, re.DOTALL)
    assert table is not None
    rows = re.findall(r"<tr([^>]*)>", table[0].partition("</thead>")[2])
    assert len(rows) == 14
    assert [at for at, kinds in enumerate(rows) if "kept" in kinds] == list(range(14 - kept, 14))
    assert ".tall .sizes tr.kept { break-before: avoid; }" in page
