"""Every command and every message in each language that is shipped beside English: what is printed and told has no word but the
language's own, an author's, and what is typed."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.cli.test_language import BEDS, EDGES, OWN, QUOTED, SIGNS, SOURCE, STAGES, TYPED, written
from tests.docs import error_pages
from tests.whole.test_printed_languages import texts_of, words_of
from walewright.cli import main
from walewright.languages import ENGLISH, known, named, printed
from walewright.report.render import terminal

OTHERS = tuple(name for name in known() if name != ENGLISH)
Said = pytest.CaptureFixture[str]


def strange(text: str, language: str, authors: set[str]) -> set[str]:
    """The words of a text that are of no table of the language. A code in its brackets is no word, nor an option, nor what is
    quoted: a source's."""
    bare = re.sub(r"\[[a-z-]+\]|--[a-z]+|`[^`\n]*`|^[ \d]*\|.*$|^ +: .*$", " ", text, flags=re.MULTILINE)
    tongue = printed(language)
    tables = (*texts_of(tongue.telling), *texts_of(tongue.guide), *texts_of(tongue.writing))
    own = {word for one in tables for word in words_of(re.sub(r"`[^`\n]*`|\{@?\w+", "{", one))}
    return words_of(bare) - own - authors - TYPED - {sign.lower() for sign in SIGNS}


@pytest.fixture
def pouch(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    path = Path("qpouch.wale")
    path.write_text(SOURCE, encoding="utf-8")
    return path


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("command", ["check", "check --all", "choices", "build --as text", "format", "format --check"])
def test_a_command_prints_and_tells_in_the_language(language: str, command: str, pouch: Path, capsys: Said) -> None:
    if command.startswith("format"):
        pouch.write_text(SOURCE.replace("let qspare = 2", "let qspare  =  2"), encoding="utf-8")
    main([*command.split(), str(pouch), "--language", language])
    told = capsys.readouterr()
    assert told.out
    assert strange(told.out + told.err, language, OWN | EDGES | BEDS | {"chunky", "across"}) == set()


@pytest.mark.parametrize("language", OTHERS)
def test_the_command_line_is_told_of_in_the_language(language: str, capsys: Said) -> None:
    for arguments in (
        ["check", "--sise", "M"],
        ["check"],
        ["chekc"],
        ["build", "a.txt"],
        ["check", "b.wale"],
        ["show", "x", "b.wale"],
    ):
        main([*arguments, f"--language={language}"])
        told = capsys.readouterr().err
        words = {word for argument in arguments for word in re.findall("[a-z]+", argument)}
        typed = {"check", "build", "choices", "show", "format", "serve", "source", "command", "line", *STAGES}
        assert told
        assert strange(told, language, words | typed) == set()


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("code", error_pages.codes_with_page())
def test_a_message_is_told_in_the_language(code: str, language: str) -> None:
    page = error_pages.page(code)
    if page.wrong is None:
        pytest.skip("its page has commands, no source")
    outcome = error_pages.compiled(page.wrong.source)
    told = terminal(outcome.diagnostics, {error_pages.FILE: outcome.text}, language=printed(language).telling)
    assert strange(told, language, written(outcome.text) | {"pattern"}) - QUOTED.get(code, set()) == set()


def test_a_word_of_another_language_would_be_seen() -> None:
    assert strange("12 of the Reihen", "german", {"of"}) == {"the"}


@pytest.mark.parametrize("tag", ["de", "german"])
def test_a_language_has_a_tag_as_a_second_name(tag: str, pouch: Path, capsys: Said) -> None:
    assert named(tag) == "german"
    assert main(["choices", str(pouch), "--language", tag]) == 0
    assert "anstelle der Angaben der Quelle" in capsys.readouterr().out


def test_english_has_a_tag_and_a_stranger_none() -> None:
    assert named("en") == "english"
    assert named("xx") == "xx"
