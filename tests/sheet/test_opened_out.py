"""Where the list of a making-up drawing stands, and tables whose measures are equal in all sizes."""

from __future__ import annotations

import io
import re
from functools import cache
from math import ceil
from pathlib import Path

import pypdf
import pytest
import weasyprint

from tests.figures.test_bent import glued
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.cli.formats.format import Pattern
from walewright.cli.options import Wanted
from walewright.figures.making_up import making_up
from walewright.sheet import render
from walewright.sheet.joins import _placed
from walewright.sheet.model import JoinsPicture

GUIDE = Wanted({}, (), language="english").guide
LIST_MM, LINE_MM = 180.0, 4.9
"""A page's width, and the height of a line of 10 pt type (`sheet/themes/booklet.css`)."""


@cache
def printed(name: str) -> Pattern:
    return Pattern(compiled(name), GUIDE, "a4", "cm", "", "2026-01-02")


def pictures(name: str) -> list[JoinsPicture]:
    return [picture for part in printed(name).sheet.parts for picture in part.joins]


@pytest.mark.parametrize("name", GARMENTS)
def test_no_list_is_much_higher_than_the_drawing_beside_it(name: str) -> None:
    for picture in pictures(name):
        if picture.columns:
            continue
        scale, height = picture.drawing.scale, picture.drawing.height
        width = picture.drawing.width
        room = LIST_MM - 6 - width * scale
        lines = sum(ceil(len(what) * 1.7 / (room - 8)) for _, what in picture.numbers) + ceil(len(picture.reading) * 1.7 / room)
        assert lines * LINE_MM <= height * scale * 1.2


def test_a_drawing_is_as_high_as_a_long_list_beside_it() -> None:
    garment = glued("kittiwake")
    made = making_up(GUIDE, garment)
    assert made is not None
    numbers = tuple((str(number), "Back to front, sewn") for number in range(1, 13))
    picture = _placed(GUIDE, garment, JoinsPicture(made.drawing, "", "Join them in their order:", numbers))
    high = picture.drawing.height * picture.drawing.scale
    assert not picture.columns
    assert high > 65, "a page's drawing is 61 mm high beside a short list"
    assert high <= (len(numbers) + 1) * 5.4


@pytest.mark.parametrize("name", ["kittiwake", "fairlead"])
def test_a_drawing_is_printed_as_wide_as_it_is(name: str) -> None:
    (picture,) = pictures(name)
    assert f"--wide: {round(picture.drawing.width * picture.drawing.scale, 2)}mm" in printed(name).page


@pytest.mark.parametrize("name", ["sanderling", "greylag"])
def test_pieces_end_to_end_lie_across_the_page(name: str) -> None:
    (picture,) = pictures(name)
    assert picture.columns in (2, 3)
    assert picture.drawing.width > 180
    page = printed(name).page
    (block,) = re.findall(
        r'<div class="opened-out">(.*?)</svg>(.*?)<p class="by-hand"|<div class="opened-out">(.*?)<table', page, re.DOTALL
    )
    whole = "".join(block)
    assert f'<div class="joined abreast of-{picture.columns}">' in whole
    assert whole.count("<li>") == len(picture.numbers)


def test_a_block_is_parted_by_no_page_end() -> None:
    assert re.search(r"\.opened-out \{[^}]*break-inside: avoid", printed("greylag").page)


def test_the_drawing_is_on_the_page_where_its_steps_begin() -> None:
    """What stands between the drawing and the steps is kept with both."""
    css = (Path(render.__file__).parent / "themes/booklet.css").read_text("utf-8")
    kept = {
        one.strip()
        for names, rule in re.findall(r"^([^@{}\n]+)\{([^}]*)\}", css, re.MULTILINE)
        if "break-after: avoid" in rule
        for one in names.split(",")
    }
    assert kept >= {".opened-out", ".opened-out ~ .small", ".opened-out ~ .graded", ".opened-out ~ .by-hand"}
    breaks = "".join(re.findall(r"^[.h][^@{}\n]*\{[^}]*break-[^}]*\}\n", css, re.MULTILINE))
    steps = "".join(f"<tr><td>Join {n}.</td></tr>" for n in range(1, 9))
    for high in (880, 900, 920):
        text = f"""<style>@page {{ size: 800px 1000px; margin: 0 }} p, h2 {{ margin: 0; font: 20px/25px Arial }} {breaks}</style>
            <div style="height: {high}px"></div><section class="part"><div class="head"><h2>Making up</h2></div>
            <div class="opened-out">Opened out</div><p class="by-hand">Sewing</p><table class="steps">{steps}</table></section>"""
        read = pypdf.PdfReader(io.BytesIO(weasyprint.HTML(string=text).write_pdf() or b""))
        (page,) = (text for page in read.pages if "Opened out" in (text := page.extract_text()))
        assert "Join 1." in page


@pytest.mark.parametrize(("name", "ahead"), [("marram", True), ("greylag", False), ("sanderling", False)])
def test_only_before_a_page_of_steps_it_may_be_on_the_page_before(name: str, ahead: bool) -> None:
    assert ('class="opened-out ahead"' in printed(name).page) == ahead
    assert re.search(r"\.opened-out\.ahead \{[^}]*break-after: auto", printed(name).page)


def tables(name: str) -> list[str]:
    return re.findall(r'<table class="sizes legend.*?</table>', printed(name).page, re.DOTALL)


def test_measures_that_are_all_equal_have_no_head_over_them() -> None:
    bare = [table for table in tables("peatbank") if "<thead>" not in table]
    assert bare
    for table in bare:
        assert table.count("<tr") == table.count('<tr class="alike">') == 1


@pytest.mark.parametrize("name", ["sanderling", "plover", "shoal", "peatbank"])
def test_what_is_equal_in_all_sizes_is_never_a_row(name: str) -> None:
    rows = [re.findall(r"<td>(.*?)</td>", row) for table in tables(name) for row in re.findall(r"<tr>(.*?)</tr>", table, re.DOTALL)]
    graded = [row for row in rows if len(row) > 1]
    assert graded
    assert not [row for row in graded if len(set(row)) == 1]


@pytest.mark.parametrize("name", ["kittiwake", "turnstone", "hawser"])
def test_a_number_that_comes_before_its_drawing_says_where_that_is(name: str) -> None:
    parts = printed(name).sheet.parts
    (drawn,) = (at for at, part in enumerate(parts) if part.joins)
    numbered = {at for at, part in enumerate(parts) if any(line.joint for stage in part.stages for line in stage.lines)}
    ahead = {at for at in numbered if at < drawn}
    assert bool(ahead) == (name != "hawser")
    assert {at: part.drawn for at, part in enumerate(parts) if part.drawn} == dict.fromkeys(ahead, parts[drawn].anchor)
    # Once in a section, in the block that its heading is in.
    said = f'<a class="drawn" href="#{parts[drawn].anchor}">Numbered as in the drawing, p.'
    assert printed(name).page.count(said) == len(ahead)
    heads = re.findall(r'<div class="head">.*?</div>', printed(name).page, re.DOTALL)
    assert sum(said in head for head in heads) == len(ahead)
    assert re.search(r"\.part \.head \{[^}]*break-after: avoid", printed(name).page)
