"""Every command in another language, made of English by rule (`tests/whole/turned.py`): what it prints and tells has no word that
is not turned but what an author wrote, what is typed, codes and signs."""

from __future__ import annotations

import html as entities
import re
from pathlib import Path

import pytest

from tests.docs import error_pages
from tests.whole.turned import MARK, language, turned
from walewright import languages, world
from walewright.cli import main
from walewright.cli.commands import NAMES
from walewright.report.render import terminal
from walewright.report.wording import Language

Said = pytest.CaptureFixture[str]

TYPED = {"walewright", "build", "wale", "txt", "html", "out", "or", "rows", "st", "cm", "size", "tension", "measure"}
"""The program's name, its commands, and the form of what an option takes."""

SIGNS = {"cm", "mm", "RC"}
"""A standard, signs of measures, and what stands on every machine's counter."""


@pytest.fixture
def spoken(monkeypatch: pytest.MonkeyPatch) -> None:
    """The language is there, as if its folders were."""
    known, printed, telling = languages.known, languages.printed, languages.telling
    monkeypatch.setattr(languages, "known", lambda: (*known(), "turned"))
    monkeypatch.setattr(languages, "printed", lambda name="english": language() if name == "turned" else printed(name))
    monkeypatch.setattr(languages, "telling", lambda name="english": _telling() if name == "turned" else telling(name))


def _telling() -> Language:
    return language().telling


def written(source: str) -> set[str]:
    """Every word of a source, and of the beds and tables that it may name."""
    shipped = [
        world.shipped_text("patterns", f"{folder}/{file}")
        for folder, suffix in (("machines", ".wale"), ("tables", ".csv"), ("tables", ".toml"))
        for file in world.shipped_names("patterns", folder, suffix)
    ]
    return {word.lower() for word in re.findall(r"[^\W\d_]+", " ".join((source, *shipped)))}


def left(text: str, authors: set[str]) -> set[str]:
    """The words of a text that are not turned. A code in its brackets is no word, nor an option, nor what is quoted: a source's."""
    bare = re.sub(r"\[[a-z-]+\]|--[a-z]+|`[^`\n]*`|^[ \d]*\|.*$|^ +: .*$", " ", text, flags=re.MULTILINE)
    words = {word for word in re.findall(r"[^\W\d_]{2,}", bare) if not word.endswith(MARK)}
    return {word for word in words if word.lower() not in authors | TYPED and word not in SIGNS}


SOURCE = """\
pattern "Qqpouch"

sizes Qs Ql
    qwide 14 18 cm, to fit "qq across"
    qdeep 12 15 cm

let qspare = 2 cm

machine bulky

yarn qwool "qchunky", 100 g = 120 m

fabric qplain
    stocking stitch in qwool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

edging qrim in qplain, 1.5 cm deep, added after, cast off chain

piece qback in qplain
    levels qbottom 0 cm, qhalf qdeep / 2, qfold qdeep - 2 cm, qtop qdeep
    start qwide + 2 cm wide with e-wrap
    edges straight to qtop called qside
    end on waste yarn

piece qfront in qplain
    levels qbottom 0 cm, qhalf qdeep / 2, qtop qdeep - 3 cm
    start qwide + 2 cm wide with e-wrap
    left edge straight to qtop called qopen
    right edge straight to qtop called qside
    end on waste yarn

band qmouth with qrim along qfront end
band qflap with qrim along qback end

join qback start to qfront start
join qback qside_left to qfront qside, easing 4 cm
finished qpouch along qback start, fits qwide
"""
"""Every name begins with a q, so that no word of the program's is taken for the author's."""

