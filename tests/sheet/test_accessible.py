"""The PDF against PDF/UA-1 (ISO 14289-1).

Once by an independent checker of the standard's machine-checkable rules, and once by our own, which name the checkpoints of
the Matterhorn Protocol 1.1 (PDF Association, 2021) that they answer.
"""

from __future__ import annotations

import io
import re
from collections.abc import Callable, Iterator
from itertools import pairwise
from typing import Any

import page as checker
import pypdf
import pytest
from pypdf.generic import ContentStream

from tests.sheet.pullover import printed
from walewright.guide.english import LANGUAGE as ENGLISH

Make = Callable[..., Any]


@pytest.fixture(scope="module")
def data() -> bytes:
    return printed()[0]


@pytest.fixture(scope="module")
def read(data: bytes) -> pypdf.PdfReader:
    return pypdf.PdfReader(io.BytesIO(data))


@pytest.fixture(scope="module")
def root(read: pypdf.PdfReader) -> Any:
    return read.trailer["/Root"]


def kids(element: Any) -> list[Any]:
    """The structure elements right below one; marked content and object references left out."""
    found = element.get("/K", [])
    items = [k.get_object() for k in (found if isinstance(found, list) else [found])]
    return [k for k in items if isinstance(k, dict) and "/S" in k]


def below(element: Any) -> Iterator[Any]:
    for kid in kids(element):
        yield kid
        yield from below(kid)


def of_kind(root: Any, *kinds: str) -> list[Any]:
    return [e for e in below(root["/StructTreeRoot"]) if e["/S"] in kinds]


@pytest.mark.parametrize(("count", "paper", "units"), [(8, "a4", "cm"), (1, "letter", "in"), (3, "a4", "both")])
def test_an_independent_checker_finds_nothing(count: int, paper: str, units: str) -> None:
    report = checker.validate_pdf_bytes(printed(count, paper, units)[0], profile=checker.ValidationProfile.PDF_UA_1)
    assert [f"{f.rule_id}: {f.message}" for f in report.failures] == []
    assert report.is_compliant
    assert report.rules.total > 100


def test_the_independent_checker_can_find_something(data: bytes) -> None:
    writer = pypdf.PdfWriter(clone_from=io.BytesIO(data))
    for element in of_kind(writer.root_object, "/Figure"):
        del element["/Alt"]
    spoilt = io.BytesIO()
    writer.write(spoilt)
    report = checker.validate_pdf_bytes(spoilt.getvalue(), profile=checker.ValidationProfile.PDF_UA_1)
    assert [f for f in report.failures if "FIGURE" in f.rule_id]


def test_title_language_and_tags_are_declared(root: Any, read: pypdf.PdfReader) -> None:
    # 06-003: a title in the metadata; 06-002: the metadata claim PDF/UA.
    xmp = root["/Metadata"].get_object().get_data().decode()
    assert "<dc:title>" in xmp
    assert "Tidewrack" in xmp
    assert re.search(r"pdfuaid:part[>=\"]+1", xmp)
    # 07-001, 07-002: viewers show the title.
    assert root["/ViewerPreferences"]["/DisplayDocTitle"]
    # 11-006: the language is declared; 01-005 and following rest on the document being marked.
    assert root["/Lang"] == "en"
    assert root["/MarkInfo"]["/Marked"]
    # 28-009: tab order follows the structure.
    assert all(p.get("/Tabs") == "/S" for p in read.pages if p.get("/Annots"))


def test_figures_say_what_they_show(root: Any, pattern: Make) -> None:
    # 13-004: alternative text.
    every = of_kind(root, "/Figure")
    # Ruled space for notes says what it is for.
    figures = [f for f in every if str(f["/Alt"]) != ENGLISH.say("page/own-notes")]
    assert len(every) - len(figures) <= 1
    # The cover, back and front on one drawing, the sleeve.
    assert len(figures) == 3 + len(pattern(8).sheet().handwork)
    assert all(len(str(f["/Alt"])) > 40 for f in figures)


def test_headings_go_down_step_by_step(root: Any) -> None:
    # 14-002, 14-003: the first is H1, and none skips a level.
    levels = [int(e["/S"][2:]) for e in below(root["/StructTreeRoot"]) if re.fullmatch(r"/H\d", e["/S"])]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(after - before <= 1 for before, after in pairwise(levels))


