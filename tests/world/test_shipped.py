"""What comes with the compiler, in a checkout and in a wheel, and the parsers made of its tables."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest
from lark import Tree
from lark.lexer import TerminalDef

from walewright import world
from walewright.world import shipped, tables
from walewright.world.tables import Grammar


def test_shipped_files_are_found_by_name() -> None:
    assert "bulky.toml" in world.shipped_names("patterns", "machines", ".toml")
    assert world.shipped_names("patterns", "machines", ".csv") == ()
    assert world.shipped_names("patterns", "nowhere") == ()
    assert "machines" not in world.shipped_names("patterns"), "a folder is no file"
    assert list(world.shipped_names("patterns")) == sorted(world.shipped_names("patterns"))
    assert world.shipped_text("patterns", "machines/bulky.toml").count("needles = 100") == 1


def test_a_shipped_file_that_is_not_there_is_a_fault_of_the_installation() -> None:
    with pytest.raises(FileNotFoundError, match=r"grammar/none\.lark"):
        world.shipped_text("grammar", "none.lark")
    with pytest.raises(FileNotFoundError):
        world.package_text("none.css")


def test_in_a_wheel_the_folders_lie_in_the_package(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    package = tmp_path / "src" / "package"
    (package / "_shipped" / "patterns").mkdir(parents=True)
    (package / "_shipped" / "patterns" / "a.txt").write_text("wheel")
    (tmp_path / "patterns").mkdir()
    (tmp_path / "patterns" / "a.txt").write_text("checkout")
    (tmp_path / "patterns" / "b.txt").write_text("checkout")
    monkeypatch.setattr(shipped, "_PACKAGE", package)
    assert world.shipped_text("patterns", "a.txt") == "wheel"
    assert world.shipped_text("patterns", "b.txt") == "checkout"
    assert world.shipped_names("patterns", suffix=".txt") == ("a.txt",)


def test_files_of_the_package() -> None:
    assert world.package_path("world") == Path(shipped.__file__).parent
    assert world.package_text("world/shipped.py") == Path(shipped.__file__).read_text(encoding="utf-8")


def test_what_not_every_command_needs_is_loaded_when_it_is_asked_for() -> None:
    from walewright.world import within

    assert world.is_folder is within.is_folder
    with pytest.raises(AttributeError, match="no attribute 'nothing'"):
        _ = world.nothing
    assert {name for name in world.LATER if getattr(world, name) is None} == set()


# ----------------------------------------------------------------- parse tables

SUMS = 'start: sum "."\nsum: NUMBER ("+" NUMBER)*\nother: NUMBER\nNUMBER: /[0-9]+/\n%ignore " "\n'


def _keep(_: TerminalDef) -> None:
    """No terminal is changed."""


def _options() -> Mapping[str, Any]:
    return {"propagate_positions": True}


@pytest.fixture
def grammar(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Grammar:
    """A grammar that is shipped, without tables yet."""
    (tmp_path / "_shipped" / "grammar").mkdir(parents=True)
    (tmp_path / "_shipped" / "grammar" / "sums.lark").write_text(SUMS)
    (tmp_path / "edit.py").write_text("# nothing\n")
    monkeypatch.setattr(shipped, "_PACKAGE", tmp_path)
    return Grammar("sums", "edit.py", ("start", "other"), _keep, _options)


def write(folder: Path, text: str) -> None:
    (folder / "_shipped" / "grammar" / "sums.tables").write_text(text, encoding="utf-8")


def said(parser: Any) -> tuple[Tree[Any], Tree[Any]]:
    return parser.parse("1 + 22 + 3.", "start"), parser.parse("7", "other")


def count(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """How often a parser is worked out from a grammar from here on."""
    made: list[str] = []
    monkeypatch.setattr(tables, "worked_out", lambda of, own=tables.worked_out: (made.append(of.name), own(of))[1])
    return made


def test_a_parser_from_its_tables_is_that_of_the_grammar(grammar: Grammar, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    own = said(tables.worked_out(grammar))
    text = tables.tables(grammar)
    assert text == tables.tables(grammar), "the same every time"
    write(tmp_path, text)
    made = count(monkeypatch)
    parser = tables.made(grammar)
    assert made == []
    assert said(parser) == own
    assert said(parser)[0].meta.end_column == 12


@pytest.mark.parametrize("damage", ["gone", "cut", "head", "body", "empty", "grammar", "edit", "starts"])
def test_tables_that_do_not_hold_are_not_used(
    damage: str, grammar: Grammar, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    own = said(tables.worked_out(grammar))
    text = tables.tables(grammar)
    write(
        tmp_path,
        {"cut": text[:-20], "head": "0" + text[1:], "body": text.replace("NUMBER", "NUMBEP", 1), "empty": ""}.get(damage, text),
    )
    if damage == "gone":
        (tmp_path / "_shipped" / "grammar" / "sums.tables").unlink()
    elif damage == "grammar":
        (tmp_path / "_shipped" / "grammar" / "sums.lark").write_text(SUMS + "// said otherwise\n")
    elif damage == "edit":
        (tmp_path / "edit.py").write_text("# something\n")
    elif damage == "starts":
        grammar = Grammar("sums", "edit.py", ("other", "start"), _keep, _options)
    made = count(monkeypatch)
    assert said(tables.made(grammar)) == own
    assert made == ["sums"]


def test_a_grammar_of_its_own_has_no_tables(grammar: Grammar, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    write(tmp_path, tables.tables(grammar))
    made = count(monkeypatch)
    own = Grammar("sums", "edit.py", ("start",), _keep, _options, text='start: "a"\n')
    assert tables.made(own).parse("a") == Tree("start", [])
    assert made == ["sums"]
