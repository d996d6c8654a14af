"""The sheet as HTML: everything is on it, and an author's words stay words."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from html.parser import HTMLParser
from typing import Any

import pytest

from walewright.sheet import html
from walewright.sheet.model import JoinsPicture
from walewright.world import package_text

Make = Callable[..., Any]


class Words(HTMLParser):
    """The visible words, and the tags with their attributes."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self._text: list[str] = []
        self._hidden = 0
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))
        self._hidden += tag == "style"

    def handle_endtag(self, tag: str) -> None:
        self._hidden -= tag == "style"

    def handle_data(self, data: str) -> None:
        if not self._hidden:
            self._text.append(data)

    @property
    def text(self) -> str:
        return re.sub(r"\s+", " ", " ".join(self._text))


def test_every_word_of_the_instructions_is_on_the_page(pattern: Make) -> None:
    made = pattern(3)
    text = re.sub(r"\W", "", Words(html(made.sheet())).text)
    for section in made.instructions.sections:
        for paragraph in section.paragraphs:
            for sentence in paragraph.sentences:
                assert re.sub(r"\W", "", sentence.text) in text


@pytest.mark.parametrize(
    "words",
    [
        "Drop-shoulder pullover",
        "First garment",
        "To fit",
        "Finished",
        "All round, below the armholes",
        "13.0 stitches and 18.5 rows to 10 cm",
        "row counter",
        "Sleeves (knit 2)",
        "Block the pieces",
        "The carriage jams",
        "clamps are firm",
        "read back by a reader of their own",
        "published chart of women’s sizes",
        "The welts are knitted downwards",
        "with 8 % for ends",
    ],
)
def test_the_page_says(pattern: Make, words: str) -> None:
    assert words in Words(html(pattern(3).sheet())).text.replace(" stitches", " stitches")


def test_an_authors_words_are_never_code(pattern: Make) -> None:
    evil = '<script>alert(1)</script>{{ 7 * 7 }}<img src="https://example.org/x.png">'
    made = pattern(2, title=evil, story=evil)
    page = html(made.sheet())
    found = Words(page)
    assert not {tag for tag, _ in found.tags} & {"script", "img", "iframe", "link", "object"}
    assert evil in found.text
    assert "49" not in re.findall(r"</script>\S*", page)


def test_nothing_on_the_page_points_outside_it(pattern: Make) -> None:
    page = html(pattern(8).sheet())
    for tag, attributes in Words(page).tags:
        for name in ("src", "href", "data", "action"):
            assert (attributes.get(name) or "#").startswith("#"), (tag, attributes)
    assert all(url.startswith("data:image/svg+xml,") for url in re.findall(r'url\("?([^")]+)', page))


def test_every_link_has_its_place(pattern: Make) -> None:
    found = Words(html(pattern(3).sheet()))
    places = {a["id"] for _, a in found.tags if "id" in a}
    links = [str(a["href"])[1:] for tag, a in found.tags if tag == "a"]
    assert links
    assert set(links) <= places


def test_drawings_are_named_for_those_who_cannot_see_them(pattern: Make) -> None:
    sheet = pattern(3).sheet()
    page = re.sub(r'<svg class="own-notes".*?</svg></svg>', "", html(sheet))
    drawings = re.findall(r"<svg[^>]*>\s*<title>([^<]+)</title>", page)
    assert len(drawings) == page.count('role="img"') == 3 + len(sheet.handwork), "back and front are one"
    assert drawings[1 + len(sheet.handwork)].startswith(
        "Schematic of the back in size S: width at hem 49.5 centimetres, 64 stitches; "
    )


def test_a_line_has_a_box_for_each_copy_and_none_for_a_check(pattern: Make) -> None:
    sheet = pattern(3).sheet()
    sleeve = next(p for p in sheet.parts if p.title.startswith("Sleeves"))
    assert [line.boxes for line in sleeve.stages[0].lines] == [2, 0, 2]


def test_lines_for_some_sizes_name_them(pattern: Make) -> None:
    sheet = pattern(8).sheet()
    lines = [line for stage in sheet.parts[0].stages for line in stage.lines]
    assert "XS, S" in {line.sizes for line in lines}
    assert "A dash in the brackets" in " ".join(sheet.reading.lines)


