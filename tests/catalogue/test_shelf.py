"""The shelf: well-formed, complete, without an address that leads outside, and sifted by figures that were worked out before."""

from __future__ import annotations

from html.parser import HTMLParser
from typing import Any

import pytest

from walewright.catalogue.shelf import shelf
from walewright.guide.english import LANGUAGE

VOID = {"meta", "img", "input", "link", "br"}


class Read(HTMLParser):
    """Elements with their attributes, in order; every one that was opened has to be closed."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.found: list[tuple[str, dict[str, str | None]]] = []
        self.words: list[str] = []
        self._open: list[str] = []
        self.feed(text)
        self.close()
        assert self._open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found.append((tag, dict(attrs)))
        if tag not in VOID:
            self._open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self._open.pop() == tag

    def handle_data(self, data: str) -> None:
        if self._open[-1:] not in (["style"], ["script"]):
            self.words.append(data)

    def all(self, tag: str) -> list[dict[str, str | None]]:
        return [attributes for name, attributes in self.found if name == tag]


def garment(**other: Any) -> dict[str, Any]:
    found = {
        "source": "skerry.wale",
        "language": "english",
        "title": "Skerry <& co>",
        "summary": 'A "square" top.',
        "designer": "",
        "code": "en",
        "sizes": ["S", "M", "L"],
        "for_children": False,
        "bed": {"name": "bulky", "label": "bulky bed", "needles": 100, "pitch_mm": 8.0},
        "chosen": {},
        "fits": [{"measure": "bust", "cm": {"S": 84.0, "M": 92.0, "L": 104.0}}],
        "girths": [],
        "yarn": [
            {"label": "thin", "tex": 200.0, "grams": {"S": 10, "M": 10, "L": 10}, "balls": {"S": 1, "M": 1, "L": 1}},
            {"label": "thick", "tex": 833.3, "grams": {"S": 300, "M": 320, "L": 350}, "balls": {"S": 3, "M": 4, "L": 4}},
        ],
        "techniques": [{"key": "e-wrap", "title": "E-wrap"}],
        "proof": [{"size": "S", "operations": 5, "loops": 10, "read_back": True}] * 3,
        "products": [
            {"file": "skerry-a4.pdf", "format": "pdf", "sha256": "0", "bytes": 1, "paper": "a4", "units": "cm", "pages": 7},
            {"file": "skerry.txt", "format": "text", "sha256": "0", "bytes": 1, "units": "cm"},
            {"file": "skerry.cover.svg", "format": "cover", "sha256": "0", "bytes": 1},
        ],
    }
    return found | other


def document(*garments: dict[str, Any]) -> dict[str, Any]:
    head = {"title": "Shore", "edition": "First <edition>", "date": "2026-03-01", "imprint": ["Printed & bound"]}
    return {**head, "garments": list(garments)}


OTHER = garment(
    source="ebb.wale",
    title="Ebb",
    bed={"name": "fine", "label": "fine bed", "needles": 250, "pitch_mm": 3.6},
    yarn=[{"label": "lace", "tex": None, "grams": {"one": 90}, "balls": {"one": 2}}],
    sizes=["one"],
    fits=[{"measure": "head", "cm": {"one": 56.0}}],
    techniques=[{"key": "e-wrap", "title": "E-wrap"}, {"key": "holding", "title": "Holding"}],
    for_children=True,
)


def read(*garments: dict[str, Any]) -> Read:
    return Read(shelf(document(*garments), LANGUAGE))


def test_every_garment_and_every_product_is_there() -> None:
    page = read(garment(), OTHER)
    assert [one["id"] for one in page.all("article")] == ["garment-1", "garment-2"]
    links = [one["href"] for one in page.all("a")]
    assert links == ["skerry-a4.pdf", "skerry-a4.pdf", "skerry.txt"] * 2
    assert [one["src"] for one in page.all("img")] == ["skerry.cover.svg"] * 2
    assert all(one["alt"] for one in page.all("img"))
    text = " ".join("".join(page.words).split())
    for words in ("Skerry <& co>", 'A "square" top.', "First <edition>", "Printed & bound", "7 pages", "for children"):
        assert words in text
    assert "thick: 300–350 g" in text
    assert "3 sizes proven: 30 loops knitted and read back" in text


def test_nothing_is_fetched() -> None:
    page = read(garment(), OTHER)
    for _, attributes in page.found:
        for name, value in attributes.items():
            if name in ("src", "href"):
                assert value is not None
                assert not {"/", ":"} & set(value)
    text = shelf(document(garment()), LANGUAGE)
    assert [reaching for reaching in ("http://", "https://", "url(", "@import") if reaching in text] == []
    (policy,) = (m["content"] for m in page.all("meta") if m.get("http-equiv") == "Content-Security-Policy")
    assert policy is not None
    assert policy.startswith("default-src 'none'")


def test_it_can_be_read_without_its_script() -> None:
    page = read(garment(), OTHER)
    assert all("hidden" not in one for one in page.all("article"))
    # What does nothing without the script is not shown without it.
    assert all("hidden" in one for one in page.all("form"))


@pytest.mark.parametrize(
    ("cm", "size"), [(80.5, "S"), (88, "S"), (88.1, "M"), (97.9, "M"), (98.1, "L"), (109.9, "L"), (79.9, ""), (110.1, "")]
)
def test_which_size_fits(cm: float, size: str) -> None:
    (article,) = read(garment()).all("article")
    ranges = [part.split(":") for part in (article["data-fits"] or "").split("|")]
    assert [name for name, _, _ in ranges] == ["bust"] * 3
    fitting = [s for s, (_, least, most) in zip(("S", "M", "L"), ranges, strict=True) if float(least) <= cm <= float(most)]
    assert fitting[:1] == ([size] if size else [])


def test_a_single_size_fits_what_is_near() -> None:
    (article,) = read(OTHER).all("article")
    assert article["data-fits"] == "head:53.20:58.80"


def test_what_can_be_chosen_among() -> None:
    page = read(garment(), OTHER)
    assert [one["name"] for one in page.all("select")] == ["measure", "bed", "yarn", "technique"]
    values = [one.get("value") for one in page.all("option")]
    # Two measures; what is in every garment is not offered.
    assert values == [None, None, "", "bulky", "fine", "", "", "700", "", "holding"]
    first, second = page.all("article")
    assert (first["data-yarn"], first["data-bed"], first["data-technique"]) == ("700", "bulky", "e-wrap")
    assert (second["data-yarn"], second["data-bed"], second["data-technique"]) == ("", "fine", "e-wrap holding")


def test_the_measure_of_the_most_garments_comes_first() -> None:
    page = read(OTHER, garment(), OTHER)
    text = "".join(page.words)
    assert text.index("head") < text.index("bust")


def test_of_two_languages_one_can_be_chosen() -> None:
    page = read(garment(), garment(language="german"))
    assert "language" in [one["name"] for one in page.all("select")]


@pytest.mark.parametrize(("tex", "least"), [(20.0, "0"), (149.9, "0"), (150.0, "150"), (399.0, "250"), (5000.0, "700")])
def test_classes_of_yarn(tex: float, least: str) -> None:
    yarn = [{"label": "x", "tex": tex, "grams": {"S": 1}, "balls": {"S": 1}}]
    (article,) = read(garment(yarn=yarn, sizes=["S"], fits=[])).all("article")
    assert article["data-yarn"] == least


def test_an_author_writes_no_element() -> None:
    wild = "</script><script>alert(1)</script>"
    page = read(garment(title=wild, summary=wild, designer=wild))
    assert len(page.all("script")) == 1
