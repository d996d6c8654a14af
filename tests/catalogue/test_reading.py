"""What a catalogue says, and what is said of one that does not: several mistakes at once, each at its place to the letter."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from dataclasses import replace

import pytest

from walewright import catalogue
from walewright.catalogue.model import Catalogue, FormatFacts, Nameable
from walewright.catalogue.patterns import matches
from walewright.catalogue.settings import filled
from walewright.report.english import in_english
from walewright.report.model import Diagnostic

PAGES = frozenset({"paper", "units", "theme", "print"})
KNOWN = Nameable(
    ("bag.wale", "panel.wale", "socks/ebb.wale", "socks/panel.wale"),
    ("english", "german"),
    ("a4", "letter"),
    ("cm", "in", "both"),
    {
        "pdf": FormatFacts(".pdf", PAGES),
        "text": FormatFacts(".txt", frozenset({"units"})),
        "plan": FormatFacts(".plan.json", frozenset()),
        "html": FormatFacts(".html", PAGES),
        "cover": FormatFacts(".cover.svg", frozenset()),
    },
    ("pdf", "text"),
)
HEAD = 'title = "Shore"\ndate = 2026-03-01\n'


def read(text: str) -> Catalogue:
    found, faults = catalogue.read("shore.toml", text, KNOWN)
    assert found is not None, [in_english(fault).message for fault in faults]
    assert faults == ()
    return found


def wrong(text: str) -> tuple[Diagnostic, ...]:
    found, faults = catalogue.read("shore.toml", text, KNOWN)
    assert found is None
    return faults


def told(text: str) -> list[tuple[str, str]]:
    """(code/case, what stands at the place) of each mistake."""
    kinds = []
    for fault in wrong(text):
        span = fault.labels[0].span
        assert span.file == "shore.toml"
        assert fault.helps, fault
        # Every one has its words.
        in_english(fault)
        kinds.append((f"{fault.code}/{fault.case}", text[span.start : span.end]))
    return kinds


def files(of: Catalogue) -> list[str]:
    return [product.file for making in of.makings for product in making.products]


def test_the_least_that_a_catalogue_says() -> None:
    found = read(HEAD + '[[garments]]\nsources = ["panel.wale"]\n')
    assert (found.title, found.edition, found.date, found.imprint) == ("Shore", "", datetime.date(2026, 3, 1), ())
    (making,) = found.makings
    assert (making.source, making.language, making.sizes, making.choices) == ("panel.wale", "english", (), ())
    assert [(p.file, p.paper, p.units, p.theme, p.print) for p in making.products] == [
        ("panel.pdf", "a4", "cm", "house", "usual"),
        ("panel.txt", "", "cm", "", ""),
        ("panel.cover.svg", "", "", "", ""),
    ]


def test_products_are_called_by_what_there_are_several_of() -> None:
    text = '[usual]\npapers = ["a4", "letter"]\nlanguages = ["english", "german"]\n[[garments]]\nsources = ["bag.wale"]\n'
    assert files(read(HEAD + text)) == [
        *("bag-english-a4.pdf", "bag-english-letter.pdf", "bag-english.txt", "bag-english.cover.svg"),
        *("bag-german-a4.pdf", "bag-german-letter.pdf", "bag-german.txt", "bag-german.cover.svg"),
    ]


def test_an_exception_wins_over_its_garments_and_these_over_what_is_usual() -> None:
    text = (
        '[usual]\nunits = ["in"]\nformats = ["text"]\n[[garments]]\nsources = ["*.wale"]\nunits = ["cm"]\n'
        '[[exceptions]]\nsources = ["bag.wale"]\nunits = ["both"]\n[[exceptions]]\nsources = ["b*.wale"]\nprints = ["large"]\n'
    )
    found = read(HEAD + text)
    assert {m.source: m.products[0].units for m in found.makings} == {"bag.wale": "both", "panel.wale": "cm"}


def test_sources_are_left_out_and_named_in_folders() -> None:
    text = '[[garments]]\nsources = ["**/*.wale"]\nwithout = ["socks/panel.wale"]\n'
    assert [m.source for m in read(HEAD + text).makings] == ["bag.wale", "panel.wale", "socks/ebb.wale"]


def test_one_source_twice_is_made_once_in_all_its_forms() -> None:
    text = '[[garments]]\nsources = ["bag.wale"]\n[[garments]]\nsources = ["bag.wale"]\npapers = ["letter"]\nname = "us_{source}"\n'
    (making,) = read(HEAD + text).makings
    assert [p.file for p in making.products] == [
        "bag.pdf",
        "bag.txt",
        "bag.cover.svg",
        "us_bag.pdf",
        "us_bag.txt",
        "us_bag.cover.svg",
    ]


def test_other_choices_are_another_making() -> None:
    text = (
        '[[garments]]\nsources = ["bag.wale"]\n[[garments]]\nsources = ["bag.wale"]\nchoices = {strap = "long"}\nsizes = ["S"]\n'
        'formats = ["plan"]\n'
    )
    first, second = read(HEAD + text).makings
    assert (first.choices, second.choices, second.sizes) == ((), (("strap", "long"),), ("S",))
    assert [p.file for p in second.products] == ["bag-long.plan.json", "bag-long.cover.svg"]
    whole = HEAD + text
    span = second.places["choose"]
    assert whole[span.start : span.end] == '{strap = "long"}'


def test_an_alternative_makes_no_path_of_a_name() -> None:
    text = '[[garments]]\nsources = ["bag.wale"]\nchoices = {strap = "../long one"}\n'
    assert all("/" not in name and " " not in name for name in files(read(HEAD + text)))


GARMENTS = '[[garments]]\nsources = ["bag.wale"]\n'
SLIPS = [
    ("titel = 'x'\n" + HEAD + GARMENTS, [("unknown", "titel")]),
    (HEAD + GARMENTS + 'paper = ["a4"]\n', [("unknown", "paper")]),
    (HEAD + '[usual]\nsources = ["bag.wale"]\n' + GARMENTS, [("unknown", "sources")]),
    (HEAD + "usual = 3\n" + GARMENTS, [("no-table", "3")]),
    (HEAD + 'garments = ["bag.wale"]\n', [("no-tables", '["bag.wale"]')]),
    ('title = ""\ndate = 2026-03-01\n' + GARMENTS, [("no-text", '""')]),
    ("title = 3\ndate = 2026-03-01\n" + GARMENTS, [("no-text", "3")]),
    (HEAD + 'imprint = ["one", 2]\n' + GARMENTS, [("no-text", "2")]),
    (HEAD + f"imprint = {['x'] * 7}\n" + GARMENTS, [("no-list", str(["x"] * 7))]),
    ('title = "x"\ndate = "today"\n' + GARMENTS, [("no-date", '"today"')]),
    ('title = "x"\ndate = 2026-03-01T10:00:00\n' + GARMENTS, [("no-date", "2026-03-01T10:00:00")]),
    ("date = 2026-03-01\n" + GARMENTS, [("lacking-title", "")]),
    ('title = "x"\n' + GARMENTS, [("lacking-date", "")]),
    (HEAD, [("lacking-garments", "")]),
    (HEAD + "[[garments]]\nsizes = ['S']\n", [("no-sources", "[[garments]]")]),
    (HEAD + GARMENTS + 'papers = ["a4", "A5"]\n', [("not-one-of", '"A5"')]),
    (HEAD + GARMENTS + "papers = [4]\n", [("not-one-of", "4")]),
    (HEAD + GARMENTS + "papers = []\n", [("no-list", "[]")]),
    (HEAD + GARMENTS + 'themes = ["harbour"]\n', [("not-one-of", '"harbour"')]),
    (HEAD + GARMENTS + 'papers = ["a4", "a4"]\n', [("twice", '"a4"')]),
    (HEAD + '[themes]\nhouse = "a.css"\n' + GARMENTS, [("theme-name", "house")]),
    (HEAD + '[themes]\n"a b" = "a.css"\n' + GARMENTS, [("theme-name", '"a b"')]),
    (HEAD + '[[garments]]\nsources = ["bag.wale", "pannel.wale"]\n', [("no-match", '"pannel.wale"')]),
    (HEAD + '[[garments]]\nsources = ["*.wale"]\nwithout = ["x*"]\n', [("no-match", '"x*"')]),
    (HEAD + '[[exceptions]]\nsources = ["bags.wale"]\n' + GARMENTS, [("no-match", '"bags.wale"')]),
    (HEAD + GARMENTS + 'name = "{source}-{size}"\n', [("no-place", '"{source}-{size}"')]),
    (HEAD + GARMENTS + 'name = "../{source}"\n', [("name", '"../{source}"')]),
    (HEAD + GARMENTS + 'name = "all"\n', [("name", '"all"')]),
    (HEAD + GARMENTS + "choices = {strap = 3}\n", [("no-text", "3")]),
    (HEAD + GARMENTS + 'choices = "short"\n', [("no-table", '"short"')]),
]


@pytest.mark.parametrize(("text", "found"), SLIPS)
def test_a_slip_is_told_at_its_place(text: str, found: list[tuple[str, str]]) -> None:
    assert told(text) == [(f"catalogue-line/{case}", at) for case, at in found]


CLASHES = [
    (GARMENTS + 'papers = ["a4", "letter"]\nname = "{source}"\n', "forms", '"{source}"'),
    (GARMENTS + 'languages = ["english", "german"]\nname = "{source}"\n', "forms", '"{source}"'),
    ('[[garments]]\nsources = ["**/panel.wale"]\n', "sources", '["**/panel.wale"]'),
    (GARMENTS + '[[garments]]\nsources = ["bag.wale"]\nsizes = ["S"]\n', "sources", '["bag.wale"]'),
]


@pytest.mark.parametrize(("text", "case", "at"), CLASHES)
def test_two_products_of_one_name_are_refused(text: str, case: str, at: str) -> None:
    assert told(HEAD + text) == [(f"catalogue-clash/{case}", at)]


def test_the_names_of_manifest_and_shelf_are_kept() -> None:
    known = Nameable(
        ("index.wale",), *(getattr(KNOWN, name) for name in ("languages", "papers", "units", "formats", "usual_formats"))
    )
    text = HEAD + '[[garments]]\nsources = ["index.wale"]\nformats = ["html"]\n'
    found, (fault,) = catalogue.read("shore.toml", text, known)
    assert (found, f"{fault.code}/{fault.case}") == (None, "catalogue-clash/kept")


def test_a_mistyped_name_is_answered_with_the_one_that_is_meant() -> None:
    for text, meant in (('papers = ["leter"]', "letter"), ('formatts = ["pdf"]', "formats")):
        (fault,) = wrong(HEAD + GARMENTS + text)
        assert in_english(fault).helps == (f"did you mean `{meant}`?",)


def test_several_mistakes_are_told_at_once() -> None:
    text = 'title = 3\n[usual]\npapers = ["a9"]\n[[garments]]\nsources = ["nothing.wale"]\nunits = "cm"\n'
    assert [kind.partition("/")[2] for kind, _ in told(text)] == ["lacking-date", "no-text", "not-one-of", "no-match", "no-list"]


NO_TOML = [
    ('title = "x\n' + "date = 2026-03-01\n" + GARMENTS, 1),
    ('title = Shore\ndate = 1. März\n[[garments]]\nsources = ["bag.wale"]\n', 1),
    ('title = Shore\nedition = "x"\ndate = 1. März\nimprint = ["x"]\n[[garments\nsources = ["bag.wale"]\n', 3),
    ("title\n", 1),
    ("\x00", 1),
    ("[" * 4000, 1),
    ("x = " + "9" * 5000, 1),
    ('[a]\n[b]\n[a]\n[[garments]]\nsources = ["bag.wale"]\n', 1),
]


@pytest.mark.parametrize(("text", "times"), NO_TOML)
def test_lines_that_are_no_toml_are_told_and_passed_over(text: str, times: int) -> None:
    kinds = [kind for kind, _ in told(text)]
    assert kinds.count("catalogue-line/no-toml") == times
    # What may stand in such a line is not missed.
    assert not any("lacking" in kind for kind in kinds)


def test_what_can_be_read_beside_such_a_line_is_looked_at() -> None:
    text = 'title = Shore\nedition = "x"\ndate = 2026-03-01\n[[garments]]\nsources = ["bag.wale"]\npapers = ["a9"]\n'
    assert told(text) == [("catalogue-line/no-toml", "Shore"), ("catalogue-line/not-one-of", '"a9"')]


def _damaged(text: str) -> Iterator[str]:
    for at in range(0, len(text), 3):
        yield text[:at] + text[at + 1 :]
        yield text[:at] + '"' + text[at:]
        yield text[:at] + "]" + text[at:]


def test_no_damage_is_too_much() -> None:
    whole = HEAD + 'imprint = ["x"]\n[usual]\npapers = ["a4"]\n[themes]\nq = "q.css"\n' + GARMENTS + 'choices = {a = "b"}\n'
    for text in _damaged(whole):
        found, faults = catalogue.read("shore.toml", text, KNOWN)
        assert (found is None) == bool(faults)


@pytest.mark.parametrize(
    ("pattern", "name", "fits"),
    [
        ("*.wale", "a.wale", True),
        ("*.wale", "b/a.wale", False),
        ("**/*.wale", "a.wale", True),
        ("**/*.wale", "b/c/a.wale", True),
        ("b/**", "b/c/a.wale", True),
        ("b/?.wale", "b/a.wale", True),
        ("b/[ab].wale", "b/c.wale", False),
        ("A.wale", "a.wale", False),
    ],
)
def test_patterns(pattern: str, name: str, fits: bool) -> None:
    assert matches(pattern, name) == fits


def test_a_place_without_anything_takes_its_hyphen_along() -> None:
    facts = {"source": "bag", "paper": "", "units": "in"}
    assert filled("{source}-{paper}_{units}", facts) == "bag_in"
    assert filled("of_{source}.{paper}", facts) == "of_bag"


UNBOUNDED = {"brackets": "x = " + "[" * 5000 + "]" * 5000, "a number": "x = " + "9" * 5000}
"""What the reader of TOML gives up at without saying where."""


@pytest.mark.parametrize("line", UNBOUNDED.values(), ids=UNBOUNDED)
def test_a_line_that_is_too_much_for_the_reader_is_told_at_its_place(line: str) -> None:
    text = f'{HEAD}edition = "First"\n{line}\n\n[[garments]]\nsources = ["bag.wale"]\npapers = ["a9"]\n'
    assert told(text) == [("catalogue-line/no-toml", line), ("catalogue-line/not-one-of", '"a9"')]


def test_a_source_whose_name_is_no_text_is_told() -> None:
    odd = "\udcff\udcfe.wale"
    known = replace(KNOWN, sources=(*KNOWN.sources, odd))
    found, faults = catalogue.read("shore.toml", f'{HEAD}\n[[garments]]\nsources = ["*.wale"]\n', known)
    assert found is None
    assert [fault.case for fault in faults] == ["name-no-text"]
    in_english(faults[0]).message.encode()
    # It harms nobody who does not name it.
    assert catalogue.read("shore.toml", f'{HEAD}\n[[garments]]\nsources = ["bag.wale"]\n', known)[1] == ()