def test_every_header_cell_has_its_scope(root: Any) -> None:
    # 15-003.
    heads = of_kind(root, "/TH")
    assert {h["/A"]["/Scope"] for h in heads} == {"/Row", "/Column"}
    for table in of_kind(root, "/Table"):
        rows = [e for e in below(table) if e["/S"] == "/TR"]
        assert any(k["/S"] == "/TH" for k in kids(rows[0]))


def test_lists_hold_items_and_nothing_else(root: Any) -> None:
    # 16-001 to 16-003.
    for of in of_kind(root, "/L"):
        assert {k["/S"] for k in kids(of)} <= {"/LI", "/L", "/Caption"}
    inside = sum(1 for of in of_kind(root, "/L") for k in kids(of) if k["/S"] == "/LI")
    assert inside == len(of_kind(root, "/LI")) > 20
    for item in of_kind(root, "/LI"):
        assert {k["/S"] for k in kids(item)} <= {"/Lbl", "/LBody"}


def test_tables_are_regular(root: Any) -> None:
    # 09-004: tables hold rows, rows hold cells.
    for row in of_kind(root, "/TR"):
        assert {k["/S"] for k in kids(row)} <= {"/TH", "/TD"}
        assert row["/P"].get_object()["/S"] in ("/Table", "/THead", "/TBody", "/TFoot")


def test_all_content_is_tagged_or_an_artifact(root: Any, read: pypdf.PdfReader) -> None:
    # 01-003, 01-005: nothing is painted outside; 18-001 to 18-003: what stands in the margins is a pagination artifact.
    painting = {b"Tj", b"TJ", b"'", b'"', b"f", b"f*", b"S", b"s", b"B", b"b", b"Do", b"sh"}
    held = {id_of(k) for e in below(root["/StructTreeRoot"]) for k in marked(e)}
    margins = 0
    for number, page in enumerate(read.pages):
        open_: list[str] = []
        for operands, operator in ContentStream(page.get_contents(), read).operations:
            if operator in (b"BDC", b"BMC"):
                properties = operands[1] if operator == b"BDC" else {}
                if operands[0] == "/Artifact":
                    open_.append("artifact")
                    margins += properties.get("/Type") == "/Pagination"
                else:
                    assert (number, properties["/MCID"]) in held
                    open_.append("tagged")
            elif operator == b"EMC":
                open_.pop()
            elif operator in painting:
                assert open_, f"{operator!r} on page {number + 1}"
        assert not open_
    # A title, a section and a page number on every page but the cover.
    assert margins >= 2 * (len(read.pages) - 1)
    assert not [e for e in below(root["/StructTreeRoot"]) if e["/S"] == "/Artifact"]


def marked(element: Any) -> list[tuple[Any, int]]:
    found = element.get("/K", [])
    return [(element, int(k)) for k in (found if isinstance(found, list) else [found]) if isinstance(k, int)]


def id_of(item: tuple[Any, int]) -> tuple[int, int]:
    """(page, number of the content): pages are numbered in the parent tree as they come."""
    element, mcid = item
    return int(element["/Pg"].get_object()["/StructParents"]), mcid


def test_links_are_tagged_described_and_printed(root: Any, read: pypdf.PdfReader) -> None:
    # 28-011, 28-012: Link elements and descriptions; 28-002.
    links = [a.get_object() for p in read.pages for a in p.get("/Annots", [])]
    assert links
    assert all(a["/Subtype"] == "/Link" and a["/Contents"] and int(a["/F"]) & 4 for a in links)
    assert len(of_kind(root, "/Link")) == len(links)


def test_fonts_are_embedded_and_map_to_unicode(read: pypdf.PdfReader) -> None:
    # 31-009: embedded; 10-001: characters have Unicode values.
    fonts = {ref.idnum: ref.get_object() for p in read.pages for ref in p["/Resources"]["/Font"].values()}  # type: ignore[index, union-attr]
    assert fonts
    for font in fonts.values():
        assert "/ToUnicode" in font
        descriptor = font["/DescendantFonts"][0].get_object()["/FontDescriptor"].get_object()
        assert {"/FontFile2", "/FontFile3"} & set(descriptor)