OWN = {word.lower() for word in re.findall(r"[^\W\d_]+", SOURCE) if word.lower().startswith("q")}
BEDS = {
    word
    for file in world.shipped_names("patterns", "machines", ".toml")
    for word in re.findall("[a-z]+", "".join(re.findall('label = "(.*)"', world.shipped_text("patterns", f"machines/{file}"))))
}
"""What the shipped beds are called."""
EDGES = {"start", "end", "left", "right", "first"}
"""Edges as an author writes them."""
STITCH = {"stocking", "stitch", "chunky", "e", "wrap", "across"}
"""What the fabric is called in the source."""


@pytest.fixture
def pouch(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    path = Path("qpouch.wale")
    path.write_text(SOURCE, encoding="utf-8")
    return path


@pytest.mark.usefixtures("spoken")
@pytest.mark.parametrize("command", ["check", "check --all", "choices", "build --as text", "format", "format --check"])
def test_a_command_prints_and_tells_in_the_language(command: str, pouch: Path, capsys: Said) -> None:
    if command.startswith("format"):
        pouch.write_text(SOURCE.replace("let qspare = 2", "let qspare  =  2"), encoding="utf-8")
    main([*command.split(), str(pouch), "--language", "turned"])
    told = capsys.readouterr()
    assert MARK in told.out
    assert left(told.out + told.err, OWN | EDGES | STITCH | BEDS) == set()


@pytest.mark.usefixtures("spoken")
def test_page_and_text_are_in_the_language(pouch: Path) -> None:
    assert main(["build", str(pouch), "--language", "turned", "--as", "text,html"]) == 0
    text = Path("out/qpouch.txt").read_text(encoding="utf-8")
    page = Path("out/qpouch.html").read_text(encoding="utf-8")
    shown = entities.unescape(re.sub(r"<[^>]*>", " ", re.sub(r"<(style|script)>.*?</\1>", "", page, flags=re.DOTALL)))
    assert '<html lang="en-x-turned">' in page
    assert turned("Materials") in shown
    for words in (text, shown):
        assert left(words, OWN | STITCH | BEDS) == set()


@pytest.mark.usefixtures("spoken")
def test_the_command_line_is_told_of_in_the_language(capsys: Said) -> None:
    for arguments in (
        ["check", "--sise", "M"],
        ["check"],
        ["chekc"],
        ["build", "a.txt"],
        ["check", "b.wale"],
        ["show", "x", "b.wale"],
    ):
        main([*arguments, "--language=turned"])
        told = capsys.readouterr().err
        assert MARK in told
        words = {word for argument in arguments for word in re.findall("[a-z]+", argument)} | {"line", "command"}
        assert left(told, words | {*NAMES, "source", *STAGES}) == set()


STAGES = {"design", "glue", "solve", "knit", "hands", "bed", "fit", "write", "readback", "proof"}


@pytest.mark.parametrize("code", error_pages.codes_with_page())
def test_a_message_is_told_in_the_language(code: str) -> None:
    page = error_pages.page(code)
    if page.wrong is None:
        pytest.skip("its page has commands, no source")
    outcome = error_pages.compiled(page.wrong.source)
    told = terminal(outcome.diagnostics, {error_pages.FILE: outcome.text}, language=language().telling)
    assert MARK in told
    assert left(told, written(outcome.text) | {"pattern"}) - QUOTED.get(code, set()) == set()


QUOTED = {
    "edging-without-fold": {"folded", "mock", "rib", "facing"},
    "missing-part": {"pattern"},
    "names-look-alike": {"latin", "cyrillic", "capital", "letter", "em"},
    "reserved-name": {"start", "end", "neck", "shoulder"},
    "reserved-word": {"round", "square", "simple", "fashioned", "added", "knitted", "cast", "on", "between", "along", "for"},
    "unknown-table": {"age", "baby", "child", "foot", "hand", "head", "men", "women", "youth"},
}
"""Words of the source's language and names of letters that a list has without quotes."""


def test_a_word_that_is_not_turned_would_be_seen() -> None:
    assert left(f"{turned('Rows in all')}: 12 of them `x y`\n 3 | let a = 2", {"of"}) == {"them"}