def test_a_single_size_has_no_brackets(pattern: Make) -> None:
    sheet = pattern(1).sheet()
    assert sheet.example == ""
    assert not any("brackets" in line for line in sheet.reading.lines)
    assert len(sheet.sizes.sizes) == 1


@pytest.mark.parametrize(("units", "figure"), [("cm", "44.5"), ("in", "17½")])
def test_units(pattern: Make, units: str, figure: str) -> None:
    found = Words(html(pattern(8).sheet(units=units)))
    assert figure in found.text


def test_both_units_stand_together(pattern: Make) -> None:
    sheet = pattern(8).sheet(units="both")
    legend = sheet.parts[0].legend
    assert legend is not None
    first = legend.groups[0].rows[0].cells[0]
    assert (first.text, first.under) == ("44.5", "17½″")


def test_words_not_read_back_are_owned_up_to(pattern: Make) -> None:
    from dataclasses import replace

    made = pattern(2)
    unread = replace(made.proof, sizes=(replace(made.proof.sizes[0], read_back=False), made.proof.sizes[1]))
    text = Words(html(replace(made, proof=unread).sheet())).text
    assert "were not read back for: XS." in text
    assert "second reader" not in text


def test_what_must_be_true_keeps_its_stop_and_a_needle_its_number(pattern: Make) -> None:
    from dataclasses import replace

    from walewright.write.model import Paragraph, Run, Sentence

    runs = (
        Run("Bring needles "),
        Run("L 29 (L 32)", "needle"),
        Run(" to work. "),
        Run("58 (64) sts, COR", "check"),
        Run(". Go on."),
    )
    made = pattern(2)
    first = made.instructions.sections[0]
    lines = (Sentence(runs, (0, 1), "", "", "by hand", False),)
    section = replace(first, paragraphs=(Paragraph("", "", lines),))
    sheet = replace(made, instructions=replace(made.instructions, sections=(section,))).sheet()
    pieces = [(p.text, p.kind) for p in sheet.parts[0].stages[0].lines[0].pieces]
    assert pieces == [
        ("Bring needles", "word"),
        (" L\N{NO-BREAK SPACE}29 (L\N{NO-BREAK SPACE}32)", "needle"),
        (" to work.", "word"),
        ("58 (64) sts, COR.", "check"),
        ("Go on.", "word"),
    ]


def test_one_size_is_set_in_two_columns_but_for_the_pieces_opened_out(pattern: Make) -> None:
    sheet = pattern(1).sheet()
    opened = JoinsPicture(sheet.cover, "", "Opened out.", ())
    wide = replace(sheet, charts=(), parts=(*sheet.parts[:-1], replace(sheet.parts[-1], joins=(opened,))))
    assert [(stretch.narrow, len(stretch.parts)) for stretch in wide.stretches] == [(True, len(wide.parts) - 1), (False, 1)]
    page = html(wide)
    before, making_up = page.split(f'id="{wide.parts[-1].anchor}"')
    assert before.count('<div class="flow">') == 1
    # What stands at the end is parted here, not by the renderer.
    assert '<div class="flow">' not in making_up
    assert making_up.count('<div class="flow halves">') == 1
    for several in (pattern(2).sheet(), pattern(1).sheet(large_print=True)):
        assert not several.narrow
        assert '<div class="flow' not in html(several)


def test_seams_have_no_counter_column(pattern: Make) -> None:
    sheet = pattern(1).sheet(large_print=True)
    assert [part.counted for part in sheet.parts][:: len(sheet.parts) - 1] == [True, False]
    # Set in two columns, the lines of one size say their counter themselves.
    assert not any(part.counted for part in pattern(1).sheet().parts)
    assert not any(part.counted for part in pattern(2).sheet().parts)
    making_up = html(sheet).split('id="part-joining-1"')[1].split("</section>")[0]
    assert 'class="rc"' not in making_up


def test_large_print_is_set_over_the_rest_and_ordinary_print_is_not(pattern: Make) -> None:
    made, large = pattern(1).sheet(), package_text("sheet/themes/large.css").strip()
    assert large in html(made, large_print=True)
    assert large not in html(made)
