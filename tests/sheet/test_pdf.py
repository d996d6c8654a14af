"""The sheet as PDF: paper, text, tags, fonts, the same bytes again, and no way out to the network."""

from __future__ import annotations

import importlib.util
import io
import os
import re
import socket
import zlib
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pypdf
import pytest
from fontTools.ttLib import TTFont

from tests.sheet.pullover import printed
from walewright.guide.english import LANGUAGE as ENGLISH
from walewright.sheet import html, pdf
from walewright.sheet.fonts import FACES, FixedFace, ShippedOnly, fixed, font_face_css, rare

Make = Callable[..., Any]


def cover(page: str, below: str = "") -> str:
    """No more of a pattern than stands on top, and what is given below it: to set all of it takes seconds."""
    above, _, _ = page.partition('<div class="contents')
    return f"{above}</header>{below}</body></html>"


@pytest.fixture(scope="module")
def booklet() -> tuple[bytes, tuple[str, ...]]:
    return printed()


@pytest.fixture(scope="module")
def read(booklet: tuple[bytes, tuple[str, ...]]) -> pypdf.PdfReader:
    return pypdf.PdfReader(io.BytesIO(booklet[0]))


def test_the_renderer_has_nothing_to_complain_of(booklet: tuple[bytes, tuple[str, ...]]) -> None:
    assert booklet[1] == ()


def test_what_the_renderer_complains_of_is_handed_back(pattern: Make) -> None:
    sheet = pattern(1).sheet()
    page = cover(html(sheet), '<img alt="" src="https://example.org/x.png">')
    _, warnings = pdf(page, sheet)
    assert any("example.org" in w for w in warnings)


def test_text(read: pypdf.PdfReader) -> None:
    text = " ".join(page.extract_text() for page in read.pages)
    for words in ("Tidewrack", "Sizes and measurements", "58 (64: 70: 76: 82: 88: 94: 100)", "How the pattern was checked"):
        assert words in text
    assert f"2 of {len(read.pages)}" in read.pages[1].extract_text()
    assert "Tidewrack" in read.pages[1].extract_text()


@pytest.mark.parametrize(
    ("paper", "size"), [("a4", (210, 297)), ("letter", (215.9, 279.4)), ("a3", (297, 420)), ("legal", (215.9, 355.6))]
)
def test_paper(pattern: Make, paper: str, size: tuple[float, float]) -> None:
    sheet = pattern(1).sheet(paper=paper)
    data, warnings = pdf(cover(html(sheet), "<p style='break-before: page'>On a page of its own.</p>"), sheet)
    assert warnings == ()
    pages = pypdf.PdfReader(io.BytesIO(data)).pages
    assert len(pages) == 2
    for page in pages:
        mm = [float(v) / 72 * 25.4 for v in page.mediabox[2:]]
        assert mm == pytest.approx(size, abs=0.1)


def elements(node: Any) -> Iterator[Any]:
    """The structure elements under a node of the tag tree."""
    kids = node.get("/K", ())
    for kid in kids if isinstance(kids, list) else [kids]:
        element = kid.get_object()
        if isinstance(element, dict) and "/S" in element:
            yield element
            yield from elements(element)


def test_it_is_tagged(read: pypdf.PdfReader, pattern: Make) -> None:
    root: Any = read.trailer["/Root"]
    assert root["/Lang"] == "en"
    assert root["/MarkInfo"]["/Marked"]
    assert "/StructTreeRoot" in root
    tags = list(elements(root["/StructTreeRoot"]))
    figures = [o for o in tags if o["/S"] == "/Figure" and str(o["/Alt"]) != ENGLISH.say("page/own-notes")]
    assert len(figures) == 3 + len(pattern(8).sheet().handwork)
    assert all(len(str(o["/Alt"])) > 20 for o in figures)
    kinds = {o["/S"] for o in tags}
    assert {"/H1", "/H2", "/H3", "/Table", "/TH", "/TD", "/P", "/L"} <= kinds


def test_metadata(read: pypdf.PdfReader) -> None:
    assert read.metadata is not None
    assert read.metadata.title == "Tidewrack"
    assert str(read.metadata.creation_date_raw).startswith("D:20251125")


def test_only_the_sheets_own_fonts_are_used_and_they_are_embedded(read: pypdf.PdfReader) -> None:
    names = set()
    for page in read.pages:
        fonts: Any = page["/Resources"].get("/Font", {})  # type: ignore[union-attr]
        for font in fonts.values():
            base = font.get_object()
            names.add(str(base["/BaseFont"]))
            descriptor = base["/DescendantFonts"][0].get_object()["/FontDescriptor"].get_object()
            assert "/FontFile2" in descriptor or "/FontFile3" in descriptor
    assert names
    assert all("Sheet-" in name for name in names), names


def test_the_same_sheet_gives_the_same_bytes(pattern: Make, monkeypatch: pytest.MonkeyPatch) -> None:
    first, _ = printed()
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1")
    sheet = pattern(8).sheet()
    second, _ = pdf(html(sheet), sheet)
    assert first == second
    assert os.environ["SOURCE_DATE_EPOCH"] == "1"


def test_what_is_on_a_page_is_compressed_once(pattern: Make, monkeypatch: pytest.MonkeyPatch) -> None:
    """The renderer would compress each page and face again, for its hash of the file."""
    made: list[int] = []
    compressing = zlib.compressobj

    def counted(*given: Any, **named: Any) -> Any:
        made.append(1)
        return compressing(*given, **named)

    monkeypatch.setattr(zlib, "compressobj", counted)
    sheet = pattern(3).sheet()
    read = pypdf.PdfReader(io.BytesIO(pdf(html(sheet), sheet)[0]))
    # No more than the list of all objects, which is hashed too, and where they lie.
    assert len(made) == 3
    assert {page["/Contents"]["/Filter"] for page in read.pages} == {"/FlateDecode"}
    assert len(read.pages[0].extract_text()) > 100


def test_an_undated_sheet_says_no_date(pattern: Make) -> None:
    sheet = pattern(1).sheet(date="")
    data, _ = pdf(cover(html(sheet)), sheet)
    metadata = pypdf.PdfReader(io.BytesIO(data)).metadata
    assert metadata is not None
    assert metadata.creation_date is None


def test_no_connection_is_made(pattern: Make, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object, **__: object) -> None:
        raise AssertionError("a connection was tried")

    monkeypatch.setattr(socket, "create_connection", refuse)
    monkeypatch.setattr(socket.socket, "connect", refuse)
    sheet = pattern(1).sheet()
    page = cover(html(sheet)).replace("</head>", '<link rel="stylesheet" href="http://127.0.0.1:9/x.css"></head>')
    _, warnings = pdf(page, sheet)
    assert any("may not fetch" in w for w in warnings)


@pytest.mark.parametrize(
    "url",
    [
        "https://example.org/font.ttf",
        "file:///etc/passwd",
        "file://example.org/etc/passwd",
        "data:text/css,body{}",
        "ftp://example.org/x",
    ],
)
def test_the_door_is_shut(url: str) -> None:
    with pytest.raises(ValueError, match="may not fetch"):
        ShippedOnly().fetch(url)


def test_the_door_lets_the_fonts_through() -> None:
    urls = [part.split('"')[0] for part in font_face_css().split('url("')[1:]]
    assert len(urls) == len(FACES)
    for url in urls:
        face = TTFont(io.BytesIO(ShippedOnly().fetch(url).read()))
        assert "glyf" in face
        # A face with axes left would be fixed again for each document, and for each size of its type.
        assert "fvar" not in face


def test_the_faces_have_the_weights_that_are_asked_for() -> None:
    for face in FACES:
        assert TTFont(io.BytesIO(fixed(face)))["OS/2"].usWeightClass == face.weight


def test_a_face_has_what_a_page_writes() -> None:
    """Latin letters always; others where they are written, as such or by number, and their capitals."""
    url = FACES[4].url

    def letters(page: str) -> set[int]:
        return set(TTFont(io.BytesIO(ShippedOnly(page).fetch(url).read())).getBestCmap())

    assert {ord(letter) for letter in "azAZ09\u00e4\u00df\u0153\u2010\u2013\u2022\u2007\u25a1\u2212"} <= letters("")
    assert not {ord(letter) for letter in "\u03c9\u0436"} & letters("")
    assert {ord(letter) for letter in "\u03c9\u03a9\u0436\u0416\u25a1"} <= letters(
        "<p>\u03c9\u25a1</p><style>a::after { content: '\\436 ' }</style>"
    )
    assert letters("<style>a::after { content: '\\ffffff' }</style>") == letters("")


def test_a_printed_garment_has_no_rare_letters(pattern: Make) -> None:
    """Its faces are those that were kept."""
    assert rare(html(pattern(3).sheet())) == ""


def test_a_face_is_made_once_for_all_pages(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """But for the letters of one page, which no other may have."""
    monkeypatch.setattr("walewright.world.shipped.compiled_beside", lambda _: tmp_path)
    made: list[str] = []
    monkeypatch.setattr("walewright.sheet.fonts._made", lambda face, path, rare: made.append(rare) or b"face" + rare.encode())
    anew = fixed.__wrapped__
    assert [anew(FACES[0]), anew(FACES[0]), anew(FACES[1]), anew(FACES[0], "\u0416")] == [
        b"face",
        b"face",
        b"face",
        "face\u0416".encode(),
    ]
    assert made == ["", "", "\u0416"]
    assert len(list(tmp_path.iterdir())) == 2
    next(tmp_path.iterdir()).write_bytes(b"half of it")
    assert {anew(FACES[0]), anew(FACES[1])} == {b"face"}
    assert made == ["", "", "\u0416", ""]


@pytest.mark.parametrize("face", FACES, ids=lambda face: face.url)
def test_a_face_keeps_the_other_forms_of_its_letters(face: FixedFace) -> None:
    """Such as figures of one width, which tables are set in."""
    (spec,) = importlib.util.find_spec(face.package).submodule_search_locations  # type: ignore[union-attr]
    whole, cut = TTFont(Path(spec) / "files" / face.file), TTFont(io.BytesIO(fixed(face)))
    tags = [{record.FeatureTag for record in font["GSUB"].table.FeatureList.FeatureRecord} for font in (whole, cut)]
    wanted = {"aalt", "case", "dnom", "frac", "lnum", "numr", "onum", "pnum", "sups", "tnum", "zero"}
    assert tags[1] & wanted == tags[0] & wanted >= {"onum", "pnum"}


@pytest.mark.parametrize("above", range(170, 235, 5))
def test_no_page_ends_between_a_heading_and_what_it_heads(pattern: Make, above: int) -> None:
    """A band's section below so many mm of something else: its heading and its facts go with its first step."""
    sheet = pattern(1).sheet()
    page = html(sheet)
    sections = re.findall(r'<section class="part[^"]*"[^>]*>.*?</section>', page, re.DOTALL)
    section = next(s for s in sections if "<figure" not in s and 'class="by-hand"' in s and "facts" in s)
    spaced = f'{page[: page.index("<body")]}<body class="sizes-1"><div style="height: {above}mm"></div>{section}</body></html>'
    title = re.search(r"<h2>(.*?)</h2>", section)
    assert title is not None
    data, _ = pdf(spaced, sheet)
    first = pypdf.PdfReader(io.BytesIO(data)).pages[0].extract_text()
    assert (title[1] in first) == ("Done" in first)
    assert not first.rstrip().endswith(("Step", "RC", "Carriage"))
